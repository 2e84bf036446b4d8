package static_test

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"testing"

	"benchproof/static"
)

// TestContrast computes the contrast of every token that is read against every
// ground it is read on, by the formula of WCAG 2.2, "contrast ratio" and
// "relative luminance". Text needs 4.5 (1.4.3), the line of a field and the
// ring of the focus 3 (1.4.11).
func TestContrast(t *testing.T) {
	a, _ := static.Open(static.URL("app.css"))
	schemes := schemes(t, string(a.Body))
	tests := []struct {
		name, ink, ground string
		least             float64
	}{
		{"words on the sheet", "ink", "sheet", 4.5},
		{"words on paper", "ink", "paper", 4.5},
		{"small words on the sheet", "soft", "sheet", 4.5},
		{"small words on paper", "soft", "paper", 4.5},
		{"links on the sheet", "act", "sheet", 4.5},
		{"links on paper", "act", "paper", 4.5},
		{"a button's words", "sheet", "act", 4.5},
		{"proved on the sheet", "proved", "sheet", 4.5},
		{"proved on paper", "proved", "paper", 4.5},
		{"to look at on the sheet", "look", "sheet", 4.5},
		{"to look at on paper", "look", "paper", 4.5},
		{"wrong on the sheet", "wrong", "sheet", 4.5},
		{"wrong on paper", "wrong", "paper", 4.5},
		{"a field's line on the sheet", "edge", "sheet", 3},
		{"a field's line on paper", "edge", "paper", 3},
		{"the focus ring on the sheet", "act", "sheet", 3},
		{"the focus ring on paper", "act", "paper", 3},
	}
	for i, scheme := range schemes {
		for _, tt := range tests {
			t.Run(fmt.Sprintf("%s/%s", []string{"light", "dark", "print"}[i], tt.name), func(t *testing.T) {
				if got := contrast(t, scheme[tt.ink], scheme[tt.ground]); got < tt.least {
					t.Errorf("%s %s on %s %s: contrast %.2f, want at least %.1f", tt.ink, scheme[tt.ink], tt.ground, scheme[tt.ground], got, tt.least)
				}
			})
		}
	}
}

// TestContrastFormula: pairs whose ratio is published. WCAG 2.2 gives 21 for
// black on white as the greatest there is and 1 as the least; #767676 and
// #949494 on white are the commonly quoted greys at 4.5 and 3 (from memory).
func TestContrastFormula(t *testing.T) {
	tests := []struct {
		a, b string
		want float64
	}{
		{"#000000", "#ffffff", 21}, {"#ffffff", "#ffffff", 1}, {"#767676", "#ffffff", 4.54}, {"#949494", "#ffffff", 3.03},
	}
	for _, tt := range tests {
		if got := contrast(t, tt.a, tt.b); math.Abs(got-tt.want) > .01 {
			t.Errorf("contrast(%s, %s) = %.3f, want %.2f", tt.a, tt.b, got, tt.want)
		}
	}
}

// schemes reads the three sets of tokens: light, dark and print, each the
// light one with what it changes.
func schemes(t *testing.T, css string) []map[string]string {
	t.Helper()
	token := regexp.MustCompile(`--([a-z]+): (#[0-9a-f]{6});`)
	all := []map[string]string{}
	for _, block := range regexp.MustCompile(`:root \{([^}]*)\}`).FindAllStringSubmatch(css, -1) {
		found := map[string]string{}
		for _, m := range token.FindAllStringSubmatch(block[1], -1) {
			found[m[1]] = m[2]
		}
		if len(found) > 0 {
			all = append(all, found)
		}
	}
	if len(all) != 3 {
		t.Fatalf("%d sets of colours in tokens.css, want light, dark and print", len(all))
	}
	for _, set := range all {
		if len(set) != len(all[0]) {
			t.Fatalf("a set has %d colours, the first %d: each scheme sets them all", len(set), len(all[0]))
		}
	}
	return all
}

func contrast(t *testing.T, a, b string) float64 {
	t.Helper()
	la, lb := luminance(t, a), luminance(t, b)
	return (max(la, lb) + .05) / (min(la, lb) + .05)
}

func luminance(t *testing.T, colour string) float64 {
	t.Helper()
	if len(colour) != 7 {
		t.Fatalf("%q is no colour", colour)
	}
	part := func(from int) float64 {
		n, err := strconv.ParseUint(colour[from:from+2], 16, 8)
		if err != nil {
			t.Fatal(err)
		}
		v := float64(n) / 255
		if v <= .04045 {
			return v / 12.92
		}
		return math.Pow((v+.055)/1.055, 2.4)
	}
	return .2126*part(1) + .7152*part(3) + .0722*part(5)
}
