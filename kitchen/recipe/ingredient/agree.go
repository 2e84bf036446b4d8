package ingredient

import (
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
		case l.System == "" && len(fits) < len(measure.Systems()) && dependsOnSystem(l.Amount.Unit) != dependsOnSystem(other.Unit):
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
		if apart, ok := apart(a, b, s); ok && apart.Cmp(tenth) <= 0 {
			fits = append(fits, s)
		}
	}
	return fits
}

// nearest picks the system in which the two agree best, if they agree closely;
// "" if nothing speaks for one. Systems that borrow a size agree as well as its
// owner: then it is the owner of pints, or of cups, that is meant.
func nearest(a, b measure.Amount, among []measure.System) measure.System {
	var best []measure.System
	least := closely
	for _, s := range among {
		switch by, _ := apart(a, b, s); by.Cmp(least) {
		case -1:
			least, best = by, []measure.System{s}
		case 0:
			best = append(best, s)
		}
	}
	if len(best) == 1 {
		return best[0]
	}
	unit := a.Unit
	if !dependsOnSystem(unit) {
		unit = b.Unit
	}
	owner := measure.Imperial
	switch unit {
	case measure.Cup:
		owner = measure.Metric
	case measure.Pint, measure.Quart, measure.Gallon, measure.FluidOunce, measure.Gill:
	default:
		return ""
	}
	for _, s := range best {
		if s == owner {
			return owner
		}
	}
	return ""
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
