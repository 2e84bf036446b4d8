package measure

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// cursor walks through a text without copying it. It is a value: keep a copy
// to come back to.
type cursor struct {
	text string
	at   int
}

func (c cursor) rest() string { return c.text[c.at:] }
func (c cursor) done() bool   { return c.at >= len(c.text) }

// byte gives the byte i places on, 0 past the end.
func (c cursor) byte(i int) byte {
	if i += c.at; i < len(c.text) {
		return c.text[i]
	}
	return 0
}

func (c cursor) rune() rune {
	if c.done() {
		return 0
	}
	if b := c.text[c.at]; b < utf8.RuneSelf {
		return rune(b)
	}
	r, _ := utf8.DecodeRuneInString(c.text[c.at:])
	return r
}

// space skips spaces of every kind, not line ends, and tells whether there
// were any.
func (c *cursor) space() bool {
	start := c.at
	for !c.done() {
		r := c.rune()
		if r == '\n' || r == '\r' || !unicode.IsSpace(r) && r != '\u200b' && r != '\ufeff' {
			break
		}
		c.at += utf8.RuneLen(r)
	}
	return c.at > start
}

// accept skips s if it stands here.
func (c *cursor) accept(s string) bool {
	if strings.HasPrefix(c.text[c.at:], s) {
		c.at += len(s)
		return true
	}
	return false
}

// acceptRune skips one of the runes in set and gives it, 0 if none stands here.
func (c *cursor) acceptRune(set string) rune {
	r := c.rune()
	if r == 0 || !strings.ContainsRune(set, r) {
		return 0
	}
	c.at += utf8.RuneLen(r)
	return r
}

// word gives the run of letters here as it stands, "" if there is none. The
// cursor stays.
func (c cursor) word() string {
	end := c.at
	for end < len(c.text) {
		if b := c.text[end]; b < utf8.RuneSelf {
			if b|0x20 < 'a' || b|0x20 > 'z' {
				break
			}
			end++
			continue
		}
		r, size := utf8.DecodeRuneInString(c.text[end:])
		if !unicode.IsLetter(r) && !unicode.IsMark(r) {
			break
		}
		end += size
	}
	return c.text[c.at:end]
}

// acceptWord skips the word w, in any case, if it stands here whole.
func (c *cursor) acceptWord(w string) bool {
	if got := c.word(); len(got) == len(w) && strings.EqualFold(got, w) {
		c.at += len(got)
		return true
	}
	return false
}

// acceptPhrase skips words parted by one space each in phrase, by spaces or a
// hyphen in the text.
func (c *cursor) acceptPhrase(phrase string) bool {
	start := c.at
	for first := true; phrase != ""; first = false {
		w, more, _ := strings.Cut(phrase, " ")
		if !first && !c.gap() || !c.acceptWord(w) {
			c.at = start
			return false
		}
		phrase = more
	}
	return true
}

// gap skips what parts the words of one expression: spaces, or a hyphen.
func (c *cursor) gap() bool {
	start := c.at
	spaced := c.space()
	if !spaced && c.acceptRune("-‐‑") == 0 {
		return false
	}
	if c.done() {
		c.at = start
		return false
	}
	return true
}

// lower folds a word for looking up, without copying one that is lower already.
func lower(word string) string {
	for i := range len(word) {
		if b := word[i]; b >= 'A' && b <= 'Z' || b >= utf8.RuneSelf {
			return strings.ToLower(word)
		}
	}
	return word
}
