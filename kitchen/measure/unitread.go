package measure

import (
	"strings"
	"unicode"
)

// unitAfter reads the unit after a number, with the words that may stand
// between: sizes and manners, the system's name. Without a unit nothing is
// read. words tells that the number was written in words.
func (c *cursor) unitAfter(r *Reading, words bool) bool {
	start, note, approximate := *c, r.Note, r.Approximate
	glued := !c.gap()
	for range 3 {
		if !c.manner(r) {
			break
		}
	}
	system, named := c.systemWord()
	if named {
		for range 2 {
			if !c.manner(r) {
				break
			}
		}
	}
	atUnit := *c
	u, ok := c.unit(r, !glued)
	if ok && words && atUnit.word() != "" && len(atUnit.word()) == 1 {
		ok = false // "three c", "one l": nobody spells the number and not the unit
	}
	if !ok || u == Clove && c.endsLine() {
		*c, r.Note, r.Approximate = start, note, approximate
		return false
	}
	if named {
		r.System = system
	}
	r.Amount.Unit = u
	return true
}

// endsLine tells whether nothing but a bracket or a comma follows: "6 cloves"
// is the spice itself.
func (c cursor) endsLine() bool {
	c.space()
	return c.done() || strings.ContainsRune(",;(.\n\r", c.rune())
}

// systemWord reads a system's name before a unit, with the gap after it.
func (c *cursor) systemWord() (System, bool) {
	start := *c
	for _, phrase := range []string{"new zealand", "us customary", "us label", "us nutrition label"} {
		if c.acceptPhrase(phrase) && c.space() {
			s, _ := ParseSystem(phrase)
			return s, true
		}
		*c = start
	}
	w := c.word()
	if strings.HasPrefix(c.rest(), "U.S.") || strings.HasPrefix(c.rest(), "U.K.") {
		w = c.text[c.at : c.at+4]
	}
	if len(w) < 2 || w == "us" {
		return "", false
	}
	s, ok := systemWords[lower(w)]
	if !ok && len(w) == 4 && w[1] == '.' {
		s, ok = ParseSystem(w)
	}
	if !ok {
		return "", false
	}
	c.at += len(w)
	if !c.gap() {
		*c = start
		return "", false
	}
	return s, true
}

// notBefore are words after which a unit's word is part of a food's or a
// tool's name: "pound cake", "strip steak".
var notBefore = map[string]string{
	"pound": " cake cakes ", "strip": " steak steaks loin loins ", "stem": " ginger ", "sheet": " pan pans ",
	"stick": " blender ", "bottle": " gourd gourds ", "drop": " scone scones biscuit biscuits ", "tin": " foil ",
	"box": " grater ", "cup": " cake cakes ", "wedge": " salad ", "cube": " steak steaks ", "can": " opener ",
	"slice": " off ", "pinch": " off ",
}

// onlyBefore are unit words too common in prose to be read unless one of these
// follows; "" among them means the end, a comma, a bracket or a times sign.
var onlyBefore = map[string]string{
	"in":  " of piece pieces knob cube cubes length lengths square squares round thick long wide tall deep diameter tin pan cake springform loaf tart pie skillet strips strip slice slices chunks chunk x by across  ",
	"ins": " piece pieces  ",
	"go":  " of rice sushi white brown short japanese mochi glutinous sake  ",
	"rib": " celery of  ", "ribs": " celery of  ",
}

// unit reads a unit. apart tells that something stood between the number and
// it; r.Amount's number settles whether "C" can be a cup.
func (c *cursor) unit(r *Reading, apart bool) (Unit, bool) {
	if u, ok := c.unitSign(apart); ok {
		return u, true
	}
	start := *c
	w := c.word()
	if w == "" {
		return "", false
	}
	if u, ok := c.unitPhrase(lower(w)); ok {
		return u, true
	}
	meaning, ok := lookUpUnit(w)
	if !ok || meaning.unit == Each && w == "ea" && !apart {
		return "", false
	}
	c.at += len(w)
	switch {
	case len(w) == 1 && (w == "C" || w == "c") && r.Amount.To.Cmp(maxCups) > 0,
		c.rune() == '-' && unicode.IsLetter(firstOf(c.rest()[1:])),
		!c.fits(lower(w), apart):
		*c = start
		return "", false
	}
	if meaning.short {
		c.accept(".")
	}
	return meaning.unit, true
}

// maxCups is the most that "30 C" can mean cups: above, it is a temperature.
var maxCups = Whole(30)

func lookUpUnit(w string) (unitWord, bool) {
	switch w {
	case "T", "Ts", "Tb", "Tbs":
		return unitWord{Tablespoon, true}, true
	case "t":
		return unitWord{Teaspoon, true}, true
	}
	m, ok := unitWords[lower(w)]
	return m, ok
}

// unitSign reads inch marks and "#", which stand right after the number.
func (c *cursor) unitSign(apart bool) (Unit, bool) {
	if apart {
		return "", false
	}
	switch c.acceptRune("\"″”#") {
	case 0:
		return "", false
	case '#':
		return Pound, true
	}
	return Inch, true
}

// unitPhrase reads units of two words.
func (c *cursor) unitPhrase(w string) (Unit, bool) {
	start := *c
	switch w {
	case "fl", "fluid":
		c.at += len(w)
		c.accept(".")
		c.gap()
		switch second := lower(c.word()); second {
		case "oz", "ozs", "ounce", "ounces":
			c.at += len(second)
			c.accept(".")
			return FluidOunce, true
		}
	case "tea", "table", "dessert":
		c.at += len(w)
		if c.gap() {
			second := lower(c.word())
			if second == "spoon" || second == "spoons" || second == "spoonful" || second == "spoonfuls" {
				c.at += len(second)
				return map[string]Unit{"tea": Teaspoon, "table": Tablespoon, "dessert": Dessertspn}[w], true
			}
		}
	case "rice":
		if c.acceptPhrase("rice cooker cup") || c.acceptPhrase("rice cooker cups") {
			return Go, true
		}
	}
	*c = start
	return "", false
}

// fits tells whether the word after a unit lets it be one.
func (c cursor) fits(w string, apart bool) bool {
	bad, maybe := notBefore[w]
	good, only := onlyBefore[w]
	if !maybe && !only || only && !apart || only && c.byte(0) == '.' {
		return true
	}
	c.gap()
	follows := lower(c.word())
	if only && follows == "" {
		return c.done() || strings.ContainsRune(",;()/×", c.rune())
	}
	if only {
		return strings.Contains(good, " "+follows+" ")
	}
	return follows == "" || !strings.Contains(bad, " "+follows+" ")
}
