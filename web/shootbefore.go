package web

import (
	"context"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shoot"
	"benchproof/kitchen/shoot/solve"
	"benchproof/views"
)

// eveningEnds is the time by which what is made the evening before stands in the
// cold; common practice, no source.
const eveningEnds = 22 * 60

// eveningSteps is what the search for an evening's plan may cost: a few makes,
// with nothing filmed.
const eveningSteps = 2_000

// evening plans the evening before: as late as can be, so that all stands in the
// cold by eveningEnds, and has stood long enough when the day begins. Minutes
// count from the same time of day as the day's. ok is false if nothing is made
// then, or there is no such plan.
func (p *shootPlan) evening(ctx context.Context, choices []shoot.Choice) (plan shoot.Plan, ok bool) {
	finish := eveningEnds - p.zero
	for _, c := range choices {
		if c.Overnight {
			finish = min(finish, episode.DayMinutes-shoot.MinutesOf(p.stepOf(c.Stage)).Likely)
		}
	}
	day := p.planned().Evening(choices, finish)
	if len(day.Batches) == 0 || finish <= 0 {
		return plan, false
	}
	plan, err := day.Make(ctx, solve.Options{Steps: eveningSteps, Budget: planTime})
	return plan, err == nil
}

// overnight are the swap-outs of the day that are made the evening before.
func (p *shootPlan) overnight() []shoot.Choice {
	var all []shoot.Choice
	for _, b := range p.batches {
		if c, ok := p.choiceOf(b); ok && c.Overnight {
			all = append(all, c)
		}
	}
	return all
}

// beforeRows is what must be done the day before: the steps of each swap-out that
// is made then, at the latest time.
func (p *shootPlan) beforeRows(ctx context.Context) []views.DayFact {
	choices := p.overnight()
	plan, ok := p.evening(ctx, choices)
	if !ok {
		return p.untimedRows(choices)
	}
	var rows []views.DayFact
	for _, e := range plan.Entries {
		row := views.DayFact{Text: cleanText(e), Small: e.Step.Station}
		if !e.IsClean {
			row = p.beforeRow(e.Key)
			row.Small = joined(" · ", row.Measure, row.Small)
		}
		row.Measure = p.clock(e.From)
		if len(choices) > 1 {
			row.Small = joined(" · ", row.Small, e.Key.Batch)
		}
		rows = append(rows, row)
	}
	return rows
}

// untimedRows are the steps of swap-outs in order, where they do not fit into the
// day before.
func (p *shootPlan) untimedRows(choices []shoot.Choice) []views.DayFact {
	var rows []views.DayFact
	for _, c := range choices {
		for _, at := range p.recipe.StepsUpTo(c.Stage.At) {
			rows = append(rows, p.beforeRow(shoot.Key{Batch: c.Name, At: at}))
		}
	}
	if len(rows) > 0 {
		rows[0].Mark = views.Mark{Kind: views.MarkLook, Text: "begin earlier: this takes longer than from " + p.clock(0) + " to " + episode.Clock(eveningEnds)}
	}
	return rows
}

// beforeRow is a step with its likely minutes.
func (p *shootPlan) beforeRow(key shoot.Key) views.DayFact {
	step := p.stepOf(key)
	minutes := shoot.MinutesOf(step)
	row := views.DayFact{Measure: spanText(minutes.Likely), Text: step.Text, Small: joined(" · ", p.recipe.Components[key.At.Component].Name, step.Station)}
	if minutes.Guess {
		row.Mark = views.Mark{Kind: views.MarkLook, Text: "a guess: the step does not say"}
	}
	return row
}

// stepOf is the step of a key of the day: all batches are makes of one recipe.
func (p *shootPlan) stepOf(key shoot.Key) recipe.Step {
	return p.recipe.Components[key.At.Component].Steps[key.At.Step]
}
