package ingredient

import (
	"strings"
	"unicode"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe/lexicon"
)

// takeAmount takes an amount at the line's start with everything that restates
// it or adds to it. It tells whether one stood there.
func (l *line) takeAmount() bool {
	text := l.rest
	noun := cutArticle(text)
	if lexicon.IsNumeral(lexicon.First(noun)) {
		text = noun // "a 400 g tin"
	}
	if number, after, _ := strings.Cut(text, " "); strings.EqualFold(lexicon.FirstWord(after), "doz.") {
		text = number + " dozen" + after[len("doz."):]
	}
	r, rest, ok := measure.ReadAmount(text)
	if !ok && noun != "" && !startsLoosely(noun) {
		r, rest, ok = l.readArticle(noun)
	}
	if !ok {
		return l.takePlenty()
	}
	if word := lexicon.Lower(lexicon.FirstWord(rest)); strings.TrimSuffix(word, ":") == "each" {
		l.bad = "One amount stands for each of several foods here. Give each food a line of its own, with its amount."
	}
	if lower := lexicon.Lower(rest); r.Amount.Unit == measure.Each && strings.HasPrefix(lower, "cup cake ") {
		r.Amount.Unit, rest = measure.Cup, rest[len("cup "):] // a cup of cake flour, no cup cake
	}
	l.take(r, rest)
	return true
}

// startsLoosely tells words that name no number after "a": "little oil", "small
// amount of oil"; but "large egg" is one egg.
func startsLoosely(noun string) bool {
	word, after, _ := strings.Cut(lexicon.Lower(noun), " ")
	if !sized[word] {
		return loose[word]
	}
	next := lexicon.FirstWord(after)
	return next == "" || loose[next] || vague[next]
}

// readArticle reads "a lemon" as one lemon, "a thumb-sized piece of ginger" as
// one piece. noun is what follows the article.
func (l *line) readArticle(noun string) (r measure.Reading, rest string, ok bool) {
	r.Amount = measure.Of(measure.Whole(1), measure.Each)
	word, after, _ := strings.Cut(noun, " ")
	if strings.HasSuffix(lexicon.Lower(word), "-sized") {
		unit, tail, _ := strings.Cut(after, " ")
		if u, ok := measure.ParseUnit(unit); ok && tail != "" {
			r.Amount.Unit = u
			l.Size = lexicon.Lower(word)
			return r, cutOf(tail), true
		}
	}
	return r, noun, true
}

// takePlenty takes "plenty of" and its like, which name no number.
func (l *line) takePlenty() bool {
	lower := lexicon.Lower(l.rest)
	for _, lead := range []string{"plenty of ", "lots of ", "loads of ", "a lot of ", "enough "} {
		if strings.HasPrefix(lower, lead) {
			l.note(l.rest[:len(strings.TrimSuffix(lead, "of "))])
			l.rest = l.rest[len(lead):]
			return true
		}
	}
	return false
}

// take keeps the reading r as the line's amount and goes on with rest.
func (l *line) take(r measure.Reading, rest string) {
	l.rest = rest
	l.hold(r)
	l.takePacks()
	for l.takeOther() {
	}
	l.takePiece()
}

// hold sets the amount from r.
func (l *line) hold(r measure.Reading) {
	l.Amount, l.HasAmount = r.Amount, r.HasAmount()
	l.System = r.System
	if !l.HasAmount {
		l.Amount = measure.Amount{}
		l.note(r.Text)
		return
	}
	l.About = l.About || r.Approximate && (r.Note != "" && !isSize(r.Note) || !informal[r.Amount.Unit])
	l.takeManner(r.Note)
}

// takeManner sorts how an amount is measured: a size, or "heaped", "packed".
func (l *line) takeManner(manner string) {
	switch {
	case manner == "":
	case isSize(manner) && l.Size == "":
		l.Size = lexicon.Lower(manner)
	case strings.Contains(manner, "packed"), strings.Contains(manner, "sifted"):
		l.prep(manner)
		l.measuredAs(manner)
	default:
		l.note(manner)
	}
}

// takeOther takes one more statement of the amount, or an addition to it:
// "/ 7 oz", "(7 oz)", "or 7 oz", "plus 1 tbsp".
func (l *line) takeOther() bool {
	rest := l.rest
	switch lexicon.First(rest) {
	case '/', '=', '≈', '|':
		return l.takeEqual(strings.TrimSpace(rest[len(string(lexicon.First(rest))):]), false)
	case '(', '[':
		inner, after, ok := cutBracket(rest)
		if ok && l.takeInner(inner) {
			l.rest = after
			return true
		}
		return false
	case '+', '&':
		return l.takePlus(strings.TrimSpace(rest[1:]))
	case ',':
		return l.takeEqual(strings.TrimSpace(rest[1:]), true)
	}
	word, after, _ := strings.Cut(rest, " ")
	switch lexicon.Lower(word) {
	case "or":
		return l.takeEqual(after, true)
	case "plus", "and":
		return l.takePlus(after)
	case "minus", "less":
		if r, _, ok := measure.ReadAmount(after); ok && r.HasAmount() {
			l.bad = "An amount is taken away here. Write the amount that is left."
		}
	}
	return false
}

// takeEqual takes another statement of the same amount. Where weighed asks for
// it, only a mass or a volume that restates a mass or a volume will do: in "2
// cups or 3 if you like", the 3 restates nothing.
func (l *line) takeEqual(text string, weighed bool) bool {
	r, rest, ok := measure.ReadAmount(text)
	if !ok || !r.HasAmount() || weighed && (!isWeighed(r.Amount.Unit) || !isWeighed(l.Amount.Unit)) ||
		!weighed && r.Amount.Unit == measure.Each {
		return false
	}
	l.equal(r)
	l.rest = rest
	return true
}

func (l *line) equal(r measure.Reading) {
	l.Equals = append(l.Equals, r.Amount)
	if l.System == "" {
		l.System = r.System
	}
}

// takePlus takes "plus 1 tbsp": an amount with a unit. A plain number is of
// another food ("plus 1 yolk") and stays; so does an amount for another purpose
// ("plus 20 g for the tin"), which is no part of what is mixed.
func (l *line) takePlus(text string) bool {
	r, rest, ok := measure.ReadAmount(text)
	if !ok || !r.HasAmount() || r.Amount.Unit == measure.Each || !l.HasAmount || strings.HasPrefix(rest, "for ") || strings.HasPrefix(rest, "to ") {
		return false
	}
	l.Plus = append(l.Plus, r.Amount)
	if l.System == "" {
		l.System = r.System
	}
	l.rest = rest
	return true
}

// takeInner takes what stands in brackets, if it is nothing but amounts: "7 oz",
// "about 300 g", "200 g / 7 oz", "400 g each", "2 sticks".
func (l *line) takeInner(inner string) bool {
	found, tail, each, ok := amounts(inner)
	if !ok || !l.fits(found[0]) || tail != "" && !afterAmount[lexicon.FirstWord(tail)] {
		return false
	}
	l.note(tail)
	if !l.HasAmount {
		l.hold(found[0])
		found = found[1:]
	}
	for i, r := range found {
		if i == 0 && l.statesPack(r, each) {
			l.pack(l.Amount.Range, r.Amount, l.Amount.Unit)
			continue
		}
		if each {
			r.Amount = times(r.Amount, l.count())
		}
		l.equal(r)
	}
	return true
}

// statesPack tells "2 tins (400 g each)" and "1 jar (700 g)": what one holds.
func (l *line) statesPack(r measure.Reading, each bool) bool {
	if !l.Pack.IsZero() || !isWeighed(r.Amount.Unit) {
		return false
	}
	one := l.Amount.IsSingle() && l.Amount.From.Equal(measure.Whole(1))
	return isPack(l.Amount.Unit) && (each || one) || l.Amount.Unit == measure.Sheet && each
}

// fits tells whether r can restate the line's amount: lengths restate lengths
// only, and a plain number nothing that is counted.
func (l *line) fits(r measure.Reading) bool {
	switch {
	case !l.HasAmount:
		return r.Amount.Unit != measure.Each
	case r.Amount.Unit.Kind() == measure.Length:
		return l.Amount.Unit.Kind() == measure.Length
	case r.Amount.Unit == measure.Each:
		return isWeighed(l.Amount.Unit)
	}
	return true
}

// count is how many pieces the line speaks of.
func (l *line) count() measure.Range {
	if !l.Count.IsZero() {
		return l.Count
	}
	return l.Amount.Range
}

// amounts reads a text that is nothing but amounts, parted by slashes, commas,
// "or", "=". Each tells "400 g each"; tail is what follows the last amount.
func amounts(text string) (found []measure.Reading, tail string, each, ok bool) {
	text = strings.TrimSpace(text)
	for text != "" {
		r, rest, ok := measure.ReadAmount(text)
		if !ok || !r.HasAmount() || r.Amount.Unit == measure.Each && (len(found) > 0 || rest != "") {
			return found, text, each, len(found) > 0
		}
		found = append(found, r)
		rest, every := cutTotal(strings.TrimSpace(rest))
		each = each || every
		more := strings.TrimSpace(strings.TrimLeft(rest, "/,;=|≈ "))
		if after, cut := strings.CutPrefix(more, "or "); cut {
			more = after
		}
		if more != "" && more == rest {
			return found, more, each, true
		}
		text = more
	}
	return found, "", each, len(found) > 0
}

// cutTotal takes "each" or "in total" off the start of what follows an amount.
func cutTotal(rest string) (after string, each bool) {
	for _, end := range []string{"each", "apiece", "in total", "total", "in all", "altogether", "net", "drained weight"} {
		if after, cut := strings.CutPrefix(rest, end); cut && (after == "" || !unicode.IsLetter(lexicon.First(after))) {
			return strings.TrimSpace(after), end == "each" || end == "apiece"
		}
	}
	return rest, false
}

// afterAmount are words that may follow an amount which restates another: "50 g
// out of the shell".
var afterAmount = lexicon.Of(`out after when once peeled drained weighed trimmed shelled prepared without with cooked before pitted stoned
	meat flesh of raw dry shell-on`)

func times(a measure.Amount, by measure.Range) measure.Amount {
	return measure.Amount{Range: measure.Range{From: a.From.Mul(by.From), To: a.To.Mul(by.To)}, Unit: a.Unit}
}

func isWeighed(u measure.Unit) bool { return u.Kind() == measure.Mass || u.Kind() == measure.Volume }

// cutArticle gives what follows "a" or "an", "" if text does not start so.
func cutArticle(text string) string {
	word, rest, _ := strings.Cut(text, " ")
	if strings.EqualFold(word, "a") || strings.EqualFold(word, "an") {
		return rest
	}
	return ""
}

var (
	// loose words after "a" name no number: "a little oil".
	loose = lexicon.Of(`little few bit lot good generous touch some small large big whole little-bit shake grind grinding sprinkle sprinkling
		scattering mix mixture selection choice variety`)

	// sized words tell how large the one thing is.
	sized = lexicon.Of(`small large big whole`)

	// vague things have no number, whatever their size.
	vague = lexicon.Of(`amount quantity helping portion serving dish`)

	// informal units are always only nearly meant; a line need not say so.
	informal = map[measure.Unit]bool{
		measure.Pinch: true, measure.Dash: true, measure.Drop: true, measure.Smidgen: true, measure.Knob: true, measure.Handful: true,
		measure.Splash: true, measure.Squeeze: true, measure.Drizzle: true, measure.Dollop: true, measure.Glug: true,
	}
)

// cutBracket takes a bracket with all that is nested in it off the start of
// text. An opening bracket that is never closed runs to the end.
func cutBracket(text string) (inner, after string, ok bool) {
	depth := 0
	for i, c := range text {
		switch c {
		case '(', '[':
			depth++
		case ')', ']':
			depth--
			if depth == 0 {
				return text[1:i], strings.TrimSpace(text[i+1:]), true
			}
		}
		if depth == 0 {
			return "", text, false
		}
	}
	if depth > 0 {
		return text[1:], "", true
	}
	return "", text, false
}
