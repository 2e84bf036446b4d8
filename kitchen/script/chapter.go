package script

import (
	"fmt"
	"strings"
)

// What video platforms ask of a chapter list; a broken rule drops the whole
// list. Source: platform help pages, as several reference pages give them;
// conventions, not a standard.
const (
	MinChapters       = 3
	MinChapterSeconds = 10
)

// Chapter is one entry of a video's chapter list.
type Chapter struct {
	At    int // seconds into the video
	Title string
}

// Line writes the chapter as the description carries it: "12:05 Shaping".
func (c Chapter) Line() string { return Timecode(c.At) + " " + c.Title }

// Chapters makes the chapter list of the marks, and says in sentences what in
// it would make a platform drop the list: fewer than three, the first not at
// 0:00, times that do not rise, less than ten seconds between two. Titles are
// put on one line without angle brackets, which platforms refuse. No marks
// give no chapters and no problems.
func Chapters(marks []Mark) (chapters []Chapter, problems []string) {
	for _, mark := range marks {
		title := chapterTitle(mark.Title)
		if title == "" {
			problems = append(problems, fmt.Sprintf("The chapter at %s has no title.", Timecode(mark.At)))
			title = "Untitled"
		}
		chapters = append(chapters, Chapter{At: mark.At, Title: title})
	}
	if len(chapters) == 0 {
		return nil, nil
	}
	if first := chapters[0]; first.At != 0 {
		problems = append(problems, fmt.Sprintf("The first chapter must begin at 0:00, but “%s” begins at %s.", first.Title, Timecode(first.At)))
	}
	if len(chapters) < MinChapters {
		problems = append(problems, fmt.Sprintf("A chapter list needs at least %d chapters; there %s.", MinChapters, areSoMany(len(chapters))))
	}
	return chapters, append(problems, spacing(chapters, Length(marks))...)
}

// spacing checks the order of the chapters and the length of each; the last
// one ends at end, which is not checked when nothing is known behind its start.
func spacing(chapters []Chapter, end int) []string {
	var problems []string
	for i, c := range chapters {
		next, name := end, "the end"
		if i+1 < len(chapters) {
			next, name = chapters[i+1].At, "“"+chapters[i+1].Title+"”"
		} else if end <= c.At {
			break
		}
		switch length := next - c.At; {
		case length <= 0:
			problems = append(problems, fmt.Sprintf("“%s” at %s must come before %s at %s.", c.Title, Timecode(c.At), name, Timecode(next)))
		case length < MinChapterSeconds:
			problems = append(problems, fmt.Sprintf("“%s” is %d s long; a chapter needs at least %d s.", c.Title, length, MinChapterSeconds))
		}
	}
	return problems
}

func chapterTitle(title string) string {
	title = strings.NewReplacer("<", "‹", ">", "›").Replace(title)
	return strings.Join(strings.Fields(title), " ")
}

func areSoMany(n int) string {
	if n == 1 {
		return "is 1"
	}
	return fmt.Sprintf("are %d", n)
}
