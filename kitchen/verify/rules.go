package verify

import (
	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
)

// What the rules alone would tell. It is one trait among others, and all there is to go by
// where only a few words are said.

// isByRule tells whether the rules take number i for wrong.
func (j *judge) isByRule(i int, kind Kind) bool {
	t := j.Ties[i]
	switch {
	case j.stray[i]:
		return false
	case kind == Pair:
		return j.Said[i].Kind == speech.Heat || j.SaysAgain(j.Said[i].To, j.Said[i+1].From)
	case t.Foreign != "":
		return j.isForeignByRule(i)
	case kind == NotWritten && j.Said[i].Kind == speech.Heat:
		return j.isHeatByRule(i)
	case kind == NotWritten:
		return j.isTimeByRule(i)
	case t.Fact >= 0 && j.Said[i].Kind == speech.Time:
		return !t.Aside && (j.IsFirm(i) || !j.isFactSaidBefore(t.Fact, i))
	}
	return !t.Aside && !j.isSaidRight(i) && !j.isUnlisted(i) && !j.isPackSize(i)
}

// isPackSize tells the size of a pack where the line counts none: "a 16-ounce bag".
func (j *judge) isPackSize(i int) bool {
	n := j.Ties[i].Item
	return n >= 0 && j.Said[i].Size && j.Book.Items[n].Line.Packs.Unit == ""
}

// isUnlisted tells a bare number that stands in no list of amounts.
func (j *judge) isUnlisted(i int) bool {
	return j.Ties[i].Item >= 0 && same.Elided(j.Said[i]) && !j.isList(i)
}

// isForeignByRule tells whether the host puts in what the recipe does not have.
func (j *judge) isForeignByRule(i int) bool {
	s := j.Said[i]
	if j.Ties[i].Aside {
		return false
	}
	return s.Kind != speech.Count || j.IsInstruction(i) || j.GoesIn(s.To) || j.Text.Pronoun(s.To) || j.IsSqueezed(s) || j.IsAdded(s)
}

// isHeatByRule tells a heat that something is brought to: "take it to 92 on the probe".
func (j *judge) isHeatByRule(i int) bool {
	s := j.Said[i]
	if s.Bare && s.Oven == "" && !j.Text.Near(s.From, s.To, 6, "thermometer", "probe") {
		return false
	}
	return j.IsTarget(s) && j.Text.At(s.From-2) != "up" && !j.IsWeather(s)
}

// isTimeByRule tells a wait: "then it goes in the fridge for an hour".
func (j *judge) isTimeByRule(i int) bool {
	s := j.Said[i]
	return s.Amount.From.Cmp(leastWait) >= 0 && j.IsWait(i) || j.isWaitBehind(i)
}

// leastWait is the least wait, in minutes, that the rules tell of.
var leastWait = measure.Whole(5)

// isFactSaidBefore tells whether a number before i agrees with fact n.
func (j *judge) isFactSaidBefore(n, i int) bool {
	for p := range i {
		if j.Ties[p].Fact == n && j.Ties[p].Agrees {
			return true
		}
	}
	return false
}
