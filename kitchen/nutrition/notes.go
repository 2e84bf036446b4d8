package nutrition

import (
	"regexp"
	"slices"
	"strings"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// smallShare is the share of the weight up to which an unknown figure is not
// worth a word: a spoon of spice.
var smallShare = measure.Ratio(1, 50)

// largeShare is the share of the energy from which on an estimate is named.
var largeShare = measure.Ratio(1, 20)

// explain notes why the lines do not count whole, those of one reason
// together.
func (c *count) explain() {
	var reasons []string
	texts := map[string][]string{}
	for i := range c.entries {
		e := &c.entries[i]
		if e.Why == "" {
			continue
		}
		if texts[e.Why] == nil {
			reasons = append(reasons, e.Why)
		}
		texts[e.Why] = append(texts[e.Why], e.line.Text)
	}
	for _, why := range reasons {
		c.note(strings.Join(texts[why], "; ") + ": " + why)
	}
}

// noteWhole says what was assumed of the recipe as a whole.
func (c *count) noteWhole() {
	c.noteLines("Counted whole, though optional: ", func(l recipe.Line) bool { return l.Optional && l.HasAmount })
	c.noteLines("Counted as written, though to taste: ", func(l recipe.Line) bool { return l.ToTaste && l.HasAmount })
	c.noteLines("Of a range of amounts the middle is counted: ", func(l recipe.Line) bool { return l.HasAmount && !l.Amount.IsSingle() })
	c.noteSalt()
	c.noteEstimates()
	c.noteUnknownNutrients()
	if p := c.facts.Pieces; !p.IsSingle() {
		c.note("It makes " + measure.FormatNumber(p.From) + " to " + measure.FormatNumber(p.To) + ": one is reckoned as one of " +
			measure.FormatNumber(p.From) + ", the largest.")
	}
}

// noteLines names the foods of the counted lines that fit.
func (c *count) noteLines(lead string, fits func(recipe.Line) bool) {
	var names []string
	for _, e := range c.entries {
		if fits(e.line) && e.Eaten.Sign() > 0 {
			names = withName(names, e.line.Food)
		}
	}
	if len(names) > 0 {
		c.note(lead + strings.Join(names, ", ") + ".")
	}
}

func withName(names []string, name string) []string {
	if slices.Contains(names, name) {
		return names
	}
	return append(names, name)
}

// noteSalt warns that sodium is too low where the salt has no amount.
func (c *count) noteSalt() {
	for _, component := range c.recipe.Components {
		for _, l := range component.Lines {
			if l.Read && !l.HasAmount && (isSalt(c.food(l)) || saltWord.MatchString(l.Food)) {
				c.note("The salt that has no amount is not in the figures: there is more sodium than they say.")
				return
			}
		}
	}
}

var saltWord = regexp.MustCompile(`(?i)\bsalt\b`)

// noteEstimates names what rests on estimates and carries a good part of the
// energy.
func (c *count) noteEstimates() {
	energy, _ := c.facts.Totals.Of(food.EnergyKcal)
	var names []string
	for _, e := range c.entries {
		if e.Food == nil || !e.Weighed.Estimate && e.Food.Source != food.Estimate {
			continue
		}
		if own, _ := e.Adds.Of(food.EnergyKcal); own.Sign() > 0 && own.Cmp(energy.Mul(largeShare)) >= 0 {
			names = withName(names, e.line.Food)
		}
	}
	if len(names) > 0 {
		c.note("Weights or figures are estimates for: " + strings.Join(names, ", ") + ".")
	}
}

// noteUnknownNutrients says which figures are least values, though the energy
// of the same food is known.
func (c *count) noteUnknownNutrients() {
	covered := c.facts.Totals.Covered().Sub(smallShare)
	for _, n := range labelled {
		_, share := c.facts.Totals.Of(n)
		if share.Cmp(covered) < 0 {
			c.note("The figure for " + n.String() + " is a least value: it is known of " + percent(share) + " of the weight.")
		}
	}
}

// labelled are the nutrients that the figures give.
var labelled = []food.Nutrient{food.EnergyKcal, food.Protein, food.Fat, food.Saturated, food.Carbohydrate, food.Sugars, food.Fibre, food.SodiumMilligrams}

// percent writes a share, rounded down: "100 %" is the whole.
func percent(share measure.Number) string {
	p := share.Mul(measure.Whole(100))
	whole := p.Round(measure.Whole(1))
	if whole.Cmp(p) > 0 {
		whole = whole.Sub(measure.Whole(1))
	}
	return measure.FormatDecimal(whole, 0) + " %"
}

// inGrams writes a weight for a sentence: "4.5 g", "92 g", "1.61 kg".
func inGrams(g measure.Number) string {
	places := 0
	if g.Cmp(measure.Whole(1000)) >= 0 {
		return measure.FormatDecimal(g.Quo(measure.Whole(1000)), 2) + " kg"
	}
	if g.Cmp(measure.Whole(10)) < 0 {
		places = 1
	}
	return measure.FormatDecimal(g, places) + " g"
}
