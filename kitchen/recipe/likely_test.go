package recipe_test

import (
	"testing"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// What points to which country is common practice, no source.
func TestLikelySystem(t *testing.T) {
	for name, c := range map[string]struct {
		text string
		want measure.System
	}{
		"sticks and °F":            {"1 stick butter\n2 cups flour\n\nMethod\nBake at 350°F for 20 minutes.\n", measure.US},
		"a stick alone":            {"1 stick butter\n2 cups flour\n", measure.US},
		"names and cans":           {"2 cups all-purpose flour\n1 (14 oz) can tomatoes\n", measure.US},
		"one name alone":           {"2 cups all-purpose flour\n1 cup milk\n", ""},
		"cups with grams":          {"1 stick butter\n200 g flour\n1 cup milk\n", ""},
		"°F and °C":                {"1 lb beef\n2 cups stock\n\nMethod\nRoast at 180 °C / 350 °F for 40 minutes.\n", ""},
		"a British pound of mince": {"1 lb mince\n1 pint stock\n\nMethod\nBake at gas mark 4 for 40 minutes.\n", ""},
		"the text states its own":  {"Butter cake\n\nAll cups are Australian cups.\n\n1 stick butter\n2 cups flour\n\nMethod\nBake at 350°F for 20 minutes.\n", ""},
		"nothing to go by":         {"2 cups flour\n1 cup milk\n", ""},
	} {
		got, because := recipe.Reader{}.Read(c.text).LikelySystem()
		if got != c.want {
			t.Errorf("%s: LikelySystem() = %q because %q, want %q", name, got, because, c.want)
		}
		if (got == "") != (len(because) == 0) {
			t.Errorf("%s: %q with the reasons %q", name, got, because)
		}
	}
}
