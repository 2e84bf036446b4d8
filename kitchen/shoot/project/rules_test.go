package project_test

import (
	"fmt"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/shoot/feasible"
	"benchproof/kitchen/shoot/project"
)

func TestMakespan(t *testing.T) {
	for _, c := range []struct {
		name   string
		starts []int
		want   int
	}{
		{"a 0 to 5, b 5 to 15, c 18 to 38", []int{0, 5, 18}, 38},
		{"the longest is not the last to begin: c 0 to 20", []int{8, 9, 0}, 20},
		{"all wait", []int{100, 100, 100}, 120},
	} {
		t.Run(c.name, func(t *testing.T) {
			if got := chain().Makespan(c.starts); got != c.want {
				t.Errorf("Makespan(%v) = %d, want %d", c.starts, got, c.want)
			}
		})
	}
	if got := (project.Project{}).Makespan(nil); got != 0 {
		t.Errorf("without tasks it is %d, want 0", got)
	}
}

// Horizon by hand, of the chain: 5 + 10 + 3 + 20 and the last change at 30.
func TestHorizon(t *testing.T) {
	for _, c := range []struct {
		name   string
		change func(*project.Project)
		want   int
	}{
		{"after the last change all one by one: 30 + 5 + 10 + 3 + 20", func(*project.Project) {}, 68},
		{"no changes: 5 + 10 + 3 + 20", func(p *project.Project) { p.Stations[0].Changes = nil }, 38},
		{"nothing before 50: 50 + 38", func(p *project.Project) { p.Tasks[0].NotBefore = 50 }, 88},
		{"forbidden until 40: 40 + 38", func(p *project.Project) { p.Tasks[0].Forbidden = []project.Span{{From: 1, To: 40}} }, 78},
		{"set up twice: 68 + 2 × 4", func(p *project.Project) {
			p.Tasks[0].Setup, p.Tasks[1].Setup, p.Setups.Minutes = "wide", "wide", map[string]int{"wide": 4}
		}, 76},
		{"the longer of two waits after b: 68 + 9 − 3", func(p *project.Project) { p.Waits = append([]project.Wait{after(1, 2, 9, 30)}, p.Waits...) }, 74},
		{"no tasks", func(p *project.Project) { *p = project.Project{} }, 0},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := chain()
			c.change(&p)
			if got := p.Horizon(); got != c.want {
				t.Errorf("Horizon() = %d, want %d", got, c.want)
			}
		})
	}
}

// If there is a plan that ends a little later than the horizon, there is one
// that does not.
func TestABestPlanEndsByTheHorizon(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := sound(t)
		if len(p.Tasks) > 2 {
			t.Skip("too many plans to try them all")
		}
		isPlan := func(starts []int) bool { return feasible.Check(p, starts) == nil }
		early := !within(p, p.Horizon(), func(starts []int) bool { return !isPlan(starts) })
		late := !within(p, p.Horizon()+6, func(starts []int) bool { return !isPlan(starts) })
		if late && !early {
			t.Fatalf("plans end after minute %d only", p.Horizon())
		}
	})
}

func TestThePeakIsTheMostThereEverIs(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawAll(t).Stations[0]
		most := 0
		for minute := range 20 {
			most = max(most, s.CapacityAt(minute))
		}
		if got := s.Peak(); got != most {
			t.Fatalf("the peak is %d, at most there are %d", got, most)
		}
	})
}

func TestUnits(t *testing.T) {
	x := project.Task{Needs: []project.Need{{Station: 2, Amount: 3}, {Station: 0, Amount: 1}}}
	for station, want := range []int{1, 0, 3, 0} {
		if got := x.Units(station); got != want {
			t.Errorf("it needs %d of station %d, want %d", got, station, want)
		}
	}
}

// What is left of a plan is a plan of what is left.
func TestWithoutSomeTasksAPlanIsAPlan(t *testing.T) {
	plans := 0
	rapid.Check(t, func(t *rapid.T) {
		p := sound(t)
		isGone := make([]bool, len(p.Tasks))
		for i := range isGone {
			isGone[i] = rapid.Bool().Draw(t, "is gone")
		}
		less := p.Without(isGone)
		if err := less.Check(); err != nil {
			t.Fatalf("what is left is refused: %v", err)
		}
		within(p, 8, func(starts []int) bool {
			if feasible.Check(p, starts) != nil {
				return true
			}
			plans++
			var left []int
			for i, s := range starts {
				if !isGone[i] {
					left = append(left, s)
				}
			}
			if broken := feasible.Check(less, left); broken != nil {
				t.Fatalf("of the plan %v is left %v: %q", starts, left, broken)
			}
			return true
		})
	})
	if plans == 0 {
		t.Error("no plan was looked at")
	}
}

func TestWithoutNothingIsAll(t *testing.T) {
	p := chain()
	p.Setups = project.Setups{Minutes: map[string]int{"wide": 3}, Needs: []project.Need{{Station: 0, Amount: 1}}}
	if diff := cmp.Diff(p, p.Without(make([]bool, 3))); diff != "" {
		t.Errorf("without nothing (-all +left):\n%s", diff)
	}
	none := p.Without([]bool{true, true, true})
	if len(none.Tasks) != 0 || len(none.Waits) != 0 || len(none.Stations) != 1 {
		t.Errorf("without all there is left %+v", none)
	}
}

// A set-up is put up after the film task before and by the one it is for, while
// there are hands for it, and no earlier minute would do.
func TestSetupTimesAreTheEarliest(t *testing.T) {
	seen := 0
	rapid.Check(t, func(t *rapid.T) {
		p := sound(t)
		for i := range p.Tasks {
			p.Tasks[i].Setup = []string{"wide", "close"}[i%2]
		}
		within(p, 9, func(starts []int) bool {
			if feasible.Check(p, starts) != nil {
				return true
			}
			times := p.SetupTimes(starts)
			for _, s := range times {
				seen++
				before := filmedBefore(p, starts, s.Task)
				if from := earliestSetup(p, starts, before, s.Task); s.From != from || s.To != from+p.Setups.Minutes[p.Tasks[s.Task].Setup] || s.To > starts[s.Task] {
					t.Fatalf("plan %v: %+v, want it from %d", starts, s, from)
				}
			}
			if !slices.IsSortedFunc(times, func(a, b project.SetupTime) int { return a.From - b.From }) {
				t.Fatalf("plan %v: %v is in no order of time", starts, times)
			}
			return true
		})
	})
	if seen == 0 {
		t.Error("no set-up was looked at")
	}
}

// filmedBefore is the film task that ends last of those before a task.
func filmedBefore(p project.Project, starts []int, task int) int {
	last := -1
	for i, x := range p.Tasks {
		if x.Setup != "" && x.Minutes > 0 && starts[i] < starts[task] && (last < 0 || starts[i] > starts[last]) {
			last = i
		}
	}
	return last
}

// earliestSetup looks minute by minute for a piece of time with hands for it.
func earliestSetup(p project.Project, starts []int, before, task int) int {
	minutes := p.Setups.Minutes[p.Tasks[task].Setup]
	for from := starts[before] + p.Tasks[before].Minutes; ; from++ {
		isFree := true
		for minute := from; minute < from+minutes; minute++ {
			for _, need := range p.Setups.Needs {
				busy := need.Amount
				for i, x := range p.Tasks {
					if starts[i] <= minute && minute < starts[i]+x.Minutes {
						busy += x.Units(need.Station)
					}
				}
				isFree = isFree && busy <= p.Stations[need.Station].CapacityAt(minute)
			}
		}
		if isFree || from > starts[task] {
			return from
		}
	}
}

func ExampleProject_Check() {
	p := project.Project{
		Tasks: []project.Task{
			{ID: "prove", Minutes: 90, LatestEnd: project.None},
			{ID: "bake", Minutes: 40, LatestEnd: 120},
		},
		Waits: []project.Wait{{Before: 0, After: 1, AtMost: project.None}},
	}
	fmt.Println(p.Check())
	p.Tasks[1].LatestEnd = 130
	fmt.Println(p.Check())
	// Output:
	// The waits and times of these tasks cannot all be met: "prove", "bake". Allow a longer wait or a later end.
	// <nil>
}

// To finish at noon, minute 240, is to begin as late as can be: the project is
// planned backwards, from zero, and its plan is turned round.
func ExampleProject_Mirror() {
	p := project.Project{
		Tasks: []project.Task{{ID: "prove", Minutes: 90, LatestEnd: project.None}, {ID: "bake", Minutes: 40, LatestEnd: project.None}},
		Waits: []project.Wait{{Before: 0, After: 1, AtLeast: 10, AtMost: project.None}},
	}
	starts, _ := p.Mirror(240).Earliest()
	fmt.Println("backwards", starts)
	fmt.Println("forwards", p.MirrorStarts(starts, 240))
	// Output:
	// backwards [50 0]
	// forwards [100 200]
}

func ExampleProject_SetupTimes() {
	hands := []project.Need{{Station: 0, Amount: 1}}
	p := project.Project{
		Stations: []project.Station{{Name: "hands", Capacity: 1}},
		Tasks: []project.Task{
			{ID: "pour", Minutes: 10, Needs: hands, Setup: "overhead", LatestEnd: project.None},
			{ID: "wash up", Minutes: 5, Needs: hands, LatestEnd: project.None},
			{ID: "unmould", Minutes: 10, Needs: hands, Setup: "close", LatestEnd: project.None},
		},
		Setups: project.Setups{Minutes: map[string]int{"close": 8}, Needs: hands},
	}
	for _, s := range p.SetupTimes([]int{0, 12, 30}) {
		fmt.Printf("for %q from %d to %d\n", p.Tasks[s.Task].ID, s.From, s.To)
	}
	// Output:
	// for "unmould" from 17 to 25
}
