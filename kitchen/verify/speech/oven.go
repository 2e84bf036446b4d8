package speech

import "benchproof/kitchen/measure"

// Whose setting a heat is, and on which scale, is said in many ways on either side
// of the number: "180, or 160 in a fan oven", "if you've a fan drop it to 160",
// "for those of you on Celsius that's 180". All of it is common practice, no source.

const (
	ovenReach  = 8 // words behind a setting in which its oven is named
	ovenLeads  = 8 // words that may stand between an oven and its setting
	scaleReach = 6 // words behind a setting in which its scale is named
	fanNear    = 12
)

var (
	fans = SetOf("fan convection")
	// ovenLinks lead from a setting to its oven, ovenLead from an oven to its setting.
	ovenLinks = SetOf("he's she's they're in with the a an for if you your on of using it's is that's use have has got you've you're forced yours were one my")
	ovenLead  = SetOf("put set at to in oven ovens it's that's is that would be make it you want you'll need go for so then about around assisted forced folk folks people lot crowd take do does drop knock down bring turn one ones them just maybe like")
	negations = SetOf("no not without haven't hasn't isn't don't")
)

// ovenWords reads behind a setting whose it is: "fan", "in a fan oven", "if you've no
// fan", "conventional".
func (t Text) ovenWords(s *Said) bool {
	negated := false
	for i := s.To; i < s.To+ovenReach && i < len(t.Words) && t.Words[i-1].Stop != Sentence; i++ {
		switch w := t.word(i); {
		case fans[w] && negated, w == "conventional":
			s.Oven, s.To = "conventional", t.behindOven(i)
			return true
		case fans[w] && t.isForNext(*s, i):
			return false
		case fans[w]:
			s.Oven, s.To = "fan", t.behindOven(i)
			return true
		case (w == "with" || w == "without") && t.endsAt(i) && t.near(s.From, fanNear, fans):
			s.Oven, s.To = map[string]string{"with": "fan", "without": "conventional"}[w], i+1
			return true
		case negations[w]:
			negated = true
		case !ovenLinks[w]:
			return false
		}
	}
	return false
}

// behindOven gives the word behind an oven that is named at word i.
func (t Text) behindOven(i int) int {
	if w := t.word(i + 1); t.open(i) && (w == "oven" || w == "setting") {
		return i + 2
	}
	return i + 1
}

// endsAt tells whether a part of a sentence ends with word i.
func (t Text) endsAt(i int) bool { return i+1 >= len(t.Words) || !t.open(i) || t.Words[i].Rest }

// isForNext tells whether the fan at word i belongs to a number behind it and not to
// the setting s before: "200, fan 180". Where no stop tells, the lower is the fan's.
func (t Text) isForNext(s Said, i int) bool {
	n, ok := t.ledNumber(i + 1)
	if !ok {
		return false
	}
	if before := t.Words[s.To-1].Stop; before != None {
		return true
	}
	return t.open(i) && n.value.Cmp(s.Amount.From) < 0
}

// ledNumber reads an oven's number behind words that lead to it from word i on.
func (t Text) ledNumber(i int) (number, bool) {
	for end := i + ovenLeads; i < end && t.open(i-1); i++ {
		if n, ok := t.number(i); ok && isOvenNumber(n) {
			_, _, unit := t.unit(n.to, !n.words)
			return n, !unit
		}
		if !ovenLead[t.word(i)] {
			break
		}
	}
	return number{}, false
}

// ovenFirst reads "fan 160", "a fan oven that would be one sixty degrees", "on an
// electric oven you want 180", "in Celsius that's 120".
func (t Text) ovenFirst(i int) (Said, bool) {
	s := Said{Kind: Heat, From: i, Bare: true}
	plain := false
	switch w := t.word(i); w {
	case "fan", "convection":
		s.Oven, plain = "fan", true
	case "conventional":
		s.Oven = w
	case "electric", "normal", "regular", "ordinary", "static":
		if t.word(i+1) != "oven" {
			return Said{}, false
		}
		s.Oven = "conventional"
	case "otherwise":
		if !t.near(i, fanNear, fans) {
			return Said{}, false
		}
		s.Oven, plain = "conventional", true
	case "celsius", "centigrade":
		s.Scale, s.Bare = "C", false
	case "fahrenheit", "america":
		s.Scale, s.Bare = "F", false
	default:
		return Said{}, false
	}
	n, ok := t.ledNumber(i + 1)
	if _, direct := t.number(i + 1); !ok || direct && !plain {
		return Said{}, false
	}
	s.Amount, s.To = measure.Of(n.value, ""), n.to
	scale := s.Scale
	if t.degrees(&s); s.Scale == "" {
		s.Scale = scale
	}
	return s, true
}

// isOtherOven tells "200, or 220 if it's a fan", whose second number is another
// oven's and no upper end.
func (t Text) isOtherOven(n, m number) bool {
	if !isOvenNumber(n) || !isOvenNumber(m) || t.word(n.to) != "or" {
		return false
	}
	setting := Said{To: m.to}
	return t.ovenWords(&setting)
}

// scales are whose scale is meant by name.
var scales = map[string]string{"celsius": "C", "centigrade": "C", "metric": "C", "europe": "C", "europeans": "C",
	"fahrenheit": "F", "american": "F", "americans": "F", "america": "F"}

var scaleLinks = SetOf("in for if you're you my the those of you on your over friends folks all side scale if")

// scaleWords reads the scale behind a setting: "230 for the Celsius crowd", "350 for
// my American friends", "390 in old money".
func (t Text) scaleWords(s *Said) bool {
	if s.Scale != "" || s.Amount.From.Cmp(measure.Whole(40)) < 0 || s.Amount.From.Cmp(measure.Whole(100)) < 0 && !t.near(s.From, 6, SetOf("degrees fahrenheit celsius")) || !t.near(s.From, fanNear, ovens) && !t.near(s.From, fanNear, heated) && !t.near(s.From, fanNear, SetOf("gas")) {
		return false
	}
	for i := s.To; i < s.To+scaleReach && i < len(t.Words) && t.Words[i-1].Stop != Sentence; i++ {
		w := t.word(i)
		if scale := scales[w]; scale != "" {
			s.Scale, s.To = scale, i+1
			return true
		}
		if w == "money" && (t.word(i-1) == "old" || t.word(i-1) == "new") {
			s.Scale, s.To = map[string]string{"old": "F", "new": "C"}[t.word(i-1)], i+1
			return true
		}
		if !scaleLinks[w] && w != "old" && w != "new" {
			return false
		}
	}
	return false
}
