package script

import (
	"math"
	"slices"

	"benchproof/kitchen/episode"
)

// What a step's place in the running order costs, in the weight of words, and
// how a word counts that it shares with a title or with narration.
const (
	costBare     = 1.6 // a segment passed over between two steps
	costBareEnd  = 0.5 // one behind the last step
	costOpening  = 0.1 // the first segment passed over: most open with a greeting
	costGreeted  = 2.0 // a step in the first segment, of which that shares no word
	costBackward = 2.0 // to a segment before that of the step before
	costFar      = 1.2 // as far from its share of the method as can be
	byTitle      = 1.0
	byNarration  = 0.5
	sharpness    = 0.3 // small: words say little, and neighbours share a step
)

// Bounds that keep long texts and long running orders within a float's range.
const (
	mostShared = 100
	least      = 1e-12
)

// showing is which steps of a recipe the segments likely show.
type showing struct {
	keys   [][]string  // of each step
	likely [][]float64 // for each step and segment
}

func newShowing(segments []episode.Segment, steps []string) showing {
	s := showing{likely: shown(segments, steps)}
	for _, step := range steps {
		s.keys = append(s.keys, keysOf(step))
	}
	return s
}

// add puts in how surely a segment holds the words of the steps it may show.
func (s showing) add(surely map[string]float64, segment int) {
	for j, likely := range s.likely {
		for _, key := range s.keys[j] {
			surely[key] = max(surely[key], likely[segment])
		}
	}
}

// shown reckons how likely each segment shows each step of a recipe: likely[j][i]
// is for step j and segment i, and the likelihoods of one step add up to 1. A
// step belongs to the segment whose title or narration shares its words; the
// order of the method is kept where it can be, and a segment that shares no
// words with any step takes one from between its neighbours'. Without steps, or
// segments, it is nil.
//
// It is the forward-backward algorithm over a chain of the steps whose states
// are the segments (L. R. Rabiner, Proceedings of the IEEE 77-2, 1989), and
// takes time in proportion to steps × segments.
func shown(segments []episode.Segment, steps []string) (likely [][]float64) {
	if len(segments) == 0 || len(steps) == 0 {
		return nil
	}
	fits := stepFits(segments, steps)
	n, last := len(segments), len(steps)-1
	likely = make([][]float64, len(steps))
	reached := make([]float64, n)
	for i := range reached {
		reached[i] = odds(costBare*float64(i-1) + costOpening)
	}
	reached[0] = 1
	for j, fit := range fits {
		if j > 0 {
			reached = passed(likely[j-1])
		}
		likely[j] = evened(times(reached, fit))
	}
	behind := make([]float64, n)
	for i := range behind {
		behind[i] = odds(costBareEnd * float64(n-1-i))
	}
	for j := last; j >= 0; j-- {
		if j < last {
			behind = evened(times(behind, fits[j+1]))
			slices.Reverse(behind)
			behind = passed(behind)
			slices.Reverse(behind)
		}
		likely[j] = evened(times(likely[j], behind))
	}
	return likely
}

// odds turns a cost into a likelihood.
func odds(cost float64) float64 { return max(math.Exp(-sharpness*cost), least) }

// passed takes the likelihoods of one step's segments to those of the next's:
// the same, one further on, or one before.
func passed(v []float64) []float64 {
	next := make([]float64, len(v))
	bare, back := odds(costBare), odds(costBackward)
	before, after, whole := 0.0, sum(v), sum(v)
	for i, here := range v {
		after -= here
		next[i] = here + before + back*max(after, 0) + least*whole
		before = before*bare + here
	}
	return next
}

func times(a, b []float64) []float64 {
	product := make([]float64, len(a))
	for i := range a {
		product[i] = a[i] * b[i]
	}
	return product
}

// evened scales likelihoods so that they add up to 1.
func evened(v []float64) []float64 {
	whole := sum(v)
	for i := range v {
		v[i] /= whole
	}
	return v
}

func sum(v []float64) float64 {
	whole := 0.0
	for _, x := range v {
		whole += x
	}
	return whole
}

// stepFits gives how likely each step goes with each segment by the words they
// share, of which one in many steps weighs little, and by where both stand.
func stepFits(segments []episode.Segment, steps []string) [][]float64 {
	said := make([]map[string]float64, len(segments))
	for i, s := range segments {
		said[i] = map[string]float64{}
		for _, key := range keysOf(s.Narration) {
			said[i][key] = byNarration
		}
		for _, key := range keysOf(s.Title) {
			said[i][key] = byTitle
		}
	}
	keys, in := make([][]string, len(steps)), map[string]int{}
	for j, step := range steps {
		keys[j] = keysOf(step)
		for _, key := range keys[j] {
			in[key]++
		}
	}
	fits := make([][]float64, len(steps))
	for j := range steps {
		fits[j] = make([]float64, len(segments))
		for i := range segments {
			shared := 0.0
			for _, key := range keys[j] {
				shared += said[i][key] * math.Log(1+float64(len(steps)+1)/float64(in[key]))
			}
			if i == 0 && shared == 0 && len(segments) > 1 {
				shared -= costGreeted
			}
			far := math.Abs((float64(j)+0.5)/float64(len(steps)) - (float64(i)+0.5)/float64(len(segments)))
			fits[j][i] = odds(costFar*far - min(shared, mostShared))
		}
	}
	return fits
}
