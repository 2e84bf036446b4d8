package coverage_test

import (
	"testing"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/recipe"
	"benchproof/seed"
)

// read reads a recipe as a creator pastes it.
func read(t testing.TB, text string) recipe.Recipe {
	t.Helper()
	larder, err := seed.Larder()
	if err != nil {
		t.Fatal(err)
	}
	return recipe.Reader{Larder: larder}.Read(text)
}

// tart has two components that are made side by side and put together.
const tart = `Quince tart

Pastry:
200 g flour
100 g butter
Rub the butter into the flour.
Chill for 30 minutes.
Bake for 25 minutes, until golden all over.

Cream:
3 eggs
Whisk the eggs over a low heat, until thick enough to hold a trail.
Spread the cream in the pastry and chill for 2 hours.
`

// at is a position.
func at(component, step int) recipe.Position {
	return recipe.Position{Component: component, Step: step}
}

// of is a shot of a step, numbered from 1, of a component.
func of(component string, step int, kind, setup string) episode.Shot {
	return episode.Shot{Title: "a shot", Kind: kind, Setup: setup, Component: component, Step: step, Status: episode.Missing}
}

// whole is a shot of the episode.
func whole(kind, setup string) episode.Shot { return of("", 0, kind, setup) }
