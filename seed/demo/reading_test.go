package demo_test

import (
	"fmt"
	"strings"
	"testing"

	"benchproof/kitchen/recipe"
)

// read reads one version of a recipe, from 1, as the kitchen does.
func read(t testing.TB, key string, version int) recipe.Recipe {
	t.Helper()
	made := versions(newShow(t), key)
	if version < 1 || version > len(made) {
		t.Fatalf("recipe %s has no version %d", key, version)
	}
	return recipe.Reader{}.Read(made[version-1].Text)
}

// eachVersion runs f for every version of every recipe.
func eachVersion(t *testing.T, f func(t *testing.T, key string, version int, r recipe.Recipe)) {
	t.Helper()
	for _, r := range newShow(t).Recipes {
		for i := range r.Versions {
			t.Run(fmt.Sprintf("%s v%d", r.Key, i+1), func(t *testing.T) {
				f(t, r.Key, i+1, read(t, r.Key, i+1))
			})
		}
	}
}

func TestEveryLineIsRead(t *testing.T) {
	eachVersion(t, func(t *testing.T, _ string, _ int, r recipe.Recipe) {
		if r.Title == "" || r.Yield.Text == "" {
			t.Errorf("title %q, yield %+v", r.Title, r.Yield)
		}
		for _, u := range r.Unread {
			t.Errorf("line %d not read: %q, %s", u.Number, u.Text, u.Reason)
		}
		for _, c := range r.Components {
			for _, l := range c.Lines {
				if !l.Read || l.Reason != "" || l.Food == "" {
					t.Errorf("line %d %q: read %t, food %q, %s", l.Number, l.Text, l.Read, l.Food, l.Reason)
				}
				if !l.HasAmount && !l.ToTaste {
					t.Errorf("line %d %q: neither an amount nor to taste", l.Number, l.Text)
				}
			}
		}
	})
}

// Every shot that names a step means one of the version in use, and the right
// one: words that stand in the step, by the shot's title.
func TestShotsMeanStepsOfTheRecipe(t *testing.T) {
	words := map[string]string{
		"Flour, sugar, salt and yeast land in the bowl":   "Stir the flour, yeast",
		"Milk poured on the scales, the display readable": "Add the milk",
		"Butter vanishes into the dough, piece by piece":  "add the butter a piece at a time",
		"Stretching a piece until fingers show through":   "stretches without tearing",
		"Tape on the bowl, before and after the rise":     "until doubled",
		"Sixteen pieces on the scales and into balls":     "into 16 pieces",
		"One rope tied, slowly, twice":                    "tie it once",
		"A fingertip's dent springs back slowly":          "springs back slowly",
		"Yolk brushed on thinly":                          "brush the knots",
		"Colour coming through the oven door":             "Bake for",
		"Honey butter goes on and the crust crackles":     "over the hot knots",
		"Torn along the knot, strands against the light":  "torn open",
		"Boiling water into the jars":                     "boiling water",
		"Slicing, a ruler beside the slices":              "Pack the cucumbers",
		"Jars packed, pressed with a spoon":               "into the jars, pressing",
		"The label: 5 % acidity":                          "Bring the vinegar",
		"Salt on the scales, 15 g readable":               "salt",
		"Brine comes to the boil and clears":              "to the boil",
		"Hot brine poured, onion turning pink":            "Pour the hot brine",
		"Fridge door closes on two jars":                  "into the fridge",
		"Butter rubbed in, fingertips":                    "Rub the butter",
		"Pastry rolled, lifted and lowered into the tin":  "line the tin",
		"Paper and beans out, shell golden to the bottom": "lift out paper and beans",
		"Oven dial at 170 °C fan":                         "170 °C fan",
		"Plums go in raw, come out slumped":               "Roast for",
		"Hot milk into the yolks, a ladle at a time":      "a ladle at a time",
		"The cream boils: bubbles through the whisk":      "boil for 1 minute",
		"Glaze through the sieve":                         "sieve it",
		"Plums laid in rings, outside in":                 "in rings",
		"Brush of glaze catches the light":                "Brush with the warm glaze",
		"The cut, and the slice on the plate":             "before cutting",
		"Sugar from straw to strong tea, one take":        "strong tea",
		"Caramel poured and tipped round a mould":         "Pour at once",
		"Bay leaves torn into the milk":                   "bay leaves",
		"Three eggs, two yolks, stirred without froth":    "without frothing",
		"Strained, moulds filled, caramel cracks":         "strain, and pour",
		"Water poured to halfway, cloth under the moulds": "hot water halfway up",
		"Oven dial at 130 °C fan":                         "130 °C fan",
		"A mould nudged: it trembles":                     "trembling in the middle",
		"Probe reads 80 °C":                               "80 °C at the centre",
		"Turned over, the sigh, the sauce":                "turn it out",
		"Lamb browning in three lots":                     "Brown it",
		"A spoon cuts the lamb":                           "a spoon cuts the lamb",
	}
	for _, e := range newShow(t).Episodes {
		steps := map[string][]recipe.Step{}
		for _, c := range read(t, e.Recipe, e.Version).Components {
			steps[c.Name] = c.Steps
		}
		for _, s := range e.Shots {
			if s.Component == "" && s.Step == 0 {
				continue
			}
			word := words[s.Title]
			if s.Step < 1 || s.Step > len(steps[s.Component]) || word == "" {
				t.Errorf("episode %d: shot %q is of %q step %d, which is not there", e.Brief.Number, s.Title, s.Component, s.Step)
			} else if text := steps[s.Component][s.Step-1].Text; !strings.Contains(text, word) {
				t.Errorf("episode %d: shot %q is of step %q, want one with %q", e.Brief.Number, s.Title, text, word)
			}
		}
	}
}
