package release_test

import (
	"fmt"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/release"
)

// plain writes no-break spaces as blanks, to read the wants by.
func plain(text string) string { return strings.ReplaceAll(text, "\u00a0", " ") }

func TestDescribeInBlocks(t *testing.T) {
	// 500 g of bread flour at 137 g a cup are 3.65 cups, 42 g of honey at 339 g a
	// cup 2.0 tbsp (SR26 20083, 19296).
	const want = `Sixteen knots, one tray, no hurry.

The recipe, to scale and to print: https://ferrystop.example/s/7Q2mXo4bTz

INGREDIENTS (makes 16 knots)
Dough:
500 g (3⅔ cups) bread flour
2 large eggs
a lump of ‹good› butter

Honey butter:
42 g (2 tbsp) honey
salt, to taste

CHAPTERS
0:00 The pier
1:05 Dough
1:02:05 Supper

EQUIPMENT
a mixer
two trays

CREDITS
Inspired by the buns on the Candle Point pier: https://candlepoint.example
Adapted from the harbour bakery’s tray buns
Edited by nobody in particular

DISCLOSURE
Nobody paid for this video.
The trays were lent.

ALLERGENS
Contains wheat, milk and eggs.
Some makers’ versions hold soya: read the packs.
Not checked, so read the packs: a lump of good butter.

TAKE CARE
Flour is a raw food.

CORRECTIONS
4:12 I say “200 degrees”. Right is: 190 °C, 170 °C fan.

Cards: https://ferrystop.example
Letters: letters@ferrystop.example`
	got := release.Describe(full())
	if diff := cmp.Diff(want, plain(got.Text)); diff != "" {
		t.Errorf("Describe (-want +got):\n%s", diff)
	}
	if got.Characters != utf8.RuneCountInString(got.Text) || got.Bytes != len(got.Text) || got.Bytes <= got.Characters {
		t.Errorf("%d characters, %d bytes", got.Characters, got.Bytes)
	}
	if got.Limit != 5000 || got.Over() != 0 || got.Advice != nil {
		t.Errorf("limit %d, over %d, advice %q", got.Limit, got.Over(), got.Advice)
	}
}

func TestDescribeLeavesOutEmptyBlocks(t *testing.T) {
	tests := []struct {
		name string
		in   release.Input
		want string
	}{
		{"nothing", release.Input{}, ""},
		{"opening", release.Input{Release: episode.Release{Opening: "\n Hello \r\n\n there\x00 "}}, "Hello\nthere"},
		{"one unnamed component", release.Input{Recipe: recipe.Recipe{Components: []recipe.Component{{Lines: []recipe.Line{line("", "eggs", "2", measure.Each)}}, {Name: "Empty"}}}},
			"INGREDIENTS\n2 eggs"},
		{"the same line twice", release.Input{Recipe: recipe.Recipe{Components: []recipe.Component{{Lines: []recipe.Line{line("", "eggs", "2", measure.Each), line("", "eggs", "2", measure.Each)}}}}},
			"INGREDIENTS\n2 eggs\n2 eggs"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			got := release.Describe(test.in)
			if plain(got.Text) != test.want {
				t.Errorf("Describe = %q, want %q", got.Text, test.want)
			}
			if got.Limit != release.DefaultLimit {
				t.Errorf("limit %d, want %d", got.Limit, release.DefaultLimit)
			}
		})
	}
}

func TestDescribeInAnAmericanHouse(t *testing.T) {
	in := full()
	in.Show.System = measure.US
	if got := plain(release.Describe(in).Text); !strings.Contains(got, "\n3⅔ cups (500 g) bread flour\n") {
		t.Errorf("the house's measure does not go first:\n%s", got)
	}
}

func TestDescribeSaysWhatToCut(t *testing.T) {
	base := release.Describe(full()).Characters
	advise := func(change func(*release.Input)) []string {
		in := full()
		change(&in)
		return release.Describe(in).Advice
	}
	tests := []struct {
		name   string
		change func(*release.Input)
		want   []string
	}{
		{"inside", func(in *release.Input) { in.Show.DescriptionLimit = base }, nil},
		{"one over", func(in *release.Input) { in.Show.DescriptionLimit = base - 1 }, []string{"Leave out the equipment: saves 29 characters."}},
		{"more than the equipment", func(in *release.Input) { in.Show.DescriptionLimit = base - 30 },
			[]string{"Leave out the equipment: saves 29 characters.", "Leave out the standing links: saves 69 characters."}},
		{"the other measure", func(in *release.Input) {
			in.Show.DescriptionLimit, in.Release.Equipment, in.Recipe.Equipment, in.Show.Links = base-29-69-1, "", nil, ""
		},
			[]string{"Give the amounts in one measure only: saves 19 characters."}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			if diff := cmp.Diff(test.want, advise(test.change)); diff != "" {
				t.Errorf("advice (-want +got):\n%s", diff)
			}
		})
	}
	hopeless := advise(func(in *release.Input) { in.Show.DescriptionLimit, in.PageURL = 10, "" })
	if n := len(hopeless); n < 2 || !strings.HasPrefix(hopeless[n-2], "Shorten what remains by ") || !strings.HasPrefix(hopeless[n-1], "Or make a share link") {
		t.Errorf("advice for ten characters: %q", hopeless)
	}
	for _, sentence := range hopeless {
		for _, owed := range []string{"disclosure", "allergen", "caution", "correction"} {
			if strings.Contains(strings.ToLower(sentence), owed) {
				t.Errorf("%q cuts what is owed", sentence)
			}
		}
	}
}

// TestDescribeLaws: no angle bracket is left, counts are right, advice comes
// exactly when the text is too long, and what is owed is always there.
func TestDescribeLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := full()
		words := rapid.StringN(0, 200, -1)
		in.Release.Opening, in.Release.Credits, in.Show.Links = words.Draw(t, "opening"), words.Draw(t, "credits"), words.Draw(t, "links")
		in.Recipe.Components[0].Name = words.Draw(t, "component")
		in.Show.DescriptionLimit = rapid.IntRange(1, 3000).Draw(t, "limit")
		got := release.Describe(in)
		if strings.ContainsAny(got.Text, "<>\x00\r") {
			t.Fatalf("the text holds what platforms refuse: %q", got.Text)
		}
		if got.Characters != utf8.RuneCountInString(got.Text) || got.Bytes != len(got.Text) {
			t.Fatalf("%d characters and %d bytes counted", got.Characters, got.Bytes)
		}
		if (got.Over() > 0) != (len(got.Advice) > 0) || got.Over() != max(0, got.Characters-in.Show.DescriptionLimit) {
			t.Fatalf("over by %d with advice %q", got.Over(), got.Advice)
		}
		for _, owed := range []string{"Nobody paid for this video.", "Contains wheat, milk and eggs.", "4:12 I say “200 degrees”.", in.PageURL} {
			if !strings.Contains(got.Text, owed) {
				t.Fatalf("the text lacks %q", owed)
			}
		}
	})
}

// BenchmarkDescribe bounds what drawing the release sheet costs.
func BenchmarkDescribe(b *testing.B) {
	for _, lines := range []int{12, 60} {
		b.Run(fmt.Sprintf("lines=%d", lines), func(b *testing.B) {
			in := full()
			in.Recipe.Components[0].Lines = nil
			for range lines {
				in.Recipe.Components[0].Lines = append(in.Recipe.Components[0].Lines, line("bread-flour", "bread flour", "500", measure.Gram))
			}
			b.ReportAllocs()
			for b.Loop() {
				if release.Describe(in).Characters == 0 {
					b.Fatal("nothing written")
				}
			}
		})
	}
}
