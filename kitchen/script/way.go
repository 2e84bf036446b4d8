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
)

// never is less than any way weighs.
const never = float32(-1e9)

// farOff is how far from the best beginning another one must be to rival it, and
// doubt by how much less it must weigh to leave little of it.
const (
	farOff = 3 * time.Second
	doubt  = 2.5
)

// ways are the heaviest ways through a stretch's spots.
type ways struct {
	*placing
	began [][]float32 // the heaviest way with a segment beginning at a spot
	came  [][]int16   // the segment before it; −1: it was under way, or is the first
	last  int         // the segment with which the heaviest way ends
	best  float32     // what it weighs
}

// walk finds the heaviest ways, forth and back: the algorithm of Viterbi over
// the spots, with the segments as states, and what each beginning costs against
// the best one.
func (p *placing) walk() *ways {
	w := &ways{placing: p}
	under := w.start()
	for i := 1; i < len(p.spots); i++ {
		under = w.forth(i, under)
	}
	for s := range under {
		if under[s] > under[w.last] {
			w.last = s
		}
	}
	w.best = under[w.last]
	behind := make([]float32, len(p.segments))
	for i := len(p.spots) - 1; i >= 0; i-- {
		for s := range behind {
			w.began[i][s] += p.held[i][s] + behind[s]
		}
		if i > 0 {
			behind = w.back(i, behind)
		}
	}
	return w
}

// start begins the stretch with its first segment, or one of the next.
func (w *ways) start() (under []float32) {
	n := len(w.segments)
	began, came := make([]float32, n), make([]int16, n)
	under = make([]float32, n)
	for s := range n {
		began[s], came[s] = -costSkip*float32(s), -1
		if w.first && s > 0 {
			began[s] = never
		}
		under[s] = began[s] + w.held[0][s]
	}
	w.began, w.came = append(w.began, began), append(w.came, came)
	return under
}

// forth goes to the i-th spot from the ways up to it, one for each segment
// under way.
func (w *ways) forth(i int, under []float32) []float32 {
	n := len(under)
	began, came, next := make([]float32, n), make([]int16, n), make([]float32, n)
	top, second := heaviestTwo(under)
	for s := range n {
		from := otherThan(s, top, second)
		best := never
		if from >= 0 {
			best = under[from] - passing(s-from)
		}
		for d := 1; d <= min(3, s); d++ {
			if value := under[s-d] - passing(d); value > best {
				best, from = value, s-d
			}
		}
		began[s], came[s] = best+w.enters[i][s], int16(from)
		next[s] = began[s]
		if under[s] >= began[s] {
			next[s], came[s] = under[s], -1
		}
		next[s] += w.held[i][s]
	}
	w.began, w.came = append(w.began, began), append(w.came, came)
	return next
}

// back goes from the i-th spot to the one before it, from what the ways behind
// it weigh.
func (w *ways) back(i int, behind []float32) []float32 {
	n := len(behind)
	anew, before := make([]float32, n), make([]float32, n)
	for s := range n {
		before[s] = behind[s] + w.held[i][s]
		anew[s] = before[s] + w.enters[i][s]
	}
	top, second := heaviestTwo(anew)
	for s := range n {
		if to := otherThan(s, top, second); to >= 0 {
			before[s] = max(before[s], anew[to]-passing(to-s))
		}
		for d := 1; d <= 3 && s+d < n; d++ {
			before[s] = max(before[s], anew[s+d]-passing(d))
		}
	}
	return before
}

// passing is what it costs to go on by so many segments.
func passing(by int) float32 {
	if by >= 1 && by <= 3 {
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

func otherThan(s, top, second int) int {
	if s == top {
		return second
	}
	return top
}

// begins gives for each segment the spot where it begins on the heaviest way,
// −1 if it is not on it; of several the one that holds most.
func (w *ways) begins() []int {
	begins, most := make([]int, len(w.segments)), make([]float32, len(w.segments))
	for s := range begins {
		begins[s] = -1
	}
	s, held := w.last, float32(0)
	for i := len(w.spots) - 1; i >= 0; i-- {
		held += w.held[i][s]
		came := int(w.came[i][s])
		if came < 0 && i > 0 {
			continue
		}
		if begins[s] < 0 || held > most[s] {
			begins[s], most[s] = i, held
		}
		s, held = max(came, 0), 0
	}
	return begins
}

// confidence is high where no beginning elsewhere would weigh nearly as much.
func (w *ways) confidence(s, begin int) float64 {
	rival := never
	for i, p := range w.spots {
		if (p.at - w.spots[begin].at).Abs() > farOff {
			rival = max(rival, w.began[i][s])
		}
	}
	return math.Round(100*(1-math.Exp(float64(rival-w.best)/doubt))) / 100
}
