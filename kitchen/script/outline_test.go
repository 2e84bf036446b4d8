package script_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/script"
)

func TestOutlinePutsPlannedBeforeSpoken(t *testing.T) {
	segments := []episode.Segment{
		{Title: "Landing stage", Narration: strings.Repeat("word ", 75)},
		{Title: "Dough", Narration: strings.Repeat("word ", 150), PlannedSeconds: 90},
		{Title: "Proving, in silence", PlannedSeconds: 20},
		{Title: "Not written yet"},
		{Title: "Supper", Narration: strings.Repeat("word ", 50), PlannedSeconds: 10},
	}
	marks := script.Outline(segments, 150)
	want := []script.Mark{
		{At: 0, Title: "Landing stage", Spoken: 30},
		{At: 30, Title: "Dough", Spoken: 60, Planned: 90},
		{At: 120, Title: "Proving, in silence", Planned: 20},
		{At: 140, Title: "Not written yet"},
		{At: 140, Title: "Supper", Spoken: 20, Planned: 10},
	}
	if diff := cmp.Diff(want, marks); diff != "" {
		t.Errorf("Outline (-want +got):\n%s", diff)
	}
	if got := script.Length(marks); got != 150 {
		t.Errorf("Length = %d, want 150", got)
	}
	for i, want := range []int{0, 0, 0, 0, 10} {
		if got := marks[i].Short(); got != want {
			t.Errorf("%s is %d s short, want %d", marks[i].Title, got, want)
		}
	}
}

func TestOutlineOfNothing(t *testing.T) {
	if got := script.Outline(nil, 150); len(got) != 0 {
		t.Errorf("Outline(nil) = %v", got)
	}
	if got := script.Length(nil); got != 0 {
		t.Errorf("Length(nil) = %d", got)
	}
}

// Each mark begins where the one before ends, and no time is lost.
func TestOutlineLeavesNoGap(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		segments := rapid.SliceOf(rapid.Custom(func(t *rapid.T) episode.Segment {
			return episode.Segment{
				Narration:      strings.Repeat("word ", rapid.IntRange(0, 400).Draw(t, "words")),
				PlannedSeconds: rapid.IntRange(-5, 300).Draw(t, "planned"),
			}
		})).Draw(t, "segments")
		at := 0
		for i, mark := range script.Outline(segments, rapid.IntRange(90, 220).Draw(t, "pace")) {
			if mark.At != at || mark.Length() < 0 {
				t.Fatalf("mark %d at %d for %d s, want it at %d", i, mark.At, mark.Length(), at)
			}
			at += mark.Length()
		}
	})
}

func TestTimecode(t *testing.T) {
	tests := []struct {
		seconds int
		want    string
	}{
		{0, "0:00"}, {9, "0:09"}, {59, "0:59"}, {60, "1:00"}, {725, "12:05"}, {3599, "59:59"},
		{3600, "1:00:00"}, {3729, "1:02:09"}, {36000, "10:00:00"}, {-5, "−0:05"},
	}
	for _, test := range tests {
		t.Run(test.want, func(t *testing.T) {
			if got := script.Timecode(test.seconds); got != test.want {
				t.Errorf("Timecode(%d) = %q, want %q", test.seconds, got, test.want)
			}
		})
	}
}
