package page_test

import (
	"strings"
	"testing"

	"benchproof/kitchen/recipe/page"
)

func titleOf(text string) string {
	for _, r := range page.Sort(text).Rows {
		if r.Role == page.Title {
			return r.Words
		}
	}
	return ""
}

// Which first line is the title.
func TestTitle(t *testing.T) {
	for _, tt := range []struct{ name, text, want string }{
		{"plain", "Rye buns\n200 g flour\n", "Rye buns"},
		{"behind blank lines", "\n\n\nRye buns\n\n200 g flour\n", "Rye buns"},
		{"in capitals", "RYE BUNS\n\n200 g flour\n", "RYE BUNS"},
		{"marked up", "# Rye buns\n\n200 g flour\n", "Rye buns"},
		{"labelled", "Title: Rye buns\n\n200 g flour\n", "Rye buns"},
		{"labelled below a yield", "Serves 4\nRecipe: Rye buns\n200 g flour\n", "Rye buns"},
		{"below a yield", "Serves 4\nRye buns\n200 g flour\n", "Rye buns"},
		{"a number of things", "3 bean chilli\n\nServes 4\n\n2 onions\n", "3 bean chilli"},
		{"a number joined to a word", "5-minute hummus\n\n1 tin chickpeas\n", "5-minute hummus"},
		{"with stars", "Peanut noodles ★★★★☆\n\n200 g noodles\n", "Peanut noodles ★★★★☆"},
		{"an exclamation", "The best buns ever!\n\n200 g flour\n", "The best buns ever!"},
		{"a remark", "Gran's loaf (from the blue book)\n\n200 g flour\n", "Gran's loaf (from the blue book)"},
		{"not an ingredient", "200 g flour\n100 g butter\n", ""},
		{"not a heading", "Ingredients\n200 g flour\n", ""},
		{"not a component", "For the pastry\n200 g flour\n", ""},
		{"not a step", "Preheat the oven to 200 °C.\nBake the potatoes.\n", ""},
		{"not a sentence", "This is the recipe that I have been making for twenty years now.\n200 g flour\n", ""},
		{"not a bullet", "- salt\n- 200 g flour\n", ""},
		{"not a number of foods", "3 eggs\n200 g flour\n", ""},
		{"nothing", "", ""},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if got := titleOf(tt.text); got != tt.want {
				t.Errorf("title %q, want %q", got, tt.want)
			}
		})
	}
}

// Which rows go on with the one before: "+" where they do.
func TestContinued(t *testing.T) {
	const lines, steps = "Buns\n\nIngredients\n", "Buns\n\n200 g flour\n\nMethod\n"
	for _, tt := range []struct{ name, text, want string }{
		{"a comma, small letter", lines + "200 g flour,\nsifted\n", "+"},
		{"a comma, another ingredient", lines + "200 g flour,\n100 g butter,\nsalt\n", " "},
		{"an open bracket", lines + "200 g flour (the\n00 kind)\n", "+"},
		{"a bracket on its own", lines + "200 g flour\n(strong)\n", "+"},
		{"or", lines + "200 g butter\nor 200 g lard\n", "+"},
		{"plus", lines + "200 g butter\nplus extra for the tin\n", "+"},
		{"indented", lines + "200 g flour sifted as often\n   as you can\n", "+"},
		{"indented, but a bullet", lines + "200 g flour\n   - salt\n", " "},
		{"a blank line between", lines + "200 g flour,\n\nsalt\n", " "},
		{"another food", lines + "200 g flour\nsalt\n", " "},
		{"a step's small letter", steps + "Mix the flour\nand the water.\n", "+"},
		{"a step's new sentence", steps + "Mix the flour.\nBake the buns.\n", " "},
		{"a numbered step", steps + "1. Mix the flour\n2. Bake the buns\n", " "},
		{"a line cut in the middle", steps + "1. Mix the flour with all of the\nWater you have.\n2. Bake.\n", "+"},
		{"a step in small letters all along", steps + "mix the flour\nbake the buns\n", " "},
	} {
		t.Run(tt.name, func(t *testing.T) {
			rows := page.Sort(tt.text).Rows
			mark := " "
			for _, r := range rows[2:] {
				if r.Of != r.Number {
					mark = "+"
				}
			}
			if mark != tt.want {
				t.Errorf("continued %q, want %q:\n%s", mark, tt.want, sorted(tt.text))
			}
		})
	}
}

// Credits and asides, wherever they stand.
func TestCreditsAndAsides(t *testing.T) {
	for line, role := range map[string]page.Role{
		"Adapted from a neighbour": page.Credit, "Inspired by a bun in a harbour": page.Credit, "Recipe by my aunt": page.Credit, "Source: the blue book": page.Credit,
		"https://example.org/x": page.Credit, "Thanks to Ottoline Brask": page.Credit, "With thanks to the ferry": page.Credit,
		"Tip: use rye": page.Note, "Note: it is wet": page.Note, "NB: it is wet": page.Note, "Keeps two days.": page.Note,
		"From the oven, straight to the table.": page.Step, "Add the source of the heat.": page.Step,
	} {
		text := "Buns\n\n200 g flour\n\nMethod\nMix it.\n" + line + "\n"
		rows := page.Sort(text).Rows
		if got := rows[len(rows)-1].Role; got != role {
			t.Errorf("%q is %q, want %q", line, got, role)
		}
		if page.IsCredit(line) != (role == page.Credit) {
			t.Errorf("IsCredit(%q) = %t", line, page.IsCredit(line))
		}
	}
	if got := sorted("Buns\nby the keeper of the till\n\n200 g flour\n"); !strings.Contains(got, "credits: by the keeper") {
		t.Errorf("a byline under the title is no credit:\n%s", got)
	}
}
