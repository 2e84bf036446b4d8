package script

import (
	"math"
	"slices"
	"strings"
	"time"

	"benchproof/kitchen/episode"
)

// A segment is told by its narration, and one without by its title and the
// steps it shows. A single word says little, and so all segments are found at
// once: the cut is parted among them so that its words go to segments that hold
// them, and each begins where something new seems to begin, in its order and
// about where and as long as the lengths of the others let expect.

// mostCells bounds spots × segments, and with them the memory taken: fifty bytes
// each.
const mostCells = 1 << 18

// parting is a cut to be parted among segments.
type parting struct {
	lexicon  *lexicon
	segments []int // indexes in the running order, in its order
	spots    []spot
	until    time.Duration // the end of the cut
	expected []float64     // where each segment is expected to begin, as a share of the cut
	strict   []float64     // the inverse of how far off that each may be

	holders [][]holder             // by word
	pairs   map[[2]int32][]holder  // by two words that follow each other
	threes  map[[3]string][]holder // by three
	titles  [][]holder             // by word: whose title it announces
	starts  [][]holder             // by word: what it shows to have begun
}

// holder is a segment that holds a word, and what that weighs.
type holder struct {
	segment int // index in the parting
	weight  float64
}

func newParting(l *lexicon, captions Captions, all []episode.Segment, segments []int, shows showing) *parting {
	p := &parting{
		lexicon: l, segments: segments, spots: spotsOf(l.words, captions, len(segments)), until: captions.End(),
		expected: expectedShares(all, segments), pairs: map[[2]int32][]holder{}, threes: map[[3]string][]holder{},
		holders: make([][]holder, len(l.ids)), titles: make([][]holder, len(l.ids)), starts: make([][]holder, len(l.ids)),
	}
	for _, share := range p.expected {
		p.strict = append(p.strict, math.Sqrt(float64(len(segments))/max(share*(1-share), 0.01))/deviation)
	}
	for k, i := range segments {
		if s := all[i]; isNarrated(s) {
			p.holdNarration(k, s)
		} else {
			p.holdSteps(k, s, i, shows)
		}
		p.holdTitle(k, all[i])
		p.followAll(k, all[i])
	}
	p.shareThrees()
	return p
}

// enter puts a segment among the holders of a word, by its weight.
func (p *parting) enter(list [][]holder, key string, segment int, share float64) {
	if id, ok := p.lexicon.ids[key]; ok && share > 0 {
		list[id] = append(list[id], holder{segment, share * p.lexicon.weight[id]})
	}
}

func (p *parting) holdTitle(k int, s episode.Segment) {
	for _, key := range keysOf(s.Title) {
		p.enter(p.titles, key, k, perAnnounced)
		if !isNarrated(s) {
			p.enter(p.holders, key, k, perTitle)
		}
	}
}

func (p *parting) holdNarration(k int, s episode.Segment) {
	for _, key := range keysOf(s.Narration) {
		p.enter(p.holders, key, k, perHeld)
		p.enter(p.starts, key, k, perSoon)
	}
	follow(p.pairs, p.lexicon.inOrder(s.Narration), k)
}

// holdSteps enters the words of the steps that a segment without narration
// likely shows, so far as they are not in its title.
func (p *parting) holdSteps(k int, s episode.Segment, index int, shows showing) {
	likely, title := map[string]float64{}, keysOf(s.Title)
	shows.add(likely, index)
	for key, sure := range likely {
		if !slices.Contains(title, key) {
			p.enter(p.holders, key, k, perStep*sure)
			p.enter(p.starts, key, k, perSoonStep*sure)
		}
	}
}

// follow enters which words of a narration follow each other.
func follow(pairs map[[2]int32][]holder, narration []int32, k int) {
	met := map[[2]int32]bool{}
	for i := 1; i < len(narration); i++ {
		if two := [2]int32{narration[i-1], narration[i]}; !met[two] {
			met[two] = true
			pairs[two] = append(pairs[two], holder{k, perPair})
		}
	}
}

// followAll enters which three words follow each other, those that say nothing
// by themselves and numbers among them.
func (p *parting) followAll(k int, s episode.Segment) {
	text := WordsOf(strings.ToLower(s.Title + "\n" + s.Narration))
	met := map[[3]string]bool{}
	for i := 2; i < len(text); i++ {
		if three := [3]string(text[i-2 : i+1]); !met[three] {
			met[three] = true
			p.threes[three] = append(p.threes[three], holder{k, perThree})
		}
	}
}

// shareThrees shares what three words weigh among the times that they are said.
func (p *parting) shareThrees() {
	times := map[[3]string]float64{}
	for i := 2; i < len(p.lexicon.words); i++ {
		if three := p.lexicon.three(i); len(p.threes[three]) > 0 {
			times[three]++
		}
	}
	for three, holders := range p.threes {
		for h := range holders {
			holders[h].weight /= max(times[three], 1)
		}
	}
}

// row weighs what the words from the i-th spot up to the next say of each
// segment, and what speaks for its beginning there.
func (p *parting) row(i int, held, enters []float64) {
	clear(held)
	here, next := p.spots[i], len(p.lexicon.words)
	if i+1 < len(p.spots) {
		next = p.spots[i+1].word
	}
	for w := here.word; w < next; w++ {
		if id := p.lexicon.said[w]; id >= 0 {
			add(held, p.holders[id], 1)
			add(held, p.pairs[[2]int32{p.lexicon.before[w], id}], 1)
		}
		if w >= 2 {
			add(held, p.threes[p.lexicon.three(w)], 1)
		}
	}
	p.enters(here, enters)
}

// enters weighs what speaks for each segment's beginning at a spot.
func (p *parting) enters(here spot, enters []float64) {
	begin := p.spots[0].at
	share := float64(here.at-begin) / max(float64(p.until-begin), 1)
	for k, expected := range p.expected {
		astray := (share - expected) * p.strict[k]
		enters[k] = here.opening - perAstray*min(astray*astray, mostOff)
	}
	said := p.lexicon.said[here.word:min(here.word+announcing, len(p.lexicon.words))]
	for w, id := range said {
		if id < 0 || slices.Contains(said[:w], id) {
			continue
		}
		add(enters, p.titles[id], math.Exp(-float64(w)/announced))
		if w < soon {
			add(enters, p.starts[id], math.Exp(-float64(w)/soonest))
		}
	}
}

func add(row []float64, holders []holder, times float64) {
	for _, h := range holders {
		row[h.segment] += h.weight * times
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
