package food_test

import (
	"testing"

	"benchproof/kitchen/food"
)

func TestNutrientsAreNamedAndMeasured(t *testing.T) {
	for _, tc := range []struct {
		n          food.Nutrient
		word, unit string
	}{
		{food.Water, "water", "g"}, {food.EnergyKcal, "energy", "kcal"}, {food.Protein, "protein", "g"}, {food.Fat, "fat", "g"},
		{food.Saturated, "saturated", "g"}, {food.Carbohydrate, "carbohydrate", "g"}, {food.Sugars, "sugars", "g"}, {food.Fibre, "fibre", "g"},
		{food.SodiumMilligrams, "sodium", "mg"}, {food.Alcohol, "alcohol", "g"}, {food.CholesterolMilligrams, "cholesterol", "mg"},
		{food.CalciumMilligrams, "calcium", "mg"}, {food.Nutrient(-1), "nutrient", ""}, {food.Nutrient(99), "nutrient", ""},
	} {
		if tc.n.String() != tc.word || tc.n.Unit() != tc.unit {
			t.Errorf("%d is %q in %q, want %q in %q", int(tc.n), tc.n, tc.n.Unit(), tc.word, tc.unit)
		}
	}
	if n := len(food.AllNutrients()); n != 12 {
		t.Errorf("%d nutrients, want 12", n)
	}
}

func TestSetGivesACopy(t *testing.T) {
	one, two := num("1"), num("2")
	first := food.Nutrients{Fat: &one}
	second := first.Set(food.Fat, &two).Set(food.Sugars, &one)
	if !first.Get(food.Fat).Equal(one) || first.Get(food.Sugars) != nil {
		t.Errorf("the first was changed: %v", first)
	}
	if !second.Get(food.Fat).Equal(two) || !second.Sugars.Equal(one) {
		t.Errorf("second = %v", second)
	}
	if third := second.Set(food.Fat, nil); third.Fat != nil {
		t.Errorf("fat is %s, want not known", third.Fat)
	}
}

// Every field of Nutrients can be reached, and only once.
func TestEachNutrientHasItsOwnField(t *testing.T) {
	for _, n := range food.AllNutrients() {
		one := num("1")
		only := food.Nutrients{}.Set(n, &one)
		for _, other := range food.AllNutrients() {
			if got := only.Get(other); (got != nil) != (n == other) {
				t.Errorf("after setting %s, %s is %v", n, other, got)
			}
		}
	}
}

func TestSourcesThatAreEstimates(t *testing.T) {
	for source, want := range map[string]bool{
		"estimate": true, "estimate, as USDA SR 20081": true, "USDA SR 20081": false, "trade practice": false, "": false,
	} {
		if got := food.IsEstimate(source); got != want {
			t.Errorf("IsEstimate(%q) = %v, want %v", source, got, want)
		}
	}
}
