package nogood_test

import (
	"math/rand/v2"
	"slices"

	"benchproof/kitchen/shoot/nogood"
)

// between draws a number from lo to hi.
func between(r *rand.Rand, lo, hi int) int { return lo + r.IntN(hi-lo+1) }

func never() bool { return false }

// puzzle is a small model, kept beside as plain rules.
type puzzle struct {
	model  nogood.Model
	vars   []nogood.Var
	lo, hi []int
	rules  []rule
	pairs  [][2]int // of each hidden bit: it is 1 if the first comes first
}

// rule is what a constraint asks of the values; last is the last variable that
// it looks at.
type rule struct {
	last  int
	holds func(values []int) bool
}

func (p *puzzle) add(holds func([]int) bool, about ...int) {
	p.rules = append(p.rules, rule{slices.Max(about), holds})
}

func (p *puzzle) variable(lo, hi int) {
	p.vars = append(p.vars, p.model.Var(lo, hi))
	p.lo, p.hi = append(p.lo, lo), append(p.hi, hi)
}

// drawPuzzle draws a puzzle of one of three kinds, each about as hard as it can
// be: many clauses of three bounds over narrow variables, pieces at stations
// with hardly room for them, or pieces of which no two may run at once.
func drawPuzzle(t *rand.Rand) *puzzle {
	p := &puzzle{}
	kind := t.IntN(3)
	count, width := []int{10, 6, 5}[kind], []int{2, 5, 8}[kind]
	for range count {
		lo := between(t, 0, 1)
		p.variable(lo, lo+between(t, width-1, width))
	}
	clauses := between(t, 0, 4)
	switch kind {
	case 0:
		clauses = between(t, 30, 44)
	case 1:
		p.load(t)
		p.load(t)
	case 2:
		p.takeTurns(t)
	}
	for range between(t, 1, 4) {
		p.difference(t)
	}
	for range clauses {
		p.clause(t)
	}
	return p
}

// takeTurns gives each piece a length and each two an order; sometimes it also
// counts how long they take together.
func (p *puzzle) takeTurns(t *rand.Rand) {
	minutes := make([]int, len(p.vars))
	defer func() {
		if t.IntN(2) == 0 {
			p.queue(minutes)
		}
	}()
	for i := range minutes {
		minutes[i] = between(t, 1, 3)
		for j := range i {
			isFirst := p.model.Var(0, 1)
			p.pairs = append(p.pairs, [2]int{i, j})
			p.model.AfterIf(isFirst.AtLeast(1), p.vars[i], p.vars[j], minutes[i])
			p.model.AfterIf(isFirst.AtMost(0), p.vars[j], p.vars[i], minutes[j])
			p.add(func(v []int) bool { return v[j] >= v[i]+minutes[i] || v[i] >= v[j]+minutes[j] }, i, j)
		}
	}
}

func (p *puzzle) queue(minutes []int) {
	var pieces []nogood.Piece
	for i, v := range p.vars {
		pieces = append(pieces, nogood.Piece{Start: v, Minutes: minutes[i], Amount: 7})
	}
	p.model.Queue(pieces...)
}

func (p *puzzle) pick(t *rand.Rand) int { return t.IntN(len(p.vars)) }

// lit draws a bound, with the plain rule that it stands for.
func (p *puzzle) lit(t *rand.Rand) (nogood.Lit, rule) {
	i := p.pick(t)
	n := between(t, p.lo[i]+1, p.hi[i])
	if t.IntN(2) == 0 {
		return p.vars[i].AtLeast(n), rule{i, func(v []int) bool { return v[i] >= n }}
	}
	return p.vars[i].AtMost(n - 1), rule{i, func(v []int) bool { return v[i] < n }}
}

func (p *puzzle) difference(t *rand.Rand) {
	i, j, lag := p.pick(t), p.pick(t), between(t, -2, 3)
	if t.IntN(2) == 0 {
		p.model.After(p.vars[i], p.vars[j], lag)
		p.add(func(v []int) bool { return v[j] >= v[i]+lag }, i, j)
		return
	}
	l, is := p.lit(t)
	p.model.AfterIf(l, p.vars[i], p.vars[j], lag)
	p.add(func(v []int) bool { return !is.holds(v) || v[j] >= v[i]+lag }, i, j, is.last)
}

func (p *puzzle) clause(t *rand.Rand) {
	var lits []nogood.Lit
	var rules []rule
	var about []int
	for range 3 {
		l, r := p.lit(t)
		lits, rules, about = append(lits, l), append(rules, r), append(about, r.last)
	}
	p.model.AtLeastOne(lits...)
	p.add(func(v []int) bool {
		return slices.ContainsFunc(rules, func(r rule) bool { return r.holds(v) })
	}, about...)
}

func (p *puzzle) load(t *rand.Rand) {
	capacity := between(t, 2, 4)
	var pieces []nogood.Piece
	for i := range p.vars {
		pieces = append(pieces, nogood.Piece{Start: p.vars[i], Minutes: between(t, 1, 3), Amount: between(t, 1, capacity)})
	}
	p.model.Load(capacity, pieces...)
	for i := range p.vars {
		p.add(func(v []int) bool { return fits(capacity, pieces[:i+1], v) }, i)
	}
}

// fits tells whether pieces never need more than the capacity, minute by
// minute; values has a start for each.
func fits(capacity int, pieces []nogood.Piece, values []int) bool {
	for minute := -4; minute < 20; minute++ {
		used := 0
		for k, piece := range pieces {
			if values[k] <= minute && minute < values[k]+piece.Minutes {
				used += piece.Amount
			}
		}
		if used > capacity {
			return false
		}
	}
	return true
}

// solutions lists every solution, found by trying all values.
func (p *puzzle) solutions() [][]int {
	byLast := make([][]rule, len(p.vars))
	for _, r := range p.rules {
		byLast[r.last] = append(byLast[r.last], r)
	}
	var all [][]int
	values := make([]int, len(p.vars))
	var try func(i int)
	try = func(i int) {
		if i == len(values) {
			all = append(all, slices.Clone(values))
			return
		}
		for values[i] = p.lo[i]; values[i] <= p.hi[i]; values[i]++ {
			if !slices.ContainsFunc(byLast[i], func(r rule) bool { return !r.holds(values) }) {
				try(i + 1)
			}
		}
	}
	try(0)
	return all
}

// found gives the values of the solution that the model found last.
func (p *puzzle) found() []int {
	values := make([]int, len(p.vars))
	for i, v := range p.vars {
		values[i] = p.model.Value(v)
	}
	return values
}
