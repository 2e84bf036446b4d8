package web

import (
	"context"
	"net/http"
	"slices"
	"strconv"
	"strings"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/shoot"
	"benchproof/views"
)

// addTrade words what extra makes would save, or leaves it behind a link: it
// takes as long again as the plan.
func (s *Server) addTrade(sheet *views.ShootDaySheet, r *http.Request, d *desk, p *shootPlan) error {
	if len(p.day.Batches[0].Stages) == 0 || p.day.Batches[0].Ahead {
		return nil
	}
	sheet.TradeNote = "A swap-out is one more make, taken ahead without filming to the end of a long wait. It may begin up to two hours before the day; what stands cold may be made the evening before, and is in the cold by " + episode.Clock(eveningEnds) + "."
	if r.URL.Query().Get("swapouts") == "" {
		sheet.TradePath = d.path(views.SheetShootDay) + "?swapouts=1#swap-outs"
		return nil
	}
	options, err := p.swapOuts(r.Context())
	if err != nil {
		sheet.TradeNote = "No comparison: " + fault.Say(err)
		return nil
	}
	shopping, err := s.trolleyOf(r.Context(), d)
	if err != nil {
		return err
	}
	sheet.Trade = tradeRows(r.Context(), shopping, d, p, options)
	if slices.ContainsFunc(p.day.Batches, func(b shoot.Batch) bool { return b.Ahead && b.Until == nil }) {
		sheet.TradeNote += " Compared without the swap-outs planned already."
	}
	if len(p.steps) > 0 {
		sheet.TradeNote += " Compared without what is fixed about single steps."
	}
	return nil
}

// tradeRows words the options, as far as one more make still helps.
func tradeRows(ctx context.Context, t trolley, d *desk, p *shootPlan, options []shoot.Option) []views.TradeRow {
	var rows []views.TradeRow
	for i, o := range options {
		row := views.TradeRow{DayFact: views.DayFact{Measure: strconv.Itoa(o.Makes), Text: p.tradeText(o)}}
		if o.Refused != nil {
			rows = append(rows, row)
			continue
		}
		if i > 0 && options[i-1].Refused == nil && o.Wrap == options[i-1].Wrap && o.Begins == options[i-1].Begins {
			row.Text = "no better: one more make does not help"
			return append(rows, row)
		}
		evening, _ := p.evening(ctx, o.Choices())
		for _, c := range o.Cuts {
			row.Cuts = append(row.Cuts, p.cutText(c, evening))
			row.Stages = append(row.Stages, p.stageValue(c.Stage))
		}
		switch {
		case !o.Optimal && p.day.Finish > 0:
			row.Mark = views.Mark{Kind: views.MarkLook, Text: "no plan begins after " + p.at(o.Bound)}
		case !o.Optimal:
			row.Mark = views.Mark{Kind: views.MarkLook, Text: "nothing can wrap before " + p.at(o.Bound)}
		}
		row.Adds = addsText(t, d, p, o)
		if row.Picked = p.isPicked(row.Stages); !row.Picked {
			row.PickAction = d.path(views.SheetShootDay) + "/swap-outs"
		}
		rows = append(rows, row)
	}
	return rows
}

func (p *shootPlan) tradeText(o shoot.Option) string {
	text := "extra makes: wraps "
	if o.Makes == 1 {
		text = "extra make: wraps "
	}
	if o.Refused != nil {
		return strings.TrimSuffix(text, "wraps ") + "no plan. " + fault.Say(o.Refused)
	}
	text += p.at(o.Wrap)
	if p.day.Finish > 0 {
		text += ", begins " + p.at(o.Begins)
	}
	return text
}

// cutText says what is made ahead, when, and which wait that saves.
func (p *shootPlan) cutText(c shoot.Cut, evening shoot.Plan) string {
	begins := "from " + p.at(c.Begins)
	if c.Overnight {
		begins = "the evening before"
		if k := slices.IndexFunc(evening.Entries, func(e shoot.Entry) bool { return e.Key.Batch == c.Batch }); k >= 0 {
			begins += " from " + p.clock(evening.Entries[k].From) + " at the latest"
		}
		begins += ", " + spanText(c.Lasts) + " in all"
	}
	step := p.stepOf(c.Stage).Text
	return "made ahead to the end of “" + shortened(step, 60) + "” " + begins + "; it cuts a wait of " + spanText(c.Minutes)
}

func spanText(minutes int) string {
	n := measure.Whole(int64(minutes))
	return measure.FormatMinutes(measure.Range{From: n, To: n})
}

// stageValue names a stage as a form sends it: its step as stepOptions do.
func (p *shootPlan) stageValue(key shoot.Key) string {
	n := p.nameOf(key)
	return stepValue(n.Component, n.Step)
}

// pickedStages are the stages of the swap-outs that the day is planned with, as
// a form sends them.
func (p *shootPlan) pickedStages() []string {
	var all []string
	for _, b := range p.batches {
		if b.Step > 0 {
			all = append(all, stepValue(b.Component, b.Step))
		}
	}
	return all
}

// isPicked tells whether the day is planned with just these stages.
func (p *shootPlan) isPicked(stages []string) bool {
	picked := p.pickedStages()
	slices.Sort(picked)
	return slices.Equal(picked, slices.Sorted(slices.Values(stages)))
}

// pickSwapOuts plans the day with swap-outs up to the stages sent, none for
// none; the Shop sheet then buys for them too.
func (s *Server) pickSwapOuts(w http.ResponseWriter, r *http.Request) error {
	d, form, err := s.deskAndForm(w, r)
	if err != nil {
		return err
	}
	p, err := s.layOut(r.Context(), d)
	if err != nil {
		return err
	}
	picked := p.readStages(form)
	if err := form.err(); err != nil {
		return err
	}
	err = s.changeDay(r.Context(), d.episode.ID, func() error {
		return s.store.PickSwapOuts(r.Context(), d.episode.ID, picked)
	})
	if err != nil {
		return err
	}
	s.flash(r, "The day is planned so, and the Shop sheet buys for it.", "")
	return seeOther(w, r, d.path(views.SheetShootDay)+"?swapouts=1#swap-outs")
}

// readStages reads the stages sent as swap-outs of one make each.
func (p *shootPlan) readStages(f *typed) []episode.Batch {
	var picked []episode.Batch
	for _, value := range f.values["stage"] {
		name, ok := stepOfValue(value)
		at, isThere := stepAt(p.recipe, name.Component, name.Step)
		stage := p.stageAt(at)
		if !ok || !isThere || stage == nil {
			f.fail("stage", "A swap-out cannot take over there any more. Open the Shoot day sheet again and compare anew.")
			continue
		}
		picked = append(picked, episode.Batch{
			Kind: episode.SwapOut, Makes: measure.Whole(1), Component: name.Component, Step: name.Step, Overnight: stage.Overnight,
		})
	}
	return picked
}
