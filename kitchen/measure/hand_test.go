package measure_test

import (
	"testing"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/measure/internal/tables"
)

// The sets of cups and spoons are trade practice, from memory; the steps of
// scales and jugs common practice, no source.
func TestWriteForHands(t *testing.T) {
	for _, test := range []struct {
		name   string
		system measure.System
		exact  string
		want   string
		error  string // per cent to two places
	}{
		// scales
		{"grams to the gram", measure.Metric, "1234/10 g", "123 g", "0.32"},
		{"tenths below 10 g", measure.Metric, "314/100 g", "3.1 g", "1.27"},
		{"just below 10 g", measure.Metric, "999/100 g", "10 g", "0.1"},
		{"halves round up", measure.Metric, "25/2 g", "13 g", "4"},
		{"kilograms", measure.Metric, "1500 g", "1.5 kg", "0"},
		{"kilograms in steps of 50 g", measure.Metric, "1740 g", "1740 g", "0"},
		{"1250 g", measure.Metric, "5/4 kg", "1.25 kg", "0"},
		{"less than a kilogram", measure.Metric, "3/4 kg", "750 g", "0"},
		{"what a scale cannot show", measure.Metric, "4/100 g", "40 mg", "0"},
		{"more than half a scale step", measure.Metric, "6/100 g", "60 mg", "0"},
		{"nearly a scale step", measure.Metric, "9999/100000 g", "0.1 g", "0.01"},
		{"milligrams in bulk", measure.Metric, "2500 mg", "2.5 g", "0"},
		{"a range of grams", measure.Metric, "1001/10..2502/10 g", "100–250 g", "0.1"},
		{"a range over a kilogram", measure.Metric, "900..1100 g", "900–1100 g", "0"},
		{"a range of kilograms", measure.Metric, "1..3/2 kg", "1–1.5 kg", "0"},
		{"a range that closes", measure.Metric, "501/100..502/100 g", "5 g", "0.4"},
		{"ounces", measure.US, "53/10 oz", "5¼ oz", "0.94"},
		{"a tenth of an ounce", measure.US, "1/10 oz", "⅛ oz", "25"},
		{"pounds", measure.US, "20 oz", "1¼ lb", "0"},
		{"pounds and ounces", measure.US, "19 oz", "1 lb 3 oz", "0"},
		{"part of a pound", measure.US, "1/2 lb", "8 oz", "0"},
		{"a range of pounds", measure.US, "1..3/2 lb", "1–1½ lb", "0"},
		{"a range of ounces past a pound", measure.US, "18..22 oz", "18–22 oz", "0"},
		// jugs
		{"millilitres in fives", measure.Metric, "2365882365/10000000 ml", "235 mL", "0.67"},
		{"millilitres one by one", measure.Metric, "14787/1000 ml", "15 mL", "1.44"},
		{"half millilitres", measure.Metric, "4929/1000 ml", "5 mL", "1.44"},
		{"litres", measure.Metric, "56826125/50000 ml", "1.14 L", "0.31"},
		{"decilitres kept", measure.Metric, "5/2 dl", "2.5 dL", "0"},
		{"decilitres not plain", measure.Metric, "135/100 dl", "135 mL", "0"},
		{"centilitres kept", measure.Metric, "9/2 cl", "4.5 cL", "0"},
		{"ten decilitres", measure.Metric, "10 dl", "1 L", "0"},
		// cups and spoons
		{"a sum", measure.US, "13/16 cup", "¾ cup + 1 tbsp", "0"},
		{"an eighth of a cup", measure.US, "1/8 cup", "2 tbsp", "0"},
		{"thirds", measure.US, "7/3 cup", "2⅓ cups", "0"},
		{"the nearest fraction", measure.US, "23/10 cup", "2⅓ cups", "1.45"},
		{"three eighths", measure.US, "3/8 cup", "¼ cup + 2 tbsp", "0"},
		{"sixteen tablespoons", measure.US, "16 tbsp", "1 cup", "0"},
		{"four tablespoons", measure.US, "4 tbsp", "¼ cup", "0"},
		{"four metric tablespoons are 60 mL, not 62.5", measure.Metric, "4 tbsp", "4 tbsp", "0"},
		{"a tablespoon more than two cups", measure.US, "33 tbsp", "2 cups + 1 tbsp", "0"},
		{"sixteen metric tablespoons", measure.Metric, "16 tbsp", "1 cup", "4.17"},
		{"sixteen Australian tablespoons", measure.Australian, "16 tbsp", "1¼ cups", "2.34"},
		{"five tablespoons", measure.US, "5 tbsp", "5 tbsp", "0"},
		{"half a tablespoon", measure.US, "1/2 tbsp", "½ tbsp", "0"},
		{"a quarter tablespoon", measure.US, "1/4 tbsp", "¾ tsp", "0"},
		{"three teaspoons", measure.US, "3 tsp", "1 tbsp", "0"},
		{"four Australian teaspoons", measure.Australian, "4 tsp", "1 tbsp", "0"},
		{"four teaspoons", measure.US, "4 tsp", "1 tbsp + 1 tsp", "0"},
		{"one and a half teaspoons", measure.US, "3/2 tsp", "1½ tsp", "0"},
		{"three eighths of a teaspoon", measure.US, "3/8 tsp", "¼ tsp + ⅛ tsp", "0"},
		{"a third of a teaspoon", measure.US, "1/3 tsp", "¼ tsp + 1 pinch", "6.25"},
		{"two thirds of a teaspoon", measure.US, "2/3 tsp", "½ tsp + ⅛ tsp", "6.25"},
		{"a sixteenth of a teaspoon", measure.US, "1/16 tsp", "1 pinch", "0"},
		{"a thirtieth of a teaspoon", measure.US, "1/30 tsp", "1 smidgen", "6.25"},
		{"two pinches", measure.US, "2 pinch", "2 pinches", "0"},
		{"eight pinches", measure.US, "8 pinch", "½ tsp", "0"},
		{"a range of spoons", measure.US, "2..3 tbsp", "2–3 tbsp", "0"},
		{"a range of spoons grown", measure.US, "16..32 tbsp", "1–2 cups", "0"},
		{"a range of cups shrunk", measure.US, "1/8..1/4 cup", "2–4 tbsp", "0"},
		{"a range of cups", measure.US, "3/4..7/6 cup", "¾–1¼ cups", "7.14"},
		{"a wide range", measure.US, "1/4..9 tsp", "¼–9 tsp", "0"},
		// other volumes
		{"fluid ounces", measure.US, "61/10 fl oz", "6 fl oz", "1.64"},
		{"imperial pint", measure.Imperial, "20 fl oz", "1 pint", "0"},
		{"imperial pint and more", measure.Imperial, "23 fl oz", "1 pint + 3 fl oz", "0"},
		{"pints in cups", measure.US, "11/10 pint", "2¼ cups", "2.27"},
		{"pints in fluid ounces", measure.Imperial, "1/9 pint", "2¼ fl oz", "1.25"},
		{"quarts", measure.US, "5/2 quart", "2½ quarts", "0"},
		{"gō", measure.Japanese, "3/2 gō", "1½ gō", "0"},
		{"dessertspoons", measure.Metric, "7/4 dessertspoon", "2 dessertspoons", "14.29"},
		// counts
		{"eggs", measure.US, "3/2", "1½", "0"},
		{"thirds of onions", measure.US, "4/3", "1⅓", "0"},
		{"many", measure.US, "106/10", "11", "3.77"},
		{"some", measure.US, "53/10", "5½", "3.77"},
		{"never none", measure.US, "1/10", "¼", "150"},
		{"cloves in halves", measure.US, "23/10 clove", "2½ cloves", "8.7"},
		{"sprigs whole", measure.US, "3/2 sprig", "2 sprigs", "33.33"},
		{"sticks by their marks", measure.US, "3/8 stick", "⅜ stick", "0"},
		{"tins", measure.US, "3/2 tin", "1½ tins", "0"},
		{"a range of counts", measure.US, "3/2..3", "1½–3", "0"},
		{"inches", measure.US, "23/10 in", "2¼ in", "2.17"},
		{"centimetres", measure.Metric, "23/10 cm", "2.5 cm", "8.7"},
		{"minutes", measure.Metric, "93/4 min", "23½ min", "1.08"},
		// odd ones
		{"nothing", measure.US, "0 g", "0 g", "0"},
		{"none", measure.US, "0", "", "0"},
		{"negative", measure.US, "-3/2 cup", "−1½ cup", "0"},
		{"from nothing", measure.US, "0..1/2 tsp", "0–½ tsp", "0"},
		{"very much", measure.US, "100000000 cup", "100000000 cups", "0"},
		{"no such unit", measure.US, "5/2 firkin", "2½ firkin", "0"},
		{"system not said", "", "13/16 cup", "¾ cup + 1 tbsp", "0"},
	} {
		t.Run(test.name, func(t *testing.T) {
			got := measure.Hand{System: test.system}.Write(amount(t, test.exact))
			if tables.Plain(got.Text) != test.want {
				t.Errorf("Write(%s) = %q, want %q", test.exact, got.Text, test.want)
			}
			if e := measure.FormatDecimal(got.ErrorPercent, 2); e != test.error {
				t.Errorf("error = %s %%, want %s", e, test.error)
			}
			if got.IsOff() != (got.ErrorPercent.Cmp(measure.Whole(5)) > 0) {
				t.Errorf("IsOff = %v at %s %%", got.IsOff(), test.error)
			}
		})
	}
}

func TestShownPartsAddUp(t *testing.T) {
	h := measure.Hand{System: measure.US}
	got := h.Write(amount(t, "13/16 cup"))
	if len(got.Parts) != 2 || got.Text != "¾\u00a0cup + 1\u00a0tbsp" {
		t.Fatalf("%q in %v", got.Text, got.Parts)
	}
	if !got.Amount.From.Equal(measure.Ratio(13, 16)) || got.Amount.Unit != measure.Cup {
		t.Errorf("Amount = %v, want 13/16 cup", got.Amount)
	}
}

func TestHandTakesItsScale(t *testing.T) {
	old := measure.Hand{System: measure.Metric, GramStep: measure.Whole(5), GramsFine: measure.Whole(1)}
	for exact, want := range map[string]string{"123 g": "125 g", "3 g": "3 g", "7/2 g": "4 g", "1003 g": "1005 g", "1/4 g": "250 mg"} {
		if got := old.Write(amount(t, exact)); tables.Plain(got.Text) != want {
			t.Errorf("a scale in steps of 5 g shows %s as %q, want %q", exact, got.Text, want)
		}
	}
}

func TestInVolumeAndInMass(t *testing.T) {
	for _, test := range []struct {
		system       measure.System
		base         string // mL or g
		volume, mass string
	}{
		{measure.Metric, "2365882365/10000000", "235 mL", "237 g"},
		{measure.Australian, "20", "20 mL", "20 g"},
		{measure.Metric, "1250", "1.25 L", "1.25 kg"},
		{measure.US, "2365882365/10000000", "1 cup", "8½ oz"},
		{measure.US, "5", "1 tsp", "⅛ oz"},
		{measure.US, "60", "¼ cup", "2 oz"},
		{measure.US, "4731764730/10000000", "2 cups", "1 lb ½ oz"},
		{measure.US, "3785411784/1000000", "4 quarts", "8 lb 6 oz"},
		{measure.US, "200..250", "¾–1 cup", "7–9 oz"},
		{measure.Imperial, "15", "1 tbsp", "½ oz"},
		{measure.Imperial, "56826125/100000", "1 pint", "1¼ lb"},
		{measure.Imperial, "150", "5½ fl oz", "5¼ oz"},
		{measure.Imperial, "300..600", "10½–21 fl oz", "10½–21 oz"},
		{measure.Japanese, "200", "1 cup", "200 g"},
		{measure.Japanese, "5000", "25 cups", "5 kg"},
		{measure.USLabel, "240", "1 cup", "8½ oz"},
		{"", "240", "1 cup", "8½ oz"},
	} {
		h := measure.Hand{System: test.system}
		if got := h.InVolume(span(t, test.base)); tables.Plain(got.Text) != test.volume {
			t.Errorf("%q: %s mL = %q, want %q", test.system, test.base, got.Text, test.volume)
		}
		if got := h.InMass(span(t, test.base)); tables.Plain(got.Text) != test.mass {
			t.Errorf("%q: %s g = %q, want %q", test.system, test.base, got.Text, test.mass)
		}
	}
}
