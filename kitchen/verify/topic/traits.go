package topic

import (
	"fmt"
	"strconv"

	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// How many words on each side of a number speak.
const (
	wordsBefore = 24
	wordsBehind = 12
)

// Reader tells the traits of the numbers of one cut.
type Reader struct {
	text      speech.Text
	said      []speech.Said
	isWritten func(speech.Said) bool
	marks     []string // of each word: what stands for it in a trait
}

// NewReader reads a cut beside its recipe. In a trait a number is "#", the name of
// a food of the recipe "<food>", another of its words "<recipe>".
func NewReader(t speech.Text, b *written.Book, mentions []written.Mention, said []speech.Said, isWritten func(speech.Said) bool) *Reader {
	r := &Reader{text: t, said: said, isWritten: isWritten, marks: make([]string, len(t.Words))}
	for i, w := range t.Words {
		r.marks[i] = markOf(w, b)
	}
	for _, m := range mentions {
		for k := m.From; k < m.To; k++ {
			if !m.Foreign {
				r.marks[k] = "<food>"
			}
		}
	}
	for _, s := range said {
		for k := s.From; k < s.To; k++ {
			if r.marks[k] == "<food>" || speech.IsNumberWord(t.Words[k].Text) {
				r.marks[k] = "#"
			}
		}
	}
	return r
}

func markOf(w speech.Word, b *written.Book) string {
	if speech.IsNumberWord(w.Text) {
		return "#"
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
	s := r.said[i]
	there := min(wordsBefore, s.From) + min(wordsBehind, len(r.marks)-s.To)
	return float64(there) / (wordsBefore + wordsBehind)
}

// Of gives the traits of a number: its own words, the words on both sides with how
// far away they are, and where in the cut it stands.
func (r *Reader) Of(i int) []string {
	s := r.said[i]
	traits := make([]string, 0, 3*(wordsBefore+wordsBehind))
	add := func(kind, word string) { traits = append(traits, kind+":"+word) }
	for k := s.From; k < s.To; k++ {
		add("own", r.marks[k])
	}
	traits = append(traits, "kind:"+string(s.Kind), "tenth:"+strconv.Itoa(10*s.From/len(r.marks)))
	for d := 1; d <= wordsBefore && s.From-d >= 0; d++ {
		k := s.From - d
		add(zoneBefore(d), r.marks[k])
		if d <= 12 {
			add("near", r.marks[k])
		}
		if d <= 5 {
			add(string(s.Kind), r.marks[k])
		}
		if d <= 6 && k > 0 {
			add("pair", r.marks[k-1]+" "+r.marks[k])
		}
		if d <= 6 && r.text.Parts(k) {
			traits = append(traits, "stop "+strconv.Itoa(d))
		}
	}
	for d := 0; d < wordsBehind && s.To+d < len(r.marks); d++ {
		k := s.To + d
		add(zoneBehind(d), r.marks[k])
		if d <= 4 {
			add(string(s.Kind)+" behind", r.marks[k])
		}
		if d < 4 && k+1 < len(r.marks) {
			add("pair behind", r.marks[k]+" "+r.marks[k+1])
		}
	}
	for d := 1; d <= 2; d++ {
		if i-d >= 0 {
			if gap := s.From - r.said[i-d].To; gap < 40 {
				traits = append(traits, fmt.Sprintf("last %d %d %v %v", d, gap/10, r.said[i-d].Kind == s.Kind, r.isWritten(r.said[i-d])))
			} else {
				traits = append(traits, fmt.Sprintf("last %d none", d))
			}
		}
		if i+d < len(r.said) {
			if gap := r.said[i+d].From - s.To; gap < 40 {
				traits = append(traits, fmt.Sprintf("next %d %d %v %v", d, gap/10, r.said[i+d].Kind == s.Kind, r.isWritten(r.said[i+d])))
			} else {
				traits = append(traits, fmt.Sprintf("next %d none", d))
			}
		}
	}
	return traits
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
