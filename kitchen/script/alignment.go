package script

import (
	"crypto/sha256"
	"encoding/binary"
	"encoding/hex"
	"time"

	"benchproof/kitchen/episode"
)

// edition counts the ways in which captions were read and aligned. It goes up
// whenever the same cut may give another alignment, so that those kept by an
// older program are reckoned anew.
const edition = 4

// Alignment is what is reckoned from a cut's captions as it is written down:
// enough to draw its chapters and to measure the host's pace without reading
// the captions again.
type Alignment struct {
	Print     string        // of what it was reckoned from; "" if it was not
	End       time.Duration // when the last caption is gone; 0 without captions
	Starts    []Start       // one a segment, in their order; none without captions
	Stretches []Stretch
}

// AlignCut reckons what is kept of a cut; see Align for segments and steps.
// Captions of which anything cannot be read count as none.
func AlignCut(cut episode.Cut, segments []episode.Segment, steps []string) Alignment {
	a := Alignment{Print: AlignmentPrint(cut, segments, steps)}
	captions, err := ReadCaptions(cut.Captions)
	if err != nil || len(captions.Cues) == 0 {
		return a
	}
	a.End = captions.End()
	a.Starts = Align(segments, steps, captions)
	a.Stretches = Stretches(captions, a.Starts)
	return a
}

// AlignmentPrint tells apart what alignments depend on: those with the same
// print are the same. It does not look at the cut's captions, which change only
// together with its revision.
func AlignmentPrint(cut episode.Cut, segments []episode.Segment, steps []string) string {
	sum := sha256.New()
	number := func(n int64) { sum.Write(binary.AppendVarint(nil, n)) }
	text := func(s string) {
		number(int64(len(s)))
		sum.Write([]byte(s))
	}
	number(edition)
	number(cut.ID)
	number(int64(cut.Revision))
	number(int64(len(segments)))
	for _, s := range segments {
		text(s.Title)
		text(s.Narration)
		number(int64(s.PlannedSeconds))
	}
	for _, step := range steps {
		text(step)
	}
	return hex.EncodeToString(sum.Sum(nil))
}
