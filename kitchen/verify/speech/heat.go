package speech

import "benchproof/kitchen/measure"

var ovens = SetOf("oven ovens preheat preheated preheating fan conventional bake baking roast roasting smoker celsius fahrenheit centigrade")

// degrees reads "degrees", "°C", "F", "celsius", "fan" behind a number.
func (t Text) degrees(s *Said) bool {
	k := s.To
	if k > 0 && t.Words[k-1].Stop == Sentence {
		return false
	}
	said := false
	if w := t.word(k); w == "degrees" || w == "degree" {
		said = true
		k++
	}
	switch w := t.word(k); {
	case w == "celsius" || w == "centigrade":
		s.Scale, said = "C", true
		k++
	case w == "fahrenheit":
		s.Scale, said = "F", true
		k++
	case (w == "c" || w == "f") && (said || s.Amount.From.Cmp(measure.Whole(40)) >= 0 || t.Words[k].Join) && t.open(k-1):
		s.Scale, said = map[string]string{"c": "C", "f": "F"}[w], true
		k++
	}
	if to, scale := t.scaleIfUsed(k); s.Scale == "" && scale != "" {
		s.Scale, said, k = scale, true, to
	}
	if said {
		s.To, s.Bare = k, false
	}
	if s.Amount.From.IsWhole() && t.scaleWords(s) {
		said = true
	}
	before := *s
	found := t.ovenWords(s)
	if !said && (!found || s.Amount.From.Cmp(measure.Whole(80)) < 0) {
		*s = before // "a fan oven": no setting
		return false
	}
	s.Kind = Heat
	s.Bare = !said
	return true
}

// scaleIfUsed reads "if you're using celsius" at word k.
func (t Text) scaleIfUsed(k int) (to int, scale string) {
	if t.word(k) != "if" || !t.open(k-1) {
		return k, ""
	}
	for i := k + 1; i < k+6; i++ {
		switch t.word(i) {
		case "celsius", "centigrade":
			return i + 1, "C"
		case "fahrenheit":
			return i + 1, "F"
		}
	}
	return k, ""
}

var leadsToSetting = SetOf("to at on is it's oven goes set about around reads read hits reach reaches says smoker grill")

// probes and heated are words of what has a temperature besides an oven.
var (
	probes = SetOf("thermometer thermometers probe internal temperature")
	heated = SetOf("heat hot oil temperature thermometer probe internal sugar syrup degrees smoker grill barbecue pit coals reads hits fryer")
)

// isSetting tells whether a bare number is an oven's setting.
func (t Text) isSetting(s Said, n number) bool {
	if before := t.word(s.From - 1); s.Amount.IsSingle() && (t.onThermometer(n.to) || t.word(n.to) == "internal" || (before == "reads" || before == "says" || before == "say" || before == "read" || before == "show" || before == "shows" || before == "it's") && t.near(s.From, 12, probes)) && n.value.Cmp(measure.Whole(30)) >= 0 {
		return true
	}
	if t.isRead(s, n) || t.isOfHundreds(s) || t.isInMeat(s, n) || t.isOfOil(s, n) {
		return true
	}
	if sought[t.word(s.From-1)] && t.near(s.From, 10, probes) && n.value.Cmp(measure.Whole(100)) >= 0 && (n.to >= len(t.Words) || !t.open(n.to-1) || joins[t.word(n.to)]) {
		return true // "I'm after a hundred and eighty, and I've a thermometer"
	}
	if !isOvenNumber(n) || !s.Amount.IsSingle() || n.value.Cmp(measure.Whole(100)) < 0 {
		return false
	}
	if v, ok := n.value.Int(); !ok || v%5 != 0 {
		return false
	}
	if t.word(n.to) == "of" || t.word(n.to) == "the" {
		return false
	}
	before := t.word(s.From - 1)
	switch {
	case t.isBrought(s, n):
		return true
	case before == "at" && (n.to >= len(t.Words) || !t.open(n.to-1)) && t.near(s.From, 3, SetOf("oil fat syrup sugar")):
		return true
	case n.short && leadsToSetting[before]:
		return t.near(s.From, 12, ovens) || t.near(s.From, 10, heated)
	case leadsToSetting[before]:
		return t.near(s.From, 8, ovens) || before != "at" && t.near(s.From, 6, probes)
	case n.short:
		return t.near(s.From, 8, ovens)
	}
	return t.besideHeat(s)
}

// isOfHundreds tells "in the oven, four and a quarter", which means 425.
func (t Text) isOfHundreds(s Said) bool {
	v := s.Amount.From.Mul(measure.Whole(4))
	return s.Amount.IsSingle() && !s.Amount.From.IsWhole() && v.IsWhole() && v.Cmp(measure.Whole(8)) > 0 && v.Cmp(measure.Whole(22)) < 0 && t.near(s.From, 4, SetOf("oven preheat preheated"))
}

// isRead tells a number that a thermometer is to show: "thermometer in the thigh, and
// the number you want to see is seventy-four."
func (t Text) isRead(s Said, n number) bool {
	before := t.word(s.From - 1)
	if !s.Amount.IsSingle() || n.value.Cmp(measure.Whole(40)) < 0 || before != "is" && before != "it's" && before != "see" && before != "for" && before != "to" && before != "at" && before != "says" && before != "say" && before != "shows" && before != "read" && before != "reads" && before != "want" && before != "after" && before != "need" {
		return false
	}
	ends := n.to >= len(t.Words) || !t.open(n.to-1) || t.Words[n.to-1].Rest || joins[t.word(n.to)] && (before != "at" || t.word(n.to) == "in")
	return ends && (n.value.Cmp(measure.Whole(100)) >= 0 && (before == "read" || before == "reads") || t.near(s.From, probeReach, SetOf("thermometer thermometers probe")))
}

// isInMeat tells "you're after sixty-five in the thigh".
func (t Text) isInMeat(s Said, n number) bool {
	if !s.Amount.IsSingle() || n.value.Cmp(measure.Whole(40)) < 0 || t.word(n.to) != "in" || t.word(n.to+1) != "the" {
		return false
	}
	switch t.word(n.to + 2) {
	case "thigh", "breast", "thickest", "centre", "center", "core", "middle":
		return !t.near(s.From, 3, SetOf("bake rack shelf tray"))
	}
	return false
}

// isOfOil tells "the oil wants to be one sixty", "a hundred and forty on the oil".
func (t Text) isOfOil(s Said, n number) bool {
	if !s.Amount.IsSingle() || !isOvenNumber(n) || n.value.Cmp(measure.Whole(100)) < 0 {
		return false
	}
	if t.word(n.to) == "on" && t.word(n.to+1) == "the" && t.word(n.to+2) == "oil" {
		return true
	}
	before := t.word(s.From - 1)
	ends := n.to >= len(t.Words) || !t.open(n.to-1) || joins[t.word(n.to)]
	if !ends || before != "at" && before != "to" && before != "be" && before != "up" {
		return false
	}
	for k := s.From - 2; k >= 0 && k >= s.From-5 && t.Words[k].Stop != Sentence; k-- {
		if w := t.word(k); w == "oil" || w == "fat" || w == "fryer" {
			return true
		}
	}
	return false
}

// probeReach is how many words may stand between a thermometer and what it shows.
const probeReach = 18

// onThermometer tells whether "on the thermometer" stands at word i.
func (t Text) onThermometer(i int) bool {
	if w := t.word(i); w != "on" && w != "in" {
		return false
	}
	return probes[t.word(i+1)] || probes[t.word(i+2)] || probes[t.word(i+3)]
}

// isBrought tells "get that up to four twenty five", "sitting at a hundred and
// sixty": no noun follows.
func (t Text) isBrought(s Said, n number) bool {
	lead := s.From - 1
	for w := t.word(lead); w == "about" || w == "around" || w == "a" || w == "roughly"; w = t.word(lead) {
		lead--
	}
	if w := t.word(lead); w != "to" && w != "at" || !n.short && n.to < len(t.Words) && t.open(n.to-1) && !joins[t.word(n.to)] && !t.near(s.From, 14, ovens) {
		return false
	}
	if _, _, unit := t.unit(n.to, false); unit {
		return false
	}
	for k := lead - 1; k >= lead-4 && t.open(k); k-- {
		if brings[t.word(k)] {
			return true
		}
	}
	return false
}

var brings = SetOf("warm warms warming cool cools take takes knock lower back up down get gets bring brings crank heat heats sitting sits settle settles hold holds drop drops turn turned keep")

// sought are words by which a host says what heat is wanted.
var sought = SetOf("after for want wants need it's")

// besideHeat tells whether the number follows another setting: "190, 170 fan".
func (t Text) besideHeat(s Said) bool {
	k := s.From - 1
	for k >= 0 && k >= s.From-3 && (t.word(k) == "or" || t.word(k) == "that's" || t.word(k) == "degrees" || t.word(k) == "fan" || t.word(k) == "which" || t.word(k) == "is") {
		k--
	}
	return k < s.From-1 && t.word(s.From-1) != "or" && t.near(s.From, 5, SetOf("degrees fan celsius fahrenheit oven"))
}
