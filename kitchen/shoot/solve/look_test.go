package solve_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/shoot/project"
	"benchproof/kitchen/shoot/solve"
)

// sound draws a project with every rule that passes Check.
func sound(t *rapid.T, tasks int) project.Project {
	p := everything(tasks).draw(t)
	if p.Check() != nil {
		t.Skip("it contradicts itself")
	}
	return p
}

// Bit by bit, plans only get shorter and bounds only rise; each is a plan, and no
// bound is above what looking for long finds.
func TestLookingBitByBit(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := sound(t, 7)
		s, err := solve.Begin(p, solve.Options{})
		if err != nil {
			t.Fatal(err)
		}
		last := solve.Result{Makespan: solve.Never, Bound: s.Bound()}
		long, noPlan := solve.Plan(t.Context(), p, solve.Options{Steps: 20_000})
		if noPlan == nil && last.Bound > long.Makespan {
			t.Fatalf("before any step the bound is %d, a plan ends at %d", last.Bound, long.Makespan)
		}
		for range 4 {
			r, err := s.Look(t.Context(), rapid.IntRange(1, 200).Draw(t, "steps"), 0)
			if err != nil {
				if noPlan == nil || s.Bound() != solve.Never {
					t.Fatalf("%v, and the bound is %d; looking for long: %v", err, s.Bound(), noPlan)
				}
				return
			}
			if r.Starts == nil {
				continue
			}
			mustBeFeasible(t, p, r.Starts)
			if r.Makespan > last.Makespan || r.Bound < last.Bound || r.Steps < last.Steps || noPlan != nil || r.Bound > long.Makespan || long.Bound > r.Makespan {
				t.Fatalf("%+v after %+v; looking for long %+v, %v", r, last, long, noPlan)
			}
			last = r
		}
	})
}

// A plan that must beat a makespan does, or none can, or the steps were too few.
func TestLookingForWhatBeatsAPlan(t *testing.T) {
	outcomes := map[string]int{}
	rapid.Check(t, func(t *rapid.T) {
		p := sound(t, 7)
		best, err := solve.Plan(t.Context(), p, solve.Options{Steps: 20_000})
		if err != nil {
			t.Skip("no plan")
		}
		beat := max(1, best.Makespan+rapid.IntRange(-5, 5).Draw(t, "beyond the best"))
		s, err := solve.Begin(p, solve.Options{})
		if err != nil {
			t.Fatal(err)
		}
		const steps = 5000
		r, err := s.Look(t.Context(), steps, beat)
		if err != nil {
			t.Fatal(err)
		}
		if r.Starts != nil {
			mustBeFeasible(t, p, r.Starts)
		}
		switch {
		case r.Bound > best.Makespan:
			t.Fatalf("the bound is %d, a plan ends at %d", r.Bound, best.Makespan)
		case r.Optimal && r.Makespan > best.Makespan || best.Optimal && r.Starts != nil && r.Makespan < best.Makespan:
			t.Fatalf("proved %v at %d, and proved %v at %d", r.Optimal, r.Makespan, best.Optimal, best.Makespan)
		case r.Optimal:
			outcomes["the best"]++
		case r.Bound >= beat:
			outcomes["none beats it"]++
		case r.Steps < steps:
			t.Fatalf("after %d of %d steps: makespan %d, bound %d, to beat %d", r.Steps, steps, r.Makespan, r.Bound, beat)
		}
	})
	if len(outcomes) < 2 {
		t.Errorf("what came of it: %v", outcomes)
	}
}

// Looking on is the same whatever was looked for before elsewhere.
func TestLookingIsTheSameEachTime(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := sound(t, 9)
		var both [2][]solve.Result
		for k := range both {
			s, err := solve.Begin(p, solve.Options{Seed: 7})
			if err != nil {
				t.Fatal(err)
			}
			for range 3 {
				r, _ := s.Look(t.Context(), 300, 0)
				both[k] = append(both[k], r)
			}
		}
		if diff := cmp.Diff(both[0], both[1]); diff != "" {
			t.Fatal(diff)
		}
	})
}

// Fixed tasks that are in each other's way leave no plan, which is known before
// any step; it is said again each time.
func TestLookingForWhatCannotBe(t *testing.T) {
	var p sheet
	p.station("oven", 1)
	p.Tasks = []project.Task{
		project.Task{ID: "loaf", Minutes: 30, Needs: []project.Need{{Station: 0, Amount: 1}}}.Pin(0),
		project.Task{ID: "tart", Minutes: 30, Needs: []project.Need{{Station: 0, Amount: 1}}}.Pin(20),
	}
	s, err := solve.Begin(p.Project, solve.Options{})
	if err != nil || s.Bound() != solve.Never {
		t.Fatalf("the bound is %d, %v", s.Bound(), err)
	}
	for range 2 {
		if _, err := s.Look(t.Context(), 10, 0); err == nil {
			t.Error("a plan was found")
		}
	}
}
