package shoot

import (
	"context"

	"benchproof/kitchen/fault"
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
// swap-out. The options of a stopped search are those found so far, the one
// without extra makes first. Errors are those of Make, for the day without
// extra makes; a choice that leaves no plan is passed over.
func (d Day) SwapOuts(ctx context.Context, makes int, o solve.Options) ([]Option, error) {
	stages := d.stages()
	o = share(o, plans(len(stages), min(makes, MaxSwapOuts)))
	plain, err := d.option(ctx, nil, o)
	if err != nil {
		return nil, err
	}
	options := []Option{plain}
	for n := 1; n <= min(makes, MaxSwapOuts, len(stages)); n++ {
		options = append(options, d.bestOption(ctx, options[n-1], stages, o))
	}
	return options, nil
}

// bestOption adds one make to those of the option before it.
func (d Day) bestOption(ctx context.Context, before Option, stages []Key, o solve.Options) Option {
	best := before
	best.Makes = before.Makes + 1
	bound := before.Bound
	choices, isAll := choose(stages, best.Makes, before.chosen())
	for _, choice := range choices {
		if isAll = isAll && ctx.Err() == nil; ctx.Err() != nil {
			break
		}
		option, err := d.option(ctx, choice, o)
		if err != nil {
			isAll = isAll && fault.KindOf(err) == fault.Invalid // nothing is known of one that was not found
			continue
		}
		bound = d.looser(bound, option.Bound)
		if d.edge(option) != d.edge(best) && d.looser(d.edge(option), d.edge(best)) == d.edge(option) {
			option.Makes = best.Makes
			best = option
		}
	}
	if !isAll {
		bound = d.looser(bound, d.bestBound(stages))
	}
	best.Bound, best.Optimal = bound, bound == d.edge(best)
	return best
}

// edge is what makes an option better: when it wraps, or backwards when it
// begins.
func (d Day) edge(o Option) int {
	if d.Finish > 0 {
		return o.Begins
	}
	return o.Wrap
}

// looser is the one of two bounds, or of two edges, that promises more.
func (d Day) looser(a, b int) int {
	if d.Finish > 0 {
		return max(a, b)
	}
	return min(a, b)
}

// option plans the day with extra makes up to the chosen stages.
func (d Day) option(ctx context.Context, choice []Key, o solve.Options) (Option, error) {
	with, cuts, err := d.With(d.choices(choice))
	if err != nil {
		return Option{}, err
	}
	plan, err := with.Make(ctx, o)
	if err != nil {
		return Option{}, err
	}
	for k := range cuts {
		for _, e := range plan.Entries {
			if e.Key.Batch == cuts[k].Batch && (cuts[k].Begins < 0 || e.From < cuts[k].Begins) {
				cuts[k].Begins = e.From
			}
		}
	}
	return Option{Makes: len(choice), Cuts: cuts, Begins: plan.Begin, Wrap: plan.Wrap, Bound: plan.Bound, Optimal: plan.Optimal, Day: with, Plan: plan}, nil
}

// chosen gives the stages of an option's swap-outs.
func (o Option) chosen() []Key {
	var all []Key
	for _, c := range o.Cuts {
		all = append(all, c.Stage)
	}
	return all
}
