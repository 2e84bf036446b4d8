package scan

// small are the numbers below twenty, tens the tens, in words.
var small = map[string]int64{
	"one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9,
	"ten": 10, "eleven": 11, "twelve": 12, "thirteen": 13, "fourteen": 14, "fifteen": 15, "sixteen": 16,
	"seventeen": 17, "eighteen": 18, "nineteen": 19,
}

var tens = map[string]int64{
	"twenty": 20, "thirty": 30, "forty": 40, "fourty": 40, "fifty": 50, "sixty": 60, "seventy": 70, "eighty": 80, "ninety": 90,
}

// parts are the words for the bottom of a fraction.
var parts = map[string]int64{
	"half": 2, "halves": 2, "third": 3, "thirds": 3, "quarter": 4, "quarters": 4, "fourth": 4, "fourths": 4,
	"fifth": 5, "fifths": 5, "sixth": 6, "sixths": 6, "eighth": 8, "eighths": 8, "tenth": 10, "tenths": 10,
}

// Spelled reads a number in words: "three", "twenty-five", "two hundred and
// fifty", "one and a half", "three quarters", "half", "one point five". "a"
// counts only before hundred, thousand and a part: "a quarter".
func (c *Cursor) Spelled() (Figures, bool) {
	start := *c
	if f, ok := c.spelledPart(); ok {
		return f, true
	}
	*c = start
	n, ok := c.spelledWhole()
	if !ok {
		*c = start
		return Figures{}, false
	}
	f := Over(n, 1)
	if c.point(&f) {
		return f, true
	}
	c.AndPart(&f)
	return f, true
}

// spelledPart reads "half", "a quarter", "three quarters", "two-thirds", and
// before a noun "three-quarter cup", "two-third cup". Bare "third" and the like
// are ordinals ("the third batch") and are not read.
func (c *Cursor) spelledPart() (Figures, bool) {
	start := *c
	num := int64(1)
	w := Lower(c.Word())
	bare, hyphen := w == "half" || w == "quarter", false
	if !bare {
		switch n := small[w]; {
		case n > 0:
			num = n
		case w != "a" && w != "an":
			return Figures{}, false
		}
		c.At += len(w)
		hyphen = c.Byte(0) == '-'
		if !c.Gap() {
			*c = start
			return Figures{}, false
		}
		w = Lower(c.Word())
	}
	den := parts[w]
	plural := len(w) > 0 && w[len(w)-1] == 's'
	if den == 0 || num >= den || plural && num == 1 || !plural && num > 1 && !hyphen && w != "quarter" {
		*c = start
		return Figures{}, false
	}
	c.At += len(w)
	return Over(num, den), true
}

// spelledWhole reads a whole number in words, at most 999,999.
func (c *Cursor) spelledWhole() (int64, bool) {
	n, ok := c.spelledHundreds()
	if !ok {
		return 0, false
	}
	after := *c
	if !c.Gap() || !c.AcceptWord("thousand") {
		*c = after
		return n, true
	}
	n *= 1000
	after = *c
	if c.Gap() {
		c.skipAnd()
		if more, ok := c.spelledHundreds(); ok && more < 1000 {
			return n + more, true
		}
	}
	*c = after
	return n, true
}

func (c *Cursor) spelledHundreds() (int64, bool) {
	start := *c
	n, ok := c.spelledSmall()
	if !ok {
		article := *c
		if c.AcceptWord("a") {
			article = *c
		}
		switch {
		case article == start || !c.Gap():
		case c.AcceptWord("hundred"):
			return c.afterHundred(100), true
		case Lower(c.Word()) == "thousand":
			*c = article // spelledWhole reads the thousand
			return 1, true
		}
		*c = start
		return 0, false
	}
	after := *c
	if c.Gap() && c.AcceptWord("hundred") {
		return c.afterHundred(n * 100), true
	}
	*c = after
	return n, true
}

// afterHundred adds "and fifty" to n.
func (c *Cursor) afterHundred(n int64) int64 {
	after := *c
	if c.Gap() {
		c.skipAnd()
		if more, ok := c.spelledSmall(); ok {
			return n + more
		}
	}
	*c = after
	return n
}

func (c *Cursor) skipAnd() {
	before := *c
	if !c.AcceptWord("and") || !c.Gap() {
		*c = before
	}
}

// spelledSmall reads one to ninety-nine.
func (c *Cursor) spelledSmall() (int64, bool) {
	w := Lower(c.Word())
	if n := small[w]; n > 0 {
		c.At += len(w)
		return n, true
	}
	n := tens[w]
	if n == 0 {
		return 0, false
	}
	c.At += len(w)
	after := *c
	if c.Gap() {
		w = Lower(c.Word())
		if more := small[w]; more > 0 && more < 10 {
			c.At += len(w)
			return n + more, true
		}
	}
	*c = after
	return n, true
}

// point reads "point two five" after f.
func (c *Cursor) point(f *Figures) bool {
	start := *c
	if !c.Gap() || !c.AcceptWord("point") {
		*c = start
		return false
	}
	for places := 0; places < 4; places++ {
		after := *c
		if !c.Gap() {
			break
		}
		w := Lower(c.Word())
		d := small[w]
		if d == 0 && w != "zero" && w != "oh" || d > 9 {
			*c = after
			break
		}
		c.At += len(w)
		f.Num, f.Den = f.Num*10+d, f.Den*10
	}
	if f.Den == 1 {
		*c = start
	}
	return f.Den > 1
}

// AndPart reads "and a half", "and three quarters", "and ½", "and 1/2" after
// the whole number f, and adds it.
func (c *Cursor) AndPart(f *Figures) bool {
	start := *c
	if f.Den != 1 || f.Num > maxMixed || !c.Gap() || !c.AcceptWord("and") && !c.Accept("&") || !c.Gap() {
		*c = start
		return false
	}
	part, ok := c.Fraction()
	if !ok {
		part, ok = c.spelledPart()
	}
	if !ok || part.Num >= part.Den || part.Num == 0 {
		*c = start
		return false
	}
	f.Num, f.Den = f.Num*part.Den+part.Num, part.Den
	return true
}
