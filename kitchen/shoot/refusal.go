package shoot

import (
	"errors"
	"slices"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/shoot/project"
)

// Refusal is why a day has no plan: a fault.Invalid, its times on the day's
// clock, that knows which steps it is about. errors.As finds it.
type Refusal struct {
	// Tasks are the steps, each once, in the day's order; none if it is about no
	// step. One that the recipe does not have any more is among them.
	Tasks []Key
	Fault *fault.Error
}

// Error is the sentence for the person.
func (r *Refusal) Error() string { return r.Fault.Error() }

// Unwrap gives the fault.
func (r *Refusal) Unwrap() error { return r.Fault }

// refuse makes a Refusal about one step. words is a format in which each
// project.Minute is written with %v.
func (w *workload) refuse(field string, about Key, words string, args ...any) error {
	return &Refusal{Tasks: []Key{about}, Fault: project.Refuse(field, nil, words, args...).On(w.day.Clock)}
}

// onSteps makes a refusal of the project one of the day, or a plain fault if it is
// about no task; other errors stay as they are.
func (w *workload) onSteps(err error) error {
	var refused *project.Refusal
	if !errors.As(err, &refused) {
		return err
	}
	if len(refused.Tasks) == 0 {
		return refused.On(w.day.Clock)
	}
	r := &Refusal{Fault: refused.On(w.day.Clock)}
	for _, i := range slices.Sorted(slices.Values(refused.Tasks)) {
		if key := w.tasks[i].key; w.tasks[i].part != standing && !slices.Contains(r.Tasks, key) {
			r.Tasks = append(r.Tasks, key)
		}
	}
	return r
}
