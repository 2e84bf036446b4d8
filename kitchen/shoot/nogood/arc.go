package nogood

// arc makes target ≥ source + lag, both views, always or if a condition holds.
type arc struct {
	source, target, lag int
	condition           Lit
	isAsked             bool
}

// ask names an arc that begins to hold when a view reaches a number.
type ask struct{ at, arc int }

func (m *Model) addArc(a arc) {
	m.backTo(0)
	k := len(m.arcs)
	m.arcs = append(m.arcs, a)
	m.arcsOf[a.source] = append(m.arcsOf[a.source], k)
	if a.isAsked {
		m.asks[a.condition.view] = append(m.asks[a.condition.view], ask{a.condition.at, k})
	}
	if !m.pull(k) {
		m.broken = true
	}
}

// pull raises the target of an arc that holds, or refuses the condition of one
// that would be broken.
func (m *Model) pull(k int) bool {
	a := &m.arcs[k]
	at := m.floor[a.source] + a.lag
	if m.floor[a.target] >= at {
		return true
	}
	if !a.isAsked || m.isTrue(a.condition) {
		return m.set(Lit{a.target, at}, reason{kind: byArc, a: k})
	}
	if at > -m.floor[a.target^1] && !m.isFalse(a.condition) {
		return m.set(a.condition.Not(), reason{kind: byRefusal, a: k, b: m.floor[a.source]})
	}
	return true
}

// propagate draws all conclusions. It is false at a contradiction: then clash
// is set.
func (m *Model) propagate() bool {
	for {
		for m.head < len(m.trail) {
			e := m.trail[m.head]
			m.head++
			if !m.follow(e) {
				return false
			}
		}
		next := -1
		for k, isDirty := range m.dirty {
			if isDirty {
				next = k
				break
			}
		}
		if next < 0 {
			return true
		}
		m.dirty[next] = false
		if l := m.loads[next]; !l.isQueue && !m.timetable(l) || !m.overload(l) {
			return false
		}
	}
}

// follow draws what one raised bound brings at once.
func (m *Model) follow(e entry) bool {
	if !m.wake(e.view, e.before, e.at) {
		return false
	}
	for _, k := range m.arcsOf[e.view] {
		if !m.pull(k) {
			return false
		}
	}
	for _, q := range m.asks[e.view] {
		if q.at > e.before && q.at <= e.at && !m.pull(q.arc) {
			return false
		}
	}
	for _, k := range m.loadsOf[e.view/2] {
		m.dirty[k] = true
	}
	return true
}
