package measure_test

import (
	"testing"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/measure/internal/tables"
)

// Each step of what a hand can take, tried on both sides of where it begins and
// of where it rounds up: the rules are those in the words of Hand.Write, the
// results worked out by hand.
func TestTheStepsOfHandsOnBothSides(t *testing.T) {
	for _, group := range []struct {
		name   string
		system measure.System
		unit   string
		rows   [][2]string // the number, the text
	}{
		{"a scale below and above 10 g", measure.Metric, "g", [][2]string{
			{"994/100", "9.9 g"}, {"995/100", "10 g"}, {"104/10", "10 g"}, {"105/10", "11 g"},
			{"9994/10", "999 g"}, {"9995/10", "1 kg"},
		}},
		{"a scale's finest step", measure.Metric, "g", [][2]string{
			{"1/10", "0.1 g"}, {"99/1000", "99 mg"}, {"995/10000", "0.1 g"}, {"994/10000", "99 mg"},
			{"5/10000", "1 mg"}, {"4/10000", "1 mg"}, {"149/1000", "0.1 g"}, {"150/1000", "0.2 g"},
		}},
		{"kilograms only in fifties", measure.Metric, "g", [][2]string{
			{"1024", "1024 g"}, {"1025", "1025 g"}, {"10496/10", "1.05 kg"}, {"1050", "1.05 kg"},
			{"950..1050", "950–1050 g"}, {"1000..1025", "1000–1025 g"}, {"1000..1050", "1–1.05 kg"},
		}},
		{"ounces in eighths, quarters, halves, whole", measure.US, "oz", [][2]string{
			{"6/100", "⅛ oz"}, {"90/100", "⅞ oz"}, {"95/100", "1 oz"}, {"78/10", "7¾ oz"}, {"79/10", "8 oz"},
			{"82/10", "8 oz"}, {"825/100", "8½ oz"}, {"797/10", "4 lb 15½ oz"}, {"798/10", "5 lb"}, {"804/10", "5 lb"}, {"81", "5 lb 1 oz"},
		}},
		{"pounds in quarters or with ounces", measure.US, "oz", [][2]string{
			{"157/10", "15½ oz"}, {"158/10", "1 lb"}, {"17", "1 lb 1 oz"}, {"20", "1¼ lb"}, {"24", "1½ lb"}, {"28", "1¾ lb"}, {"33", "2 lb 1 oz"},
			{"16..20", "1–1¼ lb"}, {"15..20", "15–20 oz"},
		}},
		{"a jug below 1, 10, 50 mL and a litre", measure.Metric, "ml", [][2]string{
			{"4/100", "0.1 mL"}, {"94/100", "0.9 mL"}, {"95/100", "1 mL"}, {"12/10", "1 mL"}, {"125/100", "1.5 mL"}, {"97/10", "9.5 mL"}, {"975/100", "10 mL"},
			{"104/10", "10 mL"}, {"105/10", "11 mL"}, {"494/10", "49 mL"}, {"52", "50 mL"}, {"525/10", "55 mL"},
			{"997", "995 mL"}, {"9975/10", "1 L"}, {"1004", "1 L"}, {"1005", "1.01 L"},
		}},
		{"decilitres where plain", measure.Metric, "dl", [][2]string{
			{"1/4", "0.25 dL"}, {"15/4", "3.75 dL"}, {"33/10", "330 mL"}, {"39/4", "9.75 dL"}, {"2..5/2", "2–2.5 dL"}, {"2..12/5", "200–240 mL"},
		}},
		{"centilitres where plain", measure.Metric, "cl", [][2]string{
			{"4", "4 cL"}, {"42/10", "42 mL"}, {"1/2", "0.5 cL"}, {"2..3", "2–3 cL"},
		}},
		{"fluid ounces in quarters, halves, whole", measure.US, "fl oz", [][2]string{
			{"385/100", "3¾ fl oz"}, {"39/10", "4 fl oz"}, {"42/10", "4 fl oz"}, {"425/100", "4½ fl oz"},
			{"197/10", "19½ fl oz"}, {"198/10", "20 fl oz"}, {"204/10", "20 fl oz"}, {"205/10", "21 fl oz"},
		}},
		{"imperial pints from twenty fluid ounces", measure.Imperial, "fl oz", [][2]string{
			{"197/10", "19½ fl oz"}, {"198/10", "1 pint"}, {"21", "1 pint + 1 fl oz"}, {"25", "1¼ pints"}, {"26", "1 pint + 6 fl oz"},
			{"30", "1½ pints"}, {"40..50", "2–2½ pints"}, {"41..50", "41–50 fl oz"},
		}},
		{"US gallons in quarters, else in cups", measure.US, "gallon", [][2]string{
			{"105/100", "1 gallon"}, {"106/100", "17 cups"}, {"5/4", "1¼ gallons"},
		}},
		{"imperial quarts exact, else in pints", measure.Imperial, "quart", [][2]string{
			{"5/4", "1¼ quarts"}, {"11/10", "2 pints + 4 fl oz"},
		}},
		{"pieces: quarters and thirds, halves, whole", measure.US, "", [][2]string{
			{"29/100", "¼"}, {"30/100", "⅓"}, {"19/5", "3¾"}, {"39/10", "4"}, {"42/10", "4"}, {"425/100", "4½"},
			{"97/10", "9½"}, {"975/100", "10"}, {"104/10", "10"}, {"105/10", "11"}, {"1/100", "¼"},
		}},
		{"cloves in halves", measure.US, "clove", [][2]string{
			{"1/5", "½ clove"}, {"12/10", "1 clove"}, {"125/100", "1½ cloves"}, {"97/10", "9½ cloves"}, {"104/10", "10 cloves"},
		}},
		{"sticks in the eighths of their paper", measure.US, "stick", [][2]string{
			{"3/10", "¼ stick"}, {"1/3", "⅜ stick"}, {"39/10", "3⅞ sticks"}, {"41/10", "4 sticks"}, {"9/2", "4½ sticks"},
		}},
		{"sprigs whole", measure.US, "sprig", [][2]string{
			{"1/5", "1 sprig"}, {"14/10", "1 sprig"}, {"3/2", "2 sprigs"}, {"7/4..11/4", "2–3 sprigs"},
		}},
		{"rules", measure.Metric, "in", [][2]string{{"1/10", "¼ in"}, {"113/100", "1¼ in"}, {"112/100", "1 in"}, {"21/2", "10½ in"}}},
		{"centimetre rules", measure.Metric, "cm", [][2]string{{"1/10", "0.5 cm"}, {"224/100", "2 cm"}, {"225/100", "2.5 cm"}}},
		{"millimetre rules", measure.Metric, "mm", [][2]string{{"1/10", "1 mm"}, {"24/10", "2 mm"}, {"5/2", "3 mm"}}},
		{"pinches up to four, then spoons", measure.US, "pinch", [][2]string{
			{"5/4", "1½ pinches"}, {"4", "4 pinches"}, {"16", "1 tsp"}, {"1..4", "1–4 pinches"}, {"8..16", "½–1 tsp"},
		}},
		{"dashes up to four, then spoons", measure.US, "dash", [][2]string{{"4", "4 dashes"}, {"6", "¾ tsp"}, {"24", "1 tbsp"}}},
	} {
		t.Run(group.name, func(t *testing.T) {
			h := measure.Hand{System: group.system}
			for _, row := range group.rows {
				a := measure.Amount{Range: span(t, row[0]), Unit: measure.Unit(group.unit)}
				if got := tables.Plain(h.Write(a).Text); got != row[1] {
					t.Errorf("Write(%s %s) = %q, want %q", row[0], group.unit, got, row[1])
				}
			}
		})
	}
}

// The errors that are told, worked out by hand: (shown − exact) ÷ exact.
func TestErrorsAreWorkedOut(t *testing.T) {
	for _, test := range []struct {
		name, exact, text, percent string
		off                        bool
	}{
		{"3.14 g as 3.1 g: 0.04 ÷ 3.14", "157/50 g", "3.1 g", "200/157", false},
		{"an eighth for a tenth of an ounce: 0.025 ÷ 0.1", "1/10 oz", "⅛ oz", "25", true},
		{"21 g as 21 g", "21 g", "21 g", "0", false},
		{"exactly 5 % is not told: 1 for 20/21", "20/21 sprig", "1 sprig", "5", false},
		{"a hair more is: 1 for 200/211", "200/211 sprig", "1 sprig", "11/2", true},
		{"a third of a clove as half: (½ − ⅓) ÷ ⅓", "1/3 clove", "½ clove", "50", true},
		{"the farther end of a range: ½ for ⅓, 1 for 1", "1/3..1 clove", "½–1 clove", "50", true},
		{"the farther end is the upper", "1..4/3 clove", "1–1½ cloves", "25/2", true},
		{"two sprigs for one and a half: ½ ÷ 1½", "3/2 sprig", "2 sprigs", "100/3", true},
	} {
		t.Run(test.name, func(t *testing.T) {
			got := measure.Hand{System: measure.US}.Write(amount(t, test.exact))
			if tables.Plain(got.Text) != test.text || got.ErrorPercent.String() != test.percent || got.IsOff() != test.off {
				t.Errorf("Write(%s) = %q, %v %% off, told %v; want %q, %s, %v", test.exact, got.Text, got.ErrorPercent, got.IsOff(), test.text, test.percent, test.off)
			}
		})
	}
}
