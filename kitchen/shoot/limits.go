package shoot

import (
	"cmp"
	"slices"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/shoot/project"
)

// find gives the tasks of a key. Keys of steps that a swap-out has done, or that
// this day leaves out, have none.
func (w *workload) find(k Key) (at span, ok bool) {
	at, ok = w.place[k]
	return at, ok
}

// known tells whether a key names a step of a batch's recipe, done today or not.
func (w *workload) known(k Key) error {
	for _, b := range w.day.Batches {
		if b.Name != k.Batch {
			continue
		}
		if c := k.At.Component; c >= 0 && c < len(b.Recipe.Components) && k.At.Step >= 0 && k.At.Step < len(b.Recipe.Components[c].Steps) {
			return nil
		}
	}
	return w.refuse("plan", k, "Batch %q has no step %d in part %d. The recipe has changed since; remove what was fixed for that step.",
		k.Batch, k.At.Step+1, k.At.Component+1)
}

func (w *workload) addWaits() error {
	for _, limit := range w.day.Waits {
		if err := w.known(limit.After); err != nil {
			return err
		}
		at, ok := w.find(limit.After)
		if !ok {
			continue
		}
		for k := range w.project.Waits {
			wait := &w.project.Waits[k]
			next := w.tasks[wait.After]
			if wait.Before != at.last || next.part == cleaning || limit.Next != (Key{}) && limit.Next != next.key {
				continue
			}
			wait.AtLeast = max(wait.AtLeast, limit.AtLeast)
			if limit.HasMost && (wait.AtMost == project.None || limit.AtMost < wait.AtMost) {
				wait.AtMost = limit.AtMost
			}
		}
	}
	return nil
}

// addMoments holds the steps before and after each fixed moment to it.
func (w *workload) addMoments() error {
	for _, m := range w.day.Moments {
		if m.At < 0 {
			return fault.Invalidf("moments", "%s is at a time before the day begins. Give it a later one.", m.Name)
		}
		for _, key := range m.Before {
			if err := w.known(key); err != nil {
				return err
			}
			if at, ok := w.find(key); ok {
				w.endBy(at.last, m)
			}
		}
		for _, key := range m.After {
			if err := w.known(key); err != nil {
				return err
			}
			if at, ok := w.find(key); ok {
				w.beginAfter(at.first, m)
			}
		}
	}
	return w.checkMoments()
}

// endBy makes a task end by a moment, unless another one comes sooner.
func (w *workload) endBy(at int, m Moment) {
	t := &w.project.Tasks[at]
	if t.LatestEnd == project.None || m.At < t.LatestEnd {
		t.LatestEnd, w.tasks[at].heldBy = m.At, m.Name
	}
}

// beginAfter lets a task not begin before a moment.
func (w *workload) beginAfter(at int, m Moment) {
	if t := &w.project.Tasks[at]; m.At > t.NotBefore {
		t.NotBefore, w.tasks[at].after = m.At, m.Name
	}
}

// checkMoments finds a step that cannot have ended by its moment even if
// nothing stands in its way.
func (w *workload) checkMoments() error {
	first := w.freely()
	for i, t := range w.tasks {
		planned := w.project.Tasks[i]
		if first != nil && t.heldBy != "" && first[i]+planned.Minutes > planned.LatestEnd {
			return w.refuse("moments", t.key, "%q cannot have ended before %v, so it is too late for %s at %v. Move the moment or begin earlier.",
				planned.ID, project.Minute(first[i]+planned.Minutes), t.heldBy, project.Minute(planned.LatestEnd))
		}
	}
	return nil
}

func (w *workload) addPins() error {
	for _, p := range w.day.Pins {
		if err := w.known(p.Task); err != nil {
			return err
		}
		at, ok := w.find(p.Task)
		if !ok {
			continue
		}
		t := &w.project.Tasks[at.first]
		if p.Start < 0 {
			return w.refuse("pins", p.Task, "%q is pinned to a time before the day begins. Give it a later one.", t.ID)
		}
		if w.opens(at.first) > p.Start {
			return w.refuse("pins", p.Task, "%q is pinned to %v, before %s at %v. Change one of them.", t.ID, project.Minute(p.Start), cmp.Or(w.tasks[at.first].after, "the day begins"), project.Minute(t.NotBefore))
		}
		if held := w.tasks[at.last].heldBy; held != "" && p.Start+w.lasts(at) > w.project.Tasks[at.last].LatestEnd {
			return w.refuse("pins", p.Task, "%q is pinned to %v and then ends too late for %s. Change one of them.", t.ID, project.Minute(p.Start), held)
		}
		*t = t.Pin(p.Start)
		w.tasks[at.first].heldBy = ""
	}
	return w.checkPins()
}

// opens is the minute before which the day and its moments let a task not begin;
// 0 once the day has begun.
func (w *workload) opens(task int) int {
	if w.day.Begun {
		return 0
	}
	return w.project.Tasks[task].NotBefore
}

// checkPins finds a step that is pinned to a minute before it can begin, even if
// no station stands in its way.
func (w *workload) checkPins() error {
	first := w.freely()
	for _, p := range w.day.Pins {
		at, ok := w.find(p.Task)
		if ok && first != nil && first[at.first] > p.Start {
			return w.refuse("pins", p.Task, "%q is pinned to %v and cannot begin before %v. Pin it later, or begin earlier.",
				w.project.Tasks[at.first].ID, project.Minute(p.Start), project.Minute(first[at.first]))
		}
	}
	return nil
}

// freely gives the earliest starts if nothing had to end by a minute and could
// wait as long as it likes; nil if even then there are none, and for a day that
// has begun: its steps took other minutes than planned.
func (w *workload) freely() []int {
	if w.day.Begun {
		return nil
	}
	free := w.project
	free.Tasks = slices.Clone(free.Tasks)
	for i := range free.Tasks {
		free.Tasks[i].LatestEnd = project.None
	}
	free.Waits = slices.Clone(free.Waits)
	for k := range free.Waits {
		free.Waits[k].AtMost = project.None
	}
	first, _ := free.Earliest()
	return first
}

func (w *workload) addBars() error {
	for _, b := range w.day.Bars {
		if err := w.known(b.Task); err != nil {
			return err
		}
		if at, ok := w.find(b.Task); ok {
			for i := at.first; i <= at.last; i++ {
				t := &w.project.Tasks[i]
				t.Forbidden = append(t.Forbidden, project.Span{From: b.From, To: b.To})
			}
		}
	}
	return nil
}

// lasts is how many minutes a step's tasks take together.
func (w *workload) lasts(at span) int {
	minutes := 0
	for i := at.first; i <= at.last; i++ {
		minutes += w.project.Tasks[i].Minutes
	}
	return minutes
}

// addGiven moves the hands' part of a step to the station it is given to; if
// that is part of the hands, the step occupies both. What goes on without hands
// keeps nobody, whoever it is given to.
func (w *workload) addGiven() error {
	for _, g := range w.day.Given {
		if err := w.known(g.Task); err != nil {
			return err
		}
		at, ok := w.find(g.Task)
		if !ok {
			continue
		}
		if _, isThere := w.stations[g.To]; !isThere {
			return w.refuse("given", g.Task, "%q is given to %q, who is not there on this day. Add them to the stations.", w.project.Tasks[at.first].ID, g.To)
		}
		for i := at.first; i <= at.last; i++ {
			t := &w.project.Tasks[i]
			if w.isByHand(i) {
				w.tasks[i].own, w.tasks[i].givenTo = t.Needs, g.To
				t.Needs = w.withNeed(w.without(t.Needs, g.To), g.To, 1)
			}
		}
	}
	return nil
}

// isByHand tells whether a task is done by hand, be it only for the camera.
func (w *workload) isByHand(task int) bool {
	return w.tasks[task].step.HandsOn || w.project.Tasks[task].Setup != ""
}

// without is what a task needs beside the hands, if it is given to a station
// that is no part of them.
func (w *workload) without(needs []project.Need, to string) []project.Need {
	hands, ok := w.stations[Hands]
	if !ok || to == Hands || w.day.Stations[w.stations[to]].Within == Hands {
		return needs
	}
	return slices.DeleteFunc(slices.Clone(needs), func(n project.Need) bool { return n.Station == hands })
}
