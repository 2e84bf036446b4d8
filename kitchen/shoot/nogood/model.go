package nogood

// Var is a variable of a Model.
type Var int

// Lit says that a variable is at least, or at most, a number.
type Lit struct {
	view int // 2v stands for v, 2v+1 for −v
	at   int // the view is this or more
}

// AtLeast says v ≥ n.
func (v Var) AtLeast(n int) Lit { return Lit{2 * int(v), n} }

// AtMost says v ≤ n.
func (v Var) AtMost(n int) Lit { return Lit{2*int(v) + 1, -n} }

// Not says the opposite.
func (l Lit) Not() Lit { return Lit{l.view ^ 1, 1 - l.at} }

// Model holds variables, constraints, and what was learned. The zero Model is
// empty and ready. It belongs to one goroutine.
type Model struct {
	floor   []int // by view: the view is this or more
	newest  []int // by view: index of its last entry in the trail, −1 for none
	trail   []entry
	head    int // trail entries before it are propagated
	levels  []level
	arena   []Lit      // reasons that are lists
	watches []watching // by view
	arcs    []arc
	arcsOf  [][]int      // by view of the arc's source
	asks    [][]ask      // by view of the condition
	loads   []*load      // stations
	loadsOf [][]int      // by variable
	dirty   []bool       // by load
	learned []*clause    // that may be forgotten
	broken  bool         // contradiction without any decision
	clash   []Lit        // true together, and contradictory
	analyse analysis     // memory of the last contradiction
	order   activityHeap // unfixed variables, the most active first
	hints   []hint       // by variable
	forget  int          // learned rules kept before the next clearing
	found   []int        // values of the last solution
	assumed int          // assumptions known to be true
	granted int          // the level up to which they are
}

// hint is the value at which a variable is tried first.
type hint struct {
	value int
	isSet bool
}

// entry is one bound that was raised.
type entry struct {
	view, at int
	before   int // the floor before
	previous int // index of the view's entry before, −1 for none
	level    int
	because  reason
}

// level is where a decision begins.
type level struct{ trail, arena int }

// Var adds a variable with lo ≤ v ≤ hi.
func (m *Model) Var(lo, hi int) Var {
	v := Var(len(m.floor) / 2)
	m.floor = append(m.floor, lo, -hi)
	m.newest = append(m.newest, -1, -1)
	m.watches = append(m.watches, watching{}, watching{})
	m.arcsOf = append(m.arcsOf, nil, nil)
	m.asks = append(m.asks, nil, nil)
	m.loadsOf = append(m.loadsOf, nil)
	m.hints = append(m.hints, hint{})
	m.analyse.grow()
	m.order.add(int(v))
	if lo > hi {
		m.broken = true
	}
	return v
}

// Bounds gives the lowest and highest value of v that is still possible.
func (m *Model) Bounds(v Var) (lo, hi int) { return m.floor[2*v], -m.floor[2*v+1] }

// Hint names the value at which v is tried first.
func (m *Model) Hint(v Var, value int) { m.hints[v] = hint{value, true} }

// SetAside keeps search from deciding v: in a solution it has the lowest value
// that the others leave it. All constraints must hold with that value.
func (m *Model) SetAside(v Var) { m.order.isAside[v] = true }

// Require makes a bound hold for good. Between searches only.
func (m *Model) Require(l Lit) {
	m.backTo(0)
	if !m.set(l, reason{}) {
		m.broken = true
	}
}

// After makes later ≥ earlier + lag hold for good. Between searches only.
func (m *Model) After(earlier, later Var, lag int) {
	m.addArc(arc{source: 2 * int(earlier), target: 2 * int(later), lag: lag})
	m.addArc(arc{source: 2*int(later) + 1, target: 2*int(earlier) + 1, lag: lag})
}

// AfterIf makes later ≥ earlier + lag hold if l does. Between searches only.
func (m *Model) AfterIf(l Lit, earlier, later Var, lag int) {
	m.addArc(arc{source: 2 * int(earlier), target: 2 * int(later), lag: lag, condition: l, isAsked: true})
	m.addArc(arc{source: 2*int(later) + 1, target: 2*int(earlier) + 1, lag: lag, condition: l, isAsked: true})
}

func (m *Model) isTrue(l Lit) bool  { return m.floor[l.view] >= l.at }
func (m *Model) isFalse(l Lit) bool { return m.floor[l.view^1] >= 1-l.at }
func (m *Model) isFixed(v int) bool { return m.floor[2*v] == -m.floor[2*v+1] }

// set makes a literal true for a reason. It is false if that is contradictory:
// then clash is set.
func (m *Model) set(l Lit, because reason) bool {
	if m.isTrue(l) {
		return true
	}
	if m.isFalse(l) {
		m.clash = append(m.explain(m.clash[:0], l, because), l.Not())
		return false
	}
	m.trail = append(m.trail, entry{
		view: l.view, at: l.at, before: m.floor[l.view], previous: m.newest[l.view],
		level: len(m.levels), because: because,
	})
	m.floor[l.view], m.newest[l.view] = l.at, len(m.trail)-1
	return true
}

// decide opens a level with a literal that is neither true nor false.
func (m *Model) decide(l Lit) {
	m.levels = append(m.levels, level{len(m.trail), len(m.arena)})
	m.set(l, reason{})
}

// backTo takes back all levels above the given one.
func (m *Model) backTo(to int) {
	if len(m.levels) <= to {
		return
	}
	first := m.levels[to]
	for k := len(m.trail) - 1; k >= first.trail; k-- {
		e := m.trail[k]
		m.floor[e.view], m.newest[e.view] = e.before, e.previous
		m.order.insert(e.view / 2)
	}
	m.trail, m.arena, m.levels = m.trail[:first.trail], m.arena[:first.arena], m.levels[:to]
	m.head = min(m.head, len(m.trail))
	if to < m.granted {
		m.assumed = 0
	}
	for k := range m.dirty {
		m.dirty[k] = false
	}
}

// maker gives the index of the trail entry that made a literal true, −1 if it
// was true from the start.
func (m *Model) maker(l Lit) int {
	k := m.newest[l.view]
	for k >= 0 && m.trail[k].before >= l.at {
		k = m.trail[k].previous
	}
	return k
}
