package speech

import (
	"strings"

	"benchproof/kitchen/measure"
)

// articled reads "a cup", "an hour and a half", "another tablespoon", "one" is
// a number and read elsewhere.
func (t Text) articled(i int) (Said, bool) {
	switch t.word(i) {
	case "a", "an", "another":
	case "teaspoon", "tablespoon", "cup", "pound", "litre", "kilo", "pint", "stick":
		return t.unitAlone(i)
	default:
		return t.ordinal(i)
	}
	if !t.open(i) {
		return Said{}, false
	}
	s := Said{From: i, To: i + 1, Amount: measure.Of(measure.Whole(1), ""), Article: true, More: t.word(i) == "another"}
	if n, ok := t.number(i + 1); ok && t.word(i) == "another" || ok && further[t.word(i+1)] {
		s.To, s.Amount, s.Digits, s.Article = n.to, measure.Of(n.value, ""), !n.words, false
		if n.part {
			return t.part(s, n)
		}
		t.ranged(&s, n)
		if t.measured(&s) {
			return s, true
		}
		return t.bare(s, n)
	}
	if further[t.word(i+1)] || vague[t.word(i+1)] { // "a further 50 mil", "a good 10 minutes"
		if n, ok := t.number(i + 2); ok {
			s.More = s.More || further[t.word(i+1)]
			s.To, s.Amount, s.Digits, s.Article = n.to, measure.Of(n.value, ""), !n.words, false
			if n.part {
				return t.part(s, n)
			}
			t.ranged(&s, n)
			return s, t.measured(&s)
		}
	}
	if !t.measured(&s) {
		if t.word(i+1) == "whole" && t.word(i+2) != "lot" && t.word(i+2) != "load" && t.word(i) != "another" {
			s.Kind, s.To = Count, i+2
			return s, true
		}
		return s, false
	}
	if s.Kind == Heat || s.Unit == measure.Millilitre || t.isHolder(s) || money[t.word(i-1)] {
		return s, false
	}
	return s, !t.isIdiom(s)
}

// unitAlone reads a unit that goes without its article in a list: "two cups of
// flour, tablespoon of baking powder".
func (t Text) unitAlone(i int) (Said, bool) {
	u, ok := measure.ParseUnit(t.word(i))
	s := Said{Kind: Measure, From: i, To: i + 1, Unit: u, Amount: measure.Of(measure.Whole(1), u), Article: true}
	if !ok || !t.open(i) || beforeUnit[t.word(i-1)] && t.open(i-1) {
		return s, false
	}
	if t.half(&s, measure.Whole(1)); s.To > i+1 {
		return s, true // "potatoes, pound and a half"
	}
	if (u == measure.Teaspoon || u == measure.Tablespoon) && t.endsAt(i) && i > 0 && !IsNumberWord(t.word(i-1)) {
		return s, true // "salt, teaspoon."
	}
	return s, t.word(i+1) == "of" && t.word(i+2) != "the" && (u.Kind() == measure.Volume || u == measure.Stick) && u != measure.Pint && u != measure.Litre
}

// beforeUnit are words before a unit that make it a thing or a kind.
var beforeUnit = SetOf("the this that your my our each every per level heaped measuring first second third last other big small whole same")

// ordinals are words that mean one more of what was measured before.
var ordinals = SetOf("second third fourth other last final next remaining")

// ordinal reads "the second cup", "the other stick".
func (t Text) ordinal(i int) (Said, bool) {
	if t.word(i) == "whole" && t.word(i-1) == "the" && t.open(i) {
		u, to, ok := t.unit(i+1, true)
		return Said{Kind: Measure, From: i, To: to, Unit: u, Amount: measure.Of(measure.Whole(1), u), Article: true}, ok && u.Kind() == measure.Count && !strings.HasSuffix(t.word(to-1), "s")
	}
	if !ordinals[t.word(i)] || t.word(i-1) != "the" && t.word(i-1) != "that" || !t.open(i) {
		return Said{}, false
	}
	u, to, ok := t.unit(i+1, false)
	if !ok || u.Kind() != measure.Mass && u.Kind() != measure.Volume && u.Kind() != measure.Count || strings.HasSuffix(t.word(to-1), "s") {
		return Said{}, false
	}
	return Said{Kind: Measure, From: i, To: to, Unit: u, Amount: measure.Of(measure.Whole(1), u), Article: true, More: true}, true
}

// money are words before "a litre" that make it a price.
var money = SetOf("euro euros dollar dollars quid pounds bucks buck pence cents rand rupees kronor")

// isHolder tells what something is kept or mixed in from an amount: "slake it in a
// cup", "out of a jar".
func (t Text) isHolder(s Said) bool {
	if s.Unit != measure.Cup && !isPack[s.Unit] || t.word(s.To) == "of" {
		return false
	}
	switch t.word(s.From - 1) {
	case "in", "into", "from":
		return true
	case "of":
		return t.word(s.From-2) == "out"
	}
	return false
}

// isIdiom tells "in a minute", "a second", "a day" from stretches of time.
func (t Text) isIdiom(s Said) bool {
	if s.Kind != Time {
		return false
	}
	before := t.word(s.From - 1)
	switch s.Unit {
	case measure.Second:
		return s.To == s.From+2
	case measure.Minute:
		return before == "in" || before == "wait" || before == "give" || before == "got" || before == "just" || t.word(s.From-2) == "give" || t.word(s.To) == "ago"
	case measure.Day, week, month:
		return before != "for" && before != "within" && s.To == s.From+2 || t.word(s.From-1) == "once"
	}
	return false
}
