package web

import (
	"fmt"
	"net/http"
	"net/url"
	"strings"

	"github.com/go-chi/chi/v5"

	"benchproof/store"
	"benchproof/views"
)

// keepDeleted is how long a deleted thing can be had back.
const KeepDeletedDays = 30

func undoPath(kind string, id int64) string { return fmt.Sprintf("/deleted/%s/%d/restore", kind, id) }

func (s *Server) showDeleted(w http.ResponseWriter, r *http.Request) error {
	page, err := s.page(r, "Recently deleted", views.SectionDeleted)
	if err != nil {
		return err
	}
	deleted, err := s.store.Deleted(r.Context())
	if err != nil {
		return err
	}
	view := views.DeletedPage{Page: page, Keep: fmt.Sprintf("Deleted things are kept for %d days.", KeepDeletedDays)}
	for _, d := range deleted {
		view.Rows = append(view.Rows, views.DeletedRow{
			When: s.day(d.At), What: string(d.Kind), Name: d.Label, RestoreAction: undoPath(string(d.Kind), d.ID),
		})
	}
	return s.draw(w, r, http.StatusOK, views.Deleted(view))
}

// restore brings a deleted thing back and returns to where Undo was pressed.
func (s *Server) restore(w http.ResponseWriter, r *http.Request) error {
	id, err := pathID(r, "id")
	if err != nil {
		return err
	}
	if err := s.store.Restore(r.Context(), store.Kind(chi.URLParam(r, "kind")), id); err != nil {
		return err
	}
	s.flash(r, "It is back.", "")
	return seeOther(w, r, s.backPath(r))
}

// backPath is the page of ours the request came from, without its query.
func (s *Server) backPath(r *http.Request) string {
	from, err := url.Parse(r.Referer())
	if err != nil || from.Host != r.Host || !strings.HasPrefix(from.Path, "/") || strings.HasPrefix(from.Path, "//") {
		return "/"
	}
	return from.EscapedPath() // as it was sent: browsers take a bare backslash for a slash
}
