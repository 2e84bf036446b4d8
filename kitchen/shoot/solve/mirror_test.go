package solve_test

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"benchproof/kitchen/shoot/solve"
)

// Where nothing is fixed to the clock, a project takes as long backwards as
// forwards: set-ups too, though they are then put up after the shot and not
// before it. Both ways are proved, and a plan of one is a plan of the other.
func TestBackwardsTakesAsLongAsForwards(t *testing.T) {
	setUp := 0
	rapid.Check(t, func(t *rapid.T) {
		p := drawn{tasks: 8, longest: true, setups: true, setupUse: true}.draw(t)
		if p.Check() != nil {
			t.Skip("it contradicts itself")
		}
		there, err := solve.Plan(t.Context(), p, solve.Options{Steps: 20_000})
		finish := p.Horizon() + rapid.IntRange(0, 50).Draw(t, "later")
		back, backErr := solve.Backwards(t.Context(), p, finish, solve.Options{Steps: 20_000})
		if (err == nil) != (backErr == nil) {
			t.Fatalf("forwards %v, backwards %v", err, backErr)
		}
		if err != nil {
			return
		}
		if !there.Optimal || !back.Optimal || there.Makespan != back.Makespan {
			t.Fatalf("forwards %d, bound %d; backwards %d, bound %d", there.Makespan, there.Bound, back.Makespan, back.Bound)
		}
		mustBeFeasible(t, p, back.Starts)
		if least := slices.Min(back.Starts); len(p.SetupTimes(back.Starts)) == 0 && least != finish-back.Makespan {
			t.Fatalf("it begins at %d, want %d, %d before %d", least, finish-back.Makespan, back.Makespan, finish)
		}
		setUp += len(p.SetupTimes(there.Starts))
	})
	if setUp == 0 {
		t.Error("no setup was ever put up")
	}
}
