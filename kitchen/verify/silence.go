package verify

import (
	"math"
	"slices"
	"strconv"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/about"
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// That something is not said must be earned too: where a number stands about that
// nobody could place, it may be the one that is missed. So what nobody seems to say has
// traits, of the numbers near its food or at its step, and how likely it is really not
// said was learnt.

// leastSilence is how likely something must be left out to be told of.
const leastSilence = 0.45

// leastWords is how many words a cut has of which more is known than what the rules know.
const leastWords = 150

// silenceOfItem gives the traits of line n, of which no number seems to be.
func (j *judge) silenceOfItem(n int) traits {
	line := j.Book.Items[n].Line
	var t traits
	t.add("item " + string(line.Amount.Unit.Kind()))
	t.add("named " + strconv.Itoa(min(j.countNamed(n), 3)))
	t.addIf(!j.isDoubtful(n), byRule)
	t.addIf(len(j.Text.Words) < leastWords, short)
	t.addIf(j.Book.Items[n].Line.Amount.Unit == measure.Each, "each")
	j.tellNearest(&t, "open comparable", n, func(i int) bool { return j.isOpen(i) && j.Scale.Comparable(j.Said[i], line) })
	j.tellNearest(&t, "open", n, j.isOpen)
	j.tellNearest(&t, "differs", n, func(i int) bool { return j.standing(i) == "differs" })
	j.tellNearest(&t, "doubted", n, func(i int) bool { return j.doubted[i] && j.Ties[i].Item == n })
	j.tellNearest(&t, "told", n, func(i int) bool { return j.finding[i] >= 0 && j.Ties[i].Item != n })
	j.tellNearest(&t, "aside", n, func(i int) bool { return j.standing(i) == "aside" })
	j.tellNearest(&t, "equal", n, func(i int) bool { return j.EqualItem(j.Said[i], n) && !j.Said[i].Struck })
	j.tellNearest(&t, "same figure", n, func(i int) bool { return same.Ranges(j.Said[i].Amount.Range, line.Amount.Range) && !j.Said[i].Struck })
	j.tellUnread(&t, n)
	j.tellVague(&t, n)
	return t
}

// countNamed counts the mentions of line n's food.
func (j *judge) countNamed(n int) int {
	count := 0
	for _, m := range j.Mentions {
		if slices.Contains(m.Items, n) {
			count++
		}
	}
	return count
}

// tellNearest tells how far from the food of line n the nearest of some numbers is.
func (j *judge) tellNearest(t *traits, name string, n int, is func(i int) bool) {
	gap := farAway
	for _, m := range j.Mentions {
		if !slices.Contains(m.Items, n) {
			continue
		}
		for i, s := range j.Said {
			if away := max(m.From-s.To, s.From-m.To, 0); away < gap && is(i) {
				gap = away
			}
		}
	}
	t.addNear(name, gap)
}

// farAway is farther than any word that matters.
const farAway = 60

// addNear adds a trait for a distance in words, for each bound that it is within.
func (t *traits) addNear(name string, gap int) {
	for _, most := range []int{2, 5, 10, 18, 30, farAway - 1} {
		t.addIf(gap <= most, name+" within "+strconv.Itoa(most))
	}
}

// tellUnread tells how far from line n's food a number word stands that is no part of any
// number.
func (j *judge) tellUnread(t *traits, n int) {
	gap := farAway
	for _, m := range j.Mentions {
		if !slices.Contains(m.Items, n) {
			continue
		}
		for k := max(0, m.From-farAway); k < min(len(j.Text.Words), m.To+farAway); k++ {
			if speech.IsNumberWord(j.Text.At(k)) && j.Text.At(k) != "one" && !j.isRead(k) {
				gap = min(gap, max(m.From-k-1, k-m.To, 0))
			}
		}
	}
	t.addNear("unread", gap)
}

// isRead tells whether word k is a part of a number.
func (j *judge) isRead(k int) bool {
	i, _ := slices.BinarySearchFunc(j.Said, k, func(s speech.Said, k int) int { return s.To - 1 - k })
	return i < len(j.Said) && j.Said[i].From <= k
}

// tellVague tells whether the food of line n is named with a vague amount, or with an
// article.
func (j *judge) tellVague(t *traits, n int) {
	for _, m := range j.Mentions {
		if !slices.Contains(m.Items, n) {
			continue
		}
		for k := m.From - 1; k >= 0 && k >= m.From-4; k-- {
			switch w := j.Text.At(k); {
			case vague[w]:
				t.addIf(!slices.Contains(*t, "vague"), "vague")
			case w == "a" || w == "an":
				t.addIf(!slices.Contains(*t, "article"), "article")
			}
		}
	}
}

// vague are words by which a host gives no amount.
var vague = speech.SetOf("some bit splash drizzle handful pinch little rest enough dash glug few sprinkle knob")

// silenceOfFact gives the traits of fact n, of which no number seems to be.
func (j *judge) silenceOfFact(n int, leavesOut bool) traits {
	f := j.Book.Facts[n]
	var t traits
	t.add("step " + string(f.Kind))
	t.addIf(f.IsOven, "oven")
	t.addIf(f.Hands, "hands on")
	t.addIf(f.Hands && leavesOut, "hands on, left out")
	t.addIf(!j.isFactDoubtful(n) && !(f.Hands && leavesOut), byRule)
	t.addIf(len(j.Text.Words) < leastWords, short)
	t.addIf(slices.Contains(j.Places, f.Place), "reached")
	j.tellNumbers(&t, "open here", func(i int) bool { return j.isOpen(i) && j.Said[i].Kind == f.Kind && j.stepsTo(i, f) == 0 })
	j.tellNumbers(&t, "open beside", func(i int) bool { return j.isOpen(i) && j.Said[i].Kind == f.Kind && j.stepsTo(i, f) <= 1 })
	j.tellNumbers(&t, "open", func(i int) bool { return j.isOpen(i) && j.Said[i].Kind == f.Kind })
	j.tellNumbers(&t, "bare here", func(i int) bool { return j.isOpen(i) && j.Said[i].Kind == speech.Count && j.stepsTo(i, f) == 0 })
	j.tellNumbers(&t, "differs here", func(i int) bool {
		return j.standing(i) == "differs" && j.Said[i].Kind == f.Kind && j.stepsTo(i, f) <= 1
	})
	j.tellNumbers(&t, "doubted", func(i int) bool { return j.doubted[i] && j.Ties[i].Fact == n })
	j.tellNumbers(&t, "aside here", func(i int) bool {
		return j.standing(i) == "aside" && j.Said[i].Kind == f.Kind && j.stepsTo(i, f) <= 1
	})
	j.tellNumbers(&t, "equal", func(i int) bool { return j.isFactValue(j.Said[i], f) && !j.Said[i].Struck })
	j.tellNumbers(&t, "equal here", func(i int) bool { return j.isFactValue(j.Said[i], f) && !j.Said[i].Struck && j.stepsTo(i, f) <= 1 })
	j.tellNumbers(&t, "same figure here", func(i int) bool {
		return same.Ranges(j.Said[i].Amount.Range, f.Figure()) && !j.Said[i].Struck && j.stepsTo(i, f) <= 1
	})
	t.addStep("minutes", math.Log2(max(1, f.Amount.To.Float())), 1, 8)
	return t
}

// stepsTo counts the steps from where number i is said to fact f.
func (j *judge) stepsTo(i int, f written.Fact) int { return j.Book.Distance(f.Place, j.PlaceOf(i)) }

// tellNumbers tells how many numbers are so.
func (j *judge) tellNumbers(t *traits, name string, is func(i int) bool) {
	count := 0
	for i := range j.Said {
		if is(i) {
			count++
		}
	}
	for least := 1; least <= 2; least++ {
		t.addIf(count >= least, name+" "+strconv.Itoa(least))
	}
}

const (
	doubtNear  = 8  // words between a food and a number that may be its amount
	doubtCount = 4  // the same for a count
	doubtBare  = 12 // the same for a number that is just what the line has, without its unit
)

// isOpen tells whether number i is about nothing that is known.
func (j *judge) isOpen(i int) bool {
	t := j.Ties[i]
	return t.Item < 0 && t.Fact < 0 && t.Foreign == "" && t.Portion == "" && !t.Aside && !j.Said[i].Struck
}

// isDoubtful tells whether the amount of item n may have been said: a number of
// its kind that is about nothing stands beside its food.
func (j *judge) isDoubtful(n int) bool {
	line := j.Book.Items[n].Line
	for i, s := range j.Said {
		if j.isOpen(i) && j.isUnplaced(s, n) && (s.Kind == speech.Measure || j.GapTo(i, n) <= doubtBare) {
			return true
		}
		if !j.isOpen(i) || s.Kind != speech.Measure && !(s.Kind == speech.Count && line.Amount.Unit.Kind() == measure.Count) || !j.Scale.Comparable(s, line) {
			continue
		}
		reach := doubtNear
		if s.Kind == speech.Count {
			if len(written.Nouns(j.Text, s)) > 0 {
				continue // it counts something else
			}
			reach = doubtCount
		}
		if j.GapTo(i, n) <= reach {
			return true
		}
	}
	return false
}

// isUnplaced tells whether a number about nothing is just what line n has, in its own
// unit or without one where it is no small count: it was likely said of it, by a name
// that nobody knows.
func (j *judge) isUnplaced(s speech.Said, n int) bool {
	line := j.Book.Items[n].Line
	switch {
	case s.Article || s.Each || !j.EqualItem(s, n):
		return false
	case s.Kind == speech.Measure:
		return s.Unit == line.Amount.Unit && s.Unit.Kind() != measure.Count
	}
	return same.Elided(s) && line.Amount.Unit.Kind() != measure.Count
}

// isFactValue tells whether a number about nothing has the value of a time or a heat.
func (j *judge) isFactValue(s speech.Said, f written.Fact) bool {
	if s.Kind == f.Kind {
		return about.EqualFact(s, f)
	}
	return f.Kind == speech.Heat && s.Amount.From.Cmp(measure.Whole(100)) >= 0 && slices.ContainsFunc(f.Heats, func(h speech.Said) bool { return same.Ranges(s.Amount.Range, h.Amount.Range) })
}

// mostBare is the greatest number without a unit that may be a time.
var mostBare = measure.Whole(90)

// isFactDoubtful tells whether a time or a heat may have been said: one that is
// about nothing is said where the talk is at its step.
func (j *judge) isFactDoubtful(n int) bool {
	f := j.Book.Facts[n]
	for i, s := range j.Said {
		if j.isOpen(i) && !s.Article && (f.Kind == speech.Time || s.Bare || s.Kind == speech.Count && same.Elided(s)) && j.isFactValue(s, f) {
			return true
		}
		if f.Kind == speech.Time && j.isOpen(i) && s.Kind == speech.Count && s.Amount.To.Cmp(mostBare) <= 0 && len(written.Nouns(j.Text, s)) == 0 && j.Book.Distance(f.Place, j.PlaceOf(i)) == 0 {
			return true
		}
		if j.isOpen(i) && s.Kind == f.Kind && !s.Article && j.Book.Distance(f.Place, j.PlaceOf(i)) == 0 && about.IsNear(s, f) {
			return true
		}
	}
	return false
}
