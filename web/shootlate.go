package web

import (
	"net/http"
	"slices"
	"time"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/views"
)

// addLate adds how far the day has come, and the form that says so: asked for
// with ?late=1, or sent back.
func (s *Server) addLate(sheet *views.ShootDaySheet, r *http.Request, d *desk, p *shootPlan, back *lateBack) {
	if !sheet.IsPlanned() {
		return
	}
	path := d.path(views.SheetShootDay)
	sheet.LatePath = path + "?late=1#plan"
	if p.day.Begun {
		sheet.Under = "Replanned at " + episode.Clock(p.settings.Now) + ": " + p.progressWords()
		sheet.AnewAction = path + "/anew"
	}
	switch {
	case back != nil:
		sheet.Late = &back.form
		for i, row := range sheet.Rows {
			sheet.Rows[i].Begun, sheet.Rows[i].Done = back.ticked("begun", row.Step), back.ticked("done", row.Step)
		}
	case r.URL.Query().Get("late") != "":
		now := s.clockNow(d)
		form := lateForm(d, p, episode.Clock(now), nil)
		sheet.Late = &form
		p.guessProgress(sheet.Rows, now-p.zero)
	}
}

// lateBack is the form of running late as it was sent, to be sent again.
type lateBack struct {
	form  views.Form
	typed *typed
}

func (b *lateBack) ticked(name, step string) bool {
	return step != "" && slices.Contains(b.typed.values[name], step)
}

func lateForm(d *desk, p *shootPlan, now string, err error) views.Form {
	fields := filled([]views.Field{{
		Name: "now", Label: "Time now", Required: true,
		Hint: "Tick below what is done and what is under way; the rest is planned anew from now. Ticks by the clock are set already.",
	}}, values{"now": now}.get, err)
	return views.Form{
		ID: "late", Action: d.path(views.SheetShootDay) + "/late", Fields: fields,
		Submit: "Replan the rest", Cancel: d.path(views.SheetShootDay), Problem: formError(err, fields),
	}
}

// clockNow is the time of day in the show's time zone, in minutes.
func (s *Server) clockNow(d *desk) int {
	zone, err := time.LoadLocation(d.show.TimeZone)
	if err != nil {
		zone = time.UTC
	}
	now := s.config.Now().In(zone)
	return now.Hour()*60 + now.Minute()
}

// progressWords counts what has begun.
func (p *shootPlan) progressWords() string {
	done, running := 0, 0
	for _, each := range p.day.Done {
		if each.IsRunning {
			running++
		} else {
			done++
		}
	}
	return joined(", ", count(done, "step done", "steps done"), count(running, "under way", "under way"))
}

// guessProgress ticks, for a form that is filled in now, what should have been
// done and begun by this minute of the day.
func (p *shootPlan) guessProgress(rows []views.DayRow, now int) {
	for i, e := range p.entriesOfRows(rows) {
		if e == nil {
			continue
		}
		rows[i].Done = rows[i].Done || e.to <= now
		rows[i].Begun = rows[i].Begun || e.from < now
	}
}

// rowTimes are the minutes of a row's step.
type rowTimes struct{ from, to int }

// entriesOfRows finds the times of each row, nil for one that is no step.
func (p *shootPlan) entriesOfRows(rows []views.DayRow) []*rowTimes {
	by := map[string]*rowTimes{}
	for _, e := range p.plan.Entries {
		if e.Moment == "" && !e.IsClean && !e.IsRest {
			by[stepQuery(p.nameOf(e.Key))] = &rowTimes{e.From, p.endOf(e)}
		}
	}
	all := make([]*rowTimes, len(rows))
	for i, row := range rows {
		all[i] = by[row.Step]
	}
	return all
}

// saveLate notes how far the day has come and plans the rest anew.
func (s *Server) saveLate(w http.ResponseWriter, r *http.Request) error {
	d, form, err := s.deskAndForm(w, r)
	if err != nil {
		return err
	}
	p, err := s.dayOf(r.Context(), d.episode.ID)
	if err != nil {
		return err
	}
	day := p.settings
	if form.needed("now", "Say what time it is: 14:05.") != "" {
		day.Now = p.readNow(form)
	}
	begun := p.readProgress(form, day.Now)
	if err = form.err(); err == nil {
		err = s.changeDay(r.Context(), d.episode.ID, func() error { return s.store.SaveProgress(r.Context(), day, begun) })
	}
	if kind := fault.KindOf(err); err != nil && (kind == fault.Invalid || kind == fault.Conflict) {
		back := &lateBack{lateForm(d, p, form.values.Get("now"), err), form}
		return s.drawShootDay(w, r, d, statusOf(kind), shootForms{late: back})
	}
	if err != nil {
		return err
	}
	return seeOther(w, r, d.path(views.SheetShootDay)+"#plan")
}

// readNow reads the time of day, after midnight if the day began later.
func (p *shootPlan) readNow(f *typed) int {
	now := f.clock("now")
	if now < p.zero {
		now += episode.DayMinutes
	}
	return max(1, now)
}

// readProgress reads which steps are done and which are under way. What is done
// took its planned time, or until now; what is under way began when it was
// planned to, at the latest now.
func (p *shootPlan) readProgress(f *typed, now int) []episode.DayStep {
	var begun []episode.DayStep
	for _, e := range p.plan.Entries {
		if e.Moment != "" || e.IsClean || e.IsRest {
			continue
		}
		name := p.nameOf(e.Key)
		is := func(field string) bool { return slices.Contains(f.values[field], stepQuery(name)) }
		if !is("done") && !is("begun") {
			continue
		}
		known := p.fixedOf(name)
		step := episode.DayStep{EpisodeID: p.settings.EpisodeID, StepName: name, Began: known.Began}
		if step.Began == 0 || step.Began > now {
			step.Began = max(1, min(p.zero+e.From, now))
		}
		if is("done") {
			if step.Ended = known.Ended; step.Ended == 0 || step.Ended > now {
				step.Ended = max(step.Began, min(p.zero+p.endOf(e), now))
			}
		}
		begun = append(begun, step)
	}
	return begun
}

// startAnew takes the day back to before its beginning.
func (s *Server) startAnew(w http.ResponseWriter, r *http.Request) error {
	d, err := s.openDesk(r)
	if err != nil {
		return err
	}
	day, err := s.store.ShootDay(r.Context(), d.episode.ID)
	if err != nil {
		return err
	}
	day.Now = 0
	err = s.changeDay(r.Context(), d.episode.ID, func() error { return s.store.SaveProgress(r.Context(), day, nil) })
	if err != nil {
		return err
	}
	return seeOther(w, r, d.path(views.SheetShootDay)+"#plan")
}
