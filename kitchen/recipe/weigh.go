package recipe

import (
	"benchproof/kitchen/measure"
)

// A volume and a weight on one line may be a third apart: books disagree about
// what a cup of flour or icing sugar weighs by a quarter. From memory.
var mostApart = measure.Ratio(1, 3)

// weigh checks a line's statements of its amount that only the food's own
// weight can compare: "1 stick (200 g) butter", "1 cup (300 g) flour". What it
// cannot weigh for sure it does not question.
func (r Reader) weigh(line *Line, recipe measure.System) {
	if r.Larder == nil || line.FoodID == "" || line.About {
		return
	}
	f, ok := r.Larder.Food(line.FoodID)
	if !ok || !fillsCups[f.Aisle] {
		return
	}
	system := line.System.Or(recipe)
	for _, other := range line.Equals {
		if !comparable(line.Amount.Unit, other.Unit) {
			continue
		}
		a, err := f.Grams(line.Amount, line.form(), system)
		if err != nil || a.Estimate {
			continue
		}
		b, err := f.Grams(other, line.form(), system)
		if err != nil || b.Estimate || a.Grams.From.IsZero() {
			continue
		}
		if apart := b.Grams.From.Sub(a.Grams.From).Quo(a.Grams.From); apart.Cmp(mostApart) > 0 || measure.Whole(0).Sub(apart).Cmp(mostApart) > 0 {
			line.Reason = "“" + spaced(line.Amount.String()) + "” of " + f.Name + " weighs about " +
				measure.FormatDecimal(a.Grams.From.Round(measure.Whole(1)), 0) + " g, but “" + spaced(other.String()) + "” stands beside it. Which is right?"
		}
	}
}

// fillsCups are the aisles whose foods fill a cup in much the same way every
// time; a cup of sliced apples does not.
var fillsCups = map[string]bool{"Baking": true, "Flours and grains": true, "Sugars and syrups": true, "Dairy and eggs": true, "Oils and vinegars": true}

// comparable tells whether two units of different kinds speak of an amount
// that a food's weight can join: a mass and a volume, or either and a stick.
func comparable(a, b measure.Unit) bool {
	weighed := func(u measure.Unit) bool {
		return u.Kind() == measure.Mass || u.Kind() == measure.Volume || u == measure.Stick
	}
	return weighed(a) && weighed(b) && a.Kind() != b.Kind()
}

// form is how the larder chooses between a food's weights.
func (l Line) form() string {
	if l.Size == "" || l.Form == "" {
		return l.Size + l.Form
	}
	return l.Size + " " + l.Form
}
