package recipe_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// sixtyLines is a recipe of 60 lines that are not blank: 32 ingredients in four
// components, 18 numbered steps, headings, notes.
func sixtyLines(b *testing.B) string {
	b.Helper()
	text, err := os.ReadFile("testdata/recipes/sixty-lines.txt")
	if err != nil {
		b.Fatal(err)
	}
	n := 0
	for line := range strings.Lines(string(text)) {
		if strings.TrimSpace(line) != "" {
			n++
		}
	}
	if n != 60 {
		b.Fatalf("%d lines, want 60", n)
	}
	return string(text)
}

// BenchmarkRead bounds what pasting a recipe costs.
func BenchmarkRead(b *testing.B) {
	text := sixtyLines(b)
	for _, bench := range []struct {
		name   string
		reader recipe.Reader
	}{{"60 lines", recipe.Reader{Larder: larder(b)}}, {"60 lines without a larder", recipe.Reader{}}} {
		b.Run(bench.name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if r := bench.reader.Read(text); len(r.Unread) > 0 || len(r.Components) == 0 {
					b.Fatal("not read")
				}
			}
		})
	}
}

// BenchmarkScale bounds what a viewer's change of scale costs.
func BenchmarkScale(b *testing.B) {
	w := recipe.Writer{Larder: larder(b), House: measure.Metric}
	for name, text := range map[string]string{"60 lines": sixtyLines(b), "12 lines": middling(b)} {
		r := recipe.Reader{Larder: larder(b)}.Read(text)
		for _, style := range []recipe.Style{recipe.AsWritten, recipe.MetricStyle} {
			w.Style = style
			b.Run(strings.TrimSpace(name+" "+string(style)), func(b *testing.B) {
				b.ReportAllocs()
				for b.Loop() {
					if s := recipe.Scale(r, measure.Ratio(3, 2), w); len(s.Lines) == 0 {
						b.Fatal("not scaled")
					}
				}
			})
		}
	}
}

func middling(b *testing.B) string {
	b.Helper()
	text, err := os.ReadFile(filepath.Join("testdata", "recipes", "03-mussel-stew.txt"))
	if err != nil {
		b.Fatal(err)
	}
	return string(text)
}

// BenchmarkChanges bounds the page that compares two versions.
func BenchmarkChanges(b *testing.B) {
	text := sixtyLines(b)
	older := recipe.Reader{}.Read(text)
	newer := recipe.Reader{}.Read(strings.ReplaceAll(text, "20", "25"))
	b.ReportAllocs()
	for b.Loop() {
		if len(recipe.Changes(older, newer)) == 0 {
			b.Fatal("no changes")
		}
	}
}
