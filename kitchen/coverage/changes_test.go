package coverage_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/coverage"
	"benchproof/kitchen/episode"
	"benchproof/kitchen/recipe"
)

// side is a recipe of two parts, A and B, that are made side by side, each of
// steps one after the other; the last step of B puts them together.
func side(stepsOfA, stepsOfB int) recipe.Recipe {
	line := []recipe.Line{{Text: "200 g flour"}}
	r := recipe.Recipe{Components: []recipe.Component{{Name: "A", Lines: line}, {Name: "B", Lines: line}}}
	for range stepsOfA {
		r.Components[0].Steps = append(r.Components[0].Steps, recipe.Step{Text: "Stir."})
	}
	for range stepsOfB {
		r.Components[1].Steps = append(r.Components[1].Steps, recipe.Step{Text: "Fold."})
	}
	return r
}

// list makes shots of words such as "A1:table", "B2:hob", "A:table" for a shot of
// a whole part, ":table" for one of the episode.
func list(words string) (shots []episode.Shot) {
	for _, word := range strings.Fields(words) {
		tie, setup, _ := strings.Cut(word, ":")
		shot := whole("insert", setup)
		if tie != "" {
			shot.Component, shot.Step = tie[:1], 0
		}
		if len(tie) > 1 {
			shot.Step = int(tie[1] - '0')
		}
		shots = append(shots, shot)
	}
	return shots
}

func TestFewestChanges(t *testing.T) {
	for _, c := range []struct {
		name, shots string
		a, b        int // steps of each part
		fewest      int
		setups      string // of the best order, where there is one only
	}{
		{"no shots", "", 1, 1, 0, ""},
		{"one setup", "A1:table A2:table B1:table", 2, 1, 0, "table"},
		{"as cooking demands", "A1:hob A2:table A3:hob", 3, 1, 2, "hob table hob"},
		{"what is made side by side comes together", "A1:hob A2:table B1:hob", 2, 2, 1, "hob table"},
		{"each part in another order", "A1:hob A2:table B1:table B2:hob", 2, 3, 2, ""},
		{"a common supersequence", "A1:x A2:y A3:z B1:y B2:x B3:z", 3, 4, 3, ""},
		{"steps between without a shot count", "A1:hob A3:table A5:hob", 5, 1, 2, "hob table hob"},
		{"a step of two setups", "A1:hob A1:table A2:hob", 2, 1, 1, ""},
		{"a step's own shots in the best order", "A1:x A2:y A2:x A3:y", 3, 1, 1, "x y"},
		{"a shot of the episode joins its setup", ":hob A1:table A2:hob", 2, 1, 1, "table hob"},
		{"a shot of a whole part too", "A:hob A1:table A2:hob", 2, 1, 1, "table hob"},
		{"a setup for the episode alone", "A1:table :quay :quay", 2, 1, 1, "table quay"},
		{"only of the episode", ":quay :table :quay", 1, 1, 1, "quay table"},
		{"a step that is gone binds nothing", "A9:hob A1:table A2:hob", 2, 1, 1, "table hob"},
		{"the last step waits for both parts", "A1:x B1:y B2:x", 1, 2, 1, "y x"},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := coverage.Count(side(c.a, c.b), list(c.shots), nil)
			if got.Fewest != c.fewest || got.AtLeast != c.fewest {
				t.Errorf("fewest %d, at least %d, want %d: %+v", got.Fewest, got.AtLeast, c.fewest, got.Runs)
			}
			var setups []string
			for _, run := range got.Runs {
				setups = append(setups, run.Setup)
			}
			if c.setups != "" && strings.Join(setups, " ") != c.setups {
				t.Errorf("the best order is %q, want %q", setups, c.setups)
			}
		})
	}
}

func TestRunsNameEveryShot(t *testing.T) {
	got := coverage.Count(side(2, 2), list("A1:hob :hob A2:table :quay B1:hob"), nil)
	want := []coverage.Run{{Setup: "hob", Shots: []int{0, 4, 1}}, {Setup: "table", Shots: []int{2}}, {Setup: "quay", Shots: []int{3}}}
	if diff := cmp.Diff(want, got.Runs); diff != "" {
		t.Errorf("runs (-want +got):\n%s", diff)
	}
}

func TestShotsWithoutASetupAreNotCounted(t *testing.T) {
	got := coverage.Count(side(2, 2), list("A1:hob A1: A2:hob :"), nil)
	if got.Unnamed != 2 || got.Fewest != 0 || got.Now != 0 || len(got.Runs) != 1 || len(got.Runs[0].Shots) != 2 {
		t.Errorf("Count = %+v", got)
	}
}

func TestChangesInTheOrderOfTheList(t *testing.T) {
	for _, c := range []struct {
		name, shots string
		now         int
	}{
		{"nothing", "", 0},
		{"as listed", "A1:hob B1:table A2:hob", 2},
		{"grouped", "A1:hob A2:hob B1:table", 1},
		{"shots of the episode count where they stand", "A1:hob :quay A2:hob", 2},
		{"a list that goes against the cooking is put off", "A2:hob B1:table A1:hob", 1},
		{"only as far as it must be", "A2:hob A1:table B1:hob :table", 2},
		{"all of a step is filmed before the next", "A1:hob A2:table A1:table A2:hob", 2},
		{"shots without a setup stand beside", "A1:hob A1: A2:hob", 0},
	} {
		t.Run(c.name, func(t *testing.T) {
			if got := coverage.Count(side(2, 2), list(c.shots), nil); got.Now != c.now {
				t.Errorf("now %d, want %d", got.Now, c.now)
			}
		})
	}
}

func TestChangesInTheOrderOfAPlan(t *testing.T) {
	plan := coverage.Plan{Begins: map[recipe.Position]int{at(0, 0): 0, at(1, 0): 10, at(0, 1): 20, at(1, 1): 30}}
	for _, c := range []struct {
		name, shots string
		now         int
	}{
		{"nothing", "", 0},
		{"by the clock, not by the list", "A1:hob A2:hob B1:table B2:table", 3},
		{"within a step the setup that stands goes first", "A1:hob B1:table B1:hob A2:table", 1},
		{"shots of the episode wait for their setup", ":table A1:hob B1:table A2:table", 1},
		{"or are a change of their own", ":quay A1:hob B1:table :quay", 2},
		{"a step that is not planned comes first", "A1:hob B3:table B1:table A2:hob", 2},
	} {
		t.Run(c.name, func(t *testing.T) {
			if got := coverage.Count(side(2, 2), list(c.shots), &plan); got.Now != c.now {
				t.Errorf("now %d, want %d", got.Now, c.now)
			}
		})
	}
}

// A plan that begins steps at once, in whatever order they stand, still films
// them as they are cooked.
func TestStepsThatBeginAtOnceAreFilmedAsTheyAreCooked(t *testing.T) {
	at0 := coverage.Plan{Begins: map[recipe.Position]int{at(0, 0): 0, at(0, 1): 0, at(0, 2): 0}}
	got := coverage.Count(side(3, 1), list("A3:hob A2:table A1:hob"), &at0)
	if got.Now != 2 {
		t.Errorf("now %d, want 2", got.Now)
	}
}

// A swap-out has done the second step, so that the third is filmed while the
// first is still to come.
func TestWhatASwapOutHasDoneIsWaitedForNoMore(t *testing.T) {
	plan := coverage.Plan{Begins: map[recipe.Position]int{at(0, 2): 0, at(0, 0): 10}, Ahead: map[recipe.Position]bool{at(0, 1): true}}
	shots := list("A1:hob A3:table B1:table A1:quay")
	got := coverage.Count(side(3, 1), shots, &plan)
	if got.Now != 2 || got.Fewest != 2 {
		t.Errorf("now %d, fewest %d, want 2 and 2: %+v", got.Now, got.Fewest, got.Runs)
	}
	shots = list("A1:hob A3:table A1:table")
	got = coverage.Count(side(3, 1), shots, &plan)
	if got.Now != 1 || got.Fewest != 1 {
		t.Errorf("now %d, fewest %d, want 1 and 1: %+v", got.Now, got.Fewest, got.Runs)
	}
	if whole := coverage.Count(side(3, 1), list("A1:hob A2:table A3:hob"), &coverage.Plan{}); whole.Fewest != 2 {
		t.Errorf("without a swap-out %d, want 2", whole.Fewest)
	}
}
