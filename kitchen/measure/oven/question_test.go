package oven_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/measure/exact"
	"benchproof/kitchen/measure/internal/tables"
	"benchproof/kitchen/measure/oven"
)

func TestCheck(t *testing.T) {
	for _, test := range []struct {
		name, text string
		says       string   // "" if nothing must be questioned
		likely     []string // the likelier first
	}{
		// The 20 °C rule: NSW Health, "Conversion chart"; UK guides.
		{"a good pair", "180°C/160°C fan/350°F/gas 4", "", nil},
		// The older UK rule of 25 °C: household guides.
		{"25 apart passes", "190 °C (165 °C fan)", "", nil},
		{"15 apart passes", "175 °C (160 °C fan)", "", nil},
		{"a good pair of ranges", "180–190 °C (160–170 °C fan)", "", nil},
		{"a pair 10 apart", "180 °C (170 °C fan)",
			"180 °C and 170 °C fan are 10 °C apart, where about 20 °C is usual. Was 160 °C fan or 190 °C conventional meant?",
			[]string{"160 °C fan", "190 °C conventional"}},
		{"a pair 40 apart", "200 °C/160 °C fan",
			"200 °C and 160 °C fan are 40 °C apart, where about 20 °C is usual. Was 180 °C fan or 180 °C conventional meant?",
			[]string{"180 °C fan", "180 °C conventional"}},
		{"the same twice", "180 °C, fan 180 °C",
			"180 °C and 180 °C fan are 0 °C apart, where about 20 °C is usual. Was 160 °C fan or 200 °C conventional meant?",
			[]string{"160 °C fan", "200 °C conventional"}},
		{"°F bears out the conventional one", "180 °C/170 °C fan/350 °F",
			"180 °C and 170 °C fan are 10 °C apart, where about 20 °C is usual. Was 160 °C fan or 190 °C conventional meant? 350 °F agrees with 180 °C.",
			[]string{"160 °C fan", "190 °C conventional"}},
		{"gas bears out the fan one", "180 °C/180 °C fan/gas 6",
			"180 °C and 180 °C fan are 0 °C apart, where about 20 °C is usual. Was 200 °C conventional or 160 °C fan meant? Gas 6 agrees with 180 °C fan.",
			[]string{"200 °C conventional", "160 °C fan"}},
		{"swapped", "160 °C/180 °C fan",
			"A fan oven is set lower than a conventional one, but 180 °C fan stands with 160 °C. Was 180 °C conventional and 160 °C fan, 140 °C fan or 200 °C conventional meant?",
			[]string{"180 °C conventional and 160 °C fan", "140 °C fan", "200 °C conventional"}},
		{"a range half wrong", "180–200 °C (160–190 °C fan)",
			"180–200 °C and 160–190 °C fan are 20 °C apart at the lower end and 10 °C at the upper, where about 20 °C is usual. Was 160–180 °C fan or 180–210 °C conventional meant?",
			[]string{"160–180 °C fan", "180–210 °C conventional"}},
		// The US rule of 25 °F and the textbook's 25–50 °F.
		{"a °F pair", "350 °F (325 °F convection)", "", nil},
		{"a °F pair 10 apart", "350 °F (340 °F convection)",
			"350 °F and 340 °F fan are 10 °F apart, where about 25 °F is usual. Was 325 °F fan or 365 °F conventional meant?",
			[]string{"325 °F fan", "365 °F conventional"}},
		// Table of oven settings; exact by NIST SP 811, App. B.
		{"°C and °F differ", "180 °C/400 °F", "180 °C and 400 °F do not agree. Was 350 °F or 200 °C meant?", []string{"350 °F", "200 °C"}},
		{"°C and gas differ", "200 °C/gas 3", "200 °C and gas 3 do not agree. Was gas 6 or 160 °C meant?", []string{"gas 6", "160 °C"}},
		{"°F and gas differ", "350 °F/gas 6", "350 °F and gas 6 do not agree. Was gas 4 or 400 °F meant?", []string{"gas 4", "400 °F"}},
		{"two a row prints", "130 °C/250 °F/gas ½", "", nil},
		{"near the exact value", "205 °C/400 °F", "", nil},
		{"between two marks", "185 °C/gas 4–5", "", nil},
		{"fan alone with °F", "160 °C fan/350 °F", "", nil},
		{"fan converted as it stands", "160 °C fan/325 °F", "", nil},
		{"fan alone, °F far off", "160 °C fan/425 °F", "180 °C and 425 °F do not agree. Was 350 °F or 220 °C meant?", []string{"350 °F", "220 °C"}},
		{"one slip, one question", "190 °C/160 °C fan/350 °F/gas 4",
			"190 °C and 160 °C fan are 30 °C apart, where about 20 °C is usual. Was 180 °C conventional or 170 °C fan meant? Gas 4 agrees with 160 °C fan.",
			[]string{"180 °C conventional", "170 °C fan"}},
		// FDA Food Code 2022 § 3-401.11 prints these pairs.
		{"food at 63 °C", "63 °C (145 °F)", "", nil},
		{"food at 74 °C", "74 °C (165 °F)", "", nil},
		{"food off by 3 °C", "60 °C (145 °F)", "60 °C and 145 °F do not agree. Was 140 °F or 63 °C meant?", []string{"140 °F", "63 °C"}},
		{"apart in the text", "Start at 200 °C, then after ten minutes lower to 190 °C fan.", "", nil},
		{"nothing", "no heat here", "", nil},
	} {
		t.Run(test.name, func(t *testing.T) {
			questions := oven.Check(oven.Heats(test.text))
			if test.says == "" {
				if len(questions) > 0 {
					t.Errorf("questioned: %s", questions[0].Text)
				}
				return
			}
			if len(questions) != 1 {
				t.Fatalf("%d questions: %v", len(questions), questions)
			}
			q := questions[0]
			if diff := cmp.Diff(test.says, tables.Plain(q.Text)); diff != "" {
				t.Errorf("Text (-want +got):\n%s", diff)
			}
			for i := range q.Likely {
				q.Likely[i] = tables.Plain(q.Likely[i])
			}
			if diff := cmp.Diff(test.likely, q.Likely); diff != "" {
				t.Errorf("Likely (-want +got):\n%s", diff)
			}
			if q.About.Scale == "" {
				t.Error("About is empty")
			}
		})
	}
}

// Heats made by hand, without places, are one statement.
func TestCheckWithoutPlaces(t *testing.T) {
	heats := []oven.Heat{
		{Degrees: exact.One(exact.Whole(200)), Scale: "C", Oven: "conventional"},
		{Degrees: exact.One(exact.Whole(190)), Scale: "C", Oven: "fan"},
	}
	if q := oven.Check(heats); len(q) != 1 || q[0].About.Oven != "fan" {
		t.Errorf("Check = %v", q)
	}
	if q := oven.Check(nil); len(q) != 0 {
		t.Errorf("Check(nil) = %v", q)
	}
}
