package solve_test

import (
	"context"
	"regexp"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/shoot/feasible"
	"benchproof/kitchen/shoot/project"
	"benchproof/kitchen/shoot/solve"
)

// trial tries every start of every task, in the order of the tasks, up to a
// minute by which all has ended. It leaves out only what breaks a rule already;
// what is left the independent check decides.
type trial struct {
	p      project.Project
	by     int
	used   [][]int // by station and minute
	starts []int
	found  []int // the shortest plan so far
}

// shortest gives the makespan of a shortest plan that ends by a minute, −1 if
// there is none.
func shortest(p project.Project, by int) int {
	s := trial{p: p, by: by, starts: make([]int, len(p.Tasks))}
	for range p.Stations {
		s.used = append(s.used, make([]int, by+1))
	}
	s.try(0)
	if s.found == nil {
		return -1
	}
	return p.Makespan(s.found)
}

func (s *trial) try(i int) {
	if i == len(s.starts) {
		if feasible.Check(s.p, s.starts) == nil {
			s.found = slices.Clone(s.starts)
			s.by = s.p.Makespan(s.starts) - 1
		}
		return
	}
	x := s.p.Tasks[i]
	for start := x.NotBefore; start+x.Minutes <= s.by; start++ {
		if s.starts[i] = start; s.breaks(i) {
			continue
		}
		s.occupy(i, 1)
		s.try(i + 1)
		s.occupy(i, -1)
	}
}

// breaks tells whether task i breaks a rule with those before it.
func (s *trial) breaks(i int) bool {
	x, start := s.p.Tasks[i], s.starts[i]
	if x.LatestEnd != project.None && start+x.Minutes > x.LatestEnd {
		return true
	}
	for _, w := range s.p.Waits {
		if max(w.Before, w.After) != i {
			continue
		}
		waits := s.starts[w.After] - s.starts[w.Before] - s.p.Tasks[w.Before].Minutes
		if waits < w.AtLeast || w.AtMost != project.None && waits > w.AtMost {
			return true
		}
	}
	for minute := start; minute < start+x.Minutes; minute++ {
		for _, n := range x.Needs {
			if s.used[n.Station][minute]+n.Amount > s.p.Stations[n.Station].CapacityAt(minute) {
				return true
			}
		}
	}
	return false
}

func (s *trial) occupy(i, sign int) {
	for _, n := range s.p.Tasks[i].Needs {
		for minute := s.starts[i]; minute < s.starts[i]+s.p.Tasks[i].Minutes; minute++ {
			s.used[n.Station][minute] += sign * n.Amount
		}
	}
}

// little draws a project of up to five short tasks with every rule there is.
func little(t *rapid.T) project.Project {
	p := everything(5).draw(t)
	for i := range p.Tasks {
		x := &p.Tasks[i]
		_, isPinned := x.Fixed()
		x.Minutes = min(x.Minutes, 1+x.Minutes%4)
		if isPinned {
			*x = x.Pin(x.NotBefore)
		}
	}
	if p.Check() != nil {
		t.Skip("it contradicts itself")
	}
	return p
}

// enough is a makespan up to which trying all plans takes no time.
func enough(p project.Project) int { return []int{40, 40, 40, 30, 22, 17}[len(p.Tasks)] }

// Up to five tasks and every rule there is: a plan that is proved best is as
// short as the shortest of all plans, no bound is above it, and where no plan is
// found there is none.
func TestSmallProjectsAgreeWithTryingAllStarts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := little(t)
		r, ok := best(t, p)
		by := r.Makespan
		if !ok {
			by = min(p.Horizon(), enough(p))
		}
		if by > enough(p) {
			t.Skip("too many plans to try them all")
		}
		got := shortest(p, by)
		if !ok && got >= 0 {
			t.Fatalf("no plan is found, one ends at %d", got)
		}
		if ok && (got < r.Bound || r.Optimal && got != r.Makespan) {
			t.Fatalf("makespan %d, bound %d, optimal %v; the shortest ends at %d", r.Makespan, r.Bound, r.Optimal, got)
		}
	})
}

// How often small projects are proved: with everything, most of them; without
// set-ups, all.
func TestSmallProjectsAreProved(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawn{tasks: 6, longest: true, hours: true, limits: true}.draw(t)
		if p.Check() != nil {
			t.Skip("it contradicts itself")
		}
		if r, ok := best(t, p); ok && !r.Optimal {
			t.Fatalf("makespan %d, bound %d: not proved", r.Makespan, r.Bound)
		}
	})
}

// Backwards from a finish, a plan begins as late as any: no plan of the same
// rules, from that minute on, is left if the day begins later still.
func TestBackwardsBeginsAsLateAsCanBe(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := little(t)
		finish := rapid.IntRange(4, enough(p)).Draw(t, "finish")
		mirrored := p.Mirror(finish)
		if mirrored.Check() != nil {
			t.Skip("it does not end by then")
		}
		r, ok := best(t, mirrored)
		begin := func(minute int) project.Project {
			q := p
			q.Tasks = slices.Clone(p.Tasks)
			for i := range q.Tasks {
				q.Tasks[i].NotBefore = max(q.Tasks[i].NotBefore, minute)
			}
			return q
		}
		if !ok {
			if got := shortest(p, finish); got >= 0 {
				t.Fatalf("no plan backwards from %d, one ends at %d", finish, got)
			}
			return
		}
		if got := shortest(begin(finish-r.Makespan), finish); got < 0 {
			t.Fatalf("backwards it begins at %d, and trying all starts finds no plan", finish-r.Makespan)
		}
		if got := shortest(begin(finish-r.Bound+1), finish); got >= 0 {
			t.Fatalf("backwards no plan begins after %d, and one of %d does", finish-r.Bound, got)
		}
	})
}

var quoted = regexp.MustCompile(`"(t[0-9]+)"`)

// The tasks that an impossible project names have no plan by themselves.
func TestTheTasksNamedHaveNoPlan(t *testing.T) {
	refused := 0
	rapid.Check(t, func(t *rapid.T) {
		p := little(t)
		for i := range p.Tasks { // little time for all
			if x := &p.Tasks[i]; x.LatestEnd == project.None && rapid.Bool().Draw(t, "is urgent") {
				x.LatestEnd = x.NotBefore + x.Minutes + rapid.IntRange(0, 5).Draw(t, "room")
			}
		}
		if p.Check() != nil {
			t.Skip("it contradicts itself")
		}
		_, err := solve.Plan(context.Background(), p, solve.Options{Steps: 20_000})
		if err == nil || fault.KindOf(err) == fault.Busy { // found, or not proved
			return
		}
		refused++
		isGone := make([]bool, len(p.Tasks))
		for i := range isGone {
			isGone[i] = true
		}
		for _, match := range quoted.FindAllStringSubmatch(fault.Say(err), -1) {
			isGone[slices.IndexFunc(p.Tasks, func(x project.Task) bool { return x.ID == match[1] })] = false
		}
		left := p.Without(isGone)
		if len(left.Tasks) == 0 {
			t.Fatalf("%q names no task", fault.Say(err))
		}
		if !slices.ContainsFunc(left.Tasks, func(x project.Task) bool { return x.ID == fault.Field(err) }) {
			t.Fatalf("the field %q is none of the tasks of %q", fault.Field(err), fault.Say(err))
		}
		if got := shortest(left, min(left.Horizon(), enough(left)+6)); got >= 0 {
			t.Fatalf("%q, and these have a plan that ends at %d", fault.Say(err), got)
		}
	})
	if refused == 0 {
		t.Error("no project was drawn that has no plan")
	}
}

// What leaves no plan is said in one of two sentences, with at most eight names.
func TestWhatLeavesNoPlanIsSaid(t *testing.T) {
	for _, c := range []struct {
		name  string
		write func(*sheet)
		want  string
	}{
		{"one task finds no room: 20 before the helper goes, and not before 15", func(s *sheet) {
			s.station("hands", 2, 30, 1)
			s.Tasks[s.task(20, "hands", "hands")].NotBefore = 15
		}, `Task "task 0" finds no time in which it may run and all it needs is free. Give it other times or less to need.`},
		{"two pinned to one time", func(s *sheet) {
			s.station("hands", 1)
			s.pin(s.task(10, "hands"), 20)
			s.task(15, "hands")
			s.pin(s.task(10, "hands"), 25)
		}, `The waits and times of these tasks cannot all be met at their stations: "task 0", "task 2". Allow a longer wait, other times, or more of a station.`},
		{"ten at once", func(s *sheet) {
			s.station("hands", 9)
			for range 10 {
				s.pin(s.task(10, "hands"), 0)
			}
		}, `The waits and times of these tasks cannot all be met at their stations: "task 0", "task 1", "task 2", "task 3", "task 4", "task 5", "task 6", "task 7", and 2 more. ` +
			`Allow a longer wait, other times, or more of a station.`},
		{"no time to move the camera", func(s *sheet) {
			s.station("hands", 1)
			s.setup("close", 6, "hands")
			s.pin(s.shot("wide", 10, "hands"), 0)
			s.pin(s.shot("close", 10, "hands"), 15)
		}, `The waits and times of these tasks cannot all be met at their stations: "task 0", "task 1". Allow a longer wait, other times, or more of a station.`},
	} {
		t.Run(c.name, func(t *testing.T) {
			var s sheet
			c.write(&s)
			if _, err := solve.Plan(context.Background(), s.Project, solve.Options{}); fault.KindOf(err) != fault.Invalid || fault.Say(err) != c.want {
				t.Errorf("it says\n%v\nwant\n%s", err, c.want)
			}
		})
	}
}

// What Check refuses Plan refuses, with the same words.
func TestPlanChecksFirst(t *testing.T) {
	var s sheet
	s.station("oven", 1)
	s.task(10, "oven", "oven")
	_, err := solve.Plan(context.Background(), s.Project, solve.Options{})
	if err == nil || fault.Say(err) != fault.Say(s.Check()) || !strings.Contains(fault.Say(err), `"task 0"`) {
		t.Errorf("Plan says %v, Check says %v", err, s.Check())
	}
}
