package release

import (
	"strconv"

	"benchproof/kitchen/release/typeset"
)

// row is one row of the card: a measure left of the rule, words right of it.
type row struct {
	measure  []typeset.Line // right-aligned against the rule
	label    []typeset.Line // a step's number, beside the first line of words
	words    []typeset.Line
	indent   float64 // of the words, past the label
	before   float64 // blank above, dropped at the head of a page
	leading  float64 // from one line of words to the next
	tight    float64 // from one line of the measure to the next
	ascent   float64 // from the row's top to its first baseline
	withNext bool    // never the last on a page: a heading
	overleaf bool    // where the back of a card may begin: the method
}

func (r row) height() float64 {
	tall := float64(len(r.words)) * r.leading
	if n := len(r.measure); n > 0 {
		tall = max(tall, r.leading+float64(n-1)*r.tight)
	}
	return tall
}

// from gives the words without their first n lines, to go on with on a new page.
func (r row) from(n int) row {
	r.measure, r.label, r.words, r.before = nil, nil, r.words[min(n, len(r.words)):], 0
	return r
}

// upTo gives the row's first n lines of words, with all of its measure.
func (r row) upTo(n int) row {
	r.words = r.words[:min(n, len(r.words))]
	return r
}

// The inks of the card.
var (
	black = typeset.Ink{0x21, 0x1c, 0x17}
	soft  = typeset.Ink{0x5a, 0x52, 0x4a}
	hair  = typeset.Ink{0xc9, 0xbf, 0xaf}
	act   = typeset.Ink{0x7d, 0x1f, 0x4b} // beetroot
)

// sheet words a card as rows for one format.
type sheet struct {
	format
	set  *typeset.Setter
	rows []row
}

func layOut(card Card, f format, set *typeset.Setter) []row {
	s := &sheet{format: f, set: set}
	s.head(card)
	for _, c := range card.Components {
		s.ingredients(c)
	}
	s.method(card.Components)
	s.small("Notes", card.Notes, words)
	if card.Allergens != "" {
		s.small("Allergens", []string{card.Allergens}, words)
	}
	s.small("Take care", card.Cautions, words)
	s.small("Credits", card.Credits, wordsItalic)
	return s.rows
}

// wordsWidth is the room for words right of the rule.
func (s *sheet) wordsWidth() float64 {
	return min(s.width-2*s.margin-s.gutter-s.gap, s.maxMeasure)
}

// lines sets one text right of the rule.
func (s *sheet) lines(text string, f typeset.Face, size float64, ink typeset.Ink) []typeset.Line {
	return s.set.Lines([]typeset.Run{{Text: text, Face: f, Size: size, Ink: ink}}, s.wordsWidth())
}

// beside sets one text left of the rule.
func (s *sheet) beside(text string, f typeset.Face, size float64, ink typeset.Ink) []typeset.Line {
	return s.set.Lines([]typeset.Run{{Text: text, Face: f, Size: size, Ink: ink}}, s.gutter-s.gap)
}

func (s *sheet) head(card Card) {
	s.add(row{
		measure: s.beside(card.Makes, figures, s.size*.9, soft),
		words:   s.lines(card.Title, wordsStrong, s.title, black),
		leading: s.title * 1.14, ascent: s.title * .92, tight: s.size * 1.2,
	})
}

func (s *sheet) ingredients(c CardComponent) {
	if len(c.Lines) == 0 {
		return
	}
	s.heading(c.Name)
	for i, line := range c.Lines {
		runs := []typeset.Run{{Text: line.Words, Face: words, Size: s.size, Ink: black}}
		if line.Small != "" {
			runs = append(runs, typeset.Run{Text: line.Small, Face: figures, Size: s.size * .78, Ink: soft, Apart: true})
		}
		r := s.body(line.Measure, "", runs, 0)
		if i == 0 && c.Name == "" {
			r.before = s.size * 1.2
		}
		s.add(r)
	}
}

func (s *sheet) method(components []CardComponent) {
	withSteps := 0
	for _, c := range components {
		if len(c.Steps) > 0 {
			withSteps++
		}
	}
	if withSteps > 0 {
		s.heading("Method")
		s.rows[len(s.rows)-1].overleaf = true
	}
	number := 0
	for _, c := range components {
		if withSteps > 1 && len(c.Steps) > 0 {
			s.part(c.Name, number == 0)
		}
		for _, step := range c.Steps {
			number++
			s.step(number, step)
		}
	}
}

func (s *sheet) step(number int, step CardStep) {
	figure := typeset.Run{Text: strconv.Itoa(number), Face: figuresBold, Size: s.size * .82, Ink: act}
	indent := s.set.Width("10", figure.Face, figure.Size) + s.size*.6
	r := s.body(step.Minutes, step.Station, []typeset.Run{{Text: step.Words, Face: words, Size: s.size, Ink: black}}, indent)
	r.label = s.set.Lines([]typeset.Run{figure}, s.wordsWidth())
	r.before = s.size * .3
	s.add(r)
}

// part names the component that the steps below it belong to.
func (s *sheet) part(name string, first bool) {
	if name == "" {
		return
	}
	r := row{
		words:  s.lines(name, wordsItalic, s.size, soft),
		before: s.size * .8, leading: s.size * 1.4, ascent: s.size * 1.06, withNext: true,
	}
	if first {
		r.before = 0
	}
	s.add(r)
}

// small adds a block in small type, its heading in the gutter.
func (s *sheet) small(heading string, lines []string, f typeset.Face) {
	size := s.size * .84
	for i, line := range lines {
		r := row{
			words:   s.lines(line, f, size, soft),
			leading: size * 1.38, ascent: size * 1.05, before: size * .3, tight: size * 1.2,
		}
		if i == 0 {
			r.before = s.size * 1.3
			r.measure = s.beside(heading, figures, size*.92, soft)
		}
		s.add(r)
	}
}

func (s *sheet) heading(name string) {
	if name == "" {
		return
	}
	size := s.size * 1.2
	s.add(row{
		words:   s.lines(name, wordsStrong, size, black),
		before:  s.size * 1.25,
		leading: s.size * 1.6, ascent: s.size * 1.12, withNext: true,
	})
}

// body is a row of the card's main text, with a second, small measure below.
func (s *sheet) body(measure, below string, runs []typeset.Run, indent float64) row {
	r := row{
		measure: s.beside(measure, figures, s.size*.95, black),
		words:   s.set.Lines(runs, s.wordsWidth()-indent),
		indent:  indent,
		leading: s.size * 1.42, ascent: s.size * 1.06, tight: s.size * 1.12,
	}
	r.measure = append(r.measure, s.beside(below, figures, s.size*.76, soft)...)
	return r
}

func (s *sheet) add(r row) {
	if r.height() > 0 {
		s.rows = append(s.rows, r)
	}
}

// placedRow is a row with its distance from the head of the page's text.
type placedRow struct {
	row
	y float64
}

// paginate deals the rows out on pages whose text is height high. A row is
// moved whole to the next page if it does not fit, with the headings above it;
// a row higher than a page is split between its lines. With turnsOver the method
// begins a page.
func paginate(rows []row, height float64, turnsOver bool) [][]placedRow {
	var (
		pages [][]placedRow
		page  []placedRow
		y     float64
	)
	turn := func() {
		if len(page) > 0 {
			pages = append(pages, page)
		}
		page, y = nil, 0
	}
	for i := 0; i < len(rows); i++ {
		r := rows[i]
		if len(page) > 0 && (r.overleaf && turnsOver || y+r.before+needed(rows[i:], height) > height) {
			turn()
		}
		if len(page) == 0 {
			r.before = 0
		}
		for r.height() > height-y && len(r.words) > 1 {
			fit := max(int((height-y)/r.leading), 1)
			page = append(page, placedRow{r.upTo(fit), y})
			r = r.from(fit)
			turn()
		}
		y += r.before
		page = append(page, placedRow{r, y})
		y += r.height()
	}
	turn()
	return pages
}

// needed is the room that the first row must find on a page: its own height,
// and for a heading that of what it heads; no more than a page.
func needed(rows []row, height float64) float64 {
	sum := rows[0].height()
	for i := 0; rows[i].withNext && i+1 < len(rows); i++ {
		sum += rows[i+1].before + rows[i+1].height()
	}
	return min(sum, height)
}
