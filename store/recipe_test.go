package store_test

import (
	"strings"
	"testing"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/store"
)

func TestRecipesAreListedByName(t *testing.T) {
	st := open(t)
	for _, name := range []string{"plum tart", "Barley stew", "apple jelly"} {
		addRecipe(t, st, name)
	}
	var names []string
	for _, r := range must(st.Recipes(t.Context()))(t) {
		names = append(names, r.Name)
	}
	same(t, "names", names, []string{"apple jelly", "Barley stew", "plum tart"})
}

func TestRenameRecipe(t *testing.T) {
	st := open(t)
	id, _ := addRecipe(t, st, "Eggs")
	r := must(st.Recipe(t.Context(), id))(t)
	r.Name = "Soft eggs"
	ok(t, st.RenameRecipe(t.Context(), r))
	wantFault(t, st.RenameRecipe(t.Context(), r), fault.Conflict)
	r.Revision = 2
	same(t, "recipe", must(st.Recipe(t.Context(), id))(t), r)
	r.ID += 100
	wantFault(t, st.RenameRecipe(t.Context(), r), fault.NotFound)
}

func TestADeletedRecipeIsGoneUntilItIsRestored(t *testing.T) {
	st := open(t)
	id, _ := addRecipe(t, st, "Eggs")
	before := must(st.Recipe(t.Context(), id))(t)
	wantFault(t, st.Restore(t.Context(), store.RecipeKind, id), fault.NotFound)
	ok(t, st.DeleteRecipe(t.Context(), id))
	_, err := st.Recipe(t.Context(), id)
	wantFault(t, err, fault.NotFound)
	wantFault(t, st.RenameRecipe(t.Context(), before), fault.NotFound)
	ok(t, st.Restore(t.Context(), store.RecipeKind, id))
	same(t, "recipe", must(st.Recipe(t.Context(), id))(t), before)
}

func TestARecipeInUseIsNotDeleted(t *testing.T) {
	st := open(t)
	c := addCooking(t, st, "Plum tart")
	err := st.DeleteRecipe(t.Context(), c.recipeID)
	wantFault(t, err, fault.Conflict)
	if !strings.Contains(fault.Say(err), "“Plum tart”") {
		t.Errorf("the refusal does not name the episode: %s", fault.Say(err))
	}
	ok(t, st.UseVersion(t.Context(), c.episodeID, 1, 0, measure.Whole(1)))
	ok(t, st.DeleteRecipe(t.Context(), c.recipeID))
	wantFault(t, st.DeleteRecipe(t.Context(), c.recipeID), fault.NotFound)
}

func TestADeletedRecipeIsNotTakenIntoUse(t *testing.T) {
	st := open(t)
	recipeID, versionID := addRecipe(t, st, "Eggs")
	id := addEpisode(t, st, "one")
	ok(t, st.DeleteRecipe(t.Context(), recipeID))
	wantFault(t, st.UseVersion(t.Context(), id, 1, versionID, measure.Whole(1)), fault.NotFound)
	_, err := st.AddEpisode(t.Context(), episode.Episode{Title: "two", Stage: episode.Pitched, VersionID: versionID})
	wantFault(t, err, fault.NotFound)
	_, err = st.AddTrial(t.Context(), episode.Trial{EpisodeID: id, VersionID: versionID, Verdict: "proved"})
	wantFault(t, err, fault.NotFound)
}

// An undone episode must be whole, so the recipe it uses comes back with it.
func TestARestoredEpisodeBringsItsRecipeBack(t *testing.T) {
	st := open(t)
	c := addCooking(t, st, "Eggs")
	ok(t, st.DeleteEpisode(t.Context(), c.episodeID))
	ok(t, st.DeleteRecipe(t.Context(), c.recipeID))
	ok(t, st.Restore(t.Context(), store.EpisodeKind, c.episodeID))
	must(st.Version(t.Context(), c.versionID))(t)
	if got := must(st.Deleted(t.Context()))(t); len(got) != 0 {
		t.Errorf("Deleted = %+v", got)
	}
}
