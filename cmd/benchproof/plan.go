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
	Budget time.Duration `help:"How long to look for a better plan or a proof: 500ms, 5s, 1m." default:"5s"`
	JSON   bool          `help:"Print JSON."`
}

// Run prints the plan. Interrupted, it prints the best plan so far.
func (c *planCommand) Run(ctx context.Context, std streams) error {
	if c.Budget <= 0 {
		return usageError{fmt.Errorf("--budget: %s is no time above 0 such as 500ms or 5s", c.Budget)}
	}
	text, err := readText(c.File, std.in)
	if err != nil {
		return err
	}
	p, err := shoot.ReadPlan([]byte(text))
	if err != nil {
		return err
	}
	result, err := solve.Plan(ctx, p, solve.Options{Budget: c.Budget})
	if err != nil {
		return err
	}
	if c.JSON {
		return printJSON(std.out, newPlanDocument(p, result))
	}
	fmt.Fprint(std.out, planText(p, result))
	return nil
}

// planDocument is what the command prints as JSON; minutes from zero.
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
func planText(p project.Project, r solve.Result) string {
	var s sheet
	proof := "proved: no plan ends earlier"
	if !r.Optimal {
		proof = fmt.Sprintf("no plan ends before minute %d", r.Bound)
	}
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
