package demo_test

import (
	"testing"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

func TestYields(t *testing.T) {
	for _, tt := range []struct {
		key      string
		from, to int64
	}{
		{"knots", 16, 16}, {"pickles", 2, 2}, {"tart", 10, 10}, {"custards", 6, 6},
		{"stew", 6, 8}, {"fish", 4, 4}, {"soup", 4, 4}, {"beans", 8, 8},
	} {
		t.Run(tt.key, func(t *testing.T) {
			got := read(t, tt.key, 1).Yield.Amount
			if !got.From.Equal(measure.Whole(tt.from)) || !got.To.Equal(measure.Whole(tt.to)) {
				t.Errorf("makes %s to %s, want %d to %d", got.From, got.To, tt.from, tt.to)
			}
		})
	}
}

// Fan settings stand 20 °C below conventional ones (NSW Health conversion
// chart; UK practice). The knots' first version is wrong on purpose.
func TestOvenPairs(t *testing.T) {
	pairs := 0
	eachVersion(t, func(t *testing.T, key string, version int, r recipe.Recipe) {
		want := int64(20)
		if key == "knots" && version == 1 {
			want = 40
		}
		for _, c := range r.Components {
			for _, s := range c.Steps {
				still, fan := ovenPair(s.Temperatures)
				if still.IsZero() || fan.IsZero() {
					continue
				}
				pairs++
				if !still.Sub(fan).Equal(measure.Whole(want)) {
					t.Errorf("%q: %s °C and %s °C fan, want %d °C between", s.Text, still, fan, want)
				}
				if asked := s.Reason != ""; asked != (want != 20) {
					t.Errorf("%q: the reader says %q", s.Text, s.Reason)
				}
			}
		}
	})
	if pairs < 8 {
		t.Errorf("%d pairs found in all recipes, want at least 8", pairs)
	}
}

// ovenPair finds the conventional and the fan setting in °C, 0 for none: the
// conventional one is the last in °C before the fan's.
func ovenPair(heats []measure.Heat) (still, fan measure.Number) {
	for _, h := range heats {
		switch {
		case h.Scale != "C":
		case h.Oven == "fan":
			return still, h.Degrees.To
		default:
			still = h.Degrees.To
		}
	}
	return still, fan
}

// Temperatures that keep people well stand in the method: FDA Food Code 2022
// § 3-401.11(A)(1) fish 63 °C; FDA, stirred and baked custard 71 °C or more;
// § 3-501.16 cold holding at 5 °C or below.
func TestSafeTemperaturesStandInTheMethod(t *testing.T) {
	for _, tt := range []struct {
		name, key string
		low, high int64
	}{
		{"fish", "fish", 63, 75},
		{"custard", "custards", 71, 84},
		{"cold soup", "soup", 1, 5},
	} {
		t.Run(tt.name, func(t *testing.T) {
			made := versions(newShow(t), tt.key)
			found := false
			for _, c := range read(t, tt.key, len(made)).Components {
				for _, s := range c.Steps {
					for _, h := range s.Temperatures {
						found = found || h.Scale == "C" &&
							h.Degrees.From.Cmp(measure.Whole(tt.low)) >= 0 && h.Degrees.To.Cmp(measure.Whole(tt.high)) <= 0
					}
				}
			}
			if !found {
				t.Errorf("no step of %s gives a temperature from %d to %d °C", tt.key, tt.low, tt.high)
			}
		})
	}
}
