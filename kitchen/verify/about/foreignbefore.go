package about

import (
	"slices"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// foreignBack is how many light words may stand between a foreign food and the
// amount behind it.
const foreignBack = 6

// tieForeignBefore finds one before its amount: "some apricot jam, three
// tablespoons".
func (r *Reading) tieForeignBefore(i int) bool {
	s := r.Said[i]
	if s.Unit == measure.Clove && r.Book.Larder != nil && !r.hasCloves() {
		r.Ties[i].Foreign = "garlic" // "garlic as well. Five cloves"
		return true
	}
	counted := s.Kind == speech.Count && s.Amount.From.Cmp(measure.Whole(maxCount)) <= 0 && r.Text.Pronoun(s.To)
	bunched := s.Unit == measure.Clove || s.Unit == measure.Sprig
	if r.Book.Larder == nil || s.More || !counted && !bunched && (s.Kind != speech.Measure || s.Unit.Kind() == measure.Count) {
		return false
	}
	for end := s.From; end > 0 && end >= s.From-foreignBack; end-- {
		if !r.isLightOrder(end, s.From) || r.Text.Words[end-1].Stop == speech.Sentence && !r.isAlone(end, i) {
			break
		}
		for n := 3; n >= 1; n-- {
			if end-n < 0 {
				continue
			}
			name, sound := r.nameAt(end-n, n)
			if _, unit := measure.ParseUnit(name); unit {
				continue // "how many cloves? Sixteen cloves"
			}
			if head := r.Text.Words[end-1].Stem; sound && r.Book.Names.IsOther(name) && (n > 1 && !r.Book.Writes(r.Text.Words[end-n].Stem) || !r.Book.Names.HasHead(head) && len(r.Book.Vocab[head]) == 0 && !r.Book.Writes(head)) && !drinks[name] && (r.isOrdered(end-n) || r.isListEntry(i, end-n, end) || r.Text.Pronoun(s.To) || r.Elsewhere[i] < likelyOurs && r.isRightBefore(i, end-n, end)) {
				r.Ties[i].Foreign = name
				return true
			}
		}
	}
	return r.tieBracketed(i) || r.tieUnknownBefore(i)
}

// antecedentBack is how many words before "25 grams of it" its food is looked for.
const antecedentBack = 16

// tieAntecedent finds what "of it" and "of those" mean, where that is the food named last and
// the recipe does not have it: "the stem ginger, chopped up small, and a hundred grams of that
// goes in".
func (r *Reading) tieAntecedent(i int) bool {
	s := r.Said[i]
	if r.Book.Larder == nil || s.More || s.Kind != speech.Measure || s.Unit.Kind() == measure.Count || !r.Text.Pronoun(s.To) && !r.isAloneIn(i) || r.Elsewhere[i] > likelyOurs {
		return false
	}
	for end := s.From; end > 0 && end > s.From-antecedentBack; end-- {
		if slices.ContainsFunc(r.mentionsAt(end-1, end), func(m written.Mention) bool { return !m.Foreign }) || i > 0 && end <= r.Said[i-1].To {
			return false
		}
		for n := min(3, end); n >= 1; n-- {
			name, sound := r.nameAt(end-n, n)
			if head := r.Text.Words[end-1].Stem; sound && (r.Book.Names.IsOther(name) || r.Book.Names.IsOtherAmong(name)) && !r.Book.Names.HasHead(head) && len(r.Book.Vocab[head]) == 0 && !r.Book.Writes(head) && !drinks[name] && !written.IsThing(r.Text, end) && !likened[r.Text.At(end-n-1)] {
				r.Ties[i].Foreign = name
				return true
			}
		}
	}
	return false
}

// isAloneIn tells an amount that ends its part of the sentence and goes in: "Cocoa powder, the
// baking kind. Two tablespoons, right in there."
func (r *Reading) isAloneIn(i int) bool {
	s := r.Said[i]
	return r.Text.Words[s.To-1].Stop != speech.None && r.Text.NearBehind(s.To+1, 5, "goes", "go", "in") && r.Elsewhere[i] < 0.1
}

// likened are words before a food that only something is like, or that is not there.
var likened = speech.SetOf("no not without like unlike than")

// hasCloves tells whether the recipe has anything in cloves.
func (r *Reading) hasCloves() bool {
	return r.Book.Writes("garlic") || slices.ContainsFunc(r.Book.Items, func(it written.Item) bool { return it.Line.Amount.Unit == measure.Clove })
}

// isRightBefore tells whether nothing is measured between a food and number i, nor put in:
// "fat back in, 150 ml".
func (r *Reading) isRightBefore(i, from, to int) bool {
	for k := to; k < r.Said[i].From; k++ {
		if r.Text.At(k) == "in" {
			return false
		}
	}
	return i == 0 || r.Said[i-1].To <= from
}

// pronounBack is how many words back a food of the recipe is what "of it" means.
const pronounBack = 24

// isOfMentioned tells whether number i, an amount "of it", may be of a food of the recipe
// named before: one right before it, or one further off whose own amount nobody says.
func (r *Reading) isOfMentioned(i int) bool {
	from := r.Said[i].From
	for _, m := range r.mentionsAt(from-pronounBack, from) {
		if m.To > from-8 || slices.ContainsFunc(m.Items, func(n int) bool { return !r.isEqualSaid(n) }) {
			return true
		}
	}
	return false
}

// isEqualSaid tells whether anybody says just the amount of item n, of whatever.
func (r *Reading) isEqualSaid(n int) bool {
	return slices.ContainsFunc(r.Said, func(s speech.Said) bool { return r.EqualItem(s, n) })
}

// tieUnknownBefore finds one that the larder does not know either: "anchovy essence, a
// tablespoon of it".
func (r *Reading) tieUnknownBefore(i int) bool {
	s := r.Said[i]
	if s.From == 0 || !measuresWell[s.Unit] || !r.Text.Pronoun(s.To) || r.isOfMentioned(i) {
		return false
	}
	k := s.From - 1
	for k > 0 && cutUp[r.Text.At(k)] {
		k-- // "barberries, rinsed. Three tablespoons of those"
	}
	w := r.Text.Words[k]
	if len(w.Text) < 4 || noFoods[w.Text] || written.Silent[w.Text] || written.Things[w.Text] || written.IsClass(w.Text) || speech.IsNumber(w.Text) || r.Book.Writes(w.Stem) || r.Book.Writes(w.Text) || len(r.Book.Vocab[w.Stem]) > 0 {
		return false
	}
	r.Ties[i].Foreign = w.Text
	return true
}

// isLightOrder tells whether the words from one index to another are light or say that
// something is put in: "peas, I lob in a cup of them".
func (r *Reading) isLightOrder(from, to int) bool {
	for k := from; k < to; k++ {
		if w := r.Text.Words[k].Text; !r.isLight(k, k+1) && !puts[w] && w != "mine" && w != "ours" {
			return false
		}
	}
	return true
}

// bracketed is how many words may stand between two commas behind a food.
const bracketed = 6

// tieBracketed finds a foreign food whose amount stands behind an aside: "And soy
// sauce, don't make a face, two teaspoons."
func (r *Reading) tieBracketed(i int) bool {
	s, words := r.Said[i], r.Text.Words
	if s.From < 2 || words[s.From-1].Stop != speech.Clause || words[s.To-1].Stop == speech.None {
		return false
	}
	end := s.From - 1
	for end > 0 && s.From-end <= bracketed && words[end-1].Stop == speech.None {
		end--
	}
	if end == 0 || words[end-1].Stop != speech.Clause {
		return false
	}
	for n := 3; n >= 1; n-- {
		if end-n < 1 || words[end-n-1].Stop == speech.None && !begins[words[end-n-1].Text] {
			continue
		}
		name, sound := r.nameAt(end-n, n)
		if head := words[end-1].Stem; sound && r.Book.Names.IsOther(name) && !r.Book.Names.HasHead(head) && len(r.Book.Vocab[head]) == 0 && !r.Book.Writes(head) && !drinks[name] {
			r.Ties[i].Foreign = name
			return true
		}
	}
	return false
}

// begins are words with which a list goes on.
var begins = speech.SetOf("and then plus also now some the of")

// isAlone tells whether number i and light words are a sentence, from a word on: "I
// put in whisky. It's three tablespoons."
func (r *Reading) isAlone(from, i int) bool {
	s := r.Said[i]
	return from <= s.From && r.isLight(from, s.From) && r.Text.Words[s.To-1].Stop != speech.None
}

// isListEntry tells whether a food and number i behind it stand alone between two
// stops, as in a list: "Worcestershire sauce, three tablespoons."
func (r *Reading) isListEntry(i, from, to int) bool {
	s, words := r.Said[i], r.Text.Words
	if !measuresWell[s.Unit] && s.Unit != measure.Clove && s.Unit != measure.Sprig {
		return false
	}
	for k := to; k < s.From; k++ {
		if words[k].Text == "in" {
			return false // "fat back in, 150 ml"
		}
	}
	if from == 0 || words[from-1].Stop != speech.None || words[from-1].Rest {
		return s.To == len(words) || words[s.To-1].Stop != speech.None || words[to-1].Stop == speech.None
	}
	return begins[words[from-1].Text] && r.Text.At(s.To) != "of" && len(r.mentionsAt(s.To, s.To+2)) == 0
}
