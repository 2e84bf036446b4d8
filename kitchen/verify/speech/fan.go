package speech

import "benchproof/kitchen/measure"

// fanReach is how many words may stand between the talk of a fan and its setting.
const fanReach = 14

// fans takes bare numbers behind the talk of a fan for its settings, and the number
// before for the oven's without: "you put it on two forty, or if you have the fan that's
// one eighty", "160, and if you've got a fan in there, then 110".
func (t Text) fans(all []Said) {
	for i := range all {
		s := &all[i]
		if t.isBareOven(*s) && t.isBehindFan(*s, all[:i]) {
			s.Kind, s.Bare, s.Oven = Heat, true, "fan"
		}
		if i == 0 || s.Kind != Heat || s.Oven != "fan" && (s.Scale == "" || s.Scale == "gas" || !saysAgain[t.word(s.From-1)]) {
			continue
		}
		if before := &all[i-1]; t.isBareOven(*before) && s.From-before.To <= fanReach {
			before.Kind, before.Bare = Heat, true
		}
	}
}

// saysAgain are words right before a heat that says the one before it again, in the other
// scale: "two hundred, so that's about a hundred and eighty celsius".
var saysAgain = SetOf("that's which like about around so is it's")

// isBareOven tells a number without a unit that an oven can be set to.
func (t Text) isBareOven(s Said) bool {
	if s.Kind != Count || s.Unit != "" || s.Struck || !s.Amount.IsSingle() || !isOvenNumber(number{value: s.Amount.From}) || s.Amount.From.Cmp(measure.Whole(100)) < 0 {
		return false
	}
	v, ok := s.Amount.From.Int()
	return ok && v%5 == 0
}

// leadsToFan are words right before a fan's setting.
var leadsToFan = SetOf("then that that's it's make at to on do go goes is want you i'd say about")

// isBehindFan tells whether a fan is spoken of before a number, with no other number
// between them.
func (t Text) isBehindFan(s Said, before []Said) bool {
	if !leadsToFan[t.word(s.From-1)] {
		return false
	}
	from := max(0, s.From-fanReach)
	if len(before) > 0 {
		from = max(from, before[len(before)-1].To)
	}
	for k := from; k < s.From; k++ {
		if w := t.word(k); w == "fan" || w == "convection" {
			return true
		}
	}
	return false
}
