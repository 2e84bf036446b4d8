package verify_test

import (
	"slices"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"

	"benchproof/kitchen/recipe"
	"benchproof/kitchen/verify"
)

func read(text string) recipe.Recipe { return recipe.Reader{Larder: checker.Larder}.Read(text) }

// spoken makes cues of four seconds, the first at from.
func spoken(from time.Duration, lines ...string) []verify.Cue {
	var cues []verify.Cue
	for i, line := range lines {
		start := from + time.Duration(i)*4*time.Second
		cues = append(cues, verify.Cue{Start: start, End: start + 4*time.Second, Text: line})
	}
	return cues
}

func keys(findings []verify.Finding) []string {
	var all []string
	for _, f := range findings {
		all = append(all, f.Key)
	}
	slices.Sort(all)
	return all
}

// A settlement is kept by the finding's key: the same words in a new cut, at
// another time, split and punctuated otherwise, have the same key; a slip said
// twice has two.
func TestKeysLastThroughAnotherImport(t *testing.T) {
	r := read(loaf)
	first := checker.Check(r, spoken(0, "Now four hundred grams of bread flour.", "Add two tablespoons of salt.", "Add two tablespoons of salt."))
	again := checker.Check(r, spoken(31*time.Second, "hello everybody", "now four hundred grams of", "bread flour add two tablespoons", "of salt add two tablespoons of salt"))
	if !slices.Equal(keys(first.Findings), keys(again.Findings)) {
		t.Errorf("keys\n%s\nthen\n%s", strings.Join(keys(first.Findings), "\n"), strings.Join(keys(again.Findings), "\n"))
	}
	all := keys(first.Findings)
	if len(slices.Compact(slices.Clone(all))) != len(all) {
		t.Errorf("a key stands twice: %q", all)
	}
}

func TestNotSaid(t *testing.T) {
	r := read("Rolls\n\n500 g bread flour\n10 g salt\na pinch of nutmeg\npepper, to taste\n50 g seeds (optional)\n\n1. Mix the flour and salt and knead for 10 minutes.\n2. Prove for 1 hour.\n3. Bake at 200 °C for 20 minutes.\n")
	report := checker.Check(r, spoken(0, "Mix five hundred grams of bread flour with the salt.", "Bake for twenty minutes."))
	var got []string
	for _, f := range report.Findings {
		if f.Kind != verify.NotSaid || f.Said != "" {
			t.Errorf("%+v", f)
		}
		got = append(got, f.Written)
	}
	if want := []string{"10 g", "10 minutes", "1 hour", "200 °C"}; !slices.Equal(got, want) {
		t.Errorf("not said: %q, want %q", got, want)
	}
	salt := report.Findings[0]
	if salt.Cue != 0 || !strings.Contains(salt.Words, "with the salt") || salt.Line != "10 g salt" || !strings.Contains(salt.Suggest, "10 g salt") {
		t.Errorf("the salt comes up in the first cue: %+v", salt)
	}
}

// The Cut sheet marks the amounts in the words, so their places must be right.
func TestAmountsStandWhereTheyAreSaid(t *testing.T) {
	cues := spoken(0, "First 500 g of bread flour,", "and three hundred", "mil of water.", "In 1987 I had two cats.")
	report := checker.Check(read(loaf), cues)
	var got []string
	for _, a := range report.Amounts {
		got = append(got, cues[a.Cue].Text[a.From:a.To]+" = "+a.Line)
		if a.Finding != -1 {
			t.Errorf("%s is found wrong", a.Said)
		}
	}
	if want := []string{"500 g = 500 g bread flour", "three hundred = 300 ml water"}; !slices.Equal(got, want) {
		t.Errorf("amounts %q, want %q", got, want)
	}
	if got := report.Amounts[1].Said; got != "three hundred mil" {
		t.Errorf("said %q over the cue's end", got)
	}
	wrong := checker.Check(read(loaf), spoken(0, "four hundred grams of bread flour"))
	if a := wrong.Amounts[0]; a.Finding < 0 || wrong.Findings[a.Finding].Said != a.Said {
		t.Errorf("the amount %+v does not lead to its finding", a)
	}
}

func TestNothingToCheck(t *testing.T) {
	if report := checker.Check(read(loaf), nil); len(report.Findings) != 0 || len(report.Amounts) != 0 {
		t.Errorf("a cut without words gives %+v", report)
	}
	if report := checker.Check(recipe.Recipe{}, spoken(0, "two hundred grams of sugar at 180 degrees for ten minutes")); len(report.Amounts) > 1 {
		t.Errorf("a recipe without lines gives %+v", report)
	}
	var zero verify.Checker
	report := zero.Check(recipe.Reader{}.Read(loaf), spoken(0, "four hundred grams of bread flour"))
	if len(report.Findings) == 0 || report.Findings[0].Said != "four hundred grams" {
		t.Errorf("without a larder the recipe's own names serve: %+v", report.Findings)
	}
}

func TestSuggestIsASentence(t *testing.T) {
	report := checker.Check(read(loaf), spoken(83*time.Second, "two tablespoons of salt"))
	want := "Correction at 1:23: I say “two tablespoons”; the right measure is 2 tsp fine salt. The number is right; the unit is not."
	if got := report.Findings[0].Suggest; got != want {
		t.Errorf("Suggest = %q, want %q", got, want)
	}
	if got := verify.Clock(83_450 * time.Millisecond); got != "00:01:23.450" {
		t.Errorf("Clock = %q", got)
	}
}

// Whatever is said, every finding and amount stands inside the cut.
func TestCheckNeverFails(t *testing.T) {
	r := read(loaf)
	words := strings.Fields("two hundred and a half grams cup of flour sugar the rest another third one eighty fan degrees oven bake for minutes to an hour or so point , . ½ 200g 10-12 [ ] $ gas mark °C yolks water cloves tin sorry dozen between more \n" +
		"no without with otherwise old new money celsius america electric conventional that's half of each by x same whole stick side on per kilo deka fortnight hundred thirty − minus no, hang say did i tin holds litre basin in middle thigh probe reads leave it for rests she says nan's got too peeled juice them one two, three")
	rapid.Check(t, func(t *rapid.T) {
		var cues []verify.Cue
		for i, n := range rapid.SliceOfN(rapid.IntRange(0, 14), 1, 6).Draw(t, "cues") {
			text := strings.Join(rapid.SliceOfN(rapid.SampledFrom(words), n, n).Draw(t, "words"), " ")
			cues = append(cues, verify.Cue{Start: time.Duration(i) * time.Second, End: time.Duration(i+1) * time.Second, Text: text})
		}
		report := checker.Check(r, cues)
		for _, f := range report.Findings {
			if f.Cue >= len(cues) || f.Key == "" || f.Kind != verify.NotSaid && (f.Said == "" || f.Cue < 0 || f.At != cues[f.Cue].Start) {
				t.Fatalf("finding %+v", f)
			}
		}
		for _, a := range report.Amounts {
			if a.From < 0 || a.From >= a.To || a.To > len(cues[a.Cue].Text) || a.Finding >= len(report.Findings) {
				t.Fatalf("amount %+v in %q", a, cues[a.Cue].Text)
			}
		}
	})
}
