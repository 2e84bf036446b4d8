package script_test

import (
	"flag"
	"slices"
	"strings"
	"testing"
	"time"

	"benchproof/kitchen/logistic/fit"
	"benchproof/kitchen/script"
)

var update = flag.Bool("update", false, "learn the weights of openings again")

// openingExamples gives every spot of a cut, and whether a segment truly begins there: as it
// is, without pauses, and so without stops too.
func (c cut) openingExamples() []fit.Example {
	var truth []time.Duration
	for _, at := range c.truth {
		truth = append(truth, at)
	}
	hurried := untold{captions: c.captions, truth: truth}.withoutPauses()
	plain := hurried
	plain.captions.Cues = slices.Clone(hurried.captions.Cues)
	for i, cue := range plain.captions.Cues {
		plain.captions.Cues[i].Text = strings.ToLower(strings.NewReplacer(".", "", ",", "", "!", "", "?", "", "…", "", ":", "", ";", "").Replace(cue.Text))
	}
	var all []fit.Example
	for _, u := range []untold{{captions: c.captions, truth: truth}, hurried, plain} {
		all = append(all, c.openingsOf(u)...)
	}
	return all
}

func (c cut) openingsOf(u untold) []fit.Example {
	begins := map[time.Duration]bool{}
	for _, at := range u.truth {
		begins[at] = true
	}
	var all []fit.Example
	for _, o := range script.Openings(u.captions, c.segments) {
		all = append(all, fit.Example{Group: c.name, Traits: o.Traits, Is: begins[o.At]})
	}
	return all
}

// How a weight is learnt: what has a trait for it to get one, and what it costs.
const (
	openingSeen  = 14
	openingRidge = 4
)

// The weights of openings are learnt from all cuts in view, as many as there are.
func TestOpeningWeights(t *testing.T) {
	var examples []fit.Example
	cuts := 0
	for _, c := range readCuts(t) {
		if !c.heldOut() {
			cuts++
			examples = append(examples, c.openingExamples()...)
		}
	}
	remark := fit.Remark(cuts, "cuts")
	if *update {
		weights, err := fit.Of(examples, openingRidge, openingSeen).Learn()
		if err == nil {
			err = fit.Write("opening.txt", remark, weights)
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	if !strings.HasPrefix(readFile(t, "opening.txt"), remark) {
		t.Errorf("opening.txt is not learnt from %d cuts: learn it again with -update", cuts)
	}
}
