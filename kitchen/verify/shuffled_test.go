package verify_test

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"benchproof/kitchen/verify"
)

// Whatever is said against whatever is written gives a report: a stretch of one cut, in its
// order or not, against the recipe of another, with foods known and without.
func TestAnyTalkAgainstAnyRecipe(t *testing.T) {
	cuts := readCuts(t)
	rapid.Check(t, func(t *rapid.T) {
		recipe, talk := rapid.SampledFrom(cuts).Draw(t, "recipe").recipe, rapid.SampledFrom(cuts).Draw(t, "talk")
		var words []string
		for _, cue := range talk.cues {
			words = append(words, strings.Fields(cue.Text)...)
		}
		from := rapid.IntRange(0, len(words)-1).Draw(t, "from")
		words = words[from:min(len(words), from+rapid.IntRange(1, 300).Draw(t, "length"))]
		if rapid.Bool().Draw(t, "shuffled") {
			words = rapid.Permutation(words).Draw(t, "words")
		}
		var cues []verify.Cue
		for from := 0; from < len(words); from += 7 {
			cues = append(cues, verify.Cue{Text: strings.Join(words[from:min(from+7, len(words))], " ")})
		}
		for _, c := range []verify.Checker{checker, {}} {
			report := c.Check(recipe, cues)
			for _, a := range report.Amounts {
				if a.Finding >= len(report.Findings) || a.From < 0 || a.From > a.To || a.To > len(cues[a.Cue].Text) {
					t.Fatalf("amount %+v of %d findings", a, len(report.Findings))
				}
			}
		}
	})
}
