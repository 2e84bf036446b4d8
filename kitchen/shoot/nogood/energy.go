package nogood

import "slices"

// work is a piece with the time that it has.
type work struct {
	from, to int // from its earliest start to its latest end
	minutes  int
	units    int // unit-minutes
	place    int // among all in order of their earliest starts
}

// Queue makes no two pieces run at once, as far as the time goes that they have
// together: which of two comes first is for other rules. Amounts do not count.
// Between searches only.
func (m *Model) Queue(pieces ...Piece) {
	alone := slices.Clone(pieces)
	for k := range alone {
		alone[k].Amount = 1
	}
	m.Load(1, alone...)
	m.loads[len(m.loads)-1].isQueue = true
}

// overload finds a stretch of time that gives less than the pieces need that
// must lie in it (energetic reasoning). It takes the pieces in order of their
// latest ends, and for each earliest start adds up what needs room from then on.
func (m *Model) overload(l *load) bool {
	m.lay(l)
	for last, k := range l.byEnd {
		w := &l.works[k]
		until := l.capacity * w.to
		needs := l.needs[:w.place+1]
		for at := range needs {
			if needs[at] += w.units; needs[at] > until {
				m.clash = m.within(m.clash[:0], l, last, l.works[l.byStart[at]].from, needs[at]-until-1)
				return false
			}
		}
	}
	return true
}

// lay sorts the pieces by the time that they have; few change their places from
// one time to the next.
func (m *Model) lay(l *load) {
	if l.works == nil {
		l.works, l.needs = make([]work, len(l.pieces)), make([]int, len(l.pieces))
		for k := range l.pieces {
			l.byStart, l.byEnd = append(l.byStart, k), append(l.byEnd, k)
		}
	}
	for k, p := range l.pieces {
		lo, hi := m.Bounds(p.Start)
		l.works[k] = work{from: lo, to: hi + p.Minutes, minutes: p.Minutes, units: p.Minutes * p.Amount}
	}
	settle(l.byStart, func(a, b int) bool { return l.works[a].from < l.works[b].from })
	settle(l.byEnd, func(a, b int) bool { return l.works[a].to < l.works[b].to })
	for at, k := range l.byStart {
		l.works[k].place, l.needs[at] = at, l.capacity*l.works[k].from
	}
}

// settle sorts what is almost sorted.
func settle(list []int, isLess func(a, b int) bool) {
	for k := 1; k < len(list); k++ {
		v, at := list[k], k
		for ; at > 0 && isLess(v, list[at-1]); at-- {
			list[at] = list[at-1]
		}
		list[at] = v
	}
}

// within appends why the pieces up to one, in order of their ends, lie in a
// stretch of time from a minute on. Of so many unit-minutes it need not.
func (m *Model) within(to []Lit, l *load, last, from, spare int) []Lit {
	end := l.works[l.byEnd[last]].to
	for _, k := range l.byEnd[:last+1] {
		switch w, start := &l.works[k], l.pieces[k].Start; {
		case w.from < from:
		case w.units <= spare:
			spare -= w.units
		default:
			to = append(to, start.AtLeast(from), start.AtMost(end-w.minutes))
		}
	}
	return to
}
