package script_test

import (
	"testing"
	"time"

	"benchproof/kitchen/script"
)

// What is cut otherwise than it was written, with the narration to tell it by.

// A segment left out of the cut is said to be, and the others are found.
func TestSegmentsLeftOut(t *testing.T) {
	var left, others score
	for _, u := range readUntold(t, 0) {
		for k := 1; k < len(u.segments)-1; k++ {
			u.without(k).try(&left, func(i int) bool { return i == k })
			u.without(k).try(&others, func(i int) bool { return i != k })
		}
	}
	left.check(t, "left out", 97, 2)
	others.check(t, "the others", 98, 1)
}

func TestSegmentsReordered(t *testing.T) {
	var swapped score
	for _, u := range readUntold(t, 0) {
		for k := 1; k+2 < len(u.segments); k++ {
			u.swapped(k).try(&swapped, every)
		}
	}
	swapped.check(t, "swapped", 97, 1)
}

// A segment that begins with words nobody wrote begins with these all the same.
func TestSegmentsImprovised(t *testing.T) {
	var begun score
	all := readUntold(t, 0)
	for n, u := range all {
		other := all[(n+3)%len(all)].captions.Cues
		for k := 1; k < len(u.segments); k++ {
			u.improvised(k, other[:4+2*k]).try(&begun, every)
		}
	}
	begun.check(t, "improvised", 92, 3)
}

// improvised lets a segment begin with other words, without a pause behind them.
func (u untold) improvised(k int, words []script.Cue) untold {
	const breath = 300 * time.Millisecond
	length := words[len(words)-1].End - words[0].Start + breath
	var cut script.Captions
	said := false
	for _, cue := range u.captions.Cues {
		if !said && cue.Start >= u.truth[k] {
			said = true
			for _, w := range words {
				start := u.truth[k] + w.Start - words[0].Start
				cut.Cues = append(cut.Cues, script.Cue{Start: start, End: start + w.End - w.Start, Text: w.Text})
			}
		}
		if said {
			cue.Start, cue.End = cue.Start+length, cue.End+length
		}
		cut.Cues = append(cut.Cues, cue)
	}
	truth := make([]time.Duration, len(u.truth))
	for i, at := range u.truth {
		if truth[i] = at; i > k {
			truth[i] += length
		}
	}
	u.captions, u.truth = cut, truth
	return u
}
