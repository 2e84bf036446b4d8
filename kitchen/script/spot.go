package script

import (
	"cmp"
	"math"
	"slices"
	"time"
)

// Words with which people begin on something new, of which the markers do little
// else; words with which they go on, of what was named before or of themselves;
// and words that no sentence ends with, so that nothing begins behind them where
// captions are without punctuation. Common practice, no source.
var (
	openers = wordSet(`okay ok right now so next alright well first finally meanwhile today hello hi good righto onto into anyway time
		here out for while`)
	markers    = wordSet(`okay ok right now so next alright then finally meanwhile onto righto good well`)
	continuers = wordSet(`and then but or because which who i he she it they you my his her their your it's i've i'm i'd he's she's they're
		that that's if in on of with to not`)
	hanging = wordSet(`a an the of to in on at for with from and or but into your my our his her their its is are was be it's that's i you we
		they if because as by than about some i'm you're we're don't can will would`)
)

// What speaks for a word being the first of its segment; see weights.go for how
// these are learned.
const (
	perPause   = 1.25  // a second of silence before it, without a breath's
	perRank    = 1.6   // the logarithm of how rare so long a silence is in the cut
	forOpening = 1.3   // it begins a sentence
	forOpener  = 2.0   // it is one of the openers
	forMarker  = 1.35  // and of the markers
	forGoingOn = -0.55 // it is one of the continuers
	forHanging = -1.75 // the word before it is left hanging
	forCue     = 1.45  // it begins a caption
	perTurn    = 0.32  // what is said turns to other words, in deviations; see turns
	notHere    = -5.6  // most words begin nothing
)

const (
	breath     = 200 * time.Millisecond
	mostPause  = 3 * time.Second
	mostPauses = 3 // for each segment: so many of the longest are rare
)

// spot is somewhere that a segment may begin: with a caption or a sentence.
type spot struct {
	word    int // index in the cut
	at      time.Duration
	opening float64 // how much speaks for a beginning here, whatever is said
}

// mostSpots bounds the spots of a cut, and with them the time taken.
const mostSpots = 2000

// spotsOf lists the spots of a cut; where they are too many for so many
// segments, the likelier ones.
func spotsOf(words []spokenWord, captions Captions, segments int) []spot {
	var all []spot
	for i, w := range words {
		if i == 0 || w.opens || words[i-1].cue != w.cue {
			all = append(all, spot{i, captions.Cues[w.cue].Start, opening(words, i)})
		}
	}
	rare, turning := rarity(words, all, mostPauses*segments), turns(words, all)
	for i := range all {
		all[i].opening += perRank*rare[i] + perTurn*turning[i]
	}
	return likelySpots(all, segments)
}

// opening weighs how likely something new begins with a word, by the word alone
// and the silence before it.
func opening(words []spokenWord, at int) float64 {
	w := words[at]
	score := notHere + perPause*min(max(w.pause-breath, 0), mostPause).Seconds()
	if w.opens {
		score += forOpening
	}
	if openers[w.text] {
		score += forOpener
	}
	if markers[w.text] {
		score += forMarker
	}
	if continuers[w.text] {
		score += forGoingOn
	}
	if at > 0 && !w.opens && hanging[words[at-1].text] {
		score += forHanging
	}
	if at == 0 || words[at-1].cue != w.cue {
		score += forCue
	}
	return score
}

// rarity is, for each spot, the logarithm of how few others have so long a
// silence before them, against some number; 0 for more than that. People who
// breathe long, and cuts without any silence, are measured by themselves.
func rarity(words []spokenWord, spots []spot, against int) []float64 {
	pauses := make([]time.Duration, len(spots))
	for i, s := range spots {
		pauses[i] = words[s.word].pause
	}
	sorted := slices.Clone(pauses)
	slices.Sort(sorted)
	rare := make([]float64, len(spots))
	for i, pause := range pauses {
		shorter, _ := slices.BinarySearch(sorted, pause)
		rare[i] = max(math.Log(float64(against)/float64(len(spots)-shorter)), 0)
	}
	return rare
}

// likelySpots thins spots that are too many to the likeliest of each few.
func likelySpots(all []spot, segments int) []spot {
	each := max((len(all)*segments+mostCells-1)/mostCells, (len(all)+mostSpots-1)/mostSpots)
	if each < 2 {
		return all
	}
	kept := slices.Clone(all[:1])
	for some := range slices.Chunk(all[1:], each) {
		kept = append(kept, slices.MaxFunc(some, func(a, b spot) int { return cmp.Compare(a.opening, b.opening) }))
	}
	return kept
}
