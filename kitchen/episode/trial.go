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
