package measure

// Kind is what a unit measures.
type Kind string

// The kinds of measure a recipe uses.
const (
	Count       Kind = "count"
	Mass        Kind = "mass"
	Volume      Kind = "volume"
	Length      Kind = "length"
	Temperature Kind = "temperature"
	Time        Kind = "time"
)

// Unit is a unit's short code, as stored and as JSON shows it. The empty unit
// is a plain count: "3 eggs".
type Unit string

// The units that recipes use. Cup, spoons, pint, fluid ounce mean what the
// System in force says; tins, cloves and the like are counts whose weight only
// the food knows.
const (
	Each Unit = ""

	Milligram Unit = "mg"
	Gram      Unit = "g"
	Kilogram  Unit = "kg"
	Ounce     Unit = "oz"
	Pound     Unit = "lb"

	Millilitre Unit = "ml"
	Centilitre Unit = "cl"
	Decilitre  Unit = "dl"
	Litre      Unit = "l"
	Drop       Unit = "drop"
	Smidgen    Unit = "smidgen"
	Pinch      Unit = "pinch"
	Dash       Unit = "dash"
	Teaspoon   Unit = "tsp"
	Dessertspn Unit = "dessertspoon"
	Tablespoon Unit = "tbsp"
	FluidOunce Unit = "fl oz"
	Gill       Unit = "gill"
	Cup        Unit = "cup"
	Go         Unit = "gō"
	Pint       Unit = "pint"
	Quart      Unit = "quart"
	Gallon     Unit = "gallon"

	Stick   Unit = "stick"
	Tin     Unit = "tin"
	Jar     Unit = "jar"
	Packet  Unit = "packet"
	Bottle  Unit = "bottle"
	Leaf    Unit = "leaf"
	Sheet   Unit = "sheet"
	Clove   Unit = "clove"
	Sprig   Unit = "sprig"
	Bunch   Unit = "bunch"
	Head    Unit = "head"
	Stalk   Unit = "stalk"
	Slice   Unit = "slice"
	Piece   Unit = "piece"
	Cube    Unit = "cube"
	Knob    Unit = "knob"
	Handful Unit = "handful"

	Millimetre Unit = "mm"
	Centimetre Unit = "cm"
	Inch       Unit = "in"
)

// Range is one or two exact numbers: From ≤ To, equal for a single value.
type Range struct {
	From Number `json:"from"`
	To   Number `json:"to"`
}

// Amount is a range with its unit: "2–3 tbsp". The zero Amount means none.
type Amount struct {
	Range
	Unit Unit `json:"unit"`
}

// System decides what cup, spoons, pint and fluid ounce hold. The empty system
// means: not said; the next one up (recipe, then show) decides.
type System string

// The measuring systems. Sources: NIST Handbook 44 App. C (US); Weights and
// Measures Act 1985 Sch. 1 (imperial); Standards Association of Australia;
// 21 CFR 101.9(b)(5)(viii) (label).
const (
	US         System = "us"
	Imperial   System = "imperial"
	Metric     System = "metric"     // 5, 10, 15, 250 mL
	Australian System = "australian" // tablespoon 20 mL, cup 250 mL
	Japanese   System = "japanese"   // cup 200 mL
	USLabel    System = "us-label"   // 5, 15, 30, 240 mL
)
