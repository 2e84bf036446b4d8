package script

import (
	"math"
	"time"
)

// near is how far from a place another one says the same.
const near = 3 * time.Second

// asSure is how much surer a later place must be than an earlier one.
const asSure = 0.1

// placed is where the segments of a parting begin.
type placed struct {
	*parting
	begins []int     // the spot where each begins; −1 if it is not in the cut
	sure   []float64 // how likely it does, within three seconds
}

// place puts each segment where it most likely begins, if that is likelier than
// that it is not in the cut. Of two in one place the less likely falls out.
func (w *ways) place() *placed {
	p := &placed{parting: w.parting, begins: make([]int, len(w.segments)), sure: make([]float64, len(w.segments))}
	at := map[int]int{} // segments by spot
	for k := range w.segments {
		p.begins[k], p.sure[k] = w.likeliest(k)
		if p.begins[k] < 0 {
			continue
		}
		other, taken := at[p.begins[k]]
		switch {
		case taken && p.sure[other] >= p.sure[k]:
			p.begins[k] = -1
			continue
		case taken:
			p.begins[other] = -1
		}
		at[p.begins[k]] = k
	}
	return p
}

// likeliest gives the spot near which a segment most likely begins, and how
// likely; −1 if it more likely does nowhere. One that is left and taken up again
// begins where it is first.
func (w *ways) likeliest(k int) (spot int, sure float64) {
	began := w.began[k][:len(w.spots)]
	spot = -1
	all, from, to, around, best := 0.0, 0, 0, 0.0, 0.0
	for i, likely := range began {
		all += likely
		for ; to < len(began) && w.spots[to].at-w.spots[i].at <= near; to++ {
			around += began[to]
		}
		for ; w.spots[i].at-w.spots[from].at > near; from++ {
			around -= began[from]
		}
		here := around + likely // a place that is itself likely, not one between two that are
		if isLater := spot >= 0 && w.spots[i].at-w.spots[spot].at > 2*near; here > best && !isLater || here > best+asSure {
			spot, best, sure = i, here, around
		}
	}
	if 1-all >= sure {
		return -1, 0
	}
	return spot, sure
}

// span gives the words of the cut that fell to the k-th segment, which is in it,
// the end excluded.
func (p *placed) span(k int) (from, to int) {
	next := len(p.spots)
	for _, b := range p.begins {
		if b > p.begins[k] {
			next = min(next, b)
		}
	}
	from, to = p.spots[p.begins[k]].word, len(p.lexicon.words)
	if next < len(p.spots) {
		to = p.spots[next].word
	}
	return from, to
}

// confidence is how sure the k-th segment's place is, in hundredths.
func (p *placed) confidence(k int) float64 {
	return math.Round(100*min(max(p.sure[k], 0), 1)) / 100
}
