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
// order. A segment without narration is looked for between the others, by its
// title and by the recipe's steps that it likely shows; steps are these, as
// Steps words them, nil for none.
//
// The starts are in the order of the segments. The time taken is in proportion
// to the words of the cut and to those they share with the script; for segments
// without narration, to the captions times these segments.
func Align(segments []episode.Segment, steps []string, captions Captions) []Start {
	starts := make([]Start, len(segments))
	for i := range starts {
		starts[i].Segment = i
	}
	words := spokenWords(captions)
	if len(words) == 0 {
		return starts
	}
	a := newAligner(words, segments, steps)
	narrated := a.findNarrated(segments)
	for _, f := range append(narrated, a.findOthers(segments, steps, captions, narrated)...) {
		cue := words[f.word].cue
		starts[f.segment] = Start{Segment: f.segment, Found: true, Cue: cue, At: captions.Cues[cue].Start, Confidence: f.confidence}
	}
	return starts
}

// found is a segment with the word of the cut with which it begins.
type found struct {
	segment    int
	word       int
	confidence float64
}

func isNarrated(s episode.Segment) bool { return strings.TrimSpace(s.Narration) != "" }

// findNarrated finds the segments with narration, in the order of the cut.
func (a *aligner) findNarrated(segments []episode.Segment) []found {
	for i, s := range segments {
		if isNarrated(s) {
			a.match(i, s.Title+"\n"+s.Narration)
		}
	}
	var all []found
	chosen := a.choose()
	for k, c := range chosen {
		all = append(all, found{a.narrated[c.segment], a.begin(chosen, k), a.confidence(c)})
	}
	return all
}

// aligner is one alignment under way. Segments are counted among those with
// narration.
type aligner struct {
	words    []spokenWord
	said     map[string][]int   // where the cut says a word, unless it is everywhere
	weight   map[string]float64 // of the words of script and steps that the cut says
	narrated []int              // indexes in the running order
	vocab    []map[string]float64
	chains   [][]chain
	possible []float64 // the weight a segment could earn at most
}

func newAligner(words []spokenWord, segments []episode.Segment, steps []string) *aligner {
	a := &aligner{words: words, weight: map[string]float64{}, said: map[string][]int{}}
	texts := slices.Clone(steps)
	for _, s := range segments {
		texts = append(texts, s.Title, s.Narration)
	}
	for _, text := range texts {
		for _, key := range keysOf(text) {
			a.said[key] = nil
		}
	}
	for i, w := range words {
		if list, ok := a.said[w.key]; ok {
			a.said[w.key] = append(list, i)
		}
	}
	most := max(15, len(words)/120)
	n := float64(len(words))
	for key, list := range a.said {
		if len(list) > 0 {
			a.weight[key] = 3 * math.Log(1+n/float64(20*len(list))) / math.Log(1+n/20)
		}
		if len(list) > most {
			delete(a.said, key)
		}
	}
	return a
}

// match finds the chains of the next segment with narration.
func (a *aligner) match(segment int, text string) {
	var pairs []pair
	vocab := map[string]float64{}
	possible := 0.0
	for in, word := range WordsOf(text) {
		key := alignKey(strings.ToLower(word))
		if key == "" {
			continue
		}
		if w := a.weight[key]; w > 0 {
			vocab[key] = w
		}
		possible += max(a.weight[key], 1)
		for _, at := range a.said[key] {
			pairs = append(pairs, pair{in: in, at: at, weight: a.weight[key]})
		}
	}
	slices.SortFunc(pairs, func(x, y pair) int { return cmp.Or(cmp.Compare(x.at, y.at), cmp.Compare(y.in, x.in)) })
	a.narrated = append(a.narrated, segment)
	a.chains = append(a.chains, chains(pairs, 5))
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
	for s, list := range a.chains {
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
		for _, c := range a.chains[p.segment] {
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
