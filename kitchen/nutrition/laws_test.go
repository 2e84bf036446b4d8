package nutrition_test

import (
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/nutrition"
	"benchproof/kitchen/recipe"
)

// parts are lines and steps that the rules look at, each in its own way.
var parts = []string{
	"For the dough:\n", "For the brine:\n", "For the marinade:\n", "For frying:\n", "For the glaze:\n",
	"500 g plain flour", "2 large eggs", "300 ml whole milk", "1½ cups caster sugar", "2–3 tbsp honey", "½ tsp salt", "salt, to taste",
	"1 litre water", "60 g salt", "100 ml soy sauce", "1.5–2 litres sunflower oil, for deep-frying", "3 tbsp olive oil", "250 g unsalted butter",
	"2 × 400 g tins chickpeas, drained", "750 ml red wine", "3 tbsp brandy (optional)", "200 g zorblax", "2 zorblaxes", "1 cup zorblax",
	"2 litres water, for boiling", "1 kg chicken thighs", "3 onions, chopped", "vegetable oil, for frying", "1 packet plain flour", "a handful of parsley",
}

var methods = []string{
	"Knead the flour, milk and eggs for 10 minutes.", "Leave the chicken in the brine overnight.", "Lift the chicken out of the marinade.",
	"Discard the brine.", "Deep-fry for 4 minutes, until golden.", "Pour in the red wine and simmer for 1 hour.", "Set the brandy alight.",
	"Boil the marinade for 2 minutes and brush it on.", "Bake for 30–40 minutes at 180 °C.",
}

// anyRecipe is a recipe of such parts.
func anyRecipe(t *rapid.T) string {
	lines := rapid.SliceOfN(rapid.SampledFrom(parts), 1, 14).Draw(t, "lines")
	steps := rapid.SliceOfN(rapid.SampledFrom(methods), 0, 5).Draw(t, "steps")
	makes := rapid.IntRange(1, 24).Draw(t, "makes")
	return "Dish\nMakes " + strconv.Itoa(makes) + "\n\nIngredients\n" + strings.Join(lines, "\n") + "\n\nMethod\n" + strings.Join(steps, "\n") + "\n"
}

// Laws: k times the recipe holds k times as much; its pieces, k times as many,
// and 100 g of it hold the same, and as much of it is covered.
func TestScalingIsLinear(t *testing.T) {
	l := larder(t)
	w := recipe.Writer{Larder: l, House: measure.US}
	rapid.Check(t, func(t *rapid.T) {
		r := recipe.Reader{Larder: l}.Read(anyRecipe(t))
		k := measure.Ratio(rapid.Int64Range(1, 40).Draw(t, "k"), rapid.Int64Range(1, 8).Draw(t, "parts"))
		one, many := nutrition.Of(r, w), nutrition.Of(recipe.Scale(r, k, w).Recipe, w)
		if !one.Covered.Equal(many.Covered) {
			t.Fatalf("covered %s once, %s %s times", one.Covered, many.Covered, k)
		}
		pieceOne, _ := one.PerPiece()
		pieceMany, _ := many.PerPiece()
		for _, same := range []struct {
			of        string
			one, many food.Totals
		}{{"the whole", one.Totals.Times(k), many.Totals}, {"a piece", pieceOne, pieceMany}, {"100 g", one.Per100(), many.Per100()}} {
			for _, n := range food.AllNutrients() {
				a, shareA := same.one.Of(n)
				b, shareB := same.many.Of(n)
				if !a.Equal(b) || !shareA.Equal(shareB) {
					t.Fatalf("%s: %s is %s once, %s %s times", same.of, n, a, b, k)
				}
			}
		}
	})
}

// Laws: every line counts, is missing, or both if it has a mass alone; what
// counts is from nothing to the whole of the line; the lines add up to the
// totals; the share covered is a share.
func TestNoLineIsLost(t *testing.T) {
	l := larder(t)
	w := recipe.Writer{Larder: l, House: measure.US}
	rapid.Check(t, func(t *rapid.T) {
		r := recipe.Reader{Larder: l}.Read(anyRecipe(t))
		holdsTogether(t, r, nutrition.Of(r, w))
	})
}

type failer interface{ Fatalf(string, ...any) }

func holdsTogether(t failer, r recipe.Recipe, f nutrition.Facts) {
	named := map[string]bool{}
	for _, m := range f.Missing {
		named[m.Text] = true
		if m.Say == "" || m.Reason == "" {
			t.Fatalf("%q is missing without a word", m.Text)
		}
	}
	counted := map[[2]int]bool{}
	var sum food.Totals
	for _, c := range f.Lines {
		counted[[2]int{c.Component, c.Line}] = true
		sum = sum.Plus(c.Adds)
		if whole := c.Weighed.Grams.To; c.Eaten.Sign() < 0 || !whole.IsZero() && c.Eaten.Cmp(whole) > 0 {
			t.Fatalf("%s of %s count", c.Eaten, whole)
		}
	}
	made := map[string]bool{}
	for _, c := range r.Components {
		made[strings.ToLower(c.Name)] = true
	}
	for i, c := range r.Components {
		for k, line := range c.Lines {
			if !counted[[2]int{i, k}] && !named[line.Text] && !made[strings.ToLower(line.Food)] {
				t.Fatalf("%q neither counts nor is missing", line.Text)
			}
		}
	}
	for _, n := range food.AllNutrients() {
		a, _ := sum.Of(n)
		if b, _ := f.Totals.Of(n); !a.Equal(b) {
			t.Fatalf("%s: the lines add up to %s, the totals are %s", n, a, b)
		}
	}
	if f.Covered.Sign() < 0 || f.Covered.Cmp(num("1")) > 0 {
		t.Fatalf("covered %s", f.Covered)
	}
}

// FuzzOf holds the same laws to any text at all.
func FuzzOf(f *testing.F) {
	files, _ := filepath.Glob(filepath.Join("..", "..", "seed", "demo", "recipes", "*.txt"))
	for _, file := range files {
		text, err := os.ReadFile(file)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(string(text))
	}
	f.Add(strings.Join(parts, "\n") + "\n\nMethod\n" + strings.Join(methods, "\n"))
	l := larder(f)
	f.Fuzz(func(t *testing.T, text string) {
		r := recipe.Reader{Larder: l}.Read(text)
		facts := nutrition.Of(r, recipe.Writer{Larder: l})
		holdsTogether(t, r, facts)
		facts.US()
		facts.EU()
	})
}
