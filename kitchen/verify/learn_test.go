package verify_test

import (
	"flag"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"benchproof/kitchen/logistic"
	"benchproof/kitchen/logistic/fit"
	"benchproof/kitchen/verify/about"
	"benchproof/kitchen/verify/learnt"
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

var update = flag.Bool("update", false, "learn the weights of the topic again")

// examples gives every number of a cut that has a mark.
func (c cut) examples() []fit.Example {
	text, book := speech.Cut(c.cues), written.Read(c.recipe, checker.Larder)
	r := about.Read(text, book, same.Scale{Larder: checker.Larder, System: c.recipe.System}, logistic.Of(nil))
	var all []fit.Example
	for i, s := range r.Said {
		at := text.Start(s.From)
		k := slices.IndexFunc(c.marks, func(m mark) bool {
			return m.kind != "not said" && (m.at-at).Abs() <= 4*time.Second && sameWords(folded(m.words), folded(text.Quote(s.From, s.To)))
		})
		if k >= 0 {
			all = append(all, fit.Example{Group: c.name, Traits: r.Traits(i), Is: c.marks[k].kind == "other"})
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
func topicExamples(cuts []cut) []fit.Example {
	var all []fit.Example
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
)

// learn gives the weights of examples.
func learn(t testing.TB, examples []fit.Example) map[string]float64 {
	t.Helper()
	weights, err := fit.Of(examples, ridge, leastSeen).Learn()
	if err != nil {
		t.Fatal(err)
	}
	return weights
}

func writeWeights(t testing.TB, name string, cuts int, weights map[string]float64) {
	t.Helper()
	if err := fit.Write(name, remark(cuts), weights); err != nil {
		t.Fatal(err)
	}
}

// remark is the first line of a file of weights.
func remark(cuts int) string { return fit.Remark(cuts, "cuts and scenes") }

// folds is how many parts the cuts are cut into: what a part seems to get wrong is learnt
// from weights of the topic that are learnt without it.
const folds = 8

// learnModels learns everything. What is weighed of a cut is told by models that are learnt
// without its part, as on a cut that nobody has seen.
func learnModels(t testing.TB, cuts []cut) map[string]map[string]float64 {
	t.Helper()
	var topics, doubts, silences []fit.Example
	models := make([]learnt.Models, folds)
	topics = topicExamples(cuts)
	for fold := range folds {
		models[fold].Topic = logistic.Of(learn(t, without(cuts, topics, fold)))
	}
	for _, c := range cuts {
		doubts = append(doubts, c.doubts(models[foldOf(cuts, c.name)])...)
	}
	for fold := range folds {
		models[fold].Doubt = logistic.Of(learn(t, without(cuts, doubts, fold)))
	}
	for _, c := range cuts {
		silences = append(silences, c.silences(models[foldOf(cuts, c.name)])...)
	}
	return map[string]map[string]float64{"topic": learn(t, topics), "doubt": learn(t, doubts), "silence": learn(t, silences)}
}

// without gives the fit.Examples that are not of a part's cuts.
func without(cuts []cut, all []fit.Example, fold int) []fit.Example {
	return slices.DeleteFunc(slices.Clone(all), func(e fit.Example) bool { return foldOf(cuts, e.Group) == fold })
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
	m, err := logistic.Read(readFile(t, "learnt/topic.txt"))
	if err != nil {
		t.Fatal(err)
	}
	f := fit.Of(topicExamples(cuts), ridge, leastSeen)
	w := make([]float64, len(f.Traits))
	for i, trait := range f.Traits {
		w[i] = m.Weight(trait)
	}
	slope := make([]float64, len(w))
	f.Slope(slope, w)
	steepest := max(slices.Max(slope), -slices.Min(slope))
	t.Logf("%d examples, %d traits, loss %.0f, steepest slope %.2f", f.Len(), len(w), f.Loss(w), steepest)
	if steepest > flat*float64(f.Len()) {
		t.Errorf("the weights are not the best for these cuts: slope %.2f; learn them again with -update", steepest)
	}
}

// flat is the slope, for each example, that rounding and what is left out as too light leave.
const flat = 0.0015
