package verify_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/recipe"
)

// A recipe with pieces, basins, rates and steps that are alike.
const pudding = `Steamed Puddings

Serves 4 (about 12 puddings)

Batter
300 g plain flour
200 g soft butter
3 leeks, about 600 g trimmed
1 chicken, about 1.8 kg
400 g squash, in 3 cm chunks

Method
1. Boil the leeks for 4 minutes and drain.
2. Fry the squash in half the butter for 9 minutes.
3. Divide the dough into 12 balls of 80 g each and put each in a 1.2 litre pudding basin.
4. Steam the basins for 2 hours.
5. Roast the chicken for 20 minutes per 500 g.
6. Cool, then keep in a tin for up to 5 days.
`

// What steps state besides times and settings of ovens.
func TestStepsOfPudding(t *testing.T) {
	r := recipe.Reader{Larder: checker.Larder}.Read(pudding)
	for _, test := range []struct {
		name, said string
		want       []string
	}{
		{"what each weighs", "divide the dough into twelve balls, that's eighty grams a ball", nil},
		{"each weighs more", "divide the dough into twelve balls, that's a hundred and eighty grams each", []string{"differs: a hundred and eighty grams | 80 g"}},
		{"a basin", "into the basin, it wants to hold one point two litres, and steam the basins", nil},
		{"a basin too large", "into the pudding basin, it wants to hold two point one litres, and steam the basins", []string{"differs: two point one litres | 1.2 litre"}},
		{"another vessel", "I boil the leeks in a five litre pot", nil},
		{"a rate", "roast the chicken for forty minutes a kilo", nil},
		{"a rate too low", "roast the chicken for twenty minutes a kilo", []string{"differs: twenty minutes a kilo | 20 minutes per 500 g"}},
		{"times for one another", "boil the leeks for nine minutes and drain them. Then fry the squash in the butter for four minutes.", []string{"differs: nine minutes | 4 minutes", "differs: four minutes | 9 minutes"}},
		{"a wait", "and when it is cold it goes in the fridge for an hour before you turn it out", []string{"not written: an hour"}},
		{"a wait in a story", "my dad left it in the fridge for an hour and forgot about it", nil},
		{"a heat", "and I steam them until the probe reads ninety two degrees in the middle", []string{"not written: ninety two degrees"}},
		{"the weather", "it got to thirty eight degrees outside today", nil},
		{"size of the cut", "cut the squash into chunks of about three centimetres", nil},
		{"size of the cut, too large", "cut the squash into chunks of about eight centimetres", []string{"differs: eight centimetres | 3 cm"}},
		{"servings", "this does four", nil},
		{"too many servings", "it serves eight", []string{"differs: eight | Serves 4 (about 12 puddings)"}},
		{"pieces", "you should have about twelve of them", nil},
		{"too few pieces", "you should have about six of them", []string{"differs: six | Serves 4 (about 12 puddings)"}},
		{"weight behind the food", "three leeks, that's about six hundred grams with the tops off", nil},
		{"a bird by its weight", "this is the bird, it's about one point eight pounds", []string{"differs: one point eight pounds | 1 (unit)"}},
		{"weeks for days", "it keeps in the tin for up to five weeks", []string{"differs: five weeks | 5 days (unit)"}},
	} {
		t.Run(test.name, func(t *testing.T) {
			var got []string
			for _, f := range checker.Check(r, captions(test.said)).Findings {
				if f.Cue >= 0 && f.Said != "" {
					got = append(got, worded(f))
				}
			}
			if diff := cmp.Diff(test.want, got); diff != "" {
				t.Errorf("%s (-want +got):\n%s", test.said, diff)
			}
		})
	}
}

// Foods by other names than the recipe's, and foods that it does not have.
func TestSnippetsOfNames(t *testing.T) {
	runSnippets(t, []snippet{
		{"roast", "this is the bird, one point eight kilos of it", nil},
		{"sponge", "anchovy essence, a tablespoon of it", []string{"not written: a tablespoon"}},
		{"sponge", "then soy sauce, don't make a face, two teaspoons.", []string{"not written: two teaspoons"}},
		{"sponge", "and I put in whisky. It's three tablespoons, measured.", []string{"not written: three tablespoons"}},
		{"sponge", "frozen peas, I lob in a cup of them", []string{"not written: a cup"}},
		{"sponge", "and here's me secret, two squares of dark chocolate in at the end", []string{"not written: two"}},
		{"sponge", "a hundred and eighty grams of carbs in a slice of that, they say", nil},
		{"sponge", "somebody wanted their two litres of water a day", nil},
		{"sponge", "I've got nine eggs in the fridge, but four large eggs is what you want", nil},
		{"sponge", "four large eggs go in, and I've nine eggs in the fridge", nil},
	})
}
