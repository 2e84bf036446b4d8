package speech

import "benchproof/kitchen/measure"

// Units that do not stand behind their number.

// named gives a bare number the unit that the words before it name: "in grams it's two
// hundred and ninety".
func (t Text) named(all []Said) {
	for i := range all {
		s := &all[i]
		if s.Kind != Count || s.Unit != "" || s.Struck {
			continue
		}
		k := s.From - 1
		for links[t.word(k)] {
			k--
		}
		if k == s.From-1 || t.word(k-1) != "in" {
			continue
		}
		if u, to, ok := t.unit(k, false); ok && to == k+1 && (u.Kind() == measure.Mass || u.Kind() == measure.Volume) {
			s.Kind, s.Unit, s.Amount.Unit = Measure, u, u
		}
	}
}

// spooned gives a number of spoons the unit that the host adds: "two spoons of cream,
// tablespoons I mean", "three of the big spoons, that's tablespoons".
func (t Text) spooned(all []Said) {
	for i := range all {
		s := &all[i]
		if s.Kind != Count || s.Unit != "" || s.Struck {
			continue
		}
		spoons := false
		for k := s.To; k < s.To+spoonReach && k < len(t.Words) && !IsNumberWord(t.word(k)); k++ {
			spoons = spoons || t.word(k) == "spoons" || t.word(k) == "spoonfuls"
			u, _, ok := t.unit(k, false)
			if ok && spoons && (u == measure.Teaspoon || u == measure.Tablespoon) && (t.word(k-1) == "that's" || t.word(k-1) == "meaning" || t.word(k+1) == "i" && t.word(k+2) == "mean") {
				s.Kind, s.Unit, s.Amount.Unit = Measure, u, u
				break
			}
		}
	}
}

// spoonReach is how many words behind a number of spoons the host may say of which.
const spoonReach = 9

// links are words between such a unit and its number.
var links = SetOf("it's its that's is about around that it")

// mils takes millilitres for millimetres where something is rolled, cut or set apart: "you
// roll it to about four mil".
func (t Text) mils(all []Said) {
	for i := range all {
		s := &all[i]
		if s.Kind != Measure || s.Unit != measure.Millilitre || t.word(s.To) == "of" || s.Amount.To.Cmp(mostMils) > 0 {
			continue
		}
		if w := t.word(s.To - 1); (w == "mil" || w == "mill" || w == "mils") && t.Near(s.From, s.To, 6, flat...) {
			s.Kind, s.Unit, s.Amount.Unit = Length, measure.Millimetre, measure.Millimetre
		}
	}
}

// mostMils is the most that is rolled or cut to.
var mostMils = measure.Whole(30)

// flat are words of what is so thick, or so far apart.
var flat = []string{"roll", "rolled", "rolling", "thick", "thickness", "slice", "sliced", "slices", "apart", "gap", "wide", "across", "deep", "strips"}
