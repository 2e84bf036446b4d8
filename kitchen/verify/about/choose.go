package about

import (
	"slices"

	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// choose picks the line that a mention means by the place in the recipe, by
// what the amount agrees with, and by what was said already.
func (r *Reading) choose(i int, m written.Mention) int {
	s := r.Said[i]
	if len(m.Items) == 1 {
		return m.Items[0]
	}
	going := r.componentBefore(i)
	best, top := m.Items[0], -100.0
	for _, n := range m.Items {
		it := r.Book.Items[n]
		score := r.usedHere(n, s.From, m.To+3) + 3*r.namedNear(s.From, it.Component)
		if r.EqualItem(s, n) {
			score += equalAmong
		}
		if it.Component == going {
			score++
		}
		if r.isToldApart(s, m, n) {
			score += toldApart
		}
		if !it.Line.HasAmount {
			score -= 1.5
		} else if s.Kind == speech.Measure && s.Unit.Kind() == it.Line.Amount.Unit.Kind() {
			score++
		}
		if r.isItemSaid(n, i) {
			score -= 0.6
		}
		if score > top {
			best, top = n, score
		}
	}
	return best
}

// equalAmong is what it weighs that the amounts agree with one of several lines.
const equalAmong = 4.5

// toldApart is more than the amounts' agreement: who says "half a cup of the dark
// brown" of two sugars does not mean the white.
const toldApart = 5.5

// isToldApart tells whether a word behind "of" but the noun that is common to them is in the
// name of item n alone of the items that can be meant.
func (r *Reading) isToldApart(s speech.Said, m written.Mention, n int) bool {
	if r.Text.At(s.To) != "of" {
		return false
	}
	for k := s.To + 1; k < len(r.Text.Words) && k < s.To+5 && !speech.IsNumber(r.Text.At(k)); k++ {
		w := r.Text.Words[k].Stem
		if k == m.To-1 || !slices.Contains(written.Stems(r.Book.Items[n].Line.Food), w) {
			continue
		}
		if !slices.ContainsFunc(m.Items, func(other int) bool {
			return other != n && slices.Contains(written.Stems(r.Book.Items[other].Line.Food), w)
		}) {
			return true
		}
	}
	return false
}

// componentBefore is the component of the amount that was said shortly before
// number i, for amounts come in lists; −1 for none.
func (r *Reading) componentBefore(i int) int {
	for p := i - 1; p >= 0 && r.Said[i].From-r.Said[p].To < 25; p-- {
		if n := r.Ties[p].Item; n >= 0 && !r.Ties[p].Aside {
			return r.Book.Items[n].Component
		}
	}
	return -1
}

// usedHere weighs how much item n belongs to the places at two words.
func (r *Reading) usedHere(n int, at ...int) float64 {
	score := 0.0
	for _, word := range at {
		st := r.Book.States[r.placeOf(word)]
		if st.Component == r.Book.Items[n].Component {
			score += 0.75
		}
		if slices.Contains(st.Uses, n) {
			score += 0.75
		}
	}
	return score
}

// isItemSaid tells whether the whole of item n was said before number i.
func (r *Reading) isItemSaid(n, i int) bool {
	for p := range i {
		if r.Ties[p].Item == n && !r.Ties[p].Aside && r.Said[p].Kind != speech.Share && r.EqualItem(r.Said[p], n) {
			return true
		}
	}
	return false
}

// namedNear tells, from 0 to 1, whether a component is named shortly before a
// word.
func (r *Reading) namedNear(word, component int) float64 {
	name := written.Stems(r.Book.Recipe.Components[component].Name)
	if len(name) == 0 {
		return 0
	}
	for k := word - 1; k >= max(0, word-20); k-- {
		if r.Text.Words[k].Stem != name[len(name)-1] {
			continue
		}
		fits := true
		for q := 1; q < len(name); q++ {
			fits = fits && k-q >= 0 && r.Text.Words[k-q].Stem == name[len(name)-1-q]
		}
		if fits {
			return 1
		}
	}
	return 0
}
