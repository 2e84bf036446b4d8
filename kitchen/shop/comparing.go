package shop

import (
	"slices"
	"time"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
)

// comparing brings what is needed of one food, its packs and its stock to one
// unit.
type comparing struct {
	group    *group
	unit     measure.Unit // grams, millilitres, or what is counted
	house    measure.System
	estimate bool // something went by an estimated weight
}

// unitOf is the unit to compare in: that of the packs, of the stock where there
// are no packs, and grams where they differ in kind.
func unitOf(packs []Pack, stock []Stock) measure.Unit {
	var all []measure.Unit
	for _, p := range packs {
		all = append(all, baseOf(p.Amount.Unit))
	}
	if len(packs) == 0 {
		for _, held := range stock {
			all = append(all, baseOf(held.Amount.Unit))
		}
	}
	for _, u := range all {
		if u != all[0] {
			return measure.Gram
		}
	}
	return all[0]
}

func baseOf(u measure.Unit) measure.Unit {
	switch u.Kind() {
	case measure.Mass:
		return measure.Gram
	case measure.Volume:
		return measure.Millilitre
	}
	if u == measure.Piece {
		return measure.Each
	}
	return u
}

// in gives an amount of f in the unit, exact; ok is false if the larder cannot
// tell.
func (c *comparing) in(a measure.Amount, f *food.Food, form string, system measure.System) (n measure.Number, ok bool) {
	per := measure.Whole(1)
	switch {
	case baseOf(a.Unit) != c.unit:
		return c.byWeight(a, f, form, system)
	case c.unit == measure.Gram:
		per, ok = system.Grams(a.Unit)
	case c.unit == measure.Millilitre:
		per, ok = system.Millilitres(a.Unit)
	default:
		ok = true
	}
	return a.To.Mul(per), ok
}

// byWeight weighs the amount, and one of the unit.
func (c *comparing) byWeight(a measure.Amount, f *food.Food, form string, system measure.System) (n measure.Number, ok bool) {
	if f == nil {
		return n, false
	}
	all, err := f.Grams(a, form, system)
	if err != nil {
		return n, false
	}
	one, err := f.Grams(measure.Of(measure.Whole(1), c.unit), "", system)
	if err != nil || one.Grams.To.Sign() <= 0 {
		return n, false
	}
	c.estimate = c.estimate || all.Estimate || one.Estimate
	return all.Grams.To.Quo(one.Grams.To), true
}

// own is in for a pack or stock: in the house's measures, in the food's usual
// form.
func (c *comparing) own(a measure.Amount) (measure.Number, bool) {
	return c.in(a, c.group.food, "", c.house.Or(measure.US))
}

// sizes are the packs that can be compared.
func (c *comparing) sizes(packs []Pack) []sized {
	var all []sized
	for _, p := range packs {
		if n, ok := c.own(p.Amount); ok {
			all = append(all, sized{p, n})
		}
	}
	return all
}

// supplies are the stock, that which cannot be compared as nothing.
func (c *comparing) supplies(stock []Stock) []supply {
	all := make([]supply, 0, len(stock))
	for _, held := range stock {
		n, _ := c.own(held.Amount)
		all = append(all, supply{Held{Stock: held}, n})
	}
	slices.SortStableFunc(all, func(a, b supply) int { return soonest(a.Stock, b.Stock) })
	return all
}

// demands are what is needed on each of the group's days.
func (c *comparing) demands(days []time.Time) (all []demand, ok bool) {
	var before measure.Number
	for _, day := range days {
		upTo, ok := c.total(day)
		if !ok {
			return nil, false
		}
		all = append(all, demand{day, upTo.Sub(before)})
		before = upTo
	}
	return all, true
}

// days are the days on which some of the food is needed, the earliest first. A
// day that is past, or not known, is today.
func (g *group) days(today time.Time) []time.Time {
	var days []time.Time
	for _, p := range g.portions {
		days = append(days, laterOf(p.day, today))
	}
	slices.SortFunc(days, time.Time.Compare)
	return slices.CompactFunc(days, time.Time.Equal)
}

func laterOf(a, b time.Time) time.Time {
	if a.Before(b) {
		return b
	}
	return a
}

// total is what is needed up to a day. Eggs are whole ones: what is broken for
// its yolk serves for its white as well.
func (c *comparing) total(day time.Time) (sum measure.Number, ok bool) {
	var asked []portion
	for _, p := range c.group.portions {
		if !p.day.After(day) {
			asked = append(asked, p)
		}
	}
	if c.group.key == eggID {
		e := countEggs(asked)
		c.estimate = c.estimate || e.estimate
		sum, ok = c.own(measure.Of(e.toBuy(), measure.Each))
		return sum, ok && len(e.others) == 0
	}
	for _, p := range asked {
		n, ok := c.portion(p)
		if !ok {
			return sum, false
		}
		sum = sum.Add(n)
	}
	return sum, true
}

func (c *comparing) portion(p portion) (measure.Number, bool) {
	switch {
	case p.amount.IsZero():
		return measure.Number{}, true
	case p.pack.unit == c.unit && !p.pack.count.IsZero(): // tins against tins
		return p.pack.count, true
	}
	return c.in(p.amount, p.food, p.form, p.system)
}

// write words what is still needed, rounded up, in place of the whole need.
// small is what stood beside that; of eggs it stays, for it says what they are
// for.
func (c *comparing) write(rest measure.Number, small string) (text, beside string) {
	s := sums{}
	switch c.unit {
	case measure.Gram:
		s.grams = rest
	case measure.Millilitre:
		s.millilitres = rest
	default:
		s.counts = []measure.Amount{measure.Of(rest, c.unit)}
	}
	if grams, ok := (&comparing{unit: measure.Gram}).in(measure.Of(rest, c.unit), c.group.food, "", c.house.Or(measure.US)); ok {
		s.weight = grams
	} else {
		s.noWeight = true
	}
	w := s.write(c.group.food, c.house)
	if c.group.key == eggID {
		return w.measure, small
	}
	return w.measure, w.small
}

// over words what is left over, rounded down; "" for nothing worth a word.
func (c *comparing) over(left measure.Number) string {
	switch c.unit {
	case measure.Gram:
		return overMetric(left, measure.Gram, measure.Kilogram)
	case measure.Millilitre:
		return overMetric(left, measure.Millilitre, measure.Litre)
	}
	if left = down(left, measure.Whole(1)); left.Sign() <= 0 {
		return ""
	}
	return measure.Of(left, c.unit).String()
}

func (c *comparing) problem() string {
	return "The larder cannot compare " + c.group.food.Name + " as the recipe measures it with what is bought or held. Give its amount or its packs by weight."
}
