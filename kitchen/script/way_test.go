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
// and how likely that is among the others.
func (w *ways) eachWay(visit func(way []int, likely float64)) {
	n, k := len(w.spots), len(w.segments)
	held, enters := make([][]float64, n), make([][]float64, n)
	for i := range n {
		held[i], enters[i] = make([]float64, k), make([]float64, k)
		w.row(i, held[i], enters[i])
	}
	way := make([]int, n)
	var from func(i, since int, sum float64)
	from = func(i, since int, sum float64) {
		if i > 0 && (i == n || way[i] != way[i-1]) {
			sum += w.lengthOf(way[i-1], since, i)
		}
		switch {
		case i == n:
			visit(way, sum+math.Log(w.edge(k-1-way[n-1])))
			return
		case i == 0:
			sum += math.Log(w.edge(way[0]))
		case way[i] != way[i-1]:
			sum, since = sum+calm*enters[i][way[i]]+w.goingOn(way[i-1], way[i]), i
		}
		sum += calm * held[i][way[i]]
		for s := range k {
			if i+1 < n {
				way[i+1] = s
			}
			if i+1 < n || s == 0 {
				from(i+1, since, sum)
			}
		}
	}
	for s := range k {
		way[0] = s
		from(0, 0, 0)
	}
}

func (w *ways) goingOn(from, to int) float64 {
	if by := to - from; by >= 1 && by <= oneByOne {
		return math.Log(w.passing[by])
	}
	return math.Log(w.passing[0])
}

func (w *ways) lengthOf(k, from, to int) float64 {
	l := w.lasting[k]
	if step := int((w.seconds[to] - w.seconds[from]) / w.step); step < len(l.odds) {
		return math.Log(l.odds[step])
	}
	return math.Log(l.farther)
}

// How likely each segment begins at each spot is what it is by trying every way.
func TestWaysAreThoseOfAll(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w := smallParting(t).weighAll(costJump)
		all, most := 0.0, math.Inf(-1)
		w.eachWay(func(_ []int, likely float64) { most = max(most, likely) })
		want := make([][]float64, len(w.segments))
		for k := range want {
			want[k] = make([]float64, len(w.spots))
		}
		w.eachWay(func(way []int, likely float64) {
			likely = math.Exp(likely - most)
			all += likely
			for i, k := range way {
				if i == 0 || way[i-1] != k {
					want[k][i] += likely
				}
			}
		})
		for k := range want {
			for i, likely := range want[k] {
				if got := w.began[k][i]; math.Abs(got-likely/all) > 1e-6 {
					t.Fatalf("segment %d begins at spot %d with a likelihood of %v, by trying all %v", k, i, got, likely/all)
				}
			}
		}
	})
}

// What is placed stands where it may, each in its own place.
func TestPlaces(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := smallParting(t).weigh().place()
		taken := map[int]bool{}
		for k, b := range p.begins {
			if b < 0 {
				continue
			}
			if taken[b] {
				t.Fatalf("two segments begin at spot %d", b)
			}
			taken[b] = true
			if from, to := p.span(k); from >= to || to > len(p.lexicon.words) {
				t.Fatalf("segment %d has the words from %d to %d", k, from, to)
			}
			if c := p.confidence(k); c < 0 || c > 1 {
				t.Fatalf("segment %d has a confidence of %v", k, c)
			}
		}
	})
}

// A cut with more spots than can be weighed for so many segments keeps the
// likelier ones.
func TestSpotsAreThinnedToTheLikelier(t *testing.T) {
	var words []spokenWord
	var captions Captions
	for i := range 1500 {
		start := time.Duration(i) * time.Second
		captions.Cues = append(captions.Cues, Cue{Start: start, End: start + time.Second, Text: "word"})
		w := spokenWord{key: "word", cue: i}
		if i%10 == 5 {
			w.pause = 2 * time.Second
		}
		words = append(words, w)
	}
	if all := spotsOf(words, captions, 10); len(all) != 1500 {
		t.Errorf("%d spots, want all 1500", len(all))
	}
	const segments = 1000
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
	if paused != 150 {
		t.Errorf("%d of the 150 pauses are kept", paused)
	}
}

// A word that opens something new and a long silence speak for a beginning, one besides the
// other.
func TestWeighOpenings(t *testing.T) {
	last := math.Inf(-1)
	for _, begin := range []spokenWord{
		{text: "and", opens: true}, {text: "okay", opens: true}, {text: "okay", opens: true, pause: 2 * time.Second},
	} {
		begin.cue = 1
		words := []spokenWord{
			{text: "stir", cue: 0, opens: true, pause: time.Second}, {text: "it", cue: 0}, {text: "in", cue: 0},
			begin, {text: "the", cue: 1}, {text: "butter", cue: 1},
		}
		spots := []spot{{word: 0}, {word: 3}}
		if weighOpenings(words, spots, 1); spots[1].opening <= last {
			t.Errorf("%+v weighs %v, not more than the one before, %v", begin, spots[1].opening, last)
		}
		last = spots[1].opening
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
	l := newLexicon(words, segments, []string{"Grill it."})
	dough, knead := l.ids["dough"], l.ids["knead"]
	wantSaid := []int32{silent, dough, silent, unknown, knead, silent, dough}
	wantBefore := []int32{unknown, unknown, dough, dough, unknown, knead, knead}
	for i := range words {
		if l.said[i] != wantSaid[i] || l.before[i] != wantBefore[i] {
			t.Errorf("%q is %d after %d, want %d after %d", words[i].text, l.said[i], l.before[i], wantSaid[i], wantBefore[i])
		}
	}
	if l.weight[knead] <= l.weight[dough] || l.weight[dough] <= 0 || l.weight[l.ids["grill"]] != 0 {
		t.Errorf("weights %v of %v", l.weight, l.ids)
	}
	got := l.inOrder("Knead the dough, knead. Fold it.")
	if len(got) != 3 || got[0] != knead || got[1] != dough || got[2] != knead {
		t.Errorf("in order %v", got)
	}
}
