package measure

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// Heats finds the temperatures and oven settings in text, in order: "180°C/160°C
// fan/350°F/gas 4", "180C (160C fan)", "fan 160", "gas mark 4", "350-375 °F",
// "350 degrees", "−18 °C", "until 82 °C inside", "three hundred and fifty
// degrees". A number without a degree sign is read beside one that has its
// scale ("200/180 fan") and after "to" or "at" where the sentence speaks of an
// oven ("preheat the oven to 350").
//
// Where no scale is said, 280 and more are °F, and an oven's setting of at most
// 190 is °C: no home oven works otherwise. Anything else keeps an empty Scale.
// Differences ("lower by 20 °C", "20 °C cooler") and angles ("turn it 90
// degrees") are no heats.
func Heats(text string) []Heat {
	var all []Heat
	for at := 0; at < len(text); {
		c := cursor{text, at}
		if h, ok := c.heat(); ok {
			h.At, h.Text = at, text[at:c.at]
			all = append(all, h)
			at = c.at
			continue
		}
		at += c.token()
	}
	return all
}

// token gives the length of the word, number or rune that stands here.
func (c cursor) token() int {
	if w := c.word(); w != "" {
		return len(w)
	}
	n := 0
	for isDigit(c.byte(n)) || n > 0 && (c.byte(n) == '.' || c.byte(n) == ',') && isDigit(c.byte(n+1)) {
		n++
	}
	if n > 0 {
		return n
	}
	_, size := utf8.DecodeRuneInString(c.rest())
	return max(size, 1)
}

// heat reads one heat here.
func (c *cursor) heat() (Heat, bool) {
	start := *c
	switch r := c.rune(); {
	case isDigit(byte(r)) && r < utf8.RuneSelf:
	case r == '-' || r == '−' || r == '–':
		if c.at > 0 && !endsOpen(c.text[:c.at]) {
			return Heat{}, false
		}
	case unicode.IsLetter(r):
		if h, ok := c.gas(); ok {
			return h, true
		}
		*c = start
		oven := c.ovenWord()
		if oven == "" {
			return c.spelledHeat()
		}
		c.space()
		if c.acceptWord("oven") && c.space() && (c.acceptWord("to") || c.acceptWord("at")) {
			c.space()
		}
		c.acceptRune(":")
		c.space()
		if h, ok := c.degrees(oven); ok {
			return h, true
		}
		*c = start
		return Heat{}, false
	default:
		return Heat{}, false
	}
	h, ok := c.degrees("")
	if !ok {
		*c = start
	}
	return h, ok
}

// endsOpen tells whether a sign may follow text: it ends in space or a bracket.
func endsOpen(text string) bool {
	r, _ := utf8.DecodeLastRuneInString(text)
	return unicode.IsSpace(r) || r == '('
}

// gas reads "gas mark 4", "gas 4–5", "gas mark ½", "GM4".
func (c *cursor) gas() (Heat, bool) {
	if !c.acceptPhrase("gas") && !(c.acceptWord("gm") && isDigit(c.byte(0))) {
		return Heat{}, false
	}
	c.space()
	if c.acceptWord("mark") || c.acceptWord("no") || c.acceptWord("number") || c.acceptWord("regulo") {
		c.accept(".")
		c.space()
	}
	from, ok := c.mark()
	if !ok {
		return Heat{}, false
	}
	h := Heat{Degrees: One(from), Scale: "gas"}
	before := *c
	if _, ok := c.rangeSign(false); ok {
		if to, ok := c.mark(); ok && to.Cmp(from) > 0 {
			h.Degrees.To = to
			return h, true
		}
	}
	*c = before
	return h, true
}

// mark reads a gas mark: ¼ to 10.
func (c *cursor) mark() (Number, bool) {
	start := *c
	if f, ok := c.fraction(); ok && f.num < f.den {
		return f.number(), true
	}
	*c = start
	n, _, ok := c.digits()
	if !ok {
		if q, ok := c.spelled(); ok && q.num <= 10*q.den {
			return q.number(), true
		}
		*c = start
		return Number{}, false
	}
	if v, ok := vulgar[c.rune()]; ok {
		c.at += utf8.RuneLen(c.rune())
		return Ratio(n*v[1]+v[0], v[1]), n <= 10
	}
	return Whole(n), n >= 1 && n <= 10
}

// ovenWord reads the words for an oven: "fan", "fan-forced", "convection",
// "conventional", "static". It gives "fan", "conventional", or "".
func (c *cursor) ovenWord() string {
	switch w := lower(c.word()); w {
	case "fan":
		c.at += len(w)
		before := *c
		if c.gap() {
			switch next := lower(c.word()); next {
			case "forced", "assisted", "bake", "baked":
				c.at += len(next)
				return "fan"
			}
		}
		*c = before
		return "fan"
	case "convection":
		c.at += len(w)
		return "fan"
	case "conventional", "static":
		c.at += len(w)
		return "conventional"
	}
	for _, phrase := range []string{"top and bottom heat", "bottom and top heat", "no fan"} {
		if c.acceptPhrase(phrase) {
			return "conventional"
		}
	}
	return ""
}

// degrees reads a number or range with its degree sign, scale and oven. oven
// is what was said before it.
func (c *cursor) degrees(oven string) (Heat, bool) {
	start := *c
	from, ok := c.degreeFigures()
	if !ok {
		return Heat{}, false
	}
	h := Heat{Degrees: One(from), Oven: oven}
	cups := maxCups
	switch lastWord(strings.TrimRight(c.text[:start.at], " \u00a0")) {
	case "to", "at":
		cups = ten // "cool to 27 C"
	}
	marked, scale := c.degreeSign(from, cups)
	afterFirst := *c
	to, toMarked, toScale, ok := c.upper(from, scale)
	if ok {
		h.Degrees.To, marked, h.Scale = to, marked || toMarked, toScale
	} else {
		*c, h.Scale = afterFirst, scale
	}
	if oven == "" {
		h.Oven = c.ovenAfter()
	}
	if c.isDifference(start.at) || c.isAngle(start.at) && h.Scale == "" {
		return Heat{}, false
	}
	return h, c.vouched(&h, marked, start.at)
}

// degreeFigures reads the figures of a temperature, at most four digits and
// decimals, with their sign.
func (c *cursor) degreeFigures() (Number, bool) {
	negative := c.acceptRune("-−–") != 0
	n, count, ok := c.digits()
	if !ok || count > 4 {
		return Number{}, false
	}
	f := over(n, 1)
	if (c.byte(0) == '.' || c.byte(0) == ',') && isDigit(c.byte(1)) {
		if f, ok = c.decimals(f); !ok {
			return Number{}, false
		}
	}
	if negative {
		f.num = -f.num
	}
	return f.number(), true
}

// degreeSign reads the degree sign and the scale after a number n; scale is ""
// if it is not said. Up to cups, "n C" means cups.
func (c *cursor) degreeSign(n, cups Number) (marked bool, scale string) {
	start := *c
	spaced := c.space()
	if marked, scale = c.sign(spaced); scale != "" {
		return marked, scale
	}
	afterSign := *c
	if marked {
		c.space()
	}
	switch w := c.word(); lower(w) {
	case "celsius", "centigrade":
		c.at += len(w)
		return true, "C"
	case "fahrenheit":
		c.at += len(w)
		return true, "F"
	case "c", "f":
		if marked || n.Cmp(cups) > 0 && (!spaced || w == "C" || w == "F") {
			c.at += 1
			return true, strings.ToUpper(w)
		}
	}
	*c = afterSign
	if !marked {
		*c = start
	}
	return marked, ""
}

// sign reads "°", "degrees", "℃", "oC".
func (c *cursor) sign(spaced bool) (marked bool, scale string) {
	switch c.acceptRune("℃℉°º˚") {
	case '℃':
		return true, "C"
	case '℉':
		return true, "F"
	case '°', 'º', '˚':
		return true, ""
	}
	switch w := lower(c.word()); w {
	case "degrees", "degree", "deg", "degs":
		c.at += len(w)
		c.accept(".")
		return true, ""
	case "oc", "of":
		if w == "oc" || !spaced {
			c.at += len(w)
			return true, strings.ToUpper(w[1:])
		}
	}
	return false, ""
}

// upper reads the second end of a range of temperatures. scale is the first
// end's, "" if it follows the second. Two ends that each name an oven or fall
// are a pair, not a range.
func (c *cursor) upper(from Number, scale string) (to Number, marked bool, toScale string, ok bool) {
	before := *c
	if _, ok := c.rangeSign(false); !ok || scale != "" && strings.Contains(lower(c.text[before.at:c.at]), "or") {
		return to, false, "", false
	}
	if to, ok = c.degreeFigures(); !ok || to.Cmp(from) <= 0 {
		return to, false, "", false
	}
	marked, toScale = c.degreeSign(to, maxCups)
	if scale != "" && toScale != scale {
		return to, false, "", false
	}
	if !marked && c.timeFollows() || c.byte(0) == '%' {
		return to, false, "", false
	}
	return to, marked, toScale, true
}

func (c cursor) timeFollows() bool {
	c.space()
	w, ok := lookUpUnit(c.word())
	return ok && w.unit != Each
}

// ovenAfter reads the oven after a temperature: "fan", "(fan)", "in a fan
// oven". A fan word before another temperature belongs to that one.
func (c *cursor) ovenAfter() string {
	start := *c
	c.space()
	bracket := c.accept("(")
	if !bracket && c.accept(",") {
		c.space()
	}
	for _, phrase := range []string{"in a", "in an", "for a", "for", "with", "on"} {
		if c.acceptPhrase(phrase) {
			c.space()
			break
		}
	}
	oven := c.ovenWord()
	if oven == "" {
		*c = start
		return ""
	}
	before := *c
	if !c.gap() || !c.acceptWord("oven") && !c.acceptWord("ovens") && !c.acceptWord("setting") {
		*c = before
	}
	ahead := *c
	ahead.space()
	ahead.acceptRune(":")
	ahead.space()
	if n, _, ok := ahead.digits(); ok && n >= 80 || bracket && !c.accept(")") {
		*c = start
		return ""
	}
	return oven
}

// spelledHeat reads "three hundred and fifty degrees", "four degrees Celsius".
func (c *cursor) spelledHeat() (Heat, bool) {
	start := *c
	q, ok := c.spelled()
	if !ok {
		return Heat{}, false
	}
	h := Heat{Degrees: One(q.number())}
	marked, scale := c.degreeSign(h.Degrees.From, maxCups)
	h.Scale = scale
	h.Oven = c.ovenAfter()
	if !marked || c.isDifference(start.at) || scale == "" && c.isAngle(start.at) {
		*c = start
		return Heat{}, false
	}
	return h, c.vouched(&h, marked, start.at)
}
