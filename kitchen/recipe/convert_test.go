package recipe_test

import (
	"encoding/json"
	"math"
	"strings"
	"testing"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// Lines converted by published weights. Grams per US cup, spoon or piece: USDA
// SR 26, by the NDB number beside each; US customary volumes: NIST Handbook 44,
// app. C; pound and ounce: NIST SP 811, app. B; other spoons and cups: NSW
// Health (Australian), Weights and Measures Act 1985 Sch. 1 (imperial).
func TestConvertLines(t *testing.T) {
	for _, tt := range []struct {
		line string
		to   measure.Unit
		sys  measure.System
		want float64
	}{
		{"1 cup honey", measure.Gram, measure.US, 339},                           // 19296
		{"1 cup all-purpose flour", measure.Gram, measure.US, 125},               // 20081
		{"2 cups bread flour", measure.Gram, measure.US, 274},                    // 20083
		{"1 cup granulated sugar", measure.Gram, measure.US, 200},                // 19335
		{"1 cup packed brown sugar", measure.Gram, measure.US, 220},              // 19334
		{"1 tbsp honey", measure.Gram, measure.US, 21},                           // 19296
		{"1 stick butter", measure.Gram, measure.US, 113},                        // 01001
		{"1½ sticks unsalted butter, softened", measure.Gram, measure.US, 169.5}, // 01145
		{"1 cup butter", measure.Gram, measure.US, 227},                          // 01001
		{"1 cup whole milk", measure.Gram, measure.US, 244},                      // 01077
		{"1 tsp table salt", measure.Gram, measure.US, 6},                        // 02047
		{"1 tsp baking powder", measure.Gram, measure.US, 4.6},                   // 18369
		{"3 large eggs", measure.Gram, measure.US, 150},                          // 01123
		{"2 large egg whites", measure.Gram, measure.US, 66},                     // 01124
		{"4 large egg yolks", measure.Gram, measure.US, 68},                      // 01125
		{"2 medium onions", measure.Gram, measure.US, 220},                       // 11282
		{"3 cloves garlic", measure.Gram, measure.US, 9},                         // 11215
		{"678 g honey", measure.Cup, measure.US, 2},                              // 19296
		{"1 lb beef", measure.Gram, measure.US, 453.59237},                       // NIST SP 811
		{"8 oz cheddar", measure.Gram, measure.US, 226.796185},                   // NIST SP 811
		{"1 cup water", measure.Millilitre, measure.US, 236.5882365},             // NIST Handbook 44
		{"1 tbsp oil", measure.Millilitre, measure.US, 14.78676478125},           // NIST Handbook 44
		{"1 tbsp oil", measure.Millilitre, measure.Australian, 20},               // NSW Health
		{"1 cup milk", measure.Millilitre, measure.Metric, 250},                  // NSW Health
		{"1 pint milk", measure.Millilitre, measure.Imperial, 568.26125},         // Weights and Measures Act 1985
		{"2 Australian tablespoons oil", measure.Millilitre, measure.US, 40},     // the line's own goes first
		{"½ cup plus 1 tbsp sugar", measure.Gram, measure.US, 112.5},             // 19335: 100 and a sixteenth of 200
		{"2 x 400 g tins tomatoes", measure.Kilogram, measure.US, 0.8},           // the whole
		{"1000 ml milk", measure.Litre, measure.US, 1},                           // definition
	} {
		t.Run(tt.line+" to "+string(tt.to), func(t *testing.T) {
			line := recipe.Reader{Larder: larder(t)}.ReadLine(tt.line)
			got, err := recipe.Convert(line, tt.to, tt.sys, larder(t))
			if err != nil {
				t.Fatal(err)
			}
			if v := got.Amount.From.Float(); math.Abs(v-tt.want) > 0.005*tt.want || got.Amount.Unit != tt.to {
				t.Errorf("%v %s, want %v %s", v, got.Amount.Unit, tt.want, tt.to)
			}
		})
	}
}

func TestConvertSaysHow(t *testing.T) {
	line := recipe.Reader{Larder: larder(t)}.ReadLine("1 cup honey")
	got, err := recipe.Convert(line, measure.Gram, measure.US, larder(t))
	if err != nil {
		t.Fatal(err)
	}
	raw, err := json.Marshal(got)
	if err != nil {
		t.Fatal(err)
	}
	// The example of the design.
	want := `{"amount":339,"unit":"g","food":"honey","assumed":"cup = 236.588 mL (US customary)","source":"USDA SR 19296"}`
	if string(raw) != want {
		t.Errorf("prints %s, want %s", raw, want)
	}
	if say := got.Sentence(); !strings.HasPrefix(say, "339 g honey") {
		t.Errorf("says %q", say)
	}
	ranged := recipe.Reader{Larder: larder(t)}.ReadLine("2–3 cups honey")
	got, err = recipe.Convert(ranged, measure.Gram, measure.US, larder(t))
	if err != nil || !got.Amount.To.Equal(measure.Whole(1017)) {
		t.Errorf("a range converts to %v, %v", got.Amount, err)
	}
}

func TestConvertRefuses(t *testing.T) {
	for name, tt := range map[string]struct {
		line string
		to   measure.Unit
	}{
		"no amount":             {"salt", measure.Gram},
		"an unknown food":       {"1 cup stardust", measure.Gram},
		"not read":              {"200 g flour 100 g sugar", measure.Gram},
		"a length":              {"1 cup milk", measure.Centimetre},
		"an unknown food again": {"2 stardust", measure.Millilitre},
	} {
		t.Run(name, func(t *testing.T) {
			got, err := recipe.Convert(recipe.Reader{Larder: larder(t)}.ReadLine(tt.line), tt.to, measure.US, larder(t))
			if fault.KindOf(err) != fault.Invalid || fault.Say(err) == "" {
				t.Errorf("%q became %+v, %v; want an Invalid fault", tt.line, got, err)
			}
		})
	}
}
