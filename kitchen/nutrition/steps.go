package nutrition

import (
	"regexp"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/recipe/method"
)

// steps are what the method tells of where ingredients go.
type steps struct {
	recipe    recipe.Recipe
	tasks     []recipe.Task
	after     map[recipe.Position][]recipe.Position // what waits for a step
	sentences []string
}

func newSteps(r recipe.Recipe) *steps {
	s := &steps{recipe: r, tasks: r.Sequence(), after: map[recipe.Position][]recipe.Position{}}
	for _, t := range s.tasks {
		for _, p := range t.After {
			s.after[p] = append(s.after[p], t.At)
		}
		s.sentences = append(s.sentences, method.Sentences(s.step(t.At).Text)...)
	}
	return s
}

func (s *steps) step(at recipe.Position) recipe.Step {
	return s.recipe.Components[at.Component].Steps[at.Step]
}

// place is where a line stands in a recipe.
type place struct{ component, line int }

// lines gives the lines that a step uses; of a component used as made, all its
// lines.
func (s *steps) lines(at recipe.Position) []place {
	var found []place
	for _, u := range s.step(at).Uses {
		if u.Line >= 0 {
			found = append(found, place{u.Component, u.Line})
			continue
		}
		for k := range s.recipe.Components[u.Component].Lines {
			found = append(found, place{u.Component, k})
		}
	}
	return found
}

// firstUse is the first step that names a line, else its component as made; ok
// is false if none does.
func (s *steps) firstUse(p place) (at recipe.Position, ok bool) {
	for _, line := range []int{p.line, -1} {
		for _, t := range s.tasks {
			for _, u := range s.step(t.At).Uses {
				if u.Component == p.component && u.Line == line {
					return t.At, true
				}
			}
		}
	}
	return recipe.Position{}, false
}

// isFryer tells a step that fries in deep fat.
func (s *steps) isFryer(at recipe.Position) bool {
	step := s.step(at)
	return step.Station == "fryer" || deepWords.MatchString(step.Text)
}

func (s *steps) hasFryer() bool {
	for _, t := range s.tasks {
		if s.isFryer(t.At) {
			return true
		}
	}
	return false
}

// says tells whether some sentence of the method has both.
func (s *steps) says(what, about *regexp.Regexp) bool {
	for _, text := range s.sentences {
		if about.MatchString(text) && what.MatchString(text) {
			return true
		}
	}
	return false
}

// heatFrom is how long a step and those that wait for it cook, in minutes, the
// middle of each range, and whether any of them cooks at all.
func (s *steps) heatFrom(at recipe.Position) (minutes measure.Number, hot bool) {
	seen := map[recipe.Position]bool{at: true}
	for todo := []recipe.Position{at}; len(todo) > 0; todo = todo[1:] {
		step := s.step(todo[0])
		switch step.Station {
		case "hob", "oven", "grill", "fryer":
			hot = true
			if step.HasMinutes {
				minutes = minutes.Add(middle(step.Minutes))
			}
		}
		for _, p := range s.after[todo[0]] {
			if !seen[p] {
				seen[p] = true
				todo = append(todo, p)
			}
		}
	}
	return minutes, hot
}
