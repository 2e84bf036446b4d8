package feasible_test

import (
	"strings"
	"testing"

	"benchproof/kitchen/shoot/feasible"
	"benchproof/kitchen/shoot/project"
)

// kitchen is mixing, proving and shaping with one pair of hands, and a shot.
func kitchen() project.Project {
	hands := []project.Need{{Station: 0, Amount: 1}}
	return project.Project{
		Stations: []project.Station{{Name: "hands", Capacity: 1, Changes: []project.Level{{From: 100, Capacity: 0}}}},
		Tasks: []project.Task{
			{ID: "mix", Minutes: 10, Needs: hands, LatestEnd: project.None, Setup: "wide"},
			{ID: "prove", Minutes: 30, LatestEnd: 45},
			{ID: "shape", Minutes: 5, Needs: hands, LatestEnd: project.None, Setup: "close"},
			{ID: "wash", Minutes: 4, Needs: hands, NotBefore: 2, LatestEnd: project.None, Forbidden: []project.Span{{From: 50, To: 60}}},
		},
		Waits:  []project.Wait{{Before: 0, After: 1, AtMost: project.None}, {Before: 1, After: 2, AtLeast: 2, AtMost: 20}},
		Setups: project.Setups{Minutes: map[string]int{"close": 6, "wide": 2}, Needs: hands},
	}
}

// Each plan breaks one rule; the first and the last of each limit break none.
func TestEachRuleIsSeen(t *testing.T) {
	for _, c := range []struct {
		name   string
		starts []int
		broken string // "" for none
	}{
		{"a plan", []int{0, 10, 42, 20}, ""},
		{"the longest wait", []int{0, 10, 60, 20}, ""},
		{"the latest end", []int{0, 15, 47, 20}, ""},
		{"beside the forbidden time", []int{0, 10, 42, 60}, ""},
		{"right before the forbidden time", []int{0, 10, 42, 37}, ""},
		{"too few starts", []int{0, 10}, "2 starts"},
		{"before zero", []int{-1, 10, 42, 20}, "mix starts at -1"},
		{"before its time", []int{5, 15, 47, 1}, "wash starts at 1"},
		{"after its time", []int{0, 16, 48, 20}, "prove ends at 46"},
		{"into the forbidden time", []int{0, 10, 42, 47}, "wash runs in minute 50"},
		{"out of the forbidden time", []int{0, 10, 42, 59}, "wash runs in minute 59"},
		{"before what it waits for", []int{0, 9, 42, 20}, "prove waits -1"},
		{"the shortest wait", []int{0, 10, 41, 20}, "shape waits 1"},
		{"too long a wait", []int{0, 10, 61, 20}, "shape waits 21"},
		{"two things in one pair of hands", []int{0, 10, 42, 45}, "minute 45 needs 2 of hands"},
		{"nobody left", []int{0, 10, 42, 97}, "minute 100 needs 1 of hands"},
		{"no time to move the camera", []int{25, 10, 40, 2}, "set-up"},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := kitchen()
			got := strings.Join(feasible.Check(p, c.starts), "; ")
			if (got == "") != (c.broken == "") || !strings.Contains(got, c.broken) {
				t.Errorf("Check = %q, want it to say %q", got, c.broken)
			}
		})
	}
}

func TestSetupsAreSeen(t *testing.T) {
	p := kitchen()
	p.Tasks[1].LatestEnd, p.Waits = project.None, nil
	for _, c := range []struct {
		name   string
		starts []int
		backs  bool
		broken bool
	}{
		{"just enough", []int{0, 0, 16, 40}, false, false},
		{"a minute short", []int{0, 0, 15, 40}, false, true},
		{"the other way round it takes 2", []int{27, 0, 20, 40}, false, false},
		{"and a minute short", []int{26, 0, 20, 40}, false, true},
		{"hands are washing in between, but there is time after", []int{0, 0, 20, 10}, false, false},
		{"washing in the middle", []int{0, 0, 20, 13}, false, true},
		{"at once", []int{0, 0, 5, 40}, false, true},
		{"backwards the first counts", []int{0, 0, 12, 40}, true, false},
		{"backwards, a minute short", []int{0, 0, 11, 40}, true, true},
	} {
		t.Run(c.name, func(t *testing.T) {
			p.Setups.OfFirst = c.backs
			if got := feasible.Check(p, c.starts); (got != nil) != c.broken {
				t.Errorf("Check = %q, want broken: %v", got, c.broken)
			}
		})
	}
}
