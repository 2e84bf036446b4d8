package about

import (
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// leastAgain is how much more must speak for another step's time, besides the value,
// for a number that says a time which is said elsewhere too.
const leastAgain = 0.5

// unrepeat finds a time that was said for another one's: it equals the time of a step
// that is said there too, but is said where the talk is at a step whose own nobody
// says.
func (r *Reading) unrepeat() {
	for n, f := range r.Book.Facts {
		if f.Kind != speech.Time || !r.isUnsaid(n, f) {
			continue
		}
		if i := r.repeatedAt(n, f); i >= 0 {
			r.Ties[i].Fact, r.Ties[i].Agrees = n, EqualFact(r.Said[i], f)
		}
	}
}

// repeatedAt is the only number that repeats another step's time where the talk is at
// that of fact n, −1 if there is none or more than one.
func (r *Reading) repeatedAt(n int, f written.Fact) int {
	only := -1
	for i, s := range r.Said {
		t := r.Ties[i]
		if s.Kind != speech.Time || t.Aside || s.Struck || !t.Agrees || t.Fact < 0 || t.Fact == n || !r.isElsewhere(t.Fact, i) {
			continue
		}
		if r.Book.Distance(f.Place, r.PlaceOf(i)) > 0 || isFarBy(s, f, far) || !r.contradicts(s, f) || r.evidence(i, n)-r.evidence(i, t.Fact) < leastAgain {
			continue
		}
		if only >= 0 {
			return -1
		}
		only = i
	}
	return only
}
