package nutrition

import (
	"strings"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
)

// Label is a block of worded figures as a labelling rule orders and rounds
// them. It is what the recipe adds up to, not a declaration for food on sale.
type Label struct {
	Rule     string          // "21 CFR 101.9(c)"
	Servings string          // "16", "about 2.5"; "" of a label per 100 g
	Per      string          // "1 of 16 knots (65 g raw)", "100 g of the raw mixture"
	Rows     []food.Declared // in the rule's order; a nutrient of which nothing is known has none
	Note     string          // that the figures are least values; "" if everything is covered
}

// US gives the figures of one piece or serving in the order and rounding of a
// US nutrition facts panel; carbohydrate includes fibre and energy is the
// USDA's. ok is false if the recipe does not say how many it makes. See
// food.USFacts for what such a panel has besides.
func (f Facts) US() (l Label, ok bool) {
	piece, ok := f.PerPiece()
	if !ok {
		return Label{}, false
	}
	grams, _ := f.PieceGrams()
	weight := inGrams(grams)
	if f.Finished.IsZero() {
		weight += " raw"
	}
	return Label{
		Rule:     "21 CFR 101.9(c)",
		Servings: Servings(f.Pieces.From),
		Per:      f.OnePiece() + " (" + weight + ")",
		Rows:     food.USFacts(piece),
		Note:     f.least(),
	}, true
}

// EU gives the figures of 100 g in the order of Regulation (EU) No 1169/2011,
// Annex XV: energy by the factors of Annex XIV, carbohydrate without fibre,
// salt as sodium × 2.5, rounded by the Commission's guidance of December 2012.
func (f Facts) EU() Label {
	return Label{
		Rule: "Regulation (EU) No 1169/2011",
		Per:  f.Hundred(),
		Rows: food.EUDeclaration(f.Per100()),
		Note: f.least(),
	}
}

// OnePiece words what PerPiece is of: "1 of 16 knots", "1 of 6 servings", "the
// whole loaf"; "" if the recipe does not say what it makes.
func (f Facts) OnePiece() string {
	of := strings.TrimSpace(f.Of)
	switch {
	case f.Pieces.From.Sign() <= 0:
		return ""
	case f.Pieces.From.Equal(measure.Whole(1)):
		return strings.TrimSpace("the whole " + of)
	case of == "":
		of = "pieces"
	case of == "people", of == "persons":
		of = "servings"
	case strings.HasPrefix(of, "as "), strings.HasPrefix(of, "for "): // "as a lunch"
		of = "servings " + of
	}
	return "1 of " + measure.FormatNumber(f.Pieces.From) + " " + of
}

// Hundred words what Per100 is of: "100 g of the raw mixture", "100 g of the
// finished 900 g".
func (f Facts) Hundred() string {
	if f.Finished.Sign() > 0 {
		return "100 g of the finished " + inGrams(f.Finished)
	}
	return "100 g of the raw mixture"
}

func (f Facts) least() string {
	if f.Covered.Cmp(measure.Whole(1)) >= 0 {
		return ""
	}
	return "Least values: figures are known of " + percent(f.Covered) + " of the weight."
}

// Servings words a number of servings as a US label does: the nearest half
// from 2 to 5, else the nearest whole, with "about" where that is rounded.
// Source: 21 CFR 101.9(b)(8).
func Servings(n measure.Number) string {
	step := measure.Whole(1)
	if n.Cmp(measure.Whole(2)) >= 0 && n.Cmp(measure.Whole(5)) <= 0 {
		step = measure.Ratio(1, 2)
	}
	rounded := n.Round(step)
	if rounded.IsZero() && n.Sign() > 0 {
		rounded = measure.Whole(1)
	}
	text := measure.FormatDecimal(rounded, 1)
	if !rounded.Equal(n) {
		return "about " + text
	}
	return text
}
