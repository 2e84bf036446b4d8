package about

import (
	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

const (
	afterReach  = 7  // words behind an amount in which its food can stand
	beforeReach = 16 // words before it
)

// tieFood finds the food that a number is about. first is the first mention
// that may stand near enough before it.
func (r *Reading) tieFood(i, first int) {
	s, t := r.Said[i], &r.Ties[i]
	behind, before := -1, -1
	for m := first; m < len(r.Mentions) && r.Mentions[m].From < s.To+afterReach; m++ {
		switch mm := r.Mentions[m]; {
		case mm.To <= s.From:
			before = m
		case behind < 0 && mm.To > s.To && r.reaches(i, mm):
			behind = m
		}
	}
	if behind < 0 && r.tieForeign(i) {
		return
	}
	if before >= 0 && !r.comesBefore(i, r.Mentions[before]) {
		before = -1
	}
	pick := behind
	if pick < 0 || before >= 0 && r.prefersBefore(i, r.Mentions[before], r.Mentions[behind]) {
		pick = before
	}
	if pick < 0 {
		if !r.tieForeignBefore(i) {
			r.tieUnit(i)
		}
		return
	}
	m := r.Mentions[pick]
	n := r.choose(i, m)
	if m.Foreign && !(s.Kind == speech.Measure && r.EqualItem(s, n)) { // a food by a name near its own may be meant
		if s.Kind == speech.Measure {
			t.Foreign = r.Text.Quote(m.From, m.To)
		}
		return
	}
	t.Item = n
	t.before = pick == before
	t.Of = pick == behind && r.isPartOf(s, m)
	t.firm = pick == behind && m.From-s.To <= 2 || pick == before && s.From-m.To <= 1
}

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
		if written.Blockers[w] || written.Things[w] && r.Text.At(k+1) != "of" {
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

// prefersBefore decides where an amount stands between two foods: "flour 200 g
// sugar 100 g".
func (r *Reading) prefersBefore(i int, before, behind written.Mention) bool {
	s, words := r.Said[i], r.Text.Words
	if words[s.To].Text == "of" && !r.Text.Pronoun(s.To) || behind.From-s.To > 2 && before.To == s.From {
		return behind.From-s.To > 2 && before.To == s.From && words[s.To].Text != "of"
	}
	if before.To != s.From {
		return false
	}
	if words[s.To-1].Stop != speech.None && words[s.From-1].Stop == speech.None {
		return true
	}
	if words[s.From-1].Stop != speech.None {
		return false
	}
	if i > 0 && r.Ties[i-1].before && s.From-r.Said[i-1].To < 6 {
		return true // as in the list so far
	}
	fits := func(m written.Mention) bool {
		for _, n := range m.Items {
			if r.EqualItem(s, n) {
				return true
			}
		}
		return false
	}
	return fits(before) && !fits(behind)
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
	if r.Text.At(s.To) != "of" {
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
