package recipe_test

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"benchproof/kitchen/recipe"
)

// A recipe written as text reads as it did, but for the places of its lines.
func TestTextReadsTheSame(t *testing.T) {
	files, _ := filepath.Glob("testdata/recipes/*.txt")
	more, _ := filepath.Glob("testdata/corpus/recipes/[01]*.txt")
	for _, file := range append(files, more...) {
		t.Run(filepath.Base(file), func(t *testing.T) {
			text, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			r := read(t, string(text))
			written := recipe.Text(r)
			again := read(t, written)
			places := []cmp.Option{
				cmpopts.IgnoreFields(recipe.Recipe{}, "Placed"), cmpopts.IgnoreFields(recipe.Line{}, "Number"),
				cmpopts.IgnoreFields(recipe.Step{}, "Number"), cmpopts.IgnoreFields(recipe.Component{}, "Number"), cmpopts.EquateEmpty(),
			}
			if diff := cmp.Diff(r, again, places...); diff != "" {
				t.Errorf("reads otherwise when written (-first +again):\n%s\n%s", diff, written)
			}
			if diff := cmp.Diff(written, recipe.Text(again)); diff != "" {
				t.Errorf("is written otherwise the second time:\n%s", diff)
			}
		})
	}
}

func TestText(t *testing.T) {
	r := read(t, "Buns\nBy Ama Tollund\nMakes 8\nA family thing.\n\nFor the dough\n• 200g flour\n* 1 egg\n\nFor the top\n20 g butter\n\nMix it all. Bake for 20 minutes.\nBrush with the butter.\n\nTips\nEat warm.\n")
	want := `Buns

By Ama Tollund

Makes 8

A family thing.

Ingredients
Dough:
- 200g flour
- 1 egg

Top:
- 20 g butter

Method
1. Mix it all. Bake for 20 minutes.
2. Brush with the butter.

Notes
- Eat warm.
`
	if diff := cmp.Diff(want, recipe.Text(r)); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
	if got := recipe.Text(recipe.Recipe{}); got != "\n" {
		t.Errorf("nothing is written as %q", got)
	}
}
