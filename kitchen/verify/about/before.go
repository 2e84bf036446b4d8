package about

import (
	"cmp"
	"slices"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// comesBefore tells whether the mention before a number is what it measures:
// "the flour, two hundred grams of it", "Flour next. That's two hundred grams."
func (r *Reading) comesBefore(i int, m written.Mention) bool {
	s := r.Said[i]
	sentences := 0
	for k := m.To; k <= s.From; k++ {
		if r.Text.Words[k-1].Stop == speech.Sentence {
			sentences++
		}
		if w := r.Text.At(k); k < s.From && (w == "into" || w == "until" || w == "then" && !(k == m.To && k+1 == s.From)) {
			return false
		}
	}
	if sentences > 2 || sentences > 0 && !r.isAnnounced(i, m) {
		return false
	}
	if sentences > 0 && s.Kind == speech.Measure {
		return true
	}
	gap := s.From - m.To
	if s.Kind == speech.Share {
		return gap <= 3
	}
	if s.Kind == speech.Count && sentences > 0 {
		return true
	}
	if s.Kind == speech.Count {
		return r.countsBefore(s, gap) || gap <= 4 && r.countsUnit(s, m)
	}
	return s.More || gap <= 7 || gap <= 12 && r.Text.Words[s.To-1].Stop != speech.None || gap <= pointed && pointing[r.Text.At(s.From-1)]
}

// countsBefore tells whether a count behind its food, so many words away, counts
// that food: "eggs, four", "eggs, you want four of them", "flour, 250".
func (r *Reading) countsBefore(s speech.Said, gap int) bool {
	if r.isOfThem(s.To) {
		return gap <= 6 || gap <= pointed && pointing[r.Text.At(s.From-1)]
	}
	ends := s.To >= len(r.Text.Words) || r.Text.Words[s.To-1].Stop != speech.None || r.Text.Parts(s.To-1) || r.Text.At(s.To) == "them" || r.Text.At(s.To) == "again"
	if lead := r.Text.At(s.From - 1); ends && gap <= 5 && (pointing[lead] || takes[lead]) {
		return true // "Scotch bonnets, and I use four"
	}
	if gap <= 3 && (ends || r.Text.At(s.To) == "and") && r.leadOf(s) == r.Text.At(s.From-gap-1) { // "mustard seeds, just the one"
		return true
	}
	if gap <= 1 && ends || gap == 0 && same.Elided(s) {
		return true
	}
	next := r.Text.At(s.To)
	return gap == 0 && (next == "and" || next == "then" || len(r.mentionsAt(s.To, s.To+2)) > 0) // "carrots two and celery two"
}

// countsUnit tells whether a count counts what a line does: "celery, that's two
// ribs".
func (r *Reading) countsUnit(s speech.Said, m written.Mention) bool {
	u, ok := measure.ParseUnit(r.Text.At(s.To))
	return ok && slices.ContainsFunc(m.Items, func(n int) bool { return r.Book.Items[n].Line.Amount.Unit == u && u != measure.Each })
}

// isOfThem tells "of them", "of those large ones" at word i.
func (r *Reading) isOfThem(i int) bool {
	if r.Text.Pronoun(i) || r.Text.At(i) == "ones" || r.Text.At(i+1) == "ones" && (written.Between[r.Text.At(i)] || written.Describing[r.Text.At(i)]) {
		return true
	}
	if r.Text.At(i) != "of" || !pronouns[r.Text.At(i+1)] {
		return false
	}
	for _, m := range r.mentionsAt(i+2, i+5) {
		if m.To <= i+5 {
			return false // "of those onions"
		}
	}
	return r.Text.At(i+1) != "the" || r.Text.At(i+2) == "ones" || r.Text.At(i+3) == "ones"
}

var pronouns = speech.SetOf("those these that this the")

// mentionsAt gives the mentions that begin between two words.
func (r *Reading) mentionsAt(from, to int) []written.Mention {
	first, _ := slices.BinarySearchFunc(r.Mentions, from, func(m written.Mention, word int) int { return cmp.Compare(m.From, word) })
	last := first
	for last < len(r.Mentions) && r.Mentions[last].From < to {
		last++
	}
	return r.Mentions[first:last]
}

const (
	announced = 8  // words that may stand before the amount in the sentence behind "Flour next."
	announces = 12 // words that "Flour next." may have
	answered  = 4  // words of "How much?", between the food and a bare amount
)

// isAnnounced tells whether the sentence before a number only speaks of its food,
// without a number, and the number's own sentence has only light words before it.
// A question may stand between them: "caster sugar … – How much? – 200 grams."
func (r *Reading) isAnnounced(i int, m written.Mention) bool {
	s := r.Said[i]
	start := r.sentenceAt(s.From)
	first := r.sentenceAt(start - 1)
	if m.To <= first && start-first <= answered {
		first = r.sentenceAt(first - 1)
	}
	if s.From-start > announced || m.From < first || m.From < start-announces-answered || i > 0 && r.Said[i-1].To > m.From {
		return false
	}
	bare := pointing[r.Text.At(s.From-1)] && (s.To >= len(r.Text.Words) || r.Text.Words[s.To-1].Stop == speech.Sentence) // "There's eight."
	return r.isOfThem(s.To) || (s.Kind != speech.Count || bare) && r.isLight(start, s.From)
}

// sentenceAt gives the first word of the sentence that word k stands in.
func (r *Reading) sentenceAt(k int) int {
	for k > 0 && r.Text.Words[k-1].Stop != speech.Sentence {
		k--
	}
	return max(k, 0)
}

// isLight tells whether the words from one index to another carry no meaning of
// their own: "you'll want about".
func (r *Reading) isLight(from, to int) bool {
	for k := from; k < to; k++ {
		if w := r.Text.Words[k]; written.Meaning(w) != "" && !weighing[w.Text] {
			return false
		}
	}
	return true
}

// pointed is how many words may stand between a food and an amount that points
// back to it.
const pointed = 20

// pointing are words right before an amount that point back to its food.
var pointing = speech.SetOf("it's that's there's want need use is")

// takes are verbs right before a count by which a host says how much of a food goes in.
var takes = speech.SetOf("got take put add have weigh")

// weighing are words by which hosts lead to an amount.
var weighing = speech.SetOf("weigh weighed weighing weighs measured measure sifted sieved soft softened cold warm melted already exactly you'd we'd here's comes total work works amount")

// Loose are units that nobody measures; leaving them out on air is no slip.
var Loose = map[measure.Unit]bool{measure.Pinch: true, measure.Dash: true, measure.Handful: true, measure.Splash: true,
	measure.Squeeze: true, measure.Drizzle: true, measure.Glug: true, measure.Knob: true, measure.Drop: true, measure.Smidgen: true, measure.Dollop: true}
