package store_test

import (
	"errors"
	"fmt"
	"strings"
	"testing"
	"time"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/store"
)

// A field that is added to any part of a reading and not to the store shows
// here as a difference, or as a kind that the filler does not know.
func TestAVersionComesBackWhole(t *testing.T) {
	st, clock := openClocked(t)
	want := filled[store.Version](t)
	recipeID, id, err := st.AddRecipe(t.Context(), "Filled", want)
	ok(t, err)
	want.ID, want.RecipeID, want.Number, want.CreatedAt, want.IsTried, want.Revision = id, recipeID, 1, clock.stored(), false, 1
	same(t, "version", must(st.Version(t.Context(), id))(t), want)
}

func TestASavedVersionComesBackWhole(t *testing.T) {
	st, clock := openClocked(t)
	_, id := addRecipe(t, st, "Eggs")
	before := must(st.Version(t.Context(), id))(t)
	want := filled[store.Version](t)
	want.ID, want.RecipeID, want.Number, want.CreatedAt, want.IsTried, want.Revision = id, before.RecipeID, 1, clock.stored(), false, 1
	clock.pass(time.Hour)
	ok(t, st.SaveVersion(t.Context(), want))
	want.Revision = 2
	same(t, "version", must(st.Version(t.Context(), id))(t), want)
}

func TestAnEmptyReadingComesBackEmpty(t *testing.T) {
	tests := []struct {
		name    string
		reading recipe.Recipe
	}{
		{"nothing", recipe.Recipe{}},
		{"a component without anything", recipe.Recipe{Components: []recipe.Component{{}}}},
		{"an empty component between full ones", recipe.Recipe{Components: []recipe.Component{
			{Name: "Pastry", Lines: []recipe.Line{{Text: "1"}}}, {}, {Name: "Glaze", Steps: []recipe.Step{{Text: "2"}}, Lines: []recipe.Line{{Text: "3"}, {}}},
		}}},
		{"lists of empty things", recipe.Recipe{Intro: []string{""}, Notes: []string{"", ""}, Unread: []recipe.Unread{{}}, Placed: []recipe.Place{{}}}},
		{"indexes below zero", recipe.Recipe{Placed: []recipe.Place{{Number: 1, Component: -1, Of: 1}},
			Components: []recipe.Component{{Steps: []recipe.Step{{Uses: []recipe.Use{{Component: 0, Line: -1, Words: "the pastry"}}}}}}}},
		{"degrees below zero", recipe.Recipe{Components: []recipe.Component{{Steps: []recipe.Step{{
			Temperatures: []measure.Heat{{Degrees: measure.One(measure.Ratio(-37, 2)), Scale: "C", Text: "−18½ °C"}}}}}}}},
		{"a number longer than a machine word", recipe.Recipe{Yield: recipe.Yield{Amount: measure.Amount{Range: measure.One(measure.MustNumber("123456789012345678901234567890/7"))}}}},
	}
	st := open(t)
	recipeID, _ := addRecipe(t, st, "Eggs")
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			id := must(st.AddVersion(t.Context(), store.Version{RecipeID: recipeID, Reading: test.reading}))(t)
			same(t, "reading", must(st.Version(t.Context(), id))(t).Reading, test.reading)
		})
	}
}

func TestVersionsAreNumberedWithinTheirRecipe(t *testing.T) {
	st, clock := openClocked(t)
	one, oneFirst := addRecipe(t, st, "One")
	two, _ := addRecipe(t, st, "Two")
	clock.pass(time.Minute)
	second := must(st.AddVersion(t.Context(), store.Version{RecipeID: one, Text: "less sugar", Note: "100 g instead of 150 g"}))(t)
	must(st.AddVersion(t.Context(), store.Version{RecipeID: two, Text: "other"}))(t)
	third := must(st.AddVersion(t.Context(), store.Version{RecipeID: one, Text: "less sugar still"}))(t)

	var got []string
	for _, v := range must(st.Versions(t.Context(), one))(t) {
		got = append(got, fmt.Sprint(v.Number, " ", v.ID, " ", v.Text))
	}
	want := []string{fmt.Sprint(3, " ", third, " less sugar still"), fmt.Sprint(2, " ", second, " less sugar"), fmt.Sprint(1, " ", oneFirst, " One")}
	same(t, "versions, newest first", got, want)

	same(t, "recipe", must(st.Recipe(t.Context(), one))(t), store.Recipe{
		ID: one, Name: "One", Versions: 3, LatestID: third, LatestAt: clock.stored(), Revision: 1,
	})
}

// Everything that makes a version tried, and what does not.
func TestTriedVersionsAreNeverChanged(t *testing.T) {
	tests := []struct {
		name    string
		try     func(t *testing.T, st *store.Store, c cooking)
		isTried bool
	}{
		{"in an episode's use", func(t *testing.T, st *store.Store, c cooking) {}, false},
		{"tried at the bench", func(t *testing.T, st *store.Store, c cooking) { addTrial(t, st, c, "not yet") }, true},
		{"its trial deleted, which can be undone", func(t *testing.T, st *store.Store, c cooking) {
			ok(t, st.DeleteTrial(t.Context(), addTrial(t, st, c, "proved")))
		}, true},
		{"its trial purged", func(t *testing.T, st *store.Store, c cooking) {
			ok(t, st.DeleteTrial(t.Context(), addTrial(t, st, c, "proved")))
			ok(t, st.PurgeDeleted(t.Context(), time.Date(2100, 1, 1, 0, 0, 0, 0, time.UTC)))
		}, false},
		{"released", func(t *testing.T, st *store.Store, c cooking) {
			ok(t, setStage(t, st, c.episodeID, 1, episode.Released))
		}, true},
		{"its released episode deleted, which can be undone", func(t *testing.T, st *store.Store, c cooking) {
			ok(t, setStage(t, st, c.episodeID, 1, episode.Released))
			ok(t, st.DeleteEpisode(t.Context(), c.episodeID))
		}, true},
		{"released, and taken back into the edit", func(t *testing.T, st *store.Store, c cooking) {
			ok(t, setStage(t, st, c.episodeID, 1, episode.Released))
			ok(t, setStage(t, st, c.episodeID, 2, episode.InTheEdit))
		}, false},
		{"another version tried", func(t *testing.T, st *store.Store, c cooking) {
			c.versionID = must(st.AddVersion(t.Context(), store.Version{RecipeID: c.recipeID}))(t)
			addTrial(t, st, c, "proved")
		}, false},
		{"its trial turned out to be of another version", func(t *testing.T, st *store.Store, c cooking) {
			r := must(st.Trial(t.Context(), addTrial(t, st, c, "proved")))(t)
			r.VersionID = must(st.AddVersion(t.Context(), store.Version{RecipeID: c.recipeID}))(t)
			ok(t, st.SaveTrial(t.Context(), r))
		}, false},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			st := open(t)
			c := addCooking(t, st, "Eggs")
			test.try(t, st, c)
			before := must(st.Version(t.Context(), c.versionID))(t)
			if before.IsTried != test.isTried {
				t.Errorf("IsTried = %v, want %v", before.IsTried, test.isTried)
			}
			changed := before
			changed.Text, changed.Reading = "3 eggs", eggs("3 eggs").Reading
			err := st.SaveVersion(t.Context(), changed)
			after := must(st.Version(t.Context(), c.versionID))(t)
			if !test.isTried {
				ok(t, err)
				changed.Revision++
				same(t, "the saved version", after, changed)
				return
			}
			wantFault(t, err, fault.Conflict)
			if !errors.Is(err, store.ErrTried) || !strings.Contains(fault.Say(err), "new version") {
				t.Errorf("the refusal does not lead to a new version: %v", err)
			}
			same(t, "the refused version", after, before)
		})
	}
}

// The triggers hold against every way of writing, not only the store's own.
func TestTheDatabaseItselfRefusesToChangeATriedVersion(t *testing.T) {
	st := open(t)
	c := addCooking(t, st, "Eggs")
	spare := must(st.AddVersion(t.Context(), eggs2(c.recipeID)))(t)
	addTrial(t, st, c, "proved")
	before := must(st.Version(t.Context(), c.versionID))(t)
	tests := []struct{ name, text string }{
		{"change the text", "UPDATE version SET text = 'x' WHERE version_id = ?1"},
		{"change the note", "UPDATE version SET note = 'x' WHERE version_id = ?1"},
		{"remove the version", "DELETE FROM version WHERE version_id = ?1"},
		{"remove the recipe", "DELETE FROM recipe WHERE recipe_id = (SELECT recipe_id FROM version WHERE version_id = ?1)"},
		{"add a component", "INSERT INTO component (version_id, position, name, number) VALUES (?1, 9, 'x', 0)"},
		{"change a component", "UPDATE component SET name = 'x' WHERE version_id = ?1"},
		{"remove a component", "DELETE FROM component WHERE version_id = ?1"},
		{"add a line", "INSERT INTO line SELECT version_id, component, 9" + columnsAfter(t, st, "line", 3) + " FROM line WHERE version_id = ?1"},
		{"change a line", "UPDATE line SET amount_to = '3' WHERE version_id = ?1"},
		{"remove a line", "DELETE FROM line WHERE version_id = ?1"},
		{"add a step", "INSERT INTO step SELECT version_id, component, 9" + columnsAfter(t, st, "step", 3) + " FROM step WHERE version_id = ?1"},
		{"change a step", "UPDATE step SET text = 'x' WHERE version_id = ?1"},
		{"remove a step", "DELETE FROM step WHERE version_id = ?1"},
		{"add an unread line", "INSERT INTO unread_line (version_id, position, number, text, reason) VALUES (?1, 9, 1, 'x', '')"},
		{"change an unread line", "UPDATE unread_line SET text = 'x' WHERE version_id = ?1"},
		{"remove an unread line", "DELETE FROM unread_line WHERE version_id = ?1"},
		{"take another version's component over", "UPDATE component SET version_id = ?1, position = 8 WHERE version_id = " + fmt.Sprint(spare)},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			_, err := st.Raw().ExecContext(t.Context(), test.text, c.versionID)
			if err == nil {
				t.Fatal("the database let it pass")
			}
			if refused := store.Refuse(err); fault.KindOf(refused) != fault.Conflict && fault.KindOf(refused) != fault.NotFound {
				t.Errorf("the refusal is %v of kind %d", refused, fault.KindOf(refused))
			}
			same(t, "version", must(st.Version(t.Context(), c.versionID))(t), before)
		})
	}
}

// eggs2 is a further version of a recipe.
func eggs2(recipeID int64) store.Version {
	v := eggs("eggs again")
	v.RecipeID = recipeID
	return v
}

// columnsAfter lists a table's columns behind the first n, each after a comma.
func columnsAfter(t *testing.T, st *store.Store, table string, n int) string {
	t.Helper()
	rows, err := st.Raw().QueryContext(t.Context(), "SELECT name FROM pragma_table_info(?1) ORDER BY cid", table)
	ok(t, err)
	defer rows.Close()
	var names strings.Builder
	for i := 0; rows.Next(); i++ {
		var name string
		ok(t, rows.Scan(&name))
		if i >= n {
			names.WriteString(", " + name)
		}
	}
	ok(t, rows.Err())
	return names.String()
}

func TestAStaleVersionIsRefusedWhole(t *testing.T) {
	st := open(t)
	c := addCooking(t, st, "Eggs")
	mine := must(st.Version(t.Context(), c.versionID))(t)
	theirs := mine
	theirs.Text, theirs.Reading = "4 eggs", eggs("4 eggs").Reading
	ok(t, st.SaveVersion(t.Context(), theirs))
	mine.Text, mine.Reading = "5 eggs", filled[recipe.Recipe](t)
	err := st.SaveVersion(t.Context(), mine)
	wantFault(t, err, fault.Conflict)
	if errors.Is(err, store.ErrTried) {
		t.Error("a stale save is taken for one of a tried version")
	}
	theirs.Revision = 2
	same(t, "version", must(st.Version(t.Context(), c.versionID))(t), theirs)
}

// A reading that cannot be kept to its last row leaves the old one as it was.
func TestAVersionIsSavedWholeOrNotAtAll(t *testing.T) {
	st := open(t)
	c := addCooking(t, st, "Eggs")
	before := must(st.Version(t.Context(), c.versionID))(t)
	execRaw(t, st, `CREATE TRIGGER stop BEFORE INSERT ON step WHEN NEW.text = 'stop' BEGIN SELECT RAISE(ABORT, 'stop'); END`)
	changed := before
	changed.Text, changed.Reading = "6 eggs", eggs("6 eggs").Reading
	changed.Reading.Components[0].Steps = []recipe.Step{{Text: "go"}, {Text: "stop"}}
	if err := st.SaveVersion(t.Context(), changed); err == nil {
		t.Fatal("the save passed")
	}
	same(t, "version", must(st.Version(t.Context(), c.versionID))(t), before)
	if _, _, err := st.AddRecipe(t.Context(), "Half", changed); err == nil {
		t.Fatal("the second save passed")
	}
	if got := must(st.Recipes(t.Context()))(t); len(got) != 1 {
		t.Errorf("half a recipe is left: %+v", got)
	}
}

func TestVersionsOfADeletedRecipeAreGone(t *testing.T) {
	st := open(t)
	recipeID, id := addRecipe(t, st, "Eggs")
	v := must(st.Version(t.Context(), id))(t)
	ok(t, st.DeleteRecipe(t.Context(), recipeID))
	_, err := st.Version(t.Context(), id)
	wantFault(t, err, fault.NotFound)
	wantFault(t, st.SaveVersion(t.Context(), v), fault.NotFound)
	_, err = st.AddVersion(t.Context(), v)
	wantFault(t, err, fault.NotFound)
	if got := must(st.Versions(t.Context(), recipeID))(t); len(got) != 0 {
		t.Errorf("Versions = %+v", got)
	}
	ok(t, st.Restore(t.Context(), store.RecipeKind, recipeID))
	same(t, "version", must(st.Version(t.Context(), id))(t), v)
}
