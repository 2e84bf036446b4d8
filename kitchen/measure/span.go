package measure

import "strings"

// dashes part the two ends of a range.
const dashes = "-–—‒−‐‑"

// reading reads an amount with the words about it; false leaves the cursor
// anywhere.
func (c *cursor) reading(r *Reading) bool {
	between, article := c.lead(r)
	if note := c.unnumbered(); note != "" && !article {
		r.Approximate = true
		r.addNote(note)
		c.unitAfter(r, false)
		return true
	}
	start := *c
	q, ok := c.quantity()
	if !ok {
		return c.bare(r, article)
	}
	if q.num == 0 || c.unfit() {
		return false
	}
	if article && r.Note == "" && q.num != q.den {
		if one, ok := c.onePack(start); ok {
			r.Amount = Of(whole, Each)
			*c = one
			return true
		}
	}
	return c.numbered(r, q, between)
}

// numbered reads on after the number q: a range, the unit, what follows it.
func (c *cursor) numbered(r *Reading, q quantity, between bool) bool {
	r.Approximate = r.Approximate || q.couple
	r.Amount.Range = One(q.number())
	alone := *c
	ranged := c.ranged(r, q, between)
	if ranged && c.unfit() {
		return false
	}
	if c.byte(0) == '+' && (c.byte(1) == ' ' || c.byte(1) == 0) {
		c.at++
		r.Approximate = true
	}
	if !c.unitAfter(r, q.words) {
		return c.plainCount(r, q, ranged)
	}
	switch r.Amount.Unit.Kind() {
	case Time, Temperature:
		return false
	}
	c.settle(r, q, alone, ranged)
	c.trail(r)
	return true
}

// onePack reads "a 400 g tin" as one of what follows and gives the place of its
// size, where the number stood. "a 2-inch piece" is a length and no pack.
func (c cursor) onePack(size cursor) (cursor, bool) {
	var inner Reading
	if !c.unitAfter(&inner, false) {
		return c, false
	}
	kind := inner.Amount.Unit.Kind()
	return size, kind == Mass || kind == Volume
}

// plainCount ends a reading that has no unit: "3 eggs", "half a lemon".
func (c *cursor) plainCount(r *Reading, q quantity, ranged bool) bool {
	part := q.num < q.den && !ranged
	if part && c.ofNamed() || q.words && !ranged && c.idle() {
		return false
	}
	// "180C" and "350 F" are temperatures.
	if after := *c; !part {
		after.space()
		switch after.word() {
		case "C", "c", "F":
			return q.words
		}
	}
	return true
}

// settle mends r with what its unit shows: commas, packs, second halves.
func (c *cursor) settle(r *Reading, q quantity, alone cursor, ranged bool) {
	if ranged {
		c.packNotRange(r, q, alone)
		return
	}
	if q.grouped > 0 && isLarge(r.Amount.Unit) {
		r.Amount.Range = One(Ratio(q.num, 1000))
	}
	if c.partPacks(r, q) || c.andPartOfUnit(r, q) || c.endWithUnit(r) {
		return
	}
	c.compound(r)
}

// partPacks takes "2 1/4-ounce packages" as two of a quarter ounce each: the
// count stays in r and the size in the rest. "2 1/4-ounce package" is one.
func (c *cursor) partPacks(r *Reading, q quantity) bool {
	kind := r.Amount.Unit.Kind()
	if q.partAt == 0 || q.num < 2*q.den || kind != Mass && kind != Volume {
		return false
	}
	after := *c
	after.gap()
	w := after.word()
	u, ok := after.unit(&Reading{}, true)
	if !ok || !isPack(u) || !strings.HasSuffix(lower(w), "s") {
		return false
	}
	*r = Reading{Amount: Of(Whole(q.num/q.den), Each), Approximate: r.Approximate}
	c.at = q.partAt
	return true
}

// andPartOfUnit adds the part of "a cup and a half", "1 cup and ½", but not of
// "a cup and a half teaspoon".
func (c *cursor) andPartOfUnit(r *Reading, q quantity) bool {
	before := *c
	f := over(q.num, q.den)
	if q.den == 1 && c.andPart(&f) {
		after := *c
		after.gap()
		if _, ok := after.unit(&Reading{}, true); !ok {
			r.Amount.Range = One(f.number())
			return true
		}
	}
	*c = before
	return false
}

// isLarge tells whether a thousand of u is past any kitchen, so that a comma
// before it was a decimal one.
func isLarge(u Unit) bool {
	switch u {
	case Kilogram, Pound, Litre, Decilitre, Cup, Pint, Quart, Gallon, Tablespoon, Teaspoon, Inch, Centimetre:
		return true
	}
	return false
}

// ranged reads the second number of a range into r.
func (c *cursor) ranged(r *Reading, first quantity, between bool) bool {
	start := *c
	if _, ok := c.rangeSign(between); !ok {
		*c = start
		return false
	}
	second, ok := c.quantity()
	if !ok || second.num == 0 {
		*c = start
		return false
	}
	r.Amount.Range = Between(first.number(), second.number())
	return true
}

// rangeSign skips what parts the ends of a range: a dash, "to", "or", after
// "between" also "and".
func (c *cursor) rangeSign(between bool) (dash, ok bool) {
	spaced := c.space()
	if c.acceptRune(dashes) != 0 {
		c.space()
		return true, true
	}
	if !spaced {
		return false, false
	}
	if !c.acceptWord("to") && !c.acceptWord("or") && !(between && c.acceptWord("and")) || !c.space() {
		return false, false
	}
	c.acceptThenGap("about")
	return false, true
}

// packNotRange takes a range back where it is a count of packs with their size,
// "1-14 oz can": the count stays in r and the size in the rest.
func (c *cursor) packNotRange(r *Reading, q quantity, alone cursor) {
	kind := r.Amount.Unit.Kind()
	if q.den != 1 || q.num > 24 || kind != Mass && kind != Volume || r.Amount.To.Cmp(r.Amount.From.Mul(Whole(4))) < 0 {
		return
	}
	sign := alone
	if dash, ok := sign.rangeSign(false); !ok || !dash {
		return
	}
	after := *c
	after.gap()
	var pack Reading
	if u, ok := after.unit(&pack, true); !ok || !isPack(u) {
		return
	}
	*r = Reading{Amount: Of(q.number(), Each), Approximate: r.Approximate}
	*c = sign
}

func isPack(u Unit) bool {
	switch u {
	case Tin, Jar, Packet, Bottle, Bag, Box, Carton, Tub, Block, Bar:
		return true
	}
	return false
}

// endWithUnit reads a range whose ends each have their unit, "200 g–250 g",
// "500 g to 1 kg", where both belong to one ladder.
func (c *cursor) endWithUnit(r *Reading) bool {
	start := *c
	var end Reading
	if _, ok := c.rangeSign(false); ok {
		if q, ok := c.quantity(); ok && q.num > 0 && c.unitAfter(&end, false) {
			end.Amount.Range = One(q.number())
			to, ok := alongLadder(end.Amount, r.Amount.Unit)
			if ok && to.From.Cmp(r.Amount.From) >= 0 {
				r.Amount.To = to.From
				return true
			}
		}
	}
	*c = start
	return false
}

// ladders are units that convert without knowing the system.
var ladders = [][]Unit{{Gram, Kilogram, Milligram}, {Ounce, Pound}, {Millilitre, Litre, Decilitre, Centilitre}, {Centimetre, Millimetre}}

func alongLadder(a Amount, to Unit) (Amount, bool) {
	if a.Unit == to {
		return a, true
	}
	for _, ladder := range ladders {
		if has(ladder, a.Unit) && has(ladder, to) {
			b, err := Convert(a, to, "", "")
			return b, err == nil
		}
	}
	return Amount{}, false
}

func has(units []Unit, u Unit) bool {
	for _, each := range units {
		if each == u {
			return true
		}
	}
	return false
}

// compound adds the second half of "1 lb 4 oz", "1 kg 200 g", "1 L 500 mL", in
// the smaller unit.
func (c *cursor) compound(r *Reading) {
	switch r.Amount.Unit {
	case Pound, Kilogram, Litre:
	default:
		return
	}
	start := *c
	var second Reading
	if c.space() {
		if f, ok := c.figures(); ok && f.num > 0 && c.unitAfter(&second, false) {
			second.Amount.Range = One(f.number())
			u := second.Amount.Unit
			if first, ok := alongLadder(r.Amount, u); ok && u != r.Amount.Unit && second.Amount.From.Cmp(sizeIn(r.Amount.Unit, u)) < 0 {
				r.Amount = Amount{first.Range.Add(second.Amount.Range), u}
				return
			}
		}
	}
	*c = start
}

// sizeIn gives how many u make one big; both on one ladder.
func sizeIn(big, u Unit) Number {
	a, _ := alongLadder(Of(whole, big), u)
	return a.From
}

// bare reads a unit without a number as one: "a pinch", "a heaped teaspoon",
// "handful of parsley".
func (c *cursor) bare(r *Reading, article bool) bool {
	system, named := c.systemWord()
	said := c.word()
	if !article && !bareWords[lower(said)] && r.Note == "" {
		return false
	}
	u, ok := c.unit(r, true)
	if !ok || len(said) < 3 || u.Kind() == Time || u.Kind() == Temperature || u == Each || u == Go {
		return false
	}
	if !article && !c.bareFits(u, said) {
		return false
	}
	r.Amount = Of(whole, u)
	if named {
		r.System = system
	}
	if article {
		c.andPartOfUnit(r, quantity{figures: over(1, 1)})
	}
	r.Approximate = r.Approximate || !isDecimal(u) && bareWords[lower(said)]
	c.trail(r)
	return true
}

// bareWords may open a line without "a": "pinch of salt".
var bareWords = map[string]bool{
	"pinch": true, "dash": true, "smidgen": true, "handful": true, "knob": true, "bunch": true, "sprig": true,
	"splash": true, "squeeze": true, "drizzle": true, "dollop": true, "glug": true, "drop": true,
}

// bareFits keeps instructions out: "Squeeze the lemon", "Pinch off a piece".
func (c cursor) bareFits(u Unit, said string) bool {
	if u.Kind() != Volume && !bareWords[lower(said)] {
		return false
	}
	if !c.space() {
		return false
	}
	switch w := lower(c.word()); w {
	case "of":
		return true
	case "", "the", "off", "out", "over", "it", "them", "each", "together", "in", "into", "on", "with", "your", "a", "an", "and", "up", "down":
		return false
	}
	switch u {
	case Splash, Squeeze, Drizzle, Dollop, Glug, Drop:
		return false
	}
	return true
}
