package lexicon_test

import (
	"testing"

	"benchproof/kitchen/recipe/lexicon"
)

func TestSet(t *testing.T) {
	s := lexicon.Of("flour\n\tsugar  salt")
	if len(s) != 3 || !s["sugar"] || s[""] {
		t.Errorf("the set is %v", s)
	}
}

func TestWords(t *testing.T) {
	for _, tt := range []struct{ text, first, last string }{{"rye flour", "rye", "flour"}, {"salt", "salt", "salt"}, {"", "", ""}, {"a b c", "a", "c"}} {
		if f, l := lexicon.FirstWord(tt.text), lexicon.LastWord(tt.text); f != tt.first || l != tt.last {
			t.Errorf("%q begins with %q and ends with %q", tt.text, f, l)
		}
	}
	if lexicon.First("½ cup") != '½' || lexicon.First("") != 0 {
		t.Error("the first character is wrong")
	}
}

func TestLowerKeepsPlaces(t *testing.T) {
	for text, want := range map[string]string{"Plain FLOUR": "plain flour", "Crème FRAÎCHE": "crème fraîche", "½ CUP": "½ cup", "": "",
		"İ OR \u212a": "İ or \u212a"} { // a dotted capital I and the sign for kelvin have longer or shorter small forms
		got := lexicon.Lower(text)
		if got != want || len(got) != len(text) {
			t.Errorf("Lower(%q) = %q, want %q", text, got, want)
		}
	}
}

// Vulgar fractions: Unicode, Latin-1 U+00BC–U+00BE and Number Forms
// U+2150–U+215F, U+2189.
func TestIsNumeral(t *testing.T) {
	for _, c := range "0123456789¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞⅟↉" {
		if !lexicon.IsNumeral(c) {
			t.Errorf("%c is no numeral", c)
		}
	}
	for _, c := range "aZ%/.,-–x×Ⅷ" {
		if lexicon.IsNumeral(c) {
			t.Errorf("%c is a numeral", c)
		}
	}
}
