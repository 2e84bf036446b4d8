package episode

import (
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// Loss is the share of its weight, in per cent, that the make lost in cooking;
// ok is false unless both weights were measured.
func (t Trial) Loss() (percent measure.Number, ok bool) {
	if t.DoughGrams.Sign() <= 0 || t.BakedGrams.Sign() <= 0 {
		return measure.Number{}, false
	}
	share, err := recipe.BakeLoss(t.DoughGrams, t.BakedGrams)
	return share.Mul(measure.Whole(100)), err == nil
}

// MeanLoss is the mean of the losses, in per cent, of those trials in which both
// weights were measured; measured is how many those are.
func MeanLoss(trials []Trial) (percent measure.Number, measured int) {
	var sum measure.Number
	for _, t := range trials {
		if loss, ok := t.Loss(); ok {
			sum = sum.Add(loss)
			measured++
		}
	}
	if measured == 0 {
		return measure.Number{}, 0
	}
	return sum.Quo(measure.Whole(int64(measured))), measured
}
