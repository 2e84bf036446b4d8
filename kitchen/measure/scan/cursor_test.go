package scan_test

import (
	"testing"

	"benchproof/kitchen/measure/exact"
	"benchproof/kitchen/measure/scan"
)

func TestSpaceSkipsEveryKindButLineEnds(t *testing.T) {
	for text, want := range map[string]string{
		"  x": "x", "\u00a0\u2009\u202f\u3000x": "x", "\tx": "x", "\u200bx": "x", "\ufeffx": "x",
		"\nx": "\nx", " \nx": "\nx", "\rx": "\rx", "x": "x", "": "", " ": "", "\u00ad x": "\u00ad x",
	} {
		c := scan.Cursor{Text: text}
		skipped := c.Space()
		if c.Rest() != want || skipped != (len(want) < len(text)) {
			t.Errorf("Space in %q leaves %q, %v, want %q", text, c.Rest(), skipped, want)
		}
	}
}

func TestWordIsARunOfLetters(t *testing.T) {
	for text, want := range map[string]string{
		"cups of": "cups", "fl. oz": "fl", "gō rice": "gō", "crème-fraîche": "crème", "1 cup": "", "": "", "'tis": "", "合": "合", "e\u0301gg": "e\u0301gg", "½": "", "\xff": "",
	} {
		if got := (scan.Cursor{Text: text}).Word(); got != want {
			t.Errorf("Word of %q = %q, want %q", text, got, want)
		}
	}
}

func TestAcceptWordTakesWholeWordsInAnyCase(t *testing.T) {
	for _, test := range []struct {
		text, word string
		ok         bool
	}{
		{"of flour", "of", true}, {"OF flour", "of", true}, {"offal", "of", false}, {"o", "of", false}, {"of", "of", true}, {"of-fice", "of", true},
	} {
		c := scan.Cursor{Text: test.text}
		if ok := c.AcceptWord(test.word); ok != test.ok || ok == (c.At == 0) {
			t.Errorf("AcceptWord(%q) in %q = %v at %d", test.word, test.text, ok, c.At)
		}
	}
}

func TestAcceptPhraseAndGap(t *testing.T) {
	for text, want := range map[string]string{
		"up to 2": " 2", "Up  to 2": " 2", "up-to 2": " 2", "up\u00a0to": "", "up 2": "up 2", "upto": "upto", "up": "up", "up to-date": "-date",
	} {
		c := scan.Cursor{Text: text}
		if c.AcceptPhrase("up to"); c.Rest() != want {
			t.Errorf("AcceptPhrase(up to) in %q leaves %q, want %q", text, c.Rest(), want)
		}
	}
	for text, want := range map[string]string{" x": "x", "-x": "x", "\u2011x": "x", "x": "x", " ": " ", "-": "-", "": "", "–x": "–x"} {
		c := scan.Cursor{Text: text}
		if c.Gap(); c.Rest() != want {
			t.Errorf("Gap in %q leaves %q, want %q", text, c.Rest(), want)
		}
	}
	c := scan.Cursor{Text: "between 2"}
	if !c.AcceptThenGap("between") || c.Rest() != "2" {
		t.Errorf("AcceptThenGap leaves %q", c.Rest())
	}
	if c = (scan.Cursor{Text: "between"}); c.AcceptThenGap("between") || c.At != 0 {
		t.Errorf("AcceptThenGap without a gap moves to %d", c.At)
	}
}

// Token never stands still but at the end, and never passes it.
func TestTokensCoverTheText(t *testing.T) {
	for text, want := range map[string]int{
		"flour, 200.5 g": 6, "1,250kg": 2, "½ é\n": 4, "\xff\xfe": 2, "": 0, "a1b2": 4, "3.": 2,
	} {
		c, n := scan.Cursor{Text: text}, 0
		for ; !c.Done(); n++ {
			if n > len(text) {
				t.Fatalf("%q: no end", text)
			}
			c.At += c.Token()
		}
		if c.At != len(text) || n != want {
			t.Errorf("%q has %d tokens up to %d, want %d", text, n, c.At, want)
		}
	}
}

func TestRangeSign(t *testing.T) {
	for _, test := range []struct {
		text    string
		between bool
		dash    bool
		rest    string // "" if there is no sign
	}{
		{"–3", false, true, "3"}, {" – 3", false, true, "3"}, {"-3", false, true, "3"}, {"\u20123", false, true, "3"}, {"−3", false, true, "3"},
		{" to 3", false, false, "3"}, {" or 3", false, false, "3"}, {" TO 3", false, false, "3"}, {" to about 3", false, false, "3"},
		{" and 3", true, false, "3"}, {" and 3", false, false, ""}, {"to 3", false, false, ""}, {" to", false, false, ""}, {" / 3", false, false, ""}, {"", false, false, ""},
	} {
		c := scan.Cursor{Text: test.text}
		dash, ok := c.RangeSign(test.between)
		if ok != (test.rest != "") || dash != test.dash || ok && c.Rest() != test.rest {
			t.Errorf("RangeSign in %q = %v, %v, leaving %q", test.text, dash, ok, c.Rest())
		}
	}
}

// What a unit's reader must know of a number: how its comma was taken, where
// its part begins, that it was words.
func TestQuantityTellsHowItWasWritten(t *testing.T) {
	for _, test := range []struct {
		text          string
		number        string
		grouped       int64
		partAt        int
		couple, words bool
	}{
		{"1,250 kg", "1250", 250, 0, false, false},
		{"1,250,000", "1250000", 0, 0, false, false},
		{"1,25 kg", "5/4", 0, 0, false, false},
		{"2 1/4 oz", "9/4", 0, 2, false, false},
		{"2-1/4 oz", "9/4", 0, 0, false, false},
		{"2¼ oz", "9/4", 0, 0, false, false},
		{"two and a quarter", "9/4", 0, 0, false, true},
		{"a couple of", "2", 0, 0, true, true},
		{"a dozen", "12", 0, 0, false, true},
		{"2 dozen", "24", 0, 0, false, false},
	} {
		c := scan.Cursor{Text: test.text}
		q, ok := c.Quantity()
		if !ok || !q.Number().Equal(exact.MustNumber(test.number)) || q.Grouped != test.grouped || q.PartAt != test.partAt || q.Couple != test.couple || q.Words != test.words {
			t.Errorf("Quantity of %q = %+v, %v", test.text, q, ok)
		}
	}
}

func TestLastWord(t *testing.T) {
	for text, want := range map[string]string{"Bake at": "at", "oven": "oven", "at 5": "", "": "", "Fan, BY": "by", "é": ""} {
		if got := scan.LastWord(text); got != want {
			t.Errorf("LastWord(%q) = %q, want %q", text, got, want)
		}
	}
}

// FuzzNumber holds the reader's laws on any text.
func FuzzNumber(f *testing.F) {
	for _, text := range []string{"1½ cups", "1,000.5", "two hundred and fifty", "a couple of", "½ a", "1 1/2", "¹⁄₂", "⅟16", "one point two five", "1\u202f000"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		n, rest, ok := scan.Number(text)
		if len(rest) > len(text) || text[len(text)-len(rest):] != rest {
			t.Fatalf("%q leaves %q, which does not end it", text, rest)
		}
		if ok == (rest == text) || n.Sign() < 0 || !ok && !n.IsZero() {
			t.Fatalf("%q = %v, %v, leaving %q", text, n, ok, rest)
		}
	})
}
