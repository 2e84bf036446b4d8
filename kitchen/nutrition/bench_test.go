package nutrition_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/nutrition"
	"benchproof/kitchen/recipe"
)

// thirty is a recipe of thirty lines and nine steps in three components.
const thirty = `Harbour pie
Serves 8

Pastry
300 g plain flour
150 g unsalted butter
1 large egg yolk
2–3 tbsp cold water
½ tsp salt
1 tbsp whole milk
1 large egg
1 tsp caster sugar
50 g lard
20 g cornflour

Filling
600 g stewing beef
2 tbsp plain flour
3 tbsp olive oil
2 onions, chopped
3 cloves garlic, crushed
2 carrots, sliced
2 celery stalks, sliced
1 cup red wine
500 ml beef stock
1 tbsp tomato purée
2 × 400 g tins chopped tomatoes
1 × 400 g tin cannellini beans, drained
2 bay leaves
4 sprigs thyme

Mash
1 kg potatoes
10 g salt, for boiling
2 litres water, for boiling
100 ml whole milk
50 g unsalted butter
salt and black pepper, to taste

Method
Rub the butter into the flour and salt, add the yolk and water, and chill for 30 minutes.
Toss the beef in the flour and brown it in the oil for 10 minutes.
Add the onions, garlic, carrots and celery and cook for 8 minutes.
Pour in the red wine and simmer for 5 minutes.
Add the stock, tomatoes, beans, bay leaves and thyme and simmer for 90 minutes.
Boil the potatoes for 20 minutes and drain.
Mash the potatoes with the milk and butter.
Roll out the pastry and line a tin.
Fill and bake for 35 minutes at 180 °C.
`

// BenchmarkOf bounds what a recipe sheet pays for its figures, the reading left
// out.
func BenchmarkOf(b *testing.B) {
	l := larder(b)
	w := recipe.Writer{Larder: l, House: measure.US}
	sixty, err := os.ReadFile(filepath.Join("..", "recipe", "testdata", "recipes", "sixty-lines.txt"))
	if err != nil {
		b.Fatal(err)
	}
	ten, _, _ := strings.Cut(thirty, "\nFilling")
	for _, bm := range []struct{ name, text string }{{"10 lines", ten}, {"30 lines", thirty}, {"60 lines", string(sixty)}} {
		r := recipe.Reader{Larder: l}.Read(bm.text)
		b.Run(bm.name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if f := nutrition.Of(r, w); f.Covered.IsZero() {
					b.Fatal("nothing is covered")
				}
			}
		})
	}
}

// BenchmarkLabels bounds wording both blocks.
func BenchmarkLabels(b *testing.B) {
	f := of(b, thirty)
	b.ReportAllocs()
	for b.Loop() {
		if _, ok := f.US(); !ok || len(f.EU().Rows) == 0 {
			b.Fatal("no labels")
		}
	}
}
