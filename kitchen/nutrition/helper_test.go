package nutrition_test

import (
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/nutrition"
	"benchproof/kitchen/recipe"
	"benchproof/seed"
)

func num(s string) measure.Number { return measure.MustNumber(s) }

// larder is the built-in larder.
func larder(tb testing.TB) *food.Larder {
	tb.Helper()
	l, err := seed.Larder()
	if err != nil {
		tb.Fatal(err)
	}
	return l
}

// of reckons a pasted text with the built-in larder and US measures.
func of(tb testing.TB, text string) nutrition.Facts {
	tb.Helper()
	l := larder(tb)
	return nutrition.Of(recipe.Reader{Larder: l}.Read(text), recipe.Writer{Larder: l, House: measure.US})
}

// holds is the sum of one nutrient.
func holds(t food.Totals, n food.Nutrient) float64 {
	sum, _ := t.Of(n)
	return sum.Float()
}

func isNear(got, want float64) bool { return math.Abs(got-want) <= 0.0005*math.Max(1, math.Abs(want)) }

// line gives what counts of the line whose food is called so in the text.
func line(tb testing.TB, f nutrition.Facts, id string) nutrition.Line {
	tb.Helper()
	for _, l := range f.Lines {
		if l.Food != nil && l.Food.ID == id {
			return l
		}
	}
	tb.Fatalf("no line of %s counts", id)
	return nutrition.Line{}
}

// table reads the rows of a file of testdata, their cells parted by "|".
func table(tb testing.TB, name string, cells int) [][]string {
	tb.Helper()
	text, err := os.ReadFile(filepath.Join("testdata", name))
	if err != nil {
		tb.Fatal(err)
	}
	var rows [][]string
	for _, l := range strings.Split(string(text), "\n") {
		if l == "" || strings.HasPrefix(l, "#") {
			continue
		}
		row := strings.Split(l, "|")
		for i := range row {
			row[i] = strings.TrimSpace(row[i])
		}
		if len(row) != cells {
			tb.Fatalf("%s: %q has %d cells, want %d", name, l, len(row), cells)
		}
		rows = append(rows, row)
	}
	if len(rows) == 0 {
		tb.Fatalf("%s has no rows", name)
	}
	return rows
}

// nutrientNamed gives a nutrient by its word.
func nutrientNamed(tb testing.TB, word string) food.Nutrient {
	tb.Helper()
	for _, n := range food.AllNutrients() {
		if n.String() == word {
			return n
		}
	}
	tb.Fatalf("no nutrient is called %q", word)
	return 0
}

// stocked is a larder of made-up foods, each given as its name and what 100 g
// hold; a tablespoon of each weighs 15 g.
func stocked(foods map[string]map[food.Nutrient]string) *food.Larder {
	var all []food.Food
	for name, values := range foods {
		f := food.Food{
			ID: strings.ReplaceAll(name, " ", "-"), Name: name, Aisle: "Other", Source: "made up",
			Weights: []food.Weight{{Unit: measure.Tablespoon, Grams: num("15"), Source: "made up"}},
		}
		for n, value := range values {
			v := num(value)
			f.Per100 = f.Per100.Set(n, &v)
		}
		all = append(all, f)
	}
	return food.NewLarder(all)
}

// from reckons a text with a made-up larder.
func from(l *food.Larder, text string) nutrition.Facts {
	return nutrition.Of(recipe.Reader{Larder: l}.Read(text), recipe.Writer{Larder: l, House: measure.US})
}

func noted(f nutrition.Facts, part string) bool {
	for _, n := range f.Notes {
		if strings.Contains(n, part) {
			return true
		}
	}
	return false
}
