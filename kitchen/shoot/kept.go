package shoot

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
)

// Kept is a plan as it is written down: enough to draw it again on the same
// day.
type Kept struct {
	Print   string // of the day it was made for
	Starts  []int  // one a task, minutes of the day
	Bound   int
	Optimal bool
	Overdue []string
}

// Print tells days apart by what a plan of them depends on: two with the same
// print have the same plans. Errors are those of Make.
func (d Day) Print() (string, error) {
	r, err := d.rest()
	if err != nil {
		return "", err
	}
	return r.print(), nil
}

func (w *workload) print() string {
	sum := sha256.Sum256(fmt.Appendf(nil, "%v %v %v", w.project, w.day.Moments, w.day.Finish))
	return hex.EncodeToString(sum[:])
}

// Recall gives a kept plan back; ok is false if it was made for another day.
func (d Day) Recall(k Kept) (p Plan, ok bool) {
	r, err := d.rest()
	if err != nil || k.Print != r.print() || len(k.Starts) != len(r.tasks) {
		return Plan{}, false
	}
	p = r.plan(k.Starts, k.Bound, k.Optimal)
	p.Overdue, p.Kept = k.Overdue, k
	return p, true
}
