package food_test

import (
	"slices"
	"strings"
	"testing"
	"unicode"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

func TestFoodsAreSortedByName(t *testing.T) {
	l := food.NewLarder([]food.Food{{ID: "b", Name: "beta"}, {ID: "c", Name: "Gamma"}, {ID: "a2", Name: "Alpha"}, {ID: "a1", Name: "alpha"}})
	var ids []string
	for _, f := range l.Foods() {
		ids = append(ids, f.ID)
	}
	if d := cmp.Diff([]string{"a1", "a2", "b", "c"}, ids); d != "" {
		t.Errorf("ids (-want +got):\n%s", d)
	}
	l.Foods()[0] = nil
	if l.Foods()[0] == nil {
		t.Error("the larder's own slice was handed out")
	}
}

func TestFoodByID(t *testing.T) {
	l := food.NewLarder([]food.Food{{ID: "x", Name: "old"}, {ID: "x", Name: "new"}})
	if f, ok := l.Food("x"); !ok || f.Name != "new" {
		t.Errorf("x is %v, %v; want the later food", f, ok)
	}
	if f, ok := l.Food("y"); ok {
		t.Errorf("y is %v, want nothing", f)
	}
	if n := len(l.Foods()); n != 1 {
		t.Errorf("%d foods, want 1", n)
	}
}

func TestNewLarderKeepsItsOwnFoods(t *testing.T) {
	foods := []food.Food{{ID: "x", Name: "x"}}
	l := food.NewLarder(foods)
	foods[0].Name = "changed"
	if f, _ := l.Food("x"); f.Name != "x" {
		t.Errorf("the food was changed to %q from outside", f.Name)
	}
}

func TestLearnGivesACopy(t *testing.T) {
	l := larder(t)
	taught := l.Learn(map[string]string{"Nan's secret": "self-raising-flour", "cream": "double-cream", "nothing": "no-such-food"})
	for _, tc := range []struct{ written, want, how string }{
		{"nan's secret", "self-raising-flour", "learned"},
		{"Cream", "double-cream", "learned"},
		{"whipped cream", "double-cream", "modifiers"},
		{"sour cream", "soured-cream", "alias"},
		{"nothing", "none", "none"},
	} {
		t.Run(tc.written, func(t *testing.T) {
			if m := taught.Match(tc.written); found(m) != tc.want || string(m.How) != tc.how {
				t.Errorf("Match(%q) = %s (%s), want %s (%s)", tc.written, found(m), m.How, tc.want, tc.how)
			}
		})
	}
	if m := l.Match("cream"); m.How != food.Ask {
		t.Errorf("the first larder learned too: cream is %s", m.How)
	}
}

// "2 sprigs thyme" can only be fresh; "1 tsp thyme" can be either.
func TestForSettlesAQuestionByTheUnit(t *testing.T) {
	l := larder(t)
	for _, tc := range []struct {
		written string
		unit    measure.Unit
		want    string
	}{
		{"thyme", measure.Sprig, "fresh-thyme"},
		{"thyme", measure.Teaspoon, "ask fresh-thyme dried-thyme"},
		{"coriander", measure.Bunch, "fresh-coriander"},
		{"ginger", measure.Inch, "fresh-ginger"},
		{"ginger", measure.Centimetre, "fresh-ginger"},
		{"yeast", measure.Each, "ask active-dry-yeast instant-yeast fresh-yeast"},
		{"yeast", measure.Packet, "ask active-dry-yeast instant-yeast fresh-yeast"},
		{"cream", measure.Clove, "ask single-cream whipping-cream double-cream"},
		{"plain flour", measure.Sprig, "plain-flour"},
		{"moon dust", measure.Sprig, "none"},
	} {
		t.Run(tc.written+" by "+string(tc.unit), func(t *testing.T) {
			if got := found(l.Match(tc.written).For(tc.unit)); got != tc.want {
				t.Errorf("%s, want %s", got, tc.want)
			}
		})
	}
}

// Laws over every name of the built-in larder: case, hyphens and words that
// only say how do not change what is found.
func TestMatchLaws(t *testing.T) {
	l := larder(t)
	var names []string
	for _, f := range l.Foods() {
		names = append(append(names, f.Name), f.Names...)
	}
	rapid.Check(t, func(t *rapid.T) {
		name := names[rapid.IntRange(0, len(names)-1).Draw(t, "name")]
		want := l.Match(name)
		for _, written := range []string{
			strings.ToUpper(name), strings.ReplaceAll(name, "-", " "), strings.ReplaceAll(name, " ", "  "), " " + name + ".",
		} {
			if got := l.Match(written); got.Food != want.Food || got.How != want.How {
				t.Fatalf("Match(%q) = %s (%s), Match(%q) = %s (%s)", written, found(got), got.How, name, found(want), want.How)
			}
		}
		word := rapid.SampledFrom([]string{"good-quality", "organic", "best"}).Draw(t, "word")
		got := l.Match(word + " " + name)
		if want.Food != nil && got.Food != want.Food {
			t.Fatalf("Match(%q) = %s (%s), want %s", word+" "+name, found(got), got.How, want.Food.ID)
		}
	})
}

// Law: a name with a letter doubled, which makes no other word of it, finds its
// own food if it is read as a slip at all, or one that shares the word.
func TestADoubledLetterLeadsToNoOtherFood(t *testing.T) {
	l := larder(t)
	foods := l.Foods()
	rapid.Check(t, func(t *rapid.T) {
		f := foods[rapid.IntRange(0, len(foods)-1).Draw(t, "food")]
		letters := []rune(f.Name)
		at := rapid.IntRange(0, len(letters)-1).Draw(t, "at")
		if !unicode.IsLetter(letters[at]) {
			return
		}
		written := string(slices.Insert(slices.Clone(letters), at, letters[at]))
		if m := l.Match(written); m.How == food.Spelling && m.Food != f && !sharesWord(m.Food, f) {
			t.Fatalf("%q is read as %s", written, m.Food.Name)
		}
	})
}

// sharesWord tells whether two foods have a word of their names in common: then
// a slip may leave the shorter name.
func sharesWord(f, g *food.Food) bool {
	for _, name := range append([]string{f.Name}, f.Names...) {
		for _, word := range strings.Fields(name) {
			if strings.Contains(g.Name, strings.TrimSuffix(word, "s")) {
				return true
			}
		}
	}
	return false
}

// The words of the USDA's names that are none of the larder's must not be
// taken for slips of it, or only where they are: that list is written out.
func TestMatchOfEveryWordOfTheDatabase(t *testing.T) {
	l := larder(t)
	slips := map[string]string{ // other spellings of the same food
		"brotwurst": "bratwurst", "halavah": "halva", "litchis": "lychee",
	}
	for word := range databaseWords(t) {
		if m := l.Match(word); m.How == food.Spelling && m.Food.ID != slips[word] {
			t.Errorf("%q is read as a slip of %s", word, m.Food.Name)
		}
	}
}
