package shoot

import (
	"cmp"
	"slices"

	"benchproof/kitchen/recipe"
)

// Standing is food that stands neither cold nor hot, added up over its steps
// until it is heated, or until the day's work on it is done.
type Standing struct {
	Task     Key // the step that the standing ends with: the last one, or the one that heats
	From, To int // minutes of the day: when it begins to stand, when it last does
	Minutes  int // it stands so long of that time; the rest it is cold
	IsCooked bool
}

// Standings follows the food of each batch through a plan of the day and gives
// what stands for at least so many minutes. Steps in the oven, on the hob, in
// the fryer and under the grill heat food; those in the fridge and the freezer
// keep it cold, and there it waits for its next step. In all other steps it
// stands, and what comes out of the heat stands until its next step. What was
// made the day before comes out of the cold. spoils tells of a recipe's
// component whether there is food in it that spoils; all that is made with it
// does.
func (d Day) Standings(p Plan, least int, spoils func(r recipe.Recipe, component int) bool) []Standing {
	f := follower{times: stepTimes(p), after: map[Key]warmth{}, least: max(1, least)}
	for _, b := range d.Batches {
		isLast := map[recipe.Position]bool{}
		steps := b.steps()
		for _, t := range steps {
			isLast[t.At] = true
			for _, before := range t.After {
				delete(isLast, before)
			}
		}
		for _, t := range steps {
			f.follow(b, t, spoils(b.Recipe, t.At.Component), isLast[t.At])
		}
	}
	slices.SortStableFunc(f.found, func(a, b Standing) int { return cmp.Compare(a.From, b.From) })
	return f.found
}

// follower follows food from step to step.
type follower struct {
	times map[Key]Gap    // when each step is done
	after map[Key]warmth // how its food has fared by its end
	least int
	found []Standing
}

// warmth is how food has fared.
type warmth struct {
	from, minutes int // it stands since from, for so long
	until         int // it last stood then
	at            int // the minute that this is known for
	waitsWarm     bool
	isCooked      bool
	spoils        bool
}

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
func (f *follower) follow(b Batch, t recipe.Task, spoils, isLast bool) {
	key := Key{b.Name, t.At}
	now, isDone := f.times[key]
	if !isDone {
		return
	}
	w := warmth{from: now.From, until: now.From, at: now.From, spoils: spoils}
	for _, before := range t.After {
		w = w.with(f.until(b, before, now.From))
	}
	step := b.Recipe.Components[t.At.Component].Steps[t.At.Step]
	switch {
	case heats(step):
		f.note(key, w)
		w = warmth{from: now.To, until: now.To, waitsWarm: true, isCooked: true, spoils: w.spoils}
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
		return warmth{from: minute, until: minute, at: minute}
	}
	if w.waitsWarm && minute > w.at {
		w.minutes, w.until = w.minutes+minute-w.at, minute
	}
	w.at = minute
	return w
}

// with joins what two steps bring: of what spoils, the one that has stood longer
// counts.
func (w warmth) with(v warmth) warmth {
	joined := w
	if v.spoils && !w.spoils || v.spoils == w.spoils && v.minutes > w.minutes {
		joined = v
	}
	joined.spoils, joined.isCooked = w.spoils || v.spoils, w.isCooked || v.isCooked
	return joined
}

func (f *follower) note(key Key, w warmth) {
	if w.spoils && w.minutes >= f.least {
		f.found = append(f.found, Standing{Task: key, From: w.from, To: w.until, Minutes: w.minutes, IsCooked: w.isCooked})
	}
}

func heats(s recipe.Step) bool {
	return slices.Contains([]string{"oven", "hob", "fryer", "grill"}, s.Station)
}

func isCold(s recipe.Step) bool { return s.Station == "fridge" || s.Station == "freezer" }
