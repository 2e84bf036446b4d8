package web_test

import (
	"net/url"
	"strings"
	"testing"
	"time"

	"github.com/bojanz/currency"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shop"
	"benchproof/seed"
	"benchproof/web"
)

// of is an amount as it is typed.
func of(n string, unit measure.Unit) measure.Amount { return measure.Of(measure.MustNumber(n), unit) }

func euros(t *testing.T, n string) currency.Amount {
	t.Helper()
	a, err := currency.NewAmount(n, "EUR")
	if err != nil {
		t.Fatal(err)
	}
	return a
}

func TestShopItemSaysHowItIsBought(t *testing.T) {
	half, litre := shop.Pack{Amount: of("500", measure.Gram)}, shop.Pack{Amount: of("1.5", measure.Kilogram)}
	single := shop.Pack{Amount: of("1", measure.Each)}
	march := func(day int) time.Time { return time.Date(2027, 3, day, 0, 0, 0, 0, time.UTC) }
	held := func(n string, day int, isTaken, isLate bool) shop.Held {
		h := shop.Held{Stock: shop.Stock{Amount: of(n, measure.Gram)}, IsTaken: isTaken, IsLate: isLate}
		if day > 0 {
			h.Stock.UseBy = march(day)
		}
		return h
	}
	for _, c := range []struct {
		name            string
		buy             shop.Purchase
		want            string // packs and cost, stock, what is late
		small, question string
	}{
		{"nothing known", shop.Purchase{}, "||", "", ""},
		{"packs, cost, left over", shop.Purchase{Packs: []shop.Packed{{Pack: half, Count: 2}}, Cost: euros(t, "4.20"), Left: "40 g"}, "2 × 500 g, €4.20 · 40 g left over||", "", ""},
		{"two sizes", shop.Purchase{Packs: []shop.Packed{{Pack: litre, Count: 1}, {Pack: half, Count: 1}}, Cost: euros(t, "6.60")}, "1 × 1.5 kg + 1 × 500 g, €6.60||", "", ""},
		{"no price", shop.Purchase{Packs: []shop.Packed{{Pack: half, Count: 2}}, Left: "40 g"}, "2 × 500 g · 40 g left over||", "", ""},
		{"sold singly", shop.Purchase{Packs: []shop.Packed{{Pack: single, Count: 3}}, Cost: euros(t, "2.85")}, "€2.85||", "", ""},
		{"from the larder", shop.Purchase{Held: []shop.Held{held("200", 9, true, false), held("50", 0, true, false), held("90", 0, false, false)}}, "|200 g and 50 g from the larder|", "", ""},
		{"too old", shop.Purchase{Held: []shop.Held{held("200", 1, false, true)}}, "||in the larder and too old on the day: 200 g, use by 1 Mar", "", ""},
		{"two too old, one of them used on an earlier day", shop.Purchase{Held: []shop.Held{held("200", 1, true, true), held("80", 2, false, true)}},
			"|200 g from the larder|in the larder and too old on the day: 200 g, use by 1 Mar; 80 g, use by 2 Mar", "", ""},
		{"an estimated weight", shop.Purchase{Packs: []shop.Packed{{Pack: half, Count: 1}}, Estimate: true}, "1 × 500 g||", "weight estimated", ""},
		{"a problem is asked about", shop.Purchase{Problem: "Sprigs have no weight."}, "||", "", "Sprigs have no weight."},
	} {
		t.Run(c.name, func(t *testing.T) {
			row := web.ShopItem(today, shop.Item{Key: "k", FoodID: "plain-flour", Name: "plain flour", Buy: c.buy}, false)
			got := strings.ReplaceAll(row.Buy+"|"+row.Have+"|"+row.Late, "\u00a0", " ")
			if got != c.want || row.Small != c.small || row.Question != c.question {
				t.Errorf("%q, %q, %q\nwant %q, %q, %q", got, row.Small, row.Question, c.want, c.small, c.question)
			}
			if row.Path != "/larder/plain-flour" {
				t.Errorf("it leads to %q", row.Path)
			}
		})
	}
	both := web.ShopItem(today, shop.Item{Question: "How much is a knob?", Buy: shop.Purchase{Problem: "No weight."}}, false)
	if both.Question != "How much is a knob?" || both.Path != "" {
		t.Errorf("the recipe's own question is asked first; got %q at %q", both.Question, both.Path)
	}
}

// stocked is a site with the scones' episode, prices and stock. Scones take 250
// g of flour, 50 g of butter, two knobs of lard and 150 ml of milk.
func stocked(t *testing.T) (s *site, at string) {
	s = newSite(t)
	at = s.start("Scones", scones)
	s.post("/larder/self-raising-flour/packs", "amount", "100 g", "price", "0.70")
	s.post("/larder/self-raising-flour/packs", "amount", "500 g", "price", "1.90")
	s.post("/larder/butter/packs", "amount", "250 g", "price", "3.10")
	return s, at
}

func TestTheShopSheetBuysPacksAndAddsThemUp(t *testing.T) {
	s, at := stocked(t)
	s.shows(at+"/shop", "4 of 4 still to get", "1 × 500 g, €1.90 · 250 g left over", "1 × 250 g, €3.10 · 200 g left over", "€5.00 for 2 of 4 items; 2 without a price")
	s.post("/larder/self-raising-flour/stock", "amount", "100 g")
	s.shows(at+"/shop", "150 g", "2 × 100 g, €1.40 · 50 g left over · 100 g from the larder", "€4.50 for 2 of 4 items")
	s.post("/larder/self-raising-flour/stock", "amount", "0.4 kg", "useby", "2027-06-01")
	page := s.shows(at+"/shop", "3 of 3 still to get", "In the larder already", "250 g self-raising flour there: 0.4 kg, use by 1 Jun; 100 g", "€3.10 for 1 of 3 items; 2 without a price")
	if strings.Contains(page, `value="self-raising-flour"`) {
		t.Error("what is in the larder is still to be ticked off")
	}
}

func TestWithoutPricesTheListIsAsItWas(t *testing.T) {
	s := newSite(t)
	at := s.start("Scones", scones)
	page := words(s.shows(at+"/shop", "4 of 4 still to get"))
	for _, text := range []string{"without a price", "left over", "larder already"} {
		if strings.Contains(page, text) {
			t.Errorf("a list without prices says %q", text)
		}
	}
}

// Stock must keep to the shoot day, but for trials, which are made before it.
func TestStockMustKeepToTheShootDay(t *testing.T) {
	s, at := stocked(t)
	s.post("/larder/self-raising-flour/stock", "amount", "1 kg", "useby", "2027-03-05")
	s.shows(at+"/shop", "In the larder already")
	shootOn(t, s, at, "2027-03-06")
	page := words(s.shows(at+"/shop", "in the larder and too old on the day: 1 kg, use by 5 Mar", "1 × 500 g"))
	if strings.Contains(page, "In the larder already") {
		t.Error("stock that is too old on the shoot day is counted")
	}
	shootOn(t, s, at, "2027-03-05")
	s.shows(at+"/shop", "In the larder already")
	shootOn(t, s, at, "2027-03-06")
	s.post(at+"/batches", "kind", "trial", "makes", "2")
	s.shows(at+"/shop", "1 × 500 g, €1.90 · 250 g left over · 1 kg from the larder", "too old on the day")
}

// shootOn sets an episode's shoot day, whatever else its form holds.
func shootOn(t *testing.T, s *site, at, day string) {
	t.Helper()
	id := strings.TrimPrefix(at, "/episodes/")
	episode, ok := measure.MustNumber(id).Int()
	d, err := s.store.ShootDay(t.Context(), episode)
	if err != nil || !ok {
		t.Fatal(err)
	}
	if d.On, err = time.Parse(time.DateOnly, day); err != nil {
		t.Fatal(err)
	}
	if err := s.store.SaveShootDay(t.Context(), d); err != nil {
		t.Fatal(err)
	}
}

// Two episodes share what is left over of a pack, and the stock.
func TestShoppingBuysForAllEpisodesAtOnce(t *testing.T) {
	s, _ := stocked(t)
	s.start("More scones", strings.Replace(scones, "Scones", "More scones", 1))
	s.shows("/shopping", "500 g", "1 × 500 g, €1.90", "1 × 250 g, €3.10 · 150 g left over", "€5.00 for 2 of 4 items")
	s.post("/larder/self-raising-flour/stock", "amount", "300 g")
	s.shows("/shopping", "2 × 100 g, €1.40 · 300 g from the larder")
}

func TestNothingIsToBuyWhenAllIsInTheLarder(t *testing.T) {
	s := newSite(t)
	at := s.start("Scones", "Scones\n\n250 g self-raising flour\n50 g butter\n150 ml milk\n")
	for _, food := range []string{"self-raising-flour", "butter", "whole-milk"} {
		s.post("/larder/"+food+"/stock", "amount", "2 kg")
	}
	for _, path := range []string{at + "/shop", "/shopping"} {
		page := words(s.shows(path, "Nothing: all of it is in the larder", "In the larder already", "150 mL whole milk there: 2 kg"))
		if strings.Contains(page, "still to get") || strings.Contains(page, "without a price") {
			t.Errorf("%s: something is still to get", path)
		}
	}
}

// What cannot be compared is asked about, and bought in full.
func TestKnobsCannotBeTakenOffAStockInGrams(t *testing.T) {
	s, at := stocked(t)
	s.post("/larder/lard/stock", "amount", "2 kg")
	s.shows(at+"/shop", "2 knobs lard", "The larder cannot compare lard as the recipe measures it")
}

func TestAPriceIsInTheShowsCurrency(t *testing.T) {
	s, at := stocked(t)
	show, err := s.store.Show(t.Context())
	if err != nil {
		t.Fatal(err)
	}
	show.Currency = "JPY"
	if err := s.store.SaveShow(t.Context(), show); err != nil {
		t.Fatal(err)
	}
	s.shows(at+"/shop", "¥500 for 2 of 4 items")
	s.shows("/larder/butter", "JPY", "¥310")
}

// needing is a need for so much of one food.
func needing(id, n string, unit measure.Unit) shop.Need {
	line := recipe.Line{Read: true, Food: id, FoodID: id, Amount: of(n, unit), HasAmount: true}
	return shop.Need{Batch: "shoot", Makes: measure.Whole(1), System: measure.Metric,
		Recipe: recipe.Recipe{Components: []recipe.Component{{Lines: []recipe.Line{line}}}}}
}

func builtIn(t *testing.T) *food.Larder {
	t.Helper()
	larder, err := seed.Larder()
	if err != nil {
		t.Fatal(err)
	}
	return larder
}

func TestAddsWordsSayWhatMoreNeedsAdd(t *testing.T) {
	flour, butter := func(n string) shop.Need { return needing("plain-flour", n, measure.Gram) }, needing("unsalted-butter", "100", measure.Gram)
	shelf := shop.Shelf{Currency: "EUR", Today: today, Packs: []shop.Pack{
		{FoodID: "plain-flour", Amount: of("500", measure.Gram), Price: 120}, {FoodID: "unsalted-butter", Amount: of("250", measure.Gram), Price: 310},
	}}
	full := shelf
	full.Stock = []shop.Stock{{FoodID: "plain-flour", Amount: of("2", measure.Kilogram)}}
	for _, c := range []struct {
		name         string
		shelf        shop.Shelf
		before, more []shop.Need
		want         string
	}{
		{"nothing", shelf, []shop.Need{flour("200")}, nil, "|no more packs"},
		{"to an empty list", shelf, nil, []shop.Need{flour("200"), butter}, "100 g unsalted butter, 200 g plain flour|about €4.30"},
		{"what is left over of a pack is enough", shelf, []shop.Need{flour("300")}, []shop.Need{flour("200")}, "200 g plain flour|no more packs"},
		{"one more pack", shelf, []shop.Need{flour("400")}, []shop.Need{flour("200")}, "200 g plain flour|about €1.20"},
		{"what is in the larder is enough", full, []shop.Need{flour("400")}, []shop.Need{flour("200")}, "200 g plain flour|no more packs"},
		{"some of it has no price", shelf, nil, []shop.Need{flour("200"), needing("honey", "50", measure.Gram)}, "200 g plain flour, 50 g honey|about €1.20, and 1 thing without a price"},
		{"none of it has a price", shelf, []shop.Need{flour("200")}, []shop.Need{needing("honey", "50", measure.Gram)}, "50 g honey|"},
		{"no prices at all", shop.Shelf{}, []shop.Need{flour("200")}, []shop.Need{flour("200")}, "200 g plain flour|"},
	} {
		t.Run(c.name, func(t *testing.T) {
			items, cost := web.AddsWords(c.shelf, builtIn(t), c.before, c.more)
			if got := strings.ReplaceAll(items+"|"+cost, "\u00a0", " "); got != c.want {
				t.Errorf("AddsWords = %q, want %q", got, c.want)
			}
		})
	}
}

// The shoot day's trade says what an extra make costs: whole packs, and what is
// in the larder first if it keeps to the day.
func TestTheTradeSaysWhatAnExtraMakeCosts(t *testing.T) {
	s, path := startLoaf(t, 1) // 500 g of bread flour a make
	trade := path + "/shoot-day?swapouts=1"
	s.shows(trade, "adds to the shopping: 500 g")
	if page := words(s.get(trade).body); strings.Contains(page, "about €") || strings.Contains(page, "more packs") {
		t.Errorf("without prices the trade tells a cost: %s", page)
	}
	const flour = "/larder/strong-white-bread-flour"
	s.post(flour+"/packs", "amount", "500 g", "price", "1.40")
	s.shows(trade, "about €1.40")
	s.post(flour+"/stock", "amount", "1.2 kg", "useby", "2027-03-05")
	s.shows(trade, "no more packs")
	shootOn(t, s, path, "2027-03-06")
	s.shows(trade, "about €1.40")
	s.send(path+"/shoot-day/swap-outs", url.Values{"stage": {"2 "}})
	s.shows(trade, "about €1.40") // weighed up against the day without it
}
