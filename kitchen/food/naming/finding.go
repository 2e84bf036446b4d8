package naming

import (
	"math/bits"
	"strings"
)

// finding is one reading of a phrase: the foods it can be, which of its words
// the name took, and what is left.
type finding struct {
	entries []nameEntry
	how     How
	list    []token
	used    marks   // the words of list that the name took
	left    []token // words cut off before list was read
}

// marks is a set of the first 64 words of a phrase: more are not read.
type marks uint64

// allMarks is every word.
const allMarks = ^marks(0)

func (m marks) has(i int) bool { return i < 64 && m&(1<<i) != 0 }
func (m *marks) set(i int)     { *m |= 1 << i }
func (m marks) count() int     { return bits.OnesCount64(uint64(m)) }

// sure tells whether the finding is one food and no question.
func (f finding) sure() bool { return f.how != None && f.how != Ask }

// uses tells whether the name took any word of list[from:to].
func (f finding) uses(from, to int) bool {
	for i := from; i < to; i++ {
		if f.used.has(i) {
			return true
		}
	}
	return false
}

// answer words the finding, taking forms from the asides too.
func (f finding) answer(asides [][]token) Found {
	var rest []token
	for i, t := range f.list {
		if f.how == None || !f.used.has(i) {
			rest = append(rest, t)
		}
	}
	m := Found{How: f.how}
	var forms, left []string
	take := func(list []token, formsToo bool) {
		for i, t := range list {
			switch class := modifiers[t.stem]; {
			case formsToo && class == sizeWord && i > 0 && list[i-1].plain == "extra":
				forms = append(forms, "extra "+formOf(t))
				left = trimLast(left, "extra")
			case formsToo && t.plain == "packed" && i > 0 && notPacked[list[i-1].plain]:
				forms = append(forms, "unpacked")
			case formsToo && (class == formWord || class == sizeWord):
				forms = append(forms, formOf(t))
			default:
				left = append(left, t.plain)
			}
		}
	}
	take(rest, true)
	take(f.left, true)
	for _, aside := range asides {
		take(aside, !extraParts[aside[0].plain])
	}
	m.Form, m.Left = strings.Join(forms, " "), strings.Join(left, " ")
	f.foods(&m, rest, asides)
	return m
}

// extraParts begin an aside about another portion of the food, whose form is
// not this one's: "plus extra chopped parsley".
var extraParts = wordSet("plus extra for to or and")

// notPacked before "packed" turn it round.
var notPacked = wordSet("not loosely lightly")

func trimLast(list []string, word string) []string {
	if n := len(list); n > 0 && list[n-1] == word {
		return list[:n-1]
	}
	return list
}

// foods fills in the one food, or the choices if there are several.
func (f finding) foods(m *Found, rest []token, asides [][]token) {
	switch {
	case f.how == None:
	case f.how != Ask:
		m.ID = f.entries[0].of.ID
	default:
		if e, ok := f.freshOne(rest, asides); ok {
			m.How, m.ID = Modifiers, e.of.ID
			return
		}
		for _, e := range f.entries {
			m.Choices = append(m.Choices, e.of.ID)
		}
	}
}

// freshOne settles a name that a fresh food shares with a dry one, if a word
// beside it is said of fresh ones only.
func (f finding) freshOne(rest []token, asides [][]token) (nameEntry, bool) {
	said := hasAny(rest, freshWords)
	for _, aside := range asides {
		said = said || hasAny(aside, freshWords)
	}
	if !said {
		return nameEntry{}, false
	}
	var fresh []nameEntry
	for _, e := range f.entries {
		if e.of.Fresh {
			fresh = append(fresh, e)
		}
	}
	if len(fresh) != 1 {
		return nameEntry{}, false
	}
	return fresh[0], true
}

// freshWords are said of fresh plants, not of dried ones.
var freshWords = wordSet("fresh freshly leaf sprig bunch chopped torn picked handful stalk peeled grated piece root")

func hasAny(list []token, stems map[string]bool) bool {
	for _, t := range list {
		if stems[t.stem] {
			return true
		}
	}
	return false
}
