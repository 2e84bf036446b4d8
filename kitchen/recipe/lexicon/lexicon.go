// Package lexicon holds what the reading rooms share about words: sets of them,
// and the characters that kitchen numbers are written in.
package lexicon

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// Set is a set of words.
type Set map[string]bool

// Of makes a set of the words of a list, parted by blanks.
func Of(list string) Set {
	s := make(Set)
	for _, w := range strings.Fields(list) {
		s[w] = true
	}
	return s
}

// Lower folds a text to lower case so that every character keeps its place: what
// is found at a byte of it stands at the same byte of the text. Letters whose
// small form has another length stay as they are.
func Lower(text string) string {
	return strings.Map(func(c rune) rune {
		if small := unicode.ToLower(c); utf8.RuneLen(small) == utf8.RuneLen(c) {
			return small
		}
		return c
	}, text)
}

// First gives the first character of a text, 0 if it has none.
func First(text string) rune {
	for _, c := range text {
		return c
	}
	return 0
}

// IsNumeral tells digits and the fractions of one character, ½ to ⅞.
func IsNumeral(c rune) bool {
	return c >= '0' && c <= '9' || c >= '¼' && c <= '¾' || c >= '⅐' && c <= '⅟' || c == '↉'
}

// FirstWord gives what stands before the first space.
func FirstWord(text string) string {
	word, _, _ := strings.Cut(text, " ")
	return word
}

// LastWord gives what stands behind the last space.
func LastWord(text string) string { return text[strings.LastIndexByte(text, ' ')+1:] }
