package recipe

import (
	"cmp"
	"regexp"
	"slices"
)

// brushes are the words of a step that puts one thing on another.
var brushes = regexp.MustCompile(`(?i)\b(brush|glaze|egg-?wash|baste)\b`)

// Position is where a step stands in a recipe.
type Position struct{ Component, Step int }

// Task is a step with the steps that must be done before it.
type Task struct {
	At    Position
	After []Position
}

// Sequence gives every step, in the order of the text, with what it waits for:
// the step before it that works on the same component, and the last step of
// each component that it uses. Components that do not use each other wait for
// nobody: they can be made side by side. In a method without ingredients of its
// own, what was in hand is waited for as well by a step that goes back to an
// earlier component ("Spoon the batter over the beans"), and by one that brushes
// or glazes ("Beat the yolk and brush the buns").
func (r Recipe) Sequence() []Task {
	s := sequence{recipe: r, last: map[int]Position{}, home: -1}
	order := r.stepsInOrder()
	for i, at := range order {
		s.add(at, i == len(order)-1)
	}
	return s.tasks
}

// sequence is a list of tasks in the making.
type sequence struct {
	recipe Recipe
	tasks  []Task
	last   map[int]Position // the last step that worked on a component
	home   int              // the component that the step before worked on
	oven   *Position        // a step that heats the oven, until something is baked
}

// add adds the step at a position. The last step, and every step that puts
// components together, waits for all that is still open.
func (s *sequence) add(at Position, last bool) {
	component := s.recipe.Components[at.Component]
	step := component.Steps[at.Step]
	task := Task{At: at}
	home := s.recipe.worksOn(at)
	if len(component.Lines) == 0 && len(step.Uses) == 0 && s.home >= 0 {
		home = s.home // "Bake for 40 minutes" goes on with what was in hand
	}
	p, isBack := s.last[home]
	if isBack {
		task.wait(p)
	}
	if p, ok := s.last[s.home]; ok && home != s.home && len(component.Lines) == 0 && (isBack || brushes.MatchString(step.Text)) {
		task.wait(p)
		s.last[s.home] = at
	}
	joins := last
	for _, u := range step.Uses {
		joins = joins || u.Line < 0
		if p, ok := s.last[u.Component]; ok && u.Line < 0 {
			task.wait(p)
		}
	}
	if joins {
		for _, p := range s.open() {
			if last || len(component.Lines) == 0 {
				task.wait(p)
			}
		}
	}
	if step.Station == "oven" {
		switch {
		case step.HasMinutes && s.oven != nil:
			task.wait(*s.oven)
			s.oven = nil
		case !step.HasMinutes && len(step.Temperatures) > 0 && len(step.Uses) == 0:
			s.oven = &at
			s.tasks = append(s.tasks, task)
			return // heating the oven is nobody's step before
		}
	}
	s.last[home], s.home = at, home
	s.tasks = append(s.tasks, task)
}

// open gives the steps that no other waits for yet.
func (s *sequence) open() []Position {
	awaited := map[Position]bool{}
	for _, t := range s.tasks {
		for _, p := range t.After {
			awaited[p] = true
		}
	}
	var open []Position
	for _, t := range s.tasks {
		if !awaited[t.At] {
			open = append(open, t.At)
		}
	}
	return open
}

func (t *Task) wait(p Position) {
	if p != t.At && !slices.Contains(t.After, p) {
		t.After = append(t.After, p)
	}
}

// worksOn is the component whose ingredients a step uses most; its own if that
// has ingredients or the step names none.
func (r Recipe) worksOn(at Position) int {
	if len(r.Components[at.Component].Lines) > 0 {
		return at.Component
	}
	count := map[int]int{}
	best := at.Component
	for _, u := range r.Components[at.Component].Steps[at.Step].Uses {
		if u.Line < 0 {
			continue
		}
		count[u.Component]++
		if count[u.Component] > count[best] {
			best = u.Component
		}
	}
	return best
}

// stepsInOrder gives the steps by their line in the text, then as they stand.
func (r Recipe) stepsInOrder() []Position {
	var all []Position
	for i, c := range r.Components {
		for k := range c.Steps {
			all = append(all, Position{i, k})
		}
	}
	slices.SortStableFunc(all, func(a, b Position) int {
		return cmp.Compare(r.Components[a.Component].Steps[a.Step].Number, r.Components[b.Component].Steps[b.Step].Number)
	})
	return all
}
