package web

import (
	"fmt"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/views"
)

// addBench adds what only the cook wants to know of a recipe at its scale: what
// each part weighs, a dough's percentages, what does not fit the kitchen at
// once, and what it feeds.
func addBench(body *views.RecipeBody, r recipe.Recipe, w recipe.Writer, show episode.Show) {
	addMasses(body, r, w)
	addBakers(body, r, w)
	body.ScaleNotes = append(body.ScaleNotes, show.Capacity().Split(r, w)...)
	body.Nutrition = newNutrition(r, w)
}

// addMasses says of each part what it weighs, in all and a piece, where every
// line of it has a weight.
func addMasses(body *views.RecipeBody, r recipe.Recipe, w recipe.Writer) {
	_, pieces, counted := yieldPieces(r)
	for i, c := range r.Components {
		mass, err := recipe.MassOf(recipe.Recipe{System: r.System, Components: []recipe.Component{c}}, "", w)
		if err != nil || len(mass.Missing) > 0 || mass.Grams.IsZero() {
			continue
		}
		text := gramsText(mass.Grams) + " in all"
		if counted && len(r.Components) > 1 {
			text += ", " + gramsText(mass.Grams.Scale(measure.Whole(1).Quo(pieces))) + " a piece"
		}
		if mass.Estimate {
			text += ", some of it estimated"
		}
		body.Components[i].Small = joined(" · ", body.Components[i].Small, text)
	}
}

// lossNote says what the trials measured of the weight lost in cooking, and what
// that makes of the recipe at its scale; "" if none measured both weights.
func lossNote(trials []episode.Trial, r recipe.Recipe, w recipe.Writer) string {
	loss, measured := episode.MeanLoss(trials)
	if measured == 0 {
		return ""
	}
	note := fmt.Sprintf("At the bench it lost %s of its weight in cooking (%s).", percent(loss), count(measured, "trial", "trials"))
	mass, err := recipe.MassOf(r, "", w)
	if err != nil || len(mass.Missing) > 0 || mass.Grams.IsZero() || len(r.Components) > 1 {
		return note // glazes and fillings are weighed out too, and not all of it is cooked
	}
	left := measure.Whole(1).Sub(loss.Quo(measure.Whole(100)))
	return note + " What is weighed out at this scale, " + gramsText(mass.Grams) + " in all, comes to about " + gramsText(mass.Grams.Scale(left)) + "."
}

// gramsText writes a mass, or a range of them, to the gram.
func gramsText(mass measure.Range) string {
	from, to := mass.From.Round(measure.Whole(1)), mass.To.Round(measure.Whole(1))
	if from.Equal(to) {
		return measure.FormatDecimal(from, 0) + "\u00a0g"
	}
	return measure.FormatDecimal(from, 0) + "–" + measure.FormatDecimal(to, 0) + "\u00a0g"
}

// addBakers says of each dough its baker's percentages and its true hydration.
func addBakers(body *views.RecipeBody, r recipe.Recipe, w recipe.Writer) {
	for i, c := range r.Components {
		formula, ok := recipe.Bakers(c, w.For(r))
		if !ok || !formula.IsDough() {
			continue
		}
		block := &body.Components[i]
		block.Small = joined(" · ", block.Small, fmt.Sprintf("hydration %s, all water counted", percent(formula.Hydration)))
		for _, p := range formula.Lines {
			line := &block.Lines[p.Line]
			line.Small = joined(" · ", line.Small, percent(p.Percent))
		}
	}
}

// percent writes a percentage to two figures: "1.4 %", "73 %".
func percent(n measure.Number) string {
	step := measure.Whole(1)
	if n.Cmp(measure.Whole(10)) < 0 {
		step = measure.Ratio(1, 10)
	}
	return measure.FormatDecimal(n.Round(step), 1) + "\u00a0%"
}
