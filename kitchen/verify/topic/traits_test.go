package topic_test

import (
	"slices"
	"testing"

	"benchproof/kitchen/recipe"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/topic"
	"benchproof/kitchen/verify/written"
)

// reader reads a talk beside a recipe with flour; written tells what the recipe has.
func reader(talk string, isWritten func(speech.Said) bool) *topic.Reader {
	book := written.Read(recipe.Reader{}.Read("Bread\n\n500 g strong flour\n\n1. Knead the dough for ten minutes.\n"), nil)
	text := speech.Cut([]speech.Cue{{Text: talk}})
	return topic.NewReader(text, book, book.Mentions(text), speech.Find(text), isWritten)
}

func never(speech.Said) bool { return false }

func TestTraits(t *testing.T) {
	for _, row := range []struct {
		name, talk string
		number     int
		want       []string
		not        []string
	}{
		{"words on both sides", "my aunt used two kilos every week", 0,
			[]string{"kind:measure", "own:#", "own:kilo", "before 1:used", "near:my", "pair:my aunt", "behind 1:every", "measure:used"},
			[]string{"before 1:two", "own:two"}},
		{"a food of the recipe and its other words", "knead five hundred grams of strong flour", 0,
			[]string{"before 1:<recipe>", "behind:<food>"}, []string{"behind:flour"}},
		{"a number in words is one word", "then two hundred and fifty grams of sugar", 0,
			[]string{"own:#", "before 1:then"}, []string{"own:and", "own:hundred"}},
		{"as in figures", "then 250 grams of sugar", 0, []string{"own:#", "before 1:then"}, nil},
		{"another number before it", "ten minutes and then twenty minutes", 1, []string{"last 1 0 true false", "next 1 none"}, nil},
		{"a sentence ends before it", "It rests. Ten minutes.", 0, []string{"stop 1"}, nil},
	} {
		got := reader(row.talk, never).Of(row.number)
		for _, trait := range row.want {
			if !slices.Contains(got, trait) {
				t.Errorf("%s: %q has no trait %q: %q", row.name, row.talk, trait, got)
			}
		}
		for _, trait := range row.not {
			if slices.Contains(got, trait) {
				t.Errorf("%s: %q has the trait %q", row.name, row.talk, trait)
			}
		}
	}
}

func TestTraitsTellWhatIsWritten(t *testing.T) {
	isTen := func(s speech.Said) bool { v, _ := s.Amount.From.Int(); return v == 10 }
	if got := reader("ten minutes and then twenty minutes", isTen).Of(1); !slices.Contains(got, "last 1 0 true true") {
		t.Errorf("the ten minutes before are written, and no trait says so: %q", got)
	}
}

// Words in figures have the traits that words have.
func TestTraitsAreTheSameInFigures(t *testing.T) {
	a := reader("you want three hundred and fifty grams of it in the bowl", never).Of(0)
	b := reader("you want 350 grams of it in the bowl", never).Of(0)
	if !slices.Equal(a, b) {
		t.Errorf("in words %q\nin figures %q", a, b)
	}
}

func TestKnown(t *testing.T) {
	for _, row := range []struct {
		talk string
		want float64 // the share of 24 words before and 12 behind
	}{
		{"ten minutes", 0},
		{"for ten minutes", 1.0 / 36},
		{"leave it for ten minutes in the bowl", 6.0 / 36},
		{"a b c d e f g h i j k l m n o p q r s t u v w x y ten minutes a b c d e f g h i j k l m", 1},
	} {
		if got := reader(row.talk, never).Known(0); got != row.want {
			t.Errorf("%q: %v known, want %v", row.talk, got, row.want)
		}
	}
}
