package same_test

import (
	"testing"

	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
)

// settings reads every heat of a text.
func settings(text string) []speech.Said {
	var heats []speech.Said
	for _, s := range speech.Find(speech.Cut([]speech.Cue{{Text: text}})) {
		if s.Kind == speech.Heat {
			heats = append(heats, s)
		}
	}
	return heats
}

// What an oven is set to, by the table that most cookery books print: 140 °C is 275
// °F and gas 1, 180 °C 350 °F and gas 4, 200 °C 400 °F and gas 6, 220 °C 425 °F and
// gas 7, and a fan's setting is 20 °C lower ("Conversion chart for oven
// temperatures", household guides; there is no governing standard).
func TestOvenSettings(t *testing.T) {
	tests := []struct {
		said, written string
		want          bool
	}{
		{"180 degrees", "180 °C", true},
		{"180 degrees", "180 °C / 160 °C fan", true},
		{"160 degrees", "180 °C / 160 °C fan", true},
		{"170 degrees", "180 °C / 160 °C fan", false},
		{"200 degrees", "180 °C / 160 °C fan", false},
		{"160 fan", "180 °C / 160 °C fan", true},
		{"180 fan", "180 °C / 160 °C fan", false},
		{"180 conventional", "180 °C / 160 °C fan", true},
		{"160 conventional", "180 °C / 160 °C fan", false},
		{"160 fan", "180 °C", true},
		{"180 fan", "180 °C", false},
		{"gas mark four", "180 °C / 160 °C fan / gas 4", true},
		{"gas mark five", "180 °C / 160 °C fan / gas 4", false},
		{"gas mark four", "180 °C", true},
		{"gas mark six", "180 °C", false},
		{"gas six", "200 °C", true},
		{"gas seven", "220 °C", true},
		{"gas one", "140 °C", true},
		{"350 Fahrenheit", "180 °C", true},
		{"400 Fahrenheit", "200 °C", true},
		{"425 Fahrenheit", "220 °C", true},
		{"275 Fahrenheit", "140 °C", true},
		{"450 Fahrenheit", "180 °C", false},
		{"180 Celsius", "350 °F", true},
		{"190 Celsius", "375 °F", true},
		{"350 Celsius", "350 °F", false},
		{"375 degrees", "375 °F", true},
		{"350 degrees", "375 °F", false},
	}
	for _, test := range tests {
		t.Run(test.said+" for "+test.written, func(t *testing.T) {
			if got := same.Heats(spoken(t, test.said), settings(test.written), true); got != test.want {
				t.Errorf("got %v", got)
			}
		})
	}
}

// A food's own heat converts exactly: °F = °C × 9/5 + 32 (NIST SP 811, App. B).
func TestHeatsOfFood(t *testing.T) {
	tests := []struct {
		said, written string
		want          bool
	}{
		{"75 degrees", "75 °C", true},
		{"74 degrees", "75 °C", false},
		{"167 Fahrenheit", "75 °C", true},
		{"165 Fahrenheit", "75 °C", true},
		{"160 Fahrenheit", "75 °C", false},
		{"74 Celsius", "165 °F", true},
		{"95 Celsius", "203 °F", true},
		{"118 degrees", "118 °C", true},
		{"244 Fahrenheit", "118 °C", true},
		{"97 degrees", "97 °C", true},
		{"207 Fahrenheit", "97 °C", true},
		{"87 degrees", "97 °C", false},
	}
	for _, test := range tests {
		t.Run(test.said+" for "+test.written, func(t *testing.T) {
			if got := same.Heats(spoken(t, test.said), settings(test.written), false); got != test.want {
				t.Errorf("got %v", got)
			}
		})
	}
}

func TestRival(t *testing.T) {
	tests := []struct {
		said, written string
		want          bool
	}{
		{"180 degrees", "180 °C", true},
		{"160 fan", "180 °C", false},
		{"160 fan", "160 °C fan", true},
		{"350 Fahrenheit", "180 °C", false},
		{"gas four", "180 °C", false},
		{"gas four", "gas 4", true},
	}
	for _, test := range tests {
		t.Run(test.said+" and "+test.written, func(t *testing.T) {
			if got := same.Rival(spoken(t, test.said), settings(test.written)[0]); got != test.want {
				t.Errorf("got %v", got)
			}
		})
	}
}

func TestTimes(t *testing.T) {
	tests := []struct {
		said, written string
		want          bool
	}{
		{"ten minutes", "10 minutes", true},
		{"eleven minutes", "10 minutes", false},
		{"an hour", "60 minutes", true},
		{"half an hour", "30 minutes", true},
		{"three quarters of an hour", "45 minutes", true},
		{"an hour and a half", "90 minutes", true},
		{"an hour and twenty", "80 minutes", true},
		{"ninety seconds", "1½ minutes", true},
		{"two days", "48 hours", true},
		{"a week", "7 days", true},
		{"two weeks", "14 days", true},
		{"ten minutes", "8–10 minutes", true},
		{"nine minutes", "8–10 minutes", true},
		{"twelve minutes", "8–10 minutes", false},
		{"eight to ten minutes", "8–10 minutes", true},
		{"ten to twelve minutes", "8–10 minutes", false},
		{"eight to ten minutes", "9 minutes", true},
		{"about ten minutes", "11 minutes", true},
		{"about ten minutes", "15 minutes", false},
		// "overnight" is any time that a night can hold: common practice, no source
		{"overnight", "overnight", true},
		{"overnight", "12 hours", true},
		{"overnight", "8–12 hours", true},
		{"overnight", "12–16 hours", true},
		{"overnight", "2 hours", false},
		{"overnight", "48 hours", false},
		{"twelve hours", "overnight", true},
		{"two hours", "overnight", false},
	}
	for _, test := range tests {
		t.Run(test.said+" for "+test.written, func(t *testing.T) {
			said, written := spoken(t, "for "+test.said), spoken(t, test.written)
			if got := same.Times(said, written); got != test.want {
				t.Errorf("got %v", got)
			}
		})
	}
}

func TestAllows(t *testing.T) {
	tests := []struct {
		said, written string
		want          bool
	}{
		{"six hours", "at least 4 hours", true},
		{"four hours", "at least 4 hours", true},
		{"two hours", "at least 4 hours", false},
		{"up to two weeks", "up to 3 weeks", false},
		{"two weeks", "up to 3 weeks", false}, // it keeps for longer
		{"up to four weeks", "up to 3 weeks", false},
		{"four hours", "4 hours", false},
	}
	for _, test := range tests {
		t.Run(test.said+" for "+test.written, func(t *testing.T) {
			if got := same.Allows(spoken(t, test.said), spoken(t, test.written)); got != test.want {
				t.Errorf("got %v", got)
			}
		})
	}
}

// 1 in = 25.4 mm exactly (NIST SP 811).
func TestLengths(t *testing.T) {
	tests := []struct {
		said, written string
		want          bool
	}{
		{"30 centimetres", "30 cm", true},
		{"31 centimetres", "30 cm", false},
		{"five millimetres", "0.5 cm", true},
		{"twelve inches", "30 cm", true},
		{"ten inches", "30 cm", false},
		{"an inch", "2.5 cm", true},
		{"about eleven inches", "30 cm", true},
		{"two to three centimetres", "2–3 cm", true},
	}
	for _, test := range tests {
		t.Run(test.said+" for "+test.written, func(t *testing.T) {
			if got := same.Lengths(spoken(t, test.said), spoken(t, test.written)); got != test.want {
				t.Errorf("got %v", got)
			}
		})
	}
}

func TestCounts(t *testing.T) {
	tests := []struct {
		said, written string
		want          bool
	}{
		{"twelve pieces", "12 pieces", true},
		{"ten pieces", "12 pieces", false},
		{"a dozen pieces", "12 pieces", true},
		{"about thirty pieces", "28 pieces", true},
		{"four or five people", "4–5 people", true},
		{"four people", "4–5 people", true},
		{"six people", "4–5 people", false},
	}
	for _, test := range tests {
		t.Run(test.said+" for "+test.written, func(t *testing.T) {
			if got := same.Counts(spoken(t, test.said), spoken(t, test.written)); got != test.want {
				t.Errorf("got %v", got)
			}
		})
	}
}

func TestElided(t *testing.T) {
	for _, test := range []struct {
		said string
		want bool
	}{{"sixty of sugar", true}, {"ten of salt", true}, {"nine of salt", false}, {"sixty grams of sugar", false}, {"sixty minutes", false}} {
		t.Run(test.said, func(t *testing.T) {
			if got := same.Elided(spoken(t, test.said)); got != test.want {
				t.Errorf("got %v", got)
			}
		})
	}
}
