package speech

import (
	"strings"

	"benchproof/kitchen/measure"
)

// Kind is what a spoken number measures.
type Kind string

// The kinds of spoken number.
const (
	Measure Kind = "measure" // a mass, a volume, packs, cloves, sprigs
	Count   Kind = "count"   // a number without a unit: "three egg yolks", "60 of sugar"
	Time    Kind = "time"
	Heat    Kind = "heat"
	Length  Kind = "length"
	Share   Kind = "share" // a part of something: "a third of the sugar", "the rest"
)

// Said is one number as spoken, with its unit.
type Said struct {
	Kind    Kind
	Amount  measure.Amount // minutes for Time; of a Share the part, 0 for the rest
	Unit    measure.Unit   // the unit spoken, for Time too
	Plus    measure.Amount // "a cup and two tablespoons": the tablespoons; zero if none
	Scale   string         // of a Heat: "C", "F", "gas", "" if not said
	Oven    string         // of a Heat: "fan", "conventional", "" if not said
	About   bool           // "about", "roughly", "a generous", "or so"
	More    bool           // "another", "a further", "50 more"
	Bare    bool           // of a Heat: neither degrees nor a scale were said
	Digits  bool           // written in figures
	Article bool           // "a cup": the one is only an article
	Each    bool           // "a spoonful at a time", "50 grams each": one of several
	Size    bool           // of one pack: the "400 gram" of "two 400 gram tins"
	From    int            // index of its first word
	To      int            // index behind its last word
	Night   bool           // "overnight"
	AtLeast bool           // "at least four hours"
	AtMost  bool           // "up to three weeks"
	Struck  bool           // taken back by the speaker: "two cups, sorry, three cups"
}

// Find gives every number said, in order. Numbers that can be no amount in a
// kitchen are left out: years, prices, percentages, times of day, numbers of
// episodes and pages, differences ("20 degrees cooler") and angles.
func Find(t Text) []Said {
	var all []Said
	for i := 0; i < len(t.Words); {
		s, to, ok := t.said(i)
		if ok {
			all = append(all, s)
		}
		i = max(to, i+1)
	}
	t.strike(all)
	t.elided(all)
	return all
}

// elided takes a number behind a time for another: "eighteen minutes, and ten with
// the lid on".
func (t Text) elided(all []Said) {
	for i := 1; i < len(all); i++ {
		s, before := &all[i], all[i-1]
		if s.Kind != Count || before.Kind != Time || !t.isElidedTime(*s, before) {
			continue
		}
		s.Kind, s.Unit, s.Amount.Unit = Time, before.Unit, measure.Minute
		s.Amount.Range = s.Amount.Range.Scale(minutesIn[before.Unit])
	}
}

// isElidedTime tells whether a bare number goes on with the unit of a time before
// it: "and ten with the lid on", "then let it steam for ten".
func (t Text) isElidedTime(s, before Said) bool {
	lead := t.word(s.From - 1)
	if s.From-before.To <= 2 && (lead == "and" || lead == "then") && withLid[t.word(s.To)] {
		return true
	}
	if lead != "for" || s.From-before.To > 20 || t.open(s.To-1) && !joins[t.word(s.To)] && t.word(s.To) != "before" && t.word(s.To) != "after" {
		return false
	}
	for k := s.From - 2; k >= s.From-5 && t.open(k); k-- {
		if waits[t.word(k)] {
			return true
		}
	}
	return false
}

var waits = SetOf("let sit leave give rest rests steam simmer cook bake boil fry stand cool chill prove")

var withLid = SetOf("with without covered uncovered on off under out in resting standing")

// said reads what is said at word i. to is where to go on, also where nothing
// can be used.
func (t Text) said(i int) (s Said, to int, ok bool) {
	if to, skipped := t.skip(i); skipped {
		return s, to, false
	}
	for _, read := range []func(int) (Said, bool){t.rest, t.gas, t.fanFirst, t.overnight, t.quantity} {
		s, ok := read(i)
		to = max(to, s.To)
		if ok {
			t.manner(&s)
			s.Size = t.isSize(s)
			if t.isOtherwise(s) {
				return s, s.To, false
			}
			return s, s.To, true
		}
	}
	return s, to, false
}

// numbered are words whose number is a name: "episode thirty one".
var numbered = SetOf("episode episodes season part chapter page number volume version video step route room bus platform level day round section $ £ € # channel size")

// skip passes over numbers that name things, and prices.
func (t Text) skip(i int) (to int, ok bool) {
	w := t.word(i)
	if !numbered[w] || !t.open(i) && w != "#" && w != "$" && w != "£" && w != "€" {
		return 0, false
	}
	n, ok := t.number(i + 1)
	if !ok || n.part && w != "$" && w != "£" && w != "€" {
		return 0, false
	}
	if w == "day" || w == "level" || w == "round" || w == "size" || w == "part" || w == "step" {
		if _, _, unit := t.unit(n.to, false); unit {
			return 0, false
		}
	}
	return n.to, true
}

// rest reads "the rest", "the remaining".
func (t Text) rest(i int) (Said, bool) {
	switch t.word(i) {
	case "rest":
		if prev := t.word(i - 1); prev != "the" && prev != "other" {
			return Said{}, false
		}
		if w := t.Words[i]; strings.HasPrefix(t.Cues[w.Cue].Text[w.End:], ":") {
			return Said{}, false // "and now the rest: sultanas"
		}
		if w := t.word(i + 1); w != "of" && w != "goes" && w != "in" && w != "" && t.open(i) {
			return Said{}, false
		}
	case "remaining", "remainder":
		if _, ok := t.number(i + 1); ok {
			return Said{}, false // "the remaining 50 grams": the number says it
		}
	default:
		return Said{}, false
	}
	return Said{Kind: Share, From: i, To: i + 1, More: true}, true
}

// gas reads "gas mark four", "gas 6".
func (t Text) gas(i int) (Said, bool) {
	if t.word(i) != "gas" {
		return Said{}, false
	}
	k := i + 1
	if t.word(k) == "mark" {
		k++
	}
	n, ok := t.number(k)
	if !ok || n.value.Cmp(measure.Whole(10)) > 0 {
		return Said{}, false
	}
	return Said{Kind: Heat, Scale: "gas", Amount: measure.Of(n.value, ""), From: i, To: n.to}, true
}

// fanFirst reads "fan 160", "fan one sixty degrees".
func (t Text) fanFirst(i int) (Said, bool) {
	if t.word(i) != "fan" || !t.open(i) {
		return Said{}, false
	}
	k := i + 1
	for t.word(k) == "at" || t.word(k) == "oven" || t.word(k) == "it's" || t.word(k) == "that's" || t.word(k) == "is" {
		k++
	}
	n, ok := t.number(k)
	if !ok || !isOvenNumber(n) {
		return Said{}, false
	}
	s := Said{Kind: Heat, Oven: "fan", Amount: measure.Of(n.value, ""), From: i, To: n.to, Bare: true}
	t.degrees(&s)
	return s, true
}

func isOvenNumber(n number) bool {
	return n.value.IsWhole() && n.value.Cmp(measure.Whole(80)) >= 0 && n.value.Cmp(measure.Whole(550)) <= 0
}

// overnight reads the word as 8 to 12 hours: common practice, no source.
func (t Text) overnight(i int) (Said, bool) {
	if t.word(i) != "overnight" {
		return Said{}, false
	}
	return Said{Kind: Time, Unit: measure.Hour, From: i, To: i + 1, About: true, Night: true,
		Amount: measure.Amount{Range: measure.Between(measure.Whole(480), measure.Whole(720)), Unit: measure.Minute}}, true
}

var (
	vague   = SetOf("about around roughly approximately nearly almost maybe perhaps approx circa say generous scant heaped heaping rounded good")
	further = SetOf("another further extra more additional")
)

// manner reads the words before and behind an amount that say how it is meant.
func (t Text) manner(s *Said) {
	for k := s.From - 1; k >= 0 && k >= s.From-4 && t.open(k); k-- {
		switch w := t.word(k); {
		case vague[w] && w != "good" && w != "say":
			s.About = true
		case further[w]:
			s.More = true
		case w != "a" && w != "an" && w != "the" && w != "just" && w != "of" && w != "other" && w != "good":
			k = -1
		}
		if k > 0 && t.word(k) == "other" {
			s.More = true
		}
	}
	switch t.word(s.To) {
	case "each", "apiece":
		s.Each = true
	case "more", "extra":
		s.More = true
	case "or":
		if t.word(s.To+1) == "so" {
			s.About = true
		}
	case "ish":
		s.About = true
	}
	s.About = s.About || t.isNearly(*s)
	t.bound(s)
	for k := s.To; k < s.To+3 && t.open(k-1) && !isNumberWord(t.word(k)); k++ { // "a spoonful at a time", "one egg at a time"
		s.Each = s.Each || t.word(k) == "at" && t.word(k+1) == "a" && t.word(k+2) == "time"
	}
}

// bound reads "at least four hours", "up to three weeks".
func (t Text) bound(s *Said) {
	k := s.From - 1
	for k > 0 && (t.word(k) == "a" || t.word(k) == "for" || t.word(k) == "another") {
		k--
	}
	switch w := t.word(k); {
	case w == "least" && t.word(k-1) == "at", w == "minimum":
		s.AtLeast = true
	case w == "to" && t.word(k-1) == "up", w == "most" && t.word(k-1) == "at", w == "maximum":
		s.AtMost = true
	}
	s.AtLeast = s.AtLeast || t.word(s.To) == "minimum" || t.word(s.To) == "at" && t.word(s.To+1) == "least"
	s.AtMost = s.AtMost || t.word(s.To) == "maximum" || t.word(s.To) == "at" && t.word(s.To+1) == "most" || t.word(s.To) == "tops"
}

// isNearly reads "just under half a kilo", "not quite a litre", "a bit over 200",
// "shy of a pound", "200 grams give or take".
func (t Text) isNearly(s Said) bool {
	if t.word(s.To) == "give" && t.word(s.To+1) == "or" || t.word(s.To) == "and" && t.word(s.To+1) == "a" && t.word(s.To+2) == "bit" {
		return true
	}
	switch t.word(s.From - 1) {
	case "under", "over", "quite", "above", "below":
		return t.open(s.From - 1)
	case "of":
		w := t.word(s.From - 2)
		return w == "shy" || w == "short" || w == "region" || w == "neighbourhood"
	case "than":
		w := t.word(s.From - 2)
		return (w == "more" || w == "less") && littles[t.word(s.From-3)]
	}
	return false
}

var littles = SetOf("bit little touch tad shade fraction hair")

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
		if afterNot[next] && next != "times" || next == "past" {
			return true
		}
	case Heat:
		before := t.word(s.From - 1)
		return cooler[next] || turnNouns[next] || before == "by" || t.turnsAround(s)
	case Time:
		return next == "past" || next == "fast" || next == "slow" || next == "late" || next == "early" || next == "away"
	}
	return false
}

// isPrice tells "two pounds ninety a block" from a weight.
func (t Text) isPrice(s Said) bool {
	if s.Unit != measure.Pound {
		return false
	}
	n, ok := t.number(s.To)
	if !ok || !t.open(s.To-1) || n.part || n.value.Cmp(measure.Whole(100)) >= 0 {
		return false
	}
	if _, _, unit := t.unit(n.to, !n.words); unit {
		return false
	}
	return !t.open(n.to-1) || joins[t.word(n.to)] || t.word(n.to) == "each" || t.word(n.to) == "per"
}

// turnsAround tells "turn the tray ninety degrees" from a heat.
func (t Text) turnsAround(s Said) bool {
	if s.Oven != "" || s.Scale != "" {
		return false
	}
	for k := s.From - 1; k >= 0 && k >= s.From-5; k-- {
		switch t.word(k) {
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
		if words[t.Words[k].Text] {
			return true
		}
	}
	return false
}

var takesBack = SetOf("sorry rather correction oops wait scratch")

// strike marks what the speaker takes back: "two cups, sorry, three cups".
func (t Text) strike(all []Said) {
	for i := 0; i+1 < len(all); i++ {
		s, next := &all[i], all[i+1]
		if s.Kind != next.Kind && !(s.Kind == Count || next.Kind == Count) || next.From-s.To > 6 && t.word(s.From-1) != "say" || next.From == s.To {
			continue
		}
		if t.word(s.From-1) == "say" && t.word(s.From-2) == "i" && t.word(s.From-3) != "as" {
			s.Struck = true // "did I say three hundred grams? Two hundred."
		}
		for k := s.To; k < next.From; k++ {
			w := t.word(k)
			if takesBack[w] || w == "mean" && t.word(k-1) == "i" || w == "that" && t.word(k-1) == "make" || w == "no" && k+1 == next.From && next.Kind != Count {
				s.Struck = true
			}
		}
	}
}
