package page_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/recipe/page"
)

// sorted writes each row as its role, its component and its words.
func sorted(text string) string {
	p := page.Sort(text)
	var b strings.Builder
	for _, r := range p.Rows {
		part := ""
		if r.Part >= 0 {
			part = fmt.Sprintf("[%s]", p.Parts[r.Part].Name)
		}
		if r.Of != r.Number {
			part += "…"
		}
		fmt.Fprintf(&b, "%s%s: %s\n", r.Role, part, r.Words)
	}
	return b.String()
}

// How cooks lay recipes out: common practice, no source.
func TestSort(t *testing.T) {
	for _, tt := range []struct{ name, text, want string }{
		{"headings", "Buns\n\nIngredients\n200 g flour\n\nMethod\nMix it.\n",
			"title: Buns\nheading: Ingredients\nline[]: 200 g flour\nheading: Method\nstep[]: Mix it.\n"},
		{"no headings", "Buns\n200 g flour\nsalt\n\nMix the flour and salt.\n",
			"title: Buns\nline[]: 200 g flour\nline[]: salt\nstep[]: Mix the flour and salt.\n"},
		{"ingredients only", "200 g flour\n3 eggs\nsalt\n", "line[]: 200 g flour\nline[]: 3 eggs\nline[]: salt\n"},
		{"method only", "Toast\n\nToast the bread.\nButter the toast.\n", "title: Toast\nstep[]: Toast the bread.\nstep[]: Butter the toast.\n"},
		{"steps only", "1. Toast the bread.\n2. Butter the toast.\n", "step[]: Toast the bread.\nstep[]: Butter the toast.\n"},
		{"a title that starts with a number", "3 bean chilli\nServes 4\n\n2 onions\n", "title: 3 bean chilli\nyield: Serves 4\nline[]: 2 onions\n"},
		{"a labelled title", "Recipe: Barley buns\n\n200 g barley\n", "title: Barley buns\nline[]: 200 g barley\n"},
		{"facts above the title's block", "Buns\nPrep 10 min | Serves 4\n200 g flour\n", "title: Buns\nyield: Prep 10 min | Serves 4\nline[]: 200 g flour\n"},
		{"one of a thing comes first", "Buns\nServes 4\n\nan egg, beaten\na large onion, diced\n200 g flour\n",
			"title: Buns\nyield: Serves 4\nline[]: an egg, beaten\nline[]: a large onion, diced\nline[]: 200 g flour\n"},
		{"introduction", "Buns\nThis is what we make when it rains.\n\n200 g flour\n", "title: Buns\nintro: This is what we make when it rains.\nline[]: 200 g flour\n"},
		{"components by colon", "Tart\n\nPastry:\n200 g flour\n\nFilling:\n3 eggs\n",
			"title: Tart\ncomponent[Pastry]: Pastry:\nline[Pastry]: 200 g flour\ncomponent[Filling]: Filling:\nline[Filling]: 3 eggs\n"},
		{"components in capitals", "Tart\n\nPASTRY\n200 g flour\nFILLING\n3 eggs\n",
			"title: Tart\ncomponent[Pastry]: PASTRY\nline[Pastry]: 200 g flour\ncomponent[Filling]: FILLING\nline[Filling]: 3 eggs\n"},
		{"components bare", "Tart\n\nPastry\n200 g flour\n\nAlmond filling\n3 eggs\n",
			"title: Tart\ncomponent[Pastry]: Pastry\nline[Pastry]: 200 g flour\ncomponent[Almond filling]: Almond filling\nline[Almond filling]: 3 eggs\n"},
		{"components in the section's heading", "Tart\n\nIngredients for the pastry\n200 g flour\n\nMethod\nRub in the butter.\n",
			"title: Tart\ncomponent[Pastry]: Ingredients for the pastry\nline[Pastry]: 200 g flour\nheading: Method\nstep[Pastry]: Rub in the butter.\n"},
		{"a food without an amount is no heading", "Stew\n\n200 g beef\nSalt\n100 g peas\n", "title: Stew\nline[]: 200 g beef\nline[]: Salt\nline[]: 100 g peas\n"},
		{"each component its method", "Tart\n\nPastry:\n200 g flour\nRub the flour with butter.\n\nFilling:\n3 eggs\nBeat the eggs well.\n",
			"title: Tart\ncomponent[Pastry]: Pastry:\nline[Pastry]: 200 g flour\nstep[Pastry]: Rub the flour with butter.\ncomponent[Filling]: Filling:\nline[Filling]: 3 eggs\nstep[Filling]: Beat the eggs well.\n"},
		{"one method for all", "Tart\n\nPastry:\n200 g flour\n\nFilling:\n3 eggs\n\nMethod\nRub it.\n",
			"title: Tart\ncomponent[Pastry]: Pastry:\nline[Pastry]: 200 g flour\ncomponent[Filling]: Filling:\nline[Filling]: 3 eggs\nheading: Method\nstep[]: Rub it.\n"},
		{"method by component", "Tart\n\nPastry:\n200 g flour\n\nFilling:\n3 eggs\n\nMethod\nHeat the oven.\nMake the pastry:\nRub it.\nFilling:\nBeat it.\n",
			"title: Tart\ncomponent[Pastry]: Pastry:\nline[Pastry]: 200 g flour\ncomponent[Filling]: Filling:\nline[Filling]: 3 eggs\nheading: Method\nstep[]: Heat the oven.\ncomponent[Pastry]: Make the pastry:\nstep[Pastry]: Rub it.\ncomponent[Filling]: Filling:\nstep[Filling]: Beat it.\n"},
		{"a component of steps alone", "Tart\n\n200 g flour\n\nMethod\nMix it.\nTo assemble:\nPile it up.\n",
			"title: Tart\nline[]: 200 g flour\nheading: Method\nstep[]: Mix it.\ncomponent[To assemble]: To assemble:\nstep[To assemble]: Pile it up.\n"},
		{"text behind a heading", "Buns\nIngredients: 200 g flour\nMethod: Mix everything.\n", "title: Buns\nline[]: 200 g flour\nstep[]: Mix everything.\n"},
		{"a broken line of ingredients", "Buns\n200 g flour,\nsifted twice\n1 egg (the\nlargest you have)\n", "title: Buns\nline[]: 200 g flour,\nline[]…: sifted twice\nline[]: 1 egg (the\nline[]…: largest you have)\n"},
		{"a broken line of method", "Buns\n200 g flour\n\nMethod\n1. Mix the flour\nand water.\n2. Bake.\n", "title: Buns\nline[]: 200 g flour\nheading: Method\nstep[]: Mix the flour\nstep[]…: and water.\nstep[]: Bake.\n"},
		{"notes and tips", "Buns\n200 g flour\n\nMethod\nMix.\nTip: use rye.\n\nNotes\nKeeps.\n", "title: Buns\nline[]: 200 g flour\nheading: Method\nstep[]: Mix.\nnotes: Tip: use rye.\nheading: Notes\nnotes: Keeps.\n"},
		{"credits", "Buns\nAdapted from a neighbour\n200 g flour\nhttps://example.org/buns\n", "title: Buns\ncredits: Adapted from a neighbour\nline[]: 200 g flour\ncredits: https://example.org/buns\n"},
		{"equipment", "Buns\nEquipment\na 20 cm tin\n\nIngredients\n200 g flour\n", "title: Buns\nheading: Equipment\nequipment: a 20 cm tin\nheading: Ingredients\nline[]: 200 g flour\n"},
		{"rules and boxes", "Buns\n-----\n- [ ] 200 g flour\n• salt\n", "title: Buns\nheading: -----\nline[]: 200 g flour\nline[]: salt\n"},
		{"step labels", "Buns\n200 g flour\n\nStep 1\nMix the flour.\nStep 2: Bake it.\n", "title: Buns\nline[]: 200 g flour\nheading: Step 1\nstep[]: Mix the flour.\nstep[]: Bake it.\n"},
		{"numbers without a sign", "Buns\n200 g flour\n\n1 Preheat the oven.\n2 Bake the buns.\n", "title: Buns\nline[]: 200 g flour\nstep[]: Preheat the oven.\nstep[]: Bake the buns.\n"},
		{"a numbered sentence without a known verb first", "Pie\n\n1 egg\n\n1. Blind bake the shell for 15 minutes.\n2. Fill it.\n", "title: Pie\nline[]: 1 egg\nstep[]: Blind bake the shell for 15 minutes.\nstep[]: Fill it.\n"},
		{"numbered ingredients", "Buns\nIngredients\n1. 200 g flour\n2. 1 egg\n", "title: Buns\nheading: Ingredients\nline[]: 200 g flour\nline[]: 1 egg\n"},
		{"carriage returns", "Buns\r\n\r\n200 g flour\r\n", "title: Buns\nline[]: 200 g flour\n"},
		{"nothing to cook", "Dear diary\nit rained\n", "title: Dear diary\nunread: it rained\n"},
		{"nothing", "", ""},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if diff := cmp.Diff(tt.want, sorted(tt.text)); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}

func TestYieldLines(t *testing.T) {
	for text, want := range map[string]bool{
		"Serves 4": true, "Serves 4–6 people": true, "Makes about 16": true, "Makes one large loaf": true, "Yield: 12": true, "For 4 people": true,
		"4 servings": true, "Makes a dozen": true, "Feeds six": true, "Serves: 4": true, "PREP 10 min   COOK 12 min   SERVES 4": true,
		"Enough for 8": true, "Portions: 6": true,
		"Makes a great gift": false, "Serve 4 slices on toast with the sauce": false, "For the pastry": false, "Make the dough": false, "4 eggs": false,
	} {
		got := strings.HasPrefix(sorted("Dish\n"+text+"\n\n200 g flour\n"), "title: Dish\nyield: ")
		if got != want {
			t.Errorf("%q is a yield: %t, want %t", text, got, want)
		}
	}
}

func TestWords(t *testing.T) {
	for line, want := range map[string]string{
		"  • 200 g flour ": "200 g flour", "* 2 eggs": "2 eggs", "- [x] salt": "salt", "1. Mix": "Mix", "2) Mix": "Mix", "(3) Mix": "Mix",
		"Step 4: Mix": "Mix", "STEP 5 – Mix": "Mix", "1.5 kg flour": "1.5 kg flour", "-5 °C water": "-5 °C water", "**Filling**": "Filling",
		"## Method": "Method", "**200 g** flour": "200 g flour", "1 - 2 eggs": "1 - 2 eggs", "a **b** c": "a b c", "x**y**z": "x y z", "—": "—", "": "",
		"🍑 4 peaches": "🍑 4 peaches", "9:30 start": "9:30 start", "–   2 eggs": "2 eggs", "\ufeffBuns": "Buns",
	} {
		if got := page.Words(line); got != want {
			t.Errorf("Words(%q) = %q, want %q", line, got, want)
		}
	}
}

// Every line that is not blank is one row, whatever the text.
func FuzzSort(f *testing.F) {
	f.Add("Buns\n\nFor the dough:\n- 200 g flour\n\n1. Mix\nNotes\nx\r\n\u2028")
	f.Add("000\xff0\n#\xff0\n000") // a heading that is no UTF-8
	f.Add("recipe\n\nmakes recipe\n1 g x")
	f.Fuzz(func(t *testing.T, text string) {
		p := page.Sort(text)
		last := 0
		for _, r := range p.Rows {
			if r.Number <= last || r.Text == "" || r.Role == "" || r.Of > r.Number {
				t.Errorf("row %+v after line %d", r, last)
			}
			part := r.Role == page.Component || r.Role == page.Ingredient || r.Role == page.Step
			if part != (r.Part >= 0) || r.Part >= len(p.Parts) {
				t.Errorf("row %+v of %d parts", r, len(p.Parts))
			}
			last = r.Number
		}
	})
}
