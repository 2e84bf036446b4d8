package web

import (
	"benchproof/kitchen/shoot"
	"benchproof/views"
)

// beforeRows is what must be done the day before: the steps of each swap-out
// that is made overnight, in order, with their likely minutes.
func (p *shootPlan) beforeRows() []views.DayFact {
	var rows []views.DayFact
	for _, b := range p.batches {
		at, ok := stepAt(p.recipe, b.Component, b.Step)
		if !b.Overnight || !ok {
			continue
		}
		for _, each := range p.recipe.StepsUpTo(at) {
			component := p.recipe.Components[each.Component]
			step := component.Steps[each.Step]
			minutes := shoot.MinutesOf(step)
			row := views.DayFact{Measure: spanText(minutes.Likely), Text: step.Text, Small: joined(" · ", component.Name, step.Station)}
			if minutes.Guess {
				row.Mark = views.Mark{Kind: views.MarkLook, Text: "a guess: the step does not say"}
			}
			rows = append(rows, row)
		}
	}
	return rows
}
