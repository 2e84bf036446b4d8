package shoot_test

import (
	"context"
	"slices"
	"testing"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shoot"
	"benchproof/kitchen/shoot/solve"
)

// The steps of the bread, by place.
const (
	knead = iota
	prove
	shape
	proveAgain
	bake
	slice
)

func at(step int) recipe.Position { return recipe.Position{Step: step} }

func shot(step int) shoot.Key { return shoot.Key{Batch: "shoot", At: at(step)} }

// step makes a step; minutes may be one number or a range.
func step(text, station string, handsOn bool, minutes ...int64) recipe.Step {
	s := recipe.Step{Text: text, Station: station, HandsOn: handsOn}
	if len(minutes) > 0 {
		s.HasMinutes = true
		s.Minutes = measure.Between(measure.Whole(minutes[0]), measure.Whole(minutes[len(minutes)-1]))
	}
	return s
}

// bread is an invented loaf: knead 10, prove 120, shape 15, prove 60, bake 40,
// slice 5 minutes, one after the other: 250 minutes.
func bread() recipe.Recipe {
	return recipe.Recipe{Title: "Bench loaf", Components: []recipe.Component{{
		Lines: []recipe.Line{{Text: "500 g flour"}},
		Steps: []recipe.Step{
			step("Knead", "bench", true, 10),
			step("Prove", "waits", false, 120),
			step("Shape", "bench", true, 15),
			step("Prove again", "waits", false, 60),
			step("Bake", "oven", false, 40),
			step("Slice", "bench", true, 5),
		},
	}}}
}

// breadDay films kneading, shaping and slicing, with one of everything.
func breadDay() shoot.Day {
	film := map[recipe.Position]string{at(knead): "overhead", at(shape): "overhead", at(slice): "overhead"}
	return shoot.Day{
		Stations: []shoot.Station{{Name: shoot.Hands, Units: 1}, {Name: "bench", Units: 1}, {Name: "oven", Units: 1}, {Name: shoot.Camera, Units: 1}},
		Batches: []shoot.Batch{{
			Name: "shoot", Recipe: bread(), Film: film,
			Stages: []shoot.Stage{{At: at(prove)}, {At: at(proveAgain)}, {At: at(bake)}},
		}},
	}
}

func mustMake(t testing.TB, d shoot.Day) shoot.Plan {
	t.Helper()
	p, err := d.Make(context.Background(), solve.Options{})
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// startOf gives when a step of the shoot begins, −1 if it does not.
func startOf(p shoot.Plan, step int) int {
	k := slices.IndexFunc(p.Entries, func(e shoot.Entry) bool { return e.Key == shot(step) && !e.IsClean && e.Moment == "" })
	if k < 0 {
		return -1
	}
	return p.Entries[k].From
}
