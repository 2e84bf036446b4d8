package nutrition

import (
	"strings"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// count is a recipe being reckoned.
type count struct {
	recipe  recipe.Recipe
	writer  recipe.Writer
	entries []entry
	method  *steps // made when first asked for

	volumes measure.Number // g, what unknown foods by volume would weigh as water
	unsized int            // how many lines more have no weight
	facts   Facts
}

// entry is one line in the count.
type entry struct {
	Line
	line  recipe.Line
	grams measure.Number // the middle of what it weighs
	kept  measure.Number // share of its alcohol that stays, 1 for all
}

func newCount(r recipe.Recipe, w recipe.Writer) *count {
	return &count{recipe: r, writer: w}
}

// gather weighs every line and names those that have no weight.
func (c *count) gather() {
	lines := 0
	for _, component := range c.recipe.Components {
		lines += len(component.Lines)
	}
	c.entries = make([]entry, 0, lines)
	for i, component := range c.recipe.Components {
		for k, l := range component.Lines {
			c.add(i, k, l)
		}
	}
	for _, u := range c.recipe.Unread {
		c.miss(notRead(u.Text, u.Reason))
	}
}

func (c *count) add(component, at int, l recipe.Line) {
	if !l.Read {
		c.unsized++
		c.miss(notRead(l.Text, l.Reason))
		return
	}
	e := entry{Line: Line{Component: component, Line: at, Food: c.food(l)}, line: l, kept: measure.Whole(1)}
	switch {
	case e.Food == nil && c.isMadeHere(component, l):
		return // its own lines count
	case !l.HasAmount && c.fillsPan(&e):
		c.entries = append(c.entries, e) // fry gives it what the food takes up
		return
	case !l.HasAmount:
		c.miss(unmeasured(l))
		return
	}
	weighs, how, err := c.writer.Grams(l)
	switch {
	case err != nil && e.Food == nil:
		c.guess(l)
		c.miss(unknown(l))
		return
	case err != nil:
		c.guess(l)
		c.miss(unweighed(l, err))
		return
	case e.Food == nil:
		c.miss(unknown(l))
	case e.Food.Per100.EnergyKcal == nil:
		c.miss(noFigures(l, e.Food))
	}
	how.Grams = weighs // a stated mass comes without
	e.Weighed = how
	e.grams = middle(weighs)
	e.Eaten = e.grams
	c.entries = append(c.entries, e)
}

func (c *count) miss(m Missing) { c.facts.Missing = append(c.facts.Missing, m) }

func (c *count) note(say string) { c.facts.Notes = append(c.facts.Notes, say) }

// food is the larder's food of a line, nil if it knows none.
func (c *count) food(l recipe.Line) *food.Food {
	if c.writer.Larder == nil || l.FoodID == "" {
		return nil
	}
	f, _ := c.writer.Larder.Food(l.FoodID)
	return f
}

// isMadeHere tells a line that is another component of the recipe: "1 quantity
// almond cream".
func (c *count) isMadeHere(component int, l recipe.Line) bool {
	for i, other := range c.recipe.Components {
		if i != component && other.Name != "" && len(other.Lines) > 0 && strings.EqualFold(other.Name, l.Food) {
			return true
		}
	}
	return false
}

// guess keeps what a line without a weight stands for in the share covered.
func (c *count) guess(l recipe.Line) {
	system := l.System.Or(c.writer.Source).Or(c.writer.House).Or(measure.US)
	millilitres, ok := system.Millilitres(l.Amount.Unit)
	if !ok || l.Amount.Unit.Kind() != measure.Volume {
		c.unsized++
		return
	}
	c.volumes = c.volumes.Add(middle(l.Amount.Scale(millilitres).Range))
}

// steps gives what the method tells; most recipes never ask for it.
func (c *count) steps() *steps {
	if c.method == nil {
		c.method = newSteps(c.recipe)
	}
	return c.method
}

// sum adds the entries up and says what was assumed of all of them.
func (c *count) sum() Facts {
	f := &c.facts
	f.Lines = make([]Line, 0, len(c.entries))
	weighed := measure.Number{}
	c.explain()
	for i := range c.entries {
		e := &c.entries[i]
		weighed = weighed.Add(e.grams)
		if e.Food == nil {
			e.Adds = food.Totals{}.AddUnknown(e.Eaten)
		} else {
			e.Adds = food.Totals{}.Add(e.boiled(), e.Eaten)
		}
		f.Totals = f.Totals.Plus(e.Adds)
		f.Lines = append(f.Lines, e.Line)
	}
	f.Covered = c.covered(weighed)
	c.takeYield()
	c.noteWhole()
	return *f
}

// covered is the share of the mass whose energy is known, the stand-ins for
// what has no weight counted as unknown.
func (c *count) covered(weighed measure.Number) measure.Number {
	mass := c.facts.Totals.Grams().Add(c.volumes)
	if c.unsized > 0 && len(c.entries) > 0 {
		average := weighed.Quo(measure.Whole(int64(len(c.entries))))
		mass = mass.Add(average.Mul(measure.Whole(int64(c.unsized))))
	}
	if mass.Sign() <= 0 {
		return measure.Number{}
	}
	return c.facts.Totals.Covered().Mul(c.facts.Totals.Grams()).Quo(mass)
}

// takeYield takes what the recipe makes: pieces, or a finished weight.
func (c *count) takeYield() {
	y := c.recipe.Yield
	if per, ok := measure.Grams(y.Amount.Unit); ok {
		c.facts.Finished = middle(y.Amount.Range).Mul(per)
		return
	}
	if y.Amount.Unit.Kind() == measure.Count && y.Amount.From.Sign() > 0 {
		c.facts.Pieces, c.facts.Of = y.Amount.Range, y.Of
	}
}

func (e *entry) place() place { return place{e.Component, e.Line.Line} }

// because says why less than the whole of an entry counts, beside what was said
// before.
func (e *entry) because(why string) { e.Why = strings.TrimSpace(e.Why + " " + why) }

// middle is the middle of a range.
func middle(r measure.Range) measure.Number {
	if r.IsSingle() {
		return r.From
	}
	return r.From.Add(r.To).Quo(measure.Whole(2))
}
