package web

import (
	"fmt"
	"net/http"
	"slices"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shoot"
	"benchproof/views"
)

func (s *Server) showShootDay(w http.ResponseWriter, r *http.Request) error {
	d, err := s.openDesk(r)
	if err != nil {
		return err
	}
	settings, err := s.store.ShootDay(r.Context(), d.episode.ID)
	if err != nil {
		return err
	}
	form := shootDayForm(d, shootDayValues(settings).get, settings.Revision, nil)
	return s.drawShootDay(w, r, d, settings, http.StatusOK, form)
}

func (s *Server) drawShootDay(w http.ResponseWriter, r *http.Request, d *desk, settings episode.ShootDay, status int, form views.Form) error {
	page, err := s.sheetPage(r, d, views.SheetShootDay)
	if err != nil {
		return err
	}
	p, err := s.layOut(r, d, settings)
	if err != nil {
		return err
	}
	sheet := views.ShootDaySheet{Empty: p.empty()}
	if sheet.Empty == "" {
		if sheet, err = newShootDay(p, p.make(r.Context())); err != nil {
			return err
		}
	}
	if sheet.IsPlanned() {
		s.addTrade(&sheet, r, d, p)
		s.addExports(&sheet, d, p)
	}
	sheet.Page, sheet.EpisodeFrame, sheet.Form = page, s.frame(d, views.SheetShootDay), form
	return s.draw(w, r, status, views.ShootDay(sheet))
}

// layOut lays the episode's day out, not yet planned.
func (s *Server) layOut(r *http.Request, d *desk, settings episode.ShootDay) (*shootPlan, error) {
	batches, err := s.store.Batches(r.Context(), d.episode.ID)
	if err != nil {
		return nil, err
	}
	shots, err := s.store.Shots(r.Context(), d.episode.ID)
	if err != nil {
		return nil, err
	}
	reading := d.version.Reading
	if d.hasRecipe() {
		reading = recipe.Scale(reading, d.episode.Scale, s.writer(d.show, reading, recipe.AsWritten)).Recipe
	}
	return newShootPlan(settings, reading, batches, shots), nil
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

// newShootDay words a day whose planning ended with err. Only a defect of ours
// is an error: that there is no plan is said on the sheet.
func newShootDay(p *shootPlan, err error) (views.ShootDaySheet, error) {
	var sheet views.ShootDaySheet
	if kind := fault.KindOf(err); err != nil && kind != fault.Invalid && kind != fault.Busy {
		return sheet, err
	}
	sheet.Note = p.note()
	if err != nil {
		sheet.Problem = p.say(err)
		sheet.Facts = p.workFacts()
		return sheet, nil
	}
	sheet.Facts = append(p.wrapFacts(), p.workFacts()...)
	sheet.Rows, sheet.Chart = p.rows(), newChart(p)
	return sheet, nil
}

func (p *shootPlan) note() string {
	if p.makes <= mostPlanned {
		return ""
	}
	return fmt.Sprintf("%d makes are planned on the Shop sheet; the plan holds the first %d", p.makes, mostPlanned)
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

// leastGap is the shortest time without work that is worth a line.
const leastGap = 10

// rows are the plan in order of time: steps, camera setups, free time.
func (p *shootPlan) rows() []views.DayRow {
	type timed struct {
		at, order int
		row       views.DayRow
	}
	var all []timed
	for _, setup := range p.plan.Setups {
		row := views.DayRow{Text: "Put up the camera: " + setup.Name, Small: "until " + p.at(setup.To)}
		all = append(all, timed{setup.From, 0, row})
	}
	for _, e := range p.plan.Entries {
		all = append(all, timed{e.From, 1, p.entryRow(e)})
	}
	for _, gap := range p.plan.Gaps {
		if minutes := gap.To - gap.From; minutes >= leastGap {
			all = append(all, timed{gap.From, 2, views.DayRow{Text: freeText(minutes), Small: "until " + p.at(gap.To), Free: true}})
		}
	}
	slices.SortStableFunc(all, func(a, b timed) int {
		if a.at != b.at {
			return a.at - b.at
		}
		return a.order - b.order
	})
	rows := make([]views.DayRow, len(all))
	for i, each := range all {
		each.row.At, each.row.Beside = p.clock(each.at), p.next(each.at)
		rows[i] = each.row
	}
	return rows
}

func (p *shootPlan) entryRow(e shoot.Entry) views.DayRow {
	row := views.DayRow{Text: e.Step.Text, Filmed: filmedText(e.Setup, p.beginFilmed(e)), Ahead: e.IsAhead, Waits: !slices.Contains(e.Uses, shoot.Hands)}
	if e.IsClean {
		row.Text = "Clean down: " + shortened(e.Step.Text, 40)
	}
	until := "until " + p.at(e.To)
	if e.Minutes.Guess {
		row.Mark = views.Mark{Kind: views.MarkLook, Text: count(e.To-e.From, "minute", "minutes") + ", a guess: the step does not say"}
	}
	row.Small = joined(" · ", e.Key.Batch, p.part(e), e.Step.Station, until)
	return row
}

// filmedText says how a step is filmed, if it is: all of it, or its beginning.
func filmedText(whole, beginning string) string {
	switch {
	case whole != "":
		return "filmed: " + whole
	case beginning != "":
		return "its beginning filmed: " + beginning
	}
	return ""
}

// part is the name of the step's component.
func (p *shootPlan) part(e shoot.Entry) string {
	for _, b := range p.day.Batches {
		if b.Name == e.Key.Batch {
			return b.Recipe.Components[e.Key.At.Component].Name
		}
	}
	return ""
}

// freeText names time in which no hands are needed.
func freeText(minutes int) string {
	text := spanText(minutes) + " free"
	switch {
	case minutes < 20:
		return text + ": wash up"
	case minutes < 60:
		return text + ": B-roll, eat"
	}
	return text + ": B-roll, eat, rest"
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
