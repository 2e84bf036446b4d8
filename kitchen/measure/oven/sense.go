package oven

import (
	"strings"

	"benchproof/kitchen/measure/exact"
	"benchproof/kitchen/measure/scan"
)

// vouched tells whether the number read is a heat at all, and settles a scale
// that is not said. c stands after it, at is where it began.
func (c *cursor) vouched(h *Heat, marked bool, at int) bool {
	n := h.Degrees.To
	if h.Scale != "" {
		return true
	}
	if !marked && (!isSetting(n) || c.unitFollows()) {
		return false
	}
	if !marked && h.Oven == "" && c.scaleBeside(h) {
		return true
	}
	oven := h.Oven != "" || c.speaksOfOven(at)
	if !marked && h.Oven == "" && !(oven && c.stands(at)) {
		return false
	}
	switch {
	case n.Cmp(surelyF) >= 0:
		h.Scale = "F"
	case oven && n.Cmp(surelyC) <= 0 && n.Cmp(leastOven) >= 0:
		h.Scale = "C"
	}
	return true
}

// maxCups is the most that "30 C" can mean cups: above, it is a temperature.
var maxCups = exact.Whole(30)

// The limits that tell a scale that is not said: common practice, no source.
var (
	surelyF   = exact.Whole(280)
	surelyC   = exact.Whole(190)
	leastOven = exact.Whole(80)
	mostOven  = exact.Whole(550)
)

func isSetting(n exact.Number) bool {
	return n.Cmp(leastOven) >= 0 && n.Cmp(mostOven) <= 0 && n.IsWhole()
}

// mostBeside keeps a long row of bare numbers from being read again and again.
const mostBeside = 3

// scaleBeside takes the scale of a heat that follows after "/" or "(":
// "200/180 fan", "180 (160C fan)".
func (c cursor) scaleBeside(h *Heat) bool {
	c.Space()
	if c.AcceptRune("/(|") == 0 || c.beside == mostBeside {
		return false
	}
	c.beside++
	c.Space()
	if !scan.IsDigit(c.Byte(0)) && scan.Lower(c.Word()) != "fan" {
		return false
	}
	next, ok := c.heat()
	if !ok || next.Scale == "" || next.Scale == "gas" || !isSetting(next.Degrees.From) {
		return false
	}
	h.Scale = next.Scale
	return true
}

// stands tells whether a bare number after "to" or "at" stands for itself, not
// for an amount of what follows.
func (c cursor) stands(at int) bool {
	before := strings.TrimRight(c.Text[:at], " \u00a0")
	switch scan.LastWord(before) {
	case "to", "at", "oven":
	default:
		return false
	}
	c.Space()
	if c.Done() || strings.ContainsRune(".,;:)\n\r", c.Rune()) {
		return !scan.IsDigit(c.Byte(1))
	}
	switch scan.Lower(c.Word()) {
	case "for", "until", "till", "and", "then", "or", "on", "in", "with", "while", "before", "once":
		return true
	}
	return false
}

// sentence gives the text before at in its sentence, at most 100 bytes, in
// lower case.
func (c cursor) sentence(at int) string {
	before := c.Text[max(0, at-100):at]
	if i := strings.LastIndexAny(before, "\n\r!?"); i >= 0 {
		before = before[i+1:]
	}
	if i := strings.LastIndex(before, ". "); i >= 0 {
		before = before[i+2:]
	}
	return strings.ToLower(before)
}

func (c cursor) speaksOfOven(at int) bool {
	before := c.sentence(at)
	for _, w := range []string{"oven", "bake", "baking", "roast", "preheat", "pre-heat"} {
		if strings.Contains(before, w) {
			return true
		}
	}
	return false
}

// isAngle tells whether degrees are those of a turn: "turn it 90 degrees", "a
// 180-degree turn".
func (c cursor) isAngle(at int) bool {
	after := c
	after.Space()
	switch scan.Lower(after.Word()) {
	case "turn", "turns", "rotation", "rotations", "angle", "spin":
		return true
	}
	before := c.sentence(at)
	for _, w := range []string{"turn", "rotat", "angle", "tilt", "spin"} {
		if strings.Contains(before, w) {
			return true
		}
	}
	return false
}

// isDifference tells whether degrees are a difference: "by 20 °C", "20 °C less".
func (c cursor) isDifference(at int) bool {
	switch scan.LastWord(strings.TrimRight(c.Text[:at], " \u00a0")) {
	case "by", "minus", "plus":
		return true
	}
	c.Gap()
	switch scan.Lower(c.Word()) {
	case "less", "lower", "higher", "more", "cooler", "hotter", "below", "above", "apart", "difference", "warmer", "colder":
		return true
	}
	return false
}

// below reads the degrees after "minus", which began at start; "200 °C minus
// 20 °C" is a difference.
func (c *cursor) below(start cursor) (Heat, bool) {
	from, ok := c.degreeFigures()
	if before := strings.TrimRight(c.Text[:start.At], " \u00a0"); !ok || before != "" && endsHeat(before) {
		*c = start
		return Heat{}, false
	}
	h := Heat{Degrees: exact.One(from.Mul(exact.Whole(-1)))}
	if _, h.Scale = c.degreeSign(h.Degrees.From, belowAll); h.Scale == "" {
		*c = start
		return Heat{}, false
	}
	return h, true
}

// belowAll is below any temperature, where "n C" cannot mean cups.
var belowAll = exact.Whole(-1000)

// endsHeat tells whether text ends in a temperature: a digit, "°", "C" or "F".
func endsHeat(text string) bool {
	last := text[len(text)-1]
	return scan.IsDigit(last) || last == 'C' || last == 'F' || strings.HasSuffix(text, "°")
}

// takeScale gives h the scale of the heat before it, where one is a fan oven's
// and the other not: "180 °C fan/200 conventional".
func (h *Heat) takeScale(before Heat) {
	if before.Scale != "gas" && (h.Oven == "fan") != (before.Oven == "fan") {
		h.Scale = before.Scale
	}
}
