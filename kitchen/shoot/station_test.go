package shoot_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shoot"
	"benchproof/kitchen/shoot/project"
)

// Of a station there is in each minute what there is in all, less what is busy.
func TestWhatThereIsOfAStation(t *testing.T) {
	for _, c := range []struct {
		name  string
		units int
		busy  []shoot.Busy
		want  project.Station
	}{
		{"always the same", 2, nil, project.Station{Name: "oven", Capacity: 2}},
		{"a lunch from 60 to 90", 2, []shoot.Busy{{From: 60, To: 90, Units: 1}},
			project.Station{Name: "oven", Capacity: 2, Changes: []project.Level{{From: 60, Capacity: 1}, {From: 90, Capacity: 2}}}},
		{"from the start to 90", 2, []shoot.Busy{{To: 90, Units: 1}}, project.Station{Name: "oven", Capacity: 1, Changes: []project.Level{{From: 90, Capacity: 2}}}},
		{"gone at 200 for good", 2, []shoot.Busy{{From: 200, Units: 1}}, project.Station{Name: "oven", Capacity: 2, Changes: []project.Level{{From: 200, Capacity: 1}}}},
		{"gone all day", 1, []shoot.Busy{{Units: 1}}, project.Station{Name: "oven"}},
		{"one after the other is one time", 2, []shoot.Busy{{From: 60, To: 90, Units: 1}, {From: 90, To: 100, Units: 1}},
			project.Station{Name: "oven", Capacity: 2, Changes: []project.Level{{From: 60, Capacity: 1}, {From: 100, Capacity: 2}}}},
		{"two at once add up, and more than there is takes all", 2, []shoot.Busy{{From: 60, To: 90, Units: 1}, {From: 70, To: 80, Units: 5}},
			project.Station{Name: "oven", Capacity: 2, Changes: []project.Level{{From: 60, Capacity: 1}, {From: 70, Capacity: 0}, {From: 80, Capacity: 1}, {From: 90, Capacity: 2}}}},
		{"a time of no length", 2, []shoot.Busy{{From: 60, To: 60, Units: 1}}, project.Station{Name: "oven", Capacity: 2}},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := shoot.Station{Name: "oven", Units: c.units, Busy: c.busy}.Levels()
			if diff := cmp.Diff(c.want, got); diff != "" {
				t.Errorf("levels (-want +got):\n%s", diff)
			}
		})
	}
}

// Counted minute by minute it is the same, and the solver takes it.
func TestWhatThereIsMinuteByMinute(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := shoot.Station{Name: "hands", Units: rapid.IntRange(0, 4).Draw(t, "units")}
		for range rapid.IntRange(0, 4).Draw(t, "busy") {
			from := rapid.IntRange(0, 40).Draw(t, "from")
			b := shoot.Busy{From: from, To: from + rapid.IntRange(1, 20).Draw(t, "for"), Units: rapid.IntRange(1, 3).Draw(t, "units busy")}
			if rapid.IntRange(0, 4).Draw(t, "for good") == 0 {
				b.To = 0
			}
			s.Busy = append(s.Busy, b)
		}
		levels := s.Levels()
		if err := (project.Project{Stations: []project.Station{levels}}).Check(); err != nil {
			t.Fatal(err)
		}
		for minute := range 70 {
			left := s.Units
			for _, b := range s.Busy {
				if b.From <= minute && (b.To == 0 || minute < b.To) {
					left -= b.Units
				}
			}
			if got := levels.CapacityAt(minute); got != max(0, left) {
				t.Fatalf("in minute %d there are %d, want %d: %+v", minute, got, max(0, left), s)
			}
		}
	})
}

// A likely figure is the middle, rounded up; the least is rounded down, the most
// up, so that a plan never promises too much.
func TestMinutesAreWhole(t *testing.T) {
	between := func(from, to measure.Number) recipe.Step {
		return recipe.Step{HasMinutes: true, Minutes: measure.Between(from, to)}
	}
	half, quarter := measure.Ratio(1, 2), measure.Ratio(1, 4)
	for _, c := range []struct {
		name string
		step recipe.Step
		want shoot.Minutes
	}{
		{"half a minute", between(half, half), shoot.Minutes{From: 0, Likely: 1, To: 1}},
		{"2½ to 3½: the middle is 3", between(measure.Ratio(5, 2), measure.Ratio(7, 2)), shoot.Minutes{From: 2, Likely: 3, To: 4}},
		{"25 to 30: 27½", between(measure.Whole(25), measure.Whole(30)), shoot.Minutes{From: 25, Likely: 28, To: 30}},
		{"¼ to ½", between(quarter, half), shoot.Minutes{From: 0, Likely: 1, To: 1}},
		{"nothing", between(measure.Whole(0), measure.Whole(0)), shoot.Minutes{}},
		{"below zero, by a slip of the pen", between(measure.Whole(-5), measure.Whole(-5)), shoot.Minutes{}},
		{"a day to a fortnight: a week at most", between(measure.Whole(1440), measure.Whole(20160)), shoot.Minutes{From: 1440, Likely: 10080, To: 10080}},
		{"nothing said, unattended on the hob", recipe.Step{Station: "hob"}, shoot.Minutes{From: 5, Likely: 5, To: 5, Guess: true}},
		{"nothing said, by hand at the oven", recipe.Step{Station: "oven", HandsOn: true}, shoot.Minutes{From: 5, Likely: 5, To: 5, Guess: true}},
	} {
		t.Run(c.name, func(t *testing.T) {
			if diff := cmp.Diff(c.want, shoot.MinutesOf(c.step)); diff != "" {
				t.Errorf("minutes (-want +got):\n%s", diff)
			}
		})
	}
}

// Whatever a step says, its likely minutes lie between the least and the most,
// and the most is never less than was said.
func TestMinutesLieBetween(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		from := measure.Ratio(rapid.Int64Range(0, 5000).Draw(t, "from"), rapid.Int64Range(1, 12).Draw(t, "of"))
		to := from.Add(measure.Ratio(rapid.Int64Range(0, 900).Draw(t, "more"), 7))
		m := shoot.MinutesOf(recipe.Step{HasMinutes: true, Minutes: measure.Between(from, to)})
		isTold := measure.Whole(int64(m.From)).Cmp(from) <= 0 && measure.Whole(int64(m.To)).Cmp(to) >= 0
		if m.From > m.Likely || m.Likely > m.To || m.Guess || !isTold {
			t.Fatalf("%v to %v is planned as %+v", from, to, m)
		}
	})
}
