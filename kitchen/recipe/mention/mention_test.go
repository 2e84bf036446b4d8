package mention_test

import (
	"fmt"
	"strings"
	"testing"

	"benchproof/kitchen/recipe/mention"
)

func TestIn(t *testing.T) {
	names := []string{"strong white flour", "wholemeal flour", "unsalted butter", "peanut butter", "eggs", "egg yolks", "caster sugar", "garlic", "lamb neck",
		"spring onions", "tomatoes", "cherries in juice", "shin of beef"}
	x := mention.New(names)
	for _, tt := range []struct{ name, text, want string }{
		{"the noun", "Beat in the sugar.", "caster sugar: the sugar"},
		{"one of two by its adjective", "Add the wholemeal flour.", "wholemeal flour: the wholemeal flour"},
		{"all of two by the plural", "Sift the flours together.", "strong white flour+wholemeal flour: the flours"},
		{"the plain one of two", "Add the flour.", "strong white flour: the flour"},
		{"a compound is another food", "Stir in the peanut butter, then the butter.", "peanut butter: the peanut butter; unsalted butter: the butter"},
		{"a yolk is no egg", "Whisk the egg yolks.", "egg yolks: the egg yolks"},
		{"an egg is no yolk", "Crack in 2 eggs.", "eggs: 2 eggs"},
		{"by another word of its own", "Brown the lamb.", "lamb neck: the lamb"},
		{"singular and plural", "Chop a tomato and an onion.", "tomatoes: a tomato; spring onions: an onion"},
		{"what belongs to it", "Add half the remaining sugar and 2 cloves of the garlic.", "caster sugar: half the remaining sugar; garlic: 2 cloves of the garlic"},
		{"an order is no description", "Warm the butter.", "unsalted butter: the butter"},
		{"once each", "Add sugar. More sugar. Stir the sugar.", "caster sugar: sugar"},
		{"not by its small words", "Put it in the tin.", ""},
		{"nothing", "Serve at once.", ""},
		{"no text", "", ""},
	} {
		t.Run(tt.name, func(t *testing.T) {
			var got []string
			for _, f := range x.In(mention.Cut(tt.text), nil) {
				var meant []string
				for _, n := range f.Names {
					meant = append(meant, names[n])
				}
				if tt.text[f.At:f.At+len(f.Words)] != f.Words {
					t.Errorf("%q does not stand at %d", f.Words, f.At)
				}
				got = append(got, fmt.Sprintf("%s: %s", strings.Join(meant, "+"), f.Words))
			}
			if text := strings.Join(got, "; "); text != tt.want {
				t.Errorf("found %q, want %q", text, tt.want)
			}
		})
	}
}

func TestPrefer(t *testing.T) {
	x := mention.New([]string{"plain flour", "bread flour"})
	got := x.In(mention.Cut("Mix in the flour."), func(n int) bool { return n == 1 })
	if len(got) != 1 || len(got[0].Names) != 1 || got[0].Names[0] != 1 {
		t.Errorf("found %+v, want the preferred one", got)
	}
}

func TestPreferAnotherWord(t *testing.T) {
	x := mention.New([]string{"cinnamon stick", "ground cinnamon"})
	for home, want := range []int{0, 1} {
		got := x.In(mention.Cut("Add the cinnamon."), func(n int) bool { return n == home })
		if len(got) != 1 || got[0].Names[0] != want {
			t.Errorf("with %d at hand found %+v", home, got)
		}
	}
}

func FuzzIn(f *testing.F) {
	f.Add("strong white flour", "Add half the flour and 2.5 of it.")
	f.Fuzz(func(t *testing.T, name, text string) {
		for _, found := range mention.New([]string{name, "flour", ""}).In(mention.Cut(text), nil) {
			if text[found.At:found.At+len(found.Words)] != found.Words || len(found.Names) == 0 {
				t.Errorf("found %+v in %q", found, text)
			}
		}
	})
}
