package views

// Nutrition is what a recipe holds, as labels put it. It is drawn folded.
type Nutrition struct {
	Summary string // "about 182 kcal in 1 of 16 knots"; "" draws nothing
	Covered string // "97 % of the weight is in these figures"
	Labels  []NutritionLabel
	Missing []string // what is not in the figures, and why
	Notes   []string // what was assumed
}

// NutritionLabel is the figures as one rule orders and rounds them.
type NutritionLabel struct {
	Rule string // "21 CFR 101.9(c)"
	Per  string // "1 of 16 knots (65 g raw)"
	Rows []NutritionRow
	Note string // that the figures are least values; "" if all is covered
}

// NutritionRow is one nutrient.
type NutritionRow struct {
	Amount string // "5 g"
	Name   string
	Part   bool // a part of the one above: set in from it
}
