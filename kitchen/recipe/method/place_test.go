package method_test

import (
	"testing"

	"benchproof/kitchen/recipe/method"
)

// Where a step happens and whether it needs hands: common practice, no source.
func TestPlace(t *testing.T) {
	for _, tt := range []struct {
		text, station string
		hands         bool
	}{
		{"Chop the onions.", "bench", true},
		{"Gently fold in the whites.", "bench", true},
		{"In a bowl, whisk the eggs.", "bench", true},
		{"Meanwhile, grate the cheese.", "bench", true},
		{"Then add the milk.", "bench", true},
		{"Season to taste.", "bench", true},
		{"The dough will be sticky.", "bench", true},
		{"Cream the butter with a hand mixer.", "mixer", true},
		{"Knead with the dough hook for 8 minutes.", "mixer", true},
		{"Whisk for 5 minutes with an electric whisk.", "mixer", true},
		{"Knead on medium-low for 5 minutes.", "mixer", true},
		{"Add the milk and mix on low for 3 minutes.", "mixer", true},
		{"Beat at high speed for 2 minutes.", "mixer", true},
		{"Beat the eggs, then cook on medium heat for 2 minutes.", "hob", true},
		{"Bake.", "oven", false},
		{"Preheat oven to 400°F.", "oven", false},
		{"oven to 200c", "oven", false},
		{"Put the pan in the oven while it heats.", "oven", false},
		{"Warm the plates in the oven.", "oven", false},
		{"Roast the peppers at 220 °C.", "oven", false},
		{"Blind-bake the case.", "oven", false},
		{"Cook at 160 °C for 2 hours.", "oven", false},
		{"Cook in a pan at 160 °C for 2 minutes.", "hob", true},
		{"Cook the honey to 121 °C.", "hob", true},
		{"Toast the almonds at 160 °C for 12 minutes.", "oven", false},
		{"Boil the potatoes for 20 minutes.", "hob", false},
		{"Bring the milk to a simmer.", "hob", true},
		{"Simmer the sauce.", "hob", false},
		{"Simmer, stirring, until thick.", "hob", true},
		{"Simmer, stirring from time to time, until thick.", "hob", false},
		{"Poach the eggs for 3 minutes.", "hob", false},
		{"Whisk over simmering water for 5 minutes.", "hob", true},
		{"Toast the seeds in a dry pan.", "hob", true},
		{"Sweat the leeks for 10 minutes.", "hob", true},
		{"Reduce by half.", "hob", false},
		{"Stir-fry for 3 minutes.", "hob", true},
		{"Deep-fry until golden.", "fryer", true},
		{"Fry in deep oil for 3 minutes.", "fryer", true},
		{"Grill until charred.", "grill", true},
		{"Char on the barbecue.", "grill", true},
		{"Place under a hot grill for 2 minutes.", "grill", true},
		{"Chill.", "fridge", false},
		{"Refrigerate for 2 hours.", "fridge", false},
		{"Leave to set in the fridge.", "fridge", false},
		{"Cover and put in the refrigerator overnight.", "fridge", false},
		{"Freeze until firm.", "freezer", false},
		{"Transfer to the freezer for 1 hour.", "freezer", false},
		{"Leave to rise for 1 hour.", "waits", false},
		{"Allow to cool.", "waits", false},
		{"Set aside.", "waits", false},
		{"Marinate for 4 hours.", "waits", false},
		{"Bloom the gelatine for 5 minutes.", "waits", false},
		{"Second prove, 45 minutes.", "waits", false},
		{"Spread out and dry for 3 hours.", "waits", false},
		{"Salt the aubergine and leave for 30 minutes.", "waits", false},
		{"Drain the curd in a cloth for 3 hours.", "waits", false},
	} {
		t.Run(tt.text, func(t *testing.T) {
			if got := method.Read(tt.text); got.Station != tt.station || got.HandsOn != tt.hands {
				t.Errorf("happens at %q, hands %t; want %q, %t", got.Station, got.HandsOn, tt.station, tt.hands)
			}
		})
	}
}
