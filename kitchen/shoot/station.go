package shoot

import (
	"slices"

	"benchproof/kitchen/shoot/project"
)

// Names of stations that a plan gives a meaning; all others are names of
// recipe.Stations or the creator's own.
const (
	Hands  = "hands"
	Camera = "camera"
	Light  = "light"
)

// Station is what steps occupy on the shoot day.
type Station struct {
	Name  string // "hands", "oven", "camera", "light", "helper" …
	Units int    // how many there are, or how much: 100 for an oven shared by percent
	Busy  []Busy // when some of it is not there
	Clean int    // minutes of cleaning down, by hand, when a batch leaves it; 0 for none
	// Within names the station that this one is part of, "" for none: a helper
	// is one of the hands. Steps that are given to it occupy both.
	Within string
}

// Busy is a time in which units of a station are not there: a lunch in the
// oven, a helper gone home, light that has gone.
type Busy struct {
	From, To int // minutes of the day's plan; To 0 means for the rest of the day
	Units    int // at least 1
}

// levels turns busy times into the capacities that they leave.
func (s Station) levels() project.Station {
	station := project.Station{Name: s.Name, Capacity: s.left(0)}
	var times []int
	for _, b := range s.Busy {
		times = append(times, b.From, b.To)
	}
	slices.Sort(times)
	last := station.Capacity
	for _, t := range slices.Compact(times) {
		if left := s.left(t); t > 0 && left != last {
			station.Changes = append(station.Changes, project.Level{From: t, Capacity: left})
			last = left
		}
	}
	return station
}

// left is how many units there are at a minute.
func (s Station) left(minute int) int {
	left := s.Units
	for _, b := range s.Busy {
		if b.From <= minute && (minute < b.To || b.To == 0) {
			left -= b.Units
		}
	}
	return max(0, left)
}
