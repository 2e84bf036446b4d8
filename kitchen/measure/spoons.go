package measure

import "math"

// ladder is how many teaspoons a tablespoon and a cup hold in one system, exact
// and as floats. The floats only choose between measures, the very last
// rounding; what is shown and its error are exact.
type ladder struct {
	tbsp, cup       Number
	tbspAbout, cupA float64
}

var spoonLadders = func() map[System]ladder {
	m := map[System]ladder{}
	for _, s := range Systems() {
		tsp, _ := s.Millilitres(Teaspoon)
		tbsp, _ := s.Millilitres(Tablespoon)
		cup, _ := s.Millilitres(Cup)
		l := ladder{tbsp: tbsp.Quo(tsp), cup: cup.Quo(tsp)}
		l.tbspAbout, l.cupA = l.tbsp.Float(), l.cup.Float()
		m[s] = l
	}
	return m
}()

// size gives one u in teaspoons.
func (l ladder) size(u Unit) (Number, float64) {
	switch u {
	case Cup:
		return l.cup, l.cupA
	case Tablespoon:
		return l.tbsp, l.tbspAbout
	case Pinch:
		return ofTeaspoon[Pinch], 1.0 / 16
	}
	return whole, 1
}

// scoop is a number of one measure: whole ones and a part.
type scoop struct {
	unit Unit
	n    int64 // whole measures
	part part
}

// part is a fraction that a set of measures can take.
type part struct{ num, den int64 }

func (p part) about() float64 { return float64(p.num) / float64(p.den) }

// The parts that sets of measures have, smallest first. Source for the sets:
// trade practice. ⅔ and ¾ of a cup and ¾ of a teaspoon are two scoops.
var (
	cupParts  = []part{{0, 1}, {1, 4}, {1, 3}, {1, 2}, {2, 3}, {3, 4}}
	halfParts = []part{{0, 1}, {1, 2}}
	tspParts  = []part{{0, 1}, {1, 4}, {1, 2}, {3, 4}}
	tinyParts = []part{{1, 8}, {1, 4}, {1, 2}, {3, 4}}
)

func (s scoop) about() float64 { return float64(s.n) + s.part.about() }

func (s scoop) amount() Amount {
	return Of(Ratio(s.n*s.part.den+s.part.num, s.part.den), s.unit)
}

// nearest gives the scoop of u nearest to x of them: whole ones and one of
// parts; not none of something.
func nearest(u Unit, x float64, parts []part) scoop {
	if x <= 0 {
		return scoop{u, 0, part{0, 1}}
	}
	n := math.Floor(x + 1e-9)
	best, off := scoop{u, int64(n) + 1, part{0, 1}}, math.Abs(n+1-x)
	for _, p := range parts {
		if d := math.Abs(n + p.about() - x); d < off-1e-9 && n+p.about() > 0 {
			best, off = scoop{u, int64(n), p}, d
		}
	}
	return best
}

// below gives the largest scoop of u that is not above x.
func below(u Unit, x float64, parts []part) scoop {
	n := math.Floor(x + 1e-9)
	s := scoop{u, int64(n), part{0, 1}}
	for _, p := range parts {
		if n+p.about() <= x+1e-9 {
			s.part = p
		}
	}
	return s
}

// nearestScoop rounds a count to quarters and thirds, but never to nothing.
func nearestScoop(n Number) Number {
	if n.IsWhole() {
		return n
	}
	return nearest(Each, n.Float(), cupParts).amount().From
}

// closeEnough is the relative error up to which one measure is better than two.
const closeEnough = 0.05

// worthAScoop is the relative error above which one filling more is worth it.
const worthAScoop = 0.025

// spoons writes tsp, tbsp and cups.
func (h Hand) spoons(a Amount) Shown {
	l, ok := spoonLadders[h.System]
	if !ok {
		l = spoonLadders[US]
	}
	size, _ := l.size(a.Unit)
	exact := toBase(a.Range, size) // teaspoons
	if !a.IsSingle() {
		return l.spoonRange(exact, a.Unit)
	}
	if exact.From.Cmp(tooMuch) > 0 {
		return show(a.Range, a)
	}
	return l.spoon(exact.From, a.Unit)
}

// tooMuch is the number of teaspoons beyond which floats could not choose.
var tooMuch = Whole(1_000_000)

// spoon writes one amount of so many teaspoons; from was its unit.
func (l ladder) spoon(exact Number, from Unit) Shown {
	t := exact.Float()
	if t < 3.0/32 {
		return tinySpoon(exact, t)
	}
	one, two := l.choose(t, from)
	if two.unit != "" {
		return l.showPair(exact, [2]scoop{one, two})
	}
	return l.showSpoons(One(exact), one.amount())
}

// showSpoons writes one measure for so many teaspoons.
func (l ladder) showSpoons(exact Range, to Amount) Shown {
	size, _ := l.size(to.Unit)
	return Shown{Text: to.String(), Amount: to, Parts: []Amount{to}, ErrorPercent: errorOf(exact, toBase(to.Range, size))}
}

// choose gives the measure for t teaspoons, or two whose sum it is: a sum whose
// second part is one filling if that is exact or halves an error worth it, or
// the handiest sum where no single measure is close enough, to t or to that sum
// (or what is written would be written anew when read).
func (l ladder) choose(t float64, from Unit) (one, two scoop) {
	one, off := l.single(t, from)
	if off < 1e-9 {
		return one, scoop{}
	}
	pair, offPair := l.pair(t)
	handy := pair[1].scoops() <= 1
	if handy && (offPair < 1e-9 || off > worthAScoop && offPair < off/2) {
		return pair[0], pair[1]
	}
	if off <= closeEnough || offPair > off-1e-9 {
		return one, scoop{}
	}
	if near, offNear := l.single(l.total(pair), from); offNear <= closeEnough && !handy {
		return near, scoop{}
	}
	return pair[0], pair[1]
}

// total gives a sum in teaspoons.
func (l ladder) total(pair [2]scoop) float64 {
	_, first := l.size(pair[0].unit)
	_, second := l.size(pair[1].unit)
	return pair[0].about()*first + pair[1].about()*second
}

// single gives the best single measure for t teaspoons and its relative error.
// Equal ones go to the larger measure, but ½ tbsp only to an amount that was in
// tablespoons, which may also stay so up to half a cup.
func (l ladder) single(t float64, from Unit) (scoop, float64) {
	best, off := scoop{}, math.Inf(1)
	try := func(s scoop) {
		_, size := l.size(s.unit)
		if e := math.Abs(s.about()*size-t) / t; e < off-1e-9 {
			best, off = s, e
		}
	}
	if t >= l.cupA/4*0.9 {
		try(nearest(Cup, t/l.cupA, cupParts))
	}
	least, most := l.tbspAbout, l.cupA/4
	if from != Cup {
		most = l.cupA / 2
	}
	if from == Tablespoon {
		least /= 2
	}
	if t >= least*0.9 && t < most-1e-9 {
		try(nearest(Tablespoon, t/l.tbspAbout, halfParts))
	}
	switch {
	case t < 1:
		try(nearest(Teaspoon, t, tinyParts))
	case t < l.tbspAbout:
		try(nearest(Teaspoon, t, tspParts))
	}
	return best, off
}

// pair gives the handiest sum of two measures for t teaspoons and its relative
// error: one of the larger measures that fit, and what is left in tablespoons
// or teaspoons. A scoop more is worth one per cent of error less, and so is
// being exact.
func (l ladder) pair(t float64) (best [2]scoop, off float64) {
	off = math.Inf(1)
	cost := math.Inf(1)
	try := func(first, second scoop) {
		e := math.Abs(l.total([2]scoop{first, second})-t) / t
		c := first.scoops() + second.scoops() + 100*e
		if e > 1e-9 {
			c++
		}
		if second.unit == Teaspoon {
			c += 0.5
		}
		fits := second.about() > 0 && second.about() <= l.most(second.unit)
		if first.about() > 0 && fits && c < cost-1e-9 {
			best, off, cost = [2]scoop{first, second}, e, c
		}
	}
	switch {
	case t < l.tbspAbout:
		first := below(Teaspoon, t, tspParts)
		try(first, scoop{Teaspoon, 0, part{1, 8}})
		if t < 0.5 {
			try(below(Teaspoon, t, tinyParts), scoop{Pinch, 1, part{0, 1}})
		}
	case t < l.cupA/4:
		first := below(Tablespoon, t/l.tbspAbout, []part{{0, 1}})
		try(first, l.left(Teaspoon, t-first.about()*l.tbspAbout))
	default:
		for _, parts := range [][]part{cupParts, {{0, 1}, {1, 4}, {1, 3}, {1, 2}, {2, 3}}, {{0, 1}, {1, 4}, {1, 3}, {1, 2}}, {{0, 1}, {1, 4}}} {
			first := below(Cup, t/l.cupA, parts)
			rest := t - first.about()*l.cupA
			try(first, l.left(Tablespoon, rest/l.tbspAbout))
			try(first, l.left(Teaspoon, rest))
		}
	}
	return best, off
}

// most is how many u the second part of a sum may have: fewer teaspoons than
// two tablespoons, four tablespoons.
func (l ladder) most(u Unit) float64 {
	if u == Teaspoon {
		return 2*l.tbspAbout - 0.5
	}
	return 4
}

// left measures what is left beside the first measure, x of u, in halves; less
// than half a teaspoon in what spoons there are.
func (l ladder) left(u Unit, x float64) scoop {
	if u == Teaspoon && x < 1 {
		return nearest(u, x, tinyParts)
	}
	return nearest(u, x, halfParts)
}

// scoops counts how often a hand must fill a measure.
func (s scoop) scoops() float64 {
	n := float64(s.n)
	switch {
	case s.part.num == 0:
		return n
	case s.part.num == 1:
		return n + 1
	}
	return n + 2 // ⅔ and ¾ are two fillings
}

func (l ladder) showPair(exact Number, two [2]scoop) Shown {
	first, second := two[0].amount(), two[1].amount()
	one, _ := l.size(first.Unit)
	other, _ := l.size(second.Unit)
	return showSum(One(exact.Quo(other)), first, second, one.Quo(other), " + ")
}

// tinySpoon writes less than ⅛ tsp as a pinch or a smidgen.
func tinySpoon(exact Number, t float64) Shown {
	u, size := Pinch, ofTeaspoon[Pinch]
	if t < 3.0/64 {
		u, size = Smidgen, ofTeaspoon[Smidgen]
	}
	return show(One(exact.Quo(size)), Of(whole, u))
}

// spoonRange writes a range in the one unit that fits both ends best.
func (l ladder) spoonRange(exact Range, from Unit) Shown {
	lo, hi := exact.From.Float(), exact.To.Float()
	a, b, ok := l.rangeIn(lo, hi, from)
	if !ok {
		// No unit suits: stay with from, unless its rounding now suits another.
		_, size := l.size(from)
		a, b = nearest(from, lo/size, partsOf(from, lo)), nearest(from, hi/size, partsOf(from, hi))
		if c, d, ok := l.rangeIn(a.about()*size, b.about()*size, from); ok {
			a, b = c, d
		}
	}
	shown := Amount{Range{From: a.amount().From, To: b.amount().From}, a.unit}
	if shown.IsSingle() {
		size, _ := l.size(shown.Unit)
		one := l.spoon(shown.From.Mul(size), from)
		size, _ = l.size(one.Amount.Unit)
		one.ErrorPercent = errorOf(exact, toBase(one.Amount.Range, size))
		return one
	}
	return l.showSpoons(exact, shown)
}

// rangeIn gives both ends in the unit that suits them with the smallest error,
// from before a larger unit before a smaller; ok is false if none suits.
func (l ladder) rangeIn(lo, hi float64, from Unit) (a, b scoop, ok bool) {
	off := math.Inf(1)
	for _, u := range [...]Unit{from, Cup, Tablespoon, Teaspoon} {
		if !l.suits(u, lo, hi) {
			continue
		}
		_, size := l.size(u)
		x, y := nearest(u, lo/size, partsOf(u, lo)), nearest(u, hi/size, partsOf(u, hi))
		e := max(math.Abs(x.about()*size-lo)/max(lo, 1e-9), math.Abs(y.about()*size-hi)/hi)
		if e < off-1e-9 {
			a, b, off = x, y, e
		}
	}
	return a, b, off < math.Inf(1)
}

// suits tells whether a cook would write lo to hi teaspoons in u. The upper
// bound holds for what hi is rounded to, so that it holds again when read.
func (l ladder) suits(u Unit, lo, hi float64) bool {
	switch u {
	case Cup:
		return lo >= l.cupA/4*0.9
	case Tablespoon:
		return lo >= l.tbspAbout*0.45 && nearest(u, hi/l.tbspAbout, halfParts).about()*l.tbspAbout <= l.cupA/2+1e-9
	}
	return nearest(u, hi, tspParts).about() <= 2*l.tbspAbout+1e-9
}

func partsOf(u Unit, t float64) []part {
	switch {
	case u == Cup:
		return cupParts
	case u == Tablespoon:
		return halfParts
	case t < 1:
		return tinyParts
	}
	return tspParts
}

// smallSpoons writes pinches, dashes and smidgens: in their own unit up to
// four, then in teaspoons.
func (h Hand) smallSpoons(a Amount) Shown {
	if a.To.Cmp(four) <= 0 {
		return counted(a)
	}
	return h.spoons(Amount{a.Range.Scale(ofTeaspoon[a.Unit]), Teaspoon})
}
