package recipe_test

import (
	"strings"
	"testing"

	"benchproof/kitchen/recipe"
	"benchproof/seed"
)

func TestAPairOfFoodsIsTwoLines(t *testing.T) {
	larder, err := seed.Larder()
	if err != nil {
		t.Fatal(err)
	}
	for line, want := range map[string]string{
		"salt and black pepper, to taste":    "salt|black pepper",
		"Salt & freshly ground black pepper": "Salt|black pepper",
		"salt and pepper":                    "salt|pepper",
		"2 tsp salt and pepper":              "",
		"salt":                               "",
		"salt and zorb":                      "",
		"bread and butter and jam":           "",
	} {
		var foods []string
		read := recipe.Reader{Larder: larder}.Read("Stew\n\nIngredients\n500 g beef\n" + line + "\n\nMethod\nSimmer for 2 hours.\n")
		for _, c := range read.Components {
			for _, l := range c.Lines[1:] {
				foods = append(foods, l.Food)
			}
		}
		if got := strings.Join(foods, "|"); want != "" && got != want {
			t.Errorf("%q is read as %q, want %q", line, got, want)
		} else if want == "" && len(foods) != 1 {
			t.Errorf("%q is read as %d lines %q, want one", line, len(foods), foods)
		}
	}
}

func TestOneOfAThingIsOne(t *testing.T) {
	for text, want := range map[string]string{
		"an egg, beaten":          "1",
		"a large egg":             "1",
		"a small onion":           "1",
		"a little oil":            "",
		"a small amount of oil":   "",
		"a large quantity of ice": "",
	} {
		line := recipe.Reader{}.ReadLine(text)
		got := ""
		if line.HasAmount {
			got = line.Amount.From.String()
		}
		if got != want {
			t.Errorf("ReadLine(%q): amount %q, want %q", text, got, want)
		}
	}
}
