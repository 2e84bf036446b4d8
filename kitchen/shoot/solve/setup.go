package solve

import (
	"slices"

	"benchproof/kitchen/shoot/nogood"
	"benchproof/kitchen/shoot/project"
)

// maxBetween is the most rules "this film task comes between those two" that
// the prover takes on.
const maxBetween = 20_000

// setupBlock is the putting up of a camera setup, if it is needed: of a film
// task's own before it, or, where time runs backwards, after it.
type setupBlock struct {
	task     int
	isNeeded nogood.Var
	start    nogood.Var // out of the way if it is not needed: parked
	gap      int
	parked   int
	meets    []meeting
}

// meeting is a task that cannot run while a setup is put up: one of the two
// comes first.
type meeting struct {
	task                   int
	isBlockFirst, isBehind nogood.Var
}

// between is 1 only if film task k comes after i and before j.
type between struct {
	is      nogood.Var
	i, k, j int
}

// addSetups adds the putting up of setups. It does so where there are not too
// many film tasks; it tells whether the model then has all rules. Where one
// station serves one at a time, what it does comes before or after; else a setup
// is a piece of its load.
func (p *prover) addSetups() bool {
	in := p.in
	if !in.gaps || len(in.setupUse) == 0 {
		return true
	}
	film, meets := p.film(), p.film()
	if p.meetsInTurn() {
		meets = p.busy()
	}
	rules, same := 0, map[string]int{}
	for _, i := range film {
		same[in.project.Tasks[i].Setup]++
	}
	for _, count := range same {
		rules += count * count * (len(film) - count)
	}
	if !p.hasPairs || rules > maxBetween || len(film)*len(meets) > maxPairs {
		return false
	}
	p.firstOf = p.orders()
	parked := in.horizon + 1
	for _, j := range film {
		if gap := in.project.Setups.Minutes[in.project.Tasks[j].Setup]; gap > 0 {
			p.addBlock(j, gap, parked, film, meets)
			parked += gap
		}
	}
	return true
}

// meetsInTurn tells whether setups are put up by one unit of one station that
// has no more.
func (p *prover) meetsInTurn() bool {
	uses := p.in.setupUse
	return len(uses) == 1 && p.in.stations[uses[0].station].Peak() == 1
}

// film are the film tasks.
func (p *prover) film() []int {
	return slices.DeleteFunc(p.in.ids(), func(i int) bool { return !p.in.filmed(i) })
}

// busy are the film tasks and what else the one who puts up setups does.
func (p *prover) busy() []int {
	in := p.in
	return slices.DeleteFunc(in.ids(), func(i int) bool {
		return !in.filmed(i) && (in.minutes[i] == 0 || in.project.Tasks[i].Units(in.setupUse[0].station) == 0)
	})
}

// orders gives, for two tasks of a pair, the bound that says that the first
// comes first.
func (p *prover) orders() map[[2]int]nogood.Lit {
	orders := map[[2]int]nogood.Lit{}
	for _, c := range p.pairs {
		orders[[2]int{c.first, c.second}] = c.isFirst.AtLeast(1)
		orders[[2]int{c.second, c.first}] = c.isFirst.AtMost(0)
	}
	return orders
}

// comesFirst gives the bound that says that i comes before j. Where it is
// certain, one that always holds, or never.
func (p *prover) comesFirst(i, j int) nogood.Lit {
	if l, ok := p.firstOf[[2]int{i, j}]; ok {
		return l
	}
	if p.behind[i][j] {
		return p.end.AtLeast(0)
	}
	return p.end.AtMost(-1)
}

// addBlock adds a film task's setup. It comes after all that is filmed before
// that task, where time runs backwards before all that is filmed after it, and
// before or after all else that it meets.
func (p *prover) addBlock(j, gap, parked int, film, meets []int) {
	in, m := p.in, p.model
	b := setupBlock{task: j, isNeeded: m.Var(0, 1), start: m.Var(0, parked), gap: gap, parked: parked}
	needed := b.isNeeded.AtLeast(1)
	m.AtLeastOne(needed.Not(), b.start.AtMost(in.horizon))
	m.AtLeastOne(needed, b.start.AtLeast(parked))
	if in.project.Setups.OfFirst {
		m.AfterIf(needed, p.starts[j], b.start, in.minutes[j])
	} else {
		m.AfterIf(needed, b.start, p.starts[j], gap)
	}
	for _, i := range meets {
		if i != j {
			b.meets = append(b.meets, p.meet(b, i))
		}
	}
	for _, i := range film {
		if in.project.Tasks[i].Setup == in.project.Tasks[j].Setup {
			continue
		}
		before, after := i, j
		if in.project.Setups.OfFirst {
			before, after = j, i
		}
		m.AtLeastOne(append(p.standsBetween(before, after, j, film), needed, p.comesFirst(before, after).Not())...)
	}
	p.blocksOf = append(p.blocksOf, b)
}

// meet keeps a task out of a setup's way.
func (p *prover) meet(b setupBlock, i int) meeting {
	m, needed := p.model, b.isNeeded.AtLeast(1)
	w := meeting{i, m.Var(0, 1), m.Var(0, 1)}
	m.AfterIf(w.isBlockFirst.AtLeast(1), b.start, p.starts[i], b.gap)
	m.AfterIf(w.isBehind.AtLeast(1), p.starts[i], b.start, p.in.minutes[i])
	m.AtLeastOne(needed.Not(), w.isBlockFirst.AtLeast(1), w.isBehind.AtLeast(1))
	switch {
	case !p.in.filmed(i):
	case p.in.project.Setups.OfFirst:
		m.AtLeastOne(needed.Not(), p.comesFirst(b.task, i).Not(), w.isBlockFirst.AtLeast(1))
	default: // The camera is moved after the last shot before, not earlier.
		m.AtLeastOne(needed.Not(), p.comesFirst(i, b.task).Not(), w.isBehind.AtLeast(1))
	}
	return w
}

// standsBetween gives bounds of which one holds only if, after film task i and
// before j, another film task has the setup of the one named.
func (p *prover) standsBetween(i, j, of int, film []int) []nogood.Lit {
	var lits []nogood.Lit
	for _, k := range film {
		if k == of || p.in.project.Tasks[k].Setup != p.in.project.Tasks[of].Setup {
			continue
		}
		is := p.model.Var(0, 1)
		p.model.AtLeastOne(is.AtMost(0), p.comesFirst(i, k))
		p.model.AtLeastOne(is.AtMost(0), p.comesFirst(k, j))
		p.betweens = append(p.betweens, between{is, i, k, j})
		lits = append(lits, is.AtLeast(1))
	}
	return lits
}

// setupPieces are the setups as work at a station; nothing is filmed while one
// is put up.
func (p *prover) setupPieces(station int) []nogood.Piece {
	var pieces []nogood.Piece
	for _, u := range append(slices.Clone(p.in.setupUse), use{p.in.camera, 1}) {
		for _, b := range p.blocksOf {
			if u.station == station {
				pieces = append(pieces, nogood.Piece{Start: b.start, Minutes: b.gap, Amount: u.amount})
			}
		}
	}
	return pieces
}

// setupTimes gives when a plan has the setups put up, by the film task that the
// block is of.
func (in *instance) setupTimes(starts []int) map[int]project.SetupTime {
	film := slices.DeleteFunc(in.ids(), func(i int) bool { return !in.filmed(i) })
	slices.SortFunc(film, func(a, b int) int { return starts[a] - starts[b] })
	times := map[int]project.SetupTime{}
	for _, s := range in.project.SetupTimes(starts) {
		of := s.Task
		if in.project.Setups.OfFirst {
			of = film[slices.Index(film, s.Task)-1]
		}
		times[of] = s
	}
	return times
}

// hintSetups makes the search try a plan's set-ups first.
func (p *prover) hintSetups(starts []int) {
	times := p.in.setupTimes(starts)
	bit := func(is bool) int {
		if is {
			return 1
		}
		return 0
	}
	for _, b := range p.blocksOf {
		at, isNeeded := times[b.task]
		if !isNeeded {
			at.From, at.To = b.parked, b.parked+b.gap
		}
		p.model.Hint(b.isNeeded, bit(isNeeded))
		p.model.Hint(b.start, at.From)
		for _, w := range b.meets {
			p.model.Hint(w.isBlockFirst, bit(isNeeded && at.To <= starts[w.task]))
			p.model.Hint(w.isBehind, bit(isNeeded && at.From >= starts[w.task]+p.in.minutes[w.task]))
		}
	}
	for _, z := range p.betweens {
		p.model.Hint(z.is, bit(starts[z.i] < starts[z.k] && starts[z.k] < starts[z.j]))
	}
}
