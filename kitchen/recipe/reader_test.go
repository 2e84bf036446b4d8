package recipe_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

func TestCorrections(t *testing.T) {
	fix := recipe.Correction{Amount: measure.Of(measure.Whole(30), measure.Gram), HasAmount: true, Food: "butter", Preparation: "soft", Note: "the good one", Size: "small", ToTaste: true}
	r := recipe.Reader{Larder: larder(t), Corrections: map[string]recipe.Correction{"2 lumps of the yellow": fix, "200 g flour": {Food: "rye", FoodID: "rye-flour"}}}
	got := r.Read("Buns\n\nIngredients\n-   2 lumps of the yellow\n200 g flour\n").Components[0].Lines
	want := recipe.Line{Number: 4, Text: "2 lumps of the yellow", Read: true, Corrected: true, Amount: fix.Amount, HasAmount: true, Food: "butter", FoodID: "butter",
		Preparation: "soft", Note: "the good one", Size: "small", ToTaste: true}
	if diff := cmp.Diff(want, got[0]); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
	if got[1].FoodID != "rye-flour" || got[1].HasAmount || !got[1].Corrected {
		t.Errorf("a correction without an amount reads as %+v", got[1])
	}
	if l := r.ReadLine("  2 lumps of the yellow "); !l.Corrected {
		t.Error("a single line is not corrected")
	}
}

func TestStatedSystem(t *testing.T) {
	for line, want := range map[string]measure.System{
		"US cup measures":                                measure.US,
		"(Australian cups and spoons)":                   measure.Australian,
		"Australian tablespoons (20 ml) and 250 ml cups": measure.Australian,
		"All spoons are metric":                          measure.Metric,
		"imperial pints throughout":                      measure.Imperial,
		"US cups, Australian spoons":                     "", // two, so nobody's
		"Let us fill our cups":                           "",
		"An American friend's buns":                      "",
		"My cups are big":                                "",
	} {
		if got := recipe.Reader.Read(recipe.Reader{}, "Buns\n"+line+"\n\n200 g flour\n").System; got != want {
			t.Errorf("%q states %q, want %q", line, got, want)
		}
	}
	if got := (recipe.Reader{}).Read("Buns\n\n200 g flour\n\nNotes\nUS measures.\n").System; got != measure.US {
		t.Errorf("a note states %q", got)
	}
}

func TestFoods(t *testing.T) {
	r := recipe.Reader{Larder: larder(t)}
	for line, want := range map[string]string{
		"2 cups AP flour":              "plain-flour",
		"1 tsp bicarb":                 "bicarbonate-of-soda",
		"1 aubergine":                  "aubergine",
		"3 large egg yolks":            "egg-yolk",
		"200 g unslated butter":        "unsalted-butter", // a slip of the pen
		"5 cm piece of ginger":         "fresh-ginger",    // only the root is measured by length
		"2 tubs moonrock":              "",
		"juice of 1 lemon":             "lemon",
		"2 x 400 g tins chickpeas":     "tinned-chickpeas",
		"1 cup packed brown sugar":     "brown-sugar",
		"3 cloves garlic, crushed":     "garlic",
		"200 g flour 100 g sugar":      "", // not read
		"1 bunch coriander, chopped":   "fresh-coriander",
		"4 tbsp freshly grated ginger": "fresh-ginger",
	} {
		if got := r.ReadLine(line); got.FoodID != want && want != "?" {
			t.Errorf("%q is %q (%q), want %q", line, got.FoodID, got.Choices, want)
		}
	}
	if l := r.ReadLine("1 cup sifted icing sugar"); l.Form != "sifted" {
		t.Errorf("measured sifted, but the form is %q", l.Form)
	}
	if l := r.ReadLine("1 cup icing sugar, sifted"); l.Form != "" {
		t.Errorf("sifted after measuring, but the form is %q", l.Form)
	}
}

// What only a larder can compare: USDA SR 26 01145, a stick of butter 113 g;
// 20081, a cup of flour 125 g.
func TestWeighedStatements(t *testing.T) {
	r := recipe.Reader{Larder: larder(t)}
	for line, asks := range map[string]bool{
		"1 stick (113 g) unsalted butter": false, "1 stick (200 g) unsalted butter": true, "1 cup (120 g) plain flour": false,
		"1 cup (150 g) plain flour": false, "1 cup (300 g) plain flour": true, "about 1 cup (300 g) plain flour": false, "2 eggs (100 g)": false,
	} {
		if got := r.ReadLine(line).Reason; (got != "") != asks {
			t.Errorf("%q asks %q", line, got)
		}
	}
}

func TestSequenceJoins(t *testing.T) {
	r := read(t, "Tart\n\nPastry:\n200 g flour\n100 g butter\n\nCream:\n2 eggs\n100 g sugar\n\nMethod\nHeat the oven to 180 °C.\nRub the butter into the flour.\nBeat the eggs with the sugar.\nFill the pastry with the cream and bake for 20 minutes.\n")
	var got []string
	for _, task := range r.Sequence() {
		after := []string{}
		for _, p := range task.After {
			after = append(after, string('A'+rune(p.Step)))
		}
		got = append(got, string('A'+rune(task.At.Step))+"<"+strings.Join(after, ""))
	}
	// A heats the oven, B and C make the parts side by side, D joins all three.
	if text := strings.Join(got, " "); text != "A< B< C< D<BCA" && text != "A< B< C< D<CBA" {
		t.Errorf("sequence %s", text)
	}
	steps := r.Components[len(r.Components)-1].Steps
	if steps[1].Finishes != "Pastry" || steps[2].Finishes != "Cream" {
		t.Errorf("finishes %q and %q", steps[1].Finishes, steps[2].Finishes)
	}
}

func TestUsesWithAmounts(t *testing.T) {
	r := read(t, "Dough\n\n700 g water\n100 g butter\n\nMethod\n1. Add 650 g of the water and half the butter.\n2. Add the remaining water and the rest of the butter.\n")
	var got []string
	for _, s := range r.Components[0].Steps {
		for _, u := range s.Uses {
			text := u.Words
			if u.HasAmount {
				text += " = " + exact(u.Amount)
			}
			got = append(got, text)
		}
	}
	want := []string{"650 g of the water = 650 g", "half the butter = 50 g", "the remaining water", "the rest of the butter"}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
}
