package web

import (
	"net/http"

	"benchproof/kitchen/episode"
	"benchproof/views"
)

// The most that the kitchen form takes; the store holds to the same.
const (
	mostOfAStation   = 20
	mostCleanMinutes = 240
)

// count is a whole number of a form with its bounds.
type kitchenCount struct {
	name, label, unit, hint string
	least, most             int
	at                      func(k *episode.Kitchen) *int
}

var kitchenCounts = []kitchenCount{
	{"ovens", "Ovens", "", "", 0, mostOfAStation, func(k *episode.Kitchen) *int { return &k.Ovens }},
	{"holds", "One oven holds", "makes", "How many makes are baked in it side by side, each with its share of the room.", 1, mostOfAStation, func(k *episode.Kitchen) *int { return &k.OvenHolds }},
	{"rings", "Hob", "rings", "", 0, mostOfAStation, func(k *episode.Kitchen) *int { return &k.Rings }},
	{"mixers", "Mixers", "", "", 0, mostOfAStation, func(k *episode.Kitchen) *int { return &k.Mixers }},
	{"clean-bench", "Clean bench", "minutes", "By hand, when a make leaves it; 0 if it is not cleaned between.", 0, mostCleanMinutes, func(k *episode.Kitchen) *int { return &k.CleanBench }},
	{"clean-mixer", "Clean mixer", "minutes", "", 0, mostCleanMinutes, func(k *episode.Kitchen) *int { return &k.CleanMixer }},
	{"clean-hob", "Clean hob", "minutes", "", 0, mostCleanMinutes, func(k *episode.Kitchen) *int { return &k.CleanHob }},
}

func kitchenFields() []views.Field {
	var fields []views.Field
	for _, c := range kitchenCounts {
		fields = append(fields, views.Field{Name: c.name, Label: c.label, Kind: views.FieldWhole, Unit: c.unit, Hint: c.hint})
	}
	return append(fields,
		views.Field{Name: "people", Label: "People", Kind: views.FieldArea, Hint: "Who comes, one a line: for the call sheet."},
		views.Field{Name: "gear", Label: "Gear", Kind: views.FieldArea, Hint: "What films and lights, one a line."},
		views.Field{Name: "props", Label: "Props", Kind: views.FieldArea, Hint: "What stands in the picture, one a line."},
	)
}

func kitchenValues(v episode.ShootDay) values {
	all := values{"people": v.People, "gear": v.Gear, "props": v.Props}
	for _, c := range kitchenCounts {
		all[c.name] = wholeText(*c.at(&v.Kitchen))
	}
	return all
}

func readKitchen(f *typed, v *episode.ShootDay) {
	for _, c := range kitchenCounts {
		at := c.at(&v.Kitchen)
		if *at = f.whole(c.name); *at < c.least || *at > c.most {
			f.fail(c.name, "Give a number from %d to %d.", c.least, c.most)
		}
	}
	v.People, v.Gear, v.Props = f.text("people"), f.text("gear"), f.text("props")
}

func kitchenForm(d *desk, value func(string) string, revision int, err error) views.Form {
	fields := filled(kitchenFields(), value, err)
	return views.Form{
		ID: "kitchen", Action: d.path(views.SheetShootDay) + "/kitchen", Revision: revision, Fields: fields, Submit: "Save and replan",
		Problem: formError(err, fields), Guard: true,
	}
}

// saveKitchen keeps what the kitchen holds, and who and what is there.
func (s *Server) saveKitchen(w http.ResponseWriter, r *http.Request) error {
	d, form, err := s.deskAndForm(w, r)
	if err != nil {
		return err
	}
	saved, err := s.store.ShootDay(r.Context(), d.episode.ID)
	if err != nil {
		return err
	}
	day := saved
	readKitchen(form, &day)
	day.Revision = form.revision()
	if err = form.err(); err == nil {
		err = s.changeDay(r.Context(), d.episode.ID, func() error { return s.store.SaveShootDay(r.Context(), day) })
	}
	path := d.path(views.SheetShootDay)
	return s.settle(w, r, err, outcome{
		to: path, say: "The kitchen is saved.",
		redraw: func(err error) error {
			refused := kitchenForm(d, form.values.Get, day.Revision, err)
			return s.drawShootDay(w, r, d, http.StatusUnprocessableEntity, shootForms{kitchen: &refused})
		},
		late: conflict{
			what: "this kitchen", action: path + "/kitchen", back: path, revision: saved.Revision,
			fields: kitchenFields(), mine: form.values.Get, saved: kitchenValues(saved).get,
		},
	})
}
