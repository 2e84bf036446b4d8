package shop

import "github.com/bojanz/currency"

// Cost is what a list comes to, as far as prices are known.
type Cost struct {
	Sum      currency.Amount // of the items with a price; the zero Amount if none has one
	Priced   int             // items to buy with a price
	Unpriced int             // items to buy without one
	Estimate bool            // some of the packs were chosen by an estimated weight
}

// Cost adds up the prices of what is to be bought. What is in the larder costs
// nothing and is not counted.
func (s Sheet) Cost() Cost {
	var c Cost
	for _, aisle := range s.Aisles {
		for _, item := range aisle.Items {
			if !item.Buy.IsPriced() {
				c.Unpriced++
				continue
			}
			c.Priced++
			c.Estimate = c.Estimate || item.Buy.Estimate
			c.Sum, _ = c.Sum.Add(item.Buy.Cost) // one shelf has one currency
		}
	}
	return c
}
