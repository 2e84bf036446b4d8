package verify_test

import (
	"strconv"
	"strings"

	"benchproof/kitchen/verify"
)

var wordsOfNumbers = map[string]int{
	"two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9, "ten": 10, "eleven": 11, "twelve": 12,
	"thirteen": 13, "fourteen": 14, "fifteen": 15, "sixteen": 16, "seventeen": 17, "eighteen": 18, "nineteen": 19,
	"twenty": 20, "thirty": 30, "forty": 40, "fifty": 50, "sixty": 60, "seventy": 70, "eighty": 80, "ninety": 90,
}

// inFigures writes numbers in figures, as some recognisers do: "two hundred and
// fifty grams" as "250 grams", "one eighty" as "180". A number stands in the
// caption where it begins.
func inFigures(cues []verify.Cue) []verify.Cue {
	var words []string
	var of []int
	for i, c := range cues {
		for _, w := range strings.Fields(c.Text) {
			words, of = append(words, w), append(of, i)
		}
	}
	texts := make([][]string, len(cues))
	for i := 0; i < len(words); {
		word, to := words[i], i+1
		if n, end := figureAt(words, i); end > i {
			word, to = strconv.Itoa(n)+stopOf(words[end-1]), end
		}
		texts[of[i]] = append(texts[of[i]], word)
		i = to
	}
	var all []verify.Cue
	for i, c := range cues {
		c.Text = strings.Join(texts[i], " ")
		all = append(all, c)
	}
	return all
}

func stopOf(word string) string { return word[len(strings.TrimRight(word, ".,;:!?")):] }

func below100(word string) (int, bool) {
	if tens, ones, ok := strings.Cut(word, "-"); ok {
		return wordsOfNumbers[tens] + max(wordsOfNumbers[ones], one(ones)), wordsOfNumbers[tens] >= 20 && wordsOfNumbers[ones]+one(ones) > 0
	}
	n, ok := wordsOfNumbers[word]
	return n, ok
}

func one(word string) int {
	if word == "one" {
		return 1
	}
	return 0
}

// figureAt reads the number in words at i; to is i where there is none.
func figureAt(words []string, i int) (n, to int) {
	plain := func(k int) string {
		if k >= len(words) || k < 0 {
			return ""
		}
		return strings.ToLower(strings.TrimRight(words[k], ".,;:!?"))
	}
	open := func(k int) bool { return k < len(words) && stopOf(words[k]) == "" }
	small := func(k int) (int, int) {
		v, ok := below100(plain(k))
		if !ok {
			return 0, k
		}
		if u, more := below100(plain(k + 1)); v >= 20 && v%10 == 0 && open(k) && (more && u < 10 || plain(k+1) == "one") {
			return v + max(u, 1), k + 2
		}
		return v, k + 1
	}
	v, k := small(i)
	if k == i && (plain(i) == "a" || plain(i) == "one") && (plain(i+1) == "hundred" || plain(i) == "one" && open(i) && tensOnly(plain(i+1))) {
		v, k = 1, i+1
	}
	switch {
	case k == i:
		return 0, i
	case plain(k) == "hundred" && open(k-1):
		v, k = v*100, k+1
		at := k
		if plain(at) == "and" {
			at++
		}
		if u, end := small(at); end > at && open(k-1) {
			v, k = v+u, end
		}
	case v < 10 && open(k-1) && tensOnly(plain(k)):
		u, end := small(k)
		v, k = v*100+u, end
	}
	return v, k
}

func tensOnly(word string) bool { return wordsOfNumbers[word] >= 20 }
