package page

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"benchproof/kitchen/recipe/lexicon"
)

// Role is what a line of the text is taken for.
type Role string

// The roles a line can have.
const (
	Title      Role = "title"
	Yield      Role = "yield"
	Intro      Role = "intro"
	Heading    Role = "heading" // "Ingredients", "Method", a rule
	Component  Role = "component"
	Ingredient Role = "line"
	Step       Role = "step"
	Note       Role = "notes"
	Credit     Role = "credits"
	Equipment  Role = "equipment"
	Unread     Role = "unread"
)

// Row is one line of the text that is not blank.
type Row struct {
	Number   int    // from 1, blank lines counted
	Text     string // as written, outer blanks trimmed
	Words    string // Text without its bullet, number or label
	Role     Role
	Part     int  // index into Page.Parts for a Component, Ingredient or Step; else −1
	Of       int  // the Number of the row that this one continues; its own if it starts
	Numbered bool // a step that carried its own number
	Alone    bool // the only line of its component's method

	indented    bool
	bulleted    bool
	marked      bool // "# Heading", "**Heading**"
	blankBefore bool
	blankAfter  bool
}

// split cuts the text into rows. Lines end at \n, \r\n, \r, or the line and
// paragraph separators of Unicode, which word processors leave behind.
func split(text string) []Row {
	text = strings.NewReplacer("\r\n", "\n", "\r", "\n", "\u2028", "\n", "\u2029", "\n", "\v", "\n", "\f", "\n",
		"\u0085", "\n").Replace(text)
	text = strings.ToValidUTF8(text, "\ufffd")
	var rows []Row
	blank := false
	for i, raw := range strings.Split(text, "\n") {
		trimmed := trim(raw)
		if trimmed == "" {
			if len(rows) > 0 {
				rows[len(rows)-1].blankAfter = true
			}
			blank = true
			continue
		}
		row := Row{Number: i + 1, Text: trimmed, Part: -1, Of: i + 1, blankBefore: blank}
		row.indented = raw[0] == ' ' || raw[0] == '\t'
		row.unmark()
		rows = append(rows, row)
		blank = false
	}
	return rows
}

// trim takes white space and the invisible characters that web pages leave at
// both ends.
func trim(s string) string {
	return strings.TrimFunc(s, func(r rune) bool {
		return unicode.IsSpace(r) || r == '\u200b' || r == '\u200c' || r == '\u200d' || r == '\u2060' || r == '\ufeff' || r == 0
	})
}

const bullets = "-–—*•·▪▫◦●○■□▢◻☐☑✓✔‣⁃∙►➤❑❏+>"

// Words gives one line without what only lays it out: bullet, number, box,
// mark-up.
func Words(line string) string {
	r := Row{Text: trim(strings.ToValidUTF8(line, "\ufffd"))}
	r.unmark()
	return r.Words
}

// unmark sets Words: Text without what only lays it out.
func (r *Row) unmark() {
	words := r.Text
	for strings.HasPrefix(words, "#") {
		words, r.marked = words[1:], true
	}
	words = trim(words)
	if r.marked && words == "" {
		words, r.marked = r.Text, false
	}
	words = r.unbullet(words)
	words = r.unbold(words)
	words = r.unnumber(words)
	r.Words = words
}

// unbold takes mark-up for weight off: around the whole, which makes a heading,
// or inside ("**200 g** flour", "**1.** Heat the oven").
func (r *Row) unbold(words string) string {
	for _, around := range []string{"**", "__", "*", "_"} {
		inner, open := strings.CutPrefix(words, around)
		end, closed := strings.CutSuffix(inner, around)
		if !closed {
			end, closed = strings.CutSuffix(inner, around+":")
		}
		if open && closed && trim(end) != "" && !strings.Contains(end, around) {
			r.marked = true
			return trim(end)
		}
	}
	if strings.Count(words, "**") >= 2 {
		if bare := dropStars(words); bare != "" {
			return bare
		}
	}
	return words
}

// dropStars takes "**" out; words that it parted stay parted.
func dropStars(words string) string {
	parts := strings.Split(words, "**")
	text := parts[0]
	for _, p := range parts[1:] {
		last, _ := utf8.DecodeLastRuneInString(text)
		if inWord(last) && inWord(lexicon.First(p)) {
			text += " "
		}
		text += p
	}
	return trim(text)
}

func inWord(r rune) bool { return unicode.IsLetter(r) || unicode.IsNumber(r) }

func (r *Row) unbullet(words string) string {
	for _, box := range []string{"[ ]", "[x]", "[X]", "[]"} {
		if rest, ok := strings.CutPrefix(words, box); ok && trim(rest) != "" {
			r.bulleted = true
			return trim(rest)
		}
	}
	c := lexicon.First(words)
	if c == 0 || !strings.ContainsRune(bullets, c) {
		return words
	}
	rest := words[len(string(c)):]
	inner := trim(rest)
	if inner == "" || inner == rest && strings.ContainsRune("-–—+*>", c) {
		return words // "-5 °C", "*soft*" and rules are no bullets
	}
	r.bulleted = true
	return r.unbullet(inner)
}

// unnumber takes a step's own number: "1.", "2)", "(3)", "Step 4:", "5 –".
// What follows must not make it an amount: "1. 200 g flour" is numbered, "1.5 kg"
// and "1 - 2 eggs" are not.
func (r *Row) unnumber(words string) string {
	rest := words
	lower := lexicon.Lower(rest)
	stepped := strings.HasPrefix(lower, "step ")
	if stepped {
		rest = trim(rest[5:])
	}
	open := strings.HasPrefix(rest, "(")
	if open {
		rest = rest[1:]
	}
	n := 0
	for n < len(rest) && n < 3 && rest[n] >= '0' && rest[n] <= '9' {
		n++
	}
	if n == 0 || n == 3 {
		return words
	}
	after := rest[n:]
	tail := trim(after)
	sign := lexicon.First(tail)
	switch {
	case open && sign == ')', !open && sign == '.', !open && sign == ')', !open && sign == ':':
		tail = tail[1:]
	case stepped:
		tail = strings.TrimLeft(tail, "-–— ")
	default:
		return words
	}
	text := trim(strings.TrimLeft(tail, ":-–— "))
	if text == "" || (!stepped && !open && !spaced(tail)) {
		return words
	}
	r.Numbered = true
	return text
}

// spaced tells whether s starts with a blank or a letter: "1.Mix", not "1.5".
func spaced(s string) bool {
	c := lexicon.First(s)
	return unicode.IsSpace(c) || unicode.IsLetter(c)
}
