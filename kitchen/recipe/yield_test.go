package recipe_test

import (
	"testing"

	"benchproof/kitchen/recipe"
)

// What recipes say they make, as cooks write it: common practice, no source.
func TestYield(t *testing.T) {
	for _, tt := range []struct{ text, amount, of string }{
		{"Serves 4", "4", "servings"},
		{"serves 4", "4", "servings"},
		{"SERVES 4", "4", "servings"},
		{"Serves: 4", "4", "servings"},
		{"Serves 4–6", "4–6", "servings"},
		{"Serves 4 to 6", "4–6", "servings"},
		{"Serves 4 or 5", "4–5", "servings"},
		{"Serves four", "4", "servings"},
		{"Serves about 8", "8", "servings"},
		{"Serves 4 people", "4", "people"},
		{"Serves a crowd (12-15)", "12–15", "servings"},
		{"Serves a crowd", "0", ""},
		{"Servings: 12 rolls", "12", "rolls"},
		{"Makes 16", "16", ""},
		{"Makes about 16 knots", "16", "knots"},
		{"Makes 12 bars", "12", "bars"},
		{"Makes 12 large slices", "12", "slices"},
		{"Makes a dozen", "12", ""},
		{"Makes one large loaf", "1", "large loaf"},
		{"Makes 2 loaves of about 900 g", "2", "loaves of about 900 g"},
		{"Makes 900 g", "900 g", ""},
		{"Makes 1.5 litres of stock", "3/2 l", "stock"},
		{"Makes 12 (enough for 6)", "12", ""},
		{"Yield: 24 cookies", "24", "cookies"},
		{"Yields 24 cookies", "24", "cookies"},
		{"Yield: 1 (10-inch) skillet, about 8 servings", "1", "skillet"},
		{"For 4 people", "4", "people"},
		{"4 servings", "4", "servings"},
		{"Feeds 6", "6", "servings"},
		{"Portions: 6", "6", "servings"},
		{"Quantity: 20", "20", ""},
		{"Enough for 8", "8", "servings"},
		{"This recipe makes 20 truffles", "20", "truffles"},
		{"Recipe yields 8 servings", "8", "servings"},
		{"Serves 8. Adapted from a neighbour's card.", "8", "servings"},
		{"Makes 12 buns. They freeze well.", "12", "buns"},
		{"Prep 10 min | Serves 4", "4", "servings"},
		{"Prep 10 min • Cook 20 min • Makes 12 buns", "12", "buns"},
		{"PREP 10 min   COOK 12 min   SERVES 4", "4", "servings"},
	} {
		t.Run(tt.text, func(t *testing.T) {
			got := recipe.Reader{}.Read("Dish\n" + tt.text + "\n\n200 g flour\n").Yield
			amount := exact(got.Amount)
			if amount != tt.amount || got.Of != tt.of || got.Text != tt.text {
				t.Errorf("makes %q of %q, text %q; want %q of %q", amount, got.Of, got.Text, tt.amount, tt.of)
			}
		})
	}
}

// Who a recipe is from may stand on the yield's line.
func TestCreditBesideTheYield(t *testing.T) {
	r := recipe.Reader{}.Read("Dish\nServes 8. Adapted from a neighbour's card.\n\n200 g flour\n")
	if len(r.Credits) != 1 || r.Credits[0] != "Adapted from a neighbour's card." {
		t.Errorf("credits %q", r.Credits)
	}
	if again := (recipe.Reader{}).Read(recipe.Text(r)); len(again.Credits) != 1 {
		t.Errorf("written and read again: %q", again.Credits)
	}
}

func TestYieldAtTheEnd(t *testing.T) {
	r := recipe.Reader{}.Read("Dish\n\n200 g flour\n\nMethod\n1. Mix it.\n2. Cut it. Makes 16.\n")
	if got := exact(r.Yield.Amount); got != "16" {
		t.Errorf("makes %q", got)
	}
	if n := len(r.Components[0].Steps); n != 2 || r.Components[0].Steps[1].Text != "Cut it. Makes 16." {
		t.Errorf("the step has lost its words: %+v", r.Components[0].Steps)
	}
	r = recipe.Reader{}.Read("Dish\n\n200 g flour\n\nMethod\n1. Mix it. Makes a mess.\n")
	if !r.Yield.Amount.IsZero() || r.Yield.Text != "" {
		t.Errorf("a mess is no yield: %+v", r.Yield)
	}
}
