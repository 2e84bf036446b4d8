package method

import (
	"strings"

	"benchproof/kitchen/recipe/lexicon"
)

// cueOf finds the sign that the instruction is done, as written: from "until" to
// the end of its clause. Times and waits ("until needed") are no signs.
func cueOf(text string, spans []span) string {
	lower := lexicon.Lower(text)
	if len(lower) != len(text) {
		return ""
	}
	for from := 0; ; {
		at, width := findUntil(lower, from)
		if at < 0 {
			return ""
		}
		end := at + cueEnd(lower[at:])
		for _, s := range spans {
			if s.at > at && s.at < end && s.counts {
				end = trimAbout(lower, at, s.at)
			}
		}
		cue := strings.TrimRight(text[at:end], " ,.;:–-—")
		if len(cue) > width && isSign(lower[at+width:at+len(cue)]) {
			return cue
		}
		from = at + width
	}
}

// findUntil finds the next word that opens a cue: "until", "till", "'til", or
// "when" after "done", "ready", "cooked", "set".
func findUntil(lower string, from int) (at, width int) {
	at = -1
	for _, word := range []string{"until ", "till ", "’til ", "'til ", "til ", "done when ", "ready when ", "cooked when ", "set when "} {
		i := strings.Index(lower[from:], word)
		if i < 0 {
			continue
		}
		i += from
		if i > 0 && lower[i-1] != ' ' && lower[i-1] != ',' && lower[i-1] != '(' {
			continue
		}
		skip := 0
		if strings.HasSuffix(word, "when ") {
			skip = len(word) - len("when ")
		}
		if at < 0 || i+skip < at {
			at, width = i+skip, len(word)-skip
		}
	}
	return at, width
}

// cueEnd gives where the clause that lower begins with ends.
func cueEnd(lower string) int {
	for i := 0; i < len(lower); i++ {
		rest := lower[i:]
		switch {
		case strings.ContainsRune(";!?(\n", rune(lower[i])):
			return i
		case lower[i] == '.' && (i+1 == len(lower) || lower[i+1] == ' '):
			return i
		case lower[i] == ':' || strings.HasPrefix(rest, " – ") || strings.HasPrefix(rest, " — ") || strings.HasPrefix(rest, " - "):
			return i
		case lower[i] == ',' && (endsClause(strings.TrimSpace(rest[1:])) || hasCue(rest[1:])):
			return i
		case strings.HasPrefix(rest, " then "):
			return i
		case strings.HasPrefix(rest, " and ") && isOrder(rest[len(" and "):]):
			return i
		}
	}
	return len(lower)
}

// hasCue tells that another cue follows in the same sentence: "til they pop,
// garlic til golden".
func hasCue(rest string) bool {
	sentence, _, _ := strings.Cut(rest, ".")
	for _, word := range []string{" until ", " till ", " til "} {
		if i := strings.Index(sentence, word); i > 0 && !strings.HasSuffix(sentence[:i], " or") {
			return true
		}
	}
	return false
}

// endsClause tells whether what follows a comma is no part of the cue.
func endsClause(rest string) bool {
	word, after, _ := strings.Cut(rest, " ")
	word = strings.Trim(word, ",.;")
	switch word {
	case "about", "around", "approximately", "approx", "roughly", "then", "but", "stirring", "turning", "for", "at", "which", "this",
		"it", "if", "you", "usually":
		return true
	case "and":
		return isOrder(after) || strings.HasPrefix(after, "then ")
	case "or":
		return false
	}
	return word == "" || word[0] >= '0' && word[0] <= '9' || strings.HasSuffix(word, "ing") || isOrder(rest)
}

// isOrder tells whether rest begins as a new instruction: a verb that is no
// food's name, or any kitchen verb before "the", "into" and the like.
func isOrder(rest string) bool {
	fields := strings.Fields(rest[:min(len(rest), 60)])
	if len(fields) == 0 {
		return false
	}
	word := strings.Trim(fields[0], ",.;")
	v, plain, ok := lookup(word)
	if !ok || !plain {
		return false
	}
	if len(fields) > 1 && determiners[strings.Trim(fields[1], ",.;")] {
		return true
	}
	return !v.noun && len(fields) > 1
}

// trimAbout moves the end at which a time begins back over "about", "for".
func trimAbout(lower string, from, end int) int {
	for {
		cut := strings.TrimRight(lower[from:end], " ,(")
		word := cut[strings.LastIndexByte(cut, ' ')+1:]
		switch word {
		case "about", "around", "for", "approximately", "approx", "roughly", "another", "at", "least", "a", "further", "after", "some":
			end = from + len(cut) - len(word)
		default:
			return from + len(cut)
		}
	}
}

// isSign tells whether the words after "until" are a sign one can see, feel or
// measure.
func isSign(rest string) bool {
	rest = strings.TrimSpace(rest)
	for _, no := range []string{"needed", "required", "ready to", "serving", "you are ready", "you're ready", "you need", "the next day",
		"tomorrow", "morning", "the morning", "later", "wanted", "used", "you want"} {
		if strings.HasPrefix(rest, no) {
			return false
		}
	}
	return rest != ""
}
