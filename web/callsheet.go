package web

import (
	"cmp"
	"context"
	"fmt"
	"net/http"
	"strings"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/views"
)

func (s *Server) showCallSheet(w http.ResponseWriter, r *http.Request) error {
	d, err := s.openDesk(r)
	if err != nil {
		return err
	}
	plan, noPlan, err := s.planDay(r.Context(), d)
	if err != nil {
		return err
	}
	described, err := s.store.Setups(r.Context(), d.episode.ID)
	if err != nil {
		return err
	}
	page, err := s.sheetPage(r, d, views.SheetCallSheet)
	if err != nil {
		return err
	}
	sheet := newCallSheet(r.Context(), s.shots(), d, plan, noPlan, described)
	sheet.Page, sheet.EpisodeFrame = page, s.frame(d, views.SheetCallSheet)
	if on := plan.settings.On; !on.IsZero() {
		sheet.Date, sheet.Day = s.day(on), on.Format("Monday 2 January 2006")
	}
	if sheet.Shopping, err = s.stillToGet(r, d); err != nil {
		return err
	}
	sheet.Cautions = s.publishedFacts(d).cautionTexts()
	return s.draw(w, r, http.StatusOK, views.CallSheetPage(sheet))
}

// newCallSheet words a day for all who are there; noPlan says why it is not
// planned.
func newCallSheet(ctx context.Context, p part[episode.Shot], d *desk, plan *shootPlan, noPlan error, described []episode.Setup) views.CallSheet {
	sheet := views.CallSheet{
		Day: "no day set yet", PlanPath: d.path(views.SheetShootDay), ShopPath: d.path(views.SheetShop),
		Here: callLists(plan), Ahead: plan.aheadFacts(), DayBefore: plan.beforeRows(ctx), Missing: gotText(plan.shots),
	}
	list := newShotList(d.version.Reading, plan.shots, described, nil)
	switch {
	case plan.empty() != "":
		sheet.NoPlan = plan.empty()
	case noPlan != nil:
		sheet.NoPlan = cmp.Or(fault.Say(noPlan), "The day could not be planned.")
	default:
		list = newShotList(d.version.Reading, plan.shots, described, plan)
		sheet.Plan = onPaper(plan.rows())
	}
	sheet.Times = plan.callTimes(sheet.NoPlan == "")
	for _, block := range list.blocks() {
		drawn := views.SetupBlock{Name: block.name, About: setupAbout(block.setup)}
		for _, shot := range block.shots {
			drawn.Shots = append(drawn.Shots, shotRow(p, d, shot))
		}
		sheet.Setups = append(sheet.Setups, drawn)
	}
	return sheet
}

// callTimes are the hours that everybody keeps.
func (p *shootPlan) callTimes(isPlanned bool) []views.DayFact {
	facts := []views.DayFact{{Measure: episode.Clock(p.settings.Begin), Text: "begin"}}
	if isPlanned {
		facts = []views.DayFact{
			{Measure: p.clock(p.plan.Begin), Beside: p.next(p.plan.Begin), Text: "begin"},
			{Measure: p.clock(p.plan.Wrap), Beside: p.next(p.plan.Wrap), Text: "wrap"},
		}
	}
	for _, until := range []struct {
		at   int
		text string
	}{{p.settings.DoneBy, "to be done by"}, {p.settings.HelperUntil, "the helper leaves"}, {p.settings.LightUntil, "the light goes"}} {
		if until.at > 0 {
			facts = append(facts, views.DayFact{Measure: episode.Clock(until.at), Text: until.text})
		}
	}
	return facts
}

// callLists are who and what must be there, those that are known.
func callLists(p *shootPlan) []views.CallList {
	var lists []views.CallList
	for _, each := range []views.CallList{
		{Name: "people", Lines: linesOf(p.settings.People)},
		{Name: "gear", Lines: linesOf(p.settings.Gear)},
		{Name: "props", Lines: linesOf(p.settings.Props)},
		{Name: "kitchen", Lines: p.recipe.Equipment},
	} {
		if len(each.Lines) > 0 {
			lists = append(lists, each)
		}
	}
	return lists
}

// linesOf parts a text into its lines, leaving out empty ones.
func linesOf(text string) []string {
	var lines []string
	for line := range strings.Lines(text) {
		if line = strings.TrimSpace(line); line != "" {
			lines = append(lines, line)
		}
	}
	return lines
}

// aheadFacts are the makes that are not filmed as they are made: swap-outs and
// spares, with when those of the day begin.
func (p *shootPlan) aheadFacts() []views.DayFact {
	var facts []views.DayFact
	for _, b := range p.batches {
		if b.Kind == episode.SwapOut || b.Kind == episode.Spare {
			facts = append(facts, views.DayFact{Measure: measure.FormatNumber(b.Makes) + " ×", Text: batchKindWords(b), Small: b.Note})
		}
	}
	for _, b := range p.day.Batches {
		from, to, ok := p.spanOf(b.Name)
		if b.Ahead && ok {
			facts = append(facts, views.DayFact{Measure: p.clock(from), Beside: p.next(from), Text: b.Name + " begins", Small: "until " + p.at(to)})
		}
	}
	return facts
}

// spanOf is when the plan begins and ends a batch; ok is false if it has none of
// its steps.
func (p *shootPlan) spanOf(batch string) (from, to int, ok bool) {
	for _, e := range p.plan.Entries {
		if e.Key.Batch != batch || e.Moment != "" {
			continue
		}
		if !ok {
			from = e.From
		}
		to, ok = max(to, e.To), true
	}
	return from, to, ok
}

// onPaper takes away what is only pressed.
func onPaper(rows []views.DayRow) []views.DayRow {
	for i := range rows {
		rows[i].EditPath, rows[i].Step = "", ""
	}
	return rows
}

// stillToGet counts what is not ticked off on the episode's shopping list; "" if
// nothing is left.
func (s *Server) stillToGet(r *http.Request, d *desk) (string, error) {
	_, all, err := s.needsOf(r.Context(), d)
	if err != nil {
		return "", err
	}
	shelf, err := s.shelf(r.Context(), d.show)
	if err != nil {
		return "", err
	}
	ticked, err := s.ticked(r.Context(), d.episode.ID)
	if err != nil {
		return "", err
	}
	list := shelf.List(all, s.config.Larder)
	left := 0
	for _, aisle := range list.Aisles {
		for _, item := range aisle.Items {
			if !ticked[item.Key] {
				left++
			}
		}
	}
	if left == 0 {
		return "", nil
	}
	return fmt.Sprintf("%d of %d still to get", left, list.Items()), nil
}
