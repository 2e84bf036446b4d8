package nogood

// Holds tells whether a bound holds of values, one a variable.
func (l Lit) Holds(values []int) bool {
	v := values[l.view/2]
	if l.view%2 == 1 {
		v = -v
	}
	return v >= l.at
}

// IsTrue tells whether a bound holds by now.
func (m *Model) IsTrue(l Lit) bool { return m.isTrue(l) }

// IsFalse tells whether the opposite of a bound holds by now.
func (m *Model) IsFalse(l Lit) bool { return m.isFalse(l) }

// Conclude draws all conclusions; false at a contradiction.
func (m *Model) Conclude() bool { return !m.broken && m.propagate() }

// Assume opens a level with an open bound and draws all conclusions; false at a
// contradiction.
func (m *Model) Assume(l Lit) bool {
	m.decide(l)
	return m.propagate()
}

// BackTo takes back all levels above one.
func (m *Model) BackTo(level int) { m.backTo(level) }

// Levels is how many assumptions stand.
func (m *Model) Levels() int { return len(m.levels) }

// LevelOf is the level at which a true bound became true.
func (m *Model) LevelOf(l Lit) int {
	if k := m.maker(l); k >= 0 {
		return m.trail[k].level
	}
	return 0
}

// Conclusion is a bound that became true, and the bounds that made it so.
type Conclusion struct {
	Lit     Lit
	Because []Lit
	Place   int // in the order in which bounds became true
}

// Conclusions lists what was concluded by now, for each raised bound every
// number up to it. Assumptions and facts are left out.
func (m *Model) Conclusions() []Conclusion {
	var all []Conclusion
	for k, e := range m.trail {
		if e.because.kind == byDecision {
			continue
		}
		for at := e.before + 1; at <= e.at; at++ {
			l := Lit{e.view, at}
			all = append(all, Conclusion{l, m.explain(nil, l, e.because), k})
		}
	}
	return all
}

// PlaceOf is where among all raised bounds a true one became true, −1 for one
// that always was.
func (m *Model) PlaceOf(l Lit) int { return m.maker(l) }

// Clash is the bounds of the last contradiction.
func (m *Model) Clash() []Lit { return m.clash }

// Analyse gives what the last contradiction teaches; ok is false if it rests on
// no assumption.
func (m *Model) Analyse() (lits []Lit, back, spread int, ok bool) { return m.analyseClash() }

// Learn keeps a rule whose first bound follows now.
func (m *Model) Learn(lits []Lit, spread int) bool { return m.learn(lits, spread) && m.propagate() }

// Learned lists the learned rules that are kept.
func (m *Model) Learned() [][]Lit {
	var all [][]Lit
	for _, c := range m.learned {
		all = append(all, c.lits)
	}
	return all
}

// Spreads lists over how many levels each of the learned rules went.
func (m *Model) Spreads() []int {
	var all []int
	for _, c := range m.learned {
		all = append(all, c.spread)
	}
	return all
}

// ForgetAfter makes searches clear the learned rules once there are so many.
func (m *Model) ForgetAfter(rules int) { m.forget, m.analyse.clauseStep = rules, 1 }

// Luby is the k-th number, from 1, of the sequence that says when to start over.
func Luby(k int) int { return luby(k) }

// Heap is the order in which variables are decided.
type Heap = activityHeap

// Add adds the next variable.
func (h *activityHeap) Add(v int) { h.add(v) }

// Insert puts a variable back.
func (h *activityHeap) Insert(v int) { h.insert(v) }

// Top is the variable to be decided next, ok false if there is none.
func (h *activityHeap) Top() (v int, ok bool) { return h.top() }

// Pop takes out the top.
func (h *activityHeap) Pop() { h.pop() }

// Raise adds to the activity of a variable.
func (h *activityHeap) Raise(v int, by float64) { h.raise(v, by) }

// Bump makes a variable more active by the step of today.
func (h *activityHeap) Bump(v int) { h.bump(v) }

// Decay makes what was before count less.
func (h *activityHeap) Decay() { h.decay() }

// SetAside keeps a variable out from now on.
func (h *activityHeap) SetAside(v int) { h.isAside[v] = true }

// Activity is how active a variable is.
func (h *activityHeap) Activity(v int) float64 { return h.activity[v] }
