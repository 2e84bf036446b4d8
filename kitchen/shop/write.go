package shop

import (
	"strings"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
)

const nbsp = "\u00a0"

// written is a sum as the list shows it.
type written struct {
	measure, small string
	guess          bool // it rests on an estimate that the sums alone do not
}

// write words the sums of a food, each rounded up to what a shopper asks for.
// f may be nil.
func (s sums) write(f *food.Food, house measure.System) written {
	if len(s.packs) > 0 {
		return s.writePacks(house)
	}
	only := len(s.exact()) == 1
	switch {
	case only && !s.grams.IsZero():
		return writeGrams(s.grams, f, house)
	case only && !s.millilitres.IsZero():
		return s.writeVolume(f, house)
	case only:
		return s.writeCount(f)
	}
	var parts []string
	if !s.grams.IsZero() {
		parts = append(parts, mass(s.grams))
	}
	if !s.millilitres.IsZero() {
		parts = append(parts, volume(s.millilitres, s.spoons, house))
	}
	for _, c := range s.counts {
		parts = append(parts, number(c))
	}
	return written{measure: strings.Join(parts, " + ")}
}

// writePacks writes "3 × 400 g tins", with the whole beside it.
func (s sums) writePacks(house measure.System) written {
	var parts []string
	for _, p := range s.packs {
		n := p.count.Ceil()
		text := n.String() + nbsp + "×" + nbsp + p.size.String()
		parts = append(parts, text+" "+p.unit.Name(n.Cmp(measure.Whole(1)) > 0))
	}
	w := written{measure: strings.Join(parts, " + ")}
	switch {
	case len(s.exact()) != 1:
	case !s.grams.IsZero():
		w.small = mass(s.grams)
	case !s.millilitres.IsZero():
		w.small = volume(s.millilitres, false, house)
	}
	return w
}

// writeGrams writes a weight, as a volume where the food is sold so, with
// pounds and ounces or the number of pieces beside it.
func writeGrams(grams measure.Number, f *food.Food, house measure.System) written {
	if soldByVolume(f) {
		if ml, ok := f.Millilitres(measure.One(grams), ""); ok {
			return written{measure: volume(ml.To, false, house), small: mass(grams)}
		}
	}
	w := written{measure: mass(grams)}
	switch {
	case usesPounds(house):
		w.small = pounds(grams)
	case f != nil:
		if pieces, ok := f.Pieces(measure.One(grams), ""); ok && isProduce(f) {
			w.small = "about" + nbsp + pieces.To.Ceil().String()
		}
	}
	return w
}

// fewGrams is up to how much a food measured in spoons stays in spoons: less is
// taken from a jar at home, not weighed.
var fewGrams = measure.Whole(15)

// writeVolume writes a volume, by weight where the food is sold so and there is
// enough to weigh.
func (s sums) writeVolume(f *food.Food, house measure.System) written {
	text := volume(s.millilitres, s.spoons, house)
	switch {
	case s.noWeight || soldByVolume(f):
		return written{measure: text}
	case s.spoons && s.weight.Cmp(fewGrams) < 0:
		return written{measure: text, small: mass(s.weight), guess: s.weightGuess}
	}
	return written{measure: mass(s.weight), small: text, guess: s.weightGuess}
}

// writeCount writes a number of pieces, with their weight where it is known.
func (s sums) writeCount(f *food.Food) written {
	w := written{measure: number(s.counts[0])}
	switch s.counts[0].Unit {
	case measure.Each, measure.Head, measure.Piece:
		if f != nil && isProduce(f) && !s.noWeight {
			w.small, w.guess = "about"+nbsp+mass(s.weight), s.weightGuess
		}
	}
	return w
}

// isProduce tells whether a shop sells the food by the piece and by weight.
func isProduce(f *food.Food) bool { return f.Aisle == food.Aisles[0] }

// up rounds n up to a multiple of step.
func up(n, step measure.Number) measure.Number { return n.Quo(step).Ceil().Mul(step) }

// down rounds n down to a multiple of step.
func down(n, step measure.Number) measure.Number {
	return measure.Number{}.Sub(up(measure.Number{}.Sub(n), step))
}

// tier says what amounts below a bound are rounded up to.
type tier struct{ below, step measure.Number }

// metricTiers round grams and millilitres for a shopping list; what is above
// goes to 50 (common practice, no source).
var metricTiers = []tier{
	{measure.Whole(20), measure.Whole(1)}, {measure.Whole(500), measure.Whole(5)}, {measure.Whole(2000), measure.Whole(10)},
}

func upByTier(n measure.Number) measure.Number { return up(n, stepOf(n)) }

func stepOf(n measure.Number) measure.Number {
	for _, t := range metricTiers {
		if n.Cmp(t.below) < 0 {
			return t.step
		}
	}
	return measure.Whole(50)
}

// mass writes grams, rounded up: "7 g", "265 g", "1.25 kg".
func mass(grams measure.Number) string { return metric(grams, measure.Gram, measure.Kilogram) }

func metric(n measure.Number, small, large measure.Unit) string {
	return rounded(upByTier(n), small, large)
}

// overMetric writes grams or millilitres that are left, rounded down; "" below
// one.
func overMetric(n measure.Number, small, large measure.Unit) string {
	if n = down(n, stepOf(n)); n.Sign() <= 0 {
		return ""
	}
	return rounded(n, small, large)
}

// rounded writes an amount in the smaller unit, or in the larger from 1000 on.
func rounded(n measure.Number, small, large measure.Unit) string {
	if thousand := measure.Whole(1000); n.Cmp(thousand) >= 0 {
		return measure.FormatDecimal(n.Quo(thousand), 2) + nbsp + large.Name(false)
	}
	return measure.FormatDecimal(n, 0) + nbsp + small.Name(false)
}

// quarter is the step of spoons and cups.
var quarter = measure.Ratio(1, 4)

// volume writes millilitres, rounded up: spoons where only spoons were used and
// they are few, cups and quarts in a US house, else millilitres and litres.
func volume(ml measure.Number, spoons bool, house measure.System) string {
	tbsp, _ := house.Millilitres(measure.Tablespoon)
	tsp, _ := house.Millilitres(measure.Teaspoon)
	cup, _ := measure.US.Millilitres(measure.Cup)
	switch {
	case spoons && ml.Cmp(tbsp) < 0:
		return measure.Of(up(ml.Quo(tsp), quarter), measure.Teaspoon).String()
	case spoons && ml.Cmp(tbsp.Mul(measure.Whole(8))) <= 0:
		return measure.Of(up(ml.Quo(tbsp), measure.Ratio(1, 2)), measure.Tablespoon).String()
	case isAmerican(house) && ml.Cmp(cup.Mul(measure.Whole(4))) < 0:
		return measure.Of(up(ml.Quo(cup), quarter), measure.Cup).String()
	case isAmerican(house):
		return measure.Of(up(ml.Quo(cup.Mul(measure.Whole(4))), quarter), measure.Quart).String()
	}
	return metric(ml, measure.Millilitre, measure.Litre)
}

// pounds writes grams in pounds and ounces, rounded up to the ounce.
func pounds(grams measure.Number) string {
	perOunce, _ := measure.Grams(measure.Ounce)
	ounces := grams.Quo(perOunce).Ceil()
	n, _ := ounces.Int()
	var parts []string
	if n >= 16 {
		parts = append(parts, measure.Whole(n/16).String()+nbsp+measure.Pound.Name(false))
	}
	if n%16 > 0 {
		parts = append(parts, measure.Whole(n%16).String()+nbsp+measure.Ounce.Name(false))
	}
	return strings.Join(parts, nbsp)
}

// number writes counted things, rounded up to whole ones: "3", "5 cloves".
func number(a measure.Amount) string {
	if a.Unit.Kind() == measure.Length || a.Unit.Kind() == measure.Volume {
		return measure.Of(up(a.To, quarter), a.Unit).String()
	}
	return measure.Of(a.To.Ceil(), a.Unit).String()
}

func isAmerican(s measure.System) bool { return s == measure.US || s == measure.USLabel }

func usesPounds(s measure.System) bool { return isAmerican(s) || s == measure.Imperial }

// houseOf is the measures that the list is written in: the first said.
func houseOf(needs []Need) measure.System {
	for _, need := range needs {
		if need.System != "" {
			return need.System
		}
	}
	return measure.Metric
}
