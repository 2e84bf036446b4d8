package project_test

import (
	"pgregory.net/rapid"

	"benchproof/kitchen/shoot/project"
)

// drawAll draws up to three tasks with every rule there is, small enough to try
// every plan. It passes Check, though there may be no plan.
func drawAll(t *rapid.T) project.Project {
	p := drawTimes(t)
	hands := project.Station{Name: "hands", Capacity: rapid.IntRange(1, 2).Draw(t, "hands")}
	if rapid.Bool().Draw(t, "hands change") {
		from := rapid.IntRange(1, 6).Draw(t, "from")
		hands.Changes = []project.Level{
			{From: from, Capacity: rapid.IntRange(0, 2).Draw(t, "less")},
			{From: from + rapid.IntRange(1, 3).Draw(t, "for"), Capacity: rapid.IntRange(1, 2).Draw(t, "again")},
		}
	}
	p.Stations = []project.Station{hands, {Name: "oven", Capacity: 1}}
	for i := range p.Tasks {
		x := &p.Tasks[i]
		if need := rapid.IntRange(0, hands.Peak()).Draw(t, "need"); need > 0 {
			x.Needs = append(x.Needs, project.Need{Station: 0, Amount: need})
		}
		if rapid.IntRange(0, 2).Draw(t, "bakes") == 0 {
			x.Needs = append(x.Needs, project.Need{Station: 1, Amount: 1})
		}
		if rapid.IntRange(0, 3).Draw(t, "is barred") == 0 {
			from := rapid.IntRange(0, 6).Draw(t, "barred from")
			x.Forbidden = []project.Span{{From: from, To: from + rapid.IntRange(1, 3).Draw(t, "barred for")}}
		}
		if rapid.Bool().Draw(t, "is filmed") {
			x.Setup = rapid.SampledFrom([]string{"wide", "close"}).Draw(t, "setup")
		}
	}
	p.Setups.Minutes = map[string]int{"wide": rapid.IntRange(0, 2).Draw(t, "wide"), "close": 1}
	if rapid.Bool().Draw(t, "setting up needs hands") {
		p.Setups.Needs = []project.Need{{Station: 0, Amount: 1}}
	}
	return p
}

// sound draws a project that passes Check.
func sound(t *rapid.T) project.Project {
	p := drawAll(t)
	if p.Check() != nil {
		t.Skip("it contradicts itself")
	}
	return p
}

// within calls f with all starts of which no task ends after a minute, until f
// is false.
func within(p project.Project, finish int, f func(starts []int) bool) bool {
	starts := make([]int, len(p.Tasks))
	var try func(i int) bool
	try = func(i int) bool {
		if i == len(starts) {
			return f(starts)
		}
		for starts[i] = 0; starts[i]+p.Tasks[i].Minutes <= finish; starts[i]++ {
			if !try(i + 1) {
				return false
			}
		}
		return true
	}
	return try(0)
}
