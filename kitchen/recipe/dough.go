package recipe

import "benchproof/kitchen/measure"

// leastFlour is the share of a dough or batter, in parts of its mass, that is
// flour: the wettest batters hold about a quarter (common practice, no source).
// A stew with a spoon of flour stays below.
var leastFlour = measure.Ratio(1, 5)

// IsDough tells whether the formula is of a dough or batter, for which baker's
// percentages mean something, and everything in it has a weight.
func (f Formula) IsDough() bool {
	return len(f.Missing) == 0 && f.DoughGrams.Sign() > 0 && f.FlourGrams.Quo(f.DoughGrams).Cmp(leastFlour) >= 0
}
