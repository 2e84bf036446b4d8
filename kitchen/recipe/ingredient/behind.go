package ingredient

import (
	"strings"
	"unicode/utf8"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe/lexicon"
)

// takeLabel takes a purpose before a colon: "To serve: crème fraîche",
// "Optional: 1 tsp chilli flakes".
func (l *line) takeLabel() {
	label, rest, ok := strings.Cut(l.rest, ":")
	rest = strings.TrimSpace(rest)
	if !ok || rest == "" || len(label) > 40 {
		return
	}
	lower := lexicon.Lower(label)
	switch word, _, _ := strings.Cut(lower, " "); {
	case word == "optional":
		l.Optional = true
		l.note(strings.TrimSpace(strings.TrimPrefix(lower, "optional")))
	case word == "to", word == "for", word == "garnish":
		l.note(lower)
	default:
		return
	}
	l.rest = rest
}

// takePart takes "juice of", "the finely grated zest and juice of" off the
// start: the food follows, the part is what is done to it.
func (l *line) takePart() {
	part, rest, ok := cutPart(l.rest)
	if ok {
		l.part, l.rest = part, rest
	}
}

// cutPart cuts the words of a part off the start of text, up to "of".
func cutPart(text string) (part, rest string, ok bool) {
	end, found := 0, false
	for end < len(text) {
		word, _, _ := strings.Cut(text[end:], " ")
		lower := lexicon.Lower(word)
		switch {
		case (lower == "of" || lower == "from") && found:
			part = lexicon.Lower(strings.TrimSpace(text[:end]))
			part = strings.TrimPrefix(part, "the ")
			rest = strings.TrimSpace(text[end+len(word):])
			if _, _, counted := measure.ReadAmount(rest); lower == "from" && !counted {
				return "", text, false // "juice from the roasting tray"
			}
			return part, rest, rest != ""
		case partNouns[lower]:
			found = true
		case !partWords[lower]:
			return "", text, false
		}
		end += len(word) + 1
	}
	return "", text, false
}

// takeAmountBehind takes an amount after the name: "Flour: 200 g", "Butter .....
// 50g", "Eggs – 3", "Plain flour 500 g, sifted".
func (l *line) takeAmountBehind() {
	text := l.rest
	depth := 0
	for i, c := range text {
		switch c {
		case '(', '[':
			depth++
		case ')', ']':
			depth--
		}
		if depth > 0 || i == 0 || !startsToken(text, i) {
			continue
		}
		if l.tryBehind(strings.TrimRight(text[:i], " "), text[i:]) {
			return
		}
	}
	if name, after, ok := strings.Cut(text, ":"); ok {
		if r, rest, ok := measure.ReadAmount(strings.TrimSpace(after)); ok && r.HasAmount() && rest != "" && strings.Count(name, " ") < 3 {
			l.note(lexicon.Lower(name)) // "Fruit: 400 g mixed berries"
			l.take(r, rest)
			return
		}
		l.rest = strings.TrimSpace(name) + ", " + strings.TrimSpace(after)
	}
}

// startsToken tells whether a word begins at i: only there can an amount start.
func startsToken(text string, i int) bool {
	before, _ := utf8.DecodeLastRuneInString(text[:i])
	c, _ := utf8.DecodeRuneInString(text[i:])
	if lexicon.IsNumeral(before) || c == ' ' {
		return false
	}
	return before == ' ' || strings.ContainsRune(":.…–—-=|", before) && (lexicon.IsNumeral(c) || before == ':')
}

// tryBehind takes tail as the amount of name, if nothing but what restates or
// qualifies the amount follows it.
func (l *line) tryBehind(name, tail string) bool {
	bare := strings.TrimRight(name, " :.…–—-=|,")
	parted := bare != name
	if cut, ok := strings.CutSuffix(bare, " x"); ok {
		bare, parted = cut, true
	} else if cut, ok := strings.CutSuffix(bare, " ×"); ok {
		bare, parted = cut, true
	}
	last := bare[strings.LastIndexByte(bare, ' ')+1:]
	if bare == "" || typeWords[lexicon.Lower(last)] || strings.EqualFold(last, "plus") || last == "+" || strings.EqualFold(last, "or") ||
		strings.EqualFold(last, "and") || strings.EqualFold(last, "of") || strings.EqualFold(last, "about") {
		return false
	}
	r, rest, ok := measure.ReadAmount(tail)
	if !ok || !r.HasAmount() && !parted || r.Amount.Unit == measure.Each && !parted && rest != "" {
		return false
	}
	if word, after, _ := strings.Cut(rest, " "); r.Amount.Unit == measure.Each && strings.HasPrefix(word, "clove") {
		r.Amount.Unit = measure.Clove // "Garlic: 2 cloves, crushed"
		if rest = after; strings.HasSuffix(word, ",") {
			rest = "," + after
		}
	}
	try := *l
	try.notes, try.preps = append([]string(nil), l.notes...), append([]string(nil), l.preps...)
	try.take(r, rest)
	rest = strings.TrimSpace(try.rest)
	if isSize(rest) {
		try.Size, rest = lexicon.Lower(rest), ""
	}
	if rest != "" && !strings.ContainsRune(",;(–—-", lexicon.First(rest)) {
		return false
	}
	*l = try
	l.rest = bare
	if rest != "" {
		l.rest = bare + ", " + strings.TrimLeft(rest, ",;–—- ")
	}
	return true
}

var (
	partNouns = lexicon.Of(`juice zest rind peel seeds leaves pulp flesh yolk yolks white whites segments`)
	partWords = lexicon.Of(`the and & plus finely freshly coarsely grated pared squeezed strained fresh a long strip`)
	typeWords = lexicon.Of(`type no no. grade size t`)
)
