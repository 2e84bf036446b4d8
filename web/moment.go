package web

import (
	"context"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/shoot"
	"benchproof/views"
)

// moments is the part of what is at a fixed time of the shoot day. Each change
// plans the day anew.
func (s *Server) moments() part[episode.Moment] {
	return part[episode.Moment]{
		word: "moment", many: "moments", sheet: views.SheetShootDay,
		fields: momentFields, values: momentValues, read: readMoment,
		get: s.store.Moment,
		add: func(ctx context.Context, m episode.Moment) (id int64, err error) {
			err = s.changeDay(ctx, m.EpisodeID, func() error {
				id, err = s.store.AddMoment(ctx, m)
				return err
			})
			return id, err
		},
		save: func(ctx context.Context, m episode.Moment) error {
			return s.changeDay(ctx, m.EpisodeID, func() error { return s.store.SaveMoment(ctx, m) })
		},
		remove: func(ctx context.Context, id int64) error {
			m, err := s.store.Moment(ctx, id)
			if err != nil {
				return err
			}
			return s.changeDay(ctx, m.EpisodeID, func() error { return s.store.DeleteMoment(ctx, id) })
		},
		blank: func(episodeID int64) episode.Moment { return episode.Moment{EpisodeID: episodeID} },
		key:   func(m episode.Moment) partKey { return partKey{m.ID, m.EpisodeID, m.Revision} },
		stamp: func(m *episode.Moment, revision int) { m.Revision = revision },
	}
}

// takable are the stations of which a moment can take one.
var takable = []string{shoot.Hands, shoot.Camera, shoot.Light, "oven", "hob", "mixer"}

func momentFields(d *desk) []views.Field {
	takes := []views.Option{{Label: "nothing"}}
	for _, station := range takable {
		takes = append(takes, views.Option{Value: station, Label: station})
	}
	steps := stepOptions(d)
	steps[0].Label = "all that is made for the shoot"
	return []views.Field{
		{Name: "name", Label: "What", Required: true, Hint: "A delivery, guests who taste, lunch in the oven."},
		{Name: "at", Label: "At", Required: true, Hint: "A time such as 11:00."},
		{Name: "until", Label: "Until", Hint: "Empty if it is over at once."},
		{Name: "takes", Label: "Takes", Kind: views.FieldSelect, Options: takes, Hint: "One of them is not there until then."},
		{Name: "holds", Label: "Holds", Kind: views.FieldSelect, Options: []views.Option{
			{Label: "nothing"}, {Value: string(episode.DoneBefore), Label: "what must be done by then"}, {Value: string(episode.NotBefore), Label: "what cannot begin before"},
		}},
		{Name: "step", Label: "That is", Kind: views.FieldSelect, Options: steps},
	}
}

func momentValues(_ *desk, m episode.Moment) values {
	v := values{"name": m.Name, "at": clockText(m.At), "until": clockText(m.Until), "takes": m.Takes, "holds": string(m.Holds)}
	if m.Step > 0 {
		v["step"] = stepValue(m.Component, m.Step)
	}
	return v
}

func readMoment(f *typed, m *episode.Moment) {
	m.Name = f.needed("name", "Say what is at that time: a delivery, guests.")
	if f.needed("at", "Say when it is: 11:00.") != "" {
		m.At = f.clock("at")
	}
	before := len(f.faults)
	if m.Until = f.clock("until"); len(f.faults) == before {
		f.later("until", m.Until, m.At, "Let it end after it begins, or leave it empty.")
	}
	m.Takes = f.oneOf("takes", append([]string{""}, takable...))
	if m.Takes != "" && f.text("until") == "" {
		f.fail("until", "Say until when the %s is taken.", m.Takes)
	}
	m.Holds = episode.Hold(f.oneOf("holds", asWords(episode.Holds)))
	m.Component, m.Step = f.step("step")
}

// momentRows lists what is at a fixed time.
func (p *shootPlan) momentRows(part part[episode.Moment]) []views.MomentRow {
	var rows []views.MomentRow
	for _, m := range p.moments {
		rows = append(rows, views.MomentRow{
			At: episode.Clock(m.At), Until: untilWords(m), Name: m.Name, Small: momentWords(m),
			EditPath: part.changePath(m.EpisodeID, m.ID), DeleteAction: part.path(m.EpisodeID, m.ID) + "/delete",
		})
	}
	return rows
}

func untilWords(m episode.Moment) string {
	if m.Until == 0 {
		return ""
	}
	return "to " + episode.Clock(m.Until)
}

// momentWords say what a moment takes and holds.
func momentWords(m episode.Moment) string {
	taken, held := "", ""
	if m.Takes != "" {
		taken = "takes the " + m.Takes + " until " + episode.Clock(m.Until)
		if m.Takes == shoot.Hands {
			taken = "takes a pair of hands until " + episode.Clock(m.Until)
		}
	}
	what := "all that is made for the shoot"
	if m.Step > 0 {
		what = readOn(stepName(m.Component, m.Step))
	}
	switch m.Holds {
	case episode.DoneBefore:
		held = what + " is done by then"
	case episode.NotBefore:
		held = what + " begins no earlier"
	}
	return joined(" · ", taken, held)
}
