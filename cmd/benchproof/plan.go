package main

import (
	"context"
	"fmt"
	"slices"
	"time"

	"benchproof/kitchen/shoot"
	"benchproof/kitchen/shoot/project"
	"benchproof/kitchen/shoot/solve"
)

// planCommand plans tasks around stations and waits.
type planCommand struct {
	File   string        `arg:"" help:"Tasks and stations as JSON; - reads standard input."`
	Finish *int          `help:"Plan backwards: all has ended by this minute, and it begins as late as can be." placeholder:"MINUTE"`
	Budget time.Duration `help:"How long to look for a better plan or a proof: 500ms, 5s, 1m." default:"5s"`
	JSON   bool          `help:"Print JSON."`
}

// Run prints the plan. Interrupted, it prints the best plan so far.
func (c *planCommand) Run(ctx context.Context, std streams) error {
	if c.Budget <= 0 {
		return usageError{fmt.Errorf("--budget: %s is no time above 0 such as 500ms or 5s", c.Budget)}
	}
	if c.Finish != nil && (*c.Finish < 1 || *c.Finish > project.MaxMinutes) {
		return usageError{fmt.Errorf("--finish: %d is no minute from 1 to %d", *c.Finish, project.MaxMinutes)}
	}
	text, err := readText(c.File, std.in)
	if err != nil {
		return err
	}
	p, err := shoot.ReadPlan([]byte(text))
	if err != nil {
		return err
	}
	result, err := c.plan(ctx, p)
	if err != nil {
		return err
	}
	if c.JSON {
		return printJSON(std.out, newPlanDocument(p, result))
	}
	fmt.Fprint(std.out, planText(p, result, c.proof(result)))
	return nil
}

func (c *planCommand) plan(ctx context.Context, p project.Project) (solve.Result, error) {
	if c.Finish != nil {
		return solve.Backwards(ctx, p, *c.Finish, solve.Options{Budget: c.Budget})
	}
	return solve.Plan(ctx, p, solve.Options{Budget: c.Budget})
}

// proof words what is known of all other plans.
func (c *planCommand) proof(r solve.Result) string {
	switch {
	case c.Finish != nil && r.Optimal:
		return "proved: no plan begins later"
	case c.Finish != nil:
		return fmt.Sprintf("no plan begins after minute %d", *c.Finish-r.Bound)
	case r.Optimal:
		return "proved: no plan ends earlier"
	}
	return fmt.Sprintf("no plan ends before minute %d", r.Bound)
}

// planDocument is what the command prints as JSON; minutes from zero. Backwards,
// makespan and bound are counted from the finish.
type planDocument struct {
	Makespan int            `json:"makespan"`
	Bound    int            `json:"bound"`
	Optimal  bool           `json:"optimal"`
	Starts   map[string]int `json:"starts"` // by task id
}

func newPlanDocument(p project.Project, r solve.Result) planDocument {
	d := planDocument{Makespan: r.Makespan, Bound: r.Bound, Optimal: r.Optimal, Starts: map[string]int{}}
	for i, task := range p.Tasks {
		d.Starts[task.ID] = r.Starts[i]
	}
	return d
}

// planText shows the tasks by start.
func planText(p project.Project, r solve.Result, proof string) string {
	var s sheet
	s.row(fmt.Sprintf("%d min", r.Makespan), proof)
	s.heading("from minute, to minute")
	order := make([]int, len(p.Tasks))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return r.Starts[a] - r.Starts[b] })
	for _, i := range order {
		s.row(fmt.Sprintf("%d–%d", r.Starts[i], r.Starts[i]+p.Tasks[i].Minutes), p.Tasks[i].ID)
	}
	return s.String()
}
