package web

import (
	"fmt"
	"net/http"
	"strconv"
	"strings"

	"benchproof/kitchen/episode"
	"benchproof/views"
)

// shots is the part of what to film.
func (s *Server) shots() part[episode.Shot] {
	return part[episode.Shot]{
		word: "shot", many: "shots", sheet: views.SheetShots,
		fields: shotFields, values: shotValues, read: readShot,
		get: s.store.Shot, add: s.store.AddShot, save: s.store.SaveShot, remove: s.store.DeleteShot,
		move: s.store.MoveShot,
		blank: func(episodeID int64) episode.Shot {
			return episode.Shot{EpisodeID: episodeID, Status: episode.Missing}
		},
		key:   func(t episode.Shot) partKey { return partKey{t.ID, t.EpisodeID, t.Revision} },
		stamp: func(t *episode.Shot, revision int) { t.Revision = revision },
	}
}

func shotFields(d *desk) []views.Field {
	return []views.Field{
		{Name: "title", Label: "Shot", Required: true, Hint: "What the viewer sees."},
		{Name: "kind", Label: "Kind", Kind: views.FieldSelect, Options: options(episode.ShotKinds)},
		{Name: "setup", Label: "Setup", Hint: "Camera position and light, in the same words for every shot that shares them: overhead, window left."},
		{Name: "step", Label: "Step", Kind: views.FieldSelect, Options: stepOptions(d)},
		{Name: "status", Label: "Status", Kind: views.FieldSelect, Options: options(episode.ShotStatuses)},
		{Name: "note", Label: "Note", Kind: views.FieldArea},
	}
}

// stepOptions lists the steps a shot can show. A value is the step's number, a
// space and the component's name, which may hold anything: "3 Dough".
func stepOptions(d *desk) []views.Option {
	list := []views.Option{{Label: "the whole episode"}}
	for _, c := range d.version.Reading.Components {
		for i, step := range c.Steps {
			list = append(list, views.Option{Value: stepValue(c.Name, i+1), Label: stepName(c.Name, i+1) + ": " + shortened(step.Text, 60)})
		}
	}
	return list
}

func stepValue(component string, step int) string { return strconv.Itoa(step) + " " + component }

func stepName(component string, step int) string {
	switch {
	case step == 0:
		return component
	case component == "":
		return fmt.Sprintf("Step %d", step)
	}
	return fmt.Sprintf("%s, step %d", component, step)
}

func shotValues(_ *desk, t episode.Shot) values {
	v := values{"title": t.Title, "kind": t.Kind, "setup": t.Setup, "status": string(t.Status), "note": t.Note}
	if t.Step > 0 {
		v["step"] = stepValue(t.Component, t.Step)
	}
	return v
}

func readShot(f *typed, t *episode.Shot) {
	t.Title = f.needed("title", "Say what the viewer sees.")
	t.Kind = f.oneOf("kind", episode.ShotKinds)
	t.Setup, t.Note = f.text("setup"), f.text("note")
	t.Component, t.Step = "", 0
	if number, component, _ := strings.Cut(f.values.Get("step"), " "); number != "" {
		step, err := strconv.Atoi(number)
		if err != nil || step < 1 {
			f.fail("step", "Choose a step of the recipe.")
		}
		t.Component, t.Step = component, step
	}
	t.Status = episode.ShotStatus(f.oneOf("status", asWords(episode.ShotStatuses)))
}

func (s *Server) showShots(w http.ResponseWriter, r *http.Request) error {
	d, err := s.openDesk(r)
	if err != nil {
		return err
	}
	p := s.shots()
	form, err := p.form(d, r)
	if err != nil {
		return err
	}
	if step := r.URL.Query().Get("step"); step != "" { // "add a shot for this step"
		form = p.addForm(d, values{"step": step, "kind": "close-up", "status": string(episode.Missing)}.get, nil)
	}
	return s.drawShots(w, r, d, http.StatusOK, form)
}

func (s *Server) drawShots(w http.ResponseWriter, r *http.Request, d *desk, status int, form views.Form) error {
	shots, err := s.store.Shots(r.Context(), d.episode.ID)
	if err != nil {
		return err
	}
	page, err := s.sheetPage(r, d, views.SheetShots)
	if err != nil {
		return err
	}
	sheet := newShotsSheet(s.shots(), d, shots)
	sheet.Page, sheet.EpisodeFrame, sheet.Form = page, s.frame(d, views.SheetShots), form
	return s.draw(w, r, status, views.Shots(sheet))
}

// newShotsSheet groups the shots by setup, in the order setups first appear.
func newShotsSheet(p part[episode.Shot], d *desk, shots []episode.Shot) views.ShotsSheet {
	var sheet views.ShotsSheet
	at, got := map[string]int{}, 0
	for i, shot := range shots {
		name := shot.Setup
		if name == "" {
			name = "no setup yet"
		}
		block, known := at[name]
		if !known {
			block = len(sheet.Setups)
			at[name] = block
			sheet.Setups = append(sheet.Setups, views.SetupBlock{Name: name})
		}
		sheet.Setups[block].Shots = append(sheet.Setups[block].Shots, shotRow(p, d, shot, i == 0, i == len(shots)-1))
		if shot.Status == episode.Got {
			got++
		}
	}
	for i := range sheet.Setups {
		sheet.Setups[i].Left = leftToShoot(sheet.Setups[i].Shots)
	}
	if len(shots) > 0 {
		sheet.Got = fmt.Sprintf("%d of %d got", got, len(shots))
	}
	sheet.Without, sheet.Coverage = uncovered(d, shots)
	return sheet
}

func leftToShoot(shots []views.ShotRow) string {
	left := 0
	for _, shot := range shots {
		if !shot.Got {
			left++
		}
	}
	if left == 0 {
		return "all got"
	}
	return fmt.Sprintf("%d to shoot", left)
}

func shotRow(p part[episode.Shot], d *desk, t episode.Shot, first, last bool) views.ShotRow {
	path := p.path(d.episode.ID, t.ID)
	row := views.ShotRow{
		ID: anchor("shot", t.ID), Kind: t.Kind, Title: t.Title, Status: shotMark(t.Status), Note: t.Note,
		Got: t.Status == episode.Got, GotAction: path + "/status", Wanted: string(episode.Got),
		EditPath: p.changePath(d.episode.ID, t.ID), DeleteAction: path + "/delete",
	}
	if t.Step > 0 {
		row.Step = stepName(t.Component, t.Step)
	}
	if row.Got {
		row.Wanted = string(episode.Missing)
	}
	row.UpAction, row.DownAction = moveActions(path, first, last)
	return row
}

func shotMark(status episode.ShotStatus) views.Mark {
	switch status {
	case episode.Got:
		return views.Mark{Kind: views.MarkProved, Text: string(status)}
	case episode.Retake:
		return views.Mark{Kind: views.MarkWrong, Text: string(status)}
	}
	return views.Mark{Kind: views.MarkLook, Text: string(status)}
}

// uncovered lists the steps no shot shows.
func uncovered(d *desk, shots []episode.Shot) (without []views.OpenLink, coverage string) {
	filmed, steps := map[string]bool{}, 0
	for _, shot := range shots {
		filmed[stepValue(shot.Component, shot.Step)] = true
	}
	for _, c := range d.version.Reading.Components {
		for i := range c.Steps {
			steps++
			value := stepValue(c.Name, i+1)
			if !filmed[value] {
				without = append(without, views.OpenLink{Text: stepName(c.Name, i+1), Path: d.path(views.SheetShots) + "?step=" + urlText(value) + "#shot"})
			}
		}
	}
	switch len(without) {
	case 0:
		return nil, ""
	case 1:
		return without, fmt.Sprintf("1 of %d steps has no shot", steps)
	}
	return without, fmt.Sprintf("%d of %d steps have no shot", len(without), steps)
}

// setShotStatus ticks a shot: the state wanted is sent, so that sending it
// twice does no harm.
func (s *Server) setShotStatus(w http.ResponseWriter, r *http.Request) error {
	form, err := readTyped(w, r)
	if err != nil {
		return err
	}
	shot, err := getPart(s.shots(), r)
	if err != nil {
		return err
	}
	status := form.oneOf("status", asWords(episode.ShotStatuses))
	if err := form.err(); err != nil {
		return err
	}
	if err := s.store.SetShotStatus(r.Context(), shot.ID, episode.ShotStatus(status)); err != nil {
		return err
	}
	return seeOther(w, r, episodePath(shot.EpisodeID)+"/shots#"+anchor("shot", shot.ID))
}
