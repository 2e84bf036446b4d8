package solve

import "benchproof/kitchen/shoot/project"

// Follow plans a project in the order of an earlier plan, of this project or of
// one with the same tasks and other minutes: each task as early as the tasks
// before it leave it. It costs next to nothing. ok is false if the project is
// not sound, starts has another length, or the order leads to no plan.
func Follow(p project.Project, starts []int) (followed []int, ok bool) {
	if len(starts) != len(p.Tasks) || p.Check() != nil {
		return nil, false
	}
	in, ok := newInstance(p)
	if !ok {
		return nil, false
	}
	return newDecoder(in).serial(in.orderOf(starts))
}
