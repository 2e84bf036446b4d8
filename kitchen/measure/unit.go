package measure

import "strings"

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
	Bag     Unit = "bag"
	Box     Unit = "box"
	Carton  Unit = "carton"
	Tub     Unit = "tub"
	Block   Unit = "block"
	Bar     Unit = "bar"
	Ball    Unit = "ball"
	Ear     Unit = "ear"
	Rasher  Unit = "rasher"
	Strip   Unit = "strip"
	Wedge   Unit = "wedge"
	Scoop   Unit = "scoop"
	Splash  Unit = "splash"
	Squeeze Unit = "squeeze"
	Drizzle Unit = "drizzle"
	Dollop  Unit = "dollop"
	Glug    Unit = "glug"

	Millimetre Unit = "mm"
	Centimetre Unit = "cm"
	Inch       Unit = "in"

	Second Unit = "s"
	Minute Unit = "min"
	Hour   Unit = "h"
	Day    Unit = "day"

	Celsius    Unit = "°C"
	Fahrenheit Unit = "°F"
)

// Units lists every unit, in the order a form would offer them: counts by
// themselves, mass, volume from small to large, counted packs and parts,
// length, time, temperature. The slice is the caller's.
func Units() []Unit {
	all := make([]Unit, len(vocabulary))
	for i, e := range vocabulary {
		all[i] = e.unit
	}
	return all
}

// Kind tells what u measures; a unit the room does not know is a Count.
func (u Unit) Kind() Kind {
	if e := entries[u]; e != nil {
		return e.kind
	}
	return Count
}

// Name gives u as a person reads it after a number: "cup", "cups", "g", "mL".
// Each has no name. A unit the room does not know is given as it stands.
func (u Unit) Name(plural bool) string {
	e := entries[u]
	switch {
	case e == nil:
		return string(u)
	case plural:
		return e.many
	}
	return e.one
}

// ParseUnit reads a unit as cooks write it, alone: "Tbsp.", "grams", "fl oz",
// "tins", "c.". Case matters only where a single letter does: "T" is a
// tablespoon and "t" a teaspoon. "can" is a tin, "sachet" and "envelope" a
// packet, "stem" and "rib" a stalk. "each" is Each; the empty word is no unit.
func ParseUnit(word string) (Unit, bool) {
	word = strings.TrimSpace(word)
	switch strings.TrimSuffix(word, ".") {
	case "T", "Ts", "Tb", "Tbs":
		return Tablespoon, true
	case "t":
		return Teaspoon, true
	}
	if w, ok := unitWords[word]; ok {
		return w.unit, true
	}
	w, ok := unitWords[plain(word)]
	return w.unit, ok
}

// plain folds a word for looking up: lower case, no dots, hyphens and runs of
// space as one space.
func plain(word string) string {
	word = strings.ToLower(strings.ReplaceAll(word, ".", " "))
	word = strings.ReplaceAll(word, "-", " ")
	return strings.Join(strings.Fields(word), " ")
}
