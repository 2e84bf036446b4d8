package verify

import (
	"slices"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/verify/about"
	"benchproof/kitchen/verify/learnt"
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// judge is one comparison under way.
type judge struct {
	*about.Reading
	agreed   []bool // of each said number
	stray    []bool // of each said number: nothing but its nearness ties it
	doubted  []bool // of each said number: it seemed to disagree, and that was not believed
	finding  []int  // of each said number: index into findings, −1 if none
	findings []Finding
	weigher  weigher
}

// weigher tells whether what seems to be wrong is told, by its traits.
type weigher interface {
	tells(f Finding, traits []string) bool
}

// likelihoods weigh by what was learnt.
type likelihoods struct{ learnt.Models }

func (l likelihoods) tells(f Finding, traits []string) bool {
	switch {
	case slices.Contains(traits, short):
		return slices.Contains(traits, byRule)
	case f.Kind == NotSaid:
		return l.Silence.Likelihood(traits) >= leastSilence
	}
	return l.Doubt.Likelihood(traits) <= mostDoubt
}

func newJudge(r *about.Reading, by weigher) *judge {
	j := &judge{Reading: r, weigher: by, agreed: make([]bool, len(r.Said)), stray: make([]bool, len(r.Said)), doubted: make([]bool, len(r.Said)), finding: make([]int, len(r.Said))}
	for i, t := range r.Ties {
		j.agreed[i], j.finding[i] = t.Agrees, -1
	}
	return j
}

// run judges everything.
func (j *judge) run() {
	j.conversions()
	j.foods()
	j.pairs()
	j.steps()
	j.heats()
	j.times()
	j.asides()
	j.strays()
	j.missing()
}

// asides judges what words beside it take for another scene, where it is tied to the dish
// all the same.
func (j *judge) asides() {
	for i, t := range j.Ties {
		if !t.Aside || j.Said[i].Struck || j.agreed[i] || j.finding[i] >= 0 {
			continue
		}
		switch {
		case t.Item >= 0 && j.Book.Items[t.Item].Line.HasAmount && j.Said[i].Kind != speech.Share && !j.EqualItem(j.Said[i], t.Item) && !j.isHarmless(i, t.Item):
			j.differsFromLine(i, t.Item)
		case t.Fact >= 0 && !t.Agrees:
			j.differsFromStep(i, t.Fact)
		}
	}
}

// foods judges what is said of the ingredients.
func (j *judge) foods() {
	of := make([][]int, len(j.Book.Items))
	for i, t := range j.Ties {
		switch {
		case t.Aside && t.Foreign != "" && !j.Said[i].Struck:
			j.judgeForeign(i, t.Foreign)
		case t.Aside && !(t.Item >= 0 && j.EqualItem(j.Said[i], t.Item) && !j.Said[i].Struck):
		case t.Foreign != "":
			j.judgeForeign(i, t.Foreign)
		case t.Portion != "":
			j.judgePortion(i, t.Portion)
		case t.Item >= 0:
			of[t.Item] = append(of[t.Item], i)
		}
	}
	for n, said := range of {
		j.judgeItem(n, said)
	}
}

// judgePortion judges an amount of what only the steps speak of.
func (j *judge) judgePortion(i int, food string) {
	s := j.Said[i]
	here := j.PlaceOf(i)
	var nearest *written.Portion
	for k := range j.Book.Portions {
		p := &j.Book.Portions[k]
		if p.Food != food {
			continue
		}
		if same, ok := j.Scale.Amount(s, p.Amount.Amount, recipe.Line{}); same || !ok {
			j.agreed[i] = true
			return
		}
		if nearest == nil || away(p.Place, here) < away(nearest.Place, here) {
			nearest = p
		}
	}
	if nearest != nil {
		j.found(i, Finding{Kind: Differs, Written: nearest.Text, Line: nearest.Line, Number: nearest.Number})
	}
}

func away(a, b int) int { return max(a-b, b-a) }

// judgeItem judges the numbers said of one line, in their order.
func (j *judge) judgeItem(n int, said []int) {
	line := j.Book.Items[n].Line
	if !line.HasAmount {
		j.agree(said) // "salt, to taste": any amount will do
		return
	}
	open := j.parts(n, slices.DeleteFunc(said, j.isOfPortion))
	for _, i := range open {
		if j.finding[i] >= 0 {
			continue // a conversion that is in question is told once
		}
		if j.isAPortion(i, n) {
			j.agreed[i] = true
			continue
		}
		if p, ok := j.portionHere(i, n); ok {
			j.found(i, Finding{Kind: Differs, Written: p.Text, Line: p.Line, Number: p.Number})
			continue
		}
		j.differsFromLine(i, n)
	}
}

// isOfPortion tells what goes into each of several, which is the line's amount only by its
// name; it is about nothing then.
func (j *judge) isOfPortion(i int) bool {
	s := j.Said[i]
	if !s.Each || s.Kind != speech.Measure || s.Unit.Kind() == measure.Count || j.EqualItem(s, j.Ties[i].Item) {
		return false
	}
	j.Ties[i].Item = -1
	return true
}

// isAPortion tells whether any step states just what number i says of line n's food.
func (j *judge) isAPortion(i, n int) bool {
	name := written.Stems(j.Book.Items[n].Line.Food)
	return len(name) > 0 && slices.ContainsFunc(j.Book.Portions, func(p written.Portion) bool {
		same, _ := j.Scale.Amount(j.Said[i], p.Amount.Amount, j.Book.Items[n].Line)
		return same && p.Amount.Unit == j.Said[i].Unit && p.Food == name[len(name)-1]
	})
}

func (j *judge) agree(said []int) {
	for _, i := range said {
		j.agreed[i] = true
	}
}

// portionHere gives the amount of line n's food that the step at hand states.
func (j *judge) portionHere(i, n int) (written.Portion, bool) {
	name := written.Stems(j.Book.Items[n].Line.Food)
	here, found := written.Portion{}, false
	for _, p := range j.Book.Portions {
		if len(name) == 0 || p.Food != name[len(name)-1] || p.Place != j.PlaceOf(i) {
			continue
		}
		if same, _ := j.Scale.Amount(j.Said[i], p.Amount.Amount, j.Book.Items[n].Line); same || !found {
			here, found = p, true
		}
	}
	return here, found
}

// isHarmless tells whether number i of line n cannot be held against it.
func (j *judge) isHarmless(i, n int) bool {
	s, l := j.Said[i], j.Book.Items[n].Line
	switch {
	case s.Each && (l.Packs.Unit == "" || s.Unit.Kind() == measure.Count), j.isOutput(s), s.Again && j.Text.At(s.To) != "of" && !j.EqualItem(s, n):
		return true
	case j.isTheTin(i, n):
		return true
	case about.Loose[s.Amount.Unit] && !about.Loose[l.Amount.Unit], !j.Scale.Comparable(s, l):
		return true
	case j.isOtherPiece(s, n), isThisOne(s) && l.Amount.Unit.Kind() != measure.Count:
		return true
	}
	return j.isAbsurd(s, l)
}

// isThisOne tells a bare one, which is no amount: "the white wine one".
func isThisOne(s speech.Said) bool {
	return s.Kind == speech.Count && s.Unit == "" && s.Amount.IsSingle() && s.Amount.From.Equal(measure.Whole(1))
}

// isOtherPiece tells a count of what a food is cut into, or packed in, where its line
// counts something else: "24 wedges" of four tomatoes, "a dozen jars" home.
func (j *judge) isOtherPiece(s speech.Said, n int) bool {
	l := j.Book.Items[n].Line
	if s.Kind != speech.Measure || !cutInto[s.Unit] && !about.IsPack[s.Unit] || s.Unit == l.Amount.Unit || s.Unit == l.Packs.Unit {
		return false
	}
	return !slices.Contains(written.Stems(l.Text), string(s.Unit))
}

// cutInto are the units of what somebody cut.
var cutInto = map[measure.Unit]bool{measure.Slice: true, measure.Piece: true, measure.Wedge: true, measure.Sheet: true}

// isTheTin tells what a right amount comes in: "400 grams, that's just the one tin".
func (j *judge) isTheTin(i, n int) bool {
	return i > 0 && about.IsPack[j.Said[i].Unit] && j.Book.Items[n].Line.Packs.Unit == "" && j.Ties[i-1].Item == n && j.EqualItem(j.Said[i-1], n) && j.SaysAgain(j.Said[i-1].To, j.Said[i].From)
}

// isOutput tells what something comes to: "the paste makes about 320 grams".
func (j *judge) isOutput(s speech.Said) bool {
	k := s.From - 1
	for k > 0 && written.IsAbout(j.Text.At(k)) {
		k--
	}
	switch j.Text.At(k) {
	case "makes", "yields", "gives":
		return true
	case "to":
		return j.Text.At(k-1) == "down" || j.Text.At(k-1) == "reduced" // "you're taking it down to half a cup"
	}
	return false
}

// isList tells whether an amount without a unit stands in a list of amounts or
// before "of": "100 grams of butter, 60 of sugar". "Two hundred mushrooms" are
// none.
func (j *judge) isList(i int) bool {
	s := j.Said[i]
	if j.Text.At(s.To) == "of" && !j.Text.Pronoun(s.To) || j.Book.Items[j.Ties[i].Item].Line.Amount.Unit.Kind() == measure.Count {
		return true
	}
	return i > 0 && s.From-j.Said[i-1].To < listReach && j.isListed(i-1) || i+1 < len(j.Said) && j.Said[i+1].From-s.To < listReach && j.isListed(i+1)
}

// listReach is how many words may stand between two amounts of a list.
const listReach = 14

// isListed tells whether number i is the amount of a food, with its unit or without
// where it agrees.
func (j *judge) isListed(i int) bool {
	s, n := j.Said[i], j.Ties[i].Item
	return s.Kind == speech.Measure || same.Elided(s) && n >= 0 && j.EqualItem(s, n)
}

// absurd is how many times the written amount nobody says by a slip.
const (
	absurd      = 60
	absurdCount = 20 // of what is counted
)

// isAbsurd tells whether an amount is so far off that it cannot be about the
// recipe, and no slip of a power of ten: "two hundred pounds of oats".
func (j *judge) isAbsurd(s speech.Said, l recipe.Line) bool {
	most := measure.Whole(absurd)
	if s.Kind == speech.Count {
		most = measure.Whole(absurdCount)
	}
	return slices.ContainsFunc(same.Statements(l), func(w measure.Amount) bool {
		if same.Ranges(s.Amount.Range, w.Range) || s.Amount.Unit == w.Unit && isTenfold(s.Amount.Range, w.Range) {
			return false
		}
		ratio, ok := j.Scale.Ratio(s, w, l)
		return ok && ratio.Cmp(most) > 0
	})
}

// isWrittenPart tells whether a step states this part of the line: "1 tbsp of
// the water".
func (j *judge) isWrittenPart(s speech.Said, n int) bool {
	it := j.Book.Items[n]
	return slices.ContainsFunc(it.Parts, func(p measure.Amount) bool {
		same, _ := j.Scale.Amount(s, p, it.Line)
		return same
	})
}

// steps judges times, heats, lengths and counts of pieces.
func (j *judge) steps() {
	for i, t := range j.Ties {
		if t.Fact < 0 || t.Aside || t.Agrees || j.finding[i] >= 0 {
			continue // what is in question beside its pair is told once
		}
		j.differsFromStep(i, t.Fact)
	}
}

// differsFromLine finds that number i is not the amount of line n.
func (j *judge) differsFromLine(i, n int) {
	line := j.Book.Items[n].Line
	j.found(i, Finding{Kind: Differs, Written: measureOf(line), Line: line.Text, Number: line.Number})
}

// differsFromStep finds that number i is not what fact n states.
func (j *judge) differsFromStep(i, n int) {
	f := j.Book.Facts[n]
	text := f.Text
	if f.Kind == speech.Heat {
		text = settingFor(j.Said[i], f)
	}
	j.found(i, Finding{Kind: Differs, Written: text, Line: f.Line, Number: f.Number})
}

// settingFor is the written setting of the oven that is said, all settings
// otherwise.
func settingFor(s speech.Said, f written.Fact) string {
	if s.Oven == "" && s.Scale == "" {
		return f.Text
	}
	t := speech.Cut([]speech.Cue{{Text: f.Line}})
	for _, h := range f.Heats {
		if same.Rival(s, h) && (s.Scale == h.Scale || s.Scale == "") {
			return t.Quote(h.From, h.To)
		}
	}
	return f.Text
}
