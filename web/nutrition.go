package web

import (
	"fmt"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/nutrition"
	"benchproof/kitchen/recipe"
	"benchproof/views"
)

// newNutrition words what a recipe, at its scale, holds.
func newNutrition(r recipe.Recipe, w recipe.Writer) views.Nutrition {
	facts := nutrition.Of(r, w)
	if facts.Covered.IsZero() {
		return views.Nutrition{}
	}
	view := views.Nutrition{
		Summary: energyText(facts),
		Covered: percent(facts.Covered.Mul(measure.Whole(100))) + " of the weight is in these figures. They are what the recipe adds up to, not a declaration for food on sale.",
		Notes:   facts.Notes,
	}
	if us, ok := facts.US(); ok {
		view.Labels = append(view.Labels, nutritionLabel(us))
	}
	view.Labels = append(view.Labels, nutritionLabel(facts.EU()))
	for _, m := range facts.Missing {
		view.Missing = append(view.Missing, m.Text+": "+m.Say)
	}
	return view
}

// energyText is the energy of a piece, or of 100 g where nothing is said of
// pieces.
func energyText(facts nutrition.Facts) string {
	totals, of := facts.Per100(), facts.Hundred()
	if piece, ok := facts.PerPiece(); ok {
		totals, of = piece, facts.OnePiece()
	}
	energy, _ := totals.Of(food.EnergyKcal)
	return fmt.Sprintf("about %s kcal in %s", measure.FormatDecimal(energy.Round(measure.Whole(1)), 0), of)
}

func nutritionLabel(l nutrition.Label) views.NutritionLabel {
	view := views.NutritionLabel{Rule: l.Rule, Per: l.Per, Note: l.Note}
	for _, row := range l.Rows {
		view.Rows = append(view.Rows, views.NutritionRow{Amount: row.Amount, Name: row.Name, Part: row.Part})
	}
	return view
}
