package nogood

// analysis finds the rule that a contradiction teaches.
type analysis struct {
	need       []int  // by view: the literal "view ≥ need" takes part
	isIn       []bool // by view
	place      []int  // by view: the trail entry that made it true
	touched    []int  // views that took part, each once
	isTouched  []bool // by view
	queue      []Lit
	lits       []Lit
	open       int // literals of the highest level
	clauseStep float64
}

func (a *analysis) grow() {
	a.need = append(a.need, 0, 0)
	a.isIn = append(a.isIn, false, false)
	a.place = append(a.place, 0, 0)
	a.isTouched = append(a.isTouched, false, false)
}

// analyseClash gives the learned literals, the one that follows first, with the
// level to go back to and the number of levels among them. ok is false if the
// contradiction rests on no decision at all.
func (m *Model) analyseClash() (lits []Lit, back, spread int, ok bool) {
	top := 0
	for _, l := range m.clash {
		if k := m.maker(l); k >= 0 {
			top = max(top, m.trail[k].level)
		}
	}
	if top == 0 {
		return nil, 0, 0, false
	}
	m.backTo(top)
	a := &m.analyse
	a.open, a.touched = 0, a.touched[:0]
	for _, l := range m.clash {
		m.takeIn(l)
	}
	first := m.resolve()
	lits, back, spread = m.collect(first)
	for _, view := range a.touched {
		a.isIn[view], a.isTouched[view] = false, false
	}
	m.order.decay()
	a.clauseStep *= 1.001
	return lits, back, spread, true
}

// resolve replaces literals of the highest level by their reasons, the latest
// first, until one is left, and gives its view.
func (m *Model) resolve() (view int) {
	a := &m.analyse
	for k := len(m.trail) - 1; ; k-- {
		e := &m.trail[k]
		if !a.isIn[e.view] || a.place[e.view] != k {
			continue
		}
		if a.open == 1 {
			return e.view
		}
		a.isIn[e.view] = false
		a.open--
		m.bumpClause(e.because.clause)
		a.queue = m.explain(a.queue[:0], Lit{e.view, a.need[e.view]}, e.because)
		for _, l := range a.queue {
			m.takeIn(l)
		}
	}
}

// takeIn adds a true literal to those that make the contradiction.
func (m *Model) takeIn(l Lit) {
	a := &m.analyse
	k := m.maker(l)
	if k < 0 || m.trail[k].level == 0 {
		return
	}
	if a.isIn[l.view] {
		if a.need[l.view] >= l.at {
			return
		}
		if m.trail[a.place[l.view]].level == len(m.levels) {
			a.open--
		}
	}
	if !a.isTouched[l.view] {
		a.touched, a.isTouched[l.view] = append(a.touched, l.view), true
	}
	a.isIn[l.view], a.need[l.view], a.place[l.view] = true, l.at, k
	if m.trail[k].level == len(m.levels) {
		a.open++
	}
	m.order.bump(l.view / 2)
}

// collect turns what takes part into a clause: first the view that stands for
// the highest level, then the one of the next level.
func (m *Model) collect(first int) (lits []Lit, back, spread int) {
	a := &m.analyse
	a.lits = append(a.lits[:0], Lit{first, a.need[first]}.Not())
	seen := map[int]bool{}
	for _, view := range a.touched {
		if !a.isIn[view] || view == first || m.follows(view) {
			continue
		}
		level := m.trail[a.place[view]].level
		seen[level] = true
		a.lits = append(a.lits, Lit{view, a.need[view]}.Not())
		if level > back {
			back = level
			last := len(a.lits) - 1
			a.lits[1], a.lits[last] = a.lits[last], a.lits[1]
		}
	}
	return a.lits, back, len(seen) + 1
}

// follows tells whether a literal that takes part follows from others that do
// and were true before it, so that the rule can do without it.
func (m *Model) follows(view int) bool {
	a := &m.analyse
	e := m.trail[a.place[view]]
	if e.because.kind == byDecision {
		return false
	}
	a.queue = m.explain(a.queue[:0], Lit{view, a.need[view]}, e.because)
	for _, l := range a.queue {
		k := m.maker(l)
		if k < 0 || m.trail[k].level == 0 {
			continue
		}
		if l.view == view || !a.isIn[l.view] || a.need[l.view] < l.at || a.place[l.view] >= a.place[view] {
			return false
		}
	}
	return true
}

func (m *Model) bumpClause(c *clause) {
	if c == nil {
		return
	}
	if c.activity += m.analyse.clauseStep; c.activity > 1e100 {
		for _, other := range m.learned {
			other.activity *= 1e-100
		}
		m.analyse.clauseStep *= 1e-100
	}
}
