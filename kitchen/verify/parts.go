package verify

import (
	"slices"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// parts marks the numbers of line n that agree, as its whole or as parts of it,
// and gives those that do not.
func (j *judge) parts(n int, said []int) (open []int) {
	whole, rest := false, false
	j.addUp(n, said)
	for k, i := range said {
		s := j.Said[i]
		switch {
		case j.agreed[i]:
		case s.Kind == speech.Share:
			j.agreed[i] = true
			rest = rest || k > 0 && (s.Amount.From.IsZero() || s.More)
		case j.EqualItem(s, n):
			j.agreed[i], whole = true, true
		case j.isHarmless(i, n), j.isWrittenPart(s, n), j.isTotal(s, n), j.isKeptBack(i, n), k > 0 && (j.isShareOf(said[k-1], i, n) || j.isOfWhole(said[k-1], i, n)):
			j.agreed[i] = true
		case !j.Ties[i].Aside:
			open = append(open, i)
		}
	}
	if whole {
		open = slices.DeleteFunc(open, func(i int) bool { return j.isStray(i, n) })
	}
	if len(open) > 1 || whole || len(open) == 1 && j.isOneByOne(open[0]) {
		open = slices.DeleteFunc(open, func(i int) bool { return j.isOneOf(i, n) })
	}
	if len(open) > 0 && j.arePartsOf(n, open, whole, rest) {
		j.agree(open)
		return nil
	}
	return j.lastPart(open)
}

// isStray tells a bare count that is likely about something else where the right one was
// said before: "four eggs … I've nine eggs in the fridge".
func (j *judge) isStray(i, n int) bool {
	if s := j.Said[i]; s.Kind != speech.Count || s.Unit != "" || !j.isSaidBefore(i, n) || j.Elsewhere[i] < leastStray && j.countsHead(s, n) {
		return false
	}
	j.agreed[i] = true
	return true
}

// leastStray is how likely a count must be about something else to be a stray one.
const leastStray = 0.3

// countsHead tells whether a count is of item n by its own noun: the wrappers of "lumpia
// wrappers".
func (j *judge) countsHead(s speech.Said, n int) bool {
	name, nouns := written.Stems(j.Book.Items[n].Line.Food), written.Nouns(j.Text, s)
	return len(name) > 0 && len(nouns) > 0 && slices.Contains(nouns, name[len(name)-1])
}

// isSaidBefore tells whether the whole of line n was said before number i.
func (j *judge) isSaidBefore(i, n int) bool {
	for p := range i {
		if j.Ties[p].Item == n && j.agreed[p] && j.EqualItem(j.Said[p], n) {
			return true
		}
	}
	return false
}

// lastPart keeps only the last of amounts that go on with one another and do not add
// up: "half a cup, and then another half".
func (j *judge) lastPart(open []int) []int {
	n := len(open)
	if n < 2 || !j.Said[open[n-1]].More {
		return open
	}
	j.agree(open[:n-1])
	return open[n-1:]
}

// maxParts is in how many parts a food goes in at most.
const maxParts = 8

// addUp marks amounts, one behind another, that add up to the line.
func (j *judge) addUp(n int, said []int) {
	var parts []int
	for _, i := range said {
		if s := j.Said[i]; s.Kind == speech.Share || s.Each || j.Ties[i].Aside || j.EqualItem(s, n) || len(parts) > 0 && j.isAgain(parts[len(parts)-1], i, n) {
			continue
		}
		parts = append(parts, i)
	}
	for from := 0; from < len(parts); {
		to := j.sumEnd(n, parts[from:])
		j.agree(parts[from : from+to])
		from += max(to, 1)
	}
}

// sumEnd gives how many of the first amounts add up to the line, 0 if none do.
func (j *judge) sumEnd(n int, parts []int) int {
	var sum []speech.Said
	for to := 0; to < len(parts) && to < maxParts; to++ {
		if to > 0 && !j.goesOn(parts[to-1], parts[to]) {
			return 0
		}
		sum = append(sum, j.Said[parts[to]])
		if total, ok := j.Sum(sum, n); to > 0 && ok && j.EqualItem(total, n) {
			return to + 1
		}
	}
	return 0
}

// isAgain tells whether number i says number p again in another unit: "two pounds,
// that's thirty two ounces".
func (j *judge) isAgain(p, i, n int) bool {
	if j.Said[p].Unit == j.Said[i].Unit || j.Said[p].Kind != speech.Measure || j.Said[i].Kind != speech.Measure {
		return false
	}
	same, ok := j.Scale.Amount(j.Said[i], j.Said[p].Amount, j.Book.Items[n].Line)
	return ok && same
}

// partReach is how many words apart the parts of one amount may be said, where
// nothing tells that they are parts.
const partReach = 60

// goesOn tells whether number i can be another part behind number p.
func (j *judge) goesOn(p, i int) bool {
	return j.Said[i].From-j.Said[p].To < partReach || j.Said[i].More || j.Ties[i].Of || j.isFirstPart(p)
}

// arePartsOf tells whether amounts that are no whole are parts of it: every one
// is said as a part, they are less than the whole, and the whole or "the rest"
// is said too.
func (j *judge) arePartsOf(n int, open []int, whole, rest bool) bool {
	if !whole && !rest {
		return false
	}
	var parts []speech.Said
	for _, i := range open {
		if s := j.Said[i]; !(j.Ties[i].Of || s.More || j.isFirstPart(i)) || !whole && len(open) > 1 && !j.Ties[i].Of && !s.More {
			return false
		}
		parts = append(parts, j.Said[i])
	}
	sum, ok := j.Sum(parts, n)
	return ok && j.Scale.Less(sum, j.Book.Items[n].Line)
}

// isShareOf tells whether number i is what share p of the line comes to: "half the
// sugar, that's 50 grams".
func (j *judge) isShareOf(p, i, n int) bool {
	share, s := j.Said[p], j.Said[i]
	if share.Kind != speech.Share || share.Amount.From.IsZero() || s.From-share.To > 8 {
		return false
	}
	s.Amount = s.Amount.Scale(measure.Whole(1).Quo(share.Amount.From))
	return j.EqualItem(s, n)
}

// isOfWhole tells whether number i is a part of the whole that number p has just said: "a
// teaspoon and a half of salt, and a teaspoon of that goes in now".
func (j *judge) isOfWhole(p, i, n int) bool {
	s := j.Said[i]
	return j.EqualItem(j.Said[p], n) && s.From-j.Said[p].To <= wholeReach && j.Text.At(s.To) == "of" && (j.Text.At(s.To+1) == "that" || j.Text.At(s.To+1) == "it") && j.Scale.Less(s, j.Book.Items[n].Line)
}

// wholeReach is how many words behind the whole a part of it may be said.
const wholeReach = 15

// isFirstPart tells whether words beside an amount make it a part: "now",
// "first", "to begin with".
func (j *judge) isFirstPart(i int) bool {
	s := j.Said[i]
	return j.Text.Near(s.From, s.To, 6, "first", "start", "begin") || j.Text.NearBehind(s.To, 6, "now", "later") || j.isReserved(i)
}

func (j *judge) isReserved(i int) bool {
	s := j.Said[i]
	return j.Text.Near(s.From, s.To, 6, "hold", "reserve", "reserved", "aside", "keep", "kept", "save", "saved", "dusting")
}

// isKeptBack tells "keep two tablespoons of the flour back for dusting", which is
// a part that the recipe need not state.
func (j *judge) isKeptBack(i, n int) bool {
	return j.Ties[i].Of && j.isReserved(i) && j.Scale.Less(j.Said[i], j.Book.Items[n].Line)
}

// isOneByOne tells whether another one follows an amount of one: "eggs, one, and then
// the second".
func (j *judge) isOneByOne(i int) bool {
	return j.Text.NearBehind(j.Said[i].To, oneByOne, "second", "other", "another", "next")
}

// oneByOne is how many words behind one the next is spoken of.
const oneByOne = 12

// isOneOf tells whether an amount is one of several pieces: "trim one sheet".
func (j *judge) isOneOf(i, n int) bool {
	s, l := j.Said[i], j.Book.Items[n].Line
	if s.Unit == measure.Head || !s.Amount.IsSingle() || !s.Amount.From.Equal(measure.Whole(1)) || s.Amount.Unit.Kind() != measure.Count || l.Amount.Unit.Kind() != measure.Count {
		return false
	}
	j.agreed[i] = true
	return true
}
