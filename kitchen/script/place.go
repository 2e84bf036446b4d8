package script

import (
	"math"
	"slices"
	"time"

	"benchproof/kitchen/episode"
)

// Segments without narration are told by their titles and the steps they show.
// That says little of a single word, so that they are found all at once: a
// stretch of the cut is parted among them so that its words go to segments that
// hold them, and each begins where something new seems to begin, in its order
// and about where its length lets expect it. Weights are those of begin.go.
const (
	perHeld      = 0.4 // of a word's weight, where the segment holds it
	titleHeld    = 0.6 // how surely a segment's words are in its title
	perAnnounced = 0.4 // of a title word's weight, said as the segment begins
	announcing   = 20  // words in which that is
	likelier     = 2   // spots a segment at which a beginning costs nothing
	perAstray    = 0.3 // the square of how far off its expected beginning, in deviations
	deviation    = 0.5 // of a segment's length, as a share of it
)

// mostCells bounds spots × segments, and with them the memory taken.
const mostCells = 1 << 20

// spot is somewhere that a segment may begin.
type spot struct {
	word int // index in the cut
	at   time.Duration
}

// placing parts one stretch of a cut among segments.
type placing struct {
	a        *aligner
	segments []int // indexes in the running order, in its order
	first    bool  // the first of them begins with the stretch for sure
	spots    []spot
	end      int         // of the stretch in words, excluded
	held     [][]float32 // for each spot and segment: the words up to the next spot
	enters   [][]float32 // and what speaks for beginning there
}

// beginnings lists where segments may begin between two words: with a caption or a
// sentence. Where they are too many for so many segments, the likelier ones.
func (a *aligner) beginnings(captions Captions, from, to, segments int) []spot {
	var all []spot
	for i := from; i < to; i++ {
		if w := a.words[i]; i == from || w.opens || a.words[i-1].cue != w.cue {
			all = append(all, spot{i, captions.Cues[w.cue].Start})
		}
	}
	each := (len(all)*segments + mostCells - 1) / mostCells
	if each < 2 {
		return all
	}
	kept := slices.Clone(all[:1])
	for i := 1; i < len(all); i += each {
		best := all[i]
		for _, p := range all[i:min(i+each, len(all))] {
			if a.opening(p.word) > a.opening(best.word) {
				best = p
			}
		}
		kept = append(kept, best)
	}
	return kept
}

// heldBy is a segment that holds a word, and the weight it has there.
type heldBy struct {
	segment int // index in the placing
	weight  float64
}

// weigh fills in what each spot and the words behind it say of each segment.
func (p *placing) weigh(all []episode.Segment, shows showing, until time.Duration) {
	holders, titles := p.holders(all, shows)
	expected := expectedShares(all, p.segments)
	begin := p.spots[0].at
	length := max(float64(until-begin), 1)
	n := float64(len(p.segments))
	usual := p.usualOpening()
	for i, here := range p.spots {
		next := p.end
		if i+1 < len(p.spots) {
			next = p.spots[i+1].word
		}
		held := make([]float32, len(p.segments))
		for _, w := range p.a.words[here.word:next] {
			for _, h := range holders[w.key] {
				held[h.segment] += float32(perHeld * h.weight)
			}
		}
		enters := make([]float32, len(p.segments))
		opening := p.a.opening(here.word) - usual
		for s, share := range expected {
			astray := (float64(here.at-begin)/length - share) / (deviation * math.Sqrt(max(share*(1-share), 0.01)/n))
			enters[s] = float32(opening - perAstray*astray*astray)
		}
		p.announced(enters, titles, here.word)
		p.held, p.enters = append(p.held, held), append(p.enters, enters)
	}
}

// usualOpening is what speaks for something new at the least likely of the
// likelier spots: pauses are long in one cut and cut out of another.
func (p *placing) usualOpening() float64 {
	openings := make([]float64, len(p.spots))
	for i, here := range p.spots {
		openings[i] = p.a.opening(here.word)
	}
	slices.Sort(openings)
	return openings[max(len(openings)-likelier*len(p.segments), 0)]
}

// announced adds what is said of titles in the words behind a spot, each word
// once.
func (p *placing) announced(enters []float32, titles map[string][]heldBy, word int) {
	behind := p.a.words[word:min(p.end, word+announcing)]
	for i, w := range behind {
		if len(titles[w.key]) == 0 || saidBefore(behind[:i], w.key) {
			continue
		}
		for _, h := range titles[w.key] {
			enters[h.segment] += float32(perAnnounced * h.weight)
		}
	}
}

func saidBefore(words []spokenWord, key string) bool {
	for _, w := range words {
		if w.key == key {
			return true
		}
	}
	return false
}

// holders lists by word which segments hold it, and which have it in their
// title.
func (p *placing) holders(all []episode.Segment, shows showing) (holders, titles map[string][]heldBy) {
	holders, titles = map[string][]heldBy{}, map[string][]heldBy{}
	for s, g := range p.segments {
		surely := map[string]float64{}
		for _, key := range keysOf(all[g].Title) {
			surely[key] = titleHeld
			titles[key] = append(titles[key], heldBy{s, p.a.weight[key]})
		}
		if isNarrated(all[g]) {
			for _, key := range keysOf(all[g].Narration) {
				surely[key] = 1
			}
		} else {
			shows.add(surely, g)
		}
		for key, sure := range surely {
			if w := p.a.weight[key]; w > 0 {
				holders[key] = append(holders[key], heldBy{s, sure * w})
			}
		}
	}
	return holders, titles
}

// expectedShares is where segments begin, as shares of them all, by their
// planned length or their narration's; those without count as the mean.
func expectedShares(all []episode.Segment, segments []int) []float64 {
	lengths, known, whole := make([]float64, len(segments)), 0, 0.0
	for s, g := range segments {
		lengths[s] = float64(max(all[g].PlannedSeconds, 0))
		if lengths[s] == 0 {
			lengths[s] = float64(Seconds(all[g].Narration, DefaultPace))
		}
		if lengths[s] > 0 {
			known++
			whole += lengths[s]
		}
	}
	mean := 1.0
	if known > 0 {
		mean = whole / float64(known)
	}
	whole += mean * float64(len(segments)-known)
	at, shares := 0.0, make([]float64, len(segments))
	for s, length := range lengths {
		shares[s] = at / whole
		if length == 0 {
			length = mean
		}
		at += length
	}
	return shares
}
