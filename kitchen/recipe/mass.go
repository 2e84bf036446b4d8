package recipe

import (
	"strings"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
)

// Mass is what a component, or a whole recipe, weighs before it is cooked.
type Mass struct {
	Grams    measure.Range
	Missing  []string // foods with an amount that has no weight
	Estimate bool     // some of the weights are estimates
}

// Grams weighs a line, its "plus" amounts included. A stated mass goes before
// the larder's weight: of "1 cup (120 g) flour" the 120 g. The error is
// fault.Invalid and says what is missing.
func (w Writer) Grams(l Line) (measure.Range, food.Weighed, error) {
	if !l.HasAmount {
		return measure.Range{}, food.Weighed{}, fault.Invalidf("", "“%s” has no amount.", l.Text)
	}
	t := w.teller(l)
	if l.Amount.Unit.Kind() != measure.Mass && len(l.Plus) == 0 {
		for _, other := range l.Equals {
			if grams, ok := measure.Grams(other.Unit); ok {
				return other.Range.Scale(grams), food.Weighed{}, nil
			}
		}
	}
	var sum measure.Range
	var how food.Weighed
	for i, a := range append([]measure.Amount{l.Amount}, l.Plus...) {
		grams, weighed, err := t.grams(a)
		if err != nil {
			return measure.Range{}, food.Weighed{}, err
		}
		if i == 0 {
			how = weighed
		}
		sum = sum.Add(grams)
	}
	how.Grams = sum
	return sum, how, nil
}

func (t *teller) grams(a measure.Amount) (measure.Range, food.Weighed, error) {
	if per, ok := measure.Grams(a.Unit); ok {
		return a.Range.Scale(per), food.Weighed{}, nil
	}
	if t.food == nil {
		return measure.Range{}, food.Weighed{}, fault.Invalidf("", "The larder does not know “%s”.", t.line.Food)
	}
	weighed, err := t.food.Grams(a, t.line.form(), t.system)
	return weighed.Grams, weighed, err
}

// MassOf adds up what a component weighs; name "" takes the whole recipe. Lines
// without an amount weigh nothing. The error is fault.NotFound if no component
// has the name.
func MassOf(r Recipe, name string, w Writer) (Mass, error) {
	w = w.For(r)
	var mass Mass
	found := name == ""
	for _, c := range r.Components {
		if name != "" && !strings.EqualFold(c.Name, name) {
			continue
		}
		found = true
		for _, l := range c.Lines {
			if !l.Read || !l.HasAmount {
				continue
			}
			grams, how, err := w.Grams(l)
			if err != nil {
				mass.Missing = append(mass.Missing, l.Food)
				continue
			}
			mass.Grams = mass.Grams.Add(grams)
			mass.Estimate = mass.Estimate || how.Estimate
		}
	}
	if !found {
		return Mass{}, fault.NotFoundf("The recipe has no component called “%s”.", name)
	}
	return mass, nil
}
