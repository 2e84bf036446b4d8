package web

import (
	"fmt"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/views"
)

// addBakers says of each dough its baker's percentages and its true hydration.
func addBakers(body *views.RecipeBody, r recipe.Recipe, w recipe.Writer) {
	for i, c := range r.Components {
		formula, ok := recipe.Bakers(c, w.For(r))
		if !ok || !formula.IsDough() {
			continue
		}
		block := &body.Components[i]
		block.Small = joined(" · ", block.Small, fmt.Sprintf("hydration %s, water in everything counted", percent(formula.Hydration)))
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
