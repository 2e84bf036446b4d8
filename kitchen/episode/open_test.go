package episode_test

import (
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/episode"
)

// ready is an episode with nothing open: each row below breaks one thing.
func ready() episode.Facts {
	return episode.Facts{
		Stage:   episode.InTheEdit,
		HasDish: true, HasReleaseDate: true, TargetMinutes: 10,
		HasRecipe: true,
		Proved:    1, TriedAtScale: true,
		Batches: 2, ShootBatches: 1,
		Segments: 5, PlannedSeconds: 600,
		Shots:  12,
		HasCut: true, HasCaptions: true,
		HasTitle: true, HasOpening: true, HasVideoURL: true, ShareLinkLive: true,
	}
}

func TestStillOpenNamesWhatIsMissing(t *testing.T) {
	tests := []struct {
		name  string
		spoil func(*episode.Facts)
		want  []episode.Open
	}{
		{"nothing", func(f *episode.Facts) {}, nil},
		{"no dish", func(f *episode.Facts) { f.HasDish = false }, []episode.Open{{Sheet: "brief", Text: "The dish is not named"}}},
		{"no date", func(f *episode.Facts) { f.HasReleaseDate = false }, []episode.Open{{Sheet: "brief", Text: "No release date"}}},
		{"no target", func(f *episode.Facts) { f.TargetMinutes = 0 }, []episode.Open{{Sheet: "brief", Text: "No target length"}}},
		{"no recipe asks for no trial", func(f *episode.Facts) { f.HasRecipe, f.Proved, f.TriedAtScale = false, 0, false },
			[]episode.Open{{Sheet: "recipe", Text: "No recipe yet"}}},
		{"one line unread", func(f *episode.Facts) { f.UnreadLines = 1 }, []episode.Open{{Sheet: "recipe", Text: "1 line of the recipe not read"}}},
		{"lines and questions", func(f *episode.Facts) { f.UnreadLines, f.Questions = 3, 2 },
			[]episode.Open{{Sheet: "recipe", Text: "3 lines of the recipe not read"}, {Sheet: "recipe", Text: "2 questions about the recipe to answer"}}},
		{"never tried", func(f *episode.Facts) { f.Proved, f.TriedAtScale = 0, false },
			[]episode.Open{{Sheet: "trials", Text: "Never tried at the bench"}}},
		{"tried before the change", func(f *episode.Facts) { f.Proved, f.TriedAtScale, f.OtherTrials = 0, false, 2 },
			[]episode.Open{{Sheet: "trials", Text: "This version never tried; earlier ones were"}}},
		{"tried, not proved", func(f *episode.Facts) { f.Proved, f.Nearly, f.NotYet = 0, 1, 1 },
			[]episode.Open{{Sheet: "trials", Text: "2 trials, none proved"}}},
		{"proved at another scale", func(f *episode.Facts) { f.TriedAtScale = false },
			[]episode.Open{{Sheet: "trials", Text: "Never tried at this scale"}}},
		{"no batches", func(f *episode.Facts) { f.Batches, f.ShootBatches = 0, 0 }, []episode.Open{{Sheet: "shop", Text: "No batches planned"}}},
		{"no shoot batch", func(f *episode.Facts) { f.ShootBatches = 0 }, []episode.Open{{Sheet: "shop", Text: "No batch planned for the shoot"}}},
		{"shopping left", func(f *episode.Facts) { f.ToBuy = 7 }, []episode.Open{{Sheet: "shop", Text: "7 things to buy"}}},
		{"no segments", func(f *episode.Facts) { f.Segments, f.PlannedSeconds = 0, 0 },
			[]episode.Open{{Sheet: "script", Text: "No segments in the running order"}}},
		{"a tenth over is fine", func(f *episode.Facts) { f.PlannedSeconds = 660 }, nil},
		{"over the target", func(f *episode.Facts) { f.PlannedSeconds = 725 },
			[]episode.Open{{Sheet: "script", Text: "Script runs 2:05 over the target of 10 min"}}},
		{"under the target", func(f *episode.Facts) { f.PlannedSeconds = 500 },
			[]episode.Open{{Sheet: "script", Text: "Script runs 1:40 under the target of 10 min"}}},
		{"under, but not written yet", func(f *episode.Facts) { f.PlannedSeconds, f.WithoutNarration = 300, 1 },
			[]episode.Open{{Sheet: "script", Text: "1 segment without narration"}}},
		{"no shots", func(f *episode.Facts) { f.Shots = 0 }, []episode.Open{{Sheet: "shots", Text: "No shot list"}}},
		{"shots left", func(f *episode.Facts) { f.Missing, f.ToRetake = 1, 2 },
			[]episode.Open{{Sheet: "shots", Text: "1 shot missing"}, {Sheet: "shots", Text: "2 shots to retake"}}},
		{"no cut", func(f *episode.Facts) { f.HasCut, f.HasCaptions = false, false }, []episode.Open{{Sheet: "cut", Text: "No cut yet"}}},
		{"no captions", func(f *episode.Facts) { f.HasCaptions = false }, []episode.Open{{Sheet: "cut", Text: "The cut has no captions"}}},
		{"no title or opening", func(f *episode.Facts) { f.HasTitle, f.HasOpening = false, false },
			[]episode.Open{{Sheet: "release", Text: "No release title"}, {Sheet: "release", Text: "The description has no opening line"}}},
		{"too long", func(f *episode.Facts) { f.TitleOver, f.DescriptionOver = 1, 312 },
			[]episode.Open{{Sheet: "release", Text: "1 character over the title limit"}, {Sheet: "release", Text: "312 characters over the description limit"}}},
		{"allergens", func(f *episode.Facts) { f.UnsureAllergens = 1 }, []episode.Open{{Sheet: "release", Text: "Allergens not known for 1 food"}}},
		{"no link", func(f *episode.Facts) { f.ShareLinkLive = false }, []episode.Open{{Sheet: "release", Text: "No share link for viewers"}}},
		{"the video's address comes with the release", func(f *episode.Facts) { f.HasVideoURL = false }, nil},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			f := ready()
			test.spoil(&f)
			if diff := cmp.Diff(test.want, episode.StillOpen(f)); diff != "" {
				t.Errorf("StillOpen (-want +got):\n%s", diff)
			}
		})
	}
}

func TestStillOpenAfterReleaseListsOnlyWhatViewersMeet(t *testing.T) {
	f := episode.Facts{Stage: episode.Released, UnreadLines: 1, DescriptionOver: 4, Missing: 9, ToBuy: 3}
	want := []episode.Open{
		{Sheet: "recipe", Text: "1 line of the recipe not read"},
		{Sheet: "release", Text: "4 characters over the description limit"},
		{Sheet: "release", Text: "The video's address is missing"},
		{Sheet: "release", Text: "No live share link: viewers cannot open the recipe page"},
	}
	if diff := cmp.Diff(want, episode.StillOpen(f)); diff != "" {
		t.Errorf("StillOpen (-want +got):\n%s", diff)
	}
	done := ready()
	done.Stage, done.Missing, done.TriedAtScale = episode.Released, 5, false
	if got := episode.StillOpen(done); len(got) != 0 {
		t.Errorf("StillOpen of a sound release = %v, want nothing", got)
	}
}

// TestStillOpenFollowsTheWeek holds the order against SheetNames for an
// episode that lacks everything, and that every sheet named exists.
func TestStillOpenFollowsTheWeek(t *testing.T) {
	open := episode.StillOpen(episode.Facts{
		UnreadLines: 1, Questions: 1, HasRecipe: true, ToBuy: 1, TitleOver: 1, DescriptionOver: 1, UnsureAllergens: 1,
	})
	last := -1
	for _, o := range open {
		at := slices.Index(episode.SheetNames, o.Sheet)
		if at < 0 {
			t.Fatalf("%q is no sheet", o.Sheet)
		}
		if at < last {
			t.Errorf("%q stands after a later sheet", o.Text)
		}
		last = at
		if strings.HasSuffix(o.Text, ".") || o.Text == "" {
			t.Errorf("%q: want words without a full stop", o.Text)
		}
	}
	if len(open) < 12 {
		t.Errorf("an episode that lacks everything lists %d things: %v", len(open), open)
	}
}
