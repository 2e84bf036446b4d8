package speech

import (
	"strings"

	"benchproof/kitchen/measure"
)

var (
	afterNot  = SetOf("percent o'clock am pm a.m p.m dollars dollar euros euro quid pence cents bucks years year months month th century centuries kilometres kilometers miles metres meters km degrees-turn times")
	cooler    = SetOf("cooler lower less hotter higher warmer colder")
	turnNouns = SetOf("turn angle turns bend rotation")
)

// isOtherwise tells numbers that are no amounts: years, prices, percentages,
// times of day, differences of heat and angles.
func (t Text) isOtherwise(s Said) bool {
	next := t.word(s.To)
	switch s.Kind {
	case Measure:
		return t.isPrice(s)
	case Count:
		if s.Amount.From.Equal(measure.Whole(1)) && next == "of" && some[t.word(s.To+1)] {
			return true // "one of these onions is a shallot"
		}
		if t.isOfPeople(s) {
			return true
		}
		if afterNot[next] && next != "times" || next == "past" || next == "per" && t.word(s.To+1) == "cent" {
			return true
		}
	case Heat:
		before := t.word(s.From - 1)
		return cooler[next] || turnNouns[next] || before == "by" || t.turnsAround(s)
	case Length:
		_, _, side := t.unit(s.From-2, true)
		return t.word(s.From-1) == "by" && t.word(s.From-2) != "open" && !IsNumberWord(t.word(s.From-2)) && !side // "taller by half an inch"
	case Time:
		if t.isAdjective(s) {
			return true
		}
		return next == "past" || next == "fast" || next == "slow" || next == "late" || next == "early" || next == "away"
	}
	return false
}

// some are words that make one one of several.
var some = SetOf("these those my your our")

// isOfPeople tells "between the four of them", "the two of us".
func (t Text) isOfPeople(s Said) bool {
	if t.word(s.From-1) != "the" {
		return false
	}
	if t.word(s.From-2) == "between" && t.endsAt(s.To-1) {
		return true // "a tablespoon between the two"
	}
	if t.word(s.To) != "of" {
		return false
	}
	switch t.word(s.To + 1) {
	case "us", "you":
		return true
	}
	return t.word(s.From-2) == "between" || t.word(s.From-2) == "among"
}

// isOfVessel tells the size of a dish or a bag from an amount: "a two litre dish", "it
// wants to hold two litres".
func (t Text) isOfVessel(s Said) bool {
	if s.Unit.Kind() != measure.Volume {
		return false
	}
	lead := s.From - 1
	for vague[t.word(lead)] {
		lead--
	}
	if w := t.word(lead); t.open(lead) && (w == "hold" || w == "holds") {
		return t.word(s.To) != "of"
	}
	if !t.open(s.To - 1) {
		return false
	}
	if spoons[s.Unit] && !(t.word(s.To-1) == "cup" && s.Amount.From.Cmp(measure.Whole(1)) > 0) {
		return false // "a cup, the dish": but "a 6-cup dish"
	}
	for k := s.To; k < s.To+3 && t.open(k-1) && !joins[t.word(k)] && t.word(k) != "other" && t.word(k) != "another"; k++ {
		if holders[t.word(k)] {
			return t.word(k+1) != "of" && (k == s.To || !strings.HasSuffix(t.word(s.To-1), "s")) // "a two gallon stock pot"
		}
	}
	return false
}

// IsVessel tells whether a word names what holds food or water.
func IsVessel(word string) bool { return holders[word] }

var holders = SetOf("dish pot pan saucepan casserole bowl jug basin mould mold crate bucket cooker barrel kettle flask tank drum tub")

// isAdjective tells "a two minute warning" from a time of cooking: the unit has no
// plural, and what follows is none of the kitchen's work.
func (t Text) isAdjective(s Said) bool {
	unit := t.word(s.To - 1)
	if unit != "minute" && unit != "hour" && unit != "day" && unit != "week" && unit != "second" || s.Article || !t.open(s.To-1) || s.Amount.From.Cmp(minutesIn[s.Unit]) <= 0 {
		return false
	}
	next := t.word(s.To)
	return next != "" && !joins[next] && !works[next]
}

// works are what a time can be of: "a ten minute rest".
var works = SetOf("rest simmer bake prove proof boil soak chill knead roast rise marinade fry cook cool steep stand infusion whisk each more mark or later before after until till")

// isPrice tells "two pounds ninety a block" from a weight.
func (t Text) isPrice(s Said) bool {
	if s.Unit != measure.Pound {
		return false
	}
	switch t.word(s.From - 1) {
	case "were", "was", "cost", "costs", "paid", "charge", "charged":
		return true
	}
	n, ok := t.number(s.To)
	if !ok || !t.open(s.To-1) || n.part || n.value.Cmp(measure.Whole(100)) >= 0 {
		return false
	}
	if _, _, unit := t.unit(n.to, !n.words); unit {
		return false
	}
	return n.to >= len(t.Words) || !t.open(n.to-1) || joins[t.word(n.to)] || t.word(n.to) == "each" || t.word(n.to) == "per"
}

// turnsAround tells "turn the tray ninety degrees" from a heat.
func (t Text) turnsAround(s Said) bool {
	if s.Oven != "" || s.Scale != "" || s.Bare {
		return false
	}
	for k := s.From - 1; k >= 0 && k >= s.From-5; k-- {
		switch t.word(k) {
		case "up", "down":
			return false // "turn it up to 180 degrees"
		case "turn", "rotate", "spin", "twist", "turned", "rotated":
			return !t.near(s.From, 6, ovens)
		}
		if t.Words[k].Stop == Sentence {
			break
		}
	}
	return false
}

// near tells whether one of the words stands within so many words before or
// behind word i.
func (t Text) near(i, reach int, words map[string]bool) bool {
	for k := max(0, i-reach); k < min(len(t.Words), i+reach); k++ {
		if w := t.Words[k].Text; words[w] && !(w == "baking" && bakings[t.word(k+1)]) {
			return true
		}
	}
	return false
}

// bakings are what is called after baking and says nothing of an oven.
var bakings = SetOf("powder soda tray sheet paper parchment tin dish potato potatoes apple apples")
