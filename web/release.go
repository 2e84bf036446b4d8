package web

import (
	"fmt"
	"net/http"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/release"
	"benchproof/views"
)

func releaseFields() []views.Field {
	return []views.Field{
		{Name: "title", Label: "Title", Limit: release.TitleLimit},
		{Name: "opening", Label: "Opening", Kind: views.FieldArea, Hint: "The first lines of the description; most platforms show about 150 characters before “more”."},
		{Name: "equipment", Label: "Equipment", Kind: views.FieldArea, Hint: "One a line."},
		{Name: "credits", Label: "Credits", Kind: views.FieldArea, Hint: "One a line. Who inspired the episode, and what the recipe credits, stand there already."},
		{Name: "disclosure", Label: "Disclosure", Kind: views.FieldArea, Hint: "For this episode, beside the show's own. Free goods, money and family ties must be said clearly, in the video too."},
		{Name: "video", Label: "Video's address", Kind: views.FieldURL},
		{Name: "page", Label: "Recipe page", Kind: views.FieldURL, Hint: "The viewers' address that the description gives. A new share link fills it in."},
	}
}

func releaseValues(v episode.Release) values {
	return values{
		"title": v.Title, "opening": v.Opening, "equipment": v.Equipment,
		"credits": v.Credits, "disclosure": v.Disclosure, "video": v.VideoURL, "page": v.PageURL,
	}
}

func readRelease(f *typed, v *episode.Release) {
	v.Title, v.Opening = f.text("title"), f.text("opening")
	v.Equipment, v.Credits = f.text("equipment"), f.text("credits")
	v.Disclosure, v.VideoURL, v.PageURL = f.text("disclosure"), f.address("video"), f.address("page")
}

// releaseForms are the two forms of the Release sheet; an empty one is drawn
// from what is saved.
type releaseForms struct{ release, correction views.Form }

func releaseForm(d *desk, value func(string) string, revision int, err error) views.Form {
	fields := filled(releaseFields(), value, err)
	return views.Form{ID: "release", Action: d.path(views.SheetRelease), Revision: revision, Fields: fields, Submit: "Save release", Problem: formError(err, fields), Guard: true}
}

func (s *Server) showRelease(w http.ResponseWriter, r *http.Request) error {
	d, err := s.openDesk(r)
	if err != nil {
		return err
	}
	return s.drawRelease(w, r, d, http.StatusOK, releaseForms{})
}

func (s *Server) drawRelease(w http.ResponseWriter, r *http.Request, d *desk, status int, forms releaseForms) error {
	page, err := s.sheetPage(r, d, views.SheetRelease)
	if err != nil {
		return err
	}
	saved, err := s.store.Release(r.Context(), d.episode.ID)
	if err != nil {
		return err
	}
	if forms.release.Action == "" {
		forms.release = releaseForm(d, releaseValues(saved).get, saved.Revision, nil)
	}
	if forms.correction.Action == "" {
		if forms.correction, err = s.corrections().form(d, r); err != nil {
			return err
		}
	}
	links, err := s.store.ShareLinks(r.Context(), d.episode.ID)
	if err != nil {
		return err
	}
	sheet := newReleaseSheet(d.out)
	sheet.Page, sheet.EpisodeFrame = page, s.frame(d, views.SheetRelease)
	sheet.Form, sheet.CorrectionForm = forms.release, forms.correction
	for _, c := range d.out.Corrections {
		sheet.Corrections = append(sheet.Corrections, airRow(s.corrections(), c))
	}
	facts := s.publishedFacts(d)
	sheet.Cautions, sheet.Allergens = facts.cautionViews(), facts.allergenViews()
	sheet.ShareForm = views.Form{ID: "share", Action: episodePath(d.episode.ID) + "/shares", Submit: "Make a share link"}
	sheet.NewShare = s.sessions.PopString(r.Context(), sessionShare)
	sheet.PageURL = d.out.PageURL
	for _, link := range links {
		row := views.ShareRow{Made: s.day(link.CreatedAt), Label: "live"}
		if link.RevokedAt.IsZero() {
			row.RevokeAction = fmt.Sprintf("%s/shares/%d/revoke", episodePath(d.episode.ID), link.ID)
		} else {
			row.Label = "withdrawn " + s.day(link.RevokedAt)
		}
		sheet.Shares = append(sheet.Shares, row)
	}
	if d.hasRecipe() {
		sheet.Cards = cardLinks(episodePath(d.episode.ID))
	}
	return s.draw(w, r, status, views.Release(sheet))
}

func cardLinks(base string) []views.CardLink {
	var links []views.CardLink
	for _, paper := range release.Papers {
		link := views.CardLink{Size: paper.Name(), PDFPath: base + "/card.pdf?paper=" + string(paper)}
		for _, printed := range printedPapers {
			if printed == paper {
				link.Path = base + "/card?paper=" + string(paper)
			}
		}
		links = append(links, link)
	}
	return links
}

func (s *Server) saveRelease(w http.ResponseWriter, r *http.Request) error {
	d, form, err := s.deskAndForm(w, r)
	if err != nil {
		return err
	}
	saved, err := s.store.Release(r.Context(), d.episode.ID)
	if err != nil {
		return err
	}
	edited := saved
	readRelease(form, &edited)
	edited.Revision = form.revision()
	if err = form.err(); err == nil {
		err = s.store.SaveRelease(r.Context(), edited)
	}
	return s.settle(w, r, err, outcome{
		to: d.path(views.SheetRelease), say: "The release is saved.",
		redraw: func(err error) error {
			return s.drawRelease(w, r, d, http.StatusUnprocessableEntity, releaseForms{release: releaseForm(d, form.values.Get, edited.Revision, err)})
		},
		late: conflict{
			what: "the release of “" + d.episode.Title + "”", action: d.path(views.SheetRelease), back: d.path(views.SheetRelease),
			revision: saved.Revision, fields: releaseFields(), mine: form.values.Get, saved: releaseValues(saved).get,
		},
	})
}
