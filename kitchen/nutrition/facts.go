package nutrition

import (
	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// Facts are what a recipe holds, as far as the larder knows, and what was
// assumed on the way. Facts are values: no method changes its receiver.
type Facts struct {
	Totals food.Totals // of all that is eaten
	// Pieces are how many pieces or servings the recipe makes, a range of
	// equal ends for one number; zero if it does not say.
	Pieces measure.Range
	Of     string // what the pieces are, as written: "knots", "servings"; may be ""
	// Finished is what the whole weighs when it is done, in grams; 0 if that is
	// not known, and 100 g then are of the raw mixture.
	Finished measure.Number
	// Covered is the share, 0 to 1, of the mass whose energy is in Totals. See
	// Of for what a line without a weight counts as.
	Covered measure.Number
	Lines   []Line    // the lines that count, in the order of the recipe
	Missing []Missing // what is not in the figures, or not wholly
	Notes   []string  // what was assumed, in the person's words
}

// Line is one ingredient line and what it adds to the totals.
type Line struct {
	Component, Line int          // indexes into the recipe's Components and its Lines
	Food            *food.Food   // nil if the larder does not know it: its mass alone counts
	Weighed         food.Weighed // what the line weighs, and how that came about; 0 g if not said
	// Eaten is how many grams of it count: the middle of Weighed.Grams, or less
	// where part of it is thrown away.
	Eaten measure.Number
	Adds  food.Totals // what it adds
	Why   string      // why Adds is not the whole of the food's figures; "" if it is
}

// Of reckons the nutrition facts of r. w has the larder, and the measures of
// cups and spoons where the recipe states none; without a larder everything is
// missing.
//
// Of a range of amounts the middle counts. Optional lines count whole, and so
// do stated amounts that are only to taste; lines without an amount do not
// count and are named in Missing. What a cook throws away is taken off where
// the recipe tells of it, and Notes name each such line: frying fat, a brine, a
// marinade, cooking water, the liquid of a drained tin, alcohol that boils off.
// The package comment says by which rule.
//
// Covered counts what cannot be weighed too, or one line of ten with a weight
// would pass for the whole: a volume of an unknown food as if it were water,
// anything else as the recipe's average line. That mass is in no other figure.
func Of(r recipe.Recipe, w recipe.Writer) Facts {
	c := newCount(r, w.For(r))
	c.gather()
	c.drainTins()
	c.pourAway()
	c.keepInBrine()
	c.fry()
	c.boilOff()
	return c.sum()
}

// PerPiece gives the totals of one piece or serving; ok is false if the recipe
// does not say how many it makes. Of a recipe that makes 6 to 8 it is one of
// 6, the largest: the number that recipe.FactorForPieces goes by.
func (f Facts) PerPiece() (totals food.Totals, ok bool) { return f.piece(f.Pieces.From) }

// PerSmallestPiece is PerPiece by the other end of the range: one of 8.
func (f Facts) PerSmallestPiece() (totals food.Totals, ok bool) { return f.piece(f.Pieces.To) }

func (f Facts) piece(of measure.Number) (food.Totals, bool) {
	if of.Sign() <= 0 {
		return food.Totals{}, false
	}
	return f.Totals.Times(measure.Whole(1).Quo(of)), true
}

// PieceGrams is what one piece of PerPiece weighs: of the finished weight if
// that is known, else of the raw mixture. ok is false without pieces.
func (f Facts) PieceGrams() (grams measure.Number, ok bool) {
	if f.Pieces.From.Sign() <= 0 {
		return measure.Number{}, false
	}
	return f.weight().Quo(f.Pieces.From), true
}

// Per100 gives the totals of 100 g: of the finished food if Finished is known,
// else of the raw mixture as it is eaten, without what is thrown away.
func (f Facts) Per100() food.Totals { return f.Totals.Per100(f.Finished) }

// WithFinished gives the facts of the same food by its weight when it is done,
// in grams, as a trial of this amount measured it: a trial of half the recipe
// is to be doubled. 0 or less forgets the weight.
func (f Facts) WithFinished(grams measure.Number) Facts {
	if grams.Sign() < 0 {
		grams = measure.Number{}
	}
	f.Finished = grams
	return f
}

// weight is the mass that 100 g and a piece are taken of.
func (f Facts) weight() measure.Number {
	if f.Finished.Sign() > 0 {
		return f.Finished
	}
	return f.Totals.Grams()
}
