package food_test

import (
	"testing"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
)

// shaped is a food with weights whose figures tell which was taken.
func shaped(weights ...food.Weight) *food.Food {
	for i := range weights {
		weights[i].Source = "a table"
	}
	return &food.Food{ID: "x", Name: "x", Weights: weights}
}

func cup(form, grams string) food.Weight {
	return food.Weight{Unit: measure.Cup, Form: form, Grams: num(grams)}
}

func each(form, grams string) food.Weight {
	return food.Weight{Unit: measure.Each, Form: form, Grams: num(grams)}
}

func TestWhichWeightAFormTakes(t *testing.T) {
	for _, tc := range []struct {
		name     string
		food     *food.Food
		unit     measure.Unit
		form     string
		grams    string
		estimate bool
	}{
		{"the first is the default", shaped(cup("packed", "220"), cup("unpacked", "145")), measure.Cup, "", "220", false},
		{"the form said", shaped(cup("packed", "220"), cup("unpacked", "145")), measure.Cup, "unpacked", "145", false},
		{"one of several words", shaped(cup("", "100"), cup("chopped", "80")), measure.Cup, "large chopped", "80", false},
		{"words parted by a comma", shaped(cup("", "100"), cup("chopped", "80")), measure.Cup, "large, chopped", "80", false},
		{"in any case", shaped(cup("", "100"), cup("chopped", "80")), measure.Cup, "Chopped", "80", false},
		{"a related form", shaped(cup("", "100"), cup("shredded", "70")), measure.Cup, "grated", "70", true},
		{"the nearer of two", shaped(cup("", "100"), cup("sliced", "60"), cup("diced", "90")), measure.Cup, "chopped", "90", true},
		{"mashed for pureed", shaped(cup("", "100"), cup("mashed", "225")), measure.Cup, "pureed", "225", true},
		{"crushed for crumbled", shaped(cup("", "100"), cup("crushed", "65")), measure.Cup, "crumbled", "65", true},
		{"flaked is sliced", shaped(cup("whole", "143"), cup("sliced", "92")), measure.Cup, "flaked", "92", true},
		{"none near", shaped(cup("", "100")), measure.Cup, "popped", "100", true},
		{"a form that changes nothing", shaped(cup("", "100")), measure.Cup, "melted", "100", false},
		{"unpacked where it does not matter", shaped(cup("", "100")), measure.Cup, "unpacked", "100", false},
		{"size does not matter to a cup", shaped(cup("", "100")), measure.Cup, "large", "100", false},
		{"own unit before a scaled one", shaped(cup("", "240"), food.Weight{Unit: measure.Tablespoon, Grams: num("14")}), measure.Tablespoon, "", "14", false},
		{"form before unit", shaped(cup("sifted", "96"), food.Weight{Unit: measure.Tablespoon, Grams: num("8")}), measure.Tablespoon, "sifted", "6", false},
		{"the greatest measure is scaled", shaped(food.Weight{Unit: measure.Tablespoon, Grams: num("14")}, cup("", "240")), measure.Teaspoon, "", "5", false},
		{"the unit's own default", shaped(cup("chopped", "160"), food.Weight{Unit: measure.Tablespoon, Grams: num("9")}), measure.Tablespoon, "", "9", false},
		{"a piece", shaped(each("", "40")), measure.Each, "", "40", false},
		{"a size", shaped(each("medium", "110"), each("large", "150")), measure.Each, "large", "150", false},
		{"two words of size", shaped(each("large", "50"), each("extra large", "56")), measure.Each, "extra large", "56", false},
		{"extra large where there is jumbo", shaped(each("medium", "44"), each("jumbo", "63")), measure.Each, "extra large", "63", true},
		{"mini is small", shaped(each("medium", "44"), each("small", "38")), measure.Each, "mini", "38", true},
		{"medium is the usual size", shaped(each("", "40")), measure.Each, "medium", "40", false},
		{"no such size", shaped(each("", "40")), measure.Each, "small", "40", true},
		{"preparation does not matter to a piece", shaped(each("", "40")), measure.Each, "chopped", "40", false},
		{"a piece for each", shaped(food.Weight{Unit: measure.Piece, Grams: num("12")}), measure.Each, "", "12", false},
		{"a head for each", shaped(food.Weight{Unit: measure.Head, Form: "medium", Grams: num("908")}), measure.Each, "", "908", false},
		{"each for a piece", shaped(each("", "12")), measure.Piece, "", "12", false},
		{"a stick of celery is a stalk", shaped(food.Weight{Unit: measure.Stalk, Form: "medium", Grams: num("40")}), measure.Stick, "", "40", false},
		{"a jar for a tin", shaped(food.Weight{Unit: measure.Jar, Grams: num("425")}), measure.Tin, "", "425", false},
		{"half an inch", shaped(food.Weight{Unit: measure.Inch, Grams: num("12")}), measure.Millimetre, "", "0.472", false},
	} {
		t.Run(tc.name, func(t *testing.T) {
			w, err := tc.food.Grams(measure.Of(num("1"), tc.unit), tc.form, measure.US)
			if err != nil {
				t.Fatal(err)
			}
			if !near(w.Grams.From, num(tc.grams), "0.001") || w.Estimate != tc.estimate {
				t.Errorf("%s g, estimate %v (%s); want %s, %v", measure.FormatDecimal(w.Grams.From, 3), w.Estimate, w.Assumed, tc.grams, tc.estimate)
			}
		})
	}
}

func TestNoWeightStandsInForAnotherKind(t *testing.T) {
	for _, tc := range []struct {
		name string
		food *food.Food
		unit measure.Unit
	}{
		{"no cup from a piece", shaped(each("", "40")), measure.Cup},
		{"no piece from a cup", shaped(cup("", "100")), measure.Each},
		{"no clove from each", shaped(each("", "40")), measure.Clove},
		{"no each from a clove", shaped(food.Weight{Unit: measure.Clove, Grams: num("3")}), measure.Each},
		{"no slice from a piece", shaped(food.Weight{Unit: measure.Piece, Grams: num("3")}), measure.Slice},
		{"no inch from a piece", shaped(food.Weight{Unit: measure.Piece, Grams: num("3")}), measure.Inch},
		{"nothing from nothing", shaped(), measure.Tablespoon},
	} {
		t.Run(tc.name, func(t *testing.T) {
			if w, err := tc.food.Grams(measure.Of(num("1"), tc.unit), "", measure.US); err == nil {
				t.Errorf("weighed %v", w)
			}
		})
	}
}

func TestSizesOfAnotherCountry(t *testing.T) {
	eu := food.Weight{Unit: measure.Each, Form: "large", System: measure.Metric, Grams: num("60")}
	both := shaped(each("large", "50"), eu)
	for _, tc := range []struct {
		name     string
		food     *food.Food
		form     string
		system   measure.System
		grams    string
		estimate bool
	}{
		{"everybody's at home", both, "large", measure.US, "50", false},
		{"the EU's there", both, "large", measure.Metric, "60", false},
		{"the EU's in the UK", both, "large", measure.Imperial, "60", false},
		{"not in Japan", both, "large", measure.Japanese, "50", false},
		{"no size is nobody's in particular", both, "", measure.Metric, "50", false},
		{"better than none", shaped(eu), "large", measure.US, "60", true},
	} {
		t.Run(tc.name, func(t *testing.T) {
			w, err := tc.food.Grams(measure.Of(num("1"), measure.Each), tc.form, tc.system)
			if err != nil {
				t.Fatal(err)
			}
			if !w.Grams.From.Equal(num(tc.grams)) || w.Estimate != tc.estimate {
				t.Errorf("%s g, estimate %v; want %s, %v", w.Grams.From, w.Estimate, tc.grams, tc.estimate)
			}
		})
	}
}
