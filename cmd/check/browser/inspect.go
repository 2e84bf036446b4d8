package browser

import (
	"fmt"
	"net/http"
)

// Inspect opens each page at the desk in light and on the phone in dark and
// gives a line for everything that is wrong with it: what axe-core finds
// against WCAG 2.2 A and AA, what is wider than the window, what the browser
// complains about. Give it pages that answer 200; see HTML.
func Inspect(tb TB, tab *Tab, pages []Page) []string {
	tb.Helper()
	var wrong []string
	tab.Complaints() // what was before is not about these pages
	for _, look := range []struct {
		window Window
		dark   bool
	}{{Desk, false}, {Phone, true}} {
		tab.Resize(look.window)
		tab.Dark(look.dark)
		for _, p := range pages {
			status := tab.Open(p.URL.String())
			if status != http.StatusOK {
				wrong = append(wrong, fmt.Sprintf("%s answers %d", p.Name(), status))
			}
			for _, v := range tab.Axe() {
				wrong = append(wrong, fmt.Sprintf("%s (%s): %v", p.Name(), look.window.Name, v))
			}
			for _, o := range tab.Overflow() {
				wrong = append(wrong, fmt.Sprintf("%s (%s): %s", p.Name(), look.window.Name, o))
			}
			for _, c := range tab.Complaints() {
				wrong = append(wrong, fmt.Sprintf("%s (%s): %s", p.Name(), look.window.Name, c))
			}
		}
	}
	return wrong
}

// Dead gives a line for every link that leads to an answer of 4xx or 5xx.
func Dead(pages []Page) []string {
	var dead []string
	for _, p := range pages {
		if p.Status >= 400 {
			dead = append(dead, fmt.Sprintf("%s answers %d, linked from %s", p.Name(), p.Status, p.From))
		}
	}
	return dead
}

// Files gives what Markup can check of a crawl, by name: pages, style sheets
// and pictures in SVG.
func Files(pages []Page) map[string][]byte {
	files := map[string][]byte{}
	for _, p := range pages {
		switch {
		case p.Status != http.StatusOK:
		case p.Type == "text/html", p.Type == "text/css", p.Type == "image/svg+xml":
			files[p.Name()] = p.Body
		}
	}
	return files
}
