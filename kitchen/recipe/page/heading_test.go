package page_test

import (
	"strings"
	"testing"

	"benchproof/kitchen/recipe/page"
)

// partsOf gives the names of the components of a text.
func partsOf(text string) string {
	var names []string
	for _, p := range page.Sort(text).Parts {
		names = append(names, p.Name)
	}
	return strings.Join(names, "|")
}

// How a component's heading may look, before ingredients.
func TestComponentHeadings(t *testing.T) {
	for _, tt := range []struct{ name, heading, want string }{
		{"colon", "Pastry:", "Pastry"},
		{"for the", "For the pastry", "Pastry"},
		{"for the, with a colon", "For the pastry:", "Pastry"},
		{"for, without the", "For pastry:", "Pastry"},
		{"capitals", "SHORTCRUST PASTRY", "Shortcrust pastry"},
		{"capitals with a colon", "PASTRY:", "Pastry"},
		{"bold", "**Pastry**", "Pastry"},
		{"italics", "*Pastry*", "Pastry"},
		{"bold with a colon", "**Pastry:**", "Pastry"},
		{"marked up", "### Pastry", "Pastry"},
		{"a word for a part", "Almond filling", "Almond filling"},
		{"to serve", "To serve", "To serve"},
		{"to finish, in capitals", "TO FINISH", "To finish"},
		{"with a remark", "Pastry (makes enough for two):", "Pastry"},
		{"with a joke", "For the top (don't skip!)", "Top"},
		{"ingredients for", "Ingredients for the pastry", "Pastry"},
		{"ingredients behind", "Pastry ingredients", "Pastry"},
		{"a name, alone", "Grandma's secret", "Grandma's secret"},
		{"bulleted with a colon", "- For the pastry:", "Pastry"},
		{"accents", "Crème pâtissière:", "Crème pâtissière"},
		{"small letters with a colon", "then for the top bit:", "Then for the top bit"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if got := partsOf("Tart\n\n1 egg\n\n" + tt.heading + "\n200 g flour\n"); got != "|"+tt.want {
				t.Errorf("%q makes the components %q, want %q", tt.heading, got, "|"+tt.want)
			}
		})
	}
}

// What is no heading, before another ingredient.
func TestNoHeadings(t *testing.T) {
	for _, line := range []string{"salt", "Salt", "Salt and pepper", "Butter, for the tin", "200 g pastry", "Pastry, 200 g", "1 sheet puff pastry", "Flour: 200 g",
		"- Pastry", "a pinch of sugar", "For dusting, flour", "vanilla extract", "Sugar"} {
		t.Run(line, func(t *testing.T) {
			if got := partsOf("Tart\n\n1 egg\n" + line + "\n200 g flour\n"); got != "" {
				t.Errorf("%q makes the components %q", line, got)
			}
		})
	}
}

// The headings of sections, however they are written.
func TestSectionHeadings(t *testing.T) {
	for _, heading := range []string{"Ingredients", "ingredients", "INGREDIENTS", "Ingredients:", "**Ingredients**", "## Ingredients", "What you need", "You will need:",
		"What you’ll need", "Ingredients (metric)", "— Ingredients —", "You need", "For this you need:"} {
		if got := sorted("Buns\n\n" + heading + "\n200 g flour\n"); !strings.HasPrefix(got, "title: Buns\nheading: ") {
			t.Errorf("%q opens no ingredients:\n%s", heading, got)
		}
	}
	for _, heading := range []string{"Method", "METHOD", "Directions:", "Instructions", "Preparation", "Steps", "What to do", "How to make it", "Here's how", "**Method**"} {
		if got := sorted("Buns\n\n200 g flour\n\n" + heading + "\nEat it raw\n"); !strings.HasSuffix(got, "step[]: Eat it raw\n") {
			t.Errorf("%q opens no method:\n%s", heading, got)
		}
	}
	for _, heading := range []string{"Notes", "Note:", "TIPS", "Top tips", "Cook's notes", "Storage", "Make ahead", "Recipe Notes", "Nutrition"} {
		if got := sorted("Buns\n\n200 g flour\n\nMethod\nMix.\n\n" + heading + "\nMix rye in.\n"); !strings.HasSuffix(got, "notes: Mix rye in.\n") {
			t.Errorf("%q opens no notes:\n%s", heading, got)
		}
	}
	for _, heading := range []string{"Equipment", "Special equipment:", "Tools", "You will also need"} {
		if got := sorted("Buns\n\n" + heading + "\na tin\n\nIngredients\n200 g flour\n"); !strings.Contains(got, "equipment: a tin\n") {
			t.Errorf("%q opens no equipment:\n%s", heading, got)
		}
	}
}
