package coverage_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/coverage"
	"benchproof/kitchen/episode"
	"benchproof/kitchen/recipe"
)

// layout shows the ingredients of a component laid out, of all for "".
func layout(component string) episode.Shot {
	shot := of(component, 0, "overhead", "")
	shot.Layout = true
	return shot
}

// bare is what the tart lacks without a shot.
func bare() coverage.Coverage {
	return coverage.Coverage{
		Steps: 5, Cues: 2, NoHero: true, NoLayout: []int{0, 1},
		NoShot: []recipe.Position{at(0, 0), at(0, 1), at(0, 2), at(1, 0), at(1, 1)},
		NoCue:  []recipe.Position{at(0, 2), at(1, 0)},
	}
}

// but is what the tart lacks with that put right.
func but(change func(c *coverage.Coverage)) coverage.Coverage {
	c := bare()
	change(&c)
	return c
}

func TestOf(t *testing.T) {
	r := read(t, tart)
	baked := func(c *coverage.Coverage) {
		c.NoShot = []recipe.Position{at(0, 0), at(0, 1), at(1, 0), at(1, 1)}
	}
	shown := func(c *coverage.Coverage) { baked(c); c.NoCue = []recipe.Position{at(1, 0)} }
	for _, c := range []struct {
		name  string
		shots []episode.Shot
		want  coverage.Coverage
	}{
		{"no shot", nil, bare()},
		{"a shot of the episode shows no step", []episode.Shot{whole("close-up", "")}, bare()},
		{"nor does one of a whole part", []episode.Shot{of("Pastry", 0, "close-up", "")}, bare()},
		{"nor one of a step that is gone", []episode.Shot{of("Pastry", 9, "close-up", ""), of("Glaze", 1, "insert", "")}, bare()},
		{"a close-up shows the cue", []episode.Shot{of("Pastry", 3, "close-up", "")}, but(shown)},
		{"so does an insert", []episode.Shot{of("Pastry", 3, "insert", "")}, but(shown)},
		{"and an overhead", []episode.Shot{of("Pastry", 3, "overhead", "")}, but(shown)},
		{"a wide does not", []episode.Shot{of("Pastry", 3, "wide", "")}, but(baked)},
		{"nor does a cutaway", []episode.Shot{of("Pastry", 3, "cutaway", "")}, but(baked)},
		{"nor the host", []episode.Shot{of("Pastry", 3, "piece to camera", "")}, but(baked)},
		{"a wide and an insert", []episode.Shot{of("Pastry", 3, "wide", ""), of("Pastry", 3, "insert", ""), of("Pastry", 3, "wide", "")}, but(shown)},
		{"one layout for all", []episode.Shot{layout("")}, but(func(c *coverage.Coverage) { c.NoLayout = nil })},
		{"a layout of one part", []episode.Shot{layout("Pastry")}, but(func(c *coverage.Coverage) { c.NoLayout = []int{1} })},
		{"a layout of each", []episode.Shot{layout("Pastry"), layout("Cream")}, but(func(c *coverage.Coverage) { c.NoLayout = nil })},
		{"a layout of what is gone", []episode.Shot{layout("Glaze")}, bare()},
		{"a hero of the episode", []episode.Shot{whole("hero", "")}, but(func(c *coverage.Coverage) { c.NoHero = false })},
		{"a hero of the last part", []episode.Shot{of("Cream", 0, "hero", "")}, but(func(c *coverage.Coverage) { c.NoHero = false })},
		{"a hero of a part that goes into another", []episode.Shot{of("Pastry", 0, "hero", "")}, bare()},
		{"a hero of a step that is gone is one still", []episode.Shot{of("Cream", 9, "hero", "")}, but(func(c *coverage.Coverage) { c.NoHero = false })},
		{"a hero of the last step", []episode.Shot{of("Cream", 2, "hero", "")}, but(func(c *coverage.Coverage) {
			c.NoHero, c.NoShot = false, []recipe.Position{at(0, 0), at(0, 1), at(0, 2), at(1, 0)}
		})},
	} {
		t.Run(c.name, func(t *testing.T) {
			if diff := cmp.Diff(c.want, coverage.Of(r, c.shots)); diff != "" {
				t.Errorf("Of (-want +got):\n%s", diff)
			}
		})
	}
}

func TestOfNoRecipe(t *testing.T) {
	if diff := cmp.Diff(coverage.Coverage{NoHero: true}, coverage.Of(recipe.Recipe{}, nil)); diff != "" {
		t.Errorf("without a shot (-want +got):\n%s", diff)
	}
	if got := coverage.Of(recipe.Recipe{}, []episode.Shot{whole("hero", "")}); !got.IsWhole() {
		t.Errorf("with a hero there is still missing: %+v", got)
	}
}

// Steps stand under a heading of their own: any part may be the finished dish.
func TestOfOneMethodForSeveralParts(t *testing.T) {
	r := read(t, "Pie\n\nCrust:\n200 g flour\n\nFilling:\n300 g apples\n\nMethod\nRub the flour with water.\nSlice the apples.\nPut the filling in the crust.\nBake for 40 minutes.\n")
	got := coverage.Of(r, []episode.Shot{of("Crust", 0, "hero", "")})
	if got.NoHero || got.Steps != 4 || len(got.NoLayout) != 2 {
		t.Errorf("Of = %+v", got)
	}
}

func TestIsWhole(t *testing.T) {
	if !(coverage.Coverage{Steps: 3, Cues: 1}).IsWhole() {
		t.Error("a list that leaves nothing out is not whole")
	}
	for name, c := range map[string]coverage.Coverage{
		"a step": {NoShot: []recipe.Position{at(0, 0)}}, "a cue": {NoCue: []recipe.Position{at(0, 0)}},
		"a layout": {NoLayout: []int{0}}, "a hero": {NoHero: true},
	} {
		if c.IsWhole() {
			t.Errorf("without %s it is whole", name)
		}
	}
}

func TestSaysLayout(t *testing.T) {
	for title, want := range map[string]bool{
		"The ingredients laid out":         true,
		"Ingredients, laid out in a row":   true,
		"All ingredients":                  true,
		"All the ingredients on the board": true,
		"Mise en place":                    true,
		"Layout of the pastry":             true,
		"Dry ingredients fall":             false,
		"Plums laid in rings, outside in":  false,
		"Pour it all, slowly":              false,
		"":                                 false,
	} {
		if got := coverage.SaysLayout(title); got != want {
			t.Errorf("SaysLayout(%q) = %v, want %v", title, got, want)
		}
	}
}
