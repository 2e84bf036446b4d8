package about

import (
	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// IsUnitSlip tells hours said for minutes, seconds for minutes and the like: the
// number is right.
func IsUnitSlip(s, w speech.Said) bool {
	for _, by := range []int64{60, 24} {
		k := measure.Whole(by)
		if s.Unit != w.Unit && s.Amount.IsSingle() == w.Amount.IsSingle() && (same.Ranges(s.Amount.Range, w.Amount.Range.Scale(k)) || same.Ranges(s.Amount.Range.Scale(k), w.Amount.Range)) {
			return true
		}
	}
	return false
}

const (
	far   = 15 // how many times a time is another one's that is not said for it
	close = 4  // and how many times at most where little speaks for it
)

// isFar tells times of quite another size, but for slips that are known.
func isFar(s speech.Said, f written.Fact) bool {
	if IsUnitSlip(s, f.Said) || isTenfold(s, f.Said) {
		return false
	}
	return isFarBy(s, f, far)
}

func isFarBy(s speech.Said, f written.Fact, times int64) bool {
	k := measure.Whole(times)
	return s.Amount.From.Cmp(f.Amount.To.Mul(k)) > 0 || s.Amount.To.Mul(k).Cmp(f.Amount.From) < 0
}

// IsNear tells whether a time or a heat is of the size of a fact's, so that it may
// have been meant.
func IsNear(s speech.Said, f written.Fact) bool {
	if s.Kind == speech.Time {
		return !isFar(s, f)
	}
	return isPossible(s, f)
}
