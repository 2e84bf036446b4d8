package same

import (
	"slices"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/verify/speech"
)

// Amount compares a said amount with one statement of a line. ok is false where
// the two cannot be compared.
func (c Scale) Amount(s speech.Said, w measure.Amount, l recipe.Line) (same, ok bool) {
	slack := measure.Number{}
	if s.About || l.About {
		slack = nearly
	}
	a, b := s.Amount.Unit.Kind(), w.Unit.Kind()
	switch {
	case s.Kind == speech.Length && b == measure.Length:
		return Lengths(s, speech.Said{Amount: w}), true
	case s.Kind != speech.Count && s.Kind != speech.Measure:
		return false, false
	case s.Kind == speech.Count && s.Amount.Unit == measure.Each:
		if b != measure.Count && !Elided(s) {
			return false, false
		}
		return agrees(s.Amount.Range, w.Range, exactly.Add(slack)), true
	case s.Amount.Unit == w.Unit && s.Plus.Unit == "":
		return agrees(s.Amount.Range, w.Range, exactly.Add(slack)), true
	case a == measure.Mass && b == measure.Mass:
		return agrees(inGrams(s), grams(w), sameKind.Add(slack)), true
	case a == measure.Volume && b == measure.Volume:
		return c.volumes(s, w, l, slack), true
	case a == measure.Count && b == measure.Count && (s.Amount.Unit == measure.Each || w.Unit == measure.Each || stalks[s.Amount.Unit] && stalks[w.Unit]):
		return agrees(s.Amount.Range, w.Range, exactly.Add(slack)), true
	case s.Amount.Unit == measure.Head && w.Unit == measure.Clove || s.Amount.Unit == measure.Clove && w.Unit == measure.Head:
		return false, true // four heads of garlic for four cloves
	case a == measure.Count && b == measure.Count:
		return false, false
	}
	return c.weights(s, w, l, slack)
}

// stalks are one thing by several names.
var stalks = map[measure.Unit]bool{measure.Stick: true, measure.Stalk: true, measure.Sprig: true}

// Elided tells whether a number without a unit can stand for one with: "60 of
// icing sugar", "cornmeal, one and a quarter". Small whole ones are counts.
func Elided(s speech.Said) bool {
	return s.Kind == speech.Count && (s.Amount.From.Cmp(measure.Whole(10)) >= 0 || s.Unit == "" && s.Amount.IsSingle() && !s.Amount.From.IsWhole())
}

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

// volumes compares volumes, in the system that is said, else in the usual ones:
// a host with an American cup and one with a metric cup say the same.
func (c Scale) volumes(s speech.Said, w measure.Amount, l recipe.Line, slack measure.Number) bool {
	systems := []measure.System{measure.US, measure.Metric, measure.Imperial}
	if of := c.SystemOf(l); of != "" {
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

// weights compares a mass with a volume or a count by the food's weight.
func (c Scale) weights(s speech.Said, w measure.Amount, l recipe.Line, slack measure.Number) (same, ok bool) {
	a, b, ok := c.grams(s.Amount, w, l)
	if !ok {
		return false, false
	}
	tolerance := byWeight
	if s.Unit.Kind() == measure.Count && s.Unit != measure.Stick || w.Unit.Kind() == measure.Count {
		tolerance = byPiece // pieces are of all sizes
	}
	return agrees(a, b, tolerance.Add(slack)), true
}

// grams weighs two amounts of a line's food.
func (c Scale) grams(a, b measure.Amount, l recipe.Line) (x, y measure.Range, ok bool) {
	if c.Larder == nil || l.FoodID == "" {
		return x, y, false
	}
	f, found := c.Larder.Food(l.FoodID)
	if !found {
		return x, y, false
	}
	form := l.Form
	if l.Size != "" {
		form = l.Size + " " + form
	}
	sys := c.SystemOf(l).Or(measure.US)
	first, err := f.Grams(a, form, sys)
	second, err2 := f.Grams(b, form, sys)
	return first.Grams, second.Grams, err == nil && err2 == nil
}
