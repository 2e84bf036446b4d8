package typeset_test

import (
	"fmt"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/release/typeset"
)

// setter measures every character as one size wide.
func setter(t testing.TB) *typeset.Setter {
	return &typeset.Setter{Fonts: shipped(t), Width: func(text string, _ typeset.Face, size float64) float64 {
		return float64(utf8.RuneCountInString(text)) * size
	}}
}

// text joins a line's runs, a wide gap as "___".
func text(l typeset.Line) string {
	var b strings.Builder
	end := 0.0
	for _, r := range l.Runs {
		if r.X > end+.5 {
			b.WriteString("___")
		}
		b.WriteString(r.Text)
		end = r.X + float64(utf8.RuneCountInString(r.Text))*r.Size
	}
	return strings.ReplaceAll(b.String(), "\u00a0", "~")
}

func run(words string) typeset.Run { return typeset.Run{Text: words, Face: serif, Size: 1} }

func TestLinesBreakAtBlanks(t *testing.T) {
	tests := []struct {
		name  string
		runs  []typeset.Run
		limit float64
		want  []string
	}{
		{"nothing", nil, 10, nil},
		{"blanks only", []typeset.Run{run(" \n\t")}, 10, nil},
		{"fits exactly", []typeset.Run{run("flour salt")}, 10, []string{"flour salt"}},
		{"one too wide", []typeset.Run{run("flour salts")}, 10, []string{"flour", "salts"}},
		{"blanks count once", []typeset.Run{run("  flour \n  salt  ")}, 20, []string{"flour salt"}},
		{"a no-break space holds", []typeset.Run{run("about 180\u00a0°C")}, 10, []string{"about", "180~°C"}},
		{"a figure keeps its unit", []typeset.Run{run("pieces of 58 g")}, 12, []string{"pieces of", "58~g"}},
		{"so does a fraction", []typeset.Run{run("add 1½ cups")}, 8, []string{"add", "1½~cups"}},
		{"so does a gas mark", []typeset.Run{run("170 °C fan, gas 5")}, 16, []string{"170~°C fan,", "gas~5"}},
		{"a figure before another word breaks", []typeset.Run{run("take 58 grapes")}, 8, []string{"take 58", "grapes"}},
		{"dimensions hold together", []typeset.Run{run("a tray 30 × 40 cm")}, 12, []string{"a tray 30~×", "40~cm"}},
		{"a word wider than the line", []typeset.Run{run("a Donaudampfschiff b")}, 8, []string{"a", "Donaudam", "pfschiff", "b"}},
		{"runs without a blank are one word", []typeset.Run{run("salt"), {Text: "ed", Face: sans, Size: 1}, run(" x")}, 6, []string{"salted", "x"}},
		{"a run apart", []typeset.Run{run("flour"), {Text: "2 cups", Face: sans, Size: 1, Apart: true}}, 20, []string{"flour___2~cups"}},
		{"a run apart on a new line", []typeset.Run{run("flour"), {Text: "2 cups", Face: sans, Size: 1, Apart: true}}, 12, []string{"flour", "2~cups"}},
		{"a run apart before all others", []typeset.Run{{Text: "flour", Face: sans, Size: 1, Apart: true}}, 12, []string{"flour"}},
		{"a narrow line", []typeset.Run{run("ab c")}, .5, []string{"a", "b", "c"}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			var got []string
			for _, line := range setter(t).Lines(test.runs, test.limit) {
				got = append(got, text(line))
			}
			if diff := cmp.Diff(test.want, got); diff != "" {
				t.Errorf("Lines (-want +got):\n%s", diff)
			}
		})
	}
}

// TestLinesFindAFace: what a face lacks comes from a fallback, else as its base
// letter, else as "?"; controls and joiners vanish.
func TestLinesFindAFace(t *testing.T) {
	lines := setter(t).Lines([]typeset.Run{{Text: "x⅕ở🍜お\x00\u200dy", Face: serif, Size: 1, Link: "https://kitchen.example"}}, 100)
	if len(lines) != 1 {
		t.Fatalf("%d lines", len(lines))
	}
	var got []string
	for _, r := range lines[0].Runs {
		got = append(got, fmt.Sprintf("%s %s at %g", r.Face, r.Text, r.X))
		if r.Link == "" {
			t.Errorf("%q lost its link", r.Text)
		}
	}
	if diff := cmp.Diff([]string{"serif x at 0", "sans ⅕ at 1", "serif o??y at 2"}, got); diff != "" {
		t.Errorf("runs (-want +got):\n%s", diff)
	}
}

// TestLinesLaws: no line is wider than the limit unless it is one character, the
// letters come out in order, and each run stands where the one before ends.
func TestLinesLaws(t *testing.T) {
	set := setter(t)
	rapid.Check(t, func(t *rapid.T) {
		var runs []typeset.Run
		var in strings.Builder
		for range rapid.IntRange(0, 5).Draw(t, "runs") {
			words := rapid.StringMatching(`[a-zé½0-9 \x{a0}]{0,60}`).Draw(t, "words")
			in.WriteString(words)
			runs = append(runs, typeset.Run{
				Text: words, Size: 1, Apart: rapid.Bool().Draw(t, "apart"),
				Face: rapid.SampledFrom([]typeset.Face{serif, sans}).Draw(t, "face"),
			})
		}
		limit := float64(rapid.IntRange(1, 80).Draw(t, "limit"))
		var out strings.Builder
		for _, line := range set.Lines(runs, limit) {
			written := strings.TrimRight(text(line), " ")
			if line.Width > limit+1 || float64(utf8.RuneCountInString(strings.ReplaceAll(written, "___", ""))) > limit {
				t.Fatalf("line %q is %g wide, limit %g", written, line.Width, limit)
			}
			for i, r := range line.Runs[1:] {
				before := line.Runs[i]
				if r.X+.001 < before.X+float64(utf8.RuneCountInString(before.Text)) {
					t.Fatalf("run %q at %g overlaps %q at %g", r.Text, r.X, before.Text, before.X)
				}
			}
			out.WriteString(written)
		}
		if want, got := letters(in.String()), letters(out.String()); got != want {
			t.Fatalf("letters %q, want %q", got, want)
		}
	})
}

// letters drops blanks of every kind and the mark of a gap.
func letters(s string) string {
	return strings.Join(strings.FieldsFunc(s, func(r rune) bool { return r == ' ' || r == '\u00a0' || r == '~' || r == '_' }), "")
}
