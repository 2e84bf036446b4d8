package verify

import (
	"slices"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/about"
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// That something is not said must be earned too: where a number stands about that
// nobody could place, it may be the one that is missed.

const (
	doubtNear  = 8  // words between a food and a number that may be its amount
	doubtCount = 4  // the same for a count
	doubtBare  = 12 // the same for a number that is just what the line has, without its unit
)

// isOpen tells whether number i is about nothing that is known.
func (j *judge) isOpen(i int) bool {
	t := j.Ties[i]
	return t.Item < 0 && t.Fact < 0 && t.Foreign == "" && t.Portion == "" && !t.Aside && !j.Said[i].Struck
}

// isDoubtful tells whether the amount of item n may have been said: a number of
// its kind that is about nothing stands beside its food.
func (j *judge) isDoubtful(n int) bool {
	line := j.Book.Items[n].Line
	for i, s := range j.Said {
		if j.isOpen(i) && j.isUnplaced(s, n) && (s.Kind == speech.Measure || j.GapTo(i, n) <= doubtBare) {
			return true
		}
		if !j.isOpen(i) || s.Kind != speech.Measure && !(s.Kind == speech.Count && line.Amount.Unit.Kind() == measure.Count) || !j.Scale.Comparable(s, line) {
			continue
		}
		reach := doubtNear
		if s.Kind == speech.Count {
			if len(written.Nouns(j.Text, s)) > 0 {
				continue // it counts something else
			}
			reach = doubtCount
		}
		if j.GapTo(i, n) <= reach {
			return true
		}
	}
	return false
}

// isUnplaced tells whether a number about nothing is just what line n has, in its own
// unit or without one where it is no small count: it was likely said of it, by a name
// that nobody knows.
func (j *judge) isUnplaced(s speech.Said, n int) bool {
	line := j.Book.Items[n].Line
	switch {
	case s.Article || s.Each || !j.EqualItem(s, n):
		return false
	case s.Kind == speech.Measure:
		return s.Unit == line.Amount.Unit && s.Unit.Kind() != measure.Count
	}
	return same.Elided(s) && line.Amount.Unit.Kind() != measure.Count
}

// isFactValue tells whether a number about nothing has the value of a time or a heat.
func (j *judge) isFactValue(s speech.Said, f written.Fact) bool {
	if s.Kind == f.Kind {
		return about.EqualFact(s, f)
	}
	return f.Kind == speech.Heat && s.Amount.From.Cmp(measure.Whole(100)) >= 0 && slices.ContainsFunc(f.Heats, func(h speech.Said) bool { return same.Ranges(s.Amount.Range, h.Amount.Range) })
}

// mostBare is the greatest number without a unit that may be a time.
var mostBare = measure.Whole(90)

// isFactDoubtful tells whether a time or a heat may have been said: one that is
// about nothing is said where the talk is at its step.
func (j *judge) isFactDoubtful(n int) bool {
	f := j.Book.Facts[n]
	for i, s := range j.Said {
		if j.isOpen(i) && !s.Article && (f.Kind == speech.Time || s.Bare || s.Kind == speech.Count && same.Elided(s)) && j.isFactValue(s, f) {
			return true
		}
		if f.Kind == speech.Time && j.isOpen(i) && s.Kind == speech.Count && s.Amount.To.Cmp(mostBare) <= 0 && len(written.Nouns(j.Text, s)) == 0 && j.Book.Distance(f.Place, j.PlaceOf(i)) == 0 {
			return true
		}
		if j.isOpen(i) && s.Kind == f.Kind && !s.Article && j.Book.Distance(f.Place, j.PlaceOf(i)) == 0 && about.IsNear(s, f) {
			return true
		}
	}
	return false
}
