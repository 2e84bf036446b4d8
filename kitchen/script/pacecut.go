package script

import (
	"slices"
	"time"

	"benchproof/kitchen/episode"
)

// What of a cut tells the host's pace: silences longer than longSilence are not
// counted, and stretches under leastWords words say too little.
const (
	longSilence    = 700 * time.Millisecond
	leastPaceWords = 25
)

// Stretch is a part of a cut in which the host speaks.
type Stretch struct {
	Words int
	Spoke time.Duration // without the silences between captions
}

// Stretches cuts captions where segments begin: one stretch for each start that
// was found, in the order of the cut, and one for what is said before the first.
func Stretches(captions Captions, starts []Start) []Stretch {
	var cuts []int
	for _, s := range InCutOrder(starts) {
		cuts = append(cuts, s.Cue)
	}
	all := make([]Stretch, len(cuts)+1)
	k := 0
	var free time.Duration
	for i, cue := range captions.Cues {
		for k < len(cuts) && i >= cuts[k] {
			k++
		}
		from := max(cue.Start, free)
		if gap := cue.Start - free; i > 0 && gap > 0 && gap < longSilence {
			from = free // people breathe
		}
		all[k].Words += Words(withoutSounds(cue.Text))
		if Words(withoutSounds(cue.Text)) > 0 {
			all[k].Spoke += max(cue.End-from, 0)
		}
		free = max(free, cue.End)
	}
	return slices.DeleteFunc(all, func(s Stretch) bool { return s.Words == 0 })
}

// PaceOf is the host's pace in words a minute, measured from earlier cuts: the
// median over their stretches, so that one slow or hurried segment does not
// matter. Stretches of a few words are left out; ok is false if none is left.
// The pace is a whole number.
func PaceOf(stretches []Stretch) (wordsPerMinute int, ok bool) {
	var paces []float64
	for _, s := range stretches {
		if s.Words >= leastPaceWords && s.Spoke > 0 {
			paces = append(paces, float64(s.Words)/s.Spoke.Minutes())
		}
	}
	if len(paces) == 0 {
		return 0, false
	}
	slices.Sort(paces)
	n := len(paces)
	return int((paces[(n-1)/2]+paces[n/2])/2 + 0.5), true
}

// Fit tells how a running order stands to its target length in seconds: over is
// how much it is too long, below zero what is left. ok is false without a target.
func Fit(segments []episode.Segment, wordsPerMinute, target int) (over int, ok bool) {
	if target <= 0 {
		return 0, false
	}
	return Length(Outline(segments, wordsPerMinute)) - target, true
}
