package store_test

import (
	"strings"
	"testing"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/script"
	"benchproof/store"
)

// seasonOf gives the facts by both ways, which must agree.
func seasonOf(t testing.TB, st *store.Store, id int64) store.SeasonRow {
	t.Helper()
	one := must(st.SeasonRow(t.Context(), id))(t)
	for _, row := range must(st.Season(t.Context()))(t) {
		if row.Episode.ID == id {
			same(t, "SeasonRow against Season", one, row)
		}
	}
	same(t, "the row's episode", one.Episode, must(st.Episode(t.Context(), id))(t))
	return one
}

func TestSeasonCounts(t *testing.T) {
	tests := []struct {
		name string
		do   func(t *testing.T, st *store.Store, c cooking)
		want func(f *episode.Facts) // what it changes in the facts of a fresh start
	}{
		{"a fresh start", func(t *testing.T, st *store.Store, c cooking) {}, func(f *episode.Facts) {}},
		{"the brief", func(t *testing.T, st *store.Store, c cooking) {
			e := must(st.Episode(t.Context(), c.episodeID))(t)
			e.Dish, e.ReleaseOn, e.TargetMinutes = "eggs", day(2026, 5, 1), 12
			ok(t, st.SaveBrief(t.Context(), e))
			ok(t, setStage(t, st, c.episodeID, 2, episode.InTheEdit))
		}, func(f *episode.Facts) {
			f.HasDish, f.HasReleaseDate, f.TargetMinutes, f.Stage = true, true, 12, episode.InTheEdit
		}},
		{"no recipe", func(t *testing.T, st *store.Store, c cooking) {
			addTrial(t, st, c, "nearly")
			ok(t, st.UseVersion(t.Context(), c.episodeID, 1, 0, measure.Whole(1)))
		}, func(f *episode.Facts) { f.HasRecipe, f.UnreadLines, f.OtherTrials = false, 0, 1 }},
		{"lines to look at", func(t *testing.T, st *store.Store, c cooking) {
			v := must(st.Version(t.Context(), c.versionID))(t)
			v.Reading = recipe.Recipe{
				Unread: []recipe.Unread{{Number: 1}, {Number: 2}},
				Components: []recipe.Component{
					{Lines: []recipe.Line{{Text: "all well", Read: true}, {Text: "asks", Read: true, Reason: "Which sugar?"}, {Text: "not read", Reason: "No food."}}},
					{Lines: []recipe.Line{{Text: "chooses", Read: true, Choices: []string{"a", "b"}}, {Text: "not read", Choices: []string{"a"}}},
						Steps: []recipe.Step{{Text: "fine"}, {Text: "asks", Reason: "160 °C fan is not 220 °C."}}},
				},
			}
			ok(t, st.SaveVersion(t.Context(), v))
		}, func(f *episode.Facts) { f.UnreadLines, f.Questions = 4, 3 }},
		{"trials of this version and others", func(t *testing.T, st *store.Store, c cooking) {
			for _, verdict := range []string{"proved", "nearly", "nearly", "not yet", "not yet", "not yet"} {
				addTrial(t, st, c, verdict)
			}
			ok(t, st.DeleteTrial(t.Context(), addTrial(t, st, c, "proved")))
			c.versionID = must(st.AddVersion(t.Context(), eggs2(c.recipeID)))(t)
			addTrial(t, st, c, "proved")
			addTrial(t, st, c, "nearly")
		}, func(f *episode.Facts) {
			f.Proved, f.Nearly, f.NotYet, f.OtherTrials, f.TriedAtScale = 1, 2, 3, 2, true
		}},
		{"tried at another scale", func(t *testing.T, st *store.Store, c cooking) {
			addTrial(t, st, c, "proved")
			ok(t, st.UseVersion(t.Context(), c.episodeID, 1, c.versionID, measure.Ratio(3, 2)))
		}, func(f *episode.Facts) { f.Proved = 1 }},
		{"batches", func(t *testing.T, st *store.Store, c cooking) {
			for _, kind := range []episode.BatchKind{episode.ShootBatch, episode.Spare, episode.SwapOut} {
				must(st.AddBatch(t.Context(), episode.Batch{EpisodeID: c.episodeID, Kind: kind, Makes: measure.Whole(1)}))(t)
			}
			gone := must(st.AddBatch(t.Context(), episode.Batch{EpisodeID: c.episodeID, Kind: episode.ShootBatch, Makes: measure.Whole(1)}))(t)
			ok(t, st.DeleteBatch(t.Context(), gone))
		}, func(f *episode.Facts) { f.Batches, f.ShootBatches = 4, 2 }},
		{"shots", func(t *testing.T, st *store.Store, c cooking) {
			for _, status := range []episode.ShotStatus{episode.Got, episode.Missing, episode.Got, episode.Retake, episode.Got, episode.Missing} {
				must(st.AddShot(t.Context(), episode.Shot{EpisodeID: c.episodeID, Status: status}))(t)
			}
			gone := must(st.AddShot(t.Context(), episode.Shot{EpisodeID: c.episodeID, Status: episode.Missing}))(t)
			ok(t, st.DeleteShot(t.Context(), gone))
		}, func(f *episode.Facts) { f.Shots, f.Missing, f.ToRetake = 6, 2, 1 }},
		{"segments", func(t *testing.T, st *store.Store, c cooking) {
			must(st.AddSegment(t.Context(), episode.Segment{EpisodeID: c.episodeID, PlannedSeconds: 40}))(t)
			must(st.AddSegment(t.Context(), episode.Segment{EpisodeID: c.episodeID}))(t)
			ok(t, st.DeleteSegment(t.Context(), must(st.AddSegment(t.Context(), episode.Segment{EpisodeID: c.episodeID, PlannedSeconds: 7}))(t)))
		}, func(f *episode.Facts) { f.Segments, f.WithoutNarration, f.PlannedSeconds = 2, 1, 40 }},
		{"an older cut with captions, the current one without", func(t *testing.T, st *store.Store, c cooking) {
			must(st.AddCut(t.Context(), episode.Cut{EpisodeID: c.episodeID, Captions: "WEBVTT"}))(t)
			must(st.AddCut(t.Context(), episode.Cut{EpisodeID: c.episodeID}))(t)
		}, func(f *episode.Facts) { f.HasCut = true }},
		{"the older cut used again", func(t *testing.T, st *store.Store, c cooking) {
			older := must(st.AddCut(t.Context(), episode.Cut{EpisodeID: c.episodeID, Captions: "WEBVTT"}))(t)
			must(st.AddCut(t.Context(), episode.Cut{EpisodeID: c.episodeID}))(t)
			ok(t, st.UseCut(t.Context(), older))
		}, func(f *episode.Facts) { f.HasCut, f.HasCaptions = true, true }},
		{"the only cut deleted", func(t *testing.T, st *store.Store, c cooking) {
			ok(t, st.DeleteCut(t.Context(), must(st.AddCut(t.Context(), episode.Cut{EpisodeID: c.episodeID, Captions: "WEBVTT"}))(t)))
		}, func(f *episode.Facts) {}},
		{"the release", func(t *testing.T, st *store.Store, c cooking) {
			ok(t, st.SaveRelease(t.Context(), episode.Release{EpisodeID: c.episodeID, Title: "Eggs", Opening: "Hello.", VideoURL: "https://video.example/1", Revision: 1}))
		}, func(f *episode.Facts) { f.HasTitle, f.HasOpening, f.HasVideoURL = true, true, true }},
		{"a title of 103 characters", func(t *testing.T, st *store.Store, c cooking) {
			ok(t, st.SaveRelease(t.Context(), episode.Release{EpisodeID: c.episodeID, Title: strings.Repeat("é", 103), Revision: 1}))
		}, func(f *episode.Facts) { f.HasTitle, f.TitleOver = true, 3 }},
		{"foods the larder does not know, one of them twice", func(t *testing.T, st *store.Store, c cooking) {
			v := must(st.Version(t.Context(), c.versionID))(t)
			v.Reading = recipe.Recipe{Components: []recipe.Component{{Lines: []recipe.Line{
				{Read: true, Food: "zorb"}, {Read: true, Food: "zorb"}, {Read: true, Food: "blip"}, {Read: true, Food: "egg", FoodID: "egg"},
			}}}}
			ok(t, st.SaveVersion(t.Context(), v))
		}, func(f *episode.Facts) { f.UnreadLines, f.UnsureAllergens = 0, 2 }},
		{"a live share link beside a revoked one", func(t *testing.T, st *store.Store, c cooking) {
			ok(t, st.RevokeShareLink(t.Context(), must(st.AddShareLink(t.Context(), c.episodeID, "a"))(t)))
			must(st.AddShareLink(t.Context(), c.episodeID, "b"))(t)
		}, func(f *episode.Facts) { f.ShareLinkLive = true }},
		{"every share link revoked", func(t *testing.T, st *store.Store, c cooking) {
			ok(t, st.RevokeShareLink(t.Context(), must(st.AddShareLink(t.Context(), c.episodeID, "a"))(t)))
		}, func(f *episode.Facts) {}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			st := open(t)
			addFull(t, st, "another, whose counts are its own")
			c := addCooking(t, st, "Eggs")
			test.do(t, st, c)
			want := episode.Facts{Stage: episode.InDevelopment, HasRecipe: true, UnreadLines: 1, Batches: 1, ShootBatches: 1}
			test.want(&want)
			same(t, "Facts", seasonOf(t, st, c.episodeID).Facts, want)
		})
	}
}

func TestSeasonNamesTheRecipe(t *testing.T) {
	st := open(t)
	c := addCooking(t, st, "Eggs")
	v2 := must(st.AddVersion(t.Context(), eggs2(c.recipeID)))(t)
	ok(t, st.UseVersion(t.Context(), c.episodeID, 1, v2, measure.Whole(1)))
	if row := seasonOf(t, st, c.episodeID); row.RecipeName != "Eggs" || row.VersionNumber != 2 {
		t.Errorf("row = %+v", row)
	}
	bare := addEpisode(t, st, "bare")
	if row := seasonOf(t, st, bare); row.RecipeName != "" || row.VersionNumber != 0 {
		t.Errorf("row = %+v", row)
	}
	_, err := st.SeasonRow(t.Context(), bare+9)
	wantFault(t, err, fault.NotFound)
	ok(t, st.DeleteEpisode(t.Context(), bare))
	_, err = st.SeasonRow(t.Context(), bare)
	wantFault(t, err, fault.NotFound)
}

// The season's length of a script is the one that the script sheet shows.
func TestSeasonTimesTheScriptAsTheKitchenDoes(t *testing.T) {
	tests := []struct {
		name     string
		segments []episode.Segment
		silent   int
	}{
		{"no segments", nil, 0},
		{"planned", []episode.Segment{{PlannedSeconds: 40}, {PlannedSeconds: 1}}, 0},
		{"spoken, rounded up for each", []episode.Segment{{Narration: "One."}, {Narration: "One two three."}, {Narration: "Can't stop 2½ well-known words."}}, 0},
		{"planned and spoken", []episode.Segment{{Narration: "Far more words than three seconds hold, planned for three.", PlannedSeconds: 3}, {Narration: "Two words"}}, 0},
		{"neither", []episode.Segment{{Title: "empty"}, {Narration: " — … "}, {Narration: "word"}}, 2},
	}
	for _, test := range tests {
		for _, pace := range []int{150, 97, 1} {
			t.Run(test.name, func(t *testing.T) {
				st := open(t)
				show := must(st.Show(t.Context()))(t)
				show.WordsPerMinute = pace
				ok(t, st.SaveShow(t.Context(), show))
				id := addEpisode(t, st, "one")
				for _, g := range test.segments {
					g.EpisodeID = id
					must(st.AddSegment(t.Context(), g))(t)
				}
				facts := seasonOf(t, st, id).Facts
				want := script.Length(script.Outline(must(st.Segments(t.Context(), id))(t), pace))
				if facts.PlannedSeconds != want || facts.WithoutNarration != test.silent || facts.Segments != len(test.segments) {
					t.Errorf("%d s, %d silent of %d segments at %d words a minute; want %d s, %d of %d",
						facts.PlannedSeconds, facts.WithoutNarration, facts.Segments, pace, want, test.silent, len(test.segments))
				}
			})
		}
	}
}

func TestSavedNarrationIsTimedAnew(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	g := must(st.Segment(t.Context(), must(st.AddSegment(t.Context(), episode.Segment{EpisodeID: id, Narration: "One two three."}))(t)))(t)
	g.Narration = "One two three four five six seven eight nine ten."
	ok(t, st.SaveSegment(t.Context(), g))
	if got := seasonOf(t, st, id).Facts.PlannedSeconds; got != 4 {
		t.Errorf("PlannedSeconds = %d, want 4 (10 words at 150 a minute)", got)
	}
}

func TestSeasonOfYears(t *testing.T) {
	st := open(t)
	years(t, st, 20)
	rows := must(st.Season(t.Context()))(t)
	if len(rows) != 20 {
		t.Fatalf("%d rows, want 20", len(rows))
	}
	for i, row := range rows {
		want := episode.Facts{Stage: episode.InTheEdit, HasDish: true, HasReleaseDate: true, HasRecipe: true, Proved: 1, Nearly: 3, TriedAtScale: true,
			Batches: 3, ShootBatches: 1, Segments: 8, PlannedSeconds: 4*60 + 4*160, Shots: 30, Missing: 10, HasCut: true, HasCaptions: true, ShareLinkLive: true}
		same(t, row.Episode.Title, row.Facts, want)
		if i > 0 && !row.Episode.ReleaseOn.Before(rows[i-1].Episode.ReleaseOn) {
			t.Errorf("%s is out of order", row.Episode.Title)
		}
	}
}

// What the season counts is what the kitchen lists as still open: an episode
// with everything done has nothing left, and each thing undone shows.
func TestTheSeasonsFactsTellWhatIsStillOpen(t *testing.T) {
	st := open(t)
	ctx := t.Context()
	id := must(st.StartEpisode(ctx, store.Start{
		Episode:    episode.Episode{Title: "Eggs", Dish: "eggs", Stage: episode.InTheEdit, ReleaseOn: day(2026, 5, 1), TargetMinutes: 1},
		RecipeName: "Eggs", Version: store.Version{Text: "2 eggs", Reading: recipe.Recipe{Components: []recipe.Component{{Lines: []recipe.Line{{Text: "2 eggs", Read: true}}}}}},
	}))(t)
	c := cooking{episodeID: id, versionID: must(st.Episode(ctx, id))(t).VersionID}
	trial := addTrial(t, st, c, "proved")
	segment := must(st.AddSegment(ctx, episode.Segment{EpisodeID: id, PlannedSeconds: 60}))(t)
	shot := must(st.AddShot(ctx, episode.Shot{EpisodeID: id, Status: episode.Got}))(t)
	cut := must(st.AddCut(ctx, episode.Cut{EpisodeID: id, Captions: "WEBVTT"}))(t)
	ok(t, st.SaveRelease(ctx, episode.Release{EpisodeID: id, Title: "Eggs", Opening: "Hello.", Revision: 1}))
	share := must(st.AddShareLink(ctx, id, "token"))(t)
	if open := episode.StillOpen(seasonOf(t, st, id).Facts); len(open) != 0 {
		t.Fatalf("all is done, and still open: %+v", open)
	}
	tests := []struct {
		name, sheet string
		undo        func() error
	}{
		{"the trial", "trials", func() error { return st.DeleteTrial(ctx, trial) }},
		{"the segment", "script", func() error { return st.DeleteSegment(ctx, segment) }},
		{"the shot", "shots", func() error {
			_, err := st.TickShot(ctx, shot, store.ShotTick{Status: episode.Retake})
			return err
		}},
		{"the cut", "cut", func() error { return st.DeleteCut(ctx, cut) }},
		{"the share link", "release", func() error { return st.RevokeShareLink(ctx, share) }},
		{"the batch", "shop", func() error { return st.DeleteBatch(ctx, must(st.Batches(ctx, id))(t)[0].ID) }},
	}
	for i, test := range tests {
		ok(t, test.undo())
		open := episode.StillOpen(seasonOf(t, st, id).Facts)
		found := false
		for _, each := range open {
			found = found || each.Sheet == test.sheet
		}
		if !found || len(open) != i+1 {
			t.Errorf("%s undone: still open %+v, want %d things, one on sheet %q", test.name, open, i+1, test.sheet)
		}
	}
}
