package shoot

import (
	"context"

	"benchproof/kitchen/shoot/solve"
)

// MaxSwapOuts is the most extra makes that SwapOuts compares.
const MaxSwapOuts = 3

// maxChoices is how many choices of stages are planned for each number of
// makes. Beyond it the best choice so far is added to, one stage at a time.
const maxChoices = 60

// Option is the best day with so many extra makes.
type Option struct {
	Makes   int   // extra makes: 0 to MaxSwapOuts
	Refused error // why there is no plan with so many makes: then nothing else is set; nil if there is one
	Cuts    []Cut // one an extra make that helps; fewer than Makes if more do not help
	Begins  int   // the first start on the day, of a swap-out made that morning or of the shoot
	Wrap    int   // minute at which the day wraps
	Bound   int   // no choice of so many makes wraps earlier; backwards: begins later
	Optimal bool  // Bound is reached
	Day     Day   // the day with the extra batches in it
	Plan    Plan
}

// Cut is a wait that need not be waited for, because an extra make has come
// through it before.
type Cut struct {
	Stage     Key    // the step whose end the swap-out must have reached
	Minutes   int    // likely minutes of that step: the wait that is cut
	Batch     string // the extra make's name
	Overnight bool   // made the day before; then Begins is −1
	Begins    int    // minute of the day at which the extra make is begun
	Lasts     int    // likely minutes from its first step to the stage, without any pause
}

// Choices are the option's swap-outs as Day.With takes them.
func (o Option) Choices() []Choice {
	var all []Choice
	for _, c := range o.Cuts {
		all = append(all, Choice{Stage: c.Stage, Overnight: c.Overnight, Name: c.Batch})
	}
	return all
}

// SwapOuts plans the day with 0 to makes extra makes (at most MaxSwapOuts,
// and no more than there are stages), each
// taken ahead to one of the stages of Batch.Stages, and picks the best stages
// for each number: those with which it wraps earliest, or backwards begins
// latest. A swap-out does every step up to its stage, unfilmed, on the
// day from minute zero on, or the day before if the stage keeps overnight. The
// batch that is filmed leaves the stage's own step out and goes on with the
// swap-out. Begun is let go.
//
// What the search may cost, and its time, are for all the plans together. The
// options of a stopped search are the best found so far. A choice that leaves no
// plan is passed over; the error is that of Make for the day without extra
// makes, if no choice leaves one.
func (d Day) SwapOuts(ctx context.Context, makes int, o solve.Options) ([]Option, error) {
	d.Begun, d.Now, d.Done = false, 0, nil
	if o.Budget > 0 {
		var stop context.CancelFunc
		ctx, stop = context.WithTimeout(ctx, o.Budget)
		defer stop()
	}
	c := newComparison(ctx, d, makes, o)
	c.look()
	return c.options()
}
