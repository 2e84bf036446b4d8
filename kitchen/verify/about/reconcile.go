package about

import (
	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// Most of what is said is as it is written, and most of what is written is said
// once. So a number that is about nothing, or that does not agree with what it
// seems to be about, is likelier to be what it equals, where that is near and
// nobody else says it.

const (
	nearFood    = 24 // words to the mention of a food whose amount a number equals
	nearCount   = 6  // the same for a count
	pronounFood = 60 // the same for "700 grams of that"
	besideFood  = 12 // words to the mention of a food beside an amount that was said of another before
	leastEqual  = 0.3
	leastMoved  = 1.5 // the score of a fact that a number may be moved to
)

// Reconcile ties numbers to what they equal.
func (r *Reading) Reconcile() {
	r.yolks()
	r.correct()
	for i, s := range r.Said {
		t := &r.Ties[i]
		if s.Struck || s.Kind == speech.Share || s.Each || t.Agrees || t.Item >= 0 && r.EqualItem(s, t.Item) {
			continue
		}
		if p := r.equalPortion(i); p != "" && !r.isNamedForeign(i) && (!t.firm || t.Item >= 0 && s.Unit != r.Book.Items[t.Item].Line.Amount.Unit) {
			t.Item, t.Fact, t.Foreign, t.Portion, t.Aside = -1, -1, "", p, false
			continue
		}
		if t.firm && !(t.Item >= 0 && (r.isOddUnit(i) || r.isGiven(i))) {
			continue
		}
		if n := r.equalFact(i); n >= 0 && t.Item < 0 {
			t.Fact, t.Agrees, t.Aside = n, true, false
			continue
		}
		if n := r.equalItem(i); n >= 0 && !(r.isNamedForeign(i) && (r.GapTo(i, n) > besideName || r.isItemTied(n, i))) && (t.Item < 0 || r.GapTo(i, n) < r.GapTo(i, t.Item) || r.isOddUnit(i) || r.isGiven(i)) {
			t.Item, t.Fact, t.Foreign, t.Portion, t.Aside = n, -1, "", "", false
		}
	}
	r.sides()
	r.spread()
	r.move()
	r.mishear()
	r.unswap()
	r.unrepeat()
	r.carryOn()
	r.rescue()
	r.carryOn() // with what was rescued too
	r.lastResort()
	r.unswap() // among what was rescued too
}

// besideName is how many words from an amount a line's food may stand that is then called
// by another name: "coconut milk, we call it lolo, 250 ml of lolo".
const besideName = 7

// isNamedForeign tells whether number i is "of" a food that the recipe does not have.
func (r *Reading) isNamedForeign(i int) bool {
	to := r.Said[i].To
	return r.Ties[i].Foreign != "" && !generic[r.Ties[i].Foreign] && r.Text.At(to) == "of" && !r.Text.Pronoun(to) && !leads[r.Text.At(to+1)]
}

// generic are names that may mean many a line's food.
var generic = speech.SetOf("meat fish veg vegetables fruit cheese oil sugar flour pasta beans nuts spice spices stock")

// isGiven tells whether number i is tied to a line whose own amount another number says,
// and names no food behind it.
func (r *Reading) isGiven(i int) bool {
	return r.Text.At(r.Said[i].To) != "of" && r.isItemTied(r.Ties[i].Item, i)
}

// isOddUnit tells whether number i is a measure of another kind than the line that it
// is tied to: grams of what is written in spoons.
func (r *Reading) isOddUnit(i int) bool {
	s, l := r.Said[i], r.Book.Items[r.Ties[i].Item].Line
	return s.Kind == speech.Measure && s.Unit.Kind() != l.Amount.Unit.Kind()
}

// yolks ties a count of eggs of which only a part is wanted to the line of that part: "the
// yolks from eight eggs".
func (r *Reading) yolks() {
	for i, s := range r.Said {
		if s.Kind != speech.Count || r.Text.At(s.From-1) != "from" && r.Text.At(s.From-1) != "of" || s.From < 2 {
			continue
		}
		part := r.Text.Words[s.From-2].Stem
		if part != "yolk" && part != "white" {
			continue
		}
		for n, it := range r.Book.Items {
			if name := written.Stems(it.Line.Food); len(name) > 1 && name[len(name)-1] == part {
				r.Ties[i].Item, r.Ties[i].Foreign, r.Ties[i].firm = n, "", true
				break
			}
		}
	}
}

// correct ties a number about nothing to the line that the number it is said instead of
// equals: "what did I say for the stock? 400? I meant 600."
func (r *Reading) correct() {
	for i := 1; i < len(r.Said); i++ {
		t := &r.Ties[i]
		if !r.Said[i-1].Struck || t.firm || t.Fact >= 0 || t.Aside {
			continue
		}
		if n := r.equalItem(i - 1); n >= 0 && r.GapTo(i-1, n) <= besideFood && r.Scale.Comparable(r.Said[i], r.Book.Items[n].Line) {
			t.Item, t.Foreign, t.Portion, t.firm = n, "", "", true
		}
	}
}

// sides gives the second of two lengths that equal one side of a tin to the other: "a 20 by
// 20" where the tin is 20 x 30 cm.
func (r *Reading) sides() {
	for i := 1; i < len(r.Said); i++ {
		a, b, n := r.Said[i-1], r.Said[i], r.Ties[i].Fact
		if b.Kind != speech.Length || a.Kind != b.Kind || n < 0 || r.Ties[i-1].Fact != n || b.From-a.To > 1 || r.Text.At(b.From-1) != "by" && r.Text.At(b.From-1) != "x" {
			continue
		}
		for _, m := range []int{n + 1, n - 1} {
			if m >= 0 && m < len(r.Book.Facts) && r.isOtherSide(n, m) {
				r.Ties[i].Fact, r.Ties[i].Agrees = m, EqualFact(b, r.Book.Facts[m])
				break
			}
		}
	}
}

// isOtherSide tells whether two facts are the sides of one tin.
func (r *Reading) isOtherSide(n, m int) bool {
	a, b := r.Book.Facts[min(n, m)], r.Book.Facts[max(n, m)]
	return a.Kind == speech.Length && b.Kind == a.Kind && a.Line == b.Line && b.From-a.To <= 1 && !r.isFactSaid(m, -1)
}

// spread gives an amount that was said of its line before to another line beside it
// whose own it is and that nobody says: "buttermilk, the same as the meal".
func (r *Reading) spread() {
	for i, s := range r.Said {
		t := &r.Ties[i]
		if t.Item < 0 || t.Aside || s.Kind == speech.Share || !r.EqualItem(s, t.Item) || !r.isItemSaid(t.Item, i) {
			continue
		}
		if n := r.equalItem(i); n >= 0 && n != t.Item && r.GapTo(i, n) <= besideFood && r.GapTo(i, t.Item) > 0 {
			t.Item = n
		}
	}
}

// equalItem gives the item near number i that it equals and that nobody else
// says, −1 for none.
func (r *Reading) equalItem(i int) int {
	s := r.Said[i]
	if s.Kind != speech.Measure && s.Kind != speech.Count || s.Article && s.Unit.Kind() == measure.Count {
		return -1
	}
	reach := nearFood
	if s.Kind == speech.Measure && r.Elsewhere[i] < 0.1 {
		reach = pronounFood
	}
	if ofThese := r.Text.At(s.To) == "of" && pronouns[r.Text.At(s.To+1)]; s.Kind == speech.Count && !ofThese {
		reach = nearCount
	} else if s.Kind == speech.Count {
		reach = nearFood
	} else if r.Text.At(s.To) == "of" && pronouns[r.Text.At(s.To+1)] {
		reach = pronounFood
	}
	best, closest := -1, reach+1
	for _, m := range r.Mentions {
		if m.From > s.To+reach {
			break
		}
		if m.Foreign || m.To < s.From-reach {
			continue
		}
		gap := max(m.From-s.To, s.From-m.To, 0)
		for _, n := range m.Items {
			if gap < closest && r.isExactly(s, n) && !r.isItemTied(n, i) {
				best, closest = n, gap
			}
		}
	}
	return best
}

// equalPortion gives the food of which a step states just what number i says, where
// the food is named near it: "the saffron is in its 50 ml of stock". "" for none.
func (r *Reading) equalPortion(i int) string {
	s := r.Said[i]
	if s.Kind != speech.Measure || s.Unit.Kind() == measure.Count {
		return ""
	}
	for _, p := range r.Book.Portions {
		if p.Amount.Unit != s.Unit || !same.Ranges(s.Amount.Range, p.Amount.Amount.Range) {
			continue
		}
		for k := max(0, s.From-nearFood); k < min(len(r.Text.Words), s.To+nearFood); k++ {
			if r.Text.Words[k].Stem == p.Food {
				return p.Food
			}
		}
	}
	return ""
}

// GapTo counts the words between number i and the nearest mention of item n.
func (r *Reading) GapTo(i, n int) int {
	s := r.Said[i]
	gap := 1 << 20
	for _, m := range r.Mentions {
		if m.From > s.To+nearFood {
			break
		}
		if names(m, n) {
			gap = min(gap, max(m.From-s.To, s.From-m.To, 0))
		}
	}
	return gap
}

// isExactly tells whether a number is the amount of item n in its own unit.
func (r *Reading) isExactly(s speech.Said, n int) bool {
	l := r.Book.Items[n].Line
	if s.Kind == speech.Count && l.Amount.Unit.Kind() != measure.Count && r.isOfThem(s.To) {
		return false // "you need three of them"
	}
	return l.HasAmount && (same.Elided(s) || s.Unit == l.Amount.Unit || s.Unit == l.Packs.Unit && s.Unit != "" || s.Kind == speech.Count && s.Amount.Unit == l.Amount.Unit) && r.EqualItem(s, n)
}

// isItemTied tells whether a number besides i says the whole of item n.
func (r *Reading) isItemTied(n, i int) bool {
	for p, t := range r.Ties {
		if p != i && t.Item == n && !t.Aside && r.Said[p].Kind != speech.Share && r.EqualItem(r.Said[p], n) {
			return true
		}
	}
	return false
}

// equalFact gives the fact near number i that it equals and that nobody else
// says, −1 for none.
func (r *Reading) equalFact(i int) int {
	s := r.Said[i]
	if s.Kind == speech.Count && same.Elided(s) && (len(written.Nouns(r.Text, s)) == 0 || r.leadOf(s) == "at") {
		s.Kind, s.Bare, s.Amount.Unit = speech.Heat, true, "" // "it's low to start with, a hundred and fifty"
	}
	if s.Kind != speech.Time && s.Kind != speech.Heat && s.Kind != speech.Length || s.Article {
		return -1
	}
	around := r.around(i)
	best, top := -1, 0.0
	for n, f := range r.Book.Facts {
		if f.Kind != s.Kind || f.Total || !EqualFact(s, f) || r.IsFactTied(n, i) {
			continue
		}
		shared := r.sharedWords(f, around)
		place, distance := r.scorePlace(s, f)
		if score := shared + place; (distance <= 1 || shared >= leastEqual || s.Kind == speech.Time && r.isNext(i, n)) && score > top {
			best, top = n, score
		}
	}
	return best
}

// mishear gives the first of two times that equal one fact to the step before, where
// that has a time that sounds like it and that nobody says: "in for fifteen minutes;
// leave it a quarter of an hour" where fifty and fifteen are written.
func (r *Reading) mishear() {
	for i := range r.Ties {
		t := &r.Ties[i]
		if t.Fact <= 0 || !t.Agrees || r.Said[i].Kind != speech.Time || !r.isSaidLater(t.Fact, i) {
			continue
		}
		n := t.Fact - 1
		for n > 0 && r.Book.Facts[n].Kind != speech.Time {
			n--
		}
		f := r.Book.Facts[n]
		if r.isUnsaid(n, f) && r.Book.Distance(f.Place, r.Book.Facts[t.Fact].Place) <= 1 && (SoundsLike(r.Said[i].Amount, f.Amount) || isTenfold(r.Said[i], f.Said)) {
			t.Fact, t.Agrees = n, false
		}
	}
}

// isSaidLater tells whether a number behind i agrees with fact n.
func (r *Reading) isSaidLater(n, i int) bool {
	for p := i + 1; p < len(r.Ties); p++ {
		if r.Ties[p].Fact == n && r.Ties[p].Agrees {
			return true
		}
	}
	return false
}

// move gives a time that does not agree with its fact to another step's, where
// another number is about its own and none is about the other: then it was
// likely about that.
func (r *Reading) move() {
	for i := range r.Ties {
		t := &r.Ties[i]
		if t.Fact < 0 || t.Agrees || r.Said[i].Kind != speech.Time || !r.isFactSaid(t.Fact, i) {
			continue
		}
		if n := r.freeFact(i); n >= 0 {
			t.Fact, t.Agrees = n, EqualFact(r.Said[i], r.Book.Facts[n])
		}
	}
}

// isFactSaid tells whether a number besides i is tied to fact n.
func (r *Reading) isFactSaid(n, i int) bool {
	for p, t := range r.Ties {
		if p != i && t.Fact == n && (t.Agrees || !t.Aside) {
			return true
		}
	}
	return false
}

// freeFact is the likeliest time that no number is about, −1 for none.
func (r *Reading) freeFact(i int) int {
	around := r.around(i)
	best, top := -1, 0.0
	for n, f := range r.Book.Facts {
		if f.Kind != speech.Time || f.Total || f.Part || r.isFactSaid(n, -1) {
			continue
		}
		if score := r.claimOf(i, r.Said[i], n, around).score(); score >= leastMoved && score > top {
			best, top = n, score
		}
	}
	return best
}
