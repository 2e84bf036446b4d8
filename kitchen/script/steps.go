package script

import (
	"strings"

	"benchproof/kitchen/recipe"
)

// Steps words each step of a recipe for Align, in the order of the method: the
// step, the component it stands in, and the foods and components it uses.
func Steps(r recipe.Recipe) []string {
	var steps []string
	for _, c := range r.Components {
		for _, step := range c.Steps {
			words := []string{step.Text, c.Name}
			for _, use := range step.Uses {
				used := r.Components[use.Component]
				words = append(words, used.Name)
				if use.Line >= 0 {
					words = append(words, used.Lines[use.Line].Food)
				}
			}
			steps = append(steps, strings.Join(words, "\n"))
		}
	}
	return steps
}

// keysOf lists the different keys of a text's words, in order.
func keysOf(text string) []string {
	var keys []string
	met := map[string]bool{"": true}
	for _, w := range WordsOf(text) {
		if key := wordKey(w); !met[key] {
			met[key] = true
			keys = append(keys, key)
		}
	}
	return keys
}
