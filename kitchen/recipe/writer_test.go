package recipe_test

import (
	"strings"
	"testing"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// plain puts ordinary spaces where the writer keeps number and unit together.
func plain(s string) string { return strings.ReplaceAll(s, "\u00a0", " ") }

// TestWriteLine writes lines in every style. Weights behind the conversions:
// USDA SR 26, cups in grams (flour 20081: 125, honey 19296: 339, butter 01145:
// 227, a stick 113), US cup 236.588 mL (NIST Handbook 44), pound 453.59237 g.
func TestWriteLine(t *testing.T) {
	for _, tt := range []struct {
		line  string
		style recipe.Style
		house measure.System
		want  string // measure | words | other
	}{
		// As written.
		{"320 g strong white flour", recipe.AsWritten, measure.US, "320 g | strong white flour | 2⅓ cups"},
		{"1½ cups all-purpose flour, sifted", recipe.AsWritten, measure.US, "1½ cups | all-purpose flour, sifted | 188 g"},
		{"2–3 tbsp olive oil", recipe.AsWritten, measure.US, "2–3 tbsp | olive oil | "},
		{"½ cup plus 1 tbsp sugar", recipe.AsWritten, measure.US, "½ cup + 1 tbsp | sugar | 113 g"},
		{"3 large eggs", recipe.AsWritten, measure.US, "3 | large eggs | "},
		{"salt, to taste", recipe.AsWritten, measure.US, " | salt, to taste | "},
		{"flour, for dusting", recipe.AsWritten, measure.US, " | flour, for dusting | "},
		{"2 tbsp rum (optional)", recipe.AsWritten, measure.US, "2 tbsp | rum (optional) | "},
		{"1 cup sugar, divided", recipe.AsWritten, measure.US, "1 cup | sugar, divided | 200 g"},
		{"about 250 ml warm water", recipe.AsWritten, measure.Metric, "about 250 mL | warm water | 1 cup + 1 tbsp"},
		{"juice of 1 lemon", recipe.AsWritten, measure.US, "1 | lemon, juice | "},
		{"2 x 400 g tins chopped tomatoes", recipe.AsWritten, measure.Metric, "2 × 400 g | tins chopped tomatoes | 2 × 14 oz"},
		{"3 cloves garlic, crushed", recipe.AsWritten, measure.US, "3 cloves | garlic, crushed | "},
		// Metric.
		{"1½ cups all-purpose flour", recipe.MetricStyle, measure.US, "188 g | all-purpose flour | 1½ cups"},
		{"1 cup honey", recipe.MetricStyle, measure.US, "339 g | honey | 1 cup"},
		{"1 stick unsalted butter", recipe.MetricStyle, measure.US, "113 g | unsalted butter | 1 stick"},
		{"1 cup milk", recipe.MetricStyle, measure.US, "235 mL | milk | 1 cup"},
		{"2 lb chicken thighs", recipe.MetricStyle, measure.US, "907 g | chicken thighs | 2 lb"},
		{"7 oz (200 g) feta", recipe.MetricStyle, measure.US, "200 g | feta | 7 oz"}, // the cook's own figure
		{"1 tsp salt", recipe.MetricStyle, measure.US, "1 tsp | salt | "},
		{"1 (14 oz) can coconut milk", recipe.MetricStyle, measure.US, "1 × 397 g | tin coconut milk | 1 × 14 oz"},
		{"2 inch piece of ginger", recipe.MetricStyle, measure.US, "5 cm | ginger | 2 in"},
		{"2 Australian tablespoons golden syrup", recipe.MetricStyle, measure.Metric, "2 tbsp + 2 tsp | golden syrup | "}, // 40 mL
		{"2 Australian tablespoons golden syrup", recipe.MetricStyle, measure.Australian, "2 tbsp | golden syrup | 2 tbsp + 2 tsp"},
		// US.
		{"250 g all-purpose flour", recipe.USStyle, measure.Metric, "2 cups | all-purpose flour | 250 g"},
		{"227 g butter", recipe.USStyle, measure.Metric, "1 cup | butter | 227 g"},
		{"454 g potatoes", recipe.USStyle, measure.Metric, "1 lb | potatoes | 454 g"},
		{"240 ml milk", recipe.USStyle, measure.Metric, "1 cup | milk | 240 mL"},
		{"15 ml soy sauce", recipe.USStyle, measure.Metric, "1 tbsp | soy sauce | 15 mL"},
		{"3 eggs", recipe.USStyle, measure.Metric, "3 | eggs | "},
		// Imperial.
		{"225 g caster sugar", recipe.ImperialStyle, measure.Metric, "8 oz | caster sugar | 225 g"},
		{"568 ml milk", recipe.ImperialStyle, measure.Metric, "1 pint | milk | 570 mL"},
		{"6 g instant yeast", recipe.ImperialStyle, measure.Metric, "2 tsp | instant yeast | 6 g"}, // ounces are too coarse
	} {
		t.Run(string(tt.style)+" "+tt.line, func(t *testing.T) {
			w := recipe.Writer{Larder: larder(t), House: tt.house, Style: tt.style}
			got := w.Line(recipe.Reader{Larder: larder(t)}.ReadLine(tt.line))
			if text := plain(got.Measure + " | " + got.Words + " | " + got.Other); text != tt.want {
				t.Errorf("wrote %q, want %q", text, tt.want)
			}
		})
	}
}

func TestWriteLineSaysHow(t *testing.T) {
	r := recipe.Reader{Larder: larder(t)}
	w := recipe.Writer{Larder: larder(t), House: measure.US, Style: recipe.MetricStyle}
	got := w.Line(r.ReadLine("1 cup honey"))
	if got.Source != "USDA SR 19296" || got.Assumed != "cup = 236.588 mL (US customary)" {
		t.Errorf("source %q, assumed %q", got.Source, got.Assumed)
	}
	got = w.Line(r.ReadLine("1 cup plus 2 tbsp honey"))
	if got.Exact != "1" {
		t.Errorf("exact = %q", got.Exact)
	}
	got = w.Line(r.ReadLine("2–3 tbsp oil"))
	if got.Exact != "2–3" {
		t.Errorf("exact = %q", got.Exact)
	}
}

// The recipe's own measures go before the show's, the line's before both.
func TestWhoseMeasures(t *testing.T) {
	r := recipe.Reader{Larder: larder(t)}
	for _, tt := range []struct {
		name, line    string
		house, source measure.System
		want          string
	}{
		{"the show's", "1 cup milk", measure.Metric, "", "250 mL"},
		{"the recipe's", "1 cup milk", measure.Metric, measure.Japanese, "200 mL"},
		{"the line's", "1 US cup milk", measure.Metric, measure.Japanese, "235 mL"},
		{"nobody's", "1 cup milk", "", "", "235 mL"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			got := recipe.Writer{Larder: larder(t), House: tt.house, Source: tt.source, Style: recipe.MetricStyle}.Line(r.ReadLine(tt.line))
			if plain(got.Measure) != tt.want {
				t.Errorf("a cup is %q, want %q", got.Measure, tt.want)
			}
		})
	}
}

func TestWriteQuestions(t *testing.T) {
	r := recipe.Reader{Larder: larder(t)}
	w := recipe.Writer{Larder: larder(t)}
	for line, want := range map[string]string{
		"200 g flour 100 g sugar": "number that was not understood",
		"2 tubs moonrock":         "does not know “moonrock”",
		"200 g / 9 oz butter":     "more than 10 % apart",
		"1 stick (200 g) butter":  "weighs about 113 g",
		"200 g flour":             "",
	} {
		if got := plain(w.Line(r.ReadLine(line)).Question); want == "" && got != "" || !strings.Contains(got, want) {
			t.Errorf("%q asks %q, want it to say %q", line, got, want)
		}
	}
	got := w.Line(r.ReadLine("200 g flour 100 g sugar"))
	if got.Words != "200 g flour 100 g sugar" || got.Measure != "" {
		t.Errorf("a line not read is written %q, %q", got.Measure, got.Words)
	}
	if got := (recipe.Writer{}).Line(recipe.Reader{}.ReadLine("2 tubs moonrock")); got.Question != "" || plain(got.Measure) != "2 tubs" {
		t.Errorf("without a larder: %+v", got)
	}
}

func TestWriteYield(t *testing.T) {
	r := recipe.Reader{}
	for text, want := range map[string]string{
		"Makes 16":                      "makes 16",
		"Makes about 24 rye knots":      "makes 24 rye knots",
		"Serves 4–6":                    "serves 4–6",
		"Yield: 1 loaf":                 "makes 1 loaf",
		"Serves a crowd":                "Serves a crowd",
		"Makes 2 loaves of about 900 g": "makes 2 loaves of about 900 g",
	} {
		got := recipe.Writer{}.Yield(r.Read("Bread\n" + text + "\n\n200 g flour\n").Yield)
		if plain(got) != want {
			t.Errorf("%q is written %q, want %q", text, got, want)
		}
	}
}
