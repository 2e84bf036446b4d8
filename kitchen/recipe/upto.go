package recipe

import "slices"

// UpTo gives the recipe with only the lines that are needed to have come to the
// end of a step. A line belongs to the steps that name it; one that no step
// names is needed as soon as anything of its component is. A line that is used
// up later only in part stays whole, so that nothing is short. Steps and
// components keep their places.
func (r Recipe) UpTo(at Position) Recipe {
	done := r.before(at)
	now, later := map[Use]bool{}, map[Use]bool{}
	touched := map[int]bool{}
	for c, component := range r.Components {
		for s, step := range component.Steps {
			isDone := done[Position{c, s}]
			if isDone && len(component.Lines) > 0 {
				touched[c] = true
			}
			for _, u := range step.Uses {
				line := Use{Component: u.Component, Line: u.Line}
				if isDone {
					now[line], touched[u.Component] = true, true
				} else {
					later[line] = true
				}
			}
		}
	}
	r.Components = slices.Clone(r.Components)
	for c := range r.Components {
		var lines []Line
		for l, line := range r.Components[c].Lines {
			use := Use{Component: c, Line: l}
			if now[use] || touched[c] && !later[use] {
				lines = append(lines, line)
			}
		}
		r.Components[c].Lines = lines
	}
	return r
}

// StepsUpTo lists a step and all that must be done before it, in the order of
// the text.
func (r Recipe) StepsUpTo(at Position) []Position {
	done := r.before(at)
	var all []Position
	for _, t := range r.Sequence() {
		if done[t.At] {
			all = append(all, t.At)
		}
	}
	return all
}

// before is the step with all that must be done before it.
func (r Recipe) before(at Position) map[Position]bool {
	after := map[Position][]Position{}
	for _, t := range r.Sequence() {
		after[t.At] = t.After
	}
	done := map[Position]bool{}
	var mark func(Position)
	mark = func(p Position) {
		if done[p] {
			return
		}
		done[p] = true
		for _, q := range after[p] {
			mark(q)
		}
	}
	mark(at)
	return done
}
