package script_test

import (
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/script"
)

func TestCutChapters(t *testing.T) {
	segments := []episode.Segment{{Title: "Pier"}, {Title: "Dough"}, {Title: "Supper"}}
	at := func(segment, seconds int) script.Start {
		return script.Start{Segment: segment, Found: true, At: time.Duration(seconds) * time.Second, Confidence: 1}
	}
	unsure := func(s script.Start) script.Start { s.Confidence = 0.39; return s }
	tests := []struct {
		name     string
		starts   []script.Start
		end      int
		lines    []string
		problems []string
	}{
		{"sound", []script.Start{at(0, 0), at(1, 65), at(2, 130)}, 300, []string{"0:00 Pier", "1:05 Dough", "2:10 Supper"}, nil},
		{"the first within ten seconds goes to the start", []script.Start{at(0, 9), at(1, 65), at(2, 130)}, 300, []string{"0:00 Pier", "1:05 Dough", "2:10 Supper"}, nil},
		{"the first later does not", []script.Start{at(0, 10), at(1, 65), at(2, 130)}, 300, []string{"0:10 Pier", "1:05 Dough", "2:10 Supper"},
			[]string{"The first chapter must begin at 0:00, but “Pier” begins at 0:10."}},
		{"in the order of the cut", []script.Start{at(0, 130), at(1, 1), at(2, 65)}, 300, []string{"0:00 Dough", "1:05 Supper", "2:10 Pier"}, nil},
		{"one not found", []script.Start{at(0, 0), {Segment: 1}, at(2, 130)}, 300, []string{"0:00 Pier", "2:10 Supper"},
			[]string{"A chapter list needs at least 3 chapters; there are 2.", "“Dough” was not found in the cut; set its time by hand, or take it out of the running order."}},
		{"one that is a guess", []script.Start{at(0, 0), unsure(at(1, 65)), at(2, 130)}, 300, []string{"0:00 Pier", "1:05 Dough", "2:10 Supper"},
			[]string{"“Dough” seems to begin at 1:05; look whether it does."}},
		{"one short in the cut, however long it was planned", []script.Start{at(0, 0), at(1, 65), at(2, 70)}, 300, []string{"0:00 Pier", "1:05 Dough", "1:10 Supper"},
			[]string{"“Dough” is 5 s long; a chapter needs at least 10 s."}},
		{"the last one short", []script.Start{at(0, 0), at(1, 65), at(2, 295)}, 300, []string{"0:00 Pier", "1:05 Dough", "4:55 Supper"},
			[]string{"“Supper” is 5 s long; a chapter needs at least 10 s."}},
		{"two at one time", []script.Start{at(0, 0), at(1, 65), at(2, 65)}, 300, []string{"0:00 Pier", "1:05 Dough", "1:05 Supper"},
			[]string{"“Dough” at 1:05 must come before “Supper” at 1:05."}},
		{"none found", []script.Start{{Segment: 0}}, 300, nil, []string{"“Pier” was not found in the cut; set its time by hand, or take it out of the running order."}},
		{"no segments", nil, 300, nil, nil},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			chapters, problems := script.CutChapters(segments, test.starts, time.Duration(test.end)*time.Second)
			var lines []string
			for _, c := range chapters {
				lines = append(lines, c.Line())
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

func TestInCutOrder(t *testing.T) {
	starts := []script.Start{{Segment: 0, Found: true, At: 9}, {Segment: 1}, {Segment: 2, Found: true, At: 3}, {Segment: 3, Found: true, At: 9}}
	var order []int
	for _, s := range script.InCutOrder(starts) {
		order = append(order, s.Segment)
	}
	if diff := cmp.Diff([]int{2, 0, 3}, order); diff != "" {
		t.Errorf("order (-want +got):\n%s", diff)
	}
	if starts[0].Segment != 0 || starts[1].Found {
		t.Error("the starts given are changed")
	}
}
