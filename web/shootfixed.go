package web

import (
	"benchproof/kitchen/episode"
	"benchproof/kitchen/shoot"
)

// addSwapOuts adds the swap-outs that are made up to a step. The first batch of
// the shoot leaves that step out and goes on with them; what is made the day
// before has no steps on this day.
func (p *shootPlan) addSwapOuts() {
	if len(p.day.Batches) == 0 || p.day.Batches[0].Ahead {
		return
	}
	for _, b := range p.batches {
		if b.Step == 0 {
			continue
		}
		choice, ok := p.choiceOf(b)
		day, _, err := p.day.With([]shoot.Choice{choice})
		if !ok || err != nil {
			p.stale = append(p.stale, "the swap-out up to "+readOn(stepName(b.Component, b.Step)))
			continue
		}
		p.day = day
	}
}

// choiceOf is the choice that a batch made up to a step stands for; ok is false if
// the recipe has no such step any more, or nothing is filmed that it could serve.
func (p *shootPlan) choiceOf(b episode.Batch) (c shoot.Choice, ok bool) {
	at, ok := stepAt(p.recipe, b.Component, b.Step)
	if !ok || len(p.day.Batches) == 0 {
		return c, false
	}
	return shoot.Choice{
		Stage: shoot.Key{Batch: p.day.Batches[0].Name, At: at}, Overnight: b.Overnight, Name: "swap-out to " + readOn(stepName(b.Component, b.Step)),
	}, true
}

// addMoments adds what is at a fixed time, with the steps it holds.
func (p *shootPlan) addMoments() {
	for _, m := range p.moments {
		moment := shoot.Moment{Name: m.Name, At: m.At - p.zero}
		switch keys := p.heldBy(m); m.Holds {
		case episode.DoneBefore:
			moment.Before = keys
		case episode.NotBefore:
			moment.After = keys
		}
		p.day.Moments = append(p.day.Moments, moment)
	}
}

// heldBy lists the steps that a moment holds: one of each make for the shoot, or
// all of them.
func (p *shootPlan) heldBy(m episode.Moment) []shoot.Key {
	if m.Holds == episode.HoldsNothing {
		return nil
	}
	at, ok := stepAt(p.recipe, m.Component, m.Step)
	if m.Step > 0 && !ok {
		p.stale = append(p.stale, "“"+m.Name+"” for "+readOn(stepName(m.Component, m.Step)))
		return nil
	}
	var keys []shoot.Key
	for _, b := range p.day.Batches {
		for _, t := range p.recipe.Sequence() {
			if !b.Ahead && (m.Step == 0 || t.At == at) {
				keys = append(keys, shoot.Key{Batch: b.Name, At: t.At})
			}
		}
	}
	return keys
}

// addSteps adds what is fixed about single steps, and how far the day has come.
func (p *shootPlan) addSteps() {
	for _, s := range p.steps {
		key, ok := p.keyOf(s.StepName)
		if !ok {
			p.stale = append(p.stale, joined(", ", s.Batch, readOn(stepName(s.Component, s.Step))))
			continue
		}
		p.addStep(key, s)
	}
	if p.settings.Now > 0 {
		p.day.Begun, p.day.Now = true, max(0, p.settings.Now-p.zero)
	}
}

func (p *shootPlan) addStep(key shoot.Key, s episode.DayStep) {
	if s.Pin > 0 {
		p.day.Pins = append(p.day.Pins, shoot.Pin{Task: key, Start: s.Pin - p.zero})
	}
	for _, b := range s.Barred {
		p.day.Bars = append(p.day.Bars, shoot.Bar{Task: key, From: max(0, b.From-p.zero), To: max(0, b.To-p.zero)})
	}
	switch {
	case s.ByHelper && p.settings.HelperUntil > 0:
		p.day.Given = append(p.day.Given, shoot.Given{Task: key, To: helper})
	case s.ByHelper:
		p.stale = append(p.stale, "the helper's "+readOn(stepName(s.Component, s.Step))+" (nobody helps on this day)")
	}
	if s.Began > 0 {
		p.day.Done = append(p.day.Done, shoot.Done{Task: key, From: s.Began - p.zero, To: s.Ended - p.zero, IsRunning: s.Ended == 0})
	}
}

// keyOf finds the step of the day that a name means.
func (p *shootPlan) keyOf(n episode.StepName) (key shoot.Key, ok bool) {
	at, ok := stepAt(p.recipe, n.Component, n.Step)
	if !ok {
		return key, false
	}
	for _, b := range p.day.Batches {
		if b.Name == n.Batch {
			return shoot.Key{Batch: b.Name, At: at}, true
		}
	}
	return key, false
}

// nameOf names a step of the day in words that outlast a reordered recipe.
func (p *shootPlan) nameOf(key shoot.Key) episode.StepName {
	return episode.StepName{Batch: key.Batch, Component: p.recipe.Components[key.At.Component].Name, Step: key.At.Step + 1}
}

// fixedOf is what is fixed and known about a step.
func (p *shootPlan) fixedOf(n episode.StepName) episode.DayStep {
	for _, s := range p.steps {
		if s.StepName == n {
			return s
		}
	}
	return episode.DayStep{EpisodeID: p.settings.EpisodeID, StepName: n}
}
