package demo_test

import (
	"fmt"
	"testing"

	"benchproof/kitchen/recipe"
)

// read reads one version of a recipe, from 1, as the kitchen does.
func read(t testing.TB, key string, version int) recipe.Recipe {
	t.Helper()
	made := versions(newShow(t), key)
	if version < 1 || version > len(made) {
		t.Fatalf("recipe %s has no version %d", key, version)
	}
	return recipe.Reader{}.Read(made[version-1].Text)
}

// eachVersion runs f for every version of every recipe.
func eachVersion(t *testing.T, f func(t *testing.T, key string, version int, r recipe.Recipe)) {
	t.Helper()
	for _, r := range newShow(t).Recipes {
		for i := range r.Versions {
			t.Run(fmt.Sprintf("%s v%d", r.Key, i+1), func(t *testing.T) {
				f(t, r.Key, i+1, read(t, r.Key, i+1))
			})
		}
	}
}

func TestEveryLineIsRead(t *testing.T) {
	eachVersion(t, func(t *testing.T, _ string, _ int, r recipe.Recipe) {
		if r.Title == "" || r.Yield.Text == "" {
			t.Errorf("title %q, yield %+v", r.Title, r.Yield)
		}
		for _, u := range r.Unread {
			t.Errorf("line %d not read: %q, %s", u.Number, u.Text, u.Reason)
		}
		for _, c := range r.Components {
			for _, l := range c.Lines {
				if !l.Read || l.Reason != "" || l.Food == "" {
					t.Errorf("line %d %q: read %t, food %q, %s", l.Number, l.Text, l.Read, l.Food, l.Reason)
				}
				if !l.HasAmount && !l.ToTaste {
					t.Errorf("line %d %q: neither an amount nor to taste", l.Number, l.Text)
				}
			}
		}
	})
}

// Every shot that names a component or a step means one that stands in the
// version in use.
func TestShotsMeanStepsOfTheRecipe(t *testing.T) {
	for _, e := range newShow(t).Episodes {
		r := read(t, e.Recipe, e.Version)
		steps := map[string]int{}
		for _, c := range r.Components {
			steps[c.Name] = len(c.Steps)
		}
		for _, s := range e.Shots {
			n, ok := steps[s.Component]
			if (s.Component != "" || s.Step > 0) && (!ok || s.Step > n) {
				t.Errorf("episode %d: shot %q is of %q step %d; the recipe has %v", e.Brief.Number, s.Title, s.Component, s.Step, steps)
			}
		}
	}
}
