package web

import (
	"context"
	"fmt"
	"strings"

	"github.com/bojanz/currency"

	"benchproof/kitchen/food"
	"benchproof/kitchen/shop"
)

// whatItAdds says what more needs add to an episode's shopping, and what they
// add to its cost, in a few words: see addsWords.
func (s *Server) whatItAdds(ctx context.Context, d *desk, more []shop.Need) (items, cost string, err error) {
	_, before, err := s.needsOf(ctx, d)
	if err != nil {
		return "", "", err
	}
	shelf, err := s.shelf(ctx, d.show)
	if err != nil {
		return "", "", err
	}
	items, cost = addsWords(shelf, s.config.Larder, before, more)
	return items, cost, nil
}

// addsWords says what more needs add to those before, "200 g plain flour, 100 g
// unsalted butter", and what they add to the cost, "about $3.10". The cost is
// that of whole packs: what is over of the packs bought before and what is in
// the larder are used first. It is "" while no price is known, and tells of what
// has none.
func addsWords(shelf shop.Shelf, larder *food.Larder, before, more []shop.Need) (items, cost string) {
	var names []string
	added := map[string]bool{}
	for _, aisle := range shop.List(more, larder).Aisles {
		for _, item := range aisle.Items {
			names = append(names, joined(" ", item.Measure, item.Name))
			added[item.Key] = true
		}
	}
	without := shelf.List(before, larder)
	with := shelf.List(append(append([]shop.Need{}, before...), more...), larder)
	priced, unpriced := 0, 0
	for _, aisle := range with.Aisles {
		for _, item := range aisle.Items {
			switch {
			case !added[item.Key]:
			case item.Buy.IsPriced():
				priced++
			default:
				unpriced++
			}
		}
	}
	return strings.Join(names, ", "), addedCost(with.Cost().Sum, without.Cost().Sum, priced, unpriced)
}

// addedCost words the difference of two sums, in which so many of the things
// that were added have a price and so many have none.
func addedCost(with, without currency.Amount, priced, unpriced int) string {
	more, err := with.Sub(without)
	if err != nil || more.IsNegative() || priced == 0 && unpriced > 0 {
		return ""
	}
	cost := "about\u00a0" + priceText(more)
	if more.IsZero() {
		cost = "no more packs"
	}
	if unpriced > 0 {
		cost += fmt.Sprintf(", and %s without a price", count(unpriced, "thing", "things"))
	}
	return cost
}
