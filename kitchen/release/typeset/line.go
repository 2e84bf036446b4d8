package typeset

import (
	"regexp"
	"strings"
)

// Ink is a colour: red, green, blue, 0 to 255 each.
type Ink [3]int

// Run is a stretch of text of one look.
type Run struct {
	Text  string
	Face  Face
	Size  float64 // in points
	Ink   Ink
	Link  string // an address it leads to; "" for none
	Apart bool   // it keeps off the run before it by a wide blank
}

// with gives r with other text.
func (r Run) with(text string) Run {
	r.Text = text
	return r
}

func (r Run) looksLike(s Run) bool {
	return r.Face == s.Face && r.Size == s.Size && r.Ink == s.Ink && r.Link == s.Link
}

// Placed is a run with its distance from the line's left end, in points.
type Placed struct {
	Run
	X float64
}

// Line is one line as set.
type Line struct {
	Runs  []Placed
	Width float64
	gap   bool // a wide blank stands at the end
}

// Setter breaks runs into lines.
type Setter struct {
	Fonts *Fonts
	Width func(text string, face Face, size float64) float64 // in points
}

// Lines sets runs into lines no wider than limit. Lines break at blanks, any
// number of which are one, but not at no-break spaces nor between a figure and
// its unit; a word wider than a line is broken anywhere. Each character gets a
// face that has it. Runs without any text give no lines.
func (s *Setter) Lines(runs []Run, limit float64) []Line {
	var (
		all  []Line
		line Line
	)
	turn := func() {
		if len(line.Runs) > 0 {
			all = append(all, line)
		}
		line = Line{}
	}
	for _, b := range s.boxes(runs) {
		if b.space && line.Width+b.blank+b.width > limit {
			turn()
		}
		if b.space && len(line.Runs) > 0 {
			line.blank(b.blank, b.wide)
		}
		for _, r := range b.runs {
			for _, part := range s.broken(r, limit, line.Width) {
				w := s.measure(part)
				if line.Width+w > limit {
					turn()
				}
				line.add(part, w)
			}
		}
	}
	turn()
	return all
}

// box is a word: it is not broken unless it is wider than a line.
type box struct {
	runs  []Run
	width float64
	space bool    // there is a blank before it, where a line may break
	blank float64 // the width of that blank
	wide  bool    // it is wider than the font's own
}

// boxes splits runs into words. Runs without a blank between them make one word.
func (s *Setter) boxes(runs []Run) []box {
	var all []box
	space := false
	for _, r := range runs {
		wide := r.Apart && len(all) > 0
		for i, word := range strings.Split(markBlanks(r.Text), blankMark) {
			space = space || wide || i > 0
			b := s.box(word, r)
			if len(b.runs) == 0 {
				continue
			}
			if n := len(all); n > 0 && !space {
				all[n-1].runs = append(all[n-1].runs, b.runs...)
				all[n-1].width += b.width
				continue
			}
			b.space, b.wide = space, wide
			if b.blank = s.measure(r.with(" ")); wide {
				b.blank *= 3
			}
			all = append(all, b)
			space, wide = false, false
		}
	}
	return all
}

// box makes one word of the look of r.
func (s *Setter) box(word string, r Run) box {
	var b box
	for _, p := range s.Fonts.showable(word, r.Face) {
		part := r.with(p.text)
		part.Face = p.face
		b.runs = append(b.runs, part)
		b.width += s.measure(part)
	}
	return b
}

func (s *Setter) measure(r Run) float64 { return s.Width(r.Text, r.Face, r.Size) }

// broken cuts a run that is wider than a whole line into such as fit; any other
// run comes back as it is. used is what its first line has taken.
func (s *Setter) broken(r Run, limit, used float64) []Run {
	if s.measure(r) <= limit {
		return []Run{r}
	}
	var all []Run
	room, part := limit-used, ""
	for _, c := range r.Text {
		if part != "" && s.measure(r.with(part+string(c))) > room {
			all = append(all, r.with(part))
			part, room = "", limit
		}
		part += string(c)
	}
	return append(all, r.with(part))
}

// blank goes on by the width of a blank. One of the font's own width is part of
// the text; a wider one is only a gap.
func (l *Line) blank(width float64, wide bool) {
	if wide {
		l.gap = true
	} else {
		l.Runs[len(l.Runs)-1].Text += " "
	}
	l.Width += width
}

// add puts a run at the line's end, joined with the run before if alike.
func (l *Line) add(r Run, width float64) {
	if n := len(l.Runs); n > 0 && !l.gap && l.Runs[n-1].looksLike(r) {
		l.Runs[n-1].Text += r.Text
	} else {
		l.Runs = append(l.Runs, Placed{Run: r, X: l.Width})
	}
	l.gap = false
	l.Width += width
}

// blankMark stands for any blank where a line may break.
const blankMark = "\n"

// markBlanks marks the blanks of text where a line may break. The thin ones do
// not break and become no-break spaces, which every font has; so does the blank
// between a figure and its unit (SI Brochure, section 5.4.3).
func markBlanks(text string) string {
	text = figureAndUnit.ReplaceAllString(text, "$1\u00a0$2")
	text = gasMark.ReplaceAllString(text, "$1\u00a0$2")
	return blanks.Replace(text)
}

var blanks = strings.NewReplacer(" ", blankMark, "\t", blankMark, "\r", blankMark, "\u200b", blankMark, "\u2009", "\u00a0", "\u202f", "\u00a0")

var figureAndUnit = regexp.MustCompile(`([\d½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]) ((?:k?g|mg|ml|mL|cl|dl|l|L|cm|mm|m|in|oz|lb|min|h|s|tsp|tbsp|cups?)\b|×|°[CF])`)

var gasMark = regexp.MustCompile(`(?i)\b(gas|gas mark) ([\d½¼])`)
