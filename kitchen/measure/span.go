package measure

import (
	"strings"

	"benchproof/kitchen/measure/scan"
)

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
	q, ok := c.Quantity()
	if !ok {
		return c.bare(r, article)
	}
	if q.Num == 0 || c.unfit() {
		return false
	}
	if article && r.Note == "" && q.Num != q.Den {
		if one, ok := c.onePack(start, q); ok {
			r.Amount = Of(whole, Each)
			*c = one
			return true
		}
	}
	return c.numbered(r, q, between)
}

// numbered reads on after the number q: a range, the unit, what follows it.
func (c *cursor) numbered(r *Reading, q scan.Quantity, between bool) bool {
	r.Approximate = r.Approximate || q.Couple
	r.Amount.Range = One(q.Number())
	alone := *c
	ranged := c.ranged(r, q, between)
	if ranged && c.unfit() {
		return false
	}
	if c.Byte(0) == '+' && (c.Byte(1) == ' ' || c.Byte(1) == 0) {
		c.At++
		r.Approximate = true
	}
	if !c.unitAfter(r, q.Words) {
		return c.plainCount(r, q, ranged)
	}
	switch r.Amount.Unit.Kind() {
	case Time, Temperature:
		return false
	}
	if !between || !c.endWithUnit(r, true) {
		c.settle(r, q, alone, ranged)
	}
	c.trail(r)
	return true
}

// onePack reads "a 400 g tin", "a 2- to 3-lb chicken" as one of what follows and
// gives the place of its size, where the number q stood. "a 2-inch piece" is a
// length and no pack.
func (c cursor) onePack(size cursor, q scan.Quantity) (cursor, bool) {
	var inner Reading
	c.ranged(&inner, q, false)
	if !c.unitAfter(&inner, false) {
		return c, false
	}
	kind := inner.Amount.Unit.Kind()
	return size, kind == Mass || kind == Volume
}

// plainCount ends a reading that has no unit: "3 eggs", "half a lemon".
func (c *cursor) plainCount(r *Reading, q scan.Quantity, ranged bool) bool {
	part := q.Num < q.Den && !ranged
	if part && c.ofNamed() || q.Words && !ranged && c.idle() {
		return false
	}
	// "180C" and "350 F" are temperatures.
	if after := *c; !part {
		after.Space()
		switch after.Word() {
		case "C", "c", "F":
			return q.Words
		}
	}
	return true
}

// settle mends r with what its unit shows: commas, packs, second halves.
func (c *cursor) settle(r *Reading, q scan.Quantity, alone cursor, ranged bool) {
	if ranged {
		c.packNotRange(r, q, alone)
		return
	}
	if q.Grouped > 0 && isLarge(r.Amount.Unit) {
		r.Amount.Range = One(Ratio(q.Num, 1000))
	}
	if c.partPacks(r, q) || c.andPartOfUnit(r, q) || c.endWithUnit(r, false) {
		return
	}
	c.compound(r)
}

// partPacks takes "2 1/4-ounce packages" as two of a quarter ounce each: the
// count stays in r and the size in the rest. "2 1/4-ounce package" is one.
func (c *cursor) partPacks(r *Reading, q scan.Quantity) bool {
	kind := r.Amount.Unit.Kind()
	if q.PartAt == 0 || q.Num < 2*q.Den || kind != Mass && kind != Volume {
		return false
	}
	after := *c
	after.Gap()
	w := after.Word()
	u, ok := after.unit(&Reading{}, true)
	if !ok || !isPack(u) || !strings.HasSuffix(scan.Lower(w), "s") {
		return false
	}
	*r = Reading{Amount: Of(Whole(q.Num/q.Den), Each), Approximate: r.Approximate}
	c.At = q.PartAt
	return true
}

// andPartOfUnit adds the part of "a cup and a half", "1 cup and ½", but not of
// "a cup and a half teaspoon".
func (c *cursor) andPartOfUnit(r *Reading, q scan.Quantity) bool {
	before := *c
	f := scan.Over(q.Num, q.Den)
	if q.Den == 1 && c.AndPart(&f) {
		after := *c
		after.Gap()
		if _, ok := after.unit(&Reading{}, true); !ok {
			r.Amount.Range = One(f.Number())
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
func (c *cursor) ranged(r *Reading, first scan.Quantity, between bool) bool {
	start := *c
	if _, ok := c.RangeSign(between); !ok {
		*c = start
		return false
	}
	second, ok := c.Quantity()
	if !ok || second.Num == 0 {
		*c = start
		return false
	}
	from, to := first.Number(), second.Number()
	if dozens := from.Mul(twelve); second.Dozens && !first.Dozens && dozens.Cmp(to) <= 0 {
		from = dozens // "1 to 2 dozen"
	}
	r.Amount.Range = Between(from, to)
	return true
}

var twelve = Whole(12)

// packNotRange takes a range back where it is a count of packs with their size,
// "1-14 oz can": the count stays in r and the size in the rest.
func (c *cursor) packNotRange(r *Reading, q scan.Quantity, alone cursor) {
	kind := r.Amount.Unit.Kind()
	if q.Den != 1 || q.Num > 24 || kind != Mass && kind != Volume || r.Amount.To.Cmp(r.Amount.From.Mul(Whole(4))) < 0 {
		return
	}
	sign := alone
	if dash, ok := sign.RangeSign(false); !ok || !dash {
		return
	}
	after := *c
	after.Gap()
	var pack Reading
	if u, ok := after.unit(&pack, true); !ok || !isPack(u) {
		return
	}
	*r = Reading{Amount: Of(q.Number(), Each), Approximate: r.Approximate}
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
// "500 g to 1 kg", "between 200 g and 250 g", where both belong to one ladder.
func (c *cursor) endWithUnit(r *Reading, between bool) bool {
	start := *c
	var end Reading
	if _, ok := c.RangeSign(between); ok {
		if q, ok := c.Quantity(); ok && q.Num > 0 && c.unitAfter(&end, false) {
			end.Amount.Range = One(q.Number())
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
	if c.Space() {
		if f, ok := c.Figures(); ok && f.Num > 0 && c.unitAfter(&second, false) {
			second.Amount.Range = One(f.Number())
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
	said := c.Word()
	if !article && !bareWords[scan.Lower(said)] && r.Note == "" {
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
		c.andPartOfUnit(r, scan.Quantity{Figures: scan.Over(1, 1)})
	}
	r.Approximate = r.Approximate || !isDecimal(u) && bareWords[scan.Lower(said)]
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
	if u.Kind() != Volume && !bareWords[scan.Lower(said)] {
		return false
	}
	if !c.Space() {
		return false
	}
	switch w := scan.Lower(c.Word()); w {
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
