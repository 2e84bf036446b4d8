package verify

import (
	"slices"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/verify/speech"
)

// How far a said value may lie from the written one and still be the same, as a
// share of it; see the package's comment.
var (
	exactly  = measure.Ratio(1, 200)
	sameKind = measure.Ratio(3, 100)
	bySystem = measure.Ratio(8, 100)
	byWeight = measure.Ratio(15, 100)
	nearly   = measure.Ratio(12, 100)
)

// agrees compares two ranges of one unit; slack is a share of the written value.
func agrees(said, written measure.Range, slack measure.Number) bool {
	low := written.From.Sub(written.From.Mul(slack))
	high := written.To.Add(written.To.Mul(slack))
	if said.From.Cmp(low) >= 0 && said.To.Cmp(high) <= 0 {
		return true
	}
	return written.IsSingle() && !said.IsSingle() && said.From.Cmp(high) <= 0 && said.To.Cmp(low) >= 0
}

// statements are all the ways a line states its amount.
func statements(l recipe.Line) []measure.Amount {
	if !l.HasAmount {
		return nil
	}
	all := []measure.Amount{l.Amount}
	all = append(all, l.Equals...)
	if l.Packs.Unit != "" || !l.Packs.Count.IsZero() {
		all = append(all, measure.Amount{Range: l.Packs.Count, Unit: l.Packs.Unit}, l.Packs.Size)
	}
	return all
}

// comparedWith are the statements that a said amount is held against: of a line
// in packs, "two tins" only against their count.
func comparedWith(s speech.Said, l recipe.Line) []measure.Amount {
	if l.HasAmount && l.Packs.Unit != "" && s.Amount.Unit == l.Packs.Unit {
		return []measure.Amount{{Range: l.Packs.Count, Unit: l.Packs.Unit}}
	}
	return statements(l)
}

// equalItem tells whether a said amount is the whole of a line.
func (j *judge) equalItem(s speech.Said, n int) bool {
	it := j.book.items[n]
	if len(it.line.Plus) > 0 {
		return j.equalSum(s, it.line)
	}
	return slices.ContainsFunc(comparedWith(s, it.line), func(w measure.Amount) bool {
		same, _ := j.equal(s, w, it.line)
		return same
	})
}

// equalSum compares with a line of two parts: "½ cup plus 1 tbsp".
func (j *judge) equalSum(s speech.Said, l recipe.Line) bool {
	sum := l.Amount
	for _, more := range l.Plus {
		if total, ok := sum.Add(more, j.systemOf(l).Or(measure.US)); ok {
			sum = total
		}
	}
	same, _ := j.equal(s, sum, l)
	if !same && s.Plus.Unit == "" { // the parts may be said apart
		for _, part := range append([]measure.Amount{l.Amount}, l.Plus...) {
			if eq, _ := j.equal(s, part, l); eq {
				return true
			}
		}
	}
	return same
}

// comparable tells whether a said amount can be compared with a line at all.
func (j *judge) comparable(s speech.Said, n int) bool {
	l := j.book.items[n].line
	return slices.ContainsFunc(comparedWith(s, l), func(w measure.Amount) bool {
		_, ok := j.equal(s, w, l)
		return ok
	})
}

func (j *judge) systemOf(l recipe.Line) measure.System { return l.System.Or(j.system) }

// equal compares a said amount with one statement of a line. ok is false where
// the two cannot be compared.
func (j *judge) equal(s speech.Said, w measure.Amount, l recipe.Line) (same, ok bool) {
	slack := measure.Number{}
	if s.About || l.About {
		slack = nearly
	}
	said := s.Amount
	a, b := said.Unit.Kind(), w.Unit.Kind()
	switch {
	case s.Kind == speech.Share || s.Kind == speech.Heat || s.Kind == speech.Time:
		return false, false
	case s.Kind == speech.Count && said.Unit == measure.Each:
		if b != measure.Count && !isBare(s) {
			return false, false
		}
		return agrees(said.Range, w.Range, exactly.Add(slack)), true
	case said.Unit == w.Unit && s.Plus.Unit == "":
		return agrees(said.Range, w.Range, exactly.Add(slack)), true
	case a == measure.Mass && b == measure.Mass:
		return agrees(inGrams(s), grams(w), sameKind.Add(slack)), true
	case a == measure.Volume && b == measure.Volume:
		return j.equalVolumes(s, w, l, slack), true
	case a == measure.Count && b == measure.Count:
		if said.Unit == measure.Each || w.Unit == measure.Each {
			return agrees(said.Range, w.Range, exactly.Add(slack)), true
		}
		return false, false
	}
	return j.equalWeights(s, w, l, slack)
}

// isBare tells whether a number without a unit can stand for one with: "60 of
// icing sugar". Small ones are counts.
func isBare(s speech.Said) bool { return s.Amount.From.Cmp(measure.Whole(10)) >= 0 }

func grams(a measure.Amount) measure.Range {
	per, _ := measure.Grams(a.Unit)
	return a.Range.Scale(per)
}

func inGrams(s speech.Said) measure.Range {
	r := grams(s.Amount)
	if s.Plus.Unit != "" {
		r = r.Add(grams(s.Plus))
	}
	return r
}

// equalVolumes compares volumes, in the system that is said, else in the usual
// ones: a host with an American cup and one with a metric cup say the same.
func (j *judge) equalVolumes(s speech.Said, w measure.Amount, l recipe.Line, slack measure.Number) bool {
	systems := []measure.System{measure.US, measure.Metric}
	if of := j.systemOf(l); of != "" {
		systems = []measure.System{of}
	}
	tolerance := sameKind
	if sized[s.Amount.Unit] || sized[w.Unit] {
		tolerance = bySystem
	}
	return slices.ContainsFunc(systems, func(sys measure.System) bool {
		a, ok := sys.Millilitres(s.Amount.Unit)
		b, ok2 := sys.Millilitres(w.Unit)
		if !ok || !ok2 {
			return false
		}
		said := s.Amount.Range.Scale(a)
		if s.Plus.Unit != "" {
			c, _ := sys.Millilitres(s.Plus.Unit)
			said = said.Add(s.Plus.Range.Scale(c))
		}
		return agrees(said, w.Range.Scale(b), tolerance.Add(slack))
	})
}

// sized are the units whose size depends on a system.
var sized = map[measure.Unit]bool{measure.Cup: true, measure.Pint: true, measure.FluidOunce: true, measure.Tablespoon: true,
	measure.Teaspoon: true, measure.Dessertspn: true, measure.Quart: true, measure.Gill: true, measure.Gallon: true}

// equalWeights compares a mass with a volume or a count by the food's weight.
func (j *judge) equalWeights(s speech.Said, w measure.Amount, l recipe.Line, slack measure.Number) (same, ok bool) {
	if j.checker.Larder == nil || l.FoodID == "" {
		return false, false
	}
	f, found := j.checker.Larder.Food(l.FoodID)
	if !found {
		return false, false
	}
	form := l.Form
	if l.Size != "" {
		form = l.Size + " " + form
	}
	sys := j.systemOf(l).Or(measure.US)
	a, err := f.Grams(s.Amount, form, sys)
	b, err2 := f.Grams(w, form, sys)
	if err != nil || err2 != nil {
		return false, false
	}
	tolerance := byWeight
	if s.Unit.Kind() == measure.Count || w.Unit.Kind() == measure.Count {
		tolerance = measure.Ratio(35, 100) // pieces are of all sizes
	}
	return agrees(a.Grams, b.Grams, tolerance.Add(slack)), true
}
