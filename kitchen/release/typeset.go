package release

import (
	"regexp"
	"strings"
)

// ink is a colour of the card, as red, green, blue.
type ink [3]int

var (
	black = ink{0x21, 0x1c, 0x17}
	soft  = ink{0x5a, 0x52, 0x4a}
	hair  = ink{0xc9, 0xbf, 0xaf}
	act   = ink{0x7d, 0x1f, 0x4b} // beetroot
)

// run is a stretch of text of one look.
type run struct {
	text string
	face face
	size float64
	ink  ink
	link string // an address it leads to; "" for none
	// apart keeps it off the run before by a wide blank.
	apart bool
}

// textLine is one line as set: its runs with the place of each from its left.
type textLine struct {
	runs  []placedRun
	width float64
	gap   bool // a wide blank stands at the end
}

type placedRun struct {
	run
	x float64
}

// typesetter breaks runs into lines by the widths the PDF writer measures.
type typesetter struct {
	fonts *fontSet
	width func(text string, f face, size float64) float64
}

// box is a piece of text that is not broken, with the blank before it, if any.
type box struct {
	runs  []run
	width float64
	blank float64 // width of the blank before it; 0 if it joins what stands before
	space bool    // there is a blank before it, where a line may break
	wide  bool    // that blank is wider than the font's own
}

// lines sets runs into lines no wider than limit. Lines break at blanks, not at
// no-break spaces; a word wider than a line is broken anywhere. Runs without
// any text give no lines.
func (t *typesetter) lines(runs []run, limit float64) []textLine {
	var (
		all  []textLine
		line textLine
	)
	for _, b := range t.boxes(runs) {
		if len(line.runs) > 0 && b.space && line.width+b.blank+b.width > limit {
			all = append(all, line)
			line = textLine{}
		}
		if len(line.runs) > 0 && b.space {
			line.blank(b.blank, b.wide)
		}
		for _, r := range b.runs {
			for _, piece := range t.pieces(r, limit, line.width) {
				w := t.width(piece.text, piece.face, piece.size)
				if len(line.runs) > 0 && line.width+w > limit && w <= limit {
					all = append(all, line)
					line = textLine{}
				}
				line.add(piece, w)
			}
		}
	}
	if len(line.runs) > 0 {
		all = append(all, line)
	}
	return all
}

// boxes splits runs at their blanks and gives each character a face that has it.
// Any number of blanks is one.
func (t *typesetter) boxes(runs []run) []box {
	var all []box
	space := false
	for _, r := range runs {
		wide := r.apart && len(all) > 0
		for i, word := range strings.Split(markBlanks(r.text), blankMark) {
			space = space || wide || i > 0
			b := t.box(word, r)
			if len(b.runs) == 0 {
				continue
			}
			if n := len(all); n > 0 && !space {
				all[n-1].runs = append(all[n-1].runs, b.runs...)
				all[n-1].width += b.width
				continue
			}
			b.space, b.wide = space, wide
			if b.blank = t.width(" ", r.face, r.size); wide {
				b.blank *= 3
			}
			all = append(all, b)
			space, wide = false, false
		}
	}
	return all
}

// box makes one word of r, which takes it as it looks.
func (t *typesetter) box(word string, r run) box {
	var b box
	for _, part := range t.fonts.showable(word, r.face) {
		part.size, part.ink, part.link = r.size, r.ink, r.link
		b.runs = append(b.runs, part)
		b.width += t.width(part.text, part.face, part.size)
	}
	return b
}

// blankMark stands for any blank where a line may break.
const blankMark = "\n"

// markBlanks marks the blanks of text where a line may break. The thin ones do
// not break and become no-break spaces, which every font has; so does the blank
// between a figure and its unit (SI Brochure, section 5.4.3).
func markBlanks(text string) string {
	text = figureAndUnit.ReplaceAllString(text, "$1\u00a0$2")
	return strings.NewReplacer(" ", blankMark, "\t", blankMark, "\r", blankMark, "\u200b", blankMark,
		"\u2009", "\u00a0", "\u202f", "\u00a0").Replace(text)
}

var figureAndUnit = regexp.MustCompile(`([\d½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]) ((?:k?g|mg|ml|mL|cl|dl|l|L|cm|mm|m|in|oz|lb|°C|°F|min|h|s|tsp|tbsp|cups?|×)\b|×|°[CF])`)

// pieces breaks a run that is wider than a whole line into such as fit; any
// other run comes back as it is. used is what the first line has taken.
func (t *typesetter) pieces(r run, limit, used float64) []run {
	if t.width(r.text, r.face, r.size) <= limit {
		return []run{r}
	}
	var all []run
	room := limit - used
	part := ""
	for _, c := range r.text {
		if part != "" && t.width(part+string(c), r.face, r.size) > room {
			next := r
			next.text = part
			all = append(all, next)
			part, room = "", limit
		}
		part += string(c)
	}
	last := r
	last.text = part
	return append(all, last)
}

// blank goes on by the width of a blank. One of the font's own width is part of
// the text; a wider one is only a gap.
func (l *textLine) blank(width float64, wide bool) {
	if last := &l.runs[len(l.runs)-1]; !wide {
		last.text += " "
	} else {
		l.gap = true
	}
	l.width += width
}

// add puts a run at the line's end, joined with the run before if alike.
func (l *textLine) add(r run, width float64) {
	if n := len(l.runs); n > 0 && !l.gap {
		last := &l.runs[n-1]
		if last.face == r.face && last.size == r.size && last.ink == r.ink && last.link == r.link {
			last.text += r.text
			l.width += width
			return
		}
	}
	l.gap = false
	l.runs = append(l.runs, placedRun{run: r, x: l.width})
	l.width += width
}
