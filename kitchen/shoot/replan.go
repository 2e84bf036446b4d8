package shoot

import (
	"context"
	"fmt"
	"slices"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/shoot/project"
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
		o.Start = r.startsOf(before)
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

// make plans what is left. If that cannot be done any more as it was fixed, the
// longest waits are let go, then the minutes by which steps should have ended.
func (r *replan) make(ctx context.Context, o solve.Options) (Plan, error) {
	day := r.print()
	plan, err := r.workload.make(ctx, o)
	if r.day.Begun {
		for _, letGo := range []func() bool{r.letWait, r.letEnd} {
			if err != nil && fault.KindOf(err) == fault.Invalid && letGo() {
				plan, err = r.workload.make(ctx, o)
			}
		}
	}
	plan.Overdue = r.overdue
	plan.Kept.Print, plan.Kept.Overdue = day, r.overdue
	return plan, err
}

func (r *replan) apply(done []Done) error {
	for _, d := range done {
		if err := r.known(d.Task); err != nil {
			return err
		}
		at, ok := r.find(d.Task)
		if !ok {
			continue
		}
		if d.From < 0 || d.From > r.now || !d.IsRunning && d.To < d.From {
			return r.refuse("done", d.Task, "%q cannot have been done from %v to %v. Correct its times.",
				r.project.Tasks[at.first].ID, project.Minute(d.From), project.Minute(d.To))
		}
		r.begin(at, d)
	}
	r.hold()
	r.relax()
	return nil
}

// begin fixes the tasks of a step that has begun. What is left of a running one
// is in its last task.
func (r *replan) begin(at span, d Done) {
	start := d.From
	for i := at.first; i <= at.last; i++ {
		t := &r.project.Tasks[i]
		switch isLast := i == at.last; {
		case !d.IsRunning:
			t.Needs, t.Setup = nil, ""
			t.Minutes = min(t.Minutes, d.To-start)
			if isLast {
				t.Minutes = d.To - start
			}
		case isLast:
			t.Minutes = max(t.Minutes, r.now-start)
		}
		r.past[i], t.Forbidden = true, nil
		*t = t.Pin(start)
		r.tasks[i].minutes = Minutes{From: t.Minutes, Likely: t.Minutes, To: t.Minutes}
		start += t.Minutes
	}
}

// hold keeps what has not begun from beginning before now.
func (r *replan) hold() {
	for i := range r.project.Tasks {
		t := &r.project.Tasks[i]
		if r.past[i] {
			continue
		}
		if t.LatestEnd != project.None && t.LatestEnd < r.now+t.Minutes {
			r.endLater(i)
		}
		t.NotBefore = max(t.NotBefore, r.now)
	}
}

// relax lets go the waits that what is past has already broken.
func (r *replan) relax() {
	r.project.Waits = slices.DeleteFunc(r.project.Waits, func(w project.Wait) bool {
		return r.past[w.After]
	})
	for k := range r.project.Waits {
		w := &r.project.Waits[k]
		before := r.project.Tasks[w.Before]
		if w.AtMost != project.None && r.past[w.Before] && before.NotBefore+before.Minutes+w.AtMost < r.now {
			w.AtMost = project.None
			r.late("%q waits longer after %q than it should", r.project.Tasks[w.After].ID, before.ID)
		}
	}
}

// endLater lets go the minute by which a task should have ended.
func (r *replan) endLater(i int) {
	t := &r.project.Tasks[i]
	t.LatestEnd = project.None
	if held := r.tasks[i].heldBy; held != "" {
		r.late("%q is not done in time for %s", t.ID, held)
		return
	}
	r.late("%q is too late for its fixed time", t.ID)
}

// letEnd drops the minutes by which steps should have ended; false if there
// are none.
func (r *replan) letEnd() bool {
	let := false
	for i, t := range r.project.Tasks {
		if t.LatestEnd != project.None && !r.past[i] {
			let = true
			r.endLater(i)
		}
	}
	return let
}

// letWait drops the longest waits after what is past; false if there are none.
func (r *replan) letWait() bool {
	let := false
	for k := range r.project.Waits {
		w := &r.project.Waits[k]
		if w.AtMost != project.None && r.past[w.Before] {
			w.AtMost, let = project.None, true
			r.late("%q may wait longer after %q than it should", r.project.Tasks[w.After].ID, r.project.Tasks[w.Before].ID)
		}
	}
	return let
}

func (r *replan) late(format string, args ...any) {
	r.overdue = append(r.overdue, fmt.Sprintf(format, args...))
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

// startsOf gives the starts that an earlier plan had, nil if it is empty.
// Tasks that it did not have follow at its end.
func (w *workload) startsOf(p Plan) []int {
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
			start = p.Wrap
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
		if start, ok := was[e.identity()]; ok && start != e.From && !e.IsRest { // which goes with its beginning
			all = append(all, Change{e.Key, e.ID, start, e.From})
		}
	}
	return all
}
