package shoot

import (
	"fmt"
	"maps"
	"slices"

	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shoot/project"
)

// Choice is a swap-out that has been picked: one more make that takes over for a
// batch after a step.
type Choice struct {
	Stage     Key    // the step whose end the swap-out must have reached
	Overnight bool   // made the day before, so that nothing of it is done on the day
	Name      string // of the extra make; "" for the first "swap-out 1" that is free
}

// With gives the day with the swap-outs chosen, and what each of them cuts; a
// cut's Begins is known once the day is planned. What limits the batch's waits
// limits those of the swap-out. A stage that is filmed is done for the camera all
// the same, and nothing waits for it. The error is a *Refusal about the stage:
// the recipe has no such step any more, or a swap-out takes over there already.
func (d Day) With(choices []Choice) (Day, []Cut, error) {
	with := d
	with.Batches, with.Waits = slices.Clone(d.Batches), slices.Clone(d.Waits)
	var cuts []Cut
	for _, c := range choices {
		w := &workload{day: with}
		if err := w.known(c.Stage); err != nil {
			return d, nil, err
		}
		batch := &with.Batches[slices.IndexFunc(with.Batches, func(b Batch) bool { return b.Name == c.Stage.Batch })]
		step := batch.Recipe.Components[c.Stage.At.Component].Steps[c.Stage.At.Step]
		if _, isTaken := batch.Swaps[c.Stage.At]; isTaken {
			return d, nil, w.refuse("stage", c.Stage, "Two swap-outs are to take over after %q. Leave one of them out.", short(step.Text))
		}
		cut := Cut{
			Stage: c.Stage, Minutes: MinutesOf(step).Likely, Batch: c.Name, Overnight: c.Overnight,
			Begins: project.None, Lasts: batch.lasts(c.Stage.At),
		}
		if cut.Batch == "" {
			cut.Batch = with.freeName()
		}
		with.add(batch, cut)
		cuts = append(cuts, cut)
	}
	return with, cuts, nil
}

// add adds a swap-out and its waits to a day whose lists are its own, and lets the
// batch go on with it.
func (d *Day) add(batch *Batch, cut Cut) {
	swaps := maps.Clone(batch.Swaps)
	if swaps == nil {
		swaps = map[recipe.Position]string{}
	}
	swaps[cut.Stage.At] = cut.Batch
	batch.Swaps = swaps
	if cut.Overnight {
		return
	}
	d.Waits = append(d.Waits, d.waitsFor(batch.Name, cut.Batch)...)
	d.Batches = append(d.Batches, batch.ahead(cut.Batch, cut.Stage.At))
}

// ahead is one more make of the batch's recipe, unfilmed and no further than a
// step.
func (b Batch) ahead(name string, until recipe.Position) Batch {
	return Batch{Name: name, Recipe: b.Recipe, Ahead: true, Shares: b.Shares, Until: &until}
}

// waitsFor are the waits of one batch as those of another make of its recipe.
func (d Day) waitsFor(batch, other string) []Wait {
	var all []Wait
	for _, w := range d.Waits {
		if w.After.Batch != batch {
			continue
		}
		w.After.Batch = other
		if w.Next.Batch == batch {
			w.Next.Batch = other
		}
		all = append(all, w)
	}
	return all
}

// freeName is a name that no batch of the day has, nor a swap-out made the day
// before.
func (d Day) freeName() string {
	for n := 1; ; n++ {
		name := fmt.Sprintf("swap-out %d", n)
		isTaken := slices.ContainsFunc(d.Batches, func(b Batch) bool {
			for _, other := range b.Swaps {
				if other == name {
					return true
				}
			}
			return b.Name == name
		})
		if !isTaken {
			return name
		}
	}
}

// choices makes swap-outs of stages: made overnight where they keep.
func (d Day) choices(stages []Key) []Choice {
	var all []Choice
	for _, s := range stages {
		k := slices.IndexFunc(d.Batches, func(b Batch) bool { return b.Name == s.Batch })
		all = append(all, Choice{Stage: s, Overnight: d.Batches[k].keeps(s.At)})
	}
	return all
}
