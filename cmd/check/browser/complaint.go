package browser

import (
	"slices"

	"github.com/chromedp/cdproto/log"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
)

// listen keeps what the browser complains about, from now on.
func (t *Tab) listen() {
	t.tb.Helper()
	err := chromedp.Listen(t.ctx, func(event any) {
		var say string
		switch e := event.(type) {
		case *runtime.EventExceptionThrown:
			say = "script: " + e.ExceptionDetails.Text
			if e.ExceptionDetails.Exception != nil {
				say += " " + e.ExceptionDetails.Exception.Description
			}
		case *log.EventEntryAdded:
			if e.Entry.Level != log.EntryLevelError && e.Entry.Source != log.EntrySourceSecurity {
				return
			}
			say = string(e.Entry.Source) + ": " + e.Entry.Text
			if e.Entry.URL != "" {
				say += " (" + e.Entry.URL + ")"
			}
		default:
			return
		}
		t.mu.Lock()
		defer t.mu.Unlock()
		t.complaints = append(t.complaints, say)
	})
	if err != nil {
		t.tb.Fatalf("listen to the browser: %v", err)
	}
}

// Complaints gives what the browser complained about since the last call:
// errors of scripts, files that did not come, and everything that the page's
// own Content-Security-Policy stopped. An answer of 4xx or 5xx is among them.
func (t *Tab) Complaints() []string {
	t.tb.Helper()
	// Events arrive in order with answers, so a round trip brings what is due.
	Get(t, chromedp.Evaluate[bool]("true"))
	t.mu.Lock()
	defer t.mu.Unlock()
	got := slices.Clone(t.complaints)
	t.complaints = nil
	return got
}
