package shoot

import (
	"context"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/shoot/solve"
)

// Done says how far a step has really come: it began at From and has ended at
// To, or, with IsRunning, it has not ended yet.
type Done struct {
	Task      Key
	From, To  int
	IsRunning bool
}

// Change is a step that the new plan has at another time.
type Change struct {
	Key     Key
	ID      string
	Was, Is int // its start
}

// Replan plans what is left of the day from a minute on, and tells what moved
// against the plan before.
// Steps that are done stay as they were; those that run end after their likely
// minutes, or now if those are over. What has become too late to keep (a pin, a
// finish, a longest wait) is let go, and Plan.Overdue names it. before is the
// plan so far, whose order is tried first; an empty one is fine. The day is
// replanned forwards. Errors are those of Make.
func (d Day) Replan(ctx context.Context, before Plan, now int, done []Done, o solve.Options) (Plan, []Change, error) {
	d.Begun, d.Now, d.Done = true, now, done
	return d.MakeAfter(ctx, before, o)
}

// MakeAfter makes the day's plan after another one for the same steps, and tells
// what moved. It keeps to the order of the one before if none found wraps
// earlier; backwards it does not. Errors are those of Make.
func (d Day) MakeAfter(ctx context.Context, before Plan, o solve.Options) (Plan, []Change, error) {
	r, err := d.rest()
	if err != nil {
		return Plan{}, nil, err
	}
	if d.Finish == 0 || d.Begun {
		o.Start = r.startsOf(before, before.Wrap)
	}
	plan, err := r.make(ctx, o)
	if err == nil {
		plan = r.calmer(plan, o.Start)
	}
	return plan, changes(before, plan), err
}

// calmer is the plan in an earlier one's order, if that wraps no later.
func (r *replan) calmer(p Plan, order []int) Plan {
	starts, ok := solve.Follow(r.project, order)
	if !ok || r.project.Makespan(starts) > p.Wrap {
		return p
	}
	calm := r.plan(starts, p.Bound, p.Optimal)
	calm.Overdue, calm.Kept.Print, calm.Kept.Overdue = p.Overdue, p.Kept.Print, p.Kept.Overdue
	return calm
}

// replan is a workload narrowed to what is left.
type replan struct {
	*workload
	now     int
	past    []bool // tasks that have begun
	overdue []string
}

// rest is what is to be planned of the day: all of it, if it has not begun.
func (d Day) rest() (*replan, error) {
	if d.Begun {
		d.Finish = 0
	}
	w, err := newWorkload(d)
	if err != nil {
		return nil, err
	}
	r := &replan{workload: w, now: d.Now, past: make([]bool, len(w.tasks))}
	if d.Begun {
		err = r.apply(d.Done)
	}
	return r, err
}

// make plans what is left. What cannot be kept any more as it was fixed is let
// go, one thing after the other.
func (r *replan) make(ctx context.Context, o solve.Options) (Plan, error) {
	day := r.print()
	plan, err := r.workload.make(ctx, o)
	for r.day.Begun && err != nil && fault.KindOf(err) == fault.Invalid && r.letGo(err) {
		plan, err = r.workload.make(ctx, o)
	}
	plan.Overdue = r.overdue
	plan.Kept.Print, plan.Kept.Overdue = day, r.overdue
	return plan, err
}

// identity tells entries of two plans of one day apart.
type identity struct {
	key    Key
	part   part
	moment string
}

func (e Entry) identity() identity { return identity{e.Key, e.part(), e.Moment} }

func (e Entry) part() part {
	switch {
	case e.IsOpening:
		return opening
	case e.IsRest:
		return rest
	case e.IsClean:
		return cleaning
	}
	return whole
}

// startsOf gives the starts that an earlier plan had, nil if it is empty. Tasks
// that it did not have begin at the minute given.
func (w *workload) startsOf(p Plan, others int) []int {
	if len(p.Entries) == 0 {
		return nil
	}
	at := map[identity]int{}
	for _, e := range p.Entries {
		at[e.identity()] = e.From
	}
	starts := make([]int, len(w.tasks))
	for i, t := range w.tasks {
		start, ok := at[identity{t.key, t.part, ""}]
		if !ok {
			start = others
		}
		starts[i] = start
	}
	return starts
}

func changes(before, after Plan) []Change {
	was := map[identity]int{}
	for _, e := range before.Entries {
		was[e.identity()] = e.From
	}
	var all []Change
	for _, e := range after.Entries {
		if e.Moment != "" || e.IsRest || e.IsClean {
			continue // a moment is not planned; the others go with their step
		}
		if start, ok := was[e.identity()]; ok && start != e.From {
			all = append(all, Change{e.Key, e.ID, start, e.From})
		}
	}
	return all
}
