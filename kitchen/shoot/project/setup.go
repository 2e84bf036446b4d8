package project

import "slices"

// SetupTime is when a camera setup is put up: minutes From to To, for a film
// task.
type SetupTime struct{ Task, From, To int }

// SetupTimes gives, in order of time, when each setup of a feasible plan can be
// put up: as early as what it needs is free after the film task before.
func (p Project) SetupTimes(starts []int) []SetupTime {
	var film []int
	for i, t := range p.Tasks {
		if t.Setup != "" && t.Minutes > 0 {
			film = append(film, i)
		}
	}
	slices.SortFunc(film, func(a, b int) int { return starts[a] - starts[b] })
	var all []SetupTime
	for k := 1; k < len(film); k++ {
		first, second := film[k-1], film[k]
		gap := p.Setups.Gap(p.Tasks[first].Setup, p.Tasks[second].Setup)
		if gap == 0 {
			continue
		}
		from := p.freeFrom(starts, starts[first]+p.Tasks[first].Minutes, starts[second], gap)
		all = append(all, SetupTime{second, from, from + gap})
	}
	return all
}

// freeFrom is the first minute from which what a set-up needs is free for so
// long; the last possible one if the plan leaves none.
func (p Project) freeFrom(starts []int, from, to, minutes int) int {
	at := from
	for minute := from; minute < to && minute < at+minutes; minute++ {
		for _, n := range p.Setups.Needs {
			used := 0
			for i, t := range p.Tasks {
				if starts[i] <= minute && minute < starts[i]+t.Minutes {
					used += t.Units(n.Station)
				}
			}
			if used+n.Amount > p.Stations[n.Station].CapacityAt(minute) {
				at = minute + 1
			}
		}
	}
	return min(at, to-minutes)
}

// Units is how much of a station the task needs.
func (t Task) Units(station int) int {
	for _, n := range t.Needs {
		if n.Station == station {
			return n.Amount
		}
	}
	return 0
}
