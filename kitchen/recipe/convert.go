package recipe

import (
	"encoding/json"
	"slices"
	"strings"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
)

// Converted is an ingredient line's amount in another unit.
type Converted struct {
	Amount   measure.Amount // exact
	Food     string         // the larder's name for it; as written if it knows none
	Assumed  []string       // "cup = 236.588 mL (US customary)"
	Source   string         // of the weight: "USDA SR 19296"; "" if none was used
	Estimate bool           // the weight is an estimate
}

// Convert gives the amount of line in unit to. Cups and spoons hold what the
// line itself says, else sys, else US customary. Between mass, volume and count
// it goes by the food's own weight. The error is fault.Invalid and says what is
// missing: an amount, a food the larder knows, a weight of that food.
func Convert(line Line, to measure.Unit, sys measure.System, larder *food.Larder) (Converted, error) {
	if !line.HasAmount {
		return Converted{}, fault.Invalidf("line", "“%s” has no amount that can be read. Write it as an ingredient line, such as “1 cup honey”.", line.Text)
	}
	c := converter{line: line, to: to, system: line.System.Or(sys).Or(measure.US), out: Converted{Food: line.Food}}
	if larder != nil {
		if f, ok := larder.Food(line.FoodID); ok {
			c.food, c.out.Food = f, f.Name
		}
	}
	sum := measure.Amount{Unit: to}
	for _, part := range append([]measure.Amount{line.Amount}, line.Plus...) {
		got, err := c.one(part)
		if err != nil {
			return Converted{}, err
		}
		sum.Range = sum.Range.Add(got)
	}
	c.out.Amount = sum
	return c.out, nil
}

// converter converts the parts of one line.
type converter struct {
	line   Line
	to     measure.Unit
	system measure.System
	food   *food.Food // nil if the larder does not know it
	out    Converted
}

func (c *converter) one(a measure.Amount) (measure.Range, error) {
	if a.Unit == c.to {
		return a.Range, nil
	}
	if kind := a.Unit.Kind(); kind == c.to.Kind() && kind != measure.Count {
		c.assume(c.system.Describe(a.Unit))
		c.assume(c.system.Describe(c.to))
		converted, err := measure.Convert(a, c.to, c.system, c.system)
		return converted.Range, err
	}
	if c.food == nil {
		return measure.Range{}, fault.Invalidf("food", "The larder does not know “%s”, so its weight cannot be told. Try its plainest name, such as “flour” or “onion”.", c.line.Food)
	}
	weighed, err := c.food.Grams(a, c.form(), c.system)
	if err != nil {
		return measure.Range{}, err
	}
	c.assume(weighed.Assumed)
	c.out.Source, c.out.Estimate = weighed.Source, c.out.Estimate || weighed.Estimate
	return c.fromGrams(weighed.Grams)
}

// fromGrams gives grams of the food in the unit wanted.
func (c *converter) fromGrams(grams measure.Range) (measure.Range, error) {
	if per, ok := measure.Grams(c.to); ok {
		return grams.Scale(measure.Whole(1).Quo(per)), nil
	}
	one, err := c.food.Grams(measure.Of(measure.Whole(1), c.to), c.form(), c.system)
	if err != nil {
		return measure.Range{}, err
	}
	c.assume(one.Assumed)
	if one.Source != "" {
		c.out.Source = one.Source
	}
	c.out.Estimate = c.out.Estimate || one.Estimate
	return grams.Scale(measure.Whole(1).Quo(one.Grams.From)), nil
}

func (c *converter) form() string { return strings.TrimSpace(c.line.Size + " " + c.line.Form) }

func (c *converter) assume(text string) {
	if text != "" && !slices.Contains(c.out.Assumed, text) {
		c.out.Assumed = append(c.out.Assumed, text)
	}
}

// Sentence words the conversion for people: "339 g honey (cup = 236.588 mL (US
// customary); USDA SR 19296)".
func (c Converted) Sentence() string {
	rounded := c.rounded()
	text := measure.FormatDecimal(rounded.From, 2)
	if !rounded.IsSingle() {
		text += "–" + measure.FormatDecimal(rounded.To, 2)
	}
	text += " " + c.Amount.Unit.Name(rounded.To.Cmp(measure.Whole(1)) > 0)
	why := slices.Clone(c.Assumed)
	if c.Source != "" {
		why = append(why, c.Source)
	}
	text = strings.TrimSpace(text) + " " + c.Food
	if len(why) > 0 {
		text += " (" + strings.Join(why, "; ") + ")"
	}
	return text
}

// MarshalJSON writes the amount as a decimal number to a hundredth; "to" stands
// only for a range.
func (c Converted) MarshalJSON() ([]byte, error) {
	rounded := c.rounded()
	view := struct {
		Amount  json.Number  `json:"amount"`
		To      json.Number  `json:"to,omitempty"`
		Unit    measure.Unit `json:"unit"`
		Food    string       `json:"food"`
		Assumed string       `json:"assumed"`
		Source  string       `json:"source"`
	}{Amount: plainDecimal(rounded.From), Unit: c.Amount.Unit, Food: c.Food, Assumed: strings.Join(c.Assumed, "; "), Source: c.Source}
	if !rounded.IsSingle() {
		view.To = plainDecimal(rounded.To)
	}
	return json.Marshal(view)
}

// rounded is the amount to a hundredth of its unit.
func (c Converted) rounded() measure.Range {
	step := measure.Ratio(1, 100)
	return measure.Range{From: c.Amount.From.Round(step), To: c.Amount.To.Round(step)}
}

// plainDecimal writes n as JSON writes numbers, to a hundredth.
func plainDecimal(n measure.Number) json.Number {
	return json.Number(strings.ReplaceAll(measure.FormatDecimal(n, 2), "−", "-"))
}
