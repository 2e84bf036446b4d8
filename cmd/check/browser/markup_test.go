package browser_test

import (
	"strings"
	"testing"

	"benchproof/cmd/check/browser"
)

func TestMarkup(t *testing.T) {
	marks := browser.Markup(t, map[string][]byte{
		"/good":     []byte(page("<p>In order</p>")),
		"/nested":   []byte(page("<p>First</p>\n<p><div>a div in a p</div></p>")),
		"sheet.css": []byte("p { colr: red }"),
		"new.css":   []byte("textarea { field-sizing: content }"),
	})
	got := map[string]string{}
	for _, m := range marks {
		got[m.Name] += m.String() + "\n"
	}
	if got["new.css"] != "" {
		t.Errorf("marks on a property the checker is too old for: %s", got["new.css"])
	}
	if got["/good"] != "" {
		t.Errorf("marks on a page in order: %s", got["/good"])
	}
	if !strings.Contains(got["/nested"], "/nested: No “p” element in scope") {
		t.Errorf("marks on a div in a p = %q", got["/nested"])
	}
	if !strings.Contains(got["sheet.css"], "colr") {
		t.Errorf("marks on a misspelt property = %q", got["sheet.css"])
	}
}
