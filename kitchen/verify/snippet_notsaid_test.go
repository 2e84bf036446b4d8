package verify_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/verify"
)

const rolls = `Seed Rolls

Makes 10

500 g bread flour
10 g salt
2 tsp honey
320 ml water
1 egg
1 onion, finely chopped
a pinch of nutmeg
pepper, to taste
50 g seeds (optional)

1. Mix the flour, salt, honey and water and knead for 10 minutes.
2. Prove for 1 hour.
3. Fry the onion for 8 minutes and fold it in. Prove in the fridge overnight.
4. Brush with the egg. Heat the oven to 220 °C / 200 °C fan.
5. Bake for 20 minutes.
`

// notSaid gives what a cut is found never to say.
func notSaid(r, said string) []string {
	var got []string
	for _, f := range checker.Check(read(r), captions(said)).Findings {
		if f.Kind == verify.NotSaid {
			got = append(got, f.Written)
		}
	}
	return got
}

func TestWhatIsNotSaid(t *testing.T) {
	const (
		lines = "Five hundred grams of bread flour, ten grams of salt, two teaspoons of honey and three hundred and twenty mil of water. "
		steps = "Knead for ten minutes and prove for an hour. Fry an onion for eight minutes, fold it in, and into the fridge overnight. "
		oven  = "Brush with an egg, oven to two twenty, and bake for twenty minutes."
	)
	tests := []struct {
		name, said string
		want       []string
	}{
		{"all is said", lines + steps + oven, nil},
		{"without full stops", "five hundred grams bread flour ten grams salt two teaspoons honey three hundred twenty mil water knead ten minutes prove an hour fry one onion eight minutes fridge overnight brush with one egg oven two twenty bake twenty minutes", nil},
		{"nothing but a greeting", "Hello and welcome, it's raining here.", []string{"500 g", "10 g", "2 tsp", "320 ml", "1", "1", "10 minutes", "1 hour", "8 minutes", "overnight", "220 °C / 200 °C fan", "20 minutes"}},
		{"an amount", "Bread flour, ten grams of salt, two teaspoons of honey and three hundred and twenty mil of water. " + steps + oven, []string{"500 g"}},
		{"a spoon", "Five hundred grams of bread flour, ten grams of salt, some honey and three hundred and twenty mil of water. " + steps + oven, []string{"2 tsp"}},
		{"said in ounces", "Eighteen ounces of bread flour, ten grams of salt, two teaspoons of honey and three hundred and twenty mil of water. " + steps + oven, nil},
		{"said wrong is said", "Four hundred grams of bread flour, ten grams of salt, two teaspoons of honey and three hundred and twenty mil of water. " + steps + oven, nil},
		{"said of another time", "Bread flour, and my gran used six hundred grams of flour. Ten grams of salt, two teaspoons of honey and three hundred and twenty mil of water. " + steps + oven, []string{"500 g"}},
		{"in parts", "Three hundred grams of the bread flour first, then another two hundred. Ten grams of salt, two teaspoons of honey and three hundred and twenty mil of water. " + steps + oven, nil},
		{"only as shares", "Half the bread flour, then the rest of the flour. Ten grams of salt, two teaspoons of honey and three hundred and twenty mil of water. " + steps + oven, []string{"500 g"}},
		{"the onion", lines + "Knead for ten minutes and prove for an hour. Fry the onions for eight minutes, fold them in, and into the fridge overnight. " + oven, []string{"1"}},
		{"hands at work", lines + "Knead, and prove for an hour. Fry an onion for eight minutes, fold it in, and into the fridge overnight. " + oven, []string{"10 minutes"}},
		{"the prove", lines + "Knead for ten minutes and let it prove. Fry an onion for eight minutes, fold it in, and into the fridge overnight. " + oven, []string{"1 hour"}},
		{"the night", lines + "Knead for ten minutes and prove for an hour. Fry an onion for eight minutes, fold it in, and prove it in the fridge. " + oven, []string{"overnight"}},
		{"the oven", lines + steps + "Brush with an egg and bake for twenty minutes.", []string{"220 °C / 200 °C fan"}},
		{"only the fan", lines + steps + "Brush with an egg, oven at two hundred fan, and bake for twenty minutes.", nil},
		{"in fahrenheit", lines + steps + "Brush with an egg, oven at four twenty five Fahrenheit, and bake for twenty minutes.", nil},
		{"the bake", lines + steps + "Brush with an egg, oven to two twenty, and bake until they're brown.", []string{"20 minutes"}},
		{"a cut without words", "", nil},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			if diff := cmp.Diff(test.want, notSaid(rolls, test.said)); diff != "" {
				t.Errorf("%s (-want +got):\n%s", test.said, diff)
			}
		})
	}
}

// One food in two components is said once for each.
func TestNotSaidByComponent(t *testing.T) {
	const r = "Buns\n\nDough\n60 g butter\n400 g flour\n\nFilling\n80 g butter\n50 g sugar\n\n1. Rub the 60 g butter into the flour.\n2. For the filling beat the butter with the sugar.\n"
	tests := []struct {
		name, said string
		want       []string
	}{
		{"both", "Rub sixty grams of butter into four hundred grams of flour. For the filling beat eighty grams of butter with fifty grams of sugar.", nil},
		{"the second is not", "Rub sixty grams of butter into four hundred grams of flour. For the filling beat the butter with fifty grams of sugar.", []string{"80 g"}},
		{"the first is not", "Rub the butter into four hundred grams of flour. For the filling beat eighty grams of butter with fifty grams of sugar.", []string{"60 g"}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			if diff := cmp.Diff(test.want, notSaid(r, test.said)); diff != "" {
				t.Errorf("%s (-want +got):\n%s", test.said, diff)
			}
		})
	}
}

// A number without its unit says the time or the heat of the step at hand.
func TestSaidWithoutItsUnit(t *testing.T) {
	const r = "Gravy\n\n300 ml chicken stock\n20 g butter\n\n1. Melt the butter and cool it for 15 minutes.\n2. Add the chicken stock and simmer for 5 minutes.\n3. Rest the gravy until it reads 74 °C.\n"
	const foods = "melt twenty grams of butter "
	tests := []struct {
		name, said string
		want       []string
	}{
		{"all bare", foods + "and let it cool for like fifteen then three hundred mil of chicken stock bubble it for five and rest the gravy until it wants to say seventy four", nil},
		{"none", foods + "let it cool then three hundred mil of chicken stock simmer it and rest the gravy", []string{"15 minutes", "5 minutes", "74 °C"}},
		{"another number", foods + "and let it cool for like fifty then three hundred mil of chicken stock bubble it for five and rest the gravy to seventy four degrees", nil},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			if diff := cmp.Diff(test.want, notSaid(r, test.said)); diff != "" {
				t.Errorf("%s (-want +got):\n%s", test.said, diff)
			}
		})
	}
}

// A host who leaves the minutes of handwork out is not told of each of them; one
// who says them is told of the one that is missing.
func TestTimesOfHandworkThatAHostLeavesOut(t *testing.T) {
	const r = "Tart\n\n100 g jam\n\n1. Rub the pastry for 5 minutes.\n2. Whisk the cream for 6 minutes.\n3. Beat the eggs for 7 minutes.\n4. Brush with the jam for 8 minutes.\n5. Bake for 40 minutes.\n"
	tests := []struct {
		name, said string
		want       []string
	}{
		{"all are left out", "Rub the pastry. Whisk the cream. Beat the eggs. Brush with a hundred grams of jam. Bake it.", []string{"40 minutes"}},
		{"one is", "Rub the pastry for five minutes. Whisk the cream for six minutes. Beat the eggs for seven minutes. Brush with a hundred grams of jam. Bake for forty minutes.", []string{"8 minutes"}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			if diff := cmp.Diff(test.want, notSaid(r, test.said)); diff != "" {
				t.Errorf("%s (-want +got):\n%s", test.said, diff)
			}
		})
	}
}

// "N of X" is X's, though "X juice" could be a food.
func TestAnAmountOfWaterBesideJuice(t *testing.T) {
	const r = "Syrup\n\n50 ml water\njuice of 1 lemon\n1 tbsp rum, or juice from the plums\n\nSimmer everything.\n"
	for said, want := range map[string][]string{
		"fifty mil of water juice of a lemon":                                                 nil,
		"five hundred mil of water juice of a lemon":                                          {"differs: five hundred mil | 50 ml (tenfold)"},
		"juice of a lemon and a tablespoon of that plum juice":                                nil,
		"two tablespoons of the plum juice and the juice of one lemon and fifty mil of water": {"differs: two tablespoons | 1 tbsp"},
	} {
		if diff := cmp.Diff(want, snippet{said: said}.findings(r)); diff != "" {
			t.Errorf("%s (-want +got):\n%s", said, diff)
		}
	}
}
