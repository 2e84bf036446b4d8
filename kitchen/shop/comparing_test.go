package shop_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shop"
)

// TestLeftOverIsWrittenDownwards: what is promised to be over is there.
func TestLeftOverIsWrittenDownwards(t *testing.T) {
	tests := []struct{ need, want string }{
		{"9999.5", ""}, // half a gram is not worth a word
		{"9999", "1 g"},
		{"9980.1", "19 g"},
		{"9980", "20 g"},
		{"9975.5", "20 g"},
		{"9500.1", "495 g"},
		{"9500", "500 g"},
		{"9477", "520 g"},
		{"9000.1", "990 g"},
		{"9000", "1 kg"},
		{"8001", "1.99 kg"},
		{"7960", "2 kg"},
		{"7950", "2.05 kg"},
	}
	for _, test := range tests {
		t.Run(test.need, func(t *testing.T) {
			packs := []shop.Pack{sold("honey", "10 kg", 9900)}
			got := only(t, shelf(packs).List([]shop.Need{need("shoot", "1", one("Buns", line("honey", "honey", test.need, measure.Gram)))}, larder()))
			if left := tidy(got.Buy.Left); left != test.want {
				t.Errorf("of 10 kg, %s g leave %q, want %q", test.need, left, test.want)
			}
		})
	}
}

// TestOneUnitForAll: packs, stock and need are brought to one unit by the
// weights of SR26: a cup of milk 244 g, of butter 227 g, of honey 339 g; an
// onion 110 g, an egg 50 g. A US cup is 236.5882365 mL (NIST Handbook 44).
func TestOneUnitForAll(t *testing.T) {
	tests := []struct {
		name  string
		line  recipe.Line
		packs []shop.Pack
		stock []shop.Stock
		want  string
	}{
		{
			"need in cups, packs in grams, stock in pounds", with(line("honey", "honey", "3", measure.Cup), inUS), // 1017 g − 453.6 g
			[]shop.Pack{sold("honey", "340 g", 690)}, []shop.Stock{stocked("honey", "1 lb", 0)},
			"570 g | 2 × 340 g | 13.80 NZD | 115 g over | held 1 lb taken",
		},
		{
			"need in grams, packs and stock in millilitres", line("milk", "milk", "976", measure.Gram), // 946.4 mL − 250 mL
			[]shop.Pack{sold("milk", "600 mL", 220)}, []shop.Stock{stocked("milk", "250 mL", 0)},
			"700 mL | 2 × 600 mL | 4.40 NZD | 500 mL over | held 250 mL taken",
		},
		{
			"packs in centilitres and litres", line("milk", "milk", "1.2", measure.Litre),
			[]shop.Pack{sold("milk", "50 cl", 180), sold("milk", "1 L", 280)}, nil,
			"1.2 L | 1 × 1 L + 1 × 50 cL | 4.60 NZD | 300 mL over",
		},
		{
			"packs by weight, stock by number", line("onion", "onions", "8", measure.Each), // 880 g − 330 g
			[]shop.Pack{sold("onion", "500 g", 160)}, []shop.Stock{stocked("onion", "3", 0)},
			"550 g | 2 × 500 g | 3.20 NZD | 450 g over | held 3 taken",
		},
		{
			"packs by number, stock by weight", line("onion", "onions", "8", measure.Each), // 8 − 275 ÷ 110
			[]shop.Pack{sold("onion", "1", 60)}, []shop.Stock{stocked("onion", "275 g", 0)},
			"6 | 6 × 1 | 3.60 NZD | held 275 g taken",
		},
		{
			"eggs in grams", line("egg", "eggs", "7", measure.Each), // 350 g
			[]shop.Pack{sold("egg", "500 g", 700)}, nil,
			"7 | 1 × 500 g | 7.00 NZD | 150 g over",
		},
		{
			"stock alone decides the unit", line("milk", "milk", "488", measure.Gram), // 2 cups, 473.2 mL
			nil, []shop.Stock{stocked("milk", "1 cup", 0)}, // in a metric house 250 mL
			"225 mL | | held 1 cup taken",
		},
		{
			"sticks and spoons of butter", with(line("butter", "butter", "1", measure.Stick), func(l *recipe.Line) {
				l.Plus = []measure.Amount{measure.Of(whole(8), measure.Tablespoon)} // half a US cup, 113.5 g
				l.System = measure.US
			}),
			[]shop.Pack{sold("butter", "250 g", 480)}, nil,
			"230 g | 1 × 250 g | 4.80 NZD | 20 g over",
		},
		{
			"stock of one kind beside packs of another that cannot be compared", line("thyme", "thyme", "2", measure.Bunch),
			[]shop.Pack{sold("thyme", "1 bunch", 250)}, []shop.Stock{stocked("thyme", "20 g", 0)},
			"2 bunches | 2 × 1 bunch | 5.00 NZD | held 20 g",
		},
		{
			"a piece is one", line("onion", "onions", "2", measure.Piece),
			[]shop.Pack{sold("onion", "1", 60)}, nil,
			"2 pieces | 2 × 1 | 1.20 NZD",
		},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			got := only(t, shelf(test.packs, test.stock...).List([]shop.Need{need("shoot", "1", one("Buns", test.line))}, larder()))
			if diff := cmp.Diff(test.want, tidy(basket(got))); diff != "" {
				t.Errorf("List (-want +got):\n%s", diff)
			}
		})
	}
}

// TestPacksInAmericanHouses: cups and pints are those of the house, and what is
// still to buy is written in its measures.
func TestPacksInAmericanHouses(t *testing.T) {
	tests := []struct {
		name  string
		line  recipe.Line
		packs []shop.Pack
		stock []shop.Stock
		want  string
	}{
		{
			"a quart of milk less a cup", line("milk", "milk", "1", measure.Quart),
			[]shop.Pack{sold("milk", "1 pint", 190)}, []shop.Stock{stocked("milk", "1 cup", 0)},
			"3 cups | 2 × 1 pint | 3.80 NZD | 235 mL over | held 1 cup taken",
		},
		{
			"pounds", line("plain-flour", "flour", "6", measure.Cup), // 750 g
			[]shop.Pack{sold("plain-flour", "2 lb", 320)}, nil,
			"750 g | 1 × 2 lb | 3.20 NZD | 155 g over",
		},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			n := need("shoot", "1", one("Buns", test.line))
			n.System = measure.US
			got := only(t, shelf(test.packs, test.stock...).List([]shop.Need{n}, larder()))
			if diff := cmp.Diff(test.want, tidy(basket(got))); diff != "" {
				t.Errorf("List (-want +got):\n%s", diff)
			}
		})
	}
}

// TestWhatIsStillToBuyKeepsItsSmallPrint: beside the rest stands what stood
// beside the need, worked out for the rest.
func TestWhatIsStillToBuyKeepsItsSmallPrint(t *testing.T) {
	eggs := only(t, shelf(nil, stocked("egg", "2", 0)).List([]shop.Need{need("shoot", "1", one("Buns",
		line("egg", "eggs", "3", measure.Each), line("egg-yolk", "yolks", "2", measure.Each)))}, larder()))
	if got := tidy(eggs.Measure + " | " + eggs.Small); got != "3 | 3 whole, 2 yolks" {
		t.Errorf("eggs: %q", got)
	}
	onions := only(t, shelf(nil, stocked("onion", "2", 0)).List([]shop.Need{need("shoot", "1", one("Stew", line("onion", "onions", "5", measure.Each)))}, larder()))
	if got := tidy(onions.Measure + " | " + onions.Small); got != "3 | about 330 g" {
		t.Errorf("onions: %q", got)
	}
	if diff := cmp.Diff([]measure.Amount{measure.Of(whole(5), measure.Each)}, onions.Exact); diff != "" {
		t.Errorf("the exact sum is the whole need (-want +got):\n%s", diff)
	}
}
