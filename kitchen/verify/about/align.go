package about

import (
	"slices"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// Hosts say amounts before their foods ("200 grams of flour") or behind them
// ("flour, 200 grams"), and where nobody writes the stops down, "flour 200 grams
// sugar 100 grams" could be read in both ways. So the amounts that stand near one
// another are read together: of all ways to give each the food before it, the one
// behind it or none, that is taken which speaks most for itself, as one way of
// speaking and with no food measured twice.

// option is one food that an amount can be tied to.
type option struct {
	mention int // index into Mentions; −1 for none
	before  bool
	score   float64
	from    int // the option of the number before that leads to it best
}

const (
	alignReach  = 25   // words between two numbers that are read together
	sameWay     = 0.35 // both have their food on the same side
	otherWay    = -0.1 // they do not
	sameMention = -1.5 // both have the same food
)

// align ties numbers to the foods named beside them; options are those of each
// number, none of a number that is settled otherwise.
func (r *Reading) align(options [][]option) {
	last := -1 // the number with options before
	for i := range options {
		if len(options[i]) == 0 {
			continue
		}
		near := last >= 0 && r.Said[i].From-r.Said[last].To <= alignReach
		if last >= 0 && !near {
			r.settleBack(options, last)
		}
		for k := range options[i] {
			o := &options[i][k]
			o.from = -1
			if near {
				o.from = r.bestBefore(options[last], last, i, *o)
				o.score += options[last][o.from].score + r.passing(options[last][o.from], *o, last, i)
			}
		}
		last = i
	}
	if last >= 0 {
		r.settleBack(options, last)
	}
}

// bestBefore gives the option of number last that leads best to one of number i.
func (r *Reading) bestBefore(before []option, last, i int, o option) int {
	best, top := 0, -1e9
	for k, b := range before {
		if score := b.score + r.passing(b, o, last, i); score > top {
			best, top = k, score
		}
	}
	return best
}

// passing weighs how well an option of number i goes with one of number last
// before it.
func (r *Reading) passing(a, b option, last, i int) float64 {
	switch {
	case a.mention < 0 || b.mention < 0:
		return 0
	case a.mention == b.mention && r.Said[last].Unit.Kind() == measure.Count && r.Said[last].Kind == speech.Measure && (r.Said[i].Size || r.Said[i].Each):
		return 0 // "two cans, fifteen ounces each"
	case a.mention == b.mention && r.Said[last].Kind == speech.Share:
		return 0 // "half the sugar, that's 50 grams"
	case a.mention == b.mention && r.Said[last].Unit != r.Said[i].Unit && r.SaysAgain(r.Said[last].To, r.Said[i].From):
		return 0 // "three racks, that's six pounds"
	case a.mention == b.mention && !r.Said[i].More && !r.isOfThem(r.Said[i].To):
		return sameMention
	case a.before == b.before:
		return sameWay - r.sameItem(a, b, i)
	}
	return otherWay - r.sameItem(a, b, i)
}

// sameItem is taken off where two mentions can only mean one line: "fresh thyme,
// a tablespoon of the leaves".
func (r *Reading) sameItem(a, b option, i int) float64 {
	x, y := r.Mentions[a.mention].Items, r.Mentions[b.mention].Items
	if (len(x) == 1 && names(r.Mentions[b.mention], x[0]) || len(y) == 1 && names(r.Mentions[a.mention], y[0])) && !r.Said[i].More {
		return 0.6
	}
	return 0
}

// settleBack ties the numbers on the best way that ends at number i, in their
// order, for what was said before tells of what is said next.
func (r *Reading) settleBack(options [][]option, i int) {
	best := 0
	for k, o := range options[i] {
		if o.score > options[i][best].score {
			best = k
		}
	}
	type step struct{ number, option int }
	var way []step
	for ; best >= 0; i-- {
		if len(options[i]) > 0 {
			way = append(way, step{i, best})
			best = options[i][best].from
		}
	}
	slices.Reverse(way)
	for _, s := range way {
		if o := options[s.number][s.option]; o.mention >= 0 {
			r.settle(s.number, o)
		}
	}
}

// settle ties number i to the food of an option.
func (r *Reading) settle(i int, o option) {
	s, t, m := r.Said[i], &r.Ties[i], r.Mentions[o.mention]
	n := r.choose(i, m)
	spoon := s.Unit == measure.Teaspoon || s.Unit == measure.Tablespoon          // of which too many are alike
	if m.Foreign && !(s.Kind == speech.Measure && !spoon && r.EqualItem(s, n)) { // a food by a name near its own may be meant
		if s.Kind == speech.Measure {
			t.Foreign = r.Text.Quote(m.From, m.To)
		}
		return
	}
	if o.before || r.Text.At(s.To) == "of" {
		r.takeUnit(i, n)
	}
	t.Item, t.before = n, o.before
	t.Of = !o.before && r.isPartOf(s, m)
	t.firm = !o.before && m.From-s.To <= 2 || o.before && s.From-m.To <= 4
}

// takeUnit gives a small number without a unit that of the amount before it, where
// its line is measured: "gochugaru four tablespoons, fish sauce two".
func (r *Reading) takeUnit(i, n int) {
	s, line := &r.Said[i], r.Book.Items[n].Line
	if i == 0 || s.Kind != speech.Count || s.Unit != "" || same.Elided(*s) || !line.HasAmount || line.Amount.Unit.Kind() == measure.Count || line.Packs.Unit != "" {
		return
	}
	before := r.Said[i-1]
	if r.Text.At(s.To) == "again" {
		for p := i - 1; p > 0 && before.Kind != speech.Measure && s.From-r.Said[p].To < carryReach; p-- {
			before = r.Said[p-1] // "flour, three again"
		}
		before.To = max(before.To, s.From-1)
	}
	if r.isOfThem(s.To) {
		return // "peaches, two pounds, that's about six of them"
	}
	if kind := before.Unit.Kind(); before.Kind != speech.Measure || kind != measure.Volume && kind != measure.Mass || s.From-before.To > 12 {
		return
	}
	s.Kind, s.Unit, s.Amount.Unit = speech.Measure, before.Unit, before.Unit
}

// optionsOf gives the ways to tie number i; first is the first mention that may
// stand near enough before it. None if the number is settled without.
func (r *Reading) optionsOf(i, first int) []option {
	s := r.Said[i]
	behind, before := -1, []int{}
	for m := first; m < len(r.Mentions) && r.Mentions[m].From < s.To+afterReach; m++ {
		switch mm := r.Mentions[m]; {
		case r.isMissing(mm), isPoured(s.Unit) && r.isOnlyCounted(mm):
		case mm.To <= s.From:
			before = append(before, m)
		case behind < 0 && mm.To > s.To && r.reaches(i, mm) && !(r.Text.Pronoun(s.To) && r.Text.Words[min(s.To+1, len(r.Text.Words)-1)].Stop != speech.None):
			behind = m
		}
	}
	if n := len(before); n > 0 && r.Text.Pronoun(s.To) && s.From-r.Mentions[before[n-1]].To <= backOf {
		behind = -1 // "allspice, ground, two tablespoons of that, salt"
	}
	adjacent := len(before) > 0 && s.From-r.Mentions[before[len(before)-1]].To <= 1 && r.Text.At(s.To) != "of"
	beyond := behind >= 0 && r.Text.At(s.To) == "of" && r.isPlaced(s.To, r.Mentions[behind].From) // "three sprigs of rosemary inside the bird"
	if (behind < 0 || beyond) && !adjacent && r.tieForeign(i) {
		return nil
	}
	if len(before) > 0 && !adjacent && r.tieAntecedent(i) {
		return nil
	}
	options := []option{{mention: -1}}
	if behind >= 0 {
		options = append(options, option{mention: behind, score: r.scoreBehind(s, r.Mentions[behind])})
	}
	for back, m := range before[max(0, len(before)-2):] {
		if !r.comesBefore(i, r.Mentions[m]) {
			continue
		}
		o := option{mention: m, before: true, score: r.scoreBefore(s, r.Mentions[m])}
		if back == 0 && len(before) > 1 {
			o.score -= 0.3 // another food is nearer
		}
		options = append(options, o)
	}
	if len(options) > 1 {
		return options
	}
	if !r.tieForeignBefore(i) {
		r.tieUnit(i)
	}
	return nil
}

// backOf is how many words before "two tablespoons of that" its food may stand.
const backOf = 12

// isPlaced tells whether a word of place stands between two words.
func (r *Reading) isPlaced(from, to int) bool {
	for k := from; k < to; k++ {
		switch r.Text.At(k) {
		case "inside", "under", "round", "around", "over", "beside", "among":
			return true
		}
	}
	return false
}

// isMissing tells a food that is named for not being there: "with no sugar in it".
func (r *Reading) isMissing(m written.Mention) bool {
	k := m.From - 1
	if w := r.Text.At(k); w == "the" || w == "any" {
		k--
	}
	return r.Text.At(k) == "no" || r.Text.At(k) == "without"
}

// scoreBehind weighs a food behind its amount.
func (r *Reading) scoreBehind(s speech.Said, m written.Mention) float64 {
	score := 1.2 - 0.15*float64(max(m.From-s.To, 0)) + r.scoreValue(s, m)
	if r.isOf(s.To) && m.From-s.To <= mostOf {
		score += 1.15
	}
	if r.Text.Words[s.To-1].Stop == speech.Clause {
		score -= 1.5
	}
	if r.Text.Pronoun(s.To) {
		score -= 1.5 // "1 teaspoon of that. Cinnamon, a teaspoon"
	}
	if s.Kind != speech.Share && r.Text.At(s.To) == "and" {
		score -= 1.2 // "sugar, 75 grams, and currants"
	}
	if s.Kind != speech.Share && owned[r.Text.At(s.To)] {
		score -= 1.2 // "a tablespoon, the raisins"
	}
	if same.Elided(s) && r.Text.At(s.To) != "of" && r.scoreValue(s, m) < 1 && !r.isCounted(m) {
		score -= 1.3 // "at about a hundred and sixty chicken on"
	}
	return score
}

// mostOf is how many words behind "of" what is measured may stand.
const mostOf = 6

// isOf tells whether word k ties an amount to the food behind it: "of", "from the".
func (r *Reading) isOf(k int) bool {
	return r.Text.At(k) == "of" && !r.Text.Pronoun(k) || r.Text.At(k) == "from" && r.Text.At(k+1) == "the"
}

// owned are words before a food that begin another part of the sentence, where no
// "of" stands before them.
var owned = speech.SetOf("the your my our some")

// isCounted tells whether a line that a mention can mean counts its food.
func (r *Reading) isCounted(m written.Mention) bool {
	return slices.ContainsFunc(m.Items, func(n int) bool { return r.Book.Items[n].Line.Amount.Unit.Kind() == measure.Count })
}

// scoreBefore weighs a food before its amount.
func (r *Reading) scoreBefore(s speech.Said, m written.Mention) float64 {
	perWord := 0.12
	if pointing[r.Text.At(s.From-1)] && r.scoreValue(s, m) >= 1 {
		perWord = 0.04 // "curry powder, the mild kind, and that's two teaspoons"
	}
	score := 1 - perWord*float64(s.From-m.To) + r.scoreValue(s, m)
	if r.Text.Words[s.To-1].Stop != speech.None {
		score += 0.8
	}
	if r.isOfThem(s.To) {
		score += 2
	}
	if pointing[r.Text.At(s.From-1)] {
		score += 0.4
	}
	return max(score, 0.1) // it may stand alone
}

// isPoured tells a unit in which nobody measures what is counted: "half a litre of it" are no
// six pears.
func isPoured(u measure.Unit) bool {
	return u == measure.Litre || u == measure.Millilitre || u == measure.Decilitre || u == measure.Pint
}

// isOnlyCounted tells whether all lines that a mention can mean count their food.
func (r *Reading) isOnlyCounted(m written.Mention) bool {
	return len(m.Items) > 0 && !slices.ContainsFunc(m.Items, func(n int) bool { return r.Book.Items[n].Line.Amount.Unit != measure.Each })
}

// scoreValue weighs whether an amount can be that of a food, and is.
func (r *Reading) scoreValue(s speech.Said, m written.Mention) float64 {
	score := -0.5
	for _, n := range m.Items {
		score = max(score, r.valueOf(s, n))
	}
	return score
}

// valueOf weighs whether an amount can be that of item n, and is. What only the
// weight of a piece makes equal, says little.
func (r *Reading) valueOf(s speech.Said, n int) float64 {
	l := r.Book.Items[n].Line
	switch {
	case s.Kind == speech.Measure && s.Unit.Kind() == measure.Count && l.Amount.Unit == measure.Each && s.Unit != l.Packs.Unit:
		return 0 // "celery, two sticks" counts no carrots
	case r.EqualItem(s, n) && (s.Kind == speech.Count || s.Unit.Kind() == l.Amount.Unit.Kind() || s.Unit == l.Packs.Unit):
		return 1
	case r.EqualItem(s, n) && s.Unit.Kind() != measure.Count && l.Amount.Unit.Kind() != measure.Count:
		return 0.6
	case s.Kind == speech.Measure && s.Unit.Kind() == measure.Count && s.Unit == l.Amount.Unit:
		return 0.5 // the food that is counted in cloves
	case r.Scale.Comparable(s, l):
		return 0
	}
	return -0.5
}
