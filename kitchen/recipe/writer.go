package recipe

import (
	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
)

// Style is the measures a Writer writes in.
type Style string

// The styles.
const (
	AsWritten     Style = ""         // the line's own unit
	MetricStyle   Style = "metric"   // grams and millilitres
	USStyle       Style = "us"       // US cups, spoons, ounces
	ImperialStyle Style = "imperial" // pounds, ounces, imperial fluid ounces and pints
)

// Writer writes lines for hands.
type Writer struct {
	Larder *food.Larder   // for weights and the forms of names; may be nil
	House  measure.System // the show's measures
	Source measure.System // the recipe's own, before the show's; "" if it states none
	Style  Style
}

// Written is one line as people read it: Measure for the gutter, Words beside.
type Written struct {
	Measure      string // "320 g", "1–2 tsp", "3"; "" without an amount
	Words        string // food, preparation and note: "strong white flour, sifted"
	Other        string // the same amount in the other system, "1¾ tsp"; "" if there is none
	Exact        string // the exact amount, "9/4 cup"; "" without an amount
	ErrorPercent float64
	Assumed      string // "cup = 236.588 mL (US customary)"; "" if nothing was assumed
	Source       string // where a weight comes from: "USDA SR 20081"; "" if none was used
	Question     string // what the creator should settle; "" if nothing
}
