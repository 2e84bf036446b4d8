package shoot

import (
	"fmt"
	"maps"
	"slices"
	"time"

	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shoot/project"
	"benchproof/kitchen/shoot/solve"
)

// stages lists where swap-outs can take over on this day: stages of steps that
// are not filmed and that the batch does itself.
func (d Day) stages() []Key {
	var all []Key
	for _, b := range d.Batches {
		for _, t := range b.steps() {
			_, isFilmed := b.Film[t.At]
			if !isFilmed && slices.ContainsFunc(b.Stages, func(s Stage) bool { return s.At == t.At }) {
				all = append(all, Key{b.Name, t.At})
			}
		}
	}
	return all
}

// withMakes gives the day with an extra make for each stage chosen.
func (d Day) withMakes(choice []Key) (Day, []Cut) {
	with := d
	with.Batches, with.Waits = slices.Clone(d.Batches), slices.Clone(d.Waits)
	var cuts []Cut
	for _, key := range choice {
		at := slices.IndexFunc(with.Batches, func(b Batch) bool { return b.Name == key.Batch })
		batch := &with.Batches[at]
		step := batch.Recipe.Components[key.At.Component].Steps[key.At.Step]
		cut := Cut{Stage: key, Minutes: MinutesOf(step).Likely, Begins: project.None, Lasts: batch.lasts(key.At), Overnight: batch.keeps(key.At)}
		cut.Batch = with.freeName()
		swaps := maps.Clone(batch.Swaps)
		if swaps == nil {
			swaps = map[recipe.Position]string{}
		}
		swaps[key.At] = cut.Batch
		batch.Swaps = swaps
		cuts = append(cuts, cut)
		if cut.Overnight {
			continue // nothing of it is done on the day
		}
		until := key.At
		with.Batches = append(with.Batches, Batch{Name: cut.Batch, Recipe: batch.Recipe, Ahead: true, Shares: batch.Shares, Until: &until})
		for _, w := range d.Waits {
			if w.After.Batch == key.Batch {
				w.After.Batch = cut.Batch
				if w.Next.Batch == key.Batch {
					w.Next.Batch = cut.Batch
				}
				with.Waits = append(with.Waits, w)
			}
		}
	}
	return with, cuts
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

// keeps tells whether what has come to a stage keeps overnight.
func (b Batch) keeps(at recipe.Position) bool {
	return slices.ContainsFunc(b.Stages, func(s Stage) bool { return s.At == at && s.Overnight })
}

// lasts is the longest chain of likely minutes up to a step's end.
func (b Batch) lasts(until recipe.Position) int {
	ends := map[recipe.Position]int{}
	for _, t := range b.Recipe.Sequence() {
		start := 0
		for _, p := range t.After {
			start = max(start, ends[p])
		}
		ends[t.At] = start + MinutesOf(b.Recipe.Components[t.At.Component].Steps[t.At.Step]).Likely
	}
	return ends[until]
}

// leastBound is a minute before which no choice of stages wraps: that of a day
// on which every stage has been made before.
func (d Day) leastBound(stages []Key) int {
	for i := range d.Batches {
		for k := range d.Batches[i].Stages {
			d.Batches = slices.Clone(d.Batches)
			d.Batches[i].Stages = slices.Clone(d.Batches[i].Stages)
			d.Batches[i].Stages[k].Overnight = true
		}
	}
	with, _ := d.withMakes(stages)
	w, err := newWorkload(with)
	if err != nil {
		return d.From
	}
	return solve.Bound(w.project)
}

// choose gives every choice of n stages, or, if they are too many, those that
// add one stage to a choice; isAll tells which.
func choose(stages []Key, n int, chosen []Key) (choices [][]Key, isAll bool) {
	if combinations(len(stages), n) <= maxChoices {
		var pick func(from int, sofar []Key)
		pick = func(from int, sofar []Key) {
			if len(sofar) == n {
				choices = append(choices, slices.Clone(sofar))
				return
			}
			for k := from; k < len(stages); k++ {
				pick(k+1, append(sofar, stages[k]))
			}
		}
		pick(0, nil)
		return choices, true
	}
	for _, s := range stages {
		if !slices.Contains(chosen, s) {
			choices = append(choices, append(slices.Clone(chosen), s))
		}
	}
	return choices, false
}

func combinations(of, n int) int {
	count := 1
	for k := range n {
		count = count * (of - k) / (k + 1)
		if count > 1_000_000 {
			return count
		}
	}
	return count
}

// plans is how many plans a comparison makes.
func plans(stages, makes int) int {
	sum := 1
	for n := 1; n <= min(makes, stages); n++ {
		if c := combinations(stages, n); c <= maxChoices {
			sum += c
		} else {
			sum += stages
		}
	}
	return sum
}

// share divides what a search may cost among so many plans.
func share(o solve.Options, plans int) solve.Options {
	steps := o.Steps
	if steps <= 0 {
		steps = solve.DefaultSteps
	}
	o.Steps, o.Budget, o.Progress = max(200, steps/plans), o.Budget/time.Duration(plans), nil
	return o
}
