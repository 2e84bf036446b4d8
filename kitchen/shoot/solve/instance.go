package solve

import (
	"math"
	"slices"

	"benchproof/kitchen/shoot/project"
)

// Never is a minute that does not come.
const Never = math.MaxInt / 4

const never = Never

// arc lets a task start at least lag minutes after another one starts.
type arc struct{ task, lag int }

// instance is a project made ready for planning: forbidden times and the one
// camera have become stations, limits have become windows.
type instance struct {
	project  project.Project
	n        int
	minutes  []int
	uses     [][]use
	stations []project.Station // the project's, then those that stand for other rules
	out, in  [][]arc           // every arc, from the task's start and to it
	before   [][]int           // tasks that must have ended before it starts
	after    [][]int
	first    []int // earliest start by arcs alone
	last     []int // latest start by arcs alone
	tail     []int // least minutes from the task's start to the end of the plan
	fixed    []bool
	horizon  int
	bounded  bool // some task has a latest start above the horizon's own
	maxWaits bool // some wait has a longest
	gaps     bool // some set-up takes time
	setupUse []use
	base     timeline // all stations with the fixed tasks in them
	film     []int    // fixed film tasks, in order of time
	camera   int      // the station that stands for filming one at a time, −1 for none
}

// newInstance makes a checked project ready. ok is false if the fixed tasks
// get in each other's way, so that there is no plan at all.
func newInstance(p project.Project) (in *instance, ok bool) {
	in = &instance{project: p, n: len(p.Tasks), horizon: p.Horizon(), stations: slices.Clone(p.Stations)}
	in.out, in.in = make([][]arc, in.n), make([][]arc, in.n)
	in.before, in.after = make([][]int, in.n), make([][]int, in.n)
	for _, t := range p.Tasks {
		in.minutes = append(in.minutes, t.Minutes)
		uses := []use{}
		for _, n := range t.Needs {
			uses = append(uses, use{n.Station, n.Amount})
		}
		in.uses = append(in.uses, uses)
	}
	for _, n := range p.Setups.Needs {
		in.setupUse = append(in.setupUse, use{n.Station, n.Amount})
	}
	in.addRules()
	in.addArcs()
	in.addWindows()
	in.newBase()
	return in, in.placeFixed()
}

// addRules turns forbidden times and filming one at a time into stations.
func (in *instance) addRules() {
	in.camera = -1
	for i, t := range in.project.Tasks {
		if t.Setup != "" && t.Minutes > 0 {
			if in.camera < 0 {
				in.camera = len(in.stations)
				in.stations = append(in.stations, project.Station{Capacity: 1})
			}
			in.uses[i] = append(in.uses[i], use{in.camera, 1})
			in.gaps = in.gaps || in.project.Setups.Minutes[t.Setup] > 0
		}
		if len(t.Forbidden) > 0 {
			in.uses[i] = append(in.uses[i], use{len(in.stations), 1})
			in.stations = append(in.stations, closed(t.Forbidden))
		}
	}
}

// closed is a station of one unit that has none in the given times.
func closed(spans []project.Span) project.Station {
	sorted := slices.Clone(spans)
	slices.SortFunc(sorted, func(a, b project.Span) int { return a.From - b.From })
	s := project.Station{Capacity: 1}
	set := func(from, capacity int) {
		if from <= 0 {
			s.Capacity = capacity
			return
		}
		s.Changes = append(s.Changes, project.Level{From: from, Capacity: capacity})
	}
	for k := 0; k < len(sorted); {
		span := sorted[k]
		for k++; k < len(sorted) && sorted[k].From <= span.To; k++ {
			span.To = max(span.To, sorted[k].To)
		}
		if span.To > 0 {
			set(span.From, 0)
			set(span.To, 1)
		}
	}
	return s
}

func (in *instance) addArcs() {
	for _, a := range in.project.Arcs() {
		if a.From != project.Origin && a.To != project.Origin {
			in.out[a.From] = append(in.out[a.From], arc{a.To, a.Lag})
			in.in[a.To] = append(in.in[a.To], arc{a.From, a.Lag})
		}
	}
	for _, w := range in.project.Waits {
		in.after[w.Before] = append(in.after[w.Before], w.After)
		in.before[w.After] = append(in.before[w.After], w.Before)
		in.maxWaits = in.maxWaits || w.AtMost != project.None
	}
}

func (in *instance) addWindows() {
	in.first, _ = in.project.Earliest()
	in.last, in.tail = make([]int, in.n), slices.Clone(in.minutes)
	for i, t := range in.project.Tasks {
		in.last[i] = in.horizon - t.Minutes
		if t.LatestEnd != project.None {
			in.last[i] = min(in.last[i], t.LatestEnd-t.Minutes)
			in.bounded = true
		}
	}
	in.bounded = in.bounded || in.maxWaits
	for changed := true; changed; {
		changed = false
		for i := range in.n {
			for _, a := range in.out[i] {
				if last := in.last[a.task] - a.lag; last < in.last[i] {
					in.last[i], changed = last, true
				}
				if tail := in.tail[a.task] + a.lag; tail > in.tail[i] {
					in.tail[i], changed = tail, true
				}
			}
		}
	}
	in.fixed = make([]bool, in.n)
	for i, t := range in.project.Tasks {
		start, ok := t.Fixed()
		in.fixed[i] = ok && start == in.first[i]
	}
}

// newBase lays out the stations' capacities over time.
func (in *instance) newBase() {
	in.base = timeline{stations: len(in.stations), at: []int{0}, free: make([]int, len(in.stations))}
	for _, s := range in.stations {
		for _, level := range s.Changes {
			in.base.cut(level.From)
		}
	}
	for k, minute := range in.base.at {
		for r, s := range in.stations {
			in.base.free[k*len(in.stations)+r] = s.CapacityAt(minute)
		}
	}
}

// placeFixed puts the fixed tasks into the base, with the set-ups between them.
func (in *instance) placeFixed() bool {
	for i, isFixed := range in.fixed {
		if !isFixed {
			continue
		}
		if in.base.earliest(in.first[i], in.minutes[i], in.uses[i]) != in.first[i] {
			return false
		}
		in.base.occupy(in.first[i], in.minutes[i], in.uses[i])
		if in.filmed(i) {
			in.film = append(in.film, i)
		}
	}
	slices.SortFunc(in.film, func(a, b int) int { return in.first[a] - in.first[b] })
	for k := 1; k < len(in.film); k++ {
		a, b := in.film[k-1], in.film[k]
		gap, end := in.gap(a, b), in.first[a]+in.minutes[a]
		at := in.base.earliest(end, gap, in.setupUse)
		if at+gap > in.first[b] {
			return false
		}
		in.base.occupy(at, gap, in.setupUse)
	}
	return true
}

// filmed tells whether a task takes part in set-ups.
func (in *instance) filmed(i int) bool {
	return in.gaps && in.project.Tasks[i].Setup != "" && in.minutes[i] > 0
}

func (in *instance) gap(first, second int) int {
	return in.project.Setups.Gap(in.project.Tasks[first].Setup, in.project.Tasks[second].Setup)
}
