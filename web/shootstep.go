package web

import (
	"net/http"
	"net/url"
	"strconv"
	"strings"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/shoot"
	"benchproof/views"
)

// stepQuery names a step of a batch in an address: "batch=shoot&step=3+Dough".
func stepQuery(n episode.StepName) string {
	return url.Values{"batch": {n.Batch}, "step": {stepValue(n.Component, n.Step)}}.Encode()
}

// stepFrom reads what stepQuery wrote; ok is false if there is no step in it.
func stepFrom(query url.Values) (n episode.StepName, ok bool) {
	n, ok = stepOfValue(query.Get("step"))
	n.Batch = query.Get("batch")
	return n, ok && n.Batch != ""
}

// stepOfValue reads what stepValue wrote: a step of no batch in particular.
func stepOfValue(value string) (n episode.StepName, ok bool) {
	number, component, _ := strings.Cut(value, " ")
	step, err := strconv.Atoi(number)
	return episode.StepName{Component: component, Step: step}, err == nil && step > 0
}

func stepFields(p *shootPlan, fixed episode.DayStep) []views.Field {
	fields := []views.Field{
		{Name: "pin", Label: "Begins at", Hint: "A time such as 10:00; empty leaves it to the plan."},
		{Name: "barred", Label: "Not between", Hint: "Times in which no part of it may fall, such as 12:00–13:00, 15:30–16:00."},
	}
	fields = append(fields,
		views.Field{Name: "least", Label: "Waits at least", Kind: views.FieldWhole, Unit: "minutes", Hint: "After the steps before it."},
		views.Field{Name: "most", Label: "At most", Kind: views.FieldWhole, Unit: "minutes", Hint: mostHint(p, fixed)},
	)
	if p.settings.HelperUntil > 0 || fixed.ByHelper {
		fields = append(fields, views.Field{Name: "helper", Label: "The helper does it", Kind: views.FieldCheck})
	}
	return fields
}

// mostHint says what an empty field means: "at once" is read from the words.
func mostHint(p *shootPlan, fixed episode.DayStep) string {
	if at, ok := stepAt(p.recipe, fixed.Component, fixed.Step); ok {
		if minutes, urgent := shoot.WithinOf(p.recipe.Components[at.Component].Steps[at.Step]); urgent {
			return "Empty is " + strconv.Itoa(minutes) + ": the step says that it cannot wait."
		}
	}
	return "0 is at once; empty is as long as it likes."
}

func stepValues(s episode.DayStep) values {
	v := values{"pin": clockText(s.Pin)}
	var barred []string
	for _, span := range s.Barred {
		barred = append(barred, spanWords(span))
	}
	v["barred"] = strings.Join(barred, ", ")
	if s.Waits.Least > 0 {
		v["least"] = wholeText(s.Waits.Least)
	}
	if s.Waits.HasMost {
		v["most"] = strconv.Itoa(s.Waits.Most)
	}
	if s.ByHelper {
		v["helper"] = "yes"
	}
	return v
}

// spanWords writes a stretch of the day: "12:00–13:00".
func spanWords(s episode.Span) string { return episode.Clock(s.From) + "–" + episode.Clock(s.To) }

// stepForm is the form of the step that an address asks for, nil if it asks for
// none.
func stepForm(d *desk, p *shootPlan, query url.Values) (*views.Form, error) {
	name, ok := stepFrom(query)
	if !ok {
		return nil, nil
	}
	key, ok := p.keyOf(name)
	if !ok {
		return nil, fault.NotFoundf("There is no such step on this shoot day.")
	}
	fixed := p.fixedOf(name)
	form := newStepForm(d, p, key, stepValues(fixed).get, nil)
	return &form, nil
}

func newStepForm(d *desk, p *shootPlan, key shoot.Key, value func(string) string, err error) views.Form {
	name := p.nameOf(key)
	fields := filled(stepFields(p, p.fixedOf(name)), value, err)
	return views.Form{
		ID: "step", Title: "“" + p.stepText(key) + "”", Action: d.path(views.SheetShootDay) + "/steps?" + stepQuery(name),
		Fields: fields, Submit: "Replan", Cancel: d.path(views.SheetShootDay), Problem: formError(err, fields), Guard: true,
	}
}

// saveStep fixes something about a step of the day and plans anew.
func (s *Server) saveStep(w http.ResponseWriter, r *http.Request) error {
	d, form, err := s.deskAndForm(w, r)
	if err != nil {
		return err
	}
	p, err := s.layOut(r.Context(), d)
	if err != nil {
		return err
	}
	name, _ := stepFrom(r.URL.Query())
	key, ok := p.keyOf(name)
	if !ok {
		return fault.NotFoundf("There is no such step on this shoot day.")
	}
	fixed := p.fixedOf(name)
	readStep(form, p, &fixed)
	if err = form.err(); err == nil {
		err = s.changeDay(r.Context(), d.episode.ID, func() error { return s.store.SaveDayStep(r.Context(), fixed) })
	}
	return s.settle(w, r, err, outcome{
		to: d.path(views.SheetShootDay) + "#plan",
		redraw: func(err error) error {
			refused := newStepForm(d, p, key, form.values.Get, err)
			return s.drawShootDay(w, r, d, http.StatusUnprocessableEntity, shootForms{step: &refused})
		},
	})
}

func readStep(f *typed, p *shootPlan, s *episode.DayStep) {
	s.Pin, s.Barred = f.clock("pin"), f.spans("barred")
	s.ByHelper = f.text("helper") == "yes"
	s.Waits = episode.Waits{Least: f.whole("least"), Most: f.whole("most"), HasMost: f.text("most") != ""}
	switch {
	case s.Waits.Least > episode.DayMinutes:
		f.fail("least", "Let it wait a day at most: 1440 minutes.")
	case s.Waits.Most > episode.DayMinutes:
		f.fail("most", "Let it wait a day at most: 1440 minutes.")
	case s.Waits.HasMost && s.Waits.Most < s.Waits.Least:
		f.fail("most", "Let it wait at most as long as it waits at least, or longer.")
	}
	if s.Pin > 0 && s.Pin < p.zero {
		f.fail("pin", "The day does not reach back to %s. Begin it earlier, or pin the step later.", episode.Clock(s.Pin))
	}
}

// spans reads stretches of the day: "12:00–13:00, 15:30-16:00".
func (t *typed) spans(name string) []episode.Span {
	var all []episode.Span
	for _, part := range strings.FieldsFunc(t.text(name), func(c rune) bool { return c == ',' || c == ';' || c == '\n' }) {
		from, to, _ := strings.Cut(strings.NewReplacer("–", "-", "—", "-", " to ", "-").Replace(part), "-")
		first, okFirst := episode.ReadClock(from)
		last, okLast := episode.ReadClock(to)
		if !okFirst || !okLast || last <= first {
			t.fail(name, "“%s” is not a stretch of the day. Write two times, such as 12:00–13:00.", strings.TrimSpace(part))
			continue
		}
		all = append(all, episode.Span{From: first, To: last})
	}
	return all
}

// step reads a choice of stepOptions; 0 is none.
func (t *typed) step(name string) (component string, step int) {
	value := t.values.Get(name)
	if value == "" {
		return "", 0
	}
	n, ok := stepOfValue(value)
	if !ok {
		t.fail(name, "Choose a step of the recipe.")
	}
	return n.Component, n.Step
}
