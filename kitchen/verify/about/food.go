package about

import (
	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

const (
	afterReach  = 7  // words behind an amount in which its food can stand
	beforeReach = 22 // words before it
)

// reaches tells whether the mention behind a number is what it measures.
func (r *Reading) reaches(i int, m written.Mention) bool {
	s := r.Said[i]
	if next := i + 1; next < len(r.Said) && r.Said[next].From < m.From && r.Said[next].Kind != speech.Share && !r.isSizeOf(i, next) {
		return false
	}
	words := r.Text.Words
	from := s.To
	if s.Kind == speech.Count {
		from = r.Text.BehindMeasure(from)
	}
	for k := from; k < m.To; k++ {
		if words[k-1].Stop == speech.Sentence || words[k-1].Stop == speech.Clause && k > s.To {
			return false
		}
		if k >= m.From {
			break
		}
		w := words[k].Text
		if k == s.To && r.isOf(k) {
			continue
		}
		if w == "them" && r.Text.At(k-1) == "of" {
			continue // "three of them green bananas"
		}
		if written.Blockers[w] || written.IsThing(r.Text, k) && r.Text.At(k+1) != "of" {
			return false
		}
		if s.Kind == speech.Count && w != "of" && !written.Between[w] && !written.Describing[w] && w != "size" && w != "sized" {
			return false
		}
	}
	if words[s.To-1].Stop == speech.Clause && s.Kind == speech.Count {
		return false
	}
	return m.From >= s.To || s.Kind == speech.Share
}

// isSizeOf tells whether one number is the size of the packs that the other
// counts: "two 400 gram tins".
func (r *Reading) isSizeOf(i, next int) bool {
	return r.Said[next].Size && r.Said[next].From-r.Said[i].To <= 2
}

// tieUnit ties "four cloves" to the only line that counts cloves.
func (r *Reading) tieUnit(i int) {
	s := r.Said[i]
	if s.Kind != speech.Measure || s.Unit.Kind() != measure.Count {
		return
	}
	only := -1
	for n, it := range r.Book.Items {
		if it.Line.Amount.Unit == s.Unit && it.Line.HasAmount || it.Line.Packs.Unit == s.Unit {
			if only >= 0 {
				return
			}
			only = n
		}
	}
	if only >= 0 && !(r.Text.At(s.To) == "of" && !r.Text.Pronoun(s.To)) {
		r.Ties[i].Item = only
	}
}

// isPartOf tells "50 grams of the sugar" from "50 grams of sugar".
func (r *Reading) isPartOf(s speech.Said, m written.Mention) bool {
	if !r.isOf(s.To) {
		return false
	}
	for k := s.To; k < m.From; k++ {
		switch r.Text.Words[k].Text {
		case "the", "that", "your", "this":
			return true
		}
	}
	return false
}
