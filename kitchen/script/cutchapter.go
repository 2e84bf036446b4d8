package script

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"time"

	"benchproof/kitchen/episode"
)

// CutChapters makes the chapter list of a cut from where its segments begin, in
// the order of the cut, and says in sentences what a person should look at: what
// Chapters says of the list, segments that were not found, and places that are
// little more than a guess. A first chapter that begins within ten seconds of
// the start is put at 0:00, where platforms want it.
func CutChapters(segments []episode.Segment, starts []Start, end time.Duration) (chapters []Chapter, problems []string) {
	var ask []string
	for _, s := range starts {
		title := "“" + chapterTitle(segments[s.Segment].Title) + "”"
		switch {
		case !s.Found:
			ask = append(ask, fmt.Sprintf("%s was not found in the cut; set its time by hand, or take it out of the running order.", title))
		case s.Confidence < LowConfidence:
			ask = append(ask, fmt.Sprintf("%s seems to begin at %s; look whether it does.", title, Timecode(int(s.At.Seconds()))))
		}
	}
	found := InCutOrder(starts)
	marks := make([]Mark, len(found))
	for i, s := range found {
		marks[i] = Mark{At: int(s.At.Seconds()), Title: segments[s.Segment].Title}
		if i == 0 && marks[0].At < MinChapterSeconds {
			marks[0].At = 0
		}
	}
	for i := range marks {
		next := int(end.Seconds())
		if i+1 < len(marks) {
			next = marks[i+1].At
		}
		marks[i].Planned = max(next-marks[i].At, 0)
	}
	chapters, problems = Chapters(marks)
	return chapters, append(problems, ask...)
}

// InCutOrder gives the starts that were found, in the order of the cut.
func InCutOrder(starts []Start) []Start {
	found := slices.DeleteFunc(slices.Clone(starts), func(s Start) bool { return !s.Found })
	slices.SortStableFunc(found, func(a, b Start) int { return cmp.Compare(a.At, b.At) })
	return found
}

// ReadScript reads a script as text: blocks parted by blank lines, in each a
// segment's title and, on the lines below, its narration. Text without words
// gives no segments.
func ReadScript(text string) []episode.Segment {
	var segments []episode.Segment
	open := false
	for _, line := range captionLines(text) {
		line = strings.TrimSpace(line)
		switch {
		case line == "":
			open = false
		case !open:
			segments = append(segments, episode.Segment{Position: len(segments) + 1, Title: line})
			open = true
		default:
			s := &segments[len(segments)-1]
			s.Narration = strings.TrimSpace(s.Narration + "\n" + line)
		}
	}
	return segments
}
