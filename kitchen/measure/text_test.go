package measure_test

import (
	"strings"
	"testing"

	"benchproof/kitchen/measure"
)

// num makes a number from its exact text.
func num(t testing.TB, text string) measure.Number {
	t.Helper()
	n, err := measure.ParseNumber(text)
	if err != nil {
		t.Fatal(err)
	}
	return n
}

// span makes a range from "3/2" or "2..3".
func span(t testing.TB, text string) measure.Range {
	t.Helper()
	from, to, two := strings.Cut(text, "..")
	if !two {
		return measure.One(num(t, from))
	}
	return measure.Range{From: num(t, from), To: num(t, to)}
}

// amount makes an amount from "3/2 cup", "2..3 tbsp", "4".
func amount(t testing.TB, text string) measure.Amount {
	t.Helper()
	n, unit, _ := strings.Cut(text, " ")
	return measure.Amount{Range: span(t, n), Unit: measure.Unit(unit)}
}
