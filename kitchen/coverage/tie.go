package coverage

import (
	"benchproof/kitchen/episode"
	"benchproof/kitchen/recipe"
)

// Tie is what a shot belongs to in a recipe.
type Tie struct {
	Component int // index into Components; −1 for the whole episode
	Step      int // index into its Steps; −1 for the whole component
}

// TieOf finds what a shot is tied to. ok is false if the recipe has no such
// component or step, as after a step was taken out; the tie then is to the whole
// episode. Of components of one name the first that has the step counts.
func TieOf(r recipe.Recipe, shot episode.Shot) (tie Tie, ok bool) {
	if shot.Component == "" && shot.Step == 0 {
		return Tie{-1, -1}, true
	}
	for i, c := range r.Components {
		if c.Name == shot.Component && shot.Step <= len(c.Steps) {
			return Tie{i, shot.Step - 1}, true
		}
	}
	return Tie{-1, -1}, false
}

// At is the step of a tie; ok is false for one to no single step.
func (t Tie) At() (at recipe.Position, ok bool) {
	return recipe.Position{Component: t.Component, Step: t.Step}, t.Step >= 0
}
