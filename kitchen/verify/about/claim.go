package about

import (
	"slices"

	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// What speaks for a number being about a fact.
const (
	scoreHere    = 2.0  // the talk is at the fact's step
	scoreBeside  = 1.0  // one step away
	scoreSide    = 1.5  // both are for each side
	scoreGoneOn  = 0.7  // the host was there, or a step before, when last heard of
	scoreSame    = 0.4  // in the same component
	scoreEqual   = 1.7  // the values agree
	scoreOven    = 1.2  // both are an oven's
	scoreUnit    = 0.3  // both are hours, or both minutes
	scoreKeeps   = 1.5  // both say how long something keeps
	scoreVerb    = 1.0  // both have the same verb
	scoreImplied = 1.2  // a time right behind an oven's setting, and one of baking
	scoreNext    = 0.3  // the next time in the method
	scoreSlip    = 1.0  // the number is right and the unit is not
	scoreLength  = 1.0  // a length agrees with what a line wants its food cut to
	scoreHandled = 0.5  // a host gives something its time
	scoreOnce    = 2.7  // taken off a sum of times: one of them is likelier
	scoreWithin  = 2.0  // taken off where one is the end of a longer time and the other is not
	scoreOther   = 0.5  // taken off where the verb is another step's
	leastWords   = 1.0  // shared words without which nothing is tied elsewhere
	leastBeside  = 0.75 // the same one step away
	leastHere    = 0.5  // the same at the fact's own step
)

// claim is how likely a number is about a fact.
type claim struct {
	r        *Reading
	i, n     int          // the number and the fact, as indexes
	s        speech.Said  // the number as it is read here
	f        written.Fact // the fact
	equal    bool         // they agree
	shared   float64      // what the words near the number and the fact's have in common
	verb     float64      // what their verbs say
	place    float64      // how near the talk is to the fact's step
	distance int          // the same in steps
}

func (r *Reading) claimOf(i int, s speech.Said, n int, around []near) claim {
	s.From = r.startOf(i)
	c := claim{r: r, i: i, n: n, s: s, f: r.Book.Facts[n]}
	c.equal = EqualFact(s, c.f)
	c.shared = r.sharedWords(c.f, around)
	c.verb = r.scoreVerb(i, s, c.f)
	if s.Kind == speech.Time && r.isOfKeeping(s) && (c.f.Clause["keep"] || c.f.Clause["freeze"]) {
		c.verb = scoreKeeps // "it's good for a week"
	}
	c.place, c.distance = r.scorePlace(s, c.f)
	if goneOn := r.goneOn(i, c.f); goneOn >= 0 && goneOn < c.distance {
		c.place, c.distance = max(c.place, scoreGoneOn), goneOn
	}
	return c
}

// startOf is where number i begins, with what it is said instead of: "leave it eighteen
// hours, no, eight hours".
func (r *Reading) startOf(i int) int {
	if i > 0 && r.Said[i-1].Struck && r.Said[i-1].Kind == r.Said[i].Kind {
		return r.Said[i-1].From
	}
	return r.Said[i].From
}

// goneReach is how many words back the last thing done still tells where the host is.
const goneReach = 60

// goneOn counts the steps from the last one of which something was said rightly, as far
// as fact f is not behind it; −1 if nothing tells.
func (r *Reading) goneOn(i int, f written.Fact) int {
	last := -1
	for p := i - 1; p >= 0 && r.Said[i].From-r.Said[p].To < goneReach; p-- {
		if n := r.Ties[p].Fact; n >= 0 && r.Ties[p].Agrees {
			last = max(last, r.Book.Facts[n].Place)
		}
	}
	if last < 0 || f.Place < last {
		return -1
	}
	return f.Place - last
}

// score weighs a claim against others.
func (c claim) score() float64 {
	score := c.shared + c.place + c.verb
	if c.s.Side && c.f.Side {
		score += scoreSide
	}
	if c.equal {
		score += c.scoreEqual()
	} else if c.r.isTaken(c.i, c.n) {
		score -= 0.8 // what agrees may well be said twice
	}
	if c.f.Total {
		score -= scoreOnce
	}
	switch c.s.Kind {
	case speech.Length:
		if c.equal && c.r.isOfLine(c.f) {
			score += scoreLength
		}
		if !c.equal && c.s.Unit != c.f.Unit && same.Ranges(c.s.Amount.Range, c.f.Amount.Range) {
			score += scoreSlip // two centimetres for two millimetres
		}
	case speech.Time:
		score += c.scoreTime()
	case speech.Heat:
		score += c.scoreHeat()
	}
	return score
}

// scoreEqual weighs that the values agree: less where one is a range and the other
// lies in it.
func (c claim) scoreEqual() float64 {
	if c.s.Kind == speech.Time && !c.s.Amount.IsSingle() && c.f.Amount.IsSingle() {
		return scoreEqual / 2
	}
	return scoreEqual
}

// scoreTime weighs what tells one time from another.
func (c claim) scoreTime() float64 {
	score := 0.0
	if c.s.More != c.f.More {
		score -= 0.5
	}
	if !c.f.Total && !c.f.Part && c.r.isLast(c.s) {
		score -= scoreWithin // "for the last ten minutes" is no frying of ten
	}
	if c.s.Unit == c.f.Unit {
		score += scoreUnit
	}
	if !c.equal && IsUnitSlip(c.s, c.f.Said) {
		score += scoreSlip
	}
	if !(c.equal && c.distance <= 1) && c.r.isNext(c.i, c.n) && !c.r.isFirstTime(0, c.n) {
		score += scoreNext
	}
	return score
}

// isLast tells "for the last ten minutes".
func (r *Reading) isLast(s speech.Said) bool {
	w := r.Text.At(s.From - 1)
	return (w == "last" || w == "final") && r.Text.At(s.From-2) == "the"
}

// isOfLine tells a fact that an ingredient line states: "squash, in 3 cm chunks".
func (r *Reading) isOfLine(f written.Fact) bool {
	return slices.ContainsFunc(r.Book.Items, func(it written.Item) bool { return it.Line.Text == f.Line })
}

// isEarned tells whether enough speaks for a claim.
func (c claim) isEarned() bool {
	if c.f.Place < 0 && !c.equal && !c.r.isYield(c.i, c.n) && !c.isOfTin() {
		return false
	}
	if c.equal && c.distance == 0 && c.s.Kind == speech.Heat && c.r.Elsewhere[c.i] < likelyOurs {
		return true
	}
	switch c.s.Kind {
	case speech.Time:
		return c.isTimeEarned()
	case speech.Heat:
		return c.isHeatEarned()
	}
	if c.s.Kind == speech.Count && !c.equal && c.f.Place >= 0 && !c.r.Text.Near(c.s.From, c.s.To, 6, making...) {
		return c.shared >= 0.3
	}
	return c.shared >= 0.3 || c.equal || c.distance == 0 || c.f.Place < 0 || c.isOfPieces()
}

// making are words beside a count of what is made, cut or laid out.
var making = []string{"into", "makes", "make", "cut", "divide", "shape", "roll", "get", "gives", "form", "need", "use", "do", "have", "line", "butter", "in", "comes", "out"}

// isOfTin tells whether both are the size of a tin.
func (c claim) isOfTin() bool {
	return c.s.Kind == speech.Length && c.f.Clause["tin"] && c.r.Text.Near(c.s.From, c.s.To, 6, "tin", "pan", "dish", "tray")
}

// isOfPieces tells "divide it into sixteen" and what a step is divided into.
func (c claim) isOfPieces() bool {
	return slices.Contains(c.f.Nouns, written.Pieces) && slices.Contains(written.Nouns(c.r.Text, c.s), written.Pieces)
}

// least is how much must speak for a claim besides the place and the value: the
// less, the nearer the talk is.
func (c claim) least() float64 {
	least := leastWords
	switch {
	case c.distance == 0:
		least = leastHere
	case c.distance == 1:
		return leastBeside
	}
	if c.equal {
		return least / 2
	}
	return least
}

func (c claim) isTimeEarned() bool {
	switch {
	case c.equal && c.distance <= 1, c.s.Per.Unit != "":
		return true
	case !c.equal && c.distance > 1 && (c.shared+c.verb < 1.4 || isFarBy(c.s, c.f, resortMost)):
		return false
	case !c.equal && c.verb < scoreVerb && isFar(c.s, c.f):
		return false
	}
	handled := c.r.handled(c.s)
	if lead := c.r.leadOf(c.s); handled == 0 && (lead == "for" || lead == "take" || lead == "takes") && c.s.Unit == c.f.Unit && !isFarBy(c.s, c.f, close) && c.r.isOfThing(c.s.From-1) {
		handled = scoreHandled // "it stays like this for two hours"
	}
	if handled > 0 && c.distance <= 1 && c.r.isNext(c.i, c.n) {
		handled += scoreNext
	}
	if c.s.Side && c.f.Side {
		handled += scoreSide
	}
	return c.shared+c.verb+handled >= c.least()
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
	if slices.Contains(r.Book.Facts[n].Nouns, "serving") {
		return !r.IsFactTied(n, i) && r.feeds(s)
	}
	return !r.IsFactTied(n, i) && (r.isAllOfThem(s) || r.isMade(s) || r.Text.Near(s.From, s.To, 6, "makes", "make", "have", "serves", "serve", "feeds", "feed", "gives", "yields", "get", "into", "keep", "keeps"))
}

// feeds tells whether the words before a number say that a dish is for so many: "it
// serves four", "this does six". One cooks for forty in stories, too.
func (r *Reading) feeds(s speech.Said) bool {
	for k := s.From - 1; k >= 0 && k >= s.From-3 && !r.Text.Parts(k); k-- {
		switch r.Text.At(k) {
		case "serves", "serve", "feeds", "feed", "feeding":
			return true
		case "does", "do":
			return k == s.From-1
		case "for":
			return r.Text.At(k-1) == "enough"
		}
	}
	return false
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
