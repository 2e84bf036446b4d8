package feasible

import (
	"fmt"
	"sort"

	"benchproof/kitchen/shoot/project"
)

// Check gives each rule that a plan breaks, as a sentence; nil if the plan is
// feasible. starts has one minute a task. It costs minutes × tasks.
func Check(p project.Project, starts []int) []string {
	if len(starts) != len(p.Tasks) {
		return []string{fmt.Sprintf("%d starts for %d tasks", len(starts), len(p.Tasks))}
	}
	var broken []string
	say := func(format string, args ...any) { broken = append(broken, fmt.Sprintf(format, args...)) }
	checkTasks(p, starts, say)
	checkWaits(p, starts, say)
	checkSetups(p, starts, say)
	checkStations(p, starts, say)
	return broken
}

func checkTasks(p project.Project, starts []int, say func(string, ...any)) {
	for i, t := range p.Tasks {
		end := starts[i] + t.Minutes
		if starts[i] < 0 || starts[i] < t.NotBefore {
			say("%s starts at %d, before %d", t.ID, starts[i], t.NotBefore)
		}
		if t.LatestEnd != project.None && end > t.LatestEnd {
			say("%s ends at %d, after %d", t.ID, end, t.LatestEnd)
		}
		for _, span := range t.Forbidden {
			for minute := starts[i]; minute < end; minute++ {
				if minute >= span.From && minute < span.To {
					say("%s runs in minute %d, which is forbidden", t.ID, minute)
					break
				}
			}
		}
	}
}

func checkWaits(p project.Project, starts []int, say func(string, ...any)) {
	for _, w := range p.Waits {
		before, after := p.Tasks[w.Before], p.Tasks[w.After]
		waits := starts[w.After] - (starts[w.Before] + before.Minutes)
		if waits < w.AtLeast {
			say("%s waits %d minutes after %s, at least %d are asked", after.ID, waits, before.ID, w.AtLeast)
		}
		if w.AtMost != project.None && waits > w.AtMost {
			say("%s waits %d minutes after %s, at most %d are allowed", after.ID, waits, before.ID, w.AtMost)
		}
	}
}

// checkSetups checks the film tasks: one at a time, and between two with
// different setups the set-up in one piece, with hands to do it.
func checkSetups(p project.Project, starts []int, say func(string, ...any)) {
	var film []int
	for i, t := range p.Tasks {
		if t.Setup != "" && t.Minutes > 0 {
			film = append(film, i)
		}
	}
	sort.SliceStable(film, func(a, b int) bool { return starts[film[a]] < starts[film[b]] })
	for k := 1; k < len(film); k++ {
		first, second := p.Tasks[film[k-1]], p.Tasks[film[k]]
		needed := 0
		if first.Setup != second.Setup {
			needed = p.Setups.Minutes[second.Setup]
			if p.Setups.OfFirst {
				needed = p.Setups.Minutes[first.Setup]
			}
		}
		from, to := starts[film[k-1]]+first.Minutes, starts[film[k]]
		if from > to {
			say("%s starts at %d, before %s ends at %d", second.ID, to, first.ID, from)
		} else if needed > 0 && !hasPiece(p, starts, from, to, needed) {
			say("no %d minutes for the set-up between %s and %s", needed, first.ID, second.ID)
		}
	}
}

// hasPiece tells whether there are so many minutes in a row, between two
// times, in which what a set-up needs is free.
func hasPiece(p project.Project, starts []int, from, to, needed int) bool {
	run := 0
	for minute := from; minute < to; minute++ {
		run++
		for _, n := range p.Setups.Needs {
			if used(p, starts, n.Station, minute)+n.Amount > capacity(p.Stations[n.Station], minute) {
				run = 0
			}
		}
		if run >= needed {
			return true
		}
	}
	return false
}

func checkStations(p project.Project, starts []int, say func(string, ...any)) {
	for s, station := range p.Stations {
		for minute := range lastEnd(p, starts) {
			if u, c := used(p, starts, s, minute), capacity(station, minute); u > c && u > 0 {
				say("minute %d needs %d of %s, there are %d", minute, u, station.Name, c)
				break
			}
		}
	}
}

// used is how much of a station the tasks occupy in the minute from t.
func used(p project.Project, starts []int, station, t int) int {
	sum := 0
	for i, task := range p.Tasks {
		if starts[i] <= t && t < starts[i]+task.Minutes {
			for _, n := range task.Needs {
				if n.Station == station {
					sum += n.Amount
				}
			}
		}
	}
	return sum
}

func capacity(station project.Station, t int) int {
	c := station.Capacity
	for _, change := range station.Changes {
		if change.From <= t {
			c = change.Capacity
		}
	}
	return c
}

func lastEnd(p project.Project, starts []int) int {
	end := 0
	for i, t := range p.Tasks {
		end = max(end, starts[i]+t.Minutes)
	}
	return end
}
