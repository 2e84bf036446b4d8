package about

import (
	"slices"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// What speaks for a number being about a fact.
const (
	scoreHere    = 2.0  // the talk is at the fact's step
	scoreBeside  = 1.0  // one step away
	scoreSame    = 0.4  // in the same component
	scoreEqual   = 1.7  // the values agree
	scoreOven    = 1.2  // both are an oven's
	scoreUnit    = 0.3  // both are hours, or both minutes
	scoreVerb    = 1.0  // both have the same verb
	scoreImplied = 1.2  // a time right behind an oven's setting, and one of baking
	scoreNext    = 0.3  // the next time in the method
	scoreSlip    = 1.0  // the number is right and the unit is not
	scoreHandled = 0.5  // a host gives something its time
	scoreOther   = 0.5  // taken off where the verb is another step's
	leastWords   = 1.0  // shared words without which nothing is tied elsewhere
	leastBeside  = 0.75 // the same one step away
	leastHere    = 0.5  // the same at the fact's own step
)

var anHour, aDay = measure.Whole(60), measure.Whole(24 * 60)

// tieFact ties a time, a heat, a length or a count of pieces to what a step
// states.
func (r *Reading) tieFact(i int) {
	s := r.Said[i]
	var nouns []string
	if s.Kind == speech.Count || s.Kind == speech.Measure {
		if nouns = written.Nouns(r.Text, s); len(nouns) == 0 || s.Article {
			return
		}
		s.Kind = speech.Count
	}

	around := r.around(i)
	best, top := -1, 0.0
	for n, f := range r.Book.Facts {
		if f.Kind != s.Kind || s.Kind == speech.Count && !share(nouns, f.Nouns) || !isPossible(s, f) || !EqualFact(s, f) && !r.contradicts(s, f) {
			continue
		}
		if score, ok := r.scoreFact(i, s, n, around); ok && (best < 0 || score > top) {
			best, top = n, score
		}
	}
	if best < 0 {
		return
	}
	if f := r.Book.Facts[best]; EqualFact(s, f) {
		r.Ties[i].Fact, r.Ties[i].Agrees = best, true
	} else {
		r.Ties[i].Fact = best
		r.Ties[i].firm = r.scoreVerb(i, s, f) > 0 || r.sharedWords(f, around) >= leastHere
	}
}

func share(a, b []string) bool {
	return slices.ContainsFunc(a, func(w string) bool { return slices.Contains(b, w) })
}

// isPossible leaves out what is of another size altogether: a day for a minute.
func isPossible(s speech.Said, f written.Fact) bool {
	if f.Total {
		return EqualFact(s, f)
	}
	switch {
	case s.Kind == speech.Heat:
		return isHeatPossible(s, f)
	case s.Kind != speech.Time || s.Amount.From.Cmp(aDay) < 0 || f.Amount.To.Cmp(anHour) >= 0:
		return true
	}
	return IsUnitSlip(s, f.Said)
}

// IsUnitSlip tells hours said for minutes, seconds for minutes and the like: the
// number is right.
func IsUnitSlip(s, w speech.Said) bool {
	for _, by := range []int64{60, 24} {
		k := measure.Whole(by)
		if s.Unit != w.Unit && s.Amount.IsSingle() == w.Amount.IsSingle() && (same.Ranges(s.Amount.Range, w.Amount.Range.Scale(k)) || same.Ranges(s.Amount.Range.Scale(k), w.Amount.Range)) {
			return true
		}
	}
	return false
}

// contradicts tells whether a number that does not agree with the fact it is
// likely about says otherwise: ten minutes in is nothing that a recipe
// contradicts, nor is what somebody tells.
func (r *Reading) contradicts(s speech.Said, f written.Fact) bool {
	switch {
	case s.Kind != speech.Time:
		return !f.Total
	case s.Article && s.Unit == measure.Minute && f.Amount.From.Cmp(measure.Whole(20)) > 0:
		return false // "it sits there for a minute" is no measure
	}
	if s.Night && (f.Verb == "" || written.Verb(r.Text, s) != f.Verb) || within[r.leadOf(s)] {
		return false // "it's gone overnight", "you can do that in ten minutes"
	}
	part := written.IsPartTime(r.Text, s)
	if part && f.Part && behindParts[r.Text.At(s.To)] && (f.Verb == "" || written.Verb(r.Text, s) != f.Verb) {
		return false // "it's got thirty seconds left"
	}
	return !f.Total && part == f.Part && !r.isTold(s)
}

var behindParts = speech.SetOf("left in gone later into")

// leadOf gives the word that leads to a number, behind "about", "a good" and the
// like.
func (r *Reading) leadOf(s speech.Said) string {
	k := s.From - 1
	for written.IsAbout(r.Text.At(k)) {
		k--
	}
	return r.Text.At(k)
}

// within are words before a time that make it no length of work: "a window of
// forty seconds".
var within = speech.SetOf("in of within than")

// scoreFact weighs how likely number i, read as s, is about fact n; ok is false where
// nothing speaks for it.
func (r *Reading) scoreFact(i int, s speech.Said, n int, around []near) (score float64, ok bool) {
	f := r.Book.Facts[n]
	shared := r.sharedWords(f, around)
	place, distance := r.scorePlace(s, f)
	verb := r.scoreVerb(i, s, f)
	score = shared + place + verb
	least := leastWords
	if distance == 0 {
		least = leastHere
	}
	same := EqualFact(s, f)
	if same {
		score += scoreEqual
		least /= 2
	}
	if s.Kind == speech.Heat && isScaleSlip(s, f) || s.Kind == speech.Time && !same && IsUnitSlip(s, f.Said) {
		score += scoreSlip
	}
	if same && s.Kind == speech.Heat {
		score++ // where an oven has two settings, the one that is said is meant
	}
	if !same && r.isTaken(i, n) {
		score -= 0.8 // what agrees may well be said twice
	}
	if f.Total {
		score--
	}
	if s.Kind == speech.Time && s.More != f.More {
		score -= 0.5
	}
	if s.Kind == speech.Time && s.Unit == f.Unit {
		score += scoreUnit
	}
	if distance == 1 {
		least = leastBeside
	}
	if !same && distance > 1 && shared+verb < 1.4 && s.Kind == speech.Time {
		return score, false
	}
	if s.Kind == speech.Time && !same && verb < scoreVerb && isFar(s, f) {
		return score, false
	}
	if r.isBesideHeat(i, n) {
		score++
	}
	if f.Place < 0 && !same && !r.isYield(i, n) {
		return score, false
	}
	switch s.Kind {
	case speech.Count, speech.Measure, speech.Length:
		return score, shared >= 0.3 || same || distance == 0 || f.Place < 0 || slices.Contains(f.Nouns, written.Pieces) && slices.Contains(written.Nouns(r.Text, s), written.Pieces)
	case speech.Heat:
		return r.scoreHeat(s, f, score, shared, least)
	}
	if same && distance <= 1 {
		return score, true
	}
	if r.isNext(i, n) {
		score += scoreNext
	}
	handled := r.handled(s)
	if handled == 0 && s.Kind == speech.Time && r.Text.At(s.From-1) == "for" && s.Unit == f.Unit && !isFarBy(s, f, close) && r.isOfThing(s.From-1) {
		handled = scoreHandled // "it stays like this for two hours"
	}
	return score, shared+verb+handled >= least
}

// isNext tells whether fact n is the next time in the method behind the one that
// was spoken of last.
func (r *Reading) isNext(i, n int) bool {
	last := -1
	for p := i - 1; p >= 0 && last < 0; p-- {
		if f := r.Ties[p].Fact; f >= 0 && r.Book.Facts[f].Kind == speech.Time && r.Book.Facts[f].Place >= 0 {
			last = f
		}
	}
	for next := last + 1; last >= 0 && next <= n; next++ {
		if f := r.Book.Facts[next]; f.Kind == speech.Time && !f.Total && !f.Part && f.Place >= 0 {
			return next == n
		}
	}
	return false
}

// handled weighs the words by which a host gives something its time without
// naming what is done: "they go in for", "give it", "it wants".
func (r *Reading) handled(s speech.Said) float64 {
	if s.Kind != speech.Time || s.Article {
		return 0
	}
	if s.From > 0 && r.Text.Parts(s.From-1) {
		return scoreHandled // "Thirty minutes, and then you fish them out."
	}
	for k := s.From - 1; k >= 0 && k >= s.From-4 && !r.Text.Parts(k); k-- {
		switch w := r.Text.Words[k].Text; {
		case into[w] && r.Text.At(s.From-1) == "for":
			return scoreHandled
		case gives[w] && things[r.Text.At(k+1)], things[w] && wants[r.Text.At(k+1)]:
			return scoreHandled
		}
	}
	return 0
}

// isOfThing tells whether the subject of what is said before word k is what is
// cooked, or the viewer: "it stays like this for".
func (r *Reading) isOfThing(k int) bool {
	for n := k - 1; n >= 0 && n >= k-8 && !r.Text.Parts(n); n-- {
		switch w := r.Text.Words[n].Text; {
		case things[w] || w == "it's" || w == "they're" || w == "you" || w == "we":
			return true
		case w == "i" || w == "he" || w == "she" || kin[w] || crowds[w]:
			return false
		}
	}
	return false
}

var (
	gives  = speech.SetOf("give gives giving leave leaving let")
	things = speech.SetOf("it them they that these those this")
	wants  = speech.SetOf("wants want needs need has have gets get go goes")
	into   = speech.SetOf("in back on leave left let")
)

const (
	far   = 15 // how many times a time is another one's that is not said for it
	close = 4  // and how many times at most where little speaks for it
)

// isFar tells times of quite another size, but for slips that are known.
func isFar(s speech.Said, f written.Fact) bool {
	if IsUnitSlip(s, f.Said) || isTenfold(s, f.Said) {
		return false
	}
	return isFarBy(s, f, far)
}

func isFarBy(s speech.Said, f written.Fact, times int64) bool {
	k := measure.Whole(times)
	return s.Amount.From.Cmp(f.Amount.To.Mul(k)) > 0 || s.Amount.To.Mul(k).Cmp(f.Amount.From) < 0
}

// isTaken tells whether a number shortly before is about fact n already, or one
// anywhere before that agrees.
func (r *Reading) isTaken(i, n int) bool {
	for p := range i {
		if r.Ties[p].Fact == n && (r.Ties[p].Agrees || r.Said[i].From-r.Said[p].To < 60) {
			return true
		}
	}
	return false
}

// isYield tells whether a number that does not agree with the yield is about it
// nevertheless: "it serves four, or one and a dog" has one such number.
func (r *Reading) isYield(i, n int) bool {
	s := r.Said[i]
	return !r.IsFactTied(n, i) && r.Text.Near(s.From, s.To, 6, "makes", "make", "serves", "serve", "feeds", "feed", "gives", "yields", "get", "into", "keep", "keeps")
}

// sharedWords weighs the words near a number that a fact's step has too, those
// of its own clause more.
func (r *Reading) sharedWords(f written.Fact, around []near) float64 {
	shared := 0.0
	for _, w := range around {
		switch {
		case f.Clause[w.word]:
			shared += 1.5 * w.weight * r.Book.Weight(w.word)
		case f.Place >= 0 && r.Book.States[f.Place].Words[w.word]:
			shared += 0.8 * w.weight * r.Book.Weight(w.word)
		}
	}
	return shared
}

// scoreVerb compares the verb that governs a number with the fact's.
func (r *Reading) scoreVerb(i int, s speech.Said, f written.Fact) float64 {
	if s.Kind != speech.Time {
		return 0
	}
	verb := written.Verb(r.Text, s)
	if verb == "" && r.followsOven(i) && (f.Verb == "bake" || f.Verb == "roast") {
		return scoreImplied
	}
	switch {
	case verb == "" || f.Verb == "" || verb == waiting && verb != f.Verb && !f.Hands:
		return 0 // one leaves alone what proves, chills or cools
	case verb == f.Verb && verb == waiting:
		return scoreVerb / 2
	case verb == f.Verb:
		return scoreVerb
	case !f.Clause[verb] && r.Book.Weights[verb] > 0:
		return -scoreOther
	}
	return 0
}

// waiting is the verb for leaving something alone, whatever it does meanwhile.
const waiting = "rests"

// followsOven tells whether number i stands right behind an oven's setting: "180,
// 160 fan, twenty five minutes".
func (r *Reading) followsOven(i int) bool {
	if i == 0 || r.Said[i].From-r.Said[i-1].To > 6 {
		return false
	}
	n := r.Ties[i-1].Fact
	return n >= 0 && r.Book.Facts[n].Kind == speech.Heat && r.Book.Facts[n].IsOven
}

// scorePlace weighs how near the talk is to a fact's step; distance is in steps,
// large for what is in none.
func (r *Reading) scorePlace(s speech.Said, f written.Fact) (score float64, distance int) {
	if f.Place < 0 {
		return 0, 9
	}
	here, there := r.placeOf(s.To), r.placeOf(s.From-1)
	distance = min(r.Book.Distance(f.Place, here), r.Book.Distance(f.Place, there))
	switch {
	case distance == 0:
		score = scoreHere
	case distance == 1:
		score = scoreBeside
	case r.Book.States[f.Place].Component == r.Book.States[here].Component:
		score = scoreSame
	}
	return score, distance
}
