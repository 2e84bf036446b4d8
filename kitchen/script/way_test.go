package script

import (
	"math"
	"testing"
	"time"

	"pgregory.net/rapid"
)

// drawPlacing draws a small stretch with what speaks for what.
func drawPlacing(t *rapid.T) *placing {
	n, k := rapid.IntRange(1, 5).Draw(t, "spots"), rapid.IntRange(1, 4).Draw(t, "segments")
	row := rapid.SliceOfN(rapid.Float32Range(-3, 3), k, k)
	p := &placing{segments: make([]int, k), first: rapid.Bool().Draw(t, "first")}
	for i := range n {
		p.spots = append(p.spots, spot{word: i, at: time.Duration(i*2) * time.Second})
		p.held, p.enters = append(p.held, row.Draw(t, "held")), append(p.enters, row.Draw(t, "enters"))
	}
	return p
}

// weight is what a way weighs: the segment under way at each spot. Going on
// with a segment, it begins anew only where another was before.
func (p *placing) weight(way []int) float32 {
	if p.first && way[0] > 0 {
		return 2 * never
	}
	sum := -costSkip*float32(way[0]) + p.held[0][way[0]]
	for i := 1; i < len(way); i++ {
		if way[i] != way[i-1] {
			sum += p.enters[i][way[i]] - passing(way[i]-way[i-1])
		}
		sum += p.held[i][way[i]]
	}
	return sum
}

func (p *placing) eachWay(visit func(way []int, weight float32)) {
	way := make([]int, len(p.spots))
	for {
		visit(way, p.weight(way))
		i := 0
		for ; i < len(way); i++ {
			if way[i]++; way[i] < len(p.segments) {
				break
			}
			way[i] = 0
		}
		if i == len(way) {
			return
		}
	}
}

// The best way, and the best with each segment beginning at each spot, are those
// found by trying every way.
func TestWaysAreTheHeaviestOfAll(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawPlacing(t)
		w := p.walk()
		best := 2 * never
		began := map[[2]int]float32{}
		p.eachWay(func(way []int, weight float32) {
			best = max(best, weight)
			for i, s := range way {
				if i > 0 && way[i-1] == s {
					continue
				}
				if was, ok := began[[2]int{i, s}]; !ok || weight > was {
					began[[2]int{i, s}] = weight
				}
			}
		})
		if math.Abs(float64(w.best-best)) > 1e-3 {
			t.Fatalf("the heaviest way weighs %v, by trying all %v", w.best, best)
		}
		for at, weight := range began {
			if got := w.began[at[0]][at[1]]; weight > never/2 && math.Abs(float64(got-weight)) > 1e-3 {
				t.Fatalf("segment %d beginning at spot %d weighs %v, by trying all %v", at[1], at[0], got, weight)
			}
		}
		for s, begin := range w.begins() {
			if begin < 0 {
				continue
			}
			if c := w.confidence(s, begin); c < 0 || c > 1 || math.Abs(float64(w.began[begin][s]-best)) > 1e-3 {
				t.Fatalf("segment %d begins at spot %d (%v, confidence %v), and the heaviest way weighs %v", s, begin, w.began[begin][s], c, best)
			}
		}
	})
}

// A cut with more spots than can be weighed for so many segments keeps the
// likelier ones.
func TestSpotsAreThinnedToTheLikelier(t *testing.T) {
	a := &aligner{}
	var captions Captions
	for i := range 4000 {
		start := time.Duration(i) * time.Second
		captions.Cues = append(captions.Cues, Cue{Start: start, End: start + time.Second, Text: "word"})
		w := spokenWord{key: "word", cue: i}
		if i%10 == 5 {
			w.pause = 2 * time.Second
		}
		a.words = append(a.words, w)
	}
	if all := a.beginnings(captions, 0, 4000, 10); len(all) != 4000 {
		t.Errorf("%d spots, want all 4000", len(all))
	}
	few := a.beginnings(captions, 0, 4000, 2000)
	if len(few)*2000 > mostCells+2000 || few[0].word != 0 {
		t.Errorf("%d spots, the first at word %d", len(few), few[0].word)
	}
	paused := 0
	for _, s := range few {
		if a.words[s.word].pause > 0 {
			paused++
		}
	}
	if paused != 400 {
		t.Errorf("%d of the 400 pauses are kept", paused)
	}
}
