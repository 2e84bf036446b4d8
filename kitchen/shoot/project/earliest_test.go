package project_test

import (
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/shoot/feasible"
	"benchproof/kitchen/shoot/project"
)

// drawTimes draws up to three tasks with waits and limits, and no stations. No
// earliest start is later than 3 + 2 × (2 + 2) = 11.
func drawTimes(t *rapid.T) project.Project {
	var p project.Project
	for i := range rapid.IntRange(1, 3).Draw(t, "tasks") {
		x := task([]string{"a", "b", "c"}[i], rapid.IntRange(0, 2).Draw(t, "minutes"))
		x.NotBefore = rapid.IntRange(0, 3).Draw(t, "not before")
		if rapid.IntRange(0, 2).Draw(t, "must end") == 0 {
			x.LatestEnd = x.NotBefore + x.Minutes + rapid.IntRange(0, 6).Draw(t, "room")
		}
		p.Tasks = append(p.Tasks, x)
		for j := range i {
			if !rapid.Bool().Draw(t, "follows") {
				continue
			}
			w := after(j, i, rapid.IntRange(0, 2).Draw(t, "shortest"), project.None)
			if rapid.Bool().Draw(t, "hurries") {
				w.AtMost = w.AtLeast + rapid.IntRange(0, 4).Draw(t, "longest")
			}
			p.Waits = append(p.Waits, w)
		}
	}
	return p
}

// everyPlan lists all plans whose starts are at most a minute.
func everyPlan(p project.Project, most int) [][]int {
	var all [][]int
	starts := make([]int, len(p.Tasks))
	var try func(i int)
	try = func(i int) {
		if i == len(starts) {
			if feasible.Check(p, starts) == nil {
				all = append(all, slices.Clone(starts))
			}
			return
		}
		for starts[i] = 0; starts[i] <= most; starts[i]++ {
			try(i + 1)
		}
	}
	try(0)
	return all
}

// The earliest starts are, task by task, the least of all plans, and a plan
// themselves; a contradiction means that there is none.
func TestEarliestIsTheLeastOfAllPlans(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawTimes(t)
		every := everyPlan(p, 11)
		got, contradiction := p.Earliest()
		if contradiction != nil {
			if len(every) > 0 {
				t.Fatalf("%v contradict each other, and there is the plan %v", contradiction, every[0])
			}
			return
		}
		if len(every) == 0 {
			t.Fatalf("%v, and no plan at all", got)
		}
		least := slices.Clone(every[0])
		for _, starts := range every {
			for i, s := range starts {
				least[i] = min(least[i], s)
			}
		}
		if diff := cmp.Diff(least, got); diff != "" {
			t.Fatal(diff)
		}
	})
}

// The tasks of a contradiction contradict each other alone, so that naming them
// is enough; and Check then refuses, and else it does not.
func TestAContradictionIsOneByItself(t *testing.T) {
	found := 0
	rapid.Check(t, func(t *rapid.T) {
		p := drawTimes(t)
		_, contradiction := p.Earliest()
		if err := p.Check(); (err != nil) != (contradiction != nil) {
			t.Fatalf("contradiction %v, Check says %v", contradiction, err)
		}
		if contradiction == nil {
			return
		}
		found++
		isGone := make([]bool, len(p.Tasks))
		for i := range isGone {
			isGone[i] = !slices.Contains(contradiction, i)
		}
		if _, again := p.Without(isGone).Earliest(); again == nil {
			t.Fatalf("%v alone do not contradict each other", contradiction)
		}
	})
	if found == 0 {
		t.Error("no project was drawn that contradicts itself")
	}
}

// What Arcs ask is what waits and limits ask, no more and no less.
func TestArcsAreTheWaitsAndLimits(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawTimes(t)
		starts := make([]int, len(p.Tasks))
		for i := range starts {
			starts[i] = rapid.IntRange(0, 11).Draw(t, "start")
		}
		holds := true
		at := func(i int) int {
			if i == project.Origin {
				return 0
			}
			return starts[i]
		}
		for _, a := range p.Arcs() {
			holds = holds && at(a.To) >= at(a.From)+a.Lag
		}
		if broken := feasible.Check(p, starts); holds != (broken == nil) {
			t.Fatalf("the arcs hold: %v; the rules: %v", holds, broken)
		}
	})
}

func TestContradictionsByHand(t *testing.T) {
	for _, c := range []struct {
		name   string
		change func(*project.Project)
		want   []int
	}{
		{"b by 14, after 5 of a: against minute zero", func(p *project.Project) { p.Tasks[1].LatestEnd = 14 }, []int{project.Origin, 0, 1}},
		{"c within 12 after a, with 10 of b and 3 between", func(p *project.Project) { p.Waits = append(p.Waits, after(0, 2, 0, 12)) }, []int{0, 1, 2}},
		{"c by 60, after b at 50", func(p *project.Project) {
			p.Tasks[1].NotBefore, p.Tasks[2].LatestEnd = 50, 60
		}, []int{project.Origin, 1, 2}},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := chain()
			c.change(&p)
			_, got := p.Earliest()
			slices.Sort(got)
			if diff := cmp.Diff(c.want, got); diff != "" {
				t.Errorf("contradiction (-want +got):\n%s", diff)
			}
		})
	}
}

// The order in which waits are listed is nothing: seven tasks of a minute, two
// minutes apart, the last wait first: 0, 3, 6 …
func TestEarliestIsTheSameInAnyOrder(t *testing.T) {
	var p project.Project
	want := []int{}
	for i := range 7 {
		p.Tasks = append(p.Tasks, task(string(rune('a'+i)), 1))
		want = append(want, 3*i)
		if i > 0 {
			p.Waits = append([]project.Wait{after(i-1, i, 2, project.None)}, p.Waits...)
		}
	}
	if got, _ := p.Earliest(); !slices.Equal(got, want) {
		t.Errorf("Earliest() = %v, want %v", got, want)
	}
	slices.Reverse(p.Waits)
	if got, _ := p.Earliest(); !slices.Equal(got, want) {
		t.Errorf("the first wait first, Earliest() = %v, want %v", got, want)
	}
}
