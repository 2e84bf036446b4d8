package measure_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/measure/internal/tables"
)

// A range is written in many ways; what must come out is both ends, and the
// food. The wordings are written by us, in the styles of home recipes.
func TestRangesAsCooksWriteThem(t *testing.T) {
	for _, test := range []struct {
		name, text string
		want       string // the amount
		rest       string
	}{
		// one unit behind both
		{"a hyphen", "2-3 tbsp oil", "2..3 tbsp", "oil"},
		{"a hyphen with spaces", "200 - 250g flour", "200..250 g", "flour"},
		{"to", "200 to 250 grams flour", "200..250 g", "flour"},
		{"or", "2 or 3 handfuls of spinach", "2..3 handful", "spinach"},
		{"between, in figures", "between 1/2 and 3/4 cup milk", "1/2..3/4 cup", "milk"},
		{"between, in words", "between one and two cups stock", "1..2 cup", "stock"},
		{"from and to", "from 1 to 2 tbsp oil", "1..2 tbsp", "oil"},
		{"words with a hyphen", "one-two cups stock", "1..2 cup", "stock"},
		{"the larger first", "3 to 2 cups stock", "2..3 cup", "stock"},
		{"to about", "2 to about 3 cups stock", "2..3 cup", "stock"},

		// fractions at one end or both
		{"mixed numbers at both ends", "1 1/2 to 2 1/2 cups stock", "3/2..5/2 cup", "stock"},
		{"mixed with hyphens", "1-1/2 to 2 cups stock", "3/2..2 cup", "stock"},
		{"mixed, hyphen for both", "1-1/2-2 cups stock", "3/2..2 cup", "stock"},
		{"a whole to a mixed", "1-2 1/2 cups stock", "1..5/2 cup", "stock"},
		{"a whole to a glyph", "1-2½ cups stock", "1..5/2 cup", "stock"},
		{"part to whole", "¾-1 cup stock", "3/4..1 cup", "stock"},
		{"part to whole, spaced", "3/4 - 1 cup stock", "3/4..1 cup", "stock"},
		{"whole, spaced dash, part", "1 - 3/4 cups stock", "3/4..1 cup", "stock"},
		{"parts of one glyph", "½-⅔ cup stock", "1/2..2/3 cup", "stock"},
		{"eighths", "⅛-¼ tsp salt", "1/8..1/4 tsp", "salt"},
		{"decimals", "1.5-2 kg beef", "3/2..2 kg", "beef"},
		{"decimal commas", "1,5–2,5 kg beef", "3/2..5/2 kg", "beef"},

		// the hyphen that waits for its unit
		{"2- to 3-", "2- to 3-pound chicken", "2..3 lb", "chicken"},
		{"with to between hyphens", "8-to-10-ounce steak", "8..10 oz", "steak"},
		{"of a length", "2- to 3-inch pieces ginger", "2..3 in", "pieces ginger"},
		{"with or", "2- or 3-inch pieces ginger", "2..3 in", "pieces ginger"},
		{"a figure with an article is a size", "a 2- to 3-lb chicken", "1", "2- to 3-lb chicken"},

		// dozens
		{"dozens behind both", "1 to 2 dozen rolls", "12..24", "rolls"},
		{"dozens, hyphen", "1-2 dozen rolls", "12..24", "rolls"},
		{"one or two dozen", "one or two dozen rolls", "12..24", "rolls"},
		{"half a dozen to a dozen", "half a dozen to a dozen eggs", "6..12", "eggs"},
		{"some to a dozen", "6 to a dozen eggs", "6..12", "eggs"},
		{"1½ to 2 dozen", "1½ to 2 dozen eggs", "18..24", "eggs"},

		// a unit at each end
		{"grams twice", "200 g or 250 g flour", "200..250 g", "flour"},
		{"between, a unit at each end", "between 200 g and 250 g flour", "200..250 g", "flour"},
		{"between cups and cups", "between 1 cup and 2 cups milk", "1..2 cup", "milk"},
		{"up the ladder", "750 g–1 kg potatoes", "750..1000 g", "potatoes"},
		{"decilitres to a litre", "8 dl to 1 l stock", "8..10 dl", "stock"},
		{"ounces to a pound", "12 oz to 1 lb mince", "12..16 oz", "mince"},

		// what is no range
		{"another kind of unit", "200 g or 7 oz flour", "200 g", "or 7 oz flour"},
		{"falling ends with units", "250 g or 200 g flour", "250 g", "or 200 g flour"},
		{"a bound behind", "200 g up to 250 g flour", "200 g", "up to 250 g flour"},
		{"more", "1 tbsp or more oil", "1 tbsp", "or more oil"},
		{"a dash and words", "2 - to taste", "2", "- to taste"},
		{"two amounts after between", "between 1 and 2 cups and 3 g", "1..2 cup", "and 3 g"},
		{"a count and a size", "1-14 oz can tomatoes", "1", "14 oz can tomatoes"},
	} {
		t.Run(test.name, func(t *testing.T) {
			got, rest, ok := measure.ReadAmount(test.text)
			if !ok || rest != test.rest || !cmp.Equal(got.Amount, amount(t, test.want)) {
				t.Errorf("ReadAmount(%q) = %s %s, leaving %q, %v; want %s, leaving %q",
					test.text, tables.Range(got.Amount.Range), got.Amount.Unit, rest, ok, test.want, test.rest)
			}
		})
	}
}

// Sizes of what is counted stay in the rest, with the count before them: the
// reader of lines needs both.
func TestSizesStayBehindTheCount(t *testing.T) {
	for _, test := range []struct{ name, text, count, rest string }{
		{"glued size", "2 200g bars chocolate", "2", "200g bars chocolate"},
		{"times", "2x 200g bars chocolate", "2", "x 200g bars chocolate"},
		{"in brackets", "2 (15-ounce) cans beans", "2", "(15-ounce) cans beans"},
		{"hyphen", "2 15-ounce cans beans", "2", "15-ounce cans beans"},
		{"in words", "two 15-ounce cans beans", "2", "15-ounce cans beans"},
		{"with a stop", "1 15 oz. can beans", "1", "15 oz. can beans"},
		{"a pound box", "1 1-lb. box pasta", "1", "1-lb. box pasta"},
		{"a size that is a range", "4 6- to 8-ounce fillets", "4", "6- to 8-ounce fillets"},
		{"a can by its number", "1 no. 303 can corn", "1", "no. 303 can corn"},
		{"an article and a size", "a 4-lb chicken", "1", "4-lb chicken"},
		{"an article and grams", "a 200-gram bar", "1", "200-gram bar"},
		{"a part and thick slices", "1/2-inch-thick slices", "1/2 in", "thick slices"},
		{"centimetres and thick", "2cm-thick slice", "2 cm", "thick slice"},
		{"inches and long", "3-inch-long pieces", "3 in", "long pieces"},
		{"two sides of a piece", "3 cm x 5 cm piece", "3 cm", "x 5 cm piece"},
		{"the pack itself", "1 jar passata", "1 jar", "passata"},
		{"the pack and its size behind", "1 bottle (750 ml) wine", "1 bottle", "(750 ml) wine"},
	} {
		t.Run(test.name, func(t *testing.T) {
			got, rest, ok := measure.ReadAmount(test.text)
			if !ok || rest != test.rest || !cmp.Equal(got.Amount, amount(t, test.count)) {
				t.Errorf("ReadAmount(%q) = %v, leaving %q, %v; want %s, leaving %q", test.text, got.Amount, rest, ok, test.count, test.rest)
			}
		})
	}
}
