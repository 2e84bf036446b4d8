package written

import (
	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/speech"
)

// Nouns are the words that can be what a number counts, as stems: "16 equal
// pieces", "2 lined trays", "two 20 cm tins", "serves 4". nil for amounts of
// something.
func Nouns(t speech.Text, s speech.Said) []string {
	if s.Kind == speech.Measure {
		if s.Unit.Kind() != measure.Count || s.To < len(t.Words) && t.Words[s.To].Text == "of" && !t.Pronoun(s.To) {
			return nil
		}
		return []string{string(s.Unit)}
	}
	switch t.At(s.From - 1) {
	case "serves", "serve", "feeds", "feed":
		return []string{"serving"}
	}
	if isServed(t, s) {
		return []string{"serving"}
	}
	nouns := parted(t, s)
	from := t.BehindMeasure(s.To)
	most := len(nouns) + 2
	for k := from; k < len(t.Words) && k < from+4 && len(nouns) < most && t.Words[k-1].Stop == speech.None; k++ {
		if w := t.Words[k]; !Between[w.Text] {
			if Meaning(w) == "" && w.Text != "times" {
				break
			}
			nouns = append(nouns, w.Stem)
		}
	}
	return nouns
}

// isServed tells "this does six", "enough for four people", "it feeds fourteen".
func isServed(t speech.Text, s speech.Said) bool {
	if w := t.At(s.To); w == "people" || w == "persons" || w == "portions" || w == "servings" {
		return true
	}
	w := t.At(s.To)
	ends := s.To >= len(t.Words) || t.Words[s.To-1].Stop != speech.None || w == "or" || w == "and" || w == "if" || w == "of" && t.At(s.To+1) == "us"
	before := t.At(s.From - 2)
	switch t.At(s.From - 1) {
	case "does", "do":
		return ends && dishes[before]
	case "for":
		return ends && (before == "enough" || before == "main" || before == "side" || before == "supper" || before == "dinner")
	case "feeding", "serving":
		return ends
	}
	return false
}

// dishes are what can do so many people.
var dishes = speech.SetOf("this it it'll that that'll this'll will'll")

// Pieces stands for what a thing is parted into, whatever it is called.
const Pieces = "«pieces»"

// parted tells counts that need no noun: "divide it into sixteen".
func parted(t speech.Text, s speech.Said) []string {
	if w := t.At(s.From - 1); w != "into" && w != "in" {
		return nil
	}
	for k := s.From - 2; k >= 0 && k >= s.From-10 && !t.Parts(k); k-- {
		switch classOf(t.Words[k]) {
		case "cut", "divide", "shape", "roll":
			return []string{Pieces}
		}
	}
	return nil
}

// partLead are words that make a time a part of a longer one.
var partLead = speech.SetOf("after every first last final")

// IsPartTime tells times within a longer one: "after 10 minutes", "for the last
// 5 minutes", "ten minutes in".
func IsPartTime(t speech.Text, s speech.Said) bool {
	for k := s.From - 1; k >= 0 && k >= s.From-3 && t.Words[k].Stop == speech.None; k-- {
		w := t.Words[k].Text
		if partLead[w] {
			return true
		}
		if !lightBefore[w] {
			break
		}
	}
	if s.To >= len(t.Words) || t.Words[s.To-1].Stop != speech.None {
		return false
	}
	switch t.Words[s.To].Text {
	case "in":
		return s.To+1 >= len(t.Words) || t.Words[s.To].Stop != speech.None || behindIn[t.Words[s.To+1].Text]
	case "later", "left", "into", "gone", "apart":
		return true
	case "have", "has":
		return t.At(s.To+1) == "passed" || t.At(s.To+1) == "gone"
	case "before":
		return t.At(s.To+1) == "the" && t.At(s.To+2) == "end"
	}
	return false
}

var (
	lightBefore = speech.SetOf("the about around another or maybe that just")
	behindIn    = speech.SetOf("and i you we turn it's check")
)

// isColour tells the "brown" of "dark brown sugar" from what is done to onions.
func isColour(t speech.Text, k int) bool {
	if t.At(k) != "brown" {
		return false
	}
	switch t.At(k - 1) {
	case "light", "dark", "soft", "golden", "the", "deep", "until":
		return true
	}
	switch t.At(k + 1) {
	case "sugar", "rice", "bread", "flour", "lentils":
		return true
	}
	return false
}

// Verb gives the meaning of the kitchen's verb that governs a number: the nearest
// one before it in its sentence, else the first behind it; "" if there is none.
func Verb(t speech.Text, s speech.Said) string {
	for k := s.From - 1; k >= 0 && k >= s.From-12 && !t.Parts(k); k-- {
		if v := classOf(t.Words[k]); isVerb[v] && !isColour(t, k) {
			return v
		}
	}
	if w := t.At(s.To); w == "before" || w == "after" {
		return ""
	}
	for k := s.To; k < len(t.Words) && k < s.To+6 && !t.Parts(k-1) && !Turns[t.Words[k].Text]; k++ {
		if v := classOf(t.Words[k]); isVerb[v] {
			return v
		}
	}
	return ""
}
