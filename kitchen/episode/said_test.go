package episode_test

import (
	"fmt"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/episode"
)

// One is one, and two are two: the words of each figure, and whether viewers can
// still meet it after the release.
func TestOneAndMany(t *testing.T) {
	for _, c := range []struct {
		name      string
		set       func(f *episode.Facts, n int)
		sheet     string
		one, many string // of 1 and of 12
		stays     bool
	}{
		{"lines", func(f *episode.Facts, n int) { f.UnreadLines = n }, "recipe", "1 line of the recipe not read", "12 lines of the recipe not read", true},
		{"questions", func(f *episode.Facts, n int) { f.Questions = n }, "recipe", "1 question about the recipe to answer", "12 questions about the recipe to answer", true},
		{"trials", func(f *episode.Facts, n int) { f.Proved, f.Nearly = 0, n }, "trials", "1 trial, none proved", "12 trials, none proved", false},
		{"things to buy", func(f *episode.Facts, n int) { f.ToBuy = n }, "shop", "1 thing to buy", "12 things to buy", false},
		{"segments", func(f *episode.Facts, n int) { f.WithoutNarration = n }, "script", "1 segment without narration", "12 segments without narration", false},
		{"shots missing", func(f *episode.Facts, n int) { f.Missing = n }, "shots", "1 shot missing", "12 shots missing", false},
		{"shots to retake", func(f *episode.Facts, n int) { f.ToRetake = n }, "shots", "1 shot to retake", "12 shots to retake", false},
		{"findings", func(f *episode.Facts, n int) { f.Findings = n }, "cut", "1 thing said otherwise than written", "12 things said otherwise than written", true},
		{"the title", func(f *episode.Facts, n int) { f.TitleOver = n }, "release", "1 character over the title limit", "12 characters over the title limit", true},
		{"the description", func(f *episode.Facts, n int) { f.DescriptionOver = n }, "release", "1 character over the description limit", "12 characters over the description limit", true},
		{"foods", func(f *episode.Facts, n int) { f.UnsureAllergens = n }, "release", "Allergens not known for 1 food", "Allergens not known for 12 foods", true},
	} {
		t.Run(c.name, func(t *testing.T) {
			for n, want := range map[int]string{1: c.one, 12: c.many} {
				f := ready()
				c.set(&f, n)
				open := []episode.Open{{Sheet: c.sheet, Text: want, Wrong: c.sheet == "cut"}}
				if diff := cmp.Diff(open, episode.StillOpen(f)); diff != "" {
					t.Errorf("of %d (-want +got):\n%s", n, diff)
				}
				if f.Stage = episode.Released; !c.stays {
					open = nil
				}
				if diff := cmp.Diff(open, episode.StillOpen(f)); diff != "" {
					t.Errorf("of %d, released (-want +got):\n%s", n, diff)
				}
			}
		})
	}
}

// A script may be a tenth of its target longer or shorter: of 10 minutes, 600
// seconds, that is 60.
func TestHowFarTheScriptMayBeOff(t *testing.T) {
	for _, c := range []struct {
		name          string
		minutes       int
		seconds, mute int
		want          string // "" for nothing
	}{
		{"just it", 10, 600, 0, ""},
		{"660: a tenth over", 10, 660, 0, ""},
		{"661: a second more", 10, 661, 0, "Script runs 1:01 over the target of 10 min"},
		{"540: a tenth under", 10, 540, 0, ""},
		{"539: a second less", 10, 539, 0, "Script runs 1:01 under the target of 10 min"},
		{"539, and one segment has no length yet", 10, 539, 1, "1 segment without narration"},
		{"an hour over", 10, 600 + 3600, 0, "Script runs 1:00:00 over the target of 10 min"},
		{"of 1 minute: 66", 1, 66, 0, ""},
		{"of 1 minute: 67", 1, 67, 0, "Script runs 0:07 over the target of 1 min"},
		{"nothing written at all", 12, 0, 0, "Script runs 12:00 under the target of 12 min"},
	} {
		t.Run(c.name, func(t *testing.T) {
			f := ready()
			f.TargetMinutes, f.PlannedSeconds, f.WithoutNarration = c.minutes, c.seconds, c.mute
			var want []episode.Open
			if c.want != "" {
				want = []episode.Open{{Sheet: "script", Text: c.want}}
			}
			if diff := cmp.Diff(want, episode.StillOpen(f)); diff != "" {
				t.Errorf("of %d seconds (-want +got):\n%s", c.seconds, diff)
			}
		})
	}
}

// Without a target, no length is off; long scripts are then no news.
func TestWithoutATargetNoLengthIsOff(t *testing.T) {
	f := ready()
	f.TargetMinutes, f.PlannedSeconds = 0, 9000
	if diff := cmp.Diff([]episode.Open{{Sheet: "brief", Text: "No target length"}}, episode.StillOpen(f)); diff != "" {
		t.Error(diff)
	}
}

// The stage counts for nothing until the release.
func TestTheStageOpensNothing(t *testing.T) {
	var first []episode.Open
	for k, stage := range episode.Stages {
		if stage == episode.Released {
			continue
		}
		f := episode.Facts{Stage: stage, HasDish: true, Missing: 2}
		open := episode.StillOpen(f)
		if k == 0 {
			first = open
		}
		if diff := cmp.Diff(first, open); diff != "" {
			t.Errorf("%s (-%s +%s):\n%s", stage, episode.Stages[0], stage, diff)
		}
	}
}

func ExampleStillOpen() {
	open := episode.StillOpen(episode.Facts{
		HasDish: true, HasReleaseDate: true, TargetMinutes: 12, HasRecipe: true, UnreadLines: 1,
		Nearly: 2, Batches: 1, ShootBatches: 1, Segments: 6, PlannedSeconds: 800,
		Shots: 20, Missing: 3, HasCut: true, HasCaptions: true, Findings: 1, HasTitle: true, HasOpening: true, ShareLinkLive: true,
	})
	for _, o := range open {
		fmt.Printf("%-7s %s\n", o.Sheet, o.Text)
	}
	// Output:
	// recipe  1 line of the recipe not read
	// trials  2 trials, none proved
	// trials  Never tried at this scale
	// script  Script runs 1:20 over the target of 12 min
	// shots   3 shots missing
	// cut     1 thing said otherwise than written
}
