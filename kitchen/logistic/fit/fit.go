package fit

import (
	"maps"
	"math"
	"slices"

	"gonum.org/v1/gonum/optimize"

	"benchproof/kitchen/logistic"
)

// Example is something of which it is known whether it is what is to be learnt.
type Example struct {
	Group  string // what it is from, for learning without some
	Traits []string
	Is     bool
}

// How weights are sought.
const (
	rounds = 200
	starts = 4
)

// Problem is a logistic regression: the loss is the sum of −log of the likelihoods of what
// is true, and of ridge/2 times the square of every weight.
type Problem struct {
	Traits []string // the first is the bias
	ridge  float64
	rows   [][]int // of each example the indexes of its traits
	signs  []float64
}

// Of makes a problem of examples. A trait gets a weight if so many examples have it.
func Of(examples []Example, ridge float64, leastSeen int) Problem {
	seen := map[string]int{}
	for _, e := range examples {
		for _, trait := range slices.Compact(slices.Sorted(slices.Values(e.Traits))) {
			seen[trait]++
		}
	}
	maps.DeleteFunc(seen, func(_ string, n int) bool { return n < leastSeen })
	p := Problem{Traits: append([]string{logistic.Bias}, slices.Sorted(maps.Keys(seen))...), ridge: ridge}
	index := map[string]int{}
	for i, trait := range p.Traits {
		index[trait] = i
	}
	for _, e := range examples {
		row, sign := []int{0}, -1.0
		for _, trait := range e.Traits {
			if k, ok := index[trait]; ok {
				row = append(row, k)
			}
		}
		if e.Is {
			sign = 1
		}
		p.rows, p.signs = append(p.rows, row), append(p.signs, sign)
	}
	return p
}

// Len is the number of its examples.
func (p Problem) Len() int { return len(p.rows) }

// margin is how far the weights put an example on its right side.
func (p Problem) margin(i int, w []float64) float64 {
	sum := 0.0
	for _, k := range p.rows[i] {
		sum += w[k]
	}
	return p.signs[i] * sum
}

// Loss is that of some weights, one for each trait.
func (p Problem) Loss(w []float64) float64 {
	loss := 0.0
	for _, x := range w {
		loss += p.ridge / 2 * x * x
	}
	for i := range p.rows {
		loss += math.Log1p(math.Exp(-p.margin(i, w)))
	}
	return loss
}

// Slope puts the slope of the loss at some weights into slope.
func (p Problem) Slope(slope, w []float64) {
	for k, x := range w {
		slope[k] = p.ridge * x
	}
	for i, row := range p.rows {
		push := -p.signs[i] / (1 + math.Exp(p.margin(i, w)))
		for _, k := range row {
			slope[k] += push
		}
	}
}

// Learn gives the weights of the least loss, by the limited-memory method of Broyden,
// Fletcher, Goldfarb and Shanno, as a general library has it. It may stop early; from
// there it goes on.
func (p Problem) Learn() (map[string]float64, error) {
	at := make([]float64, len(p.Traits))
	for range starts {
		result, err := optimize.Minimize(optimize.Problem{Func: p.Loss, Grad: p.Slope}, at,
			&optimize.Settings{MajorIterations: rounds}, &optimize.LBFGS{})
		if result == nil {
			return nil, err
		}
		at = result.X
		if err == nil {
			break
		}
	}
	weights := map[string]float64{}
	for i, trait := range p.Traits {
		weights[trait] = at[i]
	}
	return weights, nil
}
