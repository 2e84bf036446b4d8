package script

import (
	"math"
	"testing"
	"time"

	"pgregory.net/rapid"

	"benchproof/kitchen/episode"
)

// smallParting is a cut of a few invented words, one a caption, to be parted
// among a few segments.
func smallParting(t *rapid.T) *parting {
	word := rapid.SampledFrom([]string{"dough", "plums", "oven", "syrup", "the", "cream"})
	text := func(name string, least, most int) string {
		var s string
		for _, w := range rapid.SliceOfN(word, least, most).Draw(t, name) {
			s += " " + w
		}
		return s
	}
	var segments []episode.Segment
	var looked []int
	for i := range rapid.IntRange(1, 4).Draw(t, "segments") {
		segments = append(segments, episode.Segment{Title: text("title", 0, 1), Narration: text("narration", 0, 3)})
		looked = append(looked, i)
	}
	var captions Captions
	at := time.Duration(0)
	for range rapid.IntRange(1, 5).Draw(t, "captions") {
		at += time.Duration(rapid.IntRange(0, 3).Draw(t, "pause")) * time.Second
		captions.Cues = append(captions.Cues, Cue{Start: at, End: at + time.Second, Text: text("words", 1, 3)})
		at += time.Second
	}
	steps := []string{text("step", 1, 3)}
	l := newLexicon(spokenWords(captions), segments, steps)
	return newParting(l, captions, segments, looked, newShowing(segments, steps))
}

// eachWay tries every way through the spots: which segment is under way at each,
// and what that weighs.
func (p *parting) eachWay(visit func(way []int, weight float32)) {
	n, k := len(p.spots), len(p.segments)
	held, enters := make([][]float32, n), make([][]float32, n)
	for i := range n {
		held[i], enters[i] = make([]float32, k), make([]float32, k)
		p.row(i, held[i], enters[i])
	}
	way := make([]int, n)
	var from func(i int, weight float32)
	from = func(i int, weight float32) {
		if i == n {
			visit(way, weight)
			return
		}
		for s := range k {
			way[i] = s
			w := weight + held[i][s]
			switch {
			case i == 0:
				w -= costSkip * float32(s)
			case way[i-1] != s:
				w += enters[i][s] - passing(s-way[i-1])
			}
			from(i+1, w)
		}
	}
	from(0, 0)
}

// The best way, and what it costs each segment to begin elsewhere, are those
// found by trying every way.
func TestWaysAreTheHeaviestOfAll(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := smallParting(t)
		w := p.walk()
		best := never
		p.eachWay(func(_ []int, weight float32) { best = max(best, weight) })
		if math.Abs(float64(w.best-best)) > 1e-3 {
			t.Fatalf("the heaviest way weighs %v, by trying all %v", w.best, best)
		}
		rivals := make([]float32, len(p.segments))
		for s := range rivals {
			rivals[s] = never
		}
		p.eachWay(func(way []int, weight float32) {
			for i, s := range way {
				begins := i == 0 || way[i-1] != s
				if b := w.begins[s]; begins && (b < 0 || (p.spots[i].at-p.spots[b].at).Abs() > farOff) {
					rivals[s] = max(rivals[s], weight)
				}
			}
		})
		for s, want := range rivals {
			if math.Abs(float64(w.rivals[s]-want)) > 1e-3 {
				t.Fatalf("segment %d beginning elsewhere weighs %v, by trying all %v", s, w.rivals[s], want)
			}
			if w.begins[s] < 0 {
				continue
			}
			if from, to := w.span(s); from >= to || to > len(p.lexicon.words) {
				t.Fatalf("segment %d has the words from %d to %d", s, from, to)
			}
			if c := w.confidence(s); c < 0 || c > 1 {
				t.Fatalf("segment %d has a confidence of %v", s, c)
			}
		}
	})
}

// A cut with more spots than can be weighed for so many segments keeps the
// likelier ones.
func TestSpotsAreThinnedToTheLikelier(t *testing.T) {
	var words []spokenWord
	var captions Captions
	for i := range 4000 {
		start := time.Duration(i) * time.Second
		captions.Cues = append(captions.Cues, Cue{Start: start, End: start + time.Second, Text: "word"})
		w := spokenWord{key: "word", cue: i}
		if i%10 == 5 {
			w.pause = 2 * time.Second
		}
		words = append(words, w)
	}
	if all := spotsOf(words, captions, 10); len(all) != 4000 {
		t.Errorf("%d spots, want all 4000", len(all))
	}
	const segments = 2000
	few := spotsOf(words, captions, segments)
	if len(few)*segments > mostCells+segments || few[0].word != 0 {
		t.Errorf("%d spots, the first at word %d", len(few), few[0].word)
	}
	paused := 0
	for _, s := range few {
		if words[s.word].pause > 0 {
			paused++
		}
	}
	if paused != 400 {
		t.Errorf("%d of the 400 pauses are kept", paused)
	}
}

func TestOpening(t *testing.T) {
	words := []spokenWord{
		{text: "flour", cue: 0, opens: true}, {text: "goes", cue: 0}, {text: "in", cue: 1, pause: time.Second},
		{text: "now", cue: 2, opens: true, pause: 2 * time.Second}, {text: "stir", cue: 3, pause: time.Minute},
	}
	last := -1.0
	for _, at := range []int{1, 0, 2, 3} { // from the least likely beginning to the likeliest
		if got := opening(words, at); got <= last {
			t.Errorf("%q weighs %v, not more than the one before", words[at].text, got)
		} else {
			last = got
		}
	}
	if long, longer := opening(words, 4), 3*perPause+forCue; math.Abs(long-longer) > 1e-9 {
		t.Errorf("a minute's silence weighs %v, want %v as three seconds", long, longer)
	}
}

func TestExpectedShares(t *testing.T) {
	spoken := episode.Segment{Narration: "one two three four five six seven eight nine ten one two three four five"} // 6 s
	tests := []struct {
		name     string
		segments []episode.Segment
		want     []float64
	}{
		{"nothing known", []episode.Segment{{}, {}, {}, {}}, []float64{0, 0.25, 0.5, 0.75}},
		{"planned", []episode.Segment{{PlannedSeconds: 30}, {PlannedSeconds: 60}, {PlannedSeconds: 30}}, []float64{0, 0.25, 0.75}},
		{"one as the mean of the others", []episode.Segment{{PlannedSeconds: 10}, {}, {PlannedSeconds: 30}}, []float64{0, 1.0 / 6, 0.5}},
		{"as long as the narration", []episode.Segment{spoken, {PlannedSeconds: 18}}, []float64{0, 0.25}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			all := make([]int, len(test.segments))
			for i := range all {
				all[i] = i
			}
			for i, got := range expectedShares(test.segments, all) {
				if math.Abs(got-test.want[i]) > 1e-9 {
					t.Errorf("segment %d is expected at %v, want %v", i, got, test.want[i])
				}
			}
		})
	}
}

func TestLexicon(t *testing.T) {
	segments := []episode.Segment{{Title: "Dough", Narration: "Knead the dough."}}
	words := spokenWords(Captions{Cues: []Cue{{End: time.Second, Text: "the dough, said Dee, kneading the dough"}}})
	l := newLexicon(words, segments, []string{"Bake it."})
	dough, knead := l.ids["dough"], l.ids["knead"]
	wantSaid := []int32{silent, dough, silent, unknown, knead, silent, dough}
	wantBefore := []int32{unknown, unknown, dough, dough, unknown, knead, knead}
	for i := range words {
		if l.said[i] != wantSaid[i] || l.before[i] != wantBefore[i] {
			t.Errorf("%q is %d after %d, want %d after %d", words[i].text, l.said[i], l.before[i], wantSaid[i], wantBefore[i])
		}
	}
	if l.weight[knead] <= l.weight[dough] || l.weight[dough] <= 0 || l.weight[l.ids["bake"]] != 0 {
		t.Errorf("weights %v of %v", l.weight, l.ids)
	}
	got := l.inOrder("Knead the dough, knead. Fold it.")
	if len(got) != 3 || got[0] != knead || got[1] != dough || got[2] != knead {
		t.Errorf("in order %v", got)
	}
}
