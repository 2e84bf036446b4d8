package solve_test

import (
	"fmt"
	"slices"

	"benchproof/kitchen/shoot/project"
)

// sheet is a project as it is written down for a test.
type sheet struct{ project.Project }

// station adds a station; changes are pairs of a minute and the units from then
// on.
func (s *sheet) station(name string, units int, changes ...int) {
	added := project.Station{Name: name, Capacity: units}
	for k := 0; k+1 < len(changes); k += 2 {
		added.Changes = append(added.Changes, project.Level{From: changes[k], Capacity: changes[k+1]})
	}
	s.Stations = append(s.Stations, added)
}

// task adds a task that takes one unit of each station named, as often as it is
// named, and gives its number.
func (s *sheet) task(minutes int, uses ...string) int {
	t := project.Task{ID: fmt.Sprint("task ", len(s.Tasks)), Minutes: minutes, LatestEnd: project.None}
	for r, station := range s.Stations {
		units := 0
		for _, name := range uses {
			if name == station.Name {
				units++
			}
		}
		if units > 0 {
			t.Needs = append(t.Needs, project.Need{Station: r, Amount: units})
		}
	}
	s.Tasks = append(s.Tasks, t)
	return len(s.Tasks) - 1
}

// shot adds a task that is filmed from a setup.
func (s *sheet) shot(setup string, minutes int, uses ...string) int {
	i := s.task(minutes, uses...)
	s.Tasks[i].Setup = setup
	return i
}

// share makes a task take so many units of a station.
func (s *sheet) share(task int, station string, units int) {
	r := slices.IndexFunc(s.Stations, func(x project.Station) bool { return x.Name == station })
	s.Tasks[task].Needs = append(s.Tasks[task].Needs, project.Need{Station: r, Amount: units})
}

// row lets each task wait for the one before it.
func (s *sheet) row(tasks ...int) {
	for k := 1; k < len(tasks); k++ {
		s.wait(tasks[k-1], tasks[k], 0, project.None)
	}
}

func (s *sheet) wait(before, after, atLeast, atMost int) {
	s.Waits = append(s.Waits, project.Wait{Before: before, After: after, AtLeast: atLeast, AtMost: atMost})
}

func (s *sheet) pin(task, start int) { s.Tasks[task] = s.Tasks[task].Pin(start) }

func (s *sheet) bar(task, from, to int) {
	s.Tasks[task].Forbidden = append(s.Tasks[task].Forbidden, project.Span{From: from, To: to})
}

// setup says how long it takes to put up a setup, and what that uses.
func (s *sheet) setup(name string, minutes int, uses ...string) {
	if s.Setups.Minutes == nil {
		s.Setups.Minutes = map[string]int{}
	}
	s.Setups.Minutes[name] = minutes
	s.Setups.Needs = nil
	for r, station := range s.Stations {
		if slices.Contains(uses, station.Name) {
			s.Setups.Needs = append(s.Setups.Needs, project.Need{Station: r, Amount: 1})
		}
	}
}
