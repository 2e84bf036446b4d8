package verify

// What the host puts in and the recipe does not have.

import (
	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/about"
	"benchproof/kitchen/verify/speech"
)

// judgeForeign finds an amount of what is not in the recipe, unless it is what a
// line that nobody speaks of has, by a looser name: "350 grams of pasta" where the
// list has 350 g of tagliatelle.
func (j *judge) judgeForeign(i int, food string) {
	s := j.Said[i]
	if j.isPriced(s) || isLoad(s) {
		return
	}
	if s.Article && s.Unit == measure.Slice || s.Unit == measure.Drop || j.isDrawnOff(s) || j.isOnlyOpened(i) {
		return // "with a slice of ham", "one drop of water"
	}
	if s.Kind == speech.Count && (s.Article || isThisOne(s) && !j.IsDoneTo(i) && !j.IsAdded(s) && !j.IsSqueezed(s) && !j.IsInstruction(i)) {
		return
	}
	if n := j.unspokenLike(s, food); n >= 0 {
		j.Ties[i].Item, j.Ties[i].Foreign, j.agreed[i] = n, "", true
		return
	}
	j.found(i, Finding{Kind: NotWritten, Food: food})
}

// unspokenLike gives the line that nobody speaks of with the same amount of a food of the
// same aisle, −1 if there is none; of counts and spoons too many are alike to tell.
func (j *judge) unspokenLike(s speech.Said, food string) int {
	if s.Kind == speech.Count || s.Unit == measure.Teaspoon || s.Unit == measure.Tablespoon {
		return -1
	}
	for n, it := range j.Book.Items {
		f, ok := j.Book.FoodOf(it.Line)
		if ok && f.Aisle == j.Book.Names.Aisle(food) && s.Amount.Unit == it.Line.Amount.Unit && j.EqualItem(s, n) && !j.isSaid(n) {
			return n
		}
	}
	return -1
}

// isPutIn tells whether the host puts in what number i measures: "a tablespoon of
// vinegar goes in right now", "I finish it with 100 ml of cream".
func (j *judge) isPutIn(i int) bool {
	s := j.Said[i]
	return j.Text.NearBehind(s.To+1, 7, "goes", "go", "in") || j.Text.Near(s.From, s.From, 18, "finish", "add", "put", "stir")
}

// mostLoad is how many grams of what is not written nobody puts into a dish.
var mostLoad = measure.Whole(5000)

// isLoad tells of a mass that is more than any dish takes.
func isLoad(s speech.Said) bool {
	grams, ok := measure.Grams(s.Unit)
	return ok && s.Amount.From.Mul(grams).Cmp(mostLoad) >= 0
}

// isPriced tells what something costs: "a head of lettuce was $6".
func (j *judge) isPriced(s speech.Said) bool {
	for k := s.To; k < min(len(j.Text.Words), s.To+7) && (k == s.To || !j.Text.Parts(k-1)); k++ {
		switch j.Text.At(k) {
		case "$", "£", "€":
			return true
		}
	}
	return false
}

// isOnlyOpened tells a pack of which then an amount is taken: "I shake up a can of coconut
// milk and give it half a cup".
func (j *judge) isOnlyOpened(i int) bool {
	s := j.Said[i]
	if !about.IsPack[s.Unit] || i+1 >= len(j.Said) {
		return false
	}
	next := j.Said[i+1]
	return next.Kind == speech.Measure && !about.IsPack[next.Unit] && next.From-s.To < openedReach && j.Ties[i+1].Item < 0
}

// openedReach is how many words behind a pack what is taken of it may be said.
const openedReach = 15

// isDrawnOff tells what comes out of something: "about a cup of green water out of it".
func (j *judge) isDrawnOff(s speech.Said) bool {
	for k := s.To; k < min(len(j.Text.Words), s.To+6); k++ {
		if j.Text.At(k) == "out" && j.Text.At(k+1) == "of" {
			return true
		}
	}
	return false
}
