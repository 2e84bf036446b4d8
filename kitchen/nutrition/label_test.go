package nutrition_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/food"
	"benchproof/kitchen/nutrition"
)

// rows writes a label's rows one a line.
func rows(l nutrition.Label) []string {
	var all []string
	for _, r := range l.Rows {
		all = append(all, r.Name+": "+r.Amount)
	}
	return all
}

// TestRounding runs each published rounding rule through a recipe of 100 g of
// one made-up food that makes one piece; see the head of the file.
func TestRounding(t *testing.T) {
	for _, row := range table(t, "labels.txt", 4) {
		t.Run(row[0]+" "+row[1]+" "+row[2], func(t *testing.T) {
			f := from(stocked(map[string]map[food.Nutrient]string{"pap": {nutrientNamed(t, row[1]): row[2]}}), "Pap\nMakes 1\n\n100 g pap\n")
			label := f.EU()
			if row[0] == "US" {
				label, _ = f.US()
			}
			if got := rows(label); !strings.Contains("\n"+strings.Join(got, "\n")+"\n", "\n"+row[3]+"\n") {
				t.Errorf("the label has %q, want %q", got, row[3])
			}
		})
	}
}

func TestServings(t *testing.T) {
	for _, row := range table(t, "servings.txt", 2) {
		if got := nutrition.Servings(num(row[0])); got != row[1] {
			t.Errorf("Servings(%s) = %q, want %q", row[0], got, row[1])
		}
	}
}

// TestLabelDifferences: the same 100 g by both laws. EU carbohydrate leaves
// fibre out (Annex I), US includes it (21 CFR 101.9(c)(6)); EU energy goes by
// Annex XIV, 37 × 5 + 17 × (40 − 10) + 17 × 8 + 8 × 10 = 911 kJ and 9 × 5 + 4 ×
// 30 + 4 × 8 + 2 × 10 = 217 kcal, not 911 ÷ 4.184 = 218, and not the table's own
// 230; salt is sodium × 2.5.
func TestLabelDifferences(t *testing.T) {
	f := from(stocked(map[string]map[food.Nutrient]string{"crumb": {
		food.EnergyKcal: "230", food.Fat: "5", food.Saturated: "1", food.Carbohydrate: "40", food.Fibre: "10", food.Sugars: "6",
		food.Protein: "8", food.SodiumMilligrams: "400", food.CholesterolMilligrams: "0",
	}}), "Crumb\nServes 2\n\n200 g crumb\n")
	us, ok := f.US()
	want := nutrition.Label{Rule: "21 CFR 101.9(c)", Servings: "2", Per: "1 of 2 servings (100 g raw)"}
	got := us
	got.Rows = nil
	if d := cmp.Diff(want, got); d != "" || !ok {
		t.Errorf("US label, ok %v (-want +got):\n%s", ok, d)
	}
	if d := cmp.Diff([]string{"Calories: 230", "Total Fat: 5 g", "Saturated Fat: 1 g", "Cholesterol: 0 mg", "Sodium: 400 mg",
		"Total Carbohydrate: 40 g", "Dietary Fiber: 10 g", "Total Sugars: 6 g", "Protein: 8 g"}, rows(us)); d != "" {
		t.Errorf("US rows (-want +got):\n%s", d)
	}
	if d := cmp.Diff([]string{"Energy: 911 kJ / 217 kcal", "Fat: 5 g", "of which saturates: 1 g", "Carbohydrate: 30 g",
		"of which sugars: 6 g", "Fibre: 10 g", "Protein: 8 g", "Salt: 1 g"}, rows(f.EU())); d != "" {
		t.Errorf("EU rows (-want +got):\n%s", d)
	}
}

func TestLabelsSayWhatTheyCover(t *testing.T) {
	f := of(t, "Dish\nMakes 2\n\n300 g plain flour\n100 g zorblax\n")
	us, _ := f.US()
	for _, l := range []nutrition.Label{us, f.EU()} {
		if want := "Least values: figures are known of 75 % of the weight."; l.Note != want {
			t.Errorf("%s: note %q, want %q", l.Rule, l.Note, want)
		}
		for _, r := range l.Rows {
			if !r.Partial {
				t.Errorf("%s: %s does not say that it is a least value", l.Rule, r.Name)
			}
		}
	}
	if got, want := of(t, "Dish\n\nIngredients\n9999 g plain flour\n1 g zorblax\n").EU().Note, "Least values: figures are known of 99 % of the weight."; got != want {
		t.Errorf("nearly all: note %q, want %q", got, want)
	}
	if got := of(t, "Dish\n\n300 g plain flour\n").EU().Note; got != "" {
		t.Errorf("a whole label notes %q", got)
	}
}

func TestFigures(t *testing.T) {
	f := from(stocked(map[string]map[food.Nutrient]string{"pap": {food.EnergyKcal: "100/3", food.Fat: "0"}}), "Pap\n\n100 g pap\n")
	got := nutrition.FiguresOf(f.Totals)
	energy, none := 33.33, 0.0
	if d := cmp.Diff(nutrition.Figures{EnergyKcal: &energy, FatG: &none}, got); d != "" {
		t.Errorf("figures (-want +got):\n%s", d)
	}
}

// What is nearly all is not all.
func TestCoveredShareRoundsDown(t *testing.T) {
	for _, tc := range []struct {
		text string
		want float64
	}{
		{"300 g plain flour", 1},
		{"9999 g plain flour\n1 g zorblax", 0.999},
		{"2 kg plain flour\n1 kg zorblax", 0.666},
		{"1 kg zorblax", 0},
		{"salt, to taste", 0},
	} {
		if got := of(t, "Dish\n\nIngredients\n"+tc.text+"\n").CoveredShare(); got != tc.want {
			t.Errorf("%q: covered %g, want %g", tc.text, got, tc.want)
		}
	}
}
