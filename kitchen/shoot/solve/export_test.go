package solve

import (
	"context"
	"slices"

	"benchproof/kitchen/shoot/nogood"
	"benchproof/kitchen/shoot/project"
)

// Timeline is what of some stations is free.
type Timeline struct{ line timeline }

// NewTimeline is all that stations have.
func NewTimeline(stations []project.Station) *Timeline {
	in := instance{stations: stations}
	in.newBase()
	return &Timeline{in.base}
}

func uses(needs []project.Need) []use {
	var all []use
	for _, n := range needs {
		all = append(all, use{n.Station, n.Amount})
	}
	return all
}

// Earliest is the first start from a minute on, Never if there is none.
func (t *Timeline) Earliest(from, minutes int, needs []project.Need) int {
	return t.line.earliest(from, minutes, uses(needs))
}

// Latest is the last start up to a minute, −1 if there is none.
func (t *Timeline) Latest(upTo, minutes int, needs []project.Need) int {
	return t.line.latest(upTo, minutes, uses(needs))
}

// Occupy takes what is needed.
func (t *Timeline) Occupy(start, minutes int, needs []project.Need) {
	t.line.occupy(start, minutes, uses(needs))
}

// Copy is a timeline of its own, made in the memory of another one.
func (t *Timeline) Copy(into *Timeline) { into.line.copyFrom(&t.line) }

// Closed is the station that stands for forbidden times.
func Closed(spans []project.Span) project.Station { return closed(spans) }

// Delivered is when a station has given so many unit-minutes.
func Delivered(s project.Station, from, sum int) int { return delivered(s, from, sum) }

// Serial plans tasks in an order, each as early as it can be.
func Serial(p project.Project, order []int) (starts []int, ok bool) {
	in, ok := newInstance(p)
	if !ok {
		return nil, false
	}
	starts, ok = newDecoder(in).serial(in.inOrder(order))
	return slices.Clone(starts), ok
}

// Parallel plans minute by minute what fits, by rank.
func Parallel(p project.Project, rank []int) (starts []int, ok bool) {
	in, ok := newInstance(p)
	if !ok {
		return nil, false
	}
	starts, ok = newDecoder(in).parallel(rank)
	return slices.Clone(starts), ok
}

// Justify pushes a plan to the right and back to the left.
func Justify(p project.Project, starts []int) []int {
	in, _ := newInstance(p)
	return newDecoder(in).justify(starts)
}

// Turns swaps neighbours of a plan so many times; ok is false if the project is
// of another kind.
func Turns(p project.Project, starts []int, moves int, seed uint64) (better []int, ok bool) {
	in, _ := newInstance(p)
	t := newTurns(in, seed)
	if t == nil {
		return nil, false
	}
	return t.run(starts, moves, 0, func() bool { return false }), true
}

// Prove looks for a plan that ends by a minute. isExact is false if what set-ups
// need was left out.
func Prove(p project.Project, by, contradictions int) (starts []int, isRefuted, isExact bool) {
	in, ok := newInstance(p)
	if !ok {
		return nil, true, true
	}
	prover := newProver(in)
	outcome, starts, _ := prover.search(by, contradictions, func() bool { return false })
	return starts, outcome == nogood.Refuted || outcome == nogood.Impossible, prover.isExact
}

// ProveFrom begins with a plan, or nil for none, and searches for shorter ones,
// or, if low, for much shorter ones: it gives how long the shortest is then, Never
// if there is none, and what none is below.
func ProveFrom(p project.Project, starts []int, contradictions int, low bool) (makespan, bound int) {
	s := &Search{ctx: context.Background(), project: p, until: 10 * contradictions, makespan: never, beat: never}
	s.start()
	s.breed = newPopulation(s.in, 0)
	if starts != nil {
		s.take(starts)
	}
	s.proveFor(contradictions, low)
	return s.makespan, s.bound
}

// Mend looks so many times, in the neighbourhood of a plan, for one that ends by
// a minute.
func Mend(p project.Project, starts []int, by, times int, seed uint64) (found []int) {
	in, _ := newInstance(p)
	prover := newProver(in)
	m := newMender(prover, seed)
	for range times {
		if found, _ := m.mend(starts, by, func() bool { return false }); found != nil {
			return found
		}
	}
	return nil
}

// Rules rank the tasks, the lowest first.
func Rules(p project.Project) [][]int {
	in, _ := newInstance(p)
	return in.rules()
}

// Breed takes in plans, breeds so many more, and gives the makespans of those
// kept, in their order.
func Breed(p project.Project, plans [][]int, steps int, seed uint64) (makespans []int, members [][]int) {
	in, _ := newInstance(p)
	crowd := newPopulation(in, seed)
	for _, starts := range plans {
		crowd.add(starts, true)
	}
	crowd.run(steps, 0, func() bool { return false })
	for _, m := range crowd.members {
		makespans, members = append(makespans, m.makespan), append(members, m.starts)
	}
	return makespans, members
}
