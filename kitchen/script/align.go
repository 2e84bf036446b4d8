package script

import (
	"cmp"
	"math"
	"slices"
	"strings"
	"time"

	"benchproof/kitchen/episode"
)

// LowConfidence is the confidence below which a place found in a cut should be
// asked about.
const LowConfidence = 0.4

// Start is where one segment begins in a cut.
type Start struct {
	Segment    int           // index into the segments given
	Found      bool          // false: nothing of it was heard; the rest is zero then
	Cue        int           // index of the cue in which it begins
	At         time.Duration // start of that cue
	Confidence float64       // 0 to 1; below LowConfidence it is little more than a guess
}

// Align finds where each segment begins in a cut, by the words that its
// narration and the captions share. Words said besides, left out, said
// otherwise or misheard do no harm; segments may be missing or stand in another
// order. A segment without narration is looked for by its title and by hints,
// such as the steps it shows: hints[i] belongs to segments[i]; nil for none.
//
// The starts are in the order of the segments. The time taken is in proportion
// to the words of the cut and to those they share with the script.
func Align(segments []episode.Segment, hints []string, captions Captions) []Start {
	starts := make([]Start, len(segments))
	for i := range starts {
		starts[i].Segment = i
	}
	words := spokenWords(captions)
	if len(words) == 0 {
		return starts
	}
	a := newAligner(words, segments, hints)
	chosen := a.choose()
	for k, c := range chosen {
		at := a.begin(chosen, k)
		cue := words[at].cue
		starts[c.segment] = Start{Segment: c.segment, Found: true, Cue: cue, At: captions.Cues[cue].Start, Confidence: a.confidence(c)}
	}
	return starts
}

// aligner is one alignment under way.
type aligner struct {
	words    []spokenWord
	scripts  [][]string // the keys of each segment's words
	vocab    []map[string]float64
	weight   map[string]float64
	found    [][]chain
	possible []float64 // the weight a segment could earn at most
}

func newAligner(words []spokenWord, segments []episode.Segment, hints []string) *aligner {
	a := &aligner{words: words, weight: map[string]float64{}}
	places := map[string][]int{}
	for i, s := range segments {
		text := s.Title + "\n" + s.Narration
		if strings.TrimSpace(s.Narration) == "" && i < len(hints) {
			text += "\n" + hints[i]
		}
		var keys []string
		for _, w := range WordsOf(text) {
			key := alignKey(strings.ToLower(w))
			keys = append(keys, key)
			places[key] = nil
		}
		a.scripts = append(a.scripts, keys)
	}
	delete(places, "")
	for i, w := range words {
		if list, ok := places[w.key]; ok {
			places[w.key] = append(list, i)
		}
	}
	most := max(15, len(words)/120)
	n := float64(len(words))
	for key, list := range places {
		if len(list) > 0 {
			a.weight[key] = 3 * math.Log(1+n/float64(20*len(list))) / math.Log(1+n/20)
		}
		if len(list) > most {
			delete(places, key)
		}
	}
	for _, keys := range a.scripts {
		a.match(keys, places)
	}
	return a
}

// match finds the chains of one segment.
func (a *aligner) match(keys []string, places map[string][]int) {
	var pairs []pair
	vocab := map[string]float64{}
	possible := 0.0
	for in, key := range keys {
		if key == "" {
			continue
		}
		if w := a.weight[key]; w > 0 {
			vocab[key] = w
		}
		possible += max(a.weight[key], 1)
		for _, at := range places[key] {
			pairs = append(pairs, pair{in: in, at: at, weight: a.weight[key]})
		}
	}
	slices.SortFunc(pairs, func(x, y pair) int { return cmp.Or(cmp.Compare(x.at, y.at), cmp.Compare(y.in, x.in)) })
	a.found = append(a.found, chains(pairs, 5))
	a.vocab = append(a.vocab, vocab)
	a.possible = append(a.possible, possible)
}

// placed is a segment at one of its chains.
type placed struct {
	chain
	segment int
	rival   float64 // the score of the next best chain elsewhere
}

// costOrder is what a segment pays that comes before its forerunner in the cut.
const costOrder = 3.5

// choose picks a chain, or none, for every segment so that the scores are
// greatest and the order is kept where it can be, and gives them in the order
// of the cut. Dynamic programming over the segments and the chain chosen last.
func (a *aligner) choose() []placed {
	type option struct {
		chain
		segment int
		total   float64
		came    int
	}
	options := []option{{segment: -1, came: -1}}
	for s, list := range a.found {
		fixed := len(options)
		for _, c := range list {
			if c.score < 1.5 {
				continue
			}
			best := option{chain: c, segment: s, total: -1, came: 0}
			for o, before := range options[:fixed] {
				value := before.total + c.score
				if before.segment >= 0 {
					value -= 0.3 * float64(s-before.segment-1)
					switch overlap := min(c.to, before.to) - max(c.from, before.from); {
					case overlap > 0 && c.from <= before.from:
						value -= costOrder + c.score/2
					case overlap > 0:
						value -= min(c.score, before.score) * float64(overlap) / float64(min(c.to-c.from, before.to-before.from)+1)
					case c.from < before.from:
						value -= costOrder
					}
				}
				if value > best.total {
					best.total, best.came = value, o
				}
			}
			options = append(options, best)
		}
	}
	last := 0
	for o := range options {
		if options[o].total > options[last].total {
			last = o
		}
	}
	var chosen []placed
	for o := last; o > 0; o = options[o].came {
		p := placed{chain: options[o].chain, segment: options[o].segment}
		for _, c := range a.found[p.segment] {
			if c.from != p.from {
				p.rival = max(p.rival, c.score)
			}
		}
		chosen = append(chosen, p)
	}
	slices.SortFunc(chosen, func(x, y placed) int { return cmp.Compare(x.from, y.from) })
	return chosen
}

// confidence is high where much of the script was heard and nowhere else as
// much.
func (a *aligner) confidence(p placed) float64 {
	heard := min(p.words/max(a.possible[p.segment]*0.5, 4), 1)
	alone := 1 - 0.7*min(p.rival/p.score, 1)
	return math.Round(100*heard*(0.35+0.65*alone)) / 100
}
