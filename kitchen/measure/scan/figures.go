package scan

import (
	"unicode/utf8"

	"benchproof/kitchen/measure/exact"
)

// vulgar are the fractions that Unicode has as one character. Source: Unicode
// Character Database, Latin-1 and Number Forms.
var vulgar = map[rune][2]int64{
	'¼': {1, 4}, '½': {1, 2}, '¾': {3, 4}, '⅐': {1, 7}, '⅑': {1, 9}, '⅒': {1, 10},
	'⅓': {1, 3}, '⅔': {2, 3}, '⅕': {1, 5}, '⅖': {2, 5}, '⅗': {3, 5}, '⅘': {4, 5},
	'⅙': {1, 6}, '⅚': {5, 6}, '⅛': {1, 8}, '⅜': {3, 8}, '⅝': {5, 8}, '⅞': {7, 8}, '↉': {0, 3},
}

const (
	superscripts = "⁰¹²³⁴⁵⁶⁷⁸⁹"
	subscripts   = "₀₁₂₃₄₅₆₇₈₉"
	slashes      = "/⁄∕"
)

// Figures is a number in digits as read, with what a later look at its unit
// may change.
type Figures struct {
	Num, Den int64 // Den is above 0; not always in lowest terms
	Grouped  int64 // digits after a comma that was taken to group thousands, 0 if none
	PartAt   int   // where the fraction of "2 1/4" begins, 0 unless a space is before it
}

// Over makes num/den; den is not 0.
func Over(num, den int64) Figures { return Figures{Num: num, Den: den} }

// Number gives the number read.
func (f Figures) Number() exact.Number { return exact.Ratio(f.Num, f.Den) }

// maxDigits keeps every number and its sums within an int64.
const maxDigits = 9

// Digits reads a run of decimal digits, at most maxDigits.
func (c *Cursor) Digits() (n int64, count int, ok bool) {
	for c.At+count < len(c.Text) && IsDigit(c.Byte(count)) {
		if count == maxDigits {
			return 0, 0, false
		}
		n = n*10 + int64(c.Byte(count)-'0')
		count++
	}
	c.At += count
	return n, count, count > 0
}

// IsDigit tells whether b is a decimal digit.
func IsDigit(b byte) bool { return b >= '0' && b <= '9' }

// Figures reads a number written in digits: whole, decimal, fraction, mixed.
func (c *Cursor) Figures() (Figures, bool) {
	start := *c
	if f, ok := c.Fraction(); ok {
		return f, true
	}
	n, count, ok := c.Digits()
	if !ok {
		if c.Byte(0) == '.' && IsDigit(c.Byte(1)) {
			return c.Decimals(Over(0, 1))
		}
		*c = start
		return Figures{}, false
	}
	f := Over(n, 1)
	if sep := c.Byte(0); (sep == '.' || sep == ',') && IsDigit(c.Byte(1)) {
		if sep == ',' && count <= 3 && n > 0 && c.groups(&f) {
			return f, true
		}
		return c.Decimals(f)
	}
	if c.thinGroup(&f) || c.Byte(0) == '\'' && c.quoteGroup(&f) {
		return f, true
	}
	return c.mixed(f)
}

// groups reads ",000" groups: a comma with exactly three digits after it parts
// thousands, any other comma is a decimal one.
func (c *Cursor) groups(f *Figures) bool {
	start, total, groups := *c, f.Num, 0
	for c.Byte(0) == ',' && IsDigit(c.Byte(1)) {
		c.At++
		n, count, ok := c.Digits()
		if !ok || count != 3 || groups == 2 {
			*c = start
			return false
		}
		total = total*1000 + n
		f.Grouped = n
		groups++
	}
	f.Num = total
	if groups > 1 {
		f.Grouped = 0
	}
	if c.Byte(0) == '.' && IsDigit(c.Byte(1)) {
		g, ok := c.Decimals(*f)
		*f = Over(g.Num, g.Den)
		return ok
	}
	return true
}

// thinGroup reads "1 000": a space and three noughts, or a thin or narrow space
// and any three digits.
func (c *Cursor) thinGroup(f *Figures) bool {
	start := *c
	r := c.Rune()
	if r != ' ' && r != '\u00a0' && r != '\u2009' && r != '\u202f' {
		return false
	}
	c.At += utf8.RuneLen(r)
	n, count, ok := c.Digits()
	if !ok || count != 3 || f.Num == 0 || f.Num > 999 || n != 0 && r != '\u2009' && r != '\u202f' {
		*c = start
		return false
	}
	f.Num = f.Num*1000 + n
	return true
}

// quoteGroup reads the "'000" of "1'000", as Swiss recipes write it.
func (c *Cursor) quoteGroup(f *Figures) bool {
	start := *c
	c.At++
	n, count, ok := c.Digits()
	if !ok || count != 3 || f.Num == 0 || f.Num > 999 {
		*c = start
		return false
	}
	f.Num = f.Num*1000 + n
	return true
}

// Decimals reads ".25" or ",25" after the whole part f.
func (c *Cursor) Decimals(f Figures) (Figures, bool) {
	start := *c
	c.At++
	n, count, ok := c.Digits()
	if !ok {
		*c = start
		return f, f.Num > 0
	}
	for range count {
		f.Num *= 10
		f.Den *= 10
	}
	f.Num += n * (f.Den / pow10(count))
	return f, true
}

func pow10(n int) int64 {
	p := int64(1)
	for range n {
		p *= 10
	}
	return p
}

// mixed reads the fraction of "1½", "1 1/2", "1-1/2", "1 & ½" after the whole
// part f, or the rest of "3/4"; without one it gives f.
func (c *Cursor) mixed(f Figures) (Figures, bool) {
	start := *c
	if f.Num > maxMixed {
		return f, true
	}
	spaced := c.Space()
	if !spaced && c.AcceptRune("-‐‑–") != 0 {
		c.Space()
	}
	if c.Accept("&") || c.Accept("+") {
		c.Space()
	}
	at := c.At
	part, ok := c.Fraction()
	if ok && part.Num < part.Den && part.Num > 0 {
		mixed := Over(f.Num*part.Den+part.Num, part.Den)
		if spaced {
			mixed.PartAt = at
		}
		return mixed, true
	}
	*c = start
	return f, true
}

// maxMixed is the largest whole part that is read with a fraction.
const maxMixed = 9_999_999

// Fraction reads a fraction alone: "½", "1/2", "1⁄2", "⅟16", "¹⁄₂". A bottom of
// 0 or above 100 is none.
func (c *Cursor) Fraction() (Figures, bool) {
	start := *c
	if f, ok := c.Glyph(); ok {
		return f, true
	}
	num, ok := int64(1), c.Accept("⅟")
	if !ok {
		if num, ok = c.raised(superscripts); !ok {
			num, _, ok = c.Digits()
		}
		ok = ok && c.AcceptRune(slashes) != 0
	}
	if ok {
		den, below := c.raised(subscripts)
		if !below {
			den, _, below = c.Digits()
		}
		if below && den > 0 && den <= 100 && num <= 1000 {
			c.ordinal()
			return Over(num, den), true
		}
	}
	*c = start
	return Figures{}, false
}

// Glyph reads a fraction of one character: "½".
func (c *Cursor) Glyph() (Figures, bool) {
	r := c.Rune()
	if r < utf8.RuneSelf {
		return Figures{}, false
	}
	v, ok := vulgar[r]
	if !ok {
		return Figures{}, false
	}
	c.At += utf8.RuneLen(r)
	return Over(v[0], v[1]), true
}

// ordinal skips the ending of "1/3rd", "2/3rds", "1/4th".
func (c *Cursor) ordinal() {
	switch w := Lower(c.Word()); w {
	case "rd", "rds", "th", "ths":
		c.At += len(w)
	}
}

// raised reads a run of superscript or subscript digits.
func (c *Cursor) raised(set string) (n int64, ok bool) {
	for count := 0; count < 3; count++ {
		d := raisedDigit(set, c.Rune())
		if d < 0 {
			return n, count > 0
		}
		n = n*10 + d
		c.At += utf8.RuneLen(c.Rune())
	}
	return n, true
}

func raisedDigit(set string, r rune) int64 {
	if r < utf8.RuneSelf {
		return -1
	}
	d := int64(0)
	for _, s := range set {
		if s == r {
			return d
		}
		d++
	}
	return -1
}
