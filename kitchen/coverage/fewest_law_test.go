package coverage_test

import (
	"fmt"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"benchproof/kitchen/coverage"
	"benchproof/kitchen/episode"
	"benchproof/kitchen/recipe"
)

// drawKitchen draws a recipe whose parts use each other at random, and shots of
// it.
func drawKitchen(t *rapid.T, mostSteps, mostShots int, setups ...string) (recipe.Recipe, []episode.Shot) {
	var r recipe.Recipe
	for i := range rapid.IntRange(1, 4).Draw(t, "parts") {
		c := recipe.Component{Name: string(rune('A' + i)), Lines: []recipe.Line{{Text: "flour"}}}
		for range rapid.IntRange(0, mostSteps).Draw(t, "steps") {
			step := recipe.Step{Text: "Stir."}
			if i > 0 && rapid.IntRange(0, 2).Draw(t, "joins") == 0 {
				step.Uses = []recipe.Use{{Component: rapid.IntRange(0, i-1).Draw(t, "uses"), Line: -1}}
			}
			c.Steps = append(c.Steps, step)
		}
		r.Components = append(r.Components, c)
	}
	var shots []episode.Shot
	for range rapid.IntRange(0, mostShots).Draw(t, "shots") {
		shot := whole("insert", rapid.SampledFrom(setups).Draw(t, "setup"))
		if c := r.Components[rapid.IntRange(0, len(r.Components)-1).Draw(t, "part")]; rapid.IntRange(0, 4).Draw(t, "tied") > 0 {
			shot.Component, shot.Step = c.Name, rapid.IntRange(0, len(c.Steps)).Draw(t, "step")
		}
		shots = append(shots, shot)
	}
	return r, shots
}

// waits tells which shots each shot waits for, by the recipe's own sequence.
func waits(r recipe.Recipe, shots []episode.Shot) (before [][]int) {
	all := map[recipe.Position]map[recipe.Position]bool{} // what each step waits for, however far back
	for _, task := range r.Sequence() {
		all[task.At] = map[recipe.Position]bool{}
		for _, p := range task.After {
			all[task.At][p] = true
			for further := range all[p] {
				all[task.At][further] = true
			}
		}
	}
	stepOf := func(shot episode.Shot) (recipe.Position, bool) {
		tie, _ := coverage.TieOf(r, shot)
		return tie.At()
	}
	for _, later := range shots {
		var list []int
		for k, earlier := range shots {
			a, isA := stepOf(earlier)
			b, isB := stepOf(later)
			if isA && isB && all[b][a] {
				list = append(list, k)
			}
		}
		before = append(before, list)
	}
	return before
}

// brute gives the fewest changes over every order of filming, by trying each
// shot as the next from each set of shots filmed: nothing is left out.
func brute(shots []episode.Shot, before [][]int) int {
	type at struct {
		filmed uint
		setup  string
	}
	const none = 1 << 30
	known := map[at]int{}
	var least func(at) int
	least = func(now at) int {
		if now.filmed == 1<<len(shots)-1 {
			return 0
		}
		if n, ok := known[now]; ok {
			return n
		}
		best := none
		for i, shot := range shots {
			isOpen := now.filmed&(1<<i) == 0 && !slices.ContainsFunc(before[i], func(k int) bool { return now.filmed&(1<<k) == 0 })
			if !isOpen {
				continue
			}
			change := 0
			if now.setup != "" && now.setup != shot.Setup {
				change = 1
			}
			best = min(best, change+least(at{now.filmed | 1<<i, shot.Setup}))
		}
		known[now] = best
		return best
	}
	return least(at{})
}

// checkRuns checks that an order films every shot once, as it is cooked, and has
// as many changes as it is said to.
func checkRuns(t *rapid.T, got coverage.Changes, shots []episode.Shot, before [][]int) {
	if want := max(0, len(got.Runs)-1); got.Fewest != want {
		t.Fatalf("%d changes in %d runs", got.Fewest, len(got.Runs))
	}
	filmed := map[int]bool{}
	for i, run := range got.Runs {
		if i > 0 && run.Setup == got.Runs[i-1].Setup {
			t.Fatalf("two runs of %q follow each other: %+v", run.Setup, got.Runs)
		}
		now := map[int]bool{}
		for _, shot := range run.Shots {
			if filmed[shot] || now[shot] || shots[shot].Setup != run.Setup {
				t.Fatalf("shot %d is filmed again, or with a wrong setup: %+v", shot, got.Runs)
			}
			now[shot] = true
		}
		for _, shot := range run.Shots {
			for _, earlier := range before[shot] {
				if !filmed[earlier] && !now[earlier] {
					t.Fatalf("shot %d is filmed before %d: %+v", shot, earlier, got.Runs)
				}
			}
			filmed[shot] = true
		}
	}
	if len(filmed) != len(shots) {
		t.Fatalf("%d of %d shots are filmed: %+v", len(filmed), len(shots), got.Runs)
	}
}

func TestFewestIsTheFewestOfAllOrders(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, shots := drawKitchen(t, 4, 11, "x", "y", "z")
		before := waits(r, shots)
		got := coverage.Count(r, shots, nil)
		checkRuns(t, got, shots, before)
		if want := brute(shots, before); got.Fewest != want || got.AtLeast != want {
			t.Fatalf("fewest %d, at least %d, want %d", got.Fewest, got.AtLeast, want)
		}
		if got.Now < got.Fewest {
			t.Fatalf("the list has %d changes, the fewest are %d", got.Now, got.Fewest)
		}
	})
}

// A list that can be filmed as it stands is counted as it stands.
func TestAListInCookingOrderIsCountedAsItStands(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, shots := drawKitchen(t, 4, 9, "x", "y", "z")
		for i, list := range waits(r, shots) {
			if slices.ContainsFunc(list, func(k int) bool { return k > i }) {
				t.Skip("against the cooking order")
			}
		}
		want := 0
		for i := 1; i < len(shots); i++ {
			if shots[i].Setup != shots[i-1].Setup {
				want++
			}
		}
		if got := coverage.Count(r, shots, nil); got.Now != want {
			t.Fatalf("now %d, want %d", got.Now, want)
		}
	})
}

// The order of a plan is one of those that the fewest are taken from, whatever
// it says of when steps begin.
func TestNoPlanHasFewerThanTheFewest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, shots := drawKitchen(t, 4, 11, "x", "y", "z")
		minutes := map[recipe.Position]int{}
		for _, task := range r.Sequence() {
			minutes[task.At] = rapid.IntRange(0, 30).Draw(t, "minute")
		}
		ahead := map[recipe.Position]bool{}
		for at, minute := range minutes {
			if minute%5 == 0 {
				delete(minutes, at)
				ahead[at] = true
			}
		}
		got := coverage.Count(r, shots, &coverage.Plan{Begins: minutes, Ahead: ahead})
		if got.Now < got.Fewest {
			t.Fatalf("the plan has %d changes, the fewest are %d", got.Now, got.Fewest)
		}
	})
}

// large is a dish of several parts side by side, each with its setups in an
// order of its own: more states than the search looks at.
func large(parts, steps, setups int) (recipe.Recipe, []episode.Shot) {
	var r recipe.Recipe
	var shots []episode.Shot
	turn := uint32(7)
	for i := range parts {
		c := recipe.Component{Name: fmt.Sprint("part ", i), Lines: []recipe.Line{{Text: "flour"}}}
		for k := range steps {
			c.Steps = append(c.Steps, recipe.Step{Text: "Stir."})
			turn = turn*1664525 + 1013904223 // Numerical Recipes' generator, from memory
			shots = append(shots, of(c.Name, k+1, "insert", fmt.Sprint("setup ", int(turn>>16)%setups)))
		}
		r.Components = append(r.Components, c)
	}
	return r, shots
}

// Where the search is given up, the order found still holds and the bound is no
// more than it.
func TestALargeListIsBounded(t *testing.T) {
	r, shots := large(12, 12, 8)
	got := coverage.Count(r, shots, nil)
	if got.AtLeast >= got.Fewest || got.AtLeast < 8 {
		t.Errorf("at least %d, found %d: this list is meant to be too large to be proven", got.AtLeast, got.Fewest)
	}
	if got.Now < got.Fewest {
		t.Errorf("the list has %d changes, an order was found with %d", got.Now, got.Fewest)
	}
	rapid.Check(t, func(t *rapid.T) { checkRuns(t, got, shots, waits(r, shots)) })
}

// More shots than one machine word holds bits.
func TestALongListOfOnePart(t *testing.T) {
	r, shots := large(1, 150, 5)
	got := coverage.Count(r, shots, nil)
	if got.Now != got.Fewest || got.AtLeast != got.Fewest {
		t.Errorf("one part has one order, and it counts %+v", got)
	}
}
