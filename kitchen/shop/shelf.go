package shop

import (
	"time"

	"github.com/bojanz/currency"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
)

// Shelf is what a show knows for its shopping. The zero Shelf knows nothing.
type Shelf struct {
	Currency string // of the prices, by its ISO 4217 code
	Packs    []Pack
	Stock    []Stock
	Today    time.Time // a date, midnight UTC: nothing is used before it
}

// Purchase is how an item is bought. The zero Purchase knows no packs, no
// prices and no stock.
type Purchase struct {
	Packs    []Packed        // the largest first; none if none are known, or nothing is to be bought
	Cost     currency.Amount // of the packs; the zero Amount if they have no price
	Left     string          // what is over of them, rounded down: "240 g"; "" for nothing
	Held     []Held          // what the larder has of it, the soonest use-by first
	Estimate bool            // packs or stock were compared with the need by an estimated weight
	Problem  string          // why they could not be compared; "" if they could
}

// IsPriced tells whether the item has a price.
func (p Purchase) IsPriced() bool { return p.Cost.CurrencyCode() != "" }

// BoughtAs is the id of the food that is bought where a recipe wants id: eggs
// for their yolks and whites. It is "" for what is never bought.
func BoughtAs(id string) string {
	switch id {
	case yolkID, whiteID:
		return eggID
	case waterID:
		return ""
	}
	return id
}

// of gives the packs and the stock of one food.
func (s Shelf) of(foodID string) (packs []Pack, stock []Stock) {
	for _, p := range s.Packs {
		if p.FoodID == foodID {
			packs = append(packs, p)
		}
	}
	for _, held := range s.Stock {
		if held.FoodID == foodID {
			stock = append(stock, held)
		}
	}
	return packs, stock
}

// settle takes what is in the larder off an item of g and says how the rest is
// bought; isHeld tells that there is no rest.
func (s Shelf) settle(g *group, item *Item, house measure.System) (isHeld bool) {
	packs, stock := s.of(g.key)
	if g.food == nil || len(packs)+len(stock) == 0 {
		return false
	}
	c := comparing{group: g, unit: unitOf(packs, stock), house: house}
	supplies := c.supplies(stock)
	days := g.days(s.Today)
	last := days[len(days)-1]
	demands, ok := c.demands(days)
	if !ok {
		item.Buy = Purchase{Held: heldOf(supplies, last), Problem: c.problem()}
		return false
	}
	need, rest := totalOf(demands), takeOff(demands, supplies)
	item.Buy = Purchase{Held: heldOf(supplies, last), Estimate: c.estimate && len(stock) > 0}
	switch {
	case need.IsZero():
		return keepsAny(supplies, last)
	case rest.IsZero():
		return true
	case rest.Cmp(need) < 0:
		item.Measure, item.Small = c.write(rest, item.Small)
	}
	s.buy(&item.Buy, &c, rest, packs)
	return false
}

// buy chooses packs for what is still needed.
func (s Shelf) buy(p *Purchase, c *comparing, rest measure.Number, packs []Pack) {
	if len(packs) == 0 {
		return
	}
	sizes := c.sizes(packs)
	if len(sizes) == 0 {
		p.Problem = c.problem()
		return
	}
	basket, err := choose(rest, sizes)
	if err != nil {
		p.Problem = fault.Say(err)
		return
	}
	p.Packs, p.Left, p.Estimate = basket.Packs, c.over(basket.Left), c.estimate
	if basket.Price > 0 {
		p.Cost, _ = currency.NewAmountFromInt64(basket.Price, s.Currency) // an unknown currency has no price
	}
}
