package solve

import (
	"slices"

	"benchproof/kitchen/shoot/project"
)

// bound gives a makespan that no plan can beat: the longest chain of tasks and
// waits, and for each station the load of the tasks that start late enough and
// have enough to follow, between that head and that tail (energetic reasoning
// on the intervals of heads and tails).
func (in *instance) bound() int {
	best := 0
	for i := range in.n {
		best = max(best, in.first[i]+in.tail[i])
	}
	for r := range in.stations {
		best = max(best, in.stationBound(r))
	}
	return best
}

// load is the part of a station that one task takes, between its head and what
// must follow its end.
type load struct{ head, minutes, amount, queue int }

func (in *instance) stationBound(station int) int {
	var loads []load
	for i := range in.n {
		for _, u := range in.uses[i] {
			if u.station == station && in.minutes[i] > 0 {
				loads = append(loads, load{in.first[i], in.minutes[i], u.amount, in.tail[i] - in.minutes[i]})
			}
		}
	}
	slices.SortFunc(loads, func(a, b load) int { return b.queue - a.queue })
	heads := make([]int, 0, len(loads))
	for _, l := range loads {
		heads = append(heads, l.head)
	}
	slices.Sort(heads)
	best := 0
	setups := in.leastSetups(station)
	for k, head := range slices.Compact(heads) {
		sum := 0
		for at, l := range loads { // the longest queue first: the rest has at least this one
			if l.head < head {
				continue
			}
			sum += l.minutes * l.amount
			if k == 0 && at+1 == len(loads) {
				sum += setups // between the first and the last task, so they count with all of them
			}
			best = max(best, delivered(in.stations[station], head, sum)+l.queue)
		}
	}
	return best
}

// leastSetups is the least unit-minutes that set-ups take of a station: each
// setup but one is put up at least once. It is 0 if a film task does not use
// the station.
func (in *instance) leastSetups(station int) int {
	amount := 0
	for _, u := range in.setupUse {
		if u.station == station {
			amount = u.amount
		}
	}
	seen := map[string]bool{}
	sum, most := 0, 0
	for i, t := range in.project.Tasks {
		if !in.filmed(i) {
			continue
		}
		if !slices.ContainsFunc(in.uses[i], func(u use) bool { return u.station == station }) {
			return 0
		}
		if !seen[t.Setup] {
			seen[t.Setup] = true
			minutes := in.project.Setups.Minutes[t.Setup]
			sum, most = sum+minutes, max(most, minutes)
		}
	}
	if station == in.camera {
		amount = 1
	}
	return (sum - most) * amount
}

// delivered is the first minute by which a station, from a minute on, can have
// given so many unit-minutes; 0 if it never can.
func delivered(s project.Station, from, sum int) int {
	capacity, at := s.CapacityAt(from), from
	for _, level := range s.Changes {
		if level.From <= from {
			continue
		}
		if capacity > 0 && (level.From-at)*capacity >= sum {
			break
		}
		sum -= (level.From - at) * capacity
		capacity, at = level.Capacity, level.From
	}
	if capacity == 0 {
		return 0
	}
	return at + (sum+capacity-1)/capacity
}

// Bound gives a makespan that no plan of a checked project can beat. It costs
// next to nothing; Plan finds better ones.
func Bound(p project.Project) int {
	in, _ := newInstance(p)
	return in.bound()
}
