package recipe_test

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"benchproof/kitchen/recipe"
)

// TestCookRecipes sorts the recipes of testdata/corpus/recipes, written by
// somebody else than the reader, and compares with their writer's account in
// expected.txt: title, yield, ingredients and steps per component.
func TestCookRecipes(t *testing.T) {
	raw, err := os.ReadFile("testdata/corpus/recipes/expected.txt")
	if err != nil {
		t.Fatal(err)
	}
	for row := range strings.Lines(string(raw)) {
		row = strings.TrimRight(row, "\n")
		if row == "" || strings.HasPrefix(row, "#") {
			continue
		}
		file, want, _ := strings.Cut(row, " | ")
		t.Run(file, func(t *testing.T) {
			text, err := os.ReadFile(filepath.Join("testdata/corpus/recipes", file))
			if err != nil {
				t.Fatal(err)
			}
			if got := account(recipe.Reader{Larder: larder(t)}.Read(string(text))); !strings.EqualFold(got, want) {
				t.Errorf("sorted as\n%s, want\n%s", got, want)
			}
		})
	}
}

// account writes a recipe as expected.txt does. A line that reads as several
// steps counts once.
func account(r recipe.Recipe) string {
	var parts []string
	for _, c := range r.Components {
		lines := map[int]bool{}
		for _, s := range c.Steps {
			lines[s.Number] = true
		}
		parts = append(parts, fmt.Sprintf("%s:%d:%d", c.Name, len(c.Lines), len(lines)))
	}
	yield := ""
	if !r.Yield.Amount.IsZero() {
		yield = strings.ReplaceAll(exact(r.Yield.Amount), "–", "-")
		if r.Yield.Of != "servings" {
			yield = strings.TrimSpace(yield + " " + r.Yield.Of)
		}
	}
	return fmt.Sprintf("%s | %s | %s | %d | %d | %d", r.Title, yield, strings.Join(parts, "; "), len(r.Notes), len(r.Credits), len(r.Equipment))
}

// readCookFiles gives the text of every recipe in testdata.
func readCookFiles(t testing.TB) []string {
	t.Helper()
	files, _ := filepath.Glob("testdata/recipes/*.txt")
	more, _ := filepath.Glob("testdata/corpus/recipes/[01]*.txt")
	var texts []string
	for _, file := range append(files, more...) {
		raw, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		texts = append(texts, string(raw))
	}
	return texts
}
