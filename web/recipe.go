package web

import (
	"fmt"
	"net/http"
	"strconv"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/store"
	"benchproof/views"
)

func recipePath(id int64) string { return "/recipes/" + strconv.FormatInt(id, 10) }

func versionPath(v store.Version) string {
	return fmt.Sprintf("%s/versions/%d", recipePath(v.RecipeID), v.Number)
}

func editPath(v store.Version) string {
	return fmt.Sprintf("%s/edit?version=%d", recipePath(v.RecipeID), v.Number)
}

func (s *Server) showRecipes(w http.ResponseWriter, r *http.Request) error {
	page, err := s.page(r, "Recipes", views.SectionRecipes)
	if err != nil {
		return err
	}
	recipes, err := s.store.Recipes(r.Context())
	if err != nil {
		return err
	}
	used, err := s.recipeUses(r)
	if err != nil {
		return err
	}
	view := views.RecipesPage{Page: page, NewPath: "/recipes/new"}
	for _, each := range recipes {
		row := views.RecipeRow{
			Version: fmt.Sprintf("v%d", each.Versions), Name: each.Name, Path: recipePath(each.ID),
			Small: joined(" · ", "changed "+s.day(each.LatestAt), each.LatestNote), UsedIn: used[each.ID],
		}
		view.Rows = append(view.Rows, row)
	}
	if len(view.Rows) == 0 {
		view.Empty = "No recipes yet. Paste one with a new episode, or here."
	}
	return s.draw(w, r, http.StatusOK, views.Recipes(view))
}

// recipeUses lists the episodes that use each recipe.
func (s *Server) recipeUses(r *http.Request) (map[int64][]views.Link, error) {
	episodes, err := s.store.Episodes(r.Context())
	if err != nil {
		return nil, err
	}
	used := map[int64][]views.Link{}
	for _, e := range episodes {
		if e.RecipeID != 0 {
			used[e.RecipeID] = append(used[e.RecipeID], views.Link{Text: e.Title, Path: episodePath(e.ID) + "/recipe"})
		}
	}
	return used, nil
}

func (s *Server) showRecipe(w http.ResponseWriter, r *http.Request) error {
	id, err := pathID(r, "recipe")
	if err != nil {
		return err
	}
	recipe, err := s.store.Recipe(r.Context(), id)
	if err != nil {
		return err
	}
	v, err := s.loadVersion(r.Context(), recipe.LatestID)
	if err != nil {
		return err
	}
	return s.drawVersion(w, r, v)
}

func (s *Server) drawVersion(w http.ResponseWriter, r *http.Request, v version) error {
	page, err := s.page(r, v.Name, views.SectionRecipes)
	if err != nil {
		return err
	}
	show, err := s.store.Show(r.Context())
	if err != nil {
		return err
	}
	path, style := versionPath(v.Version), styleOf(r)
	writer := s.writer(show, v.Reading, style)
	want := wantedScale(r.URL.Query(), v.Reading, measure.Whole(1), writer)
	scaled := recipe.Scale(v.Reading, want.by, writer)
	body := newBody(scaled)
	addBench(&body, scaled.Recipe, writer, show)
	body.Name, body.Version = v.Name, fmt.Sprintf("version %d", v.Number)
	body.Scaler = newScaler(path, v.Reading, want, style)
	body.Measures = measureChoices(path, want, style)
	body.Links = []views.Link{{Text: "Edit the recipe", Path: editPath(v.Version)}}
	rows, err := s.versionRows(r, v.Version)
	if err != nil {
		return err
	}
	for _, row := range rows {
		body.Versions = append(body.Versions, row.VersionRow)
	}
	view := views.VersionPage{Page: page, Recipe: body, Note: v.Note, DeleteAction: recipePath(v.RecipeID) + "/delete"}
	if len(rows) > 0 && !rows[0].Current {
		view.Older, view.NewerPath = true, recipePath(v.RecipeID)
	}
	return s.draw(w, r, formStatus(want.err()), views.Version(view))
}

func (s *Server) deleteRecipe(w http.ResponseWriter, r *http.Request) error {
	id, err := pathID(r, "recipe")
	if err != nil {
		return err
	}
	if err := s.store.DeleteRecipe(r.Context(), id); err != nil {
		return err
	}
	s.flash(r, "The recipe is deleted.", undoPath("recipe", id))
	return seeOther(w, r, "/recipes")
}
