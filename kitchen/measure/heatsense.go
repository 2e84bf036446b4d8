package measure

import "strings"

// vouched tells whether the number read is a heat at all, and settles a scale
// that is not said. c stands after it, at is where it began.
func (c *cursor) vouched(h *Heat, marked bool, at int) bool {
	n := h.Degrees.To
	if h.Scale != "" {
		return true
	}
	oven := h.Oven != "" || c.speaksOfOven(at)
	switch {
	case marked:
	case !isSetting(n):
		return false
	case h.Oven != "" && !c.timeFollows():
	case c.scaleBeside(h):
		return true
	case !oven || !c.stands(at):
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

// The limits that tell a scale that is not said: common practice, no source.
var (
	surelyF   = Whole(280)
	surelyC   = Whole(190)
	leastOven = Whole(80)
	mostOven  = Whole(550)
)

func isSetting(n Number) bool { return n.Cmp(leastOven) >= 0 && n.Cmp(mostOven) <= 0 && n.IsWhole() }

// scaleBeside takes the scale of a heat that follows after "/" or "(":
// "200/180 fan", "180 (160C fan)".
func (c cursor) scaleBeside(h *Heat) bool {
	c.space()
	if c.acceptRune("/(|") == 0 {
		return false
	}
	c.space()
	if !isDigit(c.byte(0)) && lower(c.word()) != "fan" {
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
	before := strings.TrimRight(c.text[:at], " \u00a0")
	switch lastWord(before) {
	case "to", "at", "oven":
	default:
		return false
	}
	c.space()
	if c.done() || strings.ContainsRune(".,;:)\n\r", c.rune()) {
		return !isDigit(c.byte(1))
	}
	switch lower(c.word()) {
	case "for", "until", "till", "and", "then", "or", "on", "in", "with", "while", "before", "once":
		return true
	}
	return false
}

func lastWord(text string) string {
	i := len(text)
	for i > 0 && (text[i-1]|0x20 >= 'a' && text[i-1]|0x20 <= 'z') {
		i--
	}
	return lower(text[i:])
}

// sentence gives the text before at in its sentence, at most 100 bytes, in
// lower case.
func (c cursor) sentence(at int) string {
	before := c.text[max(0, at-100):at]
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

// isAngle tells whether degrees are those of a turn.
func (c cursor) isAngle(at int) bool {
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
	if lastWord(strings.TrimRight(c.text[:at], " \u00a0")) == "by" {
		return true
	}
	c.gap()
	switch lower(c.word()) {
	case "less", "lower", "higher", "more", "cooler", "hotter", "below", "above", "apart", "difference", "warmer", "colder":
		return true
	}
	return false
}
