package web

import (
	"errors"
	"slices"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/shoot"
	"benchproof/views"
)

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
		if e.IsRest {
			continue
		}
		row := p.entryRow(e)
		if e.Moment != "" {
			row = p.momentRow(e)
		}
		all = append(all, timed{e.From, 1, row})
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
	row := views.DayRow{Text: e.Step.Text, Filmed: p.filmedText(e), Ahead: e.IsAhead, Waits: e.IsOpening || !slices.Contains(e.Uses, shoot.Hands)}
	if e.IsClean {
		row.Text = cleanText(e)
	}
	end := p.endOf(e)
	until := "until " + p.at(end)
	if e.Minutes.Guess {
		row.Mark = views.Mark{Kind: views.MarkLook, Text: count(end-e.From, "minute", "minutes") + ", a guess: the step does not say"}
	}
	row.Small = joined(" · ", e.Key.Batch, p.part(e), e.Step.Station, until)
	if !e.IsClean {
		p.addFixed(&row, e)
	}
	return row
}

func cleanText(e shoot.Entry) string { return "Clean down: " + shortened(e.Step.Text, 40) }

// addFixed marks what is fixed and known about a step, and says where it is
// changed.
func (p *shootPlan) addFixed(row *views.DayRow, e shoot.Entry) {
	name := p.nameOf(e.Key)
	row.EditPath = episodePath(p.settings.EpisodeID) + "/shoot-day?" + stepQuery(name) + "#step"
	row.Step, row.Name = stepQuery(name), shortened(e.Step.Text, 60)
	fixed := p.fixedOf(name)
	if fixed.Pin > 0 {
		row.Fixed = append(row.Fixed, "pinned to "+episode.Clock(fixed.Pin))
	}
	for _, span := range fixed.Barred {
		row.Fixed = append(row.Fixed, "not "+spanWords(span))
	}
	row.Fixed = append(row.Fixed, waitWords(fixed.Waits)...)
	if fixed.ByHelper {
		row.Fixed = append(row.Fixed, "the helper’s")
	}
	if p.day.Begun {
		row.Begun, row.Done = fixed.Began > 0, fixed.Ended > 0
	}
}

// waitWords say how long a step may wait, as far as a person has said so.
func waitWords(w episode.Waits) []string {
	var words []string
	if w.Least > 0 {
		words = append(words, "waits at least "+spanText(w.Least))
	}
	switch {
	case w.HasMost && w.Most == 0:
		words = append(words, "at once")
	case w.HasMost:
		words = append(words, "waits at most "+spanText(w.Most))
	}
	return words
}

// mostNamed is how many steps a refusal is said to be about: more say nothing.
const mostNamed = 8

// problemRows are the steps that keep a day from having a plan: those that the
// error is about, and those of which something is fixed.
func (p *shootPlan) problemRows(err error) []views.DayRow {
	named := p.stepsOf(err)
	keys := slices.Clone(named)
	for _, fixed := range p.steps {
		if key, ok := p.keyOf(fixed.StepName); ok && !slices.Contains(keys, key) {
			keys = append(keys, key)
		}
	}
	var rows []views.DayRow
	for _, key := range keys {
		fixed := p.fixedOf(p.nameOf(key))
		step := p.stepOf(key)
		row := views.DayRow{At: clockText(fixed.Pin), Text: step.Text, Small: key.Batch}
		switch {
		case !slices.Contains(named, key):
		case len(named) == 1:
			row.Mark = views.Mark{Kind: views.MarkWrong, Text: fault.Say(err)}
		default:
			row.Mark = views.Mark{Kind: views.MarkWrong, Text: "cannot be met together with the others marked here"}
		}
		p.addFixed(&row, shoot.Entry{Key: key, Step: step})
		rows = append(rows, row)
	}
	return rows
}

// stepsOf are the steps that a refused plan is about, of those that the recipe
// still has.
func (p *shootPlan) stepsOf(err error) []shoot.Key {
	var refused *shoot.Refusal
	if !errors.As(err, &refused) {
		return nil
	}
	keys := slices.DeleteFunc(slices.Clone(refused.Tasks), func(key shoot.Key) bool {
		return key.At.Component >= len(p.recipe.Components) || key.At.Step >= len(p.recipe.Components[key.At.Component].Steps)
	})
	return keys[:min(len(keys), mostNamed)]
}

// momentRow is something at a fixed time.
func (p *shootPlan) momentRow(e shoot.Entry) views.DayRow {
	row := views.DayRow{Text: e.Moment, Moment: true}
	for _, m := range p.moments {
		if m.Name == e.Moment && m.At == p.zero+e.From {
			row.Small = momentWords(m)
		}
	}
	return row
}

// filmedText says how a step is filmed, if it is: all of it, or its beginning.
func (p *shootPlan) filmedText(e shoot.Entry) string {
	switch {
	case e.IsOpening:
		return "its beginning filmed, until " + p.clock(e.To) + ": " + e.Setup
	case e.Setup != "":
		return "filmed: " + e.Setup
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
