package ingredient

import (
	"strings"
	"unicode"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe/lexicon"
)

// Reading is what one line says.
type Reading struct {
	Read   bool   // false: everything below is empty
	Reason string // why it is not read, or what to look at; "" if all is well

	Amount    measure.Amount
	HasAmount bool
	About     bool             // "about", "a generous"
	Plus      []measure.Amount // "½ cup plus 1 tbsp": the 1 tbsp
	Equals    []measure.Amount // other statements of the same amount
	System    measure.System   // the line's own; "" if not said

	Count measure.Range  // of packs; zero if not packed
	Pack  measure.Amount // what one pack holds
	In    measure.Unit   // tin, packet …; Each for "4 × 150 g fillets"

	Size        string // "large"
	Food        string // "bread flour"
	Preparation string // "finely chopped"
	As          string // what of it was done before measuring: "1 cup sifted flour", not "1 cup flour, sifted"
	Note        string // anything else said

	Optional bool
	ToTaste  bool
	Divided  bool
}

// Knows gives the food that is known by this name just as it stands, "" if none
// is, so that "chopped tomatoes" is not taken for tomatoes to chop. It may be
// nil.
type Knows func(name string) (id string)

// longest is the longest line that is read as an ingredient, in bytes.
const longest = 300

// Read reads one line without its bullet.
func Read(text string, knows Knows) Reading {
	if len(text) > longest {
		return unread("This is too long for an ingredient. Put one ingredient on a line.")
	}
	l := line{knows: knows, rest: squeeze(strings.ToValidUTF8(text, "\ufffd"))}
	l.sentence = strings.HasSuffix(l.rest, ".") && strings.Count(l.rest, " ") > 3
	if strings.Contains(text, "://") || strings.Contains(text, "www.") {
		return unread("This is an address, not an ingredient.")
	}
	l.takeLabel()
	l.takePart()
	if !l.takeAmount() {
		l.takeAmountBehind()
	}
	l.takeBrackets()
	l.takeSegments()
	l.takeName()
	return l.finish()
}

func unread(reason string) Reading { return Reading{Reason: reason} }

// line is a Reading in the making.
type line struct {
	Reading
	knows Knows
	rest  string // what is not yet understood
	part  string // "juice", "zest and juice": of the food that follows
	more  string // an amount of a second food that was met
	bad   string // why the line cannot be read, found on the way
	preps []string
	notes []string

	sentence bool // it ends in a full stop after five words or more
}

func (l *line) note(words string) {
	if words = strings.Trim(words, " ,;"); words != "" {
		l.notes = append(l.notes, words)
	}
}

func (l *line) prep(words string) {
	if words = strings.Trim(words, " ,;"); words != "" {
		l.preps = append(l.preps, words)
	}
}

// finish checks what came of the line.
func (l *line) finish() Reading {
	if l.part != "" {
		l.preps = append([]string{l.part}, l.preps...)
	}
	l.Preparation = strings.Join(l.preps, ", ")
	l.Note = strings.Join(l.notes, "; ")
	l.Read = true
	words := strings.Fields(l.Food)
	switch {
	case l.bad != "":
		return unread(l.bad)
	case !strings.ContainsFunc(l.Food, unicode.IsLetter), len(l.Food) < 2:
		if l.HasAmount {
			return unread("There is an amount but no food. Write what it is of.")
		}
		return unread("No food was found in this line.")
	case holdsStrayNumber(l.Food):
		return unread("This line holds a number that was not understood. Put one ingredient on a line, its amount first.")
	case len(words) > 10 || !l.HasAmount && l.sentence:
		return unread("This reads as a remark, not an ingredient.")
	}
	l.Food = strings.TrimRight(l.Food, ".")
	if l.more != "" {
		l.Reason = "A second amount stands here, “" + l.more + "”. Put it on a line of its own to have it counted."
	}
	l.agree()
	return l.Reading
}

// holdsStrayNumber tells figures in a food's name that no food carries. Flour
// types ("00", "T45", "type 55"), percentages ("70 %") and compounds ("5-spice",
// "7-up") are names.
func holdsStrayNumber(name string) bool {
	fields := strings.Fields(name)
	for i, f := range fields {
		if !strings.ContainsFunc(f, lexicon.IsNumeral) {
			continue
		}
		next := ""
		if i+1 < len(fields) {
			next = fields[i+1]
		}
		typed := i > 0 && (strings.EqualFold(fields[i-1], "type") || strings.EqualFold(fields[i-1], "no.") || strings.EqualFold(fields[i-1], "no") ||
			strings.EqualFold(fields[i-1], "grade"))
		figures := strings.TrimRight(f, "0123456789")
		switch {
		case strings.Contains(f, "%") || strings.HasPrefix(next, "%") || strings.HasPrefix(next, "percent") || strings.HasPrefix(next, "per"),
			f == "00" || f == "0" || f == "000", typed,
			strings.Contains(f, "-") && strings.ContainsFunc(f, unicode.IsLetter),
			figures != "" && figures != f && unicode.IsLetter(lexicon.First(figures)) && !strings.ContainsFunc(figures, lexicon.IsNumeral), // T45
			strings.HasPrefix(next, "spice") || strings.HasPrefix(next, "bean") || strings.HasPrefix(next, "grain"):
		default:
			return true
		}
	}
	return false
}

// squeeze makes every run of blanks one space.
func squeeze(s string) string { return strings.Join(strings.Fields(s), " ") }
