package verify_test

import (
	"flag"
	"fmt"
	"maps"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"gonum.org/v1/gonum/optimize"

	"benchproof/kitchen/verify/about"
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/topic"
	"benchproof/kitchen/verify/written"
)

var update = flag.Bool("update", false, "learn the weights of the topic again")

// example is one number of which it is known whether it is about something else.
type example struct {
	cut       string
	traits    []string
	elsewhere bool
}

// examples gives every number of a cut that has a mark.
func (c cut) examples() []example {
	text, book := speech.Cut(c.cues), written.Read(c.recipe, checker.Larder)
	r := about.Read(text, book, same.Scale{Larder: checker.Larder, System: c.recipe.System}, topic.Of(nil))
	var all []example
	for i, s := range r.Said {
		at := text.Start(s.From)
		k := slices.IndexFunc(c.marks, func(m mark) bool {
			return m.kind != "not said" && (m.at-at).Abs() <= 4*time.Second && sameWords(folded(m.words), folded(text.Quote(s.From, s.To)))
		})
		if k >= 0 {
			all = append(all, example{cut: c.name, traits: r.Traits(i), elsewhere: c.marks[k].kind == "other"})
		}
	}
	return all
}

// sameWords tells whether one holds the other.
func sameWords(a, b string) bool { return strings.Contains(a, b) || strings.Contains(b, a) }

// tunedExamples gives those of all cuts and scenes that are tuned on, as they are written
// and without stops and pauses.
func tunedExamples(t testing.TB) []example {
	t.Helper()
	cuts := slices.DeleteFunc(readCuts(t), cut.heldOut)
	for _, file := range sceneFiles(t) {
		cuts = append(cuts, readScenes(t, file)...)
	}
	var all []example
	for _, c := range cuts {
		all = append(all, c.examples()...)
		c.cues = breathless(bare(c.cues))
		all = append(all, c.examples()...)
	}
	return all
}

func sceneFiles(t testing.TB) []string {
	t.Helper()
	files, err := filepath.Glob("testdata/scenes/*.txt")
	if err != nil || len(files) == 0 {
		t.Fatalf("no scenes: %v", err)
	}
	return files
}

const (
	leastSeen = 6 // examples that have a trait for it to get a weight
	ridge     = 6 // how much a weight costs: half of this times its square
	rounds    = 150
)

// fit is a logistic regression under way: the loss is the sum of −log of the likelihood
// and the ridge.
type fit struct {
	traits []string // the first is the bias
	rows   [][]int  // of each example the indexes of its traits
	signs  []float64
}

func newFit(examples []example) fit {
	seen := map[string]int{}
	for _, e := range examples {
		for _, trait := range slices.Compact(slices.Sorted(slices.Values(e.traits))) {
			seen[trait]++
		}
	}
	maps.DeleteFunc(seen, func(_ string, n int) bool { return n < leastSeen })
	f := fit{traits: append([]string{topic.Bias}, slices.Sorted(maps.Keys(seen))...)}
	index := map[string]int{}
	for i, trait := range f.traits {
		index[trait] = i
	}
	for _, e := range examples {
		row, sign := []int{0}, -1.0
		for _, trait := range e.traits {
			if k, ok := index[trait]; ok {
				row = append(row, k)
			}
		}
		if e.elsewhere {
			sign = 1
		}
		f.rows, f.signs = append(f.rows, row), append(f.signs, sign)
	}
	return f
}

// margin is how far the weights put an example on its right side.
func (f fit) margin(i int, w []float64) float64 {
	sum := 0.0
	for _, k := range f.rows[i] {
		sum += w[k]
	}
	return f.signs[i] * sum
}

func (f fit) loss(w []float64) float64 {
	loss := 0.0
	for _, x := range w {
		loss += ridge / 2.0 * x * x
	}
	for i := range f.rows {
		loss += math.Log1p(math.Exp(-f.margin(i, w)))
	}
	return loss
}

func (f fit) slope(slope, w []float64) {
	for k, x := range w {
		slope[k] = ridge * x
	}
	for i, row := range f.rows {
		push := -f.signs[i] / (1 + math.Exp(f.margin(i, w)))
		for _, k := range row {
			slope[k] += push
		}
	}
}

// learn fits the weights by the limited-memory method of Broyden, Fletcher, Goldfarb
// and Shanno, as a general library has it.
func learn(t testing.TB, examples []example) map[string]float64 {
	t.Helper()
	f := newFit(examples)
	result, err := optimize.Minimize(optimize.Problem{Func: f.loss, Grad: f.slope}, make([]float64, len(f.traits)),
		&optimize.Settings{MajorIterations: rounds}, &optimize.LBFGS{})
	if result == nil {
		t.Fatal(err)
	}
	if err != nil {
		t.Logf("stopped early: %v", err) // TestTopicWeights tells whether it is good enough
	}
	weights := map[string]float64{}
	for i, trait := range f.traits {
		weights[trait] = result.X[i]
	}
	return weights
}

// leastWeight is the least weight that is worth a line of the file.
const leastWeight = 0.02

func writeWeights(t testing.TB, name string, weights map[string]float64) {
	t.Helper()
	var text strings.Builder
	text.WriteString("# Learnt from the tuned cuts and the scenes; doc.go tells how.\n")
	for _, trait := range slices.Sorted(maps.Keys(weights)) {
		if w := weights[trait]; math.Abs(w) >= leastWeight || trait == topic.Bias {
			fmt.Fprintf(&text, "%.3f\t%s\n", w, trait)
		}
	}
	if err := os.WriteFile(name, []byte(text.String()), 0o644); err != nil {
		t.Fatal(err)
	}
}

// The weights in the file are what would be learnt today.
func TestTopicWeights(t *testing.T) {
	examples := tunedExamples(t)
	if *update {
		writeWeights(t, "topic/weights.txt", learn(t, examples))
	}
	m, err := topic.Read(readFile(t, "topic/weights.txt"))
	if err != nil {
		t.Fatal(err)
	}
	f := newFit(examples)
	w := make([]float64, len(f.traits))
	for i, trait := range f.traits {
		w[i] = m.Weight(trait)
	}
	slope := make([]float64, len(w))
	f.slope(slope, w)
	steepest := max(slices.Max(slope), -slices.Min(slope))
	t.Logf("%d examples, %d traits, loss %.0f, steepest slope %.2f", len(examples), len(w), f.loss(w), steepest)
	if steepest > flat {
		t.Errorf("the weights are not the best for these cuts: slope %.2f; learn them again with -update", steepest)
	}
}

// flat is the slope that rounding, and what is left out as too light, leave.
const flat = 8
