package food_test

import (
	"strings"
	"testing"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"

	"github.com/google/go-cmp/cmp"
)

// Source: 21 CFR 101.9(c)(1) to (7) as tabled in FDA, Food Labeling Guide,
// Appendix H, "Rounding the Values According to FDA Rounding Rules" (October
// 2009). Each rule at its limits and inside them.
func TestRoundUSFollowsTheRoundingRules(t *testing.T) {
	for _, tc := range []struct {
		rule   string
		n      food.Nutrient
		amount string
		want   string
	}{
		{"calories under 5 are 0", food.EnergyKcal, "4.99", "0"},
		{"calories to 50 by 5, low", food.EnergyKcal, "5", "5"},
		{"calories to 50 by 5, inside", food.EnergyKcal, "47.4", "45"},
		{"calories to 50 by 5, at 50", food.EnergyKcal, "50", "50"},
		{"calories over 50 by 10", food.EnergyKcal, "50.1", "50"},
		{"calories over 50 by 10, half", food.EnergyKcal, "155", "160"},
		{"fat under 0.5 is 0", food.Fat, "0.49", "0"},
		{"fat at 0.5", food.Fat, "0.5", "0.5"},
		{"fat under 5 by 0.5", food.Fat, "3.3", "3.5"},
		{"fat just under 5", food.Fat, "4.9", "5"},
		{"fat from 5 by 1", food.Fat, "5.4", "5"},
		{"saturated under 5 by 0.5", food.Saturated, "1.2", "1"},
		{"saturated from 5 by 1", food.Saturated, "7.5", "8"},
		{"cholesterol under 2 is 0", food.CholesterolMilligrams, "1.9", "0"},
		{"cholesterol 2 to 5", food.CholesterolMilligrams, "2", "<5"},
		{"cholesterol at 5", food.CholesterolMilligrams, "5", "<5"},
		{"cholesterol over 5 by 5", food.CholesterolMilligrams, "17", "15"},
		{"sodium under 5 is 0", food.SodiumMilligrams, "4.9", "0"},
		{"sodium to 140 by 5", food.SodiumMilligrams, "137", "135"},
		{"sodium at 140", food.SodiumMilligrams, "140", "140"},
		{"sodium over 140 by 10", food.SodiumMilligrams, "144", "140"},
		{"sodium over 140 by 10, half", food.SodiumMilligrams, "145", "150"},
		{"carbohydrate under 0.5 is 0", food.Carbohydrate, "0.4", "0"},
		{"carbohydrate under 1", food.Carbohydrate, "0.7", "<1"},
		{"carbohydrate from 1 by 1", food.Carbohydrate, "27.5", "28"},
		{"fibre under 1", food.Fibre, "0.5", "<1"},
		{"fibre from 1 by 1", food.Fibre, "1.4", "1"},
		{"sugars under 0.5 are 0", food.Sugars, "0.49", "0"},
		{"sugars from 1 by 1", food.Sugars, "12.2", "12"},
		{"protein under 0.5 is 0", food.Protein, "0.2", "0"},
		{"protein under 1", food.Protein, "0.99", "<1"},
		{"protein from 1 by 1", food.Protein, "3.5", "4"},
	} {
		t.Run(tc.rule, func(t *testing.T) {
			r := food.RoundUS(tc.n, num(tc.amount))
			got := measure.FormatDecimal(r.Amount, 2)
			if r.LessThan {
				got = "<" + got
			}
			if got != tc.want {
				t.Errorf("RoundUS(%s, %s) = %s, want %s", tc.n, tc.amount, got, tc.want)
			}
		})
	}
}

// madeUp is a food whose nutrients are easy to follow.
func madeUp(values map[food.Nutrient]string) *food.Food {
	f := &food.Food{ID: "made-up", Name: "made up", Aisle: "Other", Source: food.Estimate}
	for n, value := range values {
		v := num(value)
		f.Per100 = f.Per100.Set(n, &v)
	}
	return f
}

func declaration(lines []food.Declared) string {
	var b strings.Builder
	for _, l := range lines {
		if l.Part {
			b.WriteString("- ")
		}
		b.WriteString(l.Name + ": " + l.Amount)
		if l.Partial {
			b.WriteString(" (partial)")
		}
		b.WriteString("\n")
	}
	return b.String()
}

// Order: Regulation (EU) No 1169/2011, Annex XV (fibre's place from memory).
// Rounding: Commission guidance on tolerances, December 2012. Energy: Annex
// XIV: 37 × 10.4 + 17 × (20 − 5) + 17 × 9.96 + 8 × 5 = 849.12 kJ;
// 9 × 10.4 + 4 × 15 + 4 × 9.96 + 2 × 5 = 203.44 kcal. Salt = sodium × 2.5.
func TestEUDeclarationOrderRoundingAndEnergy(t *testing.T) {
	f := madeUp(map[food.Nutrient]string{
		food.EnergyKcal: "199", food.Fat: "10.4", food.Saturated: "0.1", food.Carbohydrate: "20", food.Fibre: "5",
		food.Sugars: "0.5", food.Protein: "9.96", food.SodiumMilligrams: "394",
	})
	got := declaration(food.EUDeclaration(food.Totals{}.Add(f, num("100"))))
	want := `Energy: 849 kJ / 203 kcal
Fat: 10 g
- of which saturates: < 0.1 g
Carbohydrate: 15 g
- of which sugars: < 0.5 g
Fibre: 5 g
Protein: 10 g
Salt: 0.99 g
`
	if d := cmp.Diff(want, got); d != "" {
		t.Errorf("declaration (-want +got):\n%s", d)
	}
}

// Source: the same rounding table, each rule at its limits.
func TestEURoundingAtTheLimits(t *testing.T) {
	for _, tc := range []struct {
		rule   string
		n      food.Nutrient
		amount string // per 100 g; sodium in mg
		line   string
	}{
		{"nothing is 0 g", food.Fat, "0", "Fat: 0 g"},
		{"fat at 0.5", food.Fat, "0.5", "Fat: < 0.5 g"},
		{"fat over 0.5 by 0.1", food.Fat, "0.54", "Fat: 0.5 g"},
		{"fat under 10 by 0.1", food.Fat, "9.94", "Fat: 9.9 g"},
		{"fat from 10 by 1", food.Fat, "10.5", "Fat: 11 g"},
		{"saturates over 0.1 by 0.1", food.Saturated, "0.16", "- of which saturates: 0.2 g"},
		{"saturates from 10 by 1", food.Saturated, "12.4", "- of which saturates: 12 g"},
		{"protein by 0.1", food.Protein, "3.15", "Protein: 3.2 g"},
		{"salt at 0.0125", food.SodiumMilligrams, "5", "Salt: < 0.01 g"},
		{"salt under 1 by 0.01", food.SodiumMilligrams, "43", "Salt: 0.11 g"},
		{"salt from 1 by 0.1", food.SodiumMilligrams, "624", "Salt: 1.6 g"},
	} {
		t.Run(tc.rule, func(t *testing.T) {
			f := madeUp(map[food.Nutrient]string{tc.n: tc.amount})
			got := declaration(food.EUDeclaration(food.Totals{}.Add(f, num("100"))))
			if !strings.Contains(got, tc.line+"\n") && !strings.Contains(got, tc.line+" (partial)\n") {
				t.Errorf("declaration has no %q:\n%s", tc.line, got)
			}
		})
	}
}

// 250 g of milk. Nutrients: USDA SR 01077; rounding: 21 CFR 101.9(c).
func TestUSFactsOfAGlassOfMilk(t *testing.T) {
	got := declaration(food.USFacts(food.Totals{}.Add(item(t, "whole-milk"), num("250"))))
	want := `Calories: 150
Total Fat: 8 g
- Saturated Fat: 4.5 g
Cholesterol: 25 mg
Sodium: 110 mg
Total Carbohydrate: 12 g
- Dietary Fiber: 0 g
- Total Sugars: 13 g
Protein: 8 g
`
	if d := cmp.Diff(want, got); d != "" {
		t.Errorf("facts (-want +got):\n%s", d)
	}
}

func TestLabelsSayWhatIsPartlyUnknown(t *testing.T) {
	whole := madeUp(map[food.Nutrient]string{food.Fat: "10", food.Sugars: "3"})
	without := madeUp(map[food.Nutrient]string{food.Fat: "2"})
	got := declaration(food.USFacts(food.Totals{}.Add(whole, num("100")).Add(without, num("100"))))
	want := "Total Fat: 12 g\n- Total Sugars: 3 g (partial)\n"
	if d := cmp.Diff(want, got); d != "" {
		t.Errorf("facts (-want +got):\n%s", d)
	}
	if lines := food.EUDeclaration(food.Totals{}.AddUnknown(num("100"))); len(lines) != 0 {
		t.Errorf("of nothing known, %v was declared", lines)
	}
}

// Wine has its energy from alcohol: 29 kJ and 7 kcal a gram, Annex XIV.
func TestEUEnergyCountsAlcohol(t *testing.T) {
	f := madeUp(map[food.Nutrient]string{food.Fat: "0", food.Carbohydrate: "2.6", food.Fibre: "0", food.Protein: "0", food.Alcohol: "10"})
	kj, kcal, partial, ok := food.Totals{}.Add(f, num("100")).EUEnergy()
	if !ok || partial || !kj.Equal(num("334.2")) || !kcal.Equal(num("80.4")) {
		t.Errorf("EUEnergy = %s kJ, %s kcal, partial %v, ok %v; want 334.2, 80.4, false, true", kj, kcal, partial, ok)
	}
}
