package topic

import (
	_ "embed"
	"fmt"
	"math"
	"strconv"
	"strings"
	"sync"
)

// Model holds the weights of the traits. It is never changed once read.
type Model struct {
	weights map[string]float64 // of each trait; above 0 speaks for something else
}

// Bias is the trait that every number has.
const Bias = "bias"

// Of makes a model of weights.
func Of(weights map[string]float64) *Model { return &Model{weights: weights} }

// Weight gives the weight of a trait, 0 if it has none.
func (m *Model) Weight(trait string) float64 { return m.weights[trait] }

// Elsewhere is how likely number i of a cut is about something else than the dish, from 0
// to 1: the fewer words there are around it, the nearer to one half.
func (m *Model) Elsewhere(r *Reader, i int) float64 {
	sum := m.weights[Bias]
	r.Each(i, func(trait []byte) { sum += m.weights[string(trait)] })
	return Logistic(sum * r.Known(i))
}

// Logistic turns the sum of weights into a likelihood: 1 / (1 + e^−sum).
func Logistic(sum float64) float64 { return 1 / (1 + math.Exp(-sum)) }

//go:embed weights.txt
var learnt string

// Learnt gives the model that comes with the program.
var Learnt = sync.OnceValue(func() *Model {
	m, err := Read(learnt)
	if err != nil {
		panic(err) // the file is part of the program
	}
	return m
})

// Read reads weights: a line each, the weight, a tab and the trait; a line that
// begins with # is a remark. Its error names the line.
func Read(text string) (*Model, error) {
	m := &Model{weights: map[string]float64{}}
	for n, line := range strings.Split(text, "\n") {
		if line == "" || strings.HasPrefix(line, "#") {
			continue
		}
		figure, trait, ok := strings.Cut(line, "\t")
		weight, err := strconv.ParseFloat(figure, 64)
		if !ok || err != nil {
			return nil, fmt.Errorf("weights, line %d: want a weight, a tab and a trait, not %q", n+1, line)
		}
		m.weights[trait] = weight
	}
	return m, nil
}
