package main

import (
	"strings"
	"testing"

	"benchproof/cmd/check/browser"
)

// TestEveryPageOfTheDemo walks every page of the demo show: no dead link, no
// fault that axe-core or the Nu HTML checker finds, nothing wider than its
// window, no complaint of the browser.
func TestEveryPageOfTheDemo(t *testing.T) {
	tab := browser.Start(t, browser.Desk)
	up := start(t, 2, "demo", "--addr", "127.0.0.1:0")
	pages := browser.Crawl(t, tab.Client(), up.address+"/")
	for _, dead := range browser.Dead(pages) {
		t.Error(dead)
	}
	pages = browser.HTML(pages)
	if len(pages) < 100 {
		t.Errorf("the demo has %d pages, want at least 100", len(pages))
	}
	for _, mark := range browser.Markup(t, browser.Files(pages)) {
		t.Error(mark)
	}
	for _, wrong := range browser.Inspect(t, tab, fewFoods(pages)) {
		t.Error(wrong)
	}
}

// fewFoods keeps every page but the larder's foods, of which there are hundreds
// alike: of those it keeps three.
func fewFoods(pages []browser.Page) []browser.Page {
	var kept []browser.Page
	foods := 0
	for _, p := range pages {
		if strings.HasPrefix(p.URL.Path, "/larder/") {
			if foods++; foods > 3 {
				continue
			}
		}
		kept = append(kept, p)
	}
	return kept
}
