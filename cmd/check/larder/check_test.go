package larder_test

import (
	"bufio"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"benchproof/cmd/check/larder"
	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/seed"

	"github.com/google/go-cmp/cmp"
)

// seedDir is the folder of the built-in tables.
const seedDir = "../../../seed"

func TestTheLarderAgreesWithTheDatabase(t *testing.T) {
	rows, problems, err := larder.Check(seedDir, referenceDir(t))
	if err != nil {
		t.Fatal(err)
	}
	if rows < 10_000 {
		t.Errorf("only %d figures were compared", rows)
	}
	for _, p := range problems {
		t.Error(p)
	}
}

func TestCheckSaysWhenTheReferenceIsMissing(t *testing.T) {
	rows, problems, err := larder.Check(seedDir, filepath.Join(t.TempDir(), "none"))
	if err != nil || rows != 0 {
		t.Fatalf("rows %d, err %v; want 0 and no error", rows, err)
	}
	if len(problems) != 1 || !strings.Contains(problems[0], "not checked: the USDA SR 26 tables are not in") {
		t.Errorf("problems = %q", problems)
	}
}

// rawWeights reads WEIGHT.txt anew, without the checker: grams per one, by NDB
// number.
func rawWeights(tb testing.TB, dir string) map[string][]measure.Number {
	tb.Helper()
	file, err := os.Open(filepath.Join(dir, "WEIGHT.txt"))
	if err != nil {
		tb.Fatal(err)
	}
	defer func() { _ = file.Close() }()
	raw := map[string][]measure.Number{}
	for lines := bufio.NewScanner(file); lines.Scan(); {
		f := strings.Split(lines.Text(), "^")
		ndb := strings.Trim(f[0], "~")
		raw[ndb] = append(raw[ndb], num(f[4]).Quo(num(f[2])))
	}
	return raw
}

// Two hundred lookups across the database: 2½ of a measure, weighed by the
// larder, must be 2½ times a weight of that food's rows. Source: SR 26, WEIGHT.
func TestTwoHundredLookupsAcrossTheDatabase(t *testing.T) {
	raw := rawWeights(t, referenceDir(t))
	l, err := seed.Larder()
	if err != nil {
		t.Fatal(err)
	}
	looked := 0
	for i, f := range l.Foods() {
		for j, w := range f.Weights {
			ndb, ours := strings.CutPrefix(w.Source, "USDA SR ")
			if !ours || (i+j)%3 != 0 { // every third, across all aisles
				continue
			}
			looked++
			system := measure.US.Or(w.System)
			weighed, err := f.Grams(measure.Of(num("5/2"), w.Unit), w.Form, system)
			if err != nil {
				t.Errorf("%s, %s %s: %v", f.Name, w.Unit, w.Form, err)
				continue
			}
			one := weighed.Grams.From.Quo(num("5/2"))
			if !slices.ContainsFunc(raw[ndb], func(g measure.Number) bool { return near(g, one, "0.0001") }) {
				t.Errorf("%s: 1 %s %s = %s g, SR %s has %v", f.Name, w.Unit, w.Form, measure.FormatDecimal(one, 4), ndb, raw[ndb])
			}
		}
	}
	if looked < 200 {
		t.Errorf("%d lookups, want 200 or more", looked)
	}
}

// writeTable lays a larder of one table under a new folder.
func writeTable(tb testing.TB, table string) string {
	tb.Helper()
	dir := tb.TempDir()
	if err := os.Mkdir(filepath.Join(dir, "larder"), 0o700); err != nil {
		tb.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(dir, "larder", "dairy.txt"), []byte(table), 0o600); err != nil {
		tb.Fatal(err)
	}
	return dir
}

const butterHead = "# by hand\naisle: Dairy and eggs\n\nbutter\n    id: butter\n    also: salted butter\n    source: USDA SR 01001\n"

const butterFilled = `# by hand
aisle: Dairy and eggs

butter
    id: butter
    also: salted butter
    source: USDA SR 01001
    weighs: cup 227, tbsp 14.2
    weighs (estimate): knob 15
    holds: water 16, energy 717, protein 0.85, fat 81, saturated 51.4, carbohydrate 0.06, fibre 0, sodium 576
    allergens: milk
    packs: 250 g block
`

func TestCheckFindsWhatDiffers(t *testing.T) {
	for _, tc := range []struct{ name, change, to, says string }{
		{"nothing", "", "", ""},
		{"a nutrient", "fat 81", "fat 80", "butter: fat 80, SR 01001 has 81"},
		{"a nutrient left out", "fat 81, ", "", "butter: fat is not given, SR 01001 has 81"},
		{"a nutrient the database has not", "fibre 0", "fibre 0, sugars 1", "butter: sugars is given, SR 01001 does not know it"},
		{"a weight", "cup 227", "cup 250", "butter: cup  250 g: SR 01001 has 227"},
		{"a measure the database has not", "cup 227", "cup 227, stick 113", "butter: stick  113 g: no measure of SR 01001 weighs that"},
		{"a measure it words otherwise", "cup 227", "cup 227, piece 5", ""},
		{"a food the database has not", "USDA SR 01001", "USDA SR 99999", "butter: the database has no food 99999"},
		{"an estimate after it is held to it", "source: USDA SR 01001", "source: estimate, as USDA SR 01001", ""},
		{"an estimate is not compared", "knob 15", "knob 30", ""},
	} {
		t.Run(tc.name, func(t *testing.T) {
			dir := writeTable(t, strings.Replace(butterFilled, tc.change, tc.to, 1))
			rows, problems, err := larder.Check(dir, smallReference(t))
			if err != nil || rows == 0 {
				t.Fatalf("rows %d, err %v", rows, err)
			}
			if tc.says == "" && len(problems) > 0 || tc.says != "" && !slices.Contains(problems, tc.says) {
				t.Errorf("problems = %q, want %q", problems, tc.says)
			}
		})
	}
}

func TestCheckNamesTheFileOfABadTable(t *testing.T) {
	_, _, err := larder.Check(writeTable(t, "aisle: Toys\n"), smallReference(t))
	if err == nil || !strings.Contains(err.Error(), "larder/dairy.txt, line 1:") {
		t.Errorf("err = %v, want the file and line", err)
	}
}

func TestFillWritesTheDatabasesFigures(t *testing.T) {
	dir := writeTable(t, butterHead+"    weighs: cup 200\n    weighs (estimate): knob 15\n    allergens: milk\n    packs: 250 g block\n")
	for range 2 { // a second time changes nothing
		if err := larder.Fill(dir, smallReference(t)); err != nil {
			t.Fatal(err)
		}
		got, err := os.ReadFile(filepath.Join(dir, "larder", "dairy.txt"))
		if err != nil {
			t.Fatal(err)
		}
		if d := cmp.Diff(butterFilled, string(got)); d != "" {
			t.Errorf("table (-want +got):\n%s", d)
		}
	}
}

func TestFillLeavesTheMeasuresOfAnEstimateToHands(t *testing.T) {
	dir := writeTable(t, strings.Replace(butterHead, "USDA", "estimate, as USDA", 1))
	if err := larder.Fill(dir, smallReference(t)); err != nil {
		t.Fatal(err)
	}
	foods, err := seed.ReadLarder(os.DirFS(dir))
	if err != nil {
		t.Fatal(err)
	}
	if len(foods[0].Weights) != 0 || foods[0].Per100.Get(food.Fat) == nil {
		t.Errorf("weights %v, fat %v; want none, and a figure", foods[0].Weights, foods[0].Per100.Get(food.Fat))
	}
}

func TestFillNamesTheFileOfABadTable(t *testing.T) {
	err := larder.Fill(writeTable(t, "aisle: Toys\n"), smallReference(t))
	if err == nil || !strings.Contains(err.Error(), "dairy.txt: line 1:") {
		t.Errorf("err = %v, want the file and line", err)
	}
	if err := larder.Fill(writeTable(t, ""), t.TempDir()); !os.IsNotExist(err) {
		t.Errorf("err = %v, want not exist", err)
	}
}
