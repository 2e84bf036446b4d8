package script

import (
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
	perShared  = 0.5
	perWord    = 0.03
	farthest   = 70 // words before the first shared one
	latest     = 60 // words behind it
)

// begin finds the word with which the k-th of the chosen segments begins: the
// likeliest between what surely belongs to the segment before and the first
// word surely its own.
func (a *aligner) begin(chosen []placed, k int) int {
	here := chosen[k]
	low := 0
	var before map[string]float64
	if k > 0 {
		low = min(chosen[k-1].to, here.from)
		before = a.vocab[chosen[k-1].segment]
	}
	low = max(low, here.from-farthest)
	if k == 0 && a.narrated[here.segment] == 0 {
		return 0
	}
	best, top := here.from, -1e9
	likely := here.from - here.in
	weigh := func(at int, gained float64) {
		if score := gained*perShared - perWord*float64(abs(at-likely)) + a.opening(at); score > top {
			best, top = at, score
		}
	}
	gained := 0.0 // by beginning earlier: this segment's words, less those of the one before
	for at := here.from; at >= low; at-- {
		weigh(at, gained)
		if at > 0 {
			gained += a.vocab[here.segment][a.words[at-1].key] - before[a.words[at-1].key]
		}
	}
	gained = 0
	for at := here.from + 1; at < min(here.to, here.from+latest); at++ {
		gained -= a.vocab[here.segment][a.words[at-1].key] - before[a.words[at-1].key]
		weigh(at, gained)
	}
	return best
}

// opening weighs how likely something new begins with a word.
func (a *aligner) opening(at int) float64 {
	w := a.words[at]
	score := perPause * min(max(w.pause-200*time.Millisecond, 0).Seconds(), 3)
	if w.opens {
		score += forOpening
	}
	if openers[w.text] {
		score += forOpener
	}
	if at == 0 || a.words[at-1].cue != w.cue {
		score += forCue
	}
	return score
}

func abs(n int) int {
	if n < 0 {
		return -n
	}
	return n
}
