package verify

import (
	"slices"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/verify/about"
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// strays judges numbers that nothing ties to the recipe: each may be said wrong of what
// nobody says, nearest to it, or be of what is not written.
func (j *judge) strays() {
	for i, s := range j.Said {
		if !j.isOpen(i) || j.finding[i] >= 0 || s.Again || s.Article && (s.Unit.Kind() == measure.Count || s.Kind == speech.Length) {
			continue
		}
		if n := j.unplaced(i); n >= 0 {
			j.Ties[i].Item, j.agreed[i] = n, true // by a name that nobody knows
			continue
		}
		j.stray[i] = true
		j.judgeStray(i)
	}
}

// unplaced gives the line that nobody says and whose amount number i just is, −1 for none.
func (j *judge) unplaced(i int) int {
	for n := range j.Book.Items {
		if j.isUnplaced(j.Said[i], n) && !j.isSaid(n) {
			return n
		}
	}
	return -1
}

// judgeStray finds what number i may be said wrong of. Where that is not believed, it is
// about nothing again.
func (j *judge) judgeStray(i int) {
	before := j.Ties[i]
	switch s := j.Said[i]; {
	case s.Each && s.Kind == speech.Measure:
		if !j.strayFromPortion(i) {
			j.strayFromWeight(i)
		}
	case s.Each:
		return
	case j.strayFromItem(i), j.strayFromFact(i):
	case s.Kind == speech.Measure && s.Unit.Kind() != measure.Count:
		j.found(i, Finding{Kind: NotWritten})
	}
	if j.finding[i] < 0 {
		j.Ties[i] = before
	}
}

// strayFromItem judges an amount by the nearest line whose own nobody says.
func (j *judge) strayFromItem(i int) bool {
	s := j.Said[i]
	if about.Loose[s.Unit] || s.Kind != speech.Measure && !(s.Kind == speech.Count && (same.Elided(s) || j.Text.Pronoun(s.To))) {
		return false
	}
	n := j.nearestLine(s, func(n int) bool { return j.canBeOf(s, n) })
	if n < 0 {
		return false
	}
	j.Ties[i].Item = n
	j.differsFromLine(i, n)
	return true
}

// strayReach is how many words a stray amount may stand from its food.
const strayReach = 45

// nearestLine gives the line whose food is named nearest to a number, of those that can be
// meant, −1 for none within reach.
func (j *judge) nearestLine(s speech.Said, can func(n int) bool) int {
	best, closest := -1, strayReach
	for _, m := range j.Mentions {
		gap := max(s.From-m.To, m.From-s.To, 0)
		if m.Foreign || gap >= closest {
			continue
		}
		if k := slices.IndexFunc(m.Items, can); k >= 0 {
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

// strayFromFact judges a number by the nearest step that states one of its kind that
// nobody says: a bare one by a heat, too.
func (j *judge) strayFromFact(i int) bool {
	s := j.Said[i]
	best, closest := -1, mostStrayed
	for n, f := range j.Book.Facts {
		kind := f.Kind == s.Kind || f.Kind == speech.Heat && j.isStrayHeat(i) || f.Kind == speech.Count && s.Kind == speech.Measure && s.Unit.Kind() == measure.Count
		if f.Kind == speech.Count && f.Place >= 0 && !j.Text.Pronoun(s.To) && !about.Share(written.Nouns(j.Text, s), f.Nouns) {
			continue // a count of pieces is said with them, or of them
		}
		if !kind || f.Total || f.Part || f.Kind == speech.Time || f.Kind == speech.Piece || j.isFactSaid(n) {
			continue
		}
		away := 0
		if f.Place >= 0 {
			away = j.stepsTo(i, f)
		}
		if away < closest {
			best, closest = n, away
		}
	}
	if best < 0 {
		return false
	}
	if s.Kind == speech.Count && j.Book.Facts[best].Kind == speech.Heat {
		j.Said[i].Kind, j.Said[i].Bare = speech.Heat, true
	}
	j.Ties[i].Fact, j.Ties[i].Agrees = best, about.EqualFact(j.Said[i], j.Book.Facts[best])
	if j.Ties[i].Agrees {
		j.agreed[i] = true
		return true
	}
	j.differsFromStep(i, best)
	if j.finding[i] < 0 {
		j.Said[i] = s
	}
	return true
}

// mostStrayed is how many steps from its own a number may be said that nothing ties to it.
const mostStrayed = 4

// isStrayHeat tells a bare number that can be a heat: "I put mine at 450".
func (j *judge) isStrayHeat(i int) bool {
	s := j.Said[i]
	return s.Kind == speech.Count && s.Unit == "" && s.Amount.IsSingle() && s.Amount.From.Cmp(leastSetting) >= 0 && s.Amount.To.Cmp(mostSetting) <= 0 && s.Amount.IsMultiple(five)
}

// The heats that an oven has, on either scale.
var (
	leastSetting = measure.Whole(60)
	mostSetting  = measure.Whole(550)
	five         = measure.Whole(5)
)

// strayFromPortion judges what goes into each of several by what the step at hand states of
// any food: "a tablespoon of filling in every wrapper".
func (j *judge) strayFromPortion(i int) bool {
	var nearest *written.Portion
	for k := range j.Book.Portions {
		p := &j.Book.Portions[k]
		same, ok := j.Scale.Amount(j.Said[i], p.Amount.Amount, recipe.Line{})
		switch {
		case same:
			return true
		case ok && (nearest == nil || away(p.Place, j.PlaceOf(i)) < away(nearest.Place, j.PlaceOf(i))):
			nearest = p
		}
	}
	if nearest == nil {
		return false
	}
	j.Ties[i].Portion = nearest.Food
	j.found(i, Finding{Kind: Differs, Written: nearest.Text, Line: nearest.Line, Number: nearest.Number})
	return true
}

// strayFromWeight judges what each of several weighs by the line of the food named nearest
// that states such a weight: "two and a half pounds each" of two squash of one and a half.
func (j *judge) strayFromWeight(i int) {
	s := j.Said[i]
	best := j.nearestLine(s, func(n int) bool {
		l := j.Book.Items[n].Line
		return l.Amount.Unit.Kind() == measure.Count && j.closest(s, l).Unit.Kind() == s.Unit.Kind()
	})
	if best < 0 {
		return
	}
	line := j.Book.Items[best].Line
	if same, _ := j.Scale.Amount(s, j.closest(s, line), line); same {
		j.agreed[i] = true
		return
	}
	j.Ties[i].Item = best
	j.differsFromLine(i, best)
}
