package verify

import (
	"fmt"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
)

// pairs questions oven settings that are said together, once each: a setting that is
// in question with one beside it is not held against the next as well.
func (j *judge) pairs() {
	for i := 0; i+1 < len(j.Said); i++ {
		j.takeHeat(i)
		if j.finding[i] >= 0 || !j.isPair(i) {
			continue
		}
		a, b := j.Said[i], j.Said[i+1]
		questions := measure.CheckOvens([]measure.Heat{scaled(a, b, j.SaysAgain(a.To, b.From)), scaled(b, a, false)})
		if len(questions) == 0 {
			continue
		}
		f := Finding{Kind: Pair, Said: j.Text.Quote(a.From, b.To), Suggest: questions[0].Text}
		if n := j.factOf(i, i+1); n >= 0 {
			fact := j.Book.Facts[n]
			f.Written, f.Line, f.Number = fact.Text, fact.Line, fact.Number
		}
		if j.agreed[i] != j.agreed[i+1] {
			f.Suggest = "" // the recipe tells which is right
		}
		j.found(i, f)
		j.finding[i+1] = j.finding[i]
	}
}

// takeHeat takes a bare number for a heat where it says a heat again on the other scale: "four
// hundred and twenty five degrees, and for my friend in Norway that's a hundred and sixty of
// yours".
func (j *judge) takeHeat(i int) {
	a, b := j.Said[i], &j.Said[i+1]
	if a.Kind != speech.Heat || b.Kind != speech.Count || b.Unit != "" || j.Ties[i+1].Item >= 0 || j.Ties[i+1].Fact >= 0 || b.From-a.To > pairAgainReach || b.Amount.From.Cmp(leastSetting) < 0 || !j.isCalled(b.From) || j.Text.NearBehind(b.To, 6, "fan") {
		return
	}
	scale := a.Scale
	if n := j.Ties[i].Fact; scale == "" && n >= 0 && len(j.Book.Facts[n].Heats) > 0 {
		scale = j.Book.Facts[n].Heats[0].Scale
	}
	if other := map[string]string{"C": "F", "F": "C"}[scale]; other != "" {
		b.Kind, b.Scale, j.Ties[i+1].Aside = speech.Heat, other, false
		j.Said[i].Scale = scale
	}
}

// isCalled tells whether "that's", "about" or the like stands right before a word.
func (j *judge) isCalled(k int) bool {
	switch j.Text.At(k - 1) {
	case "that's", "is", "about", "that'd", "be":
		return true
	}
	return false
}

// conversionReach is how many words may stand between an amount and the same again in
// another system.
const conversionReach = 18

// conversions questions an amount that is said again in another system and is not the
// same: "two pounds, which for everybody outside the US is about 450 grams".
func (j *judge) conversions() {
	for i := 0; i+1 < len(j.Said); i++ {
		a, b := j.Said[i], j.Said[i+1]
		if !j.isConversion(i, a, b) {
			continue
		}
		to, differs := converted(a, b)
		if !differs {
			continue
		}
		f := Finding{Kind: Pair, Said: j.Text.Quote(a.From, b.To), Suggest: fmt.Sprintf("%s are %s, not %s.", j.Text.Quote(a.From, a.To), to, j.Text.Quote(b.From, b.To))}
		if n := j.Ties[i].Item; n >= 0 {
			line := j.Book.Items[n].Line
			f.Written, f.Line, f.Number = measureOf(line), line.Text, line.Number
		}
		j.found(i, f)
		j.finding[i+1] = j.finding[i]
	}
}

// converted gives amount a in the unit of b; differs tells that b is not about that by
// anybody's pints and cups.
func converted(a, b speech.Said) (to measure.Amount, differs bool) {
	for _, system := range []measure.System{measure.Metric, measure.Imperial, measure.US} {
		got, err := measure.Convert(a.Amount, b.Unit, system, system)
		if err != nil || same.Roughly(b.Amount.Range, got.Range) {
			return got, false
		}
		to = got
	}
	return to, true
}

// isConversion tells whether number i is said again in another system by the next one.
func (j *judge) isConversion(i int, a, b speech.Said) bool {
	if !converts[a.Kind] || !converts[b.Kind] || a.Struck || b.Struck || a.Plus.Unit != "" || b.Plus.Unit != "" || j.finding[i] >= 0 || b.From-a.To > conversionReach {
		return false
	}
	kind := a.Unit.Kind()
	if kind != b.Unit.Kind() || kind != measure.Mass && kind != measure.Volume && kind != measure.Length || isMetric(a.Unit) == isMetric(b.Unit) && !(a.Unit != b.Unit && j.SaysAgain(a.To, b.From) && j.isCalled(b.From)) || j.isOfAnother(i) {
		return false
	}
	switch next := j.Text.At(b.To + 1); j.Text.At(b.To) {
	case "of":
		return j.SaysAgain(a.To, b.From) && (next == "it" || next == "them" || next == "that")
	case "for":
		return j.SaysAgain(a.To, b.From) && listeners[next]
	case "in", "each", "per", "a", "on":
		if next == "old" || next == "new" || next == "the" && (j.Text.At(b.To+2) == "old" || j.Text.At(b.To+2) == "new") {
			return j.SaysAgain(a.To, b.From) // "a pint and a half in old money"
		}
		return j.Text.Words[b.To-1].Stop != speech.None && j.SaysAgain(a.To, b.From) // "60 ml, that's a teaspoon in every hole"
	}
	return j.SaysAgain(a.To, b.From) || j.isOtherSystem(b)
}

// isOtherSystem tells an amount in a system of measures that no line of the recipe uses for
// its kind: then it says again what was said before.
func (j *judge) isOtherSystem(s speech.Said) bool {
	other := false
	for _, it := range j.Book.Items {
		for _, w := range same.Statements(it.Line) {
			if w.Unit.Kind() == s.Unit.Kind() && !spoons[w.Unit] {
				if isMetric(w.Unit) == isMetric(s.Unit) {
					return false
				}
				other = true
			}
		}
	}
	return other && !spoons[s.Unit]
}

// spoons are units that every system has.
var spoons = map[measure.Unit]bool{measure.Teaspoon: true, measure.Tablespoon: true, measure.Cup: true}

// converts are the kinds of number that are said again in another system.
var converts = map[speech.Kind]bool{speech.Measure: true, speech.Room: true, speech.Length: true}

// isOfAnother tells whether the next number is rather about another line than number i.
func (j *judge) isOfAnother(i int) bool {
	n := j.Ties[i+1].Item
	return n >= 0 && n != j.Ties[i].Item && (j.EqualItem(j.Said[i+1], n) || j.Said[i+1].From-j.Said[i].To > againReach)
}

// againReach is how many words may stand between two amounts of which the second
// seems to be about another line.
const againReach = 4

// listeners are words for whom an amount is said again: "about two pounds for my people
// overseas".
var listeners = speech.SetOf("all my our you your those them anyone anybody everyone everybody people folks viewers friends americans")

// isMetric tells whether a unit is one of the metric system's.
func isMetric(u measure.Unit) bool {
	switch u {
	case measure.Gram, measure.Kilogram, measure.Millilitre, measure.Centilitre, measure.Decilitre, measure.Litre, measure.Milligram, measure.Millimetre, measure.Centimetre:
		return true
	}
	return false
}

// How many words may stand between the two settings of a pair, and where words say
// that the second is the first again.
const (
	pairReach      = 7
	pairAgainReach = 16
)

// isPair tells whether number i and the next are one oven's setting in two ways.
func (j *judge) isPair(i int) bool {
	a, b := j.Said[i], j.Said[i+1]
	if a.Kind != speech.Heat || b.Kind != speech.Heat || a.Struck || b.Struck || a.Below || b.Below || j.Ties[i].Aside || j.Ties[i+1].Aside {
		return false
	}
	bare := a.Oven == "" && a.Scale == "" && b.Oven == "" && b.Scale == ""
	reach, again := pairReach, j.SaysAgain(a.To, b.From) && a.Scale != b.Scale && a.Scale != "gas" && b.Scale != "gas"
	if again {
		reach = pairAgainReach
	}
	if b.From-a.To > reach || bare || a.Oven == b.Oven && a.Scale == b.Scale {
		return false
	}
	if j.isFanBefore(a) {
		return false
	}
	for k := a.To; k < b.From && !again; k++ {
		if changes[j.Text.Words[k].Text] {
			return false
		}
	}
	return true
}

// isFanBefore tells whether the talk was of a fan's setting before a number, which
// then may be one: "Ours is a fan. – Then one fifty."
func (j *judge) isFanBefore(s speech.Said) bool {
	for k := s.From - 1; k >= 0 && k >= s.From-5; k-- {
		if j.Text.Words[k].Text == "fan" {
			return s.Oven == ""
		}
	}
	return false
}

// changes are words between two settings of which one comes after the other:
// "then down to 160".
var changes = speech.SetOf("then down up turn drop reduce lower after minutes until")

// scaled gives a heat with the scale of its neighbour where it has none itself, or with
// the other one where the neighbour says it again for those who count otherwise.
func scaled(s, beside speech.Said, again bool) measure.Heat {
	h := same.Setting(s)
	if h.Scale != "" {
		return h
	}
	h.Scale = "C"
	if again && beside.Scale == "C" && beside.Oven == s.Oven {
		h.Scale = "F"
	}
	if beside.Scale == "F" && beside.Oven != s.Oven || s.Amount.From.Cmp(measure.Whole(280)) > 0 {
		h.Scale = "F"
	}
	return h
}

func (j *judge) factOf(said ...int) int {
	for _, i := range said {
		if n := j.Ties[i].Fact; n >= 0 {
			return n
		}
	}
	return -1
}
