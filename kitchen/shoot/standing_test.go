package shoot_test

import (
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shoot"
)

// oneBatch is a day with a batch of these steps, one after the other.
func oneBatch(steps ...recipe.Step) shoot.Day {
	return shoot.Day{
		Stations: []shoot.Station{{Name: shoot.Hands, Units: 1}, {Name: "oven", Units: 1}},
		Batches:  []shoot.Batch{{Name: "shoot", Recipe: recipe.Recipe{Components: []recipe.Component{{Lines: []recipe.Line{{Text: "1 egg"}}, Steps: steps}}}}},
	}
}

func allSpoils(recipe.Recipe, int, int, shoot.State) bool { return true }

func TestWhatStands(t *testing.T) {
	mix, rest, chill, bake, cool, fill := step("Mix", "bench", true, 10), step("Rest", "waits", false, 100), step("Chill", "fridge", false, 60),
		step("Bake", "oven", false, 40), step("Cool", "waits", false, 90), step("Fill", "bench", true, 15)
	tests := []struct {
		name   string
		day    shoot.Day
		change func(*shoot.Day)
		want   []shoot.Standing
	}{
		{"mixed and rested, then baked", oneBatch(mix, rest, bake), nil, []shoot.Standing{{Task: shot(2), Of: []int{0}, From: 0, To: 110, Minutes: 110}}},
		{"cooled and filled after the heat", oneBatch(bake, cool, fill), nil, []shoot.Standing{{Task: shot(2), Of: []int{0}, From: 40, To: 145, Minutes: 105, IsCooked: true}}},
		{"the heat begins anew", oneBatch(mix, rest, bake, cool, fill), nil, []shoot.Standing{
			{Task: shot(2), Of: []int{0}, From: 0, To: 110, Minutes: 110}, {Task: shot(4), Of: []int{0}, From: 150, To: 255, Minutes: 105, IsCooked: true}}},
		{"the cold adds nothing and takes nothing away", oneBatch(mix, chill, rest), nil, []shoot.Standing{{Task: shot(2), Of: []int{0}, From: 0, To: 170, Minutes: 110}}},
		{"last in the cold: it stood before", oneBatch(rest, chill), nil, []shoot.Standing{{Task: shot(1), Of: []int{0}, From: 0, To: 100, Minutes: 100}}},
		{"waiting in the cold is no standing", oneBatch(mix, chill, fill), func(d *shoot.Day) {
			d.Pins = []shoot.Pin{{Task: shot(2), Start: 300}}
		}, []shoot.Standing{{Task: shot(2), Of: []int{0}, From: 0, To: 315, Minutes: 25}}},
		{"waiting out of the oven is", oneBatch(bake, fill), func(d *shoot.Day) {
			d.Pins = []shoot.Pin{{Task: shot(1), Start: 200}}
		}, []shoot.Standing{{Task: shot(1), Of: []int{0}, From: 40, To: 215, Minutes: 175, IsCooked: true}}},
		{"waiting on the bench is", oneBatch(mix, bake), func(d *shoot.Day) {
			d.Stations[1].Busy = []shoot.Busy{{From: 0, To: 130, Units: 1}}
		}, []shoot.Standing{{Task: shot(1), Of: []int{0}, From: 0, To: 130, Minutes: 130}}},
		{"made the day before: out of the cold", oneBatch(mix, chill, fill), func(d *shoot.Day) {
			d.Batches[0].Swaps = map[recipe.Position]string{at(1): ""}
		}, []shoot.Standing{{Task: shot(2), Of: []int{0}, From: 0, To: 15, Minutes: 15}}},
		{"a filmed beginning is no end", oneBatch(rest, bake), func(d *shoot.Day) {
			d.Batches[0].Opens = map[recipe.Position]string{at(0): "overhead"}
		}, []shoot.Standing{{Task: shot(1), Of: []int{0}, From: 0, To: 100, Minutes: 100}}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			if tt.change != nil {
				tt.change(&tt.day)
			}
			got := tt.day.Standings(mustMake(t, tt.day), 1, allSpoils)
			if diff := cmp.Diff(tt.want, got); diff != "" {
				t.Errorf("standing (-want +got):\n%s", diff)
			}
		})
	}
}

func TestStandingsOfAtLeast(t *testing.T) {
	for _, tt := range []struct {
		minutes int64
		want    int
	}{{119, 0}, {120, 1}, {121, 1}} {
		d := oneBatch(step("Rest", "waits", false, tt.minutes))
		if got := d.Standings(mustMake(t, d), 120, allSpoils); len(got) != tt.want {
			t.Errorf("%d minutes: %v, want %d", tt.minutes, got, tt.want)
		}
	}
}

// Food that is put together with some that spoils does from then on.
func TestWhatSpoilsInADish(t *testing.T) {
	r := recipe.Recipe{Components: []recipe.Component{
		{Name: "Pastry", Lines: []recipe.Line{{Text: "flour"}}, Steps: []recipe.Step{step("Rest the pastry", "waits", false, 200)}},
		{Name: "Cream", Lines: []recipe.Line{{Text: "milk"}}, Steps: []recipe.Step{step("Whisk the cream", "bench", true, 10)}},
		{Name: "Method", Steps: []recipe.Step{step("Fill", "bench", true, 30)}},
	}}
	r.Components[2].Steps[0].Uses = []recipe.Use{{Component: 0, Line: -1}, {Component: 1, Line: -1}}
	d := shoot.Day{Stations: []shoot.Station{{Name: shoot.Hands, Units: 1}}, Batches: []shoot.Batch{{Name: "shoot", Recipe: r}}}
	fill := shoot.Key{Batch: "shoot", At: recipe.Position{Component: 2}}
	only := func(which ...int) shoot.Spoils {
		return func(_ recipe.Recipe, component, _ int, _ shoot.State) bool {
			for _, c := range which {
				if c == component {
					return true
				}
			}
			return false
		}
	}
	// The pastry rests from 0 to 200, the cream is whisked at 0 and waits.
	d.Pins = []shoot.Pin{{Task: shoot.Key{Batch: "shoot", At: recipe.Position{Component: 1}}, Start: 150}}
	for name, tt := range map[string]struct {
		spoils []int
		want   int
	}{"nothing": {nil, 0}, "the cream, from 150 to 230": {[]int{1}, 80}, "both, from 0": {[]int{0, 1}, 230}, "the filling, which has no ingredients": {[]int{2}, 0}} {
		t.Run(name, func(t *testing.T) {
			got := d.Standings(mustMake(t, d), 1, only(tt.spoils...))
			if tt.want == 0 && len(got) > 0 || tt.want > 0 && (len(got) != 1 || got[0].Task != fill || got[0].Minutes != tt.want || !slices.Equal(got[0].Of, tt.spoils)) {
				t.Errorf("standing %v, want %d minutes until the filling", got, tt.want)
			}
		})
	}
}

// No food stands longer than from when it begins to when it last does, and none
// outside the day.
func TestStandingsLieInTheDay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := drawDay(t)
		p, ok := plannable(t, d)
		if !ok {
			return
		}
		for _, s := range d.Standings(p, 1, allSpoils) {
			if s.Minutes < 1 || s.Minutes > s.To-s.From || s.From < p.Begin || s.To > p.Wrap {
				t.Fatalf("%+v in a day from %d to %d", s, p.Begin, p.Wrap)
			}
		}
	})
}
