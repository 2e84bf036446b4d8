package script

import (
	"math"
	"slices"
	"strings"
	"time"

	"benchproof/kitchen/episode"
)

// LowConfidence is the confidence below which a place found in a cut should be
// asked about. In the invented cuts that nobody looks into that is one right
// place in ten, and nearly all wrong ones.
const LowConfidence = 0.8

// leastHeard is the share of a narration's words, by weight, of which a segment
// must let hear more to be in the cut at all. Nothing else tells where a script
// has nothing to do with the cut.
const leastHeard = 0.1

// mostSegments is how many can be looked for: far more than a cut has captions.
const mostSegments = math.MaxInt16

// Start is where one segment begins in a cut.
type Start struct {
	Segment    int           // index into the segments given
	Found      bool          // false: it is not in the cut as far as can be heard; the rest is zero then
	Cue        int           // index of the cue in which it begins
	At         time.Duration // start of that cue
	Confidence float64       // 0 to 1: how likely it begins within three seconds of At; see LowConfidence
}

// Align finds where each segment begins in a cut, by the words that its
// narration and the captions share. Words said besides, left out, said
// otherwise or misheard do no harm; segments may be missing or stand in another
// order. A segment without narration is told by its title and by the recipe's
// steps that it likely shows; steps are these, as Steps words them, nil for
// none.
//
// The starts are in the order of the segments. The time taken is in proportion
// to the words of the cut, to its captions times the segments, and to the square
// of its captions up to some thousands.
func Align(segments []episode.Segment, steps []string, captions Captions) []Start {
	starts := make([]Start, len(segments))
	looked := make([]int, len(segments))
	for i := range starts {
		starts[i].Segment, looked[i] = i, i
	}
	words := spokenWords(captions)
	if len(words) == 0 || len(segments) == 0 || len(segments) > mostSegments {
		return starts
	}
	lexicon := newLexicon(words, segments, steps)
	shows := newShowing(segments, steps)
	parts := newParting(lexicon, captions, segments, looked, shows).weigh().place()
	if unheard := parts.unheard(segments); len(unheard) > 0 && len(unheard) < len(segments) {
		looked = slices.DeleteFunc(looked, func(i int) bool { return slices.Contains(unheard, i) })
		parts = newParting(lexicon, captions, segments, looked, shows).weigh().place()
	}
	unheard := parts.unheard(segments)
	for k, begin := range parts.begins {
		if begin >= 0 && !slices.Contains(unheard, looked[k]) {
			cue := words[parts.spots[begin].word].cue
			starts[looked[k]] = Start{Segment: looked[k], Found: true, Cue: cue, At: captions.Cues[cue].Start, Confidence: parts.confidence(k)}
		}
	}
	return starts
}

func isNarrated(s episode.Segment) bool { return strings.TrimSpace(s.Narration) != "" }

// unheard lists the segments of whose narration too little is heard in the part
// that fell to them: they are not in the cut.
func (p *placed) unheard(segments []episode.Segment) []int {
	var all []int
	for k, i := range p.segments {
		if p.begins[k] < 0 || !isNarrated(segments[i]) {
			continue
		}
		heard := map[int32]bool{}
		from, to := p.span(k)
		for _, id := range p.lexicon.said[from:to] {
			heard[id] = true
		}
		got, possible := 0.0, 0.0
		for _, key := range keysOf(segments[i].Title + "\n" + segments[i].Narration) {
			id := p.lexicon.ids[key]
			possible += max(p.lexicon.weight[id], 1)
			if heard[id] {
				got += p.lexicon.weight[id]
			}
		}
		if got <= leastHeard*possible {
			all = append(all, i)
		}
	}
	return all
}
