package oven

import (
	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure/exact"
)

// Heat is one temperature or oven setting as given: "160 °C fan", "gas 4",
// "350–375 °F".
type Heat struct {
	Degrees exact.Range
	Scale   string // "C", "F", or "gas"; "" for not said ("200 degrees")
	Oven    string // "fan", "conventional", or "" for not said
	Text    string // as written
	At      int    // where Text begins, in bytes
}

// String writes h as read aloud: "180 °C", "160 °C fan", "gas 4". It does not
// look at Text.
func (h Heat) String() string {
	if h.Scale == "gas" {
		return "gas" + exact.NoBreak + rangeText(h.Degrees, exact.FormatNumber)
	}
	text := rangeText(h.Degrees, func(n exact.Number) string { return exact.FormatDecimal(n, 1) }) + exact.NoBreak + "°" + h.Scale
	if h.Oven != "" {
		text += " " + h.Oven
	}
	return text
}

// rangeText writes both ends with an en dash between them, or the one.
func rangeText(r exact.Range, format func(exact.Number) string) string {
	if r.IsSingle() {
		return format(r.From)
	}
	return format(r.From) + "–" + format(r.To)
}

// In gives the oven setting h on another scale ("C", "F", "gas") and for
// another oven ("fan", "conventional"; "" is conventional), and how it came
// about: "published table" (the nearest row), "exact conversion" where no row
// is within 5 °C, "fan rule" where only the oven differs. The result has no
// Text. It is for ovens: convert a food's own temperature with
// FahrenheitToCelsius and its inverse.
//
// A gas mark has no fan. Where h's scale is not said, or no row is near enough
// for a gas mark, the error is fault.Invalid.
func (h Heat) In(scale, oven string) (to Heat, how string, err error) {
	to = Heat{Scale: scale, Oven: oven}
	if h.Scale == scale {
		to.Degrees = h.Degrees.Map(func(n exact.Number) exact.Number { return fanRule(n, scale, h.Oven, oven) })
		return to, "fan rule", nil
	}
	how = "published table"
	to.Degrees = h.Degrees.Map(func(n exact.Number) exact.Number {
		m, by, e := convertSetting(n, h.Scale, h.Oven, scale, oven)
		if e != nil {
			err = e
		}
		if by != "" {
			how = by
		}
		return m
	})
	return to, how, err
}

// convertSetting converts one setting between scales; by is "" if the table
// had a row.
func convertSetting(n exact.Number, fromScale, fromOven, scale, oven string) (m exact.Number, by string, err error) {
	conventional := fanRule(n, fromScale, fromOven, "")
	row, near := nearestRow(conventional, fromScale)
	switch {
	case fromScale == "":
		return m, "", fault.Invalidf("temperature", "Say whether %s degrees are °C or °F.", exact.FormatDecimal(n, 1))
	case near && scale == "C":
		m = row.Celsius[0] // of two, the nearer to the exact value
	case near && scale == "F":
		m = row.Fahrenheit
	case near && scale == "gas":
		return row.Gas, "", nil
	case scale == "gas" || fromScale == "gas":
		return m, "", fault.Invalidf("temperature", "No gas mark is near %s: marks run from ¼ (110 °C) to 9 (240 °C).", Heat{Degrees: exact.One(n), Scale: fromScale, Oven: fromOven})
	case scale == "F":
		m, by = CelsiusToFahrenheit(conventional), "exact conversion"
	default:
		m, by = FahrenheitToCelsius(conventional), "exact conversion"
	}
	return fanRule(m, scale, "", oven), by, nil
}

// The fan rules: about 20 °C lower in Australia and the UK (NSW Health,
// "Conversion chart"; UK guides), 25 °F lower in the US (household guides).
var (
	fanCelsius    = exact.Whole(20)
	fanFahrenheit = exact.Whole(25)
)

// fanRule takes a setting from one oven to the other; a gas mark stays.
func fanRule(n exact.Number, scale, from, to string) exact.Number {
	step := fanCelsius
	if scale == "F" {
		step = fanFahrenheit
	}
	switch {
	case scale == "gas" || (from == "fan") == (to == "fan"):
		return n
	case to == "fan":
		return n.Sub(step)
	}
	return n.Add(step)
}
