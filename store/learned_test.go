package store_test

import (
	"testing"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/recipe"
	"benchproof/store"
)

func TestLineCorrectionsKeepEveryField(t *testing.T) {
	st := open(t)
	one, _ := addRecipe(t, st, "One")
	two, _ := addRecipe(t, st, "Two")
	first := filled[recipe.Correction](t)
	ok(t, st.CorrectLine(t.Context(), one, "a knob o' butter", recipe.Correction{Food: "butter"}))
	ok(t, st.CorrectLine(t.Context(), one, "a knob o' butter", first))
	ok(t, st.CorrectLine(t.Context(), one, "salt", recipe.Correction{ToTaste: true}))
	ok(t, st.CorrectLine(t.Context(), two, "salt", recipe.Correction{Food: "sea salt"}))
	same(t, "corrections of one", must(st.LineCorrections(t.Context(), one))(t),
		map[string]recipe.Correction{"a knob o' butter": first, "salt": {ToTaste: true}})
	ok(t, st.ForgetLine(t.Context(), one, "a knob o' butter"))
	ok(t, st.ForgetLine(t.Context(), one, "a knob o' butter"))
	same(t, "corrections of one after forgetting", must(st.LineCorrections(t.Context(), one))(t), map[string]recipe.Correction{"salt": {ToTaste: true}})
	same(t, "corrections of two", must(st.LineCorrections(t.Context(), two))(t), map[string]recipe.Correction{"salt": {Food: "sea salt"}})
	wantFault(t, st.CorrectLine(t.Context(), 4711, "salt", first), fault.NotFound)
}

// The reader takes what the store gives.
func TestTheReaderGoesByTheStoresCorrections(t *testing.T) {
	st := open(t)
	id, _ := addRecipe(t, st, "One")
	ok(t, st.CorrectLine(t.Context(), id, "a good glug", recipe.Correction{Food: "olive oil", FoodID: "olive-oil"}))
	line := recipe.Reader{Corrections: must(st.LineCorrections(t.Context(), id))(t)}.ReadLine("a good glug")
	if line.Food != "olive oil" || !line.Corrected {
		t.Errorf("ReadLine = %+v", line)
	}
}

func TestLearnedFoods(t *testing.T) {
	st := open(t)
	same(t, "a new show", must(st.LearnedFoods(t.Context()))(t), map[string]string{})
	ok(t, st.LearnFood(t.Context(), "strong flour", "flour-plain"))
	ok(t, st.LearnFood(t.Context(), "strong flour", "flour-bread"))
	ok(t, st.LearnFood(t.Context(), "Käse", "cheese"))
	same(t, "learned", must(st.LearnedFoods(t.Context()))(t), map[string]string{"strong flour": "flour-bread", "Käse": "cheese"})
	ok(t, st.ForgetFood(t.Context(), "strong flour"))
	ok(t, st.ForgetFood(t.Context(), "strong flour"))
	same(t, "after forgetting", must(st.LearnedFoods(t.Context()))(t), map[string]string{"Käse": "cheese"})
}

func TestCorrectionsFollowTheirRecipe(t *testing.T) {
	st := open(t)
	id, _ := addRecipe(t, st, "One")
	ok(t, st.CorrectLine(t.Context(), id, "salt", recipe.Correction{ToTaste: true}))
	ok(t, st.DeleteRecipe(t.Context(), id))
	wantFault(t, st.CorrectLine(t.Context(), id, "pepper", recipe.Correction{}), fault.NotFound)
	ok(t, st.Restore(t.Context(), store.RecipeKind, id))
	if got := must(st.LineCorrections(t.Context(), id))(t); len(got) != 1 {
		t.Errorf("LineCorrections = %+v", got)
	}
}
