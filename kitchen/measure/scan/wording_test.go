package scan_test

import (
	"testing"

	"benchproof/kitchen/measure/exact"
	"benchproof/kitchen/measure/scan"
)

// How the world groups its thousands and parts its decimals, as the doc of
// measure.ReadNumber promises; common practice, no source.
func TestNumbersOfManyCountries(t *testing.T) {
	for _, test := range []struct{ name, text, want, rest string }{
		{"English thousands", "1,250 g", "1250", "g"},
		{"English millions", "1,234,567", "1234567", ""},
		{"English with decimals", "1,250.5 g", "2501/2", "g"},
		{"a comma and two digits", "1,25 l", "5/4", "l"},
		{"a comma and four digits", "1,2500 l", "5/4", "l"},
		{"nought and a comma", "0,250 kg", "1/4", "kg"},
		{"four digits before the comma", "1234,567", "1234567/1000", ""},
		{"Swiss", "1'000 g", "1000", "g"},
		{"Swiss, other digits", "2'350 g", "2350", "g"},
		{"a quotation mark and no group", "1'0 g", "1", "'0 g"},
		{"a foot mark", "6' ladder", "6", "' ladder"},
		{"SI, a thin space", "12\u2009345 g", "12345", "g"},
		{"SI, a narrow no-break space", "1\u202f500 g", "1500", "g"},
		{"a plain space and noughts", "1 000 g", "1000", "g"},
		{"a plain space and a size", "1 400 g", "1", "400 g"},
		{"nought before a group", "0 000", "0", "000"},
		{"a stop is decimal", "1.000 kg", "1", "kg"},
		{"a stop before digits", ".75 l", "3/4", "l"},
		{"a stop at the end", "2. Knead", "2", ". Knead"},
		{"nine digits", "123456789", "123456789", ""},
	} {
		t.Run(test.name, func(t *testing.T) {
			got, rest, ok := scan.Number(test.text)
			if !ok || !got.Equal(exact.MustNumber(test.want)) || rest != test.rest {
				t.Errorf("Number(%q) = %v, leaving %q, %v; want %s, leaving %q", test.text, got, rest, ok, test.want, test.rest)
			}
		})
	}
}

// Parts in words, before a noun and after a whole number.
func TestPartsInWords(t *testing.T) {
	for _, test := range []struct{ name, text, want, rest string }{
		{"three-quarter cup", "three-quarter cup", "3/4", "cup"},
		{"two-third cup", "two-third cup", "2/3", "cup"},
		{"three quarter cups", "three quarter cups", "3/4", "cups"},
		{"one and three-quarter cups", "one and three-quarter cups", "7/4", "cups"},
		{"2 and two-thirds cups", "2 and two-thirds cups", "8/3", "cups"},
		{"five-eighths inch", "five-eighths inch", "5/8", "inch"},
		{"a tenth of a gram", "a tenth of a gram", "1/10", "gram"},
		{"half an onion", "half an onion", "1/2", "onion"},
		{"a quarter of an onion", "a quarter of an onion", "1/4", "onion"},
		{"half of an onion", "half of an onion", "1/2", "onion"},
		{"half of the onion", "half of the onion", "1/2", "of the onion"},
		{"an eighth", "an eighth of a teaspoon", "1/8", "teaspoon"},
		{"one & a half", "one & a half cups", "3/2", "cups"},
		{"one and one half", "one and one half cups", "3/2", "cups"},
		{"a quarter dozen", "a quarter dozen", "3", ""},
		{"half a dozen", "half a dozen eggs", "6", "eggs"},
		{"one and a half dozen", "one and a half dozen eggs", "18", "eggs"},
		{"three dozen", "three dozen", "36", ""},
		{"2 doz", "2 doz oysters", "24", "oysters"},
		{"dozen alone", "Dozen eggs", "12", "eggs"},
		{"a couple", "a couple eggs", "2", "eggs"},
		{"zero point two five", "one point zero five kg", "21/20", "kg"},
		{"one point oh five", "one point oh five kg", "21/20", "kg"},
		{"a thousand two hundred", "a thousand two hundred g", "1200", "g"},
		{"two thousand and five", "two thousand and five g", "2005", "g"},
		{"two hundred fifty", "two hundred fifty g", "250", "g"},
		{"fourty is a slip", "fourty g", "40", "g"},
		{"twenty and ten", "twenty ten g", "20", "ten g"},
	} {
		t.Run(test.name, func(t *testing.T) {
			got, rest, ok := scan.Number(test.text)
			if !ok || !got.Equal(exact.MustNumber(test.want)) || rest != test.rest {
				t.Errorf("Number(%q) = %v, leaving %q, %v; want %s, leaving %q", test.text, got, rest, ok, test.want, test.rest)
			}
		})
	}
	for _, text := range []string{"two third parties", "three fifth formers", "four thirds", "a halves", "second", "quarters"} {
		if got, rest, ok := scan.Number(text); ok && rest != text[len(text)-len(rest):] || ok && !got.IsWhole() {
			t.Errorf("Number(%q) = %v, leaving %q: no part is meant", text, got, rest)
		}
	}
}

// Fractions in figures: what slashes, raised and lowered digits may stand for.
func TestFractionsInFigures(t *testing.T) {
	for _, test := range []struct{ name, text, want, rest string }{
		{"raised over lowered", "¹⁄₂ cup", "1/2", "cup"},
		{"raised over plain", "³/4 cup", "3/4", "cup"},
		{"plain over lowered", "3/₄ cup", "3/4", "cup"},
		{"a whole before it", "1²/₃ cups", "5/3", "cups"},
		{"a division slash", "1∕2 cup", "1/2", "cup"},
		{"two raised digits", "¹¹⁄₁₂ cup", "11/12", "cup"},
		{"numerator one", "⅟3 cup", "1/3", "cup"},
		{"numerator one after a whole", "2 ⅟3 cups", "7/3", "cups"},
		{"rd", "1/3rd cup", "1/3", "cup"},
		{"ths", "3/4ths cup", "3/4", "cup"},
		{"an improper one", "5/4 cup", "5/4", "cup"},
		{"over a hundred", "1/100 cup", "1/100", "cup"},
		{"over more than a hundred", "1/101 cup", "1", "/101 cup"},
		{"over nothing", "1/0 cup", "1", "/0 cup"},
		{"a thousand over", "1000/3 g", "1000/3", "g"},
		{"more than a thousand over", "1001/3 g", "1001", "/3 g"},
		{"a plus for and", "1+1/2 cups", "3/2", "cups"},
		{"an ampersand", "1&½ cups", "3/2", "cups"},
		{"an en dash", "1–½ cups", "3/2", "cups"},
		{"a non-breaking hyphen", "1\u20111/2 cups", "3/2", "cups"},
		{"a spaced slash", "2 / 3 cup", "2", "/ 3 cup"},
		{"the largest whole with a part", "9999999 1/2 g", "19999999/2", "g"},
		{"a larger whole", "10000000 1/2 g", "10000000", "1/2 g"},
	} {
		t.Run(test.name, func(t *testing.T) {
			got, rest, ok := scan.Number(test.text)
			if !ok || !got.Equal(exact.MustNumber(test.want)) || rest != test.rest {
				t.Errorf("Number(%q) = %v, leaving %q, %v; want %s, leaving %q", test.text, got, rest, ok, test.want, test.rest)
			}
		})
	}
}

// The hyphens of "2- to 3-inch" part a range as "to" does; those of a count and
// a size do not.
func TestHyphensThatWait(t *testing.T) {
	for _, test := range []struct {
		text string
		dash bool
		rest string
	}{
		{"- to 3-inch", false, "3-inch"},
		{"-to-10-ounce", false, "10-ounce"},
		{"- or 3-inch", false, "3-inch"},
		{"-14 oz can", true, "14 oz can"},
		{" - 14 oz can", true, "14 oz can"},
		{"- together", true, "together"},
	} {
		c := scan.Cursor{Text: test.text}
		if dash, ok := c.RangeSign(false); !ok || dash != test.dash || c.Rest() != test.rest {
			t.Errorf("RangeSign in %q = %v, %v, leaving %q, want %v, leaving %q", test.text, dash, ok, c.Rest(), test.dash, test.rest)
		}
	}
}

// A number of dozens says so, for the other end of its range.
func TestQuantitiesOfDozens(t *testing.T) {
	for text, want := range map[string]bool{
		"2 dozen": true, "half a dozen": true, "2 doz": true, "a dozen": false, "dozen": false, "12": false, "two": false,
	} {
		c := scan.Cursor{Text: text}
		if q, ok := c.Quantity(); !ok || q.Dozens != want {
			t.Errorf("Quantity of %q = %+v, %v, want Dozens %v", text, q, ok, want)
		}
	}
}
