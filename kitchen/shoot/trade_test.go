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
// kitchen opens, and may be planned backwards.
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
			b.Film[at(k)] = rapid.SampledFrom([]string{"overhead", "close"}).Draw(t, "setup")
		}
	}
	b.Recipe = recipe.Recipe{Components: []recipe.Component{{Lines: []recipe.Line{{Text: "500 g flour"}}, Steps: steps}}}
	d := shoot.Day{
		Stations: []shoot.Station{{Name: shoot.Hands, Units: rapid.IntRange(1, 2).Draw(t, "hands")}, {Name: shoot.Camera, Units: 1}},
		Batches:  []shoot.Batch{b}, From: rapid.IntRange(0, 90).Draw(t, "from"),
		Setups: map[string]int{"overhead": 6, "close": rapid.IntRange(0, 9).Draw(t, "close")},
	}
	if maybe(t, "backwards", 3) {
		d.Finish = d.From + rapid.IntRange(150, 600).Draw(t, "finish")
	}
	return d
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
// fewer, each planned by itself; a day is refused only if all of them are.
func TestTheBestSwapOutsAreTheBestOfAll(t *testing.T) {
	isSeen := map[bool]int{}
	rapid.Check(t, func(t *rapid.T) {
		d := drawStaged(t)
		options, err := d.SwapOuts(context.Background(), 2, solve.Options{Steps: 20_000})
		least, isProved := solve.Never, true
		for n := range min(3, 1+len(d.Batches[0].Stages)) {
			for _, choice := range choices(d.Batches[0].Stages, n) {
				p, err := withSwapOuts(d, choice).Make(context.Background(), solve.Options{Steps: 1000})
				if err != nil {
					continue
				}
				edge, _ := sooner(d, shoot.Option{Wrap: p.Wrap, Begins: p.Begin})
				least, isProved = min(least, edge), isProved && p.Optimal
				if err == nil && options != nil && options[n].Refused == nil && edge < theirs(d, options[n]) {
					t.Fatalf("with %d makes none is said to be better than %d, with %v it comes to %d", n, options[n].Bound, choice, edge)
				}
			}
			if err != nil {
				continue
			}
			edge, _ := sooner(d, options[n])
			isSeen[d.Finish > 0]++
			switch o := options[n]; {
			case (o.Refused == nil) != (least < solve.Never):
				t.Fatalf("%d makes are refused, %v, and the best comes to %d", n, o.Refused, least)
			case o.Refused == nil && (edge < least && isProved || o.Optimal && edge != least):
				t.Fatalf("with %d makes it comes to %d (proved: %v), the best of all to %d", n, edge, o.Optimal, least)
			}
		}
		if err != nil && least < solve.Never {
			t.Fatalf("%v, and a plan comes to %d", err, least)
		}
	})
	if len(isSeen) < 2 {
		t.Errorf("forwards and backwards: %v", isSeen)
	}
}

// theirs is an option's bound as sooner has it.
func theirs(d shoot.Day, o shoot.Option) int {
	_, bound := sooner(d, o)
	return bound
}

// The cuts of an option are of stages of the day, each once; the option's day is
// planned again just so, and its extra makes begin when it says.
func TestCutsAreOfStages(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := drawStaged(t)
		options, err := d.SwapOuts(context.Background(), 2, solve.Options{Steps: 10_000})
		if err != nil {
			return
		}
		for _, o := range options {
			if o.Refused != nil {
				continue
			}
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
			edge, _ := sooner(d, o)
			new, bound := sooner(d, shoot.Option{Wrap: again.Wrap, Begins: again.Begin, Bound: again.Bound})
			if err != nil || bound > edge || again.Optimal && new > edge {
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
