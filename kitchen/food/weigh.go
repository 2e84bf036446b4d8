package food

import (
	"strings"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
)

// Weighed is an amount of a food in grams, and how it came about.
type Weighed struct {
	Grams    measure.Range
	Assumed  string // "cup = 236.588 mL (US customary)", "1 large = 50 g"; "" if nothing was
	Source   string // of the weight: "USDA SR 19296"; "" for an amount that was a mass
	Estimate bool   // the weight is an estimate, or that of another form or size than was said
}

// Grams weighs an amount of f. A mass stays as it is. A volume goes by f's own
// weight for that unit, or for another one scaled to it; sys says what the
// unit holds, US customary if sys is "". A count goes by the weight of a piece,
// a length ("5 cm of ginger") by the weight of an inch.
//
// form holds the words that choose between f's weights, as Match gives them:
// "chopped", "large", "extra large sliced". Where f has no weight for the
// form, a related or the usual one is taken, Estimate is set and Assumed says
// so. If f has no weight at all for the kind of unit, the error is
// fault.Invalid and names f and what is missing.
func (f *Food) Grams(a measure.Amount, form string, sys measure.System) (Weighed, error) {
	sys = sys.Or(measure.US)
	kind := a.Unit.Kind()
	if kind == measure.Mass {
		per, _ := measure.Grams(a.Unit)
		return Weighed{Grams: a.Scale(per).Range}, nil
	}
	choice, ok := f.weightFor(a.Unit, form, sys)
	if !ok {
		return Weighed{}, f.noWeight(a.Unit, kind)
	}
	w := choice.weight
	per := w.Grams
	if w.Unit != a.Unit || kind == measure.Volume {
		per = per.Mul(unitRatio(a.Unit, w.Unit, kind, sys))
	}
	out := Weighed{
		Grams:    a.Scale(per).Range,
		Source:   w.Source,
		Estimate: IsEstimate(w.Source) || choice.replaced != "" || !w.isOf(sys),
	}
	assumed := []string{sys.Describe(a.Unit)}
	if kind != measure.Volume {
		assumed[0] = "1 " + pieceName(w, f) + " = " + measure.FormatDecimal(w.Grams, 2) + " g"
	}
	if choice.replaced != "" {
		assumed = append(assumed, "no weight for “"+choice.replaced+"”: "+either(w.Form, "the usual form")+" taken")
	}
	out.Assumed = strings.Trim(strings.Join(assumed, "; "), "; ")
	return out, nil
}

// pieceName words one piece: "large", "clove", "medium (EU and UK size)", "egg".
func pieceName(w Weight, f *Food) string {
	name := strings.TrimSpace(w.Form + " " + w.Unit.Name(false))
	if name == "" {
		name = f.Name
	}
	if w.System != "" {
		name += " (" + either(sizeClasses[w.System], w.System.Name()) + ")"
	}
	return name
}

// sizeClasses say whose sizes a weight with a system speaks of.
var sizeClasses = map[measure.System]string{
	measure.Metric: "EU and UK size", measure.Australian: "Australian size", measure.US: "US size",
}

func (f *Food) noWeight(u measure.Unit, kind measure.Kind) error {
	switch {
	case kind == measure.Volume:
		return fault.Invalidf("unit", "The larder does not know what %s weighs by volume. Give it in grams, or add its weight per cup or spoon.", f.Name)
	case u == measure.Each:
		return fault.Invalidf("unit", "The larder does not know what one %s weighs. Give it in grams, or add its weight per piece.", f.Name)
	case kind == measure.Count, kind == measure.Length:
		return fault.Invalidf("unit", "The larder does not know what a %s of %s weighs. Give it in grams, or add that weight.", u.Name(false), f.Name)
	}
	return fault.Invalidf("unit", "“%s” is no measure of %s. Give it by weight, volume or number.", u.Name(false), f.Name)
}

// unitRatio gives how many of the weight's unit one of the amount's unit is;
// weights are per US measure.
func unitRatio(amount, weight measure.Unit, kind measure.Kind, sys measure.System) measure.Number {
	switch kind {
	case measure.Volume:
		asked, _ := sys.Millilitres(amount)
		own, ok := measure.US.Millilitres(weight)
		if ok && !own.IsZero() {
			return asked.Quo(own)
		}
	case measure.Length:
		asked, _ := measure.Millimetres(amount)
		if own, ok := measure.Millimetres(weight); ok && !own.IsZero() {
			return asked.Quo(own)
		}
	}
	return measure.Whole(1)
}

// GramsPerMillilitre gives the density of f in this form ("" for the usual
// one), from its greatest measure, which is the least rounded. ok is false if
// f has no weight by volume in this form or a related one.
func (f *Food) GramsPerMillilitre(form string) (density measure.Number, ok bool) {
	choice, ok := f.weightFor(measure.Millilitre, form, measure.US)
	if !ok {
		return measure.Number{}, false
	}
	return choice.weight.Grams.Mul(unitRatio(measure.Millilitre, choice.weight.Unit, measure.Volume, measure.US)), true
}

// Millilitres gives the volume of this many grams of f in this form; ok is
// false if f has no weight by volume.
func (f *Food) Millilitres(grams measure.Range, form string) (volume measure.Range, ok bool) {
	density, ok := f.GramsPerMillilitre(form)
	if !ok || density.Sign() <= 0 {
		return measure.Range{}, false
	}
	return grams.Scale(measure.Whole(1).Quo(density)), true
}

// Pieces gives how many pieces of f of this size ("" for the usual one) weigh
// this many grams, exact; ok is false if f is not counted.
func (f *Food) Pieces(grams measure.Range, size string) (count measure.Range, ok bool) {
	choice, ok := f.weightFor(measure.Each, size, measure.US)
	if !ok || choice.weight.Grams.Sign() <= 0 {
		return measure.Range{}, false
	}
	return grams.Scale(measure.Whole(1).Quo(choice.weight.Grams)), true
}
