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
	"benchproof/kitchen/verify/learnt"
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

var update = flag.Bool("update", false, "learn the weights of the topic again")

// example is one number of which it is known whether it is about something else.
type example struct {
	cut    string
	traits []string
	is     bool // what is to be learnt
}

// examples gives every number of a cut that has a mark.
func (c cut) examples() []example {
	text, book := speech.Cut(c.cues), written.Read(c.recipe, checker.Larder)
	r := about.Read(text, book, same.Scale{Larder: checker.Larder, System: c.recipe.System}, learnt.Of(nil))
	var all []example
	for i, s := range r.Said {
		at := text.Start(s.From)
		k := slices.IndexFunc(c.marks, func(m mark) bool {
			return m.kind != "not said" && (m.at-at).Abs() <= 4*time.Second && sameWords(folded(m.words), folded(text.Quote(s.From, s.To)))
		})
		if k >= 0 {
			all = append(all, example{cut: c.name, traits: r.Traits(i), is: c.marks[k].kind == "other"})
		}
	}
	return all
}

// sameWords tells whether one holds the other.
func sameWords(a, b string) bool { return strings.Contains(a, b) || strings.Contains(b, a) }

// tuned gives all cuts and scenes that are tuned on.
func tuned(t testing.TB) []cut {
	t.Helper()
	cuts := slices.DeleteFunc(readCuts(t), cut.heldOut)
	for _, file := range sceneFiles(t) {
		cuts = append(cuts, readScenes(t, file)...)
	}
	return cuts
}

// topicExamples gives those of cuts, as they are written and without stops and pauses.
func topicExamples(cuts []cut) []example {
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
	rounds    = 200
	starts    = 4
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
	f := fit{traits: append([]string{learnt.Bias}, slices.Sorted(maps.Keys(seen))...)}
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
		if e.is {
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
	at := make([]float64, len(f.traits))
	for range starts { // it may stop early; from there it goes on
		result, err := optimize.Minimize(optimize.Problem{Func: f.loss, Grad: f.slope}, at,
			&optimize.Settings{MajorIterations: rounds}, &optimize.LBFGS{})
		if result == nil {
			t.Fatal(err)
		}
		at = result.X
		if err == nil {
			break
		}
	}
	weights := map[string]float64{}
	for i, trait := range f.traits {
		weights[trait] = at[i]
	}
	return weights
}

// leastWeight is the least weight that is worth a line of the file.
const leastWeight = 0.02

// remark is the first line of a file of weights.
func remark(cuts int) string {
	return fmt.Sprintf("# Learnt from %d cuts and scenes; doc.go tells how.\n", cuts)
}

func writeWeights(t testing.TB, name string, cuts int, weights map[string]float64) {
	t.Helper()
	var text strings.Builder
	text.WriteString(remark(cuts))
	for _, trait := range slices.Sorted(maps.Keys(weights)) {
		if w := weights[trait]; math.Abs(w) >= leastWeight || trait == learnt.Bias {
			fmt.Fprintf(&text, "%.3f\t%s\n", w, trait)
		}
	}
	if err := os.WriteFile(name, []byte(text.String()), 0o644); err != nil {
		t.Fatal(err)
	}
}

// folds is how many parts the cuts are cut into: what a part seems to get wrong is learnt
// from weights of the topic that are learnt without it.
const folds = 8

// learnModels learns everything. What is weighed of a cut is told by models that are learnt
// without its part, as on a cut that nobody has seen.
func learnModels(t testing.TB, cuts []cut) map[string]map[string]float64 {
	t.Helper()
	var topics, doubts, silences []example
	models := make([]learnt.Models, folds)
	topics = topicExamples(cuts)
	for fold := range folds {
		models[fold].Topic = learnt.Of(learn(t, without(cuts, topics, fold)))
	}
	for _, c := range cuts {
		doubts = append(doubts, c.doubts(models[foldOf(cuts, c.name)])...)
	}
	for fold := range folds {
		models[fold].Doubt = learnt.Of(learn(t, without(cuts, doubts, fold)))
	}
	for _, c := range cuts {
		silences = append(silences, c.silences(models[foldOf(cuts, c.name)])...)
	}
	return map[string]map[string]float64{"topic": learn(t, topics), "doubt": learn(t, doubts), "silence": learn(t, silences)}
}

// without gives the examples that are not of a part's cuts.
func without(cuts []cut, all []example, fold int) []example {
	return slices.DeleteFunc(slices.Clone(all), func(e example) bool { return foldOf(cuts, e.cut) == fold })
}

// foldOf gives the part that a cut is in.
func foldOf(cuts []cut, name string) int {
	return slices.IndexFunc(cuts, func(c cut) bool { return c.name == name }) % folds
}

// The weights in the files are those of the cuts as they are: of the topic, what would be
// learnt today; of the others, which take minutes to learn, at least of as many cuts.
func TestWeights(t *testing.T) {
	cuts := tuned(t)
	if *update {
		for name, weights := range learnModels(t, cuts) {
			writeWeights(t, "learnt/"+name+".txt", len(cuts), weights)
		}
	}
	for _, name := range []string{"topic", "doubt", "silence"} {
		if text := readFile(t, "learnt/"+name+".txt"); !strings.HasPrefix(text, remark(len(cuts))) {
			t.Errorf("%s.txt is not learnt from %d cuts and scenes: learn it again with -update", name, len(cuts))
		}
	}
	m, err := learnt.Read(readFile(t, "learnt/topic.txt"))
	if err != nil {
		t.Fatal(err)
	}
	f := newFit(topicExamples(cuts))
	w := make([]float64, len(f.traits))
	for i, trait := range f.traits {
		w[i] = m.Weight(trait)
	}
	slope := make([]float64, len(w))
	f.slope(slope, w)
	steepest := max(slices.Max(slope), -slices.Min(slope))
	t.Logf("%d examples, %d traits, loss %.0f, steepest slope %.2f", len(f.rows), len(w), f.loss(w), steepest)
	if steepest > flat*float64(len(f.rows)) {
		t.Errorf("the weights are not the best for these cuts: slope %.2f; learn them again with -update", steepest)
	}
}

// flat is the slope, for each example, that rounding and what is left out as too light leave.
const flat = 0.0015
