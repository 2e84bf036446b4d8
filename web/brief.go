package web

import (
	"net/http"

	"benchproof/kitchen/episode"
	"benchproof/views"
)

func briefFields(*desk) []views.Field {
	return []views.Field{
		{Name: "title", Label: "Working title", Required: true},
		{Name: "number", Label: "Number", Kind: views.FieldWhole, Hint: "As spoken: episode 31."},
		{Name: "stage", Label: "Stage", Kind: views.FieldSelect, Options: options(episode.Stages)},
		{Name: "release", Label: "Release on", Kind: views.FieldDate},
		{Name: "dish", Label: "Dish"},
		{Name: "inspired", Label: "Inspired by", Hint: "Who or what, as it will stand in the credits."},
		{Name: "link", Label: "Its address", Kind: views.FieldURL},
		{Name: "look", Label: "Look", Kind: views.FieldArea, Hint: "What the result must look like."},
		{Name: "hook", Label: "Hook", Kind: views.FieldArea, Hint: "The opening that makes a viewer stay."},
		{Name: "target", Label: "Target length", Kind: views.FieldWhole, Unit: "minutes"},
		{Name: "notes", Label: "Notes", Kind: views.FieldArea, Rows: 10, Hint: "Markdown: blank lines part paragraphs, - makes a list, *stars* make emphasis."},
	}
}

func briefValues(e episode.Episode) values {
	return values{
		"title": e.Title, "number": wholeText(e.Number), "stage": string(e.Stage), "release": dateText(e.ReleaseOn),
		"dish": e.Dish, "inspired": e.InspiredBy, "link": e.InspiredURL, "look": e.Look, "hook": e.Hook,
		"target": wholeText(e.TargetMinutes), "notes": e.Notes,
	}
}

func readBrief(f *typed, e *episode.Episode) {
	e.Title = f.needed("title", "Give the episode a working title.")
	e.Number = f.whole("number")
	e.Stage = episode.Stage(f.oneOf("stage", asWords(episode.Stages)))
	e.ReleaseOn = f.date("release")
	e.Dish, e.InspiredBy, e.InspiredURL = f.text("dish"), f.text("inspired"), f.address("link")
	e.Look, e.Hook, e.Notes = f.text("look"), f.text("hook"), f.text("notes")
	e.TargetMinutes = f.whole("target")
}

func (s *Server) showBrief(w http.ResponseWriter, r *http.Request) error {
	d, err := s.openDesk(r)
	if err != nil {
		return err
	}
	return s.drawBrief(w, r, d, http.StatusOK, briefForm(d, briefValues(d.episode).get, d.episode.Revision, nil))
}

func briefForm(d *desk, value func(string) string, revision int, err error) views.Form {
	fields := filled(briefFields(d), value, err)
	return views.Form{
		ID: "brief", Action: d.path(views.SheetBrief), Revision: revision, Fields: fields,
		Submit: "Save brief", Problem: formError(err, fields), Guard: true,
	}
}

func (s *Server) drawBrief(w http.ResponseWriter, r *http.Request, d *desk, status int, form views.Form) error {
	page, err := s.sheetPage(r, d, views.SheetBrief)
	if err != nil {
		return err
	}
	notes, err := markdown(d.episode.Notes)
	if err != nil {
		return err
	}
	return s.draw(w, r, status, views.Brief(views.BriefSheet{
		Page: page, EpisodeFrame: s.frame(d, views.SheetBrief), Form: form,
		NotesHTML: notes, DeleteAction: episodePath(d.episode.ID) + "/delete",
	}))
}

func (s *Server) saveBrief(w http.ResponseWriter, r *http.Request) error {
	d, form, err := s.deskAndForm(w, r)
	if err != nil {
		return err
	}
	edited := d.episode
	readBrief(form, &edited)
	edited.Revision = form.revision()
	if err = form.err(); err == nil {
		err = s.store.SaveBrief(r.Context(), edited)
	}
	return s.settle(w, r, err, outcome{
		to: d.path(views.SheetBrief), say: "The brief is saved.",
		redraw: func(err error) error {
			return s.drawBrief(w, r, d, http.StatusUnprocessableEntity, briefForm(d, form.values.Get, edited.Revision, err))
		},
		late: conflict{
			what: "the brief of “" + d.episode.Title + "”", action: d.path(views.SheetBrief), back: d.path(views.SheetBrief),
			fields: briefFields(d), mine: form.values.Get, saved: briefValues(d.episode).get, revision: d.episode.Revision,
		},
	})
}

func (s *Server) deleteEpisode(w http.ResponseWriter, r *http.Request) error {
	d, err := s.openDesk(r)
	if err != nil {
		return err
	}
	if err := s.store.DeleteEpisode(r.Context(), d.episode.ID); err != nil {
		return err
	}
	s.flash(r, "“"+d.episode.Title+"” is deleted.", undoPath("episode", d.episode.ID))
	return seeOther(w, r, "/")
}
