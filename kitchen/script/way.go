package script

import (
	"math"
	"time"
)

// What it costs to pass over segments: one at a time, or to go to any other, as
// when the cut has another order.
const (
	costSkip = 0.5
	costJump = 4.0
	oneByOne = 3 // so many ahead at most
)

// never is less than any way weighs.
const never = float32(-1e9)

// farOff is how far from the best beginning another one must be to rival it, and
// doubt by how much less it must weigh to leave little of it.
const (
	farOff = 3 * time.Second
	doubt  = 2.0
)

// way is what is known of the ways through the spots up to one of them.
type way struct {
	*parting
	began []float32 // for each spot and segment: the heaviest way on which it begins there
	came  []int16   // the segment before it on the heaviest way on which it is under way; −1: it was already

	held, enters []float32 // the row under way
	under, next  []float32 // what the heaviest way weighs on which each segment is under way, at this spot and at the next one
}

// parted is a cut parted among segments.
type parted struct {
	*parting
	begins []int     // the spot where each segment begins; −1 if it fell out
	ends   []int     // the spot up to which it goes
	best   float32   // what the heaviest way weighs
	rivals []float32 // what one weighs on which the segment begins elsewhere
}

// walk finds the heaviest way, forth and back: the algorithm of Viterbi over the
// spots, with the segments as states, and what each beginning would cost
// elsewhere.
func (p *parting) walk() *parted {
	n := len(p.segments)
	w := &way{
		parting: p, began: make([]float32, n*len(p.spots)), came: make([]int16, n*len(p.spots)),
		held: make([]float32, n), enters: make([]float32, n), under: make([]float32, n), next: make([]float32, n),
	}
	w.start()
	for i := 1; i < len(p.spots); i++ {
		w.forth(i)
	}
	last, _ := heaviestTwo(w.under)
	parts := &parted{parting: p, best: w.under[last]}
	w.trace(last, parts)
	w.weighRivals(parts)
	return parts
}

// start begins the cut with any of the segments.
func (w *way) start() {
	w.row(0, w.held, w.enters)
	for s := range w.segments {
		w.began[s], w.came[s] = -costSkip*float32(s), -1
		w.under[s] = w.began[s] + w.held[s]
	}
}

// forth goes on to the i-th spot.
func (w *way) forth(i int) {
	w.row(i, w.held, w.enters)
	n := len(w.segments)
	began, came := w.began[i*n:(i+1)*n], w.came[i*n:(i+1)*n]
	top, second := heaviestTwo(w.under)
	for s := range n {
		best, from := never, otherThan(s, top, second)
		if from >= 0 {
			best = w.under[from] - passing(s-from)
		}
		for d := 1; d <= min(oneByOne, s); d++ {
			if value := w.under[s-d] - passing(d); value > best {
				best, from = value, s-d
			}
		}
		began[s] = best + w.enters[s]
		if w.under[s] >= began[s] {
			w.next[s], came[s] = w.under[s]+w.held[s], -1
		} else {
			w.next[s], came[s] = began[s]+w.held[s], int16(from)
		}
	}
	w.under, w.next = w.next, w.under
}

// otherThan gives the heaviest segment but s; −1 if there is no other.
func otherThan(s, top, second int) int {
	if s == top {
		return second
	}
	return top
}

// trace goes back along the heaviest way. A segment that is on it more than once
// has the part that holds most.
func (w *way) trace(last int, to *parted) {
	n := len(w.segments)
	to.begins, to.ends = make([]int, n), make([]int, n)
	most := make([]float32, n)
	for s := range n {
		to.begins[s] = -1
	}
	s, end, sum := last, len(w.spots), float32(0)
	for i := len(w.spots) - 1; i >= 0; i-- {
		w.row(i, w.held, w.enters)
		sum += w.held[s]
		came := int(w.came[i*n+s])
		if came < 0 && i > 0 {
			continue
		}
		if to.begins[s] < 0 || sum > most[s] {
			to.begins[s], to.ends[s], most[s] = i, end, sum
		}
		s, end, sum = max(came, 0), i, 0
	}
}

// weighRivals goes back over all ways, and finds for each segment the heaviest
// on which it begins far from where it does. Under way are now the ways from a
// spot on.
func (w *way) weighRivals(to *parted) {
	n := len(w.segments)
	to.rivals = make([]float32, n)
	clear(w.under)
	for s := range n {
		to.rivals[s] = never
	}
	for i := len(w.spots) - 1; i >= 0; i-- {
		w.row(i, w.held, w.enters)
		for s := range n {
			w.under[s] += w.held[s]
			if b := to.begins[s]; b < 0 || (w.spots[i].at-w.spots[b].at).Abs() > farOff {
				to.rivals[s] = max(to.rivals[s], w.began[i*n+s]+w.under[s])
			}
		}
		w.back()
	}
}

// back goes over the border before a spot, from the ways from that spot on to
// those from before it.
func (w *way) back() {
	n := len(w.segments)
	anew := w.held // the row has served
	for s := range n {
		anew[s] = w.under[s] + w.enters[s]
	}
	top, second := heaviestTwo(anew)
	for s := range n {
		w.next[s] = w.under[s]
		if to := otherThan(s, top, second); to >= 0 {
			w.next[s] = max(w.next[s], anew[to]-passing(to-s))
		}
		for d := 1; d <= oneByOne && s+d < n; d++ {
			w.next[s] = max(w.next[s], anew[s+d]-passing(d))
		}
	}
	w.under, w.next = w.next, w.under
}

// passing is what it costs to go on by so many segments.
func passing(by int) float32 {
	if by >= 1 && by <= oneByOne {
		return costSkip * float32(by-1)
	}
	return costJump
}

// heaviestTwo gives the indexes of the two greatest values; second is −1 if
// there is only one.
func heaviestTwo(values []float32) (top, second int) {
	second = -1
	for i, v := range values[1:] {
		switch {
		case v > values[top]:
			top, second = i+1, top
		case second < 0 || v > values[second]:
			second = i + 1
		}
	}
	return top, second
}

// span gives the words of the cut that fell to the k-th segment, the end
// excluded.
func (p *parted) span(k int) (from, to int) {
	from, to = p.spots[p.begins[k]].word, len(p.lexicon.words)
	if p.ends[k] < len(p.spots) {
		to = p.spots[p.ends[k]].word
	}
	return from, to
}

// confidence is high where no way on which the k-th segment begins elsewhere
// would weigh nearly as much.
func (p *parted) confidence(k int) float64 {
	return math.Round(100*(1-math.Exp(float64(p.rivals[k]-p.best)/doubt))) / 100
}
