package nogood

// Outcome is how a search ended.
type Outcome int

// The outcomes.
const (
	OutOfSteps Outcome = iota // neither found nor refuted
	Found                     // Value gives the solution
	Refuted                   // there is none with the assumptions
	Impossible                // there is none at all
)

// Search looks for values that satisfy all constraints and, for this call, the
// assumptions. It stops after so many contradictions, or when stop says so,
// which is asked now and then. What it learned serves later searches. It gives
// the outcome and the contradictions met.
func (m *Model) Search(assumptions []Lit, contradictions int, stop func() bool) (outcome Outcome, met int) {
	m.backTo(0)
	m.assumed, m.granted = 0, 0
	if m.forget == 0 {
		m.forget, m.analyse.clauseStep = 4000, 1
	}
	for round := 1; met < contradictions; round++ {
		if len(m.learned) > m.forget {
			m.clear()
			m.forget += m.forget / 10
		}
		outcome, more := m.dive(assumptions, min(contradictions-met, 100*luby(round)), stop)
		met += more
		m.backTo(0)
		if outcome != OutOfSteps || stop() {
			return outcome, met
		}
	}
	return OutOfSteps, met
}

// Value gives the value of v in the solution found last.
func (m *Model) Value(v Var) int { return m.found[v] }

// dive is one search without starting over.
func (m *Model) dive(assumptions []Lit, contradictions int, stop func() bool) (outcome Outcome, met int) {
	if m.broken {
		return Impossible, 0
	}
	for decisions := 1; ; decisions++ {
		for !m.propagate() {
			lits, back, spread, ok := m.analyseClash()
			if !ok {
				m.broken = true
				return Impossible, met
			}
			met++
			m.backTo(back)
			if !m.learn(lits, spread) {
				m.broken = true
				return Impossible, met
			}
		}
		if met >= contradictions || decisions%200 == 0 && stop() {
			return OutOfSteps, met
		}
		l, done, refuted := m.next(assumptions)
		switch {
		case refuted:
			return Refuted, met
		case done:
			m.remember()
			return Found, met
		}
		m.decide(l)
	}
}

// next picks the next decision: an assumption, then the most active variable.
func (m *Model) next(assumptions []Lit) (l Lit, done, refuted bool) {
	for ; m.assumed < len(assumptions); m.assumed++ {
		l := assumptions[m.assumed]
		switch {
		case m.isFalse(l):
			return l, false, true
		case !m.isTrue(l):
			m.granted = len(m.levels) + 1
			return l, false, false
		}
	}
	for {
		v, ok := m.order.top()
		if !ok {
			return Lit{}, true, false
		}
		if !m.isFixed(v) && !m.order.isAside[v] {
			return m.try(v), false, false
		}
		m.order.pop()
	}
}

// try says what to assume of a variable: its hint, else its lowest value.
func (m *Model) try(v int) Lit {
	lo, hi := m.Bounds(Var(v))
	if h := m.hints[v]; h.isSet && h.value > lo {
		if h.value >= hi {
			return Var(v).AtLeast(hi)
		}
		return Var(v).AtMost(h.value)
	}
	return Var(v).AtMost(lo)
}

func (m *Model) remember() {
	m.found = m.found[:0]
	for v := 0; v < len(m.floor)/2; v++ {
		m.found = append(m.found, m.floor[2*v])
	}
}

// luby is the k-th number, from 1, of the sequence 1 1 2 1 1 2 4 …: M. Luby,
// A. Sinclair and D. Zuckerman, "Optimal speedup of Las Vegas algorithms" (1993;
// from memory).
func luby(k int) int {
	for size := 1; ; size = 2*size + 1 {
		if k == size {
			return (size + 1) / 2
		}
		if k < size {
			return luby(k - size/2)
		}
	}
}
