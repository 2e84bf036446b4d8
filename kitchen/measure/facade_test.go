package measure_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/measure/exact"
	"benchproof/kitchen/measure/oven"
)

// What package measure names is what the parts of the room do.
func TestTheFacadeIsItsParts(t *testing.T) {
	const text = "Bake at 180 °C (170 °C fan)."
	if diff := cmp.Diff(oven.Heats(text), measure.Heats(text)); diff != "" {
		t.Errorf("Heats (-part +facade):\n%s", diff)
	}
	if diff := cmp.Diff(oven.Check(oven.Heats(text)), measure.CheckOvens(measure.Heats(text))); diff != "" {
		t.Errorf("CheckOvens (-part +facade):\n%s", diff)
	}
	if diff := cmp.Diff(oven.Settings(), measure.OvenSettings()); diff != "" {
		t.Errorf("OvenSettings (-part +facade):\n%s", diff)
	}
	n := measure.Ratio(47, 20)
	if measure.FormatNumber(n) != exact.FormatNumber(n) || measure.FormatDecimal(n, 1) != exact.FormatDecimal(n, 1) {
		t.Errorf("%v is written %q and %q", n, measure.FormatNumber(n), measure.FormatDecimal(n, 1))
	}
	if got, err := measure.ParseNumber("47/20"); err != nil || got != n || measure.MustNumber("2.35") != n {
		t.Errorf("ParseNumber = %v, %v", got, err)
	}
	if got := measure.Between(measure.Whole(3), n); got != exact.Between(n, exact.Whole(3)) || measure.One(n) != exact.One(n) {
		t.Errorf("Between = %v", got)
	}
	if got, rest, ok := measure.ReadNumber("2.35 kg"); !ok || got != n || rest != "kg" {
		t.Errorf("ReadNumber = %v, %q, %v", got, rest, ok)
	}
	if got := measure.FahrenheitToCelsius(measure.CelsiusToFahrenheit(n)); got != n {
		t.Errorf("%v °C there and back = %v", n, got)
	}
	if got := measure.CelsiusDifference(measure.Whole(36)); got != measure.Whole(20) {
		t.Errorf("36 °F of difference = %v °C", got)
	}
}
