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

// letGo lets go one thing that a refused plan is about: whom a step is given to,
// if they leave before they could do it; else a longest wait after what is past;
// else the minute by which a step should have ended, a pin before a moment; else
// whom it is given to. If it is about none of these, anything of the kind is let
// go. It tells whether something was.
func (r *replan) letGo(err error) bool {
	about := r.about(err)
	isAbout := func(i int) bool { return slices.Contains(about, r.tasks[i].key) }
	anything := func(int) bool { return true }
	leavesTooSoon := func(i int) bool { return isAbout(i) && !r.couldDo(i) }
	return r.letGiven(leavesTooSoon) || r.letWait(isAbout) || r.letEnd(isAbout) || r.letGiven(isAbout) ||
		r.letWait(anything) || r.letEnd(anything) || r.letGiven(anything)
}

// about are the steps that a refused plan is about.
func (r *replan) about(err error) []Key {
	var refused *Refusal
	if !errors.As(err, &refused) {
		return nil
	}
	return refused.Tasks
}

// letGiven takes back a step that is given to somebody, of what is asked for;
// false if there is none.
func (r *replan) letGiven(isAskedFor func(task int) bool) bool {
	for i, t := range r.tasks {
		if t.givenTo == "" || r.past[i] || !isAskedFor(i) {
			continue
		}
		r.project.Tasks[i].Needs, r.tasks[i].givenTo = t.own, ""
		r.late("%q cannot be left to the %s any more", r.project.Tasks[i].ID, t.givenTo)
		return true
	}
	return false
}

// couldDo tells whether the one whom a task is given to is there for so long
// from now on.
func (r *replan) couldDo(i int) bool {
	if r.tasks[i].givenTo == "" {
		return true
	}
	s, minutes := r.project.Stations[r.stations[r.tasks[i].givenTo]], r.project.Tasks[i].Minutes
	since := r.now
	for _, level := range append(slices.Clone(s.Changes), project.Level{From: project.MaxMinutes}) {
		if level.From <= r.now {
			continue
		}
		if s.CapacityAt(level.From-1) > 0 && level.From-since >= minutes {
			return true
		}
		if s.CapacityAt(level.From-1) == 0 || level.Capacity == 0 {
			since = level.From
		}
	}
	return false
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
