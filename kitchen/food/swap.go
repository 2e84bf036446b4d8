package food

import "benchproof/kitchen/measure"

// The ids of the built-in larder's yeasts, for SwapYeast.
const (
	FreshYeast     = "fresh-yeast"
	ActiveDryYeast = "active-dry-yeast"
	InstantYeast   = "instant-yeast"
)

// yeastFactors are what one gram of a yeast is replaced by. Sources: baking
// textbooks, as in "Yeast Conversions, Fresh to Dry" and "Yeast Substitutions".
// They do not chain (0.4 × 0.75 is not 0.33), so each pair has its own; the way
// back from fresh is the reciprocal.
var yeastFactors = map[[2]string]measure.Number{
	{FreshYeast, ActiveDryYeast}:   measure.MustNumber("0.4"),
	{FreshYeast, InstantYeast}:     measure.MustNumber("0.33"),
	{ActiveDryYeast, InstantYeast}: measure.MustNumber("0.75"),
	{InstantYeast, ActiveDryYeast}: measure.MustNumber("1.33"),
	{ActiveDryYeast, FreshYeast}:   measure.Ratio(10, 4),
	{InstantYeast, FreshYeast}:     measure.Ratio(100, 33),
}

// SwapYeast gives the grams of the yeast with id to that do the work of these
// grams of the yeast with id from; ok is false if either is none of the three
// yeasts. The proving takes its own time: this is a starting point for a trial.
func SwapYeast(grams measure.Range, from, to string) (other measure.Range, ok bool) {
	if factor, ok := yeastFactors[[2]string{from, to}]; ok {
		return grams.Scale(factor), true
	}
	_, ok = yeastFactors[[2]string{from, FreshYeast}]
	return grams, from == to && (ok || from == FreshYeast)
}

// SwapGelatine gives the grams of gelatine of one Bloom strength that set like
// these grams of another: M₂ = M₁ × B₁ ÷ B₂. ok is false for a strength of 0 or
// less. Another published rule takes the square root of B₁ ÷ B₂; the two differ
// by about a tenth between the usual grades, so try it at the bench.
// Source: "How much powdered gelatin to one gelatin leaf".
func SwapGelatine(grams measure.Range, fromBloom, toBloom int64) (other measure.Range, ok bool) {
	if fromBloom <= 0 || toBloom <= 0 {
		return measure.Range{}, false
	}
	return grams.Scale(measure.Ratio(fromBloom, toBloom)), true
}
