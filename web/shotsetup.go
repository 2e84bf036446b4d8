package web

import (
	"net/http"
	"net/url"
	"slices"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/views"
)

// setupForm is the form that describes the setup called was.
type setupForm struct {
	was  string
	form views.Form
}

// describePath is where the sheet shows the form of a setup.
func describePath(d *desk, name string) string {
	return d.path(views.SheetShots) + "?describe=" + urlText(name) + "#setup"
}

// setupAction is where that form is sent.
func setupAction(d *desk, was string) string {
	return episodePath(d.episode.ID) + "/setups?" + url.Values{"was": {was}}.Encode()
}

func cameraFields() []views.Field {
	return []views.Field{
		{Name: "name", Label: "Setup", Required: true, Hint: "Another name is written into all of its shots. One that another setup has brings the two together."},
		{Name: "camera", Label: "Camera", Hint: "Where it stands and how it looks: arm over the bench, straight down."},
		{Name: "lens", Label: "Lens", Hint: "35 mm, f/4."},
		{Name: "light", Label: "Light", Hint: "Window left, white card right."},
	}
}

func cameraValues(u episode.Setup) values {
	return values{"name": u.Name, "camera": u.Camera, "lens": u.Lens, "light": u.Light}
}

// setupAbout is what a setup is made of, on one line; "" if it is not described.
func setupAbout(u episode.Setup) string { return joined(" · ", u.Camera, u.Lens, u.Light) }

func newSetupForm(d *desk, was string, value func(string) string, revision int, err error) *setupForm {
	fields := filled(cameraFields(), value, err)
	return &setupForm{was, views.Form{
		ID: "setup", Action: setupAction(d, was), Revision: revision, Fields: fields, Submit: "Save setup",
		Cancel: d.path(views.SheetShots), Problem: formError(err, fields), Guard: true,
	}}
}

// askedSetup is the form of the setup called name, nil if no shot names it.
func (l *shotList) askedSetup(d *desk, name string) *setupForm {
	if name == "" || !slices.Contains(l.setupNames(), name) {
		return nil
	}
	setup := l.newBlock(name).setup
	return newSetupForm(d, name, cameraValues(setup).get, setup.Revision, nil)
}

func (s *Server) saveSetup(w http.ResponseWriter, r *http.Request) error {
	d, form, err := s.deskAndForm(w, r)
	if err != nil {
		return err
	}
	was := r.URL.Query().Get("was")
	saved, err := s.setup(r, d, was)
	if err != nil {
		return err
	}
	u := episode.Setup{
		EpisodeID: d.episode.ID, Name: form.needed("name", "Give the setup a name."),
		Camera: form.text("camera"), Lens: form.text("lens"), Light: form.text("light"), Revision: form.revision(),
	}
	if err = form.err(); err == nil {
		err = s.store.SaveSetup(r.Context(), was, u)
	}
	return s.settle(w, r, err, outcome{
		to: d.path(views.SheetShots),
		redraw: func(err error) error {
			shot, drawn := s.shotForm(d, r)
			if drawn != nil {
				return drawn
			}
			return s.drawShotsAnd(w, r, d, http.StatusUnprocessableEntity, shot, newSetupForm(d, was, form.values.Get, u.Revision, err))
		},
		late: conflict{
			what: "this setup", action: setupAction(d, was), back: d.path(views.SheetShots), revision: saved.Revision,
			fields: cameraFields(), mine: form.values.Get, saved: cameraValues(saved).get,
		},
	})
}

// setup is what is kept of the setup called name. One that no shot names is
// fault.NotFound.
func (s *Server) setup(r *http.Request, d *desk, name string) (episode.Setup, error) {
	described, err := s.store.Setups(r.Context(), d.episode.ID)
	if err != nil {
		return episode.Setup{}, err
	}
	shots, err := s.store.Shots(r.Context(), d.episode.ID)
	if err != nil {
		return episode.Setup{}, err
	}
	list := newShotList(d.version.Reading, shots, described, nil)
	if name == "" || !slices.Contains(list.setupNames(), name) {
		return episode.Setup{}, fault.NotFoundf("No shot of this episode has the setup “%s” any more. Go back to the shots: it may have another name.", name)
	}
	return list.newBlock(name).setup, nil
}
