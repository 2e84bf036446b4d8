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
	packs = worthComparing(packs)
	if err := checkPacks(need, packs); err != nil {
		return Basket{}, err
	}
	unit := commonUnit(packs)
	sizes := make([]size, len(packs))
	for i, p := range packs {
		units, ok := p.Amount.To.Quo(unit).Int()
		if !ok || units > mostUnits {
			return Basket{}, tooMany(need)
		}
		sizes[i] = size{units, p.Price}
	}
	units, ok := need.To.Quo(unit).Ceil().Int()
	if !ok || units > mostUnits {
		return Basket{}, tooMany(need)
	}
	counts, ok := cover(units, sizes)
	if !ok {
		return Basket{}, tooMany(need)
	}
	return basketOf(need, packs, counts), nil
}

// worthComparing gives the packs to choose from, the largest first: those with a
// price, all if none has one.
func worthComparing(packs []Pack) []Pack {
	isPriced := func(p Pack) bool { return p.Price > 0 }
	var kept []Pack
	for _, p := range packs {
		if isPriced(p) || !slices.ContainsFunc(packs, isPriced) {
			kept = append(kept, p)
		}
	}
	slices.SortStableFunc(kept, func(a, b Pack) int { return b.Amount.To.Cmp(a.Amount.To) })
	return kept
}

func checkPacks(need measure.Amount, packs []Pack) error {
	if len(packs) == 0 {
		return fault.Invalidf("", "No pack is known. Say how it is bought.")
	}
	for _, p := range packs {
		switch {
		case p.Amount.Unit != need.Unit:
			return fault.Invalidf("", "A pack of %s cannot be compared with %s.", p.Amount, need)
		case p.Amount.To.Sign() <= 0 || p.Price < 0:
			return fault.Invalidf("", "A pack must hold something.")
		}
	}
	return nil
}

func tooMany(need measure.Amount) error {
	return fault.Invalidf("", "There are too many ways to buy %s in these packs. Name a larger one, or leave out those of odd sizes.", need)
}

// commonUnit is the greatest amount that every pack holds a whole number of
// times: whatever is bought is a multiple of it, so a need may be rounded up to
// it without loss. Euclid's algorithm, on fractions.
func commonUnit(packs []Pack) measure.Number {
	var unit measure.Number
	for _, p := range packs {
		a, b := unit, p.Amount.To
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

func basketOf(need measure.Amount, packs []Pack, counts []int) Basket {
	basket := Basket{Left: measure.Number{}.Sub(need.To)}
	for i, n := range counts {
		if n == 0 {
			continue
		}
		basket.Packs = append(basket.Packs, Packed{packs[i], n})
		basket.Price += int64(n) * packs[i].Price
		basket.Left = basket.Left.Add(packs[i].Amount.To.Mul(measure.Whole(int64(n))))
	}
	if len(basket.Packs) == 0 {
		basket.Left = measure.Number{}
	}
	return basket
}
