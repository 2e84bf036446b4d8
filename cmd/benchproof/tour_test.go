package main

import (
	"testing"

	"benchproof/cmd/check/browser"
)

// ofAKind is how many pages of one kind are opened in the browser: the sheets of
// two episodes, two foods of the larder. The markup of all is checked.
const ofAKind = 2

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
	for _, wrong := range browser.Inspect(t, tab, browser.Sample(pages, ofAKind)) {
		t.Error(wrong)
	}
}
