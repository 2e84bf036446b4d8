package store_test

import (
	"fmt"
	"testing"
	"time"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shop"
	"benchproof/store"
)

// fullEpisode is an episode with one of everything that can hang on it.
type fullEpisode struct {
	cooking
	batch, trial, segment, shot, cut, correction, moment int64
}

func addFull(t testing.TB, st *store.Store, title string) fullEpisode {
	t.Helper()
	ctx := t.Context()
	f := fullEpisode{cooking: addCooking(t, st, title)}
	f.batch = must(st.Batches(ctx, f.episodeID))(t)[0].ID
	f.trial = addTrial(t, st, f.cooking, "proved")
	f.segment = must(st.AddSegment(ctx, episode.Segment{EpisodeID: f.episodeID, Title: "cold open"}))(t)
	f.shot = must(st.AddShot(ctx, episode.Shot{EpisodeID: f.episodeID, Title: "steam", Status: episode.Missing}))(t)
	f.cut = must(st.AddCut(ctx, episode.Cut{EpisodeID: f.episodeID, Name: "rough"}))(t)
	f.correction = must(st.AddCorrection(ctx, episode.Correction{EpisodeID: f.episodeID, Said: "two cups"}))(t)
	f.moment = must(st.AddMoment(ctx, episode.Moment{EpisodeID: f.episodeID, Name: "guests", At: 960}))(t)
	must(st.AddShareLink(ctx, f.episodeID, title))(t)
	ok(t, st.SetTick(ctx, f.episodeID, "flour", true))
	return f
}

// state is all that can be read of an episode.
func (f fullEpisode) state(t testing.TB, st *store.Store) string {
	t.Helper()
	ctx := t.Context()
	all := fmt.Sprint(must(st.Batches(ctx, f.episodeID))(t), must(st.Trials(ctx, f.episodeID))(t), must(st.Segments(ctx, f.episodeID))(t),
		must(st.Shots(ctx, f.episodeID))(t), must(st.Cuts(ctx, f.episodeID))(t), must(st.Corrections(ctx, f.episodeID))(t), must(st.Moments(ctx, f.episodeID))(t),
		must(st.ShareLinks(ctx, f.episodeID))(t))
	rows := must(st.Season(ctx))(t)
	for _, row := range rows {
		if row.Episode.ID == f.episodeID {
			return all + fmt.Sprint(row, must(st.Release(ctx, f.episodeID))(t), must(st.Ticks(ctx, f.episodeID))(t))
		}
	}
	return all
}

func (f fullEpisode) remove(t testing.TB, st *store.Store, kind store.Kind) error {
	ctx := t.Context()
	switch kind {
	case store.EpisodeKind:
		return st.DeleteEpisode(ctx, f.episodeID)
	case store.BatchKind:
		return st.DeleteBatch(ctx, f.batch)
	case store.TrialKind:
		return st.DeleteTrial(ctx, f.trial)
	case store.SegmentKind:
		return st.DeleteSegment(ctx, f.segment)
	case store.ShotKind:
		return st.DeleteShot(ctx, f.shot)
	case store.CutKind:
		return st.DeleteCut(ctx, f.cut)
	case store.CorrectionKind:
		return st.DeleteCorrection(ctx, f.correction)
	case store.MomentKind:
		return st.DeleteMoment(ctx, f.moment)
	}
	t.Fatalf("no %s hangs on an episode", kind)
	return nil
}

func (f fullEpisode) children() map[store.Kind]int64 {
	return map[store.Kind]int64{
		store.BatchKind: f.batch, store.TrialKind: f.trial, store.SegmentKind: f.segment,
		store.ShotKind: f.shot, store.CutKind: f.cut, store.CorrectionKind: f.correction, store.MomentKind: f.moment,
	}
}

func TestAnEpisodeComesBackWithAllThatWentWithIt(t *testing.T) {
	st, clock := openClocked(t)
	f, other := addFull(t, st, "one"), addFull(t, st, "two")
	before, otherBefore := f.state(t, st), other.state(t, st)
	ok(t, st.DeleteEpisode(t.Context(), f.episodeID))
	if got := f.state(t, st); got != "[] [] [] [] [] [] [] []" {
		t.Errorf("still to be read: %s", got)
	}
	for kind := range f.children() {
		wantFault(t, f.remove(t, st, kind), fault.NotFound)
	}
	same(t, "Deleted", must(st.Deleted(t.Context()))(t), []store.Deleted{{Kind: store.EpisodeKind, ID: f.episodeID, Label: "one", At: clock.stored()}})
	same(t, "the other episode", other.state(t, st), otherBefore)
	ok(t, st.Restore(t.Context(), store.EpisodeKind, f.episodeID))
	same(t, "the restored episode", f.state(t, st), before)
	same(t, "the other episode after that", other.state(t, st), otherBefore)
}

// What was deleted by itself stays deleted when its episode comes back, even
// when both went in the same millisecond.
func TestAChildDeletedByItselfStaysDeleted(t *testing.T) {
	for kind := range (fullEpisode{}).children() {
		t.Run(string(kind), func(t *testing.T) {
			st := open(t)
			f := addFull(t, st, "one")
			before := f.state(t, st)
			id := f.children()[kind]
			ok(t, f.remove(t, st, kind))
			without := f.state(t, st)
			ok(t, st.DeleteEpisode(t.Context(), f.episodeID))
			wantFault(t, st.Restore(t.Context(), kind, id), fault.Conflict)
			if got := must(st.Deleted(t.Context()))(t); len(got) != 1 {
				t.Errorf("Deleted lists what cannot be restored: %+v", got)
			}
			ok(t, st.Restore(t.Context(), store.EpisodeKind, f.episodeID))
			same(t, "the restored episode", f.state(t, st), without)
			ok(t, st.Restore(t.Context(), kind, id))
			same(t, "the episode with all restored", f.state(t, st), before)
		})
	}
}

func TestDeletedListsTheLatestFirst(t *testing.T) {
	st, clock := openClocked(t)
	f := addFull(t, st, "one")
	pitch := must(st.AddPitch(t.Context(), episode.Pitch{Dish: "toast", Times: 1}))(t)
	recipeID, _ := addRecipe(t, st, "Spare recipe")
	var want []store.Deleted
	note := func(kind store.Kind, id, episodeID int64, label string, err error) {
		t.Helper()
		ok(t, err)
		want = append([]store.Deleted{{Kind: kind, ID: id, EpisodeID: episodeID, Label: label, At: clock.stored()}}, want...)
		clock.pass(time.Minute)
	}
	note(store.PitchKind, pitch, 0, "toast", st.DeletePitch(t.Context(), pitch))
	pack := must(st.AddPack(t.Context(), shop.Pack{FoodID: "plain-flour", Amount: measure.Of(measure.Ratio(3, 2), measure.Kilogram)}))(t)
	note(store.PackKind, pack, 0, "3/2 kg plain flour", st.DeletePack(t.Context(), pack))
	held := must(st.AddStock(t.Context(), shop.Stock{FoodID: "egg", Amount: measure.Of(measure.Whole(4), measure.Each)}))(t)
	note(store.StockKind, held, 0, "4 egg", st.DeleteStock(t.Context(), held))
	note(store.RecipeKind, recipeID, 0, "Spare recipe", st.DeleteRecipe(t.Context(), recipeID))
	labels := map[store.Kind]string{store.BatchKind: "shoot", store.TrialKind: "proved", store.SegmentKind: "cold open",
		store.ShotKind: "steam", store.CutKind: "rough", store.CorrectionKind: "two cups", store.MomentKind: "guests"}
	for kind, id := range f.children() {
		note(kind, id, f.episodeID, labels[kind], f.remove(t, st, kind))
	}
	same(t, "Deleted", must(st.Deleted(t.Context()))(t), want)
}

func TestRestoreOfNoKind(t *testing.T) {
	for _, kind := range []store.Kind{"", "user", "show", "Episode", "version"} {
		wantFault(t, open(t).Restore(t.Context(), kind, 1), fault.NotFound)
	}
}

func TestPurgeDeleted(t *testing.T) {
	st, clock := openClocked(t)
	old, kept := addFull(t, st, "old"), addFull(t, st, "kept")
	pitch := must(st.AddPitch(t.Context(), episode.Pitch{Dish: "toast", Times: 1}))(t)
	ok(t, st.LinkPitch(t.Context(), pitch, old.episodeID))
	unused, _ := addRecipe(t, st, "Unused")
	ok(t, st.CorrectLine(t.Context(), unused, "salt", recipe.Correction{ToTaste: true}))

	ok(t, st.DeleteEpisode(t.Context(), old.episodeID))
	ok(t, st.DeleteRecipe(t.Context(), old.recipeID))
	ok(t, st.DeleteRecipe(t.Context(), unused))
	ok(t, st.DeleteShot(t.Context(), kept.shot))
	pack, held := must(st.AddPack(t.Context(), shop.Pack{FoodID: "egg"}))(t), must(st.AddStock(t.Context(), shop.Stock{FoodID: "egg"}))(t)
	ok(t, st.DeletePack(t.Context(), pack))
	ok(t, st.DeleteStock(t.Context(), held))
	before := clock.at
	ok(t, st.PurgeDeleted(t.Context(), before))
	if got := must(st.Deleted(t.Context()))(t); len(got) != 6 {
		t.Errorf("purged what was not deleted before: %+v", got)
	}
	clock.pass(time.Hour)
	ok(t, st.DeleteSegment(t.Context(), kept.segment))
	ok(t, st.PurgeDeleted(t.Context(), clock.at))

	got := must(st.Deleted(t.Context()))(t)
	if len(got) != 1 || got[0].Kind != store.SegmentKind {
		t.Errorf("Deleted = %+v, want the segment alone", got)
	}
	wantFault(t, st.Restore(t.Context(), store.EpisodeKind, old.episodeID), fault.NotFound)
	wantFault(t, st.Restore(t.Context(), store.ShotKind, kept.shot), fault.NotFound)
	wantFault(t, st.Restore(t.Context(), store.PackKind, pack), fault.NotFound)
	wantFault(t, st.Restore(t.Context(), store.StockKind, held), fault.NotFound)
	for _, table := range []string{"batch", "trial", "cut", "correction", "tick", "share_link", "release"} {
		if n := count(t, st, table); n != 1 {
			t.Errorf("%d rows in %s, want the kept episode's alone", n, table)
		}
	}
	for _, table := range []string{"recipe", "version", "component", "line", "step", "unread_line"} {
		if n := count(t, st, table); n != 1 {
			t.Errorf("%d rows in %s, want the kept recipe's alone", n, table)
		}
	}
	if n := count(t, st, "line_correction"); n != 0 {
		t.Errorf("%d corrections of purged recipes are left", n)
	}
	must(st.Pitch(t.Context(), pitch))(t)
	ok(t, st.Restore(t.Context(), store.SegmentKind, kept.segment))
}

func count(t testing.TB, st *store.Store, table string) (n int) {
	t.Helper()
	ok(t, st.Raw().QueryRowContext(t.Context(), "SELECT count(*) FROM "+table).Scan(&n))
	return n
}

// A deleted recipe stays while a trial or a deleted episode leads to it: the
// trial is a record, the episode may come back.
func TestPurgeKeepsRecipesThatAreStillUsed(t *testing.T) {
	st, clock := openClocked(t)
	tried, used := addCooking(t, st, "tried"), addCooking(t, st, "used")
	addTrial(t, st, tried, "proved")
	ok(t, st.UseVersion(t.Context(), tried.episodeID, 1, 0, measure.Whole(1)))
	ok(t, st.DeleteRecipe(t.Context(), tried.recipeID))
	clock.pass(time.Hour)
	before := clock.at
	ok(t, st.DeleteEpisode(t.Context(), used.episodeID))
	execRaw(t, st, "UPDATE recipe SET deleted_at = '2000-01-01T00:00:00.000Z' WHERE recipe_id = ?1", used.recipeID)
	ok(t, st.PurgeDeleted(t.Context(), before))
	ok(t, st.Restore(t.Context(), store.EpisodeKind, used.episodeID))
	must(st.Version(t.Context(), used.versionID))(t)
	ok(t, st.Restore(t.Context(), store.RecipeKind, tried.recipeID))
	must(st.Version(t.Context(), tried.versionID))(t)
}

// An id that was purged is never given again, so that an old link or undo
// leads nowhere rather than to another thing.
func TestIDsAreNotGivenTwice(t *testing.T) {
	st, clock := openClocked(t)
	id := addEpisode(t, st, "one")
	ok(t, st.DeleteEpisode(t.Context(), id))
	clock.pass(time.Hour)
	ok(t, st.PurgeDeleted(t.Context(), clock.at))
	if again := addEpisode(t, st, "two"); again == id {
		t.Errorf("id %d was given twice", id)
	}
}
