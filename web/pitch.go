package web

import (
	"fmt"
	"net/http"
	"strconv"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/measure"
	"benchproof/store"
	"benchproof/views"
)

func pitchFields() []views.Field {
	return []views.Field{
		{Name: "dish", Label: "Dish", Required: true},
		{Name: "who", Label: "Who asked"},
		{Name: "place", Label: "Where", Placeholder: "a comment under episode 12"},
		{Name: "times", Label: "How often", Kind: views.FieldWhole, Unit: "times"},
		{Name: "note", Label: "Note", Kind: views.FieldArea},
	}
}

func pitchValues(p episode.Pitch) values {
	return values{"dish": p.Dish, "who": p.Who, "place": p.Place, "times": wholeText(p.Times), "note": p.Note}
}

func readPitch(f *typed, p *episode.Pitch) {
	p.Dish = f.needed("dish", "Say which dish was asked for.")
	p.Who, p.Place, p.Note = f.text("who"), f.text("place"), f.text("note")
	p.Times = max(1, f.whole("times"))
}

func pitchPath(id int64) string { return "/pitches/" + strconv.FormatInt(id, 10) }

func (s *Server) showPitches(w http.ResponseWriter, r *http.Request) error {
	form := addPitchForm(pitchValues(episode.Pitch{Times: 1}).get, nil)
	if id, err := strconv.ParseInt(r.URL.Query().Get("change"), 10, 64); err == nil {
		pitch, err := s.store.Pitch(r.Context(), id)
		if err != nil {
			return err
		}
		form = changePitchForm(pitch.ID, pitch.Revision, pitchValues(pitch).get, nil)
	}
	return s.drawPitches(w, r, http.StatusOK, form)
}

func addPitchForm(value func(string) string, err error) views.Form {
	fields := filled(pitchFields(), value, err)
	return views.Form{ID: "pitch", Title: "Add a pitch", Action: "/pitches", Fields: fields, Submit: "Add pitch", Problem: formError(err, fields), Guard: true}
}

func changePitchForm(id int64, revision int, value func(string) string, err error) views.Form {
	form := addPitchForm(value, err)
	form.Title, form.Submit, form.Action = "Change this pitch", "Save pitch", pitchPath(id)
	form.Revision, form.Cancel = revision, "/pitches"
	return form
}

func (s *Server) drawPitches(w http.ResponseWriter, r *http.Request, status int, form views.Form) error {
	page, err := s.page(r, "Pitches", views.SectionPitches)
	if err != nil {
		return err
	}
	pitches, err := s.store.Pitches(r.Context())
	if err != nil {
		return err
	}
	view := views.PitchesPage{Page: page, Form: form}
	if len(pitches) == 0 {
		view.Empty = "Nobody has asked for anything yet. Keep here what viewers ask for, and how often."
	}
	for _, p := range pitches {
		view.Rows = append(view.Rows, pitchRow(p))
	}
	return s.draw(w, r, status, views.Pitches(view))
}

func pitchRow(p episode.Pitch) views.PitchRow {
	path := pitchPath(p.ID)
	row := views.PitchRow{
		Times: fmt.Sprintf("%d ×", p.Times), Dish: p.Dish, From: joined(", ", p.Who, p.Place), Note: p.Note,
		EditPath: fmt.Sprintf("/pitches?change=%d#pitch", p.ID), DeleteAction: path + "/delete",
	}
	if p.EpisodeID == 0 {
		row.MakeAction = path + "/episode"
	} else {
		row.Episode = views.Link{Text: "became an episode", Path: episodePath(p.EpisodeID)}
	}
	return row
}

func (s *Server) addPitch(w http.ResponseWriter, r *http.Request) error {
	form, err := readTyped(w, r)
	if err != nil {
		return err
	}
	var pitch episode.Pitch
	readPitch(form, &pitch)
	if err := form.err(); err != nil {
		return s.drawPitches(w, r, http.StatusUnprocessableEntity, addPitchForm(form.values.Get, err))
	}
	if _, err := s.store.AddPitch(r.Context(), pitch); err != nil {
		return err
	}
	return seeOther(w, r, "/pitches")
}

func (s *Server) savePitch(w http.ResponseWriter, r *http.Request) error {
	form, err := readTyped(w, r)
	if err != nil {
		return err
	}
	saved, err := s.pitchOf(r)
	if err != nil {
		return err
	}
	pitch := saved
	readPitch(form, &pitch)
	pitch.Revision = form.revision()
	if err = form.err(); err == nil {
		err = s.store.SavePitch(r.Context(), pitch)
	}
	return s.settle(w, r, err, outcome{
		to: "/pitches",
		redraw: func(err error) error {
			return s.drawPitches(w, r, http.StatusUnprocessableEntity, changePitchForm(saved.ID, pitch.Revision, form.values.Get, err))
		},
		late: conflict{
			what: "this pitch", action: pitchPath(saved.ID), back: "/pitches", revision: saved.Revision,
			fields: pitchFields(), mine: form.values.Get, saved: pitchValues(saved).get,
		},
	})
}

func (s *Server) deletePitch(w http.ResponseWriter, r *http.Request) error {
	pitch, err := s.pitchOf(r)
	if err != nil {
		return err
	}
	if err := s.store.DeletePitch(r.Context(), pitch.ID); err != nil {
		return err
	}
	s.flash(r, "The pitch is deleted.", undoPath("pitch", pitch.ID))
	return seeOther(w, r, "/pitches")
}

// makeEpisode turns a pitch into an episode that begins with what it says.
func (s *Server) makeEpisode(w http.ResponseWriter, r *http.Request) error {
	pitch, err := s.pitchOf(r)
	if err != nil {
		return err
	}
	if pitch.EpisodeID != 0 {
		return seeOther(w, r, episodePath(pitch.EpisodeID))
	}
	made, err := s.store.StartEpisode(r.Context(), store.Start{PitchID: pitch.ID, Episode: episode.Episode{
		Title: pitch.Dish, Dish: pitch.Dish, Stage: episode.Pitched, Notes: pitch.Note, Scale: measure.Whole(1),
	}})
	if err != nil {
		return err
	}
	return seeOther(w, r, episodePath(made)+"/brief")
}

func (s *Server) pitchOf(r *http.Request) (episode.Pitch, error) {
	id, err := pathID(r, "pitch")
	if err != nil {
		return episode.Pitch{}, err
	}
	return s.store.Pitch(r.Context(), id)
}
