package shop_test

import (
	"testing"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shop"
	"benchproof/seed"
)

// TestDemoCosts: the demo's tart made twice takes 10 eggs, 260 g of butter, 260
// g of sugar and 400 g of flour (see TestDemoShopping); packs and sums are
// chosen by hand.
func TestDemoCosts(t *testing.T) {
	kitchen, err := seed.Larder()
	if err != nil {
		t.Fatal(err)
	}
	show, err := seed.Demo(march(1))
	if err != nil {
		t.Fatal(err)
	}
	var tart string
	for _, r := range show.Recipes {
		if r.Key == "tart" {
			tart = r.Versions[len(r.Versions)-1].Text
		}
	}
	needs := []shop.Need{{Batch: "shoot", Makes: measure.Whole(2), Recipe: recipe.Reader{Larder: kitchen}.Read(tart), System: measure.Metric}}
	packs := []shop.Pack{
		sold("egg", "6", 540), sold("egg", "12", 980), sold("unsalted-butter", "250 g", 480), sold("caster-sugar", "500 g", 290),
		sold("plain-flour", "1.5 kg", 330), sold("plain-flour", "500 g", 190),
	}
	tests := []struct {
		name  string
		stock []shop.Stock
		want  string
	}{
		{"an empty larder", nil, "24.20 NZD"},                                                                                        // 9.80 + 2 × 4.80 + 2.90 + 1.90
		{"4 eggs there: 6 are enough", []shop.Stock{stocked("egg", "4", 20)}, "19.80 NZD"},                                           // 5.40 for 9.80
		{"10 g of butter there: one pack less", []shop.Stock{stocked("unsalted-butter", "10 g", 0)}, "19.40 NZD"},                    // 4.80 less
		{"9 g of butter there: no help", []shop.Stock{stocked("unsalted-butter", "9 g", 0)}, "24.20 NZD"},                            //
		{"sugar and flour there", []shop.Stock{stocked("caster-sugar", "1 kg", 0), stocked("plain-flour", "400 g", 0)}, "19.40 NZD"}, // 9.80 + 9.60
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			if got := shelf(packs, test.stock...).List(needs, kitchen).Cost(); got.Sum.String() != test.want {
				t.Errorf("the list costs %s for %d of %d things, want %s", got.Sum, got.Priced, got.Priced+got.Unpriced, test.want)
			}
		})
	}
}
