package logistic

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// Model holds the weights of traits. It is never changed once read.
type Model struct {
	weights map[string]float64
}

// Bias is the trait that everything has.
const Bias = "bias"

// Of makes a model of weights.
func Of(weights map[string]float64) *Model { return &Model{weights: weights} }

// Weight gives the weight of a trait, 0 if it has none.
func (m *Model) Weight(trait string) float64 { return m.weights[trait] }

// WeightOf is the same for a trait in bytes, without a copy of it.
func (m *Model) WeightOf(trait []byte) float64 { return m.weights[string(trait)] }

// Likelihood is how likely something with these traits is what the model was learnt
// for, from 0 to 1.
func (m *Model) Likelihood(traits []string) float64 {
	sum := m.weights[Bias]
	for _, trait := range traits {
		sum += m.weights[trait]
	}
	return Sigmoid(sum)
}

// Sigmoid turns the sum of weights into a likelihood: 1 / (1 + e^−sum).
func Sigmoid(sum float64) float64 { return 1 / (1 + math.Exp(-sum)) }

// MustRead is Read for a file that is part of the program: it panics where that cannot be read.
func MustRead(text string) *Model {
	m, err := Read(text)
	if err != nil {
		panic(err)
	}
	return m
}

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
