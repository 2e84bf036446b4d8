package measure_test

import (
	"testing"

	"benchproof/kitchen/measure"
)

// unitSpellings are units as cooks write them: common practice, no source.
var unitSpellings = map[measure.Unit][]string{
	measure.Gram:       {"g", "G", "gr", "gr.", "grs", "gm", "gms", "gram", "grams", "Grams", "gramme", "grammes"},
	measure.Kilogram:   {"kg", "Kg", "KG", "kgs", "kilo", "kilos", "kilogram", "kilograms"},
	measure.Milligram:  {"mg", "milligrams"},
	measure.Ounce:      {"oz", "oz.", "OZ", "ozs", "ounce", "ounces"},
	measure.Pound:      {"lb", "lb.", "lbs", "lbs.", "LB", "pound", "pounds", "#"},
	measure.Millilitre: {"ml", "mL", "ML", "mls", "mil", "cc", "millilitre", "millilitres", "milliliter", "milliliters"},
	measure.Centilitre: {"cl", "cL", "centilitres"},
	measure.Decilitre:  {"dl", "dL", "decilitre", "deciliters"},
	measure.Litre:      {"l", "L", "lt", "ltr", "litre", "litres", "liter", "liters"},
	measure.Teaspoon:   {"t", "t.", "tsp", "tsp.", "Tsp", "TSP", "tsps", "teaspoon", "teaspoons", "tea spoons", "teaspoonful"},
	measure.Tablespoon: {"T", "T.", "Tb", "tb", "Tbs", "tbs", "Tbs.", "tbl", "Tbsp", "Tbsp.", "TBSP", "tbsps", "tblsp", "tablespoon", "Tablespoons", "table spoon", "table-spoons", "tablespoonfuls"},
	measure.Dessertspn: {"dessertspoon", "dessertspoons", "dessert spoon", "dsp", "dstspn"},
	measure.FluidOunce: {"fl oz", "fl. oz.", "fl.oz.", "floz", "fl-oz", "fluid ounce", "fluid ounces", "Fluid Ounces", "fl ounces", "fluid oz"},
	measure.Gill:       {"gill", "gills"},
	measure.Cup:        {"cup", "cups", "Cups", "c", "c.", "C", "C.", "cupful", "cupfuls"},
	measure.Go:         {"gō", "go", "gou", "合", "rice cooker cup"},
	measure.Pint:       {"pint", "pints", "pt", "pts."},
	measure.Quart:      {"quart", "quarts", "qt", "qts"},
	measure.Gallon:     {"gallon", "gallons", "gal", "gal."},
	measure.Drop:       {"drop", "drops"},
	measure.Pinch:      {"pinch", "pinches"},
	measure.Dash:       {"dash", "dashes"},
	measure.Smidgen:    {"smidgen", "smidgens", "smidgeon"},
	measure.Stick:      {"stick", "sticks"},
	measure.Tin:        {"tin", "tins", "can", "cans", "Can"},
	measure.Jar:        {"jar", "jars"},
	measure.Packet:     {"packet", "packets", "sachet", "sachets", "envelope", "envelopes", "package", "pkg", "pkg.", "pkt", "pack"},
	measure.Bottle:     {"bottle", "bottles"},
	measure.Leaf:       {"leaf", "leaves"},
	measure.Sheet:      {"sheet", "sheets"},
	measure.Clove:      {"clove", "cloves"},
	measure.Sprig:      {"sprig", "sprigs"},
	measure.Bunch:      {"bunch", "bunches"},
	measure.Head:       {"head", "heads"},
	measure.Stalk:      {"stalk", "stalks", "stem", "stems", "rib", "ribs"},
	measure.Slice:      {"slice", "slices"},
	measure.Piece:      {"piece", "pieces", "pc", "pcs"},
	measure.Cube:       {"cube", "cubes"},
	measure.Knob:       {"knob", "knobs"},
	measure.Handful:    {"handful", "handfuls", "handsful"},
	measure.Rasher:     {"rasher", "rashers"},
	measure.Carton:     {"carton", "cartons"},
	measure.Inch:       {"in", "in.", "inch", "inches", "\"", "″"},
	measure.Centimetre: {"cm", "cms", "centimetre", "centimeters"},
	measure.Millimetre: {"mm", "millimetres"},
	measure.Minute:     {"min", "min.", "mins", "minute", "minutes"},
	measure.Hour:       {"h", "hr", "hrs.", "hour", "hours"},
	measure.Second:     {"s", "sec", "secs", "seconds"},
	measure.Day:        {"day", "days"},
	measure.Celsius:    {"°C", "°c", "℃", "celsius", "degrees C"},
	measure.Fahrenheit: {"°F", "℉", "fahrenheit"},
	measure.Each:       {"each", "ea"},
}

func TestParseUnitReadsWhatCooksWrite(t *testing.T) {
	for want, words := range unitSpellings {
		for _, word := range words {
			if got, ok := measure.ParseUnit(word); !ok || got != want {
				t.Errorf("ParseUnit(%q) = %q, %v, want %q", word, got, ok, want)
			}
		}
	}
	for _, word := range []string{"", " ", ".", "flour", "large", "x", "tt", "spoon", "oz oz", "cupboard"} {
		if got, ok := measure.ParseUnit(word); ok {
			t.Errorf("ParseUnit(%q) = %q, want none", word, got)
		}
	}
}

func TestEveryUnitReadsBack(t *testing.T) {
	seen := map[measure.Unit]bool{}
	for _, u := range measure.Units() {
		if seen[u] {
			t.Errorf("Units lists %q twice", u)
		}
		seen[u] = true
		for _, word := range []string{string(u), u.Name(false), u.Name(true)} {
			if u == measure.Each {
				continue
			}
			if got, ok := measure.ParseUnit(word); !ok || got != u {
				t.Errorf("ParseUnit(%q) = %q, %v, want %q", word, got, ok, u)
			}
		}
	}
	measure.Units()[0] = "spoilt"
	if measure.Units()[0] != measure.Each {
		t.Error("the slice Units gives is shared")
	}
}

func TestNamesAndKinds(t *testing.T) {
	for _, test := range []struct {
		unit      measure.Unit
		kind      measure.Kind
		one, many string
	}{
		{measure.Each, measure.Count, "", ""},
		{measure.Gram, measure.Mass, "g", "g"},
		{measure.Millilitre, measure.Volume, "mL", "mL"},
		{measure.Litre, measure.Volume, "L", "L"},
		{measure.Tablespoon, measure.Volume, "tbsp", "tbsp"},
		{measure.Cup, measure.Volume, "cup", "cups"},
		{measure.Pinch, measure.Volume, "pinch", "pinches"},
		{measure.Tin, measure.Count, "tin", "tins"},
		{measure.Leaf, measure.Count, "leaf", "leaves"},
		{measure.Inch, measure.Length, "in", "in"},
		{measure.Hour, measure.Time, "h", "h"},
		{measure.Celsius, measure.Temperature, "°C", "°C"},
		{"firkin", measure.Count, "firkin", "firkin"},
	} {
		if got := test.unit.Kind(); got != test.kind {
			t.Errorf("%q.Kind() = %q, want %q", test.unit, got, test.kind)
		}
		if one, many := test.unit.Name(false), test.unit.Name(true); one != test.one || many != test.many {
			t.Errorf("%q is named %q, %q, want %q, %q", test.unit, one, many, test.one, test.many)
		}
	}
}
