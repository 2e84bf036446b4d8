package browser

import (
	"fmt"
	"os"
	"strings"

	"github.com/chromedp/chromedp"

	"benchproof/cmd/check/tools"
)

// Violation is one rule of axe-core that the page breaks.
type Violation struct {
	Rule   string   `json:"rule"`   // axe's name of the rule: "color-contrast"
	Impact string   `json:"impact"` // minor, moderate, serious or critical
	Help   string   `json:"help"`   // what should be so, in axe's words
	Places []string `json:"places"` // the elements: selector, then what is wrong
}

// String gives the violation in a few lines for a test's message.
func (v Violation) String() string {
	return fmt.Sprintf("%s (%s): %s\n\t%s", v.Rule, v.Impact, v.Help, strings.Join(v.Places, "\n\t"))
}

// axeScript runs the rules tagged with WCAG 2.0 to 2.2, levels A and AA; axe's
// best practices are not among them.
const axeScript = `axe.run(document, {
	runOnly: {type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']},
	resultTypes: ['violations'],
}).then(r => r.violations.map(v => ({
	rule: v.id, impact: v.impact || '', help: v.help,
	places: v.nodes.map(n => n.target.flat().join(' ') + ' ' + (n.failureSummary || '').replace(/\s+/g, ' ')),
})))`

// Axe runs axe-core over the page as it stands and gives what it found against
// WCAG 2.2, levels A and AA; empty when nothing. What axe cannot decide by
// itself is not reported. The script goes in by the debugging protocol, past
// the page's Content-Security-Policy.
func (t *Tab) Axe() []Violation {
	t.tb.Helper()
	path := need(t.tb, "axe-core", tools.Axe)
	script, err := os.ReadFile(path)
	if err != nil {
		t.tb.Fatalf("%v", err)
	}
	Get(t, chromedp.Evaluate[bool](string(script)+"\n;true"))
	return Get(t, chromedp.Evaluate[[]Violation](axeScript, chromedp.EvalAwaitPromise))
}
