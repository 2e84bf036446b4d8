package nogood

import "slices"

// Piece is a stretch of work at a station: it begins at Start, lasts Minutes,
// above 0, and occupies Amount units, above 0.
type Piece struct {
	Start           Var
	Minutes, Amount int
}

// load keeps the pieces at a station within its capacity.
type load struct {
	pieces   []Piece
	capacity int
	events   []event
	steps    []step
	isQueue  bool
	works    []work // by piece
	byStart  []int  // pieces by earliest start
	byEnd    []int  // by latest end
	needs    []int  // by place in byStart: what the capacity would have given by then, and what is needed from then on
	lits     []Lit  // memory
}

// event is a change of the sure load: of pieces that run then, whatever comes.
type event struct{ at, change int }

// step is a stretch of time with a sure load.
type step struct{ from, to, height int }

// Load makes the pieces never need more than the capacity at once. A piece
// needs at most the capacity. Between searches only.
func (m *Model) Load(capacity int, pieces ...Piece) {
	m.backTo(0)
	k := len(m.loads)
	m.loads = append(m.loads, &load{pieces: pieces, capacity: capacity})
	m.dirty = append(m.dirty, true)
	for _, p := range pieces {
		if !slices.Contains(m.loadsOf[p.Start], k) {
			m.loadsOf[p.Start] = append(m.loadsOf[p.Start], k)
		}
	}
}

// timetable keeps pieces out of the time in which others surely run.
func (m *Model) timetable(l *load) bool {
	peak := m.profile(l)
	if peak > l.capacity {
		for _, s := range l.steps {
			if s.height > l.capacity {
				m.clash = m.running(m.clash[:0], l, -1, s.from+(s.to-s.from)/2, l.capacity)
				return false
			}
		}
	}
	for j, p := range l.pieces {
		lo, hi := m.Bounds(p.Start)
		if lo == hi || peak+p.Amount <= l.capacity {
			continue
		}
		if !m.pushRight(l, j, lo, hi) || !m.pushLeft(l, j, lo, hi) {
			return false
		}
	}
	return true
}

// profile computes the sure load over time, and gives its peak.
func (m *Model) profile(l *load) (peak int) {
	l.events, l.steps = l.events[:0], l.steps[:0]
	for _, p := range l.pieces {
		if lo, hi := m.Bounds(p.Start); hi < lo+p.Minutes {
			l.events = append(l.events, event{hi, p.Amount}, event{lo + p.Minutes, -p.Amount})
		}
	}
	slices.SortFunc(l.events, func(a, b event) int { return a.at - b.at })
	height := 0
	for k, e := range l.events {
		height += e.change
		if k+1 < len(l.events) && l.events[k+1].at > e.at && height > 0 {
			l.steps = append(l.steps, step{e.at, l.events[k+1].at, height})
			peak = max(peak, height)
		}
	}
	return peak
}

// running appends why, at a minute, pieces other than j need more than so many
// units.
func (m *Model) running(to []Lit, l *load, j, minute, above int) []Lit {
	sum := 0
	for k, p := range l.pieces {
		lo, hi := m.Bounds(p.Start)
		if k == j || hi > minute || lo+p.Minutes <= minute {
			continue
		}
		to = append(to, p.Start.AtLeast(minute-p.Minutes+1), p.Start.AtMost(minute))
		if sum += p.Amount; sum > above {
			break
		}
	}
	return to
}

// pushRight raises the earliest start of piece j past the steps that leave no
// room for it. lo and hi are its bounds at the time of the profile.
func (m *Model) pushRight(l *load, j, lo, hi int) bool {
	p := l.pieces[j]
	ownFrom, ownTo := hi, lo+p.Minutes
	for _, s := range l.steps {
		if s.to <= lo {
			continue
		}
		if s.from >= lo+p.Minutes {
			break
		}
		if s.height+p.Amount <= l.capacity || s.from >= ownFrom && s.to <= ownTo {
			continue
		}
		for lo < s.to {
			minute := min(s.to, lo+p.Minutes) - 1
			l.lits = m.running(append(l.lits[:0], p.Start.AtLeast(minute-p.Minutes+1)), l, j, minute, l.capacity-p.Amount)
			if !m.set(p.Start.AtLeast(minute+1), m.listReason(l.lits)) {
				return false
			}
			lo = minute + 1
		}
	}
	return true
}

// pushLeft lowers the latest start likewise.
func (m *Model) pushLeft(l *load, j, lo, hi int) bool {
	p := l.pieces[j]
	ownFrom, ownTo := hi, lo+p.Minutes
	for k := len(l.steps) - 1; k >= 0; k-- {
		s := l.steps[k]
		if s.from >= hi+p.Minutes {
			continue
		}
		if s.to <= hi {
			break
		}
		if s.height+p.Amount <= l.capacity || s.from >= ownFrom && s.to <= ownTo {
			continue
		}
		for hi+p.Minutes > s.from {
			minute := max(s.from, hi)
			l.lits = m.running(append(l.lits[:0], p.Start.AtMost(minute)), l, j, minute, l.capacity-p.Amount)
			if !m.set(p.Start.AtMost(minute-p.Minutes), m.listReason(l.lits)) {
				return false
			}
			hi = minute - p.Minutes
		}
	}
	return true
}
