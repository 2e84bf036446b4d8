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
	Room    Kind = "room"  // what a vessel holds: "a 1.2 litre basin"
	Piece   Kind = "piece" // what one of several weighs or holds: "sixty grams a ball"
	Share   Kind = "share" // a part of something: "a third of the sugar", "the rest"
)

// Said is one number as spoken, with its unit.
type Said struct {
	Kind    Kind
	Amount  measure.Amount // minutes for Time; of a Share the part, 0 for the rest
	Unit    measure.Unit   // the unit spoken, for Time too
	Plus    measure.Amount // "a cup and two tablespoons": the tablespoons; zero if none
	PlusAt  int            // index of Plus's first word
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
	Side    bool           // of a Time: for each side, "two minutes a side"
	Per     measure.Amount // of a Time: for how much, "twenty minutes a pound"; zero if not said
	AtLeast bool           // "at least four hours"
	AtMost  bool           // "up to three weeks"
	Again   bool           // told by the amount before: "the same of sugar"
	Below   bool           // of a Heat: below zero, "minus eighteen"
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
	t.named(all)
	t.spooned(all)
	t.mils(all)
	t.fans(all)
	t.elided(all)
	t.together(all)
	return t.again(all)
}

// said reads what is said at word i. to is where to go on, also where nothing
// can be used.
func (t Text) said(i int) (s Said, to int, ok bool) {
	if to, skipped := t.skip(i); skipped {
		return s, to, false
	}
	for _, read := range []func(int) (Said, bool){t.rest, t.gas, t.ovenFirst, t.overnight, t.quantity} {
		s, ok := read(i)
		to = max(to, s.To)
		if ok {
			t.below(&s)
			t.manner(&s)
			s.Size = t.isSize(s)
			if s.Kind == Measure && t.isOfVessel(s) {
				s.Kind = Room
			}
			if t.isOtherwise(s) {
				return s, s.To, false
			}
			return s, s.To, true
		}
	}
	return s, to, false
}

// below reads "minus eighteen", which only a freezer is.
func (t Text) below(s *Said) {
	if t.word(s.From-1) != "minus" || s.Kind != Heat && (s.Kind != Count || s.Unit != "" || !s.Amount.From.IsWhole()) {
		return
	}
	s.Kind, s.Below, s.From = Heat, true, s.From-1
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
	if mark := small[t.word(k)]; mark > 0 && mark < 10 {
		n, ok = number{value: measure.Whole(mark), to: k + 1, words: true}, true // "gas eight twenty minutes"
	}
	if !ok || n.value.Cmp(measure.Whole(10)) > 0 {
		return Said{}, false
	}
	return Said{Kind: Heat, Scale: "gas", Amount: measure.Of(n.value, ""), From: i, To: n.to}, true
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
