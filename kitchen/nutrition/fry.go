package nutrition

import (
	"regexp"
	"slices"

	"benchproof/kitchen/measure"
)

// FryingUptake is how much fat food takes up in the fryer, as a share of the
// weight that goes in, coating and all. Derived: in USDA SR 26 fried seafood
// has 6 to 11 g more fat in 100 g than raw, about ten for most.
var FryingUptake = measure.Ratio(1, 10)

// leastFat is how much fat 100 g of what is fried in hold, in grams.
var leastFat = measure.Whole(80)

// Shares of weight that tell how a pan is filled. Common practice, no source.
var (
	shallowPan = measure.Ratio(1, 5) // fat for frying to all else: below it, all is eaten
	deepPan    = measure.Ratio(1, 3) // fat to all else, which no dough or sauce has, in a recipe with a fryer
	leastFood  = measure.Ratio(1, 5) // food to the fat that is heated for it
)

var (
	deepWords = regexp.MustCompile(`(?i)\bdeep[- ]?(fat )?fr(y|ied)`)
	fryWords  = regexp.MustCompile(`(?i)\b(for|to) (shallow[- ]?)?fry(ing)?\b`)
)

func (e *entry) isFat() bool {
	return e.Food != nil && e.Food.Per100.Fat != nil && e.Food.Per100.Fat.Cmp(leastFat) >= 0
}

// fillsPan tells the fat that a pan or fryer is filled with: its line says so,
// or there is a fryer and more fat than anybody eats.
func (c *count) fillsPan(e *entry) bool {
	text := e.line.Text
	switch {
	case !e.isFat():
		return false
	case deepWords.MatchString(text):
		return true
	case !e.line.HasAmount:
		return fryWords.MatchString(text) && c.steps().hasFryer()
	case fryWords.MatchString(text):
		return c.isMuch(e, shallowPan)
	}
	return c.isMuch(e, deepPan) && c.steps().hasFryer()
}

// isMuch tells whether e weighs this share of all other lines, or more.
func (c *count) isMuch(e *entry, share measure.Number) bool {
	var others measure.Number
	for i := range c.entries {
		if o := &c.entries[i]; o != e {
			others = others.Add(o.Eaten)
		}
	}
	return e.grams.Cmp(others.Mul(share)) >= 0
}

// fry counts of the fat in a pan only what the food takes up. Of two fats each
// gives its share.
func (c *count) fry() {
	var fats []*entry
	var filled measure.Number
	for i := range c.entries {
		if e := &c.entries[i]; c.fillsPan(e) {
			fats = append(fats, e)
			filled = filled.Add(e.grams)
		}
	}
	if len(fats) == 0 {
		return
	}
	fried := c.fried(fats, filled)
	uptake := fried.Mul(FryingUptake)
	for _, e := range fats {
		share := uptake.Quo(measure.Whole(int64(len(fats))))
		if filled.Sign() > 0 {
			share = uptake.Mul(e.grams).Quo(filled)
		}
		e.takeUp(share, fried)
	}
}

// takeUp counts a share of the frying fat, all of it if there is less.
func (e *entry) takeUp(share, fried measure.Number) {
	of := ""
	if !e.grams.IsZero() {
		if share.Cmp(e.grams) >= 0 {
			return
		}
		of = " of " + inGrams(e.grams)
	}
	e.Eaten = share
	e.because(inGrams(share) + of + " is counted, a tenth of the weight of what is fried (" + inGrams(fried) + "); the rest stays in the pan.")
}

// fried is the weight of what the fat is for: what the steps that fry use, and
// what coats that; everything else if they name nothing, or too little for so
// much fat.
func (c *count) fried(fats []*entry, filled measure.Number) measure.Number {
	used := c.steps().fried(fats)
	var some, all measure.Number
	for i := range c.entries {
		e := &c.entries[i]
		if slices.Contains(fats, e) {
			continue
		}
		all = all.Add(e.Eaten)
		if used[e.place()] {
			some = some.Add(e.Eaten)
		}
	}
	if some.IsZero() || some.Cmp(filled.Mul(leastFood)) < 0 {
		return all
	}
	return some
}

// fried gives the lines that the frying steps use, and those that other steps
// use together with them, in the same components: flour, egg and crumbs.
func (s *steps) fried(fats []*entry) map[place]bool {
	found, touched := map[place]bool{}, map[int]bool{}
	for _, t := range s.tasks {
		used := s.lines(t.At)
		if !s.isFryer(t.At) && !slices.ContainsFunc(fats, func(e *entry) bool { return slices.Contains(used, e.place()) }) {
			continue
		}
		for _, p := range used {
			found[p], touched[p.component] = true, true
		}
	}
	var coating []place
	for _, t := range s.tasks {
		used := s.lines(t.At)
		if slices.ContainsFunc(used, func(p place) bool { return found[p] }) {
			coating = append(coating, used...)
		}
	}
	for _, p := range coating {
		found[p] = found[p] || touched[p.component]
	}
	return found
}
