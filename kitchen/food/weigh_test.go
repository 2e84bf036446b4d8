package food_test

import (
	"strings"
	"testing"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
)

func num(s string) measure.Number { return measure.MustNumber(s) }

// item gives a food of the built-in larder by its id.
func item(tb testing.TB, id string) *food.Food {
	tb.Helper()
	f, ok := larder(tb).Food(id)
	if !ok {
		tb.Fatalf("the larder has no %s", id)
	}
	return f
}

// near tells whether two figures differ by less than by.
func near(a, b measure.Number, by string) bool {
	d := a.Sub(b)
	return d.Cmp(num(by)) < 0 && num(by).Add(d).Sign() > 0
}

// Source: USDA SR 26, table WEIGHT, copied to testdata with its numbers.
func TestGramsOfAUSMeasureAreTheDatabases(t *testing.T) {
	for _, row := range readRows(t, "testdata/us-measures.txt", 4) {
		t.Run(row[0]+" "+row[2], func(t *testing.T) {
			unit, form := unitAndForm(t, row[2])
			w, err := item(t, row[0]).Grams(measure.Of(measure.Whole(1), unit), form, measure.US)
			if err != nil {
				t.Fatal(err)
			}
			if !w.Grams.From.Equal(num(row[3])) || !w.Grams.IsSingle() {
				t.Errorf("1 %s of %s = %s g, want %s", row[2], row[0], w.Grams.From, row[3])
			}
			if w.Source != "USDA SR "+row[1] || w.Estimate {
				t.Errorf("source %q, estimate %v, want USDA SR %s and no estimate", w.Source, w.Estimate, row[1])
			}
		})
	}
}

func TestGramsSayWhatWasAssumed(t *testing.T) {
	for _, tc := range []struct {
		name     string
		food     string
		amount   string
		unit     measure.Unit
		form     string
		system   measure.System
		grams    string // to 0.01
		assumed  string
		estimate bool
	}{
		// Mass needs nothing. Source: NIST SP 811, app. B (ounce).
		{"grams stay", "honey", "250", measure.Gram, "", measure.US, "250", "", false},
		{"ounces", "butter", "4", measure.Ounce, "", measure.US, "113.398", "", false},
		// Volumes: the food's US weight scaled by the system's unit. Sources:
		// SR 26; cup and spoon sizes as in kitchen/measure.
		{"US cup", "honey", "1", measure.Cup, "", measure.US, "339", "cup = 236.588 mL (US customary)", false},
		{"no system is US", "honey", "1", measure.Cup, "", "", "339", "cup = 236.588 mL (US customary)", false},
		{"metric cup", "granulated-sugar", "1", measure.Cup, "", measure.Metric, "211.34", "cup = 250 mL (metric)", false},
		{"Australian tablespoon", "granulated-sugar", "2", measure.Tablespoon, "", measure.Australian, "33.81", "tbsp = 20 mL (Australian)", true},
		{"Japanese cup", "short-grain-rice", "1", measure.Cup, "", measure.Japanese, "169.07", "cup = 200 mL (Japanese)", false},
		{"millilitres", "whole-milk", "500", measure.Millilitre, "", measure.Metric, "515.66", "", false},
		{"teaspoon from the cup", "arrowroot", "1", measure.Teaspoon, "", measure.US, "2.67", "tsp = 4.929 mL (US customary)", false},
		{"pinch of salt", "salt", "1", measure.Pinch, "", measure.US, "0.38", "pinch = 0.308 mL (US customary)", false},
		// Forms.
		{"brown sugar is packed unless said", "brown-sugar", "1", measure.Cup, "", measure.US, "220", "cup = 236.588 mL (US customary)", false},
		{"sifted", "icing-sugar", "1", measure.Cup, "sifted", measure.US, "100", "cup = 236.588 mL (US customary)", false},
		{"related form", "onion", "1", measure.Cup, "diced", measure.US, "160", "cup = 236.588 mL (US customary); no weight for “diced”: chopped taken", true},
		{"unknown form", "blueberry", "1", measure.Cup, "crushed", measure.US, "148", "cup = 236.588 mL (US customary); no weight for “crushed”: the usual form taken", true},
		{"melting changes no weight", "butter", "1", measure.Tablespoon, "melted", measure.US, "14.2", "tbsp = 14.787 mL (US customary)", false},
		{"size does not matter to a cup", "onion", "1", measure.Cup, "large chopped", measure.US, "160", "cup = 236.588 mL (US customary)", false},
		// Counts. Sources: SR 26 01123, 01125; EU and UK classes are Reg. (EC)
		// 589/2008, art. 4, less 12 % shell (SR 26 01123 refuse), an estimate.
		{"large eggs", "egg", "3", measure.Each, "large", measure.US, "150", "1 large = 50 g", false},
		{"eggs unsaid", "egg", "3", measure.Each, "", measure.Metric, "150", "1 large = 50 g", false},
		{"EU large eggs", "egg", "3", measure.Each, "large", measure.Metric, "180", "1 large (EU and UK size) = 60 g", true},
		{"UK large eggs", "egg", "1", measure.Each, "large", measure.Imperial, "60", "1 large (EU and UK size) = 60 g", true},
		{"extra large", "egg", "2", measure.Each, "extra large", measure.US, "112", "1 extra large = 56 g", false},
		{"yolks", "egg-yolk", "2", measure.Each, "large", measure.US, "34", "1 large = 17 g", false},
		{"size with a form", "onion", "2", measure.Each, "large chopped", measure.US, "300", "1 large = 150 g", false},
		{"size not known", "lime", "1", measure.Each, "large", measure.US, "67", "1 lime = 67 g; no weight for “large”: the usual form taken", true},
		{"stick of butter", "unsalted-butter", "1.5", measure.Stick, "", measure.US, "169.5", "1 stick = 113 g", false},
		{"cloves", "garlic", "4", measure.Clove, "", measure.Metric, "12", "1 clove = 3 g", false},
		{"packet of yeast", "instant-yeast", "1", measure.Packet, "", measure.US, "7", "1 packet = 7 g", false},
		{"leaf for sheet", "gelatine-leaves", "4", measure.Sheet, "", measure.Metric, "8", "1 leaf = 2 g", false},
		{"gold leaf", "gelatine-leaves", "4", measure.Leaf, "silver", measure.Metric, "10", "1 silver leaf = 2.5 g", false},
		{"tin at home", "tinned-chickpeas", "1", measure.Tin, "", measure.Metric, "240", "1 tin = 240 g", true},
		{"another country's can", "tomato-and-clam-juice", "1", measure.Tin, "", measure.Metric, "166", "1 tin (US size) = 166 g", true},
		{"US can", "tinned-chickpeas", "1", measure.Tin, "", measure.US, "253", "1 tin (US size) = 253 g", false},
		// Lengths go by the inch.
		{"an inch of ginger", "fresh-ginger", "1", measure.Inch, "", measure.US, "12", "1 in = 12 g", true},
		{"centimetres of ginger", "fresh-ginger", "5.08", measure.Centimetre, "", measure.Metric, "24", "1 in = 12 g", true},
	} {
		t.Run(tc.name, func(t *testing.T) {
			w, err := item(t, tc.food).Grams(measure.Of(num(tc.amount), tc.unit), tc.form, tc.system)
			if err != nil {
				t.Fatal(err)
			}
			if !near(w.Grams.From, num(tc.grams), "0.006") {
				t.Errorf("grams = %s, want %s", measure.FormatDecimal(w.Grams.From, 3), tc.grams)
			}
			if w.Assumed != tc.assumed {
				t.Errorf("assumed %q, want %q", w.Assumed, tc.assumed)
			}
			if w.Estimate != tc.estimate {
				t.Errorf("estimate = %v, want %v (source %q)", w.Estimate, tc.estimate, w.Source)
			}
		})
	}
}

func TestGramsKeepRanges(t *testing.T) {
	w, err := item(t, "onion").Grams(measure.Amount{Range: measure.Range{From: num("2"), To: num("3")}}, "medium", measure.US)
	if err != nil {
		t.Fatal(err)
	}
	if !w.Grams.From.Equal(num("220")) || !w.Grams.To.Equal(num("330")) {
		t.Errorf("2–3 medium onions = %s to %s g, want 220 to 330", w.Grams.From, w.Grams.To)
	}
}

func TestGramsWithoutAWeightNameTheFoodAndWhatIsMissing(t *testing.T) {
	for _, tc := range []struct {
		name, food string
		unit       measure.Unit
		says       string
	}{
		{"volume", "minced-beef", measure.Cup, "minced beef weighs by volume"},
		{"count", "plain-flour", measure.Each, "one plain flour weighs"},
		{"counted unit", "honey", measure.Clove, "a clove of honey weighs"},
		{"time", "honey", measure.Minute, "is no measure of honey"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			_, err := item(t, tc.food).Grams(measure.Of(measure.Whole(1), tc.unit), "", measure.US)
			if fault.KindOf(err) != fault.Invalid || !strings.Contains(fault.Say(err), tc.says) {
				t.Errorf("err = %v, want Invalid saying %q", err, tc.says)
			}
		})
	}
}

func TestMillilitresAndPieces(t *testing.T) {
	// Source: SR 26 01077, cup 244 g; the US cup is 236.5882365 mL.
	ml, ok := item(t, "whole-milk").Millilitres(measure.One(num("244")), "")
	if !ok || !ml.From.Equal(num("236.5882365")) {
		t.Errorf("244 g milk = %s mL (%v), want 236.5882365", ml.From, ok)
	}
	if _, ok := item(t, "minced-beef").Millilitres(measure.One(num("100")), ""); ok {
		t.Error("minced beef has no volume, but got one")
	}
	if _, ok := item(t, "minced-beef").GramsPerMillilitre(""); ok {
		t.Error("minced beef has no density, but got one")
	}
	// Source: SR 26 01123, large 50 g.
	n, ok := item(t, "egg").Pieces(measure.One(num("75")), "large")
	if !ok || !n.From.Equal(num("3/2")) {
		t.Errorf("75 g of egg = %s large (%v), want 3/2", n.From, ok)
	}
	if _, ok := item(t, "plain-flour").Pieces(measure.One(num("75")), ""); ok {
		t.Error("flour is not counted, but got a count")
	}
}
