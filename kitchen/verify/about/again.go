package about

import (
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// leastAgain is how much more must speak for another step's time, besides the value,
// for a number that says a time which is said elsewhere too.
const leastAgain = 0.5

// unrepeat finds a time that was said for another one's: it equals the time of a step
// that is said there too, but is said where the talk is at a step whose own nobody
// says, or between what is written before that one and what is written behind it.
func (r *Reading) unrepeat() {
	for n, f := range r.Book.Facts {
		if !r.isUnsaid(n, f) {
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
		if !r.isRepeat(i, n) || r.isSaidAgain(i) || s.Kind == speech.Time && isFarBy(s, f, far) || s.Kind == speech.Heat && !isPossible(s, f) || !r.contradicts(s, f) || !r.isAtFact(i, n) {
			continue
		}
		if only >= 0 {
			return -1
		}
		only = i
	}
	return only
}

// isRepeat tells whether number i says a time that another number says as well.
func (r *Reading) isRepeat(i, n int) bool {
	s, t := r.Said[i], r.Ties[i]
	return s.Kind == r.Book.Facts[n].Kind && !t.Aside && !s.Struck && t.Agrees && t.Fact >= 0 && t.Fact != n && r.isElsewhere(t.Fact, i) && (s.Kind != speech.Heat || r.isHeatTwice(i))
}

// isHeatTwice tells whether another number says the same heat of the same fact: of two
// settings of one oven neither repeats the other.
func (r *Reading) isHeatTwice(i int) bool {
	for p, t := range r.Ties {
		if p != i && t.Fact == r.Ties[i].Fact && t.Agrees && same.Ranges(r.Said[p].Amount.Range, r.Said[i].Amount.Range) {
			return true
		}
	}
	return false
}

// isAtFact tells whether number i is said where the talk is at fact n rather than at the
// one that it is tied to.
func (r *Reading) isAtFact(i, n int) bool {
	f := r.Book.Facts[n]
	if r.Book.Distance(f.Place, r.PlaceOf(i)) == 0 && r.evidence(i, n)-r.evidence(i, r.Ties[i].Fact) >= leastAgain {
		return true
	}
	before, behind := r.factBeside(i, -1), r.factBeside(i, 1)
	isBetween := func(k int) bool { return before < k && k < behind }
	return before >= 0 && isBetween(n) && !isBetween(r.Ties[i].Fact) && r.IsFactTied(r.Ties[i].Fact, i)
}

// factBeside is the nearest fact that is said before number i, or behind it; −1 before
// the first and a number behind all of them after the last.
func (r *Reading) factBeside(i, step int) int {
	for p := i + step; p >= 0 && p < len(r.Said); p += step {
		f := r.Ties[p].Fact
		if f >= 0 && !r.Ties[p].Aside && r.Book.Facts[f].Place >= 0 && !r.Book.Facts[f].Total {
			return f
		}
	}
	if step < 0 {
		return -1
	}
	return len(r.Book.Facts)
}
