package topic

import "benchproof/kitchen/logistic"

// Elsewhere is how likely number i of a cut is about something else than the dish, from 0
// to 1, by model m: the fewer words there are around it, the nearer to one half.
func Elsewhere(m *logistic.Model, r *Reader, i int) float64 {
	sum := m.Weight(logistic.Bias)
	r.Each(i, func(trait []byte) { sum += m.WeightOf(trait) })
	return logistic.Sigmoid(sum * r.Known(i))
}
