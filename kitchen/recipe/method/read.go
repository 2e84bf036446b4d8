package method

import (
	"strings"

	"benchproof/kitchen/measure"
)

// Reading is what one instruction says.
type Reading struct {
	Minutes    measure.Range
	HasMinutes bool
	HandsOn    bool
	Station    string // one of recipe.Stations
	Heats      []measure.Heat
	Cue        string // "until it springs back slowly"; "" if none
	Reason     string // what to look at: an oven pair that disagrees; "" if all is well
}

// Read reads one instruction. What the words do not say has its usual value:
// an instruction without a known verb is done by hand at the bench.
func Read(text string) Reading {
	var r Reading
	t := tokenise(text)
	spans := spansOf(text)
	r.Minutes, r.HasMinutes = total(spans)
	r.Cue = cueOf(text, spans)
	r.Heats = measure.Heats(text)
	r.Station, r.HandsOn = t.place(governing(spans, strings.Index(text, r.Cue), r.Cue != ""), r)
	for i, q := range measure.CheckOvens(r.Heats) {
		if i > 0 {
			r.Reason += " "
		}
		r.Reason += q.Text
	}
	return r
}

// governing gives the byte at which the verb that matters is looked for,
// backwards: the longest stretch of time, else the cue, else −1 for the first
// verb.
func governing(spans []span, cue int, hasCue bool) int {
	at := -1
	longest := measure.Number{}
	for _, s := range spans {
		if s.counts && s.minutes.To.Cmp(longest) > 0 {
			longest, at = s.minutes.To, s.at
		}
	}
	if at < 0 && hasCue {
		at = cue
	}
	return at
}
