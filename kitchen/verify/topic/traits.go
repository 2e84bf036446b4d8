package topic

import (
	"strconv"

	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// How many words on each side of a number speak, a number counting as one.
const (
	wordsBefore = 24
	wordsBehind = 12
	wordsNear   = 12 // before it, of which the distance does not matter
	wordsBeside = 5  // on each side, which speak for each kind of number apart
	pairsBefore = 6
	pairsBehind = 4
	reach       = 40 // words to another number that speaks too
)

// Reader tells the traits of the numbers of one cut.
type Reader struct {
	text    speech.Text
	said    []speech.Said
	written []bool   // of each of said: the recipe has just that
	marks   []string // what stands for each word in a trait; all words of a number have one
	at      []int    // of each word the index of its mark, and one more for the end
	parts   []bool   // of each mark: a sentence ends behind it
}

// NewReader reads a cut beside its recipe. In a trait a number is "#", the name of
// a food of the recipe "<food>", another of its words "<recipe>". isWritten tells
// whether the recipe has just what a number says.
func NewReader(t speech.Text, b *written.Book, mentions []written.Mention, said []speech.Said, isWritten func(speech.Said) bool) *Reader {
	r := &Reader{text: t, said: said, written: make([]bool, len(said))}
	for i, s := range said {
		r.written[i] = isWritten(s)
	}
	words := make([]string, len(t.Words))
	for i, w := range t.Words {
		words[i] = markOf(w, b)
	}
	for _, m := range mentions {
		for k := m.From; k < m.To && !m.Foreign; k++ {
			if words[k] != number {
				words[k] = "<food>"
			}
		}
	}
	for i, word := range words {
		if !r.goesOn(words, i) {
			r.marks, r.parts = append(r.marks, word), append(r.parts, false)
		}
		r.at = append(r.at, len(r.marks)-1)
		r.parts[len(r.parts)-1] = t.Parts(i)
	}
	r.at = append(r.at, len(r.marks))
	return r
}

// number is the mark of a number, in words or in figures.
const number = "#"

// goesOn tells whether word i goes on with the number before it: the "and" and "fifty" of
// "two hundred and fifty".
func (r *Reader) goesOn(words []string, i int) bool {
	if i == 0 || r.text.Words[i-1].Stop != speech.None || r.marks[len(r.marks)-1] != number {
		return false
	}
	return words[i] == number || words[i] == "and" && i+1 < len(words) && words[i+1] == number && r.text.Words[i-1].Text == "hundred"
}

func markOf(w speech.Word, b *written.Book) string {
	if speech.IsNumberWord(w.Text) {
		return number
	}
	meaning := written.Meaning(w)
	switch {
	case meaning == "":
		return w.Text
	case b.Writes(meaning) || len(b.Vocab[meaning]) > 0:
		return "<recipe>"
	}
	return meaning
}

// Known is the share of the words around number i that the cut has, from 0 to 1.
func (r *Reader) Known(i int) float64 {
	from, to := r.span(i)
	there := min(wordsBefore, from) + min(wordsBehind, len(r.marks)-to)
	return float64(there) / (wordsBefore + wordsBehind)
}

// span gives the marks of number i, the end excluded.
func (r *Reader) span(i int) (from, to int) {
	s := r.said[i]
	return r.at[s.From], r.at[s.To-1] + 1
}

// Each visits the traits of a number: its own words, the words on both sides with how far
// away they are, the numbers on both sides, and where in the cut it stands. The bytes of
// a trait are only its until the next.
func (r *Reader) Each(i int, visit func(trait []byte)) {
	from, to := r.span(i)
	kind := string(r.said[i].Kind)
	t := teller{visit: visit, trait: make([]byte, 0, 64)}
	t.tell("kind:", kind)
	t.tell("tenth:", strconv.Itoa(10*from/len(r.marks)))
	for k := from; k < to; k++ {
		t.tell("own:", r.marks[k])
	}
	r.before(&t, kind, from)
	r.behind(&t, kind, to)
	for d := 1; d <= 2; d++ {
		r.beside(&t, "last ", i, i-d)
		r.beside(&t, "next ", i, i+d)
	}
}

// Of gives all of them.
func (r *Reader) Of(i int) []string {
	var all []string
	r.Each(i, func(trait []byte) { all = append(all, string(trait)) })
	return all
}

// teller puts traits together, one after another in the same bytes.
type teller struct {
	visit func(trait []byte)
	trait []byte
}

func (t *teller) tell(parts ...string) {
	t.trait = t.trait[:0]
	for _, part := range parts {
		t.trait = append(t.trait, part...)
	}
	t.visit(t.trait)
}

// before tells the traits of the words before a number.
func (r *Reader) before(t *teller, kind string, from int) {
	for d := 1; d <= wordsBefore && d <= from; d++ {
		k := from - d
		t.tell(zoneBefore(d), ":", r.marks[k])
		if d <= wordsNear {
			t.tell("near:", r.marks[k])
		}
		if d <= wordsBeside {
			t.tell(kind, ":", r.marks[k])
		}
		if d > pairsBefore {
			continue
		}
		if k > 0 {
			t.tell("pair:", r.marks[k-1], " ", r.marks[k])
		}
		if r.parts[k] {
			t.tell("stop ", strconv.Itoa(d))
		}
	}
}

// behind tells those of the words behind it.
func (r *Reader) behind(t *teller, kind string, to int) {
	for d := 0; d < wordsBehind && to+d < len(r.marks); d++ {
		k := to + d
		t.tell(zoneBehind(d), ":", r.marks[k])
		if d < wordsBeside {
			t.tell(kind, " behind:", r.marks[k])
		}
		if d < pairsBehind && k+1 < len(r.marks) {
			t.tell("pair behind:", r.marks[k], " ", r.marks[k+1])
		}
	}
}

// beside tells the trait of another number: how far away it is, whether it is of the same
// kind, and whether it is written.
func (r *Reader) beside(t *teller, side string, i, other int) {
	away := strconv.Itoa(max(i-other, other-i))
	if other < 0 || other >= len(r.said) {
		t.tell(side, away, " none")
		return
	}
	gap := max(r.said[i].From-r.said[other].To, r.said[other].From-r.said[i].To)
	if gap >= reach {
		t.tell(side, away, " far")
		return
	}
	t.tell(side, away, " ", strconv.Itoa(gap/10), " ", strconv.FormatBool(r.said[other].Kind == r.said[i].Kind), " ", strconv.FormatBool(r.written[other]))
}

// zoneBefore names how far before the number a word stands.
func zoneBefore(d int) string {
	switch {
	case d <= 3:
		return "before " + strconv.Itoa(d)
	case d <= 8:
		return "before"
	}
	return "long before"
}

// zoneBehind does the same behind it.
func zoneBehind(d int) string {
	switch {
	case d < 2:
		return "behind " + strconv.Itoa(d+1)
	case d < 6:
		return "behind"
	}
	return "long behind"
}
