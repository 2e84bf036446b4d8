package oven_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/measure/exact"
	"benchproof/kitchen/measure/internal/tables"
	"benchproof/kitchen/measure/oven"
)

// Heats in the words of home recipes, written by us: what each is, and the
// words it is read from.
func TestHeatsAsCooksWriteThem(t *testing.T) {
	for _, test := range []struct {
		name, text string
		heats      string
		words      []string // nil if not worth telling
	}{
		// statements of several scales
		{"slashes and spaces", "Preheat to 200°C / 180°C fan / gas 6 / 400°F", "200 C, 180 C fan, 6 gas, 400 F", []string{"200°C", "180°C fan", "gas 6", "400°F"}},
		{"fan in brackets, gas behind a comma", "Heat the oven to 200C (180C fan), Gas 6", "200 C, 180 C fan, 6 gas", nil},
		{"gas first", "gas mark 5 (190°C/375°F)", "5 gas, 190 C, 375 F", nil},
		{"fan first, bare", "180 fan/200 conventional", "180 C fan, 200 C conventional", []string{"180 fan", "200 conventional"}},
		{"bare conventional without a partner", "200 conventional", "200 conventional", nil},
		{"°F and convection", "350°F/convection 325°F", "350 F, 325 F fan", []string{"350°F", "convection 325°F"}},
		{"degrees written out", "180 degrees C (350 degrees F)", "180 C, 350 F", []string{"180 degrees C", "350 degrees F"}},

		// ovens that blow
		{"fan-assisted", "170°C fan-assisted", "170 C fan", nil},
		{"fan assisted before", "fan assisted 170", "170 C fan", nil},
		{"fan forced in brackets", "170 (fan forced)", "170 C fan", nil},
		{"fan bake", "170 °C fan bake", "170 C fan", nil},
		{"hot air", "170 °C hot air", "170 C fan", []string{"170 °C hot air"}},
		{"circulating air beside conventional", "220 °C conventional, 200 °C circulating air", "220 C conventional, 200 C fan", nil},
		{"in a fan oven", "bake at 160 °C in a fan oven", "160 C fan", []string{"160 °C in a fan oven"}},
		{"no fan", "200 °C, no fan", "200 C conventional", []string{"200 °C, no fan"}},
		{"static", "200 static", "200 conventional", nil},
		{"with the fan's own figure next", "200 °C, fan 180 °C", "200 C, 180 C fan", []string{"200 °C", "fan 180 °C"}},

		// hyphens and signs
		{"a 350-degree oven", "in a 350-degree oven", "350 F", []string{"350-degree"}},
		{"a hyphen and a scale", "in a 350-degree F oven", "350 F", []string{"350-degree F"}},
		{"a masculine ordinal", "375ºF", "375 F", nil},
		{"spaces about the sign", "375 ° F", "375 F", nil},
		{"the sign alone", "a 350° oven", "350 F", nil},
		{"decimal comma", "180,5 °C", "361/2 C", nil},

		// gas
		{"in words", "Gas Mark Four", "4 gas", nil},
		{"by number", "gas no. 4", "4 gas", nil},
		{"or", "gas 4 or 5", "4..5 gas", nil},
		{"a quarter in figures", "gas 1/4", "1/4 gas", nil},
		{"ten", "gas 10", "10 gas", nil},
		{"eleven is none", "gas 11", "", nil},
		{"nought is none", "gas mark 0", "", nil},
		{"a bottle", "a 9 kg gas bottle", "", nil},

		// ranges
		{"a sign at each end", "235° to 240°F", "235..240 F", []string{"235° to 240°F"}},
		{"a scale at each end", "112°C to 116°C", "112..116 C", nil},
		{"one scale behind", "105-115F", "105..115 F", nil},
		{"between", "between 112 and 116 °C", "112..116 C", []string{"112 and 116 °C"}},
		{"and without between", "whisk at 50 and 60 °C", "60 C", nil},
		{"two settings, or", "180 °C or 200 °C", "180 C, 200 C", nil},
		{"falling is a pair", "220 °C–200 °C", "220 C, 200 C", nil},

		// cold
		{"minus", "freeze at minus 18 °C", "-18 C", []string{"minus 18 °C"}},
		{"a hyphen and a bare C", "freeze at -18 C", "-18 C", []string{"-18 C"}},
		{"a bullet and cups", "-2 C flour", "", nil},
		{"nothing below zero", "0 °C", "0 C", nil},
		{"no scale, no heat", "minus 1 egg", "", nil},

		// cups and heats
		{"to a bare C", "cool to 27 C", "27 C", nil},
		{"glued", "water at 30C", "30 C", nil},
		{"thirty-one", "31 C milk", "31 C", nil},
		{"thirty", "30 C milk", "", nil},

		// turns and differences
		{"half round", "turn the dish 180 degrees", "", nil},
		{"a half-turn as a noun", "a 180-degree turn", "", nil},
		{"less for a fan", "200 °C minus 20 °C for a fan", "200 C", []string{"200 °C"}},
		{"more for thick ones", "180 °C plus 10 °C for thick ones", "180 C", nil},
		{"hotter", "set it 20 °C hotter", "", nil},

		// figures that are none
		{"a gas hob", "turn the gas to 4", "", nil},
		{"five figures", "12000 °C", "", nil},
		{"a bare figure, no oven said", "heat the oil to 180", "", nil},
		{"the grill", "grill at 240°C", "240 C", nil},
	} {
		t.Run(test.name, func(t *testing.T) {
			var heats, words []string
			for _, h := range oven.Heats(test.text) {
				heats, words = append(heats, brief(h)), append(words, h.Text)
			}
			if got := strings.Join(heats, ", "); got != test.heats {
				t.Errorf("%q has %q, want %q", test.text, got, test.heats)
			}
			if diff := cmp.Diff(test.words, words); test.words != nil && diff != "" {
				t.Errorf("%q (-want +got):\n%s", test.text, diff)
			}
		})
	}
}

// Source: the temperatures of sugar that confectioners' tables print with their
// names, and of the freezer, from memory; each pair is the exact conversion of
// NIST SP 811, App. B, to the degree.
func TestPairsOfFoodsAreNotQuestioned(t *testing.T) {
	for _, test := range []struct{ name, text string }{
		{"soft ball", "112 °C (234 °F)"},
		{"firm ball", "118 °C (245 °F)"},
		{"hard crack", "149 °C (300 °F)"},
		{"freezer", "-18 °C (0 °F)"},
		{"blood heat", "37 °C (98.6 °F)"},
		{"boiling water", "100 °C (212 °F)"},
		{"chocolate in temper", "31 °C (88 °F)"},
	} {
		if q := oven.Check(oven.Heats(test.text)); len(q) > 0 {
			t.Errorf("%s: %s", test.name, q[0].Text)
		}
	}
}

// The fan column of the published table, from each figure to every other scale
// of its row. Source: "Oven temperature conversion guide" (fan).
func TestTheFanColumnReachesEveryScale(t *testing.T) {
	for _, test := range []struct {
		fan, celsius, fahrenheit, gas string
	}{
		{"120", "140", "275", "1"},
		{"130", "150", "300", "2"},
		{"140", "160", "325", "3"},
		{"160", "180", "350", "4"},
		{"170", "190", "375", "5"},
		{"180", "200", "400", "6"},
		{"200", "220", "425", "7"},
		{"210", "230", "450", "8"},
		{"220", "240", "475", "9"},
	} {
		h := oven.Heat{Degrees: exact.One(exact.MustNumber(test.fan)), Scale: "C", Oven: "fan"}
		for scale, want := range map[string]string{"C": test.celsius, "F": test.fahrenheit, "gas": test.gas} {
			got, _, err := h.In(scale, "")
			if err != nil || tables.Range(got.Degrees) != want {
				t.Errorf("%s °C fan in %s = %v, %v, want %s", test.fan, scale, got, err, want)
			}
			if back, _, err := got.In("C", "fan"); err != nil || tables.Range(back.Degrees) != test.fan {
				t.Errorf("%v for a fan oven = %v, %v, want %s °C", got, back, err, test.fan)
			}
		}
	}
}
