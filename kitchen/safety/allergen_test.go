package safety_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/food"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/safety"
)

// TestAllergensByThreeLaws: Regulation (EU) 1169/2011 Annex II; FALCPA 2004 with
// the FASTER Act 2021; Standard 1.2.3 and Schedule 9 (Australia, New Zealand).
// Pine nuts are on the US and AU/NZ lists and not on the EU's; celery, barley and
// mustard are not on the US list.
func TestAllergensByThreeLaws(t *testing.T) {
	larder := food.NewLarder([]food.Food{
		{ID: "flour", Name: "plain flour", Allergens: []string{"wheat"}},
		{ID: "barley", Name: "pearl barley", Allergens: []string{"barley"}},
		{ID: "butter", Name: "butter", Allergens: []string{"milk"}},
		{ID: "pine", Name: "pine nuts", Allergens: []string{"pine nut"}},
		{ID: "celery", Name: "celery", Allergens: []string{"celery"}},
		{ID: "stock", Name: "vegetable stock", MayHold: []string{"celery", "wheat"}},
		{ID: "oil", Name: "olive oil"},
	})
	line := func(id, name string) recipe.Line { return recipe.Line{Text: name, Read: true, Food: name, FoodID: id} }
	tests := []struct {
		name  string
		lines []recipe.Line
		want  safety.Report
	}{
		{"none", []recipe.Line{line("oil", "oil")}, safety.Report{}},
		{"wheat and milk", []recipe.Line{line("butter", "butter"), line("flour", "flour"), line("butter", "more butter")},
			safety.Report{EU: []string{"cereals containing gluten (wheat)", "milk"}, US: []string{"milk", "wheat"}, ANZ: []string{"wheat", "gluten", "milk"}}},
		{"barley, celery, pine nuts", []recipe.Line{line("barley", "barley"), line("celery", "celery"), line("pine", "pine nuts")},
			safety.Report{EU: []string{"cereals containing gluten (barley)", "celery"}, US: []string{"tree nuts (pine nut)"}, ANZ: []string{"gluten", "pine nut"}}},
		{"some makers' stock", []recipe.Line{line("stock", "stock"), line("flour", "flour")},
			safety.Report{EU: []string{"cereals containing gluten (wheat)"}, US: []string{"wheat"}, ANZ: []string{"wheat", "gluten"},
				MayHold: food.AllergenLists{EU: []string{"celery"}}}},
		{"optional lines count", []recipe.Line{{Text: "butter", Read: true, Food: "butter", FoodID: "butter", Optional: true}},
			safety.Report{EU: []string{"milk"}, US: []string{"milk"}, ANZ: []string{"milk"}}},
		{"foods nobody knows, once each", []recipe.Line{line("", "Gran’s  powder"), line("gone", "lost food"), line("", "Gran’s powder"), {Text: "some of that"}, {Text: "2 g", Read: true}},
			safety.Report{Unsure: []string{"Gran’s powder", "lost food", "some of that", "2 g"}}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			r := recipe.Recipe{Components: []recipe.Component{{Lines: test.lines[:1]}, {Lines: test.lines[1:]}}}
			if diff := cmp.Diff(test.want, safety.Allergens(r, larder)); diff != "" {
				t.Errorf("Allergens (-want +got):\n%s", diff)
			}
		})
	}
}

func TestAllergensWithoutALarder(t *testing.T) {
	r := dish("Toast", "bread, butter")
	r.Unread = []recipe.Unread{{Text: "???"}}
	want := safety.Report{Unsure: []string{"bread", "butter", "???"}}
	if diff := cmp.Diff(want, safety.Allergens(r, nil)); diff != "" {
		t.Errorf("Allergens (-want +got):\n%s", diff)
	}
}

func TestSentence(t *testing.T) {
	for want, list := range map[string][]string{
		"":                                nil,
		"Contains milk.":                  {"milk"},
		"Contains wheat, milk and egg.":   {"wheat", "milk", "egg"},
		"Contains milk and nuts (pecan).": {"milk", "nuts (pecan)"},
	} {
		if got := safety.Sentence(list); got != want {
			t.Errorf("Sentence(%q) = %q, want %q", list, got, want)
		}
	}
}
