package coverage

import (
	"cmp"
	"slices"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/recipe"
)

// Changes is how often the camera goes from one setup to another while a shot
// list is filmed. The setup that stands first is no change.
//
// A shot of a step is filmed after those of the steps that it waits for, and in
// any order with others of its step. Shots of the episode or of a whole component
// are filmed at any time. Shots that name no setup are not counted.
type Changes struct {
	Now     int   // in the order asked about
	Fewest  int   // in Runs
	AtLeast int   // no order has fewer; the same as Fewest where that is proven
	Runs    []Run // an order of filming with Fewest changes
	Unnamed int   // shots without a setup
}

// Run is what is filmed before the camera moves on.
type Run struct {
	Setup string
	Shots []int // indexes into the shot list
}

// Plan is what a day's plan says of the make that is filmed.
type Plan struct {
	Begins map[recipe.Position]int  // when its steps begin, in minutes of the day
	Ahead  map[recipe.Position]bool // steps that a swap-out has done: what follows them waits for them no more
}

// Count counts the changes in the order of a plan, and finds the fewest. A step
// that the plan does not begin comes first, as what is made ahead does; shots at
// any time wait for their setup. Without a plan the order is that of the list,
// put off only where cooking demands it.
func Count(r recipe.Recipe, shots []episode.Shot, plan *Plan) Changes {
	f := newFilm(r, shots, plan)
	c := Changes{Unnamed: f.unnamed}
	c.Now = f.now(plan)
	order, least := f.search().fewest(mostStates)
	c.Runs = f.runs(order)
	c.Fewest = max(0, len(c.Runs)-1)
	c.AtLeast = max(0, c.Fewest-len(order)+least)
	return c
}

// film is a shot list as the work of filming it.
type film struct {
	setups  []string // as they first come in the list
	jobs    []job    // as they are cooked
	free    []item   // filmed at any time, as they stand in the list
	unnamed int
}

// job is what one step asks of one setup.
type job struct {
	at     recipe.Position
	setup  int // index into setups
	shots  []int
	before set // jobs that must have been filmed
}

// item is a shot with its setup.
type item struct{ shot, setup int }

func newFilm(r recipe.Recipe, shots []episode.Shot, plan *Plan) *film {
	f := &film{}
	place := map[string]int{}
	tied := map[recipe.Position][]item{}
	for i, shot := range shots {
		if shot.Setup == "" {
			f.unnamed++
			continue
		}
		if _, known := place[shot.Setup]; !known {
			place[shot.Setup] = len(f.setups)
			f.setups = append(f.setups, shot.Setup)
		}
		each := item{i, place[shot.Setup]}
		tie, _ := TieOf(r, shot)
		if at, isStep := tie.At(); isStep {
			tied[at] = append(tied[at], each)
		} else {
			f.free = append(f.free, each)
		}
	}
	f.addJobs(plan.tasks(r), tied)
	return f
}

// tasks are the recipe's steps with what they wait for on the day.
func (p *Plan) tasks(r recipe.Recipe) []recipe.Task {
	tasks := r.Sequence()
	if p == nil || len(p.Ahead) == 0 {
		return tasks
	}
	for i, t := range tasks {
		tasks[i].After = slices.DeleteFunc(slices.Clone(t.After), func(at recipe.Position) bool { return p.Ahead[at] })
	}
	return tasks
}

// addJobs turns the shots of steps into jobs, with what each waits for however
// far back. Tasks stand after those that they wait for.
func (f *film) addJobs(tasks []recipe.Task, tied map[recipe.Position][]item) {
	total := 0
	for _, items := range tied {
		total += len(items)
	}
	upTo := map[recipe.Position]set{} // the jobs of a step and of all before it
	for _, t := range tasks {
		before := newSet(total)
		for _, at := range t.After {
			before.join(upTo[at])
		}
		done := before.clone()
		items := tied[t.At]
		slices.SortStableFunc(items, func(a, b item) int { return cmp.Compare(a.setup, b.setup) })
		for k, each := range items {
			if k == 0 || items[k-1].setup != each.setup {
				done.add(len(f.jobs))
				f.jobs = append(f.jobs, job{at: t.At, setup: each.setup, before: before})
			}
			last := &f.jobs[len(f.jobs)-1]
			last.shots = append(last.shots, each.shot)
		}
		upTo[t.At] = done
	}
}

// runs says which shots an order of setups films when. Shots at any time are
// taken when their setup first stands, those of setups of their own at the end.
func (f *film) runs(order []int) []Run {
	var runs []Run
	done := newSet(len(f.jobs))
	waiting := slices.Clone(f.free)
	take := func(setup int) (shots []int) {
		waiting = slices.DeleteFunc(waiting, func(each item) bool {
			if each.setup == setup {
				shots = append(shots, each.shot)
			}
			return each.setup == setup
		})
		return shots
	}
	for _, setup := range order {
		run := Run{Setup: f.setups[setup]}
		for i, j := range f.jobs {
			if j.setup == setup && !done.has(i) && done.holds(j.before) {
				done.add(i)
				run.Shots = append(run.Shots, j.shots...)
			}
		}
		run.Shots = append(run.Shots, take(setup)...)
		runs = append(runs, run)
	}
	for len(waiting) > 0 {
		setup := waiting[0].setup
		runs = append(runs, Run{f.setups[setup], take(setup)})
	}
	return runs
}
