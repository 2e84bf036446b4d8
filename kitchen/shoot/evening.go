package shoot

import (
	"slices"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// Evening is the day before, on which swap-outs are made that keep until this
// one: one make for each choice that is Overnight and named, as far as its stage.
// All is done by the minute finish, but for a stage that needs neither hands nor a
// station: it goes on by itself through the night, so here it takes no time.
// Planned, the evening begins as late as can be.
//
// It has the stations of the day as they are when nothing takes them and nobody
// helps; nothing is filmed. The minutes of both days count from the same time of
// day.
func (d Day) Evening(choices []Choice, finish int) Day {
	evening := Day{Stations: alone(d.Stations), Finish: finish, Clock: d.Clock}
	for _, c := range choices {
		k := slices.IndexFunc(d.Batches, func(b Batch) bool { return b.Name == c.Stage.Batch })
		if k < 0 || !c.Overnight {
			continue
		}
		stage, extra := c.Stage.At, d.Batches[k].ahead(c.Name, c.Stage.At)
		if d.goesOnAlone(extra.Recipe.Components[stage.Component].Steps[stage.Step]) {
			extra.Recipe = atOnce(extra.Recipe, stage)
		}
		evening.Batches = append(evening.Batches, extra)
		evening.Waits = append(evening.Waits, d.waitsFor(c.Stage.Batch, c.Name)...)
	}
	return evening
}

// goesOnAlone tells whether a step needs neither hands nor any station of the day.
func (d Day) goesOnAlone(step recipe.Step) bool {
	return !step.HandsOn && !slices.ContainsFunc(d.Stations, func(s Station) bool { return s.Name == step.Station })
}

// alone are stations without what takes them, and without those who help.
func alone(stations []Station) []Station {
	var all []Station
	helping := map[string]int{}
	for _, s := range stations {
		if s.Within != "" {
			helping[s.Within] += s.Units
			continue
		}
		s.Busy = nil
		all = append(all, s)
	}
	for i := range all {
		all[i].Units -= helping[all[i].Name]
	}
	return all
}

// atOnce is a recipe in which a step takes no time.
func atOnce(r recipe.Recipe, at recipe.Position) recipe.Recipe {
	r.Components = slices.Clone(r.Components)
	c := &r.Components[at.Component]
	c.Steps = slices.Clone(c.Steps)
	c.Steps[at.Step].Minutes, c.Steps[at.Step].HasMinutes = measure.Between(measure.Whole(0), measure.Whole(0)), true
	return r
}
