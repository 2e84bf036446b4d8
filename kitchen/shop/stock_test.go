package shop_test

import (
	"fmt"
	"slices"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shop"
)

// laid writes a whole sheet: what is bought, then what is held.
func laid(s shop.Sheet) []string {
	var all []string
	for _, aisle := range s.Aisles {
		for _, item := range aisle.Items {
			all = append(all, item.Name+": "+basket(item))
		}
	}
	for _, item := range s.Held {
		all = append(all, "have "+item.Name+": "+basket(item))
	}
	return all
}

func TestStockIsTakenOff(t *testing.T) {
	flour := func(n string) recipe.Line { return line("plain-flour", "flour", n, measure.Gram) }
	bags := []shop.Pack{sold("plain-flour", "500 g", 210)}
	tests := []struct {
		name  string
		needs []shop.Need
		packs []shop.Pack
		stock []shop.Stock
		want  []string
	}{
		{
			"some of it", []shop.Need{need("shoot", "1", one("Buns", flour("960")))}, bags, []shop.Stock{stocked("plain-flour", "200 g", 0)},
			[]string{"plain flour: 760 g | 2 × 500 g | 4.20 NZD | 240 g over | held 200 g taken"},
		},
		{
			"a pack less", []shop.Need{need("shoot", "1", one("Buns", flour("960")))}, bags, []shop.Stock{stocked("plain-flour", "500 g", 0)},
			[]string{"plain flour: 460 g | 1 × 500 g | 2.10 NZD | 40 g over | held 500 g taken"},
		},
		{
			"all of it", []shop.Need{need("shoot", "1", one("Buns", flour("960")))}, bags, []shop.Stock{stocked("plain-flour", "1 kg", 0)},
			[]string{"have plain flour: 960 g | | held 1 kg taken"},
		},
		{
			"exactly all of it", []shop.Need{need("shoot", "1", one("Buns", flour("960")))}, nil, []shop.Stock{stocked("plain-flour", "960 g", 0)},
			[]string{"have plain flour: 960 g | | held 960 g taken"},
		},
		{
			"without packs", []shop.Need{need("shoot", "1", one("Buns", flour("960")))}, nil, []shop.Stock{stocked("plain-flour", "300 g", 0)},
			[]string{"plain flour: 660 g | | held 300 g taken"},
		},
		{
			"two bags, the older first", []shop.Need{need("shoot", "1", one("Buns", flour("250")))}, bags,
			[]shop.Stock{stocked("plain-flour", "200 g", 0), stocked("plain-flour", "100 g", 9), stocked("plain-flour", "100 g", 5)},
			[]string{"have plain flour: 250 g | | held 100 g taken | held 100 g taken | held 200 g taken"},
		},
		{
			"what is past its date is not taken", []shop.Need{on(6, need("shoot", "1", one("Buns", flour("250"))))}, bags,
			[]shop.Stock{stocked("plain-flour", "1 kg", 5)},
			[]string{"plain flour: 250 g | 1 × 500 g | 2.10 NZD | 250 g over | held 1 kg late"},
		},
		{
			"it may be used on its last day", []shop.Need{on(6, need("shoot", "1", one("Buns", flour("250"))))}, bags,
			[]shop.Stock{stocked("plain-flour", "1 kg", 6)},
			[]string{"have plain flour: 250 g | | held 1 kg taken"},
		},
		{
			"without a day it is needed today", []shop.Need{need("shoot", "1", one("Buns", flour("250")))}, bags,
			[]shop.Stock{{FoodID: "plain-flour", Amount: read("1 kg"), UseBy: march(1).AddDate(0, 0, -1)}},
			[]string{"plain flour: 250 g | 1 × 500 g | 2.10 NZD | 250 g over | held 1 kg late"},
		},
		{
			"a day that is past is today", []shop.Need{{Batch: "shoot", Makes: whole(1), Recipe: one("Buns", flour("250")), On: march(1).AddDate(0, -1, 0)}}, bags,
			[]shop.Stock{{FoodID: "plain-flour", Amount: read("1 kg"), UseBy: march(1).AddDate(0, 0, -1)}},
			[]string{"plain flour: 250 g | 1 × 500 g | 2.10 NZD | 250 g over | held 1 kg late"},
		},
		{
			"good for the first day only, the rest too old for the second",
			[]shop.Need{on(12, need("shoot", "1", one("Buns", flour("400")))), on(5, need("trial", "1", one("Buns", flour("300"))))}, bags,
			[]shop.Stock{stocked("plain-flour", "500 g", 6)},
			[]string{"plain flour: 400 g | 1 × 500 g | 2.10 NZD | 100 g over | held 500 g taken late"},
		},
		{
			"what keeps longer is left for the later day",
			[]shop.Need{on(12, need("shoot", "1", one("Buns", flour("400")))), on(5, need("trial", "1", one("Buns", flour("300"))))}, bags,
			[]shop.Stock{stocked("plain-flour", "400 g", 20), stocked("plain-flour", "300 g", 6)},
			[]string{"have plain flour: 700 g | | held 300 g taken | held 400 g taken"},
		},
		{
			"milk by the litre for a recipe in grams", []shop.Need{need("shoot", "1", one("Buns", line("milk", "milk", "1200", measure.Gram)))}, // 1163.6 mL
			[]shop.Pack{sold("milk", "1 L", 280)}, []shop.Stock{stocked("milk", "300 mL", 0)},
			[]string{"whole milk: 870 mL | 1 × 1 L | 2.80 NZD | 135 mL over | held 300 mL taken"},
		},
		{
			"eggs", []shop.Need{need("shoot", "1", one("Buns", line("egg", "eggs", "3", measure.Each), line("egg-yolk", "yolks", "2", measure.Each)))},
			[]shop.Pack{sold("egg", "6", 420)}, []shop.Stock{stocked("egg", "4", 20)},
			[]string{"eggs: 1 | 1 × 6 | 4.20 NZD | 5 over | held 4 taken"},
		},
		{
			"yolks on one day and whites on the next are the same eggs", // broken on the fifth: the whites are there
			[]shop.Need{
				on(5, need("trial", "1", one("Curd", line("egg-yolk", "yolks", "4", measure.Each)))),
				on(6, need("shoot", "1", one("Meringue", line("egg-white", "whites", "4", measure.Each)))),
			},
			nil, []shop.Stock{stocked("egg", "4", 5)},
			[]string{"have eggs: 4 | | held 4 taken"},
		},
		{
			"to taste, and there is some", []shop.Need{need("shoot", "1", one("Buns", with(line("salt", "salt", "", measure.Each), toTaste)))},
			nil, []shop.Stock{stocked("salt", "1 kg", 0)},
			[]string{"have fine salt: | | held 1 kg"},
		},
		{
			"to taste, and it is too old", []shop.Need{on(9, need("shoot", "1", one("Buns", with(line("salt", "salt", "", measure.Each), toTaste))))},
			nil, []shop.Stock{stocked("salt", "1 kg", 8)},
			[]string{"fine salt: | | held 1 kg late"},
		},
		{
			"stock that cannot be compared is told, not taken", []shop.Need{need("shoot", "1", one("Buns", line("thyme", "thyme", "30", measure.Gram)))},
			[]shop.Pack{sold("thyme", "20 g", 250)}, []shop.Stock{stocked("thyme", "1 bunch", 0)},
			[]string{"thyme: 30 g | 2 × 20 g | 5.00 NZD | 10 g over | held 1 bunch"},
		},
		{
			"a need that cannot be compared", []shop.Need{on(9, need("shoot", "1", one("Buns", line("thyme", "thyme", "3", measure.Sprig))))},
			nil, []shop.Stock{stocked("thyme", "1 bunch", 8), stocked("thyme", "1 bunch", 9)},
			[]string{"thyme: 3 sprigs | | held 1 bunch late | held 1 bunch | problem"},
		},
		{
			"stock by an estimated weight", []shop.Need{need("shoot", "1", one("Buns", line("caraway", "caraway", "4", measure.Teaspoon)))},
			nil, []shop.Stock{stocked("caraway", "30 g", 0)},
			[]string{"have caraway seeds: 1½ tbsp | | held 30 g taken | estimate"},
		},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			got := laid(shelf(test.packs, test.stock...).List(test.needs, larder()))
			for i := range got {
				got[i] = tidy(got[i])
			}
			if diff := cmp.Diff(test.want, got); diff != "" {
				t.Errorf("List (-want +got):\n%s", diff)
			}
		})
	}
}

// TestStockMeetsAsMuchAsCanBe: of a food wanted on several days and held with
// several use-by dates, what must be bought is the greatest shortage over the
// days: what is wanted from a day on, less all that keeps so long. This is P.
// Hall's condition (1935) for supplies that serve nested sets of demands; from
// memory.
func TestStockMeetsAsMuchAsCanBe(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var needs []shop.Need
		wanted := map[int]int64{}
		for range rapid.IntRange(1, 5).Draw(t, "needs") {
			day, n := rapid.IntRange(2, 8).Draw(t, "day"), rapid.Int64Range(1, 300).Draw(t, "wanted")
			wanted[day] += n
			needs = append(needs, on(day, need("shoot", "1", one("Buns", line("plain-flour", "flour", fmt.Sprint(n), measure.Gram)))))
		}
		var stock []shop.Stock
		for range rapid.IntRange(1, 5).Draw(t, "bags") {
			stock = append(stock, shop.Stock{
				FoodID: "plain-flour", Amount: measure.Of(whole(rapid.Int64Range(1, 400).Draw(t, "held")), measure.Gram),
				UseBy: march(rapid.IntRange(1, 9).Draw(t, "use by")),
			})
		}
		short := int64(0)
		for day := 1; day <= 9; day++ {
			here := int64(0)
			for on, n := range wanted {
				if on >= day {
					here += n
				}
			}
			for _, s := range stock {
				if n, _ := s.Amount.To.Int(); !s.UseBy.Before(march(day)) {
					here -= n
				}
			}
			short = max(short, here)
		}
		packs := []shop.Pack{sold("plain-flour", "1 g", 1)}
		got := shelf(packs, stock...).List(needs, larder()).Cost()
		cents, _ := got.Sum.Int64()
		if cents != short || got.Priced+got.Unpriced != min(1, int(short)) {
			t.Fatalf("%d g are bought, want %d", cents, short)
		}
	})
}

// TestMoreStockNeverCostsMore, and packs with the stock always hold the need.
func TestMoreStockNeverCostsMore(t *testing.T) {
	kitchen := larder()
	packs := []shop.Pack{
		sold("plain-flour", "500 g", 210), sold("plain-flour", "1.5 kg", 450), sold("honey", "340 g", 690), sold("milk", "1 L", 280),
		sold("milk", "2 L", 430), sold("butter", "250 g", 480), sold("egg", "6", 420), sold("egg", "10", 650), sold("onion", "1 kg", 250), sold("salt", "1 kg", 190),
	}
	rapid.Check(t, func(t *rapid.T) {
		needs := []shop.Need{need("shoot", "1", one("Buns", anyLines(t)...))}
		var stock []shop.Stock
		costs := []int64{}
		for range 3 {
			sheet := shelf(packs, stock...).List(needs, kitchen)
			cents, _ := sheet.Cost().Sum.Int64()
			costs = append(costs, cents)
			if sheet.Items()+len(sheet.Held) != shop.List(needs, kitchen).Items() {
				t.Fatalf("an item was lost or came twice: %q", laid(sheet))
			}
			food := rapid.SampledFrom([]string{"plain-flour", "honey", "milk", "butter", "egg", "onion"}).Draw(t, "stocked")
			stock = append(stock, shop.Stock{FoodID: food, Amount: measure.Of(whole(rapid.Int64Range(1, 900).Draw(t, "held")), packs[slices.IndexFunc(packs, func(p shop.Pack) bool { return p.FoodID == food })].Amount.Unit)})
		}
		if !slices.IsSortedFunc(costs, func(a, b int64) int { return int(b - a) }) {
			t.Fatalf("with more and more stock it costs %d", costs)
		}
	})
}

// TestAnEmptyShelfChangesNothing: a list without packs, prices and stock is the
// plain one.
func TestAnEmptyShelfChangesNothing(t *testing.T) {
	kitchen := larder()
	rapid.Check(t, func(t *rapid.T) {
		needs := []shop.Need{on(9, need("shoot", "3/2", one("Buns", anyLines(t)...)))}
		empty := shop.Shelf{Currency: "EUR", Today: time.Date(2027, 5, 1, 0, 0, 0, 0, time.UTC)}
		if diff := cmp.Diff(laid(shop.List(needs, kitchen)), laid(empty.List(needs, kitchen))); diff != "" {
			t.Fatalf("the lists differ:\n%s", diff)
		}
	})
}
