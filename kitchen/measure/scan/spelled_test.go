package scan_test

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"benchproof/kitchen/measure/exact"
	"benchproof/kitchen/measure/scan"
)

var (
	ones = strings.Fields("zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen")
	tens = strings.Fields("- - twenty thirty forty fifty sixty seventy eighty ninety")
)

// spell writes n, 1 to 999,999, in English words; and puts "and" after
// hundreds, join between tens and ones.
func spell(n int, and, join string) string {
	switch {
	case n < 20:
		return ones[n]
	case n < 100:
		if n%10 == 0 {
			return tens[n/10]
		}
		return tens[n/10] + join + ones[n%10]
	case n < 1000:
		text := ones[n/100] + " hundred"
		if n%100 != 0 {
			text += and + spell(n%100, and, join)
		}
		return text
	}
	text := spell(n/1000, and, join) + " thousand"
	if n%1000 != 0 {
		if n%1000 < 100 {
			text += and + spell(n%1000, and, join)
		} else {
			text += " " + spell(n%1000, and, join)
		}
	}
	return text
}

// Every number in words is the number in figures, with and without "and" and
// hyphens, and with any case.
func TestNumbersInWordsEqualFigures(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.OneOf(rapid.IntRange(1, 120), rapid.IntRange(1, 999_999)).Draw(t, "n")
		text := spell(n, rapid.SampledFrom([]string{" and ", " "}).Draw(t, "and"), rapid.SampledFrom([]string{"-", " "}).Draw(t, "join"))
		if rapid.Bool().Draw(t, "capital") {
			text = strings.ToUpper(text[:1]) + text[1:]
		}
		got, rest, ok := scan.Number(text + " grams")
		if !ok || rest != "grams" || !got.Equal(exact.Whole(int64(n))) {
			t.Fatalf("%q = %v, leaving %q, want %d", text, got, rest, n)
		}
	})
}

// A whole number with a part, in all the ways to write one, is the same number.
func TestPartsInAllSpellingsAreEqual(t *testing.T) {
	parts := []struct {
		value  exact.Number
		glyph  string
		slash  string
		spoken []string
	}{
		{exact.Ratio(1, 2), "½", "1/2", []string{"a half", "one half", "one-half", "half"}},
		{exact.Ratio(1, 4), "¼", "1/4", []string{"a quarter", "one quarter", "one-fourth"}},
		{exact.Ratio(3, 4), "¾", "3/4", []string{"three quarters", "three-quarters", "three fourths"}},
		{exact.Ratio(1, 3), "⅓", "1/3", []string{"a third", "one third", "one-third"}},
		{exact.Ratio(2, 3), "⅔", "2/3", []string{"two thirds", "two-thirds"}},
		{exact.Ratio(1, 8), "⅛", "1/8", []string{"an eighth", "one eighth"}},
		{exact.Ratio(3, 8), "⅜", "3/8", []string{"three eighths"}},
		{exact.Ratio(2, 5), "⅖", "2/5", []string{"two fifths"}},
	}
	for n := 1; n <= 12; n++ {
		for _, p := range parts {
			want := exact.Whole(int64(n)).Add(p.value)
			texts := []string{
				fmt.Sprintf("%d%s", n, p.glyph), fmt.Sprintf("%d %s", n, p.glyph), fmt.Sprintf("%d-%s", n, p.glyph),
				fmt.Sprintf("%d %s", n, p.slash), fmt.Sprintf("%d-%s", n, p.slash), fmt.Sprintf("%d & %s", n, p.slash),
				fmt.Sprintf("%d and %s", n, p.slash), fmt.Sprintf("%d and %s", n, p.glyph),
				fmt.Sprintf("%d %s", n, strings.Replace(p.slash, "/", "\u2044", 1)),
				fmt.Sprintf("%s and %s", ones[n], p.glyph),
			}
			for _, s := range p.spoken {
				if s != "half" {
					texts = append(texts, fmt.Sprintf("%d and %s", n, s), fmt.Sprintf("%s and %s", ones[n], s))
				}
			}
			for _, text := range texts {
				if got, rest, ok := scan.Number(text + " cups"); !ok || rest != "cups" || !got.Equal(want) {
					t.Errorf("%q = %v, leaving %q, want %v", text, got, rest, want)
				}
			}
		}
	}
	for _, p := range parts {
		for _, text := range append(p.spoken, p.glyph, p.slash) {
			if got, _, ok := scan.Number(text + " cup"); !ok || !got.Equal(p.value) {
				t.Errorf("%q = %v, want %v", text, got, p.value)
			}
		}
	}
}

// Numbers that only look like mixed ones stay apart.
func TestNumbersThatAreNotMixed(t *testing.T) {
	for text, want := range map[string]string{
		"1 3/2 cups":     "3/2 cups",       // an improper part
		"2 400 g tins":   "400 g tins",     // a count and a size
		"1 10/101 cups":  "10/101 cups",    // no kitchen's part
		"one two three":  "two three",      // counting
		"twenty twelve":  "twelve",         // a year
		"one and two":    "and two",        // two numbers
		"five and a bit": "and a bit",      // no part
		"two halves":     "halves",         // a whole in parts
		"one point":      "point",          // no decimals
		"three thirds x": "thirds x",       // no part
		"1½½ cup":        "½ cup",          // a slip
		"10 hundred":     "hundred",        // figures and words
		"ten-fold":       "-fold",          // a compound
		"one-pot stew":   "-pot stew",      // a compound
		"a hundredth":    "a hundredth",    // an ordinal
		"hundred":        "hundred",        // no count before it
		"a pair":         "a pair",         // not read
		"couple of":      "couple of",      // no article
		"half-and-half":  "-and-half",      // the cream
		"two-and-twenty": "-and-twenty",    // an old count
		"thousand":       "thousand",       // no count before it
		"a thousandfold": "a thousandfold", // no number
	} {
		if _, rest, _ := scan.Number(text); rest != want {
			t.Errorf("Number(%q) leaves %q, want %q", text, rest, want)
		}
	}
}
