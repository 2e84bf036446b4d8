package ingredient

import (
	"slices"
	"strings"

	"benchproof/kitchen/measure"
)

// agree checks that the line's statements of one amount agree within 10 % where
// both are masses or both are volumes. A volume that depends on the system is
// right if it fits any: "150 ml / ¼ pint" can only be the imperial pint. Where
// only one fits, the line has said whose measure it means.
func (l *line) agree() {
	for _, other := range l.Equals {
		if l.Amount.Unit.Kind() != other.Unit.Kind() || !isWeighed(other.Unit) {
			continue
		}
		fits := fitting(l.Amount, other, l.System)
		switch {
		case len(fits) == 0:
			l.look("The amounts “" + plain(l.Amount) + "” and “" + plain(other) + "” are more than 10 % apart. Which is right?")
		case l.System == "" && dependsOnSystem(l.Amount.Unit) != dependsOnSystem(other.Unit):
			l.System = nearest(l.Amount, other, fits)
		}
	}
}

// look adds something to look at to the line's reason.
func (l *line) look(sentence string) {
	if l.Reason != "" {
		l.Reason += " "
	}
	l.Reason += sentence
}

// fitting lists the systems in which a and b agree within 10 %; only said, if
// the line names one.
func fitting(a, b measure.Amount, said measure.System) []measure.System {
	systems := measure.Systems()
	if said != "" {
		systems = []measure.System{said}
	}
	var fits []measure.System
	for _, s := range systems {
		if apart, ok := apart(a, b, s); ok && (apart.Cmp(tenth) <= 0 || isBookOunce(a, b)) {
			fits = append(fits, s)
		}
	}
	return fits
}

// isBookOunce tells the round ounce of British books, "25 g / 1 oz", "100 g / 4
// oz": common practice, no source.
func isBookOunce(a, b measure.Amount) bool {
	if a.Unit == measure.Ounce && b.Unit == measure.Gram {
		a, b = b, a
	}
	return a.Unit == measure.Gram && b.Unit == measure.Ounce && a.From.Equal(b.From.Mul(measure.Whole(25))) &&
		a.To.Equal(b.To.Mul(measure.Whole(25)))
}

// nearest picks the system in which the two agree best, if they agree closely;
// "" if nothing speaks for one. Systems that borrow a size agree as well as its
// owner: then it is the owner of pints, or of cups, that is meant.
func nearest(a, b measure.Amount, among []measure.System) measure.System {
	unit := a.Unit
	if !dependsOnSystem(unit) {
		unit = b.Unit
	}
	owner, least := owners[unit], closely
	if owner == measure.Imperial && !slices.Contains(among, measure.US) {
		least = tenth // "150 ml / ¼ pint" is no US pint
	}
	var best []measure.System
	for _, s := range among {
		switch by, _ := apart(a, b, s); {
		case by.Cmp(least) < 0:
			least, best = by, []measure.System{s}
		case by.Equal(least):
			best = append(best, s)
		}
	}
	switch {
	case len(best) == 1:
		return best[0]
	case slices.Contains(best, owner):
		return owner
	case slices.Contains(best, measure.US) && owner == measure.Imperial:
		return measure.US // whose pint the US label borrows
	}
	return ""
}

// owners are the systems that others borrow a size from.
var owners = map[measure.Unit]measure.System{
	measure.Cup: measure.Metric, measure.Pint: measure.Imperial, measure.Quart: measure.Imperial, measure.Gallon: measure.Imperial,
	measure.FluidOunce: measure.Imperial, measure.Gill: measure.Imperial,
}

// apart gives how far b is from a, as a share of a; the larger of both ends.
func apart(a, b measure.Amount, s measure.System) (measure.Number, bool) {
	c, err := measure.Convert(b, a.Unit, s, s)
	if err != nil || a.From.Sign() <= 0 || a.To.Sign() <= 0 {
		return measure.Number{}, false
	}
	from, to := share(a.From, c.From), share(a.To, c.To)
	if from.Cmp(to) > 0 {
		return from, true
	}
	return to, true
}

func share(a, b measure.Number) measure.Number {
	d := b.Sub(a)
	if d.Sign() < 0 {
		d = a.Sub(b)
	}
	return d.Quo(a)
}

func dependsOnSystem(u measure.Unit) bool {
	_, fixed := measure.System("").Millilitres(u)
	return u.Kind() == measure.Volume && !fixed
}

func plain(a measure.Amount) string { return strings.ReplaceAll(a.String(), "\u00a0", " ") }

var (
	tenth   = measure.Ratio(1, 10)
	closely = measure.Ratio(3, 100)
)
