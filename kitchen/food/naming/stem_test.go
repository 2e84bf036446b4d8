package naming_test

import (
	"testing"

	"benchproof/kitchen/food/naming"
)

// Every pair is one name in two spellings or numbers. Common practice in UK and
// US kitchens, no source.
func TestTwoSpellingsOfOneName(t *testing.T) {
	for _, pair := range [][2]string{
		// Number.
		{"egg", "eggs"}, {"peach", "peaches"}, {"radish", "radishes"}, {"box", "boxes"}, {"tomato", "tomatoes"}, {"potato", "potatoes"},
		{"tomatoe", "tomatoes"}, {"mango", "mangoes"}, {"mango", "mangos"}, {"berry", "berries"}, {"cherry", "cherries"}, {"anchovy", "anchovies"},
		{"leaf", "leaves"}, {"loaf", "loaves"}, {"half", "halves"}, {"clove", "cloves"}, {"olive", "olives"}, {"chive", "chives"},
		{"pea", "peas"}, {"oat", "oats"}, {"bean", "beans"}, {"cookie", "cookies"}, {"brownie", "brownies"}, {"pie", "pies"},
		{"glass", "glasses"}, {"cheese", "cheeses"}, {"sauce", "sauces"}, {"slice", "slices"}, {"goose", "geese"}, {"knife", "knives"},
		// Words that only look like plurals keep to themselves.
		{"asparagus", "Asparagus"}, {"couscous", "COUSCOUS"}, {"hummus", "hummus"}, {"molasses", "molasses"}, {"bass", "bass"}, {"cress", "cress"},
		// US and UK.
		{"yoghurt", "yogurt"}, {"chilli", "chili"}, {"chillies", "chilies"}, {"chilli", "chile"}, {"ketchup", "catsup"}, {"whisky", "whiskey"},
		{"flavour", "flavor"}, {"fibre", "fiber"}, {"colouring", "coloring"}, {"fillet", "filet"}, {"lasagne", "lasagna"}, {"doughnut", "donut"},
		{"omelette", "omelet"}, {"savoury", "savory"}, {"liquorice", "licorice"}, {"caramelised", "caramelized"}, {"crystallised", "crystallized"},
		{"skimmed milk", "skim milk"}, {"self-raising flour", "self-rising flour"}, {"minced beef", "mince beef"}, {"pimiento", "pimento"},
		// Spellings from elsewhere.
		{"hummus", "houmous"}, {"hummus", "hommus"}, {"linguine", "linguini"}, {"fettuccine", "fettucine"}, {"shiitake", "shitake"},
		{"pak choi", "pak choy"}, {"caster sugar", "castor sugar"}, {"worcester sauce", "worcestershire sauce"},
		// Letters and signs.
		{"crème brûlée", "creme brulee"}, {"jalapeño", "jalapeno"}, {"gruyère", "GRUYERE"}, {"smørrebrød", "smorrebrod"}, {"œuf", "oeuf"},
		{"Spätzle", "spatzle"}, {"Weißwurst", "weisswurst"}, {"confectioners’ sugar", "confectioners' sugar"}, {"confectioner's sugar", "confectioners sugar"},
		{"half & half", "half and half"}, {"free-range egg", "free range egg"}, {"all‑purpose flour", "all-purpose flour"}, {"ﬂour", "flour"},
		{"５ spice", "5 spice"}, {"no. 1 sauce", "no 1 sauce"}, {"breadcrumbs", "bread crumbs"}, {"bread-crumbs", "breadcrumb"},
	} {
		t.Run(pair[0]+" and "+pair[1], func(t *testing.T) {
			for _, way := range [][2]string{pair, {pair[1], pair[0]}} {
				x := naming.New([]naming.Thing{{ID: "it", Name: way[0]}})
				if f := x.Find(way[1]); f.ID != "it" || f.How != naming.Exact {
					t.Errorf("named %q, Find(%q) = %+v, want it, exact", way[0], way[1], f)
				}
			}
		})
	}
}

// Pairs that are two names, however near.
func TestTwoNamesStayTwo(t *testing.T) {
	for _, pair := range [][2]string{
		{"chives", "chilies"}, {"cream", "crème"}, {"butter", "batter"}, {"pasta", "paste"}, {"plaice", "plain"}, {"curd", "curry"},
		{"ham", "hake"}, {"bread", "broad"}, {"cod", "cob"}, {"lime", "lima"}, {"pecan", "pea"}, {"oil", "foil"}, {"rice", "ice"},
		{"corn", "acorn"}, {"ginger", "gin"}, {"plum", "plump"}, {"mint", "mince"}, {"bass", "basil"},
	} {
		t.Run(pair[0]+" and "+pair[1], func(t *testing.T) {
			x := naming.New([]naming.Thing{{ID: "one", Name: pair[0]}, {ID: "two", Name: pair[1]}})
			if a, b := x.Find(pair[0]), x.Find(pair[1]); a.ID != "one" || b.ID != "two" {
				t.Errorf("Find(%q) = %+v, Find(%q) = %+v", pair[0], a, pair[1], b)
			}
		})
	}
}

// A phrase with every kind of word around one noun: what is form, what is left.
func TestWordsAroundANoun(t *testing.T) {
	x := naming.New([]naming.Thing{{ID: "it", Name: "quince", Fresh: true}})
	for _, tc := range []struct{ written, form, left string }{
		{"quince", "", ""},
		{"quinces", "", ""},
		{"1 quince", "", "1"},
		{"large quince", "large", ""},
		{"extra large quinces", "extra large", ""},
		{"small ripe quinces, peeled", "small", "ripe peeled"},
		{"chopped quince", "chopped", ""},
		{"quince, chopped", "chopped", ""},
		{"quince (chopped)", "chopped", ""},
		{"quince - chopped", "chopped", ""},
		{"quince – chopped", "chopped", ""},
		{"quince; chopped", "chopped", ""},
		{"quince: chopped", "chopped", ""},
		{"quinces, peeled, cored and coarsely grated", "grated", "peeled cored and coarsely"},
		{"halved quinces", "halves", ""},
		{"cubed quince", "diced", ""},
		{"diced quince", "diced", ""},
		{"julienned quince", "sliced", ""},
		{"packed quince", "packed", ""},
		{"firmly packed quince", "packed", "firmly"},
		{"loosely packed quince", "unpacked", "loosely"},
		{"quince, not packed", "unpacked", "not"},
		{"mashed cooked quince", "mashed cooked", ""},
		{"quince, pureed, plus extra sliced quince", "pureed", "plus extra sliced quince"},
		{"quince for the glaze", "", "for the glaze"},
		{"quince cut into wedges", "", "cut into wedges"},
		{"a nice ripe quince of good quality", "", "a nice ripe of good quality"},
	} {
		t.Run(tc.written, func(t *testing.T) {
			f := x.Find(tc.written)
			if f.ID != "it" || f.Form != tc.form || f.Left != tc.left {
				t.Errorf("Find(%q) = %+v, want form %q, left %q", tc.written, f, tc.form, tc.left)
			}
		})
	}
}
