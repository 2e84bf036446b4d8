package about

import (
	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// IsUnitSlip tells hours said for minutes, months for weeks and the like: the number
// is right.
func IsUnitSlip(s, w speech.Said) bool {
	return speech.IsNextUnit(s.Unit, w.Unit) && s.Amount.IsSingle() == w.Amount.IsSingle() && same.Ranges(s.Figure(), w.Figure())
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

// isLengthPossible leaves out lengths of quite another size, but for slips of a
// power of ten: a smoke ring of a quarter of an inch is no gap of two.
func isLengthPossible(s speech.Said, f written.Fact) bool {
	if s.Amount.Unit == "" {
		s.Amount.Unit = f.Amount.Unit
	}
	most, ten := measure.Whole(farLength), measure.Whole(10)
	a, b := same.Length(s), same.Length(f.Said)
	return same.Ranges(a, b.Scale(ten)) || same.Ranges(a.Scale(ten), b) ||
		a.From.Cmp(b.To.Mul(most)) <= 0 && a.To.Mul(most).Cmp(b.From) >= 0
}

// farLength is how many times a length is another one's that is not said for it.
const farLength = 5

// IsNear tells whether a time or a heat is of the size of a fact's, so that it may
// have been meant.
func IsNear(s speech.Said, f written.Fact) bool {
	if s.Kind == speech.Time {
		return !isFar(s, f)
	}
	return isPossible(s, f)
}
