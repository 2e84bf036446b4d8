package about

import (
	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// carryReach is how many words back a food can lie that an amount without a food
// goes on with.
const carryReach = 45

// carryOn ties amounts that name no food to one that was spoken of before: "half a
// litre of water first, and half a litre once it thickens". That must be earned:
// such an amount says the former again in other units, or it is what is missing
// to the whole.
func (r *Reading) carryOn() {
	for i, s := range r.Said {
		if t := &r.Ties[i]; !t.isTied() && !s.Struck && (s.Kind == speech.Measure || s.Kind == speech.Count) {
			if t.Item = r.carried(i); t.Item < 0 {
				t.Item = r.ahead(i)
			}
		}
	}
}

// carried gives the item that number i goes on with, −1 for none.
func (r *Reading) carried(i int) int {
	s := r.Said[i]
	seen := map[int]bool{}
	for p := i - 1; p >= 0 && s.From-r.Said[p].To < carryReach && len(seen) < 4; p-- {
		n := r.Ties[p].Item
		if n < 0 || seen[n] || r.Ties[p].Aside {
			continue
		}
		first := len(seen) == 0
		seen[n] = true
		line := r.Book.Items[n].Line
		if last := r.Said[p]; first && s.Kind == speech.Count && s.Unit == "" && s.More && last.Kind == speech.Measure && len(written.Nouns(r.Text, s)) == 0 {
			s.Kind, s.Unit, s.Amount.Unit = speech.Measure, last.Unit, last.Unit // "four cups, and then the other four"
			r.Said[i] = s
		}
		if !r.Scale.Comparable(s, line) {
			continue
		}
		if first && s.Size && line.Packs.Unit != "" && s.From-r.Said[p].To < 10 {
			return n // "two tins of beans, four hundred gram tins"
		}
		if first && r.restates(p, i, n) || r.completes(i, n) || s.Kind == speech.Measure && s.Unit == line.Amount.Unit && r.EqualItem(s, n) {
			return n
		}
	}
	return -1
}

// ahead gives the item that is named right behind the sentence that a bare amount
// ends: "Two tablespoons of fun. Coffee liqueur." The amounts must agree.
func (r *Reading) ahead(i int) int {
	s := r.Said[i]
	if s.Kind != speech.Measure {
		return -1
	}
	for _, m := range r.Mentions {
		if m.From >= s.To+aheadReach {
			break
		}
		if m.From < s.To {
			continue
		}
		for _, n := range m.Items {
			if !m.Foreign && s.Unit == r.Book.Items[n].Line.Amount.Unit && r.EqualItem(s, n) {
				return n
			}
		}
	}
	return -1
}

const aheadReach = 6 // words behind a bare amount

// again are words by which a host says an amount in other units.
var again = speech.SetOf("that's that'd that'll that which is so or it's equals meaning call")

// restates tells whether number i says again what number p says of item n: "two
// sticks, that's a cup", "one tin, the 400 gram one".
func (r *Reading) restates(p, i, n int) bool {
	a, b := r.Said[p], r.Said[i]
	if p == i-1 && a.Kind == speech.Share && b.Kind == speech.Measure && b.From-a.To <= 8 && r.pointsBack(a.To, b.From) && !r.otherMention(a.To, b.From, n) {
		return true // "half the cheese now, so that's forty grams"
	}
	if p != i-1 || b.From-a.To > 8 || a.Unit == b.Unit || b.Kind != speech.Measure || a.Kind == speech.Share || r.otherMention(a.To, b.From, n) {
		return false
	}
	return r.SaysAgain(a.To, b.From) || r.Text.At(b.From-1) == "the" && (r.Text.At(b.To) == "one" || r.Text.At(b.To) == "ones")
}

// pointsBack tells whether "that's" or "so that's" stands right before the second of two
// numbers.
func (r *Reading) pointsBack(from, to int) bool {
	return to-1 >= from && (r.Text.At(to-1) == "that's" || r.Text.At(to-1) == "it's" || r.Text.At(to-1) == "about" && r.Text.At(to-2) == "that's")
}

// SaysAgain tells whether words between two numbers lead from one to the other as
// the same: "that's about".
func (r *Reading) SaysAgain(from, to int) bool {
	for k := from; k < to; k++ {
		if w := r.Text.Words[k].Text; w == "metric" || w == "imperial" {
			return true // "or if you go by the metric"
		} else if again[w] && (k >= to-3 || w == "which" && to-k <= whichReach) {
			return true
		}
	}
	return false
}

// whichReach is how many words behind "which" an amount may be said again: "which for
// you is about two ounces".
const whichReach = 8

// otherMention tells whether another food than item n is named between two words.
func (r *Reading) otherMention(from, to, n int) bool {
	for _, m := range r.Mentions {
		if m.From >= to {
			break
		}
		if m.From >= from && !names(m, n) {
			return true
		}
	}
	return false
}

// completes tells whether number i is what is missing of item n after the parts
// said so far.
func (r *Reading) completes(i, n int) bool {
	s, line := r.Said[i], r.Book.Items[n].Line
	if s.Kind == speech.Count && !s.More && (!same.Elided(s) && line.Amount.Unit.Kind() != measure.Count || len(written.Nouns(r.Text, s)) > 0) {
		return false
	}
	parts := []speech.Said{s}
	for p := i - 1; p >= 0 && len(parts) < 6; p-- {
		if r.Ties[p].Item != n || r.Ties[p].Aside {
			continue
		}
		if r.Said[p].Kind == speech.Share || r.EqualItem(r.Said[p], n) {
			return false
		}
		parts = append(parts, r.Said[p])
		if sum, ok := r.Sum(parts, n); ok && r.EqualItem(sum, n) {
			return true
		}
	}
	// three times a third of it
	return s.More && len(parts) > 1 && parts[1].Amount.To.Equal(s.Amount.To)
}

// Sum adds amounts of item n; ok is false where they cannot be added.
func (r *Reading) Sum(parts []speech.Said, n int) (sum speech.Said, ok bool) {
	line := r.Book.Items[n].Line
	total := measure.Amount{}
	unit := line.Amount.Unit
	for _, s := range parts {
		if s.Kind == speech.Measure {
			unit = s.Amount.Unit
			break
		}
	}
	for _, s := range parts {
		amount := s.Amount
		if s.Kind == speech.Count && amount.Unit == measure.Each {
			amount.Unit = unit // "50 grams now and 300 later"
		}
		more, ok := total.Add(amount, r.Scale.SystemOf(line).Or(measure.US))
		if !ok {
			return sum, false
		}
		total = more
	}
	sum = speech.Said{Kind: speech.Measure, Amount: total, Unit: total.Unit}
	if total.Unit == measure.Each {
		sum.Kind = speech.Count
	}
	return sum, true
}
