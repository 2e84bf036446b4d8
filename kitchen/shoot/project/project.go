package project

// None says that a limit is not set: no longest wait, no latest end.
const None = -1

// Limits that keep a slip of the pen from filling memory. They are far above
// any shoot day: a year of minutes, and a thousand tasks.
const (
	MaxMinutes = 600_000
	MaxTasks   = 2_000
	MaxUnits   = 1_000_000
)

// Project is what is to be planned. Tasks and stations are named by their index.
type Project struct {
	Stations []Station
	Tasks    []Task
	Waits    []Wait
	Setups   Setups
}

// Station is something that tasks occupy while they run: hands, oven, camera.
type Station struct {
	Name     string
	Capacity int     // 0 or more units, from minute zero
	Changes  []Level // in order of time; empty if the capacity never changes
}

// Level is a capacity that holds from a minute on.
type Level struct {
	From     int // minutes from zero, above 0
	Capacity int // 0 or more
}

// Task is a piece of work that, once begun, runs without a break.
type Task struct {
	ID        string // unique, not empty; errors name it
	Minutes   int    // 0 or more; a task of 0 minutes is a moment and occupies nothing
	Needs     []Need // each station once
	NotBefore int    // earliest start, 0 or more
	LatestEnd int    // None, or the minute by which the task has ended
	Forbidden []Span // times in which no part of the task may fall
	Setup     string // the camera setup a film task needs; "" for no film task
}

// Fixed tells whether the task can start at one minute only, and at which.
func (t Task) Fixed() (start int, ok bool) {
	return t.NotBefore, t.LatestEnd != None && t.LatestEnd-t.Minutes == t.NotBefore
}

// Pin returns the task with its start fixed to a minute.
func (t Task) Pin(start int) Task {
	t.NotBefore, t.LatestEnd = start, start+t.Minutes
	return t
}

// Need is how many units of a station a task occupies, above 0.
type Need struct{ Station, Amount int }

// Span is a stretch of time; To is excluded.
type Span struct{ From, To int }

// Wait lets task After start AtLeast minutes after the end of task Before, and
// at most AtMost minutes after it if that is not None.
type Wait struct {
	Before, After int
	AtLeast       int // 0 or more
	AtMost        int // None, or AtLeast or more
}

// Setups are the set-up minutes of camera setups. Tasks with a setup are filmed
// one at a time. Between two that follow each other with different setups, the
// minutes of the second's setup lie somewhere in one piece, and Needs are
// occupied in them. The first setup stands when the day begins.
type Setups struct {
	Minutes map[string]int // by Task.Setup; 0 for one that is not listed
	Needs   []Need         // who puts up the camera: usually one pair of hands
	OfFirst bool           // the minutes are those of the first of the two: time runs backwards
}

// Gap is the set-up time in minutes between a film task and the next, 0 if
// either needs no setup or both need the same.
func (s Setups) Gap(first, second string) int {
	switch {
	case first == "" || second == "" || first == second:
		return 0
	case s.OfFirst:
		return s.Minutes[first]
	}
	return s.Minutes[second]
}

// CapacityAt is the station's capacity in the minute that begins at t.
func (s Station) CapacityAt(t int) int {
	capacity := s.Capacity
	for _, level := range s.Changes {
		if level.From > t {
			break
		}
		capacity = level.Capacity
	}
	return capacity
}

// Peak is the most that the station ever has.
func (s Station) Peak() int {
	peak := s.Capacity
	for _, level := range s.Changes {
		peak = max(peak, level.Capacity)
	}
	return peak
}

// Makespan is the end of the last task, 0 without tasks. starts has one minute
// a task.
func (p Project) Makespan(starts []int) int {
	end := 0
	for i, start := range starts {
		end = max(end, start+p.Tasks[i].Minutes)
	}
	return end
}

// Horizon is a minute by which a best plan has ended, if there is any plan. In
// a best plan each start rests on a fixed minute or on a chain of tasks, waits
// and set-ups that ends in one, and no chain holds a task twice.
func (p Project) Horizon() int {
	anchor := 0
	for _, s := range p.Stations {
		for _, level := range s.Changes {
			anchor = max(anchor, level.From)
		}
	}
	longest := make([]int, len(p.Tasks))
	for _, t := range p.Tasks {
		anchor = max(anchor, t.NotBefore)
		for _, span := range t.Forbidden {
			anchor = max(anchor, span.To)
		}
	}
	for _, w := range p.Waits {
		longest[w.Before] = max(longest[w.Before], w.AtLeast)
	}
	sum := anchor
	for i, t := range p.Tasks {
		sum += t.Minutes + longest[i]
		if t.Setup != "" {
			sum += p.Setups.Minutes[t.Setup]
		}
	}
	return sum
}
