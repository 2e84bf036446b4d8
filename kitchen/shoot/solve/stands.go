package solve

import "slices"

// holds tells whether starts are a plan as they stand: every wait and window is
// kept, every station has enough, and between film tasks there is time for the
// set-ups, each put up as early as it can be.
func (in *instance) holds(starts []int) bool {
	if len(starts) != in.n {
		return false
	}
	line := timeline{}
	line.copyFrom(&in.base)
	for i, start := range starts {
		if start < in.first[i] || start > in.last[i] || in.fixed[i] && start != in.first[i] {
			return false
		}
		for _, a := range in.out[i] {
			if starts[a.task] < start+a.lag {
				return false
			}
		}
	}
	for i, start := range starts {
		if in.fixed[i] {
			continue // it is in the base
		}
		if line.earliest(start, in.minutes[i], in.uses[i]) != start {
			return false
		}
		line.occupy(start, in.minutes[i], in.uses[i])
	}
	return in.hasSetups(starts, &line)
}

// hasSetups tells whether every set-up that the base does not hold already finds
// its time between film tasks.
func (in *instance) hasSetups(starts []int, line *timeline) bool {
	if !in.gaps {
		return true
	}
	var film []int
	for i := range starts {
		if in.filmed(i) {
			film = append(film, i)
		}
	}
	slices.SortFunc(film, func(a, b int) int { return starts[a] - starts[b] })
	for k := 1; k < len(film); k++ {
		a, b := film[k-1], film[k]
		if in.fixed[a] && in.fixed[b] {
			continue
		}
		gap := in.gap(a, b)
		at := line.earliest(starts[a]+in.minutes[a], gap, in.setupUse)
		if at+gap > starts[b] {
			return false
		}
		line.occupy(at, gap, in.setupUse)
	}
	return true
}
