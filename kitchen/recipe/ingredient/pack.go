package ingredient

import (
	"strings"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe/lexicon"
)

// takePacks takes packs of one size, in the ways they are written:
//
//	2 x 400 g tins    2 × 400g    4 x 150 g fillets
//	1 (14 oz) can     2 (400 g / 14 oz) tins
//	1 tin (400 g)     1 packet (7 g)
//	400 g tin         14-ounce can
//	1 14-ounce can    one 400 g tin
//	5 cm piece
func (l *line) takePacks() {
	a, rest := l.Amount, l.rest
	if !l.HasAmount {
		return
	}
	switch {
	case a.Unit == measure.Each:
		if l.takeTimes(rest) || l.takeBracketed(rest) {
			return
		}
		if unit, tail, ok := cutPack(rest); ok && tail != "" {
			l.Amount.Unit, l.rest = unit, tail // "2 pots"
			l.takePacks()
			return
		}
		r, after, ok := measure.ReadAmount(rest)
		if ok && isWeighed(r.Amount.Unit) && r.HasAmount() {
			if unit, tail, isPack := cutPack(after); isPack {
				l.pack(a.Range, r.Amount, unit)
				l.rest = tail
			}
		} else if ok && r.Amount.Unit.Kind() == measure.Length && r.HasAmount() && hasPiece(after) {
			l.Amount, l.rest = times(r.Amount, a.Range), after
			l.takePiece()
		}
	case isPack(a.Unit):
		if inner, after, ok := cutBracket(rest); ok {
			if found, tail, _, ok := amounts(inner); ok && tail == "" && isWeighed(found[0].Amount.Unit) {
				l.pack(a.Range, found[0].Amount, a.Unit)
				l.equals(found[1:])
				l.rest = after
			}
			return
		}
		l.takeTimes(rest)
	case isWeighed(a.Unit):
		if unit, tail, ok := cutPack(rest); ok {
			l.pack(measure.One(measure.Whole(1)), a, unit)
			l.rest = tail
		}
	case a.Unit.Kind() == measure.Length:
		l.takePiece()
	}
}

// pack sets what the line's packs are; its amount then is the whole.
func (l *line) pack(count measure.Range, size measure.Amount, in measure.Unit) {
	l.Count, l.Pack, l.In = count, size, in
	l.Amount = times(size, count)
}

// equals keeps other statements of one pack's size, for all packs.
func (l *line) equals(each []measure.Reading) {
	for _, r := range each {
		r.Amount = times(r.Amount, l.Count)
		l.equal(r)
	}
}

// takeTimes takes "x 400 g tins" behind the count.
func (l *line) takeTimes(rest string) bool {
	after, ok := cutTimes(rest)
	if !ok {
		return false
	}
	r, after, ok := measure.ReadAmount(after)
	if !ok || !r.HasAmount() || r.Amount.Unit.Kind() != measure.Mass && r.Amount.Unit.Kind() != measure.Volume && r.Amount.Unit.Kind() != measure.Length {
		return false
	}
	count, in := l.Amount.Range, l.Amount.Unit
	others, after := cutOthers(after)
	if unit, tail, isPack := cutPack(after); isPack {
		in, after = unit, tail
	}
	l.pack(count, r.Amount, in)
	l.equals(others)
	l.rest = after
	l.takePiece()
	return true
}

// cutOthers takes "/ 14 oz" and "(14 oz)" behind a pack's size.
func cutOthers(text string) (others []measure.Reading, rest string) {
	for {
		switch lexicon.First(text) {
		case '/', '=':
			r, after, ok := measure.ReadAmount(strings.TrimSpace(text[1:]))
			if !ok || !isWeighed(r.Amount.Unit) {
				return others, text
			}
			others, text = append(others, r), after
		case '(':
			inner, after, _ := cutBracket(text)
			found, tail, _, ok := amounts(inner)
			if !ok || tail != "" {
				return others, text
			}
			others, text = append(others, found...), after
		default:
			return others, text
		}
	}
}

// takeBracketed takes "(14 oz) can" behind the count. A bracket without a pack
// behind it only restates the amount.
func (l *line) takeBracketed(rest string) bool {
	inner, after, ok := cutBracket(rest)
	if !ok {
		return false
	}
	found, last, _, ok := amounts(inner)
	if !ok || last != "" || !isWeighed(found[0].Amount.Unit) {
		return false
	}
	unit, tail, ok := cutPack(after)
	if !ok {
		return false
	}
	l.pack(l.Amount.Range, found[0].Amount, unit)
	l.equals(found[1:])
	l.rest = tail
	return true
}

// takePiece takes "piece of" behind a length.
func (l *line) takePiece() {
	if l.Amount.Unit.Kind() != measure.Length {
		return
	}
	if hasPiece(l.rest) {
		l.rest = cutOf(l.rest[strings.IndexByte(l.rest, ' ')+1:])
	}
}

func hasPiece(text string) bool {
	word, after, _ := strings.Cut(text, " ")
	return after != "" && pieces[lexicon.Lower(word)]
}

// cutTimes takes "x", "×" or "*" between two numbers.
func cutTimes(text string) (rest string, ok bool) {
	for _, sign := range []string{"x", "X", "×", "*"} {
		if after, cut := strings.CutPrefix(text, sign); cut {
			after = strings.TrimSpace(after)
			return after, lexicon.IsNumeral(lexicon.First(after))
		}
	}
	return text, false
}

// cutPack takes the word for a pack off the start: "tins of". Adjectives before
// it go with it: "large tin".
func cutPack(text string) (unit measure.Unit, rest string, ok bool) {
	word, after, _ := strings.Cut(strings.TrimLeft(text, "-"), " ")
	if isSize(word) {
		word, after, _ = strings.Cut(after, " ")
	}
	unit, ok = measure.ParseUnit(strings.Trim(word, ".,"))
	if ok && (isPack(unit) || unit == measure.Sheet) {
		return unit, cutOf(after), true
	}
	if unit, ok = otherPacks[lexicon.Lower(strings.Trim(word, ".,"))]; ok {
		return unit, cutOf(after), true
	}
	return "", text, false
}

func cutOf(text string) string {
	if len(text) > 3 && strings.EqualFold(text[:3], "of ") {
		return text[3:]
	}
	return text
}

// isPack tells units whose size is stated with them.
func isPack(u measure.Unit) bool { return packs[u] }

var packs = map[measure.Unit]bool{
	measure.Tin: true, measure.Jar: true, measure.Packet: true, measure.Bottle: true, measure.Bag: true, measure.Box: true,
	measure.Carton: true, measure.Tub: true, measure.Block: true, measure.Bar: true, measure.Ball: true,
}

// otherPacks are packs that have no unit of their own.
var otherPacks = map[string]measure.Unit{
	"pot": measure.Tub, "pots": measure.Tub, "pouch": measure.Packet, "pouches": measure.Packet, "punnet": measure.Box,
	"punnets": measure.Box, "tube": measure.Packet, "tubes": measure.Packet,
	"container": measure.Tub, "containers": measure.Tub, "slab": measure.Block, "slabs": measure.Block,
}

var pieces = lexicon.Of(`piece pieces knob chunk length stick cube slice pc thumb hunk`)
