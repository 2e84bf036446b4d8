package script

import (
	"math"
	"testing"
	"time"

	"benchproof/kitchen/episode"
)

// began are ways with a spot each second; a row is how likely one segment begins
// at each.
func began(rows ...[]float64) *ways {
	w := &ways{parting: &parting{lexicon: &lexicon{}}}
	for i := range rows[0] {
		w.spots = append(w.spots, spot{word: i, at: time.Duration(i) * time.Second})
		w.lexicon.words = append(w.lexicon.words, spokenWord{})
	}
	for k, row := range rows {
		w.segments = append(w.segments, k)
		w.began = append(w.began, append(row, 0))
	}
	return w
}

func TestPlace(t *testing.T) {
	tests := []struct {
		name   string
		began  [][]float64
		begins []int
		sure   []float64
	}{
		{"where it most likely begins", [][]float64{{0.1, 0, 0, 0, 0, 0.9}}, []int{5}, []float64{0.9}},
		{"around there counts too", [][]float64{{0.4, 0, 0, 0, 0, 0, 0, 0.35, 0.25, 0}}, []int{7}, []float64{0.6}},
		{"not between two", [][]float64{{0.3, 0, 0, 0, 0, 0.6, 0}}, []int{5}, []float64{0.6}},
		{"the likelier of two near each other", [][]float64{{0, 0.3, 0.6, 0}}, []int{2}, []float64{0.9}},
		{"likelier nowhere", [][]float64{{0.3, 0, 0, 0, 0, 0.1}}, []int{-1}, []float64{0}},
		{"first where it is twice", [][]float64{{0, 0.97, 0, 0, 0, 0, 0, 0, 0, 0, 1}}, []int{1}, []float64{0.97}},
		{"later where it is much surer", [][]float64{{0, 0.5, 0, 0, 0, 0, 0, 0, 0, 0, 1}}, []int{10}, []float64{1}},
		{"one of two in one place", [][]float64{{0, 0.6}, {0, 0.9}}, []int{-1, 1}, []float64{0.6, 0.9}},
		{"the first of two as sure in one place", [][]float64{{0, 0.9}, {0, 0.9}}, []int{1, -1}, []float64{0.9, 0.9}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			p := began(test.began...).place()
			for k := range test.began {
				if p.begins[k] != test.begins[k] || math.Abs(p.sure[k]-test.sure[k]) > 1e-9 {
					t.Errorf("segment %d begins at %d, sure by %v, want %d by %v", k, p.begins[k], p.sure[k], test.begins[k], test.sure[k])
				}
			}
		})
	}
}

// The words of a segment are those up to the next that begins, whichever it is.
func TestSpan(t *testing.T) {
	p := began([]float64{1, 0, 0, 0, 0}, []float64{0, 0, 0, 0, 1}, []float64{0, 0, 1, 0, 0}, []float64{0, 0, 0, 0, 0}).place()
	for k, want := range [][2]int{{0, 2}, {4, 5}, {2, 4}} {
		if from, to := p.span(k); from != want[0] || to != want[1] {
			t.Errorf("segment %d has the words from %d to %d, want %v", k, from, to, want)
		}
	}
	if p.begins[3] != -1 {
		t.Errorf("what begins nowhere begins at %d", p.begins[3])
	}
}

// A segment is likeliest to last as long as expected, and however far off it is,
// never less likely than the farthest.
func TestLasting(t *testing.T) {
	l := newLasting(60, leastStep)
	most := int(60 / leastStep)
	for step, odds := range l.odds {
		if odds > l.odds[most] || odds < l.farther-1e-12 {
			t.Errorf("%v s has odds of %v", float64(step)*leastStep, odds)
		}
	}
	if math.Abs(l.odds[most]-1) > 1e-9 {
		t.Errorf("the expected length has odds of %v, want 1", l.odds[most])
	}
	if last := l.odds[len(l.odds)-1]; last > 2*l.farther {
		t.Errorf("the longest in the table has odds of %v, farther ones %v", last, l.farther)
	}
	for _, step := range []float64{leastStep, 3600} {
		if none := newLasting(0, step); len(none.odds) == 0 || len(none.odds) > 100 {
			t.Errorf("a segment expected to take no time, by steps of %v s, has %d lengths", step, len(none.odds))
		}
	}
}

// A cut whose times are absurd takes no more memory than a long one.
func TestLengthsOfAnAbsurdCut(t *testing.T) {
	year := 365 * 24 * time.Hour
	captions := Captions{Cues: []Cue{{Start: 0, End: time.Second, Text: "dough"}, {Start: year, End: year + time.Second, Text: "plums"}}}
	segments := []episode.Segment{{Title: "Dough"}, {Title: "Plums"}}
	l := newLexicon(spokenWords(captions), segments, nil)
	w := newParting(l, captions, segments, []int{0, 1}, newShowing(segments, nil)).weigh()
	for k, lasting := range w.lasting {
		if len(lasting.odds) > 5*mostSteps {
			t.Errorf("segment %d has %d lengths", k, len(lasting.odds))
		}
	}
}
