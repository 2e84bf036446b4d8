package web

import (
	"net/http"
	"strconv"

	"benchproof/kitchen/episode"
	"benchproof/views"
)

func shootDayFields() []views.Field {
	return []views.Field{
		{Name: "on", Label: "Day", Kind: views.FieldDate, Hint: "For the calendar file; empty is today."},
		{Name: "begin", Label: "Begin at", Required: true, Hint: "A time such as 09:00. Only what is made ahead may begin up to two hours before."},
		{Name: "done", Label: "Be done by", Hint: "Empty plans forwards from the beginning. A time plans backwards from it, so that you begin as late as can be."},
		{Name: "hands", Label: "Hands", Kind: views.FieldWhole, Required: true, Unit: "people", Hint: "Who cook, put up the camera and are in the shot."},
		{Name: "helper", Label: "A helper until", Hint: "One more pair of hands until then; empty if nobody helps."},
		{Name: "light", Label: "Light until", Hint: "Nothing is filmed after it; empty if the light stays."},
		{Name: "setup", Label: "Camera setup", Kind: views.FieldWhole, Unit: "minutes", Hint: "To change from one setup of the shot list to the next. The first stands before you begin."},
	}
}

func shootDayValues(v episode.ShootDay) values {
	return values{
		"on": dateText(v.On), "begin": episode.Clock(v.Begin), "done": clockText(v.DoneBy), "hands": wholeText(v.Hands),
		"helper": clockText(v.HelperUntil), "light": clockText(v.LightUntil), "setup": strconv.Itoa(v.SetupMinutes),
	}
}

// clockText writes a time that may be none.
func clockText(minutes int) string {
	if minutes == 0 {
		return ""
	}
	return episode.Clock(minutes)
}

// The most that the form takes; the store holds to the same.
const (
	mostHands        = 20
	mostSetupMinutes = 240
)

func readShootDay(f *typed, v *episode.ShootDay) {
	v.On = f.date("on")
	if f.needed("begin", "Say when the day begins: 09:00.") != "" {
		v.Begin = f.clock("begin")
	}
	before := len(f.faults)
	v.DoneBy, v.HelperUntil, v.LightUntil = f.clock("done"), f.clock("helper"), f.clock("light")
	if len(f.faults) == before {
		f.later("done", v.DoneBy, v.Begin, "Be done later than the day begins, or leave it empty.")
		f.later("helper", v.HelperUntil, v.Begin, "Let the helper leave after the day begins, or leave it empty.")
		f.later("light", v.LightUntil, v.Begin, "Let the light go after the day begins, or leave it empty.")
	}
	if v.Hands = f.whole("hands"); v.Hands < 1 || v.Hands > mostHands {
		f.fail("hands", "Say how many people cook, from 1 to %d.", mostHands)
	}
	if v.SetupMinutes = f.whole("setup"); v.SetupMinutes > mostSetupMinutes {
		f.fail("setup", "A setup takes at most %d minutes here. Put a longer one up the day before.", mostSetupMinutes)
	}
}

// clock reads a time of day in minutes from midnight, 0 for an empty field.
func (t *typed) clock(name string) int {
	text := t.text(name)
	if text == "" {
		return 0
	}
	minutes, ok := episode.ReadClock(text)
	if !ok {
		t.fail(name, "“%s” is not a time of day. Write hours and minutes, such as 09:40 or 16:00.", text)
	}
	return minutes
}

// later faults a time that is given and not after another.
func (t *typed) later(name string, minutes, than int, say string) {
	if t.text(name) != "" && minutes <= than {
		t.fail(name, "%s", say)
	}
}

func shootDayForm(d *desk, value func(string) string, revision int, err error) views.Form {
	fields := filled(shootDayFields(), value, err)
	return views.Form{
		ID: "day", Action: d.path(views.SheetShootDay), Revision: revision, Fields: fields, Submit: "Plan the day",
		Problem: formError(err, fields), Guard: true,
	}
}

func (s *Server) saveShootDay(w http.ResponseWriter, r *http.Request) error {
	d, form, err := s.deskAndForm(w, r)
	if err != nil {
		return err
	}
	saved, err := s.store.ShootDay(r.Context(), d.episode.ID)
	if err != nil {
		return err
	}
	day := saved
	readShootDay(form, &day)
	day.Revision = form.revision()
	if err = form.err(); err == nil {
		err = s.changeDay(r.Context(), d.episode.ID, func() error { return s.store.SaveShootDay(r.Context(), day) })
	}
	return s.settle(w, r, err, outcome{
		to: d.path(views.SheetShootDay), say: "The day is planned.",
		redraw: func(err error) error {
			refused := shootDayForm(d, form.values.Get, day.Revision, err)
			return s.drawShootDay(w, r, d, http.StatusUnprocessableEntity, shootForms{day: &refused})
		},
		late: conflict{
			what: "this shoot day", action: d.path(views.SheetShootDay), back: d.path(views.SheetShootDay), revision: saved.Revision,
			fields: shootDayFields(), mine: form.values.Get, saved: shootDayValues(saved).get,
		},
	})
}
