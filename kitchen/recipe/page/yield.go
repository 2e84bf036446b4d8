package page

import (
	"strings"
	"unicode"

	"benchproof/kitchen/recipe/lexicon"
)

// isYield tells "Serves 4–6", "Makes about 16", "Yield: one 23 cm tart",
// "For 4 people", alone or in a line of facts ("Prep 20 min | Serves 4").
func isYield(words string) bool {
	if len(words) > 140 {
		return false
	}
	for _, clause := range strings.FieldsFunc(words, func(r rune) bool { return strings.ContainsRune("|•·;", r) }) {
		if yieldClause(trim(clause)) {
			return true
		}
	}
	for _, clause := range strings.Split(words, ", ")[1:] {
		if yieldClause(trim(clause)) {
			return true
		}
	}
	if len(strings.Fields(words)) <= 12 { // "PREP 10 min COOK 12 min SERVES 4"
		for _, verb := range []string{" serves ", " makes ", " serves: ", " servings: "} {
			if i := strings.Index(lexicon.Lower(words), verb); i > 0 && i < len(words) && isFacts(words[:i]) {
				return yieldClause(trim(words[i:]))
			}
		}
	}
	return false
}

// isFacts tells words such as "Prep 10 min Cook 12 min" before a yield.
func isFacts(words string) bool {
	first := firstFields(words, 1)[0]
	switch strings.Trim(first, ":") {
	case "prep", "preparation", "cook", "cooking", "bake", "total", "time", "active", "hands-on", "ready", "takes":
		return true
	}
	return false
}

func yieldClause(clause string) bool {
	fields := firstFields(strings.ReplaceAll(clause, ":", " "), 8)
	if len(fields) < 2 || len(clause) > 100 {
		return false
	}
	first, rest := fields[0], fields[1:]
	if first == "recipe" || first == "this" || first == "about" {
		first, rest = rest[0], rest[1:]
		if first == "recipe" && len(rest) > 0 {
			first, rest = rest[0], rest[1:]
		}
		if len(rest) == 0 {
			return false
		}
	}
	switch first {
	case "serves", "makes", "make", "yield", "yields", "feeds", "gives", "servings", "serving", "portions", "quantity":
		return hasCount(rest) && (first != "make" && first != "serving" || len(fields) <= 3)
	case "enough":
		return len(rest) > 1 && rest[0] == "for" && hasCount(rest[1:])
	case "for":
		return hasCount(rest[:1]) && hasPeople(rest[1:])
	}
	return len(fields) <= 4 && lexicon.IsNumeral(lexicon.First(first)) && (hasPeople(rest) || rest[len(rest)-1] == "portions")
}

func hasPeople(fields []string) bool {
	for _, f := range fields {
		switch strings.Trim(f, ".,)") {
		case "people", "persons", "person", "servings", "serving", "portions", "guests", "adults":
			return true
		}
	}
	return false
}

// hasCount tells whether a number stands among the fields, in figures or words.
func hasCount(fields []string) bool {
	for i, f := range fields {
		f = strings.TrimLeft(f, "(~≈")
		if lexicon.IsNumeral(lexicon.First(f)) || numberWords[f] || i < 2 && (f == "a" || f == "an") && i+1 < len(fields) && whole[strings.Trim(fields[i+1], ".,")] {
			return true
		}
	}
	return false
}

// whole are things that "makes a …" counts as one.
var whole = lexicon.Of(`loaf cake tart pie tray batch jar pot bowl crowd ring round pan dish big large small deep traybake dozen family whole
	pavlova quiche pizza pudding litre 20 23 25`)

// IsCredit tells words that say where the recipe came from.
func IsCredit(words string) bool {
	lower := lexicon.Lower(words)
	if len(lower) > 300 {
		return false
	}
	for _, lead := range []string{"adapted from", "inspired by", "based on", "recipe by", "recipe from", "source:", "from:",
		"credit:", "credits:", "by:", "original recipe", "author:", "after a recipe", "with thanks to", "thanks to",
		"recipe adapted", "recipe inspired", "courtesy of", "slightly adapted", "loosely based", "loosely adapted",
		"first published", "photo:", "photos:", "recipe courtesy", "freely after"} {
		if strings.HasPrefix(lower, lead) {
			return true
		}
	}
	return !strings.ContainsFunc(lower, unicode.IsSpace) &&
		(strings.HasPrefix(lower, "http://") || strings.HasPrefix(lower, "https://") || strings.HasPrefix(lower, "www."))
}

// isByline tells "by Ama Tollund" under the title; first tells that the title
// stands right above, where "by the keeper of the till" is one too.
func isByline(words string, first bool) bool {
	rest, ok := strings.CutPrefix(words, "by ")
	if !ok {
		rest, ok = strings.CutPrefix(words, "By ")
	}
	return ok && !strings.HasSuffix(rest, ".") &&
		(len(strings.Fields(rest)) <= 5 && unicode.IsUpper(lexicon.First(rest)) || first && len(strings.Fields(rest)) <= 8)
}

// isAside tells a single note among other lines: "Tip: …", "Note: …", "NB …".
func isAside(words string) bool {
	lower := lexicon.Lower(words)
	for _, lead := range []string{"tip:", "note:", "notes:", "nb ", "nb:", "n.b.", "note that ", "cook's note:", "cook’s note:",
		"variation:", "tips:", "storage:", "cook's tip:", "cook’s tip:", "warning:", "make ahead:", "to store:", "baker's note:",
		"keeps ", "will keep ", "freezes ", "best eaten ", "nutrition per ", "nutrition:", "calories", "per serving:"} {
		if len(lower) > len(lead) && strings.HasPrefix(lower, lead) {
			return true
		}
	}
	return false
}
