package recipe_test

import (
	"testing"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// A counted food's words agree with its number when scaling takes it over one or
// back: English grammar.
func TestWordsAgree(t *testing.T) {
	for _, tt := range []struct {
		line string
		by   measure.Number
		want string
	}{
		{"1 egg", measure.Whole(2), "eggs"},
		{"1 large egg yolk", measure.Whole(3), "large egg yolks"},
		{"2 eggs", measure.Ratio(1, 2), "egg"},
		{"1 tomato", measure.Whole(4), "tomatoes"},
		{"2 tomatoes", measure.Ratio(1, 2), "tomato"},
		{"1 peach, sliced", measure.Whole(2), "peaches, sliced"},
		{"1 strawberry", measure.Whole(2), "strawberries"},
		{"2 anchovies", measure.Ratio(1, 2), "anchovy"},
		{"1 bay leaf", measure.Whole(2), "bay leaves"},
		{"2 loaves", measure.Ratio(1, 2), "loaf"},
		{"1 squash", measure.Whole(2), "squash"},
		{"1 head of garlic", measure.Whole(2), "garlic"}, // the unit is counted, not the food
		{"200 g tomatoes", measure.Ratio(1, 200), "tomatoes"},
		{"2 radishes", measure.Ratio(1, 2), "radish"},
		{"1 box", measure.Whole(1), ""},
		{"3 eggs", measure.Whole(2), "eggs"}, // many before and after
		{"1 shin of beef", measure.Whole(2), "shins of beef"},
	} {
		t.Run(tt.line, func(t *testing.T) {
			r := recipe.Reader{}.Read("Dish\n\nIngredients\n- " + tt.line + "\n")
			lines := recipe.Scale(r, tt.by, recipe.Writer{}).Lines
			if len(lines) != 1 || tt.want != "" && lines[0].Words != tt.want {
				t.Errorf("%q × %v is written %+v, want %q", tt.line, tt.by, lines, tt.want)
			}
		})
	}
}

// What is said of a food is written behind it.
func TestWordsInOrder(t *testing.T) {
	for line, want := range map[string]string{
		"3 large eggs, beaten":                       "large eggs, beaten",
		"200 g flour, sifted, plus more for dusting": "flour, sifted, plus more for dusting",
		"1 tbsp rum (optional)":                      "rum (optional)",
		"1 cup sugar, divided":                       "sugar, divided",
		"salt, to taste":                             "salt, to taste",
		"salt, as needed":                            "salt, as needed",
		"oil, for frying":                            "oil, for frying",
		"herbs, to serve (optional)":                 "herbs, to serve (optional)",
		"2 x 400 g tins beans, drained":              "tins beans, drained",
		"1 x 400 g tin beans":                        "tin beans",
		"4 x 150 g fillets of cod":                   "fillets of cod",
		"200 g butter or lard":                       "butter or lard",
		"200 g butter or lard, melted, for the tin":  "butter or lard, melted, for the tin",
		"zest of 1 lemon":                            "lemon, zest",
		"1 heaped tbsp flour":                        "flour, heaped",
	} {
		if got := (recipe.Writer{}).Line(recipe.Reader{}.ReadLine(line)); got.Words != want {
			t.Errorf("%q has the words %q, want %q", line, got.Words, want)
		}
	}
}

// A name of several foods that are all known is no question.
func TestSeveralFoodsAreNoQuestion(t *testing.T) {
	r, w := recipe.Reader{Larder: larder(t)}, recipe.Writer{Larder: larder(t)}
	for line, asks := range map[string]bool{
		"salt and pepper":         false,
		"Salt & pepper, to taste": false,
		"salt and stardust":       true,
		"stardust":                true,
		"100 g salt and pepper":   true, // how much of which?
	} {
		if got := w.Line(r.ReadLine(line)).Question; (got != "") != asks {
			t.Errorf("%q asks %q", line, got)
		}
	}
}
