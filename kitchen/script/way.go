package script

import "math"

// negligible is a likelihood, against 1 for all ways, that none is missed by, and
// mostEntering the most that can speak for a beginning, for all words of the
// longest title: it keeps the likelihoods within a float's range.
const (
	negligible   = 1e-9
	mostEntering = 45.0
)

// leastLength is how many seconds a segment is expected to take at least. The
// tables of lengths go by leastStep of seconds, or by more where that would be
// mostSteps of a cut.
const (
	leastLength = 5.0
	leastStep   = 0.5
	mostSteps   = 20_000
)

// ways is how likely the ways are through the spots of a parting, summed over
// all. A way goes from segment to segment; a likelihood that a segment is under
// way from one spot up to another is the product of what is held on between them,
// of what its length says, and of what leads to it.
//
// It is the forward-backward algorithm (L. R. Rabiner, Proceedings of the IEEE
// 77-2, 1989, there section IV.D for states that last). All is by segment, then
// by spot, the end of the cut being one more.
type ways struct {
	*parting
	seconds []float64
	lasting []lasting
	step    float64 // seconds from one length in these to the next

	held   [][]float64 // from a spot up to the next, in such a measure that all ways up to there add up to 1
	enters [][]float64
	began  [][]float64 // all ways up to a spot on which the segment begins there
	since  [][]float64 // on which it began there or before, and is under way
	leaves [][]float64 // all ways from a spot on which the segment ends there
	later  [][]float64 // on which it ends there or later

	passing [oneByOne + 1]float64 // how likely it is to go on by so many segments; 0 for a jump
	total   []float64             // at the spot under way: the ways by segment
}

// lasting is how likely a segment is to last so long; farther off than the
// table's end it is always the same.
type lasting struct {
	odds    []float64
	farther float64
}

func newLasting(expected, step float64) lasting {
	expected = max(expected, leastLength, step)
	l := lasting{farther: math.Exp(-calm * perLength * mostOff)}
	for x := 0.0; ; x += step {
		off := math.Log(max(x, leastStep)/expected) / deviation
		if off > 0 && off*off >= mostOff {
			return l
		}
		l.odds = append(l.odds, math.Exp(-calm*perLength*min(off*off, mostOff)))
	}
}

// weigh finds how likely each segment begins at each spot. Where one likely does
// so twice, words that fit it elsewhere were taken for it: all is weighed anew
// with jumps that cost more.
func (p *parting) weigh() *ways {
	w := p.weighAll(costJump)
	if w.mostVisits() > 1+oftenTwice {
		return p.weighAll(dearJump)
	}
	return w
}

// mostVisits is how often the segment that begins most often does, to be expected.
func (w *ways) mostVisits() float64 {
	most := 0.0
	for _, began := range w.began {
		visits := 0.0
		for _, likely := range began[:len(w.spots)] {
			visits += likely
		}
		most = max(most, visits)
	}
	return most
}

// weighAll sums up all ways, with what a jump costs.
func (p *parting) weighAll(costJump float64) *ways {
	n := len(p.spots) + 1
	w := &ways{parting: p, total: make([]float64, len(p.segments))}
	for _, list := range []*[][]float64{&w.held, &w.enters, &w.began, &w.since, &w.leaves, &w.later} {
		for range p.segments {
			*list = append(*list, make([]float64, n))
		}
	}
	for _, s := range p.spots {
		w.seconds = append(w.seconds, s.at.Seconds())
	}
	w.seconds = append(w.seconds, max(p.until.Seconds(), w.seconds[n-2]))
	w.passing[0] = likelihood(costJump)
	for by := 1; by <= oneByOne; by++ {
		w.passing[by] = likelihood(costSkip * float64(by-1))
	}
	w.expectLengths()
	w.listen()
	for i := range p.spots {
		w.begin(i)
		w.forth(i + 1)
	}
	w.finish()
	for i := len(p.spots) - 1; i >= 0; i-- {
		w.back(i)
	}
	return w
}

func (w *ways) expectLengths() {
	whole := w.seconds[len(w.spots)] - w.seconds[0]
	w.step = max(leastStep, whole/mostSteps)
	for k, share := range w.expected {
		next := 1.0
		if k+1 < len(w.expected) {
			next = w.expected[k+1]
		}
		w.lasting = append(w.lasting, newLasting((next-share)*whole, w.step))
	}
}

// listen turns what the words say into likelihoods, those of one spot against
// the best of them.
func (w *ways) listen() {
	held, enters := make([]float64, len(w.segments)), make([]float64, len(w.segments))
	for i := range w.spots {
		w.row(i, held, enters)
		best := held[0]
		for _, h := range held {
			best = max(best, h)
		}
		for k := range w.segments {
			w.held[k][i] = math.Exp(calm * (held[k] - best))
			w.enters[k][i] = math.Exp(calm * min(enters[k], mostEntering))
		}
	}
}

// edge is how likely it is to begin with the segment after so many, or to end
// with the one before so many.
func (w *ways) edge(left int) float64 {
	return max(likelihood(costSkip*float64(left)), w.passing[0])
}

func likelihood(cost float64) float64 { return math.Exp(-calm * cost) }
