package solve_test

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"benchproof/kitchen/shoot/project"
	"benchproof/kitchen/shoot/solve"
)

// Swapping neighbours gives plans that are never longer than the one begun with,
// for one seed the same ones.
func TestTurnsNeverLengthen(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := shop(t, 12)
		if rapid.Bool().Draw(t, "is filmed") { // set-ups that need nobody are lags between turns
			p.Setups.Minutes = map[string]int{"wide": 4, "close": 2}
			for i := range p.Tasks {
				p.Tasks[i].Setup = rapid.SampledFrom([]string{"", "wide", "close"}).Draw(t, "setup")
			}
		}
		starts, ok := solve.Serial(p, drawOrder(t, len(p.Tasks)))
		if !ok {
			t.Fatal("a shop without limits has no plan")
		}
		seed := rapid.Uint64().Draw(t, "seed")
		better, ok := solve.Turns(p, starts, 50, seed)
		if !ok {
			return // no station at which two could meet
		}
		mustBeFeasible(t, p, better)
		if p.Makespan(better) > p.Makespan(starts) {
			t.Fatalf("%d becomes %d", p.Makespan(starts), p.Makespan(better))
		}
		if again, _ := solve.Turns(p, starts, 50, seed); !slices.Equal(again, better) {
			t.Fatalf("%v, and again %v", better, again)
		}
	})
}

// From a plan in the order of the list, swapping turns alone finds the published
// optimum of FT06.
func TestTurnsFindTheOptimumOfFT06(t *testing.T) {
	p := readJobShop(t, "testdata/ft06.txt")
	order := make([]int, len(p.Tasks))
	for i := range order {
		order[i] = i
	}
	starts, ok := solve.Serial(p, order)
	if !ok || p.Makespan(starts) <= 55 {
		t.Fatalf("the plan in the order of the list ends at %d", p.Makespan(starts))
	}
	better, ok := solve.Turns(p, starts, 5000, 1)
	if !ok || p.Makespan(better) != 55 {
		t.Errorf("from %d it comes to %d, want 55", p.Makespan(starts), p.Makespan(better))
	}
	mustBeFeasible(t, p, better)
}

func TestTurnsAreForStationsThatServeOne(t *testing.T) {
	for _, c := range []struct {
		name  string
		write func(*sheet)
		ok    bool
	}{
		{"an oven for one", func(*sheet) {}, true},
		{"an oven for all that there are", func(s *sheet) { s.Stations[0].Capacity = 2 }, false},
		{"an oven for two of three", func(s *sheet) { s.Stations[0].Capacity = 2; s.task(5, "oven") }, false},
		{"an oven for two, of which each takes both", func(s *sheet) {
			s.Stations[0].Capacity = 2
			s.Tasks[0].Needs[0].Amount, s.Tasks[1].Needs[0].Amount = 2, 2
		}, true},
		{"an oven that is taken at times", func(s *sheet) {
			s.Stations[0].Changes = []project.Level{{From: 5, Capacity: 0}, {From: 9, Capacity: 1}}
		}, false},
		{"a latest end", func(s *sheet) { s.Tasks[0].LatestEnd = 90 }, false},
		{"a longest wait", func(s *sheet) { s.wait(0, 1, 0, 9) }, false},
		{"set-ups that need nobody", func(s *sheet) { s.setup("close", 5); s.shot("close", 5, "oven") }, true},
		{"set-ups that need somebody", func(s *sheet) { s.setup("close", 5, "oven"); s.shot("close", 5, "oven") }, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			var s sheet
			s.station("oven", 1)
			s.task(10, "oven")
			s.task(20, "oven")
			c.write(&s)
			if _, ok := solve.Turns(s.Project, []int{0, 10, 40}[:len(s.Tasks)], 10, 1); ok != c.ok {
				t.Errorf("it takes turns: %v, want %v", ok, c.ok)
			}
		})
	}
}
