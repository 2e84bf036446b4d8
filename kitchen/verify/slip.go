package verify

import (
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/verify/about"
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// slipOf names the likely cause of a difference.
func (j *judge) slipOf(i int) Slip {
	s, t := j.Said[i], j.Ties[i]
	switch {
	case t.Item >= 0:
		return j.amountSlip(s, j.Book.Items[t.Item].Line)
	case t.Fact < 0:
		return ""
	}
	f := j.Book.Facts[t.Fact]
	switch {
	case f.Kind == speech.Heat:
		return heatSlip(s, f)
	case f.Kind == speech.Time && about.IsUnitSlip(s, f.Said):
		return UnitSlip
	case f.Kind == speech.Length && s.Amount.Unit != "" && s.Amount.Unit != f.Amount.Unit && same.Ranges(s.Amount.Range, f.Amount.Range):
		return UnitSlip
	case (f.Kind != speech.Length || s.Amount.Unit == f.Amount.Unit) && isTenfold(s.Amount.Range, f.Amount.Range):
		return Tenfold
	}
	return ""
}

// isPlainSlip tells whether number i is what a slip makes of the written one: another unit,
// a power of ten, fifteen for fifty.
func (j *judge) isPlainSlip(i int) bool {
	s, t := j.Said[i], j.Ties[i]
	switch {
	case j.slipOf(i) != "":
		return true
	case t.Item >= 0:
		return about.SoundsLike(s.Amount, j.Book.Items[t.Item].Line.Amount)
	case t.Fact >= 0:
		return about.SoundsLike(s.Amount, j.Book.Facts[t.Fact].Amount)
	}
	return false
}

// amountSlip names the likely cause where an ingredient's amount differs.
func (j *judge) amountSlip(s speech.Said, l recipe.Line) Slip {
	for _, w := range same.Statements(l) {
		if s.Amount.Unit != w.Unit && s.Amount.Unit != measure.Each && same.Ranges(s.Amount.Range, w.Range) {
			return UnitSlip
		}
		if (s.Amount.Unit == w.Unit || s.Amount.Unit == measure.Each) && isTenfold(s.Amount.Range, w.Range) {
			return Tenfold
		}
		if to, err := measure.Convert(s.Amount, w.Unit, measure.Metric, measure.Metric); err == nil && isTenfold(to.Range, w.Range) {
			return Tenfold
		}
	}
	return ""
}

func isTenfold(a, b measure.Range) bool {
	for _, by := range []int64{10, 100, 1000} {
		k := measure.Whole(by)
		if same.Ranges(a.Scale(k), b) || same.Ranges(a, b.Scale(k)) {
			return true
		}
	}
	return false
}

func heatSlip(s speech.Said, f written.Fact) Slip {
	for _, h := range f.Heats {
		if isTenfold(s.Amount.Range, h.Amount.Range) {
			return Tenfold
		}
		otherScale := s.Scale != "" && h.Scale != "" && s.Scale != h.Scale
		if (otherScale || (s.Oven == "fan") != (h.Oven == "fan")) && same.Ranges(s.Amount.Range, h.Amount.Range) {
			return UnitSlip
		}
	}
	return ""
}
