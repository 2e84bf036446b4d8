package scan

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// Cursor walks through a text without copying it. It is a value: keep a copy
// to come back to.
type Cursor struct {
	Text string
	At   int // the place, in bytes
}

// Rest gives what is still to be read.
func (c Cursor) Rest() string { return c.Text[c.At:] }

// Done tells whether nothing is left.
func (c Cursor) Done() bool { return c.At >= len(c.Text) }

// Byte gives the byte i places on, 0 past the end.
func (c Cursor) Byte(i int) byte {
	if i += c.At; i < len(c.Text) {
		return c.Text[i]
	}
	return 0
}

// Rune gives the character here, 0 at the end.
func (c Cursor) Rune() rune {
	if c.Done() {
		return 0
	}
	if b := c.Text[c.At]; b < utf8.RuneSelf {
		return rune(b)
	}
	r, _ := utf8.DecodeRuneInString(c.Text[c.At:])
	return r
}

// Space skips spaces of every kind, not line ends, and tells whether there
// were any.
func (c *Cursor) Space() bool {
	start := c.At
	for !c.Done() {
		r := c.Rune()
		if r == '\n' || r == '\r' || !unicode.IsSpace(r) && r != '\u200b' && r != '\ufeff' {
			break
		}
		c.At += utf8.RuneLen(r)
	}
	return c.At > start
}

// Accept skips s if it stands here.
func (c *Cursor) Accept(s string) bool {
	if strings.HasPrefix(c.Text[c.At:], s) {
		c.At += len(s)
		return true
	}
	return false
}

// AcceptRune skips one of the runes in set and gives it, 0 if none stands here.
func (c *Cursor) AcceptRune(set string) rune {
	r := c.Rune()
	if r == 0 || !strings.ContainsRune(set, r) {
		return 0
	}
	c.At += utf8.RuneLen(r)
	return r
}

// Word gives the run of letters here as it stands, "" if there is none. The
// cursor stays.
func (c Cursor) Word() string {
	end := c.At
	for end < len(c.Text) {
		if b := c.Text[end]; b < utf8.RuneSelf {
			if b|0x20 < 'a' || b|0x20 > 'z' {
				break
			}
			end++
			continue
		}
		r, size := utf8.DecodeRuneInString(c.Text[end:])
		if !unicode.IsLetter(r) && !unicode.IsMark(r) {
			break
		}
		end += size
	}
	return c.Text[c.At:end]
}

// AcceptWord skips the word w, in any case, if it stands here whole.
func (c *Cursor) AcceptWord(w string) bool {
	if got := c.Word(); len(got) == len(w) && strings.EqualFold(got, w) {
		c.At += len(got)
		return true
	}
	return false
}

// AcceptPhrase skips words parted by one space each in phrase, by spaces or a
// hyphen in the text.
func (c *Cursor) AcceptPhrase(phrase string) bool {
	start := c.At
	for first := true; phrase != ""; first = false {
		w, more, _ := strings.Cut(phrase, " ")
		if !first && !c.Gap() || !c.AcceptWord(w) {
			c.At = start
			return false
		}
		phrase = more
	}
	return true
}

// Gap skips what parts the words of one expression: spaces, or a hyphen.
func (c *Cursor) Gap() bool {
	start := c.At
	spaced := c.Space()
	if !spaced && c.AcceptRune("-‐‑") == 0 {
		return false
	}
	if c.Done() {
		c.At = start
		return false
	}
	return true
}

// Lower folds a word for looking up, without copying one that is lower already.
func Lower(word string) string {
	for i := range len(word) {
		if b := word[i]; b >= 'A' && b <= 'Z' || b >= utf8.RuneSelf {
			return strings.ToLower(word)
		}
	}
	return word
}

// AcceptThenGap skips the word w and the spaces that must follow it.
func (c *Cursor) AcceptThenGap(w string) bool {
	start := *c
	if c.AcceptWord(w) && c.Space() {
		return true
	}
	*c = start
	return false
}

// Token gives the length of the word, number or rune that stands here.
func (c Cursor) Token() int {
	if w := c.Word(); w != "" {
		return len(w)
	}
	n := 0
	for IsDigit(c.Byte(n)) || n > 0 && (c.Byte(n) == '.' || c.Byte(n) == ',') && IsDigit(c.Byte(n+1)) {
		n++
	}
	if n > 0 {
		return n
	}
	_, size := utf8.DecodeRuneInString(c.Rest())
	return max(size, 1)
}

// LastWord gives the last run of ASCII letters of text in lower case, "" if it
// ends otherwise.
func LastWord(text string) string {
	i := len(text)
	for i > 0 && (text[i-1]|0x20 >= 'a' && text[i-1]|0x20 <= 'z') {
		i--
	}
	return Lower(text[i:])
}
