package nogood_test

import (
	"math/rand/v2"
	"slices"
	"testing"

	"benchproof/kitchen/shoot/nogood"
)

// Search agrees with trying all values, under one assumption after the other,
// so that what it learned for one must be right for the next.
func TestSearchAgreesWithTryingAllValues(t *testing.T) {
	contradictions := 0
	for seed := range uint64(800) {
		random := rand.New(rand.NewPCG(seed, 1))
		p := drawPuzzle(random)
		solutions := p.solutions()
		for range 3 {
			contradictions += p.compare(t, random, seed, solutions)
		}
	}
	if contradictions < 1_000 {
		t.Errorf("%d contradictions in all: the puzzles teach nothing", contradictions)
	}
}

// compare searches under up to two assumptions.
func (p *puzzle) compare(t *testing.T, random *rand.Rand, seed uint64, solutions [][]int) (contradictions int) {
	t.Helper()
	var assumptions []nogood.Lit
	var rules []rule
	for range random.IntN(3) {
		l, r := p.lit(random)
		assumptions, rules = append(assumptions, l), append(rules, r)
	}
	p.model.Hint(p.vars[p.pick(random)], between(random, -1, 7))
	isAssumed := slices.ContainsFunc(solutions, func(v []int) bool {
		return !slices.ContainsFunc(rules, func(r rule) bool { return !r.holds(v) })
	})
	outcome, met := p.model.Search(assumptions, 100_000, never)
	switch {
	case outcome == nogood.Found:
		values := p.found()
		for k, r := range append(rules, p.rules...) {
			if !r.holds(values) {
				t.Fatalf("seed %d: %v is no solution: rule %d is broken", seed, values, k)
			}
		}
	case outcome == nogood.Refuted && isAssumed, outcome == nogood.Impossible && len(solutions) > 0, outcome == nogood.OutOfSteps:
		t.Fatalf("seed %d: outcome %d; with the assumptions there is a solution: %v, without: %d", seed, outcome, isAssumed, len(solutions))
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

// pigeons are so many that want a hole each, one of two always before the other.
func pigeons(m *nogood.Model, count, holes int) {
	var pigeons []nogood.Var
	for range count {
		v := m.Var(0, holes-1)
		for _, other := range pigeons {
			isFirst := m.Var(0, 1)
			m.AfterIf(isFirst.AtLeast(1), other, v, 1)
			m.AfterIf(isFirst.AtMost(0), v, other, 1)
		}
		pigeons = append(pigeons, v)
	}
}

// Seven pigeons and six holes: no search that takes them two by two can be
// shorter than many contradictions, and none may find a place.
func TestPigeonsFindNoPlace(t *testing.T) {
	var m nogood.Model
	pigeons(&m, 7, 6)
	if outcome, met := m.Search(nil, 10, never); outcome != nogood.OutOfSteps || met != 10 {
		t.Errorf("outcome %d after %d contradictions, want to run out after 10", outcome, met)
	}
	if outcome, _ := m.Search(nil, 1_000_000, never); outcome != nogood.Impossible {
		t.Errorf("outcome %d, want Impossible", outcome)
	}
}

// At a station they are counted, which takes no search at all.
func TestAStationCountsPigeons(t *testing.T) {
	for name, add := range map[string]func(*nogood.Model, ...nogood.Piece){
		"that serves them all in turn": (*nogood.Model).Queue,
		"of room for one":              func(m *nogood.Model, p ...nogood.Piece) { m.Load(1, p...) },
		"of room for two, halved":      func(m *nogood.Model, p ...nogood.Piece) { m.Load(2, append(p, p...)...) },
	} {
		t.Run(name, func(t *testing.T) {
			for count, want := range map[int]nogood.Outcome{6: nogood.Found, 7: nogood.Impossible, 40: nogood.Impossible} {
				var m nogood.Model
				var pieces []nogood.Piece
				for range count {
					pieces = append(pieces, nogood.Piece{Start: m.Var(0, 5), Minutes: 1, Amount: 1})
				}
				add(&m, pieces...)
				if outcome, met := m.Search(nil, 1_000, never); outcome != want || want == nogood.Impossible && met != 0 {
					t.Errorf("%d pigeons, six holes: outcome %d after %d contradictions, want %d", count, outcome, met, want)
				}
			}
		})
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
	pigeons(&m, 12, 11)
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
