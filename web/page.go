package web

import (
	"net/http"

	"benchproof/kitchen/fault"
	"benchproof/views"
)

// page makes the frame around a signed-in person's page and takes the flash
// left for it.
func (s *Server) page(r *http.Request, title string, section views.Section) (views.Page, error) {
	show, err := s.store.Show(r.Context())
	if err != nil {
		return views.Page{}, err
	}
	return s.pageOf(r, show.Name, title, section), nil
}

func (s *Server) pageOf(r *http.Request, show, title string, section views.Section) views.Page {
	return views.Page{
		Title: title, Show: show, Person: s.person(r), SignedIn: !s.config.OpenDoor, Section: section,
		Flash: views.Flash{
			Text:       s.sessions.PopString(r.Context(), sessionFlash),
			UndoAction: s.sessions.PopString(r.Context(), sessionUndo),
		},
	}
}

// person is who is signed in, as the head names them.
func (s *Server) person(r *http.Request) string {
	if s.config.OpenDoor {
		return "demo"
	}
	return s.sessions.GetString(r.Context(), sessionName)
}

// sheetPage is page for a sheet of an episode.
func (s *Server) sheetPage(r *http.Request, d *desk, sheet views.Sheet) (views.Page, error) {
	return s.pageOf(r, d.show.Name, d.episode.Title+": "+sheet.Name(), views.SectionSeason), nil
}

// redrawSheet draws a sheet again with a refused form in it.
func (s *Server) redrawSheet(w http.ResponseWriter, r *http.Request, d *desk, sheet views.Sheet, form views.Form) error {
	const status = http.StatusUnprocessableEntity
	switch sheet {
	case views.SheetTrials:
		return s.drawTrials(w, r, d, status, form)
	case views.SheetShop:
		return s.drawShop(w, r, d, status, form)
	case views.SheetScript:
		return s.drawScript(w, r, d, status, form)
	case views.SheetShots:
		return s.drawShots(w, r, d, status, form)
	case views.SheetShootDay:
		return s.drawShootDay(w, r, d, status, shootForms{moment: &form})
	case views.SheetRelease:
		return s.drawRelease(w, r, d, status, releaseForms{correction: form})
	}
	return fault.NotFoundf("There is no such sheet.")
}

// drawError draws the page for a refusal or a failure.
func (s *Server) drawError(w http.ResponseWriter, r *http.Request, status int, say, reference string) error {
	page := views.Page{Title: http.StatusText(status)}
	if s.isSignedIn(r) {
		if full, err := s.page(r, "", views.SectionNone); err == nil {
			page = full
		}
	}
	back := views.Link{Text: "Back to the season", Path: "/"}
	if status == http.StatusNotFound {
		page.Title = "Not found"
		return s.draw(w, r, status, views.NotFound(views.NotFoundPage{Page: page, Say: say, Back: back}))
	}
	page.Title = "That did not work"
	return s.draw(w, r, status, views.Error(views.ErrorPage{
		Page: page, Status: status, Heading: page.Title, Say: []string{say}, Reference: reference, Back: back,
	}))
}
