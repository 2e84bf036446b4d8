package method

import (
	"strings"
	"unicode"

	"benchproof/kitchen/recipe/lexicon"
)

// Divide cuts one line of a method into instructions. Joined by spaces they are
// the line again. A numbered line stays whole but where it changes what kind of
// time passes: "Knead for 10 minutes. Prove for 1 hour." are two, one with
// hands and one without. Of prose, every sentence that orders something is one.
func Divide(line string, prose bool) []string {
	var pieces []string
	for _, s := range Sentences(line) {
		n := len(pieces)
		if n > 0 && !(prose && (Begins(s) || IsVerb(lexicon.FirstWord(s)))) && !changes(pieces[n-1], s) {
			pieces[n-1] += " " + s
			continue
		}
		pieces = append(pieces, s)
	}
	var all []string
	for _, p := range pieces {
		all = append(all, divideThen(p)...)
	}
	return all
}

// changes tells that both texts take time, at other stations or with and
// without hands.
func changes(a, b string) bool {
	if !ordersSomething(b) {
		return false // "then 10 minutes more" goes on as before
	}
	first, second := Read(a), Read(b)
	if !first.HasMinutes || !second.HasMinutes {
		return false
	}
	return first.HandsOn != second.HandsOn || first.Station != second.Station && !staysInMixer(first, second)
}

// staysInMixer tells that work begun in the mixer goes on without another place
// named: "Knead on low for 5 minutes, then add the butter and knead 6 more."
func staysInMixer(first, second Reading) bool {
	return first.Station == mixer && second.Station == bench && first.HandsOn && second.HandsOn
}

// ordersSomething tells whether any verb of the text orders something.
func ordersSomething(text string) bool {
	t := tokenise(text)
	for i := range t.list {
		if _, ok := t.verbAt(i); ok {
			return true
		}
	}
	return false
}

// divideThen cuts a sentence before "then" where time changes its kind there:
// "chill for 20 minutes, then bake for 15 minutes".
func divideThen(text string) []string {
	for from := 0; from < len(text); {
		i := strings.Index(text[from:], " then ")
		if i < 0 {
			break
		}
		at := from + i
		left, right := text[:at], text[at+1:]
		if and, ok := strings.CutSuffix(left, " and"); ok {
			left, right = and, "and "+right
		}
		if changes(left, right) {
			return append([]string{left}, divideThen(right)...)
		}
		from = at + len(" then ")
	}
	return []string{text}
}

// Sentences cuts text at full stops, exclamation and question marks that a
// capital, a digit or nothing follows. Abbreviations ("approx.", "min.") and
// decimals end no sentence. Joined by spaces the sentences are the text, given
// that its words are parted by single spaces.
func Sentences(text string) []string {
	var all []string
	start := 0
	for i := 0; i < len(text); i++ {
		if text[i] != '.' && text[i] != '!' && text[i] != '?' {
			continue
		}
		end := i + 1
		for end < len(text) && strings.ContainsRune(")\"'”’.!?", rune(text[end])) {
			end++
		}
		if end < len(text) && (text[end] != ' ' || !opensSentence(text[end+1:]) || abbreviated(text[start:i+1])) {
			continue
		}
		all = append(all, text[start:end])
		start = min(end+1, len(text))
		i = end
	}
	if start < len(text) {
		all = append(all, text[start:])
	}
	return all
}

func opensSentence(rest string) bool {
	for _, c := range rest {
		return unicode.IsUpper(c) || unicode.IsDigit(c) || c == '(' || c == '“' || c == '"'
	}
	return true
}

// abbreviated tells that the full stop ending text belongs to a word cut short.
func abbreviated(text string) bool {
	word := lexicon.Lower(text[strings.LastIndexByte(text, ' ')+1:])
	switch strings.Trim(word, "(") {
	case "approx.", "min.", "mins.", "hr.", "hrs.", "tsp.", "tbsp.", "oz.", "lb.", "lbs.", "e.g.", "i.e.", "ca.", "no.", "st.", "vs.",
		"etc.", "fig.", "c.", "temp.", "sec.", "secs.", "deg.", "pkg.", "qt.", "pt.":
		return true
	}
	return false
}
