package web

import (
	"fmt"
	"net/http"
	"net/url"
	"slices"
	"strconv"
	"strings"

	"benchproof/kitchen/coverage"
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
		{Name: "setup", Label: "Setup", Hint: "One name for each place of the camera, with its lens and light: choose one that there is, or type a new one. What it is made of is written once, at its heading."},
		{Name: "step", Label: "Of", Kind: views.FieldSelect, Options: tieOptions(d)},
		{Name: "layout", Label: "Shows the ingredients laid out", Kind: views.FieldCheck, Hint: "A new shot is ticked by itself if its title says so."},
		{Name: "status", Label: "Status", Kind: views.FieldSelect, Options: options(episode.ShotStatuses)},
		{Name: "note", Label: "Note", Kind: views.FieldArea},
	}
}

// tieOptions lists what a shot can be of: the episode, a whole component, a
// step. The value of a component is that of its step 0.
func tieOptions(d *desk) []views.Option {
	list := []views.Option{{Label: "the whole episode"}}
	for _, c := range d.version.Reading.Components {
		if c.Name != "" {
			list = append(list, views.Option{Value: stepValue(c.Name, 0), Label: c.Name + ", all of it"})
		}
		for i, step := range c.Steps {
			list = append(list, views.Option{Value: stepValue(c.Name, i+1), Label: stepName(c.Name, i+1) + ": " + shortened(step.Text, 60)})
		}
	}
	return list
}

// stepOptions lists the steps of the recipe. A value is the step's number, a
// space and the component's name, which may hold anything: "3 Dough".
func stepOptions(d *desk) []views.Option {
	return slices.DeleteFunc(tieOptions(d), func(o views.Option) bool { return strings.HasPrefix(o.Value, "0 ") })
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
	if t.Step > 0 || t.Component != "" {
		v["step"] = stepValue(t.Component, t.Step)
	}
	if t.Layout {
		v["layout"] = "yes"
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
		if err != nil || step < 0 || step == 0 && component == "" {
			f.fail("step", "Choose a step or a part of the recipe.")
		}
		t.Component, t.Step = component, step
	}
	isNew := t.ID == 0
	t.Layout = f.values.Get("layout") == "yes" || isNew && coverage.SaysLayout(t.Title)
	t.Status = episode.ShotStatus(f.oneOf("status", asWords(episode.ShotStatuses)))
}

// addShotPath is where the sheet's form stands filled in with a shot.
func addShotPath(d *desk, shot episode.Shot) string {
	query := url.Values{}
	for name, value := range shotValues(d, shot) {
		if value != "" && name != "status" {
			query.Set(name, value)
		}
	}
	return d.path(views.SheetShots) + "?" + query.Encode() + "#shot"
}

// shotForm is the sheet's form: to change a shot, to add the one that the
// address describes, or to add any.
func (s *Server) shotForm(d *desk, r *http.Request) (views.Form, error) {
	query := r.URL.Query()
	if query.Get("step") == "" && query.Get("title") == "" {
		return s.shots().form(d, r)
	}
	asked := values{"kind": "close-up", "status": string(episode.Missing)}
	for _, name := range []string{"title", "kind", "step", "layout"} {
		if value := query.Get(name); value != "" {
			asked[name] = value
		}
	}
	return s.shots().addForm(d, asked.get, nil), nil
}

// completeShotForm offers the setups that there are, and keeps a tie that the
// recipe no longer has.
func completeShotForm(form *views.Form, setups []string) {
	for i := range form.Fields {
		f := &form.Fields[i]
		switch f.Name {
		case "setup":
			f.Suggestions = setups
		case "step":
			known := slices.ContainsFunc(f.Options, func(o views.Option) bool { return o.Value == f.Value })
			number, component, _ := strings.Cut(f.Value, " ")
			if step, err := strconv.Atoi(number); !known && err == nil && step >= 0 {
				f.Options = append(f.Options, views.Option{Value: f.Value, Label: stepName(component, step) + ", which the recipe no longer has"})
			}
		}
	}
}
