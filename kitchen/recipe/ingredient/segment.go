package ingredient

import (
	"strings"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe/lexicon"
)

// takeBrackets takes every bracket that still stands in the line.
func (l *line) takeBrackets() {
	for range 20 {
		at := strings.IndexAny(l.rest, "([")
		if at < 0 {
			break
		}
		inner, after, ok := cutBracket(l.rest[at:])
		if !ok {
			break
		}
		before := strings.TrimSpace(l.rest[:at])
		if after != "" && !strings.ContainsRune(",;.", lexicon.First(after)) && before != "" {
			before += " "
		}
		l.rest = before + after
		if !l.takeInner(inner) {
			l.sort(inner, true)
		}
	}
	l.rest = strings.TrimSpace(strings.NewReplacer("(", " ", ")", " ", "[", " ", "]", " ").Replace(l.rest))
}

// takeSegments keeps the food's own words in rest and sorts what follows them:
// behind commas, dashes, and phrases such as "for dusting".
func (l *line) takeSegments() {
	segments := cutSegments(l.rest)
	name := segments[0]
	segments = segments[1:]
	for len(segments) > 0 && isDescription(name) {
		name, segments = name+", "+segments[0], segments[1:]
	}
	name, tail := cutPhrase(name)
	l.rest = name
	if tail != "" {
		l.sort(tail, false)
	}
	for _, s := range segments {
		l.sort(s, false)
	}
}

// cutSegments cuts at commas, semicolons and spaced dashes. A comma inside a
// number ("1,5") cuts nothing.
func cutSegments(text string) []string {
	var all []string
	start := 0
	for i := 0; i < len(text); i++ {
		width := 0
		switch {
		case text[i] == ';', text[i] == ',' && (i+1 == len(text) || text[i+1] < '0' || text[i+1] > '9'):
			width = 1
		case strings.HasPrefix(text[i:], " - "):
			width = 3
		case strings.HasPrefix(text[i:], " – "), strings.HasPrefix(text[i:], " — "):
			width = len(" – ")
		}
		if width > 0 {
			if s := strings.TrimSpace(text[start:i]); s != "" {
				all = append(all, s)
			}
			i += width - 1
			start = i + 1
		}
	}
	if s := strings.TrimSpace(text[start:]); s != "" || len(all) == 0 {
		all = append(all, s)
	}
	return all
}

// cutPhrase cuts a food's name where a phrase about it begins without a comma:
// "butter for the tin", "salt to taste", "2 onions about 300 g".
func cutPhrase(name string) (food, phrase string) {
	lower := lexicon.Lower(name)
	at := len(name)
	for _, mark := range phrases {
		if strings.HasPrefix(mark, " from") && partNouns[lexicon.FirstWord(lower)] {
			continue // "juice from the roasting tray"
		}
		if i := strings.Index(lower, mark); i > 0 && i < at && len(lower) == len(name) {
			at = i
		}
	}
	return strings.TrimSpace(name[:at]), strings.TrimSpace(name[at:])
}

// phrases begin what is no part of a name.
var phrases = []string{" for ", " to taste", " to serve", " to garnish", " to finish", " to decorate", " to cover", " to grease",
	" to dust", " to fry", " to drizzle", " to sprinkle", " to brush", " to coat", " to glaze", " to thin", " to top", " as needed", " as required",
	" as desired", " at room temp", " plus more", " plus extra", " plus a ", " plus some", " plus 1", " plus 2", " plus 3", " plus one",
	" + 1", " + 2", " and 1", " and 2",
	" or to taste", " or more", " or less", " or as ", " if needed", " if you ", " such as ", " about ", " approx", " until ",
	" depending ", " from a ", " from the ", " from 1", " from 2", " from about", " cut into ", " cut in ", " broken into ",
	" torn into ", " left ", " each weighing", " of your choice", " of choice", " per ", " enough ",
	" (optional", " optional", " divided", " straight from "}

// sort keeps one remark where it belongs.
func (l *line) sort(remark string, bracket bool) {
	remark = strings.Trim(remark, " ,;")
	lower := lexicon.Lower(strings.TrimRight(remark, "."))
	switch {
	case remark == "":
	case lower == "optional":
		l.Optional = true
	case strings.HasSuffix(lower, " optional") || strings.HasPrefix(lower, "optional"):
		l.Optional = true
		l.note(strings.Trim(cutFold(remark, "optional"), " ,-–"))
	case lower == "divided" || strings.HasPrefix(lower, "divided "):
		l.Divided = true
		l.note(strings.TrimSpace(remark[len("divided"):]))
	case lower == "to taste", lower == "or to taste":
		l.ToTaste = true
	case isOpenEnded(lower) && !l.HasAmount:
		l.ToTaste = true
		l.note(remark)
	case strings.HasSuffix(lower, "to taste"):
		l.ToTaste = true
		l.note(remark)
	case strings.HasPrefix(lower, "plus "), strings.HasPrefix(lower, "and "), strings.HasPrefix(lower, "+ "):
		l.sortPlus(remark)
	case isSize(lower) && l.Size == "":
		l.Size = lower
	case isPartPhrase(lower):
		l.prep(remark)
	case !bracket && l.restates(remark):
	case isNote(lower) || bracket && !isPreparation(firstWords(lower, 2)):
		l.note(remark)
	case !bracket && lexicon.IsNumeral(lexicon.First(lower)):
		l.pointAt(remark, remark)
		l.note(remark)
	case isPreparation(lower):
		l.prep(remark)
	default:
		l.note(remark)
	}
}

func firstWords(text string, n int) string {
	fields := strings.Fields(text)
	return strings.Join(fields[:min(n, len(fields))], " ")
}

// sortPlus takes "plus 2 tbsp for dusting" as an addition, "plus more" as a
// note, and points at "plus 1 yolk".
func (l *line) sortPlus(remark string) {
	_, after, _ := strings.Cut(remark, " ")
	before := l.rest
	if _, rest, ok := measure.ReadAmount(after); ok && rest == "" && l.takePlus(after) {
		l.rest = before
		return
	}
	of := after
	if _, whole, ok := cutPart(after); ok {
		of = whole + " fruit" // "plus juice of 1"
	}
	l.pointAt(of, after)
	l.note(remark)
}

// pointAt points at words that begin with an amount of another food: "2 tbsp
// water". What the amount is for ("1 tbsp for dusting") is no food.
func (l *line) pointAt(text, words string) {
	r, rest, ok := measure.ReadAmount(text)
	if !ok || !r.HasAmount() || rest == "" || purposes[lexicon.FirstWord(lexicon.Lower(rest))] || isPreparation(rest) {
		return
	}
	if r.Amount.Unit == measure.Each || isWeighed(r.Amount.Unit) {
		l.more = words
	}
}

var purposes = lexicon.Of(`for to at in into from per thick long wide each or if of and more extra less`)

// restates takes a remark that is only another statement of the amount: "about
// 300 g".
func (l *line) restates(remark string) bool {
	if !strings.ContainsFunc(remark, lexicon.IsNumeral) {
		return false
	}
	found, tail, _, ok := amounts(remark)
	return ok && tail == "" && isWeighed(found[0].Amount.Unit) && l.takeInner(remark)
}

// cutFold takes word out of text, whatever its case.
func cutFold(text, word string) string {
	if i := strings.Index(lexicon.Lower(text), word); i >= 0 && i+len(word) <= len(text) {
		return strings.TrimSpace(text[:i]) + " " + strings.TrimSpace(text[i+len(word):])
	}
	return text
}

// isOpenEnded tells remarks that leave the amount to the cook.
func isOpenEnded(lower string) bool {
	for _, lead := range []string{"to taste", "as needed", "as required", "as desired", "for dusting", "for greasing", "for frying",
		"for brushing", "for sprinkling", "for rolling", "for drizzling", "for deep", "for shallow", "for serving", "for the tin", "for the pan",
		"for garnish", "for decorating", "for decoration", "for kneading", "to serve", "to garnish", "to finish", "to decorate",
		"to cover", "to grease", "to dust", "to fry", "to drizzle", "to sprinkle", "to brush", "enough "} {
		if strings.HasPrefix(lower, lead) {
			return true
		}
	}
	return false
}

func isNote(lower string) bool {
	word, _, _ := strings.Cut(lower, " ")
	return noteWords[strings.Trim(word, ",.:")]
}

// isPartPhrase tells "juice only", "zest and juice", "juice of".
func isPartPhrase(lower string) bool {
	part := false
	for _, f := range strings.Fields(lower) {
		switch {
		case partNouns[f], f == "juiced", f == "zested":
			part = true
		case !partWords[f] && f != "only" && f != "of":
			return false
		}
	}
	return part
}

var noteWords = lexicon.Of(`plus or for to from if see such like not about approx approximately depending preferably ideally i.e e.g
	eg ie note you use any your enough more extra as per of on a an the i we my these this both homemade store-bought shop-bought
	bought available optional around total weighing with without`)
