package shoot_test

import (
	"context"
	"fmt"
	"testing"

	"pgregory.net/rapid"

	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shoot"
	"benchproof/kitchen/shoot/solve"
)

// drawStaged draws a day of one batch, some steps of which are filmed and after
// others of which a swap-out can take over; the shoot begins some time after the
// kitchen opens.
func drawStaged(t *rapid.T) shoot.Day {
	b := shoot.Batch{Name: "shoot", Film: map[recipe.Position]string{}}
	var steps []recipe.Step
	for k := range rapid.IntRange(2, 5).Draw(t, "steps") {
		if rapid.Bool().Draw(t, "waits") {
			steps = append(steps, step(fmt.Sprint("Wait ", k), "waits", false, rapid.Int64Range(10, 60).Draw(t, "minutes")))
			b.Stages = append(b.Stages, shoot.Stage{At: at(k), Overnight: rapid.Bool().Draw(t, "keeps overnight")})
			continue
		}
		steps = append(steps, step(fmt.Sprint("Work ", k), "bench", true, rapid.Int64Range(1, 20).Draw(t, "minutes")))
		if rapid.Bool().Draw(t, "is filmed") {
			b.Film[at(k)] = "overhead"
		}
	}
	b.Recipe = recipe.Recipe{Components: []recipe.Component{{Lines: []recipe.Line{{Text: "500 g flour"}}, Steps: steps}}}
	return shoot.Day{
		Stations: []shoot.Station{{Name: shoot.Hands, Units: rapid.IntRange(1, 2).Draw(t, "hands")}, {Name: shoot.Camera, Units: 1}},
		Batches:  []shoot.Batch{b}, From: rapid.IntRange(0, 90).Draw(t, "from"),
	}
}

// withSwapOuts is the day with an extra make up to each of some stages, put
// together by hand.
func withSwapOuts(d shoot.Day, stages []shoot.Stage) shoot.Day {
	b := d.Batches[0]
	b.Swaps = map[recipe.Position]string{}
	batches := []shoot.Batch{b}
	for k, s := range stages {
		if s.Overnight {
			b.Swaps[s.At] = ""
			continue
		}
		name := fmt.Sprint("extra ", k)
		b.Swaps[s.At] = name
		batches = append(batches, shoot.Batch{Name: name, Recipe: b.Recipe, Ahead: true, Until: &s.At})
	}
	d.Batches = batches
	return d
}

// choices lists all ways to pick so many of the stages.
func choices(stages []shoot.Stage, n int) [][]shoot.Stage {
	if n == 0 {
		return [][]shoot.Stage{nil}
	}
	var all [][]shoot.Stage
	for k := range stages {
		for _, rest := range choices(stages[k+1:], n-1) {
			all = append(all, append([]shoot.Stage{stages[k]}, rest...))
		}
	}
	return all
}

// The best day with so many extra makes is the best of all days with so many, or
// fewer, each planned by itself.
func TestTheBestSwapOutsAreTheBestOfAll(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := drawStaged(t)
		options, err := d.SwapOuts(context.Background(), 2, solve.Options{Steps: 20_000})
		if err != nil {
			t.Fatal(err)
		}
		least := options[0].Wrap
		for n, o := range options {
			isProved := o.Optimal
			for _, choice := range choices(d.Batches[0].Stages, n) {
				p, err := withSwapOuts(d, choice).Make(context.Background(), solve.Options{Steps: 1000})
				if err != nil {
					t.Fatalf("%v: %v", choice, err)
				}
				isProved = isProved && p.Optimal
				if least = min(least, p.Wrap); p.Wrap < o.Bound {
					t.Fatalf("with %d makes none is said to wrap before %d, with %v it wraps at %d", n, o.Bound, choice, p.Wrap)
				}
			}
			if o.Wrap < least && isProved || o.Optimal && o.Wrap != least {
				t.Fatalf("with %d makes it wraps at %d (proved: %v), the best of all at %d", n, o.Wrap, o.Optimal, least)
			}
		}
	})
}

// The cuts of an option are of stages of the day, each once; the option's day is
// planned again just so, and its extra makes begin when it says.
func TestCutsAreOfStages(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := drawStaged(t)
		options, err := d.SwapOuts(context.Background(), 2, solve.Options{Steps: 10_000})
		if err != nil {
			t.Fatal(err)
		}
		for _, o := range options {
			seen := map[shoot.Key]bool{}
			for _, c := range o.Cuts {
				lasts, begins := 0, -1
				for k, s := range d.Batches[0].Recipe.Components[0].Steps {
					if k <= c.Stage.At.Step {
						lasts += shoot.MinutesOf(s).Likely
					}
				}
				for _, e := range o.Plan.Entries {
					if e.Key.Batch == c.Batch && (begins < 0 || e.From < begins) {
						begins = e.From
					}
				}
				if seen[c.Stage] || !isStage(d.Batches[0], c) || c.Lasts != lasts || c.Begins != begins {
					t.Fatalf("%+v; it begins at %d and takes %d up to its stage", c, begins, lasts)
				}
				seen[c.Stage] = true
			}
			again, err := o.Day.Make(context.Background(), solve.Options{Steps: 5000})
			if err != nil || again.Bound > o.Wrap || again.Optimal && again.Wrap > o.Wrap {
				t.Fatalf("the day of %d makes is planned until %d (bound %d) again, it was %d; %v", o.Makes, again.Wrap, again.Bound, o.Wrap, err)
			}
		}
	})
}

func isStage(b shoot.Batch, c shoot.Cut) bool {
	for _, s := range b.Stages {
		if s.At == c.Stage.At {
			return c.Stage.Batch == b.Name && s.Overnight == c.Overnight
		}
	}
	return false
}

// What is made ahead, on a morning by hand: the kitchen opens at 0 and the shoot
// begins at 60. The dough is mixed in 10 and rests for 50, which is made ahead
// from 0 to 60, so that rolling, 15, is filmed at once: 75. Made the evening
// before it is the same. Without it: 60 + 10 + 50 + 15.
func ExampleDay_SwapOuts() {
	d := shoot.Day{
		Stations: []shoot.Station{{Name: shoot.Hands, Units: 1}, {Name: shoot.Camera, Units: 1}},
		From:     60,
		Batches: []shoot.Batch{{
			Name: "shoot",
			Recipe: recipe.Recipe{Components: []recipe.Component{{Lines: []recipe.Line{{Text: "300 g flour"}}, Steps: []recipe.Step{
				step("Mix", "bench", true, 10), step("Rest", "waits", false, 50), step("Roll", "bench", true, 15),
			}}}},
			Film:   map[recipe.Position]string{at(2): "overhead"},
			Stages: []shoot.Stage{{At: at(1)}},
		}},
	}
	options, err := d.SwapOuts(context.Background(), 1, solve.Options{})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, o := range options {
		fmt.Printf("%d more: begins at %d, wraps at %d, proved: %v\n", o.Makes, o.Begins, o.Wrap, o.Optimal)
		for _, c := range o.Cuts {
			fmt.Printf("  %s begins at %d and cuts a wait of %d\n", c.Batch, c.Begins, c.Minutes)
		}
	}
	// Output:
	// 0 more: begins at 60, wraps at 135, proved: true
	// 1 more: begins at 0, wraps at 75, proved: true
	//   swap-out 1 begins at 0 and cuts a wait of 50
}
