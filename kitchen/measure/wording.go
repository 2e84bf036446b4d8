package measure

import (
	"strings"

	"benchproof/kitchen/measure/scan"
)

// manners are the words that say how a measure is taken or which size of it;
// true where they make the amount less sure.
var manners = map[string]bool{
	"level": false, "flat": false, "leveled": false, "levelled": false, "exact": false, "full": false,
	"heaped": true, "heaping": true, "rounded": true, "scant": true, "generous": true, "good": true,
	"brimming": true, "overflowing": true, "piled": true, "mounded": true,
	"packed": false, "firmly": false, "lightly": false, "loosely": false, "tightly": false, "well": false, "slightly": false, "very": false,
	"large": false, "big": false, "medium": false, "small": false, "little": false, "tiny": false, "huge": false,
	"fat": false, "plump": false, "thick": false, "thin": false, "long": false, "short": false, "whole": false,
	"standard": false, "regular": false, "individual": false, "average": false, "decent": true, "hefty": true, "healthy": true,
	"sized": false, "extra": false,
}

// nearly are the words before an amount that make it approximate.
var nearly = map[string]bool{
	"about": true, "around": true, "approx": true, "approximately": true, "roughly": true, "circa": true,
	"ca": true, "nearly": true, "almost": true, "perhaps": true, "maybe": true,
}

// bounds are phrases before an amount that bound it; they are noted.
var bounds = []string{"up to", "at least", "at most", "no more than", "more than", "less than", "just under", "just over", "just about", "barely", "maximum", "max", "minimum", "min", "no less than", "not more than"}

// lead reads the words before the number into r. between is true after
// "between", article after "a" or "an" that belongs to the unit.
func (c *cursor) lead(r *Reading) (between, article bool) {
	for range 6 {
		switch {
		case c.approximation(r):
		case c.bound(r):
		case c.AcceptThenGap("between"):
			between = true
		case c.fromNumber():
		case !article && c.articleOfUnit():
			article = true
		case c.manner(r):
		default:
			return between, article
		}
	}
	return between, article
}

// approximation reads "about", "approx.", "~", "c. 200".
func (c *cursor) approximation(r *Reading) bool {
	start := *c
	if c.AcceptRune("~≈±∼") != 0 {
		c.Space()
		r.Approximate = true
		return true
	}
	w := scan.Lower(c.Word())
	if w == "c" && c.Byte(1) == '.' {
		c.At += 2
		c.Space()
		if scan.IsDigit(c.Byte(0)) {
			r.Approximate = true
			return true
		}
	} else if nearly[w] {
		c.At += len(w)
		c.Accept(".")
		if c.Space() || !c.Done() && scan.IsDigit(c.Byte(0)) {
			r.Approximate = true
			return true
		}
	}
	*c = start
	return false
}

func (c *cursor) bound(r *Reading) bool {
	switch c.Rune() | 0x20 {
	case 'u', 'a', 'b', 'n', 'm', 'l', 'j':
	default:
		return false
	}
	for _, phrase := range bounds {
		start := *c
		if !c.AcceptPhrase(phrase) {
			*c = start
			continue
		}
		if c.Accept("."); c.Space() {
			r.Approximate = true
			r.addNote(phrase)
			return true
		}
		*c = start
	}
	return false
}

// fromNumber skips "from" where a number follows: "from 2 to 3".
func (c *cursor) fromNumber() bool {
	start := *c
	if c.AcceptThenGap("from") {
		after := *c
		if _, ok := after.Quantity(); ok {
			return true
		}
	}
	*c = start
	return false
}

// articleOfUnit skips the "a" of "a cup", "a heaped teaspoon", but not of
// "a half", "a dozen", "a few", which are numbers.
func (c *cursor) articleOfUnit() bool {
	if w := c.Word(); w == "" || len(w) > 2 || w[0]|0x20 != 'a' {
		return false
	}
	start := *c
	if _, ok := c.Quantity(); ok || c.unnumbered() != "" {
		*c = start
		return false
	}
	*c = start
	if (c.AcceptWord("a") || c.AcceptWord("an")) && c.Space() {
		return true
	}
	*c = start
	return false
}

// manner reads one word of manners, with the gap after it, into r's note.
func (c *cursor) manner(r *Reading) bool {
	start := *c
	w := c.Word()
	unsure, ok := manners[scan.Lower(w)]
	if !ok {
		return false
	}
	c.At += len(w)
	if !c.Gap() {
		*c = start
		return false
	}
	r.Approximate = r.Approximate || unsure
	r.addNote(w)
	return true
}

func (r *Reading) addNote(w string) {
	if r.Note != "" {
		r.Note += " "
	}
	r.Note += w
}

// unnumbered reads the words that stand for no number: "a few", "some". It
// gives them as a note, "" if there are none.
func (c *cursor) unnumbered() string {
	for _, phrase := range []string{"a few", "few", "several", "some", "a little", "a bit of", "a bit"} {
		start := *c
		if c.AcceptPhrase(phrase) {
			if after := *c; after.Space() {
				return phrase
			}
		}
		*c = start
	}
	return ""
}

// unfit tells whether what follows a number makes it something else: a
// temperature, a percentage, a ratio, an ordinal, a list number.
func (c cursor) unfit() bool {
	switch b := c.Byte(0); {
	case b == ')' || b == ':' && scan.IsDigit(c.Byte(1)):
		return true
	case b == '.' && (c.Byte(1) == ' ' || c.Byte(1) == '\t'):
		return true
	}
	glued := c
	if c.Space(); c.Byte(0) == '%' {
		return true
	}
	switch c.Rune() {
	case '°', 'º', '˚', '℃', '℉', '‰':
		return true
	}
	switch w := scan.Lower(c.Word()); w {
	case "degrees", "degree", "deg", "percent", "per":
		return true
	case "st", "nd", "rd", "th", "f":
		return glued.At == c.At
	}
	return false
}

// ofNamed tells whether a part is of something named: "half the dough",
// "½ of your butter". That is no amount.
func (c cursor) ofNamed() bool {
	if !c.Gap() {
		return false
	}
	if c.AcceptWord("of") && !c.Space() {
		return false
	}
	switch scan.Lower(c.Word()) {
	case "the", "this", "that", "these", "those", "your", "my", "our", "their", "its", "it", "them", "each":
		return true
	}
	return false
}

// idle tells whether a number in words is no count: "one at a time", "two of
// them".
func (c cursor) idle() bool {
	if c.ofNamed() {
		return true
	}
	if !c.Gap() {
		return false
	}
	switch scan.Lower(c.Word()) {
	case "at", "by", "to", "is", "that", "which", "in", "on", "with", "when", "until", "side", "third", "day":
		return true
	}
	return false
}

// trail reads what may stand after an amount: "(US)", "or so", "approx.".
func (c *cursor) trail(r *Reading) {
	start := *c
	c.Space()
	if c.Byte(0) == '(' {
		if end := strings.IndexByte(c.Rest(), ')'); end > 0 && end < 24 {
			inside := c.Text[c.At+1 : c.At+end]
			if s, ok := ParseSystem(inside); ok && r.System == "" && r.Amount.Unit.Kind() == Volume {
				r.System = s
				c.At += end + 1
				return
			}
			if nearly[strings.TrimSuffix(scan.Lower(inside), ".")] {
				r.Approximate = true
				c.At += end + 1
				return
			}
		}
		*c = start
		return
	}
	if c.AcceptPhrase("or so") || c.AcceptPhrase("or thereabouts") || c.AcceptPhrase("give or take") || c.approxAfter() {
		r.Approximate = true
		return
	}
	*c = start
}

func (c *cursor) approxAfter() bool {
	if c.AcceptWord("approx") || c.AcceptWord("approximately") {
		c.Accept(".")
		return true
	}
	return false
}
