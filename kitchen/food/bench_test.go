package food_test

import (
	"fmt"
	"strings"
	"testing"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
)

// stocked gives a larder of n foods: the built-in ones, then made-up ones that
// share their nouns, so that the index is no easier for them.
func stocked(tb testing.TB, n int) *food.Larder {
	tb.Helper()
	var foods []food.Food
	for _, f := range larder(tb).Foods() {
		foods = append(foods, *f)
	}
	for i := 0; len(foods) < n; i++ {
		f := foods[i]
		f.ID = fmt.Sprintf("%s-%d", f.ID, i)
		f.Name = fmt.Sprintf("valley%d %s", i, f.Name)
		names := f.Names
		f.Names = nil
		for _, name := range names {
			f.Names = append(f.Names, fmt.Sprintf("hill%d %s", i, name))
		}
		foods = append(foods, f)
	}
	return food.NewLarder(foods[:n])
}

// BenchmarkMatch bounds what a name costs in a larder of n foods, by the way it
// is found. The mark is 20 µs at n=2000.
func BenchmarkMatch(b *testing.B) {
	for _, n := range []int{500, 1000, 2000} {
		l := stocked(b, n)
		for _, name := range []struct{ way, written string }{
			{"exact", "unsalted butter"},
			{"modifiers", "finely chopped fresh flat-leaf parsley"},
			{"turned", "butter (unsalted), cut into cubes and chilled"},
			{"head", "marmande tomatoes"},
			{"slip", "finely grated parmesean cheese"},
			{"none", "hand-painted porcelain teapot lids"},
			{"worst", strings.TrimSpace(strings.Repeat("oil and vinegar ", 8))},
		} {
			b.Run(fmt.Sprintf("n=%d/%s", n, name.way), func(b *testing.B) {
				b.ReportAllocs()
				for b.Loop() {
					l.Match(name.written)
				}
			})
		}
	}
}

// BenchmarkMatchNames is the typical case: every name of testdata/names.txt in
// turn, in a larder of 2,000 foods; a figure is for one name.
func BenchmarkMatchNames(b *testing.B) {
	l := stocked(b, 2000)
	rows := readRows(b, "testdata/names.txt", 3)
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		l.Match(rows[i%len(rows)][0])
	}
}

// BenchmarkNewLarder bounds what a start costs, and a learned name.
func BenchmarkNewLarder(b *testing.B) {
	var foods []food.Food
	for _, f := range stocked(b, 2000).Foods() {
		foods = append(foods, *f)
	}
	b.Run("new n=2000", func(b *testing.B) {
		for b.Loop() {
			food.NewLarder(foods)
		}
	})
	l := food.NewLarder(foods)
	b.Run("learn 100", func(b *testing.B) {
		names := map[string]string{}
		for i := range 100 {
			names[fmt.Sprintf("secret %d", i)] = "egg"
		}
		for b.Loop() {
			l.Learn(names)
		}
	})
}

// BenchmarkGrams bounds the weighing of one line.
func BenchmarkGrams(b *testing.B) {
	f := item(b, "onion")
	amount := measure.Of(num("3/2"), measure.Cup)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := f.Grams(amount, "large chopped", measure.Metric); err != nil {
			b.Fatal(err)
		}
	}
}
