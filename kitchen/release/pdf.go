package release

import (
	"bytes"
	"fmt"
	"strconv"
	"strings"
	"time"

	"codeberg.org/go-pdf/fpdf"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/release/typeset"
)

// CardPDF draws the card on the paper as a PDF with the fonts embedded. It
// flows over as many pages as it needs, numbered when there are several. The
// same card, paper and fonts give the same bytes. Characters that none of the
// fonts has are written without their marks, or as "?"; see Fonts.Missing. The
// error is fault.Invalid for a paper not in Papers, Internal for a broken font.
func CardPDF(card Card, paper Paper, fonts Fonts) ([]byte, error) {
	f, ok := formats[paper]
	if !ok {
		return nil, fault.Invalidf("paper", "There is no card of size “%s”; choose A4, Letter, A5 or 4x6.", paper)
	}
	set, err := fonts.set()
	if err != nil {
		return nil, err
	}
	press := newPress(card, f, set)
	pages := press.fit()
	for i, page := range pages {
		press.page(page, i+1, len(pages))
	}
	var out bytes.Buffer
	if err := press.pdf.Output(&out); err != nil {
		return nil, fmt.Errorf("write card: %w", err)
	}
	return out.Bytes(), nil
}

// press draws rows on the pages of one file.
type press struct {
	format
	pdf  *fpdf.Fpdf
	set  *typeset.Setter
	card Card
}

func newPress(card Card, f format, fonts *typeset.Fonts) *press {
	pdf := fpdf.NewCustom(&fpdf.InitType{UnitStr: "pt", Size: fpdf.SizeType{Wd: f.width, Ht: f.height}})
	pdf.SetAutoPageBreak(false, 0)
	pdf.SetMargins(0, 0, 0)
	pdf.SetCatalogSort(true)
	made := card.MadeAt.UTC()
	if made.IsZero() {
		made = time.Unix(0, 0).UTC()
	}
	pdf.SetCreationDate(made)
	pdf.SetModificationDate(made)
	pdf.SetTitle(card.Title, true)
	pdf.SetAuthor(card.Show, true)
	pdf.SetCreator("Benchproof", true)
	if card.Language != "" {
		pdf.SetLang(card.Language)
	}
	for _, name := range faces {
		pdf.AddUTF8FontFromBytes(string(name), "", fonts.File(name))
	}
	p := &press{format: f, pdf: pdf, card: card}
	p.set = &typeset.Setter{Fonts: fonts, Width: widths(pdf)}
	return p
}

// widths measures text. A width grows with the size, so that each text is
// measured once, however many sizes are tried.
func widths(pdf *fpdf.Fpdf) func(string, typeset.Face, float64) float64 {
	type key struct {
		text string
		face typeset.Face
	}
	const unit = 100 // points
	known := map[key]float64{}
	return func(text string, f typeset.Face, size float64) float64 {
		k := key{text, f}
		w, ok := known[k]
		if !ok {
			pdf.SetFont(string(f), "", unit)
			w = pdf.GetStringWidth(text)
			known[k] = w
		}
		return w * size / unit
	}
}

// shrinkings are the sizes of type to try: a card a few lines too long for its
// pages is set a little smaller.
var shrinkings = []float64{1, .97, .94, .91, .88}

// fit lays the card out in the largest type that needs the fewest pages. A
// small card of two pages has its ingredients on the front and the method on
// the back, where that fits.
func (p *press) fit() [][]placedRow {
	var best [][]placedRow
	turnsOver := false
	for _, by := range shrinkings {
		f := p.format
		f.size, f.title = f.size*by, f.title*by
		rows := layOut(p.card, f, p.set)
		if pages := paginate(rows, p.textHeight(), false); best == nil || len(pages) < len(best) {
			best, turnsOver = pages, false
		}
		if len(best) != 2 || !p.twoSided || turnsOver {
			continue
		}
		if pages := paginate(rows, p.textHeight(), true); len(pages) == 2 {
			best, turnsOver = pages, true
		}
	}
	return best
}

// footHeight is what the foot takes of a page's text.
func (p *press) footHeight() float64 { return p.size * 2.4 }

func (p *press) textHeight() float64 { return p.height - 2*p.margin - p.footHeight() }

func (p *press) page(rows []placedRow, number, of int) {
	p.pdf.AddPage()
	rule := p.margin + p.gutter
	p.pdf.SetLineWidth(.6)
	p.pdf.SetDrawColor(hair[0], hair[1], hair[2])
	p.pdf.Line(rule, p.margin, rule, p.height-p.margin)
	for _, r := range rows {
		p.row(r.row, p.margin+r.y)
	}
	p.row(p.foot(number, of), p.height-p.margin-p.size*1.2)
}

// foot is the last row of a page: which page it is, and whose.
func (p *press) foot(number, of int) row {
	size := p.size * .78
	r := row{leading: size * 1.3, tight: size * 1.3, ascent: size}
	if of > 1 {
		r.measure = p.set.Lines([]typeset.Run{{Text: strconv.Itoa(number) + " of " + strconv.Itoa(of), Face: figures, Size: size, Ink: soft}}, p.gutter-p.gap)
	}
	whose := p.card.Show
	if number > 1 {
		whose = p.card.Title
	}
	name := typeset.Run{Text: whose, Face: words, Size: size, Ink: soft}
	page := typeset.Run{Text: bareAddress(p.card.Address), Face: figures, Size: size * .95, Ink: act, Link: p.card.Address, Apart: true}
	// The address matters more than the name where there is room for one only.
	for _, runs := range [][]typeset.Run{{name, page}, {page}, {name}} {
		r.words = p.set.Lines(runs, p.width-2*p.margin-p.gutter-p.gap)
		if len(r.words) == 1 {
			break
		}
	}
	r.words = r.words[:min(1, len(r.words))]
	return r
}

func (p *press) row(r row, top float64) {
	rule := p.margin + p.gutter
	for i, line := range r.measure {
		p.line(line, rule-p.gap-line.Width, top+r.ascent+float64(i)*r.tight, r.leading)
	}
	for i, line := range r.label {
		p.line(line, rule+p.gap, top+r.ascent+float64(i)*r.leading, r.leading)
	}
	for i, line := range r.words {
		p.line(line, rule+p.gap+r.indent, top+r.ascent+float64(i)*r.leading, r.leading)
	}
}

func (p *press) line(l typeset.Line, left, baseline, leading float64) {
	for _, r := range l.Runs {
		p.pdf.SetFont(string(r.Face), "", r.Size)
		p.pdf.SetTextColor(r.Ink[0], r.Ink[1], r.Ink[2])
		p.pdf.Text(left+r.X, baseline, r.Text)
		if r.Link != "" {
			p.pdf.LinkString(left+r.X, baseline-r.Size, p.set.Width(r.Text, r.Face, r.Size), leading, r.Link)
		}
	}
}

// bareAddress is a web address as printed: without the scheme.
func bareAddress(address string) string {
	for _, scheme := range []string{"https://", "http://"} {
		if rest, found := strings.CutPrefix(address, scheme); found {
			return strings.TrimSuffix(rest, "/")
		}
	}
	return address
}
