package script

import "strings"

// leastKey is how many letters of a word are left at least when its ending goes.
const leastKey = 3

// wordKey is alignKey for a word as written.
func wordKey(word string) string { return alignKey(strings.ToLower(word)) }

// alignKey is what a word is compared by: "" for words that are everywhere and
// for numbers, which captions write in their own way; for others the word
// without the endings of plurals and verbs, so that "shaping" is "shape" and
// "chopped" is "chop". The endings are those of the first step of M. F. Porter,
// An algorithm for suffix stripping, Program 14-3, 1980; besides, an e at the end
// goes, and f stands for v ("loaves").
func alignKey(word string) string {
	if len(word) < 3 || unspecific[word] || word[0] >= '0' && word[0] <= '9' {
		return ""
	}
	word = strings.TrimSuffix(strings.TrimSuffix(strings.ReplaceAll(word, "’", "'"), "'s"), "'")
	word = withoutTense(withoutPlural(word))
	if stem, ok := strings.CutSuffix(word, "e"); ok && len(stem) >= leastKey {
		word = stem
	}
	switch last := len(word) - 1; {
	case last < leastKey-1:
	case word[last] == 'y' && !isVowel(word[last-1]):
		return word[:last] + "i"
	case word[last] == 'v':
		return word[:last] + "f"
	}
	return word
}

func withoutPlural(word string) string {
	switch {
	case strings.HasSuffix(word, "ies") && len(word) > leastKey+1:
		return word[:len(word)-2]
	case strings.HasSuffix(word, "s") && !strings.HasSuffix(word, "ss") && len(word) > leastKey:
		return word[:len(word)-1]
	}
	return word
}

// withoutTense takes off -ing and -ed where what is left has a vowel, and then
// one of a doubled consonant.
func withoutTense(word string) string {
	if strings.HasSuffix(word, "eed") {
		return word
	}
	for _, ending := range []string{"ing", "ed"} {
		stem, ok := strings.CutSuffix(word, ending)
		if !ok || len(stem) < leastKey || !strings.ContainsAny(stem, "aeiouy") {
			continue
		}
		if last := len(stem) - 1; last >= leastKey && stem[last] == stem[last-1] && !strings.ContainsRune("aeioulsz", rune(stem[last])) {
			stem = stem[:last]
		}
		return stem
	}
	return word
}

func isVowel(c byte) bool { return strings.IndexByte("aeiou", c) >= 0 }
