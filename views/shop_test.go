package views_test

import (
	"strings"
	"testing"

	"golang.org/x/net/html"

	"benchproof/views"
)

func aList() views.ShopList {
	return views.ShopList{
		TickAction: "/tick", Left: "2 of 2 still to get",
		Aisles: []views.AisleBlock{{Name: "Baking", Items: []views.ShopItem{
			{Key: "flour", Measure: "760 g", Food: "plain flour", Path: "/larder/plain-flour", Buy: "2 × 500 g, €4.20 · 240 g left over", Have: "200 g from the larder", Detail: "shoot 960 g"},
			{Key: "milk", Measure: "1 L", Food: "milk", Late: "in the larder and too old on the day: 1 L, use by 1 Mar"},
			{Key: "weeds", Measure: "1", Food: "sea weeds"},
		}}},
		Sum: "€4.20", SumOf: "for 1 of 3 items; 2 without a price",
		Held: []views.HeldItem{{Measure: "3", Food: "eggs", Path: "/larder/egg", Have: "there: 4"}},
	}
}

// unspaced is an element's text without blanks: parts that stand side by side
// have none between them.
func unspaced(n *html.Node) string { return strings.ReplaceAll(words(n), " ", "") }

func without(text string) string { return strings.ReplaceAll(text, " ", "") }

// A row of the list is the measure, what to tick, how it is bought, what it is
// for; what is too old is to be looked at.
func TestShopItemsStandOnTheRule(t *testing.T) {
	doc := parse(t, views.Shopping(views.ShoppingPage{List: aList()}))
	rows := byClass(doc, "tickable")
	if len(rows) != 3 {
		t.Fatalf("%d rows to tick, want 3", len(rows))
	}
	for i, want := range []string{
		"760 g plain flour 2 × 500 g, €4.20 · 240 g left over · 200 g from the larder shoot 960 g larder: packs, prices and stock of plain flour",
		"1 L milk ? in the larder and too old on the day: 1 L, use by 1 Mar",
		"1 sea weeds",
	} {
		if got := unspaced(rows[i]); got != without(want) {
			t.Errorf("row %d: %q\nwant  %q", i+1, got, want)
		}
	}
	if len(byClass(rows[1], "look")) == 0 || len(byClass(rows[0], "look")) != 0 {
		t.Error("what is too old is not marked, or more than that")
	}
	total := byClass(doc, "total")
	if len(total) != 1 || unspaced(total[0]) != without("€4.20 for 1 of 3 items; 2 without a price") {
		t.Errorf("the sum is not on a row of its own: %d", len(total))
	}
	if held := byClass(doc, "held"); len(held) != 1 || unspaced(held[0]) != without("In the larder already 3 eggs there: 4") {
		t.Errorf("what is in the larder is drawn %d times", len(held))
	}
	if n := count(doc, "form"); n != 3 {
		t.Errorf("%d forms, want one a thing to buy: what is in the larder is not ticked", n)
	}
}

func TestAListWithoutPricesHasNoSum(t *testing.T) {
	list := aList()
	list.Sum, list.SumOf, list.Held = "", "", nil
	doc := parse(t, views.Shopping(views.ShoppingPage{List: list}))
	if len(byClass(doc, "total"))+len(byClass(doc, "held")) > 0 {
		t.Error("a sum or a larder is drawn for nothing")
	}
}

// A list on which nothing is to buy says so, and still tells what is there.
func TestAListOfWhatIsHeldAlone(t *testing.T) {
	doc := parse(t, views.Shopping(views.ShoppingPage{List: views.ShopList{Empty: "Nothing: all of it is in the larder.", Held: aList().Held}}))
	page := unspaced(doc)
	for _, text := range []string{"Nothing: all of it is in the larder.", "In the larder already 3 eggs there: 4"} {
		if !strings.Contains(page, without(text)) {
			t.Errorf("the page does not say %q", text)
		}
	}
}

func TestFoodEntries(t *testing.T) {
	packs := views.FoodEntries{
		Rows: []views.FoodEntry{{Measure: "500 g", Text: "€2.10", Small: "€4.20 a kg", Of: "the pack of 500 g", EditPath: "/edit", DeleteAction: "/delete"}},
		Form: views.Form{ID: "pack", Title: "Add pack", Action: "/packs", Submit: "Add pack", Fields: []views.Field{{Name: "amount", Label: "Pack of"}}},
	}
	empty := packs
	empty.Rows, empty.Empty = nil, "No packs are noted."
	refused := packs
	refused.Form.Fields = []views.Field{{Name: "amount", Label: "Pack of", Value: "a bit", Error: "Not an amount."}}
	for _, c := range []struct {
		name   string
		list   views.FoodEntries
		says   string
		isOpen bool
	}{
		{"some", packs, "500 g €2.10 €4.20 a kg Edit the pack of 500 g Delete the pack of 500 g", false},
		{"none", empty, "No packs are noted.", false},
		{"refused", refused, "Not an amount.", true},
	} {
		t.Run(c.name, func(t *testing.T) {
			doc := parse(t, views.Food(views.FoodPage{Name: "flour", Packs: &c.list}))
			section := byClass(doc, "entries")
			if len(section) != 1 || !strings.Contains(unspaced(section[0]), without(c.says)) {
				t.Fatalf("%d sections; want one that says %q", len(section), c.says)
			}
			if fold := byClass(section[0], "fold"); len(fold) != 1 || has(fold[0], "open") != c.isOpen {
				t.Errorf("the form is open: %v, want %v", !c.isOpen, c.isOpen)
			}
		})
	}
	if doc := parse(t, views.Food(views.FoodPage{Name: "egg yolk", BoughtAs: views.Link{Text: "egg", Path: "/larder/egg"}})); len(byClass(doc, "entries")) > 0 || !strings.Contains(words(doc), "Bought as egg: its packs") {
		t.Error("a food that is not bought itself takes packs")
	}
}
