package nogood_test

import (
	"math/rand/v2"
	"testing"

	"benchproof/kitchen/shoot/nogood"
)

// window is a piece with the bounds of its start.
type window struct{ lo, hi, minutes, amount int }

// What a station leaves of the windows of its pieces, by hand: a piece surely
// runs from its latest start to its earliest end.
func TestWhatAStationLeaves(t *testing.T) {
	for _, c := range []struct {
		name     string
		capacity int
		pieces   []window
		want     [][2]int // nil: a contradiction
	}{
		{"one that is fixed pushes the other behind it", 1, []window{{0, 0, 3, 1}, {0, 9, 2, 1}}, [][2]int{{0, 0}, {3, 9}}},
		{"there is room before it", 1, []window{{2, 2, 3, 1}, {0, 9, 2, 1}}, [][2]int{{2, 2}, {0, 9}}},
		{"there is too little room before it", 1, []window{{1, 1, 3, 1}, {0, 9, 2, 1}}, [][2]int{{1, 1}, {4, 9}}},
		{"and none after it", 1, []window{{8, 8, 3, 1}, {0, 9, 2, 1}}, [][2]int{{8, 8}, {0, 6}}},
		{"a window of 4 for 3 minutes: 1 to 3 is sure", 1, []window{{0, 1, 3, 1}, {1, 9, 1, 1}}, [][2]int{{0, 1}, {3, 9}}},
		{"a window of 6 for 3 minutes: nothing is sure", 1, []window{{0, 3, 3, 1}, {1, 9, 1, 1}}, [][2]int{{0, 3}, {1, 9}}},
		{"room for both", 2, []window{{0, 0, 3, 1}, {0, 9, 2, 1}}, [][2]int{{0, 0}, {0, 9}}},
		{"one needs all there is", 2, []window{{0, 0, 3, 1}, {0, 9, 2, 2}}, [][2]int{{0, 0}, {3, 9}}},
		{"two together leave the two minutes before", 2, []window{{0, 0, 3, 1}, {2, 2, 3, 1}, {0, 9, 2, 1}}, [][2]int{{0, 0}, {2, 2}, {0, 9}}},
		{"two together leave too little before", 2, []window{{0, 0, 3, 1}, {1, 1, 3, 1}, {0, 9, 2, 1}}, [][2]int{{0, 0}, {1, 1}, {3, 9}}},
		{"over one and over the next", 1, []window{{1, 1, 2, 1}, {4, 4, 3, 1}, {0, 20, 2, 1}}, [][2]int{{1, 1}, {4, 4}, {7, 20}}},
		{"pushed from both sides to one minute", 1, []window{{0, 0, 3, 1}, {5, 5, 3, 1}, {1, 6, 2, 1}}, [][2]int{{0, 0}, {5, 5}, {3, 3}}},
		{"pushed out of all there is", 1, []window{{0, 0, 3, 1}, {4, 4, 3, 1}, {1, 5, 2, 1}}, nil},
		{"two that are sure at once", 1, []window{{0, 1, 3, 1}, {0, 1, 3, 1}}, nil},
		{"three halves", 3, []window{{0, 0, 4, 2}, {3, 3, 4, 2}}, nil},
		{"one ends as the other begins", 3, []window{{0, 0, 4, 2}, {4, 4, 4, 2}}, [][2]int{{0, 0}, {4, 4}}},
		{"a push that pushes another", 1, []window{{0, 0, 2, 1}, {1, 3, 3, 1}, {3, 9, 1, 1}}, [][2]int{{0, 0}, {2, 3}, {5, 9}}},
		{"minutes before zero", 1, []window{{-3, -3, 3, 1}, {-5, 4, 3, 1}}, [][2]int{{-3, -3}, {0, 4}}},
	} {
		t.Run(c.name, func(t *testing.T) {
			var m nogood.Model
			var vars []nogood.Var
			var pieces []nogood.Piece
			for _, w := range c.pieces {
				v := m.Var(w.lo, w.hi)
				vars, pieces = append(vars, v), append(pieces, nogood.Piece{Start: v, Minutes: w.minutes, Amount: w.amount})
			}
			m.Load(c.capacity, pieces...)
			if ok := m.Conclude(); ok != (c.want != nil) {
				t.Fatalf("no contradiction: %v, want %v", ok, c.want != nil)
			}
			for k, want := range c.want {
				if lo, hi := m.Bounds(vars[k]); lo != want[0] || hi != want[1] {
					t.Errorf("piece %d from %d to %d, want %d to %d", k, lo, hi, want[0], want[1])
				}
			}
		})
	}
}

// Pieces that must lie in a stretch of time need no more than it gives, by hand.
// No two of them surely run at once.
func TestWhatMustLieInAStretch(t *testing.T) {
	for _, c := range []struct {
		name       string
		capacity   int
		pieces     []window
		fits       bool
		fitsInTurn bool
	}{
		{"nothing", 1, nil, true, true},
		{"three of 2 in 6", 1, []window{{0, 4, 2, 1}, {0, 4, 2, 1}, {0, 4, 2, 1}}, true, true},
		{"three of 2 in 5", 1, []window{{0, 3, 2, 1}, {0, 3, 2, 1}, {0, 3, 2, 1}}, false, false},
		{"three of 2 in 5, later", 1, []window{{9, 12, 2, 1}, {9, 12, 2, 1}, {9, 12, 2, 1}}, false, false},
		{"one may come before them", 1, []window{{7, 12, 2, 1}, {9, 12, 2, 1}, {9, 12, 2, 1}}, true, true},
		{"one may come after them", 1, []window{{9, 14, 2, 1}, {9, 12, 2, 1}, {9, 12, 2, 1}}, true, true},
		{"5 minutes in windows one in the other", 1, []window{{2, 3, 1, 1}, {1, 2, 2, 1}, {1, 3, 2, 1}}, false, false},
		{"the same with a minute more", 1, []window{{2, 4, 1, 1}, {1, 2, 2, 1}, {1, 4, 2, 1}}, true, true},
		{"two at once in half the time, but not in turn", 2, []window{{0, 3, 2, 1}, {0, 3, 2, 1}, {0, 3, 2, 1}}, true, false},
		{"five of 2 in 4, two at once: 10 of 8", 2, []window{{0, 2, 2, 1}, {0, 2, 2, 1}, {0, 2, 2, 1}, {0, 2, 2, 1}, {0, 2, 2, 1}}, false, false},
		{"two wide ones in 3: 8 of 6", 2, []window{{0, 1, 2, 2}, {0, 1, 2, 2}}, false, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			for _, isInTurn := range []bool{false, true} {
				var m nogood.Model
				var pieces []nogood.Piece
				for _, w := range c.pieces {
					pieces = append(pieces, nogood.Piece{Start: m.Var(w.lo, w.hi), Minutes: w.minutes, Amount: w.amount})
				}
				want := c.fits
				if isInTurn {
					m.Queue(pieces...)
					want = c.fitsInTurn
				} else {
					m.Load(c.capacity, pieces...)
				}
				if got := m.Conclude(); got != want {
					t.Errorf("in turn %v: it fits %v, want %v; %v", isInTurn, got, want, m.Clash())
				}
			}
		})
	}
}

// Two stations, and an order asked between their pieces: 4 minutes of mixing,
// then 3 of baking; the oven is taken from 5 to 9, so baking begins at 9 and has
// ended by 12, and so must a second mixing in a mixer taken until 4 and from 8.
func TestStationsAndWaitsTogether(t *testing.T) {
	var m nogood.Model
	mix, bake, again := m.Var(0, 12), m.Var(0, 9), m.Var(0, 8)
	taken, gone := m.Var(5, 5), m.Var(8, 8)
	m.After(mix, bake, 4)
	m.Load(1, nogood.Piece{Start: bake, Minutes: 3, Amount: 1}, nogood.Piece{Start: taken, Minutes: 4, Amount: 1})
	m.Load(1, nogood.Piece{Start: mix, Minutes: 4, Amount: 1}, nogood.Piece{Start: again, Minutes: 4, Amount: 1}, nogood.Piece{Start: gone, Minutes: 9, Amount: 1})
	for _, c := range []struct {
		name   string
		assume []nogood.Lit
		want   nogood.Outcome
		starts [3]int
	}{
		{"as it comes", nil, nogood.Found, [3]int{0, 9, 4}},
		{"the second mixing first", []nogood.Lit{again.AtMost(3)}, nogood.Found, [3]int{4, 9, 0}},
		{"both before 4", []nogood.Lit{again.AtMost(3), mix.AtMost(3)}, nogood.Refuted, [3]int{}},
		{"baking before the oven is free", []nogood.Lit{bake.AtMost(8)}, nogood.Refuted, [3]int{}},
	} {
		t.Run(c.name, func(t *testing.T) {
			outcome, _ := m.Search(c.assume, 1000, never)
			if outcome != c.want {
				t.Fatalf("outcome %d, want %d", outcome, c.want)
			}
			if got := [3]int{m.Value(mix), m.Value(bake), m.Value(again)}; outcome == nogood.Found && got != c.starts {
				t.Errorf("starts %v, want %v", got, c.starts)
			}
		})
	}
}

// The shortest makespan of pieces at one station, by ever narrower assumptions
// on a variable set aside, is that of trying all starts.
func TestTheShortestMakespan(t *testing.T) {
	for seed := range uint64(80) {
		random := rand.New(rand.NewPCG(seed, 8))
		p := &puzzle{}
		for range 5 {
			p.variable(between(random, 0, 2), 7)
		}
		p.load(random)
		for range 3 {
			p.difference(random)
		}
		end := p.model.Var(0, 30)
		p.model.SetAside(end)
		minutes := make([]int, len(p.vars))
		for i, v := range p.vars {
			minutes[i] = between(random, 1, 4)
			p.model.After(v, end, minutes[i])
		}
		want := -1
		for _, v := range p.solutions() {
			last := 0
			for i := range v {
				last = max(last, v[i]+minutes[i])
			}
			if want < 0 || last < want {
				want = last
			}
		}
		got := -1
		for by := 30; ; by = got - 1 {
			if outcome, _ := p.model.Search([]nogood.Lit{end.AtMost(by)}, 100_000, never); outcome != nogood.Found {
				break
			}
			if got = p.model.Value(end); got > by {
				t.Fatalf("seed %d: an end at %d was asked for, and one at %d was found", seed, by, got)
			}
		}
		if got != want {
			t.Fatalf("seed %d: the shortest ends at %d, want %d", seed, got, want)
		}
	}
}
