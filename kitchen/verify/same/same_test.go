package same_test

import (
	"testing"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
	"benchproof/seed"
)

var scale = func() same.Scale {
	larder, err := seed.Larder()
	if err != nil {
		panic(err)
	}
	return same.Scale{Larder: larder}
}()

// spoken reads the first number of a text.
func spoken(t *testing.T, text string) speech.Said {
	t.Helper()
	found := speech.Find(speech.Cut([]speech.Cue{{Text: text}}))
	if len(found) == 0 {
		t.Fatalf("no number in %q", text)
	}
	return found[0]
}

// line reads one ingredient line.
func line(t *testing.T, text string) recipe.Line {
	t.Helper()
	r := recipe.Reader{Larder: scale.Larder}.Read("Test\n\nIngredients\n" + text + "\n\nMethod\n1. Mix.\n")
	if len(r.Components) == 0 || len(r.Components[0].Lines) == 0 || !r.Components[0].Lines[0].Read {
		t.Fatalf("the line %q is not read", text)
	}
	return r.Components[0].Lines[0]
}

func TestLine(t *testing.T) {
	tests := []struct {
		said, line string
		want       bool
	}{
		// in one unit: exactly
		{"500 grams", "500 g bread flour", true},
		{"501 grams", "500 g bread flour", true},
		{"505 grams", "500 g bread flour", false},
		{"490 grams", "500 g bread flour", false},
		{"two teaspoons", "2 tsp salt", true},
		{"two tablespoons", "2 tsp salt", false},
		{"three eggs", "3 eggs", true},
		{"four eggs", "3 eggs", false},
		// between masses: 1 oz = 28.349523125 g, 1 lb = 453.59237 g; NIST SP 811
		{"18 ounces", "500 g bread flour", true},
		{"16 ounces", "500 g bread flour", false},
		{"a pound", "454 g butter", true},
		{"one pound two ounces", "500 g bread flour", true},
		{"half a kilo", "500 g bread flour", true},
		{"a pound and a half", "24 oz beef mince", true},
		{"700 grams", "1½ pounds beef mince", true},
		{"a pound", "500 g bread flour", false},
		// between volumes: US cup 236.588 mL, pint 473.176 mL, imperial pint
		// 568.261 mL, metric cup 250 mL; NIST SP 811 and Weights and Measures Act 1985
		{"half a litre", "500 ml milk", true},
		{"five decilitres", "500 ml milk", true},
		{"50 centilitres", "500 ml milk", true},
		{"a pint", "568 ml milk", true},
		{"a pint", "2 cups milk", true},
		{"a pint", "300 ml milk", false},
		{"a cup", "240 ml milk", true},
		{"a cup", "250 ml milk", true},
		{"two cups", "480 ml milk", true},
		{"three cups", "480 ml milk", false},
		{"16 tablespoons", "1 cup milk", true},
		{"four tablespoons", "¼ cup milk", true},
		{"three teaspoons", "1 tbsp milk", true},
		{"a tablespoon", "15 ml milk", true},
		{"a quart", "4 cups milk", true},
		{"a quart", "2 cups milk", false},
		// by the food's weight: USDA SR through the larder
		{"a cup", "226 g butter", true},
		{"two sticks", "1 cup butter", true},
		{"two sticks", "226 g butter", true},
		{"one stick", "226 g butter", false},
		{"a cup", "200 g caster sugar", true},
		{"two cups", "200 g caster sugar", false},
		{"four cups", "500 g bread flour", true},
		{"six cups", "500 g bread flour", false},
		// nearly
		{"about 450 grams", "500 g bread flour", true},
		{"about 400 grams", "500 g bread flour", false},
		{"just under half a kilo", "480 g bread flour", true},
		{"450 grams", "about 500 g bread flour", true},
		// ranges
		{"two to three tablespoons", "2–3 tbsp milk", true},
		{"two tablespoons", "2–3 tbsp milk", true},
		{"four tablespoons", "2–3 tbsp milk", false},
		{"two to three tablespoons", "2 tbsp milk", true},
		{"three to four tablespoons", "2–3 tbsp milk", false},
		// packs
		{"two tins", "2 × 400 g tins chopped tomatoes", true},
		{"three tins", "2 × 400 g tins chopped tomatoes", false},
		{"800 grams", "2 × 400 g tins chopped tomatoes", true},
		{"a 400 gram tin", "2 × 400 g tins chopped tomatoes", true},
		{"an 800 gram tin", "2 × 400 g tins chopped tomatoes", false},
		{"one can of tomatoes", "1 (28-ounce) can crushed tomatoes", true},
		{"400 mil", "600 ml tin coconut milk", false},
		// counted parts
		{"two sticks", "2 stalks celery", true},
		{"five sticks", "2 stalks celery", false},
		{"four cloves", "4 cloves garlic", true},
		{"four", "4 cloves garlic", true},
		// sums
		{"half a cup and a tablespoon", "½ cup plus 1 tbsp milk", true},
		{"half a cup", "½ cup plus 1 tbsp milk", true},
		{"a cup", "½ cup plus 1 tbsp milk", false},
		// two statements of one line
		{"seven ounces", "200 g / 7 oz butter", true},
		{"two hundred grams", "200 g / 7 oz butter", true},
		// lengths
		{"two centimetres", "2 cm ginger", true},
		{"20 millimetres", "2 cm ginger", true},
		{"five centimetres", "2 cm ginger", false},
		{"three quarters of an inch", "2 cm ginger", true},
	}
	for _, test := range tests {
		t.Run(test.said+" of "+test.line, func(t *testing.T) {
			if got := scale.Line(spoken(t, test.said), line(t, test.line)); got != test.want {
				t.Errorf("got %v", got)
			}
		})
	}
}

func TestComparable(t *testing.T) {
	tests := []struct {
		said, line string
		want       bool
	}{
		{"500 grams", "300 g butter", true},
		{"two cups", "300 g butter", true},
		{"three eggs", "300 g butter", false},
		{"a hundred and twenty", "300 g butter", true}, // "a hundred and twenty of butter"
		{"ten minutes", "300 g butter", false},
		{"180 degrees", "300 g butter", false},
		{"a third of the butter", "300 g butter", false},
		{"two tins", "2 × 400 g tins chopped tomatoes", true},
		{"four cloves", "4 sprigs thyme", false},
	}
	for _, test := range tests {
		t.Run(test.said+" of "+test.line, func(t *testing.T) {
			if got := scale.Comparable(spoken(t, test.said), line(t, test.line)); got != test.want {
				t.Errorf("got %v", got)
			}
		})
	}
}

func TestLessAndRatio(t *testing.T) {
	tests := []struct {
		said, line string
		less       bool
		ratio      string
	}{
		{"250 grams", "500 g bread flour", true, "1/2"},
		{"half a kilo", "500 g bread flour", false, "1"},
		{"a kilo", "500 g bread flour", false, "2"},
		{"one tablespoon", "2 tbsp milk", true, "1/2"},
		{"one teaspoon", "1 tbsp milk", true, "1/3"},
		{"six eggs", "4 eggs", false, "3/2"},
		{"two cloves", "4 cloves garlic", true, "1/2"},
	}
	for _, test := range tests {
		t.Run(test.said+" of "+test.line, func(t *testing.T) {
			s, l := spoken(t, test.said), line(t, test.line)
			if got := scale.Less(s, l); got != test.less {
				t.Errorf("less: %v", got)
			}
			ratio, ok := scale.Ratio(s, l.Amount, l)
			if !ok || ratio.String() != test.ratio {
				t.Errorf("ratio %v, %v, want %s", ratio, ok, test.ratio)
			}
		})
	}
}

// Without a larder nothing is known of weights.
func TestWithoutALarder(t *testing.T) {
	var bare same.Scale
	if bare.Line(spoken(t, "two cups"), line(t, "226 g butter")) {
		t.Error("cups are no grams where nobody knows what a cup weighs")
	}
	if !bare.Line(spoken(t, "eight ounces"), line(t, "226 g butter")) {
		t.Error("ounces are grams without a larder too")
	}
}

// A recipe's own system decides what its cups are: Australia's tablespoon is 20 mL
// (Standards Association of Australia sets).
func TestSystem(t *testing.T) {
	for _, test := range []struct {
		system measure.System
		want   bool
	}{{measure.Australian, true}, {measure.US, false}} {
		s := same.Scale{System: test.system}
		if got := s.Line(spoken(t, "two tablespoons"), line(t, "40 ml milk")); got != test.want {
			t.Errorf("%s: %v", test.system, got)
		}
	}
}

func TestStatements(t *testing.T) {
	for _, test := range []struct {
		line string
		want int
	}{
		{"200 g butter", 1},
		{"200 g / 7 oz butter", 2},
		{"2 × 400 g tins chopped tomatoes", 3},
		{"salt, to taste", 0},
	} {
		t.Run(test.line, func(t *testing.T) {
			if got := len(same.Statements(line(t, test.line))); got != test.want {
				t.Errorf("%d statements, want %d", got, test.want)
			}
		})
	}
}
