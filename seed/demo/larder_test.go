package demo_test

import (
	"testing"

	"benchproof/kitchen/food"
	"benchproof/kitchen/recipe"
	"benchproof/seed"
)

func larder(t testing.TB) *food.Larder {
	t.Helper()
	l, err := seed.Larder()
	if err != nil {
		t.Fatalf("Larder: %v", err)
	}
	return l
}

// toAsk are the foods that the host must still answer for: a cook in the United
// States means a blend by chili powder, one elsewhere the pure spice; and
// crispbread is not in every larder.
var toAsk = map[string]bool{"chili powder": true}

// The built-in larder knows every other food of the demo, and takes none for two.
func TestLarderKnowsEveryFood(t *testing.T) {
	reader := recipe.Reader{Larder: larder(t)}
	for _, r := range newShow(t).Recipes {
		for i, v := range r.Versions {
			for _, c := range reader.Read(v.Text).Components {
				for _, l := range c.Lines {
					if (l.FoodID == "" || len(l.Choices) > 0) && !toAsk[l.Food] {
						t.Errorf("%s v%d, %q: food %q is %q, could be %v", r.Key, i+1, l.Text, l.Food, l.FoodID, l.Choices)
					}
				}
			}
		}
	}
}

// Where the shopper finds a few foods whose names could mislead.
func TestFoodsStandInTheirAisles(t *testing.T) {
	l := larder(t)
	reader := recipe.Reader{Larder: l}
	for _, tt := range []struct{ line, aisle string }{
		{"freshly ground black pepper, to taste", "Spices and dried herbs"},
		{"½ tsp black peppercorns", "Spices and dried herbs"},
		{"2 red bell peppers, seeded and diced", "Fruit and vegetables"},
		{"1 (28 oz) can crushed tomatoes", "Tins and jars"},
		{"2 (15 oz) cans black beans, drained and rinsed", "Tins and jars"},
		{"1 cup frozen corn kernels", "Frozen"},
		{"600 g / 1 lb 5 oz ripe plums, halved and stoned", "Fruit and vegetables"},
		{"2–3 celery stalks, sliced", "Fruit and vegetables"},
		{"1 stick unsalted butter, melted", "Dairy and eggs"},
		{"1 lb 8 oz (680 g) skinless cod fillets, cut into 8 pieces", "Fish and seafood"},
		{"1.2–1.4 kg boneless lamb shoulder, cut into 4 cm pieces", "Meat and poultry"},
		{"300 ml cider vinegar (5 % acidity)", "Oils and vinegars"},
		{"4 sprigs dill", "Fresh herbs"},
		{"juice of 1 lemon", "Fruit and vegetables"},
	} {
		t.Run(tt.line, func(t *testing.T) {
			id := reader.ReadLine(tt.line).FoodID
			f, ok := l.Food(id)
			switch {
			case !ok:
				t.Errorf("no food, want one in aisle %q", tt.aisle)
			case f.Aisle != tt.aisle:
				t.Errorf("food %q in aisle %q, want %q", id, f.Aisle, tt.aisle)
			}
		})
	}
}
