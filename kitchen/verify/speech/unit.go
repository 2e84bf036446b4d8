package speech

import (
	"strings"

	"benchproof/kitchen/measure"
)

// Units of time that measure does not know.
const (
	week  = measure.Unit("week")
	month = measure.Unit("month")
	year  = measure.Unit("year") // of what keeps

	fortnight = measure.Unit("fortnight")
)

// calendar are those of them that are said of any wait.
var calendar = map[string]measure.Unit{"week": week, "fortnight": fortnight, "month": month}

// keeps are words before a time for which something keeps, and keepReach how far before it they
// may stand: other years are somebody's age.
var keeps = SetOf("keep keeps good lasts freeze freezes freezer")

const keepReach = 7

// notUnits are words that measure's vocabulary knows as units and that speech
// uses otherwise, or letters that only stand right behind figures.
var notUnits = SetOf("go in ins t ts tb c p ear ears strip strips bar bars box boxes bag bags ball balls block blocks piece pieces each ea tub tubs can cube cubes scoop scoops env cp # T m gr")

// ofOnly are units only before "of": of ribs and heads there are others.
var ofOnly = SetOf("rib ribs head")

// across are words behind a length, also where it is said in "mil".
var across = SetOf("thick wide long deep across apart")

var letters = map[string]measure.Unit{"g": measure.Gram, "l": measure.Litre, "h": measure.Hour, "s": measure.Second, "m": measure.Minute}

// spoon reads which spoon is meant by the words behind it: "three spoons, the big ones",
// "two spoons, small". No other spoon is a measure.
func (t Text) spoon(i int) (u measure.Unit, to int, ok bool) {
	for k := i; k < i+3; k++ {
		switch t.word(k) {
		case "big", "large", "soup":
			return measure.Tablespoon, k + 1, true
		case "small", "little", "tea", "coffee":
			return measure.Teaspoon, k + 1, true
		case "the", "of", "a":
		default:
			return "", i, false
		}
	}
	return "", i, false
}

// unit reads the unit at word i. figures tells that a number in figures stands
// right before it.
func (t Text) unit(i int, figures bool) (u measure.Unit, to int, ok bool) {
	w := t.word(i)
	if w == "" || i > 0 && t.Words[i-1].Stop == Sentence || t.Words[i].Is {
		return "", i, false
	}
	if u, ok := letters[w]; ok {
		if w == "s" && t.Words[i].Join && i > 0 && len(t.Words[i-1].Text) == 4 {
			return "", i, false // "the 1960s"
		}
		return u, i + 1, figures && (w == "g" || w == "l" || t.Words[i].Join)
	}
	switch w {
	case "fluid", "fl":
		switch t.word(i + 1) {
		case "ounce", "ounces", "oz":
			return measure.FluidOunce, i + 2, true
		}
		return "", i, false
	case "tea", "table", "dessert":
		switch t.word(i + 1) {
		case "spoon", "spoons", "spoonful", "spoonfuls":
			return map[string]measure.Unit{"tea": measure.Teaspoon, "table": measure.Tablespoon, "dessert": measure.Dessertspn}[w], i + 2, true
		}
		return "", i, false
	case "spoon", "spoons", "spoonful", "spoonfuls":
		return t.spoon(i + 1)
	case "week", "weeks", "fortnight", "fortnights", "month", "months":
		return calendar[strings.TrimSuffix(w, "s")], i + 1, true
	case "pounder", "pounders":
		return measure.Pound, i + 1, true
	case "year", "years":
		return year, i + 1, t.near(i, keepReach, keeps)
	case "mil", "mils", "mill", "mills":
		if across[t.word(i+1)] {
			return measure.Millimetre, i + 1, true
		}
		return measure.Millilitre, i + 1, true
	case "can":
		if t.word(i+1) == "of" || figures {
			return measure.Tin, i + 1, true
		}
		return "", i, false
	case "in":
		return measure.Inch, i + 1, figures && t.Words[i].Join
	}
	if notUnits[w] || ofOnly[w] && t.word(i+1) != "of" {
		return "", i, false
	}
	u, ok = measure.ParseUnit(w)
	if !ok || u == measure.Each || u.Kind() == measure.Temperature {
		return "", i, false
	}
	if next := t.word(i + 1); w == "pound" && (next == "cake" || next == "cakes") || w == "cup" && (next == "cakes" || next == "cake") || w == "stick" && next == "blender" {
		return "", i, false
	}
	return u, i + 1, true
}

// isTime tells units of time; measure does not know the week.
func isTime(u measure.Unit) bool {
	return u == week || u == month || u == year || u == fortnight || u.Kind() == measure.Time
}

var minutesIn = map[measure.Unit]measure.Number{
	measure.Second: measure.Ratio(1, 60), measure.Minute: measure.Whole(1), measure.Hour: measure.Whole(60),
	measure.Day: measure.Whole(24 * 60), week: measure.Whole(7 * 24 * 60), month: measure.Whole(30 * 24 * 60), year: measure.Whole(365 * 24 * 60),
	fortnight: measure.Whole(14 * 24 * 60),
}

// ladder has the units of time from the shortest on.
var ladder = map[measure.Unit]int{measure.Second: 1, measure.Minute: 2, measure.Hour: 3, measure.Day: 4, week: 5, month: 6, year: 7}

// IsNextUnit tells whether of two units of time one is the next longer: hours and
// minutes, weeks and months.
func IsNextUnit(a, b measure.Unit) bool {
	gap := ladder[a] - ladder[b]
	return ladder[a] > 0 && ladder[b] > 0 && (gap == 1 || gap == -1)
}

// Figure is a time in the unit that is said: 2 of "two months".
func (s Said) Figure() measure.Range {
	if per, ok := minutesIn[s.Unit]; ok {
		return s.Amount.Range.Scale(measure.Whole(1).Quo(per))
	}
	return s.Amount.Range
}

// stretch makes s a time in minutes and reads what more belongs to it: "an hour
// and a half", "2 hours 20", "30 minutes to an hour", "a minute or two".
func (t Text) stretch(s *Said) {
	per := minutesIn[s.Unit]
	s.Kind = Time
	s.Amount.Range = s.Amount.Range.Scale(per)
	s.Amount.Unit = measure.Minute
	before := s.To
	t.half(s, per)
	if s.To > before {
		return
	}
	if t.smaller(s, per) {
		return
	}
	t.longerEnd(s, per)
}

// smaller adds the minutes of "an hour and twenty minutes", "2 hours 30".
func (t Text) smaller(s *Said, per measure.Number) bool {
	if !s.Amount.IsSingle() || per.Cmp(measure.Whole(1)) < 0 || s.Unit == measure.Day || s.Unit == week || s.Unit == month || !t.open(s.To-1) {
		return false
	}
	k := s.To
	joined := t.word(k) == "and"
	if joined {
		k++
	}
	n, ok := t.number(k)
	if !ok || n.part || n.value.Cmp(measure.Whole(60)) >= 0 {
		return false
	}
	rng := measure.One(n.value)
	u, to, ok := t.unit(n.to, !n.words)
	switch {
	case ok && isTime(u) && minutesIn[u].Cmp(per) < 0:
		rng = rng.Scale(minutesIn[u])
	case !ok && s.Unit == measure.Hour && n.value.Cmp(measure.Whole(10)) >= 0 && (joined || t.bareMinutes(n.to, joined)):
		to = n.to
	default:
		return false
	}
	s.Amount.Range = s.Amount.Range.Add(rng)
	s.To, s.Article = to, false
	return true
}

// bareMinutes tells whether the minutes of "an hour and twenty" may stand
// without their word before word i.
func (t Text) bareMinutes(i int, joined bool) bool {
	if i >= len(t.Words) || t.Words[i-1].Stop != None {
		return true
	}
	switch t.word(i) {
	case "until", "till", "then", "and", "in", "at", "for", "with", "on", "total", "so", "or", "now", "it's", "that's", "before", "you", "the", "i", "we":
		return true
	}
	return false
}

// longerEnd reads the upper end of "30 minutes to an hour", "a minute or two".
func (t Text) longerEnd(s *Said, per measure.Number) {
	w := t.word(s.To)
	if w != "to" && w != "or" || !s.Amount.IsSingle() || !t.open(s.To-1) {
		return
	}
	k := s.To + 1
	if n, ok := t.number(k); ok {
		if n.part && (t.word(n.to) == "an" || t.word(n.to) == "a") {
			n.to++
		}
		upper := n.value
		u, to, ok := t.unit(n.to, !n.words)
		switch {
		case ok && minutesIn[u].Sign() > 0:
			upper = upper.Mul(minutesIn[u])
		case !ok && w == "or" && upper.Equal(measure.Whole(2)):
			upper, to = upper.Mul(per), n.to
			s.About = true
		default:
			return
		}
		if upper.Cmp(s.Amount.From) > 0 {
			s.Amount.To, s.To = upper, to
		}
		return
	}
	if upper, ok := t.articled(k); ok && upper.Kind == Time && upper.Amount.IsSingle() && upper.Amount.From.Cmp(s.Amount.From) > 0 {
		s.Amount.To, s.To, s.Article = upper.Amount.From, upper.To, false
	}
}
