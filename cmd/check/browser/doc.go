// Package browser lets tests look at the running program as a person would: in
// headless Chromium, at a desk and on a phone, in light and dark, on paper. It
// runs axe-core over a page and the Nu HTML checker over a batch of files, and
// follows links to find every page.
//
//	tab := browser.Start(t, browser.Phone)
//	tab.Open(address)
//	tab.Do(chromedp.Click(chromedp.CSS("#save")))
//	for _, v := range tab.Axe() { t.Error(v) }
//
// The tools come from outside the module. Where one is missing the test is
// skipped with a word, unless cmd/check runs it: then it fails.
//
// Nothing here waits by sleeping: chromedp waits for what it is asked for.
package browser
