package shop_test

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shop"
	"benchproof/seed"
)

// demoSheet is the list for two makes of one of the demo show's recipes, as
// pasted, with the built-in larder.
func demoSheet(t *testing.T, name string, system measure.System) shop.Sheet {
	t.Helper()
	kitchen, err := seed.Larder()
	if err != nil {
		t.Fatal(err)
	}
	text, err := os.ReadFile(filepath.Join("..", "..", "seed", "demo", "recipes", name))
	if err != nil {
		t.Fatal(err)
	}
	read := recipe.Reader{Larder: kitchen}.Read(string(text))
	return shop.List([]shop.Need{{Batch: "shoot", Makes: measure.Whole(2), Recipe: read, System: system}}, kitchen)
}

// TestDemoShopping: the sums are twice the recipe's own amounts, added by hand.
func TestDemoShopping(t *testing.T) {
	tests := []struct {
		recipe string
		want   []string
	}{
		{"knots-v3.txt", []string{
			"Flours and grains: 1 kg | strong white bread flour", // 500 g
			"Dairy and eggs: 200 g | unsalted butter",            // 60 + 40 g
			"Dairy and eggs: 4 | eggs | large, 2 whole, 2 yolks", // 1 and 1 yolk
			"Sugars and syrups: 60 g | honey",                    // 30 g
		}},
		{"tart-v2.txt", []string{
			"Dairy and eggs: 10 | eggs | large, 10 yolks", // 1 + 4 yolks
			"Dairy and eggs: 260 g | unsalted butter",     // 100 + 30 g
			"Sugars and syrups: 260 g | caster sugar",     // 30 + 100 g
			"Flours and grains: 400 g | plain flour",      // 200 g
		}},
		{"stew-v1.txt", []string{
			"Meat and poultry: 2.8 kg | lamb shoulder",                      // 1.2–1.4 kg
			"Flours and grains: 300 g | pearl barley",                       // 150 g
			"Sauces and condiments: 3 L | vegetable stock",                  // 1.2–1.5 l
			"Oils and vinegars: 4 tbsp | cider vinegar | and more to taste", // 1–2 tbsp
		}},
		{"beans-v1.txt", []string{
			"Tins and jars: 4 × 15 oz tins | tinned black beans | 1.71 kg", // 2 cans; 60 oz = 1,701 g
			"Dairy and eggs: 230 g | unsalted butter",                      // 1 stick, 113 g (SR26 01145)
			"Dairy and eggs: 4 | eggs | large",
		}},
		{"fish-v1.txt", []string{
			"Flours and grains: 455 g | plain flour",        // 2 + 6 oz, twice: 453.6 g
			"Oils and vinegars: 4 L | sunflower oil",        // 1.5–2 litres
			"Oils and vinegars:  | malt vinegar",            // to taste
			"Dairy and eggs: 295 mL | soured cream | 285 g", // 5 oz, twice; SR26 01056: 230 g a cup
		}},
	}
	for _, test := range tests {
		t.Run(test.recipe, func(t *testing.T) {
			got := shown(demoSheet(t, test.recipe, measure.Metric))
			for _, want := range test.want {
				if !slices.Contains(got, want) {
					t.Errorf("the list lacks %q:\n\t%s", want, strings.Join(got, "\n\t"))
				}
			}
		})
	}
}

// TestDemoShoppingLosesNothing: every ingredient line of every demo recipe is on
// its list or among its questions, but for water.
func TestDemoShoppingLosesNothing(t *testing.T) {
	all, err := filepath.Glob(filepath.Join("..", "..", "seed", "demo", "recipes", "*.txt"))
	if err != nil || len(all) < 8 {
		t.Fatalf("%d demo recipes: %v", len(all), err)
	}
	for _, path := range all {
		t.Run(filepath.Base(path), func(t *testing.T) {
			text, err := os.ReadFile(path)
			if err != nil {
				t.Fatal(err)
			}
			sheet := demoSheet(t, filepath.Base(path), measure.US)
			names := map[string]bool{}
			for _, aisle := range sheet.Aisles {
				for _, item := range aisle.Items {
					names[strings.ToLower(item.Name)] = true
					names[item.FoodID] = true
					for _, name := range item.AsWritten {
						names[strings.ToLower(name)] = true
					}
				}
			}
			for _, component := range (recipe.Reader{}).Read(string(text)).Components {
				for _, line := range component.Lines {
					name := strings.ToLower(line.Food)
					if !line.Read || strings.Contains(name, "water") || strings.Contains(name, "yolk") {
						continue
					}
					if !names[name] && !names[strings.TrimSuffix(name, "s")] && !names[strings.ReplaceAll(name, " ", "-")] {
						t.Errorf("%q (%s) is not on the list", line.Food, line.Text)
					}
				}
			}
		})
	}
}

// TestItemNamesSeveral: plurals by the larder, else by the common rules of
// English spelling.
func TestItemNamesSeveral(t *testing.T) {
	got := only(t, shop.List([]shop.Need{need("shoot", "1", one("Stew",
		line("onion", "waxy onions", "2", measure.Each), line("onion", "Onion", "1", measure.Each), line("onion", "waxy onions", "1", measure.Each)))}, larder()))
	if got.Name != "onions" {
		t.Errorf("name %q, want onions", got.Name)
	}
	if diff := cmp.Diff([]string{"waxy onions"}, got.AsWritten); diff != "" {
		t.Errorf("as written (-want +got):\n%s", diff)
	}
	for name, want := range map[string]string{
		"lemon": "lemons", "potato": "potatoes", "avocado": "avocados", "peach": "peaches", "radish": "radishes", "box": "boxes",
		"cherry": "cherries", "turkey": "turkeys", "flat loaf": "flat loaves", "walnuts": "walnuts", "egg (duck)": "egg (duck)", "squash": "squashes",
	} {
		kitchen := oneFood(name, "")
		if got := only(t, shop.List([]shop.Need{need("shoot", "1", one("Stew", line("x", name, "3", measure.Each)))}, kitchen)); got.Name != want {
			t.Errorf("three of %q are %q, want %q", name, got.Name, want)
		}
		if got := only(t, shop.List([]shop.Need{need("shoot", "1", one("Stew", line("x", name, "1", measure.Each)))}, kitchen)); got.Name != name {
			t.Errorf("one %q is %q", name, got.Name)
		}
	}
	if got := only(t, shop.List([]shop.Need{need("shoot", "1", one("Stew", line("x", "ox", "3", measure.Each)))}, oneFood("ox", "oxen"))); got.Name != "oxen" {
		t.Errorf("three of ox with a plural of its own are %q", got.Name)
	}
}
