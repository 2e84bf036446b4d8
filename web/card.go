package web

import (
	"net/http"
	"strings"
	"time"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/release"
	"benchproof/static"
	"benchproof/views"
)

// defaultPaper is the card's paper where the address names none.
const defaultPaper = string(release.A4)

// paperOf is the paper the address asks for.
func paperOf(r *http.Request) (release.Paper, error) {
	asked := r.URL.Query().Get("paper")
	if asked == "" {
		asked = defaultPaper
	}
	for _, paper := range release.Papers {
		if string(paper) == asked {
			return paper, nil
		}
	}
	return "", fault.NotFoundf("There is no card of this size. Take a4, letter, a5 or 4x6.")
}

// printedPapers are those that have a print page; the small card is a PDF.
var printedPapers = []release.Paper{release.A4, release.Letter, release.A5}

func (s *Server) showCard(w http.ResponseWriter, r *http.Request) error {
	d, err := s.openDesk(r)
	if err != nil {
		return err
	}
	return s.drawCard(w, r, d, episodePath(d.episode.ID), views.Link{Text: "Back to the recipe", Path: d.path(views.SheetRecipe)})
}

// drawCard draws the print page of the card whose addresses begin with base.
func (s *Server) drawCard(w http.ResponseWriter, r *http.Request, d *desk, base string, back views.Link) error {
	paper, err := paperOf(r)
	if err != nil {
		return err
	}
	body, err := s.cardBody(d)
	if err != nil {
		return err
	}
	facts := s.publishedFacts(d)
	view := views.CardPage{
		Show: d.show.Name, Title: cardTitle(d), Paper: string(paper), PaperName: paper.Name(), Makes: body.Makes,
		Components: body.Components, Notes: body.Notes, Allergens: facts.contains, Cautions: facts.cautionTexts(),
		Credits: facts.credits, PDFPath: base + "/card.pdf?paper=" + string(paper), Back: back,
	}
	for _, p := range printedPapers {
		view.Sizes = append(view.Sizes, views.Choice{Text: p.Name(), Path: base + "/card?paper=" + string(p), Current: p == paper})
	}
	return s.draw(w, r, http.StatusOK, views.Card(view))
}

// cardBody is the recipe at the episode's scale, in the recipe's own measures.
func (s *Server) cardBody(d *desk) (views.RecipeBody, error) {
	if !d.hasRecipe() {
		return views.RecipeBody{}, fault.NotFoundf("There is no recipe in this episode yet, so there is no card.")
	}
	reading := d.version.Reading
	return newBody(recipe.Scale(reading, d.episode.Scale, s.writer(d.show, reading, recipe.AsWritten))), nil
}

// cardTitle is what the card is of: the recipe's own title.
func cardTitle(d *desk) string {
	if d.version.Reading.Title != "" {
		return d.version.Reading.Title
	}
	return d.version.Name
}

func (s *Server) sendCardPDF(w http.ResponseWriter, r *http.Request) error {
	d, err := s.openDesk(r)
	if err != nil {
		return err
	}
	return s.sendPDF(w, r, d)
}

func (s *Server) sendPDF(w http.ResponseWriter, r *http.Request, d *desk) error {
	paper, err := paperOf(r)
	if err != nil {
		return err
	}
	body, err := s.cardBody(d)
	if err != nil {
		return err
	}
	pdf, err := release.CardPDF(s.newCard(d, body), paper, cardFonts())
	if err != nil {
		return err
	}
	h := w.Header()
	h.Set("Content-Type", "application/pdf")
	h.Set("Content-Disposition", `inline; filename="`+fileName(cardTitle(d))+"-"+string(paper)+`.pdf"`)
	return sendBytes(w, r, pdf)
}

// newCard is the card's content, worded.
func (s *Server) newCard(d *desk, body views.RecipeBody) release.Card {
	facts := s.publishedFacts(d)
	card := release.Card{
		Show: d.show.Name, Title: cardTitle(d), Makes: body.Makes, Notes: body.Notes, Allergens: facts.contains,
		Cautions: facts.cautionTexts(), Credits: facts.credits, Language: "en", MadeAt: d.version.CreatedAt.Truncate(time.Second),
	}
	for _, c := range body.Components {
		component := release.CardComponent{Name: c.Name}
		for _, line := range c.Lines {
			component.Lines = append(component.Lines, release.CardLine{Measure: line.Measure, Words: line.Food + line.After, Small: line.Small})
		}
		for _, step := range c.Steps {
			component.Steps = append(component.Steps, release.CardStep{Minutes: step.Minutes, Station: step.Station, Words: runText(step.Words)})
		}
		card.Components = append(card.Components, component)
	}
	return card
}

func runText(runs []views.Run) string {
	var b strings.Builder
	for _, run := range runs {
		b.WriteString(run.Text)
	}
	return b.String()
}

func cardFonts() release.Fonts {
	return release.Fonts{
		Words: static.Font("source-serif-regular"), WordsItalic: static.Font("source-serif-italic"), WordsStrong: static.Font("source-serif-semibold"),
		Figures: static.Font("inter-regular"), FiguresBold: static.Font("inter-semibold"),
	}
}

// fileName makes a plain file name of a title: letters and digits of ASCII.
func fileName(title string) string {
	name := strings.Map(func(c rune) rune {
		switch {
		case c >= 'a' && c <= 'z', c >= '0' && c <= '9':
			return c
		case c >= 'A' && c <= 'Z':
			return c + 'a' - 'A'
		}
		return '-'
	}, title)
	name = strings.Join(strings.FieldsFunc(name, func(c rune) bool { return c == '-' }), "-")
	if name == "" {
		return "card"
	}
	return name
}
