package web

import (
	"slices"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shoot"
)

// addWaits adds how long steps may wait: after all steps before them what is
// fixed, after the one right before what their words say. What a swap-out has
// done waits as long as it likes.
func (p *shootPlan) addWaits() {
	for _, b := range p.day.Batches {
		var last recipe.Position
		for _, t := range p.recipe.Sequence() {
			key := shoot.Key{Batch: b.Name, At: t.At}
			t.After = slices.DeleteFunc(slices.Clone(t.After), func(at recipe.Position) bool {
				_, isSwapped := b.Swaps[at]
				return isSwapped
			})
			p.addFixedWaits(key, t.After)
			p.addUrgent(key, t.After, last)
			last = t.At
		}
	}
}

func (p *shootPlan) addFixedWaits(key shoot.Key, after []recipe.Position) {
	waits := p.fixedOf(p.nameOf(key)).Waits
	if waits == (episode.Waits{}) {
		return
	}
	for _, at := range after {
		p.day.Waits = append(p.day.Waits, shoot.Wait{
			After: shoot.Key{Batch: key.Batch, At: at}, Next: key, AtLeast: waits.Least, AtMost: waits.Most, HasMost: waits.HasMost,
		})
	}
}

// addUrgent keeps a step that is to be done at once close to the one right before
// it in the recipe, or else to the last that it waits for; unless a person has
// said how long it may wait.
func (p *shootPlan) addUrgent(key shoot.Key, after []recipe.Position, last recipe.Position) {
	step := p.stepOf(key)
	most, isUrgent := shoot.WithinOf(step)
	if waits := p.fixedOf(p.nameOf(key)).Waits; !isUrgent || waits != (episode.Waits{}) || len(after) == 0 {
		return
	}
	at := after[len(after)-1]
	if slices.Contains(after, last) {
		at = last
	}
	p.urgent = append(p.urgent, shoot.Wait{After: shoot.Key{Batch: key.Batch, At: at}, Next: key, AtMost: most, HasMost: true})
}

// hurried is the day with what is to be done at once. If that leaves no plan, the
// day is planned without.
func (p *shootPlan) hurried() shoot.Day {
	day := p.day
	day.Waits = append(slices.Clone(day.Waits), p.urgent...)
	return day
}

// notAtOnce is what is said of a plan that had to do without hurried.
const notAtOnce = "Not all that is to be done at once can be: steps that say so wait longer in this plan"
