package ingredient_test

import (
	"strings"
	"testing"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe/ingredient"
)

// Statements of one amount agree within 10 %. Sizes: NIST Handbook 44 app. C
// (US), Weights and Measures Act 1985 Sch. 1 (imperial), NSW Health (Australian).
func TestAgree(t *testing.T) {
	for _, tt := range []struct {
		line   string
		looks  bool
		system measure.System
	}{
		{"200 g / 7 oz flour", false, ""}, // 198 g
		{"200 g / 6½ oz flour", false, ""},
		{"200 g / 6 oz flour", true, ""},  // 170 g
		{"100 g / 4 oz flour", false, ""}, // the round ounce of British books
		{"25 g (1 oz) butter", false, ""}, // the same
		{"1 lb (450 g) beef", false, ""},  // 454 g
		{"1 lb (500 g) beef", true, ""},   // 10.2 % more
		{"500 ml / 18 fl oz stock", false, measure.Imperial},
		{"500 ml / 17 fl oz stock", false, measure.US},
		{"1 pint (568 ml) ale", false, measure.Imperial},
		{"1 pint (473 ml) ale", false, measure.US},
		{"1 pint (700 ml) ale", true, ""},
		{"1 cup (250 ml) milk", false, measure.Metric},
		{"1 cup (237 ml) milk", false, measure.US},
		{"1 cup (200 ml) rice", false, measure.Japanese},
		{"1 tbsp (20 ml) rum", false, measure.Australian},
		{"1 tbsp (15 ml) rum", false, ""}, // nearly everybody's
		{"2 US cups (500 ml) milk", false, measure.US},
		{"2–3 oz (60–85 g) nuts", false, ""},
		{"2–3 oz (60–120 g) nuts", true, ""},
	} {
		t.Run(tt.line, func(t *testing.T) {
			got := ingredient.Read(tt.line, nil)
			if !got.Read || (got.Reason != "") != tt.looks || got.System != tt.system {
				t.Errorf("read %t, system %q, look %q; want system %q, look %t", got.Read, got.System, got.Reason, tt.system, tt.looks)
			}
		})
	}
}

// A name the larder knows as it stands keeps the words that elsewhere are a
// preparation, unless it means the same food without them.
func TestKnows(t *testing.T) {
	knows := func(name string) string {
		return map[string]string{"crumbled blue": "blue-crumble", "walnut": "walnut", "chopped walnut": "walnut", "red": "red-wine"}[name]
	}
	for line, want := range map[string]string{
		"50 g crumbled blue":     "crumbled blue | ",
		"50 g crumbled feta":     "feta | crumbled",
		"50 g chopped walnut":    "walnut | chopped",
		"50 g red or white wine": "red | ",
	} {
		got := ingredient.Read(line, knows)
		if text := got.Food + " | " + got.Preparation; text != want {
			t.Errorf("%q reads as %q, want %q", line, text, want)
		}
	}
}

func TestSplit(t *testing.T) {
	for _, tt := range []struct {
		line string
		want int
	}{
		{"400 ml dashi, 1 ½ tbsp miso, 100 g silken tofu (cubed), a spring onion", 4},
		{"2 eggs, 100 g sugar", 2},
		{"200 g flour (strong, white), 7 g yeast", 2},
		{"200 g flour, sifted", 1},
		{"200 g flour, 7 oz", 1},
		{"200 g flour, 2 tbsp reserved", 1},
		{"200 g flour, 2 tbsp for dusting", 1},
		{"200 g flour, a good one", 1},
		{"1 kg plums, 2 cm thick", 1},
		{"1,5 kg flour", 1},
		{"", 1},
	} {
		if got := ingredient.Split(tt.line); len(got) != tt.want || strings.Join(got, ", ") != tt.line {
			t.Errorf("Split(%q) = %q, want %d", tt.line, got, tt.want)
		}
	}
}

func TestNotRead(t *testing.T) {
	for name, line := range map[string]string{"too long": strings.Repeat("flour ", 100), "an address": "see https://example.org/a", "nothing": "", "signs": "---",
		"an amount alone": "2 cups", "two foods": "1 cup flour 2 cups sugar", "taken away": "1 cup less 1 tbsp milk"} {
		got := ingredient.Read(line, nil)
		if got.Read || got.Reason == "" || got.HasAmount || got.Food != "" || !got.Amount.IsZero() {
			t.Errorf("%s: %+v", name, got)
		}
	}
}

// Whatever the line: no crash, a reason for what is not read, and an amount
// whose numbers are in order and above nothing.
func FuzzRead(f *testing.F) {
	for _, line := range []string{"2 x 400 g tins (drained) / 14 oz x", "1 (½–¼ oz) can of", "juice of 1", "Flour: 200 g (7 oz", "a-sized b", "or or or", "1/0 doz. + 2 g", "\xc1 or 0", "İ or 1 g"} {
		f.Add(line)
	}
	f.Fuzz(func(t *testing.T, line string) {
		got := ingredient.Read(line, nil)
		switch {
		case !got.Read && (got.Reason == "" || got.Food != "" || got.HasAmount):
			t.Errorf("%q: not read, and yet %+v", line, got)
		case got.Read && got.Food == "":
			t.Errorf("%q: read without a food", line)
		case got.HasAmount && (got.Amount.From.Cmp(got.Amount.To) > 0 || got.Amount.To.Sign() <= 0):
			t.Errorf("%q: amount %v", line, got.Amount)
		case !got.HasAmount && !got.Amount.IsZero():
			t.Errorf("%q: no amount, and yet %v", line, got.Amount)
		}
	})
}
