package food_test

import (
	"testing"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"

	"pgregory.net/rapid"
)

// Source: USDA SR 26 README, worked lookups 7 and 8: nutrients by weight, and
// from a count.
func TestNutrientsOfAWeight(t *testing.T) {
	milk := item(t, "whole-milk").Nutrients(num("250"))
	for n, want := range map[food.Nutrient]string{
		food.EnergyKcal: "152.5", food.Protein: "7.875", food.CalciumMilligrams: "282.5",
	} {
		if got := milk.Get(n); got == nil || !got.Equal(num(want)) {
			t.Errorf("250 g milk: %s = %v, want %s", n, got, want)
		}
	}
	yolk := item(t, "egg-yolk")
	weighed, err := yolk.Grams(measure.Of(num("2"), measure.Each), "large", measure.US)
	if err != nil {
		t.Fatal(err)
	}
	held := yolk.Nutrients(weighed.Grams.From)
	for n, want := range map[food.Nutrient]string{ // 34 g × 322 kcal, 26.54 g, 1085 mg per 100 g
		food.EnergyKcal: "109.48", food.Fat: "9.0236", food.CholesterolMilligrams: "368.9",
	} {
		if got := held.Get(n); got == nil || !got.Equal(num(want)) {
			t.Errorf("2 yolks: %s = %v, want %s", n, got, want)
		}
	}
}

func TestNutrientsNotKnownStayUnknown(t *testing.T) {
	if got := madeUp(map[food.Nutrient]string{food.Fat: "1"}).Nutrients(num("50")).Get(food.Sugars); got != nil {
		t.Errorf("sugars = %v, want not known", got)
	}
}

func TestTotalsCoverWhatIsKnown(t *testing.T) {
	known := madeUp(map[food.Nutrient]string{food.EnergyKcal: "100", food.Water: "80"})
	total := food.Totals{}.Add(known, num("300")).AddUnknown(num("100"))
	if got := total.Covered(); !got.Equal(num("3/4")) {
		t.Errorf("covered = %s, want 3/4", got)
	}
	if got := total.Grams(); !got.Equal(num("400")) {
		t.Errorf("grams = %s, want 400", got)
	}
	if sum, share := total.Of(food.Water); !sum.Equal(num("240")) || !share.Equal(num("3/4")) {
		t.Errorf("water = %s, share %s; want 240, 3/4", sum, share)
	}
	if got := total.Nutrients().Get(food.Sugars); got != nil {
		t.Errorf("sugars = %v, want not known", got)
	}
	if got := total.Add(known, num("-5")).AddUnknown(num("-5")).Grams(); !got.Equal(num("400")) {
		t.Errorf("after adding nothing grams = %s, want 400", got)
	}
	if sum, share := (food.Totals{}).Of(food.Fat); !sum.IsZero() || !share.IsZero() {
		t.Errorf("of nothing: %s, share %s", sum, share)
	}
}

func TestTotalsPer100(t *testing.T) {
	total := food.Totals{}.Add(madeUp(map[food.Nutrient]string{food.EnergyKcal: "100"}), num("200"))
	for _, tc := range []struct{ name, finished, want string }{
		{"as it went in", "0", "100"},
		{"baked out to 160 g", "160", "125"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			per := total.Per100(num(tc.finished))
			if got, _ := per.Of(food.EnergyKcal); !got.Equal(num(tc.want)) {
				t.Errorf("energy per 100 g = %s, want %s", got, tc.want)
			}
		})
	}
	if got := (food.Totals{}).Per100(num("0")).Grams(); !got.IsZero() {
		t.Errorf("100 g of nothing weigh %s", got)
	}
}

// foods of the built-in larder that have energy, for properties.
func anyFood(t *rapid.T, all []*food.Food) *food.Food {
	return all[rapid.IntRange(0, len(all)-1).Draw(t, "food")]
}

func anyGrams(t *rapid.T, label string) measure.Number {
	return measure.Ratio(rapid.Int64Range(1, 1_000_000).Draw(t, label), 1000)
}

// Laws: a sum does not depend on the order, k of a sum is the sum of k, and the
// mass is linear.
func TestTotalsAreLinear(t *testing.T) {
	all := larder(t).Foods()
	rapid.Check(t, func(t *rapid.T) {
		f, g := anyFood(t, all), anyFood(t, all)
		a, b, k := anyGrams(t, "a"), anyGrams(t, "b"), anyGrams(t, "k")
		forwards := food.Totals{}.Add(f, a).Add(g, b)
		backwards := food.Totals{}.Add(g, b).Plus(food.Totals{}.Add(f, a))
		scaled := food.Totals{}.Add(f, a.Mul(k)).Add(g, b.Mul(k))
		for _, n := range food.AllNutrients() {
			one, share := forwards.Of(n)
			other, _ := backwards.Of(n)
			if !one.Equal(other) {
				t.Fatalf("%s: %s forwards, %s backwards", n, one, other)
			}
			want, shareScaled := scaled.Of(n)
			if got, _ := forwards.Times(k).Of(n); !got.Equal(want) || !share.Equal(shareScaled) {
				t.Fatalf("%s: %s by scaling, %s by adding", n, got, want)
			}
		}
		if !forwards.Grams().Equal(a.Add(b)) {
			t.Fatalf("grams %s, want %s", forwards.Grams(), a.Add(b))
		}
	})
}
