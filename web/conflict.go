package web

import (
	"net/http"

	"benchproof/views"
)

// conflict is a save that came too late: what was typed and what is saved.
type conflict struct {
	what         string // "this segment"
	action, back string // where the form saves to, where giving way leads
	revision     int    // of what is saved now
	fields       []views.Field
	mine, saved  func(name string) string
}

// drawConflict shows both texts; saving the page puts mine over what is saved.
func (s *Server) drawConflict(w http.ResponseWriter, r *http.Request, c conflict) error {
	page, err := s.page(r, "Saved in between", views.SectionNone)
	if err != nil {
		return err
	}
	view := views.ConflictPage{Page: page, What: c.what, Action: c.action, Revision: c.revision, Back: c.back}
	for _, field := range filled(c.fields, c.mine, nil) {
		saved := c.saved(field.Name)
		view.Fields = append(view.Fields, views.ConflictField{
			Field: field, Saved: asShown(field, saved), Differs: normal(saved) != normal(field.Value),
		})
	}
	return s.draw(w, r, http.StatusConflict, views.Conflict(view))
}

// asShown words a saved value as its field shows it.
func asShown(field views.Field, value string) string {
	for _, option := range field.Options {
		if option.Value == value {
			return option.Label
		}
	}
	return value
}
