package solve_test

import (
	"fmt"

	"pgregory.net/rapid"

	"benchproof/kitchen/shoot/project"
)

// drawn says which rules a drawn project may have.
type drawn struct {
	tasks    int // at most
	longest  bool
	hours    bool // capacities that change, forbidden times
	limits   bool // earliest starts, latest ends, pins
	setups   bool
	setupUse bool
}

// everything is every rule there is.
func everything(tasks int) drawn { return drawn{tasks, true, true, true, true, true} }

// draw draws a project that passes Check, though there may be no plan.
func (d drawn) draw(t *rapid.T) project.Project {
	p := project.Project{}
	for r := range rapid.IntRange(1, 3).Draw(t, "stations") {
		s := project.Station{Name: fmt.Sprint("R", r), Capacity: rapid.IntRange(1, 3).Draw(t, "capacity")}
		if d.hours && rapid.Bool().Draw(t, "changes") {
			from := rapid.IntRange(1, 20).Draw(t, "from")
			s.Changes = []project.Level{
				{From: from, Capacity: rapid.IntRange(0, 3).Draw(t, "less")},
				{From: from + rapid.IntRange(1, 9).Draw(t, "for"), Capacity: rapid.IntRange(1, 3).Draw(t, "again")},
			}
		}
		p.Stations = append(p.Stations, s)
	}
	for i := range rapid.IntRange(1, d.tasks).Draw(t, "tasks") {
		p.Tasks = append(p.Tasks, d.drawTask(t, i, p.Stations))
	}
	for j := range p.Tasks {
		for i := range j {
			if rapid.IntRange(0, 3).Draw(t, "follows") != 0 {
				continue
			}
			w := project.Wait{Before: i, After: j, AtLeast: rapid.IntRange(0, 4).Draw(t, "shortest"), AtMost: project.None}
			if d.longest && rapid.IntRange(0, 2).Draw(t, "hurries") == 0 {
				w.AtMost = w.AtLeast + rapid.IntRange(0, 12).Draw(t, "longest")
			}
			p.Waits = append(p.Waits, w)
		}
	}
	if d.setups {
		p.Setups.Minutes = map[string]int{"overhead": rapid.IntRange(0, 5).Draw(t, "overhead"), "close": 3}
		if d.setupUse && rapid.Bool().Draw(t, "needs hands") {
			p.Setups.Needs = []project.Need{{Station: 0, Amount: 1}}
		}
	}
	return p
}

func (d drawn) drawTask(t *rapid.T, i int, stations []project.Station) project.Task {
	task := project.Task{ID: fmt.Sprint("t", i), Minutes: rapid.IntRange(0, 9).Draw(t, "minutes"), LatestEnd: project.None}
	for r, s := range stations {
		if amount := rapid.IntRange(0, s.Peak()).Draw(t, "need"); amount > 0 {
			task.Needs = append(task.Needs, project.Need{Station: r, Amount: amount})
		}
	}
	if d.limits && rapid.IntRange(0, 3).Draw(t, "is limited") == 0 {
		task.NotBefore = rapid.IntRange(0, 15).Draw(t, "not before")
		if rapid.Bool().Draw(t, "ends") {
			task.LatestEnd = task.NotBefore + task.Minutes + rapid.IntRange(0, 30).Draw(t, "room")
		}
	}
	if d.hours && rapid.IntRange(0, 5).Draw(t, "is barred") == 0 {
		from := rapid.IntRange(0, 25).Draw(t, "barred from")
		task.Forbidden = []project.Span{{From: from, To: from + rapid.IntRange(1, 8).Draw(t, "barred for")}}
	}
	if d.setups && rapid.IntRange(0, 2).Draw(t, "is filmed") == 0 {
		task.Setup = rapid.SampledFrom([]string{"overhead", "close"}).Draw(t, "setup")
	}
	return task
}
