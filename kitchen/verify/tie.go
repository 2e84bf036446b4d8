package verify

import (
	"slices"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/verify/speech"
)

// judge is one comparison under way.
type judge struct {
	checker  Checker
	recipe   recipe.Recipe
	text     speech.Text
	said     []speech.Said
	system   measure.System
	book     *book
	mentions []mention
	places   []int
	ties     []tie // of each of said
	findings []Finding
}

// tie is what one said number is about.
type tie struct {
	item    int    // index into the book's items; −1 if none
	fact    int    // index into its facts; −1 if none
	foreign string // a food that the recipe does not have
	portion string // a food that only steps have, as a stem: "water"
	aside   bool   // about something else: another time, another recipe, a shop
	of      bool   // "50 grams of the sugar": likely a part
	before  bool   // the food stands before the amount
	agrees  bool
	finding int // index into findings; −1 if none
}

// tie ties every said number to what it is about.
func (j *judge) tie() {
	j.ties = make([]tie, len(j.said))
	m := 0
	for i, s := range j.said {
		t := &j.ties[i]
		*t = tie{item: -1, fact: -1, finding: -1}
		for m < len(j.mentions) && j.mentions[m].to <= s.From-beforeReach {
			m++
		}
		if s.Struck {
			t.aside = true
			continue
		}
		switch s.Kind {
		case speech.Measure, speech.Count, speech.Share:
			j.tieFood(i, m)
		}
		t.aside = j.isAside(s, t.item >= 0)
	}
	for i, s := range j.said {
		if t := &j.ties[i]; t.item < 0 && t.foreign == "" && t.portion == "" && !s.Struck {
			j.tieFact(i)
		}
	}
	j.move()
}

const (
	afterReach  = 7  // words behind an amount in which its food can stand
	beforeReach = 10 // words before it
)

// blockers end the search for a food behind an amount.
var blockers = setOf(`into in on onto over to with and then for until till at from goes go is are it it's so but or because if when
	we you i i'm that's there's not then plus minus as per they he she what which who where how than after before`)

// tieFood finds the food that a number is about. first is the first mention
// that may stand near enough before it.
func (j *judge) tieFood(i, first int) {
	s := j.said[i]
	t := &j.ties[i]
	behind, before := -1, -1
	for m := first; m < len(j.mentions) && j.mentions[m].from < s.To+afterReach; m++ {
		switch mm := j.mentions[m]; {
		case mm.to <= s.From:
			before = m
		case behind < 0 && mm.to > s.To && j.reaches(i, mm):
			behind = m
		}
	}
	if behind < 0 && j.tieForeign(i) {
		return
	}
	if before >= 0 && !j.comesBefore(i, j.mentions[before]) {
		before = -1
	}
	pick := behind
	if pick < 0 || before >= 0 && j.prefersBefore(i, j.mentions[before], j.mentions[behind]) {
		pick = before
	}
	if pick < 0 {
		j.tieUnit(i)
		return
	}
	m := j.mentions[pick]
	if m.foreign {
		if s.Kind != speech.Share && (s.Unit.Kind() != measure.Count || s.Unit != "") {
			t.foreign = j.text.Quote(m.from, m.to)
		}
		return
	}
	t.item = j.choose(i, m)
	t.before = pick == before
	t.of = pick == behind && j.isPartOf(s, m)
}

// reaches tells whether the mention behind a number is what it measures.
func (j *judge) reaches(i int, m mention) bool {
	s := j.said[i]
	if i+1 < len(j.said) && j.said[i+1].From < m.from && j.said[i+1].Kind != speech.Share {
		return false
	}
	words := j.text.Words
	for k := s.To; k < m.to; k++ {
		if k > s.To-1 && words[k-1].Stop == speech.Sentence {
			return false
		}
		if words[k-1].Stop == speech.Clause && k > s.To {
			return false
		}
		if k >= m.from {
			break
		}
		w := words[k].Text
		if blockers[w] || things[w] && !(k+1 < len(words) && words[k+1].Text == "of") {
			return false
		}
		if s.Kind == speech.Count && !between[w] && !describing[w] && w != "size" && w != "sized" && w != "whole" {
			return false
		}
	}
	if words[s.To-1].Stop == speech.Clause && s.Kind == speech.Count {
		return false
	}
	return m.from >= s.To || s.Kind == speech.Share
}

// comesBefore tells whether the mention before a number is what it measures:
// "the flour, two hundred grams of it".
func (j *judge) comesBefore(i int, m mention) bool {
	s := j.said[i]
	words := j.text.Words
	for k := m.to; k <= s.From; k++ {
		if words[k-1].Stop == speech.Sentence {
			return false
		}
		if k < s.From && (words[k].Text == "into" || words[k].Text == "until" || words[k].Text == "then") {
			return false
		}
	}
	for p := i - 1; p >= 0 && j.said[p].To > m.from-4; p-- {
		if j.said[p].Kind != speech.Share && !loose[j.said[p].Amount.Unit] && j.ties[p].item >= 0 && j.said[p].To <= m.from && slices.Contains(m.items, j.ties[p].item) && !s.More && !j.text.Pronoun(s.To) {
			return false // it has its own amount already
		}
		if j.said[p].From >= m.to {
			return false
		}
	}
	gap := s.From - m.to
	switch s.Kind {
	case speech.Count:
		return gap <= 1 && (j.text.Pronoun(s.To) || s.To >= len(words) || words[s.To-1].Stop != speech.None) ||
			gap <= 3 && s.Amount.From.Cmp(measure.Whole(20)) >= 0 && j.text.Pronoun(s.To)
	case speech.Share:
		return gap <= 3
	}
	return s.More || gap <= 7 || gap <= 12 && words[s.To-1].Stop != speech.None
}

// prefersBefore decides where an amount stands between two foods: "flour 200 g
// sugar 100 g".
func (j *judge) prefersBefore(i int, before, behind mention) bool {
	s := j.said[i]
	if j.text.Words[s.To].Text == "of" && !j.text.Pronoun(s.To) || behind.from-s.To > 2 && before.to == s.From {
		return behind.from-s.To > 2 && before.to == s.From && j.text.Words[s.To].Text != "of"
	}
	if before.to != s.From || len(before.items) == 0 {
		return false
	}
	stop := j.text.Words[s.To-1].Stop != speech.None
	if stop && j.text.Words[s.From-1].Stop == speech.None {
		return true
	}
	if j.text.Words[s.From-1].Stop != speech.None {
		return false
	}
	if i > 0 && j.ties[i-1].before && s.From-j.said[i-1].To < 6 {
		return true // as in the list so far
	}
	fits := func(m mention) bool {
		return slices.ContainsFunc(m.items, func(n int) bool { return j.equalItem(s, n) })
	}
	return fits(before) && !fits(behind)
}

// tieUnit ties "four cloves" to the only line that counts cloves, and an amount
// of "it" or "more" to the food named last.
func (j *judge) tieUnit(i int) {
	s := j.said[i]
	if s.Kind != speech.Measure || s.Unit.Kind() != measure.Count {
		return
	}
	only := -1
	for n, it := range j.book.items {
		if it.line.Amount.Unit == s.Unit && it.line.HasAmount || it.line.Packs.Unit == s.Unit {
			if only >= 0 {
				return
			}
			only = n
		}
	}
	if only >= 0 && !j.namesOther(s) {
		j.ties[i].item = only
	}
}

// namesOther tells whether "of" something else follows: "two slices of cake".
func (j *judge) namesOther(s speech.Said) bool {
	return s.To < len(j.text.Words) && j.text.Words[s.To].Text == "of" && !j.text.Pronoun(s.To)
}

// tieForeign finds a food that the recipe does not have: "50 g of raisins".
func (j *judge) tieForeign(i int) bool {
	s := j.said[i]
	words := j.text.Words
	if j.book.larder == nil || s.Kind != speech.Measure || s.To >= len(words) || words[s.To-1].Stop != speech.None || s.Unit.Kind() == measure.Count && s.Unit != measure.Clove && s.Unit != measure.Sprig {
		return false
	}
	k := s.To
	of := words[k].Text == "of"
	if of {
		k++
	}
	for k < len(words) && (words[k].Text == "the" || words[k].Text == "that" || words[k].Text == "some" || words[k].Text == "your") {
		k++
	}
	for n := 3; n >= 1; n-- {
		if k+n > len(words) {
			continue
		}
		name, sound := "", true
		for q := k; q < k+n; q++ {
			if q > k {
				name += " "
				sound = sound && words[q-1].Stop == speech.None
			}
			sound = sound && !blockers[words[q].Text] && !things[words[q].Text]
			name += words[q].Text
		}
		if !sound {
			continue
		}
		m := j.book.names.match(name)
		if m.Food == nil || m.How != food.Exact && m.How != food.Alias && !(of && m.How == food.Modifiers) || j.book.names.foods[m.Food.ID] {
			continue
		}
		if len(j.book.names.byHead[words[k+n-1].Stem]) > 0 && n == 1 {
			continue
		}
		if head := words[k+n-1].Stem; len(j.book.vocab[head]) > 0 {
			j.ties[i].portion = head // the steps speak of it, though no line does
			return true
		}
		if drinks[name] {
			j.ties[i].aside = true
			return false
		}
		j.ties[i].foreign = name
		return true
	}
	return false
}

// drinks are what a host has while cooking, where the recipe has none.
var drinks = setOf("tea coffee beer wine cider lemonade squash")

// isPartOf tells "50 grams of the sugar" from "50 grams of sugar".
func (j *judge) isPartOf(s speech.Said, m mention) bool {
	for k := s.To; k < m.from; k++ {
		if w := j.text.Words[k].Text; (w == "the" || w == "that" || w == "your" || w == "this") && j.text.Words[s.To].Text == "of" {
			return true
		}
	}
	return false
}

// choose picks the line that a mention means by the place in the recipe, by
// what the amount agrees with, and by what was said already.
func (j *judge) choose(i int, m mention) int {
	s := j.said[i]
	here := j.places[min(s.From, len(j.places)-1)]
	after := j.places[min(m.to+3, len(j.places)-1)]
	best, top := m.items[0], -100.0
	for _, n := range m.items {
		it := j.book.items[n]
		score := 0.0
		for _, p := range []int{here, after} {
			st := j.book.states[p]
			if st.component == it.component {
				score++
			}
			if slices.Contains(st.uses, n) {
				score++
			}
		}
		score += 2 * j.namedNear(s.From, it.component)
		if j.equalItem(s, n) {
			score += 1.5
		}
		if !it.line.HasAmount {
			score -= 1.5
		}
		for p := range i {
			if j.ties[p].item == n && !j.ties[p].aside && j.said[p].Kind != speech.Share && j.equalItem(j.said[p], n) {
				score -= 0.6
				break
			}
		}
		if score > top {
			best, top = n, score
		}
	}
	return best
}

// namedNear tells, from 0 to 1, whether a component is named shortly before a
// word.
func (j *judge) namedNear(word, component int) float64 {
	name := stemsOf(j.recipe.Components[component].Name)
	if len(name) == 0 {
		return 0
	}
	for k := word - 1; k >= max(0, word-20); k-- {
		if j.text.Words[k].Stem != name[len(name)-1] {
			continue
		}
		fits := true
		for q := 1; q < len(name); q++ {
			fits = fits && k-q >= 0 && j.text.Words[k-q].Stem == name[len(name)-1-q]
		}
		if fits {
			return 1
		}
	}
	return 0
}
