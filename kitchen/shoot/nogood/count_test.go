package nogood_test

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"benchproof/kitchen/shoot/nogood"
)

// count finds every solution of a model: each one found is forbidden, and the
// search goes on with what it has learned. It stops above most.
func count(t *testing.T, m *nogood.Model, vars []nogood.Var, most int) (solutions [][]int) {
	t.Helper()
	for len(solutions) <= most {
		switch outcome, _ := m.Search(nil, 100_000, never); outcome {
		case nogood.Impossible:
			return solutions
		case nogood.Found:
		default:
			t.Fatalf("outcome %d after %d solutions", outcome, len(solutions))
		}
		var values []int
		var other []nogood.Lit
		for _, v := range vars {
			value := m.Value(v)
			values, other = append(values, value), append(other, v.AtMost(value-1), v.AtLeast(value+1))
		}
		solutions = append(solutions, values)
		m.AtLeastOne(other...)
	}
	return solutions
}

// many adds so many variables alike.
func many(m *nogood.Model, n, lo, hi int) []nogood.Var {
	var vars []nogood.Var
	for range n {
		vars = append(vars, m.Var(lo, hi))
	}
	return vars
}

// atOnce puts pieces of one unit at the variables, all of a length.
func atOnce(m *nogood.Model, capacity, minutes int, vars []nogood.Var) {
	var pieces []nogood.Piece
	for _, v := range vars {
		pieces = append(pieces, nogood.Piece{Start: v, Minutes: minutes, Amount: 1})
	}
	m.Load(capacity, pieces...)
}

// Each model has as many solutions as can be counted on paper.
func TestHowManySolutionsThereAre(t *testing.T) {
	for _, c := range []struct {
		name  string
		model func(*nogood.Model) []nogood.Var
		want  int
	}{
		{"one variable: 0 to 4", func(m *nogood.Model) []nogood.Var { return many(m, 1, 0, 4) }, 5},
		{"two that have nothing to do with each other: 3 × 3", func(m *nogood.Model) []nogood.Var { return many(m, 2, -1, 1) }, 9},
		{"a range that is empty", func(m *nogood.Model) []nogood.Var { return many(m, 1, 3, 2) }, 0},
		{"one after the other, 0 to 3: pairs that rise, 3 + 2 + 1", func(m *nogood.Model) []nogood.Var {
			v := many(m, 2, 0, 3)
			m.After(v[0], v[1], 1)
			return v
		}, 6},
		{"neither before the other: 0 0, 1 1, 2 2, 3 3", func(m *nogood.Model) []nogood.Var {
			v := many(m, 2, 0, 3)
			m.After(v[0], v[1], 0)
			m.After(v[1], v[0], 0)
			return v
		}, 4},
		{"b from a to a + 2, both 0 to 4: 3 + 3 + 3 + 2 + 1", func(m *nogood.Model) []nogood.Var {
			v := many(m, 2, 0, 4)
			m.After(v[0], v[1], 0)
			m.After(v[1], v[0], -2)
			return v
		}, 12},
		{"each after the other", func(m *nogood.Model) []nogood.Var {
			v := many(m, 2, 0, 30)
			m.After(v[0], v[1], 1)
			m.After(v[1], v[0], 0)
			return v
		}, 0},
		{"five in a row, each two after the one before, 0 to 10: 7 over 5", func(m *nogood.Model) []nogood.Var {
			v := many(m, 5, 0, 10)
			for k := range 4 {
				m.After(v[k], v[k+1], 2)
			}
			return v
		}, 21},
		{"if a ≥ 2 then b ≥ a + 1, both 0 to 3: 4 + 4 + 1 + 0", func(m *nogood.Model) []nogood.Var {
			v := many(m, 2, 0, 3)
			m.AfterIf(v[0].AtLeast(2), v[0], v[1], 1)
			return v
		}, 9},
		{"if a ≥ 3 then b ≥ a + 7, both 0 to 9: that would put b at 10, so 3 × 10", func(m *nogood.Model) []nogood.Var {
			v := many(m, 2, 0, 9)
			m.AfterIf(v[0].AtLeast(3), v[0], v[1], 7)
			return v
		}, 30},
		{"if c then a + 2 ≤ b, else b + 2 ≤ a, 0 to 3: (02 03 13) twice", func(m *nogood.Model) []nogood.Var {
			v := append(many(m, 2, 0, 3), m.Var(0, 1))
			m.AfterIf(v[2].AtLeast(1), v[0], v[1], 2)
			m.AfterIf(v[2].AtMost(0), v[1], v[0], 2)
			return v
		}, 6},
		{"two pieces of two minutes one at a time, 0 to 3: the same", func(m *nogood.Model) []nogood.Var {
			v := many(m, 2, 0, 3)
			atOnce(m, 1, 2, v)
			return v
		}, 6},
		{"two pieces of two minutes, room for both: 4 × 4", func(m *nogood.Model) []nogood.Var {
			v := many(m, 2, 0, 3)
			atOnce(m, 2, 2, v)
			return v
		}, 16},
		{"three of a minute, two at a time, 0 or 1: 8 but all at 0 and all at 1", func(m *nogood.Model) []nogood.Var {
			v := many(m, 3, 0, 1)
			atOnce(m, 2, 1, v)
			return v
		}, 6},
		{"two minutes and three, one at a time, 0 to 3: 02 03 13 and 30", func(m *nogood.Model) []nogood.Var {
			v := many(m, 2, 0, 3)
			m.Load(1, nogood.Piece{Start: v[0], Minutes: 2, Amount: 1}, nogood.Piece{Start: v[1], Minutes: 3, Amount: 1})
			return v
		}, 4},
		{"two units and one of two, a minute each, 0 to 2: 9 less 3", func(m *nogood.Model) []nogood.Var {
			v := many(m, 2, 0, 2)
			m.Load(2, nogood.Piece{Start: v[0], Minutes: 1, Amount: 2}, nogood.Piece{Start: v[1], Minutes: 1, Amount: 1})
			return v
		}, 6},
		{"one variable in two pieces is still one start", func(m *nogood.Model) []nogood.Var {
			v := many(m, 1, 0, 3)
			m.Load(2, nogood.Piece{Start: v[0], Minutes: 2, Amount: 1}, nogood.Piece{Start: v[0], Minutes: 3, Amount: 1})
			return v
		}, 4},
		{"four pigeons, three holes", func(m *nogood.Model) []nogood.Var {
			v := many(m, 4, 0, 2)
			atOnce(m, 1, 1, v)
			return v
		}, 0},
		{"four pigeons, four holes: 4!", func(m *nogood.Model) []nogood.Var {
			v := many(m, 4, 0, 3)
			atOnce(m, 1, 1, v)
			return v
		}, 24},
		{"a ≥ 2 or b ≤ 0, both 0 to 3: 2 × 4 and 2 × 1", func(m *nogood.Model) []nogood.Var {
			v := many(m, 2, 0, 3)
			m.AtLeastOne(v[0].AtLeast(2), v[1].AtMost(0))
			return v
		}, 10},
		{"three bits in a ring of ifs: all or none", func(m *nogood.Model) []nogood.Var {
			v := many(m, 3, 0, 1)
			for k := range 3 {
				m.AtLeastOne(v[k].AtMost(0), v[(k+1)%3].AtLeast(1))
			}
			return v
		}, 2},
		{"just one of three bits", func(m *nogood.Model) []nogood.Var {
			v := many(m, 3, 0, 1)
			m.AtLeastOne(v[0].AtLeast(1), v[1].AtLeast(1), v[2].AtLeast(1))
			for k := range 3 {
				m.AtLeastOne(v[k].AtMost(0), v[(k+1)%3].AtMost(0))
			}
			return v
		}, 3},
		{"a rule without bounds", func(m *nogood.Model) []nogood.Var {
			m.AtLeastOne()
			return many(m, 1, 0, 4)
		}, 0},
		{"a bound or its opposite", func(m *nogood.Model) []nogood.Var {
			v := many(m, 1, 0, 4)
			m.AtLeastOne(v[0].AtLeast(2), v[0].AtLeast(2).Not())
			return v
		}, 5},
		{"one bound twice, 2 to 4 are left", func(m *nogood.Model) []nogood.Var {
			v := many(m, 1, 0, 4)
			m.AtLeastOne(v[0].AtLeast(2), v[0].AtLeast(2))
			return v
		}, 3},
		{"the wider of two bounds, 1 to 4 are left", func(m *nogood.Model) []nogood.Var {
			v := many(m, 1, 0, 4)
			m.AtLeastOne(v[0].AtLeast(3), v[0].AtLeast(1))
			return v
		}, 4},
		{"a hole: below 2 or above 2", func(m *nogood.Model) []nogood.Var {
			v := many(m, 1, 0, 4)
			m.AtLeastOne(v[0].AtMost(1), v[0].AtLeast(3))
			return v
		}, 4},
	} {
		t.Run(c.name, func(t *testing.T) {
			var m nogood.Model
			if got := count(t, &m, c.model(&m), c.want); len(got) != c.want {
				t.Errorf("%d solutions, want %d: %v", len(got), c.want, got)
			}
		})
	}
}

// differ keeps two variables from lying so far apart: b ≠ a + distance.
func differ(m *nogood.Model, a, b nogood.Var, lo, hi, distance int) {
	for value := lo; value <= hi; value++ {
		m.AtLeastOne(a.AtMost(value-1), a.AtLeast(value+1), b.AtMost(value+distance-1), b.AtLeast(value+distance+1))
	}
}

// Queens on a board of n × n, none of which attacks another: 1, 0, 0, 2, 10, 4
// and 40 ways (the On-Line Encyclopedia of Integer Sequences, A000170; from
// memory).
func TestQueens(t *testing.T) {
	for k, want := range []int{1, 0, 0, 2, 10, 4, 40} {
		n := k + 1
		var m nogood.Model
		row := many(&m, n, 1, n)
		for i := range n {
			for j := i + 1; j < n; j++ {
				for _, distance := range []int{0, j - i, i - j} {
					differ(&m, row[i], row[j], 1, n, distance)
				}
			}
		}
		if got := count(t, &m, row, want); len(got) != want {
			t.Errorf("%d × %d: %d ways, want %d", n, n, len(got), want)
		}
	}
}

// Two of each number from 1 to n in a row, with k numbers between the two of k:
// 1 way each for 3 and 4, none for 5 and 6, 26 for 7, not counting those read
// backwards (the On-Line Encyclopedia of Integer Sequences, A014552; from
// memory). A place is a minute, and the row takes one number at a time.
func TestPairsWithGaps(t *testing.T) {
	for n, ways := range map[int]int{2: 0, 3: 1, 4: 1, 5: 0, 6: 0, 7: 26} {
		var m nogood.Model
		var first, all []nogood.Var
		for k := 1; k <= n; k++ {
			a, b := m.Var(1, 2*n), m.Var(1, 2*n)
			m.After(a, b, k+1)
			m.After(b, a, -k-1)
			first, all = append(first, a), append(all, a, b)
		}
		atOnce(&m, 1, 1, all)
		if got := count(t, &m, first, 2*ways); len(got) != 2*ways {
			t.Errorf("to %d: %d ways, want %d and as many backwards", n, len(got), ways)
		}
	}
}

// Every solution is found once, and no other, while rules are learned, kept and
// forgotten between the searches.
func TestCountingAgreesWithTryingAllValues(t *testing.T) {
	for seed := range uint64(150) {
		p := drawPuzzle(rand.New(rand.NewPCG(seed, 2)))
		want := p.solutions()
		if len(want) > 60 {
			continue
		}
		p.model.ForgetAfter(5)
		got := count(t, &p.model, p.vars, len(want))
		if len(got) != len(want) {
			t.Fatalf("seed %d: %d solutions, want %d", seed, len(got), len(want))
		}
		seen := map[string]bool{}
		for _, v := range got {
			for k, r := range p.rules {
				if !r.holds(v) {
					t.Fatalf("seed %d: %v breaks rule %d", seed, v, k)
				}
			}
			if seen[fmt.Sprint(v)] {
				t.Fatalf("seed %d: %v is found twice", seed, v)
			}
			seen[fmt.Sprint(v)] = true
		}
	}
}
