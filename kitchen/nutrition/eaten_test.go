package nutrition_test

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/nutrition"
)

// TestFryingUptakeFitsFriedSeafood: the share taken up is what USDA SR 26 shows
// between raw and fried, to two grams in a hundred for the middle food.
func TestFryingUptakeFitsFriedSeafood(t *testing.T) {
	var gains []float64
	for _, row := range table(t, "fried.txt", 5) {
		gain := num(row[2]).Sub(num(row[4])).Float() / 100
		if gain < 0.05 || gain > 0.13 {
			t.Errorf("%s gains %.3f, far from a tenth", row[0], gain)
		}
		gains = append(gains, gain)
	}
	slices.Sort(gains)
	if middle, ours := gains[len(gains)/2], nutrition.FryingUptake.Float(); ours < middle-0.02 || ours > middle+0.02 {
		t.Errorf("FryingUptake is %g, the middle of the table %.3f", ours, middle)
	}
}

// What a pan is filled with stays there but for a tenth of the weight fried.
func TestFryingFat(t *testing.T) {
	const dip = "\nFry the fritters in the oil until golden.\n"
	for _, tc := range []struct {
		name, text string
		want       float64 // grams of oil that count
	}{
		{"said on the line", "400 g plain flour\n600 g whole milk\n1 kg sunflower oil, for deep-frying\n" + dip, 100},
		{"as deep fat", "400 g plain flour\n1 kg sunflower oil\n\nDeep-fry the fritters for 4 minutes.\n", 40},
		{"by a fryer", "400 g plain flour\n1 kg sunflower oil\n\nHeat the oil to 180 °C in a deep-fat fryer and deep-fry.\n", 40},
		{"without an amount", "400 g plain flour\n600 g whole milk\nsunflower oil, for deep-frying\n" + dip, 100},
		{"less than is taken up", "1 kg plain flour\n50 g sunflower oil, for deep-frying\n" + dip, 50},
		{"by the step's station", "400 g plain flour\n1 kg sunflower oil\n\nMethod\nFry in batches in the fryer for 4 minutes.\n", 40},
		{"shallow, over a fifth", "400 g plain flour\n100 g sunflower oil, for frying\n" + dip, 40},
		{"shallow, under a fifth", "400 g plain flour\n60 g sunflower oil, for frying\n" + dip, 60},
		{"what only sounds like it",
			"For the fish:\n500 g cod\n1 kg sunflower oil, for deep-frying\n\nFor the batter:\n100 g plain flour\n\nFor the sauce:\n500 g soured cream\n\nMethod\n" +
				"Whisk the flour until it is like soured cream.\nDip the cod in the batter and lower it into the oil.\nDeep-fry the cod for 5 minutes.\n", 60},
		{"shallow, much", "400 g plain flour\n200 g sunflower oil, for frying\n" + dip, 40},
		{"shallow, little", "400 g plain flour\n40 g sunflower oil, for frying\n" + dip, 40},
		{"for the salad", "400 g tomatoes\n200 g sunflower oil\n\nWhisk the oil.\n", 200},
		{"butter in a fried dough", "500 g plain flour\n100 g sunflower oil\n250 g whole milk\n\nMix with the oil, rest, and deep-fry the doughnuts.\n", 100},
		{"what is fried, not what is served with it",
			"For the fish:\n500 g cod\n1 kg sunflower oil, for deep-frying\n\nFor the sauce:\n500 g soured cream\n\nMethod\nStir the soured cream smooth.\nFry the cod in the oil for 5 minutes.\n", 50},
		{"a coating too",
			"500 g cod\n100 g plain flour\n200 g yoghurt\n1 kg sunflower oil, for deep-frying\n\nMethod\nToss the cod in the flour.\nDeep-fry the cod for 5 minutes.\nServe with the yoghurt.\n", 60},
		{"too little for so much fat",
			"500 g plain flour\n50 g caster sugar\n1 kg sunflower oil, for deep-frying\n\nMethod\nDeep-fry the rings for 5 minutes, then roll in the sugar.\n", 55},
	} {
		t.Run(tc.name, func(t *testing.T) {
			f := of(t, "Dish\n\nIngredients\n"+tc.text)
			l := line(t, f, "sunflower-oil")
			if got := l.Eaten.Float(); !isNear(got, tc.want) {
				t.Errorf("%g g of oil count, want %g; notes %q", got, tc.want, f.Notes)
			}
			if whole := l.Eaten.Equal(l.Weighed.Grams.To); whole != (l.Why == "") || noted(f, "stays in the pan") == whole {
				t.Errorf("why %q, notes %q", l.Why, f.Notes)
			}
		})
	}
}

// Two fats in one pan share what is taken up by their weight.
func TestTwoFryingFats(t *testing.T) {
	f := of(t, "Dish\n\nIngredients\n1 kg plain flour\n300 g sunflower oil, for deep-frying\n100 g lard, for deep-frying\n")
	for id, want := range map[string]float64{"sunflower-oil": 75, "lard": 25} {
		if got := line(t, f, id).Eaten.Float(); !isNear(got, want) {
			t.Errorf("%s: %g g count, want %g", id, got, want)
		}
	}
}

// A brine makes food and itself equally strong: 500 g in 500 g take half.
func TestBrineIsSharedWithTheFood(t *testing.T) {
	f := of(t, `Pickles
Makes 2 jars

For the jars
500 g cucumbers, sliced

For the brine
450 g water
50 g salt

Pour the hot brine over the cucumbers.
`)
	if got := line(t, f, "salt").Eaten; !got.Equal(num("25")) {
		t.Errorf("%s g of salt count, want 25", got)
	}
	if got := line(t, f, "water").Eaten; !got.IsZero() {
		t.Errorf("%s g of water count, want none", got)
	}
	for _, want := range []string{"450 g water: stays in the brine", "50 g salt: 50 % is counted, as much as makes food and brine equally strong"} {
		if !noted(f, want) {
			t.Errorf("no note %q in %q", want, f.Notes)
		}
	}
}

// The demo show's pickles come out between the sodium of sweet pickles (457 mg
// in 100 g) and sour ones (1,208 mg). Source: USDA SR 11940 and 11941.
func TestBrineComesOutAsSaltAsPickles(t *testing.T) {
	text, err := os.ReadFile(filepath.Join("..", "..", "seed", "demo", "recipes", "pickles-v1.txt"))
	if err != nil {
		t.Fatal(err)
	}
	if got := holds(of(t, string(text)).Per100(), food.SodiumMilligrams); got < 457 || got > 1208 {
		t.Errorf("100 g hold %.0f mg sodium, pickles 457 to 1,208", got)
	}
}

// TestWhatFoodStandsIn: which words of a recipe take a line off. want is the
// grams of salt that count.
func TestWhatFoodStandsIn(t *testing.T) {
	for _, tc := range []struct {
		name, text string
		want       float64
		note       string
	}{
		{"a brine thrown away", "1 kg chicken thighs\n\nBrine\n1 kg water\n60 g salt\n\nMethod\nLeave the chicken in the brine overnight.\nDiscard the brine and roast for 40 minutes.\n",
			0, "the brine is thrown away and not counted; what soaks in, salt above all"},
		{"lifted out of it", "1 kg chicken thighs\n\nBrine\n1 kg water\n60 g salt\n\nMethod\nLift the chicken out of the brine and roast for 40 minutes.\n", 0, "thrown away"},
		{"a dry brine", "1 kg chicken thighs\n\nDry brine\n20 g salt\n5 g caster sugar\n\nMethod\nRub in the salt and sugar.\n", 20, ""},
		{"said on the line", "1 kg chicken thighs\n1 kg water, for the brine\n60 g salt, for the brine\n\nMethod\nLift the chicken out of the brine.\n", 0, "thrown away"},
		{"a marinade", "1 kg chicken thighs\n\nMarinade\n200 g yoghurt\n10 g salt\n\nMethod\nMix the chicken with the marinade and bake.\n", 10, "The marinade is counted whole, because no step throws it away."},
		{"a marinade shaken off", "1 kg chicken thighs\n\nMarinade\n100 ml soy sauce\n10 g salt\n\nMethod\nShake off the marinade and grill.\n", 0, "the marinade is thrown away"},
		{"drained, but kept", "1 kg chicken thighs\n\nMarinade\n100 ml soy sauce\n10 g salt\n\nMethod\nDrain the chicken, reserving the marinade.\n", 10, "counted whole"},
		{"used later", "1 kg chicken thighs\n\nMarinade\n100 ml soy sauce\n10 g salt\n\nMethod\nLift the chicken from the marinade.\nBoil the marinade for 2 minutes and pour over.\n", 10, "counted whole"},
		{"pasta water", "200 g dried spaghetti\n2 litres water, for the pasta\n10 g salt, for the pasta water\n", 0, "poured away and not counted"},
		{"for boiling", "500 g potatoes\n10 g salt, for boiling\n", 0, "poured away"},
		{"poaching liquid", "4 eggs\n\nPoaching liquid\n1 litre water\n10 g salt\n", 0, "poured away"},
		{"poaching liquid made a sauce", "500 g cod\n\nPoaching liquid\n500 ml water\n10 g salt\n\nMethod\nStrain the poaching liquid and reduce it by half.\n", 10, ""},
		{"in boiling water", "250 ml boiling water\n10 g salt\n", 10, ""},
		{"for the top", "10 g salt, for the top\n", 10, ""},
	} {
		t.Run(tc.name, func(t *testing.T) {
			f := of(t, "Dish\n\nIngredients\n"+tc.text)
			if got := line(t, f, "salt").Eaten.Float(); got != tc.want {
				t.Errorf("%g g of salt count, want %g; notes %q", got, tc.want, f.Notes)
			}
			if tc.note != "" && !noted(f, tc.note) || tc.note == "" && noted(f, "counted") {
				t.Errorf("notes %q, want %q", f.Notes, tc.note)
			}
		})
	}
}

// What is soaked stands in the same list as its marinade, and is eaten.
func TestWhatIsSoakedIsEaten(t *testing.T) {
	f := of(t, "Dish\n\nMarinade\n1 kg chicken thighs\n300 g onions\n2 eggs\n100 ml soy sauce\n\nMethod\nDiscard the marinade.\n")
	for _, id := range []string{"chicken-thigh", "onion", "egg"} {
		found := false
		for _, l := range f.Lines {
			if l.Food != nil && strings.HasPrefix(l.Food.ID, id) {
				found = true
				if l.Eaten.IsZero() {
					t.Errorf("%s does not count", l.Food.ID)
				}
			}
		}
		if !found {
			t.Errorf("no line of %s", id)
		}
	}
	if got := line(t, f, "soy-sauce").Eaten; !got.IsZero() {
		t.Errorf("%s g of soy sauce count", got)
	}
}

// The larder's drained tin of chickpeas is 240 g of 400 g, of sweetcorn 260 g
// of 340 g.
func TestDrainedTins(t *testing.T) {
	for _, tc := range []struct {
		text  string
		want  float64
		noted bool
	}{
		{"2 × 400 g tins chickpeas, drained", 480, true},
		{"2 × 400 g tins chickpeas, drained and rinsed", 480, true},
		{"1 (15 oz) can chickpeas, drained", 255.146, true},
		{"1 × 340 g tin tinned sweetcorn, drained", 260, true},
		{"1 × 400 g tin chickpeas", 400, false},
		{"1 × 400 g tin chickpeas, undrained", 400, false},
		{"1 × 240 g tin chickpeas (drained weight)", 240, false},
		{"240 g chickpeas, drained", 240, false},
		{"1 × 400 g tin zorblax, drained", 240, true}, // unknown: three fifths of its mass
	} {
		t.Run(tc.text, func(t *testing.T) {
			f := of(t, "Dish\n\nIngredients\n"+tc.text+"\n")
			if got := f.Totals.Grams().Float(); !isNear(got, tc.want) {
				t.Errorf("%g g count, want %g", got, tc.want)
			}
			if noted(f, "the tin is drained") != tc.noted {
				t.Errorf("notes %q", f.Notes)
			}
		})
	}
}

// TestAlcoholLeft: each row of the published table, and between them the row
// before.
func TestAlcoholLeft(t *testing.T) {
	for _, row := range table(t, "alcohol.txt", 2) {
		want := num(row[1]).Quo(num("100"))
		for _, more := range []string{"0", "1", "14.9"} {
			if got := nutrition.AlcoholLeft(num(row[0]).Add(num(more))); !got.Equal(want) {
				t.Errorf("after %s + %s min %s is left, want %s", row[0], more, got, want)
			}
		}
	}
	if got := nutrition.AlcoholLeft(num("-1")); !got.Equal(num("1")) {
		t.Errorf("without heat %s is left, want all", got)
	}
}

// 1 kg of red wine holds 105.5 g of alcohol and 850 kcal (USDA SR 14096). With a
// tenth left, 94.95 g of it at 6.93 kcal a gram are gone: 192 kcal stay.
func TestAlcoholBoilsOff(t *testing.T) {
	for _, tc := range []struct {
		name, steps     string
		alcohol, energy float64
		note            string
	}{
		{"two hours", "Pour in the red wine and simmer for 2 hours.", 10.55, 850 - 94.95*6.93, "about 10 % of its alcohol is taken to be left after 2\u00a0h of heat"},
		{"two steps", "Pour in the red wine and simmer for 30 minutes.\nBake for 1 hour at 160 °C.", 21.1, 850 - 84.4*6.93, "about 20 %"},
		{"before it goes in", "Brown the beef for 1 hour.\nTake off the heat. Stir in the red wine.\nChill for 1 hour.", 105.5, 850, ""},
		{"something hot", "Boil up the red wine.", 89.675, 850 - 15.825*6.93, "about 85 % of its alcohol is taken to be left in something hot"},
		{"cold", "Stir in the red wine and chill for 2 hours.", 105.5, 850, ""},
		{"set alight", "Pour the red wine over and set it alight.", 79.125, 850 - 26.375*6.93, "about 75 % of its alcohol is taken to be left once it is set alight"},
		{"set alight, then boiled", "Pour the red wine over and set it alight.\nSimmer for 2 hours.", 10.55, 850 - 94.95*6.93, "about 10 %"},
		{"nobody says", "Brown the beef for 1 hour.", 105.5, 850, "all its alcohol is counted, because no step says when it goes in"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			f := of(t, "Dish\n\nIngredients\n1 kg red wine\n500 g stewing beef\n\nMethod\n"+tc.steps+"\n")
			wine := line(t, f, "red-wine").Adds
			if got := holds(wine, food.Alcohol); !isNear(got, tc.alcohol) {
				t.Errorf("%g g of alcohol, want %g; notes %q", got, tc.alcohol, f.Notes)
			}
			if got := holds(wine, food.EnergyKcal); !isNear(got, tc.energy) {
				t.Errorf("%g kcal, want %g", got, tc.energy)
			}
			if tc.note != "" && !noted(f, tc.note) || tc.note == "" && noted(f, "alcohol") {
				t.Errorf("notes %q, want %q", f.Notes, tc.note)
			}
		})
	}
}

// A spoon of vanilla extract is not worth a word, and is counted alike.
func TestLittleAlcoholIsNotNoted(t *testing.T) {
	f := of(t, "Dish\n\nIngredients\n1 tsp vanilla extract\n500 g whole milk\n\nMethod\nSimmer the milk and vanilla extract for 20 minutes.\n")
	if noted(f, "alcohol") {
		t.Errorf("notes %q", f.Notes)
	}
	vanilla := line(t, f, "vanilla-extract")
	if got, all := holds(vanilla.Adds, food.Alcohol), vanilla.Food.Nutrients(vanilla.Eaten).Alcohol.Float(); !isNear(got, all*0.4) {
		t.Errorf("%g g of alcohol, want two fifths of %g", got, all)
	}
}

// A step that names the component names what is in it.
func TestAlcoholOfAComponentBoilsOff(t *testing.T) {
	f := of(t, "Dish\n\nMarinade\n1 kg red wine\n1 onion\n\nBeef\n500 g stewing beef\n\nMethod\nSlice the onion for the marinade.\nPour the marinade over the beef and simmer for 2 hours.\n")
	if got := holds(line(t, f, "red-wine").Adds, food.Alcohol); !isNear(got, 10.55) {
		t.Errorf("%g g of alcohol, want a tenth of 105.5", got)
	}
}

// A table's energy may be less than that of its alcohol: never below nothing.
func TestEnergyIsNotNegative(t *testing.T) {
	l := stocked(map[string]map[food.Nutrient]string{"spirit": {food.EnergyKcal: "10", food.Alcohol: "40"}})
	f := from(l, "Dish\n\nIngredients\n100 g spirit\n\nMethod\nSimmer the spirit for 1 hour.\n")
	if got := holds(f.Totals, food.EnergyKcal); got != 0 {
		t.Errorf("%g kcal, want 0", got)
	}
}

// Wine and sugar that something is poached in are eaten with it; the water is
// not.
func TestWhatIsPoachedInWine(t *testing.T) {
	f := of(t, "Pears\n\nIngredients\n4 pears\n500 g red wine, for poaching\n100 g caster sugar, for poaching\n300 g water, for poaching\n")
	for id, want := range map[string]string{"red-wine": "500", "caster-sugar": "100", "water": "0"} {
		if got := line(t, f, id).Eaten; !got.Equal(num(want)) {
			t.Errorf("%s: %s g count, want %s", id, got, want)
		}
	}
}

// Of several tins the drained weight is that of the smallest that holds it.
func TestDrainedWeightIsOfTheSmallestTin(t *testing.T) {
	tinOf := func(grams string) food.Pack {
		return food.Pack{Amount: measure.Of(num(grams), measure.Gram), Name: "tin"}
	}
	l := food.NewLarder([]food.Food{{
		ID: "pulse", Name: "pulse", Aisle: "Tins and jars", Source: "made up",
		Weights: []food.Weight{{Unit: measure.Tin, Form: "drained", Grams: num("100"), Source: "made up"}},
		Packs:   []food.Pack{tinOf("800"), tinOf("90"), tinOf("200"), tinOf("400"), {Amount: measure.Of(num("110"), measure.Gram), Name: "bag"}},
	}})
	f := from(l, "Dish\n\nIngredients\n1 × 800 g tin pulse, drained\n")
	if got := f.Totals.Grams(); !got.Equal(num("400")) {
		t.Errorf("%s g count, want half of 800", got)
	}
}
