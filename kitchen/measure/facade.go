package measure

import (
	"benchproof/kitchen/measure/exact"
	"benchproof/kitchen/measure/oven"
	"benchproof/kitchen/measure/scan"
)

// The rest of the house meets this room's parts here, under one name.

// Number is an exact rational. The zero value is 0. See package exact.
type Number = exact.Number

// Range is one or two exact numbers: From ≤ To, equal for a single value.
type Range = exact.Range

// Heat is one temperature or oven setting as given. See package oven.
type Heat = oven.Heat

// OvenSetting is one row of the published table of oven settings.
type OvenSetting = oven.Setting

// Question is something about given heats that is likely a slip.
type Question = oven.Question

// Whole makes the number n.
func Whole(n int64) Number { return exact.Whole(n) }

// Ratio makes a/b. It panics if b is 0, a mistake of the programmer.
func Ratio(a, b int64) Number { return exact.Ratio(a, b) }

// ParseNumber reads the exact form that String writes ("3", "-3/2") and plain
// decimals ("1.25"). It does not read what people write; ReadNumber does.
func ParseNumber(s string) (Number, error) { return exact.ParseNumber(s) }

// MustNumber is ParseNumber for constants in code; it panics on a bad one.
func MustNumber(s string) Number { return exact.MustNumber(s) }

// One makes the range of the single value n.
func One(n Number) Range { return exact.One(n) }

// Between makes the range of a and b, put in order.
func Between(a, b Number) Range { return exact.Between(a, b) }

// FormatNumber writes n as cooks do: "3", "1½", "⅓", "1⁄5"; as a decimal of at
// most two places where it is no kitchen fraction. See exact.FormatNumber.
func FormatNumber(n Number) string { return exact.FormatNumber(n) }

// FormatDecimal writes n with at most places decimals, without trailing zeros;
// a number below 0.1 keeps two figures that count.
func FormatDecimal(n Number, places int) string { return exact.FormatDecimal(n, places) }

// ReadNumber reads a number at the start of text as cooks write it: "1½",
// "1 1/2", "1-1/2", "1⁄2", ".5", "1.5", "one and a half", "three quarters",
// "two hundred and fifty", "half a", "a dozen", "a couple of". rest is what
// follows, without spaces before it; it always ends text.
//
// A comma with exactly three digits after it parts thousands ("1,000"); any
// other comma, and any after a single 0, is a decimal one ("1,5", "0,250"). A
// full stop is always decimal. A number has at most nine digits.
func ReadNumber(text string) (n Number, rest string, ok bool) { return scan.Number(text) }

// Heats finds the temperatures and oven settings in text, in order: see
// oven.Heats for what it reads.
func Heats(text string) []Heat { return oven.Heats(text) }

// OvenSettings gives the published table, coolest first. The slice is the
// caller's.
func OvenSettings() []OvenSetting { return oven.Settings() }

// CheckOvens questions heats that are given together and do not agree: a
// conventional and a fan setting not about 20 °C apart, °C against °F, either
// against a gas mark. See oven.Check.
func CheckOvens(heats []Heat) []Question { return oven.Check(heats) }

// CelsiusToFahrenheit is exact: °F = °C × 9/5 + 32. Source: NIST SP 811, app. B.
func CelsiusToFahrenheit(c Number) Number { return oven.CelsiusToFahrenheit(c) }

// FahrenheitToCelsius is exact: °C = (°F − 32) × 5/9. Source: NIST SP 811,
// app. B.
func FahrenheitToCelsius(f Number) Number { return oven.FahrenheitToCelsius(f) }

// CelsiusDifference turns a difference of f °F into °C, exact: 25 °F of
// difference are 13.9 °C. There is no 32 in it.
func CelsiusDifference(f Number) Number { return oven.CelsiusDifference(f) }

const noBreak = exact.NoBreak

// cursor adds the reading of amounts and times to the cursor of package scan.
type cursor struct{ scan.Cursor }

func newCursor(text string, at int) cursor {
	return cursor{scan.Cursor{Text: text, At: at}}
}
