package measure

import (
	"strings"
)

// Reading is an amount as somebody wrote it, with what the words around it say.
type Reading struct {
	// Amount is what was read. Its numbers are 0 where the words name no
	// number ("a few sprigs", "some"): HasAmount tells.
	Amount      Amount
	System      System // the amount's own: "2 Australian tablespoons"; "" if not said
	Approximate bool   // "about", "~", "a generous", "heaped", "or so"
	Note        string // how it is measured, as written: "heaped", "firmly packed", "large"
	Text        string // the amount as written, without the food
}

// HasAmount tells whether a number stands in the reading. Without one the unit
// may still be known: "a few sprigs".
func (r Reading) HasAmount() bool { return !r.Amount.IsZero() }

// ReadAmount reads an amount at the start of text: a number or a range ("2–3",
// "6 to 8", "between 2 and 3", "200 g–250 g"), then a unit if one follows, else
// the unit is Each ("1 large egg" leaves "large egg"). It also reads "a pinch",
// "a knob of", "handful of", "a few sprigs", the words that say how ("heaped",
// "scant", "firmly packed") or how nearly ("about", "~", "or so"), and whose
// measure ("2 Australian tablespoons", "1 US cup", "1 cup (US)"). "1 lb 4 oz"
// is 20 oz, "a dozen" is 12, "1,250 kg" is 1¼ kg: see ReadNumber for commas.
//
// rest is what follows, without "of" and spaces; it always ends text. What is
// read elsewhere is left in rest ("x 400 g", "(14 oz) can", "plus 1 tbsp") or
// makes ok false: temperatures, times, percentages, ordinals, ratios, list
// numbers, parts of something named ("half the dough"). Where ok is false rest
// is text.
func ReadAmount(text string) (r Reading, rest string, ok bool) {
	c := newCursor(text, 0)
	c.Space()
	start := c.At
	if !c.reading(&r) {
		return Reading{}, text, false
	}
	r.Text = strings.TrimRight(text[start:c.At], " \t\u00a0\u2009\u202f-–—‒−‐‑") // a dash parts "1-14 oz can"
	c.Space()
	if after := c; after.AcceptWord("of") && after.Space() {
		c = after
	}
	return r, c.Rest(), true
}
