package shop_test

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shop"
	"github.com/google/go-cmp/cmp"
)

// sold is a pack of a food: "500 g" at a price in cents.
func sold(food, amount string, price int64) shop.Pack {
	return shop.Pack{FoodID: food, Amount: read(amount), Price: price}
}

// stocked is stock of a food, to be used by a day of March; 0 for no date.
func stocked(food, amount string, useBy int) shop.Stock {
	s := shop.Stock{FoodID: food, Amount: read(amount)}
	if useBy > 0 {
		s.UseBy = march(useBy)
	}
	return s
}

func read(amount string) measure.Amount {
	r, rest, ok := measure.ReadAmount(amount)
	if !ok || rest != "" {
		panic("not an amount: " + amount)
	}
	return r.Amount
}

func march(day int) time.Time { return time.Date(2027, time.March, day, 0, 0, 0, 0, time.UTC) }

// on says the day of March that a need is for.
func on(day int, n shop.Need) shop.Need {
	n.On = march(day)
	return n
}

// basket writes how an item is bought: "960 g | 2 × 500 g | 4.20 NZD | 40 g over
// | held 200 g taken".
func basket(i shop.Item) string {
	var packs []string
	for _, p := range i.Buy.Packs {
		packs = append(packs, p.String())
	}
	parts := []string{i.Measure, strings.Join(packs, " + ")}
	if i.Buy.IsPriced() {
		parts = append(parts, i.Buy.Cost.String())
	}
	if i.Buy.Left != "" {
		parts = append(parts, i.Buy.Left+" over")
	}
	for _, h := range i.Buy.Held {
		text := "held " + h.Stock.Amount.String()
		if h.IsTaken {
			text += " taken"
		}
		if h.IsLate {
			text += " late"
		}
		parts = append(parts, text)
	}
	if i.Buy.Estimate {
		parts = append(parts, "estimate")
	}
	if i.Buy.Problem != "" {
		parts = append(parts, "problem")
	}
	return strings.ReplaceAll(strings.Join(parts, " | "), "\u00a0", " ")
}

// tidy takes out doubled blanks and those at the end.
func tidy(text string) string { return strings.Join(strings.Fields(text), " ") }

// shelf knows packs and stock on the first of March.
func shelf(packs []shop.Pack, stock ...shop.Stock) shop.Shelf {
	return shop.Shelf{Currency: "NZD", Packs: packs, Stock: stock, Today: march(1)}
}

func TestPacksOfAnItem(t *testing.T) {
	tests := []struct {
		name  string
		lines []recipe.Line
		packs []shop.Pack
		want  string
	}{
		{"no packs", []recipe.Line{line("plain-flour", "flour", "960", measure.Gram)}, nil, "960 g |"},
		{
			"packs of another food", []recipe.Line{line("plain-flour", "flour", "960", measure.Gram)},
			[]shop.Pack{sold("honey", "500 g", 700)}, "960 g |",
		},
		{
			"by weight", []recipe.Line{line("plain-flour", "flour", "960", measure.Gram)},
			[]shop.Pack{sold("plain-flour", "500 g", 210), sold("plain-flour", "1.5 kg", 450)}, "960 g | 2 × 500 g | 4.20 NZD | 40 g over",
		},
		{
			"without a price", []recipe.Line{line("plain-flour", "flour", "960", measure.Gram)},
			[]shop.Pack{sold("plain-flour", "500 g", 0)}, "960 g | 2 × 500 g | 40 g over",
		},
		{
			"nothing left over", []recipe.Line{line("plain-flour", "flour", "500", measure.Gram)},
			[]shop.Pack{sold("plain-flour", "500 g", 210)}, "500 g | 1 × 500 g | 2.10 NZD",
		},
		{
			"of a range the larger end", []recipe.Line{with(line("plain-flour", "flour", "400", measure.Gram), func(l *recipe.Line) { l.Amount.To = whole(600) })},
			[]shop.Pack{sold("plain-flour", "500 g", 210)}, "600 g | 2 × 500 g | 4.20 NZD | 400 g over",
		},
		{
			"cups against kilograms: 9 × 125 g, SR26 20081", []recipe.Line{with(line("plain-flour", "flour", "9", measure.Cup), inUS)},
			[]shop.Pack{sold("plain-flour", "1 kg", 300)}, "1.13 kg | 2 × 1 kg | 6.00 NZD | 870 g over",
		},
		{
			"sifted cups weigh less: 8 × 115 g", []recipe.Line{with(with(line("plain-flour", "flour", "8", measure.Cup), inUS), sifted)},
			[]shop.Pack{sold("plain-flour", "1 kg", 300)}, "920 g | 1 × 1 kg | 3.00 NZD | 80 g over",
		},
		{
			"grams against litres: 1.2 kg are 1.164 L, SR26 01077", []recipe.Line{line("milk", "milk", "1200", measure.Gram)},
			[]shop.Pack{sold("milk", "1 L", 280), sold("milk", "2 L", 430)}, "1.17 L | 1 × 2 L | 4.30 NZD | 830 mL over",
		},
		{
			"pounds against grams", []recipe.Line{line("butter", "butter", "1", measure.Pound)},
			[]shop.Pack{sold("butter", "454 g", 700), sold("butter", "250 g", 400)}, "455 g | 1 × 454 g | 7.00 NZD",
		},
		{
			"sticks of 113 g, SR26 01145", []recipe.Line{line("butter", "butter", "3", measure.Stick)},
			[]shop.Pack{sold("butter", "1 lb", 900)}, "340 g | 1 × 1 lb | 9.00 NZD | 110 g over",
		},
		{
			"pieces against pieces", []recipe.Line{line("onion", "onion", "5", measure.Each)},
			[]shop.Pack{sold("onion", "1", 60), sold("onion", "4 pieces", 200)}, "5 | 1 × 4 pieces + 1 × 1 | 2.60 NZD",
		},
		{
			"pieces against kilograms: 5 × 110 g, SR26 11282", []recipe.Line{line("onion", "onion", "5", measure.Each)},
			[]shop.Pack{sold("onion", "1 kg", 250)}, "5 | 1 × 1 kg | 2.50 NZD | 450 g over",
		},
		{
			"kilograms and single ones, compared by weight", []recipe.Line{line("onion", "onion", "5", measure.Each)},
			[]shop.Pack{sold("onion", "1 kg", 250), sold("onion", "1", 40)}, "5 | 5 × 1 | 2.00 NZD",
		},
		{
			"eggs whole, in their yolks and whites", []recipe.Line{
				line("egg", "eggs", "2", measure.Each), line("egg-yolk", "yolks", "4", measure.Each), line("egg-white", "whites", "3", measure.Each),
			},
			[]shop.Pack{sold("egg", "6", 420), sold("egg", "12", 780)}, "6 | 1 × 6 | 4.20 NZD",
		},
		{
			"eggs by weight are whole ones: 120 g are 3", []recipe.Line{line("egg", "egg", "120", measure.Gram)},
			[]shop.Pack{sold("egg", "6", 420)}, "3 | 1 × 6 | 4.20 NZD | 3 over",
		},
		{
			"bunches", []recipe.Line{line("thyme", "thyme", "3/2", measure.Bunch)},
			[]shop.Pack{sold("thyme", "1 bunch", 250)}, "2 bunches | 2 × 1 bunch | 5.00 NZD",
		},
		{
			"sprigs of unknown weight", []recipe.Line{line("thyme", "thyme", "3", measure.Sprig)},
			[]shop.Pack{sold("thyme", "20 g", 250)}, "3 sprigs | | problem",
		},
		{
			"packs that cannot be compared are left out", []recipe.Line{line("thyme", "thyme", "30", measure.Gram)},
			[]shop.Pack{sold("thyme", "20 g", 250), sold("thyme", "1 bunch", 100)}, "30 g | 2 × 20 g | 5.00 NZD | 10 g over",
		},
		{
			"no pack that can be compared", []recipe.Line{line("thyme", "thyme", "30", measure.Gram)},
			[]shop.Pack{sold("thyme", "1 bunch", 100)}, "30 g | | problem",
		},
		{
			"tins against tins", []recipe.Line{with(line("tomatoes", "tomatoes", "800", measure.Gram), tins(2))},
			[]shop.Pack{sold("tomatoes", "1 tin", 130)}, "2 × 400 g tins | 2 × 1 tin | 2.60 NZD",
		},
		{
			"tins against grams", []recipe.Line{with(line("tomatoes", "tomatoes", "1200", measure.Gram), tins(3))},
			[]shop.Pack{sold("tomatoes", "400 g", 130), sold("tomatoes", "800 g", 220)}, "3 × 400 g tins | 1 × 800 g + 1 × 400 g | 3.50 NZD",
		},
		{
			"an estimated weight", []recipe.Line{line("caraway", "caraway", "4", measure.Teaspoon)},
			[]shop.Pack{sold("caraway", "30 g", 320)}, "1½ tbsp | 1 × 30 g | 3.20 NZD | 20 g over | estimate",
		},
		{"to taste: no pack is guessed", []recipe.Line{with(line("salt", "salt", "", measure.Each), toTaste)}, []shop.Pack{sold("salt", "1 kg", 200)}, "|"},
		{
			"a food the larder does not know", []recipe.Line{line("", "sea herbs", "100", measure.Gram)},
			[]shop.Pack{sold("", "100 g", 300)}, "100 g |",
		},
		{
			"odd sizes beyond counting", []recipe.Line{line("honey", "honey", "9000000", measure.Gram)},
			[]shop.Pack{sold("honey", "1 g", 1), sold("honey", "1.001 g", 1)}, "9000 kg | | problem",
		},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			got := only(t, shelf(test.packs).List([]shop.Need{need("shoot", "1", one("Buns", test.lines...))}, larder()))
			if diff := cmp.Diff(test.want, tidy(basket(got))); diff != "" {
				t.Errorf("List (-want +got):\n%s", diff)
			}
		})
	}
}

func TestCostAddsUpWhatIsPriced(t *testing.T) {
	lines := []recipe.Line{
		line("plain-flour", "flour", "960", measure.Gram), line("butter", "butter", "250", measure.Gram), line("honey", "honey", "100", measure.Gram),
		line("thyme", "thyme", "1", measure.Bunch), with(line("salt", "salt", "", measure.Each), toTaste),
	}
	packs := []shop.Pack{sold("plain-flour", "500 g", 210), sold("butter", "250 g", 485), sold("honey", "340 g", 0)}
	tests := []struct {
		name  string
		shelf shop.Shelf
		want  string
	}{
		{"nothing known", shop.Shelf{}, "0  for 0 of 5"},
		{"some of it", shelf(packs), "9.05 NZD for 2 of 5"},
		{"stock is not bought", shelf(packs, stocked("butter", "300 g", 0), stocked("thyme", "1 bunch", 0)), "4.20 NZD for 1 of 3"},
		{"a currency of whole units", shop.Shelf{Currency: "JPY", Packs: packs}, "905 JPY for 2 of 5"},
		{"a currency of thousandths", shop.Shelf{Currency: "BHD", Packs: packs}, "0.905 BHD for 2 of 5"}, // ISO 4217: three decimals; from memory
		{"no such currency", shop.Shelf{Currency: "XXZ", Packs: packs}, "0  for 0 of 5"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			c := test.shelf.List([]shop.Need{need("shoot", "1", one("Buns", lines...))}, larder()).Cost()
			if got := fmt.Sprintf("%s for %d of %d", c.Sum, c.Priced, c.Priced+c.Unpriced); got != test.want || c.Estimate {
				t.Errorf("Cost = %s, estimate %v, want %s", got, c.Estimate, test.want)
			}
		})
	}
	caraway := need("shoot", "1", one("Buns", line("caraway", "caraway", "4", measure.Teaspoon)))
	if got := shelf([]shop.Pack{sold("caraway", "30 g", 320)}).List([]shop.Need{caraway}, larder()).Cost(); !got.Estimate {
		t.Errorf("a cost by an estimated weight is %+v", got)
	}
}

func TestBoughtAs(t *testing.T) {
	for id, want := range map[string]string{"plain-flour": "plain-flour", "egg": "egg", "egg-yolk": "egg", "egg-white": "egg", "water": "", "": ""} {
		if got := shop.BoughtAs(id); got != want {
			t.Errorf("BoughtAs(%q) = %q, want %q", id, got, want)
		}
	}
}
