package oven

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"benchproof/kitchen/measure/exact"
	"benchproof/kitchen/measure/scan"
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
		c := cursor{Cursor: scan.Cursor{Text: text, At: at}}
		if h, ok := c.heat(); ok {
			h.At, h.Text = at, text[at:c.At]
			if n := len(all); n > 0 && h.Scale == "" && at-all[n-1].At-len(all[n-1].Text) <= together {
				h.takeScale(all[n-1])
			}
			all = append(all, h)
			at = c.At
			continue
		}
		at += c.Token()
	}
	return all
}

// cursor adds the reading of heats to the cursor of package scan.
type cursor struct {
	scan.Cursor
	beside int // how many numbers before it wait for this one's scale
}

// heat reads one heat here.
func (c *cursor) heat() (Heat, bool) {
	start := *c
	switch r := c.Rune(); {
	case scan.IsDigit(byte(r)) && r < utf8.RuneSelf:
	case r == '-' || r == '−' || r == '–':
		if c.At > 0 && !endsOpen(c.Text[:c.At]) {
			return Heat{}, false
		}
	case unicode.IsLetter(r):
		if h, ok := c.gas(); ok {
			return h, true
		}
		*c = start
		if c.AcceptThenGap("minus") {
			return c.below(start)
		}
		oven := c.ovenWord()
		if oven == "" {
			return c.spelledHeat()
		}
		c.Space()
		if c.AcceptWord("oven") && c.Space() && (c.AcceptWord("to") || c.AcceptWord("at")) {
			c.Space()
		}
		c.AcceptRune(":")
		c.Space()
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
	if !c.AcceptPhrase("gas") && !(c.AcceptWord("gm") && scan.IsDigit(c.Byte(0))) {
		return Heat{}, false
	}
	c.Space()
	if c.AcceptWord("mark") || c.AcceptWord("no") || c.AcceptWord("number") || c.AcceptWord("regulo") {
		c.Accept(".")
		c.Space()
	}
	from, ok := c.mark()
	if !ok {
		return Heat{}, false
	}
	h := Heat{Degrees: exact.One(from), Scale: "gas"}
	before := *c
	if _, ok := c.RangeSign(false); ok {
		if to, ok := c.mark(); ok && to.Cmp(from) > 0 {
			h.Degrees.To = to
			return h, true
		}
	}
	*c = before
	return h, true
}

// mark reads a gas mark: ¼ to 10.
func (c *cursor) mark() (exact.Number, bool) {
	start := *c
	if f, ok := c.Fraction(); ok && f.Num < f.Den {
		return f.Number(), true
	}
	*c = start
	n, _, ok := c.Digits()
	if !ok {
		if q, ok := c.Spelled(); ok && q.Num <= 10*q.Den {
			return q.Number(), true
		}
		*c = start
		return exact.Number{}, false
	}
	if part, ok := c.Glyph(); ok {
		return exact.Whole(n).Add(part.Number()), n <= 10
	}
	return exact.Whole(n), n >= 1 && n <= 10
}

// ovenWord reads the words for an oven: "fan", "fan-forced", "convection",
// "conventional", "static". It gives "fan", "conventional", or "".
func (c *cursor) ovenWord() string {
	switch w := scan.Lower(c.Word()); w {
	case "fan":
		c.At += len(w)
		before := *c
		if c.Gap() {
			switch next := scan.Lower(c.Word()); next {
			case "forced", "assisted", "bake", "baked":
				c.At += len(next)
				return "fan"
			}
		}
		*c = before
		return "fan"
	case "convection":
		c.At += len(w)
		return "fan"
	case "conventional", "static":
		c.At += len(w)
		return "conventional"
	}
	for _, phrase := range []string{"top and bottom heat", "bottom and top heat", "no fan"} {
		if c.AcceptPhrase(phrase) {
			return "conventional"
		}
	}
	if c.AcceptPhrase("hot air") || c.AcceptPhrase("circulating air") {
		return "fan"
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
	h := Heat{Degrees: exact.One(from), Oven: oven}
	cups := maxCups
	before := scan.LastWord(strings.TrimRight(c.Text[:start.At], " \u00a0"))
	switch {
	case from.Sign() < 0 && before != "":
		cups = belowAll // "freeze at -18 C"
	case before == "to" || before == "at":
		cups = ten // "cool to 27 C"
	}
	marked, scale := c.degreeSign(from, cups)
	afterFirst := *c
	to, toMarked, toScale, ok := c.upper(from, scale, before == "between")
	if ok {
		h.Degrees.To, marked, h.Scale = to, marked || toMarked, toScale
	} else {
		*c, h.Scale = afterFirst, scale
	}
	if oven == "" {
		h.Oven = c.ovenAfter()
	}
	if c.isDifference(start.At) || marked && h.Scale == "" && c.isAngle(start.At) {
		return Heat{}, false
	}
	return h, c.vouched(&h, marked, start.At)
}

// degreeFigures reads the figures of a temperature, at most four digits and
// decimals, with their sign.
func (c *cursor) degreeFigures() (exact.Number, bool) {
	negative := c.AcceptRune("-−–") != 0
	n, count, ok := c.Digits()
	if !ok || count > 4 {
		return exact.Number{}, false
	}
	f := scan.Over(n, 1)
	if (c.Byte(0) == '.' || c.Byte(0) == ',') && scan.IsDigit(c.Byte(1)) {
		if f, ok = c.Decimals(f); !ok {
			return exact.Number{}, false
		}
	}
	if negative {
		f.Num = -f.Num
	}
	return f.Number(), true
}

// degreeSign reads the degree sign and the scale after a number n; scale is ""
// if it is not said. Up to cups, "n C" means cups.
func (c *cursor) degreeSign(n, cups exact.Number) (marked bool, scale string) {
	start := *c
	spaced := c.Space()
	if marked, scale = c.sign(spaced); scale != "" {
		return marked, scale
	}
	afterSign := *c
	if marked {
		c.Space()
	}
	switch w := c.Word(); scan.Lower(w) {
	case "celsius", "centigrade":
		c.At += len(w)
		return true, "C"
	case "fahrenheit":
		c.At += len(w)
		return true, "F"
	case "c", "f":
		if marked || n.Cmp(cups) > 0 && (!spaced || w == "C" || w == "F") {
			c.At += 1
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
	switch c.AcceptRune("℃℉°º˚") {
	case '℃':
		return true, "C"
	case '℉':
		return true, "F"
	case '°', 'º', '˚':
		return true, ""
	}
	before := *c
	if !spaced {
		c.Accept("-") // "in a 350-degree oven"
	}
	switch w := scan.Lower(c.Word()); w {
	case "degrees", "degree", "deg", "degs":
		c.At += len(w)
		c.Accept(".")
		return true, ""
	}
	*c = before
	switch w := scan.Lower(c.Word()); w {
	case "oc", "of":
		if w == "oc" || !spaced {
			c.At += len(w)
			return true, strings.ToUpper(w[1:])
		}
	}
	return false, ""
}

// upper reads the second end of a range of temperatures. scale is the first
// end's, "" if it follows the second. Two ends that each name an oven or fall
// are a pair, not a range. between tells that "and" may part the two.
func (c *cursor) upper(from exact.Number, scale string, between bool) (to exact.Number, marked bool, toScale string, ok bool) {
	before := *c
	if _, ok := c.RangeSign(between); !ok || scale != "" && strings.Contains(scan.Lower(c.Text[before.At:c.At]), "or") {
		return to, false, "", false
	}
	if to, ok = c.degreeFigures(); !ok || to.Cmp(from) <= 0 {
		return to, false, "", false
	}
	marked, toScale = c.degreeSign(to, maxCups)
	if scale != "" && toScale != scale {
		return to, false, "", false
	}
	if !marked && c.unitFollows() || c.Byte(0) == '%' {
		return to, false, "", false
	}
	return to, marked, toScale, true
}

// unitFollows tells whether a unit of another kind follows, so that the number
// is no heat: "180 g", "fan 20 minutes".
func (c cursor) unitFollows() bool {
	c.Space()
	return others[scan.Lower(c.Word())]
}

var others = func() map[string]bool {
	m := map[string]bool{}
	for w := range strings.FieldsSeq(`s sec secs second seconds min mins minute minutes h hr hrs hour hours day days
		g gram grams kg kilo kilos mg oz ounce ounces lb lbs pound pounds ml mls millilitres milliliters cl dl l litre
		litres liter liters tsp teaspoon teaspoons tbsp tablespoon tablespoons cup cups pint pints quart quarts cm mm
		in inch inches x`) {
		m[w] = true
	}
	return m
}()

// ovenAfter reads the oven after a temperature: "fan", "(fan)", "in a fan
// oven". A fan word before another temperature belongs to that one.
func (c *cursor) ovenAfter() string {
	start := *c
	c.Space()
	bracket := c.Accept("(")
	if !bracket && c.Accept(",") {
		c.Space()
	}
	for _, phrase := range []string{"in a", "in an", "for a", "for", "with", "on"} {
		if c.AcceptPhrase(phrase) {
			c.Space()
			break
		}
	}
	oven := c.ovenWord()
	if oven == "" {
		*c = start
		return ""
	}
	before := *c
	if !c.Gap() || !c.AcceptWord("oven") && !c.AcceptWord("ovens") && !c.AcceptWord("setting") {
		*c = before
	}
	ahead := *c
	ahead.Space()
	ahead.AcceptRune(":")
	ahead.Space()
	if n, _, ok := ahead.Digits(); ok && n >= 80 || bracket && !c.Accept(")") {
		*c = start
		return ""
	}
	return oven
}

// spelledHeat reads "three hundred and fifty degrees", "four degrees Celsius".
func (c *cursor) spelledHeat() (Heat, bool) {
	start := *c
	q, ok := c.Spelled()
	if !ok {
		return Heat{}, false
	}
	h := Heat{Degrees: exact.One(q.Number())}
	marked, scale := c.degreeSign(h.Degrees.From, maxCups)
	h.Scale = scale
	h.Oven = c.ovenAfter()
	if !marked || c.isDifference(start.At) || scale == "" && c.isAngle(start.At) {
		*c = start
		return Heat{}, false
	}
	return h, c.vouched(&h, marked, start.At)
}
