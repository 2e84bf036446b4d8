package feasible_test

import (
	"fmt"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/shoot/feasible"
	"benchproof/kitchen/shoot/project"
)

// Every rule that is broken is told, each once, in plain words.
func TestEveryBrokenRuleIsTold(t *testing.T) {
	p := kitchen()
	for _, c := range []struct {
		name   string
		starts []int
		want   []string
	}{
		{"none", []int{0, 10, 42, 20}, nil},
		{"shaped too early by hands that wash: 10 + 30 + 2 is 42", []int{0, 10, 38, 37}, []string{
			"shape waits -2 minutes after prove, at least 2 are asked",
			"minute 38 needs 2 of hands, there are 1",
		}},
		{"all at zero: it proves unmixed, is shaped unproved, washed too early, and filmed all at once", []int{0, 0, 0, 0}, []string{
			"wash starts at 0, before 2",
			"prove waits -10 minutes after mix, at least 0 are asked",
			"shape waits -30 minutes after prove, at least 2 are asked",
			"shape starts at 0, before mix ends at 10",
			"minute 0 needs 3 of hands, there are 1",
		}},
		{"too late for its end, and far too long a wait", []int{0, 40, 99, 20}, []string{
			"prove ends at 70, after 45",
			"shape waits 29 minutes after prove, at most 20 are allowed",
			"minute 100 needs 1 of hands, there are 0",
		}},
	} {
		t.Run(c.name, func(t *testing.T) {
			if diff := cmp.Diff(c.want, feasible.Check(p, c.starts)); diff != "" {
				t.Errorf("broken (-want +got):\n%s", diff)
			}
		})
	}
}

// Capacities that change, minute by minute: from 10 to 20 there is one unit
// less.
func TestAStationThatChanges(t *testing.T) {
	two := []project.Need{{Station: 0, Amount: 2}}
	p := project.Project{
		Stations: []project.Station{{Name: "ovens", Capacity: 2, Changes: []project.Level{{From: 10, Capacity: 1}, {From: 20, Capacity: 2}}}},
		Tasks:    []project.Task{{ID: "bake", Minutes: 5, Needs: two, LatestEnd: project.None}, {ID: "moment", Needs: two, LatestEnd: project.None}},
	}
	for start := range 30 {
		isPlan := start+5 <= 10 || start >= 20
		if got := feasible.Check(p, []int{start, 12}); (got == nil) != isPlan {
			t.Errorf("from %d on: %q, want a plan: %v; the moment at 12 needs nothing", start, got, isPlan)
		}
	}
}

// relaxed draws a project without a calendar, and starts, most of them close to
// a plan.
func relaxed(t *rapid.T) (project.Project, []int) {
	p := kitchen()
	p.Stations[0].Changes = nil
	for i := range p.Tasks {
		x := &p.Tasks[i]
		x.NotBefore, x.LatestEnd, x.Forbidden = 0, project.None, nil
		x.Minutes = rapid.IntRange(0, 9).Draw(t, "minutes")
	}
	starts := make([]int, len(p.Tasks))
	for i := range starts {
		starts[i] = rapid.IntRange(0, 30).Draw(t, "start")
	}
	return p, starts
}

// Without fixed times a plan is one an hour later too, and what is none is none.
func TestLaterAsAWhole(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, starts := relaxed(t)
		later := slices.Clone(starts)
		for i := range later {
			later[i] += 60
		}
		if now, then := feasible.Check(p, starts), feasible.Check(p, later); (now == nil) != (then == nil) {
			t.Fatalf("%v: %q; an hour later: %q", starts, now, then)
		}
	})
}

// With twice the hands, what was a plan still is; and if each task needs twice
// as many as well, just what was one is one.
func TestTwiceOfEverything(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, starts := relaxed(t)
		once := feasible.Check(p, starts)
		p.Stations[0].Capacity = 2
		if more := feasible.Check(p, starts); once == nil && more != nil {
			t.Fatalf("%v with more hands: %q", starts, more)
		}
		for i := range p.Tasks {
			p.Tasks[i].Needs = double(p.Tasks[i].Needs)
		}
		p.Setups.Needs = double(p.Setups.Needs)
		if twice := feasible.Check(p, starts); (once == nil) != (twice == nil) {
			t.Fatalf("%v: %q; with twice of everything: %q", starts, once, twice)
		}
	})
}

func double(needs []project.Need) []project.Need {
	var all []project.Need
	for _, n := range needs {
		all = append(all, project.Need{Station: n.Station, Amount: 2 * n.Amount})
	}
	return all
}

func ExampleCheck() {
	p := project.Project{
		Stations: []project.Station{{Name: "oven", Capacity: 1}},
		Tasks: []project.Task{
			{ID: "loaf", Minutes: 40, Needs: []project.Need{{Station: 0, Amount: 1}}, LatestEnd: project.None},
			{ID: "tart", Minutes: 30, Needs: []project.Need{{Station: 0, Amount: 1}}, LatestEnd: 60},
		},
	}
	for _, starts := range [][]int{{30, 0}, {0, 35}} {
		fmt.Println(starts, len(feasible.Check(p, starts)), "rules are broken")
		for _, broken := range feasible.Check(p, starts) {
			fmt.Println("-", broken)
		}
	}
	// Output:
	// [30 0] 0 rules are broken
	// [0 35] 2 rules are broken
	// - tart ends at 65, after 60
	// - minute 35 needs 2 of oven, there are 1
}
