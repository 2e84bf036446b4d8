package measure

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"benchproof/kitchen/measure/scan"
)

// unitAfter reads the unit after a number, with the words that may stand
// between: sizes and manners, the system's name. Without a unit nothing is
// read. words tells that the number was written in words.
func (c *cursor) unitAfter(r *Reading, words bool) bool {
	start, note, approximate := *c, r.Note, r.Approximate
	glued := !c.Gap()
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
	if ok && words && atUnit.Word() != "" && len(atUnit.Word()) == 1 {
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
	c.Space()
	return c.Done() || strings.ContainsRune(",;(.\n\r", c.Rune())
}

// systemWord reads a system's name before a unit, with the gap after it.
func (c *cursor) systemWord() (System, bool) {
	start := *c
	for _, phrase := range []string{"new zealand", "us customary", "us label", "us nutrition label"} {
		if c.AcceptPhrase(phrase) && c.Space() {
			s, _ := ParseSystem(phrase)
			return s, true
		}
		*c = start
	}
	w := c.Word()
	if strings.HasPrefix(c.Rest(), "U.S.") || strings.HasPrefix(c.Rest(), "U.K.") {
		w = c.Text[c.At : c.At+4]
	}
	if len(w) < 2 || w == "us" {
		return "", false
	}
	s, ok := systemWords[scan.Lower(w)]
	if !ok && len(w) == 4 && w[1] == '.' {
		s, ok = ParseSystem(w)
	}
	if !ok {
		return "", false
	}
	c.At += len(w)
	if !c.Gap() {
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
	w := c.Word()
	if w == "" {
		return "", false
	}
	if u, ok := c.unitPhrase(scan.Lower(w)); ok {
		return u, true
	}
	meaning, ok := lookUpUnit(w)
	if !ok || meaning.unit == Each && w == "ea" && !apart {
		return "", false
	}
	c.At += len(w)
	switch {
	case len(w) == 1 && (w == "C" || w == "c") && r.Amount.To.Cmp(maxCups) > 0,
		c.Byte(0) == '-' && isLetterAt(c.Rest()[1:]) && !c.isThick(meaning.unit),
		!c.fits(scan.Lower(w), apart):
		*c = start
		return "", false
	}
	if meaning.short {
		c.Accept(".")
	}
	if c.isThick(meaning.unit) {
		c.At++
	}
	return meaning.unit, true
}

// isThick tells whether the length u is that of one word with its direction:
// the inch of "1/2-inch-thick slices".
func (c cursor) isThick(u Unit) bool {
	if u.Kind() != Length || !c.Accept("-") {
		return false
	}
	switch scan.Lower(c.Word()) {
	case "thick", "long", "wide", "deep", "high", "square", "round", "piece", "pieces":
		return true
	}
	return false
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
	m, ok := unitWords[scan.Lower(w)]
	return m, ok
}

// unitSign reads inch marks and "#", which stand right after the number.
func (c *cursor) unitSign(apart bool) (Unit, bool) {
	if apart {
		return "", false
	}
	switch c.AcceptRune("\"″”#") {
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
		c.At += len(w)
		c.Accept(".")
		c.Gap()
		switch second := scan.Lower(c.Word()); second {
		case "oz", "ozs", "ounce", "ounces":
			c.At += len(second)
			c.Accept(".")
			return FluidOunce, true
		}
	case "tea", "table", "dessert":
		c.At += len(w)
		if c.Gap() {
			second := scan.Lower(c.Word())
			if second == "spoon" || second == "spoons" || second == "spoonful" || second == "spoonfuls" {
				c.At += len(second)
				return map[string]Unit{"tea": Teaspoon, "table": Tablespoon, "dessert": Dessertspn}[w], true
			}
		}
	case "rice":
		if c.AcceptPhrase("rice cooker cup") || c.AcceptPhrase("rice cooker cups") {
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
	if !maybe && !only || only && !apart || only && c.Byte(0) == '.' {
		return true
	}
	c.Gap()
	follows := scan.Lower(c.Word())
	if only && follows == "" {
		return c.Done() || strings.ContainsRune(",;()/×", c.Rune())
	}
	if only {
		return strings.Contains(good, " "+follows+" ")
	}
	return follows == "" || !strings.Contains(bad, " "+follows+" ")
}

// isLetterAt tells whether text begins with a letter.
func isLetterAt(text string) bool {
	r, _ := utf8.DecodeRuneInString(text)
	return unicode.IsLetter(r)
}
