package shoot

import (
	"errors"
	"fmt"
	"slices"

	"benchproof/kitchen/shoot/project"
)

// relax lets go the waits that what is past has already broken.
func (r *replan) relax() {
	r.project.Waits = slices.DeleteFunc(r.project.Waits, func(w project.Wait) bool {
		return r.past[w.After]
	})
	for k, w := range r.project.Waits {
		before := r.project.Tasks[w.Before]
		if w.AtMost != project.None && r.past[w.Before] && before.NotBefore+before.Minutes+w.AtMost < r.now {
			r.waitLonger(k)
		}
	}
}

// letGo lets go one thing that a refused plan is about: a longest wait after
// what is past, else the minute by which a step should have ended, a pin before
// a moment. If it is about none, everything of the kind is let go. It tells
// whether anything was.
func (r *replan) letGo(err error) bool {
	about := r.about(err)
	isAbout := func(i int) bool { return slices.Contains(about, r.tasks[i].key) }
	anything := func(int) bool { return true }
	return r.letWait(isAbout) || r.letEnd(isAbout) || r.letWait(anything) || r.letEnd(anything)
}

// about are the steps that a refused plan is about.
func (r *replan) about(err error) []Key {
	var refused *Refusal
	if !errors.As(err, &refused) {
		return nil
	}
	return refused.Tasks
}

// letWait lets go the first longest wait after something past, of what is asked
// for; false if there is none.
func (r *replan) letWait(isAskedFor func(task int) bool) bool {
	for k, w := range r.project.Waits {
		if w.AtMost != project.None && r.past[w.Before] && isAskedFor(w.Before) && isAskedFor(w.After) {
			r.waitLonger(k)
			return true
		}
	}
	return false
}

// letEnd lets go the first pin, or else the first moment, of what is asked for;
// false if there is none.
func (r *replan) letEnd(isAskedFor func(task int) bool) bool {
	first := -1
	for i, t := range r.project.Tasks {
		if t.LatestEnd == project.None || r.past[i] || !isAskedFor(i) {
			continue
		}
		if first < 0 || r.isSooner(i, first) {
			first = i
		}
	}
	if first >= 0 {
		r.endLater(first)
	}
	return first >= 0
}

// isSooner tells whether one task's end is let go before another's: pins before
// what guests and deliveries ask for, then by time.
func (r *replan) isSooner(i, j int) bool {
	if isPin, wasPin := r.tasks[i].heldBy == "", r.tasks[j].heldBy == ""; isPin != wasPin {
		return isPin
	}
	return r.project.Tasks[i].LatestEnd < r.project.Tasks[j].LatestEnd
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

// waitLonger lets go a longest wait.
func (r *replan) waitLonger(k int) {
	w := &r.project.Waits[k]
	w.AtMost = project.None
	if r.tasks[w.After].part != cleaning {
		r.late("%q waits longer after %q than it should", r.project.Tasks[w.After].ID, r.project.Tasks[w.Before].ID)
	}
}

func (r *replan) late(format string, args ...any) {
	r.overdue = append(r.overdue, fmt.Sprintf(format, args...))
}
