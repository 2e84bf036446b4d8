package nutrition_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/nutrition"
	"benchproof/kitchen/recipe"
)

// TestMissing: each reason for a line to be missing, and what it does to the
// share covered beside 100 g of flour. A volume of an unknown food stands for
// as much water, 236.588 g a US cup; anything else for the average line.
func TestMissing(t *testing.T) {
	for _, tc := range []struct {
		name, line string
		reason     nutrition.Reason
		food, say  string
		covered    float64
	}{
		{"unknown, by weight", "300 g zorblax", nutrition.Unknown, "zorblax", "The larder does not know “zorblax”.", 0.25},
		{"unknown, by volume", "1 cup zorblax", nutrition.Unknown, "zorblax", "The larder does not know “zorblax”.", 0.297},
		{"unknown, by number", "3 zorblaxes", nutrition.Unknown, "zorblaxes", "The larder does not know “zorblaxes”.", 0.5},
		{"several foods", "300 g chili powder", nutrition.Ambiguous, "chili powder", "“chili powder” could be several foods. Which is meant?", 0.25},
		{"no weight", "2 packets plain flour", nutrition.NoWeight, "plain flour",
			"The larder does not know what a packet of plain flour weighs. Give it in grams, or add that weight.", 0.5},
		{"to taste", "black pepper, to taste", nutrition.ToTaste, "black pepper", "How much is up to the cook.", 1},
		{"no amount", "parsley", nutrition.NoAmount, "parsley", "No amount is written.", 1},
		{"oil for the pan", "sunflower oil, for frying", nutrition.ToTaste, "sunflower oil", "How much is up to the cook.", 1},
	} {
		t.Run(tc.name, func(t *testing.T) {
			f := of(t, "Dish\n\nIngredients\n100 g plain flour\n"+tc.line+"\n")
			want := []nutrition.Missing{{Text: tc.line, Food: tc.food, Reason: tc.reason, Say: tc.say}}
			if d := cmp.Diff(want, f.Missing); d != "" {
				t.Errorf("missing (-want +got):\n%s", d)
			}
			if got := f.CoveredShare(); got != tc.covered {
				t.Errorf("covered %g, want %g", got, tc.covered)
			}
		})
	}
}

func TestALineNotReadIsMissing(t *testing.T) {
	l := larder(t)
	r := recipe.Recipe{
		Components: []recipe.Component{{Lines: []recipe.Line{
			{Text: "100 g plain flour", Read: true, HasAmount: true, Amount: measure.Of(num("100"), measure.Gram), Food: "plain flour", FoodID: "plain-flour"},
			{Text: "4:00 of ???", Reason: "It is no ingredient."},
			{Text: "§§"},
		}}},
		Unread: []recipe.Unread{{Number: 9, Text: "x", Reason: "It fits nowhere."}},
	}
	f := nutrition.Of(r, recipe.Writer{Larder: l})
	want := []nutrition.Missing{
		{Text: "4:00 of ???", Reason: nutrition.NotRead, Say: "It is no ingredient."},
		{Text: "§§", Reason: nutrition.NotRead, Say: "It could not be read as an ingredient."},
		{Text: "x", Reason: nutrition.NotRead, Say: "It fits nowhere."},
	}
	if d := cmp.Diff(want, f.Missing); d != "" {
		t.Errorf("missing (-want +got):\n%s", d)
	}
	if got := f.CoveredShare(); got != 0.333 { // one line of three
		t.Errorf("covered %g, want 0.333", got)
	}
}

func TestAFoodWithoutFigures(t *testing.T) {
	l := stocked(map[string]map[food.Nutrient]string{"pap": {food.EnergyKcal: "100"}, "ash": {food.SodiumMilligrams: "7"}})
	f := from(l, "Dish\n\n100 g pap\n300 g ash\n")
	want := []nutrition.Missing{{Text: "300 g ash", Food: "ash", Reason: nutrition.NoFigures, Say: "The larder does not know the energy of ash."}}
	if d := cmp.Diff(want, f.Missing); d != "" {
		t.Errorf("missing (-want +got):\n%s", d)
	}
	if got := f.CoveredShare(); got != 0.25 {
		t.Errorf("covered %g, want 0.25", got)
	}
	if got := holds(f.Totals, food.SodiumMilligrams); got != 21 {
		t.Errorf("%g mg of sodium, want the 21 that are known", got)
	}
}

func TestWithoutALarder(t *testing.T) {
	f := nutrition.Of(recipe.Reader{}.Read("Dish\nMakes 2\n\n100 g plain flour\n2 eggs\n"), recipe.Writer{})
	if len(f.Missing) != 2 || !f.Covered.IsZero() {
		t.Errorf("missing %v, covered %s; want both lines, 0", f.Missing, f.Covered)
	}
	if got := f.Totals.Grams(); !got.Equal(num("100")) {
		t.Errorf("it weighs %s g, want the 100 that are written", got)
	}
}

func TestNothingAtAll(t *testing.T) {
	f := nutrition.Of(recipe.Recipe{}, recipe.Writer{})
	if d := cmp.Diff(nutrition.Figures{}, nutrition.FiguresOf(f.Per100())); d != "" {
		t.Errorf("100 g of nothing (-want +got):\n%s", d)
	}
	if _, ok := f.PerPiece(); ok || !f.Covered.IsZero() || len(f.EU().Rows) != 0 {
		t.Errorf("nothing has pieces, covers %s, declares %v", f.Covered, f.EU().Rows)
	}
}

// A component used as an ingredient of another counts once, by its own lines.
func TestAComponentAsALine(t *testing.T) {
	f := of(t, "Dish\n\nSpice dust\n10 g salt\n\nFilling\n100 g plain flour\n1 quantity spice dust\n2 tbsp spice dust\n\nMethod\nMix.\n")
	if got := f.Totals.Grams(); !got.Equal(num("110")) || len(f.Missing) > 1 {
		t.Errorf("it weighs %s g, missing %v", got, f.Missing)
	}
}

// TestNotes: what is assumed of the recipe is said, once.
func TestNotes(t *testing.T) {
	for _, tc := range []struct{ name, text, want string }{
		{"optional", "50 g walnuts, optional", "Counted whole, though optional: walnuts."},
		{"to taste", "1 tsp salt, to taste", "Counted as written, though to taste: salt."},
		{"a range", "1–2 tbsp honey", "Of a range of amounts the middle is counted: honey."},
		{"the same food twice", "1–2 tbsp honey\n2–3 tsp honey", "Of a range of amounts the middle is counted: honey."},
		{"salt without an amount", "salt, to taste", "The salt that has no amount is not in the figures: there is more sodium than they say."},
		{"salt and pepper", "salt and black pepper, to taste", "The salt that has no amount is not in the figures: there is more sodium than they say."},
		{"an estimate", "500 g plain flour\n2 handfuls ice\n50 g double cream", "Weights or figures are estimates for: double cream."},
	} {
		t.Run(tc.name, func(t *testing.T) {
			f := of(t, "Dish\n\nIngredients\n100 g plain flour\n"+tc.text+"\n")
			if d := cmp.Diff([]string{tc.want}, f.Notes); d != "" {
				t.Errorf("notes (-want +got):\n%s", d)
			}
		})
	}
	for _, text := range []string{
		"50 g salted butter", // no salt without an amount
		"5 g double cream",   // an estimate, and little of it
		"100 g caster sugar", // the figures of a published food
	} {
		if f := of(t, "Dish\n\nIngredients\n1 kg plain flour\n"+text+"\n"); len(f.Notes) > 0 {
			t.Errorf("%s: noted %q", text, f.Notes)
		}
	}
}

func TestALeastValueIsNoted(t *testing.T) {
	l := stocked(map[string]map[food.Nutrient]string{
		"pap":   {food.EnergyKcal: "100", food.Protein: "1", food.Fat: "1", food.Saturated: "1", food.Carbohydrate: "1", food.Sugars: "1", food.Fibre: "1", food.SodiumMilligrams: "1"},
		"gruel": {food.EnergyKcal: "100", food.Protein: "1", food.Fat: "1", food.Saturated: "1", food.Carbohydrate: "1", food.Fibre: "1", food.SodiumMilligrams: "1"},
	})
	f := from(l, "Dish\n\nIngredients\n100 g pap\n300 g gruel\n")
	if d := cmp.Diff([]string{"The figure for sugars is a least value: it is known of 25 % of the weight."}, f.Notes); d != "" {
		t.Errorf("notes (-want +got):\n%s", d)
	}
	if f := from(l, "Dish\n\nIngredients\n990 g pap\n10 g gruel\n"); len(f.Notes) > 0 {
		t.Errorf("a spoonful is worth no word: %q", f.Notes)
	}
}
