package web

import (
	"fmt"
	"net/http"
	"net/url"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/recipe"
	"benchproof/store"
	"benchproof/views"
)

func (s *Server) showRecipeSheet(w http.ResponseWriter, r *http.Request) error {
	d, err := s.openDesk(r)
	if err != nil {
		return err
	}
	want := s.wantedFor(d, r.URL.Query())
	return s.drawRecipeSheet(w, r, d, want)
}

// wantedFor is the scale asked for of the episode's recipe.
func (s *Server) wantedFor(d *desk, typedValues url.Values) wanted {
	reading := d.version.Reading
	return wantedScale(typedValues, reading, d.episode.Scale, s.writer(d.show, reading, recipe.AsWritten))
}

func (s *Server) drawRecipeSheet(w http.ResponseWriter, r *http.Request, d *desk, want wanted) error {
	page, err := s.sheetPage(r, d, views.SheetRecipe)
	if err != nil {
		return err
	}
	attach, err := s.attachForm(r, d, nil)
	if err != nil {
		return err
	}
	sheet := views.RecipeSheet{
		Page: page, EpisodeFrame: s.frame(d, views.SheetRecipe), Has: d.hasRecipe(), Attach: attach,
		NewPath: fmt.Sprintf("/recipes/new?episode=%d", d.episode.ID),
	}
	if sheet.Has {
		if sheet.Recipe, err = s.episodeBody(r, d, want); err != nil {
			return err
		}
	}
	return s.draw(w, r, formStatus(want.err()), views.Recipe(sheet))
}

// episodeBody is the recipe at the scale wanted, with all that belongs to it
// on an episode's sheet.
func (s *Server) episodeBody(r *http.Request, d *desk, want wanted) (views.RecipeBody, error) {
	path, style := d.path(views.SheetRecipe), styleOf(r)
	writer := s.writer(d.show, d.version.Reading, style)
	scaled := recipe.Scale(d.version.Reading, want.by, writer)
	body := newBody(scaled)
	addBench(&body, scaled.Recipe, writer, d.show)
	body.Name, body.Version = d.version.Name, fmt.Sprintf("version %d", d.version.Number)
	body.Scaler = newScaler(path, d.version.Reading, want, style)
	body.Scaler.KeepAction, body.Scaler.Revision = episodePath(d.episode.ID)+"/scale", d.episode.Revision
	if want.asked && !want.by.Equal(d.episode.Scale) {
		body.Scaler.Trying = "tried at this scale, not kept"
	}
	body.Measures = measureChoices(path, want, style)
	trials, err := s.store.TrialsOfVersion(r.Context(), d.version.ID)
	if err != nil {
		return body, err
	}
	body.Marks = provedMarks(trials)
	if note := lossNote(trials, scaled.Recipe, writer); note != "" {
		body.ScaleNotes = append(body.ScaleNotes, note)
	}
	versions, err := s.versionRows(r, d.version.Version)
	if err != nil {
		return body, err
	}
	for i := range versions {
		if !versions[i].Current {
			versions[i].UseAction = episodePath(d.episode.ID) + "/version?use=" + versions[i].ID
		}
		body.Versions = append(body.Versions, versions[i].VersionRow)
	}
	body.Links = []views.Link{
		{Text: "Edit the recipe", Path: editPath(d.version.Version) + fmt.Sprintf("&episode=%d", d.episode.ID)},
		{Text: "Card to print", Path: episodePath(d.episode.ID) + "/card"},
		{Text: "Card as PDF", Path: episodePath(d.episode.ID) + "/card.pdf?paper=" + defaultPaper},
	}
	return body, nil
}

// provedMarks tells what the bench has said of a version.
func provedMarks(trials []episode.Trial) []views.Mark {
	at, tried := []string{}, len(trials) > 0
	for _, t := range trials {
		if t.Verdict == "proved" {
			at = appendNew(at, "× "+numberText(t.Scale))
		}
	}
	switch {
	case len(at) > 0:
		return []views.Mark{{Kind: views.MarkProved, Text: "proved at " + joined(", ", at...)}}
	case tried:
		return []views.Mark{{Kind: views.MarkLook, Text: "tried, not proved yet"}}
	}
	return []views.Mark{{Kind: views.MarkLook, Text: "never tried"}}
}

// keepScale keeps the scale tried as the episode's.
func (s *Server) keepScale(w http.ResponseWriter, r *http.Request) error {
	d, form, err := s.deskAndForm(w, r)
	if err != nil {
		return err
	}
	want := s.wantedFor(d, form.values)
	if want.err() != nil {
		return s.drawRecipeSheet(w, r, d, want)
	}
	if err = s.store.UseVersion(r.Context(), d.episode.ID, form.revision(), d.version.ID, want.by); err == nil {
		err = s.Recheck(r.Context(), d.episode.ID)
	}
	return s.settle(w, r, err, outcome{
		to: d.path(views.SheetRecipe), say: "The episode is now at × " + numberText(want.by) + ".",
		late: s.lateUse(d, "scale", numberText(want.by), numberText(d.episode.Scale)),
	})
}

// lateUse is the conflict of a change to which recipe is used at what scale.
func (s *Server) lateUse(d *desk, field, mine, saved string) conflict {
	return conflict{
		what: "what “" + d.episode.Title + "” uses", action: episodePath(d.episode.ID) + "/scale", back: d.path(views.SheetRecipe),
		revision: d.episode.Revision, fields: []views.Field{{Name: "factor", Label: field, Kind: views.FieldDecimal}},
		mine: values{"factor": mine}.get, saved: values{"factor": saved}.get,
	}
}

// attachForm offers the recipes that are kept.
func (s *Server) attachForm(r *http.Request, d *desk, err error) (views.Form, error) {
	recipes, listErr := s.store.Recipes(r.Context())
	if listErr != nil || len(recipes) == 0 {
		return views.Form{}, listErr
	}
	field := views.Field{Name: "use", Label: "Recipe", Kind: views.FieldSelect, Error: fieldError(err, "use")}
	for _, each := range recipes {
		field.Options = append(field.Options, views.Option{
			Value: fmt.Sprint(each.LatestID), Label: fmt.Sprintf("%s, version %d", each.Name, each.Versions),
		})
		if each.ID == d.episode.RecipeID {
			field.Value = fmt.Sprint(each.LatestID)
		}
	}
	return views.Form{
		ID: "attach", Title: "Use another recipe", Action: episodePath(d.episode.ID) + "/version",
		Revision: d.episode.Revision, Fields: []views.Field{field}, Submit: "Use this recipe",
	}, nil
}

// useVersion puts another recipe, or another version, into the episode.
func (s *Server) useVersion(w http.ResponseWriter, r *http.Request) error {
	d, form, err := s.deskAndForm(w, r)
	if err != nil {
		return err
	}
	if use := r.URL.Query().Get("use"); use != "" {
		form.values.Set("use", use)
	}
	version, err := s.loadVersion(r.Context(), int64(form.whole("use")))
	if err != nil {
		return err
	}
	revision := form.revision()
	if revision == 0 { // a version's own button carries none: it says all it changes
		revision = d.episode.Revision
	}
	attach, formErr := s.attachForm(r, d, nil)
	if formErr != nil {
		return formErr
	}
	if err = s.store.UseVersion(r.Context(), d.episode.ID, revision, version.ID, d.episode.Scale); err == nil {
		err = s.Recheck(r.Context(), d.episode.ID)
	}
	return s.settle(w, r, err, outcome{
		to: d.path(views.SheetRecipe), say: fmt.Sprintf("The episode now uses “%s”, version %d.", version.Name, version.Number),
		late: conflict{
			what: "what “" + d.episode.Title + "” uses", action: attach.Action, back: d.path(views.SheetRecipe), revision: d.episode.Revision,
			fields: attach.Fields, mine: form.values.Get, saved: values{"use": fmt.Sprint(d.episode.VersionID)}.get,
		},
	})
}

// writer writes lines in the measures wanted.
func (s *Server) writer(show episode.Show, r recipe.Recipe, style recipe.Style) recipe.Writer {
	return recipe.Writer{Larder: s.config.Larder, House: show.System, Source: r.System, Style: style}
}

// versionRow is a version with its id, for the buttons beside it.
type versionRow struct {
	views.VersionRow
	ID string
}

// versionRows lists the versions of the recipe that v belongs to, newest first.
func (s *Server) versionRows(r *http.Request, v store.Version) ([]versionRow, error) {
	versions, err := s.store.Versions(r.Context(), v.RecipeID)
	if err != nil {
		return nil, err
	}
	var rows []versionRow
	for _, each := range versions {
		row := views.VersionRow{
			Number: fmt.Sprintf("v%d", each.Number), Date: s.day(each.CreatedAt), Note: each.Note,
			Path: versionPath(each), Current: each.ID == v.ID,
		}
		if each.IsTried {
			row.Marks = []views.Mark{{Text: "tried"}}
		}
		if each.Number > 1 {
			row.ComparePath = fmt.Sprintf("/recipes/%d/changes?from=%d&to=%d", each.RecipeID, each.Number-1, each.Number)
		}
		rows = append(rows, versionRow{row, fmt.Sprint(each.ID)})
	}
	return rows, nil
}
