package web

import (
	"context"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shoot"
	"benchproof/views"
)

// planDay lays an episode's day out and takes the plan that was kept for just
// this day, or makes one and keeps it: a search that is cut by time would find
// another one at the next look. noPlan says why there is none; err is a defect.
func (s *Server) planDay(ctx context.Context, d *desk) (p *shootPlan, noPlan, err error) {
	if p, err = s.layOut(ctx, d); err != nil || p.empty() != "" {
		return p, nil, err
	}
	kept, err := s.store.DayPlan(ctx, d.episode.ID)
	if err != nil && fault.KindOf(err) != fault.NotFound {
		return nil, nil, err
	}
	if p.recall(kept) {
		return p, nil, nil
	}
	if noPlan = p.make(ctx); noPlan != nil {
		return p, noPlan, nil
	}
	return p, nil, s.store.KeepDayPlan(ctx, p.kept(nil))
}

// recall takes a plan that was kept for just this day; false if it was made for
// another.
func (p *shootPlan) recall(kept episode.DayPlan) bool {
	k := shoot.Kept{Print: kept.Print, Starts: kept.Starts, Bound: kept.Bound, Optimal: kept.Optimal, Overdue: kept.Overdue}
	plan, ok := p.hurried().Recall(k)
	if !ok && len(p.urgent) > 0 {
		plan, ok = p.day.Recall(k)
		p.calm = ok
	}
	if ok {
		p.plan, p.moved = plan, kept.Moved
	}
	return ok
}

// layOut lays an episode's day out, not yet planned.
func (s *Server) layOut(ctx context.Context, d *desk) (*shootPlan, error) {
	var parts dayParts
	var err error
	id := d.episode.ID
	for _, load := range []func(){
		func() { parts.settings, err = s.store.ShootDay(ctx, id) },
		func() { parts.batches, err = s.store.Batches(ctx, id) },
		func() { parts.shots, err = s.store.Shots(ctx, id) },
		func() { parts.moments, err = s.store.Moments(ctx, id) },
		func() { parts.steps, err = s.store.DaySteps(ctx, id) },
	} {
		if load(); err != nil {
			return nil, err
		}
	}
	parts.recipe = d.version.Reading
	if d.hasRecipe() {
		parts.recipe = recipe.Scale(parts.recipe, d.episode.Scale, s.writer(d.show, parts.recipe, recipe.AsWritten)).Recipe
	}
	return newShootPlan(parts), nil
}

// changeDay makes a change of an episode's shoot day and plans it anew, in the
// order of the plan before as far as that serves. The new plan is kept, with
// what it moved. That a day has no plan is not an error: the sheet says why.
func (s *Server) changeDay(ctx context.Context, episodeID int64, change func() error) error {
	before, err := s.dayOf(ctx, episodeID)
	if err != nil {
		return err
	}
	if err := change(); err != nil {
		return err
	}
	d, err := s.deskOf(ctx, episodeID)
	if err != nil {
		return err
	}
	after, err := s.layOut(ctx, d)
	if err != nil || after.empty() != "" {
		return err
	}
	moved, noPlan := after.makeAfter(ctx, before.planAt(after.zero))
	if noPlan != nil {
		return nil
	}
	return s.store.KeepDayPlan(ctx, after.kept(moved))
}

// dayOf is an episode's day as it is planned; its plan is empty if there is
// none.
func (s *Server) dayOf(ctx context.Context, episodeID int64) (*shootPlan, error) {
	d, err := s.deskOf(ctx, episodeID)
	if err != nil {
		return nil, err
	}
	p, _, err := s.planDay(ctx, d)
	return p, err
}

// planAt is the plan with its minutes counted from another zero.
func (p *shootPlan) planAt(zero int) shoot.Plan {
	later := p.zero - zero
	shifted := p.plan
	shifted.Wrap += later
	shifted.Entries = make([]shoot.Entry, len(p.plan.Entries))
	for i, e := range p.plan.Entries {
		e.From, e.To = e.From+later, e.To+later
		shifted.Entries[i] = e
	}
	return shifted
}

// kept is the plan to write down.
func (p *shootPlan) kept(moved []shoot.Change) episode.DayPlan {
	k := p.plan.Kept
	kept := episode.DayPlan{
		EpisodeID: p.settings.EpisodeID, Print: k.Print, Starts: k.Starts, Bound: k.Bound, Optimal: k.Optimal, Overdue: k.Overdue,
	}
	for _, m := range moved {
		kept.Moved = append(kept.Moved, episode.Move{Text: p.stepText(m.Key), Was: p.zero + m.Was, Is: p.zero + m.Is})
	}
	return kept
}

// stepText names a step in a sentence or a list.
func (p *shootPlan) stepText(key shoot.Key) string {
	text := shortened(p.stepOf(key).Text, 80)
	if len(p.day.Batches) > 1 {
		text += " (" + key.Batch + ")"
	}
	return text
}

// movedRows are what the plan moved against the one before.
func (p *shootPlan) movedRows() []views.DayFact {
	var rows []views.DayFact
	for _, m := range p.moved {
		rows = append(rows, views.DayFact{Measure: episode.Clock(m.Is), Text: m.Text, Small: "was " + episode.Clock(m.Was)})
	}
	return rows
}
