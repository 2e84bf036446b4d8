package script

import (
	"cmp"
	"slices"
	"time"
)

// openers are words with which people begin on something new. Common practice,
// no source.
var openers = wordSet(`okay ok right now so next alright well then first first finally meanwhile today hello hi good righto onto anyway time
	here in out for while`)

// What speaks for a word being the first of its segment.
const (
	perPause   = 2.4 // a second of silence before it, at most three
	forOpening = 0.9 // it begins a sentence
	forOpener  = 0.8 // it is one of the openers
	forCue     = 0.3 // it begins a caption
)

// opening weighs how likely something new begins with a word.
func opening(words []spokenWord, at int) float64 {
	w := words[at]
	score := perPause * min(max(w.pause-200*time.Millisecond, 0).Seconds(), 3)
	if w.opens {
		score += forOpening
	}
	if openers[w.text] {
		score += forOpener
	}
	if at == 0 || words[at-1].cue != w.cue {
		score += forCue
	}
	return score
}

// spot is somewhere that a segment may begin: with a caption or a sentence.
type spot struct {
	word    int // index in the cut
	at      time.Duration
	opening float64
}

// spotsOf lists the spots of a cut; where they are too many for so many
// segments, the likelier ones.
func spotsOf(words []spokenWord, captions Captions, segments int) []spot {
	var all []spot
	for i, w := range words {
		if i == 0 || w.opens || words[i-1].cue != w.cue {
			all = append(all, spot{i, captions.Cues[w.cue].Start, opening(words, i)})
		}
	}
	each := (len(all)*segments + mostCells - 1) / mostCells
	if each < 2 {
		return all
	}
	kept := slices.Clone(all[:1])
	for some := range slices.Chunk(all[1:], each) {
		kept = append(kept, slices.MaxFunc(some, func(a, b spot) int { return cmp.Compare(a.opening, b.opening) }))
	}
	return kept
}
