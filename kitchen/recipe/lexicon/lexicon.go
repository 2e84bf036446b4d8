// Package lexicon holds what the reading rooms share about words: sets of them,
// and the characters that kitchen numbers are written in.
package lexicon

import "strings"

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
