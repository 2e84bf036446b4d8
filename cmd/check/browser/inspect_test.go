package browser_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/cmd/check/browser"
)

func TestInspect(t *testing.T) {
	base := site(t, map[string]string{
		"/":     page(`<a href="/bad/">bad</a> <a href="/gone/">gone</a>`),
		"/bad/": page(`<div class="wide"></div><input name="grams"><script>1</script>`),
	})
	pages := browser.Crawl(t, nil, base)
	if diff := cmp.Diff([]string{"/gone/ answers 404, linked from /"}, browser.Dead(pages)); diff != "" {
		t.Errorf("Dead() (-want +got):\n%s", diff)
	}
	files := browser.Files(pages)
	for _, want := range []string{"/", "/bad/", "/sheet.css", "/icon.svg"} {
		if len(files[want]) == 0 {
			t.Errorf("Files() lacks %s", want)
		}
	}
	if len(files) != 4 {
		t.Errorf("Files() gives %d, want 4", len(files))
	}
	wrong := browser.Inspect(t, browser.Start(t, browser.Desk), browser.HTML(pages))
	got := strings.Join(wrong, "\n")
	for _, want := range []string{
		"/bad/ (desk): label (critical)", "/bad/ (phone): label (critical)",
		"/bad/ (phone): the document is 700 px wide", "/bad/ (desk): security: ",
	} {
		if !strings.Contains(got, want) {
			t.Errorf("Inspect() lacks %q:\n%s", want, got)
		}
	}
	for _, line := range wrong {
		if !strings.HasPrefix(line, "/bad/ ") {
			t.Errorf("Inspect() of a page in order: %s", line)
		}
	}
}
