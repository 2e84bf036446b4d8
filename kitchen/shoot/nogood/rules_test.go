package nogood_test

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"benchproof/kitchen/shoot/nogood"
)

// What rules and differences leave of a, b and c, from 0 to 9 each, by hand and
// without any assumption.
func TestWhatRulesLeave(t *testing.T) {
	type bounds [3][2]int
	free := [2]int{0, 9}
	for _, c := range []struct {
		name string
		ask  func(m *nogood.Model, a, b, c nogood.Var)
		want bounds
	}{
		{"b three after a", func(m *nogood.Model, a, b, _ nogood.Var) { m.After(a, b, 3) }, bounds{{0, 6}, {3, 9}, free}},
		{"a chain: two, then three", func(m *nogood.Model, a, b, c nogood.Var) { m.After(a, b, 2); m.After(b, c, 3) }, bounds{{0, 4}, {2, 6}, {5, 9}}},
		{"b at most three after a, and a at most 2", func(m *nogood.Model, a, b, _ nogood.Var) {
			m.After(b, a, -3)
			m.Require(a.AtMost(2))
		}, bounds{{0, 2}, {0, 5}, free}},
		{"required bounds meet", func(m *nogood.Model, a, b, _ nogood.Var) {
			m.Require(a.AtLeast(4))
			m.Require(a.AtMost(4))
			m.After(a, b, 0)
		}, bounds{{4, 4}, {4, 9}, free}},
		{"an if that holds", func(m *nogood.Model, a, b, c nogood.Var) {
			m.AfterIf(c.AtLeast(5), a, b, 2)
			m.Require(c.AtLeast(6))
		}, bounds{{0, 7}, {2, 9}, {6, 9}}},
		{"an if that does not hold", func(m *nogood.Model, a, b, c nogood.Var) {
			m.AfterIf(c.AtLeast(5), a, b, 2)
			m.Require(c.AtMost(4))
		}, bounds{free, free, {0, 4}}},
		{"an if that is open", func(m *nogood.Model, a, b, c nogood.Var) { m.AfterIf(c.AtLeast(5), a, b, 2) }, bounds{free, free, free}},
		{"an if that cannot be met", func(m *nogood.Model, a, b, c nogood.Var) {
			m.AfterIf(c.AtLeast(5), a, b, 2)
			m.Require(a.AtLeast(8))
		}, bounds{{8, 9}, free, {0, 4}}},
		{"the same, from the other side", func(m *nogood.Model, a, b, c nogood.Var) {
			m.AfterIf(c.AtMost(5), a, b, 2)
			m.Require(b.AtMost(1))
		}, bounds{free, {0, 1}, {6, 9}}},
		{"all bounds of a rule but one are false", func(m *nogood.Model, a, b, c nogood.Var) {
			m.AtLeastOne(a.AtLeast(5), b.AtLeast(5), c.AtLeast(5))
			m.Require(c.AtMost(4))
			m.Require(a.AtMost(3))
		}, bounds{{0, 3}, {5, 9}, {0, 4}}},
		{"one of them is true", func(m *nogood.Model, a, b, c nogood.Var) {
			m.AtLeastOne(a.AtLeast(5), b.AtLeast(5), c.AtLeast(5))
			m.Require(c.AtLeast(7))
			m.Require(a.AtMost(3))
		}, bounds{{0, 3}, free, {7, 9}}},
		{"the wider bound is true before the narrower", func(m *nogood.Model, a, b, c nogood.Var) {
			m.AtLeastOne(a.AtMost(2), b.AtLeast(5))
			m.Require(a.AtLeast(2))
		}, bounds{{2, 9}, free, free}},
		{"one more and it is false", func(m *nogood.Model, a, b, c nogood.Var) {
			m.AtLeastOne(a.AtMost(2), b.AtLeast(5))
			m.Require(a.AtLeast(3))
		}, bounds{{3, 9}, {5, 9}, free}},
		{"a rule wakes a rule wakes a difference", func(m *nogood.Model, a, b, c nogood.Var) {
			m.AtLeastOne(a.AtMost(3), b.AtLeast(4))
			m.AtLeastOne(b.AtMost(3), c.AtLeast(2))
			m.AfterIf(c.AtLeast(2), b, a, 1)
			m.Require(a.AtLeast(4))
		}, bounds{{5, 9}, {4, 8}, {2, 9}}},
	} {
		t.Run(c.name, func(t *testing.T) {
			var m nogood.Model
			v := many(&m, 3, 0, 9)
			c.ask(&m, v[0], v[1], v[2])
			if !m.Conclude() {
				t.Fatal("a contradiction")
			}
			for k, want := range c.want {
				if lo, hi := m.Bounds(v[k]); lo != want[0] || hi != want[1] {
					t.Errorf("variable %d is left %d to %d, want %d to %d", k, lo, hi, want[0], want[1])
				}
			}
		})
	}
}

// Where all rules are differences, the bounds that are left are the least and
// the most that a variable is in any solution.
func TestDifferencesLeaveNoMoreThanTheyMust(t *testing.T) {
	for seed := range uint64(150) {
		random := rand.New(rand.NewPCG(seed, 9))
		p := &puzzle{}
		for range 4 {
			lo := between(random, 0, 3)
			p.variable(lo, lo+between(random, 0, 8))
		}
		for range between(random, 1, 6) {
			i, j, lag := p.pick(random), p.pick(random), between(random, -5, 4)
			p.model.After(p.vars[i], p.vars[j], lag)
			p.add(func(v []int) bool { return v[j] >= v[i]+lag }, i, j)
		}
		solutions := p.solutions()
		if ok := p.model.Conclude(); ok != (len(solutions) > 0) {
			t.Fatalf("seed %d: no contradiction: %v, %d solutions", seed, ok, len(solutions))
		}
		for i, v := range p.vars {
			least, most := 100, -1
			for _, values := range solutions {
				least, most = min(least, values[i]), max(most, values[i])
			}
			if lo, hi := p.model.Bounds(v); len(solutions) > 0 && (lo != least || hi != most) {
				t.Fatalf("seed %d: variable %d is left %d to %d, in solutions it is %d to %d", seed, i, lo, hi, least, most)
			}
		}
	}
}

// Assumptions are for one search: what they refute is open again in the next.
func TestAssumptionsAreForOneSearch(t *testing.T) {
	var m nogood.Model
	v := many(&m, 3, 0, 2)
	atOnce(&m, 1, 1, v) // a permutation of 0, 1, 2
	for _, c := range []struct {
		name   string
		assume []nogood.Lit
		want   nogood.Outcome
	}{
		{"nothing", nil, nogood.Found},
		{"the first is last", []nogood.Lit{v[0].AtLeast(2)}, nogood.Found},
		{"two are last", []nogood.Lit{v[0].AtLeast(2), v[1].AtLeast(2)}, nogood.Refuted},
		{"none is last", []nogood.Lit{v[0].AtMost(1), v[1].AtMost(1), v[2].AtMost(1)}, nogood.Refuted},
		{"what always holds", []nogood.Lit{v[0].AtLeast(0), v[1].AtMost(2)}, nogood.Found},
		{"what never holds", []nogood.Lit{v[0].AtLeast(3)}, nogood.Refuted},
		{"one thing and its opposite", []nogood.Lit{v[0].AtLeast(1), v[0].AtMost(0)}, nogood.Refuted},
		{"one thing twice", []nogood.Lit{v[0].AtLeast(1), v[0].AtLeast(1)}, nogood.Found},
		{"all of one solution", []nogood.Lit{v[0].AtLeast(2), v[1].AtMost(0), v[2].AtMost(1), v[2].AtLeast(1)}, nogood.Found},
		{"nothing again", nil, nogood.Found},
	} {
		t.Run(c.name, func(t *testing.T) {
			outcome, _ := m.Search(c.assume, 1000, never)
			if outcome != c.want {
				t.Fatalf("outcome %d, want %d", outcome, c.want)
			}
			if outcome != nogood.Found {
				return
			}
			values := []int{m.Value(v[0]), m.Value(v[1]), m.Value(v[2])}
			if !all(c.assume, values) || values[0]+values[1]+values[2] != 3 || values[0] == values[1] {
				t.Errorf("%v is no permutation with what was assumed", values)
			}
		})
	}
}

// A variable that is free takes its hint, or the nearest value to it; without
// one its lowest.
func TestHintsAreTriedFirst(t *testing.T) {
	for _, c := range []struct {
		name   string
		lo, hi int
		hint   int
		want   int
	}{
		{"inside", 2, 8, 5, 5}, {"the lowest", 2, 8, 2, 2}, {"the highest", 2, 8, 8, 8}, {"below", 2, 8, 0, 2}, {"above", 2, 8, 99, 8}, {"of a fixed one", 4, 4, 7, 4},
	} {
		t.Run(c.name, func(t *testing.T) {
			var m nogood.Model
			v, without := m.Var(c.lo, c.hi), m.Var(c.lo, c.hi)
			m.Hint(v, c.hint)
			if outcome, met := m.Search(nil, 10, never); outcome != nogood.Found || met != 0 || m.Value(v) != c.want || m.Value(without) != c.lo {
				t.Errorf("outcome %d after %d contradictions, %d and %d; want %d and %d", outcome, met, m.Value(v), m.Value(without), c.want, c.lo)
			}
			m.Hint(v, c.lo)
			if m.Search(nil, 10, never); m.Value(v) != c.lo {
				t.Errorf("with another hint it is %d, want %d", m.Value(v), c.lo)
			}
		})
	}
}

// Eight pigeons and seven holes, with hardly any rule kept: what is forgotten is
// learned again, what spans two levels stays, and the end is the same.
func TestForgettingLosesNothingThatIsTrue(t *testing.T) {
	var m nogood.Model
	var vars []nogood.Var
	for range 8 {
		vars = append(vars, m.Var(0, 6))
	}
	atOnce(&m, 1, 1, vars)
	m.ForgetAfter(30)
	short := 0
	for range 10_000 {
		outcome, met := m.Search(nil, 40, never)
		if outcome == nogood.Impossible {
			return
		}
		if outcome != nogood.OutOfSteps || met < 40 {
			t.Fatalf("outcome %d after %d contradictions", outcome, met)
		}
		now := 0
		for _, spread := range m.Spreads() {
			if spread <= 2 {
				now++
			}
		}
		if now < short {
			t.Fatalf("%d rules of two levels are left of %d", now, short)
		}
		short = now
		if kept := len(m.Learned()); kept-short > 200 {
			t.Fatalf("%d rules are kept beside %d short ones", kept-short, short)
		}
	}
	t.Error("eight pigeons found seven holes, or nothing was learned of it")
}

func ExampleModel() {
	var m nogood.Model
	knead, bake, glaze := m.Var(0, 60), m.Var(0, 60), m.Var(0, 60)
	m.After(knead, bake, 25) // 10 of kneading, 15 of rest
	m.After(bake, glaze, 20)
	hands := func(start nogood.Var, minutes int) nogood.Piece {
		return nogood.Piece{Start: start, Minutes: minutes, Amount: 1}
	}
	call := m.Var(40, 45) // somebody rings, and talks for ten minutes
	m.Load(1, hands(knead, 10), hands(glaze, 5), hands(call, 10))
	never := func() bool { return false }
	for _, by := range []int{50, 49} {
		outcome, _ := m.Search([]nogood.Lit{glaze.AtMost(by)}, 1000, never)
		if outcome == nogood.Found {
			fmt.Println("knead at", m.Value(knead), "bake at", m.Value(bake), "glaze at", m.Value(glaze), "the call comes at", m.Value(call))
		} else {
			fmt.Println("glazed by", by, "there is no way:", outcome == nogood.Refuted)
		}
	}
	// Output:
	// knead at 0 bake at 25 glaze at 50 the call comes at 40
	// glazed by 49 there is no way: true
}
