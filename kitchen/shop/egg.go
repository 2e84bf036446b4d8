package shop

import (
	"strings"

	"benchproof/kitchen/measure"
)

// eggs are what recipes take of eggs. One egg gives one yolk and one white, so
// those for yolks serve for whites too.
type eggs struct {
	whole, yolks, whites measure.Number
	others               []portion // amounts that could not be counted
	estimate             bool
}

func countEggs(portions []portion) eggs {
	var e eggs
	for _, p := range portions {
		if p.amount.IsZero() {
			continue
		}
		n, ok := e.pieces(p)
		switch {
		case !ok:
			e.others = append(e.others, p)
		case p.food.ID == yolkID:
			e.yolks = e.yolks.Add(n)
		case p.food.ID == whiteID:
			e.whites = e.whites.Add(n)
		default:
			e.whole = e.whole.Add(n)
		}
	}
	return e
}

// pieces counts the eggs, yolks or whites of a portion, exact; an amount by
// weight or volume goes by the larder's weight of one.
func (e *eggs) pieces(p portion) (measure.Number, bool) {
	if p.amount.Unit == measure.Each || p.amount.Unit == measure.Piece {
		return p.amount.To, true
	}
	weighed, err := p.food.Grams(p.amount, p.form, p.system)
	if err != nil {
		return measure.Number{}, false
	}
	n, ok := p.food.Pieces(weighed.Grams, p.size)
	e.estimate = e.estimate || ok && weighed.Estimate
	return n.To, ok
}

// toBuy is how many eggs that takes: no egg is broken for a part and used whole
// as well.
func (e eggs) toBuy() measure.Number {
	parted := e.yolks
	if e.whites.Cmp(parted) > 0 {
		parted = e.whites
	}
	return e.whole.Ceil().Add(parted.Ceil())
}

// write words the eggs: "6" to buy, "2 whole, 4 yolks, 2 whites" beside it.
func (e eggs) write(house measure.System) written {
	var w written
	var parts []string
	if n := e.toBuy(); !n.IsZero() {
		parts = append(parts, n.String())
	}
	if len(e.others) > 0 {
		parts = append(parts, addUp(e.others).write(nil, house).measure)
	}
	w.measure = strings.Join(parts, " + ")
	if e.yolks.IsZero() && e.whites.IsZero() {
		return w
	}
	var small []string
	add := func(n measure.Number, one, many string) {
		n = up(n, quarter)
		switch {
		case n.IsZero():
		case n.Cmp(measure.Whole(1)) > 0:
			small = append(small, measure.FormatNumber(n)+nbsp+many)
		default:
			small = append(small, measure.FormatNumber(n)+nbsp+one)
		}
	}
	add(e.whole, "whole", "whole")
	add(e.yolks, "yolk", "yolks")
	add(e.whites, "white", "whites")
	w.small = strings.Join(small, ", ")
	return w
}

// exact lists the eggs to buy, then what could not be counted.
func (e eggs) exact() []measure.Amount {
	var all []measure.Amount
	if n := e.toBuy(); !n.IsZero() {
		all = append(all, measure.Of(n, measure.Each))
	}
	return append(all, addUp(e.others).exact()...)
}
