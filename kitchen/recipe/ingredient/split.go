package ingredient

import (
	"strings"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe/lexicon"
)

// Split cuts a line that lists several ingredients, each with its amount: "400 ml
// dashi, 1½ tbsp miso, 100 g tofu (cubed)". Any other line is given whole.
func Split(text string) []string {
	var parts []string
	depth, start := 0, 0
	for i, c := range text {
		switch c {
		case '(', '[':
			depth++
		case ')', ']':
			depth--
		}
		if depth == 0 && strings.HasPrefix(text[i:], ", ") {
			parts = append(parts, text[start:i])
			start = i + len(", ")
		}
	}
	parts = append(parts, text[start:])
	for i := range parts {
		parts[i] = strings.TrimSpace(parts[i])
		if !startsIngredient(parts[i]) {
			return []string{text}
		}
	}
	return parts
}

// startsIngredient tells an amount with a food behind it; "2 tbsp reserved" and
// "200 g in all" name none.
func startsIngredient(text string) bool {
	if noun := cutArticle(text); noun != "" {
		return !startsLoosely(noun) && !isPreparation(noun)
	}
	r, rest, ok := measure.ReadAmount(text)
	if !ok || !r.HasAmount() || rest == "" {
		return false
	}
	word, _, _ := strings.Cut(lexicon.Lower(rest), " ")
	return !purposes[strings.Trim(word, ".,;")] && !isPreparation(rest) && !strings.ContainsAny(rest[:1], "(/,;+")
}
