package project

import (
	"fmt"
	"strings"
)

// Check tells what is wrong with the project so that it cannot be planned:
// unknown stations or tasks, needs above a station's capacity, cycles, and
// waits or limits that contradict each other. It returns nil or a *Refusal, a
// fault.Invalid that names the tasks. That a project passes does not mean that there is a
// plan: stations may still stand in the way.
func (p Project) Check() error {
	for _, check := range []func() error{p.checkTasks, p.checkStations, p.checkNeeds, p.checkWaits, p.checkCycle, p.checkTimes} {
		if err := check(); err != nil {
			return err
		}
	}
	return nil
}

func (p Project) checkTasks() error {
	if len(p.Tasks) > MaxTasks {
		return Refuse("tasks", nil, "There are %d tasks; plan at most %d at once.", len(p.Tasks), MaxTasks)
	}
	seen := map[string]bool{}
	for i, t := range p.Tasks {
		switch {
		case t.ID == "":
			return Refuse("tasks", []int{i}, "Task %d has no id. Give each task an id of its own.", i+1)
		case seen[t.ID]:
			return Refuse(t.ID, []int{i}, "Two tasks have the id %q. Give each task an id of its own.", t.ID)
		case t.Minutes < 0 || t.Minutes > MaxMinutes:
			return Refuse(t.ID, []int{i}, "Task %q takes %d minutes. Minutes are from 0 to %d.", t.ID, t.Minutes, MaxMinutes)
		case t.NotBefore < 0 || t.NotBefore > MaxMinutes:
			return Refuse(t.ID, []int{i}, "Task %q is not to start before %v. Minutes are from 0 to %d.", t.ID, Minute(t.NotBefore), MaxMinutes)
		case t.LatestEnd != None && t.LatestEnd < t.NotBefore+t.Minutes:
			return Refuse(t.ID, []int{i}, "Task %q takes %d minutes and starts at %v or later, so it cannot have ended by %v. Give it more time.",
				t.ID, t.Minutes, Minute(t.NotBefore), Minute(t.LatestEnd))
		}
		seen[t.ID] = true
		for _, span := range t.Forbidden {
			if span.From >= span.To || span.To > MaxMinutes {
				return Refuse(t.ID, []int{i}, "Task %q has a forbidden time from %v to %v. It must end after it begins, by minute %d.",
					t.ID, Minute(span.From), Minute(span.To), MaxMinutes)
			}
		}
	}
	for name, minutes := range p.Setups.Minutes {
		if minutes < 0 || minutes > MaxMinutes {
			return Refuse("setups", nil, "Setup %q takes %d minutes. Minutes are from 0 to %d.", name, minutes, MaxMinutes)
		}
	}
	return nil
}

func (p Project) checkStations() error {
	seen := map[string]bool{}
	for _, s := range p.Stations {
		if s.Name == "" || seen[s.Name] {
			return Refuse("stations", nil, "Station %q has no name of its own. Name each station once.", s.Name)
		}
		seen[s.Name] = true
		if s.Capacity < 0 || s.Peak() > MaxUnits {
			return Refuse("stations", nil, "Station %q has a capacity of %d. Capacities are from 0 to %d.", s.Name, s.Capacity, MaxUnits)
		}
		last := 0
		for _, level := range s.Changes {
			if level.From <= last || level.From > MaxMinutes || level.Capacity < 0 {
				return Refuse("stations", nil, "Station %q changes to %d at %v. Changes come in order of time, from minute 1 to %d, to 0 or more.",
					s.Name, level.Capacity, Minute(level.From), MaxMinutes)
			}
			last = level.From
		}
	}
	return nil
}

func (p Project) checkNeeds() error {
	for i, t := range p.Tasks {
		if err := p.checkNeedsOf(t.ID, []int{i}, t.Needs); err != nil {
			return err
		}
	}
	return p.checkNeedsOf("setting up", nil, p.Setups.Needs)
}

func (p Project) checkNeedsOf(id string, tasks []int, needs []Need) error {
	seen := map[int]bool{}
	for _, n := range needs {
		switch {
		case n.Station < 0 || n.Station >= len(p.Stations):
			return Refuse(id, tasks, "Task %q uses a station that is not listed. Add it to the stations or correct the name.", id)
		case seen[n.Station]:
			return Refuse(id, tasks, "Task %q names station %q twice. Name it once with the whole amount.", id, p.Stations[n.Station].Name)
		case n.Amount <= 0:
			return Refuse(id, tasks, "Task %q needs %d of station %q. Need 1 or more, or leave the station out.", id, n.Amount, p.Stations[n.Station].Name)
		case n.Amount > p.Stations[n.Station].Peak():
			return Refuse(id, tasks, "Task %q needs %d of station %q, which never has more than %d. Need less or add to the station.",
				id, n.Amount, p.Stations[n.Station].Name, p.Stations[n.Station].Peak())
		}
		seen[n.Station] = true
	}
	return nil
}

func (p Project) checkWaits() error {
	for _, w := range p.Waits {
		if w.Before < 0 || w.Before >= len(p.Tasks) || w.After < 0 || w.After >= len(p.Tasks) {
			return Refuse("tasks", nil, "A wait names a task that is not listed.")
		}
		before, after, about := p.Tasks[w.Before].ID, p.Tasks[w.After].ID, []int{w.Before, w.After}
		switch {
		case w.AtLeast < 0 || w.AtLeast > MaxMinutes || w.AtMost < None || w.AtMost > MaxMinutes:
			return Refuse(after, about, "The wait between %q and %q is not from 0 to %d minutes.", before, after, MaxMinutes)
		case w.AtMost != None && w.AtMost < w.AtLeast:
			return Refuse(after, about, "%q is to wait at least %d and at most %d minutes after %q: that cannot be met. Make the longest wait the longer one.",
				after, w.AtLeast, w.AtMost, before)
		}
	}
	return nil
}

// checkCycle finds tasks that wait for each other in a ring, whatever the
// minutes.
func (p Project) checkCycle() error {
	next := make([][]int, len(p.Tasks))
	for _, w := range p.Waits {
		next[w.Before] = append(next[w.Before], w.After)
	}
	const open, done = 1, 2
	state, path := make([]int, len(p.Tasks)), []int{}
	var visit func(i int) []int
	visit = func(i int) []int {
		state[i], path = open, append(path, i)
		for _, j := range next[i] {
			if state[j] == open {
				return append(path[indexOf(path, j):], j)
			}
			if state[j] == 0 {
				if ring := visit(j); ring != nil {
					return ring
				}
			}
		}
		state[i], path = done, path[:len(path)-1]
		return nil
	}
	for i := range p.Tasks {
		if state[i] != 0 {
			continue
		}
		if ring := visit(i); ring != nil {
			return Refuse(p.Tasks[ring[0]].ID, ring, "These tasks wait for each other in a cycle: %s. Remove one of the waits.", p.chain(ring))
		}
	}
	return nil
}

// checkTimes finds waits and limits that contradict each other even with
// unlimited stations.
func (p Project) checkTimes() error {
	_, ring := p.Earliest()
	if ring == nil {
		return nil
	}
	about := once(ring)
	return Refuse(p.Tasks[about[0]].ID, about, "The waits and times of these tasks cannot all be met: %s. Allow a longer wait or a later end.", p.names(about))
}

// names gives the quoted ids of tasks, in their order.
func (p Project) names(tasks []int) string {
	var names []string
	for _, i := range tasks {
		names = append(names, fmt.Sprintf("%q", p.Tasks[i].ID))
	}
	return strings.Join(names, ", ")
}

func (p Project) chain(tasks []int) string {
	var b strings.Builder
	for k, i := range tasks {
		if k > 0 {
			b.WriteString(" → ")
		}
		fmt.Fprintf(&b, "%q", p.Tasks[i].ID)
	}
	return b.String()
}

func indexOf(list []int, v int) int {
	for k, w := range list {
		if w == v {
			return k
		}
	}
	return -1
}
