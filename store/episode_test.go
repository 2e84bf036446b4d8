package store_test

import (
	"fmt"
	"testing"
	"time"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/store"
)

func day(year int, month time.Month, d int) time.Time {
	return time.Date(year, month, d, 0, 0, 0, 0, time.UTC)
}

func TestEpisodesAreListedByReleaseThenNumber(t *testing.T) {
	st := open(t)
	for _, e := range []episode.Episode{
		{Title: "old", ReleaseOn: day(2025, 12, 31), Number: 9},
		{Title: "undated, numbered", Number: 3},
		{Title: "same day, first", ReleaseOn: day(2026, 4, 2), Number: 11},
		{Title: "same day, second", ReleaseOn: day(2026, 4, 2), Number: 12},
		{Title: "undated"},
		{Title: "same day, second, added later", ReleaseOn: day(2026, 4, 2), Number: 12},
		{Title: "far off", ReleaseOn: day(2026, 11, 20), Number: 1},
	} {
		e.Stage = episode.Pitched
		must(st.AddEpisode(t.Context(), e))(t)
	}
	want := []string{"undated, numbered", "undated", "far off", "same day, second, added later", "same day, second", "same day, first", "old"}
	var listed, season []string
	for _, e := range must(st.Episodes(t.Context()))(t) {
		listed = append(listed, e.Title)
	}
	for _, r := range must(st.Season(t.Context()))(t) {
		season = append(season, r.Episode.Title)
	}
	same(t, "Episodes", listed, want)
	same(t, "Season", season, want)
}

func TestAReleaseDateIsADayWhateverItsHour(t *testing.T) {
	tests := []struct {
		name string
		at   time.Time
	}{
		{"midnight UTC", day(2026, 3, 14)},
		{"late in the east", time.Date(2026, 3, 14, 23, 0, 0, 0, time.FixedZone("east", 13*3600))},
		{"early in the west", time.Date(2026, 3, 14, 1, 0, 0, 0, time.FixedZone("west", -11*3600))},
		{"a leap day", day(2028, 2, 29)},
	}
	st := open(t)
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			id := must(st.AddEpisode(t.Context(), episode.Episode{Stage: episode.Pitched, ReleaseOn: test.at}))(t)
			got := must(st.Episode(t.Context(), id))(t).ReleaseOn
			if want := day(test.at.Date()); !got.Equal(want) {
				t.Errorf("ReleaseOn = %v, want %v", got, want)
			}
		})
	}
}

func TestAScaleOfNothingIsOne(t *testing.T) {
	st := open(t)
	if got := must(st.Episode(t.Context(), addEpisode(t, st, "one")))(t).Scale; !got.Equal(measure.Whole(1)) {
		t.Errorf("Scale = %v, want 1", got)
	}
}

func TestUseVersion(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	recipeID, versionID := addRecipe(t, st, "Eggs")
	ok(t, st.UseVersion(t.Context(), id, 1, versionID, measure.Ratio(5, 3)))
	e := must(st.Episode(t.Context(), id))(t)
	if e.RecipeID != recipeID || e.VersionID != versionID || !e.Scale.Equal(measure.Ratio(5, 3)) || e.Revision != 2 {
		t.Errorf("Episode = %+v", e)
	}
	wantFault(t, st.UseVersion(t.Context(), id, 1, 0, measure.Whole(1)), fault.Conflict)
	wantFault(t, st.UseVersion(t.Context(), id, 2, versionID+99, measure.Whole(1)), fault.NotFound)
	wantFault(t, st.UseVersion(t.Context(), id, 2, versionID, measure.Whole(0)), fault.Invalid)
	wantFault(t, st.UseVersion(t.Context(), id, 2, versionID, measure.Ratio(-1, 2)), fault.Invalid)
	wantFault(t, st.UseVersion(t.Context(), id+99, 2, versionID, measure.Whole(1)), fault.NotFound)
	same(t, "episode after refusals", must(st.Episode(t.Context(), id))(t), e)
	ok(t, st.UseVersion(t.Context(), id, 2, 0, measure.Whole(1)))
	if e = must(st.Episode(t.Context(), id))(t); e.RecipeID != 0 || e.VersionID != 0 {
		t.Errorf("the recipe stayed: %+v", e)
	}
}

// setStage saves an episode's stage, as read at a revision.
func setStage(t testing.TB, st *store.Store, id int64, revision int, stage episode.Stage) error {
	t.Helper()
	e, err := st.Episode(t.Context(), id)
	if err != nil {
		return err
	}
	e.Stage, e.Revision = stage, revision
	return st.SaveBrief(t.Context(), e)
}

func TestSetStage(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	for i, stage := range episode.Stages {
		ok(t, setStage(t, st, id, i+1, stage))
		if got := must(st.Episode(t.Context(), id))(t).Stage; got != stage {
			t.Errorf("Stage = %q, want %q", got, stage)
		}
	}
	wantFault(t, setStage(t, st, id, 1, episode.Pitched), fault.Conflict)
	wantFault(t, setStage(t, st, id, len(episode.Stages)+1, "in the oven"), fault.Invalid)
	wantFault(t, setStage(t, st, id+99, 1, episode.Pitched), fault.NotFound)
}

func TestADeletedEpisodeIsNotSaved(t *testing.T) {
	st := open(t)
	c := addCooking(t, st, "one")
	cut := must(st.AddCut(t.Context(), episode.Cut{EpisodeID: c.episodeID}))(t)
	share := must(st.AddShareLink(t.Context(), c.episodeID, "token"))(t)
	ok(t, st.DeleteEpisode(t.Context(), c.episodeID))
	wantFault(t, st.UseVersion(t.Context(), c.episodeID, 1, c.versionID, measure.Whole(2)), fault.NotFound)
	wantFault(t, setStage(t, st, c.episodeID, 1, episode.Released), fault.NotFound)
	wantFault(t, st.SaveRelease(t.Context(), episode.Release{EpisodeID: c.episodeID, Title: "x", Revision: 1}), fault.NotFound)
	wantFault(t, st.UseCut(t.Context(), cut), fault.NotFound)
	ok(t, st.RevokeShareLink(t.Context(), share)) // shutting a door is always allowed
}

// Whatever of an episode was saved, an older page of any of its forms is stale.
func TestAnEpisodeHasOneRevision(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	old := must(st.Episode(t.Context(), id))(t)
	ok(t, setStage(t, st, id, 1, episode.ReadyToShoot))
	wantFault(t, st.SaveBrief(t.Context(), old), fault.Conflict)
	wantFault(t, st.UseVersion(t.Context(), id, 1, 0, measure.Whole(2)), fault.Conflict)
}

func TestStartEpisodeMakesAllOfIt(t *testing.T) {
	st, clock := openClocked(t)
	pitchID := must(st.AddPitch(t.Context(), episode.Pitch{Dish: "eggs", Times: 3}))(t)
	id := must(st.StartEpisode(t.Context(), store.Start{
		Episode:    episode.Episode{Title: "Soft eggs", Stage: episode.InDevelopment},
		RecipeName: "Eggs", Version: eggs("2 eggs"), PitchID: pitchID,
	}))(t)
	e := must(st.Episode(t.Context(), id))(t)
	v := must(st.Version(t.Context(), e.VersionID))(t)
	want := eggs("2 eggs")
	want.ID, want.RecipeID, want.Number, want.CreatedAt, want.Revision = e.VersionID, e.RecipeID, 1, clock.stored(), 1
	same(t, "version", v, want)
	if r := must(st.Recipe(t.Context(), e.RecipeID))(t); r.Name != "Eggs" {
		t.Errorf("Recipe = %+v", r)
	}
	batches := must(st.Batches(t.Context(), id))(t)
	if len(batches) != 1 || batches[0].Kind != episode.ShootBatch || !batches[0].Makes.Equal(measure.Whole(1)) {
		t.Errorf("Batches = %+v", batches)
	}
	if p := must(st.Pitch(t.Context(), pitchID))(t); p.EpisodeID != id || p.Revision != 1 {
		t.Errorf("Pitch = %+v", p)
	}
}

func TestStartEpisodeWithoutARecipe(t *testing.T) {
	st := open(t)
	id := must(st.StartEpisode(t.Context(), store.Start{Episode: episode.Episode{Title: "Later", Stage: episode.Pitched}}))(t)
	if e := must(st.Episode(t.Context(), id))(t); e.VersionID != 0 {
		t.Errorf("Episode = %+v", e)
	}
	if got := must(st.Recipes(t.Context()))(t); len(got) != 0 {
		t.Errorf("Recipes = %+v", got)
	}
}

func TestStartEpisodeMakesNothingWhenAPartFails(t *testing.T) {
	tests := []struct {
		name  string
		start store.Start
		kind  fault.Kind
	}{
		{"no such pitch", store.Start{Episode: episode.Episode{Stage: episode.Pitched}, RecipeName: "Eggs", PitchID: 99}, fault.NotFound},
		{"no such stage", store.Start{Episode: episode.Episode{Stage: "soon"}, RecipeName: "Eggs"}, fault.Invalid},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			st := open(t)
			_, err := st.StartEpisode(t.Context(), test.start)
			wantFault(t, err, test.kind)
			if left := fmt.Sprint(must(st.Episodes(t.Context()))(t), must(st.Recipes(t.Context()))(t)); left != "[] []" {
				t.Errorf("left behind: %s", left)
			}
		})
	}
}

func TestNothingIsAddedToAnEpisodeThatIsNotThere(t *testing.T) {
	st := open(t)
	gone := addCooking(t, st, "gone")
	ok(t, st.DeleteEpisode(t.Context(), gone.episodeID))
	_, versionID := addRecipe(t, st, "Eggs")
	for _, id := range []int64{gone.episodeID, 4711, 0} {
		tests := []struct {
			name string
			add  func() (int64, error)
		}{
			{"batch", func() (int64, error) {
				return st.AddBatch(t.Context(), episode.Batch{EpisodeID: id, Kind: episode.Spare, Makes: measure.Whole(1)})
			}},
			{"trial", func() (int64, error) {
				return st.AddTrial(t.Context(), episode.Trial{EpisodeID: id, VersionID: versionID, Verdict: "proved"})
			}},
			{"segment", func() (int64, error) { return st.AddSegment(t.Context(), episode.Segment{EpisodeID: id}) }},
			{"shot", func() (int64, error) {
				return st.AddShot(t.Context(), episode.Shot{EpisodeID: id, Status: episode.Missing})
			}},
			{"cut", func() (int64, error) { return st.AddCut(t.Context(), episode.Cut{EpisodeID: id}) }},
			{"correction", func() (int64, error) { return st.AddCorrection(t.Context(), episode.Correction{EpisodeID: id}) }},
			{"share link", func() (int64, error) { return st.AddShareLink(t.Context(), id, "token") }},
			{"tick", func() (int64, error) { return 0, st.SetTick(t.Context(), id, "flour", true) }},
		}
		for _, test := range tests {
			t.Run(fmt.Sprint(test.name, " of ", id), func(t *testing.T) {
				_, err := test.add()
				wantFault(t, err, fault.NotFound)
			})
		}
	}
}

func TestImpossibleChoicesAreRefused(t *testing.T) {
	st := open(t)
	c := addCooking(t, st, "Eggs")
	tests := []struct {
		name string
		err  func() error
	}{
		{"a batch of no makes", func() error {
			_, err := st.AddBatch(t.Context(), episode.Batch{EpisodeID: c.episodeID, Kind: episode.Spare})
			return err
		}},
		{"a batch of fewer than none", func() error {
			_, err := st.AddBatch(t.Context(), episode.Batch{EpisodeID: c.episodeID, Kind: episode.Spare, Makes: measure.Ratio(-1, 2)})
			return err
		}},
		{"a batch of no kind", func() error {
			_, err := st.AddBatch(t.Context(), episode.Batch{EpisodeID: c.episodeID, Makes: measure.Whole(1)})
			return err
		}},
		{"a trial without a verdict", func() error {
			_, err := st.AddTrial(t.Context(), episode.Trial{EpisodeID: c.episodeID, VersionID: c.versionID})
			return err
		}},
		{"a trial of less than no weight", func() error {
			_, err := st.AddTrial(t.Context(), episode.Trial{EpisodeID: c.episodeID, VersionID: c.versionID, Verdict: "proved", DoughGrams: measure.Whole(-3)})
			return err
		}},
		{"a pitch that nobody asked for", func() error {
			_, err := st.AddPitch(t.Context(), episode.Pitch{Dish: "toast"})
			return err
		}},
		{"a shot in no state", func() error {
			_, err := st.AddShot(t.Context(), episode.Shot{EpisodeID: c.episodeID})
			return err
		}},
		{"a segment planned backwards", func() error {
			_, err := st.AddSegment(t.Context(), episode.Segment{EpisodeID: c.episodeID, PlannedSeconds: -1})
			return err
		}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) { wantFault(t, test.err(), fault.Invalid) })
	}
}

// Figures are kept as exact text; the columns take no other kind of value.
func TestFloatsAreNotExactNumbers(t *testing.T) {
	st := open(t)
	c := addCooking(t, st, "Eggs")
	for _, scale := range []any{1.5, "1.5", "0", "", "-2", "one", nil, "1 1/2"} {
		t.Run(fmt.Sprint(scale), func(t *testing.T) {
			_, err := st.Raw().ExecContext(t.Context(), "UPDATE episode SET scale = ?2 WHERE episode_id = ?1", c.episodeID, scale)
			if err == nil {
				t.Fatalf("scale took %v", scale)
			}
			wantFault(t, store.Refuse(err), fault.Invalid)
		})
	}
}

func TestDatesMustExist(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	for _, date := range []string{"2026-02-30", "2026-13-01", "14 March", "2026-3-1", ""} {
		t.Run(date, func(t *testing.T) {
			if _, err := st.Raw().ExecContext(t.Context(), "UPDATE episode SET release_on = ?2 WHERE episode_id = ?1", id, date); err == nil {
				t.Errorf("release_on took %q", date)
			}
		})
	}
}
