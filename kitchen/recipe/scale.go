package recipe

import "benchproof/kitchen/measure"

// Scaled is a recipe times a factor.
type Scaled struct {
	By     measure.Number
	Recipe Recipe // every amount exact; the texts are those written before scaling
	Lines  []ScaledLine
	Yield  string   // "makes 24 knots"; "" if the recipe says none
	Notes  []string // what does not scale, in the person's words
}

// ScaledLine is one line of the scaled recipe as it is shown.
type ScaledLine struct {
	Component, Line int // indexes into Recipe.Components and its Lines
	Written
}
