package oven_test

import (
	"testing"

	"pgregory.net/rapid"

	"benchproof/kitchen/measure/exact"
	"benchproof/kitchen/measure/oven"
)

// A setting that the rule itself makes is never questioned, a pair far from it
// always.
func TestPairsAreQuestionedByTheirDistance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := rapid.Int64Range(120, 280).Draw(t, "conventional")
		apart := rapid.Int64Range(-60, 60).Draw(t, "apart")
		plain := oven.Heat{Degrees: exact.One(exact.Whole(c)), Scale: "C", Oven: "conventional"}
		fan := oven.Heat{Degrees: exact.One(exact.Whole(c - apart)), Scale: "C", Oven: "fan"}
		questions := oven.Check([]oven.Heat{plain, fan})
		if about20 := apart >= 15 && apart <= 25; about20 != (len(questions) == 0) {
			t.Fatalf("%v and %v, %d apart: %v", plain, fan, apart, questions)
		}
		// The order in which the two are given does not matter.
		if other := oven.Check([]oven.Heat{fan, plain}); len(other) != len(questions) {
			t.Fatalf("%v and %v the other way round: %v", plain, fan, other)
		}
		for _, q := range questions {
			if len(q.Likely) < 2 {
				t.Fatalf("%v names %d settings that may be meant", q, len(q.Likely))
			}
		}
	})
}

// What a question says was likely meant is not questioned again.
func TestLikelySettingsAgree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := rapid.Int64Range(100, 280).Draw(t, "conventional")
		f := rapid.Int64Range(100, 280).Draw(t, "fan")
		plain := oven.Heat{Degrees: exact.One(exact.Whole(c)), Scale: "C", Oven: "conventional"}
		fan := oven.Heat{Degrees: exact.One(exact.Whole(f)), Scale: "C", Oven: "fan"}
		for _, q := range oven.Check([]oven.Heat{plain, fan}) {
			for _, likely := range q.Likely {
				meant := oven.Heats(likely)
				if len(meant) == 1 {
					with := plain
					if meant[0].Oven != "fan" {
						with = fan
					}
					meant = append(meant, with)
				}
				for i := range meant {
					meant[i].At, meant[i].Text = 0, ""
				}
				if again := oven.Check(meant); len(again) > 0 {
					t.Fatalf("%s: even %q is questioned: %v", q.Text, likely, again[0].Text)
				}
			}
		}
	})
}

// Conversions there and back are exact, and the fan rule undoes itself.
func TestConversionsUndoThemselves(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := exact.Ratio(rapid.Int64Range(-1000, 1000).Draw(t, "over"), rapid.Int64Range(1, 20).Draw(t, "under"))
		if back := oven.FahrenheitToCelsius(oven.CelsiusToFahrenheit(n)); !back.Equal(n) {
			t.Fatalf("%v °C there and back = %v", n, back)
		}
		scale := rapid.SampledFrom([]string{"C", "F"}).Draw(t, "scale")
		h := oven.Heat{Degrees: exact.One(n), Scale: scale}
		fan, _, err := h.In(scale, "fan")
		if err != nil {
			t.Fatal(err)
		}
		if back, _, err := fan.In(scale, ""); err != nil || !back.Degrees.From.Equal(n) {
			t.Fatalf("%v for a fan oven and back = %v, %v", h, back, err)
		}
	})
}

// A hotter setting never converts to a cooler one.
func TestConversionsKeepOrder(t *testing.T) {
	for _, scale := range []string{"F", "gas"} {
		last := exact.Whole(-1000)
		for c := int64(110); c <= 240; c += 10 {
			h := oven.Heat{Degrees: exact.One(exact.Whole(c)), Scale: "C"}
			to, _, err := h.In(scale, "")
			if err != nil {
				if scale == "gas" {
					continue // between two marks
				}
				t.Fatal(err)
			}
			if to.Degrees.From.Cmp(last) < 0 {
				t.Errorf("%v in %s = %v, cooler than the one before, %v", h, scale, to, last)
			}
			last = to.Degrees.From
		}
	}
}
