package verify

import (
	"slices"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/about"
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
)

// strays judges amounts that nothing ties to the recipe: each may be said wrong of the
// nearest food whose own amount nobody says, or be of what is not written.
func (j *judge) strays() {
	for i, s := range j.Said {
		if !j.isStrayAmount(i) {
			continue
		}
		j.stray[i] = true
		if n := j.nearestUnsaid(i); n >= 0 {
			j.Ties[i].Item = n
			line := j.Book.Items[n].Line
			j.found(i, Finding{Kind: Differs, Written: measureOf(line), Line: line.Text, Number: line.Number})
		} else if s.Kind == speech.Measure && s.Unit.Kind() != measure.Count {
			j.found(i, Finding{Kind: NotWritten})
		}
	}
}

// isStrayAmount tells whether number i can be an amount and is about nothing.
func (j *judge) isStrayAmount(i int) bool {
	s := j.Said[i]
	if !j.isOpen(i) || j.finding[i] >= 0 || s.Each || s.Again || s.Article && s.Unit.Kind() == measure.Count || about.Loose[s.Unit] {
		return false
	}
	return s.Kind == speech.Measure || s.Kind == speech.Count && (same.Elided(s) || j.Text.Pronoun(s.To))
}

// strayReach is how many words a stray amount may stand from its food.
const strayReach = 45

// nearestUnsaid gives the line whose amount nobody says and whose food is named nearest to
// number i, −1 for none.
func (j *judge) nearestUnsaid(i int) int {
	s := j.Said[i]
	best, closest := -1, strayReach
	for _, m := range j.Mentions {
		gap := max(s.From-m.To, m.From-s.To, 0)
		if m.Foreign || gap >= closest {
			continue
		}
		k := slices.IndexFunc(m.Items, func(n int) bool { return j.canBeOf(s, n) })
		if k >= 0 {
			best, closest = m.Items[k], gap
		}
	}
	return best
}

// canBeOf tells whether a number can be the amount of line n, which nobody says.
func (j *judge) canBeOf(s speech.Said, n int) bool {
	l := j.Book.Items[n].Line
	return l.HasAmount && !about.Loose[l.Amount.Unit] && j.Scale.Comparable(s, l) && !j.EqualItem(s, n) && !j.isSaid(n)
}
