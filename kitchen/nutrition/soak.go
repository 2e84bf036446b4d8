package nutrition

import (
	"regexp"
	"slices"

	"benchproof/kitchen/measure"
)

// soak is what food stands in and is lifted out of: name is what a component
// of it is called, forIt what stands behind a line of it.
type soak struct {
	word        string
	name, forIt *regexp.Regexp
}

var (
	brine = soak{"brine",
		regexp.MustCompile(`(?i)\b(brine|pickling (liquid|liquor|vinegar|mix|mixture|solution))\b`),
		regexp.MustCompile(`(?i)\bfor (the )?brin(e|ing)\b`)}
	marinade = soak{"marinade",
		regexp.MustCompile(`(?i)\bmarinade\b`),
		regexp.MustCompile(`(?i)\bfor (the )?marina(de|ting)\b`)}
	bath = soak{"cooking water",
		regexp.MustCompile(`(?i)\b((poaching|cooking|boiling|blanching|steaming) (liquid|liquor|water|bath)|soaking water|water bath|(alkaline|soda|lye) bath|court[- ]bouillon)\b`),
		regexp.MustCompile(`(?i)\b(for|to) ((the|a) )?(boil(ing)?|blanch(ing)?|poach(ing)?|steam(ing)?|(pasta|potato|cooking|boiling|blanching|poaching|steaming)[- ]?(water|liquid|pot|pan)|((cook|boil)(ing)? )?(the )?(pasta|noodles|potatoes|spaghetti|gnocchi|dumplings|vegetables|beans|eggs)|water bath|bain[- ]marie)\b`)}
)

// What the steps do with a soak.
var (
	thrownWords = regexp.MustCompile(`(?i)\b(discard|throw(ing)? (away|out)|tip(ping)? (away|out|off)|pour(ing)? (away|off)|drain|rins|shak(e|ing) off|wip(e|ing) off|scrap(e|ing) off|brush(ing)? off|(lift|tak|remov)(e|ing)?\b.*\b(out of|from)|pat\b.*\bdry)`)
	savedWords  = regexp.MustCompile(`(?i)\b(reserv|sav(e|ing)\b|keep(ing)?\b|strain|reduc)`)
	usedWords   = regexp.MustCompile(`(?i)\b(reserv|strain|reduc|bast|brush|add|stir|pour|tip|boil|simmer|serve)`)
	reduceWords = regexp.MustCompile(`(?i)\b(strain|reduc|boil(ed|ing)? down|thicken|syrup)`)
)

// pourAway takes off the marinade, brine and cooking water that is thrown away.
// A marinade stays where no step throws it away, or a later one uses it; what
// food was cooked in stays where a step makes something of it.
func (c *count) pourAway() {
	for _, e := range c.in(bath) {
		if !c.steps().says(reduceWords, bath.name) {
			e.pour("poured away and not counted.")
		}
	}
	for _, s := range []soak{marinade, brine} {
		lines := c.in(s)
		switch {
		case len(lines) == 0:
		case c.steps().throwsAway(s):
			for _, e := range lines {
				e.pour("the " + s.word + " is thrown away and not counted; what soaks in, salt above all, is not in the figures.")
			}
		case s.word == marinade.word:
			c.note("The marinade is counted whole, because no step throws it away.")
		}
	}
}

// throwsAway tells whether a sentence lifts the food out of a soak, or throws
// the soak away, and neither it nor a later one puts it to use.
func (s *steps) throwsAway(of soak) bool {
	thrown := false
	for _, text := range s.sentences {
		if !of.name.MatchString(text) {
			continue
		}
		switch {
		case thrown && usedWords.MatchString(text):
			return false
		case thrownWords.MatchString(text):
			thrown = !savedWords.MatchString(text)
		}
	}
	return thrown
}

// in gives the lines that a soak is made of. What is soaked may stand among
// them and is none of it.
func (c *count) in(s soak) []*entry {
	var found []*entry
	for i := range c.entries {
		e := &c.entries[i]
		if !e.isSteeped() {
			continue
		}
		if s.name.MatchString(c.recipe.Components[e.Component].Name) || s.forIt.MatchString(e.line.Text) && (s.word != bath.word || e.isBare()) {
			found = append(found, e)
		}
	}
	return found
}

// soaked are the aisles of what is put into a soak, not stirred into it.
var soaked = []string{"Meat and poultry", "Fish and seafood", "Fruit and vegetables", "Bakery", "Flours and grains",
	"Nuts, seeds and dried fruit", "Tins and jars", "Frozen"}

// isSteeped tells liquids and seasonings. Eggs and blocks of tofu or cheese
// are soaked, not steeped.
func (e *entry) isSteeped() bool {
	if e.Food == nil {
		return false
	}
	if e.Food.Aisle == "Dairy and eggs" {
		return e.line.Amount.Unit.Kind() == measure.Volume
	}
	return !slices.Contains(soaked, e.Food.Aisle)
}

// Figures of 100 g that tell what a soak is made of.
var (
	watery     = measure.Whole(80) // g of water from which on it is the liquid
	bareEnergy = measure.Whole(25) // kcal up to which it is water, salt or vinegar
)

// isBare tells what cooking water is made of. Wine or milk that something is
// poached in is mostly eaten.
func (e *entry) isBare() bool {
	energy := e.Food.Per100.EnergyKcal
	return energy != nil && energy.Cmp(bareEnergy) <= 0
}

func (e *entry) isWatery() bool {
	water := e.Food.Per100.Water
	return water != nil && water.Cmp(watery) >= 0
}

func (e *entry) pour(why string) {
	e.Eaten = measure.Number{}
	e.because(why)
}

// keepInBrine counts of a brine that food is kept in as much salt and sugar as
// makes both equally strong: the share that the food is of the weight of both.
// The liquid stays in the jar. A dry brine is rubbed in and counts whole.
func (c *count) keepInBrine() {
	var liquid, all measure.Number
	lines := slices.DeleteFunc(c.in(brine), func(e *entry) bool { return e.Eaten.IsZero() })
	for _, e := range lines {
		all = all.Add(e.grams)
		if e.isWatery() {
			liquid = liquid.Add(e.grams)
		}
	}
	if liquid.IsZero() {
		return
	}
	solids := c.keptIn(lines)
	share := solids.Quo(solids.Add(all))
	for _, e := range lines {
		if e.isWatery() {
			e.pour("stays in the brine and is not counted.")
			continue
		}
		e.Eaten = e.grams.Mul(share)
		e.because(percent(share) + " is counted, as much as makes food and brine equally strong; the rest stays in the brine.")
	}
}

// keptIn is the weight of what is kept in a brine: what the steps that use the
// brine use too, else everything else.
func (c *count) keptIn(lines []*entry) measure.Number {
	together := map[place]bool{}
	for _, t := range c.steps().tasks {
		used := c.steps().lines(t.At)
		if slices.ContainsFunc(lines, func(e *entry) bool { return slices.Contains(used, e.place()) }) {
			for _, p := range used {
				together[p] = true
			}
		}
	}
	var some, rest measure.Number
	for i := range c.entries {
		e := &c.entries[i]
		if slices.Contains(lines, e) {
			continue
		}
		rest = rest.Add(e.Eaten)
		if together[e.place()] {
			some = some.Add(e.Eaten)
		}
	}
	if some.IsZero() {
		return rest
	}
	return some
}
