package verify_test

import (
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/recipe"
	"benchproof/kitchen/verify"
)

const loaf = `Sesame loaf

Dough
500 g bread flour
2 tsp fine salt
300 ml water
100 g caster sugar
2 tbsp olive oil
3 large egg yolks
1 cup whole milk
4 cloves garlic
1 sachet instant yeast
400 g tin chickpeas

Glaze
50 g caster sugar
1 tbsp water

Method
1. Mix the flour, salt, sugar and water and knead for 10 minutes.
2. Cover and prove for 1 hour.
3. Divide into 12 pieces and roll each 30 cm long.
4. Heat the oven to 200 °C / 180 °C fan.
5. Bake for 25–30 minutes, until the middle reads 95 °C.
6. For the glaze, boil the sugar and water for 2 minutes.
7. Cool on a rack for 20 minutes.
`

// said checks one text against the loaf, without what it does not say.
func said(text string) []string {
	r := recipe.Reader{Larder: checker.Larder}.Read(loaf)
	var cues []verify.Cue
	for i, line := range strings.Split(text, "|") {
		cues = append(cues, verify.Cue{Start: time.Duration(i) * 4 * time.Second, End: time.Duration(i+1) * 4 * time.Second, Text: line})
	}
	var got []string
	for _, f := range checker.Check(r, cues).Findings {
		if f.Kind != verify.NotSaid {
			got = append(got, strings.TrimSpace(string(f.Kind)+" "+string(f.Slip)+": "+f.Said+" / "+f.Written))
		}
	}
	return got
}

func TestCheck(t *testing.T) {
	tests := []struct {
		name, text string
		want       []string
	}{
		{"agrees", "Five hundred grams of bread flour, two teaspoons of salt.", nil},
		{"differs", "now four hundred grams of bread flour goes in", []string{"differs : four hundred grams / 500 g"}},
		{"tablespoon for teaspoon", "add two tablespoons of salt", []string{"differs unit: two tablespoons / 2 tsp"}},
		{"tenfold", "fifty grams of bread flour", []string{"differs tenfold: fifty grams / 500 g"}},
		{"kilos for grams", "half a kilo of bread flour", nil},
		{"litres for millilitres", "three hundred litres of water", []string{"differs unit: three hundred litres / 300 ml"}},
		{"ounces", "that's about eighteen ounces of bread flour", nil},
		{"cups of flour", "four cups of bread flour", nil},
		{"too many cups of flour", "six cups of bread flour", []string{"differs : six cups / 500 g"}},
		{"metric for a cup", "two hundred and fifty mil of whole milk", nil},
		{"split over two cues", "and now five|hundred grams of bread flour", nil},
		{"split and wrong", "and now six|hundred grams of bread flour", []string{"differs : six hundred grams / 500 g"}},
		{"behind its food", "then the bread flour, and of that you want six hundred grams", []string{"differs : six hundred grams / 500 g"}},
		{"food first, right", "bread flour five hundred grams salt two teaspoons water three hundred mil", nil},
		{"food first, wrong", "bread flour five hundred grams salt three teaspoons water three hundred mil", []string{"differs : three teaspoons / 2 tsp"}},
		{"yolks", "four egg yolks", []string{"differs : four / 3"}},
		{"yolks by size", "three large egg yolks, that's three", nil},
		{"garlic cloves", "four garlic cloves, crushed", nil},
		{"cloves of garlic", "forty cloves of garlic", []string{"differs tenfold: forty cloves / 4 cloves"}},
		{"a tin", "a tin of chickpeas, drained", nil},
		{"the tin's size", "an 800 gram tin of chickpeas", []string{"differs : 800 gram / 400 g tin"}},
		{"two tins", "two tins of chickpeas", []string{"differs : two tins / 400 g tin"}},
		{"in parts", "half of the sugar now and the rest later on", nil},
		{"parts that add up", "sixty grams of the sugar goes in the dough first and then another forty grams of the sugar", nil},
		{"by component", "now the glaze: fifty grams of caster sugar and a tablespoon of water", nil},
		{"by component, wrong", "for the glaze you boil seventy grams of caster sugar with a tablespoon of water", []string{"differs : seventy grams / 50 g"}},
		{"kneading", "knead it for twenty minutes", []string{"differs : twenty minutes / 10 minutes"}},
		{"proving", "cover it and let it prove for an hour", nil},
		{"hours for minutes", "knead it for ten hours", []string{"differs unit: ten hours / 10 minutes"}},
		{"within the range", "and bake it twenty eight minutes until golden", nil},
		{"beyond the range", "and bake it for thirty five minutes until golden", []string{"differs : thirty five minutes / 25–30 minutes"}},
		{"the oven", "oven on at two hundred or one eighty fan", nil},
		{"the oven in fahrenheit", "heat the oven to 400 Fahrenheit", nil},
		{"the oven wrong in fahrenheit", "heat the oven to 450 Fahrenheit", []string{"differs : 450 Fahrenheit / 200 °C / 180 °C fan"}},
		{"celsius for fahrenheit", "heat the oven to 200 Fahrenheit", []string{"differs unit: 200 Fahrenheit / 200 °C / 180 °C fan"}},
		{"a pair", "the oven goes to two hundred degrees, or one ninety fan", []string{"pair : two hundred degrees, or one ninety fan / 200 °C / 180 °C fan"}},
		{"the core", "bake it until the thermometer reads ninety five degrees in the middle", nil},
		{"the core, wrong", "bake it until the thermometer reads eighty five degrees in the middle", []string{"differs : eighty five degrees / 95 °C"}},
		{"pieces", "divide the dough into ten pieces", []string{"differs : ten / 12 pieces"}},
		{"length", "roll each of them forty centimetres long", []string{"differs : forty centimetres / 30 cm"}},
		{"not written", "and add fifty grams of raisins", []string{"not written : fifty grams /"}},
		{"taken back", "four hundred, sorry, five hundred grams of bread flour", nil},
		{"last time", "last time I used four hundred grams of bread flour", nil},
		{"instead of", "use five hundred grams of bread flour instead of the four hundred grams of flour you may know", nil},
		{"a price", "the bread flour is five dollars and the salt two", nil},
		{"a bag", "a bag of bread flour weighs a kilo and a half", nil},
		{"a walk", "I walk for twenty minutes while it proves", nil},
		{"people", "three people asked for it in 2019", nil},
		{"minutes in", "ten minutes in, turn the tray in the oven", nil},
		{"weather", "it was thirty five degrees outside when I baked it", nil},
		{"no punctuation", "so you need five hundred grams bread flour two teaspoons fine salt three hundred mil water a hundred grams caster sugar two tablespoons olive oil", nil},
		{"total of both", "that's a hundred and fifty grams of caster sugar in all", nil},
		{"another name", "five hundred grams of strong flour", nil},
		{"yeast", "one sachet of yeast", nil},
		{"two sachets", "two sachets of instant yeast", []string{"differs : two sachets / 1 sachet"}},
		{"about", "about half a litre of milk", []string{"differs : half a litre / 1 cup"}},
		{"a third of a cup", "a third of a cup of whole milk", []string{"differs : a third of a cup / 1 cup"}},
		{"recipe read with numbers", "we are on step 3 of 7, at minute 12", nil},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			if diff := cmp.Diff(test.want, said(test.text)); diff != "" {
				t.Errorf("%s (-want +got):\n%s", test.text, diff)
			}
		})
	}
}
