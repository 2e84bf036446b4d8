package recipe

import (
	"strings"

	"benchproof/kitchen/measure"
)

// statedSystem finds what the text itself says of its measures: "Australian
// tablespoons and 250 ml cups", "(US cups)", "all spoons are metric". It gives
// "" if it says nothing, or names two systems.
func statedSystem(r *Recipe) measure.System {
	var found measure.System
	for _, lines := range [][]string{r.Intro, r.Notes, {r.Yield.Text}} {
		for _, text := range lines {
			s := systemIn(text)
			if s == "" {
				continue
			}
			if found != "" && found != s {
				return ""
			}
			found = s
		}
	}
	return found
}

// systemIn finds the one system named near a word for a measure.
func systemIn(text string) measure.System {
	if len(text) > 400 {
		return ""
	}
	words := strings.FieldsFunc(text, func(r rune) bool { return strings.ContainsRune(" ,;:()[]/-–\t", r) })
	var found measure.System
	for i, w := range words {
		w = strings.Trim(w, ".")
		if w == "us" || len(w) < 2 {
			continue // "let us" is no country
		}
		s, ok := measure.ParseSystem(w)
		if !ok || s == measure.USLabel {
			continue
		}
		for _, near := range words[max(0, i-4):min(len(words), i+4)] {
			switch strings.Trim(strings.ToLower(near), ".") {
			case "cup", "cups", "tablespoon", "tablespoons", "spoon", "spoons", "tbsp", "measure", "measures", "measurements",
				"teaspoons", "pint", "pints", "system", "units":
				if found != "" && found != s {
					return ""
				}
				found = s
			}
		}
	}
	return found
}
