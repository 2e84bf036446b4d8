package recipe_test

import (
	"math"
	"strings"
	"testing"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

func read(t testing.TB, text string) recipe.Recipe {
	t.Helper()
	return recipe.Reader{Larder: larder(t)}.Read(text)
}

func TestReadFactor(t *testing.T) {
	for text, want := range map[string]string{
		"2": "2", "3/2": "3/2", "1.5": "3/2", "1½": "3/2", "½": "1/2", "×2": "2", "x 3": "3", "2x": "2", "double": "2", "triple": "3",
		"half": "1/2", " 4 ": "4", "0,5": "1/2", "two times": "2", "1000": "1000",
	} {
		if got, err := recipe.ReadFactor(text); err != nil || got.String() != want {
			t.Errorf("ReadFactor(%q) = %v, %v; want %s", text, got, err, want)
		}
	}
	for _, text := range []string{"", "0", "-1", "1/0", "many", "2 cups", "1e9", "1001", "ten thousand", strings.Repeat("9", 300)} {
		if got, err := recipe.ReadFactor(text); fault.KindOf(err) != fault.Invalid || fault.Field(err) != "by" || fault.Say(err) == "" {
			t.Errorf("ReadFactor(%q) = %v, %v; want an Invalid fault", text, got, err)
		}
	}
}

func TestFactorForPieces(t *testing.T) {
	for _, tt := range []struct {
		yield  string
		pieces measure.Number
		want   string
	}{
		{"Makes 16", measure.Whole(32), "2"},
		{"Makes 16", measure.Whole(24), "3/2"},
		{"Makes 12–14 buns", measure.Whole(24), "2"}, // the 12 counts: there must be enough
		{"Serves 4 to 6", measure.Whole(8), "2"},
		{"Makes one loaf", measure.Whole(3), "3"},
		{"Makes a dozen", measure.Whole(6), "1/2"},
	} {
		t.Run(tt.yield, func(t *testing.T) {
			got, err := recipe.FactorForPieces(read(t, "Buns\n"+tt.yield+"\n\n200 g flour\n"), tt.pieces)
			if err != nil || got.String() != tt.want {
				t.Errorf("FactorForPieces = %v, %v; want %s", got, err, tt.want)
			}
		})
	}
	for name, text := range map[string]string{"nothing said": "Buns\n\n200 g flour\n", "a weight": "Jam\nMakes 900 g\n\n200 g sugar\n"} {
		if _, err := recipe.FactorForPieces(read(t, text), measure.Whole(8)); fault.KindOf(err) != fault.Invalid {
			t.Errorf("%s: %v, want an Invalid fault", name, err)
		}
	}
	if _, err := recipe.FactorForPieces(read(t, "Buns\nMakes 8\n\n200 g flour\n"), measure.Number{}); fault.Field(err) != "pieces" {
		t.Errorf("0 pieces: %v", err)
	}
}

// Example 2 of "Baker's Percentages": a formula of 377.5 %, 3,000 g wanted, is
// 794.7 g of flour. Example 3, derived: 840 g of a 168 % dough is 500 g of flour.
func TestFactorForPieceWeight(t *testing.T) {
	for _, tt := range []struct {
		name, lines string
		pieces      int64
		each        measure.Amount
		flour       float64
		want        float64
	}{
		{"example 2", "100 g flour\n277.5 g milk", 1, measure.Of(measure.Whole(3000), measure.Gram), 100, 794.7},
		{"example 3", "1000 g flour\n650 g water\n20 g salt\n10 g yeast", 1, measure.Of(measure.Whole(840), measure.Gram), 1000, 500},
		{"example 3 as twelve rolls of 70 g", "1000 g flour\n650 g water\n20 g salt\n10 g yeast", 12, measure.Of(measure.Whole(70), measure.Gram), 1000, 500},
	} {
		t.Run(tt.name, func(t *testing.T) {
			got, err := recipe.FactorForPieceWeight(read(t, "Rolls\n\n"+tt.lines+"\n"), "", measure.Whole(tt.pieces), tt.each, recipe.Writer{Larder: larder(t)})
			if err != nil || math.Abs(got.Float()*tt.flour-tt.want) > 0.05 {
				t.Errorf("flour = %.2f, %v; want %.1f", got.Float()*tt.flour, err, tt.want)
			}
		})
	}
	rolls := read(t, "Rolls\nMakes 10\n\nDough:\n500 g flour\n300 g water\n\nGlaze:\n50 g butter\n")
	w := recipe.Writer{Larder: larder(t)}
	got, err := recipe.FactorForPieceWeight(rolls, "dough", measure.Number{}, measure.Of(measure.Whole(100), measure.Gram), w)
	if err != nil || !got.Equal(measure.Ratio(1000, 800)) {
		t.Errorf("of the dough alone, the recipe's own 10 pieces: %v, %v; want 5/4", got, err)
	}
	for name, err := range map[string]error{
		"a component nobody knows": second(recipe.FactorForPieceWeight(rolls, "icing", measure.Number{}, measure.Of(measure.Whole(100), measure.Gram), w)),
		"a piece in cups":          second(recipe.FactorForPieceWeight(rolls, "", measure.Number{}, measure.Of(measure.Whole(1), measure.Cup), w)),
		"no weight for a line": second(recipe.FactorForPieceWeight(read(t, "R\nMakes 3\n\n2 tubs moonrock\n"), "", measure.Number{},
			measure.Of(measure.Whole(100), measure.Gram), w)),
	} {
		if fault.Say(err) == "" {
			t.Errorf("%s: no sentence in %v", name, err)
		}
	}
}

func second(_ measure.Number, err error) error { return err }

func TestFactorForTins(t *testing.T) {
	got, err := recipe.FactorForTins("20 cm round", "23 cm round")
	if err != nil || got.By != "area" || !got.Factor.Equal(measure.MustNumber("1.3225")) {
		t.Errorf("20 to 23 cm = %v by %s, %v; want 1.3225 by area", got.Factor, got.By, err)
	}
	got, err = recipe.FactorForTins("20 x 5 cm round", "20 x 6 x 8 cm ring")
	if err != nil || got.By != "volume" || math.Abs(got.Factor.Float()-2287.1/1570.8) > 0.001 {
		t.Errorf("round to ring = %v by %s, %v", got.Factor.Float(), got.By, err)
	}
	for _, pair := range [][2]string{{"", "20 cm round"}, {"20 cm round", "a big one"}} {
		if _, err := recipe.FactorForTins(pair[0], pair[1]); fault.Field(err) != "tin" {
			t.Errorf("%q: %v, want an Invalid fault on tin", pair, err)
		}
	}
}

func TestFactorForHave(t *testing.T) {
	cake := read(t, "Cake\n\n2 eggs\n200 g plain flour\n1 stick butter\n½ cup milk\n2–3 tbsp honey\n\nTop:\n100 g plain flour\n")
	w := recipe.Writer{Larder: larder(t)}
	for _, tt := range []struct {
		have string
		want float64
	}{
		{"3 eggs", 1.5},
		{"450 g flour", 1.5},                // both lines of it
		{"1 kg all-purpose flour", 10. / 3}, // by its other name
		{"226 g butter", 2},                 // a stick is 113 g: USDA SR 26, 01001
		{"240 ml milk", 240 / 118.294},      // half a US cup: NIST Handbook 44
		{"6 tbsp honey", 2},                 // of a range the larger counts
	} {
		t.Run(tt.have, func(t *testing.T) {
			got, err := recipe.FactorForHave(cake, tt.have, w)
			if err != nil || math.Abs(got.Float()-tt.want) > 0.0005*tt.want {
				t.Errorf("FactorForHave = %v, %v; want %v", got.Float(), err, tt.want)
			}
		})
	}
	for _, have := range []string{"", "eggs", "3 pineapples", "0 eggs", "2"} {
		if _, err := recipe.FactorForHave(cake, have, w); fault.KindOf(err) != fault.Invalid || fault.Field(err) != "have" {
			t.Errorf("FactorForHave(%q): %v, want an Invalid fault on have", have, err)
		}
	}
}

func TestMakes(t *testing.T) {
	count, share, err := recipe.Makes(measure.Whole(3480), measure.Whole(1800))
	if err != nil || count != 2 || !share.Equal(measure.Ratio(1, 2)) {
		t.Errorf("3480 g in a mixer of 1800 g = %d makes of %v, %v; want 2 of 1/2", count, share, err)
	}
	if count, _, _ := recipe.Makes(measure.Whole(16), measure.Whole(16)); count != 1 {
		t.Errorf("what just fits takes %d makes", count)
	}
	if _, _, err := recipe.Makes(measure.Whole(16), measure.Number{}); fault.Field(err) != "capacity" {
		t.Errorf("no capacity: %v", err)
	}
}
