package browser

import (
	"fmt"

	"github.com/chromedp/chromedp"
)

// overflowScript finds how wide the document is, and the elements that reach
// past the window and are not inside something that scrolls or clips by itself.
const overflowScript = `(width => {
	const clipped = e => {
		for (let p = e.parentElement; p && p !== document.body; p = p.parentElement) {
			if (getComputedStyle(p).overflowX !== 'visible') return true;
		}
		return false;
	};
	const name = e => e.tagName.toLowerCase() + (e.id ? '#' + e.id : '') +
		[...e.classList].map(c => '.' + c).join('');
	const past = [...document.body.querySelectorAll('*')]
		.filter(e => e.getBoundingClientRect().right + scrollX > width + 1 && !clipped(e))
		.map(e => name(e) + ' reaches to ' + Math.ceil(e.getBoundingClientRect().right + scrollX) + ' px');
	return {wide: document.documentElement.scrollWidth, past: past.slice(0, 5)};
})(%d)`

// Overflow tells what is wider than the window, empty when the page fits. The
// first entry is about the document, at most five more name elements.
func (t *Tab) Overflow() []string {
	t.tb.Helper()
	type found struct {
		Wide int      `json:"wide"`
		Past []string `json:"past"`
	}
	f := Get(t, chromedp.Evaluate[found](fmt.Sprintf(overflowScript, t.window.Width)))
	if f.Wide <= t.window.Width {
		return nil
	}
	return append([]string{fmt.Sprintf("the document is %d px wide in a window of %d", f.Wide, t.window.Width)}, f.Past...)
}
