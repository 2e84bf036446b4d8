package project_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/shoot/project"
)

func task(id string, minutes int) project.Task {
	return project.Task{ID: id, Minutes: minutes, LatestEnd: project.None}
}

func after(before, then, atLeast, atMost int) project.Wait {
	return project.Wait{Before: before, After: then, AtLeast: atLeast, AtMost: atMost}
}

// chain is a, b and c of 5, 10 and 20 minutes, one after the other; c comes at
// least 3 and at most 30 minutes after b.
func chain() project.Project {
	return project.Project{
		Stations: []project.Station{{Name: "oven", Capacity: 2, Changes: []project.Level{{From: 10, Capacity: 0}, {From: 30, Capacity: 1}}}},
		Tasks:    []project.Task{task("a", 5), task("b", 10), task("c", 20)},
		Waits:    []project.Wait{after(0, 1, 0, project.None), after(1, 2, 3, 30)},
	}
}

func TestEarliestAndMakespan(t *testing.T) {
	for _, c := range []struct {
		name   string
		change func(*project.Project)
		want   []int
	}{
		{"one after the other", func(*project.Project) {}, []int{0, 5, 18}},
		{"not before", func(p *project.Project) { p.Tasks[0].NotBefore = 7 }, []int{7, 12, 25}},
		{"a longest wait pulls the first one along", func(p *project.Project) { p.Tasks[2].NotBefore = 100 }, []int{0, 60, 100}},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := chain()
			c.change(&p)
			got, contradiction := p.Earliest()
			if diff := cmp.Diff(c.want, got); diff != "" || contradiction != nil {
				t.Errorf("%s, contradiction %v", diff, contradiction)
			}
			if p.Makespan(got) != got[2]+20 {
				t.Errorf("the makespan is %d", p.Makespan(got))
			}
		})
	}
}

func TestCapacityOverTime(t *testing.T) {
	s := chain().Stations[0]
	for minute, want := range map[int]int{0: 2, 9: 2, 10: 0, 29: 0, 30: 1, 1000: 1} {
		if got := s.CapacityAt(minute); got != want {
			t.Errorf("capacity at %d is %d, want %d", minute, got, want)
		}
	}
	if s.Peak() != 2 {
		t.Errorf("the peak is %d, want 2", s.Peak())
	}
}

func TestCheckNamesTheTasks(t *testing.T) {
	for _, c := range []struct {
		name   string
		change func(*project.Project)
		says   []string
	}{
		{"no id", func(p *project.Project) { p.Tasks[1].ID = "" }, []string{"Task 2"}},
		{"an id twice", func(p *project.Project) { p.Tasks[1].ID = "a" }, []string{`"a"`}},
		{"minutes below 0", func(p *project.Project) { p.Tasks[1].Minutes = -1 }, []string{`"b"`}},
		{"a start below 0", func(p *project.Project) { p.Tasks[1].NotBefore = -1 }, []string{`"b"`}},
		{"no time to end", func(p *project.Project) { p.Tasks[1].LatestEnd = 9 }, []string{`"b"`, "9"}},
		{"no time for what comes before", func(p *project.Project) { p.Tasks[1].LatestEnd = 14 }, []string{`"b"`}},
		{"a forbidden time of no length", func(p *project.Project) { p.Tasks[1].Forbidden = []project.Span{{From: 5, To: 5}} }, []string{`"b"`}},
		{"an unknown station", func(p *project.Project) { p.Tasks[1].Needs = []project.Need{{Station: 1, Amount: 1}} }, []string{`"b"`}},
		{"a station twice", func(p *project.Project) {
			p.Tasks[1].Needs = []project.Need{{Station: 0, Amount: 1}, {Station: 0, Amount: 1}}
		}, []string{`"b"`, `"oven"`}},
		{"a need of nothing", func(p *project.Project) { p.Tasks[1].Needs = []project.Need{{Station: 0}} }, []string{`"b"`, `"oven"`}},
		{"a need above the peak", func(p *project.Project) { p.Tasks[1].Needs = []project.Need{{Station: 0, Amount: 3}} }, []string{`"b"`, "3", "2"}},
		{"a set-up above the peak", func(p *project.Project) { p.Setups.Needs = []project.Need{{Station: 0, Amount: 3}} }, []string{"setting up"}},
		{"a set-up below 0", func(p *project.Project) { p.Setups.Minutes = map[string]int{"wide": -1} }, []string{`"wide"`}},
		{"a wait for nobody", func(p *project.Project) { p.Waits[0].Before = 3 }, []string{"not listed"}},
		{"a wait below 0", func(p *project.Project) { p.Waits[0].AtLeast = -1 }, []string{`"a"`, `"b"`}},
		{"a longest wait below the shortest", func(p *project.Project) { p.Waits[1].AtMost = 2 }, []string{`"b"`, `"c"`}},
		{"a cycle", func(p *project.Project) { p.Waits = append(p.Waits, after(2, 0, 0, project.None)) }, []string{`"a" → "b" → "c" → "a"`}},
		{"a longest wait over the whole", func(p *project.Project) { p.Waits = append(p.Waits, after(0, 2, 0, 12)) }, []string{`"a"`, `"b"`, `"c"`}},
		{"two fixed times too far apart", func(p *project.Project) {
			p.Tasks[1], p.Tasks[2] = p.Tasks[1].Pin(50), p.Tasks[2].Pin(100)
		}, []string{`"b"`, `"c"`}},
		{"a station without a name", func(p *project.Project) { p.Stations[0].Name = "" }, []string{"Station"}},
		{"a capacity below 0", func(p *project.Project) { p.Stations[0].Capacity = -1 }, []string{`"oven"`}},
		{"a change at zero", func(p *project.Project) { p.Stations[0].Changes[0].From = 0 }, []string{`"oven"`}},
		{"too many tasks", func(p *project.Project) { p.Tasks = make([]project.Task, project.MaxTasks+1) }, []string{"2000"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := chain()
			if err := p.Check(); err != nil {
				t.Fatal(err)
			}
			c.change(&p)
			err := p.Check()
			if fault.KindOf(err) != fault.Invalid {
				t.Fatalf("the error is %v, want a fault.Invalid", err)
			}
			for _, s := range c.says {
				if !strings.Contains(fault.Say(err), s) {
					t.Errorf("%q does not say %s", fault.Say(err), s)
				}
			}
		})
	}
}

func TestFixedTasks(t *testing.T) {
	if _, ok := task("a", 5).Fixed(); ok {
		t.Error("a task without limits is fixed")
	}
	if start, ok := task("a", 5).Pin(30).Fixed(); !ok || start != 30 {
		t.Errorf("pinned to 30, it is fixed to %d, %v", start, ok)
	}
}

func TestWithoutKeepsTheOtherWaits(t *testing.T) {
	got := chain().Without([]bool{true, false, false})
	want := project.Project{
		Stations: chain().Stations,
		Tasks:    []project.Task{task("b", 10), task("c", 20)},
		Waits:    []project.Wait{after(0, 1, 3, 30)},
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
}

func TestMirror(t *testing.T) {
	p := chain()
	p.Tasks[0] = p.Tasks[0].Pin(2)
	p.Tasks[2].Forbidden = []project.Span{{From: 40, To: 50}, {From: 90, To: 120}}
	m := p.Mirror(100)
	want := project.Project{
		Stations: []project.Station{{Name: "oven", Capacity: 1, Changes: []project.Level{{From: 70, Capacity: 0}, {From: 90, Capacity: 2}}}},
		Tasks: []project.Task{
			{ID: "a", Minutes: 5, NotBefore: 93, LatestEnd: 98},
			{ID: "b", Minutes: 10, LatestEnd: 100},
			{ID: "c", Minutes: 20, LatestEnd: 100, Forbidden: []project.Span{{From: 50, To: 60}, {From: 0, To: 10}}},
		},
		Waits:  []project.Wait{after(1, 0, 0, project.None), after(2, 1, 3, 30)},
		Setups: project.Setups{OfFirst: true},
	}
	if diff := cmp.Diff(want, m); diff != "" {
		t.Error(diff)
	}
	if diff := cmp.Diff([]int{2, 7, 30}, p.MirrorStarts([]int{93, 83, 50}, 100)); diff != "" {
		t.Error(diff)
	}
}

func TestMirroredTwiceCapacitiesAreThemselves(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := project.Station{Name: "oven", Capacity: rapid.IntRange(0, 3).Draw(t, "capacity")}
		at := 0
		for range rapid.IntRange(0, 5).Draw(t, "changes") {
			at += rapid.IntRange(1, 30).Draw(t, "after")
			s.Changes = append(s.Changes, project.Level{From: at, Capacity: rapid.IntRange(0, 3).Draw(t, "level")})
		}
		finish := rapid.IntRange(1, 150).Draw(t, "finish")
		m := project.Project{Stations: []project.Station{s}}.Mirror(finish).Stations[0]
		for minute := range finish {
			if got, want := m.CapacityAt(finish-1-minute), s.CapacityAt(minute); got != want {
				t.Fatalf("minute %d has %d, mirrored %d", minute, want, got)
			}
		}
	})
}

func TestSetupTimes(t *testing.T) {
	hands := []project.Need{{Station: 0, Amount: 1}}
	film := func(id, setup string) project.Task {
		return project.Task{ID: id, Minutes: 10, Needs: hands, Setup: setup, LatestEnd: project.None}
	}
	p := project.Project{
		Stations: []project.Station{{Name: "hands", Capacity: 1}},
		Tasks:    []project.Task{film("a", "wide"), film("b", "close"), film("c", "close"), {ID: "stir", Minutes: 4, Needs: hands, LatestEnd: project.None}},
		Setups:   project.Setups{Minutes: map[string]int{"close": 6, "wide": 2}, Needs: hands},
	}
	// a 0–10, stirring 12–16, so the camera is moved at 16–22 at the earliest.
	want := []project.SetupTime{{Task: 1, From: 16, To: 22}}
	if diff := cmp.Diff(want, p.SetupTimes([]int{0, 25, 40, 12})); diff != "" {
		t.Error(diff)
	}
	for _, c := range []struct {
		first, second string
		backwards     bool
		want          int
	}{
		{"wide", "close", false, 6}, {"close", "wide", false, 2}, {"close", "close", false, 0}, {"", "close", false, 0},
		{"close", "", false, 0}, {"wide", "close", true, 2}, {"wide", "unknown", false, 0},
	} {
		p.Setups.OfFirst = c.backwards
		if got := p.Setups.Gap(c.first, c.second); got != c.want {
			t.Errorf("from %q to %q takes %d, want %d", c.first, c.second, got, c.want)
		}
	}
}
