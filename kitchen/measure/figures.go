package measure

import "unicode/utf8"

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

// figures is a number in digits as read, with what a later look at its unit
// may change.
type figures struct {
	num, den int64
	grouped  int64 // digits after a comma that was taken to group thousands, 0 if none
	partAt   int   // where the fraction of "2 1/4" begins, 0 unless a space is before it
}

func over(num, den int64) figures { return figures{num: num, den: den} }

func (f figures) number() Number { return Ratio(f.num, f.den) }

// maxDigits keeps every number and its sums within an int64.
const maxDigits = 9

// digits reads a run of decimal digits, at most maxDigits.
func (c *cursor) digits() (n int64, count int, ok bool) {
	for c.at+count < len(c.text) && isDigit(c.byte(count)) {
		if count == maxDigits {
			return 0, 0, false
		}
		n = n*10 + int64(c.byte(count)-'0')
		count++
	}
	c.at += count
	return n, count, count > 0
}

func isDigit(b byte) bool { return b >= '0' && b <= '9' }

// figures reads a number written in digits: whole, decimal, fraction, mixed.
func (c *cursor) figures() (figures, bool) {
	start := *c
	if f, ok := c.fraction(); ok {
		return f, true
	}
	n, count, ok := c.digits()
	if !ok {
		if c.byte(0) == '.' && isDigit(c.byte(1)) {
			return c.decimals(over(0, 1))
		}
		*c = start
		return figures{}, false
	}
	f := over(n, 1)
	if sep := c.byte(0); (sep == '.' || sep == ',') && isDigit(c.byte(1)) {
		if sep == ',' && count <= 3 && n > 0 && c.groups(&f) {
			return f, true
		}
		return c.decimals(f)
	}
	if c.thinGroup(&f) {
		return f, true
	}
	return c.mixed(f)
}

// groups reads ",000" groups: a comma with exactly three digits after it parts
// thousands, any other comma is a decimal one.
func (c *cursor) groups(f *figures) bool {
	start, total, groups := *c, f.num, 0
	for c.byte(0) == ',' && isDigit(c.byte(1)) {
		c.at++
		n, count, ok := c.digits()
		if !ok || count != 3 || groups == 2 {
			*c = start
			return false
		}
		total = total*1000 + n
		f.grouped = n
		groups++
	}
	f.num = total
	if groups > 1 {
		f.grouped = 0
	}
	if c.byte(0) == '.' && isDigit(c.byte(1)) {
		g, ok := c.decimals(*f)
		*f = over(g.num, g.den)
		return ok
	}
	return true
}

// thinGroup reads "1 000": a space and three noughts, or a thin or narrow space
// and any three digits.
func (c *cursor) thinGroup(f *figures) bool {
	start := *c
	r := c.rune()
	if r != ' ' && r != '\u00a0' && r != '\u2009' && r != '\u202f' {
		return false
	}
	c.at += utf8.RuneLen(r)
	n, count, ok := c.digits()
	if !ok || count != 3 || f.num == 0 || f.num > 999 || n != 0 && r != '\u2009' && r != '\u202f' {
		*c = start
		return false
	}
	f.num = f.num*1000 + n
	return true
}

// decimals reads ".25" or ",25" after the whole part f.
func (c *cursor) decimals(f figures) (figures, bool) {
	start := *c
	c.at++
	n, count, ok := c.digits()
	if !ok {
		*c = start
		return f, f.num > 0
	}
	for range count {
		f.num *= 10
		f.den *= 10
	}
	f.num += n * (f.den / pow10(count))
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
func (c *cursor) mixed(f figures) (figures, bool) {
	start := *c
	if f.num > maxMixed {
		return f, true
	}
	spaced := c.space()
	if !spaced && c.acceptRune("-‐‑–") != 0 {
		c.space()
	}
	if c.accept("&") || c.accept("+") {
		c.space()
	}
	at := c.at
	part, ok := c.fraction()
	if ok && part.num < part.den && part.num > 0 {
		mixed := over(f.num*part.den+part.num, part.den)
		if spaced {
			mixed.partAt = at
		}
		return mixed, true
	}
	*c = start
	return f, true
}

// maxMixed is the largest whole part that is read with a fraction.
const maxMixed = 9_999_999

// fraction reads a fraction alone: "½", "1/2", "1⁄2", "⅟16", "¹⁄₂". A bottom of
// 0 or above 100 is none.
func (c *cursor) fraction() (figures, bool) {
	start := *c
	if v, ok := vulgar[c.rune()]; ok && c.rune() >= utf8.RuneSelf {
		c.at += utf8.RuneLen(c.rune())
		return over(v[0], v[1]), true
	}
	num, ok := int64(1), c.accept("⅟")
	if !ok {
		if num, ok = c.raised(superscripts); !ok {
			num, _, ok = c.digits()
		}
		ok = ok && c.acceptRune(slashes) != 0
	}
	if ok {
		den, below := c.raised(subscripts)
		if !below {
			den, _, below = c.digits()
		}
		if below && den > 0 && den <= 100 && num <= 1000 {
			c.ordinal()
			return over(num, den), true
		}
	}
	*c = start
	return figures{}, false
}

// ordinal skips the ending of "1/3rd", "2/3rds", "1/4th".
func (c *cursor) ordinal() {
	switch w := lower(c.word()); w {
	case "rd", "rds", "th", "ths":
		c.at += len(w)
	}
}

// raised reads a run of superscript or subscript digits.
func (c *cursor) raised(set string) (n int64, ok bool) {
	for count := 0; count < 3; count++ {
		d := raisedDigit(set, c.rune())
		if d < 0 {
			return n, count > 0
		}
		n = n*10 + d
		c.at += utf8.RuneLen(c.rune())
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
