package shoot

import (
	"slices"

	"benchproof/kitchen/recipe"
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
