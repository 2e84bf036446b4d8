package page

import (
	"strings"
	"unicode"

	"benchproof/kitchen/recipe/lexicon"
	"benchproof/kitchen/recipe/method"
)

var titleLabels = []string{"title:", "recipe:", "recipe name:", "name:", "dish:"}

// untitle takes a label off the title: "Recipe: Barley buns".
func untitle(words string) string {
	lower := lexicon.Lower(words)
	for _, label := range titleLabels {
		if rest := trim(words[min(len(label), len(words)):]); strings.HasPrefix(lower, label) && rest != "" {
			return rest
		}
	}
	return words
}

// isTitle takes the first row that could be a title; a labelled one also later,
// while nothing else has begun.
func (s *sorter) isTitle(i int) bool {
	r := s.rows[i]
	if s.titled || s.at > inIntro || r.Words == "" {
		return false
	}
	if untitle(r.Words) != r.Words {
		return true
	}
	if s.at != atStart || r.bulleted || r.Numbered || len(r.Words) > 120 {
		return false
	}
	for k := range i { // only facts may stand above a title
		if role := s.rows[k].Role; role != Yield && role != Credit && role != Heading {
			return false
		}
	}
	if _, _, _, ok := sectionOf(r.Words); ok || isYield(r.Words) || IsCredit(r.Words) || strings.HasSuffix(r.Words, ":") {
		return false
	}
	switch {
	case isIngredient(&r):
		return s.isCountedTitle(i)
	case strings.HasSuffix(r.Words, ".") && len(strings.Fields(r.Words)) > 7:
		return false
	case method.Begins(r.Words) && strings.HasSuffix(r.Words, "."):
		return false
	case s.heads0(i):
		return false
	}
	return true
}

// heads0 tells that the first row is a component's heading and no title:
// "For the pastry" before the first ingredient.
func (s *sorter) heads0(i int) bool {
	r := s.rows[i]
	fields := firstFields(r.Words, 2)
	next := s.next(i)
	return len(fields) == 2 && fields[0] == "for" && next != nil && isIngredient(next) && !r.blankAfter
}

// isCountedTitle tells "3 bean chilli" and "Five-spice beans" from "3 eggs": no
// unit, and what follows is no ingredient of the same list.
func (s *sorter) isCountedTitle(i int) bool {
	r := s.rows[i]
	fields := firstFields(r.Words, 4)
	if len(fields) < 2 || isUnitWord(fields[:2]) || endsMeasured(r.Words) || strings.ContainsAny(r.Words, ",(") {
		return false
	}
	next := s.next(i)
	if next == nil {
		return false
	}
	_, _, _, section := sectionOf(next.Words)
	return section || isYield(next.Words) || r.marked || r.blankAfter && !method.Begins(next.Words) && len(fields) >= 3
}

// continues joins a row to the one before it where a line was broken for width:
// inside brackets, after a comma, before "or", or in the middle of a sentence.
func (s *sorter) continues(i int) bool {
	r := &s.rows[i]
	if i == 0 || r.blankBefore || r.bulleted || r.Numbered {
		return false
	}
	before := s.rows[i-1]
	var joined bool
	switch before.Role {
	case Ingredient:
		joined = s.continuesLine(r, before, i > 1 && s.rows[i-2].Role == Ingredient && strings.HasSuffix(s.rows[i-2].Words, ","))
	case Step:
		joined = s.continuesStep(r, before)
	}
	if joined {
		r.Role, r.Part, r.Of = before.Role, before.Part, before.Of
	}
	return joined
}

// continuesLine tells whether an ingredient goes on. listed tells that the lines
// of this list end in commas anyway, so that a comma says nothing.
func (s *sorter) continuesLine(r *Row, before Row, listed bool) bool {
	if startsMeasured(r.Words) && !isOpen(before.Words) || isInstruction(r) {
		return false
	}
	lower := lexicon.Lower(r.Words)
	for _, lead := range []string{"(", "or ", "plus "} {
		if strings.HasPrefix(lower, lead) {
			return true
		}
	}
	if isOpen(before.Words) {
		return len(r.Words) < 120
	}
	for _, end := range []string{",", " or", " and", " plus", "&"} {
		if strings.HasSuffix(before.Words, end) && !(listed && end == ",") {
			return unicode.IsLower(lexicon.First(r.Words))
		}
	}
	return r.indented && !before.indented && !strings.Contains(before.Text, "\t") && unicode.IsLower(lexicon.First(r.Words)) && !endsMeasured(r.Words)
}

func (s *sorter) continuesStep(r *Row, before Row) bool {
	if shapeOf(*r, s.shouting) == certain || isAside(r.Words) || IsCredit(r.Words) {
		return false
	}
	if _, ok := bareNumber(r.Words); ok {
		return false
	}
	if _, _, _, ok := sectionOf(r.Words); ok {
		return false
	}
	if isOpen(before.Words) {
		return true
	}
	ended := strings.ContainsAny(before.Words[len(before.Words)-1:], ".!?:;)")
	if unicode.IsLower(lexicon.First(r.Words)) {
		lowered := unicode.IsLower(lexicon.First(before.Words)) && before.Of == before.Number // nobody's sentences start with a capital here
		return !method.Begins(r.Words) && !lowered || !ended && !lowered && len(before.Words) >= 50 || endsMidway(before.Words)
	}
	return !ended && (s.numbered || len(before.Words) >= 50 && !isInstruction(r))
}

// endsMidway tells that a sentence cannot end here.
func endsMidway(words string) bool {
	last := words[strings.LastIndexByte(words, ' ')+1:]
	switch last {
	case "and", "the", "a", "an", "or", "with", "in", "of", "to", "for", "into", "on", "until", "&", "–", "-", "about":
		return true
	}
	return strings.HasSuffix(words, ",")
}

// isOpen tells that a bracket was opened and not closed.
func isOpen(words string) bool {
	return strings.Count(words, "(") > strings.Count(words, ")")
}
