package script_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/script"
)

// TestChapterRules: lines "m:ss Title" or "h:mm:ss Title", the first 0:00, at
// least three, ascending, each at least 10 s. Source: platform help, as several
// reference pages give it.
func TestChapterRules(t *testing.T) {
	mark := func(at int, title string, length int) script.Mark {
		return script.Mark{At: at, Title: title, Planned: length}
	}
	tests := []struct {
		name     string
		marks    []script.Mark
		lines    []string
		problems []string
	}{
		{"none", nil, nil, nil},
		{"sound", []script.Mark{mark(0, "Pier", 10), mark(10, "Dough", 3590), mark(3600, "Supper", 90)},
			[]string{"0:00 Pier", "0:10 Dough", "1:00:00 Supper"}, nil},
		{"two are too few", []script.Mark{mark(0, "Pier", 10), mark(10, "Dough", 80)},
			[]string{"0:00 Pier", "0:10 Dough"},
			[]string{"A chapter list needs at least 3 chapters; there are 2."}},
		{"late start", []script.Mark{mark(5, "Pier", 10), mark(15, "Dough", 80), mark(95, "Supper", 10)},
			[]string{"0:05 Pier", "0:15 Dough", "1:35 Supper"},
			[]string{"The first chapter must begin at 0:00, but “Pier” begins at 0:05."}},
		{"a short one", []script.Mark{mark(0, "Pier", 9), mark(9, "Dough", 80), mark(89, "Supper", 10)},
			[]string{"0:00 Pier", "0:09 Dough", "1:29 Supper"},
			[]string{"“Pier” is 9 s long; a chapter needs at least 10 s."}},
		{"a short last one", []script.Mark{mark(0, "Pier", 10), mark(10, "Dough", 80), mark(90, "Supper", 9)},
			[]string{"0:00 Pier", "0:10 Dough", "1:30 Supper"},
			[]string{"“Supper” is 9 s long; a chapter needs at least 10 s."}},
		{"the last one's length is not known", []script.Mark{mark(0, "Pier", 10), mark(10, "Dough", 80), mark(90, "Supper", 0)},
			[]string{"0:00 Pier", "0:10 Dough", "1:30 Supper"}, nil},
		{"not ascending", []script.Mark{mark(0, "Pier", 30), mark(30, "Dough", 0), mark(30, "Supper", 20)},
			[]string{"0:00 Pier", "0:30 Dough", "0:30 Supper"},
			[]string{"“Dough” at 0:30 must come before “Supper” at 0:30."}},
		{"titles on one line, no angle brackets, never empty",
			[]script.Mark{mark(0, " Pier\n<and> boat ", 30), mark(30, " \t", 30), mark(60, "Supper", 20)},
			[]string{"0:00 Pier ‹and› boat", "0:30 Untitled", "1:00 Supper"},
			[]string{"The chapter at 0:30 has no title."}},
		{"one", []script.Mark{mark(0, "Pier", 30)}, []string{"0:00 Pier"},
			[]string{"A chapter list needs at least 3 chapters; there is 1."}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			chapters, problems := script.Chapters(test.marks)
			var lines []string
			for _, chapter := range chapters {
				lines = append(lines, chapter.Line())
			}
			if diff := cmp.Diff(test.lines, lines); diff != "" {
				t.Errorf("lines (-want +got):\n%s", diff)
			}
			if diff := cmp.Diff(test.problems, problems); diff != "" {
				t.Errorf("problems (-want +got):\n%s", diff)
			}
		})
	}
}
