package speech

import (
	"strings"
	"time"
	"unicode"
	"unicode/utf8"
)

// Cue is one caption: what is said from Start to End.
type Cue struct {
	Start, End time.Duration
	Text       string
}

// Stop is what parts a word from the next one.
type Stop int

// The stops, from none to the end of a sentence.
const (
	None Stop = iota
	Clause
	Sentence
)

// Word is one word as spoken.
type Word struct {
	Text string // in lower case without punctuation: "grams", "1½", "it's"
	Stem string // Text without a plural's ending
	Stop Stop   // what follows it
	Cue  int    // index of its cue
	At   int    // where it stands in the cue's text, in bytes
	End  int    // the end is excluded
	Join bool   // no space stands before it: the "g" of "200g"
	Rest bool   // a silence follows that parts what is said
	Is   bool   // "is" or a possessive was cut off: "tin's"
}

// Text is what is said, word by word. Sounds in brackets and the fillers of
// speech ("um", "you know") are no words.
type Text struct {
	Cues     []Cue
	Words    []Word
	Dialogue bool // more than one host speaks: captions begin with a dash
}

// silence between two captions parts what is said like a full stop.
const silence = 600 * time.Millisecond

// leadsOn are words behind which nobody ends a sentence, however long the pause.
var leadsOn = SetOf("a an the of to and or with my your our his her its their for from in into at by is are was were as than it's that's there's i'm you're we're i've you've we've some any this these those every each no very about around plus maybe it i you we he she they not")

// Parts tells whether a sentence ends behind word i, by its stop or by a silence.
func (t Text) Parts(i int) bool { return t.Words[i].Stop == Sentence || t.Words[i].Rest }

// Cut cuts cues into words, in the order of the cues.
func Cut(cues []Cue) Text {
	t := Text{Cues: cues, Words: make([]Word, 0, 16*len(cues))}
	depth := rune(0) // the bracket that would close a sound
	turns := 0
	for i, cue := range cues {
		depth = t.cut(i, cue.Text, depth)
		if strings.HasPrefix(cue.Text, "- ") {
			turns++
		}
	}
	t.Dialogue = turns > 2
	t.dropFillers()
	for i := 0; i+1 < len(t.Words); i++ {
		w, next := &t.Words[i], t.Words[i+1]
		w.Rest = next.Cue > w.Cue && cues[next.Cue].Start-cues[w.Cue].End >= silence && !leadsOn[w.Text]
	}
	t.tellVerbs()
	return t
}

// tellVerbs tells to rest from the rest, to heat from a low heat, which says
// nothing of what is done and has an empty stem, to go cold from cold butter, and
// what was left alone from what is left.
func (t *Text) tellVerbs() {
	for i := range t.Words {
		w := &t.Words[i]
		switch before := t.word(i - 1); {
		case w.Text == "rest" && before != "the" && before != "other":
			w.Text = "rests"
		case w.Text == "heat" && heatLeads[before]:
			w.Stem = ""
		case w.Text == "cold" && coldLeads[before]:
			w.Text, w.Stem = "cool", "cool"
		case w.Text == "cold" && before == "the" && t.word(i-2) == "in":
			w.Text, w.Stem = "fridge", "fridge"
		case w.Text == "left" && (t.word(i+1) == "it" || t.word(i+1) == "them"):
			w.Text, w.Stem = "leave", "leave"
		}
	}
}

var coldLeads = SetOf("go goes going gone went get gets getting stone completely")

var heatLeads = SetOf("the a low medium high gentle full more less much of your")

// Quote gives the words from one index to another, the end excluded, as they
// were written.
func (t Text) Quote(from, to int) string {
	var b strings.Builder
	for i := from; i < to; {
		cue, k := t.Words[i].Cue, i
		for k+1 < to && t.Words[k+1].Cue == cue {
			k++
		}
		if b.Len() > 0 {
			b.WriteByte(' ')
		}
		b.WriteString(t.Cues[cue].Text[t.Words[i].At:t.Words[k].End])
		i = k + 1
	}
	return strings.Join(strings.Fields(b.String()), " ")
}

// Start gives when the cue of a word begins.
func (t Text) Start(word int) time.Duration { return t.Cues[t.Words[word].Cue].Start }

// cut adds the words of one cue; closing is the bracket that is still open.
func (t *Text) cut(cue int, text string, closing rune) rune {
	at := -1
	gap := true
	flush := func(end int) {
		if at >= 0 {
			t.add(cue, text, at, end, !gap)
			at, gap = -1, false
		}
	}
	for i, c := range text {
		switch {
		case closing != 0:
			if c == closing {
				closing = 0
			}
			continue
		case c == '[':
			flush(i)
			closing = ']'
			continue
		}
		switch class := classOf(text, i, c); {
		case class == inWord && at >= 0 && turns(text, at, i, c):
			flush(i)
			at, gap = i, false
		case class == inWord && at < 0:
			at = i
		case class == inWord:
		default:
			flush(i)
			t.sign(cue, text, i, c)
			gap = true
		}
	}
	flush(len(text))
	if closing != 0 && len(t.Words) > 0 && !strings.ContainsRune(text, ']') {
		return 0 // a bracket that nobody closed hides no more than its cue
	}
	return closing
}

type place int

const (
	between place = iota
	inWord
)

// classOf tells whether the rune c at i belongs to a word.
func classOf(text string, i int, c rune) place {
	switch {
	case (c == 'x' || c == 'X') && isTimes(text, i):
		return between
	case unicode.IsLetter(c), unicode.IsNumber(c), c == '°', c == '%', unicode.IsMark(c):
		return inWord
	case c == '.' || c == ',' || c == ':' || c == '/' || c == '⁄' || c == '\'' || c == '’':
		before, _ := utf8.DecodeLastRuneInString(text[:i])
		after, _ := utf8.DecodeRuneInString(text[i+utf8.RuneLen(c):])
		if c == '\'' || c == '’' {
			return mark(unicode.IsLetter(before) && unicode.IsLetter(after))
		}
		digits := isDigit(before) && isDigit(after)
		if c == '/' || c == '⁄' {
			return mark(digits && isFraction(text, i, utf8.RuneLen(c)))
		}
		if c == '.' && isDigit(after) && (before == ' ' || i == 0) {
			return inWord // ".5"
		}
		return mark(digits)
	}
	return between
}

// isTimes tells the x of "9x13".
func isTimes(text string, i int) bool {
	return i > 0 && i+1 < len(text) && isDigit(rune(text[i-1])) && isDigit(rune(text[i+1]))
}

func mark(in bool) place {
	if in {
		return inWord
	}
	return between
}

func isDigit(c rune) bool { return c >= '0' && c <= '9' }

// isFraction tells "1/2" from "180/160": the top has one digit and the bottom
// at most two.
func isFraction(text string, i, width int) bool {
	left := 0
	for k := i - 1; k >= 0 && text[k] >= '0' && text[k] <= '9'; k-- {
		left++
	}
	right := 0
	for k := i + width; k < len(text) && text[k] >= '0' && text[k] <= '9'; k++ {
		right++
	}
	return left <= 1 && right <= 2
}

// turns tells whether a new word begins at i inside a run that began at at:
// between figures and letters ("200g"), but not in "1st" or "B12".
func turns(text string, at, i int, c rune) bool {
	before, _ := utf8.DecodeLastRuneInString(text[:i])
	figure := func(r rune) bool { return unicode.IsNumber(r) }
	switch {
	case c == '°' || c == '%':
		return true
	case before == '°':
		return true
	case figure(before) && unicode.IsLetter(c):
		rest := strings.ToLower(text[i:])
		for _, ordinal := range []string{"st", "nd", "rd", "th"} {
			if strings.HasPrefix(rest, ordinal) && (len(rest) == 2 || !unicode.IsLetter(rune(rest[2]))) {
				return false
			}
		}
		first, _ := utf8.DecodeRuneInString(text[at:])
		return figure(first) || first == '.'
	}
	return false
}

// add adds the word that stands at the bytes given.
func (t *Text) add(cue int, text string, at, end int, join bool) {
	word := strings.ToLower(text[at:end])
	word = strings.ReplaceAll(word, "’", "'")
	switch word {
	case "°":
		word = "degrees"
	case "%":
		word = "percent"
	}
	is := false
	if s, ok := strings.CutSuffix(word, "'s"); ok && !contractions[s] {
		word, is = s, true
	}
	if word == "em" {
		word = "them"
	}
	t.Words = append(t.Words, Word{Text: word, Stem: Stem(word), Cue: cue, At: at, End: end, Join: join, Is: is})
}

var contractions = SetOf("it that there what here he she let who how where")

// sign takes note of a sign between words.
func (t *Text) sign(cue int, text string, i int, c rune) {
	stop := None
	switch c {
	case '.', '!', '?', '…':
		stop = Sentence
	case ',', ';', ':', '—', '(', ')':
		stop = Clause
	case '–', '-', '‐', '‑', '−':
		before, _ := utf8.DecodeLastRuneInString(text[:i])
		after, _ := utf8.DecodeRuneInString(text[i+utf8.RuneLen(c):])
		if unicode.IsNumber(before) && unicode.IsNumber(after) {
			t.Words = append(t.Words, Word{Text: "to", Stem: "to", Cue: cue, At: i, End: i + utf8.RuneLen(c)})
		} else if isDigit(after) && !unicode.IsLetter(before) && (c == '−' || c == '-') {
			t.Words = append(t.Words, Word{Text: "minus", Stem: "minus", Cue: cue, At: i, End: i + utf8.RuneLen(c)})
		} else if c == '–' || before == ' ' {
			stop = Clause
		}
	case '×', 'x', 'X':
		t.Words = append(t.Words, Word{Text: "x", Stem: "x", Cue: cue, At: i, End: i + utf8.RuneLen(c)})
	case '$', '£', '€', '#':
		t.Words = append(t.Words, Word{Text: string(c), Stem: string(c), Cue: cue, At: i, End: i + utf8.RuneLen(c)})
	}
	if n := len(t.Words); n > 0 && t.Words[n-1].Stop < stop && t.Words[n-1].Cue == cue {
		t.Words[n-1].Stop = stop
	}
}

// Pronoun tells whether "of it", "of them" or the like stands at word i.
func (t Text) Pronoun(i int) bool {
	if t.word(i) != "of" {
		return false
	}
	switch t.word(i + 1) {
	case "it", "them", "those", "these", "each", "that", "this":
		return i+2 >= len(t.Words) || t.Words[i+1].Stop != None || joins[t.word(i+2)] || t.word(i+1) != "that" && t.word(i+1) != "this" && t.word(i+1) != "those" && t.word(i+1) != "these"
	}
	return false
}

// Near tells whether one of the words stands within so many words before from or
// behind to, in the same sentence.
func (t Text) Near(from, to, reach int, words ...string) bool {
	is := func(k int) bool {
		for _, w := range words {
			if t.Words[k].Text == w {
				return true
			}
		}
		return false
	}
	for k := from - 1; k >= 0 && k >= from-reach && t.Words[k].Stop != Sentence; k-- {
		if is(k) {
			return true
		}
	}
	for k := to; k < len(t.Words) && k < to+reach && (k == 0 || t.Words[k-1].Stop != Sentence); k++ {
		if is(k) {
			return true
		}
	}
	return false
}

// NearBehind is like Near, looking only behind to.
func (t Text) NearBehind(to, reach int, words ...string) bool {
	for k := to; k < len(t.Words) && k < to+reach && t.Words[k-1].Stop != Sentence; k++ {
		for _, w := range words {
			if t.Words[k].Text == w {
				return true
			}
		}
	}
	return false
}

// At gives the text of word i, "" outside the text.
func (t Text) At(i int) string { return t.word(i) }

// SetOf makes a set of the words in a list.
func SetOf(words string) map[string]bool {
	m := map[string]bool{}
	for _, w := range strings.Fields(words) {
		m[w] = true
	}
	return m
}
