package web

import (
	"context"
	"net/http"
	"strconv"

	"github.com/go-chi/chi/v5"

	"benchproof/kitchen/fault"
	"benchproof/store"
)

// version is a recipe version with the name of its recipe. Its ID is 0 where
// there is none.
type version struct {
	store.Version
	Name string
}

func (s *Server) loadVersion(ctx context.Context, id int64) (version, error) {
	v, err := s.store.Version(ctx, id)
	if err != nil {
		return version{}, err
	}
	v.Reading.System = v.System // as it was read when it was saved
	recipe, err := s.store.Recipe(ctx, v.RecipeID)
	return version{v, recipe.Name}, err
}

// versionOf loads the version of the address's recipe that has this number,
// the latest for "".
func (s *Server) versionOf(r *http.Request, number string) (version, error) {
	id, err := pathID(r, "recipe")
	if err != nil {
		return version{}, err
	}
	if number == "" {
		recipe, err := s.store.Recipe(r.Context(), id)
		if err != nil {
			return version{}, err
		}
		return s.loadVersion(r.Context(), recipe.LatestID)
	}
	versions, err := s.store.Versions(r.Context(), id)
	if err != nil {
		return version{}, err
	}
	for _, v := range versions {
		if strconv.Itoa(v.Number) == number {
			return s.loadVersion(r.Context(), v.ID)
		}
	}
	return version{}, fault.NotFoundf("This recipe has no version “%s”.", number)
}

func (s *Server) showVersion(w http.ResponseWriter, r *http.Request) error {
	v, err := s.versionOf(r, chi.URLParam(r, "version"))
	if err != nil {
		return err
	}
	return s.drawVersion(w, r, v)
}
