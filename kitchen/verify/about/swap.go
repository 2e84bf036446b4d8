package about

import "benchproof/kitchen/verify/speech"

// leastSwapped is how much more must speak for two times or heats having been said
// for one another than for their steps being told in the wrong order.
const leastSwapped = 1.0

// unswap finds two numbers that each equal what the other is about: "boil the beans
// nine minutes … the mushrooms four", where the beans have four and the mushrooms
// nine. Values alone would tie each to the other's step and find nothing wrong.
func (r *Reading) unswap() {
	for i := range r.Ties {
		for j := i + 1; j < len(r.Ties); j++ {
			if r.isSwapped(i, j) {
				r.Ties[i].Fact, r.Ties[j].Fact = r.Ties[j].Fact, r.Ties[i].Fact
				r.Ties[i].Agrees, r.Ties[j].Agrees = false, false
			}
		}
	}
}

// isSwapped tells whether number i, which comes before j, is rather about j's fact, and
// j about i's.
func (r *Reading) isSwapped(i, j int) bool {
	a, b := r.Ties[j].Fact, r.Ties[i].Fact // the fact that is written first, and the other
	if a < 0 || b <= a || !r.Ties[i].Agrees || !r.Ties[j].Agrees || r.Book.Facts[a].Kind != r.Book.Facts[b].Kind {
		return false
	}
	kind := r.Book.Facts[a].Kind
	if kind != speech.Time && kind != speech.Heat {
		return false
	}
	if EqualFact(r.Said[i], r.Book.Facts[a]) || r.isElsewhere(a, j) || r.isElsewhere(b, i) {
		return false
	}
	if kind == speech.Heat && r.isByTimeOf(i, a, b) && !r.isByTimeOf(j, a, b) {
		return true // each beside the time that is written beside the other
	}
	more := r.evidence(i, a) + r.evidence(j, b) - r.evidence(i, b) - r.evidence(j, a)
	fa, fb := r.Book.Facts[a], r.Book.Facts[b]
	if r.Book.Distance(fa.Place, fb.Place) > 1 {
		return more > 2*leastSwapped
	}
	return more > leastSwapped || fa.Verb == fb.Verb && fa.Verb != "" && fa.Kind == speech.Time && more > -leastSwapped/2
}

// isByTimeOf tells whether the time right behind heat i is written beside heat n rather than
// beside heat m: "at three seventy-five for twenty minutes" where that is at 425.
func (r *Reading) isByTimeOf(i, n, m int) bool {
	for k := i + 1; k < len(r.Said) && r.Said[k].From-r.Said[i].To <= timeBehind; k++ {
		if t := r.Ties[k]; r.Said[k].Kind == speech.Time && t.Fact >= 0 && t.Agrees {
			return max(t.Fact-n, n-t.Fact) < max(t.Fact-m, m-t.Fact)
		}
	}
	return false
}

// timeBehind is how many words behind a heat its time is said.
const timeBehind = 10

// isElsewhere tells whether a number besides i agrees with fact n.
func (r *Reading) isElsewhere(n, i int) bool {
	for p, t := range r.Ties {
		if p != i && t.Fact == n {
			return true
		}
	}
	return false
}

// evidence weighs what speaks for number i being about fact n besides its value.
func (r *Reading) evidence(i, n int) float64 {
	c := r.claimOf(i, r.Said[i], n, r.around(i))
	score, _ := r.scorePlace(r.Said[i], c.f)
	return c.shared + c.verb + score
}
