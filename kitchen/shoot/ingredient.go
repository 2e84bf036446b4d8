package shoot

import (
	"regexp"
	"slices"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// ingredient is a line of the recipe that is in some food.
type ingredient struct {
	component, line int
	state           State
}

// allWords are of a step that takes all that its component has.
var allWords = regexp.MustCompile(`(?i)\b(everything|all (of )?(the|your)|(the|all) ingredients|the rest)\b`)

// entering lists the ingredients that come in with each step: with those that
// name it; with one that takes everything; one that nothing names, with the
// first step of its component, or else with the first that uses the component.
func entering(r recipe.Recipe) map[recipe.Position][]ingredient {
	e := entrance{recipe: r, at: map[recipe.Position][]ingredient{}, isIn: map[ingredient]bool{}}
	for _, t := range r.Sequence() {
		step := r.Components[t.At.Component].Steps[t.At.Step]
		if isOvenAlone(step) {
			continue
		}
		e.steps = append(e.steps, t.At)
		for _, u := range step.Uses {
			if u.Line >= 0 {
				e.enter(t.At, ingredient{component: u.Component, line: u.Line})
			}
		}
		if allWords.MatchString(step.Text) {
			e.enterAll(t.At, t.At.Component)
		}
	}
	for c := range r.Components {
		if at, ok := e.firstOf(c); ok {
			e.enterAll(at, c)
		}
	}
	return e.at
}

// entrance is where ingredients come in, in the making.
type entrance struct {
	recipe recipe.Recipe
	steps  []recipe.Position // in order, but for those without food
	at     map[recipe.Position][]ingredient
	isIn   map[ingredient]bool
}

func (e *entrance) enter(at recipe.Position, i ingredient) {
	e.at[at] = append(e.at[at], i)
	e.isIn[i] = true
}

// enterAll brings in what is left of a component.
func (e *entrance) enterAll(at recipe.Position, component int) {
	for k := range e.recipe.Components[component].Lines {
		if i := (ingredient{component: component, line: k}); !e.isIn[i] {
			e.enter(at, i)
		}
	}
}

// firstOf is the first step of a component, or the first that takes any of it,
// or the first of all.
func (e *entrance) firstOf(component int) (at recipe.Position, ok bool) {
	for _, at := range e.steps {
		if at.Component == component {
			return at, true
		}
	}
	for _, at := range e.steps {
		if slices.ContainsFunc(e.at[at], func(i ingredient) bool { return i.component == component }) {
			return at, true
		}
	}
	if len(e.steps) == 0 {
		return at, false
	}
	return e.steps[0], true
}

// foodUpTo is all that has come in by the end of a step, in the state that its
// steps leave it in.
func (f *follower) foodUpTo(at recipe.Position) []ingredient {
	food := map[recipe.Position][]ingredient{}
	for _, t := range f.recipe.Sequence() {
		var all []ingredient
		for _, before := range t.After {
			all = withAll(all, food[before])
		}
		all = withAll(all, f.entering[t.At])
		if step := f.recipe.Components[t.At.Component].Steps[t.At.Step]; heats(step) {
			all = heated(all, stateAfter(step))
		}
		food[t.At] = all
	}
	return food[at]
}

// withAll joins two lists of ingredients, each in each state once.
func withAll(food, more []ingredient) []ingredient {
	all := slices.Clone(food)
	for _, i := range more {
		if !slices.Contains(all, i) {
			all = append(all, i)
		}
	}
	return all
}

func heated(food []ingredient, state State) []ingredient {
	var all []ingredient
	for _, i := range food {
		i.state = max(i.state, state)
		all = withAll(all, []ingredient{i})
	}
	return all
}

func stateAfter(s recipe.Step) State {
	if s.Station == "oven" {
		return Baked
	}
	return Cooked
}

// heats tells whether a step makes food hot: 57 °C (135 °F) at least, as hot
// holding asks. Source: FDA Food Code 2022, section 3-501.16.
func heats(s recipe.Step) bool {
	if !slices.Contains([]string{"oven", "hob", "fryer", "grill"}, s.Station) {
		return false
	}
	isTepid := func(h measure.Heat) bool {
		return h.Scale == "C" && h.Degrees.To.Cmp(measure.Whole(57)) < 0 || h.Scale == "F" && h.Degrees.To.Cmp(measure.Whole(135)) < 0
	}
	return len(s.Temperatures) == 0 || slices.ContainsFunc(s.Temperatures, func(h measure.Heat) bool { return !isTepid(h) })
}

// isOvenAlone tells whether a step heats the oven, with nothing in it.
func isOvenAlone(s recipe.Step) bool {
	return s.Station == "oven" && !s.HasMinutes && len(s.Temperatures) > 0 && len(s.Uses) == 0
}

func isCold(s recipe.Step) bool { return s.Station == "fridge" || s.Station == "freezer" }
