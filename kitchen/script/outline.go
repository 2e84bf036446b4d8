package script

import "benchproof/kitchen/episode"

// Mark is where one segment of the running order begins.
type Mark struct {
	At      int    // seconds from the start
	Title   string // the segment's
	Spoken  int    // seconds its narration takes at the host's pace
	Planned int    // seconds planned; 0 if the narration's length is taken
}

// Length is how many seconds the segment holds: as planned, else as spoken.
func (m Mark) Length() int {
	if m.Planned > 0 {
		return m.Planned
	}
	return m.Spoken
}

// Short is how many seconds the narration runs over the planned length; 0 if
// it fits or nothing was planned.
func (m Mark) Short() int {
	if m.Planned > 0 && m.Spoken > m.Planned {
		return m.Spoken - m.Planned
	}
	return 0
}

// Outline puts the segments on the clock, in the order given, each beginning
// where the one before ends. A pace of 0 or less means DefaultPace.
func Outline(segments []episode.Segment, wordsPerMinute int) []Mark {
	marks := make([]Mark, 0, len(segments))
	at := 0
	for _, segment := range segments {
		mark := Mark{
			At:      at,
			Title:   segment.Title,
			Spoken:  Seconds(segment.Narration, wordsPerMinute),
			Planned: max(segment.PlannedSeconds, 0),
		}
		marks = append(marks, mark)
		at += mark.Length()
	}
	return marks
}

// Length is the running order's whole length in seconds.
func Length(marks []Mark) int {
	if len(marks) == 0 {
		return 0
	}
	last := marks[len(marks)-1]
	return last.At + last.Length()
}
