package shop

import (
	"cmp"
	"slices"
	"time"

	"benchproof/kitchen/measure"
)

// Stock is some of a food that is in the larder.
type Stock struct {
	ID       int64
	FoodID   string         // the larder's food
	Amount   measure.Amount // a single value above 0
	UseBy    time.Time      // a date, midnight UTC, the last day it may be used; zero if none is known
	Revision int
}

// keepsTo tells whether it may still be used on a day.
func (s Stock) keepsTo(day time.Time) bool { return s.UseBy.IsZero() || !s.UseBy.Before(day) }

// Held is stock of an item on the list.
type Held struct {
	Stock   Stock
	IsTaken bool // some of it is taken off what is bought
	IsLate  bool // some is left that is past its use-by on a day the food is needed
}

// demand is what is needed of a food on one day.
type demand struct {
	day    time.Time // zero if no day is known
	amount measure.Number
}

// supply is stock in the unit of the demands.
type supply struct {
	Held
	left measure.Number
}

// takeOff meets demands from stock: the earlier days first, each from what has
// to be used soonest and still may be, which together meets as much as can be.
// It gives what is still needed. Demands are in the order of their days, supplies
// in that of their use-by.
func takeOff(demands []demand, supplies []supply) (rest measure.Number) {
	for _, d := range demands {
		need := d.amount
		for i := range supplies {
			s := &supplies[i]
			taken := need
			if s.left.Cmp(taken) < 0 {
				taken = s.left
			}
			if taken.Sign() > 0 && s.Stock.keepsTo(d.day) {
				need, s.left, s.IsTaken = need.Sub(taken), s.left.Sub(taken), true
			}
		}
		rest = rest.Add(need)
	}
	return rest
}

// heldOf tells of stock that is over whether it is too old on the last of the
// days.
func heldOf(supplies []supply, last time.Time) []Held {
	var all []Held
	for _, s := range supplies {
		s.IsLate = (!s.IsTaken || s.left.Sign() > 0) && !s.Stock.keepsTo(last)
		all = append(all, s.Held)
	}
	return all
}

// soonest orders stock by use-by, what has none last.
func soonest(a, b Stock) int {
	return cmp.Or(boolCmp(a.UseBy.IsZero(), b.UseBy.IsZero()), a.UseBy.Compare(b.UseBy), cmp.Compare(a.ID, b.ID))
}

// boolCmp puts false before true.
func boolCmp(a, b bool) int {
	switch {
	case a == b:
		return 0
	case b:
		return -1
	}
	return 1
}

func totalOf(demands []demand) (sum measure.Number) {
	for _, d := range demands {
		sum = sum.Add(d.amount)
	}
	return sum
}

// keepsAny tells whether some stock keeps to the last day: enough for what is
// only wanted to taste.
func keepsAny(supplies []supply, last time.Time) bool {
	return slices.ContainsFunc(supplies, func(s supply) bool { return s.Stock.keepsTo(last) })
}
