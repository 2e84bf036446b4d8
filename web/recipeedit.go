package web

import (
	"context"
	"fmt"
	"net/http"
	"strconv"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/recipe"
	"benchproof/store"
	"benchproof/views"
)

// draft is a recipe's text as it stands in the editor, kept or not.
type draft struct {
	version   version // the version edited; its ID is 0 for a new recipe
	episodeID int64   // the episode it is written for; 0 if none
	text      string
	note      string
	revision  int
	open      string // the line whose correction was refused
	openForm  *typed // what was typed into that correction
}

// reader reads with the larder, the names learned, and what was corrected in
// the recipe (0 for a new one).
func (s *Server) reader(ctx context.Context, recipeID int64) (recipe.Reader, error) {
	names, err := s.store.LearnedFoods(ctx)
	if err != nil {
		return recipe.Reader{}, err
	}
	reader := recipe.Reader{Larder: s.config.Larder}
	if len(names) > 0 {
		reader.Larder = s.config.Larder.Learn(names)
	}
	if recipeID != 0 {
		reader.Corrections, err = s.store.LineCorrections(ctx, recipeID)
	}
	return reader, err
}

// readDraft makes a version of a text, kept as typed and read.
func (s *Server) readDraft(ctx context.Context, text string, recipeID int64) (store.Version, error) {
	reader, err := s.reader(ctx, recipeID)
	if err != nil {
		return store.Version{}, err
	}
	reading := reader.Read(text)
	return store.Version{RecipeID: recipeID, Text: text, System: reading.MeasuredIn(), Reading: reading}, nil
}

// recipeName is the recipe's own title, or else the title given.
func recipeName(r recipe.Recipe, title string) string {
	if r.Title != "" {
		return r.Title
	}
	return title
}

func (s *Server) newRecipe(w http.ResponseWriter, r *http.Request) error {
	episodeID, _ := strconv.ParseInt(r.URL.Query().Get("episode"), 10, 64)
	return s.drawEditor(w, r, draft{episodeID: episodeID}, nil)
}

func (s *Server) editRecipe(w http.ResponseWriter, r *http.Request) error {
	version, err := s.versionOf(r, r.URL.Query().Get("version"))
	if err != nil {
		return err
	}
	episodeID, _ := strconv.ParseInt(r.URL.Query().Get("episode"), 10, 64)
	return s.drawEditor(w, r, draft{version: version, episodeID: episodeID, text: version.Text, revision: version.Revision}, nil)
}

// readDraftForm reads the editor's form. The recipe and version of the
// address are loaded; both are absent for a new recipe.
func (s *Server) readDraftForm(w http.ResponseWriter, r *http.Request) (draft, *typed, error) {
	form, err := readTyped(w, r)
	if err != nil {
		return draft{}, nil, err
	}
	d := draft{text: form.values.Get("text"), note: form.text("note"), revision: form.revision()}
	d.episodeID = int64(form.whole("episode"))
	if number := form.text("version"); number != "" {
		d.version, err = s.versionOf(r, number)
	}
	return d, form, err
}

// readAgain shows what is understood of the text typed; nothing is kept.
func (s *Server) readAgain(w http.ResponseWriter, r *http.Request) error {
	d, _, err := s.readDraftForm(w, r)
	if err != nil {
		return err
	}
	return s.drawEditor(w, r, d, nil)
}

// addRecipe keeps a new recipe and, if it was written for an episode, uses it
// there.
func (s *Server) addRecipe(w http.ResponseWriter, r *http.Request) error {
	d, _, err := s.readDraftForm(w, r)
	if err != nil {
		return err
	}
	if normal(d.text) == "" {
		return s.drawEditor(w, r, d, fault.Invalidf("text", "Paste or write the recipe first."))
	}
	version, err := s.readDraft(r.Context(), d.text, 0)
	if err != nil {
		return err
	}
	version.Note = d.note
	_, id, err := s.store.AddRecipe(r.Context(), recipeName(version.Reading, "A recipe without a name"), version)
	if err != nil {
		return err
	}
	return s.afterSave(w, r, d, id)
}

// saveVersion saves into the version edited.
func (s *Server) saveVersion(w http.ResponseWriter, r *http.Request) error {
	d, _, err := s.readDraftForm(w, r)
	if err != nil {
		return err
	}
	if normal(d.text) == "" {
		return s.drawEditor(w, r, d, fault.Invalidf("text", "There is nothing left of the recipe. To remove it, delete the recipe itself."))
	}
	version, err := s.readDraft(r.Context(), d.text, d.version.RecipeID)
	if err != nil {
		return err
	}
	version.ID, version.Note, version.Revision = d.version.ID, d.note, d.revision
	if d.note == "" {
		version.Note = d.version.Note
	}
	err = s.store.SaveVersion(r.Context(), version)
	if fault.KindOf(err) == fault.Conflict && err != nil {
		return s.lateDraft(w, r, d, err)
	}
	if err != nil {
		return err
	}
	return s.afterSave(w, r, d, d.version.ID)
}

// lateDraft answers a save into a version that was tried or saved in between.
func (s *Server) lateDraft(w http.ResponseWriter, r *http.Request, d draft, err error) error {
	saved, loadErr := s.loadVersion(r.Context(), d.version.ID)
	if loadErr != nil {
		return loadErr
	}
	if saved.IsTried {
		return s.drawEditor(w, r, d, fault.Invalidf("text", "%s", fault.Say(err)))
	}
	return s.drawConflict(w, r, conflict{
		what: fmt.Sprintf("“%s”, version %d", saved.Name, saved.Number), action: versionPath(saved.Version), back: editPath(saved.Version),
		revision: saved.Revision,
		fields: []views.Field{
			{Name: "text", Label: "Recipe", Kind: views.FieldArea, Rows: 16},
			{Name: "note", Label: "What changed"},
			{Name: "version", Kind: views.FieldHidden},
		},
		mine:  values{"text": d.text, "note": d.note, "version": strconv.Itoa(saved.Number)}.get,
		saved: values{"text": saved.Text, "note": saved.Note, "version": strconv.Itoa(saved.Number)}.get,
	})
}

// addVersion saves the text as the recipe's next version.
func (s *Server) addVersion(w http.ResponseWriter, r *http.Request) error {
	d, _, err := s.readDraftForm(w, r)
	if err != nil {
		return err
	}
	if normal(d.text) == "" {
		return s.drawEditor(w, r, d, fault.Invalidf("text", "A version needs a text."))
	}
	id, err := pathID(r, "recipe")
	if err != nil {
		return err
	}
	version, err := s.readDraft(r.Context(), d.text, id)
	if err != nil {
		return err
	}
	version.Note = d.note
	added, err := s.store.AddVersion(r.Context(), version)
	if err != nil {
		return err
	}
	return s.afterSave(w, r, d, added)
}

// afterSave returns to where the recipe was opened from; an episode it was
// edited for uses the version saved.
func (s *Server) afterSave(w http.ResponseWriter, r *http.Request, d draft, versionID int64) error {
	v, err := s.loadVersion(r.Context(), versionID)
	if err != nil {
		return err
	}
	s.flash(r, fmt.Sprintf("Version %d is saved.", v.Number), "")
	if err := s.recheckVersion(r.Context(), versionID); err != nil {
		return err
	}
	if d.episodeID == 0 {
		return seeOther(w, r, versionPath(v.Version))
	}
	e, err := s.store.Episode(r.Context(), d.episodeID)
	if err != nil {
		return err
	}
	if e.VersionID != versionID {
		if err := s.store.UseVersion(r.Context(), e.ID, e.Revision, versionID, e.Scale); err != nil {
			return err
		}
		if err := s.Recheck(r.Context(), e.ID); err != nil {
			return err
		}
	}
	return seeOther(w, r, episodePath(e.ID)+"/recipe")
}
