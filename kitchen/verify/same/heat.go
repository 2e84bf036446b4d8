package same

import (
	"slices"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/speech"
)

// Heats compares a said heat with the settings that are written together; oven
// tells that they are an oven's, whose published table then counts too.
func Heats(said speech.Said, written []speech.Said, oven bool) bool {
	if slices.ContainsFunc(written, func(w speech.Said) bool { return w.Below != said.Below }) {
		return false
	}
	if slices.ContainsFunc(written, func(w speech.Said) bool { return isSetting(said, w) }) {
		return true
	}
	if slices.ContainsFunc(written, func(w speech.Said) bool { return Rival(said, w) }) {
		return false // what is said must not be written otherwise
	}
	return slices.ContainsFunc(written, func(w speech.Said) bool { return converts(said, w, oven) })
}

// isSetting compares with one setting as written.
func isSetting(s, w speech.Said) bool {
	if s.Scale != "" && w.Scale != "" && s.Scale != w.Scale || (s.Scale == "gas") != (w.Scale == "gas") {
		return false
	}
	if s.Oven == "fan" && w.Oven != "fan" || s.Oven == "conventional" && w.Oven == "fan" {
		return false
	}
	return agrees(s.Amount.Range, w.Amount.Range, exactly)
}

// Rival tells whether a written setting is for the oven and on the scale that is
// said.
func Rival(s, w speech.Said) bool {
	return (s.Oven == "fan") == (w.Oven == "fan") && (s.Scale == "gas") == (w.Scale == "gas") &&
		(s.Scale == w.Scale || s.Scale == "" || w.Scale == "")
}

// converts compares with what the published table makes of a written setting,
// where the scale or the oven that is said is not written. 10 °C, or a row of the
// table, are within rounding.
func converts(s, w speech.Said, oven bool) bool {
	from := Setting(w)
	if from.Scale == "" {
		from.Scale = "C"
	}
	scale := s.Scale
	if scale == "" {
		scale = from.Scale
		if scale == "gas" {
			scale = "C"
		}
	}
	if !oven && s.Oven == "" && scale != "gas" {
		return isExact(s, from, scale)
	}
	to, _, err := from.In(scale, s.Oven)
	return err == nil && within(s.Amount.Range, to.Degrees, roomOn(scale))
}

// roomOn is how far two settings of an oven may lie apart on a scale.
func roomOn(scale string) measure.Number {
	switch scale {
	case "F":
		return measure.Whole(11)
	case "gas":
		return measure.Ratio(1, 2)
	}
	return measure.Whole(6)
}

// isExact compares a food's own temperature on two scales.
func isExact(s speech.Said, from measure.Heat, scale string) bool {
	to := from.Degrees
	switch {
	case from.Scale == "C" && scale == "F":
		to = to.Map(measure.CelsiusToFahrenheit)
	case from.Scale == "F" && scale == "C":
		to = to.Map(measure.FahrenheitToCelsius)
	}
	return within(s.Amount.Range, to, measure.Whole(2))
}

func within(said, written measure.Range, room measure.Number) bool {
	return said.From.Cmp(written.From.Sub(room)) >= 0 && said.To.Cmp(written.To.Add(room)) <= 0
}

// Setting is a said heat as room measure knows it.
func Setting(s speech.Said) measure.Heat {
	return measure.Heat{Degrees: s.Amount.Range, Scale: s.Scale, Oven: s.Oven}
}
