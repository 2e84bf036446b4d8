package web

import (
	"fmt"
	"net/http"
	"strconv"

	"benchproof/kitchen/recipe"
	"benchproof/views"
)

// showChanges compares two versions of a recipe line by line.
func (s *Server) showChanges(w http.ResponseWriter, r *http.Request) error {
	id, err := pathID(r, "recipe")
	if err != nil {
		return err
	}
	from, to := r.URL.Query().Get("from"), r.URL.Query().Get("to")
	newer, err := s.versionOf(r, to)
	if err != nil {
		return err
	}
	if from == "" {
		from = strconv.Itoa(max(1, newer.Number-1))
	}
	older, err := s.versionOf(r, from)
	if err != nil {
		return err
	}
	page, err := s.page(r, newer.Name+": what changed", views.SectionRecipes)
	if err != nil {
		return err
	}
	versions, err := s.store.Versions(r.Context(), id)
	if err != nil {
		return err
	}
	view := newCompare(recipe.Changes(older.Reading, newer.Reading))
	view.Page, view.Name, view.Note = page, newer.Name, newer.Note
	view.Path, view.Action = recipePath(id), recipePath(id)+"/changes"
	view.From, view.To = strconv.Itoa(older.Number), strconv.Itoa(newer.Number)
	for _, v := range versions {
		view.Versions = append(view.Versions, views.Option{Value: strconv.Itoa(v.Number), Label: fmt.Sprintf("version %d", v.Number)})
	}
	return s.draw(w, r, http.StatusOK, views.Compare(view))
}
