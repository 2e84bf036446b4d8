package food_test

import (
	"testing"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
)

// Sources: baking textbooks: fresh × 0.4 is active dry ("Yeast Conversions,
// Fresh to Dry"), fresh × 0.33 is instant, active dry × 0.75 is instant, back
// × 1.33 ("Yeast Substitutions").
func TestSwapYeast(t *testing.T) {
	for _, tc := range []struct{ from, to, grams, want string }{
		{food.FreshYeast, food.ActiveDryYeast, "25", "10"},
		{food.FreshYeast, food.InstantYeast, "100", "33"},
		{food.ActiveDryYeast, food.InstantYeast, "8", "6"},
		{food.InstantYeast, food.ActiveDryYeast, "100", "133"},
		{food.ActiveDryYeast, food.FreshYeast, "10", "25"},
		{food.InstantYeast, food.FreshYeast, "33", "100"},
		{food.InstantYeast, food.InstantYeast, "7", "7"},
		{food.FreshYeast, food.FreshYeast, "7", "7"},
	} {
		t.Run(tc.from+" to "+tc.to, func(t *testing.T) {
			got, ok := food.SwapYeast(measure.One(num(tc.grams)), tc.from, tc.to)
			if !ok || !got.From.Equal(num(tc.want)) {
				t.Errorf("%s g is %s g (%v), want %s", tc.grams, got.From, ok, tc.want)
			}
			if _, known := larder(t).Food(tc.from); !known {
				t.Errorf("the larder has no %s", tc.from)
			}
		})
	}
	for _, pair := range [][2]string{{"egg", food.FreshYeast}, {food.FreshYeast, "egg"}, {"egg", "egg"}} {
		if _, ok := food.SwapYeast(measure.One(num("1")), pair[0], pair[1]); ok {
			t.Errorf("%v were swapped", pair)
		}
	}
}

// Source: "How much powdered gelatin to one gelatin leaf": 2.6 g at 225 Bloom
// are 3.7 g at 160.
func TestSwapGelatine(t *testing.T) {
	got, ok := food.SwapGelatine(measure.One(num("2.6")), 225, 160)
	if !ok || !near(got.From, num("3.7"), "0.05") {
		t.Errorf("2.6 g at 225 = %s g at 160 (%v), want 3.7", measure.FormatDecimal(got.From, 3), ok)
	}
	if _, ok := food.SwapGelatine(measure.One(num("2.6")), 225, 0); ok {
		t.Error("gelatine of no strength was swapped")
	}
}

// Sources: US, USDA SR 01123 to 01125 (edible); EU and UK, Reg. (EC) 589/2008,
// art. 4; Australia, Australian Egg Corporation labelling guide: grams in the
// shell, of which SR 01123 counts 12 % as shell.
func TestEggsLieInTheirClass(t *testing.T) {
	for _, tc := range []struct {
		system      measure.System
		size        string
		least, most string // in shell
		edible      string // "" if only the class is published
	}{
		{measure.US, "jumbo", "", "", "63"},
		{measure.US, "extra large", "", "", "56"},
		{measure.US, "large", "", "", "50"},
		{measure.US, "medium", "", "", "44"},
		{measure.US, "small", "", "", "38"},
		{measure.Metric, "extra large", "73", "80", ""},
		{measure.Metric, "large", "63", "73", ""},
		{measure.Metric, "medium", "53", "63", ""},
		{measure.Metric, "small", "43", "53", ""},
		{measure.Imperial, "large", "63", "73", ""},
		{measure.Australian, "jumbo", "66.7", "70", ""},
		{measure.Australian, "extra large", "58.3", "66.6", ""},
		{measure.Australian, "large", "50", "58.2", ""},
	} {
		t.Run(string(tc.system)+" "+tc.size, func(t *testing.T) {
			w, err := item(t, "egg").Grams(measure.Of(num("1"), measure.Each), tc.size, tc.system)
			if err != nil {
				t.Fatal(err)
			}
			if tc.edible != "" {
				if !w.Grams.From.Equal(num(tc.edible)) {
					t.Errorf("%s g, want %s", w.Grams.From, tc.edible)
				}
				return
			}
			inShell := w.Grams.From.Quo(num("0.88"))
			if inShell.Cmp(num(tc.least)) < 0 || inShell.Cmp(num(tc.most)) > 0 {
				t.Errorf("%s g edible is %s g in the shell, want %s to %s", w.Grams.From, measure.FormatDecimal(inShell, 1), tc.least, tc.most)
			}
		})
	}
}

// Sources: trade practice (packet of yeast ¼ oz = 7 g = 2¼ tsp); USDA SR 19177
// (envelope of gelatin); leaf grades, a hydrocolloid recipe collection; USDA SR
// 01001 (stick of butter).
func TestPacketsLeavesAndSticks(t *testing.T) {
	for _, tc := range []struct {
		food, amount string
		unit         measure.Unit
		form, grams  string
		tol          string
	}{
		{"instant-yeast", "1", measure.Packet, "", "7", "0.001"},
		{"instant-yeast", "2.25", measure.Teaspoon, "", "7", "0.03"},
		{"active-dry-yeast", "1", measure.Packet, "", "7.2", "0.001"},
		{"fresh-yeast", "1", measure.Each, "", "17", "0.001"},
		{"gelatine-powder", "1", measure.Packet, "", "7", "0.001"},
		{"gelatine-leaves", "1", measure.Leaf, "bronze", "3.3", "0.001"},
		{"gelatine-leaves", "1", measure.Leaf, "silver", "2.5", "0.001"},
		{"gelatine-leaves", "1", measure.Leaf, "gold", "2", "0.001"},
		{"gelatine-leaves", "1", measure.Leaf, "platinum", "1.7", "0.001"},
		{"butter", "1", measure.Stick, "", "113", "0.001"},
		{"butter", "0.5", measure.Cup, "", "113.5", "0.001"},
		{"butter", "8", measure.Tablespoon, "", "113.6", "0.001"},
	} {
		t.Run(tc.food+" "+tc.amount+" "+string(tc.unit)+" "+tc.form, func(t *testing.T) {
			w, err := item(t, tc.food).Grams(measure.Of(num(tc.amount), tc.unit), tc.form, measure.US)
			if err != nil || !near(w.Grams.From, num(tc.grams), tc.tol) {
				t.Errorf("%s g (%v), want %s", measure.FormatDecimal(w.Grams.From, 3), err, tc.grams)
			}
		})
	}
}
