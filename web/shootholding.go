package web

import (
	"slices"

	"benchproof/kitchen/recipe"
	"benchproof/kitchen/safety"
	"benchproof/kitchen/shoot"
	"benchproof/views"
)

// holdingRows are what stands neither cold nor hot for too long on this day, by
// the published rules.
func (s *Server) holdingRows(p *shootPlan) []views.HoldingRow {
	stands := p.day.Standings(p.plan, safety.LeastStanding, func(r recipe.Recipe, component, line int, state shoot.State) bool {
		return safety.Spoils(r, component, line, heatOf(state), s.config.Larder)
	})
	var rows []views.HoldingRow
	for _, each := range stands {
		isDough := !slices.ContainsFunc(each.Of, func(component int) bool { return !safety.IsDough(p.recipe, component, s.config.Larder) })
		rows = append(rows, p.holdingRow(each, isDough && !each.IsCooked))
	}
	return rows
}

func heatOf(state shoot.State) safety.Heat {
	switch state {
	case shoot.Cooked:
		return safety.Cooked
	case shoot.Baked:
		return safety.Baked
	}
	return safety.Unheated
}

func (p *shootPlan) holdingRow(s shoot.Standing, isProving bool) views.HoldingRow {
	row := views.HoldingRow{
		From: p.clock(s.From), To: "to " + p.at(s.To),
		Text: "Stands " + spanText(s.Minutes) + " between cold and hot, until “" + p.stepText(s.Task) + "”",
	}
	cautions := safety.Holding(s.Minutes, s.IsCooked)
	if isProving {
		cautions = append([]safety.Caution{safety.Proving}, cautions...)
	}
	for _, caution := range cautions {
		row.Cautions = append(row.Cautions, views.Caution{Text: caution.Text, Source: caution.Source})
	}
	return row
}
