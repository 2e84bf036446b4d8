package nogood

// reason says why a bound holds; the zero reason is a decision or a fact.
type reason struct {
	kind   kind
	clause *clause // byClause
	a, b   int     // byArc: arc · byRefusal: arc, source's floor · byList: place and length in the arena
}

type kind uint8

const (
	byDecision kind = iota
	byClause        // all other literals of the clause are false
	byArc           // the arc's source and condition
	byRefusal       // the arc would be broken, so its condition is false
	byList          // the literals in the arena
)

// explain appends literals that are true and together make l true.
func (m *Model) explain(to []Lit, l Lit, because reason) []Lit {
	switch because.kind {
	case byClause:
		for _, other := range because.clause.lits[1:] {
			to = append(to, other.Not())
		}
	case byArc:
		a := m.arcs[because.a]
		to = append(to, Lit{a.source, l.at - a.lag})
		if a.isAsked {
			to = append(to, a.condition)
		}
	case byRefusal:
		a := m.arcs[because.a]
		to = append(to, Lit{a.source, because.b}, Lit{a.target ^ 1, 1 - a.lag - because.b})
	case byList:
		to = append(to, m.arena[because.a:because.a+because.b]...)
	}
	return to
}

// listReason keeps literals as a reason.
func (m *Model) listReason(lits []Lit) reason {
	m.arena = append(m.arena, lits...)
	return reason{kind: byList, a: len(m.arena) - len(lits), b: len(lits)}
}
