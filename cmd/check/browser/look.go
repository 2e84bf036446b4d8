package browser

import (
	"fmt"
	"net/url"
	"os"
	"path/filepath"
	"strings"
)

// Look photographs pages into a folder, which it makes: for each page a PNG at
// the desk and on the phone, in light and dark, and a PDF of its print sheet.
// The tab must be signed in where the pages ask for it. It gives the paths it
// wrote. Nothing is judged here: the pictures are for eyes.
func Look(tb TB, tab *Tab, pages []Page, dir string) []string {
	tb.Helper()
	if err := os.MkdirAll(dir, 0o755); err != nil {
		tb.Fatalf("%v", err)
	}
	var wrote []string
	for i, p := range pages {
		name := filepath.Join(dir, fmt.Sprintf("%03d_%s", i+1, fileName(p.URL)))
		for _, window := range []Window{Desk, Phone} {
			tab.Resize(window)
			for _, scheme := range []string{"light", "dark"} {
				tab.Dark(scheme == "dark")
				tab.Open(p.URL.String())
				path := fmt.Sprintf("%s.%s.%s.png", name, window.Name, scheme)
				tab.Screenshot(path)
				wrote = append(wrote, path)
			}
		}
		tab.Resize(Desk)
		tab.Dark(false)
		tab.Open(p.URL.String())
		tab.Print(name + ".pdf")
		wrote = append(wrote, name+".pdf")
	}
	return wrote
}

// fileName makes a file name of a path and query: "/" is "index",
// "/episodes/3?print=a5" is "episodes_3_print_a5". Two names can come out the
// same, so Look numbers them.
func fileName(u *url.URL) string {
	name := strings.Map(func(r rune) rune {
		if r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' || r >= '0' && r <= '9' || strings.ContainsRune("-.", r) {
			return r
		}
		return '_'
	}, strings.Trim(u.RequestURI(), "/"))
	if name == "" {
		return "index"
	}
	return name[:min(len(name), 100)]
}
