package static_test

import (
	"bytes"
	"regexp"
	"strings"
	"testing"

	"benchproof/static"
)

func TestOpenFindsWhatURLNames(t *testing.T) {
	for _, name := range static.Names() {
		t.Run(name, func(t *testing.T) {
			a, ok := static.Open(static.URL(name))
			if !ok {
				t.Fatalf("Open(%q) found nothing", static.URL(name))
			}
			if a.Name != name || len(a.Body) == 0 || a.Type == "" {
				t.Errorf("Open gave name %q, %d bytes, type %q", a.Name, len(a.Body), a.Type)
			}
			if a.Path() != static.URL(name) {
				t.Errorf("Path() = %q, want %q", a.Path(), static.URL(name))
			}
		})
	}
}

func TestOpenRefuses(t *testing.T) {
	tests := []struct{ name, address string }{
		{"nothing", ""},
		{"the prefix alone", static.Prefix},
		{"no hash", static.Prefix + "app.css"},
		{"an old hash", static.Prefix + "0123456789abcdef/app.css"},
		{"another file's hash", strings.Replace(static.URL("app.js"), "app.js", "app.css", 1)},
		{"a way out of the folder", static.Prefix + "0123456789abcdef/../static.go"},
		{"a source file", static.Prefix + "0123456789abcdef/css/tokens.css"},
		{"without the prefix", strings.TrimPrefix(static.URL("app.css"), static.Prefix)},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			if a, ok := static.Open(tt.address); ok {
				t.Errorf("Open(%q) found %s", tt.address, a.Name)
			}
		})
	}
}

func TestURLPanicsForAnUnknownName(t *testing.T) {
	defer func() {
		if recover() == nil {
			t.Error("URL of an unknown name did not panic")
		}
	}()
	static.URL("no-such.css")
}

// TestTypes: what a browser refuses when it is wrong, with nosniff set.
func TestTypes(t *testing.T) {
	tests := map[string]string{
		"app.css": "text/css; charset=utf-8", "app.js": "text/javascript; charset=utf-8",
		"icons/icon.svg": "image/svg+xml", "fonts/inter-medium.woff2": "font/woff2",
	}
	for name, want := range tests {
		if a, _ := static.Open(static.URL(name)); a.Type != want {
			t.Errorf("%s has the type %q, want %q", name, a.Type, want)
		}
	}
}

func sheets(t *testing.T) map[string]string {
	t.Helper()
	all := map[string]string{}
	for _, name := range static.Names() {
		if strings.HasSuffix(name, ".css") {
			a, _ := static.Open(static.URL(name))
			all[name] = string(a.Body)
		}
	}
	if len(all) < 5 {
		t.Fatalf("only %d stylesheets", len(all))
	}
	return all
}

// TestStylesheetsStayHome: every address in them is one of our own assets.
func TestStylesheetsStayHome(t *testing.T) {
	address := regexp.MustCompile(`url\("?([^)"]*)"?\)`)
	for name, css := range sheets(t) {
		for _, found := range address.FindAllStringSubmatch(css, -1) {
			if _, ok := static.Open(found[1]); !ok {
				t.Errorf("%s links to %s, which is no asset", name, found[1])
			}
		}
		if strings.Contains(css, "@import") {
			t.Errorf("%s imports: its parts are put together when served", name)
		}
	}
}

// TestTokensAreDefined: every var(--x) of a stylesheet is set in it.
func TestTokensAreDefined(t *testing.T) {
	used, set := regexp.MustCompile(`var\((--[a-z]+)`), regexp.MustCompile(`(--[a-z]+):`)
	for name, css := range sheets(t) {
		there := map[string]bool{}
		for _, m := range set.FindAllStringSubmatch(css, -1) {
			there[m[1]] = true
		}
		for _, m := range used.FindAllStringSubmatch(css, -1) {
			if !there[m[1]] {
				t.Errorf("%s uses %s, which it does not set", name, m[1])
			}
		}
		if open, shut := strings.Count(css, "{"), strings.Count(css, "}"); open != shut {
			t.Errorf("%s opens %d braces and shuts %d", name, open, shut)
		}
	}
}

// TestScriptsAskNobodyElse: the scripts fetch only addresses a page gave them.
func TestScriptsAskNobodyElse(t *testing.T) {
	for _, name := range []string{"app.js", "cut.js", "kept.js", "search.js", "ticks.js", "worker.js"} {
		a, _ := static.Open(static.URL(name))
		for _, bad := range []string{"http:", "https:", "innerHTML", "eval(", "document.write"} {
			if bytes.Contains(a.Body, []byte(bad)) {
				t.Errorf("%s has %s", name, bad)
			}
		}
	}
}
