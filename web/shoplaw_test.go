package web_test

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/shop"
	"benchproof/web"
)

// money finds the prices in a text: "€1,234.50".
var money = regexp.MustCompile(`€([0-9,]+\.[0-9]{2})`)

// centsIn reads the one price of a text as cents, 0 for none.
func centsIn(t *rapid.T, text string) int {
	found := money.FindStringSubmatch(text)
	if found == nil {
		return 0
	}
	n, err := strconv.Atoi(strings.NewReplacer(",", "", ".", "").Replace(found[1]))
	if err != nil {
		t.Fatal(err)
	}
	return n
}

// Whatever packs and stock are noted, the sum of a list is that of its items as
// they are worded, it says of how many, and nothing needed is left out.
func TestTheSumIsThatOfTheItems(t *testing.T) {
	larder := builtIn(t)
	foods := []string{"self-raising-flour", "butter", "whole-milk", "lard", "honey"}
	rapid.Check(t, func(t *rapid.T) {
		shelf := shop.Shelf{Currency: "EUR", Today: today}
		var needs []shop.Need
		for _, id := range foods {
			needs = append(needs, needing(id, fmt.Sprint(rapid.IntRange(1, 900).Draw(t, "needed")), measure.Gram))
		}
		for range rapid.IntRange(0, 6).Draw(t, "packs") {
			shelf.Packs = append(shelf.Packs, shop.Pack{
				FoodID: rapid.SampledFrom(foods).Draw(t, "packed"), Amount: of(fmt.Sprint(rapid.IntRange(20, 900).Draw(t, "holds")), measure.Gram),
				Price: rapid.Int64Range(0, 99_999).Draw(t, "price"),
			})
		}
		for range rapid.IntRange(0, 3).Draw(t, "stock") {
			shelf.Stock = append(shelf.Stock, shop.Stock{
				FoodID: rapid.SampledFrom(foods).Draw(t, "stocked"), Amount: of(fmt.Sprint(rapid.IntRange(1, 900).Draw(t, "held")), measure.Gram),
			})
		}
		list := web.ShopList(today, shelf.List(needs, larder), nil, "/tick", "/recipe")
		sum, priced, all := 0, 0, 0
		for _, aisle := range list.Aisles {
			for _, item := range aisle.Items {
				if cents := centsIn(t, item.Buy); cents > 0 {
					priced++
					sum += cents
				}
				all++
			}
		}
		if sum != centsIn(t, list.Sum) || (priced == 0) != (list.Sum == "") {
			t.Fatalf("the items cost %d cents, the sum is %q: %+v", sum, list.Sum, list)
		}
		if priced > 0 && !strings.HasPrefix(list.SumOf, fmt.Sprintf("for %d ", priced)) {
			t.Fatalf("%d items have a price, the sum is %q", priced, list.SumOf)
		}
		if all+len(list.Held) != len(foods) {
			t.Fatalf("%d to buy and %d held of %d foods", all, len(list.Held), len(foods))
		}
	})
}
