package exact_test

import (
	"math/big"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"benchproof/kitchen/measure/exact"
	"benchproof/kitchen/measure/internal/tables"
)

func TestFormatNumber(t *testing.T) {
	for n, want := range map[string]string{
		"0": "0", "3": "3", "1/2": "½", "3/2": "1½", "1/3": "⅓", "8/3": "2⅔", "7/8": "⅞", "-3/2": "−1½", "1000": "1000",
		"1/5": "1⁄5", "6/5": "1 1⁄5", "5/6": "5⁄6", "1/16": "1⁄16", "47/20": "2.35", "1/7": "0.14", "1/10": "0.1",
		"1/70": "0.014", "1/1000": "0.001", "100/7": "14.29", "-1/7": "−0.14", "999/1000": "1",
	} {
		if got := tables.Plain(exact.FormatNumber(exact.MustNumber(n))); got != want {
			t.Errorf("FormatNumber(%s) = %q, want %q", n, got, want)
		}
	}
	if got := exact.FormatDecimal(exact.Ratio(5, 2), 2); got != "2.5" {
		t.Errorf("FormatDecimal(5/2) = %q", got)
	}
	if got := exact.FormatDecimal(exact.Ratio(2, 3), 0); got != "1" {
		t.Errorf("FormatDecimal(2/3, 0) = %q", got)
	}
}

// Rounding in machine words is math/big's rounding.
func TestFormatDecimalRoundsAsBigDoes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := rapid.Int64Range(-1<<42, 1<<42).Draw(t, "over"), rapid.Int64Range(1, 1<<20).Draw(t, "under")
		if rapid.Bool().Draw(t, "small") {
			a, b = a%5000, b%400+1
		}
		places := rapid.IntRange(0, 8).Draw(t, "places")
		got := exact.FormatDecimal(exact.Ratio(a, b), places)
		r := big.NewRat(a, b)
		if r.IsInt() || new(big.Rat).Abs(r).Cmp(big.NewRat(1, 10)) < 0 {
			return // whole, or kept to two figures: the table above has them
		}
		want := r.FloatString(places)
		if strings.Contains(want, ".") {
			want = strings.TrimRight(strings.TrimRight(want, "0"), ".")
		}
		if want = strings.Replace(want, "-", "−", 1); got != want {
			t.Fatalf("FormatDecimal(%d/%d, %d) = %q, want %q", a, b, places, got, want)
		}
	})
}
