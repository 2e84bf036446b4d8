package solve_test

import (
	"testing"

	"benchproof/kitchen/shoot/solve"
)

// Each kitchen is small enough to be planned on paper; its name says how long
// it takes, and why.
func TestPlansByHand(t *testing.T) {
	for _, c := range []struct {
		name  string
		write func(*sheet)
		want  int
	}{
		{"three trays, one oven: 10 + 10 + 10", func(s *sheet) {
			s.station("oven", 1)
			s.task(10, "oven")
			s.task(10, "oven")
			s.task(10, "oven")
		}, 30},
		{"three trays, two ovens: two, then one", func(s *sheet) {
			s.station("oven", 2)
			s.task(10, "oven")
			s.task(10, "oven")
			s.task(10, "oven")
		}, 20},
		{"30 beside 10 + 20", func(s *sheet) {
			s.station("oven", 2)
			s.task(10, "oven")
			s.task(30, "oven")
			s.task(20, "oven")
		}, 30},
		{"60, 50 and 40 of a hundred: 60 with 40, then 50", func(s *sheet) {
			s.station("oven", 100)
			for _, share := range []int{60, 50, 40} {
				s.share(s.task(10), "oven", share)
			}
		}, 20},
		{"60, 51 and 50: no two fit", func(s *sheet) {
			s.station("oven", 100)
			for _, share := range []int{60, 51, 50} {
				s.share(s.task(10), "oven", share)
			}
		}, 30},
		{"mix, prove, shape: 10 + 90 + 20, hands or no hands", func(s *sheet) {
			s.station("hands", 1)
			s.row(s.task(10, "hands"), s.task(90), s.task(20, "hands"))
		}, 120},
		{"two doughs: mixed by 10 and 20, proved by 40 and 50, shaped by 50 and 60", func(s *sheet) {
			s.station("hands", 1)
			for range 2 {
				s.row(s.task(10, "hands"), s.task(30), s.task(10, "hands"))
			}
		}, 60},
		{"what rests for 30 first: 4 + 30 + 10; the other, 10 + 5 + 10, fits into the rest", func(s *sheet) {
			s.station("hands", 1)
			s.row(s.task(10, "hands"), s.task(5), s.task(10, "hands"))
			s.row(s.task(4, "hands"), s.task(30), s.task(10, "hands"))
		}, 44},
		{"heat 10, stir at once, chop 30: heated from 20 on, 30 + 5", func(s *sheet) {
			s.station("hands", 1)
			s.station("hob", 1)
			heat, stir := s.task(10, "hob"), s.task(5, "hands")
			s.wait(heat, stir, 0, 0)
			s.task(30, "hands")
		}, 35},
		{"the same, and it may stand for 30: nothing changes", func(s *sheet) {
			s.station("hands", 1)
			s.station("hob", 1)
			heat, stir := s.task(10, "hob"), s.task(5, "hands")
			s.wait(heat, stir, 0, 30)
			s.task(30, "hands")
		}, 35},
		{"bake 20, glaze 15 to 20 later, hands taken 30 to 38: 38 + 5", func(s *sheet) {
			s.station("hands", 1)
			s.wait(s.task(20), s.task(5, "hands"), 15, 20)
			s.pin(s.task(8, "hands"), 30)
		}, 43},
		{"hands taken until 42: it is baked 2 later, 42 + 5", func(s *sheet) {
			s.station("hands", 1)
			s.wait(s.task(20), s.task(5, "hands"), 15, 20)
			s.pin(s.task(12, "hands"), 30)
		}, 47},
		{"a helper until 30: 20 beside 20, then 20", func(s *sheet) {
			s.station("hands", 2, 30, 1)
			s.task(20, "hands")
			s.task(20, "hands")
			s.task(20, "hands")
		}, 40},
		{"a helper from 20 on: 20, then 20 beside 20", func(s *sheet) {
			s.station("hands", 1, 20, 2)
			s.task(20, "hands")
			s.task(20, "hands")
			s.task(20, "hands")
		}, 40},
		{"two carry for 15 before the helper goes at 24, so that comes first: 15 + 10", func(s *sheet) {
			s.station("hands", 2, 24, 1)
			s.task(15, "hands", "hands")
			s.task(10, "hands")
		}, 25},
		{"the oven is taken from 10 to 25: 15 do not fit before it", func(s *sheet) {
			s.station("oven", 1, 10, 0, 25, 1)
			s.task(15, "oven")
		}, 40},
		{"10 do, and 15 after it", func(s *sheet) {
			s.station("oven", 1, 10, 0, 25, 1)
			s.task(15, "oven")
			s.task(10, "oven")
		}, 40},
		{"11 and 15 after it: 25 + 26", func(s *sheet) {
			s.station("oven", 1, 10, 0, 25, 1)
			s.task(15, "oven")
			s.task(11, "oven")
		}, 51},
		{"no noise from 5 to 15: 10 after it", func(s *sheet) { s.bar(s.task(10), 5, 15) }, 25},
		{"5 before it", func(s *sheet) { s.bar(s.task(5), 5, 15) }, 5},
		{"barred twice: 5 do not fit in the 4 between", func(s *sheet) {
			i := s.task(5)
			s.bar(i, 0, 6)
			s.bar(i, 10, 15)
		}, 20},
		{"a toast from 20 to 25: 25 of work do not fit before", func(s *sheet) {
			s.station("hands", 1)
			s.pin(s.task(5, "hands"), 20)
			s.task(25, "hands")
		}, 50},
		{"20 do", func(s *sheet) {
			s.station("hands", 1)
			s.pin(s.task(5, "hands"), 20)
			s.task(20, "hands")
		}, 25},
		{"15 must be done by 15, so 20 and its 40 of rest come after: 15 + 20 + 40", func(s *sheet) {
			s.station("hands", 1)
			s.row(s.task(20, "hands"), s.task(40))
			s.Tasks[s.task(15, "hands")].LatestEnd = 15
		}, 75},
		{"by 35 will do: 20 + 40", func(s *sheet) {
			s.station("hands", 1)
			s.row(s.task(20, "hands"), s.task(40))
			s.Tasks[s.task(15, "hands")].LatestEnd = 35
		}, 60},
		{"flour comes at 30: 30 + 10 + 40", func(s *sheet) {
			a := s.task(10)
			s.Tasks[a].NotBefore = 30
			s.row(a, s.task(40))
		}, 80},
		{"a moment at 45, then 10", func(s *sheet) {
			s.station("hands", 1)
			moment := s.task(0, "hands")
			s.Tasks[moment].NotBefore = 45
			s.row(moment, s.task(10, "hands"))
			s.task(45, "hands")
		}, 55},
		{"a moment needs nobody, even with work around it", func(s *sheet) {
			s.station("hands", 1)
			s.pin(s.task(0, "hands"), 5)
			s.task(10, "hands")
		}, 10},
		{"no more than 5 between three: the rest of 10 is over", func(s *sheet) {
			a, b, c := s.task(1), s.task(10), s.task(1)
			s.row(a, b, c)
			s.wait(a, c, 10, 10)
		}, 12},
	} {
		t.Run(c.name, func(t *testing.T) {
			var s sheet
			c.write(&s)
			if r := plan(t, s.Project, solve.Options{Steps: 5000}); r.Makespan != c.want || r.Bound != c.want || !r.Optimal {
				t.Errorf("it ends at %d, bound %d, proved %v; want %d, proved; starts %v", r.Makespan, r.Bound, r.Optimal, c.want, r.Starts)
			}
		})
	}
}

// Set-ups by hand: the first setup stands, each other takes its minutes.
func TestSetupsByHand(t *testing.T) {
	for _, c := range []struct {
		name  string
		write func(*sheet)
		want  int
	}{
		{"one shot: its setup stands", func(s *sheet) {
			s.setup("wide", 30, "hands")
			s.shot("wide", 10, "hands")
		}, 10},
		{"wide, close, wide of 10: both wide ones first, 5 for close", func(s *sheet) {
			s.setup("wide", 7, "hands")
			s.setup("close", 5, "hands")
			s.shot("wide", 10, "hands")
			s.shot("close", 10, "hands")
			s.shot("wide", 10, "hands")
		}, 35},
		{"in this order: 30 + 5 + 7", func(s *sheet) {
			s.setup("wide", 7, "hands")
			s.setup("close", 5, "hands")
			s.row(s.shot("wide", 10, "hands"), s.shot("close", 10, "hands"), s.shot("wide", 10, "hands"))
		}, 42},
		{"while the dough rests: 10 + 30 + 10, and 8 in between", func(s *sheet) {
			s.setup("close", 8, "hands")
			s.row(s.shot("wide", 10, "hands"), s.task(30), s.shot("close", 10, "hands"))
		}, 50},
		{"longer than the rest: 10 + 45 + 10", func(s *sheet) {
			s.setup("close", 45, "hands")
			s.row(s.shot("wide", 10, "hands"), s.task(30), s.shot("close", 10, "hands"))
		}, 65},
		{"hands fold from 10 to 35: the camera is moved by 43", func(s *sheet) {
			s.setup("close", 8, "hands")
			s.row(s.shot("wide", 10, "hands"), s.task(30), s.shot("close", 10, "hands"))
			s.pin(s.task(25, "hands"), 10)
		}, 53},
		{"two shots of one setup, without hands: one after the other", func(s *sheet) {
			s.shot("wide", 10)
			s.shot("wide", 10)
		}, 20},
		{"a shot of no length is in nobody's way", func(s *sheet) {
			s.setup("close", 8)
			s.shot("wide", 10)
			s.shot("close", 0)
		}, 10},
		{"nobody is needed to set up: 10 + 8 + 10, and work beside it", func(s *sheet) {
			s.setup("close", 8)
			s.row(s.shot("wide", 10), s.shot("close", 10))
			s.task(28, "hands")
		}, 28},
		{"three setups, the dearest stands: 30 + 3 + 4", func(s *sheet) {
			for setup, minutes := range map[string]int{"wide": 9, "close": 3, "overhead": 4} {
				s.setup(setup, minutes, "hands")
				s.shot(setup, 10, "hands")
			}
		}, 37},
	} {
		t.Run(c.name, func(t *testing.T) {
			var s sheet
			s.station("hands", 1)
			c.write(&s)
			if r := plan(t, s.Project, solve.Options{Steps: 5000}); r.Makespan != c.want || !r.Optimal {
				t.Errorf("it ends at %d, bound %d; want %d, proved; starts %v", r.Makespan, r.Bound, c.want, r.Starts)
			}
		})
	}
}

// A search of few steps does not spend them all on one way of looking: six
// dishes, mixed and then baked, in the order of Johnson's rule, are mixed by 1,
// 5, 13, 17, 19 and 20, and baked by 5, 11, 21, 23, 25 and 26; swapping
// neighbours alone stays at 28.
func TestAShortSearchLooksInEveryWay(t *testing.T) {
	var s sheet
	s.station("mixer", 1)
	s.station("oven", 1)
	for _, dish := range [][2]int{{1, 1}, {4, 2}, {8, 8}, {1, 4}, {2, 2}, {4, 6}} {
		s.row(s.task(dish[0], "mixer"), s.task(dish[1], "oven"))
	}
	for _, steps := range []int{1000, 2000, 5000} {
		if r := plan(t, s.Project, solve.Options{Steps: steps}); r.Makespan != 26 || !r.Optimal {
			t.Errorf("in %d steps it ends at %d, bound %d; want 26, proved", steps, r.Makespan, r.Bound)
		}
	}
}
