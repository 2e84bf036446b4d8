package verify

import (
	"slices"

	"benchproof/kitchen/logistic"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/verify/about"
	"benchproof/kitchen/verify/learnt"
)

// Candidate is something that may be wrong, before it is weighed.
type Candidate struct {
	Finding Finding
	Traits  []string
}

// Way is how a cut is read worse than Check reads it: what then seems to be wrong, and is
// not, is what rules that nobody thought of would let through.
type Way struct {
	Blind  bool // no phrase tells of another scene
	Alone  bool // the ties are not looked at together
	Untied bool // number N is about nothing
	Unread bool // number N is not found
	N      int
}

// Candidates gives all that is weighed where a cut is read in a way.
func (c Checker) Candidates(r recipe.Recipe, cues []Cue, way Way) []Candidate {
	models := c.Models.OrOwn()
	first := models.Topic
	if way.Blind {
		first = logistic.Of(map[string]float64{logistic.Bias: -20})
	}
	read := c.read(r, cues, first)
	read.Weigh(models.Topic)
	if !way.Alone {
		read.Reconcile()
	}
	switch n := way.N; {
	case way.Untied:
		read.Ties[n] = about.Tie{Item: -1, Fact: -1}
	case way.Unread:
		read.Said, read.Ties, read.Elsewhere = slices.Delete(read.Said, n, n+1), slices.Delete(read.Ties, n, n+1), slices.Delete(read.Elsewhere, n, n+1)
	}
	w := &watcher{doubt: c.Models.Doubt}
	newJudge(read, w).run()
	return w.all
}

// watcher keeps everything. It lets through what a model does not doubt, or everything.
type watcher struct {
	doubt *logistic.Model
	all   []Candidate
}

func (w *watcher) tells(f Finding, traits []string) bool {
	w.all = append(w.all, Candidate{f, traits})
	return w.doubt == nil || f.Kind == NotSaid || likelihoods{learnt.Models{Doubt: w.doubt}}.tells(f, traits)
}

// Only is one number that is the only one about its line or step, and agrees.
type Only struct {
	N, Number, Cue int // index of the number, the line's number, the cue's index
	From, To       int // of the number in the cue's text, in bytes
}

// Onlies gives those of a cut whose words stand in one cue.
func (c Checker) Onlies(r recipe.Recipe, cues []Cue) []Only {
	read := c.read(r, cues, c.Models.OrOwn().Topic)
	read.Reconcile()
	j := newJudge(read, &watcher{})
	j.run()
	lines := map[int]int{}
	for i := range j.Said {
		lines[j.lineOf(i)]++
	}
	var all []Only
	for i, s := range j.Said {
		first, last := j.Text.Words[s.From], j.Text.Words[s.To-1]
		if n := j.lineOf(i); n > 0 && lines[n] == 1 && (j.agreed[i] || j.Ties[i].Agrees) && first.Cue == last.Cue {
			all = append(all, Only{N: i, Number: n, Cue: first.Cue, From: first.At, To: last.End})
		}
	}
	return all
}

// lineOf gives the number of the line that number i is about, 0 for none.
func (j *judge) lineOf(i int) int {
	switch t := j.Ties[i]; {
	case t.Item >= 0:
		return j.Book.Items[t.Item].Line.Number
	case t.Fact >= 0:
		return j.Book.Facts[t.Fact].Number
	}
	return 0
}
