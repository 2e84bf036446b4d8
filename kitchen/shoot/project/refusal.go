package project

import (
	"fmt"

	"benchproof/kitchen/fault"
)

// Refusal is why a project cannot be planned: a fault.Invalid that knows which
// tasks it is about, and whose minutes can be put on a clock.
type Refusal struct {
	Tasks []int // what it is about, each once, in the order named; none if it is about no task

	field, words string
	args         []any
}

// Minute is a minute of the plan within the sentence of a Refusal.
type Minute int

// String writes a minute where there is no clock.
func (m Minute) String() string { return fmt.Sprintf("minute %d", int(m)) }

// Refuse makes a Refusal about some tasks. words is a format as fmt knows it, in
// which each Minute is written with %v.
func Refuse(field string, tasks []int, words string, args ...any) *Refusal {
	return &Refusal{Tasks: once(tasks), field: field, words: words, args: args}
}

// On gives the refusal with its minutes as a clock writes them, "10:15" or
// "noon"; nil writes "minute 75".
func (r *Refusal) On(clock func(minute int) string) *fault.Error {
	args := r.args
	if clock != nil {
		args = make([]any, len(r.args))
		for i, a := range r.args {
			if m, isMinute := a.(Minute); isMinute {
				a = clock(int(m))
			}
			args[i] = a
		}
	}
	return fault.Invalidf(r.field, r.words, args...)
}

// Error is the sentence without a clock.
func (r *Refusal) Error() string { return r.On(nil).Say }

// Unwrap gives the fault without a clock.
func (r *Refusal) Unwrap() error { return r.On(nil) }

// once gives each task once, and leaves Origin out.
func once(tasks []int) []int {
	var list []int
	seen := map[int]bool{Origin: true}
	for _, i := range tasks {
		if !seen[i] {
			seen[i] = true
			list = append(list, i)
		}
	}
	return list
}
