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

// ReadNumber reads a number at the start of text as cooks write it: "1½",
// "1 1/2", "1-1/2", "1⁄2", ".5", "1.5", "one and a half", "three quarters",
// "two hundred and fifty", "half a", "a dozen", "a couple of". rest is what
// follows, without spaces before it; it always ends text.
//
// A comma with exactly three digits after it parts thousands ("1,000"); any
// other comma, and any after a single 0, is a decimal one ("1,5", "0,250"). A
// full stop is always decimal. A number has at most nine digits.
func ReadNumber(text string) (n Number, rest string, ok bool) {
	c := cursor{text: text}
	c.space()
	q, ok := c.quantity()
	if !ok {
		return Number{}, text, false
	}
	c.space()
	return q.number(), c.rest(), true
}

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
	c := cursor{text: text}
	c.space()
	start := c.at
	if !c.reading(&r) {
		return Reading{}, text, false
	}
	r.Text = strings.TrimRight(text[start:c.at], " \t\u00a0\u2009\u202f")
	c.space()
	if after := c; after.acceptWord("of") && after.space() {
		c = after
	}
	return r, c.rest(), true
}

// quantity is a number with what its words add to it.
type quantity struct {
	figures
	couple bool // "a couple": nearly two
	words  bool // written in words
}

// quantity reads a number in figures or words, "half a", dozens and couples.
func (c *cursor) quantity() (q quantity, ok bool) {
	if q.figures, ok = c.figures(); ok {
		c.andPart(&q.figures)
	} else if q.figures, ok = c.spelled(); ok {
		q.words = true
	} else {
		return c.gathered()
	}
	if q.num < q.den {
		c.skipArticle()
	}
	before := *c
	if c.gap() && (c.acceptWord("dozen") || c.acceptWord("doz")) {
		q.num *= 12
	} else {
		*c = before
	}
	return q, true
}

// gathered reads "a dozen", "dozen", "a couple".
func (c *cursor) gathered() (quantity, bool) {
	start := *c
	if c.acceptWord("a") && !c.gap() {
		*c = start
		return quantity{}, false
	}
	switch {
	case c.acceptWord("dozen"):
		return quantity{figures: over(12, 1), words: true}, true
	case c.at > start.at && c.acceptWord("couple"):
		before := *c
		if !c.gap() || !c.acceptWord("of") {
			*c = before
		}
		return quantity{figures: over(2, 1), couple: true, words: true}, true
	}
	*c = start
	return quantity{}, false
}

// skipArticle skips " a", " an", " of a" after a fraction: "half a lemon",
// "a quarter of a cup".
func (c *cursor) skipArticle() {
	start := *c
	if c.gap() {
		if c.acceptWord("of") && !c.gap() {
			*c = start
			return
		}
		if (c.acceptWord("a") || c.acceptWord("an")) && c.at < len(c.text) {
			return
		}
	}
	*c = start
}
