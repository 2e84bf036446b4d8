package store_test

import (
	"context"
	"os"
	"path/filepath"
	"sync"
	"testing"
	"time"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/store"
)

// testClock is a clock that tests set by hand. It starts at noon with a
// fraction finer than the store keeps.
type testClock struct{ at time.Time }

func (c *testClock) now() time.Time { return c.at }

func (c *testClock) pass(d time.Duration) { c.at = c.at.Add(d) }

// stored is the clock's instant as the store gives it back.
func (c *testClock) stored() time.Time { return c.at.Truncate(time.Millisecond) }

// open opens a new store in a folder of the test's own.
func open(t testing.TB) *store.Store {
	t.Helper()
	st, _ := openClocked(t)
	return st
}

func openClocked(t testing.TB) (*store.Store, *testClock) {
	t.Helper()
	clock := &testClock{time.Date(2026, 3, 9, 12, 0, 0, 123_456_789, time.UTC)}
	path := filepath.Join(t.TempDir(), "show.db")
	ok(t, os.WriteFile(path, emptyStore(), 0o600))
	return openAt(t, path, clock.now), clock
}

// emptyStore is the file of a store in which nothing is kept yet. It is made
// once: the migrations take longer than most tests, and have tests of their own.
var emptyStore = sync.OnceValue(func() []byte {
	folder, err := os.MkdirTemp("", "store")
	if err != nil {
		panic(err)
	}
	defer os.RemoveAll(folder)
	path := filepath.Join(folder, "empty.db")
	st, err := store.Open(context.Background(), path, store.Options{})
	if err == nil {
		err = st.Close()
	}
	if err != nil {
		panic(err)
	}
	file, err := os.ReadFile(path)
	if err != nil {
		panic(err)
	}
	return file
})

// openAt opens the store at path; a nil clock is the machine's.
func openAt(t testing.TB, path string, now func() time.Time) *store.Store {
	t.Helper()
	st, err := store.Open(t.Context(), path, store.Options{Now: now})
	if err != nil {
		t.Fatalf("Open: %v", err)
	}
	t.Cleanup(func() {
		if err := st.Close(); err != nil {
			t.Errorf("Close: %v", err)
		}
	})
	return st
}

// must gives the value, or ends the test on the error.
func must[T any](value T, err error) func(testing.TB) T {
	return func(t testing.TB) T {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return value
	}
}

// ok ends the test on an error.
func ok(t testing.TB, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}

// wantFault checks the kind of an error, and that it has words for a person.
func wantFault(t testing.TB, err error, kind fault.Kind) {
	t.Helper()
	if err == nil || fault.KindOf(err) != kind {
		t.Fatalf("error is %v of kind %d, want kind %d", err, fault.KindOf(err), kind)
	}
	if fault.Say(err) == "" {
		t.Errorf("%v says nothing to a person", err)
	}
}

// addEpisode adds an episode with a title and nothing else.
func addEpisode(t testing.TB, st *store.Store, title string) int64 {
	t.Helper()
	return must(st.AddEpisode(t.Context(), episode.Episode{Title: title, Stage: episode.InDevelopment}))(t)
}

// eggs is a version with one line, one step, and one line that was not read.
func eggs(text string) store.Version {
	unread := []recipe.Unread{{Number: 3, Text: "~~~", Reason: "There are no words here."}}
	return store.Version{Text: text, Reading: recipe.Recipe{Title: text, Unread: unread, Components: []recipe.Component{{
		Lines: []recipe.Line{{Number: 1, Text: "2 eggs", Read: true, HasAmount: true, Amount: measure.Of(measure.Whole(2), measure.Each), Food: "eggs", FoodID: "egg"}},
		Steps: []recipe.Step{{Number: 2, Text: "Boil them for 6 minutes."}},
	}}}}
}

// addRecipe adds a recipe of one version.
func addRecipe(t testing.TB, st *store.Store, name string) (recipeID, versionID int64) {
	t.Helper()
	recipeID, versionID, err := st.AddRecipe(t.Context(), name, eggs(name))
	ok(t, err)
	return recipeID, versionID
}

// cooking is an episode that uses a recipe.
type cooking struct {
	episodeID, recipeID, versionID int64
}

func addCooking(t testing.TB, st *store.Store, title string) cooking {
	t.Helper()
	id := must(st.StartEpisode(t.Context(), store.Start{
		Episode:    episode.Episode{Title: title, Stage: episode.InDevelopment},
		RecipeName: title, Version: eggs(title),
	}))(t)
	e := must(st.Episode(t.Context(), id))(t)
	return cooking{id, e.RecipeID, e.VersionID}
}

// addTrial tries the version at scale 1.
func addTrial(t testing.TB, st *store.Store, c cooking, verdict string) int64 {
	t.Helper()
	return must(st.AddTrial(t.Context(), episode.Trial{EpisodeID: c.episodeID, VersionID: c.versionID, Scale: measure.Whole(1), Verdict: verdict}))(t)
}
