package web

import (
	"net/http"
	"strconv"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/shoot"
	"benchproof/views"
)

// addTrade words what extra makes would save, or leaves it behind a link: it
// takes as long again as the plan.
func (s *Server) addTrade(sheet *views.ShootDaySheet, r *http.Request, d *desk, p *shootPlan) {
	if len(p.day.Batches[0].Stages) == 0 || p.day.Batches[0].Ahead {
		return
	}
	sheet.TradeNote = "A swap-out is one more make, taken ahead without filming to the end of a long wait. It may begin up to two hours before the day; what stands cold may be made the evening before."
	if r.URL.Query().Get("swapouts") == "" {
		sheet.TradePath = d.path(views.SheetShootDay) + "?swapouts=1#swap-outs"
		return
	}
	options, err := p.swapOuts(r.Context())
	if err != nil {
		sheet.TradeNote = "No comparison: " + p.say(err)
		return
	}
	sheet.Trade = p.tradeFacts(options)
	if p.isAnyAhead() {
		sheet.TradeNote += " Compared without the swap-outs planned already."
	}
}

func (p *shootPlan) isAnyAhead() bool {
	for _, b := range p.day.Batches {
		if b.Ahead {
			return true
		}
	}
	return false
}

// tradeFacts words the options, as far as one more make still helps.
func (p *shootPlan) tradeFacts(options []shoot.Option) []views.DayFact {
	var facts []views.DayFact
	for i, o := range options {
		fact := views.DayFact{Measure: strconv.Itoa(o.Makes), Text: p.tradeText(o)}
		if i > 0 && o.Wrap == options[i-1].Wrap && o.Begins == options[i-1].Begins {
			facts = append(facts, views.DayFact{Measure: strconv.Itoa(o.Makes), Text: "no better: one more make does not help"})
			break
		}
		for _, c := range o.Cuts {
			fact.Small = joined("; ", fact.Small, p.cutText(o, c))
		}
		if !o.Optimal && p.day.Finish == 0 {
			fact.Mark = views.Mark{Kind: views.MarkLook, Text: "nothing can wrap before " + p.at(o.Bound)}
		}
		facts = append(facts, fact)
	}
	return facts
}

func (p *shootPlan) tradeText(o shoot.Option) string {
	text := "extra makes: wraps "
	if o.Makes == 1 {
		text = "extra make: wraps "
	}
	text += p.at(o.Wrap)
	if p.day.Finish > 0 {
		text += ", begins " + p.at(o.Begins)
	}
	return text
}

// cutText says what is made ahead and which wait that saves.
func (p *shootPlan) cutText(o shoot.Option, c shoot.Cut) string {
	begins := "from " + p.at(c.Begins)
	if c.Overnight {
		begins = "the evening before, " + spanText(c.Lasts) + " in all"
	}
	step := ""
	for _, b := range o.Day.Batches {
		if b.Name == c.Stage.Batch {
			step = b.Recipe.Components[c.Stage.At.Component].Steps[c.Stage.At.Step].Text
		}
	}
	return "made ahead to the end of “" + shortened(step, 60) + "” " + begins + "; it cuts a wait of " + spanText(c.Minutes)
}

func spanText(minutes int) string {
	n := measure.Whole(int64(minutes))
	return measure.FormatMinutes(measure.Range{From: n, To: n})
}
