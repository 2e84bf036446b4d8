package script_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/script"
)

// TestWordsFollowTheAnnex holds WordsOf against the worked example and the
// rules of Unicode Standard Annex #29, section 4 (from memory; no copy of the
// annex's test file is kept here).
func TestWordsFollowTheAnnex(t *testing.T) {
	tests := []struct {
		name, text string
		want       []string
	}{
		{"figure 1 of the annex", `The quick (“brown”) fox can’t jump 32.3 feet, right?`,
			[]string{"The", "quick", "brown", "fox", "can’t", "jump", "32.3", "feet", "right"}},
		{"nothing", "", nil},
		{"only signs", "… — ! ?", nil},
		{"WB5 letters", "flour  water\tsalt\nyeast", []string{"flour", "water", "salt", "yeast"}},
		{"WB6, WB7 apostrophe and full stop", "don't e.g. o'clock.", []string{"don't", "e.g", "o'clock"}},
		{"a sign at the end stays outside", "bakers' dough:", []string{"bakers", "dough"}},
		{"two signs part", "rock''n", []string{"rock", "n"}},
		{"WB9, WB10 letters and digits", "3rd 500g B12", []string{"3rd", "500g", "B12"}},
		{"WB11, WB12 digits", "1,234.5 and 10:30", []string{"1,234.5", "and", "10", "30"}},
		{"a comma parts letters", "salt,pepper", []string{"salt", "pepper"}},
		{"WB13 katakana", "パン・ケーキ", []string{"パン", "ケーキ"}},
		{"WB13a, WB13b connector", "step_two __", []string{"step_two"}},
		{"ideographs are a word each", "小麦粉 200 g", []string{"小", "麦", "粉", "200", "g"}},
		{"WB4 combining marks", "cre\u0300me bru\u0302le\u0301e", []string{"cre\u0300me", "bru\u0302le\u0301e"}},
		{"WB4 soft hyphen and joiner", "but\u00adter mar\u200dgin", []string{"but\u00adter", "mar\u200dgin"}},
		{"hyphens part", "well-known part-baked", []string{"well", "known", "part", "baked"}},
		{"fractions are spoken", "½ cup, 1½ tsp, 180 °C", []string{"½", "cup", "1½", "tsp", "180", "C"}},
		{"broken bytes part", "sal\xfft", []string{"sal", "t"}},
		{"a replacement sign parts", "sal\ufffdt", []string{"sal", "t"}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			if diff := cmp.Diff(test.want, script.WordsOf(test.text)); diff != "" {
				t.Errorf("WordsOf(%q) (-want +got):\n%s", test.text, diff)
			}
			if got := script.Words(test.text); got != len(test.want) {
				t.Errorf("Words(%q) = %d, want %d", test.text, got, len(test.want))
			}
		})
	}
}

// A space between two texts adds their words, whatever the texts are.
func TestWordsAddUpOverASpace(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := rapid.String().Draw(t, "a"), rapid.String().Draw(t, "b")
		if got, want := script.Words(a+" "+b), script.Words(a)+script.Words(b); got != want {
			t.Fatalf("Words(%q) = %d, want %d", a+" "+b, got, want)
		}
		for _, word := range script.WordsOf(a) {
			if word == "" || !strings.Contains(a, word) {
				t.Fatalf("WordsOf(%q) holds %q", a, word)
			}
		}
	})
}

func TestSecondsAtTheHostsPace(t *testing.T) {
	words := func(n int) string { return strings.Repeat("word ", n) }
	tests := []struct {
		name      string
		narration string
		pace      int
		want      int
	}{
		{"nothing to say", "", 150, 0},
		{"only a stage direction in signs", "(…)", 150, 0},
		// "scripted read 180 (3 words a second)": How to Estimate Script Length
		// for Audio Voiceover.
		{"three words a second", words(90), 180, 30},
		// "words = rate × minutes": the same.
		{"a minute of conversation", words(150), 150, 60},
		{"rounded up to the second", words(151), 150, 61},
		{"no pace is 150", words(150), 0, 60},
		{"nor is one below nothing", words(150), -10, 60},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			if got := script.Seconds(test.narration, test.pace); got != test.want {
				t.Errorf("Seconds(…, %d) = %d, want %d", test.pace, got, test.want)
			}
		})
	}
}
