package script

import (
	"strings"
	"time"
	"unicode"
)

// spokenWord is one word of a cut on its clock.
type spokenWord struct {
	key   string // for comparing: lower case, without a plural's ending; "" for what says nothing
	text  string // in lower case
	cue   int
	at    time.Duration // when it is said, reckoned by letters within its cue
	pause time.Duration // silence before it
	opens bool          // a sentence ended before it
}

// spokenWords puts the words of captions on the clock. Sounds in brackets are
// no words.
func spokenWords(captions Captions) []spokenWord {
	words := make([]spokenWord, 0, 12*len(captions.Cues))
	var silentFrom time.Duration
	opens := true
	for i, cue := range captions.Cues {
		text := withoutSounds(cue.Text)
		length := max(cue.End-cue.Start, 0)
		first := true
		eachWord(text, func(start, end int) {
			w := spokenWord{text: strings.ToLower(text[start:end]), cue: i, opens: opens}
			w.key = alignKey(w.text)
			w.at = cue.Start + time.Duration(float64(length)*float64(start)/float64(max(len(text), 1)))
			if first {
				w.pause = max(cue.Start-silentFrom, 0)
				first = false
			}
			words = append(words, w)
			opens = endsSentence(text[end:])
		})
		if !first {
			silentFrom = max(cue.End, cue.Start)
		}
	}
	return words
}

// endsSentence tells whether a sentence ends where rest begins.
func endsSentence(rest string) bool {
	for _, c := range rest {
		switch {
		case c == '.' || c == '!' || c == '?' || c == '…':
			return true
		case unicode.IsLetter(c) || unicode.IsNumber(c) || unicode.IsSpace(c):
			return false
		}
	}
	return false
}

// withoutSounds blanks "[applause]" and its like, keeping the length.
func withoutSounds(text string) string {
	if !strings.ContainsRune(text, '[') {
		return text
	}
	out := []byte(text)
	for from := 0; ; {
		open := strings.IndexByte(text[from:], '[')
		if open < 0 {
			return string(out)
		}
		shut := strings.IndexByte(text[from+open:], ']')
		if shut < 0 {
			return string(out)
		}
		for k := from + open; k <= from+open+shut; k++ {
			out[k] = ' '
		}
		from += open + shut + 1
	}
}

var unspecific = wordSet(`the and but for with that this these those there then than them they their you your yours our his her its
	it's i'm i've i'll you're you've you'll we're we've we'll they're don't can't won't isn't doesn't didn't that's there's what's
	let's here's are was were been being have has had having does did doing done will would can could should shall may might must
	not all any some one two three four five six seven eight nine ten eleven twelve fifteen twenty thirty forty fifty sixty seventy
	eighty ninety hundred thousand half quarter into onto from over under out off about just very really also too now when while
	until till because like want going get got goes put make makes made take takes know see look thing things way bit lot who what
	which where why how okay yes yeah well right good nice more most much many little every each other another only again back
	come comes came say says said i'd she him he's she's gram grams minutes minute hours hour degrees cup cups tablespoon
	tablespoons teaspoon teaspoons`)

func wordSet(words string) map[string]bool {
	set := map[string]bool{}
	for _, w := range strings.Fields(words) {
		set[w] = true
	}
	return set
}
