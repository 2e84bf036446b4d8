package web

import (
	"context"
	"fmt"
	"net/http"
	"strings"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/safety"
	"benchproof/views"
)

// shootForms are the forms of the Shoot day sheet. Those that are nil are drawn
// from what is saved.
type shootForms struct {
	day, kitchen, moment, step *views.Form
	late                       *lateBack
}

func (s *Server) showShootDay(w http.ResponseWriter, r *http.Request) error {
	d, err := s.openDesk(r)
	if err != nil {
		return err
	}
	return s.drawShootDay(w, r, d, http.StatusOK, shootForms{})
}

func (s *Server) drawShootDay(w http.ResponseWriter, r *http.Request, d *desk, status int, forms shootForms) error {
	page, err := s.sheetPage(r, d, views.SheetShootDay)
	if err != nil {
		return err
	}
	p, noPlan, err := s.planDay(r.Context(), d)
	if err != nil {
		return err
	}
	sheet := newShootDay(r.Context(), p, noPlan)
	sheet.Page, sheet.EpisodeFrame = page, s.frame(d, views.SheetShootDay)
	if sheet.Empty == "" { // a swap-out may save a day that has no plan
		if err := s.addTrade(&sheet, r, d, p); err != nil {
			return err
		}
	}
	if sheet.IsPlanned() {
		s.addExports(&sheet, d, p)
		sheet.Holding, sheet.Defers = s.holdingRows(p), safety.Deferral
	}
	s.addSearch(&sheet, p)
	if err := s.addShootForms(&sheet, r, d, p, forms); err != nil {
		return err
	}
	return s.draw(w, r, status, views.ShootDay(sheet))
}

// addShootForms adds the sheet's forms, with the lists they belong to.
func (s *Server) addShootForms(sheet *views.ShootDaySheet, r *http.Request, d *desk, p *shootPlan, forms shootForms) (err error) {
	sheet.Form = orDrawn(forms.day, func() views.Form {
		return shootDayForm(d, shootDayValues(p.settings).get, p.settings.Revision, nil)
	})
	sheet.Kitchen = orDrawn(forms.kitchen, func() views.Form {
		return kitchenForm(d, kitchenValues(p.settings).get, p.settings.Revision, nil)
	})
	moment := forms.moment
	if moment == nil {
		form, err := s.moments().form(d, r)
		if err != nil {
			return err
		}
		moment = &form
	}
	sheet.Moment, sheet.Moments = *moment, p.momentRows(s.moments())
	if sheet.Step = forms.step; sheet.Step == nil {
		if sheet.Step, err = stepForm(d, p, r.URL.Query()); err != nil {
			return err
		}
	}
	s.addLate(sheet, r, d, p, forms.late)
	return nil
}

// orDrawn is a form that was sent back, or the one that draw gives.
func orDrawn(form *views.Form, draw func() views.Form) views.Form {
	if form != nil {
		return *form
	}
	return draw()
}

// empty says what is missing for a plan, "" if nothing is.
func (p *shootPlan) empty() string {
	switch {
	case len(p.day.Batches) == 0:
		return "No batch is planned for the shoot. Plan one on the Shop sheet."
	case len(p.day.Batches[0].Recipe.Sequence()) == 0:
		return "The recipe has no steps to plan yet. Write them on the Recipe sheet."
	}
	return ""
}

// newShootDay words a day whose planning ended with err.
func newShootDay(ctx context.Context, p *shootPlan, err error) views.ShootDaySheet {
	sheet := views.ShootDaySheet{Empty: p.empty()}
	if sheet.Empty != "" {
		return sheet
	}
	sheet.Notes = p.notes()
	if err != nil {
		sheet.Problem = fault.Say(err)
		sheet.Facts, sheet.Fixed = p.workFacts(), p.problemRows(err)
		return sheet
	}
	sheet.Facts = append(p.wrapFacts(), p.workFacts()...)
	sheet.Rows, sheet.Chart, sheet.Moved = p.rows(), newChart(p), p.movedRows()
	sheet.Before = p.beforeRows(ctx)
	return sheet
}

// notes are what the plan leaves out, and what it could not keep.
func (p *shootPlan) notes() []string {
	var notes []string
	if p.makes > mostPlanned {
		notes = append(notes, fmt.Sprintf("%d makes are planned on the Shop sheet; the plan holds the first %d", p.makes, mostPlanned))
	}
	if len(p.stale) > 0 {
		notes = append(notes, "No longer in the plan, so not kept to: "+strings.Join(p.stale, "; "))
	}
	if p.calm {
		notes = append(notes, notAtOnce)
	}
	return append(notes, p.plan.Overdue...)
}

// wrapFacts are when the day begins and wraps, and what is proved about it.
func (p *shootPlan) wrapFacts() []views.DayFact {
	begins := views.DayFact{Measure: p.clock(p.plan.Begin), Text: "begins"}
	wraps := views.DayFact{Measure: p.clock(p.plan.Wrap), Beside: p.next(p.plan.Wrap), Text: "wraps"}
	if p.day.Finish > 0 {
		begins.Mark = boundMark(p, "nothing can begin later", "no plan begins after ")
	} else {
		wraps.Mark = boundMark(p, "nothing can wrap earlier", "nothing can wrap before ")
	}
	facts := []views.DayFact{begins, wraps}
	switch earliest, latest := p.plan.EarliestWrap, p.plan.LatestWrap; {
	case earliest < 0 || earliest == latest:
	case latest < 0:
		facts = append(facts, views.DayFact{Measure: p.clock(earliest), Beside: p.next(earliest), Text: "the earliest wrap in this order; if every step takes its most, the day does not work out"})
	default:
		facts = append(facts, views.DayFact{Measure: p.clock(earliest) + "–" + p.clock(latest), Beside: p.next(latest), Text: "wraps, if every step takes its least or its most, in this order"})
	}
	return facts
}

func boundMark(p *shootPlan, proved, look string) views.Mark {
	if p.plan.Optimal {
		return views.Mark{Kind: views.MarkProved, Text: proved}
	}
	return views.Mark{Kind: views.MarkLook, Text: look + p.at(p.plan.Bound)}
}

// workFacts are the minutes with hands and without, of all batches.
func (p *shootPlan) workFacts() []views.DayFact {
	var day workload
	for _, b := range p.day.Batches {
		day = day.plus(workOf(b.Recipe))
	}
	facts := []views.DayFact{
		spanFact(day.handsOn, "hands-on, all batches"),
		spanFact(day.unattended, "unattended"),
	}
	if day.unsaid > 0 {
		says := views.Mark{Kind: views.MarkLook, Text: count(day.unsaid, "step does", "steps do") + " not say how long; the plan guesses"}
		facts = append(facts, views.DayFact{Mark: says})
	}
	return facts
}

// workload adds up what steps ask: minutes with hands, minutes without, and
// how many steps say nothing.
type workload struct {
	handsOn, unattended measure.Range
	unsaid              int
}

func workOf(r recipe.Recipe) workload {
	var w workload
	for _, c := range r.Components {
		for _, step := range c.Steps {
			switch {
			case !step.HasMinutes:
				w.unsaid++
			case step.HandsOn:
				w.handsOn = w.handsOn.Add(step.Minutes)
			default:
				w.unattended = w.unattended.Add(step.Minutes)
			}
		}
	}
	return w
}

func (w workload) plus(v workload) workload {
	return workload{w.handsOn.Add(v.handsOn), w.unattended.Add(v.unattended), w.unsaid + v.unsaid}
}

// spanFact puts the end of a range beneath its beginning, for the gutter is
// narrow.
func spanFact(minutes measure.Range, text string) views.DayFact {
	if minutes.IsZero() {
		return views.DayFact{Measure: "none said", Text: text}
	}
	from, to := measure.Range{From: minutes.From, To: minutes.From}, measure.Range{From: minutes.To, To: minutes.To}
	fact := views.DayFact{Measure: measure.FormatMinutes(from), Text: text}
	if minutes.From.Cmp(minutes.To) != 0 {
		fact.Beside = "to " + measure.FormatMinutes(to)
	}
	return fact
}
