package web

import (
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/safety"
	"benchproof/kitchen/shoot"
	"benchproof/views"
)

// holdingRows are what stands neither cold nor hot for too long on this day, by
// the published rules.
func (s *Server) holdingRows(p *shootPlan) []views.HoldingRow {
	stands := p.day.Standings(p.plan, safety.LeastStanding, func(r recipe.Recipe, component int) bool {
		return safety.Spoils(r, component, s.config.Larder)
	})
	var rows []views.HoldingRow
	for _, each := range stands {
		rows = append(rows, p.holdingRow(each))
	}
	return rows
}

func (p *shootPlan) holdingRow(s shoot.Standing) views.HoldingRow {
	row := views.HoldingRow{
		From: p.clock(s.From), To: "to " + p.at(s.To),
		Text: "Stands " + spanText(s.Minutes) + " between cold and hot, until “" + p.stepText(s.Task) + "”",
	}
	for _, caution := range safety.Holding(s.Minutes, s.IsCooked) {
		row.Cautions = append(row.Cautions, views.Caution{Text: caution.Text, Source: caution.Source})
	}
	return row
}
