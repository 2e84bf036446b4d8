package about

import (
	"slices"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// Hosts hardly ever leave out a time or a heat altogether. So where nobody seems to say
// one, the likeliest number that could be it was said wrong of it, even if little else
// speaks for that.

// What speaks for a number being said of a fact that nobody says.
const (
	leastResort   = 1.2 // the least score
	resortOurs    = 2.0 // for talk that is surely of the dish
	resortBetween = 1.2 // what is written before the fact and behind it is said around it
	resortAway    = 0.4 // taken off for each step that the talk is away
	resortMost    = 12  // times the written value that it may be
)

// lastResort gives each time or heat that nobody says the number that is likeliest.
func (r *Reading) lastResort() {
	if !r.saysMost() {
		return
	}
	for n, f := range r.Book.Facts {
		if f.Kind != speech.Time && f.Kind != speech.Heat || !r.isUnsaid(n, f) {
			continue
		}
		best, top := -1, leastResort
		for i := range r.Said {
			if r.isResort(i, n) {
				if score := r.resort(i, n); score > top {
					best, top = i, score
				}
			}
		}
		if best < 0 {
			continue
		}
		if r.Said[best].Kind == speech.Count {
			r.Said[best].Kind, r.Said[best].Bare = speech.Heat, true
		}
		t := &r.Ties[best]
		t.Item, t.Fact, t.Agrees, t.Aside, t.Foreign, t.Portion = -1, n, EqualFact(r.Said[best], f), false, "", ""
	}
}

// isResort tells whether number i could be said of fact n and is about nothing else, or only
// repeats what is said elsewhere too.
func (r *Reading) isResort(i, n int) bool {
	s, t, f := r.Said[i], r.Ties[i], r.Book.Facts[n]
	bare := f.Kind == speech.Heat && r.isBareHeat(s)
	if s.Kind != f.Kind && !bare || s.Struck || s.Article || s.Each || s.Per.Unit != "" || s.Scale == "gas" || r.isSaidAgain(i) || r.IsWeather(s) || r.isPlainlyAside(s) {
		return false
	}
	free := !t.isTied() || r.isIdle(i) || bare && r.isVain(i) || r.isRepeat(i, n) && (r.IsFactTied(t.Fact, i) || r.isFarFromItsOwn(i))
	return free && r.isOfResortSize(s, f) && r.contradicts(s, f)
}

// saysMost tells whether most of the written times and heats are said rightly: only then
// is one that is missing likely to be said wrong.
func (r *Reading) saysMost() bool {
	said, all := 0, 0
	for n, f := range r.Book.Facts {
		if f.Kind != speech.Time && f.Kind != speech.Heat || f.Place < 0 || f.Total || f.Part {
			continue
		}
		all++
		if slices.ContainsFunc(r.Ties, func(t Tie) bool { return t.Fact == n && t.Agrees }) {
			said++
		}
	}
	return 2*said >= all
}

// isFarFromItsOwn tells whether number i is said steps away from the fact that it agrees with.
func (r *Reading) isFarFromItsOwn(i int) bool {
	own := r.Book.Facts[r.Ties[i].Fact].Place
	return own >= 0 && r.Book.Distance(own, r.PlaceOf(i)) > 1
}

func (r *Reading) isOfResortSize(s speech.Said, f written.Fact) bool {
	if f.Kind == speech.Heat {
		for _, h := range f.Heats {
			most := measure.Whole(4)
			if isTenfold(s, h) || SoundsLike(s.Amount, h.Amount) || s.Amount.To.Mul(most).Cmp(h.Amount.From) >= 0 && s.Amount.From.Cmp(h.Amount.To.Mul(most)) <= 0 {
				return true
			}
		}
		return false
	}
	return !isFarBy(s, f, resortMost)
}

// resort weighs what speaks for number i being said of fact n.
func (r *Reading) resort(i, n int) float64 {
	f := r.Book.Facts[n]
	score := resortOurs*(1-2*r.Elsewhere[i]) + r.evidence(i, n)/2 - resortAway*float64(min(r.Book.Distance(f.Place, r.PlaceOf(i)), 5))
	if r.factBeside(i, -1) < n && n < r.factBeside(i, 1) {
		score += resortBetween
	}
	if t := r.Ties[i]; t.Fact >= 0 && t.Agrees {
		score -= r.evidence(i, t.Fact) / 2
	}
	return score
}
