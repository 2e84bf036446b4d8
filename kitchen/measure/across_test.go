package measure_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/measure"
)

// One country's measure in another's, worked out by hand from the published
// sizes. Sources: US, NIST Handbook 44, App. C; imperial and the pound, Weights
// and Measures Act 1985 (UK), Sch. 1; metric and Australian spoons, UK and
// Australian practice; gō, Japanese law of 1891; label, 21 CFR 101.9(b)(5)(viii).
func TestOneCountrysMeasuresInAnothers(t *testing.T) {
	for _, test := range []struct {
		name   string
		amount string
		from   measure.System
		to     measure.Unit
		into   measure.System
		want   string // exact, "" where no short figure is
		near   string // to two places
	}{
		{"imperial pint in US fluid ounces: 568.26125 ÷ 29.5735295625", "1 pint", measure.Imperial, measure.FluidOunce, measure.US, "", "19.22"},
		{"US pint in imperial fluid ounces: 473.176473 ÷ 28.4130625", "1 pint", measure.US, measure.FluidOunce, measure.Imperial, "", "16.65"},
		{"US gallon in imperial gallons: 3.785411784 ÷ 4.54609", "1 gallon", measure.US, measure.Gallon, measure.Imperial, "", "0.83"},
		{"imperial gallon in US gallons", "1 gallon", measure.Imperial, measure.Gallon, measure.US, "", "1.2"},
		{"US gill in imperial gills: 118.29 ÷ 142.07", "1 gill", measure.US, measure.Gill, measure.Imperial, "", "0.83"},
		{"Australian tablespoon in US tablespoons: 20 ÷ 14.7868", "1 tbsp", measure.Australian, measure.Tablespoon, measure.US, "", "1.35"},
		{"Australian tablespoon in Australian teaspoons", "1 tbsp", measure.Australian, measure.Teaspoon, measure.Australian, "4 tsp", "4"},
		{"metric tablespoon in Australian tablespoons: 15 ÷ 20", "1 tbsp", measure.Metric, measure.Tablespoon, measure.Australian, "3/4 tbsp", "0.75"},
		{"metric dessertspoon in teaspoons: 10 ÷ 5", "1 dessertspoon", measure.Metric, measure.Teaspoon, measure.Metric, "2 tsp", "2"},
		{"metric cup in US cups: 250 ÷ 236.588", "1 cup", measure.Metric, measure.Cup, measure.US, "", "1.06"},
		{"US cup in metric cups", "1 cup", measure.US, measure.Cup, measure.Metric, "", "0.95"},
		{"label cup in label tablespoons: 240 ÷ 15", "1 cup", measure.USLabel, measure.Tablespoon, measure.USLabel, "16 tbsp", "16"},
		{"label cup in fluid ounces: 240 ÷ 30", "1 cup", measure.USLabel, measure.FluidOunce, measure.USLabel, "8 fl oz", "8"},
		{"Japanese cup in metric cups: 200 ÷ 250", "1 cup", measure.Japanese, measure.Cup, measure.Metric, "4/5 cup", "0.8"},
		{"a gō in Japanese cups: 2401/13.31 ÷ 200", "1 gō", measure.Japanese, measure.Cup, measure.Japanese, "2401/2662 cup", "0.9"},
		{"ten gō are a shō, 1.8039 L", "10 gō", "", measure.Litre, "", "2401/1331 l", "1.8"},
		{"a US stick's weight of butter in ounces: ¼ lb", "1/4 lb", "", measure.Ounce, "", "4 oz", "4"},
		{"a 28 oz tin in grams", "28 oz", "", measure.Gram, "", "793.7866475 g", "793.79"},
		{"a 14 oz tin in grams", "14 oz", "", measure.Gram, "", "396.89332375 g", "396.89"},
		{"500 g in pounds", "500 g", "", measure.Pound, "", "", "1.1"},
		{"a kilogram in ounces", "1 kg", "", measure.Ounce, "", "", "35.27"},
		{"half a litre in US cups", "1/2 l", "", measure.Cup, measure.US, "", "2.11"},
		{"a decilitre in US tablespoons", "1 dl", "", measure.Tablespoon, measure.US, "", "6.76"},
		{"a centilitre in metric teaspoons", "1 cl", "", measure.Teaspoon, measure.Metric, "2 tsp", "2"},
		{"9 inches in centimetres", "9 in", "", measure.Centimetre, "", "22.86 cm", "22.86"},
		{"23 cm in inches: 23 ÷ 2.54", "23 cm", "", measure.Inch, "", "1150/127 in", "9.06"},
		{"sixteen pinches are a teaspoon", "16 pinch", measure.US, measure.Teaspoon, measure.US, "1 tsp", "1"},
		{"a dash in pinches", "1 dash", measure.Metric, measure.Pinch, measure.Metric, "2 pinch", "2"},
		{"twenty drops are a millilitre, pharmacy practice, from memory", "20 drop", "", measure.Millilitre, "", "1 ml", "1"},
	} {
		t.Run(test.name, func(t *testing.T) {
			got, err := measure.Convert(amount(t, test.amount), test.to, test.from, test.into)
			if err != nil || got.Unit != test.to {
				t.Fatalf("Convert(%s) = %v, %v", test.amount, got, err)
			}
			if near := measure.FormatDecimal(got.From, 2); near != test.near {
				t.Errorf("Convert(%s) = %v, about %s, want %s", test.amount, got.From, near, test.near)
			}
			if test.want != "" && !cmp.Equal(got, amount(t, test.want)) {
				t.Errorf("Convert(%s) = %v %s, want %s", test.amount, got.From, got.Unit, test.want)
			}
		})
	}
}

// amountsOf draws amounts that add: of one kind, in any of its units.
func amountsOf(t *rapid.T, kind measure.Kind, n int) []measure.Amount {
	var units []measure.Unit
	for _, u := range measure.Units() {
		if u.Kind() == kind {
			units = append(units, u)
		}
	}
	all := make([]measure.Amount, n)
	for i := range all {
		all[i] = measure.Of(kitchenNumber(t, "n"), rapid.SampledFrom(units).Draw(t, "unit"))
	}
	return all
}

// A sum of many amounts does not depend on their order, nor on the unit it is
// kept in.
func TestSumsDoNotDependOnTheirOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		kind := rapid.SampledFrom([]measure.Kind{measure.Mass, measure.Volume, measure.Length, measure.Time}).Draw(t, "kind")
		s := rapid.SampledFrom(measure.Systems()).Draw(t, "system")
		all := amountsOf(t, kind, rapid.IntRange(2, 6).Draw(t, "how many"))
		shuffled := rapid.Permutation(all).Draw(t, "shuffled")
		sum, other := total(t, all, s), total(t, shuffled, s)
		same, err := measure.Convert(other, sum.Unit, s, s)
		if err != nil || !cmp.Equal(same, sum) {
			t.Fatalf("%v make %v, and shuffled %v", all, sum, other)
		}
	})
}

func total(t *rapid.T, all []measure.Amount, s measure.System) measure.Amount {
	var sum measure.Amount
	for _, a := range all {
		var ok bool
		if sum, ok = sum.Add(a, s); !ok {
			t.Fatalf("%v does not add to %v", a, sum)
		}
	}
	return sum
}

// Scaling a sum is the sum of what is scaled.
func TestScalingDistributesOverSums(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		kind := rapid.SampledFrom([]measure.Kind{measure.Mass, measure.Volume}).Draw(t, "kind")
		s := rapid.SampledFrom(measure.Systems()).Draw(t, "system")
		pair, by := amountsOf(t, kind, 2), kitchenNumber(t, "by")
		sum, _ := pair[0].Add(pair[1], s)
		scaled, ok := pair[0].Scale(by).Add(pair[1].Scale(by), s)
		if !ok || !cmp.Equal(sum.Scale(by), scaled) {
			t.Fatalf("(%v + %v) × %v = %v, part by part %v", pair[0], pair[1], by, sum.Scale(by), scaled)
		}
	})
}

// A way round by a third unit, in any third system, ends where the straight one
// does.
func TestConversionsChain(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		kind := rapid.SampledFrom([]measure.Kind{measure.Mass, measure.Volume, measure.Length, measure.Time}).Draw(t, "kind")
		three := amountsOf(t, kind, 3)
		systems := rapid.SliceOfN(rapid.SampledFrom(measure.Systems()), 3, 3).Draw(t, "systems")
		straight, err := measure.Convert(three[0], three[2].Unit, systems[0], systems[2])
		if err != nil {
			t.Fatal(err)
		}
		by, err := measure.Convert(three[0], three[1].Unit, systems[0], systems[1])
		if err != nil {
			t.Fatal(err)
		}
		round, err := measure.Convert(by, three[2].Unit, systems[1], systems[2])
		if err != nil || !cmp.Equal(round, straight) {
			t.Fatalf("%v in %s = %v, and by %s %v, %v", three[0], three[2].Unit, straight, three[1].Unit, round, err)
		}
	})
}
