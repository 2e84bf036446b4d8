package about

import (
	"slices"

	"benchproof/kitchen/verify/speech"
)

// move gives a number that does not agree with its fact to another step's, where
// another number is about its own and none is about the other: then it was
// likely about that.
func (r *Reading) move() {
	for i := range r.Ties {
		t := &r.Ties[i]
		if t.Fact < 0 || t.Agrees || r.Said[i].Kind != speech.Time || !r.isShared(i) {
			continue
		}
		if n := r.freeFact(i); n >= 0 {
			t.Fact, t.Agrees = n, EqualFact(r.Said[i], r.Book.Facts[n])
		}
	}
}

// isShared tells whether another number is tied to the fact of number i.
func (r *Reading) isShared(i int) bool {
	for p, t := range r.Ties {
		if p != i && t.Fact == r.Ties[i].Fact {
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
		if f.Kind != speech.Time || f.Total || f.Part || slices.ContainsFunc(r.Ties, func(o Tie) bool { return o.Fact == n }) {
			continue
		}
		if score, _ := r.scoreFact(i, r.Said[i], n, around); score >= leastMoved && score > top {
			best, top = n, score
		}
	}
	return best
}
