package oven

import "benchproof/kitchen/measure/exact"

// CelsiusToFahrenheit is exact: °F = °C × 9/5 + 32. Source: NIST SP 811, app. B.
func CelsiusToFahrenheit(c exact.Number) exact.Number {
	return c.Mul(exact.Ratio(9, 5)).Add(exact.Whole(32))
}

// FahrenheitToCelsius is exact: °C = (°F − 32) × 5/9. Source: NIST SP 811,
// app. B.
func FahrenheitToCelsius(f exact.Number) exact.Number {
	return f.Sub(exact.Whole(32)).Mul(exact.Ratio(5, 9))
}

// CelsiusDifference turns a difference of f °F into °C, exact: 25 °F of
// difference are 13.9 °C. There is no 32 in it.
func CelsiusDifference(f exact.Number) exact.Number { return f.Mul(exact.Ratio(5, 9)) }
