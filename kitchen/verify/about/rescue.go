package about

import (
	"cmp"
	"slices"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// rescue ties what is about nothing to what is written where it is said and that
// nobody says: likelier than a number about nothing and a line that is left out is
// one that is said wrong.
func (r *Reading) rescue() {
	r.rescueFacts()
	r.rescueItems()
	r.rescuePortions()
}

// rescuePortions ties a measure to what a step states of a food, where the talk is at that
// step and nobody says it: "pull a bit off for the lid, fifteen grams of it", where 150 g
// of the dough are written.
func (r *Reading) rescuePortions() {
	for i, s := range r.Said {
		t := &r.Ties[i]
		if s.Kind != speech.Measure || t.isTied() || t.Aside || s.Struck || s.Each || s.Article || r.Elsewhere[i] > likelyOurs || r.isSaidAgain(i) {
			continue
		}
		for _, p := range r.Book.Portions {
			if r.Book.Distance(p.Place, r.PlaceOf(i)) == 0 && p.Amount.Unit.Kind() == s.Unit.Kind() && !r.isPortionSaid(p) && r.isOfSize(s, p.Amount.Amount, recipe.Line{}) {
				t.Portion = p.Food
				break
			}
		}
	}
}

// isPortionSaid tells whether anybody says just the amount of a portion.
func (r *Reading) isPortionSaid(p written.Portion) bool {
	return slices.ContainsFunc(r.Said, func(s speech.Said) bool {
		same, _ := r.Scale.Amount(s, p.Amount.Amount, recipe.Line{})
		return same
	})
}

// isOfSize tells whether a number may be said wrong of a written amount.
func (r *Reading) isOfSize(s speech.Said, w measure.Amount, of recipe.Line) bool {
	most := measure.Whole(rescueMost)
	ratio, ok := r.Scale.Ratio(s, w, of)
	return ok && ratio.Cmp(most) <= 0 && ratio.Mul(most).Cmp(measure.Whole(1)) >= 0
}

// rescueFacts ties times and heats, those that fit best first.
func (r *Reading) rescueFacts() {
	type pair struct {
		misfit float64
		i, n   int
	}
	var pairs []pair
	for n, f := range r.Book.Facts {
		if !r.isUnsaid(n, f) {
			continue
		}
		for i := range r.Said {
			if misfit, ok := r.misfit(i, n); ok {
				pairs = append(pairs, pair{misfit, i, n})
			}
		}
	}
	slices.SortFunc(pairs, func(a, b pair) int { return cmp.Or(cmp.Compare(a.misfit, b.misfit), cmp.Compare(a.i, b.i)) })
	for _, p := range pairs {
		f := r.Book.Facts[p.n]
		if r.Ties[p.i].isTied() && !r.isIdle(p.i) && !r.isVain(p.i) || !r.isUnsaid(p.n, f) {
			continue
		}
		if f.Kind == speech.Heat && r.Said[p.i].Kind == speech.Count {
			r.Said[p.i].Kind, r.Said[p.i].Bare = speech.Heat, true
		}
		t := &r.Ties[p.i]
		t.Item, t.Fact, t.Agrees, t.Aside = -1, p.n, EqualFact(r.Said[p.i], f), false
	}
}

// misfit tells how badly number i, which is about nothing, fits fact n as what was
// said wrong of it; not ok if it cannot be.
func (r *Reading) misfit(i, n int) (misfit float64, ok bool) {
	p, f := r.Elsewhere[i], r.Book.Facts[n]
	if r.Ties[i].Aside && p > surelyOurs || r.isSaidAgain(i) || !r.isLoose(i, f) {
		return 0, false
	}
	away := r.Book.Distance(f.Place, r.PlaceOf(i))
	between := r.factBeside(i, -1) < n && n < r.factBeside(i, 1)
	return float64(away) + p, away == 0 && p < 0.8 || away == 1 && p < 0.1 || between && p < 0.3
}

// isSaidAgain tells whether number i only says again what was said just before: "ninety
// seconds, that's a minute and a half", "twelve minutes. Yes, twelve".
func (r *Reading) isSaidAgain(i int) bool {
	s := r.Said[i]
	for p := i - 1; p >= 0 && s.From-r.Said[p].To < echoReach; p-- {
		last := r.Said[p]
		alike := last.Kind == s.Kind && last.Unit == s.Unit || s.Kind == speech.Count && s.Unit == "" && s.From-last.To < againHeat
		if !last.Struck && alike && same.Ranges(last.Amount.Range, s.Amount.Range) {
			return true
		}
		if p == i-1 && last.Kind == s.Kind && s.From-last.To < againHeat && (s.Kind == speech.Heat || s.Kind == speech.Time) && (s.Kind == speech.Time || s.Scale != last.Scale) && r.SaysAgain(last.To, s.From) {
			return true
		}
	}
	return false
}

const (
	againHeat = 12 // words between two numbers of which the second says the first again
	echoReach = 25 // the same where they are equal
)

// isUnsaid tells whether a fact is one that is said once, and nobody says it.
func (r *Reading) isUnsaid(n int, f written.Fact) bool {
	if f.Place < 0 || f.Total || f.Part || f.Kind != speech.Time && f.Kind != speech.Heat || r.isFactSaid(n, -1) {
		return false
	}
	for i, s := range r.Said {
		if t := r.Ties[i]; s.Kind == f.Kind && !s.Struck && t.Fact >= 0 && t.Agrees && EqualFact(s, f) {
			return false // with another of the same value
		}
	}
	return true
}

// isLoose tells whether number i is about nothing and could be said wrong for a
// fact.
func (r *Reading) isLoose(i int, f written.Fact) bool {
	s, t := r.Said[i], r.Ties[i]
	bare := f.Kind == speech.Heat && r.isBareHeat(s)
	if bare {
		s.Kind, s.Bare = speech.Heat, true
	}
	return s.Kind == f.Kind && (!t.isTied() || r.isIdle(i) || bare && r.isVain(i)) && !s.Struck && !s.Article && !s.Each &&
		isPossible(s, f) && r.contradicts(s, f) && (s.Kind != speech.Time || (s.Unit == f.Unit || r.Elsewhere[i] < likelyOurs) && !isFar(s, f))
}

// isVain tells whether number i, without a unit, is tied to a line that it does not agree
// with and that has one: a heat beside the oil.
func (r *Reading) isVain(i int) bool {
	s, n := r.Said[i], r.Ties[i].Item
	return n >= 0 && s.Kind == speech.Count && s.Unit == "" && r.isBesideDial(s) && !r.EqualItem(s, n) && r.Book.Items[n].Line.Amount.Unit.Kind() != measure.Count
}

// isIdle tells whether number i is tied to a fact that it does not agree with, by
// little, and another number does: nothing comes of it.
func (r *Reading) isIdle(i int) bool {
	t := r.Ties[i]
	return t.Fact >= 0 && !t.Agrees && r.IsFactTied(t.Fact, i)
}

// isBareHeat tells a number that can be a heat and stands alone between stops ("write
// this down: two eighty-four.") or where an oven or a thermometer was spoken of.
func (r *Reading) isBareHeat(s speech.Said) bool {
	if s.Kind != speech.Count || s.Unit != "" || !s.Amount.IsSingle() || s.Amount.From.Cmp(measure.Whole(leastHeat)) < 0 || s.From == 0 {
		return false
	}
	if s.Amount.From.Cmp(measure.Whole(surelyHeat)) >= 0 && r.Text.Words[s.From-1].Stop != speech.None && r.Text.Words[s.To-1].Stop != speech.None {
		return true
	}
	if len(written.Nouns(r.Text, s)) > 0 {
		return false
	}
	lead := r.leadOf(s)
	if lead == "at" && r.Text.At(s.From-2) == "in" {
		return true // "this goes in at three hundred"
	}
	if lead == "over" || lead == "above" || lead == "past" {
		return false
	}
	return r.isBesideDial(s) || s.Amount.From.Cmp(measure.Whole(surelyHeat)) >= 0 && s.Amount.IsMultiple(five) && r.IsTarget(s)
}

// five is what bare heats are multiples of: "just turn it down, to 325".
var five = measure.Whole(5)

// isBesideDial tells whether an oven or a thermometer was spoken of by a number.
func (r *Reading) isBesideDial(s speech.Said) bool {
	for k := max(0, s.From-heatReach); k < min(len(r.Text.Words), s.To+4); k++ {
		if dials[r.Text.Words[k].Text] {
			return true
		}
	}
	return false
}

// The least number that is taken for a heat without its degrees, beside a dial and
// away from it, and how many words before it the dial is spoken of.
const (
	leastHeat  = 40
	surelyHeat = 100
	heatReach  = 16
)

// dials are what shows or holds a heat.
var dials = speech.SetOf("oven dial thermometer probe needle smoker grill barbecue fryer oil degrees celsius fahrenheit")

const (
	rescueMost   = 12 // times the written amount that an amount may be which is said wrong of it
	rescueBefore = 10 // words before its food that such an amount may stand
)

// rescueReach gives how many words behind the mention of a food its amount may
// stand: long asides are bridged where the talk is surely of the dish again.
func rescueReach(elsewhere float64) int {
	switch {
	case elsewhere < 0.1:
		return 60
	case elsewhere < 0.4:
		return 30
	case elsewhere < 0.8:
		return 10
	}
	return -1
}

// rescueItems does the same for amounts that name no food: each goes to the nearest
// food whose own amount nobody says, the nearest pairs first.
func (r *Reading) rescueItems() {
	type pair struct{ gap, i, n int }
	var pairs []pair
	for n, it := range r.Book.Items {
		if !it.Line.HasAmount || Loose[it.Line.Amount.Unit] || r.isItemSpoken(n) {
			continue
		}
		for i := range r.Said {
			if gap, ok := r.rescueGap(i, n); ok {
				pairs = append(pairs, pair{gap, i, n})
			}
		}
	}
	slices.SortFunc(pairs, func(a, b pair) int { return cmp.Or(cmp.Compare(a.gap, b.gap), cmp.Compare(a.i, b.i)) })
	for _, p := range pairs {
		if !r.Ties[p.i].isTied() && !r.isItemSpoken(p.n) {
			r.Ties[p.i].Item, r.Ties[p.i].Aside = p.n, false
		}
	}
}

// rescueGap gives how many words number i stands from the food of item n, if it may
// be its amount said wrong.
func (r *Reading) rescueGap(i, n int) (gap int, ok bool) {
	s, t, line := r.Said[i], r.Ties[i], r.Book.Items[n].Line
	if t.isTied() || s.Struck || s.Each || s.Again || r.isSaidAgain(i) || s.Article && s.Unit.Kind() == measure.Count || t.Aside && r.Elsewhere[i] > surelyOurs || !r.isAmountOf(s, line) {
		return 0, false
	}
	reach := rescueReach(r.Elsewhere[i])
	if s.Kind == speech.Count && r.Elsewhere[i] > mostCounted {
		return 0, false
	}
	gap = reach + 1
	for _, m := range r.Mentions {
		switch {
		case !names(m, n):
		case m.To <= s.From && s.From-m.To < gap:
			gap = s.From - m.To
		case m.From >= s.To && m.From-s.To < min(gap, rescueBefore):
			gap = m.From - s.To
		}
	}
	return gap, gap <= reach
}

// isAmountOf tells whether a number is of the kind and the size of a line's amount.
func (r *Reading) isAmountOf(s speech.Said, line recipe.Line) bool {
	switch {
	case s.Kind == speech.Measure:
	case s.Kind == speech.Count && r.countsLine(s, line) && (same.Elided(s) && !r.isOfThem(s.To) || line.Amount.Unit.Kind() == measure.Count):
	default:
		return false
	}
	if !r.Scale.Comparable(s, line) || s.Kind == speech.Measure && s.Unit.Kind() != line.Amount.Unit.Kind() && !same.Ranges(s.Amount.Range, line.Amount.Range) {
		return false
	}
	return r.isOfSize(s, line.Amount, line)
}

// isItemSpoken tells whether any number is about item n.
func (r *Reading) isItemSpoken(n int) bool {
	for i, t := range r.Ties {
		if t.Item == n && !t.Aside && !r.isPortion(i) && (r.EqualItem(r.Said[i], n) || r.Elsewhere[i] < mostSpoken && r.Said[i].Kind != speech.Share && r.Scale.Comparable(r.Said[i], r.Book.Items[n].Line)) {
			return true
		}
	}
	return false
}

// mostCounted is how likely a number without a unit may be about something else and still
// be an amount said wrong.
const mostCounted = 0.55

// countsLine tells whether a count can be a line's: nothing is named that is counted, or
// a word of the line is.
func (r *Reading) countsLine(s speech.Said, line recipe.Line) bool {
	nouns := written.Nouns(r.Text, s)
	return len(nouns) == 0 || r.isOfThem(s.To) || slices.Contains(nouns, string(line.Amount.Unit)) || slices.ContainsFunc(nouns, func(noun string) bool { return slices.Contains(written.Stems(line.Food), noun) })
}

// isPortion tells whether number i says what a step states of the food that it is tied
// to, which need not be the line's: "boil in 6 cups water".
func (r *Reading) isPortion(i int) bool {
	name := written.Stems(r.Book.Items[r.Ties[i].Item].Line.Food)
	return len(name) > 0 && slices.ContainsFunc(r.Book.Portions, func(p written.Portion) bool {
		same, _ := r.Scale.Amount(r.Said[i], p.Amount.Amount, recipe.Line{})
		return same && p.Food == name[len(name)-1]
	})
}

// mostSpoken is how likely a number may be about something else and still speak of a
// line that it does not agree with.
const mostSpoken = 0.7
