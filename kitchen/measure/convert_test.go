package measure_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
)

func TestConvertIsExact(t *testing.T) {
	for _, test := range []struct {
		name       string
		from       string
		to         measure.Unit
		fromSystem measure.System
		into       measure.System
		want       string
	}{
		{"cups to millilitres", "3/2 cup", measure.Millilitre, measure.US, measure.US, "354.88235475 ml"},
		{"a range stays one", "2..3 tbsp", measure.Teaspoon, measure.US, measure.US, "6..9 tsp"},
		{"Australian tablespoons in label teaspoons", "2 tbsp", measure.Teaspoon, measure.Australian, measure.USLabel, "8 tsp"},
		{"one unit, two systems", "1 cup", measure.Cup, measure.Metric, measure.Japanese, "5/4 cup"},
		{"imperial pint in metric cups", "1 pint", measure.Cup, measure.Imperial, measure.Metric, "2.273045 cup"},
		{"pounds to grams", "1 lb", measure.Gram, "", "", "453.59237 g"},
		{"grams to ounces", "28.349523125 g", measure.Ounce, "", "", "1 oz"},
		{"the label ounce is for labels only", "16 oz", measure.Pound, measure.USLabel, measure.USLabel, "1 lb"},
		{"inches", "9 in", measure.Centimetre, "", "", "22.86 cm"},
		{"hours", "3/2 h", measure.Minute, "", "", "90 min"},
		{"200 °C, NIST SP 811", "200 °C", measure.Fahrenheit, "", "", "392 °F"},
		{"212 °F", "212 °F", measure.Celsius, "", "", "100 °C"},
		{"minus forty", "-40 °C", measure.Fahrenheit, "", "", "-40 °F"},
		{"a temperature range", "350..375 °F", measure.Celsius, "", "", "1590/9..1715/9 °C"},
		{"nothing to do, not even a system", "3 cup", measure.Cup, "", "", "3 cup"},
		{"counts of one unit", "3 clove", measure.Clove, measure.US, measure.Metric, "3 clove"},
	} {
		t.Run(test.name, func(t *testing.T) {
			got, err := measure.Convert(amount(t, test.from), test.to, test.fromSystem, test.into)
			if err != nil {
				t.Fatal(err)
			}
			if diff := cmp.Diff(amount(t, test.want), got); diff != "" {
				t.Errorf("Convert(%s, %s) (-want +got):\n%s", test.from, test.to, diff)
			}
		})
	}
}

func TestConvertRefusesAndSaysWhy(t *testing.T) {
	for _, test := range []struct {
		name string
		from string
		to   measure.Unit
		s    measure.System
		says string
	}{
		{"volume to mass", "1 cup", measure.Gram, measure.US, "weight"},
		{"count to mass", "2", measure.Gram, measure.US, "a plain number"},
		{"cloves to bunches", "1 clove", measure.Bunch, measure.US, "depends on the food"},
		{"system not said", "1 cup", measure.Millilitre, "", "say which is meant"},
		{"time to length", "1 h", measure.Inch, measure.US, "time"},
		{"no such unit", "1 firkin", measure.Clove, measure.US, "firkin"},
	} {
		t.Run(test.name, func(t *testing.T) {
			got, err := measure.Convert(amount(t, test.from), test.to, test.s, test.s)
			if fault.KindOf(err) != fault.Invalid || !strings.Contains(fault.Say(err), test.says) {
				t.Errorf("Convert = %v, %v, want an Invalid fault that says %q", got, err, test.says)
			}
		})
	}
}

// Source: 25 °F = 13.9 °C and 20 °C = 36 °F of difference, derived from NIST
// SP 811, App. B.
func TestTemperatureDifferences(t *testing.T) {
	if got := measure.FormatDecimal(measure.CelsiusDifference(measure.Whole(25)), 1); got != "13.9" {
		t.Errorf("25 °F of difference = %s °C, want 13.9", got)
	}
	if got := measure.CelsiusDifference(measure.Whole(36)); !got.Equal(measure.Whole(20)) {
		t.Errorf("36 °F of difference = %v °C, want 20", got)
	}
	if got := measure.FormatDecimal(measure.FahrenheitToCelsius(measure.Whole(400)), 2); got != "204.44" {
		t.Errorf("400 °F = %s °C, want 204.44", got)
	}
}
