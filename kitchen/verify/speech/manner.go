package speech

import "benchproof/kitchen/measure"

var (
	vague   = SetOf("about around roughly approximately nearly almost maybe perhaps approx circa say generous scant heaped heaping rounded good")
	further = SetOf("another further extra more additional")
)

// final are words that make an amount what is left.
var final = SetOf("other last final remaining")

// manner reads the words before and behind an amount that say how it is meant.
func (t Text) manner(s *Said) {
	for k := s.From - 1; k >= 0 && k >= s.From-4 && t.open(k); k-- {
		switch w := t.word(k); {
		case vague[w] && w != "good" && w != "say":
			s.About = true
		case further[w]:
			s.More = true
		case final[w]:
		case w != "a" && w != "an" && w != "the" && w != "just" && w != "of" && w != "other" && w != "good":
			k = -1
		}
		if k >= 0 && final[t.word(k)] {
			s.More = true
		}
	}
	for k := s.From - 2; k >= 0 && k >= s.From-3 && t.open(k); k-- {
		s.More = s.More || t.word(k) == "remaining" // "the remaining water, two litres"
	}
	switch t.word(s.To) {
	case "each", "apiece":
		s.Each = true
	case "on", "in", "to", "for", "into":
		s.Each = t.word(s.To+1) == "each" || s.Kind != Time && t.word(s.To+1) == "every"
	case "more", "extra":
		s.More = true
	case "or":
		if w := t.word(s.To + 1); w == "so" || w == "thereabouts" {
			s.About = true
		}
	case "ish":
		s.About = true
	}
	s.Each = s.Each || t.isPerThing(*s)
	if s.Kind == Time {
		t.per(s)
		s.Side = t.isASide(s.To) || t.isOnASide(s.From)
	}
	s.About = s.About || t.isNearly(*s)
	t.bound(s)
	for k := s.To; k < s.To+3 && t.open(k-1) && !IsNumberWord(t.word(k)) && t.word(k) != "a"; k++ { // "a spoonful at a time", "one egg at a time"
		s.Each = s.Each || t.word(k) == "at" && t.word(k+1) == "a" && t.word(k+2) == "time" || (t.word(k) == "on" || t.word(k) == "in") && (t.word(k+1) == "each" || s.Kind == Measure && t.word(k+1) == "every")
	}
}

// per reads for how much a time is: "a pound", "to the kilo", "per 500 g".
func (t Text) per(s *Said) {
	k := s.To + 1
	switch t.word(s.To) {
	case "a", "per":
	case "to", "for":
		if w := t.word(k); w != "the" && w != "each" && w != "every" {
			return
		}
		k++
	default:
		return
	}
	much := measure.Whole(1)
	digits := false
	if n, ok := t.number(k); ok {
		much, k, digits = n.value, n.to, !n.words
	}
	if u, to, ok := t.unit(k, digits); ok && u.Kind() == measure.Mass {
		s.Per, s.To = measure.Of(much, u), to
	}
}

// isASide tells whether "a side", "on each side" stands at word i.
func (t Text) isASide(i int) bool {
	for k := i; k < i+3 && t.open(k-1); k++ {
		if w := t.word(k); w == "side" || w == "sides" {
			return true
		}
	}
	return false
}

// isOnASide tells whether "on the first side" stands right before word i.
func (t Text) isOnASide(i int) bool {
	for k := i - 1; k >= 0 && k >= i-3; k-- {
		if t.word(k) == "side" && t.word(k-2) == "the" {
			return true
		}
	}
	return false
}

// isPerThing tells what each of several things gets: "each jar gets two cloves".
func (t Text) isPerThing(s Said) bool {
	for k := s.From - 1; k > 0 && k >= s.From-9 && t.Words[k].Stop != Sentence; k-- {
		switch t.word(k) {
		case "gets", "takes", "wants", "needs", "has":
			return t.word(k-2) == "each" || t.word(k-2) == "every" || t.word(k-1) == "each"
		}
	}
	return false
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
		return w == "shy" || w == "short" || w == "region" || w == "neighbourhood" || w == "part" && t.word(s.From-3) == "best"
	case "than":
		w := t.word(s.From - 2)
		return (w == "more" || w == "less") && littles[t.word(s.From-3)]
	}
	return false
}

var littles = SetOf("bit little touch tad shade fraction hair")
