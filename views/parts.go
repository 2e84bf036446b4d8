package views

import (
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/a-h/templ"
)

// Gutter is the left side of a row.
type Gutter struct {
	Text  string
	Small string // beneath, smaller
	Mark  MarkKind
}

// counts tells whether there are digits in the gutter, to be set under each
// other.
func (g Gutter) counts() bool { return strings.ContainsFunc(g.Text, unicode.IsNumber) }

// wide is how many characters fit a phone's gutter on one line.
const wide = 9

// parted parts a long measure between its number and its unit, so that it
// breaks there and not within: "3–4½", "stalks". unit is "" where the measure
// is short or is more than one number and its unit.
func (g Gutter) parted() (number, unit string) {
	at := strings.LastIndex(g.Text, noBreak)
	if at < 0 || utf8.RuneCountInString(g.Text) <= wide || strings.ContainsFunc(g.Text[:at], unicode.IsLetter) {
		return "", ""
	}
	return g.Text[:at], g.Text[at+len(noBreak):]
}

// noBreak is the space that keeps a number with its unit.
const noBreak = "\u00a0"

// sign is what a mark draws before its words.
func (k MarkKind) sign() string {
	switch k {
	case MarkProved:
		return "✓"
	case MarkLook:
		return "?"
	case MarkWrong:
		return "✗"
	}
	return ""
}

// words is a mark as read: its sign, then its text.
func (m Mark) words() string {
	if sign := m.Kind.sign(); sign != "" {
		return sign + " " + m.Text
	}
	return m.Text
}

// asks is something to look at, in a mark.
func asks(text string) Mark { return Mark{Kind: MarkLook, Text: text} }

// wrong is something wrong, in a mark.
func wrong(text string) Mark { return Mark{Kind: MarkWrong, Text: text} }

// current marks the link that leads to where one is.
func current(yes bool) templ.Attributes {
	if !yes {
		return nil
	}
	return templ.Attributes{"aria-current": "page"}
}

// measured is a gutter with a measure and something small beneath it.
func measured(text, small string) Gutter { return Gutter{Text: text, Small: small} }

// frameGutter stands beside the episode's title.
func frameGutter(f EpisodeFrame) Gutter {
	if f.Number == "" {
		return Gutter{Text: f.ReleaseOn, Small: f.Stage}
	}
	return Gutter{Text: f.Number, Small: f.ReleaseOn}
}

// sheetsLabel names the row of sheets.
func sheetsLabel(f EpisodeFrame) string {
	if f.Number == "" {
		return "The episode’s sheets"
	}
	return "Sheets of " + f.Number
}

// stillGutter counts what is open, in the colour of the worst of it.
func stillGutter(open []OpenLink) Gutter {
	g := Gutter{Text: strconv.Itoa(len(open)) + " still open", Mark: MarkLook}
	for _, each := range open {
		if each.Wrong {
			g.Mark = MarkWrong
		}
	}
	return g
}

// listEnd is what follows the i-th of n things in a sentence.
func listEnd(i, n int) string {
	if i == n-1 {
		return "."
	}
	return ", "
}

// joined puts a dot between the parts that are not empty.
func joined(parts ...string) string {
	var there []string
	for _, p := range parts {
		if p != "" {
			there = append(there, p)
		}
	}
	return strings.Join(there, " · ")
}
