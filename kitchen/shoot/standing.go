package shoot

import (
	"cmp"
	"slices"

	"benchproof/kitchen/recipe"
)

// Standing is food that stands neither cold nor hot, added up over its steps
// until it is heated, or until the day's work on it is done.
type Standing struct {
	Task     Key   // the step that the standing ends with: the last one, or the one that heats
	Of       []int // the components of the recipe that hold what spoils, in their order
	From, To int   // minutes of the day: when it begins to stand, when it last does
	Minutes  int   // it stands so long of that time; the rest it is cold
	IsCooked bool  // some of what spoils has been heated before
}

// State is what heat has made of an ingredient.
type State int

// What is baked and then heated otherwise is still Baked.
const (
	Raw    State = iota
	Cooked       // on the hob, in the fryer, under the grill
	Baked        // in the oven
)

// Spoils tells of an ingredient line whether it must not stand long between
// cold and hot in a state.
type Spoils func(r recipe.Recipe, component, line int, state State) bool

// Standings follows the food of each batch through a plan of the day and gives
// what stands for at least so many minutes. An ingredient comes in with the
// steps that name it, or with the first of its component. Steps in the oven, on
// the hob, in the fryer and under the grill heat food, unless they say that it
// becomes no more than warm; those in the fridge and the freezer keep it cold,
// and there it waits for its next step. In all other steps it stands, and what
// comes out of the heat stands until its next step. What was made the day before
// comes out of the cold.
func (d Day) Standings(p Plan, least int, spoils Spoils) []Standing {
	f := follower{times: stepTimes(p), after: map[Key]warmth{}, least: max(1, least), spoils: spoils}
	batches := slices.Clone(d.Batches) // what is made ahead hands its food on
	slices.SortStableFunc(batches, func(a, b Batch) int { return cmp.Compare(rank(a), rank(b)) })
	for _, b := range batches {
		f.recipe, f.entering = b.Recipe, entering(b.Recipe)
		isLast := map[recipe.Position]bool{}
		steps := b.steps()
		for _, t := range steps {
			isLast[t.At] = true
			for _, before := range t.After {
				delete(isLast, before)
			}
		}
		for _, t := range steps {
			f.follow(b, t, isLast[t.At])
		}
	}
	slices.SortStableFunc(f.found, func(a, b Standing) int { return cmp.Compare(a.From, b.From) })
	return f.found
}

func rank(b Batch) int {
	if b.Ahead {
		return 0
	}
	return 1
}

// follower follows food from step to step.
type follower struct {
	times    map[Key]Gap    // when each step is done
	after    map[Key]warmth // how its food has fared by its end
	least    int
	spoils   Spoils
	recipe   recipe.Recipe // of the batch at hand
	entering map[recipe.Position][]ingredient
	found    []Standing
}

// warmth is how food has fared.
type warmth struct {
	from, minutes int // it stands since from, for so long
	until         int // it last stood then
	at            int // the minute that this is known for
	waitsWarm     bool
	food          []ingredient
}

// fresh is food that begins to stand at a minute.
func fresh(minute int) warmth { return warmth{from: minute, until: minute, at: minute} }

// stepTimes are when each step of a plan begins and ends.
func stepTimes(p Plan) map[Key]Gap {
	times := map[Key]Gap{}
	for _, e := range p.Entries {
		if e.Moment != "" || e.IsClean {
			continue
		}
		if begun, ok := times[e.Key]; ok { // its filmed beginning
			e.From = begun.From
		}
		times[e.Key] = Gap{e.From, e.To}
	}
	return times
}

// follow takes a step's food from the steps before it to its own end.
func (f *follower) follow(b Batch, t recipe.Task, isLast bool) {
	key := Key{b.Name, t.At}
	now, isDone := f.times[key]
	step := b.Recipe.Components[t.At.Component].Steps[t.At.Step]
	if !isDone || isOvenAlone(step) {
		return
	}
	w := fresh(now.From)
	for _, before := range t.After {
		w = f.join(w, f.until(b, before, now.From))
	}
	if !f.spoil(w) {
		w.from, w.minutes, w.until = now.From, 0, now.From
	}
	w.food = withAll(w.food, f.entering[t.At])
	switch {
	case heats(step):
		f.note(key, w)
		food := w.food
		w = fresh(now.To)
		w.waitsWarm, w.food = true, heated(food, stateAfter(step))
	case isCold(step):
		w.waitsWarm = false
	default:
		w.minutes, w.until, w.waitsWarm = w.minutes+now.To-now.From, now.To, true
	}
	w.at = now.To
	f.after[key] = w
	if isLast {
		f.note(key, w)
	}
}

// until is how the food of an earlier step has fared by a minute.
func (f *follower) until(b Batch, at recipe.Position, minute int) warmth {
	key := Key{b.Name, at}
	if other, isSwapped := b.Swaps[at]; isSwapped {
		key.Batch = other
	}
	w, ok := f.after[key]
	if !ok {
		w = fresh(minute)
		if _, isSwapped := b.Swaps[at]; isSwapped { // made the day before
			w.food = f.foodUpTo(at)
		}
		return w
	}
	if w.waitsWarm && minute > w.at {
		w.minutes, w.until = w.minutes+minute-w.at, minute
	}
	w.at = minute
	return w
}

// join puts together what two steps bring: of what spoils, the one that has
// stood longer counts.
func (f *follower) join(w, v warmth) warmth {
	joined := w
	if a, b := f.spoil(w), f.spoil(v); b && !a || a == b && v.minutes > w.minutes {
		joined = v
	}
	joined.food = withAll(w.food, v.food)
	return joined
}

// spoil tells whether anything in food spoils.
func (f *follower) spoil(w warmth) bool {
	return slices.ContainsFunc(w.food, func(i ingredient) bool { return f.spoils(f.recipe, i.component, i.line, i.state) })
}

func (f *follower) note(key Key, w warmth) {
	s := Standing{Task: key, From: w.from, To: w.until, Minutes: w.minutes}
	for _, i := range w.food {
		if !f.spoils(f.recipe, i.component, i.line, i.state) {
			continue
		}
		s.IsCooked = s.IsCooked || i.state != Raw
		if !slices.Contains(s.Of, i.component) {
			s.Of = append(s.Of, i.component)
		}
	}
	if s.Of != nil && s.Minutes >= f.least {
		slices.Sort(s.Of)
		f.found = append(f.found, s)
	}
}
