package web_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/recipe"
	"benchproof/views"
	"benchproof/web"
)

// marked writes runs with those that are New in brackets.
func marked(runs []views.Run) string {
	var b strings.Builder
	for _, run := range runs {
		if run.New {
			b.WriteString("[" + run.Text + "]")
		} else {
			b.WriteString(run.Text)
		}
	}
	return b.String()
}

func TestDiffering(t *testing.T) {
	for _, c := range []struct{ name, before, after, was, is string }{
		{"the same", "50 g butter", "50 g butter", "50 g butter", "50 g butter"},
		{"one word", "50 g butter", "60 g butter", "[50] g butter", "[60] g butter"},
		{"a word more", "50 g butter", "50 g cold butter", "50 g butter", "50 g[ cold] butter"},
		{"a word less", "50 g cold butter", "50 g butter", "50 g[ cold] butter", "50 g butter"},
		{"all else", "milk", "two eggs", "[milk]", "[two eggs]"},
		{"in another order", "salt then flour", "flour then salt", "", ""},
		{"added: nothing is marked, the row says so", "", "1 egg", "", "1 egg"},
		{"taken out", "1 egg", "", "1 egg", ""},
		{"only blanks differ", "50  g butter", "50 g butter", "50 g butter", "50 g butter"},
	} {
		t.Run(c.name, func(t *testing.T) {
			was, is := web.Differing(c.before, c.after)
			if c.was == "" && c.is == "" { // either word may be the one that stayed
				if strings.Count(marked(was), "[") == 0 || strings.Count(marked(is), "[") == 0 {
					t.Errorf("%q, %q: nothing is marked", marked(was), marked(is))
				}
				return
			}
			if marked(was) != c.was || marked(is) != c.is {
				t.Errorf("Differing(%q, %q) = %q, %q, want %q, %q", c.before, c.after, marked(was), marked(is), c.was, c.is)
			}
		})
	}
}

// Whatever is marked, the words are all there; what is not marked is the same
// on both sides; equal texts have no mark.
func TestDifferingLosesNoWord(t *testing.T) {
	word := rapid.SampledFrom([]string{"50", "g", "butter", "cold", "and", "milk", "<b>"})
	rapid.Check(t, func(t *rapid.T) {
		before := rapid.SliceOfN(word, 1, 8).Draw(t, "before")
		after := rapid.SliceOfN(word, 1, 8).Draw(t, "after")
		was, is := web.Differing(strings.Join(before, " "), strings.Join(after, " "))
		all := func(runs []views.Run, kept bool) string {
			text := ""
			for _, run := range runs {
				if !kept || !run.New {
					text += run.Text + " "
				}
			}
			return strings.Join(strings.Fields(text), " ")
		}
		if all(was, false) != strings.Join(before, " ") || all(is, false) != strings.Join(after, " ") {
			t.Errorf("%v, %v are drawn as %q, %q", before, after, marked(was), marked(is))
		}
		if all(was, true) != all(is, true) {
			t.Errorf("what stayed differs: %q, %q", marked(was), marked(is))
		}
		if cmp.Equal(before, after) && (strings.Contains(marked(was), "[") || strings.Contains(marked(is), "[")) {
			t.Errorf("equal texts are marked: %q", marked(was))
		}
	})
}

func TestNewCompareGroupsAsTheRecipeStands(t *testing.T) {
	changes := []recipe.Change{
		{Kind: recipe.Changed, In: recipe.InYield, Old: "Makes 8", New: "Makes 10"},
		{Kind: recipe.Changed, In: recipe.InLine, Component: "Pastry", Old: "50 g butter", New: "60 g butter"},
		{Kind: recipe.Added, In: recipe.InLine, New: "1 egg"},
		{Kind: recipe.Removed, In: recipe.InStep, Component: "Pastry", Old: "Chill."},
		{Kind: recipe.Moved, In: recipe.InLine, Component: "Pastry", From: "Cream", Old: "1 lemon", New: "1 lemon"},
		{Kind: recipe.Moved, In: recipe.InStep, Old: "Rest.", New: "Rest."},
	}
	view := web.NewCompare(changes)
	var got []string
	for _, group := range view.Groups {
		for _, row := range group.Rows {
			got = append(got, group.Title+" | "+marked(row.Before.Words)+" | "+marked(row.After.Words))
		}
	}
	want := []string{
		"Makes | Makes[ 8] | Makes[ 10]",
		"Pastry | [50] g butter | [60] g butter",
		"Pastry | 1 lemon | 1 lemon[ (moved here from Cream)]",
		"Ingredients |  | 1 egg",
		"Method: Pastry | Chill. | ",
		"Method | Rest. | Rest.[ (moved)]",
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("rows (-want +got):\n%s", diff)
	}
	if want := "2 changed, 1 added, 1 taken out, 2 moved"; view.Summary != want {
		t.Errorf("summary %q, want %q", view.Summary, want)
	}
	kinds := []views.Change{}
	for _, group := range view.Groups {
		for _, row := range group.Rows {
			kinds = append(kinds, row.Change)
		}
	}
	if diff := cmp.Diff([]views.Change{views.Changed, views.Changed, views.Changed, views.Added, views.TakenOut, views.Changed}, kinds); diff != "" {
		t.Errorf("kinds (-want +got):\n%s", diff)
	}
}

func TestTwoVersionsAlikeSaySo(t *testing.T) {
	r, _ := readRecipe(t, scones)
	view := web.NewCompare(recipe.Changes(r, r))
	if view.Summary != "nothing changed" || len(view.Groups) != 0 {
		t.Errorf("summary %q, %d groups", view.Summary, len(view.Groups))
	}
}

func TestEveryKindOfPlaceHasATitle(t *testing.T) {
	r, _ := readRecipe(t, "Old\n\nMakes 8\n\nNice with tea.\n\n250 g flour\n\nBake.\n\nNotes\nKeep dry.\n\nAdapted from a neighbour.\n")
	s, _ := readRecipe(t, "New\n\nMakes 9\n\nNicer with tea.\n\n260 g flour\n\nBake long.\n\nNotes\nKeep cold.\n\nAdapted from an aunt.\n")
	view := web.NewCompare(recipe.Changes(r, s))
	if len(view.Groups) < 6 {
		t.Errorf("%d groups, want one for each of title, yield, words before, lines, method, notes", len(view.Groups))
	}
	for _, group := range view.Groups {
		if group.Title == "" || len(group.Rows) == 0 {
			t.Errorf("group %+v has no title or no rows", group)
		}
	}
}
