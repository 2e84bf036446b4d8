package same

import (
	"slices"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/verify/speech"
)

// Scale compares what is said of foods with lines: it knows what they weigh, and
// whose cups and spoons are meant. The zero Scale works, with no weights.
type Scale struct {
	Larder *food.Larder
	System measure.System // where neither the line nor the recipe says
}

// Statements are all the ways a line states its amount.
func Statements(l recipe.Line) []measure.Amount {
	if !l.HasAmount {
		return nil
	}
	all := []measure.Amount{l.Amount}
	all = append(all, l.Equals...)
	if isPacked(l) {
		all = append(all, packs(l), l.Packs.Size)
	}
	return all
}

func isPacked(l recipe.Line) bool { return l.Packs.Unit != "" || !l.Packs.Count.IsZero() }

func packs(l recipe.Line) measure.Amount {
	return measure.Amount{Range: l.Packs.Count, Unit: l.Packs.Unit}
}

// against are the statements that a said amount is held against: of a line in
// packs, "two tins" only against their count, and "the 400 gram tin" only against
// the size of one.
func against(s speech.Said, l recipe.Line) []measure.Amount {
	switch {
	case !l.HasAmount || !isPacked(l):
	case s.Amount.Unit == l.Packs.Unit:
		return []measure.Amount{packs(l)}
	case s.Size, s.Each:
		return []measure.Amount{l.Packs.Size}
	default: // a tin's own size is written, so the larder's is not asked
		return append(append([]measure.Amount{l.Amount}, l.Equals...), l.Packs.Size)
	}
	return alike(s, Statements(l))
}

// alike keeps the statements of the kind that is said, if there are any: where a
// chicken's weight is written, nobody asks what chickens weigh.
func alike(s speech.Said, all []measure.Amount) []measure.Amount {
	var kept []measure.Amount
	for _, w := range all {
		if s.Kind == speech.Measure && w.Unit.Kind() == s.Amount.Unit.Kind() {
			kept = append(kept, w)
		}
	}
	if len(kept) > 0 {
		return kept
	}
	return all
}

// Line tells whether a said amount is the whole of a line.
func (c Scale) Line(s speech.Said, l recipe.Line) bool {
	if len(l.Plus) > 0 {
		return c.sum(s, l)
	}
	return slices.ContainsFunc(against(s, l), func(w measure.Amount) bool {
		same, _ := c.Amount(s, w, l)
		return same
	})
}

// sum compares with a line of two parts: "½ cup plus 1 tbsp".
func (c Scale) sum(s speech.Said, l recipe.Line) bool {
	sum := l.Amount
	for _, more := range l.Plus {
		if total, ok := sum.Add(more, c.SystemOf(l).Or(measure.US)); ok {
			sum = total
		}
	}
	same, _ := c.Amount(s, sum, l)
	if same || s.Plus.Unit != "" {
		return same
	}
	return slices.ContainsFunc(append([]measure.Amount{l.Amount}, l.Plus...), func(part measure.Amount) bool {
		same, _ := c.Amount(s, part, l) // the parts may be said apart
		return same
	})
}

// Comparable tells whether a said amount can be compared with a line at all.
func (c Scale) Comparable(s speech.Said, l recipe.Line) bool {
	return slices.ContainsFunc(against(s, l), func(w measure.Amount) bool {
		_, ok := c.Amount(s, w, l)
		return ok
	})
}

// Less tells whether an amount is less than the whole of a line.
func (c Scale) Less(s speech.Said, l recipe.Line) bool {
	return slices.ContainsFunc(Statements(l), func(w measure.Amount) bool {
		ratio, ok := c.Ratio(s, w, l)
		return ok && ratio.Cmp(measure.Whole(1)) < 0
	})
}

// Ratio is a said amount as a multiple of a written one, by their upper ends; ok
// is false where the two cannot be compared.
func (c Scale) Ratio(s speech.Said, w measure.Amount, l recipe.Line) (ratio measure.Number, ok bool) {
	if _, ok := c.Amount(s, w, l); !ok || w.To.IsZero() {
		return measure.Number{}, false
	}
	a := s.Amount
	if a.Unit == w.Unit || a.Unit.Kind() == measure.Count && w.Unit.Kind() == measure.Count || s.Kind == speech.Count {
		return a.To.Quo(w.To), true
	}
	if to, err := measure.Convert(a, w.Unit, measure.US, measure.US); err == nil {
		return to.To.Quo(w.To), true
	}
	x, y, ok := c.grams(a, w, l)
	if !ok || y.To.IsZero() {
		return measure.Number{}, false
	}
	return x.To.Quo(y.To), true
}

// SystemOf is whose cups and spoons a line means.
func (c Scale) SystemOf(l recipe.Line) measure.System { return l.System.Or(c.System) }
