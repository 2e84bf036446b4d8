package speech

import (
	"strings"

	"benchproof/kitchen/measure"
)

// vessels are what has a size of its own, besides the packs that are units.
var vessels = SetOf("tins cans pans trays dishes rings rounds squares circles discs disks jars packets packs bags blocks tubs pots pieces balls slices steaks fillets bottles cartons moulds molds cakes strips sheets")

// apart parts "two twenty centimetre tins" and "two fifteen ounce cans", which
// else would be read as 220 and 215: where several of a thing of one size are
// meant, the first figure counts them.
func (t Text) apart(i int, n number) (number, bool) {
	if !n.short {
		return n, false
	}
	u, to, ok := t.unit(n.to, false)
	if ok && t.open(n.to-1) && (u == measure.Centimetre || u == measure.Inch) {
		return number{value: measure.Whole(small[t.word(i)]), to: i + 1, words: true}, true // nobody cooks in a metre
	}
	if !ok || !t.open(n.to-1) || !t.open(to-1) || strings.HasSuffix(t.word(to-1), "s") || u.Kind() == measure.Count || isTime(u) {
		return n, false
	}
	for k := to; k < to+2; k++ {
		if vessels[t.word(k)] {
			return number{value: measure.Whole(small[t.word(i)]), to: i + 1, words: true}, true
		}
	}
	return n, false
}

// packs reads the "two" of "two 400 gram tins" as two tins; the size is an amount
// of its own.
func (t Text) packs(s *Said) bool {
	k := s.To
	if w := t.word(k); w == "x" || w == "lots" || w == "times" {
		k++
		if t.word(k) == "of" {
			k++
		}
	}
	p, ok := t.packAt(k)
	if !ok || !t.open(s.To-1) {
		return false
	}
	s.Kind, s.Unit, s.Amount.Unit = Measure, p, p
	return true
}

// packAt gives the pack behind the size that stands at word i: the tin of "400
// gram tin".
func (t Text) packAt(i int) (measure.Unit, bool) {
	n, ok := t.number(i)
	if !ok || n.part {
		return "", false
	}
	size, to, ok := t.unit(n.to, !n.words)
	if !ok || size.Kind() != measure.Mass && size.Kind() != measure.Volume || !t.open(to-1) {
		return "", false
	}
	return t.pack(to)
}

// pack reads a tin, a can, a jar, a packet at word i.
func (t Text) pack(i int) (measure.Unit, bool) {
	switch t.word(i) {
	case "can", "cans":
		return measure.Tin, true
	case "sack", "sacks", "bucket", "buckets", "tub", "tubs", "bag", "bags":
		return measure.Packet, true
	}
	u, _, ok := t.unit(i, false)
	return u, ok && u.Kind() == measure.Count && isPack[u]
}

// isPack are the counted units that have a size.
var isPack = map[measure.Unit]bool{measure.Tin: true, measure.Jar: true, measure.Packet: true, measure.Bottle: true, measure.Carton: true}

// isSize tells whether a mass or volume is the size of one pack.
func (t Text) isSize(s Said) bool {
	if kind := s.Unit.Kind(); s.Kind != Measure || kind != measure.Mass && kind != measure.Volume || !t.open(s.To-1) {
		return false
	}
	_, ok := t.pack(s.To)
	return ok || t.isContent(s)
}

// isContent tells what a pack holds: "this bag is twenty pounds", "one tin here is 160 g".
func (t Text) isContent(s Said) bool {
	k := s.From - 1
	if w := t.word(k); w != "is" && w != "holds" && w != "weighs" {
		return false
	}
	if t.word(k-1) == "here" {
		k--
	}
	_, ok := t.pack(k - 1)
	return ok
}

// BehindMeasure gives the word behind a measure that stands at word i and
// describes a thing, the "20 cm" of "two 20 cm tins"; i if none does.
func (t Text) BehindMeasure(i int) int {
	n, ok := t.number(i)
	if !ok || n.part || i > 0 && !t.open(i-1) {
		return i
	}
	u, to, ok := t.unit(n.to, !n.words)
	if !ok || u.Kind() == measure.Count || isTime(u) || !t.open(to-1) || t.word(to) == "of" {
		return i
	}
	return to
}
