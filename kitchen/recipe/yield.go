package recipe

import (
	"strings"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe/lexicon"
	"benchproof/kitchen/recipe/method"
)

// readYield reads what a recipe makes: "Serves 4–6", "Makes about 16 knots",
// "Yield: 1 loaf of 900 g", "Prep 10 min | Serves 4". A yield in words ("serves
// a crowd") keeps its text and has no amount.
func readYield(text string) Yield {
	y := Yield{Text: text}
	for _, clause := range yieldClauses(text) {
		verb, rest := cutYieldVerb(clause)
		if verb == "" {
			continue
		}
		if first := method.Sentences(rest); len(first) > 0 {
			rest = strings.TrimRight(first[0], ".") // "8. Adapted from a card" would be a list's number
		}
		r, of, ok := measure.ReadAmount(rest)
		if !ok || !r.HasAmount() {
			continue
		}
		y.set(r.Amount, verb, of)
		return y
	}
	if r, of, ok := measure.ReadAmount(text); ok && r.HasAmount() {
		y.set(r.Amount, "", of)
	}
	return y
}

// set keeps an amount of things made. Bars and slices are what is made here, not
// what it is measured in.
func (y *Yield) set(a measure.Amount, verb, of string) {
	if a.Unit != measure.Each && a.Unit.Kind() == measure.Count {
		of = strings.TrimSpace(a.Unit.Name(a.To.Cmp(measure.Whole(1)) > 0) + " " + of)
		a.Unit = measure.Each
	}
	y.Amount, y.Of = a, yieldOf(verb, of)
}

// yieldClauses cuts a line of facts into its clauses, and brackets out of them:
// what stands in brackets may be the number ("a crowd (12–15)").
func yieldClauses(text string) []string {
	var all []string
	for _, clause := range strings.FieldsFunc(text, func(r rune) bool { return strings.ContainsRune("|•·;", r) }) {
		all = append(all, strings.TrimSpace(clause))
	}
	if len(all) == 1 {
		for _, verb := range yieldVerbs { // "PREP 10 min COOK 12 min SERVES 4"
			if i := indexFold(text, " "+verb); i >= 0 {
				all = append(all, strings.TrimSpace(text[i:]))
			}
		}
	}
	if open := strings.IndexByte(text, '('); open > 0 {
		inner, _, _ := strings.Cut(text[open+1:], ")")
		if verb, _ := cutYieldVerb(text); verb != "" {
			all = append(all, verb+" "+inner)
		}
		all = append(all, inner)
	}
	return all
}

var yieldVerbs = []string{"serves", "servings", "serving", "makes", "make", "yields", "yield", "feeds", "gives", "cuts into", "fills", "portions", "quantity", "enough for", "for"}

// cutYieldVerb takes the word that announces a yield off the start.
func cutYieldVerb(clause string) (verb, rest string) {
	lower := lexicon.Lower(clause)
	for _, lead := range []string{"this recipe ", "recipe ", "this ", "about "} {
		if strings.HasPrefix(lower, lead) {
			clause, lower = clause[len(lead):], lower[len(lead):]
		}
	}
	for _, v := range yieldVerbs {
		if strings.HasPrefix(lower, v) && len(lower) > len(v) && strings.ContainsAny(lower[len(v):len(v)+1], " :") {
			return v, strings.TrimLeft(clause[len(v):], " :")
		}
	}
	return "", clause
}

// yieldOf words what is made: the words after the number up to a bracket or a
// comma; "servings" where a verb says that people eat it.
func yieldOf(verb, of string) string {
	if strings.HasPrefix(of, "(") { // "1 (10-inch) skillet"
		_, after, _ := strings.Cut(of, ")")
		of = after
	}
	if i := strings.IndexAny(of, "(,;|."); i >= 0 {
		of = of[:i]
	}
	of = strings.TrimSpace(of)
	if of == "" {
		switch verb {
		case "serves", "servings", "serving", "feeds", "portions", "for", "enough for":
			return "servings"
		}
	}
	return of
}

func indexFold(text, part string) int {
	lower := lexicon.Lower(text)
	if len(lower) != len(text) {
		return -1
	}
	return strings.Index(lower, part)
}

// yieldAtEnd finds a yield in the method's last sentence: "… before cutting.
// Makes 16." The step keeps its words.
func yieldAtEnd(r *Recipe) Yield {
	steps := r.stepsInOrder()
	if len(steps) == 0 {
		return Yield{}
	}
	at := steps[len(steps)-1]
	sentences := method.Sentences(r.Components[at.Component].Steps[at.Step].Text)
	last := strings.TrimRight(sentences[len(sentences)-1], ".")
	switch verb, _ := cutYieldVerb(last); verb {
	case "serves", "makes", "yields", "feeds", "gives", "cuts into":
		if y := readYield(last); !y.Amount.IsZero() {
			return y
		}
	}
	return Yield{}
}

func spaced(s string) string { return strings.ReplaceAll(s, "\u00a0", " ") }
