package script_test

import (
	"testing"
	"time"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/script"
)

// untold is a cut whose segments have no narration, only titles, with the steps
// of its recipe and where its segments truly begin.
type untold struct {
	captions script.Captions
	segments []episode.Segment
	steps    []string
	truth    []time.Duration // −1: it is not in the cut
}

// readUntold reads the cuts that are tuned on. Every nth segment loses its
// narration, counted from the last; 0 leaves it to all of them.
func readUntold(t *testing.T, nth int) (all []untold) {
	t.Helper()
	for _, c := range readCuts(t) {
		if !c.isTunedOn() {
			continue
		}
		u := untold{captions: c.captions, segments: c.segments, steps: c.steps}
		for i, s := range u.segments {
			if nth > 0 && (len(u.segments)-1-i)%nth == 0 {
				u.segments[i].Narration = ""
			}
			u.truth = append(u.truth, c.truth[s.Title])
		}
		all = append(all, u)
	}
	return all
}

// try adds segments to a score.
func (u untold) try(all *score, only func(i int) bool) {
	for i, s := range script.Align(u.segments, u.steps, u.captions) {
		if !only(i) {
			continue
		}
		isNear := s.Found == (u.truth[i] >= 0) && (!s.Found || (s.At-u.truth[i]).Abs() <= 3*time.Second)
		all.add(isNear, s)
	}
}

func every(int) bool { return true }

// Without narration nearly all segments are found, and the others asked about.
func TestSegmentsWithoutNarration(t *testing.T) {
	var whole, half score
	for _, u := range readUntold(t, 1) {
		u.try(&whole, every)
	}
	whole.check(t, "whole", 95, 1)
	for _, u := range readUntold(t, 2) {
		u.try(&half, func(i int) bool { return u.segments[i].Narration == "" })
	}
	half.check(t, "half", 94, 1)
}

// Where the pauses are cut out, the words alone must tell: less is found, but
// still hardly anything is said wrongly.
func TestSegmentsWithoutNarrationOrPauses(t *testing.T) {
	var n score
	for _, u := range readUntold(t, 1) {
		u.withoutPauses().try(&n, every)
	}
	n.check(t, "n", 80, 2)
}

func (u untold) withoutPauses() untold {
	squeezed, truth, at := script.Captions{}, make([]time.Duration, len(u.truth)), time.Second
	for _, cue := range u.captions.Cues {
		for i := range truth {
			if u.truth[i] == cue.Start {
				truth[i] = at
			}
		}
		length := cue.End - cue.Start
		cue.Start, cue.End = at, at+length
		at += length
		squeezed.Cues = append(squeezed.Cues, cue)
	}
	u.captions, u.truth = squeezed, truth
	return u
}

// A segment that was left out of the cut shifts none of the others silently.
func TestASegmentWithoutNarrationLeftOut(t *testing.T) {
	var others score
	for _, u := range readUntold(t, 1) {
		for k := 1; k < len(u.segments)-1; k++ {
			u.without(k).try(&others, func(i int) bool { return i != k })
		}
	}
	others.check(t, "others", 92, 1)
}

// without cuts a segment out.
func (u untold) without(k int) untold {
	from, to := u.truth[k], u.truth[k+1]
	left, truth := script.Captions{}, make([]time.Duration, len(u.truth))
	for _, cue := range u.captions.Cues {
		switch {
		case cue.Start >= to:
			cue.Start, cue.End = cue.Start-(to-from), cue.End-(to-from)
		case cue.Start >= from:
			continue
		}
		left.Cues = append(left.Cues, cue)
	}
	for i, at := range u.truth {
		switch {
		case i == k:
			at = -1
		case at >= to:
			at -= to - from
		}
		truth[i] = at
	}
	u.captions, u.truth = left, truth
	return u
}

// Two segments the other way round are mostly asked about; the recipe's steps
// let more of them be found than their titles alone.
func TestSegmentsWithoutNarrationReordered(t *testing.T) {
	var hinted, titled score
	for _, u := range readUntold(t, 1) {
		for k := 1; k+2 < len(u.segments); k++ {
			swapped := u.swapped(k)
			two := func(i int) bool { return i == k || i == k+1 }
			swapped.try(&hinted, two)
			swapped.steps = nil
			swapped.try(&titled, two)
		}
	}
	hinted.check(t, "hinted", 62, 6)
	if hinted.near <= titled.near {
		t.Errorf("%d found by title and steps, %d by title alone", hinted.near, titled.near)
	}
}

// swapped puts a segment behind the next one.
func (u untold) swapped(k int) untold {
	a, b, c := u.truth[k], u.truth[k+1], u.truth[k+2]
	moved := func(at time.Duration) time.Duration {
		switch {
		case at >= a && at < b:
			return at + c - b
		case at >= b && at < c:
			return at - (b - a)
		}
		return at
	}
	var before, first, second, behind, all []script.Cue
	for _, cue := range u.captions.Cues {
		start := cue.Start
		cue.Start, cue.End = moved(start), moved(start)+cue.End-start
		switch {
		case start < a:
			before = append(before, cue)
		case start < b:
			second = append(second, cue)
		case start < c:
			first = append(first, cue)
		default:
			behind = append(behind, cue)
		}
	}
	for _, part := range [][]script.Cue{before, first, second, behind} {
		all = append(all, part...)
	}
	truth := make([]time.Duration, len(u.truth))
	for i, at := range u.truth {
		truth[i] = moved(at)
	}
	u.captions, u.truth = script.Captions{Cues: all}, truth
	return u
}

// A segment without narration stands between its neighbours that have some.
func TestASegmentWithoutNarrationBetweenOthers(t *testing.T) {
	cut := talk(0, speech)
	segments := []episode.Segment{
		{Title: "Dough", Narration: "Sieve the flour into a basin with the salt. Rub the butter through until crumbs appear."},
		{Title: "Plums"},
		{Title: "Syrup", Narration: "Simmer the juices into syrup, brush the crust, arrange everything neatly."},
	}
	starts := script.Align(segments, []string{"Slice the plums, scatter with the sugar and roast."}, cut)
	if s := starts[1]; !s.Found || s.At <= starts[0].At || s.At >= starts[2].At {
		t.Errorf("plums at %v, dough at %v, syrup at %v", s.At, starts[0].At, starts[2].At)
	}
	for _, s := range script.Align([]episode.Segment{{Title: "Plums"}, {Title: " "}}, nil, cut) {
		if s.Found && (s.At < 0 || s.At > cut.End() || s.Confidence < 0 || s.Confidence > 1) {
			t.Errorf("start %+v", s)
		}
	}
}

func TestSteps(t *testing.T) {
	got := script.Steps(recipe.Reader{}.Read("Tart\n\nPastry\n200 g flour\n100 g butter\n\nFilling\n3 plums\n\nMethod\n1. Rub the butter into the flour.\n2. Slice the plums.\n"))
	if len(got) != 2 || !hasWords(got[0], "Rub", "Pastry", "flour") || !hasWords(got[1], "Slice", "Filling", "plums") {
		t.Errorf("Steps = %q", got)
	}
	if got := script.Steps(recipe.Recipe{}); len(got) != 0 {
		t.Errorf("no recipe gives steps %q", got)
	}
}

func hasWords(text string, words ...string) bool {
	have := map[string]bool{}
	for _, w := range script.WordsOf(text) {
		have[w] = true
	}
	for _, w := range words {
		if !have[w] {
			return false
		}
	}
	return true
}
