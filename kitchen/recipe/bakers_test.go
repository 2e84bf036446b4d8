package recipe_test

import (
	"math"
	"testing"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

func component(t testing.TB, lines ...string) recipe.Component {
	t.Helper()
	r := recipe.Reader{Larder: larder(t)}
	var c recipe.Component
	for _, text := range lines {
		c.Lines = append(c.Lines, r.ReadLine(text))
	}
	return c
}

// Baker's percentages as textbooks work them: "Percentage of Ingredients",
// "Baker's Percentages"; the levain derived from them.
func TestBakers(t *testing.T) {
	for _, tt := range []struct {
		name      string
		lines     []string
		percent   []float64
		sum       float64
		dough     float64
		flour     float64
		hydration float64
	}{
		{"example 1", []string{"1000 g flour", "700 g water", "20 g instant yeast", "20 g salt"}, []float64{100, 70, 2, 2}, 174, 1740, 1000, -1},
		{"example 3", []string{"1000 g bread flour", "650 g water", "20 g salt", "10 g instant yeast"}, []float64{100, 65, 2, 1}, 168, 1680, 1000, -1},
		{"two flours of three", []string{"1.6 oz rye flour", "6.4 oz bread flour", "8 oz wholemeal flour"}, []float64{10, 40, 50}, 100, 16 * 28.349523125, 16 * 28.349523125, 0},
		{"levain at 100 %", []string{"900 g bread flour", "600 g water", "200 g sourdough starter (100 % hydration)"}, []float64{90, 60, 20}, 170, 1700, 1000, 70},
		{"levain, hydration not said", []string{"900 g bread flour", "600 g water", "200 g levain"}, []float64{90, 60, 20}, 170, 1700, 1000, 70},
		// A stiff levain of 50 % is two parts flour, one part water: derived.
		{"stiff levain", []string{"900 g bread flour", "600 g water", "150 g levain (50 % hydration)"}, []float64{90, 60, 15}, 165, 1650, 1000, 65},
		// Whole milk is 88.13 % water: USDA SR 26, 01077.
		{"water in milk counts", []string{"500 g bread flour", "300 g whole milk"}, []float64{100, 60}, 160, 800, 500, 52.878},
		{"starch is no flour", []string{"500 g bread flour", "50 g cornflour"}, []float64{100, 10}, 110, 550, 500, -1},
	} {
		t.Run(tt.name, func(t *testing.T) {
			f, ok := recipe.Bakers(component(t, tt.lines...), recipe.Writer{Larder: larder(t)})
			if !ok || len(f.Lines) != len(tt.percent) {
				t.Fatalf("Bakers = %d lines, %t; missing %v", len(f.Lines), ok, f.Missing)
			}
			for i, want := range tt.percent {
				near(t, "percentage of "+tt.lines[i], f.Lines[i].Percent, want, 1e-9)
			}
			near(t, "sum", f.Sum, tt.sum, 1e-9)
			near(t, "dough", f.DoughGrams, tt.dough, 1e-6)
			near(t, "flour", f.FlourGrams, tt.flour, 1e-6)
			if tt.hydration >= 0 {
				near(t, "hydration", f.Hydration, tt.hydration, 0.001)
			}
		})
	}
}

func near(t testing.TB, what string, got measure.Number, want, within float64) {
	t.Helper()
	if math.Abs(got.Float()-want) > within {
		t.Errorf("%s = %v, want %v", what, got.Float(), want)
	}
}

func TestNoFlourNoFormula(t *testing.T) {
	if f, ok := recipe.Bakers(component(t, "500 g potatoes", "salt"), recipe.Writer{Larder: larder(t)}); ok {
		t.Errorf("a formula without flour: %+v", f)
	}
}

func TestBakersNamesWhatHasNoWeight(t *testing.T) {
	f, ok := recipe.Bakers(component(t, "500 g flour", "2 tubs moonrock"), recipe.Writer{Larder: larder(t)})
	if !ok || len(f.Missing) != 1 || f.Missing[0] != "moonrock" {
		t.Errorf("missing = %q", f.Missing)
	}
}

// Dough for a baked weight, baked ÷ (1 − loss): 800 g at 12 % needs 909 g,
// derived from "Bake-Out Loss".
func TestDoughFor(t *testing.T) {
	dough, err := recipe.DoughFor(measure.Whole(800), measure.Ratio(12, 100))
	if err != nil {
		t.Fatal(err)
	}
	near(t, "dough", dough, 909.09, 0.005)
	loss, err := recipe.BakeLoss(dough, measure.Whole(800))
	if err != nil || !loss.Equal(measure.Ratio(12, 100)) {
		t.Errorf("BakeLoss = %v, %v; want 3/25", loss, err)
	}
	for _, bad := range []measure.Number{measure.Whole(1), measure.Whole(-1), measure.Whole(2)} {
		if _, err := recipe.DoughFor(measure.Whole(800), bad); fault.KindOf(err) != fault.Invalid {
			t.Errorf("a loss of %v is taken", bad)
		}
	}
	if _, err := recipe.BakeLoss(measure.Whole(700), measure.Whole(800)); fault.KindOf(err) != fault.Invalid {
		t.Error("bread heavier than its dough is taken")
	}
}

// "Dough temperature"; a trade magazine of June 2018; "Explanation of DDT formula".
func TestWaterTemperature(t *testing.T) {
	for _, tt := range []struct {
		name                         string
		wanted, friction, room, meal int64
		want                         int64
	}{
		{"75 °F dough", 75, 8, 65, 65, 87},
		{"80 °F dough", 80, 35, 65, 75, 65},
		{"24 °C dough", 24, 10, 20, 20, 22},
	} {
		t.Run(tt.name, func(t *testing.T) {
			got := recipe.WaterTemperature(measure.Whole(tt.wanted), measure.Whole(tt.friction), measure.Whole(tt.room), measure.Whole(tt.meal))
			if !got.Equal(measure.Whole(tt.want)) {
				t.Errorf("water at %v, want %d", got, tt.want)
			}
		})
	}
	// With a preferment its temperature counts too: wanted × 4.
	got := recipe.WaterTemperature(measure.Whole(24), measure.Whole(10), measure.Whole(20), measure.Whole(20), measure.Whole(22))
	if !got.Equal(measure.Whole(24*4 - 10 - 20 - 20 - 22)) {
		t.Errorf("with a preferment water at %v", got)
	}
}
