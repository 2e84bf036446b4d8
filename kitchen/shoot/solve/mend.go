package solve

import (
	"math/rand/v2"

	"benchproof/kitchen/shoot/nogood"
)

// mender shortens a plan part by part (large-neighbourhood search): most of it
// is held, the rest is searched anew.
type mender struct {
	prover *prover
	random *rand.Rand
	free   float64 // share of the tasks that are searched anew
}

// patience is how many contradictions one part may take.
const patience = 300

func newMender(p *prover, seed uint64) *mender {
	return &mender{prover: p, random: rand.New(rand.NewPCG(seed, 0x3e9d)), free: 0.25}
}

// mend looks for a plan that ends by a minute, in the neighbourhood of another.
// The share of the tasks that are freed grows while their search comes to an
// end, and shrinks while it does not.
func (m *mender) mend(starts []int, by int, stop func() bool) (found []int, met int) {
	hold := []nogood.Lit{m.prover.end.AtMost(by)}
	if m.prover.hasOrder() {
		hold = m.holdOrder(hold, starts)
	} else {
		hold = m.holdTimes(hold, starts, by)
	}
	outcome, met := m.prover.model.Search(hold, patience, stop)
	switch outcome {
	case nogood.Found:
		return m.prover.values(), met
	case nogood.OutOfSteps:
		m.free = max(0.05, m.free*0.98)
	default:
		m.free = min(0.9, m.free*1.01)
	}
	return nil, met
}

// hasOrder tells whether the pairs say most of what a plan is.
func (p *prover) hasOrder() bool { return len(p.pairs) > 2*p.in.n }

// holdOrder holds the order of all pairs but those with a free task.
func (m *mender) holdOrder(hold []nogood.Lit, starts []int) []nogood.Lit {
	isFree := m.pick(starts)
	for _, c := range m.prover.pairs {
		if isFree[c.first] || isFree[c.second] {
			continue
		}
		l := c.isFirst.AtMost(0)
		if starts[c.first] < starts[c.second] {
			l = c.isFirst.AtLeast(1)
		}
		hold = append(hold, l)
	}
	return hold
}

// holdTimes holds what ends before a stretch of time, and keeps what starts
// after it from starting later than now.
func (m *mender) holdTimes(hold []nogood.Lit, starts []int, by int) []nogood.Lit {
	length := max(2, int(m.free*float64(by)))
	from := m.random.IntN(by+1) - length/2
	for i, s := range starts {
		v := m.prover.starts[i]
		switch {
		case s+m.prover.in.minutes[i] <= from:
			hold = append(hold, v.AtLeast(s), v.AtMost(s))
		case s >= from+length:
			hold = append(hold, v.AtMost(s))
		}
	}
	return hold
}

// pick frees tasks that stand together in time, that share stations, or that
// chance puts together.
func (m *mender) pick(starts []int) []bool {
	in := m.prover.in
	isFree := make([]bool, in.n)
	switch m.random.IntN(3) {
	case 0: // a stretch of the plan
		order := in.orderOf(starts)
		count := max(2, int(m.free*float64(in.n)))
		from := m.random.IntN(max(1, in.n-count+1))
		for _, i := range order[from:min(in.n, from+count)] {
			isFree[i] = true
		}
	case 1: // some stations
		for r := range in.stations {
			if m.random.Float64() >= m.free {
				continue
			}
			for i := range in.n {
				for _, u := range in.uses[i] {
					isFree[i] = isFree[i] || u.station == r
				}
			}
		}
	default:
		for i := range isFree {
			isFree[i] = m.random.Float64() < m.free
		}
	}
	return isFree
}

// base is a plan to mend: the best one every other time, else one of the best
// of the population.
func (m *mender) base(best []int, p *population) []int {
	if m.random.IntN(4) > 0 || len(p.members) == 0 {
		return best
	}
	return p.members[m.random.IntN(min(8, len(p.members)))].starts
}
