package solve

import (
	"benchproof/kitchen/shoot/nogood"
	"benchproof/kitchen/shoot/project"
)

// maxBetween is the most rules "this film task comes between those two" that
// the prover takes on.
const maxBetween = 20_000

// setupBlock is the putting up of a film task's setup, if it is needed.
type setupBlock struct {
	task     int
	isNeeded nogood.Var
	start    nogood.Var
	gap      int
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

// addSetups adds the putting up of setups as work at a station. It does so
// where one unit of one steady station is needed, time runs forwards, and there
// are not too many film tasks; it tells whether the model then has all rules.
func (p *prover) addSetups() bool {
	in := p.in
	if !in.gaps || len(in.setupUse) == 0 {
		return true
	}
	hands := in.setupUse[0].station
	if len(in.setupUse) > 1 || in.project.Setups.OfFirst || in.stations[hands].Peak() > 1 || len(in.stations[hands].Changes) > 0 || len(p.pairs) == 0 {
		return false
	}
	var film, busy []int
	same := map[string]int{}
	for i := range in.n {
		switch {
		case in.filmed(i):
			film, busy = append(film, i), append(busy, i)
			same[in.project.Tasks[i].Setup]++
		case in.minutes[i] > 0 && in.project.Tasks[i].Units(hands) > 0:
			busy = append(busy, i)
		}
	}
	rules := 0
	for _, count := range same {
		rules += count * count * (len(film) - count)
	}
	if rules > maxBetween || len(film)*len(busy) > maxPairs {
		return false
	}
	p.firstOf = p.orders()
	for _, j := range film {
		if gap := in.project.Setups.Minutes[in.project.Tasks[j].Setup]; gap > 0 {
			p.addBlock(j, gap, film, busy)
		}
	}
	return true
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

func (p *prover) addBlock(j, gap int, film, busy []int) {
	in, m := p.in, p.model
	b := setupBlock{task: j, isNeeded: m.Var(0, 1), start: m.Var(0, in.horizon), gap: gap}
	needed := b.isNeeded.AtLeast(1)
	m.AfterIf(needed, b.start, p.starts[j], gap)
	for _, i := range busy {
		if i == j {
			continue
		}
		w := meeting{i, m.Var(0, 1), m.Var(0, 1)}
		m.AfterIf(w.isBlockFirst.AtLeast(1), b.start, p.starts[i], gap)
		m.AfterIf(w.isBehind.AtLeast(1), p.starts[i], b.start, in.minutes[i])
		m.AtLeastOne(needed.Not(), w.isBlockFirst.AtLeast(1), w.isBehind.AtLeast(1))
		if in.filmed(i) {
			// The camera is moved after the last shot before, not earlier.
			m.AtLeastOne(needed.Not(), p.comesFirst(i, j).Not(), w.isBehind.AtLeast(1))
		}
		b.meets = append(b.meets, w)
	}
	for _, i := range film {
		if in.gap(i, j) > 0 {
			m.AtLeastOne(append(p.standsSince(i, j, film), needed, p.comesFirst(i, j).Not())...)
		}
	}
	p.blocksOf = append(p.blocksOf, b)
}

// standsSince gives bounds of which one holds only if, after film task i and
// before j, the setup of j is put up for another film task.
func (p *prover) standsSince(i, j int, film []int) []nogood.Lit {
	var lits []nogood.Lit
	for _, k := range film {
		if k == j || p.in.project.Tasks[k].Setup != p.in.project.Tasks[j].Setup {
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

// hintSetups makes the search try a plan's set-ups first.
func (p *prover) hintSetups(starts []int) {
	times := map[int]project.SetupTime{}
	for _, s := range p.in.project.SetupTimes(starts) {
		times[s.Task] = s
	}
	bit := func(is bool) int {
		if is {
			return 1
		}
		return 0
	}
	for _, b := range p.blocksOf {
		at, isNeeded := times[b.task]
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
