package recipe

import (
	"slices"
	"strings"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe/mention"
)

// connect finds what each step uses, and which component it finishes.
func connect(r *Recipe) {
	c := connector{recipe: r, used: map[[2]int]bool{}}
	for i, component := range r.Components {
		for k, line := range component.Lines {
			if line.Read {
				c.lines = append(c.lines, [2]int{i, k})
				c.names = append(c.names, line.Food)
			}
		}
	}
	c.foods = mention.New(c.names)
	var made []string
	for _, component := range r.Components {
		made = append(made, component.Name)
	}
	c.made = mention.New(made)
	for _, at := range r.stepsInOrder() {
		c.connect(at)
	}
	c.finish()
}

// connector carries what is known while the steps are gone through.
type connector struct {
	recipe *Recipe
	foods  *mention.Index
	made   *mention.Index
	names  []string
	lines  [][2]int // component and line of each name
	used   map[[2]int]bool
	last   map[int]Position // the last step that works on a component
}

func (c *connector) connect(at Position) {
	component := &c.recipe.Components[at.Component]
	step := &component.Steps[at.Step]
	text := mention.Cut(step.Text)
	components := c.made.In(text, nil)
	made := c.inFull(components)
	home := c.home(at, without(c.foods.In(text, nil), made))
	found := c.foods.In(text, func(n int) bool { return c.lines[n][0] == home })
	for _, f := range without(found, made) {
		for _, n := range c.choose(f.Names, home) {
			line := c.recipe.Components[c.lines[n][0]].Lines[c.lines[n][1]]
			use := Use{Component: c.lines[n][0], Line: c.lines[n][1], Words: f.Words}
			use.Amount, use.HasAmount = partOf(f.Words, line)
			step.Uses = append(step.Uses, use)
			c.used[c.lines[n]] = true
		}
	}
	for _, f := range components {
		for _, n := range f.Names {
			if n != at.Component && n != home && c.recipe.Components[n].Name != "" && c.started(n) && !c.isFood(f.Words, step.Uses) {
				step.Uses = append(step.Uses, Use{Component: n, Line: -1, Words: f.Words})
			}
		}
	}
	if home >= 0 {
		if c.last == nil {
			c.last = map[int]Position{}
		}
		c.last[home] = at
	}
}

// inFull picks the components named in full, "the almond cream": no mention of
// almonds or cream.
func (c *connector) inFull(found []mention.Found) []mention.Found {
	var full []mention.Found
	for _, f := range found {
		for _, n := range f.Names {
			name := strings.ToLower(c.recipe.Components[n].Name)
			if strings.Contains(name, " ") && strings.HasSuffix(strings.ToLower(f.Words), name) {
				full = append(full, f)
			}
		}
	}
	return full
}

// without leaves out the mentions that stand inside others.
func without(found, others []mention.Found) []mention.Found {
	return slices.DeleteFunc(found, func(f mention.Found) bool {
		end := f.At + len(f.Words)
		return slices.ContainsFunc(others, func(o mention.Found) bool { return end > o.At && end <= o.At+len(o.Words) })
	})
}

// home is the component that a step works on: its own if that has ingredients,
// else the one most of whose ingredients it names; −1 if none stands out.
func (c *connector) home(at Position, found []mention.Found) int {
	if len(c.recipe.Components[at.Component].Lines) > 0 {
		return at.Component
	}
	count := map[int]int{}
	for _, f := range found {
		seen := map[int]bool{}
		for _, n := range f.Names {
			if of := c.lines[n][0]; !seen[of] {
				seen[of] = true
				count[of] += 2
				if !c.used[c.lines[n]] {
					count[of]++
				}
			}
		}
	}
	best := -1
	for i := range c.recipe.Components {
		if count[i] > 0 && (best < 0 || count[i] > count[best]) {
			best = i
		}
	}
	return best
}

// choose picks, of names that could be meant, those in the component at hand;
// else those not used yet; else all.
func (c *connector) choose(names []int, home int) []int {
	for _, fits := range []func(n int) bool{
		func(n int) bool { return c.lines[n][0] == home },
		func(n int) bool { return !c.used[c.lines[n]] },
	} {
		var some []int
		for _, n := range names {
			if fits(n) {
				some = append(some, n)
			}
		}
		if len(some) > 0 {
			return some
		}
	}
	return names
}

// started tells whether any step has worked on component n yet.
func (c *connector) started(n int) bool {
	_, ok := c.last[n]
	return ok
}

// isFood tells whether words already name an ingredient.
func (c *connector) isFood(words string, uses []Use) bool {
	for _, u := range uses {
		if u.Line >= 0 && strings.HasSuffix(u.Words, words) {
			return true
		}
	}
	return false
}

// finish marks the step after which each component is done.
func (c *connector) finish() {
	for i, at := range c.last {
		if name := c.recipe.Components[i].Name; name != "" {
			c.recipe.Components[at.Component].Steps[at.Step].Finishes = name
		}
	}
}

// partOf reads how much of a line a step takes: "100 g of the sugar", "half the
// butter". "The butter" and "the remaining butter" state nothing.
func partOf(words string, line Line) (measure.Amount, bool) {
	if r, rest, ok := measure.ReadAmount(words); ok && r.HasAmount() && rest != "" && (r.Amount.Unit != measure.Each || line.Amount.Unit == measure.Each) {
		return r.Amount, true
	}
	n, rest, ok := measure.ReadNumber(words)
	if !ok || n.Cmp(measure.Whole(1)) >= 0 || rest == "" || !line.HasAmount {
		return measure.Amount{}, false
	}
	return line.Amount.Scale(n), true
}
