package nogood

import "slices"

// clause is a rule: one of its literals must hold. The first two are watched.
type clause struct {
	lits     []Lit
	activity float64
	spread   int // levels in it when it was learned; few is good
	isGone   bool
}

// watching is the clauses that wake when a view reaches a number, which makes
// one of their watched literals false. The numbers stand apart because most of
// the time only they are looked at.
type watching struct {
	at      []int
	clauses []watched
}

// watched is a clause with a literal of it: if that is true nothing is to be
// done.
type watched struct {
	clause *clause
	other  Lit
}

func (m *Model) watch(c *clause, l, other Lit) {
	w := &m.watches[l.view^1]
	w.at, w.clauses = append(w.at, 1-l.at), append(w.clauses, watched{c, other})
}

// remove takes out entry k; the last one takes its place.
func (w *watching) remove(k int) {
	last := len(w.at) - 1
	w.at[k], w.clauses[k] = w.at[last], w.clauses[last]
	w.clauses[last].clause = nil
	w.at, w.clauses = w.at[:last], w.clauses[:last]
}

// wake looks at the clauses of which a literal became false when a view rose
// above a floor.
func (m *Model) wake(view, before, floor int) bool {
	w := &m.watches[view]
	for k := 0; k < len(w.at); k++ {
		at := w.at[k]
		if at <= before || at > floor {
			continue
		}
		entry := w.clauses[k]
		if entry.clause.isGone {
			w.remove(k)
			k--
			continue
		}
		if m.isTrue(entry.other) {
			continue
		}
		moved, ok := m.wakeClause(entry.clause, Lit{view ^ 1, 1 - at})
		if moved {
			w.remove(k)
			k--
		}
		if !ok {
			return false
		}
	}
	return true
}

// wakeClause finds another literal to watch for one that became false. If
// there is none the other watched literal must hold.
func (m *Model) wakeClause(c *clause, gone Lit) (moved, ok bool) {
	if c.lits[0] == gone {
		c.lits[0], c.lits[1] = c.lits[1], c.lits[0]
	}
	if m.isTrue(c.lits[0]) {
		return false, true
	}
	for k := 2; k < len(c.lits); k++ {
		if !m.isFalse(c.lits[k]) {
			c.lits[1], c.lits[k] = c.lits[k], c.lits[1]
			m.watch(c, c.lits[1], c.lits[0])
			return true, true
		}
	}
	return false, m.set(c.lits[0], reason{kind: byClause, clause: c})
}

// AtLeastOne makes one of the literals hold for good. Between searches only.
func (m *Model) AtLeastOne(lits ...Lit) {
	m.backTo(0)
	var open []Lit
	for _, l := range lits {
		if m.isTrue(l) {
			return
		}
		if !m.isFalse(l) {
			open = append(open, l)
		}
	}
	switch len(open) {
	case 0:
		m.broken = true
	case 1:
		m.Require(open[0])
	default:
		c := &clause{lits: open}
		m.watch(c, open[0], open[1])
		m.watch(c, open[1], open[0])
	}
}

// learn keeps a clause whose first literal follows now; the second has the
// highest level of the rest.
func (m *Model) learn(lits []Lit, spread int) bool {
	if len(lits) == 1 {
		return m.set(lits[0], reason{})
	}
	c := &clause{lits: slices.Clone(lits), spread: spread, activity: m.analyse.clauseStep}
	m.learned = append(m.learned, c)
	m.watch(c, c.lits[0], c.lits[1])
	m.watch(c, c.lits[1], c.lits[0])
	return m.set(c.lits[0], reason{kind: byClause, clause: c})
}

// clear forgets half of the learned clauses, those that helped least lately.
// It is called without decisions.
func (m *Model) clear() {
	slices.SortStableFunc(m.learned, func(a, b *clause) int {
		switch {
		case (a.spread <= 2) != (b.spread <= 2):
			if a.spread <= 2 {
				return -1
			}
			return 1
		case a.activity > b.activity:
			return -1
		case a.activity < b.activity:
			return 1
		}
		return 0
	})
	for k := len(m.learned) / 2; k < len(m.learned); k++ {
		if m.learned[k].spread > 2 {
			m.learned[k].isGone = true
		}
	}
	m.learned = slices.DeleteFunc(m.learned, func(c *clause) bool { return c.isGone })
	for view := range m.watches {
		w := &m.watches[view]
		for k := len(w.at) - 1; k >= 0; k-- {
			if w.clauses[k].clause.isGone {
				w.remove(k)
			}
		}
	}
}
