package scan

import "benchproof/kitchen/measure/exact"

// dashes part the two ends of a range.
const dashes = "-–—‒−‐‑"

// Quantity is a number with what its words add to it.
type Quantity struct {
	Figures
	Couple bool // "a couple": nearly two
	Dozens bool // a number of dozens: "2 dozen"
	Words  bool // written in words
}

// Number reads a number at the start of text; rest is what follows, without
// spaces before it, or text where there is none. Package measure tells what it
// reads, as ReadNumber.
func Number(text string) (n exact.Number, rest string, ok bool) {
	c := Cursor{Text: text}
	c.Space()
	q, ok := c.Quantity()
	if !ok {
		return exact.Number{}, text, false
	}
	c.Space()
	return q.Number(), c.Rest(), true
}

// Quantity reads a number in Figures or words, "half a", dozens and couples.
func (c *Cursor) Quantity() (q Quantity, ok bool) {
	if q.Figures, ok = c.Figures(); ok {
		c.AndPart(&q.Figures)
	} else if q.Figures, ok = c.Spelled(); ok {
		q.Words = true
	} else {
		return c.gathered()
	}
	if q.Num < q.Den {
		c.skipArticle()
	}
	before := *c
	if c.Gap() && (c.AcceptWord("dozen") || c.AcceptWord("doz")) {
		q.Num *= 12
		q.Dozens = true
	} else {
		*c = before
	}
	return q, true
}

// gathered reads "a dozen", "dozen", "a couple".
func (c *Cursor) gathered() (Quantity, bool) {
	start := *c
	if c.AcceptWord("a") && !c.Gap() {
		*c = start
		return Quantity{}, false
	}
	switch {
	case c.AcceptWord("dozen"):
		return Quantity{Figures: Over(12, 1), Words: true}, true
	case c.At > start.At && c.AcceptWord("couple"):
		before := *c
		if !c.Gap() || !c.AcceptWord("of") {
			*c = before
		}
		return Quantity{Figures: Over(2, 1), Couple: true, Words: true}, true
	}
	*c = start
	return Quantity{}, false
}

// skipArticle skips " a", " an", " of a" after a fraction: "half a lemon",
// "a quarter of a cup".
func (c *Cursor) skipArticle() {
	start := *c
	if c.Gap() {
		if c.AcceptWord("of") && !c.Gap() {
			*c = start
			return
		}
		if (c.AcceptWord("a") || c.AcceptWord("an")) && c.At < len(c.Text) {
			return
		}
	}
	*c = start
}

// RangeSign skips what parts the ends of a range: a dash, "to", "or", after
// "between" also "and". The hyphens of "2- to 3-inch" and "8-to-10-ounce"
// belong to the word.
func (c *Cursor) RangeSign(between bool) (dash, ok bool) {
	spaced := c.Space()
	if c.AcceptRune(dashes) != 0 {
		c.Space()
		after := *c
		if (c.AcceptWord("to") || c.AcceptWord("or")) && c.Gap() {
			return false, true
		}
		*c = after
		return true, true
	}
	if !spaced {
		return false, false
	}
	if !c.AcceptWord("to") && !c.AcceptWord("or") && !(between && c.AcceptWord("and")) || !c.Space() {
		return false, false
	}
	c.AcceptThenGap("about")
	return false, true
}
