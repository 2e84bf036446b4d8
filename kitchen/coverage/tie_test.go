package coverage_test

import (
	"testing"

	"benchproof/kitchen/coverage"
	"benchproof/kitchen/recipe"
)

func TestTieOf(t *testing.T) {
	three := []recipe.Step{{Text: "a"}, {Text: "b"}, {Text: "c"}}
	r := recipe.Recipe{Components: []recipe.Component{{Steps: three[:2]}, {Name: "Dough", Steps: three[:1]}, {Name: "Dough", Steps: three}, {Name: "Syrup"}}}
	for _, c := range []struct {
		name      string
		component string
		step      int
		want      coverage.Tie
		ok        bool
	}{
		{"the episode", "", 0, coverage.Tie{Component: -1, Step: -1}, true},
		{"a step of the part without a name", "", 2, coverage.Tie{Component: 0, Step: 1}, true},
		{"one step too far", "", 3, coverage.Tie{Component: -1, Step: -1}, false},
		{"a whole component", "Dough", 0, coverage.Tie{Component: 1, Step: -1}, true},
		{"a step", "Dough", 1, coverage.Tie{Component: 1, Step: 0}, true},
		{"a step that only the second of the name has", "Dough", 3, coverage.Tie{Component: 2, Step: 2}, true},
		{"a step of neither", "Dough", 4, coverage.Tie{Component: -1, Step: -1}, false},
		{"a component without steps", "Syrup", 0, coverage.Tie{Component: 3, Step: -1}, true},
		{"a component that is gone", "Glaze", 0, coverage.Tie{Component: -1, Step: -1}, false},
		{"a step of one that is gone", "Glaze", 2, coverage.Tie{Component: -1, Step: -1}, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			got, ok := coverage.TieOf(r, of(c.component, c.step, "wide", ""))
			if got != c.want || ok != c.ok {
				t.Errorf("TieOf(%q, %d) = %+v, %v, want %+v, %v", c.component, c.step, got, ok, c.want, c.ok)
			}
			if at, isStep := got.At(); isStep && (at.Component != got.Component || at.Step != got.Step) {
				t.Errorf("At() = %+v of %+v", at, got)
			} else if isStep != (got.Step >= 0) {
				t.Errorf("At() of %+v is a step: %v", got, isStep)
			}
		})
	}
}
