package larder_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"benchproof/cmd/check/larder"
	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
)

func num(s string) measure.Number { return measure.MustNumber(s) }

// referenceDir finds the database's folder beside or above the repository; it
// skips the test where there is none.
func referenceDir(tb testing.TB) string {
	tb.Helper()
	dir, err := os.Getwd()
	if err != nil {
		tb.Fatal(err)
	}
	for {
		candidate := filepath.Join(dir, "shared", "reference", "usda-sr")
		if _, err := os.Stat(filepath.Join(candidate, "ABBREV.txt")); err == nil {
			return candidate
		}
		parent := filepath.Dir(dir)
		if parent == dir {
			tb.Skip("the USDA SR 26 tables are not at hand")
		}
		dir = parent
	}
}

func load(tb testing.TB) *larder.Reference {
	tb.Helper()
	ref, err := larder.Load(referenceDir(tb))
	if err != nil {
		tb.Fatal(err)
	}
	return ref
}

// per gives the grams of one of a measure, by its exact text.
func per(tb testing.TB, ref *larder.Reference, ndb, text string) measure.Number {
	tb.Helper()
	for _, m := range ref.Measures(ndb) {
		if m.Text == text {
			return m.Grams
		}
	}
	tb.Fatalf("SR %s has no measure %q", ndb, text)
	return measure.Number{}
}

func near(a, b measure.Number, by string) bool {
	d := a.Sub(b)
	return d.Cmp(num(by)) <= 0 && num(by).Add(d).Sign() >= 0
}

// The ten worked lookups of the database's README (SR 26, 2013): the figures
// are read from the files, the arithmetic is ours, the results are the README's.
func TestTenWorkedLookups(t *testing.T) {
	ref := load(t)
	row := func(ndb string) larder.Row {
		r, ok := ref.Row(ndb)
		if !ok {
			t.Fatalf("no row %s", ndb)
		}
		return r
	}
	of := func(ndb string, n food.Nutrient, grams string) measure.Number {
		return row(ndb).Get(n).Mul(num(grams)).Quo(num("100"))
	}
	for _, tc := range []struct {
		name      string
		got       measure.Number
		want, tol string
	}{
		{"1 spoon to grams: 3 tbsp honey", per(t, ref, "19296", "tbsp").Mul(num("3")), "63", "0"},
		{"1 by its cup", per(t, ref, "19296", "cup").Mul(num("3/16")), "63.6", "0.04"},
		{"2 brown sugar unpacked", per(t, ref, "19334", "cup unpacked"), "145", "0"},
		{"2 brown sugar packed", per(t, ref, "19334", "cup packed"), "220", "0"},
		{"3 amount is not 1: peanut butter", per(t, ref, "16098", "tbsp"), "16", "0"},
		{"4 half-cup row: tofu", per(t, ref, "16126", "cup"), "252", "0"},
		{"5 only a cup: arrowroot, 1 tsp", per(t, ref, "20003", "cup").Quo(num("48")), "2.67", "0.005"},
		{"6 cream fluid", per(t, ref, "01053", "cup, fluid (yields 2 cups whipped)"), "238", "0"},
		{"6 cream whipped", per(t, ref, "01053", "cup, whipped"), "120", "0"},
		{"7 milk, kcal", of("01077", food.EnergyKcal, "250"), "152.5", "0"},
		{"7 milk, protein", of("01077", food.Protein, "250"), "7.9", "0.05"},
		{"7 milk, calcium", of("01077", food.CalciumMilligrams, "250"), "282.5", "0"},
		{"8 yolks, grams", per(t, ref, "01125", "large").Mul(num("2")), "34", "0"},
		{"8 yolks, kcal", of("01125", food.EnergyKcal, "34"), "109", "0.5"},
		{"8 yolks, fat", of("01125", food.Fat, "34"), "9.0", "0.05"},
		{"8 yolks, cholesterol", of("01125", food.CholesterolMilligrams, "34"), "369", "0.5"},
		{"9 bananas as bought, edible", num("500").Mul(num("100").Sub(row("09040").Refuse)).Quo(num("100")), "320", "0"},
		{"9 bananas, kcal", of("09040", food.EnergyKcal, "320"), "285", "0.5"},
		{"10 salt, sodium of 1 tsp", of("02047", food.SodiumMilligrams, per(t, ref, "02047", "tsp").String()), "2325", "0.5"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			if !near(tc.got, num(tc.want), tc.tol) {
				t.Errorf("got %s, want %s ± %s", measure.FormatDecimal(tc.got, 3), tc.want, tc.tol)
			}
		})
	}
}

// Wine's alcohol is what its other parts leave to 100 g. Source: SR 26 14096;
// red table wine holds 10.6 g (SR 26, nutrient 221, from memory).
func TestAlcoholIsTheRest(t *testing.T) {
	ref := load(t)
	wine, _ := ref.Row("14096")
	if wine.Alcohol == nil || !near(*wine.Alcohol, num("10.6"), "0.1") {
		t.Errorf("red wine: alcohol %v, want about 10.6 g", wine.Alcohol)
	}
	for _, ndb := range []string{"01077", "14148", "19335"} { // milk, cola, sugar
		if row, _ := ref.Row(ndb); row.Alcohol != nil {
			t.Errorf("%s: alcohol %s, want none", row.Name, row.Alcohol)
		}
	}
}

func TestWeightsReadTheDatabasesWords(t *testing.T) {
	ref := load(t)
	for _, tc := range []struct{ name, ndb, unit, form, grams string }{
		{"form behind a comma", "11282", "cup", "chopped", "160"},
		{"form without a comma", "11282", "cup", "sliced", "115"},
		{"fluid is the plain form", "01053", "cup", "", "238"},
		{"whole cup before half a cup doubled", "01036", "cup", "", "246"},
		{"half cup doubled", "16126", "cup", "", "252"},
		{"size with a diameter", "09003", "each", "medium", "182"},
		{"size behind the noun", "01123", "each", "extra large", "56"},
		{"unit of a size", "11143", "stalk", "medium", "40"},
		{"several pieces", "11297", "sprig", "", "1"},
		{"not packed", "09298", "cup", "unpacked", "145"},
		{"the food's own noun", "11979", "each", "", "14"},
		{"envelope", "19177", "packet", "", "7"},
		{"US can", "16358", "tin", "", "253"},
		{"tablespoon in full", "04053", "tbsp", "", "13.5"},
		{"fluid ounces", "14429", "fl oz", "", "29.6"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			unit, ok := measure.ParseUnit(tc.unit)
			if !ok {
				t.Fatalf("no unit %s", tc.unit)
			}
			for _, w := range ref.Weights(tc.ndb) {
				if w.Unit == unit && w.Form == tc.form {
					if !w.Grams.Equal(num(tc.grams)) {
						t.Errorf("%s g, want %s", w.Grams, tc.grams)
					}
					if (w.System == measure.US) != (unit == measure.Tin) {
						t.Errorf("system %q", w.System)
					}
					return
				}
			}
			t.Errorf("SR %s has no %s %s", tc.ndb, tc.unit, tc.form)
		})
	}
	for _, w := range ref.Weights("19296") {
		if strings.Contains(string(w.Unit), "serving") || w.Form == "individual" {
			t.Errorf("honey: %+v is no measure of the larder", w)
		}
	}
	if got := ref.Weights("99999"); got != nil {
		t.Errorf("a food that is not there has %v", got)
	}
}

func TestLoadSaysWhatIsWrong(t *testing.T) {
	if _, err := larder.Load(filepath.Join(t.TempDir(), "none")); !os.IsNotExist(err) {
		t.Errorf("no folder: %v, want not exist", err)
	}
	for _, tc := range []struct{ name, file, text, says string }{
		{"too few fields", "FOOD_DES.txt", "~01001~^~0100~\r\n", "FOOD_DES.txt:1: 2 fields, want 14"},
		{"no description", "ABBREV.txt", "~99999~" + strings.Repeat("^", 52) + "\r\n", "ABBREV.txt:1: NDB 99999 has no description"},
		{"a figure that is none", "ABBREV.txt", "~01001~^~B~^x" + strings.Repeat("^", 50) + "\r\n", "ABBREV.txt:1:"},
		{"amount of nothing", "WEIGHT.txt", "~01001~^1^0^~cup~^227^^\r\n", `WEIGHT.txt:1: amount "0"`},
		{"weight that is none", "WEIGHT.txt", "~01001~^1^1^~cup~^x^^\r\n", "WEIGHT.txt:1:"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			dir := smallReference(t)
			if err := os.WriteFile(filepath.Join(dir, tc.file), []byte(tc.text), 0o600); err != nil {
				t.Fatal(err)
			}
			if _, err := larder.Load(dir); err == nil || !strings.Contains(err.Error(), tc.says) {
				t.Errorf("err = %v, want %q", err, tc.says)
			}
		})
	}
}

// smallReference writes a database of one made-up food.
func smallReference(tb testing.TB) string {
	tb.Helper()
	dir := tb.TempDir()
	fields := make([]string, 53)
	for column, figure := range map[int]string{0: "~01001~", 1: "~BUTTER~", 2: "16", 3: "717", 4: "0.85", 5: "81", 6: "2", 7: "0.06", 8: "0", 15: "576", 44: "51.4", 52: "0"} {
		fields[column] = figure
	}
	for name, text := range map[string]string{
		"FOOD_DES.txt": "~01001~^~0100~^~Butter, salted~^~BUTTER~" + strings.Repeat("^", 10) + "\r\n",
		"ABBREV.txt":   strings.Join(fields, "^") + "\r\n",
		"WEIGHT.txt":   "~01001~^1^2^~tbsp~^28.4^^\r\n~01001~^2^1^~cup~^227^^\r\n~01001~^3^1^~serving~^14^^\r\n~01001~^4^1^~pat (1\" sq, 1/3\" high)~^5^^\r\n",
	} {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o600); err != nil {
			tb.Fatal(err)
		}
	}
	return dir
}
