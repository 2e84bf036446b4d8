package web

import (
	"context"
	"fmt"
	"slices"
	"strings"
	"time"

	"github.com/bojanz/currency"

	"benchproof/kitchen/food"
	"benchproof/kitchen/shop"
)

// trolley is what an episode's shopping is compared with: the needs it has and
// what the show knows of packs, prices and stock.
type trolley struct {
	shelf  shop.Shelf
	larder *food.Larder
	before []shop.Need
	day    time.Time // the shoot day; zero if not set
}

// trolleyOf is the episode's shopping without the swap-outs up to a step: those
// are what is weighed up against it.
func (s *Server) trolleyOf(ctx context.Context, d *desk) (trolley, error) {
	batches, all, err := s.needsOf(ctx, d)
	if err != nil {
		return trolley{}, err
	}
	t := trolley{larder: s.config.Larder}
	for i, need := range all {
		if batches[i].Step == 0 {
			t.before = append(t.before, need)
		}
		if !need.On.IsZero() {
			t.day = need.On
		}
	}
	t.shelf, err = s.shelf(ctx, d.show)
	return t, err
}

// adds is addsWords for what more is made on the shoot day.
func (t trolley) adds(more []shop.Need) (items, cost string) {
	more = slices.Clone(more)
	for i := range more {
		more[i].On = t.day
	}
	return addsWords(t.shelf, t.larder, t.before, more)
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
