package recipe_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/recipe"
)

const tartText = `Plum tart

Pastry:
200 g plain flour
100 g butter
1 egg

Cream:
250 ml milk
3 egg yolks
60 g sugar

Topping:
6 plums
1 tbsp icing sugar

Method:
Rub the butter into the flour, bind with the egg and chill for 1 hour.
Heat the milk, whisk the yolks with the sugar and cook until thick.
Roll out the pastry and bake it for 20 minutes.
Spread the cream on the pastry, lay the plums on top and bake for 30 minutes.
Dust with the icing sugar.
`

func TestUpTo(t *testing.T) {
	r := recipe.Reader{}.Read(tartText)
	steps := positions(r)
	tests := []struct {
		name string
		step int
		want string
	}{
		{"the pastry is chilled", 0, "200 g plain flour, 100 g butter, 1 egg"},
		{"the cream is cooked", 1, "250 ml milk, 3 egg yolks, 60 g sugar"},
		// In a method of all components, a step that takes one up waits for all.
		{"the pastry is baked", 2, "200 g plain flour, 100 g butter, 1 egg, 250 ml milk, 3 egg yolks, 60 g sugar"},
		{"all but the sugar on top", 3, "200 g plain flour, 100 g butter, 1 egg, 250 ml milk, 3 egg yolks, 60 g sugar, 6 plums"},
		{"the whole dish", 4, "200 g plain flour, 100 g butter, 1 egg, 250 ml milk, 3 egg yolks, 60 g sugar, 6 plums, 1 tbsp icing sugar"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			if diff := cmp.Diff(tt.want, lineTexts(r.UpTo(steps[tt.step]))); diff != "" {
				t.Errorf("lines (-want +got):\n%s", diff)
			}
		})
	}
	if diff := cmp.Diff(recipe.Reader{}.Read(tartText), r); diff != "" {
		t.Errorf("the recipe itself has changed:\n%s", diff)
	}
}

// Steps that name nothing need all of their component.
func TestUpToOfStepsThatNameNothing(t *testing.T) {
	r := recipe.Reader{}.Read("Loaf\n\n500 g flour\n350 ml water\n10 g salt\n\nKnead everything for 10 minutes.\nLeave to prove for 2 hours.\nBake for 40 minutes.\n")
	if got, want := lineTexts(r.UpTo(positions(r)[1])), "500 g flour, 350 ml water, 10 g salt"; got != want {
		t.Errorf("lines %q, want %q", got, want)
	}
}

func TestStepsUpTo(t *testing.T) {
	r := recipe.Reader{}.Read(tartText)
	steps := positions(r)
	for _, tt := range []struct {
		name string
		at   int
		want []recipe.Position
	}{
		{"the first", 0, steps[:1]},
		{"the cream needs no pastry", 1, steps[1:2]},
		{"what joins them needs both", 3, steps[:4]},
		{"the last needs all", 4, steps},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if diff := cmp.Diff(tt.want, r.StepsUpTo(steps[tt.at])); diff != "" {
				t.Errorf("steps (-want +got):\n%s", diff)
			}
		})
	}
}

// positions are those of all steps, in the order of the text.
func positions(r recipe.Recipe) []recipe.Position {
	var all []recipe.Position
	for _, t := range r.Sequence() {
		all = append(all, t.At)
	}
	return all
}

func lineTexts(r recipe.Recipe) string {
	var all []string
	for _, c := range r.Components {
		for _, line := range c.Lines {
			all = append(all, line.Text)
		}
	}
	return strings.Join(all, ", ")
}
