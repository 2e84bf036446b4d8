package specimen_test

import (
	"bytes"
	"context"
	"flag"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/views/specimen"
)

var update = flag.Bool("update", false, "rewrite the golden files")

// TestGolden compares each page with the one that was last looked at.
func TestGolden(t *testing.T) {
	for _, s := range specimen.Pages() {
		t.Run(s.Name, func(t *testing.T) {
			got := normal(render(t, s))
			path := filepath.Join("testdata", s.Name+".html")
			if *update {
				if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
					t.Fatal(err)
				}
			}
			want, err := os.ReadFile(path)
			if err != nil {
				t.Fatal(err)
			}
			if diff := cmp.Diff(string(want), got); diff != "" {
				t.Errorf("%s differs from %s (-want +got); if it is meant, run with -update:\n%s", s.Name, path, diff)
			}
		})
	}
}

// TestGoldenFilesHaveAPage finds golden files whose page is gone.
func TestGoldenFilesHaveAPage(t *testing.T) {
	names := map[string]bool{}
	for _, s := range specimen.Pages() {
		if names[s.Name] {
			t.Errorf("two pages are named %s", s.Name)
		}
		names[s.Name] = true
	}
	files, err := filepath.Glob("testdata/*.html")
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range files {
		if name := strings.TrimSuffix(filepath.Base(f), ".html"); !names[name] {
			t.Errorf("%s belongs to no page", f)
		}
	}
}

func render(t *testing.T, s specimen.Specimen) string {
	t.Helper()
	var b bytes.Buffer
	if err := s.Component.Render(context.Background(), &b); err != nil {
		t.Fatalf("draw %s: %v", s.Name, err)
	}
	return b.String()
}

var (
	hash   = regexp.MustCompile(`/assets/[0-9a-f]{16}/`)
	blocks = regexp.MustCompile(`(</?(?:html|head|body|main|header|footer|nav|section|div|ul|ol|li|dl|form|details|summary|h1|h2|h3|p|table|label|link|meta|title|script|button|select|option|input)\b)`)
)

// normal puts each block on a line of its own, so that a difference is short,
// and takes the hashes out of the assets' addresses.
func normal(html string) string {
	html = hash.ReplaceAllString(html, "/assets/HASH/")
	html = blocks.ReplaceAllString(html, "\n$1")
	return strings.TrimSpace(html) + "\n"
}
