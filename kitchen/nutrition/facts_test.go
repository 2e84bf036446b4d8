package nutrition_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/nutrition"
	"benchproof/kitchen/recipe"
)

// TestPublishedLookups: one line each, worked by hand from USDA SR 26; see the
// head of the file.
func TestPublishedLookups(t *testing.T) {
	for _, row := range table(t, "lookups.txt", 6) {
		t.Run(row[0]+", "+row[3], func(t *testing.T) {
			f := of(t, "Lookup\n\nIngredients\n"+row[0]+"\n")
			if got, want := f.Totals.Grams().Float(), num(row[2]).Float(); !isNear(got, want) {
				t.Errorf("it weighs %g g, want %g (USDA SR %s)", got, want, row[1])
			}
			if got, want := holds(f.Totals, nutrientNamed(t, row[3])), num(row[5]).Float(); !isNear(got, want) {
				t.Errorf("it holds %g of %s, want %g (USDA SR %s)", got, row[3], want, row[1])
			}
		})
	}
}

// TestShortbreadByHand adds a recipe up by hand, from the figures of USDA SR 26:
//
//	                      plain flour    unsalted butter   granulated sugar
//	                      20081          01145             19335
//	grams                 300            200               100
//	energy     kcal/100 g 364            717               387
//	protein    g          10.33          0.85              0
//	fat                   0.98           81.11             0
//	saturated             0.155          51.368            0
//	carbohydrate          76.31          0.06              99.98
//	sugars                0.27           0.06              99.8
//	fibre                 2.7            0                 0
//	sodium     mg         2              11                1
//
//	energy        3 × 364    + 2 × 717    + 387   = 1092 + 1434 + 387 = 2913 kcal
//	protein       3 × 10.33  + 2 × 0.85           = 30.99 + 1.70      = 32.69 g
//	fat           3 × 0.98   + 2 × 81.11          = 2.94 + 162.22     = 165.16 g
//	saturated     3 × 0.155  + 2 × 51.368         = 0.465 + 102.736   = 103.201 g
//	carbohydrate  3 × 76.31  + 2 × 0.06 + 99.98   = 228.93 + 0.12 + 99.98 = 329.03 g
//	sugars        3 × 0.27   + 2 × 0.06 + 99.8    = 0.81 + 0.12 + 99.8    = 100.73 g
//	fibre         3 × 2.7                         = 8.1 g
//	sodium        3 × 2      + 2 × 11   + 1       = 6 + 22 + 1        = 29 mg
//
// A piece is a 20th. 100 g of the raw 600 g are a sixth; of 540 g baked, 100/540.
//
// The EU label's energy of 100 g raw, by Annex XIV of Regulation (EU) No
// 1169/2011, from fat 27.52667, carbohydrate without fibre (329.03 − 8.1) ÷ 6 =
// 53.48833, protein 5.448333 and fibre 1.35 g:
//
//	kJ    27.52667 × 37 + 53.48833 × 17 + 5.448333 × 17 + 1.35 × 8 = 2031.21
//	kcal  27.52667 × 9  + 53.48833 × 4  + 5.448333 × 4  + 1.35 × 2 = 486.19
//
// and its salt 29 ÷ 6 × 2.5 ÷ 1000 = 0.0121 g, which is under 0.0125.
func TestShortbreadByHand(t *testing.T) {
	f := of(t, `Shortbread
Makes 20 fingers

300 g plain flour
200 g unsalted butter
100 g granulated sugar

Rub the butter into the flour and sugar and bake for 40 minutes at 160 °C.
`)
	want := map[food.Nutrient]float64{food.EnergyKcal: 2913, food.Protein: 32.69, food.Fat: 165.16, food.Saturated: 103.201,
		food.Carbohydrate: 329.03, food.Sugars: 100.73, food.Fibre: 8.1, food.SodiumMilligrams: 29}
	piece, ok := f.PerPiece()
	if !ok {
		t.Fatal("it has no pieces")
	}
	for n, sum := range want {
		for _, tc := range []struct {
			of   string
			got  food.Totals
			want float64
		}{
			{"the whole", f.Totals, sum}, {"a piece", piece, sum / 20}, {"100 g raw", f.Per100(), sum / 6},
			{"100 g baked", f.WithFinished(num("540")).Per100(), sum * 100 / 540},
		} {
			if got := holds(tc.got, n); !isNear(got, tc.want) {
				t.Errorf("%s: %s = %g, want %g", tc.of, n, got, tc.want)
			}
		}
	}
	if !f.Covered.Equal(num("1")) || len(f.Missing) != 0 || len(f.Notes) != 0 {
		t.Errorf("covered %s, missing %v, notes %v; want all, none, none", f.Covered, f.Missing, f.Notes)
	}
	wantEU := []food.Declared{
		{Name: "Energy", Amount: "2031 kJ / 486 kcal"}, {Name: "Fat", Amount: "28 g"}, {Name: "of which saturates", Amount: "17 g", Part: true},
		{Name: "Carbohydrate", Amount: "53 g"}, {Name: "of which sugars", Amount: "17 g", Part: true}, {Name: "Fibre", Amount: "1.4 g"},
		{Name: "Protein", Amount: "5.4 g"}, {Name: "Salt", Amount: "< 0.01 g"},
	}
	if d := cmp.Diff(wantEU, f.EU().Rows); d != "" {
		t.Errorf("EU label (-want +got):\n%s", d)
	}
	wantUS := []food.Declared{ // of 1/20: 145.65 kcal, 8.258 g fat, 5.16 g saturated, 21.5 mg cholesterol, 1.45 mg sodium …
		{Name: "Calories", Amount: "150"}, {Name: "Total Fat", Amount: "8 g"}, {Name: "Saturated Fat", Amount: "5 g", Part: true},
		{Name: "Cholesterol", Amount: "20 mg"}, {Name: "Sodium", Amount: "0 mg"}, {Name: "Total Carbohydrate", Amount: "16 g"},
		{Name: "Dietary Fiber", Amount: "0 g", Part: true}, {Name: "Total Sugars", Amount: "5 g", Part: true}, {Name: "Protein", Amount: "2 g"},
	}
	us, _ := f.US()
	if d := cmp.Diff(wantUS, us.Rows); d != "" {
		t.Errorf("US label (-want +got):\n%s", d)
	}
}

// What the recipe says it makes. The number of a range is the smaller, as for
// scaling to pieces.
func TestPiecesAndFinishedWeight(t *testing.T) {
	for _, tc := range []struct {
		name, yield              string
		pieces, smallest, finish string // grams of a piece's share of 1200 g raw; "" for none
		words                    string
	}{
		{"a number", "Makes 16 knots", "75", "75", "", "1 of 16 knots"},
		{"a number alone", "Makes 12", "100", "100", "", "1 of 12 pieces"},
		{"a range", "Serves 6–8", "200", "150", "", "1 of 6 servings"},
		{"people", "For 4 people", "300", "300", "", "1 of 4 servings"},
		{"how it is eaten", "Serves 4 as a starter", "300", "300", "", "1 of 4 servings as a starter"},
		{"one", "Makes 1 loaf", "1200", "1200", "", "the whole loaf"},
		{"a weight", "Makes 900 g jam", "", "", "900", ""},
		{"a weight in pounds", "Makes about 2 lb", "", "", "907.18474", ""},
		{"a range of weights", "Makes 800–1000 g", "", "", "900", ""},
		{"words", "Serves a crowd", "", "", "", ""},
		{"nothing", "", "", "", "", ""},
	} {
		t.Run(tc.name, func(t *testing.T) {
			f := of(t, "Dish\n"+tc.yield+"\n\n1200 g plain flour\n")
			grams := func(totals food.Totals, ok bool) string {
				if !ok {
					return ""
				}
				return totals.Grams().String()
			}
			if got := grams(f.PerPiece()); got != tc.pieces {
				t.Errorf("a piece weighs %q, want %q", got, tc.pieces)
			}
			if got := grams(f.PerSmallestPiece()); got != tc.smallest {
				t.Errorf("the smallest piece weighs %q, want %q", got, tc.smallest)
			}
			if got := f.OnePiece(); got != tc.words {
				t.Errorf("it is %q, want %q", got, tc.words)
			}
			if tc.finish == "" {
				tc.finish = "0"
			}
			if !f.Finished.Equal(num(tc.finish)) {
				t.Errorf("finished it weighs %s, want %s", f.Finished, tc.finish)
			}
			if _, ok := f.US(); ok != (tc.pieces != "") {
				t.Errorf("a US label: %v", ok)
			}
		})
	}
}

func TestARangeOfPiecesIsNoted(t *testing.T) {
	f := of(t, "Stew\nServes 6–8\n\n1200 g plain flour\n")
	if !noted(f, "It makes 6 to 8: one is reckoned as one of 6, the largest.") {
		t.Errorf("notes: %q", f.Notes)
	}
}

func TestFinishedWeight(t *testing.T) {
	f := of(t, "Buns\nMakes 12\n\n1200 g plain flour\n")
	for _, tc := range []struct{ name, grams, piece, per100, words string }{
		{"raw", "0", "100", "100", "100 g of the raw mixture"},
		{"baked", "1020", "85", "2000/17", "100 g of the finished 1.02 kg"}, // 100 × 1200 ÷ 1020
		{"soaked up water", "2400", "200", "50", "100 g of the finished 2.4 kg"},
		{"nonsense is forgotten", "-5", "100", "100", "100 g of the raw mixture"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			g := f.WithFinished(num(tc.grams))
			if got, _ := g.PieceGrams(); !got.Equal(num(tc.piece)) {
				t.Errorf("a piece weighs %s, want %s", got, tc.piece)
			}
			if got := g.Per100().Grams(); !got.Equal(num(tc.per100)) {
				t.Errorf("100 g were %s g of what went in, want %s", got, tc.per100)
			}
			us, _ := g.US()
			if raw := strings.HasSuffix(us.Per, " raw)"); raw != g.Finished.IsZero() {
				t.Errorf("the US label is of %q", us.Per)
			}
			if got := g.Hundred(); got != tc.words {
				t.Errorf("Hundred = %q, want %q", got, tc.words)
			}
			if !f.Finished.IsZero() {
				t.Error("the facts themselves changed")
			}
		})
	}
}

// Of a range the middle counts; the size of a cup is the recipe's, then the
// show's.
func TestAmounts(t *testing.T) {
	for _, tc := range []struct {
		name, text string
		house      measure.System
		want       string // grams
	}{
		{"a range", "200–300 g plain flour", measure.US, "250"},
		{"a sum", "1 cup plus 1 tbsp whole milk", measure.US, "259"}, // 244 + 15
		{"a stated mass goes before the cup", "1 cup (120 g) plain flour", measure.US, "120"},
		{"US cup", "1 cup plain flour", measure.US, "125"},
		{"metric cup", "1 cup whole milk", measure.Metric, "257.83"}, // 244 × 250 ÷ 236.588
		{"packs", "2 × 400 g tins chopped tomatoes", measure.US, "800"},
		{"nothing", "0 g plain flour", measure.US, "0"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			l := larder(t)
			f := nutrition.Of(recipe.Reader{Larder: l}.Read("Dish\n\nIngredients\n"+tc.text+"\n"), recipe.Writer{Larder: l, House: tc.house})
			if got := f.Totals.Grams().Float(); !isNear(got, num(tc.want).Float()) {
				t.Errorf("%s = %g g, want %s", tc.text, got, tc.want)
			}
		})
	}
}

// TestDemoRecipes: every recipe of the demo show is covered by the built-in
// larder to nine tenths, and nothing but what is to taste has no amount.
func TestDemoRecipes(t *testing.T) {
	files, err := filepath.Glob(filepath.Join("..", "..", "seed", "demo", "recipes", "*.txt"))
	if err != nil || len(files) < 12 {
		t.Fatalf("%d recipes, %v", len(files), err)
	}
	for _, file := range files {
		t.Run(filepath.Base(file), func(t *testing.T) {
			text, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			f := of(t, string(text))
			if f.Covered.Cmp(num("0.9")) < 0 {
				t.Errorf("covered %s, want 0.9 or more; missing %v", f.Covered, f.Missing)
			}
			for _, m := range f.Missing {
				if m.Reason == nutrition.NotRead || m.Reason == nutrition.NoAmount || m.Reason == nutrition.NoWeight {
					t.Errorf("%q: %s: %s", m.Text, m.Reason, m.Say)
				}
			}
			piece, ok := f.PerPiece()
			if energy := holds(piece, food.EnergyKcal); !ok || energy < 50 || energy > 1200 {
				t.Errorf("a piece has %g kcal", energy)
			}
		})
	}
}
