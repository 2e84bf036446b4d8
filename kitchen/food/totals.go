package food

import "benchproof/kitchen/measure"

// Totals are the nutrients of several foods together: a recipe, a piece of it.
// The zero value is nothing at all. Totals are values: no method changes its
// receiver.
//
// Add raw foods at the weight that goes in. What a pan loses is water: give
// Per100 the cooked weight.
type Totals struct {
	grams measure.Number
	sums  [nutrientCount]measure.Number
	known [nutrientCount]measure.Number // mass of the foods whose figure is in the sum
}

// Add gives the totals with this many grams of f more; grams of 0 or less add
// nothing. Alcohol that a food says nothing of is none.
func (t Totals) Add(f *Food, grams measure.Number) Totals {
	if grams.Sign() <= 0 {
		return t
	}
	t.grams = t.grams.Add(grams)
	held := f.Nutrients(grams)
	for _, n := range AllNutrients() {
		switch amount := held.Get(n); {
		case amount != nil:
			t.sums[n] = t.sums[n].Add(*amount)
			t.known[n] = t.known[n].Add(grams)
		case n == Alcohol && held.EnergyKcal != nil:
			t.known[n] = t.known[n].Add(grams)
		}
	}
	return t
}

// AddUnknown gives the totals with this many grams more of something the
// larder does not know: they count in the mass, and in nothing else.
func (t Totals) AddUnknown(grams measure.Number) Totals {
	if grams.Sign() > 0 {
		t.grams = t.grams.Add(grams)
	}
	return t
}

// Plus gives t and u together.
func (t Totals) Plus(u Totals) Totals {
	t.grams = t.grams.Add(u.grams)
	for n := range t.sums {
		t.sums[n] = t.sums[n].Add(u.sums[n])
		t.known[n] = t.known[n].Add(u.known[n])
	}
	return t
}

// Times gives k of t: 1/16 for one of sixteen pieces. k is not negative.
func (t Totals) Times(k measure.Number) Totals {
	t.grams = t.grams.Mul(k)
	for n := range t.sums {
		t.sums[n] = t.sums[n].Mul(k)
		t.known[n] = t.known[n].Mul(k)
	}
	return t
}

// Grams is the mass added, known or not.
func (t Totals) Grams() measure.Number { return t.grams }

// Of gives the sum of one nutrient in its unit, and the share of the mass
// (0 to 1) whose figure is in it: a sum with a share under 1 is a least value.
// Of no mass at all the share is 0.
func (t Totals) Of(n Nutrient) (sum, share measure.Number) {
	if t.grams.IsZero() {
		return t.sums[n], measure.Number{}
	}
	return t.sums[n], t.known[n].Quo(t.grams)
}

// Covered is the share of the mass, 0 to 1, whose energy is known.
func (t Totals) Covered() measure.Number {
	_, share := t.Of(EnergyKcal)
	return share
}

// Nutrients gives the sums; a nutrient of which nothing is known is nil.
func (t Totals) Nutrients() Nutrients {
	var ns Nutrients
	for _, n := range AllNutrients() {
		if !t.known[n].IsZero() {
			sum := t.sums[n]
			ns = ns.Set(n, &sum)
		}
	}
	return ns
}

// Per100 gives the totals of 100 g, if the whole weighs finishedGrams when it
// is done; 0 means that it weighs what went in. Of no mass it is zero.
func (t Totals) Per100(finishedGrams measure.Number) Totals {
	if finishedGrams.Sign() <= 0 {
		finishedGrams = t.grams
	}
	if finishedGrams.IsZero() {
		return Totals{}
	}
	per := t.Times(hundred.Quo(finishedGrams))
	return per
}
