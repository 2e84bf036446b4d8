package solve

import (
	"fmt"
	"strings"

	"benchproof/kitchen/shoot/nogood"
	"benchproof/kitchen/shoot/project"
)

// Names of tasks in one message, and what to spend on leaving one out.
const (
	maxNames      = 8
	coreSteps     = 500
	maxCoreSolves = 1000
)

// impossible names tasks that together have no plan. It leaves out as many as
// it can, in ever smaller groups: what remains still has none.
func (s *Search) impossible() error {
	isGone := make([]bool, len(s.project.Tasks))
	solves := 0
	for size := (len(isGone) + 1) / 2; size > 0; size /= 2 {
		for from := 0; from < len(isGone) && solves < maxCoreSolves && !s.stopped(); from += size {
			without := append([]bool(nil), isGone...)
			for i := from; i < min(from+size, len(isGone)); i++ {
				without[i] = true
			}
			if solves++; s.isHopeless(s.project.Without(without)) {
				isGone = without
			}
		}
	}
	return s.refuse(isGone)
}

// refuse names the tasks that are left.
func (s *Search) refuse(isGone []bool) *project.Refusal {
	var left []int
	var names []string
	for i, t := range s.project.Tasks {
		if !isGone[i] {
			left, names = append(left, i), append(names, fmt.Sprintf("%q", t.ID))
		}
	}
	field := s.project.Tasks[left[0]].ID
	if len(left) == 1 {
		return project.Refuse(field, left, "Task %s finds no time in which it may run and all it needs is free. Give it other times or less to need.", names[0])
	}
	if more := len(names) - maxNames; more > 0 {
		names = append(names[:maxNames], fmt.Sprintf("and %d more", more))
	}
	return project.Refuse(field, left, "The waits and times of these tasks cannot all be met at their stations: %s. Allow a longer wait, other times, or more of a station.",
		strings.Join(names, ", "))
}

// isHopeless tells whether a project is soon proved to have no plan.
func (s *Search) isHopeless(p project.Project) bool {
	if len(p.Tasks) == 0 {
		return false
	}
	in, ok := newInstance(p)
	if !ok {
		return true
	}
	if in.n > maxProverTasks {
		return false
	}
	outcome, _, _ := newProver(in).search(in.horizon, coreSteps, s.stopped)
	return outcome == nogood.Impossible || outcome == nogood.Refuted
}
