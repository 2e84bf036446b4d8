package recipe_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/recipe"
)

const before = `Rye knots
Makes 16

For the dough:
320 g strong white flour
120 g rye flour
9 g fine salt
2 tbsp honey

For the glaze:
50 g butter
1 tsp smoked salt

Method
1. Mix and knead for 10 minutes.
2. Prove for 75 minutes.
3. Bake at 210 °C for 18 minutes.

Notes
Keeps two days.
`

func TestChanges(t *testing.T) {
	for _, tt := range []struct {
		name     string
		old, new string // what is replaced in the text above
		want     []recipe.Change
	}{
		{"nothing", "", "", nil},
		{"only blanks", "320 g strong", "320 g  strong", nil},
		{"an amount", "320 g strong white flour", "350 g strong white flour", []recipe.Change{
			{Kind: recipe.Changed, In: recipe.InLine, Component: "Dough", Old: "320 g strong white flour", New: "350 g strong white flour"}}},
		{"a line more", "9 g fine salt\n", "9 g fine salt\n6 g instant yeast\n", []recipe.Change{
			{Kind: recipe.Added, In: recipe.InLine, Component: "Dough", New: "6 g instant yeast"}}},
		{"a line less", "2 tbsp honey\n", "", []recipe.Change{
			{Kind: recipe.Removed, In: recipe.InLine, Component: "Dough", Old: "2 tbsp honey"}}},
		{"a food by its other name", "50 g butter", "60 g salted butter, melted", []recipe.Change{
			{Kind: recipe.Changed, In: recipe.InLine, Component: "Glaze", Old: "50 g butter", New: "60 g salted butter, melted"}}},
		{"another food", "2 tbsp honey", "1 tsp malt extract", []recipe.Change{
			{Kind: recipe.Removed, In: recipe.InLine, Component: "Dough", Old: "2 tbsp honey"},
			{Kind: recipe.Added, In: recipe.InLine, Component: "Dough", New: "1 tsp malt extract"}}},
		{"to another component", "2 tbsp honey\n\nFor the glaze:\n", "\nFor the glaze:\n2 tbsp honey\n", []recipe.Change{
			{Kind: recipe.Moved, In: recipe.InLine, Component: "Glaze", From: "Dough", Old: "2 tbsp honey", New: "2 tbsp honey"}}},
		{"up in the list", "320 g strong white flour\n120 g rye flour\n9 g fine salt\n2 tbsp honey\n", "2 tbsp honey\n320 g strong white flour\n120 g rye flour\n9 g fine salt\n",
			[]recipe.Change{{Kind: recipe.Moved, In: recipe.InLine, Component: "Dough", Old: "2 tbsp honey", New: "2 tbsp honey"}}},
		{"a component's name", "For the glaze:", "For the smoked butter:", []recipe.Change{
			{Kind: recipe.Changed, In: recipe.InComponent, Component: "Smoked butter", Old: "Glaze", New: "Smoked butter"}}},
		{"a component more", "\nMethod", "\nTo serve:\n2 tbsp honey\n\nMethod", []recipe.Change{
			{Kind: recipe.Added, In: recipe.InComponent, Component: "To serve", New: "To serve"},
			{Kind: recipe.Added, In: recipe.InLine, Component: "To serve", New: "2 tbsp honey"}}},
		{"a step", "Bake at 210 °C for 18 minutes.", "Bake at 200 °C for 20 minutes until brown.", []recipe.Change{
			{Kind: recipe.Changed, In: recipe.InStep, Old: "Bake at 210 °C for 18 minutes.", New: "Bake at 200 °C for 20 minutes until brown."}}},
		{"a step more", "3. Bake", "3. Shape into knots on the bench.\n4. Bake", []recipe.Change{
			{Kind: recipe.Added, In: recipe.InStep, New: "Shape into knots on the bench."}}},
		{"the title", "Rye knots", "Smoked rye knots", []recipe.Change{{Kind: recipe.Changed, In: recipe.InTitle, Old: "Rye knots", New: "Smoked rye knots"}}},
		{"the yield", "Makes 16", "Makes 12", []recipe.Change{{Kind: recipe.Changed, In: recipe.InYield, Old: "Makes 16", New: "Makes 12"}}},
		{"no yield", "Makes 16\n", "", []recipe.Change{{Kind: recipe.Removed, In: recipe.InYield, Old: "Makes 16"}}},
		{"a note", "Keeps two days.", "Keeps two days.\nFreezes well.", []recipe.Change{{Kind: recipe.Added, In: recipe.InNotes, New: "Freezes well."}}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			after := before
			if tt.old != "" {
				if !strings.Contains(before, tt.old) {
					t.Fatalf("nothing to replace: %q", tt.old)
				}
				after = strings.Replace(before, tt.old, tt.new, 1)
			}
			got := recipe.Changes(read(t, before), read(t, after))
			if diff := cmp.Diff(tt.want, got); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}

func TestChangesFromNothing(t *testing.T) {
	all := recipe.Changes(recipe.Recipe{}, read(t, before))
	for _, c := range all {
		if c.Kind != recipe.Added || c.Old != "" || c.New == "" {
			t.Errorf("from nothing: %+v", c)
		}
	}
	if len(all) != 1+1+2+6+3+1 {
		t.Errorf("%d additions", len(all))
	}
	if back := recipe.Changes(read(t, before), recipe.Recipe{}); len(back) != len(all) {
		t.Errorf("%d removals, %d additions", len(back), len(all))
	}
}
