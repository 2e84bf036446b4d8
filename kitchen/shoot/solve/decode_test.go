package solve_test

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"benchproof/kitchen/shoot/feasible"
	"benchproof/kitchen/shoot/project"
	"benchproof/kitchen/shoot/solve"
)

// open is every rule that leaves the end of a task open and needs no set-ups:
// what justifying and planning minute by minute can do.
var open = drawn{tasks: 8, hours: true}

func drawOpen(t *rapid.T) project.Project {
	p := open.draw(t)
	for i := range p.Tasks {
		if rapid.IntRange(0, 3).Draw(t, "is late") == 0 {
			p.Tasks[i].NotBefore = rapid.IntRange(1, 15).Draw(t, "not before")
		}
	}
	return p
}

func drawOrder(t *rapid.T, n int) []int {
	order := make([]int, n)
	for i := range order {
		order[i] = i
	}
	return rapid.Permutation(order).Draw(t, "order")
}

// One task earlier, and nothing else, is no plan: true of what serial
// generation gives.
func mustBeActive(t *rapid.T, p project.Project, starts []int) {
	earlier := slices.Clone(starts)
	for i, s := range starts {
		for earlier[i] = 0; earlier[i] < s; earlier[i]++ {
			if feasible.Check(p, earlier) == nil {
				t.Fatalf("task %d starts at %d in %v, and could at %d", i, s, starts, earlier[i])
			}
		}
		earlier[i] = s
	}
}

func TestSerialPlansAreFeasibleAndActive(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawOpen(t)
		starts, ok := solve.Serial(p, drawOrder(t, len(p.Tasks)))
		if !ok {
			t.Skip("a station never comes back")
		}
		mustBeFeasible(t, p, starts)
		mustBeActive(t, p, starts)
	})
}

// With longest waits and latest ends an order may lead nowhere; where it leads
// somewhere, that is a plan.
func TestSerialPlansWithEveryRule(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := sound(t, 8)
		if starts, ok := solve.Serial(p, drawOrder(t, len(p.Tasks))); ok {
			mustBeFeasible(t, p, starts)
		}
	})
}

// Of all orders, one gives a shortest plan.
func TestSomeOrderGivesAShortestPlan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawn{tasks: 4, hours: true}.draw(t)
		least := -1
		var try func(order []int)
		try = func(order []int) {
			if len(order) == len(p.Tasks) {
				if starts, ok := solve.Serial(p, order); ok && (least < 0 || p.Makespan(starts) < least) {
					least = p.Makespan(starts)
				}
				return
			}
			for i := range p.Tasks {
				if !slices.Contains(order, i) {
					try(append(slices.Clone(order), i))
				}
			}
		}
		try(nil)
		if r, ok := best(t, p); ok != (least >= 0) || ok && r.Optimal && r.Makespan != least {
			t.Fatalf("the best order gives %d, the plan is %+v", least, r)
		}
	})
}

// Minute by minute: a plan, and in no minute could a task have begun that came
// later, with all that ran then.
func TestParallelPlansLeaveNobodyIdle(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawOpen(t)
		starts, ok := solve.Parallel(p, drawOrder(t, len(p.Tasks)))
		if !ok {
			t.Skip("a station never comes back")
		}
		mustBeFeasible(t, p, starts)
		for i, s := range starts {
			for minute := range s {
				isGone := make([]bool, len(p.Tasks))
				then := slices.Clone(starts)
				then[i] = minute
				for j := range starts {
					isGone[j] = j != i && starts[j] > minute // they came later too
				}
				if mayRun(p, then, isGone) {
					t.Fatalf("task %d starts at %d in %v, and could have at %d", i, s, starts, minute)
				}
			}
		}
	})
}

// mayRun tells whether a plan is one without some of its tasks.
func mayRun(p project.Project, starts []int, isGone []bool) bool {
	var left []int
	for i, s := range starts {
		if !isGone[i] {
			left = append(left, s)
		}
	}
	for _, w := range p.Waits {
		if isGone[w.Before] && !isGone[w.After] {
			return false // what it waits for had not begun
		}
	}
	return feasible.Check(p.Without(isGone), left) == nil
}

func TestParallelNeedsAnOpenEnd(t *testing.T) {
	for _, c := range []struct {
		name  string
		write func(*sheet)
		ok    bool
	}{
		{"nothing special", func(*sheet) {}, true},
		{"a latest end", func(s *sheet) { s.Tasks[0].LatestEnd = 50 }, false},
		{"a longest wait", func(s *sheet) { s.wait(0, 1, 0, 50) }, false},
		{"a set-up", func(s *sheet) { s.setup("close", 5); s.shot("close", 5) }, false},
		{"an oven that goes for good", func(s *sheet) { s.Stations[0].Changes = []project.Level{{From: 15, Capacity: 0}} }, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			var s sheet
			s.station("oven", 1)
			s.task(10, "oven")
			s.task(10, "oven")
			c.write(&s)
			if starts, ok := solve.Parallel(s.Project, []int{1, 0, 2}); ok != c.ok || ok && !slices.Equal(starts, []int{10, 0}) {
				t.Errorf("%v, %v; want a plan: %v", starts, ok, c.ok)
			}
		})
	}
}

// Pushed to the right and back to the left, a plan is a plan and never longer.
func TestJustifyingNeverLengthens(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawOpen(t)
		starts, ok := solve.Serial(p, drawOrder(t, len(p.Tasks)))
		if !ok {
			t.Skip("a station never comes back")
		}
		before := slices.Clone(starts)
		after := solve.Justify(p, starts)
		mustBeFeasible(t, p, after)
		if !slices.Equal(starts, before) {
			t.Fatalf("the plan %v was changed to %v", before, starts)
		}
		if p.Makespan(after) > p.Makespan(before) {
			t.Fatalf("%v ends at %d, justified at %d", before, p.Makespan(before), p.Makespan(after))
		}
	})
}

// Worked out by hand: the tart is baked first, 0 to 30; the loaf, kneaded by 10
// and risen by 40, from 40 to 80: 80 in all. From the right the loaf is baked
// last, 40 to 80, and the tart right before it, so nothing is won; with the tart
// after the loaf, 40 to 80 and 80 to 110, the tart goes to the front: 80.
func TestJustifyingByHand(t *testing.T) {
	var s sheet
	s.station("oven", 1)
	s.wait(s.task(10), s.task(40, "oven"), 30, project.None)
	s.task(30, "oven")
	for _, starts := range [][]int{{0, 40, 0}, {0, 40, 80}} {
		if got := s.Makespan(solve.Justify(s.Project, starts)); got != 80 {
			t.Errorf("%v justified ends at %d, want 80", starts, got)
		}
	}
}
