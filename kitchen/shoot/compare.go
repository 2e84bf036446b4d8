package shoot

import (
	"context"
	"slices"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/shoot/solve"
)

// comparison plans the day with every choice of stages, and shares out among
// them what that may cost. Its minutes are those of the searches: when a day
// wraps, or backwards how long before its finish it begins; fewer are better.
type comparison struct {
	ctx     context.Context
	day     Day
	stages  []Key
	search  solve.Options // Steps are those that are left
	first   int           // the steps that a choice gets at first
	columns [][]*candidate
	isAll   []bool // by column: its choices are all that there are
}

func newComparison(ctx context.Context, d Day, makes int, o solve.Options) *comparison {
	c := &comparison{ctx: ctx, day: d, stages: d.stages(), search: o}
	if c.search.Steps <= 0 {
		c.search.Steps = solve.DefaultSteps
	}
	c.search.Budget, c.search.Progress = 0, nil
	makes = max(0, min(makes, MaxSwapOuts, len(c.stages)))
	c.columns, c.isAll = make([][]*candidate, makes+1), make([]bool, makes+1)
	c.first = max(100, c.search.Steps/2/plans(len(c.stages), makes))
	return c
}

// look plans each choice a little, and then those longer that may still be
// better than the best found.
func (c *comparison) look() {
	for n := range c.columns {
		c.fill(n)
		c.round(n, c.first)
	}
	for steps := 2 * c.first; ; steps *= 2 {
		isSettled := true
		for n := range c.columns {
			isSettled = c.round(n, steps) && isSettled
		}
		if isSettled || c.search.Steps <= 0 || c.ctx.Err() != nil {
			return
		}
	}
}

// fill lists the choices of a column, the most promising first. Their plans
// begin with the best one so far.
func (c *comparison) fill(n int) {
	best := c.best(n - 1)
	var chosen []Key
	var before Plan
	if best != nil {
		before = best.work.found(best.result)
		for _, cut := range best.cuts {
			chosen = append(chosen, cut.Stage)
		}
	}
	choices, isAll := choose(c.stages, n, chosen)
	for _, choice := range choices {
		c.columns[n] = append(c.columns[n], c.day.candidate(c.day.choices(choice), before, c.search))
	}
	c.isAll[n] = isAll
	slices.SortStableFunc(c.columns[n], func(a, b *candidate) int { return a.bound - b.bound })
}

// round lets each choice of a column that may still be the best have so many
// steps more; it tells whether there is none.
func (c *comparison) round(n, steps int) (isSettled bool) {
	isSettled = true
	for k, x := range c.columns[n] {
		if x.bound >= c.edge(n) {
			continue
		}
		if isFirst := n == 0 && k == 0 && x.result.Steps == 0; !isFirst && (c.search.Steps <= 0 || c.ctx.Err() != nil) {
			return false
		}
		beat := c.edge(n)
		c.search.Steps -= x.look(c.ctx, steps, beat)
		isSettled = isSettled && x.bound >= c.edge(n)
	}
	return isSettled
}

// best is the best choice of up to so many makes, the one of the fewest makes if
// there are several; nil while none has a plan.
func (c *comparison) best(n int) *candidate {
	var best *candidate
	for _, column := range c.columns[:n+1] {
		for _, x := range column {
			if x.result.Starts != nil && (best == nil || x.result.Makespan < best.result.Makespan) {
				best = x
			}
		}
	}
	return best
}

// edge is what a choice of so many makes has to beat.
func (c *comparison) edge(n int) int {
	if best := c.best(n); best != nil {
		return best.result.Makespan
	}
	return solve.Never
}

// bound is what no choice of up to so many makes beats.
func (c *comparison) bound(n int) int {
	bound := solve.Never
	for k, column := range c.columns[:n+1] {
		for _, x := range column {
			bound = min(bound, x.bound)
		}
		if !c.isAll[k] {
			bound = min(bound, c.leastBound())
		}
	}
	return bound
}

// leastBound is a bound on the days of all choices of stages: that of a day on
// which every stage has been made before.
func (c *comparison) leastBound() int {
	var all []Choice
	for _, s := range c.stages {
		all = append(all, Choice{Stage: s, Overnight: true})
	}
	if x := c.day.candidate(all, Plan{}, solve.Options{}); x.refused == nil {
		return x.bound
	}
	return 0
}

// options words the columns. The error is why there is no plan at all.
func (c *comparison) options() ([]Option, error) {
	var all []Option
	for n := range c.columns {
		x := c.best(n)
		if x == nil {
			all = append(all, Option{Makes: n, Refused: c.columns[0][0].why()})
			continue
		}
		r := x.result
		r.Bound = c.bound(n)
		option := x.option(r.Bound, c.day.Finish)
		option.Makes = n
		all = append(all, option)
	}
	if last := all[len(all)-1]; last.Refused != nil {
		return nil, last.Refused
	}
	return all, nil
}

// candidate is the day with one choice of stages, and what is known of it.
type candidate struct {
	day     Day
	cuts    []Cut
	work    *workload
	search  *solve.Search
	result  solve.Result // Starts are nil while there is no plan
	bound   int          // no plan is better; solve.Never if there is none
	refused error        // why there is none
}

// candidate makes the day with a choice ready. Its order of work is first that
// of an earlier plan, after what is made ahead.
func (d Day) candidate(choice []Choice, before Plan, o solve.Options) *candidate {
	x := &candidate{bound: solve.Never}
	if x.day, x.cuts, x.refused = d.With(choice); x.refused != nil {
		return x
	}
	if x.work, x.refused = newWorkload(x.day); x.refused != nil {
		return x
	}
	asked, err := x.work.asked()
	if err != nil {
		x.refused = err
		return x
	}
	o.Start = x.work.after(before)
	if x.search, err = solve.Begin(asked, o); err != nil {
		x.refused = x.work.onSteps(err)
		return x
	}
	x.bound = x.search.Bound()
	return x
}

// after gives the starts of an earlier plan, as the project asked has them, and
// what that plan did not have as early as can be; nil without a plan.
func (w *workload) after(before Plan) []int {
	if len(before.Entries) == 0 {
		return nil
	}
	starts := w.startsOf(before, 0)
	if w.day.Finish > 0 {
		return w.project.MirrorStarts(starts, w.day.Finish)
	}
	return starts
}

// look looks longer for a plan that is better than beat. It tells what it cost.
func (x *candidate) look(ctx context.Context, steps, beat int) (cost int) {
	before := x.result.Steps
	r, err := x.search.Look(ctx, steps, beat)
	if err != nil {
		x.refused, x.bound = x.work.onSteps(err), solve.Never
		return steps
	}
	x.result, x.bound = r, r.Bound
	return r.Steps - before
}

// why is why there is no plan.
func (x *candidate) why() error {
	if x.refused != nil {
		return x.refused
	}
	return &fault.Error{Kind: fault.Busy, Say: "No plan was found in the time given, and none was proved impossible. Allow longer waits, or give it more time."}
}

// option words the plan found. bound is in the search's minutes.
func (x *candidate) option(bound, finish int) Option {
	plan := x.work.found(x.result)
	plan.Kept.Print = x.work.print()
	cuts := slices.Clone(x.cuts)
	for k := range cuts {
		for _, e := range plan.Entries {
			if e.Key.Batch == cuts[k].Batch && (cuts[k].Begins < 0 || e.From < cuts[k].Begins) {
				cuts[k].Begins = e.From
			}
		}
	}
	o := Option{Cuts: cuts, Begins: plan.Begin, Wrap: plan.Wrap, Bound: bound, Optimal: bound == x.result.Makespan, Day: x.day, Plan: plan}
	if finish > 0 {
		o.Bound = finish - bound
	}
	return o
}
