package about

import (
	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// rescue ties a time or a heat that is about nothing to what is written at the
// step where it is said and that nobody says: likelier than a number about
// nothing and a fact that is left out is one that is said wrong. Only where there
// is one of each.
func (r *Reading) rescue() {
	r.rescueItems()
	for n, f := range r.Book.Facts {
		if i := r.onlyLoose(n, f); i >= 0 && r.onlyUnsaid(i) == n {
			if f.Kind == speech.Heat && r.Said[i].Kind == speech.Count {
				r.Said[i].Kind, r.Said[i].Bare = speech.Heat, true
			}
			r.Ties[i].Fact, r.Ties[i].Agrees = n, EqualFact(r.Said[i], f)
		}
	}
}

// isUnsaid tells whether a fact is one that is said once, and nobody says it.
func (r *Reading) isUnsaid(n int, f written.Fact) bool {
	if f.Place < 0 || f.Total || f.Part || f.Kind != speech.Time && f.Kind != speech.Heat || r.isFactSaid(n, -1) {
		return false
	}
	for i, s := range r.Said {
		if s.Kind == f.Kind && !s.Struck && r.Ties[i].Fact >= 0 && EqualFact(s, f) {
			return false // with another of the same value
		}
	}
	return true
}

// isLoose tells whether number i is about nothing and could be said wrong for a
// fact.
func (r *Reading) isLoose(i int, f written.Fact) bool {
	s, t := r.Said[i], r.Ties[i]
	if f.Kind == speech.Heat && r.isBareHeat(s) {
		s.Kind, s.Bare = speech.Heat, true
	}
	return s.Kind == f.Kind && !t.isTied() && !t.Aside && !s.Struck && !s.Article && !s.Each &&
		r.Book.Distance(f.Place, r.PlaceOf(i)) == 0 && isPossible(s, f) && r.contradicts(s, f) && (s.Kind != speech.Time || s.Unit == f.Unit && !isFar(s, f))
}

// isBareHeat tells a number that stands alone between stops and can be a heat:
// "write this down: two eighty-four."
func (r *Reading) isBareHeat(s speech.Said) bool {
	return s.Kind == speech.Count && s.Unit == "" && s.Amount.IsSingle() && s.Amount.From.Cmp(measure.Whole(leastHeat)) >= 0 &&
		s.From > 0 && r.Text.Words[s.From-1].Stop != speech.None && r.Text.Words[s.To-1].Stop != speech.None
}

// leastHeat is the least number that is taken for a heat without its degrees.
const leastHeat = 100

// onlyLoose is the only number that could be said wrong for fact n, −1 if there
// is none or more than one.
func (r *Reading) onlyLoose(n int, f written.Fact) int {
	if !r.isUnsaid(n, f) {
		return -1
	}
	only := -1
	for i := range r.Said {
		if !r.isLoose(i, f) {
			continue
		}
		if only >= 0 {
			return -1
		}
		only = i
	}
	return only
}

// onlyUnsaid is the only fact that number i could be said wrong for.
func (r *Reading) onlyUnsaid(i int) int {
	only := -1
	for n, f := range r.Book.Facts {
		if !r.isUnsaid(n, f) || !r.isLoose(i, f) {
			continue
		}
		if only >= 0 {
			return -1
		}
		only = n
	}
	return only
}

const (
	rescueNear = 10 // words between a food and an amount about nothing that may be said wrong of it
	rescueMost = 12 // times the written amount that such an amount may be
)

// rescueItems does the same for an amount that names no food: it is the one of the
// only food near it whose own nobody says.
func (r *Reading) rescueItems() {
	for i, s := range r.Said {
		if t := r.Ties[i]; s.Kind == speech.Measure && !t.isTied() && !t.Aside && !s.Struck && !s.Each && !s.Again {
			if n := r.onlyItem(i); n >= 0 {
				r.Ties[i].Item = n
			}
		}
	}
}

// onlyItem is the only item near number i whose amount it could be, of which
// nobody says any, −1 if there is none or more than one.
func (r *Reading) onlyItem(i int) int {
	s := r.Said[i]
	only := -1
	for n, it := range r.Book.Items {
		if !it.Line.HasAmount || r.isItemSpoken(n) || !r.Scale.Comparable(s, it.Line) || r.GapTo(i, n) > rescueNear {
			continue
		}
		if ratio, ok := r.Scale.Ratio(s, it.Line.Amount, it.Line); !ok || ratio.Cmp(measure.Whole(rescueMost)) > 0 || ratio.Mul(measure.Whole(rescueMost)).Cmp(measure.Whole(1)) < 0 {
			continue
		}
		if only >= 0 {
			return -1
		}
		only = n
	}
	return only
}

// isItemSpoken tells whether any number is about item n.
func (r *Reading) isItemSpoken(n int) bool {
	for _, t := range r.Ties {
		if t.Item == n && !t.Aside {
			return true
		}
	}
	return false
}
