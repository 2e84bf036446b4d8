package speech

import "benchproof/kitchen/measure"

// takesBackAt tells whether word k takes back what was said: "sorry", "no wait",
// "or rather". One also waits for twenty minutes, and would rather have tea.
func (t Text) takesBackAt(k int) bool {
	before := t.word(k - 1)
	switch t.word(k) {
	case "naw", "nah", "nope", "sorry", "correction", "oops", "scratch", "excuse", "pardon", "kidding", "joking":
		return true
	case "right":
		return before == "not"
	case "saying", "say":
		return before == "i" && t.word(k-2) != "as" && (t.word(k) == "saying" || t.word(k-2) == "do")
	case "mistake", "bad":
		return before == "my"
	case "wrong":
		return true
	case "wait":
		return before == "no" || before == "oh" || t.word(k+1) == "no" || !t.open(k-1) && !t.open(k)
	case "rather":
		return before == "or"
	case "lying":
		return before == "i'm"
	case "lie":
		return before == "a" && t.word(k-2) == "tell"
	case "hang":
		return t.word(k+1) == "on"
	}
	return false
}

const (
	takenBack = 6  // words between what is taken back and what is said instead
	searching = 16 // the same where the host stops at once: "one teaspoon, no, hang on, where's my list"
)

// strike marks what the speaker takes back: "two cups, sorry, three cups".
func (t Text) strike(all []Said) {
	for i := 0; i+1 < len(all); i++ {
		s, next := &all[i], all[i+1]
		if s.Kind != next.Kind && !(s.Kind == Count || next.Kind == Count) {
			continue
		}
		if t.isCounted(*s, next) || t.isStutter(*s, next) || i+2 < len(all) && t.isBegunAgain(*s, next, all[i+2]) {
			s.Struck = true
			continue
		}
		said := t.word(s.From-1) == "say" && t.word(s.From-2) == "i" && t.word(s.From-3) == "did"
		if next.From == s.To && !said {
			continue
		}
		if t.word(s.To) == "no" && !t.open(s.To) && !t.open(s.To-1) && next.From == s.To+1 {
			s.Struck = true // "eggs, eleven. No! Twelve eggs"
			continue
		}
		reach := takenBack
		if (s.Kind == next.Kind || s.Kind == Count && s.Unit == "") && (t.balks(s.To) || t.word(s.To) == "of" && t.balks(s.To+1)) {
			reach = searching
		}
		if next.From-s.To > reach && !said {
			continue
		}
		s.Struck = said || t.takesBackWithin(*s, next) // "did I say three hundred grams? Two hundred."
	}
}

// isCounted tells a spoon that is counted aloud: "one teaspoon, two teaspoons".
func (t Text) isCounted(s, next Said) bool {
	if !s.Amount.From.IsWhole() {
		return false
	}
	if s.Kind == Count && next.Kind == Count && s.Unit == "" && next.Unit == "" && next.From == s.To && !s.Digits {
		return next.Amount.From.Equal(s.Amount.From.Add(measure.Whole(1))) // "eggs: one, two, three"
	}
	return s.Kind == Measure && s.Unit == next.Unit && !s.Article && next.From-s.To <= 1 && next.Amount.From.Equal(s.Amount.From.Add(measure.Whole(1)))
}

// isBegunAgain tells an amount that is said again at once with another number: "three
// pounds, two, two pounds".
func (t Text) isBegunAgain(s, next, last Said) bool {
	return s.Kind == Measure && next.Kind == Count && last.Kind == Measure && next.From == s.To && last.From == next.To && last.Unit == s.Unit &&
		next.Amount.From.Equal(last.Amount.From)
}

// isStutter tells a number that is begun and begun again: "two hundred … two hundred
// and twenty-five".
func (t Text) isStutter(s, next Said) bool {
	n := s.To - s.From
	if next.From != s.To || s.Digits || next.To-next.From <= n {
		return false
	}
	for k := range n {
		if t.word(s.From+k) != t.word(next.From+k) {
			return false
		}
	}
	return true
}

// balks tells whether the speaker stops at word i: "no", "hang on", "wait".
func (t Text) balks(i int) bool {
	switch t.word(i) {
	case "naw", "nah", "nope":
		return true
	case "oh", "ah", "er":
		return t.word(i+1) == "no" || t.word(i+1) == "wait"
	case "no":
		return t.word(i+1) != "more" && t.word(i+1) != "less" && t.word(i+1) != "need"
	case "wait":
		return !t.open(i) || t.word(i+1) == "no"
	case "hang", "hold":
		return t.word(i+1) == "on"
	}
	return false
}

// takesBackWithin tells whether words between two numbers take back the first.
func (t Text) takesBackWithin(s, next Said) bool {
	for k := s.To; k < next.From; k++ {
		w := t.word(k)
		if t.takesBackAt(k) || w == "belay" || w == "me" && t.word(k-1) == "let" && t.word(k+1) == "say" || w == "no" && k+1 == next.From && k > s.To && s.Kind == Count && next.Kind == Count && next.Amount.From.Cmp(measure.Whole(1)) > 0 || w == "mean" && t.word(k-1) == "i" || w == "that" && t.word(k-1) == "make" || w == "no" && k+1 == next.From && next.Kind != Count {
			return true
		}
	}
	return false
}

// elided takes a number behind a time for another: "eighteen minutes, and ten with
// the lid on".
func (t Text) elided(all []Said) {
	for i := range all {
		s := &all[i]
		if s.Kind != Count || s.Unit != "" {
			continue
		}
		unit := measure.Minute
		switch {
		case i > 0 && all[i-1].Kind == Time && (t.isElidedTime(*s, all[i-1]) || t.isMoreTime(*s, all[i-1])):
			if unit = all[i-1].Unit; unit == measure.Second && s.From-all[i-1].To > besideSeconds {
				unit = measure.Minute // "a mess for ten seconds … let it simmer for five"
			}
		case !t.isGivenTime(*s):
			continue
		}
		s.Kind, s.Unit, s.Amount.Unit, s.Bare = Time, unit, measure.Minute, true
		s.Amount.Range = s.Amount.Range.Scale(minutesIn[unit])
	}
}

// besideSeconds is how many words behind a time in seconds another goes on with them.
const besideSeconds = 6

// mostBare is the longest time, in minutes, that is said without its unit.
const mostBare = 90

// isMoreTime tells "twenty minutes, then turn it and another ten", "ten more".
func (t Text) isMoreTime(s, before Said) bool {
	if s.From-before.To > againReach || !t.standsAlone(s) && !t.isUncovered(s.To) || before.Unit != measure.Minute && before.Unit != measure.Hour {
		return false
	}
	return t.word(s.From) == "another" || t.word(s.To) == "more" || t.word(s.From-1) == "another"
}

// isUncovered tells whether "uncovered" or "covered" stands at word k.
func (t Text) isUncovered(k int) bool { return t.word(k) == "uncovered" || t.word(k) == "covered" }

// isGivenTime tells "leave it ten", "let it stand ten", "it rests fifteen", "bakes for
// forty-five": a verb of waiting or cooking stands right before the number, and nothing
// that could be counted behind it.
func (t Text) isGivenTime(s Said) bool {
	if !t.standsAlone(s) || s.Amount.To.Cmp(measure.Whole(mostBare)) > 0 || s.Amount.From.Cmp(measure.Whole(3)) < 0 {
		return false
	}
	k, long := s.From-1, false
	for vague[t.word(k)] || t.word(k) == "for" || t.word(k) == "a" || t.word(k) == "another" {
		long = long || t.word(k) == "for"
		k--
	}
	switch w := t.word(k); {
	case w == "it" || w == "them" || w == "that":
		return gives[t.word(k-1)] && t.open(k-1)
	case rested[w] || long && cooked[w]:
		return t.open(k)
	}
	return false
}

// standsAlone tells a number behind which the sentence ends or goes on to something
// else.
func (t Text) standsAlone(s Said) bool {
	w := t.word(s.To)
	if w == "more" {
		w = t.word(s.To + 1)
		return s.To+1 >= len(t.Words) || !t.open(s.To) || joins[w]
	}
	return s.To >= len(t.Words) || !t.open(s.To-1) || t.Words[s.To-1].Rest || joins[w] && w != "of" && w != "to" && w != "a" && w != "an" && w != "in" && w != "at" || w == "before" || w == "after" || w == "while" || w == "until"
}

var (
	gives  = SetOf("leave give giving let leaving gives leaves")
	rested = SetOf("stand stands sit sits rest rests resting")
	cooked = SetOf("bake bakes simmer simmers cool cools cook cooks boil boils fry soak chill prove proves steam roast")
)

// together gives a number the kind of the one behind it that it belongs to: "180,
// 160 fan", "twenty by thirty centimetres".
func (t Text) together(all []Said) {
	for i := 0; i+1 < len(all); i++ {
		s, next := &all[i], all[i+1]
		if s.Kind == Length && next.Kind == Count && next.Unit == "" && next.From-s.To == 1 && t.word(s.To) == "by" && isSide(next) {
			all[i+1].Kind, all[i+1].Unit, all[i+1].Amount.Unit = Length, s.Unit, s.Amount.Unit // "thirty centimetres by twelve"
			continue
		}
		if s.Kind != Count || s.Unit != "" {
			continue
		}
		switch w := t.word(s.To); {
		case next.Kind == Heat && next.Oven == "fan" && t.isOneOven(*s, next):
			s.Kind, s.Bare, s.Scale = Heat, true, next.Scale
		case next.Kind == Heat && next.Scale != "" && t.isSameHeat(*s, next):
			s.Kind, s.Bare = Heat, true
		case next.Kind == Length && next.From-s.To == 1 && (w == "by" || w == "x"):
			s.Kind, s.Unit, s.Amount.Unit = Length, next.Unit, next.Amount.Unit
		case next.Kind == Count && next.Unit == "" && next.From-s.To == 1 && (w == "by" || w == "x") && isSide(*s) && isSide(next) && t.near(s.From, 10, dishes):
			s.Kind, all[i+1].Kind = Length, Length // in the unit of the recipe's tin
			s.Amount.Unit, all[i+1].Amount.Unit = "", ""
		}
	}
}

// isSameHeat tells whether a bare number is a heat that is said again on another
// scale: "a hundred and ninety, which is 375 Fahrenheit".
func (t Text) isSameHeat(s, next Said) bool {
	if !isOvenNumber(number{value: s.Amount.From}) || next.From-s.To > 4 || next.From == s.To {
		return false
	}
	for k := s.To; k < next.From; k++ {
		if w := t.word(k); w != "which" && w != "is" && w != "that's" && w != "so" && w != "or" && w != "about" && w != "it's" && w != "and" {
			return false
		}
	}
	return true
}

// dishes are what has two sides that are told without a unit.
var dishes = SetOf("tin pan dish tray skillet casserole")

// isSide tells whether a bare number can be the side of a tin.
func isSide(s Said) bool {
	return s.Amount.IsSingle() && s.Amount.From.Cmp(measure.Whole(3)) > 0 && s.Amount.From.Cmp(measure.Whole(60)) < 0
}

// isOneOven tells whether a bare number and the fan's setting behind it are one
// oven's: "a hundred and eighty for this, or a hundred and sixty with the fan".
func (t Text) isOneOven(s, fan Said) bool {
	if !isOvenNumber(number{value: s.Amount.From}) || fan.From-s.To > 5 {
		return false
	}
	for k := s.To; k < fan.From; k++ {
		if w := t.word(k); w != "or" && w != "for" && w != "this" && w != "that" && w != "so" && w != "and" && w != "maybe" && w != "here" {
			return false
		}
	}
	most := measure.Whole(60)
	return s.Amount.From.Sub(fan.Amount.From).Cmp(most) <= 0 && fan.Amount.From.Sub(s.Amount.From).Cmp(most) <= 0
}

// isElidedTime tells whether a bare number goes on with the unit of a time before
// it: "and ten with the lid on", "then let it steam for ten".
func (t Text) isElidedTime(s, before Said) bool {
	lead := t.word(s.From - 1)
	if s.From-before.To <= 2 && (lead == "and" || lead == "then") && withLid[t.word(s.To)] {
		return true
	}
	if lead != "for" || s.From-before.To > 20 || t.open(s.To-1) && !t.Words[s.To-1].Rest && !joins[t.word(s.To)] && t.word(s.To) != "before" && t.word(s.To) != "after" {
		return false
	}
	for k := s.From - 2; k >= s.From-5 && t.open(k); k-- {
		if waits[t.word(k)] {
			return true
		}
	}
	return false
}

var waits = SetOf("let bubble bubbles sit leave give rest rests steam simmer cook bake boil fry stand cool chill prove")

var withLid = SetOf("with without covered uncovered on off under out in resting standing")
