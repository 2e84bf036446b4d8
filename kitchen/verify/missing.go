package verify

import (
	"fmt"
	"slices"
	"strings"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/verify/about"
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// missing finds what is written and never said: amounts of ingredients, oven
// settings, and the times of steps that nobody stands beside.
func (j *judge) missing() {
	if len(j.Text.Words) == 0 {
		return
	}
	for n, it := range j.Book.Items {
		l := it.Line
		if !l.HasAmount || l.ToTaste || l.Optional || about.Loose[l.Amount.Unit] || isMade(l) || j.isSaid(n) {
			continue
		}
		j.miss(j.whereFood(n), Finding{Written: measureOf(l), Line: l.Text, Number: l.Number}, j.silenceOfItem(n))
	}
	var heats []written.Fact
	leavesOut := j.leavesTimesOut()
	for n, f := range j.Book.Facts {
		switch {
		case f.Kind == speech.Time && f.Amount.To.Cmp(measure.Whole(1)) <= 0:
			continue // "give it a minute" is hard to tell from a figure of speech
		case f.Place < 0 || f.Total || f.Part || f.Kind != speech.Time && f.Kind != speech.Heat || j.isFactSaid(n):
			continue
		case f.Kind == speech.Heat:
			if slices.ContainsFunc(heats, func(h written.Fact) bool { return h.Text == f.Text }) {
				continue
			}
			heats = append(heats, f)
		}
		j.miss(j.whereStep(f.Place), Finding{Written: f.Text, Line: f.Line, Number: f.Number}, j.silenceOfFact(n, leavesOut))
	}
}

// leavesTimesOut tells whether this host leaves out more times of work by hand
// than they say: then one more is no news. "Brush with the glaze, 2 minutes" is
// for whoever plans, not for whoever watches.
func (j *judge) leavesTimesOut() bool {
	said, unsaid := 0, 0
	for n, f := range j.Book.Facts {
		switch {
		case f.Kind != speech.Time || !f.Hands || f.Place < 0 || f.Total || f.Part:
		case j.isFactSaid(n):
			said++
		default:
			unsaid++
		}
	}
	return unsaid > max(2, said)
}

// isMade tells of a line that is made in the recipe itself: "900 ml stock (from
// above)", "160 g paste (half of the batch)".
func isMade(l recipe.Line) bool {
	text := strings.ToLower(l.Text)
	for _, from := range []string{"from above", "see above", "from below", "see below", "of the batch", "above)"} {
		if strings.Contains(text, from) {
			return true
		}
	}
	return false
}

// isSaid tells whether an amount was said of line n, or that amount of the same
// food where it was taken for another line's.
func (j *judge) isSaid(n int) bool {
	it := j.Book.Items[n]
	for i, t := range j.Ties {
		if t.Item == n && j.isBarePart(i, n) {
			return true
		}
		if j.doubted[i] {
			continue
		}
		if t.Portion != "" && j.isPortionOf(i, n) {
			return true
		}
		if t.Aside && !j.agreed[i] || t.Item < 0 || j.Said[i].Kind == speech.Share || about.Loose[j.Said[i].Amount.Unit] {
			continue
		}
		if t.Item == n {
			return true
		}
		other := j.Book.Items[t.Item].Line
		if other.FoodID == it.Line.FoodID && it.Line.FoodID != "" && j.EqualItem(j.Said[i], n) && (!j.agreed[i] || j.saidOften(t.Item, i)) {
			return true
		}
	}
	return j.isSaidOfEach(n) || j.spokenParts(n)
}

// isPortionOf tells whether number i, which a step states of a food, is the whole of line n
// with that food: "120 g barley flakes" where the step soaks 120 g flakes.
func (j *judge) isPortionOf(i, n int) bool {
	name := written.Stems(j.Book.Items[n].Line.Food)
	return slices.Contains(name, j.Ties[i].Portion) && j.EqualItem(j.Said[i], n)
}

// isBarePart tells a part that says the amount of line n without its unit: "the brown
// sugar, three quarters" of a cup.
func (j *judge) isBarePart(i, n int) bool {
	s, l := j.Said[i], j.Book.Items[n].Line
	return s.Kind == speech.Share && !s.Amount.From.IsZero() && l.Amount.Unit != measure.Each && same.Ranges(s.Amount.Range, l.Amount.Range)
}

// eachReach is how many words back the foods stand of which each has an amount.
const eachReach = 12

// isSaidOfEach tells whether the amount of line n was said of several foods at once:
// "butter, sugar and ground almonds, 125 of each".
func (j *judge) isSaidOfEach(n int) bool {
	for i, s := range j.Said {
		if !(j.Text.At(s.To) == "each" || j.Text.At(s.To) == "of" && j.Text.At(s.To+1) == "each") || !j.EqualItem(s, n) || j.Ties[i].Aside {
			continue
		}
		for _, m := range j.Mentions {
			if slices.Contains(m.Items, n) && m.To <= s.From && m.From >= s.From-eachReach {
				return true
			}
		}
	}
	return false
}

// saidOften tells whether line n has an agreeing amount besides number i.
func (j *judge) saidOften(n, i int) bool {
	for p, t := range j.Ties {
		if p != i && t.Item == n && j.agreed[i] && j.Said[p].Kind != speech.Share {
			return true
		}
	}
	return false
}

// spokenParts tells whether an article already says it: "the juice of a lemon",
// "an egg".
func (j *judge) spokenParts(n int) bool {
	l := j.Book.Items[n].Line
	if l.Amount.Unit.Kind() != measure.Count || !l.Amount.From.Equal(measure.Whole(1)) {
		return false
	}
	for _, m := range j.Mentions {
		if !slices.Contains(m.Items, n) {
			continue
		}
		if w := j.Text.Words[m.To-1]; w.Text == w.Stem && definite[j.Text.At(m.From-1)] {
			return true // "chop the onion"
		}
		for k := m.From - 1; k >= 0 && k >= m.From-4; k-- {
			switch w := j.Text.Words[k].Text; {
			case w == "a" || w == "an" || w == "one" || w == "single":
				return true
			case !written.Between[w] && !written.Describing[w] && w != "of" && !isUnit(w, l.Amount.Unit):
				k = -1
			}
		}
	}
	return false
}

// isUnit tells whether a word is a counted unit: the "head" of "a head of garlic".
func isUnit(word string, u measure.Unit) bool {
	got, ok := measure.ParseUnit(word)
	return ok && got == u
}

// definite are words before a thing of which there is one.
var definite = speech.SetOf("the this that your my our")

func (j *judge) isFactSaid(n int) bool {
	f := j.Book.Facts[n]
	for i, t := range j.Ties {
		if j.doubted[i] {
			continue
		}
		if t.Fact == n {
			return true
		}
		if t.Aside || j.Said[i].Kind != f.Kind {
			continue
		}
		if f.Kind == speech.Heat && about.EqualFact(j.Said[i], f) {
			return true
		}
		if t.Fact >= 0 && j.Book.Facts[t.Fact].Total && j.Book.Facts[t.Fact].Place == f.Place {
			return true
		}
		if f.Kind == speech.Time && t.Fact >= 0 && about.EqualFact(j.Said[i], f) && j.factOften(t.Fact, i) {
			return true
		}
	}
	return f.Night && j.isOverNight() || f.Place >= 0 && j.isSaidBare(f)
}

// isOverNight tells whether the talk says in other words that something takes a
// night: "last night I put the fruit down".
func (j *judge) isOverNight() bool {
	for i, w := range j.Text.Words {
		if w.Text == "night" && (j.Text.At(i-1) == "last" || j.Text.At(i-1) == "all" || j.Text.At(i-1) == "through") || w.Text == "morning" && (j.Text.At(i-1) == "till" || j.Text.At(i-1) == "until" || j.Text.At(i-1) == "next") {
			return true
		}
	}
	return false
}

// isSaidBare tells whether the number of a time or a heat was said without its
// unit where the talk is at its step: "let it cool for like fifteen", "it wants
// to say seventy four". Such a number contradicts nothing; but it has been said.
func (j *judge) isSaidBare(f written.Fact) bool {
	for i, s := range j.Said {
		if s.Kind != speech.Count || j.Ties[i].Item >= 0 || slices.ContainsFunc(written.Nouns(j.Text, s), func(w string) bool { return !written.IsClass(w) }) && !s.More && j.Text.At(s.From-1) != "for" || j.agreed[i] || s.Struck || min(j.Book.Distance(f.Place, j.PlaceOf(i)), j.Book.Distance(f.Place, j.placeBefore(i))) > 1 {
			continue
		}
		if f.Kind == speech.Time && same.Ranges(s.Amount.Range, f.Figure()) {
			return true
		}
		if slices.ContainsFunc(f.Heats, func(h speech.Said) bool { return same.Ranges(s.Amount.Range, h.Amount.Range) }) {
			return true
		}
	}
	return false
}

// placeBefore is the place of the fact that was said last before number i, else where
// the talk is.
func (j *judge) placeBefore(i int) int {
	for p := i - 1; p >= 0; p-- {
		if n := j.Ties[p].Fact; n >= 0 && j.Ties[p].Agrees && j.Book.Facts[n].Place >= 0 {
			return j.Book.Facts[n].Place
		}
	}
	return j.PlaceOf(i)
}

func (j *judge) factOften(n, i int) bool {
	for p, t := range j.Ties {
		if p != i && t.Fact == n && j.agreed[i] {
			return true
		}
	}
	return false
}

// whereFood is the word where a food comes up first, in its own component if it
// does there; −1 if nowhere.
func (j *judge) whereFood(n int) int {
	first := -1
	for _, m := range j.Mentions {
		if !slices.Contains(m.Items, n) {
			continue
		}
		if j.Book.States[j.Places[m.From]].Component == j.Book.Items[n].Component {
			return m.To - 1
		}
		if first < 0 {
			first = m.To - 1
		}
	}
	return first
}

func (j *judge) whereStep(place int) int {
	return slices.Index(j.Places, place)
}

// miss adds a NotSaid finding at a word, −1 for nowhere, if its traits speak for it.
func (j *judge) miss(word int, f Finding, t traits) {
	f.Kind, f.Cue = NotSaid, -1
	if !j.weigher.tells(f, t) {
		return
	}
	if word >= 0 {
		f.Cue = j.Text.Words[word].Cue
		f.At = j.Text.Cues[f.Cue].Start
		f.Words = j.Text.Quote(max(0, word-6), min(len(j.Text.Words), word+7))
	}
	f.Suggest = fmt.Sprintf("The cut never says “%s”: say it, or put “%s” on the screen.", f.Written, f.Line)
	j.findings = append(j.findings, f)
}
