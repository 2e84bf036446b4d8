package larder

import (
	"slices"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
)

// Weights gives the weights that the database has for a food, in the larder's
// words, each unit and form once: those without a form first, for the first of
// a unit is its default, then the medium size, then the database's order.
func (r *Reference) Weights(ndb string) []food.Weight {
	row, ok := r.Row(ndb)
	if !ok {
		return nil
	}
	var weights []food.Weight
	at := map[reading]int{}
	whole := map[reading]bool{}
	for _, m := range r.Measures(ndb) {
		as, ok := readMeasure(m.Text, row.Name)
		if !ok || m.Grams.Sign() <= 0 {
			continue
		}
		i, seen := at[as]
		switch {
		case !seen:
			at[as], whole[as] = len(weights), m.Whole
			weights = append(weights, food.Weight{Unit: as.unit, Form: as.form, System: as.system, Grams: m.Grams})
		case m.Whole && !whole[as]: // a whole cup weighed says more than half a cup doubled
			weights[i].Grams, whole[as] = m.Grams, true
		}
	}
	slices.SortStableFunc(weights, func(a, b food.Weight) int { return defaultRank(a.Form) - defaultRank(b.Form) })
	return weights
}

func defaultRank(form string) int {
	switch form {
	case "":
		return 0
	case "medium":
		return 1
	}
	return 2
}

// precision is what the tables keep: four decimals.
var precision = measure.MustNumber("0.00005")

// agree tells whether two figures are the same to the tables' precision.
func agree(a, b measure.Number) bool {
	d := a.Sub(b)
	return d.Cmp(precision) <= 0 && precision.Add(d).Sign() >= 0
}
