package script

import (
	"math"
	"slices"
	"time"

	"benchproof/kitchen/episode"
)

// A segment is told by its narration, and one without by its title and the
// steps it shows. A single word says little, and so all segments are found at
// once: the cut is parted among them so that its words go to segments that hold
// them, and each begins where something new seems to begin, in its order and
// about where the lengths of the others let expect it. Weights are those of
// spot.go.
const (
	perHeld      = 0.4 // of a word's weight, where the segment holds it
	perPair      = 3.0 // two words that follow each other as in the narration
	titleHeld    = 0.6 // how surely a segment's words are in its title
	perAnnounced = 0.4 // of a title word's weight, said as the segment begins
	firstWords   = 8   // of a narration: they announce the segment too
	perFirst     = 0.1 // of their weight
	announcing   = 20  // words in which that is
	likelier     = 2   // spots a segment at which a beginning costs nothing
	perAstray    = 0.3 // the square of how far off its expected beginning, in deviations
	farthest     = 8   // such squares at most: the order may be another one
	deviation    = 0.5 // of a segment's length, as a share of it
)

// mostCells bounds spots × segments, and with them the memory taken: six bytes
// each.
const mostCells = 1 << 20

// parting is a cut to be parted among segments.
type parting struct {
	lexicon  *lexicon
	segments []int // indexes in the running order, in its order
	spots    []spot
	until    time.Duration // the end of the cut
	usual    float64       // what speaks for something new at the least likely of the likelier spots
	expected []float64     // where each segment is expected to begin, as a share of the cut
	strict   []float64     // the inverse of how far off that each may be

	holders    [][]holder            // by word
	pairs      map[[2]int32][]holder // by two words that follow each other
	announcers [][]holder            // by word
}

// holder is a segment that holds a word, and what that weighs.
type holder struct {
	segment int // index in the parting
	weight  float32
}

func newParting(l *lexicon, captions Captions, all []episode.Segment, segments []int, shows showing) *parting {
	p := &parting{lexicon: l, segments: segments, spots: spotsOf(l.words, captions, len(segments)), until: captions.End()}
	p.usual = p.usualOpening()
	p.expected = expectedShares(all, segments)
	for _, share := range p.expected {
		p.strict = append(p.strict, math.Sqrt(float64(len(segments))/max(share*(1-share), 0.01))/deviation)
	}
	p.holders, p.announcers = make([][]holder, len(l.ids)), make([][]holder, len(l.ids))
	p.pairs = map[[2]int32][]holder{}
	for k, i := range segments {
		p.hold(k, all[i], i, shows)
	}
	return p
}

// usualOpening is low where pauses are cut out, and high where people breathe.
func (p *parting) usualOpening() float64 {
	openings := make([]float64, len(p.spots))
	for i, s := range p.spots {
		openings[i] = s.opening
	}
	slices.Sort(openings)
	return openings[max(len(openings)-likelier*len(p.segments), 0)]
}

// hold enters what the k-th segment of the parting holds.
func (p *parting) hold(k int, s episode.Segment, index int, shows showing) {
	surely, announces := map[string]float64{}, map[int32]float64{}
	for _, key := range keysOf(s.Title) {
		surely[key] = titleHeld
		announces[p.lexicon.ids[key]] = perAnnounced
	}
	if isNarrated(s) {
		for _, key := range keysOf(s.Narration) {
			surely[key] = 1
		}
		p.follow(k, p.lexicon.inOrder(s.Narration), announces)
	} else {
		shows.add(surely, index)
	}
	for key, sure := range surely {
		if id, ok := p.lexicon.ids[key]; ok {
			p.holders[id] = append(p.holders[id], holder{k, float32(perHeld * sure * p.lexicon.weight[id])})
		}
	}
	for id, share := range announces {
		p.announcers[id] = append(p.announcers[id], holder{k, float32(share * p.lexicon.weight[id])})
	}
}

// follow enters which words of a narration follow each other, and its first.
func (p *parting) follow(k int, narration []int32, announces map[int32]float64) {
	met := map[[2]int32]bool{}
	for i, id := range narration {
		if i < firstWords && announces[id] == 0 {
			announces[id] = perFirst
		}
		if i == 0 {
			continue
		}
		if two := [2]int32{narration[i-1], id}; !met[two] {
			met[two] = true
			p.pairs[two] = append(p.pairs[two], holder{k, perPair})
		}
	}
}

// row weighs what the words from the i-th spot up to the next say of each
// segment, and what speaks for its beginning there.
func (p *parting) row(i int, held, enters []float32) {
	clear(held)
	here, next := p.spots[i], len(p.lexicon.words)
	if i+1 < len(p.spots) {
		next = p.spots[i+1].word
	}
	for w := here.word; w < next; w++ {
		if id := p.lexicon.said[w]; id >= 0 {
			add(held, p.holders[id])
			add(held, p.pairs[[2]int32{p.lexicon.before[w], id}])
		}
	}
	begin := p.spots[0].at
	share := float64(here.at-begin) / max(float64(p.until-begin), 1)
	for k, expected := range p.expected {
		astray := (share - expected) * p.strict[k]
		enters[k] = float32(here.opening - p.usual - perAstray*min(astray*astray, farthest))
	}
	said := p.lexicon.said[here.word:min(here.word+announcing, len(p.lexicon.words))]
	for w, id := range said {
		if id >= 0 && len(p.announcers[id]) > 0 && !slices.Contains(said[:w], id) {
			add(enters, p.announcers[id])
		}
	}
}

func add(row []float32, holders []holder) {
	for _, h := range holders {
		row[h.segment] += h.weight
	}
}

// expectedShares is where segments begin, as shares of them all, by their
// planned length or their narration's; those without count as the mean.
func expectedShares(all []episode.Segment, segments []int) []float64 {
	lengths, known, whole := make([]float64, len(segments)), 0, 0.0
	for k, i := range segments {
		lengths[k] = float64(max(all[i].PlannedSeconds, 0))
		if lengths[k] == 0 {
			lengths[k] = float64(Seconds(all[i].Narration, DefaultPace))
		}
		if lengths[k] > 0 {
			known++
			whole += lengths[k]
		}
	}
	mean := 1.0
	if known > 0 {
		mean = whole / float64(known)
	}
	whole += mean * float64(len(segments)-known)
	at, shares := 0.0, make([]float64, len(segments))
	for k, length := range lengths {
		shares[k] = at / whole
		if length == 0 {
			length = mean
		}
		at += length
	}
	return shares
}
