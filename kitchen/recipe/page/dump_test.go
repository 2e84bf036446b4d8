package page_test

import (
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"benchproof/kitchen/recipe/page"
)

func TestDump(t *testing.T) {
	files, _ := filepath.Glob("../testdata/recipes/*.txt")
	for _, f := range files {
		b, _ := os.ReadFile(f)
		p := page.Sort(string(b))
		fmt.Println("=====", f, len(p.Parts))
		for _, r := range p.Rows {
			name := ""
			if r.Part >= 0 {
				name = p.Parts[r.Part].Name
			}
			c := ""
			if r.Of != r.Number {
				c = "…"
			}
			fmt.Printf("%-10s %2d %-14s %s%.70s\n", r.Role, r.Part, name, c, r.Words)
		}
	}
}
