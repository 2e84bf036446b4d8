package naming_test

import (
	"strings"
	"testing"

	"benchproof/kitchen/food/naming"

	"github.com/google/go-cmp/cmp"
)

// shelf is a small set of things whose names get in each other's way.
func shelf() *naming.Names {
	return naming.New([]naming.Thing{
		{ID: "butter", Name: "butter", Names: []string{"salted butter"}},
		{ID: "unsalted", Name: "unsalted butter"},
		{ID: "peanut-butter", Name: "peanut butter"},
		{ID: "butter-beans", Name: "butter beans"},
		{ID: "pepper", Name: "black pepper", Names: []string{"pepper"}},
		{ID: "capsicum", Name: "sweet pepper", Names: []string{"peppers", "capsicum"}},
		{ID: "fresh-thyme", Name: "fresh thyme", Names: []string{"thyme", "thyme leaf"}, Fresh: true},
		{ID: "dried-thyme", Name: "dried thyme", Names: []string{"thyme"}},
		{ID: "egg", Name: "egg"},
		{ID: "tomato", Name: "tomato", Fresh: true},
		{ID: "chopped-tomatoes", Name: "tinned chopped tomatoes", Names: []string{"tinned tomatoes"}},
		{ID: "milk", Name: "whole milk", Names: []string{"milk"}},
		{ID: "oat-milk", Name: "oat milk"},
		{ID: "bread-flour", Name: "bread flour"},
		{ID: "flour", Name: "plain flour", Names: []string{"flour", "all-purpose flour"}},
		{ID: "lemon", Name: "lemon", Fresh: true},
		{ID: "lemon-juice", Name: "lemon juice"},
		{ID: "lime-juice", Name: "lime juice"},
		{ID: "loaf", Name: "rye loaf", Plural: "rye loaves"},
		{ID: "creme", Name: "crème fraîche"},
		{ID: "chilli", Name: "red chilli", Fresh: true},
		{ID: "cherry", Name: "cherry", Fresh: true},
		{ID: "sherry", Name: "sherry"},
		{ID: "cookie", Name: "cookie"},
		{ID: "beef-mince", Name: "minced beef"},
		{ID: "cornflour", Name: "cornflour"},
		{ID: "parmesan", Name: "parmesan"},
		{ID: "asparagus", Name: "asparagus", Fresh: true},
		{ID: "tuna", Name: "tuna"},
	})
}

func TestFindTellsWhatAndHow(t *testing.T) {
	x := shelf()
	for _, tc := range []struct {
		name, written string
		want          naming.Found
	}{
		// Whole names.
		{"exact", "plain flour", naming.Found{ID: "flour", How: naming.Exact}},
		{"alias", "all-purpose flour", naming.Found{ID: "flour", How: naming.Alias}},
		{"case", "Plain FLOUR", naming.Found{ID: "flour", How: naming.Exact}},
		{"accents", "creme fraiche", naming.Found{ID: "creme", How: naming.Exact}},
		{"accents decomposed", "cre\u0300me frai\u0302che", naming.Found{ID: "creme", How: naming.Exact}},
		{"hyphens", "all purpose flour", naming.Found{ID: "flour", How: naming.Alias}},
		{"plural", "red chillies", naming.Found{ID: "chilli", How: naming.Exact}},
		{"US spelling", "red chili", naming.Found{ID: "chilli", How: naming.Exact}},
		{"own plural", "rye loaves", naming.Found{ID: "loaf", How: naming.Exact}},
		{"-ie and -ies", "cookies", naming.Found{ID: "cookie", How: naming.Exact}},
		{"no plural", "asparagus", naming.Found{ID: "asparagus", How: naming.Exact}},
		{"words parted", "corn flour", naming.Found{ID: "cornflour", How: naming.Exact}},
		{"mince and minced", "mince beef", naming.Found{ID: "beef-mince", How: naming.Exact}},
		{"number tells two apart", "peppers", naming.Found{ID: "capsicum", How: naming.Alias}},
		{"number tells the other", "pepper", naming.Found{ID: "pepper", How: naming.Alias}},
		// Names among modifiers.
		{"modifiers", "cold unsalted butter", naming.Found{ID: "unsalted", How: naming.Modifiers, Left: "cold"}},
		{"longest name wins", "strong white bread flour", naming.Found{ID: "bread-flour", How: naming.Modifiers, Left: "strong white"}},
		{"form", "finely chopped ripe tomatoes", naming.Found{ID: "tomato", How: naming.Modifiers, Form: "chopped", Left: "finely ripe"}},
		{"two words of size", "extra-large free-range eggs", naming.Found{ID: "egg", How: naming.Modifiers, Form: "extra large", Left: "free range"}},
		{"size and form", "2 large tomatoes, diced", naming.Found{ID: "tomato", How: naming.Modifiers, Form: "large diced", Left: "2"}},
		{"turned round", "flour, plain", naming.Found{ID: "flour", How: naming.Exact}},
		{"turned round in brackets", "butter (unsalted), melted", naming.Found{ID: "unsalted", How: naming.Exact, Form: "melted"}},
		{"behind a bracket", "unsalted (sweet) butter", naming.Found{ID: "unsalted", How: naming.Exact, Left: "sweet"}},
		{"behind a comma", "butter, softened", naming.Found{ID: "butter", How: naming.Exact, Left: "softened"}},
		{"modifiers behind commas", "ripe, firm tomatoes", naming.Found{ID: "tomato", How: naming.Modifiers, Left: "ripe firm"}},
		{"another portion's form", "tomatoes, plus extra, chopped", naming.Found{ID: "tomato", How: naming.Exact, Form: "chopped", Left: "plus extra"}},
		{"another portion's form in one", "butter, plus melted butter for the tin", naming.Found{ID: "butter", How: naming.Exact, Left: "plus melted butter for the tin"}},
		{"an adverbial", "butter at room temperature", naming.Found{ID: "butter", How: naming.Exact, Left: "at room temperature"}},
		{"of", "juice of 1 lemon", naming.Found{ID: "lemon-juice", How: naming.Modifiers, Left: "of 1"}},
		{"either, sharing a noun", "lemon or lime juice", naming.Found{ID: "lemon-juice", How: naming.Exact, Left: "lime juice"}},
		{"either, parted by a slash", "lemon/lime juice", naming.Found{ID: "lemon-juice", How: naming.Exact, Left: "lime juice"}},
		{"either, apart", "butter or lard", naming.Found{ID: "butter", How: naming.Exact, Left: "lard"}},
		{"either, second known", "lard or butter", naming.Found{ID: "butter", How: naming.Exact, Left: "lard"}},
		{"loosely packed", "flour, loosely packed", naming.Found{ID: "flour", How: naming.Alias, Form: "unpacked", Left: "loosely"}},
		// By the noun.
		{"unknown word before a noun", "marmande tomatoes", naming.Found{ID: "tomato", How: naming.Head, Left: "marmande"}},
		// Questions.
		{"shared name", "thyme", naming.Found{How: naming.Ask, Choices: []string{"fresh-thyme", "dried-thyme"}}},
		{"shared name, said of fresh ones", "thyme, chopped", naming.Found{ID: "fresh-thyme", How: naming.Modifiers, Form: "chopped"}},
		{"word that makes another food", "smoked tuna", naming.Found{How: naming.Ask, Left: "smoked", Choices: []string{"tuna"}}},
		{"class of foods", "mink butter", naming.Found{How: naming.Ask, Left: "mink", Choices: []string{"butter", "unsalted", "peanut-butter"}}},
		// Traps and nothing.
		{"noun of a longer name", "butter beans", naming.Found{ID: "butter-beans", How: naming.Exact}},
		{"another food's word before", "peanut milk", naming.Found{How: naming.None, Left: "peanut milk"}},
		{"another food behind", "egg plant", naming.Found{How: naming.None, Left: "egg plant"}},
		{"two foods", "pepper and tuna", naming.Found{How: naming.None, Left: "pepper and tuna"}},
		{"unknown", "gravlax", naming.Found{How: naming.None, Left: "gravlax"}},
		{"empty", "", naming.Found{How: naming.None}},
		{"no words", " ,;( ) – !?", naming.Found{How: naming.None}},
		// Slips.
		{"letter too few", "parmesn", naming.Found{ID: "parmesan", How: naming.Spelling}},
		{"letter too many", "parmessan", naming.Found{ID: "parmesan", How: naming.Spelling}},
		{"letters changed about", "parmeasn", naming.Found{ID: "parmesan", How: naming.Spelling}},
		{"in a modifier", "chopepd tomatoes", naming.Found{ID: "tomato", How: naming.Spelling, Form: "chopped"}},
		{"two slips in a long word", "aspparragus", naming.Found{ID: "asparagus", How: naming.Spelling}},
		{"two slips in a short word", "tonmatoo", naming.Found{How: naming.None, Left: "tonmatoo"}},
		{"four letters forgive none", "tuma", naming.Found{How: naming.None, Left: "tuma"}},
		{"first letter is no slip", "garmesan", naming.Found{How: naming.None, Left: "garmesan"}},
		{"two foods a letter apart", "sherry", naming.Found{ID: "sherry", How: naming.Exact}},
		{"a stranger is no slip", "cherry broth", naming.Found{How: naming.None, Left: "cherry broth"}},
	} {
		t.Run(tc.name, func(t *testing.T) {
			if d := cmp.Diff(tc.want, x.Find(tc.written)); d != "" {
				t.Errorf("Find(%q) (-want +got):\n%s", tc.written, d)
			}
		})
	}
}

func TestLearnedNamesWin(t *testing.T) {
	x := shelf()
	y := x.Learn(map[string]string{"Pepper": "capsicum", "gran's white stuff": "flour", "butter (the good one)": "unsalted", "ghost": "no-such-id", "": "egg"})
	for _, tc := range []struct {
		name, written string
		want          naming.Found
	}{
		{"over an alias", "pepper", naming.Found{ID: "capsicum", How: naming.Learned}},
		{"in any case", "Gran’s White Stuff", naming.Found{ID: "flour", How: naming.Learned}},
		{"with what was in brackets", "butter (the good one)", naming.Found{ID: "unsalted", How: naming.Learned}},
		{"among modifiers", "sifted gran's white stuff", naming.Found{ID: "flour", How: naming.Modifiers, Form: "sifted"}},
		{"not for an unknown id", "ghost", naming.Found{How: naming.None, Left: "ghost"}},
		{"others stay", "butter", naming.Found{ID: "butter", How: naming.Exact}},
	} {
		t.Run(tc.name, func(t *testing.T) {
			if d := cmp.Diff(tc.want, y.Find(tc.written)); d != "" {
				t.Errorf("Find(%q) (-want +got):\n%s", tc.written, d)
			}
		})
	}
	if got := x.Find("pepper").ID; got != "pepper" {
		t.Errorf("the first names were changed: pepper is %s", got)
	}
	z := y.Learn(map[string]string{"pepper": "pepper"})
	if got := z.Find("pepper").ID; got != "pepper" {
		t.Errorf("relearned pepper is %s", got)
	}
	if got := z.Find("gran's white stuff").ID; got != "flour" {
		t.Errorf("what was learned before is lost: %q", got)
	}
}

func TestOfTwoThingsWithOneIDTheLaterStays(t *testing.T) {
	x := naming.New([]naming.Thing{{ID: "a", Name: "old"}, {ID: "a", Name: "new"}})
	if got := x.Find("new").ID; got != "a" {
		t.Errorf("new is %q, want a", got)
	}
	if got := x.Find("old").How; got != naming.None {
		t.Errorf("old is %s, want none", got)
	}
}

// Names come from whatever a person pasted.
func TestFindBearsAnything(t *testing.T) {
	x := shelf()
	for _, text := range []string{
		strings.Repeat("butter ", 10_000), strings.Repeat("x", 100_000), strings.Repeat("(", 5000), "\xff\xfe butter", "🧈",
		strings.Repeat("butter, ", 5000), "\u0301\u0301\u0301", "ſalt", "Ⅳ butter", "BUTTER\x00", strings.Repeat("é", 40),
	} {
		_ = x.Find(text)
	}
	if got := x.Find("\xffbutter").How; got != naming.None && got != naming.Exact {
		t.Errorf("broken text was read as %s", got)
	}
}

func FuzzFind(f *testing.F) {
	for _, seed := range []string{"cold unsalted butter, diced", "juice of 1 lemon", "flour (plain)", "lemon or lime juice", "chopepd tomatoes"} {
		f.Add(seed)
	}
	x := shelf()
	f.Fuzz(func(t *testing.T, written string) {
		found := x.Find(written)
		sure := found.How != naming.None && found.How != naming.Ask
		if sure != (found.ID != "") {
			t.Errorf("Find(%q) = %+v: an id goes with an answer, and only with one", written, found)
		}
		if (found.How == naming.Ask) != (len(found.Choices) > 0) {
			t.Errorf("Find(%q) = %+v: choices go with a question", written, found)
		}
		if again := x.Find(written); !cmp.Equal(found, again) {
			t.Errorf("Find(%q) is %+v, then %+v", written, found, again)
		}
		if upper := x.Find(strings.ToUpper(written)); isASCII(written) && !cmp.Equal(found, upper) {
			t.Errorf("Find(%q) is %+v, in capitals %+v", written, found, upper)
		}
	})
}

func isASCII(s string) bool {
	for i := range len(s) {
		if s[i] >= 0x80 {
			return false
		}
	}
	return true
}
