package nogood_test

import (
	"math/rand/v2"
	"testing"

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
	holds  []func(values []int) bool
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
		hi := lo + between(t, width-1, width)
		p.vars = append(p.vars, p.model.Var(lo, hi))
		p.lo, p.hi = append(p.lo, lo), append(p.hi, hi)
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

// takeTurns gives each piece a length and each two an order.
func (p *puzzle) takeTurns(t *rand.Rand) {
	minutes := make([]int, len(p.vars))
	for i := range minutes {
		minutes[i] = between(t, 1, 3)
		for j := range i {
			isFirst := p.model.Var(0, 1)
			p.model.AfterIf(isFirst.AtLeast(1), p.vars[i], p.vars[j], minutes[i])
			p.model.AfterIf(isFirst.AtMost(0), p.vars[j], p.vars[i], minutes[j])
			p.holds = append(p.holds, func(v []int) bool { return v[j] >= v[i]+minutes[i] || v[i] >= v[j]+minutes[j] })
		}
	}
}

func (p *puzzle) pick(t *rand.Rand) int { return t.IntN(len(p.vars)) }

// lit draws a bound, with the plain rule that it stands for.
func (p *puzzle) lit(t *rand.Rand) (nogood.Lit, func([]int) bool) {
	i := p.pick(t)
	n := between(t, p.lo[i]+1, p.hi[i])
	if t.IntN(2) == 0 {
		return p.vars[i].AtLeast(n), func(v []int) bool { return v[i] >= n }
	}
	return p.vars[i].AtMost(n - 1), func(v []int) bool { return v[i] < n }
}

func (p *puzzle) difference(t *rand.Rand) {
	i, j, lag := p.pick(t), p.pick(t), between(t, -2, 3)
	if t.IntN(2) == 0 {
		p.model.After(p.vars[i], p.vars[j], lag)
		p.holds = append(p.holds, func(v []int) bool { return v[j] >= v[i]+lag })
		return
	}
	l, isTrue := p.lit(t)
	p.model.AfterIf(l, p.vars[i], p.vars[j], lag)
	p.holds = append(p.holds, func(v []int) bool { return !isTrue(v) || v[j] >= v[i]+lag })
}

func (p *puzzle) clause(t *rand.Rand) {
	var lits []nogood.Lit
	var rules []func([]int) bool
	for range 3 {
		l, rule := p.lit(t)
		lits, rules = append(lits, l), append(rules, rule)
	}
	p.model.AtLeastOne(lits...)
	p.holds = append(p.holds, func(v []int) bool {
		for _, rule := range rules {
			if rule(v) {
				return true
			}
		}
		return false
	})
}

func (p *puzzle) load(t *rand.Rand) {
	capacity := between(t, 2, 4)
	var pieces []nogood.Piece
	var at []int
	for i := range p.vars {
		at = append(at, i)
		pieces = append(pieces, nogood.Piece{Start: p.vars[i], Minutes: between(t, 1, 3), Amount: between(t, 1, capacity)})
	}
	p.model.Load(capacity, pieces...)
	p.holds = append(p.holds, func(v []int) bool {
		for minute := -4; minute < 20; minute++ {
			used := 0
			for k, piece := range pieces {
				if start := v[at[k]]; start <= minute && minute < start+piece.Minutes {
					used += piece.Amount
				}
			}
			if used > capacity {
				return false
			}
		}
		return true
	})
}

// solutions calls f with every solution, found by trying all values, until f
// is false.
func (p *puzzle) solutions(f func([]int) bool) {
	values := make([]int, len(p.vars))
	var try func(i int) bool
	try = func(i int) bool {
		if i == len(values) {
			for _, holds := range p.holds {
				if !holds(values) {
					return true
				}
			}
			return f(values)
		}
		for v := p.lo[i]; v <= p.hi[i]; v++ {
			values[i] = v
			if !try(i + 1) {
				return false
			}
		}
		return true
	}
	try(0)
}

// Search agrees with trying all values, under one assumption after the other,
// so that what it learned for one must be right for the next.
func TestSearchAgreesWithTryingAllValues(t *testing.T) {
	contradictions := 0
	for seed := range uint64(400) {
		random := rand.New(rand.NewPCG(seed, 1))
		p := drawPuzzle(random)
		for range 3 {
			contradictions += p.compare(t, random, seed)
		}
	}
	if contradictions < 1_000 {
		t.Errorf("%d contradictions in all: the puzzles teach nothing", contradictions)
	}
}

// compare searches under up to two assumptions.
func (p *puzzle) compare(t *testing.T, random *rand.Rand, seed uint64) (contradictions int) {
	t.Helper()
	var assumptions []nogood.Lit
	var rules []func([]int) bool
	for range random.IntN(3) {
		l, rule := p.lit(random)
		assumptions, rules = append(assumptions, l), append(rules, rule)
	}
	p.model.Hint(p.vars[p.pick(random)], between(random, -1, 7))
	isAny, isAssumed := false, false
	p.solutions(func(v []int) bool {
		isAny, isAssumed = true, true
		for _, rule := range rules {
			isAssumed = isAssumed && rule(v)
		}
		return !isAssumed
	})
	outcome, met := p.model.Search(assumptions, 100_000, never)
	switch {
	case outcome == nogood.Found:
		values := make([]int, len(p.vars))
		for i, v := range p.vars {
			values[i] = p.model.Value(v)
		}
		for k, holds := range append(rules, p.holds...) {
			if !holds(values) {
				t.Fatalf("seed %d: %v is no solution: rule %d is broken", seed, values, k)
			}
		}
	case outcome == nogood.Refuted && isAssumed, outcome == nogood.Impossible && isAny, outcome == nogood.OutOfSteps:
		t.Fatalf("seed %d: outcome %d; with the assumptions there is a solution: %v, without: %v", seed, outcome, isAssumed, isAny)
	}
	return met
}

func TestRequireAndBounds(t *testing.T) {
	var m nogood.Model
	a, b := m.Var(0, 100), m.Var(0, 100)
	m.After(a, b, 30)
	m.Require(a.AtLeast(20))
	m.Require(b.AtMost(70))
	if outcome, _ := m.Search(nil, 10, never); outcome != nogood.Found {
		t.Fatalf("outcome %d", outcome)
	}
	for _, c := range []struct {
		v      nogood.Var
		lo, hi int
	}{{a, 20, 40}, {b, 50, 70}} {
		if lo, hi := m.Bounds(c.v); lo < c.lo || hi > c.hi {
			t.Errorf("bounds %d to %d, want %d to %d", lo, hi, c.lo, c.hi)
		}
	}
	m.Require(b.AtMost(49))
	if outcome, _ := m.Search(nil, 10, never); outcome != nogood.Impossible {
		t.Errorf("outcome %d, want Impossible", outcome)
	}
}

// Seven pigeons and six holes: no search can be shorter than many
// contradictions, and none may find a place.
func TestPigeonsFindNoPlace(t *testing.T) {
	var m nogood.Model
	var pieces []nogood.Piece
	for range 7 {
		pieces = append(pieces, nogood.Piece{Start: m.Var(0, 5), Minutes: 1, Amount: 1})
	}
	m.Load(1, pieces...)
	if outcome, met := m.Search(nil, 10, never); outcome != nogood.OutOfSteps || met != 10 {
		t.Errorf("outcome %d after %d contradictions, want to run out after 10", outcome, met)
	}
	if outcome, _ := m.Search(nil, 1_000_000, never); outcome != nogood.Impossible {
		t.Errorf("outcome %d, want Impossible", outcome)
	}
}

// A variable set aside takes its lowest value and is never decided.
func TestAVariableSetAsideFollows(t *testing.T) {
	var m nogood.Model
	a, end := m.Var(3, 9), m.Var(0, 50)
	m.SetAside(end)
	m.After(a, end, 10)
	m.Hint(a, 7)
	if outcome, _ := m.Search(nil, 10, never); outcome != nogood.Found || m.Value(a) != 7 || m.Value(end) != 17 {
		t.Errorf("outcome %d, %d and %d, want the hint 7 and 17", outcome, m.Value(a), m.Value(end))
	}
}

func TestAStoppedSearchEnds(t *testing.T) {
	var m nogood.Model
	var pieces []nogood.Piece
	for range 12 {
		pieces = append(pieces, nogood.Piece{Start: m.Var(0, 10), Minutes: 1, Amount: 1})
	}
	m.Load(1, pieces...)
	asked := 0
	outcome, _ := m.Search(nil, 1_000_000, func() bool { asked++; return asked > 2 })
	if outcome != nogood.OutOfSteps || asked == 0 {
		t.Errorf("outcome %d after being asked %d times", outcome, asked)
	}
}

// Not, and the two ways to write a bound.
func TestLiterals(t *testing.T) {
	var m nogood.Model
	v := m.Var(0, 9)
	if v.AtLeast(4).Not() != v.AtMost(3) || v.AtMost(3).Not() != v.AtLeast(4) || v.AtLeast(4).Not().Not() != v.AtLeast(4) {
		t.Error("a bound and its opposite do not match")
	}
}
