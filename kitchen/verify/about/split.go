package about

import (
	"slices"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/speech"
)

// splitBack is how many words a food may stand before a sum of two amounts that is
// none: "lemon juice, two tablespoons and a teaspoon of salt".
const splitBack = 3

// splitSums parts what was read as a sum where the first amount is that of the food
// before it, and the second of the one behind.
func (r *Reading) splitSums() {
	for i := 0; i < len(r.Said); i++ {
		s := r.Said[i]
		if s.Plus.Unit == "" || !r.isTwoAmounts(s) {
			continue
		}
		first, second := s, s
		first.Plus, first.To = measure.Amount{}, s.PlusAt-1
		second.Plus, second.Amount, second.Unit, second.From = measure.Amount{}, s.Plus, s.Plus.Unit, s.PlusAt
		r.Said = slices.Replace(r.Said, i, i+1, first, second)
	}
}

func (r *Reading) isTwoAmounts(s speech.Said) bool {
	for _, m := range r.mentionsAt(s.From-splitBack-2, s.From) {
		if m.To > s.From || s.From-m.To > splitBack {
			continue
		}
		first := s
		first.Plus = measure.Amount{}
		if slices.ContainsFunc(m.Items, func(n int) bool { return r.EqualItem(first, n) && !r.EqualItem(s, n) }) {
			return true
		}
	}
	return false
}
