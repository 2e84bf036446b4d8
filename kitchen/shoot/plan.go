package shoot

import (
	"cmp"
	"context"
	"fmt"
	"slices"

	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shoot/project"
	"benchproof/kitchen/shoot/solve"
)

// Plan is a day's plan: who does what when. All times are minutes of the day.
type Plan struct {
	Entries      []Entry  // in order of time
	Setups       []Setup  // in order of time
	Gaps         []Gap    // in which no hands are needed, in order of time
	Begin        int      // the first start of a step
	Wrap         int      // the last end of one; moments do not count
	Bound        int      // forwards: no plan wraps earlier; backwards: none begins later
	Optimal      bool     // Bound is reached
	EarliestWrap int      // if every step takes its least minutes, in this order
	LatestWrap   int      // if every step takes its most; −1 if the longest waits cannot be kept then
	Overdue      []string // of a day that has begun: what could not be kept
	Kept         Kept     // the plan to write down
}

// Entry is one task on the clock.
type Entry struct {
	Key       Key
	ID        string // as messages name it
	Step      recipe.Step
	From, To  int
	Minutes   Minutes
	Setup     string // the camera setup, if it is filmed
	IsFilmed  bool
	IsOpening bool     // only the step's filmed beginning: the rest follows at once, as an entry of its own
	IsRest    bool     // what follows on the step's filmed beginning
	IsClean   bool     // cleaning down after the step, not the step itself
	Moment    string   // the name of a fixed moment; "" for a step
	Uses      []string // the stations it occupies
	IsAhead   bool     // of a batch that is made ahead
}

// Setup is the putting up of a camera setup.
type Setup struct {
	Name     string
	From, To int
}

// Gap is a stretch of time.
type Gap struct{ From, To int }

// Make plans the day: forwards so that it wraps as early as can be, or, with a
// Finish, backwards so that it begins as late as can be. See solve.Options for
// how long it looks and for progress; progress counts minutes from the start of
// the search's own clock, which runs backwards with a Finish.
//
// Of a day that has begun, what is left is planned: see Replan.
//
// The error is a *Refusal, which is fault.Invalid and names the steps, or a plain
// fault.Invalid about the whole day, or fault.Busy if nothing was found in time.
func (d Day) Make(ctx context.Context, o solve.Options) (Plan, error) {
	r, err := d.rest()
	if err != nil {
		return Plan{}, err
	}
	return r.make(ctx, o)
}

func (w *workload) make(ctx context.Context, o solve.Options) (Plan, error) {
	asked, err := w.asked()
	if err != nil {
		return Plan{}, err
	}
	r, err := solve.Plan(ctx, asked, o)
	if err != nil {
		return Plan{}, w.onSteps(err) // backwards it tells no minutes, which would run backwards
	}
	return w.found(r), nil
}

// asked is the project that is solved: with a Finish, time runs backwards from
// it. The error is fault.Invalid: the day cannot end by then.
func (w *workload) asked() (project.Project, error) {
	if w.day.Finish <= 0 {
		return w.project, nil
	}
	turned, err := solve.Turned(w.project, w.day.Finish)
	if err != nil {
		return w.project, w.onSteps(err)
	}
	return turned, nil
}

// found words what was found of the project asked.
func (w *workload) found(r solve.Result) Plan {
	if w.day.Finish <= 0 {
		return w.plan(r.Starts, r.Bound, r.Optimal)
	}
	return w.plan(w.project.MirrorStarts(r.Starts, w.day.Finish), w.day.Finish-r.Bound, r.Optimal)
}

// plan words a solved project.
func (w *workload) plan(starts []int, bound int, isOptimal bool) Plan {
	p := Plan{Bound: bound, Optimal: isOptimal, Wrap: w.project.Makespan(starts)}
	p.Kept = Kept{Starts: starts, Bound: bound, Optimal: isOptimal}
	if len(w.tasks) == 0 {
		p.Wrap = w.day.Finish // nothing is left to do: it begins as late as it ends
	}
	p.Begin = p.Wrap
	for i, t := range w.tasks {
		if t.part != standing {
			p.Entries = append(p.Entries, w.entry(i, starts[i]))
			p.Begin = min(p.Begin, starts[i])
		}
	}
	for k, m := range w.day.Moments {
		p.Entries = append(p.Entries, Entry{ID: fmt.Sprintf("moment %d: %s", k+1, short(m.Name)), From: m.At, To: m.At, Moment: m.Name})
	}
	slices.SortStableFunc(p.Entries, func(a, b Entry) int { return cmp.Or(a.From-b.From, a.To-b.To) })
	for _, s := range w.project.SetupTimes(starts) {
		p.Setups = append(p.Setups, Setup{w.project.Tasks[s.Task].Setup, s.From, s.To})
	}
	p.Gaps = w.gaps(p)
	p.EarliestWrap, p.LatestWrap = w.wrapWith(starts, false), w.wrapWith(starts, true)
	return p
}

func (w *workload) entry(i, start int) Entry {
	t, planned := w.tasks[i], w.project.Tasks[i]
	e := Entry{
		Key: t.key, ID: planned.ID, Step: t.step, From: start, To: start + planned.Minutes, Minutes: t.minutes,
		Setup: cmp.Or(planned.Setup, t.setup), IsFilmed: planned.Setup != "" || t.setup != "",
		IsOpening: t.part == opening, IsRest: t.part == rest, IsClean: t.part == cleaning,
	}
	for _, n := range planned.Needs {
		e.Uses = append(e.Uses, w.project.Stations[n.Station].Name)
	}
	for _, b := range w.day.Batches {
		e.IsAhead = e.IsAhead || b.Ahead && b.Name == t.key.Batch
	}
	return e
}

// gaps finds the time between the first and the last work of hands in which
// none are needed.
func (w *workload) gaps(p Plan) []Gap {
	var busy []Gap
	for _, e := range p.Entries {
		if slices.Contains(e.Uses, Hands) {
			busy = append(busy, Gap{e.From, e.To})
		}
	}
	for _, s := range p.Setups {
		busy = append(busy, Gap{s.From, s.To})
	}
	slices.SortFunc(busy, func(a, b Gap) int { return a.From - b.From })
	var gaps []Gap
	for k, b := range busy {
		if k > 0 && b.From > busy[k-1].To {
			gaps = append(gaps, Gap{busy[k-1].To, b.From})
		}
		if k > 0 {
			busy[k].To = max(b.To, busy[k-1].To)
		}
	}
	return gaps
}

// wrapWith is when the day wraps if every step takes its most or its least
// minutes and the order stays; −1 if that leads to no plan.
func (w *workload) wrapWith(starts []int, most bool) int {
	other := w.project
	other.Tasks = slices.Clone(other.Tasks)
	for i := range other.Tasks {
		t := &other.Tasks[i]
		minutes := w.tasks[i].minutes.From
		if most {
			minutes = w.tasks[i].minutes.To
		}
		if start, isFixed := t.Fixed(); isFixed {
			t.LatestEnd = start + minutes
		}
		t.Minutes = minutes
	}
	followed, ok := solve.Follow(other, starts)
	if !ok {
		return project.None
	}
	return other.Makespan(followed)
}
