package verify

import (
	"slices"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/speech"
)

// What speaks for a number being about a fact. Tuned on the first two thirds of
// the transcripts.
const (
	scoreHere   = 2.0 // the talk is at the fact's step
	scoreBeside = 1.0 // one step away
	scoreSame   = 0.4 // in the same component
	scoreEqual  = 1.5 // the values agree
	scoreOven   = 1.2 // both are an oven's
	leastWords  = 1.0 // shared words without which nothing is tied elsewhere
	leastHere   = 0.5 // the same at the fact's own step
)

var anHour, aDay = measure.Whole(60), measure.Whole(24 * 60)

// tieFact ties a time, a heat, a length or a count of pieces to what a step
// states.
func (j *judge) tieFact(i int) {
	s := j.said[i]
	var nouns []string
	if s.Kind == speech.Count || s.Kind == speech.Measure {
		if nouns = nounsOf(j.text, s); len(nouns) == 0 || s.Article {
			return
		}
		s.Kind = speech.Count
	}
	around := j.around(i)
	best, top := -1, 0.0
	for n, f := range j.book.facts {
		if f.kind != s.Kind || s.Kind == speech.Count && !slices.ContainsFunc(nouns, func(noun string) bool { return slices.Contains(f.nouns, noun) }) {
			continue
		}
		if f.total && !j.equalFact(s, f) || s.Kind == speech.Time && s.Amount.From.Cmp(aDay) >= 0 && f.amount.To.Cmp(anHour) < 0 {
			continue
		}
		if score, ok := j.scoreFact(i, n, around); ok && (best < 0 || score > top) {
			best, top = n, score
		}
	}
	if best < 0 {
		return
	}
	f := j.book.facts[best]
	same := j.equalFact(s, f)
	if !same && (f.total || s.Kind == speech.Time && isPartTime(j.text, s) && !f.part || f.part != isPartTime(j.text, s) && s.Kind == speech.Time) {
		return // ten minutes in is nothing that the recipe contradicts
	}
	if !same && s.Kind == speech.Time && j.isTold(s) {
		return
	}
	j.ties[i].fact = best
	j.ties[i].agrees = same
}

// isAgreed tells whether a number that agrees is tied to fact n already.
func (j *judge) isAgreed(n int) bool {
	return slices.ContainsFunc(j.ties, func(t tie) bool { return t.fact == n && t.agrees })
}

// leastMoved is the score of a fact that a number may be moved to.
const leastMoved = 1.5

// isShared tells whether another number is tied to the fact of number i.
func (j *judge) isShared(i int) bool {
	for p, t := range j.ties {
		if p != i && t.fact == j.ties[i].fact {
			return true
		}
	}
	return false
}

// move gives a number that does not agree with its fact to another step's, where
// another number is about its own and none is about the other: then it was
// likely about that.
func (j *judge) move() {
	for i := range j.ties {
		t := &j.ties[i]
		if t.fact < 0 || t.agrees || j.said[i].Kind != speech.Time || !j.isShared(i) {
			continue
		}
		around := j.around(i)
		best, top := -1, 0.0
		for n, f := range j.book.facts {
			if f.kind != speech.Time || f.total || f.part || slices.ContainsFunc(j.ties, func(o tie) bool { return o.fact == n }) {
				continue
			}
			if score, _ := j.scoreFact(i, n, around); score >= leastMoved && score > top {
				best, top = n, score
			}
		}
		if best >= 0 {
			t.fact = best
		}
	}
}

// near is how much a word near a number counts.
type near struct {
	word   string
	weight float64
}

// around gives the words that tell what a number is about: those of its
// sentence, and fewer where nobody wrote down where sentences end.
func (j *judge) around(i int) []near {
	s := j.said[i]
	words := j.text.Words
	var all []near
	seen := map[string]bool{}
	take := func(k, distance int) {
		if word := meaning(words[k]); word != "" && !seen[word] && j.book.idf[word] > 0 {
			seen[word] = true
			all = append(all, near{word, 1 - float64(distance)/22})
		}
	}
	past := 0 // sentences gone back
	for k := s.From - 1; k >= 0 && k >= s.From-14; k-- {
		if words[k].Stop == speech.Sentence {
			past++
			if past > 1 || s.From-1-k > 4 {
				break
			}
		}
		take(k, s.From-k+8*past)
	}
	for k := s.To; k < len(words) && k < s.To+10 && words[k-1].Stop != speech.Sentence; k++ {
		take(k, k-s.To+2)
	}
	return all
}

// scoreFact weighs how likely number i is about fact n; ok is false where
// nothing speaks for it.
func (j *judge) scoreFact(i, n int, around []near) (score float64, ok bool) {
	s, f := j.said[i], j.book.facts[n]
	shared := j.sharedWords(f, around)
	place, distance := j.scorePlace(s, f)
	score = shared + place
	least := leastWords
	if distance == 0 {
		least = leastHere
	}
	same := j.equalFact(s, f)
	if same {
		score += scoreEqual
		least /= 2
	}
	for p := range i {
		if j.ties[p].fact == n && (j.ties[p].agrees || s.From-j.said[p].To < 60) {
			score -= 0.8
			break
		}
	}
	if f.total {
		score -= 1
	}
	if s.Kind == speech.Time && s.More != f.more {
		score -= 0.5
	}
	if !same && distance > 1 && shared < 1.4 && s.Kind == speech.Time {
		return score, false
	}
	if f.place < 0 && !same && j.isAgreed(n) {
		return score, false // "it serves four, or one and a dog"
	}
	if f.place < 0 && !same && !j.text.Near(s.From, s.To, 6, "makes", "make", "serves", "serve", "feeds", "feed", "gives", "yields", "get", "into") {
		return score, false
	}
	if s.Kind == speech.Count || s.Kind == speech.Measure || s.Kind == speech.Length {
		return score, shared >= 0.3 || same || distance == 0 || f.place < 0
	}
	if s.Kind == speech.Heat {
		return j.scoreHeat(s, f, score, shared, least)
	}
	return score, shared >= least
}

// sharedWords weighs the words near a number that a fact's step has too, those
// of its own clause more.
func (j *judge) sharedWords(f fact, around []near) float64 {
	shared := 0.0
	for _, w := range around {
		switch {
		case f.clause[w.word]:
			shared += 1.5 * w.weight * j.book.weight(w.word)
		case f.place >= 0 && j.book.states[f.place].words[w.word]:
			shared += 0.8 * w.weight * j.book.weight(w.word)
		}
	}
	return shared
}

// scorePlace weighs how near the talk is to a fact's step; distance is in steps,
// large for what is in none.
func (j *judge) scorePlace(s speech.Said, f fact) (score float64, distance int) {
	if f.place < 0 {
		return 0, 9
	}
	here := j.places[min(s.To, len(j.places)-1)]
	there := j.places[max(0, s.From-1)]
	distance = min(j.book.distance(f.place, here), j.book.distance(f.place, there))
	switch {
	case distance == 0:
		score = scoreHere
	case distance == 1:
		score = scoreBeside
	case j.book.states[f.place].component == j.book.states[here].component:
		score = scoreSame
	}
	return score, distance
}

// scoreHeat adds what tells an oven's setting from other heats.
func (j *judge) scoreHeat(s speech.Said, f fact, score, shared, least float64) (float64, bool) {
	oven := s.Oven != "" || s.Scale == "gas"
	if !oven && f.oven && j.text.Near(s.From, s.To, 8, "thermometer", "probe", "core", "middle", "inside", "reads", "read", "internal", "centre", "center") && !j.text.Near(s.From, s.To, 8, "oven") {
		return score, false
	}
	for k := max(0, s.From-10); k < min(len(j.text.Words), s.To+6); k++ {
		w := j.text.Words[k].Text
		oven = oven || w == "oven" || w == "preheat" || w == "preheated" || w == "bake" || w == "fan"
	}
	if oven && f.oven {
		return score + scoreOven, true
	}
	if oven != f.oven {
		score -= 1.5
	}
	return score, shared >= least
}

// weight is how much a word tells, at most 2: one rare word alone ties nothing
// that lies elsewhere.
func (b *book) weight(word string) float64 { return min(b.idf[word], 2.5) / 2 }

// distance counts the steps between a fact's place and another; from a list of
// ingredients every step of its component is near.
func (b *book) distance(of, from int) int {
	if b.states[from].step < 0 && b.states[of].component == b.states[from].component {
		return 1
	}
	return abs(of - from)
}

func abs(n int) int {
	if n < 0 {
		return -n
	}
	return n
}

// equalFact compares a said number with what a step states.
func (j *judge) equalFact(s speech.Said, f fact) bool {
	slack := exactly
	if s.About {
		slack = nearly
	}
	switch s.Kind {
	case speech.Heat:
		for _, h := range f.heats {
			if equalHeat(s, h) {
				return true
			}
		}
		return j.equalConverted(s, f)
	case speech.Length:
		a, _ := measure.Millimetres(s.Amount.Unit)
		b, _ := measure.Millimetres(f.amount.Unit)
		if s.Amount.Unit != f.amount.Unit {
			slack = slack.Add(bySystem) // 2 cm are ¾ in, and nobody says 0.79
		}
		return agrees(s.Amount.Range.Scale(a), f.amount.Range.Scale(b), slack)
	}
	return agrees(s.Amount.Range, f.amount.Range, slack)
}

// equalHeat compares with one setting as written.
func equalHeat(s, w speech.Said) bool {
	if s.Scale != "" && w.Scale != "" && s.Scale != w.Scale || (s.Scale == "gas") != (w.Scale == "gas") {
		return false
	}
	if s.Oven == "fan" && w.Oven != "fan" || s.Oven == "conventional" && w.Oven == "fan" {
		return false
	}
	return agrees(s.Amount.Range, w.Amount.Range, exactly)
}

// equalConverted compares with what the published table makes of the written
// settings, where the scale or the oven that is said is not written. 10 °C, or
// a row of the table, are within rounding.
func (j *judge) equalConverted(s speech.Said, f fact) bool {
	for _, h := range f.heats { // what is said must not be written otherwise
		if (s.Oven == "fan") == (h.Oven == "fan") && (s.Scale == h.Scale || s.Scale == "" && h.Scale != "gas" || h.Scale == "") && (s.Scale == "gas") == (h.Scale == "gas") {
			return false
		}
	}
	for _, h := range f.heats {
		from := heat(h)
		if from.Scale == "" {
			from.Scale = "C"
		}
		scale := s.Scale
		if scale == "" {
			scale = from.Scale
			if scale == "gas" {
				scale = "C"
			}
		}
		if !f.oven && s.Oven == "" && scale != "gas" {
			if equalExact(s, from, scale) {
				return true
			}
			continue
		}
		to, _, err := from.In(scale, s.Oven)
		if err != nil {
			continue
		}
		room := measure.Whole(6)
		if scale == "F" {
			room = measure.Whole(11)
		} else if scale == "gas" {
			room = measure.Ratio(1, 2)
		}
		if within(s.Amount.Range, to.Degrees, room) {
			return true
		}
	}
	return false
}

// equalExact compares a food's own temperature on two scales.
func equalExact(s speech.Said, from measure.Heat, scale string) bool {
	to := from.Degrees
	switch {
	case from.Scale == "C" && scale == "F":
		to = to.Map(measure.CelsiusToFahrenheit)
	case from.Scale == "F" && scale == "C":
		to = to.Map(measure.FahrenheitToCelsius)
	}
	return within(s.Amount.Range, to, measure.Whole(2))
}

func within(said, written measure.Range, room measure.Number) bool {
	return said.From.Cmp(written.From.Sub(room)) >= 0 && said.To.Cmp(written.To.Add(room)) <= 0
}

func heat(s speech.Said) measure.Heat {
	return measure.Heat{Degrees: s.Amount.Range, Scale: s.Scale, Oven: s.Oven}
}
