package about

import (
	"slices"
	"strings"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

var anHour, aDay = measure.Whole(60), measure.Whole(24 * 60)

// tieFact ties a time, a heat, a length or a count of pieces to what a step
// states.
func (r *Reading) tieFact(i int) {
	s := r.Said[i]
	var nouns []string
	if r.isPiece(s) {
		s.Kind = speech.Piece
	}
	if s.Kind == speech.Measure && s.Unit.Kind() != measure.Count {
		return
	}
	if s.Kind == speech.Count || s.Kind == speech.Measure {
		nouns = written.Nouns(r.Text, s)
		if len(nouns) == 0 && (r.isAllOfThem(s) || r.isMade(s)) {
			nouns = r.Book.Pieces()
		}
		if len(nouns) == 0 && s.Kind == speech.Count && r.Elsewhere[i] < mostSpoken && r.isOfThem(s.To) {
			nouns = r.countedBefore(s)
		}
		if len(nouns) == 0 || s.Article {
			return
		}
		s.Kind = speech.Count
	}
	if s.Kind == speech.Room {
		nouns = slices.DeleteFunc(written.Nouns(r.Text, s), func(w string) bool { return !speech.IsVessel(w) })
	}

	around := r.around(i)
	best, top := -1, 0.0
	for n, f := range r.Book.Facts {
		if f.Kind != s.Kind || s.Kind == speech.Count && !Share(nouns, f.Nouns) || s.Kind == speech.Room && len(nouns) > 0 && !Share(nouns, f.Nouns) || !isPossible(s, f) || !EqualFact(s, f) && !r.contradicts(s, f) {
			continue
		}
		if c := r.claimOf(i, s, n, around); c.isEarned() && (best < 0 || c.score() > top) {
			best, top = n, c.score()
		}
	}
	if best < 0 {
		return
	}
	c := r.claimOf(i, s, best, around)
	r.Ties[i].Fact, r.Ties[i].Agrees = best, c.equal || s.Kind == speech.Time && same.Allows(s, c.f.Said)
	r.Ties[i].firm = !c.equal && (c.verb > 0 || c.shared >= leastHere)
}

// countedBefore gives what a step counts of the words shortly before a number "of them":
// "cut some slits so the steam gets out, a dozen of 'em".
func (r *Reading) countedBefore(s speech.Said) []string {
	for k := s.From - 1; k >= 0 && k >= s.From-countedBack; k-- {
		if stem := r.Text.Words[k].Stem; r.isPieceNoun(stem) {
			return []string{stem}
		}
	}
	return nil
}

const countedBack = 14 // words before "a dozen of them" in which it stands what they are

// isMade tells a bare number that is what the recipe makes: "that'll make you two dozen".
func (r *Reading) isMade(s speech.Said) bool {
	if s.To < len(r.Text.Words) && r.Text.Words[s.To-1].Stop == speech.None {
		return false
	}
	lead := r.leadOf(s)
	before := r.Text.At(s.From - 2)
	return lead == "makes" || lead == "yields" || (lead == "you" || lead == "make") && (before == "make" || before == "makes" || before == "give" || before == "gives" || before == "that'll" || before == "it'll" || before == "they'll")
}

// isPiece tells what one of several weighs: "48 grams each", "sixty grams a ball".
func (r *Reading) isPiece(s speech.Said) bool {
	kind := s.Unit.Kind()
	if s.Kind != speech.Measure || kind != measure.Mass && kind != measure.Volume {
		return false
	}
	if s.Each || kind == measure.Mass && r.isOfEach(s) {
		return true
	}
	w := r.Text.At(s.To)
	return (w == "a" || w == "per" || w == "the" || w == "apiece") && s.To+1 < len(r.Text.Words) && r.isPieceNoun(r.Text.Words[s.To+1].Stem)
}

// isOfEach tells "each of them wants to be about a hundred and fifty gram".
func (r *Reading) isOfEach(s speech.Said) bool {
	for k := s.From - 1; k >= 0 && k >= s.From-eachBack && !r.Text.Parts(k) && !speech.IsNumberWord(r.Text.At(k)); k-- {
		if r.Text.At(k) == "each" {
			return r.Text.At(s.To) != "of"
		}
	}
	return false
}

// eachBack is how many words before what one of several weighs "each" may stand.
const eachBack = 8

// isPieceNoun tells whether a step counts pieces by a noun, as a stem.
func (r *Reading) isPieceNoun(noun string) bool {
	return slices.ContainsFunc(r.Book.Facts, func(f written.Fact) bool {
		return f.Kind == speech.Count && slices.Contains(f.Nouns, noun) || f.Kind == speech.Piece && portions[noun]
	})
}

// portions are nouns, as stems, for what a dough or a mix is divided into.
var portions = speech.SetOf("ball piece bun roll cake patty bit bread loaf")

// isAllOfThem tells "you should have about forty of them" from a part.
func (r *Reading) isAllOfThem(s speech.Said) bool {
	if !r.isOfThem(s.To) && !(r.Text.At(s.To) == "out" && r.Text.At(s.To+1) == "of") {
		return false
	}
	switch lead := r.leadOf(s); lead {
	case "have", "get", "makes", "with":
		return r.Text.Near(s.From, s.From, 4, "should", "you'll", "get", "makes", "end")
	}
	return false
}

// Share tells whether two lists have a word in common.
func Share(a, b []string) bool {
	return slices.ContainsFunc(a, func(w string) bool { return slices.Contains(b, w) })
}

// isPossible leaves out what is of another size altogether: a day for a minute.
func isPossible(s speech.Said, f written.Fact) bool {
	if f.Total {
		return EqualFact(s, f)
	}
	if (s.Per.Unit == "") != (f.Per.Unit == "") {
		return false
	}
	switch {
	case s.Kind == speech.Heat:
		return isHeatPossible(s, f)
	case s.Kind == speech.Length:
		return isLengthPossible(s, f)
	case s.Kind != speech.Time || s.Amount.From.Cmp(aDay) < 0 || f.Amount.To.Cmp(anHour) >= 0:
		return true
	}
	return IsUnitSlip(s, f.Said)
}

// contradicts tells whether a number that does not agree with the fact it is
// likely about says otherwise: ten minutes in is nothing that a recipe
// contradicts, nor is what somebody tells.
func (r *Reading) contradicts(s speech.Said, f written.Fact) bool {
	switch {
	case s.Kind == speech.Count && f.Place >= 0 && s.Amount.From.Equal(measure.Whole(1)) && f.Amount.From.Cmp(measure.Whole(1)) > 0:
		return false // "take one strip" of sixteen
	case s.Kind == speech.Count && r.Text.Pronoun(s.To) && !r.isAllOfThem(s) && s.Amount.To.Cmp(f.Amount.From) < 0 && !SoundsLike(s.Amount, f.Amount) && !isTenfold(s, f.Said):
		return false // "I need to make two of them"
	case s.Kind == speech.Heat && (r.isOfThePast(s) || r.IsWeather(s)):
		return false // "my old oven only went to 220"
	case s.Kind == speech.Length && r.Text.At(s.To) == "of" && len(r.mentionsAt(s.To+1, s.To+3)) > 0:
		return false // "two inches of oil"
	case s.Kind != speech.Time:
		return !f.Total
	case r.isOfOther(s):
		return false
	case s.Unit == measure.Minute && r.isCouple(s) && f.Amount.From.Cmp(measure.Whole(mostMinute)) > 0:
		return false // "give it another couple of minutes"
	case s.Article && s.Unit == measure.Minute && f.Amount.From.Cmp(measure.Whole(mostMinute)) > 0:
		return false // "it sits there for a minute" is no measure
	}
	if r.isOfKeeping(s) && !f.Clause["keep"] && !f.Clause["freeze"] {
		return false // "the dough will keep three days in the fridge"
	}
	if s.Night && (f.Verb == "" || written.Verb(r.Text, s) != f.Verb) || r.isWithin(s) && !f.Within {
		return false // "it's gone overnight", "you can do that in ten minutes"
	}
	part := written.IsPartTime(r.Text, s)
	if part && f.Part && r.Text.Words[s.To-1].Stop == speech.None && behindParts[r.Text.At(s.To)] && (f.Verb == "" || written.Verb(r.Text, s) != f.Verb) {
		return false // "it's got thirty seconds left"
	}
	return !f.Total && part == f.Part && !r.IsTold(s)
}

// isOfOther tells a time of what is no work: "fourteen minutes of video". "Ten minutes of
// kneading" is some.
func (r *Reading) isOfOther(s speech.Said) bool {
	w := r.Text.At(s.To + 1)
	return r.Text.At(s.To) == "of" && r.Text.Words[s.To-1].Stop == speech.None && !strings.HasSuffix(w, "ing") && !written.IsClass(w) && !worked[w]
}

// worked are other words behind "ten minutes of".
var worked = speech.SetOf("that this it the your a rest heat hard gentle good slow work oven bake baking")

// isCouple tells "a couple of minutes".
func (r *Reading) isCouple(s speech.Said) bool {
	for k := s.From; k < s.To; k++ {
		if r.Text.At(k) == "couple" {
			return true
		}
	}
	return false
}

// mostMinute is the longest time, in minutes, of which "a minute" may be said wrong.
const mostMinute = 10

// isWithin tells "you can do that in ten minutes" from "the onion goes in, ten minutes".
func (r *Reading) isWithin(s speech.Said) bool {
	lead := r.leadOf(s)
	if w := r.Text.At(s.From - 2); lead == "in" && (w == "goes" || w == "go" || w == "straight" || w == "it") {
		return false
	}
	return within[lead]
}

// isOfKeeping tells whether a number says how long something keeps.
func (r *Reading) isOfKeeping(s speech.Said) bool {
	for k := s.From - 1; k >= 0 && k >= s.From-4 && !r.Text.Parts(k); k-- {
		switch r.Text.At(k) {
		case "good":
			if r.Text.At(k+1) == "for" {
				return s.Amount.From.Cmp(anHour) > 0
			}
		case "keep", "keeps", "lasts", "last":
			if k == s.From-1 {
				return true // "they will keep four minutes"
			}
			return s.Amount.From.Cmp(anHour) > 0 && r.Text.At(k-1) != "the"
		}
	}
	return false
}

var behindParts = speech.SetOf("left in gone later into")

// leadOf gives the word that leads to a number, behind "about", "a good" and the
// like.
func (r *Reading) leadOf(s speech.Said) string {
	k := s.From - 1
	for written.IsAbout(r.Text.At(k)) {
		k--
	}
	if k >= 0 && r.Text.Parts(k) {
		return ""
	}
	return r.Text.At(k)
}

// within are words before a time that make it no length of work: "a window of
// forty seconds".
var within = speech.SetOf("in of within than")
