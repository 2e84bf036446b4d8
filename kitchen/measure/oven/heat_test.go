package oven_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure/exact"
	"benchproof/kitchen/measure/internal/tables"
	"benchproof/kitchen/measure/oven"
)

// brief gives a heat as the tables here write it: "180 C fan", "350..375 F".
func brief(h oven.Heat) string {
	return strings.TrimSpace(strings.ReplaceAll(tables.Range(h.Degrees)+" "+h.Scale+" "+h.Oven, "  ", " "))
}

// heatTexts are heats as cooks write them, with what Heats must find: written
// by us.
var heatTexts = []struct{ text, want string }{
	{"180°C/160°C fan/350°F/gas 4", "180 C, 160 C fan, 350 F, 4 gas"},
	{"180C (160C fan)", "180 C, 160 C fan"},
	{"180 °C (160 °C fan-forced)", "180 C, 160 C fan"},
	{"200°C, fan 180°C, gas 6", "200 C, 180 C fan, 6 gas"},
	{"200C fan 180C gas 6", "200 C, 180 C fan, 6 gas"},
	{"Heat oven to 200C/180C fan/gas 6.", "200 C, 180 C fan, 6 gas"},
	{"200/180 fan/gas 6", "200 C, 180 C fan, 6 gas"},
	{"180°C or 160°C in a fan oven", "180 C, 160 C fan"},
	{"180 °C conventional, 160 °C convection", "180 C conventional, 160 C fan"},
	{"180 °C top and bottom heat", "180 C conventional"},
	{"160°C (fan)", "160 C fan"},
	{"fan 160", "160 C fan"},
	{"fan oven: 160", "160 C fan"},
	{"convection 325", "325 F fan"},
	{"325°F convection oven", "325 F fan"},
	{"gas mark 4", "4 gas"},
	{"Gas Mark ½", "1/2 gas"},
	{"gas mark 1/4", "1/4 gas"},
	{"gas 4–5", "4..5 gas"},
	{"GM6", "6 gas"},
	{"gas mark six", "6 gas"},
	{"350-375 °F", "350..375 F"},
	{"350 to 375 F", "350..375 F"},
	{"175°C–180°C", "175..180 C"},
	{"35–40C water", "35..40 C"},
	{"350 degrees", "350 F"},
	{"350 degrees Fahrenheit", "350 F"},
	{"180 degrees Celsius", "180 C"},
	{"180 deg C", "180 C"},
	{"200 degrees", "200"},
	{"Preheat the oven to 350.", "350 F"},
	{"Preheat oven to 180 (160 fan)", "180 C, 160 C fan"},
	{"bake at 190 for 30 minutes", "190 C"},
	{"bake at 200 for 30 minutes", "200"},
	{"bake at 160 °C fan 20 minutes", "160 C fan"},
	{"until 82 °C inside", "82 C"},
	{"74 °C (165 °F)", "74 C, 165 F"},
	{"chill at 4 °C", "4 C"},
	{"freeze at −18 °C", "-18 C"},
	{"freeze at -18°C", "-18 C"},
	{"180ºC, 180˚C, 180℃, 180 oC", "180 C, 180 C, 180 C, 180 C"},
	{"three hundred and fifty degrees", "350 F"},
	{"a hundred and eighty degrees Celsius", "180 C"},
	{"36.5 °C", "73/2 C"},
	{"lower by 20 °C", ""},
	{"20 °C cooler", ""},
	{"20 degrees less", ""},
	{"turn the tray 180 degrees", ""},
	{"4 C flour", ""},
	{"12 c flour", ""},
	{"350 g flour", ""},
	{"preheat the oven, add 200 to 250 g flour", ""},
	{"bring to the boil at 3 places", ""},
	{"gas hob", ""},
	{"a fan of 8 slices", ""},
	{"the oven fits 12 at a time", ""},
}

func TestHeats(t *testing.T) {
	for _, test := range heatTexts {
		t.Run(test.text, func(t *testing.T) {
			var got []string
			for _, h := range oven.Heats(test.text) {
				got = append(got, brief(h))
				if test.text[h.At:h.At+len(h.Text)] != h.Text {
					t.Errorf("%q does not stand at %d", h.Text, h.At)
				}
			}
			if diff := cmp.Diff(test.want, strings.Join(got, ", ")); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}

func TestHeatStringReadsBack(t *testing.T) {
	for _, want := range []string{"180 °C", "160 °C fan", "350–375 °F", "gas 4", "gas ½", "gas 4–5", "−18 °C", "190 °C conventional"} {
		heats := oven.Heats(want)
		if len(heats) != 1 || tables.Plain(heats[0].String()) != want {
			t.Errorf("Heats(%q) = %v", want, heats)
		}
	}
}

func TestHeatInAnotherScaleAndOven(t *testing.T) {
	for _, test := range []struct{ name, from, scale, oven, want, how string }{
		{"table °C to °F", "180 °C", "F", "", "350 °F", "published table"},
		{"table °C to gas", "180 °C", "gas", "", "gas 4", "published table"},
		{"fan to gas", "160 °C fan", "gas", "", "gas 4", "published table"},
		{"fan to °F", "160 °C fan", "F", "", "350 °F", "published table"},
		{"°F to fan °C", "350 °F", "C", "fan", "160 °C fan", "published table"},
		{"°F to °C of two", "325 °F", "C", "", "160 °C", "published table"},
		{"the other of two", "170 °C", "F", "", "325 °F", "published table"},
		{"a range", "350–375 °F", "C", "", "180–190 °C", "published table"},
		{"gas to °C", "gas 6", "C", "", "200 °C", "published table"},
		{"as other tables print it", "175 °C", "gas", "", "gas 4", "published table"},
		{"fan rule down", "200 °C", "C", "fan", "180 °C fan", "fan rule"},
		{"fan rule up", "180 °C fan", "C", "conventional", "200 °C conventional", "fan rule"},
		{"fan rule °F", "350 °F", "F", "fan", "325 °F fan", "fan rule"},
		{"no row near", "210 °C", "F", "", "410 °F", "exact conversion"},
		{"hot pizza oven", "500 °F", "C", "", "260 °C", "exact conversion"},
		{"cool", "60 °C", "F", "", "140 °F", "exact conversion"},
	} {
		t.Run(test.name, func(t *testing.T) {
			got, how, err := oven.Heats(test.from)[0].In(test.scale, test.oven)
			if err != nil || tables.Plain(got.String()) != test.want || how != test.how {
				t.Errorf("%s = %v (%s), %v, want %s (%s)", test.from, got, how, err, test.want, test.how)
			}
		})
	}
	for _, h := range []oven.Heat{oven.Heats("300 °C")[0], oven.Heats("200 degrees")[0]} {
		if got, _, err := h.In("gas", ""); fault.KindOf(err) != fault.Invalid || fault.Say(err) == "" {
			t.Errorf("%v in gas = %v, %v, want an Invalid fault", h, got, err)
		}
	}
}

// The published table of ovens, both ways and all scales. Source: in the table.
func TestOvenTableIsAsPublished(t *testing.T) {
	settings := oven.Settings()
	rows := tables.Read(t, "ovens.txt", 7)
	if len(settings) != len(rows) {
		t.Fatalf("%d settings, the table has %d", len(settings), len(rows))
	}
	for i, row := range rows {
		t.Run("gas "+row[0], func(t *testing.T) {
			s := settings[i]
			var printed []string
			for _, c := range s.Celsius {
				printed = append(printed, c.String())
			}
			fan := s.Fan.String()
			if s.Fan.IsZero() {
				fan = "-"
			}
			exact := exact.FormatDecimal(s.Exact(), 1)
			if !strings.Contains(exact, ".") {
				exact += ".0"
			}
			got := []string{s.Gas.String(), s.Fahrenheit.String(), strings.Join(printed, ","), fan, exact, s.NearestFive.String(), s.Word}
			if diff := cmp.Diff(row, got); diff != "" {
				t.Errorf("(-table +got):\n%s", diff)
			}
			checkRowConverts(t, s)
		})
	}
	settings[0].Word = "spoilt"
	if oven.Settings()[0].Word == "spoilt" {
		t.Error("the table Settings gives is shared")
	}
}

// checkRowConverts takes a row's figures to each other by Heat.In, and asks
// Check whether they agree.
func checkRowConverts(t *testing.T, s oven.Setting) {
	t.Helper()
	gas := oven.Heat{Degrees: exact.One(s.Gas), Scale: "gas"}
	f := oven.Heat{Degrees: exact.One(s.Fahrenheit), Scale: "F"}
	heats := []oven.Heat{gas, f}
	for _, c := range s.Celsius {
		h := oven.Heat{Degrees: exact.One(c), Scale: "C"}
		if to, _, err := h.In("gas", ""); err != nil || !to.Degrees.From.Equal(s.Gas) {
			t.Errorf("%v in gas = %v, %v", h, to, err)
		}
		if to, _, err := h.In("F", ""); err != nil || !to.Degrees.From.Equal(s.Fahrenheit) {
			t.Errorf("%v in °F = %v, %v", h, to, err)
		}
		if q := oven.Check(append([]oven.Heat{h}, heats...)); len(q) > 0 {
			t.Errorf("the row's own figures are questioned: %v", q)
		}
	}
	if to, _, err := gas.In("C", "fan"); !s.Fan.IsZero() && (err != nil || !to.Degrees.From.Equal(s.Fan)) {
		t.Errorf("%v in a fan oven = %v, %v, want %v", gas, to, err, s.Fan)
	}
}
