package shop

import (
	"slices"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
)

// Pack is one size a food is bought in.
type Pack struct {
	ID       int64
	FoodID   string         // the larder's food
	Amount   measure.Amount // what it holds, a single value above 0: "500 g", "1 L", "12"
	Price    int64          // minor units of the show's currency, so 249 is 2.49; 0 if not known
	Revision int
}

// Packed is a number of packs of one size.
type Packed struct {
	Pack  Pack
	Count int // above 0
}

// String writes "2 × 500 g".
func (p Packed) String() string {
	return measure.Whole(int64(p.Count)).String() + nbsp + "×" + nbsp + p.Pack.Amount.String()
}

// Basket is what is bought of one food.
type Basket struct {
	Packs []Packed       // the largest first
	Price int64          // of them all, minor units; 0 if no pack has a price
	Left  measure.Number // what is over, in the unit of the need
}

// Buy gives the packs that hold at least need for the least money, exact; of
// those at one price the ones that leave least over, then the fewest. A pack
// without a price is only taken where none has one, and then the least is left
// over. The packs' amounts are in need's unit. A need of 0 takes no pack.
//
// The error is fault.Invalid where there is no pack, where one is of another
// unit or holds nothing, or where the need is so many small packs of odd sizes
// that working it out would take too long.
func Buy(need measure.Amount, packs []Pack) (Basket, error) {
	var all []sized
	for _, p := range packs {
		if p.Amount.Unit != need.Unit {
			return Basket{}, fault.Invalidf("", "A pack of %s cannot be compared with %s.", p.Amount, need)
		}
		all = append(all, sized{p, p.Amount.To})
	}
	return choose(need.To, all)
}

// sized is a pack with what it holds in the unit of the need.
type sized struct {
	Pack
	holds measure.Number
}

// choose is Buy, with everything in one unit.
func choose(need measure.Number, packs []sized) (Basket, error) {
	packs = worthComparing(packs)
	if len(packs) == 0 {
		return Basket{}, fault.Invalidf("", "No pack is known. Say how it is bought.")
	}
	unit := commonUnit(packs)
	sizes := make([]size, len(packs))
	for i, p := range packs {
		if p.holds.Sign() <= 0 || p.Price < 0 {
			return Basket{}, fault.Invalidf("", "A pack must hold something.")
		}
		sizes[i] = size{units(p.holds, unit), p.Price}
	}
	counts, ok := cover(units(need, unit), sizes)
	if !ok {
		return Basket{}, fault.Invalidf("", "There are too many ways to buy this in its packs. Name a larger one, or leave out those of odd sizes.")
	}
	return basketOf(need, packs, counts), nil
}

// worthComparing gives the packs to choose from, the largest first: those with
// a price, all if none has one.
func worthComparing(packs []sized) []sized {
	isPriced := func(p sized) bool { return p.Price != 0 }
	var kept []sized
	for _, p := range packs {
		if isPriced(p) || !slices.ContainsFunc(packs, isPriced) {
			kept = append(kept, p)
		}
	}
	slices.SortStableFunc(kept, func(a, b sized) int { return b.holds.Cmp(a.holds) })
	return kept
}

// commonUnit is the greatest amount that every pack holds a whole number of
// times: whatever is bought is a multiple of it, so a need may be rounded up to
// it without loss. Euclid's algorithm, on fractions.
func commonUnit(packs []sized) measure.Number {
	var unit measure.Number
	for _, p := range packs {
		a, b := unit, p.holds
		for !b.IsZero() {
			a, b = b, remainder(a, b)
		}
		unit = a
	}
	return unit
}

// remainder is what a leaves when b is taken from it as often as it goes.
func remainder(a, b measure.Number) measure.Number {
	times := a.Quo(b).Ceil()
	if !times.Equal(a.Quo(b)) {
		times = times.Sub(measure.Whole(1))
	}
	return a.Sub(b.Mul(times))
}

// units counts the units an amount takes, mostUnits if there are as many.
func units(n, unit measure.Number) int64 {
	if count, ok := n.Quo(unit).Ceil().Int(); ok && count < mostUnits {
		return count
	}
	return mostUnits
}

func basketOf(need measure.Number, packs []sized, counts []int) Basket {
	var basket Basket
	var holds measure.Number
	for i, n := range counts {
		if n == 0 {
			continue
		}
		basket.Packs = append(basket.Packs, Packed{packs[i].Pack, n})
		basket.Price += int64(n) * packs[i].Price
		holds = holds.Add(packs[i].holds.Mul(measure.Whole(int64(n))))
	}
	if len(basket.Packs) > 0 {
		basket.Left = holds.Sub(need)
	}
	return basket
}
