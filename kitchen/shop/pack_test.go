package shop_test

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/shop"
)

// holding is a pack of so many grams at a price in minor units.
func holding(grams string, price int64) shop.Pack {
	return shop.Pack{Amount: measure.Of(measure.MustNumber(grams), measure.Gram), Price: price}
}

func grams(n string) measure.Amount { return measure.Of(measure.MustNumber(n), measure.Gram) }

// bought writes a basket: "2 × 500 g + 1 × 200 g, 640, 40 over".
func bought(b shop.Basket) string {
	var packs []string
	for _, p := range b.Packs {
		packs = append(packs, strings.ReplaceAll(p.String(), "\u00a0", " "))
	}
	return strings.Join(packs, " + ") + ", " + measure.Whole(b.Price).String() + ", " + b.Left.String() + " over"
}

func TestBuyTakesTheCheapestPacks(t *testing.T) {
	bagAndBox := []shop.Pack{holding("500", 120), holding("1500", 300)}
	tests := []struct {
		name  string
		need  string
		packs []shop.Pack
		want  string
	}{
		{"nothing is needed", "0", bagAndBox, ", 0, 0 over"},
		{"one pack, exactly", "500", bagAndBox, "1 × 500 g, 120, 0 over"},
		{"a little more takes another", "500.01", bagAndBox, "2 × 500 g, 240, 49999/100 over"},
		{"the large one where it costs less than three", "1001", bagAndBox, "1 × 1500 g, 300, 499 over"},
		{"large and small together", "1600", bagAndBox, "1 × 1500 g + 1 × 500 g, 420, 400 over"},
		{"a large one may cost less than a small one", "100", []shop.Pack{holding("200", 250), holding("1000", 200)}, "1 × 1000 g, 200, 900 over"},
		{"at one price what leaves least over", "250", []shop.Pack{holding("300", 90), holding("500", 90)}, "1 × 300 g, 90, 50 over"},
		{"then the fewest packs", "600", []shop.Pack{holding("200", 100), holding("300", 150), holding("600", 300)}, "1 × 600 g, 300, 0 over"},
		{"the best price a gram is not always the cheapest", "700", []shop.Pack{holding("400", 200), holding("700", 380)}, "1 × 700 g, 380, 0 over"},
		{"taking most of the largest first would cost more", "6", []shop.Pack{holding("1", 10), holding("3", 29), holding("4", 30)}, "1 × 4 g + 2 × 1 g, 50, 0 over"},
		// The usual classroom example against greed, coins of 1, 3 and 4 for 6 (from memory).
		{"greed fails: three and three, not four and two ones", "6", []shop.Pack{holding("1", 20), holding("3", 30), holding("4", 40)}, "2 × 3 g, 60, 0 over"},
		{"one without a price is not taken", "900", []shop.Pack{holding("1000", 0), holding("300", 100)}, "3 × 300 g, 300, 0 over"},
		{"none with a price: least over", "700", []shop.Pack{holding("500", 0), holding("200", 0)}, "1 × 500 g + 1 × 200 g, 0, 0 over"},
		{"none with a price: then fewest", "1000", []shop.Pack{holding("250", 0), holding("500", 0)}, "2 × 500 g, 0, 0 over"},
		// The pound is 453.59237 g (NIST SP 811): two pounds are two packs, not three.
		{"pounds are covered by pounds", "907.18474", []shop.Pack{holding("453.59237", 500)}, "2 × 453.59 g, 1000, 0 over"},
		{"pounds beside kilograms", "1000", []shop.Pack{holding("453.59237", 150), holding("1000", 500)}, "3 × 453.59 g, 450, 36077711/100000 over"},
		{"thirds", "2/3", []shop.Pack{holding("1/3", 10), holding("1/2", 12)}, "2 × 0.33 g, 20, 0 over"},
		{"a great need", "100000", []shop.Pack{holding("7", 3), holding("1000", 400)}, "100 × 1000 g, 40000, 0 over"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			got, err := shop.Buy(grams(test.need), test.packs)
			if err != nil {
				t.Fatal(err)
			}
			if bought(got) != test.want {
				t.Errorf("Buy(%s) = %s\nwant %s", test.need, bought(got), test.want)
			}
		})
	}
}

// TestBuyOwnPieces: what is counted is bought in its own unit.
func TestBuyOwnPieces(t *testing.T) {
	six, ten := shop.Pack{Amount: measure.Of(whole(6), measure.Each), Price: 320}, shop.Pack{Amount: measure.Of(whole(10), measure.Each), Price: 490}
	got, err := shop.Buy(measure.Of(whole(13), measure.Each), []shop.Pack{six, ten})
	if err != nil || bought(got) != "1 × 10 + 1 × 6, 810, 3 over" {
		t.Errorf("13 eggs: %s, %v", bought(got), err)
	}
}

func TestBuyRefusesWhatItCannotCompare(t *testing.T) {
	tests := []struct {
		name  string
		need  measure.Amount
		packs []shop.Pack
		say   string
	}{
		{"no pack", grams("100"), nil, "No pack is known"},
		{"another unit", grams("100"), []shop.Pack{{Amount: measure.Of(whole(1), measure.Litre), Price: 100}}, "cannot be compared"},
		{"an empty pack", grams("100"), []shop.Pack{holding("0", 100)}, "must hold something"},
		{"a price below nothing", grams("100"), []shop.Pack{holding("10", -1)}, "must hold something"},
		{"too many ways", grams("1000000"), []shop.Pack{holding("1", 1), holding("1.001", 1)}, "too many ways"},
		{"a need beyond counting", grams("1000000000000000000"), []shop.Pack{holding("0.01", 1)}, "too many ways"},
		{"sizes beyond counting", grams("1"), []shop.Pack{holding("1/1000000000000000", 1), holding("1000000", 1)}, "too many ways"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			got, err := shop.Buy(test.need, test.packs)
			if fault.KindOf(err) != fault.Invalid || !strings.Contains(err.Error(), test.say) {
				t.Errorf("Buy = %s, %v; want a refusal that says %q", bought(got), err, test.say)
			}
		})
	}
}

// best tries every number of every pack that could be of use, and gives the
// least cost, then the least over, then the fewest packs.
func best(need int64, packs []shop.Pack) (cost, over, count int64) {
	cost = -1
	var try func(i int, sum, price, n int64)
	try = func(i int, sum, price, n int64) {
		if sum >= need {
			if left := sum - need; cost < 0 || price < cost || price == cost && (left < over || left == over && n < count) {
				cost, over, count = price, left, n
			}
			return
		}
		if i == len(packs) {
			return
		}
		holds, _ := packs[i].Amount.To.Int()
		for k := int64(0); ; k++ {
			try(i+1, sum+k*holds, price+k*packs[i].Price, n+k)
			if sum+k*holds >= need {
				return
			}
		}
	}
	try(0, 0, 0, 0)
	return cost, over, count
}

// TestBuyIsBest holds Buy against trying everything.
func TestBuyIsBest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		need := rapid.Int64Range(1, 60).Draw(t, "need")
		isPriced := rapid.Bool().Draw(t, "priced")
		var packs []shop.Pack
		for range rapid.IntRange(1, 4).Draw(t, "packs") {
			p := shop.Pack{Amount: measure.Of(whole(rapid.Int64Range(3, 30).Draw(t, "holds")), measure.Gram)}
			if isPriced {
				p.Price = rapid.Int64Range(1, 25).Draw(t, "price")
			}
			packs = append(packs, p)
		}
		got, err := shop.Buy(measure.Of(whole(need), measure.Gram), packs)
		if err != nil {
			t.Fatal(err)
		}
		var count, price, sum int64
		for _, p := range got.Packs {
			holds, _ := p.Pack.Amount.To.Int()
			count, price, sum = count+int64(p.Count), price+int64(p.Count)*p.Pack.Price, sum+int64(p.Count)*holds
		}
		cost, over, fewest := best(need, packs)
		if price != cost || sum-need != over || count != fewest {
			t.Fatalf("Buy(%d, %v) = %s in %d packs; best is %d with %d over in %d packs", need, packs, bought(got), count, cost, over, fewest)
		}
		if got.Price != price || !got.Left.Equal(whole(sum-need)) {
			t.Fatalf("the basket says %s; its packs come to %d and leave %d", bought(got), price, sum-need)
		}
	})
}

// isExact tells whether packs of these sizes can hold a need with nothing over.
func isExact(t *testing.T, need int64, sizes ...int64) bool {
	t.Helper()
	var packs []shop.Pack
	for _, n := range sizes {
		packs = append(packs, shop.Pack{Amount: measure.Of(whole(n), measure.Each)})
	}
	got, err := shop.Buy(measure.Of(whole(need), measure.Each), packs)
	if err != nil {
		t.Fatal(err)
	}
	return got.Left.IsZero()
}

// TestSylvester: of two sizes a and b without a common divisor, ab − a − b is
// the largest need that always leaves something over, and (a − 1)(b − 1) ÷ 2
// needs do. Source: J. J. Sylvester, Mathematical Questions from the
// Educational Times 41 (1884), 21; from memory.
func TestSylvester(t *testing.T) {
	for _, pair := range [][2]int64{{2, 3}, {3, 5}, {4, 7}, {5, 12}, {9, 16}, {11, 13}, {8, 25}} {
		a, b := pair[0], pair[1]
		largest, never := a*b-a-b, int64(0)
		for need := int64(1); need <= a*b; need++ {
			isBuyable := isExact(t, need, a, b)
			if !isBuyable {
				never++
			}
			if need == largest && isBuyable || need > largest && !isBuyable {
				t.Errorf("%d and %d: a need of %d leaves nothing over: %v", a, b, need, isBuyable)
			}
		}
		if never != (a-1)*(b-1)/2 {
			t.Errorf("%d and %d: %d needs leave something over, want %d", a, b, never, (a-1)*(b-1)/2)
		}
	}
}

// TestSixNineTwenty: packs of 6, 9 and 20 never make 43, and make everything
// above it: the usual example of three sizes (from memory).
func TestSixNineTwenty(t *testing.T) {
	for need := int64(43); need < 100; need++ {
		if got := isExact(t, need, 6, 9, 20); got != (need > 43) {
			t.Errorf("%d pieces with nothing over: %v", need, got)
		}
	}
}

// TestBuyDoesNotKnowTheUnit: the same packs in finer or coarser units, or in
// another order, are the same choice.
func TestBuyDoesNotKnowTheUnit(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		need := measure.Ratio(rapid.Int64Range(1, 4000).Draw(t, "need"), rapid.Int64Range(1, 7).Draw(t, "of"))
		k := measure.Ratio(rapid.Int64Range(1, 50).Draw(t, "k"), rapid.Int64Range(1, 50).Draw(t, "by"))
		var packs, scaled []shop.Pack
		for range rapid.IntRange(1, 4).Draw(t, "packs") {
			p := shop.Pack{Amount: measure.Of(whole(rapid.Int64Range(20, 900).Draw(t, "holds")), measure.Gram), Price: rapid.Int64Range(1, 500).Draw(t, "price")}
			packs = append(packs, p)
			p.Amount = p.Amount.Scale(k)
			scaled = append([]shop.Pack{p}, scaled...)
		}
		here, err := shop.Buy(measure.Of(need, measure.Gram), packs)
		if err != nil {
			t.Fatal(err)
		}
		there, err := shop.Buy(measure.Of(need.Mul(k), measure.Gram), scaled)
		if err != nil {
			t.Fatal(err)
		}
		if here.Price != there.Price || !there.Left.Equal(here.Left.Mul(k)) {
			t.Fatalf("Buy(%s, %v) = %s; times %s it is %s", need, packs, bought(here), k, bought(there))
		}
	})
}

// BenchmarkBuy bounds one item: six sizes, of which two by the pound, for a
// household's need and for a great one.
func BenchmarkBuy(b *testing.B) {
	packs := []shop.Pack{
		holding("100", 95), holding("250", 190), holding("500", 310), holding("1500", 820), holding("453.59237", 300), holding("907.18474", 560),
	}
	for _, need := range []string{"960", "25000"} {
		b.Run(need+"g", func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if got, err := shop.Buy(grams(need), packs); err != nil || got.Price == 0 {
					b.Fatal(got, err)
				}
			}
		})
	}
}
