package script

import (
	"unicode"
	"unicode/utf8"
)

// Words counts the words of text by the word boundaries of Unicode Standard
// Annex #29, section 4.1, rules WB4 to WB13: "can't" and "32.3" are one word,
// "well-known" is two, each ideograph is one. Unlike the annex, a fraction sign
// such as ½ counts as a digit, since it is spoken.
func Words(text string) int {
	count := 0
	eachWord(text, func(start, end int) { count++ })
	return count
}

// WordsOf lists the words that Words counts, as written, in order.
func WordsOf(text string) []string {
	var words []string
	eachWord(text, func(start, end int) { words = append(words, text[start:end]) })
	return words
}

// class is a rune's part in a word, after the annex's Word_Break property.
type class int

const (
	other     class = iota // spaces, signs: between words
	letter                 // ALetter, Hebrew_Letter
	digit                  // Numeric, and fraction signs
	katakana               // joins only its own kind
	ideograph              // a word each: ideographs, hiragana
	connector              // ExtendNumLet: "_"
	midLetter              // joins letters: ":" "·"
	midNumber              // joins digits: "," ";"
	midBoth                // joins either: "." "'" "’"
	extend                 // marks and format signs: part of what stands before
)

func classOf(r rune) class {
	switch r {
	case '.', '\'', '\u2018', '\u2019', '\u2024', '\ufe52', '\uff07', '\uff0e':
		return midBoth
	case ':', '\u00b7', '\u0387', '\u055f', '\u05f4', '\u2027', '\ufe13', '\ufe55', '\uff1a':
		return midLetter
	case ',', ';', '\u037e', '\u0589', '\u060c', '\u066c', '\ufe10', '\ufe14', '\ufe50', '\ufe54', '\uff0c', '\uff1b':
		return midNumber
	case '\u30fc', '\u30a0': // the long-vowel sign and the double hyphen
		return katakana
	case '\u200b': // zero-width space parts words, though it is a format sign
		return other
	}
	switch {
	case unicode.Is(unicode.Katakana, r):
		return katakana
	case unicode.In(r, unicode.Han, unicode.Hiragana):
		return ideograph
	case unicode.IsLetter(r):
		return letter
	case unicode.In(r, unicode.Nd, unicode.No):
		return digit
	case unicode.In(r, unicode.M, unicode.Cf):
		return extend
	case unicode.Is(unicode.Pc, r):
		return connector
	}
	return other
}

// eachWord calls yield with the byte offsets of each word, the end excluded.
func eachWord(text string, yield func(start, end int)) {
	w := word{start: -1}
	for at, r := range text {
		c, behind := classOf(r), at+utf8.RuneLen(r)
		if r == utf8.RuneError {
			c, behind = other, at // a broken byte is no word, whatever its length
		}
		if w.takes(c, behind) {
			continue
		}
		w.finish(yield)
		if c == letter || c == digit || c == katakana || c == ideograph || c == connector {
			w = word{start: at, end: behind, last: c, spoken: c != connector}
		}
	}
	w.finish(yield)
}

// word is the word under way.
type word struct {
	start  int   // -1 between words
	end    int   // behind the last rune that surely belongs to it
	last   class // of that rune
	mid    class // a joining sign seen since, waiting for what follows
	spoken bool  // it holds a letter or digit, not only "_"
}

// takes adds a rune of class c that ends at the offset behind, if it goes on
// with the word; else it tells that the word is over.
func (w *word) takes(c class, behind int) bool {
	switch {
	case w.start < 0:
		return false
	case c == extend: // WB4: belongs to whatever it follows
		if w.mid == other {
			w.end = behind
		}
		return true
	case c == midLetter || c == midNumber || c == midBoth:
		if w.mid != other || (w.last != letter && w.last != digit) {
			return false
		}
		w.mid = c
		return true
	case c == other || !joins(w.last, w.mid, c):
		return false
	}
	w.end, w.last, w.mid = behind, c, other
	w.spoken = w.spoken || c != connector
	return true
}

func (w *word) finish(yield func(start, end int)) {
	if w.start >= 0 && w.spoken {
		yield(w.start, w.end)
	}
	*w = word{start: -1}
}

// joins tells whether a rune of class next goes on with a word whose last rune
// was of class last, with the sign mid (other for none) between the two.
func joins(last, mid, next class) bool {
	switch mid {
	case midLetter:
		return last == letter && next == letter // WB6, WB7
	case midNumber:
		return last == digit && next == digit // WB11, WB12
	case midBoth:
		return last == next && (next == letter || next == digit)
	}
	switch {
	case last == ideograph || next == ideograph:
		return false // WB999
	case last == connector || next == connector:
		return true // WB13a, WB13b
	case last == katakana || next == katakana:
		return last == next // WB13
	}
	return true // WB5, WB8 to WB10
}
