package script_test

import (
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/script"
)

// Whatever is said and written, each start is in the segments' order, at the
// start of a caption of the cut, and the same when it is looked for again.
func TestAlignOfAnything(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		words := rapid.SampledFrom([]string{"dough", "plums", "the", "oven", "syrup", "now", "200", "rest.", "Okay", "cream", "小麦"})
		text := func(name string, most int) string {
			return strings.Join(rapid.SliceOfN(words, 0, most).Draw(t, name), " ")
		}
		var segments []episode.Segment
		for range rapid.IntRange(0, 6).Draw(t, "segments") {
			segments = append(segments, episode.Segment{Title: text("title", 2), Narration: text("narration", 8), PlannedSeconds: rapid.IntRange(-5, 90).Draw(t, "planned")})
		}
		var captions script.Captions
		at := time.Duration(0)
		for range rapid.IntRange(0, 8).Draw(t, "captions") {
			at += time.Duration(rapid.IntRange(0, 5000).Draw(t, "gap")) * time.Millisecond
			captions.Cues = append(captions.Cues, script.Cue{Start: at, End: at + time.Duration(rapid.IntRange(-500, 4000).Draw(t, "length"))*time.Millisecond, Text: text("words", 9)})
		}
		steps := rapid.SliceOfN(rapid.Just("Rest the dough in the oven."), 0, 3).Draw(t, "steps")
		starts := script.Align(segments, steps, captions)
		if len(starts) != len(segments) {
			t.Fatalf("%d starts of %d segments", len(starts), len(segments))
		}
		for i, s := range starts {
			switch {
			case s.Segment != i:
				t.Fatalf("start %d is of segment %d", i, s.Segment)
			case !s.Found && s != script.Start{Segment: i}:
				t.Fatalf("not found, and %+v", s)
			case s.Found && (s.Cue < 0 || s.Cue >= len(captions.Cues) || s.At != captions.Cues[s.Cue].Start || !(s.Confidence >= 0 && s.Confidence <= 1)):
				t.Fatalf("start %+v in %d captions", s, len(captions.Cues))
			}
		}
		if diff := cmp.Diff(starts, script.Align(segments, steps, captions)); diff != "" {
			t.Fatalf("the second time it is another:\n%s", diff)
		}
	})
}

// A cut that begins later, or runs at another frame rate, is aligned by the same
// captions: importing it again is all there is to do.
func TestAlignOfAShiftedOrDriftingCut(t *testing.T) {
	for name, warp := range map[string]func(time.Duration) time.Duration{
		"ten seconds of titles before it": func(at time.Duration) time.Duration { return at + 10*time.Second },
		"24 frames shown as 25":           func(at time.Duration) time.Duration { return at * 24 / 25 },
		"30 frames shown as 29.97":        func(at time.Duration) time.Duration { return at * 1001 / 1000 },
		"drifting by a frame a minute":    func(at time.Duration) time.Duration { return at + at/1500 },
	} {
		t.Run(name, func(t *testing.T) {
			same, all := 0, 0
			for _, c := range readCuts(t) {
				if !c.isTunedOn() {
					continue
				}
				warped := script.Captions{Cues: append([]script.Cue(nil), c.captions.Cues...)}
				for i, cue := range warped.Cues {
					warped.Cues[i].Start, warped.Cues[i].End = warp(cue.Start), warp(cue.End)
				}
				was := script.Align(c.segments, c.steps, c.captions)
				for i, s := range script.Align(c.segments, c.steps, warped) {
					all++
					if s.Found == was[i].Found && s.Cue == was[i].Cue {
						same++
					}
				}
			}
			if same*100 < all*98 {
				t.Errorf("%d of %d segments begin with the same caption, want nearly all", same, all)
			}
		})
	}
}

// Words that everybody says, and scripts of nothing, find nothing surely.
func TestAlignOfNothing(t *testing.T) {
	cut := talk(0, speech)
	for name, segments := range map[string][]episode.Segment{
		"words that tell nothing": {{Title: "And then", Narration: "It is what it is, and then some more of it."}},
		"another cut's narration": {{Title: "Scones", Narration: "Whisk eggs, knead bread, toast sesame, shred cabbage, pickle radishes, grill halloumi."}},
	} {
		t.Run(name, func(t *testing.T) {
			for _, s := range script.Align(segments, nil, cut) {
				if s.Found {
					t.Errorf("found: %+v", s)
				}
			}
		})
	}
	if starts := script.Align(nil, []string{"Bake."}, cut); len(starts) != 0 {
		t.Errorf("no segments give %+v", starts)
	}
	many := make([]episode.Segment, 40_000) // more than can be looked for
	for _, s := range script.Align(many, nil, cut) {
		if s.Found {
			t.Fatal("one of forty thousand empty segments is found")
		}
	}
}

// However long a cut is in which nothing is heard of the script, or everything at
// once, what is said of it stays within bounds.
func TestAlignOfALongCut(t *testing.T) {
	everything := "Dough plums oven syrup cream butter sugar flour eggs milk salt yeast honey lemon"
	segments := []episode.Segment{
		{Title: "Hello"}, {Title: everything}, {Title: "Dough", Narration: "Knead the dough."},
		{Title: everything + " again", Narration: everything}, {Title: "Goodbye", Narration: "See you next week in the harbour."},
	}
	for name, said := range map[string]func(i int) string{
		"nothing heard":            func(int) string { return "ninety boats went by" },
		"everything, always":       func(int) string { return everything },
		"everything, once":         func(i int) string { return map[bool]string{true: everything, false: "boats went by"}[i == 1000] },
		"everything, now and then": func(i int) string { return map[bool]string{true: everything, false: "boats"}[i%100 == 0] },
	} {
		t.Run(name, func(t *testing.T) {
			for _, s := range script.Align(segments, nil, talkOf(2000, said)) {
				if !(s.Confidence >= 0 && s.Confidence <= 1) || s.Cue < 0 || s.Cue >= 2000 {
					t.Errorf("start %+v", s)
				}
			}
		})
	}
	once := talkOf(2000, func(i int) string {
		return map[bool]string{true: "Right, " + everything, false: "boats went by"}[i == 1000]
	})
	if s := script.Align([]episode.Segment{{Title: "Hello"}, {Title: everything}}, nil, once)[1]; !s.Found || s.Cue != 1000 {
		t.Errorf("what is said once only is found at %+v, want caption 1000", s)
	}
}

// talkOf is so many captions, one every three seconds.
func talkOf(captions int, said func(i int) string) (cut script.Captions) {
	for i := range captions {
		at := time.Duration(i) * 3 * time.Second
		cut.Cues = append(cut.Cues, script.Cue{Start: at, End: at + 2*time.Second, Text: said(i)})
	}
	return cut
}
