package shoot

import (
	"slices"

	"benchproof/kitchen/shoot/project"
)

// apply puts into the day what has really been done by now.
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
	r.settle()
	r.hold()
	r.relax()
	return nil
}

// begin fixes the tasks of a step that has begun. What is left of a running one
// is in its last task. What was done needs nothing any more; its cleaning down
// followed at once.
func (r *replan) begin(at span, d Done) {
	start := d.From
	for i := at.first; i <= at.last; i++ {
		t := &r.project.Tasks[i]
		switch isLast := i == at.last; {
		case !d.IsRunning:
			t.Needs = nil
			t.Minutes = min(t.Minutes, d.To-start)
			if isLast {
				t.Minutes = d.To - start
			}
		case isLast:
			t.Minutes = max(t.Minutes, r.now-start)
		}
		r.fix(i, start)
		start += t.Minutes
	}
	for i, t := range r.tasks {
		if t.part == cleaning && t.key == d.Task && !d.IsRunning {
			r.fix(i, start)
		}
	}
}

// fix is when a task began.
func (r *replan) fix(i, start int) {
	t := &r.project.Tasks[i]
	r.past[i], t.Forbidden = true, nil
	*t = t.Pin(start)
	r.tasks[i].minutes = Minutes{From: t.Minutes, Likely: t.Minutes, To: t.Minutes}
}

// settle takes as it is what nobody planned: stations that had to do with more
// than there is, and several things filmed at once. What is over holds nothing
// up; what goes on has what it uses as far as there is enough.
func (r *replan) settle() {
	var running []int
	for i, t := range r.project.Tasks {
		switch {
		case !r.past[i]:
		case t.NotBefore+t.Minutes > r.now:
			running = append(running, i)
		default:
			r.project.Tasks[i].Needs = nil
		}
	}
	slices.SortStableFunc(running, func(a, b int) int { return r.project.Tasks[a].NotBefore - r.project.Tasks[b].NotBefore })
	for k := range r.project.Stations {
		r.forget(k, running)
	}
	for n, i := range running {
		r.fit(i, running[:n])
	}
	r.settleCamera()
}

// forget lets a station have had before now what those that run have taken.
func (r *replan) forget(station int, running []int) {
	s := &r.project.Stations[station]
	taken := 0
	for _, i := range running {
		taken += r.project.Tasks[i].Units(station)
	}
	before, now := max(s.Peak(), taken), s.CapacityAt(r.now)
	if taken == 0 || r.now == 0 || before == now && s.Capacity == now && len(s.Changes) == 0 {
		return
	}
	changes := []project.Level{{From: r.now, Capacity: now}}
	for _, level := range s.Changes {
		if level.From > r.now {
			changes = append(changes, level)
		}
	}
	s.Capacity, s.Changes = before, changes
}

// fit leaves a running task what there is for it from now on, beside those that
// began before it.
func (r *replan) fit(i int, others []int) {
	t := &r.project.Tasks[i]
	t.Needs = slices.DeleteFunc(slices.Clone(t.Needs), func(n project.Need) bool {
		for minute := r.now; minute < t.NotBefore+t.Minutes; minute++ {
			used := n.Amount
			for _, j := range others {
				if other := r.project.Tasks[j]; minute < other.NotBefore+other.Minutes {
					used += other.Units(n.Station)
				}
			}
			if used > r.project.Stations[n.Station].CapacityAt(minute) {
				return true
			}
		}
		return false
	})
}

// settleCamera leaves the camera where it was last, if anything is left to film:
// on what runs, or on what was done, until now.
func (r *replan) settleCamera() {
	last, isLeft := -1, false
	for i, t := range r.project.Tasks {
		if t.Setup == "" || t.Minutes == 0 {
			continue
		}
		isLeft = isLeft || !r.past[i]
		if r.past[i] && (last < 0 || t.NotBefore+t.Minutes > r.project.Tasks[last].NotBefore+r.project.Tasks[last].Minutes) {
			last = i
		}
	}
	if last < 0 {
		return
	}
	setup, ended := r.project.Tasks[last].Setup, r.project.Tasks[last].LatestEnd <= r.now
	for i := range r.project.Tasks {
		if r.past[i] && (ended || i != last) {
			r.tasks[i].setup, r.project.Tasks[i].Setup = r.project.Tasks[i].Setup, ""
		}
	}
	if ended && isLeft && r.now > 0 {
		r.tasks = append(r.tasks, task{part: standing, minutes: Minutes{From: 1, Likely: 1, To: 1}})
		r.past = append(r.past, true)
		r.project.Tasks = append(r.project.Tasks, project.Task{ID: "the camera where it stands", Minutes: 1, Setup: setup}.Pin(r.now-1))
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
