package episode

import "benchproof/kitchen/measure"

// Loss is the share of its weight, in per cent, that the make lost in cooking;
// ok is false unless both weights were measured.
func (t Trial) Loss() (percent measure.Number, ok bool) {
	if t.DoughGrams.Sign() <= 0 || t.BakedGrams.Sign() <= 0 {
		return measure.Number{}, false
	}
	return t.DoughGrams.Sub(t.BakedGrams).Quo(t.DoughGrams).Mul(measure.Whole(100)), true
}
