package verify

import (
	"slices"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/verify/about"
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// judge is one comparison under way.
type judge struct {
	*about.Reading
	agreed   []bool // of each said number
	finding  []int  // of each said number: index into findings, −1 if none
	findings []Finding
}

func newJudge(r *about.Reading) *judge {
	j := &judge{Reading: r, agreed: make([]bool, len(r.Said)), finding: make([]int, len(r.Said))}
	for i, t := range r.Ties {
		j.agreed[i], j.finding[i] = t.Agrees, -1
	}
	return j
}

// foods judges what is said of the ingredients.
func (j *judge) foods() {
	of := make([][]int, len(j.Book.Items))
	for i, t := range j.Ties {
		switch {
		case t.Aside && t.Foreign != "" && !j.Said[i].Struck && (j.Elsewhere[i] < mostAdded && j.isPutIn(i) || j.Elsewhere[i] < sureAdded) && !j.IsCertain(j.Said[i]) && !j.Text.Near(j.Said[i].From, j.Said[i].To, 6, "once"):
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

// mostAdded is how likely an amount of what the recipe does not have may be about
// something else, where the host puts it in though other words set another scene.
const (
	mostAdded = 0.45
	sureAdded = 0.12 // and where it is only told
)

// mostLoad is how many grams of what is not written nobody puts into a dish.
var mostLoad = measure.Whole(5000)

// isLoad tells of a mass that is more than any dish takes.
func isLoad(s speech.Said) bool {
	grams, ok := measure.Grams(s.Unit)
	return ok && s.Amount.From.Mul(grams).Cmp(mostLoad) >= 0
}

// isPriced tells what something costs: "a head of lettuce was $6".
func (j *judge) isPriced(s speech.Said) bool {
	for k := s.To; k < min(len(j.Text.Words), s.To+7) && (k == s.To || !j.Text.Parts(k-1)); k++ {
		switch j.Text.At(k) {
		case "$", "£", "€":
			return true
		}
	}
	return false
}

// isOnlyOpened tells a pack of which then an amount is taken: "I shake up a can of coconut
// milk and give it half a cup".
func (j *judge) isOnlyOpened(i int) bool {
	s := j.Said[i]
	if !about.IsPack[s.Unit] || i+1 >= len(j.Said) {
		return false
	}
	next := j.Said[i+1]
	return next.Kind == speech.Measure && !about.IsPack[next.Unit] && next.From-s.To < openedReach && j.Ties[i+1].Item < 0
}

// openedReach is how many words behind a pack what is taken of it may be said.
const openedReach = 15

// isDrawnOff tells what comes out of something: "about a cup of green water out of it".
func (j *judge) isDrawnOff(s speech.Said) bool {
	for k := s.To; k < min(len(j.Text.Words), s.To+6); k++ {
		if j.Text.At(k) == "out" && j.Text.At(k+1) == "of" {
			return true
		}
	}
	return false
}

// isPutIn tells whether the host puts in what number i measures: "a tablespoon of
// vinegar goes in right now", "I finish it with 100 ml of cream".
func (j *judge) isPutIn(i int) bool {
	s := j.Said[i]
	return j.Text.NearBehind(s.To+1, 7, "goes", "go", "in") || j.Text.Near(s.From, s.From, 18, "finish", "add", "put", "stir")
}

// judgeForeign finds an amount of what is not in the recipe, unless it is what a
// line that nobody speaks of has, by a looser name: "350 grams of pasta" where the
// list has 350 g of tagliatelle.
func (j *judge) judgeForeign(i int, food string) {
	s := j.Said[i]
	if j.isPriced(s) || isLoad(s) {
		return
	}
	if s.Article && (s.Unit == measure.Slice || s.Unit == measure.Drop) || s.Unit == measure.Drop || j.isDrawnOff(s) || j.isOnlyOpened(i) {
		return // "with a slice of ham", "one drop of water"
	}
	if s.Kind == speech.Count && !j.IsInstruction(i) && !j.GoesIn(s.To) && !j.Text.Pronoun(s.To) && !j.IsSqueezed(s) && !j.IsAdded(s) {
		return
	}
	spoons := s.Kind == speech.Count || s.Unit == measure.Teaspoon || s.Unit == measure.Tablespoon // of which too many are alike
	for n, it := range j.Book.Items {
		if spoons {
			break
		}
		f, ok := j.Book.FoodOf(it.Line)
		if ok && f.Aisle == j.Book.Names.Aisle(food) && s.Amount.Unit == it.Line.Amount.Unit && j.EqualItem(s, n) && !j.isSaid(n) {
			j.Ties[i].Item, j.Ties[i].Foreign, j.agreed[i] = n, "", true
			return
		}
	}
	j.found(i, Finding{Kind: NotWritten, Food: food})
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
	open := j.parts(n, said)
	for _, i := range open {
		if j.finding[i] >= 0 {
			continue // a conversion that is in question is told once
		}
		if p, ok := j.portionHere(i, n); ok {
			if same, _ := j.Scale.Amount(j.Said[i], p.Amount.Amount, line); same {
				j.agreed[i] = true
				continue
			}
			j.found(i, Finding{Kind: Differs, Written: p.Text, Line: p.Line, Number: p.Number})
			continue
		}
		j.found(i, Finding{Kind: Differs, Written: measureOf(line), Line: line.Text, Number: line.Number})
	}
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
	case same.Elided(s) && !j.EqualItem(s, n) && !j.isList(i):
		return true
	case s.Size && l.Packs.Unit == "", j.isOtherPiece(s, n), isThisOne(s) && l.Amount.Unit.Kind() != measure.Count:
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

// isTotal tells whether the amount is that of all lines with the food together:
// "130 grams of sugar in all".
func (j *judge) isTotal(s speech.Said, n int) bool {
	line := j.Book.Items[n].Line
	if j.Text.At(s.From-1) == "that's" && j.Text.At(s.To) == "of" && !j.namesNear(n, s.To) {
		return j.isTotalOf(s, n, 2) // "a cup of cream, so that's four cups of wet"
	}
	if !j.Text.Near(s.From, s.To, 7, "total", "altogether", "together") && !j.isInAll(s) {
		return false
	}
	if j.isTotalOf(s, n, 2) || j.isTotalOf(s, n, 3) {
		return true
	}
	sum := measure.Amount{}
	for _, other := range j.Book.Items {
		if other.Line.FoodID != line.FoodID || line.FoodID == "" || !other.Line.HasAmount {
			continue
		}
		more, ok := sum.Add(other.Line.Amount, j.Scale.SystemOf(line).Or(measure.US))
		if !ok {
			return false
		}
		sum = more
	}
	same, _ := j.Scale.Amount(s, sum, line)
	return same
}

// namesNear tells whether item n is named right behind a word.
func (j *judge) namesNear(n, word int) bool {
	return slices.ContainsFunc(j.Mentions, func(m written.Mention) bool {
		return m.From >= word && m.From <= word+3 && slices.Contains(m.Items, n)
	})
}

// isInAll tells "in all", "all up", "all told" beside an amount from "it goes all soft".
func (j *judge) isInAll(s speech.Said) bool {
	for k := max(0, s.From-7); k < min(len(j.Text.Words), s.To+7); k++ {
		if j.Text.At(k) != "all" {
			continue
		}
		switch before, behind := j.Text.At(k-1), j.Text.At(k+1); {
		case before == "in", behind == "up", behind == "told", behind == "of", behind == "in":
			return true
		}
	}
	return false
}

// isTotalOf tells whether the amount is that of line n and the lines beside it, so many
// together: "a kilo of flour all up, that's 900 of the white and 100 of wholemeal".
func (j *judge) isTotalOf(s speech.Said, n, lines int) bool {
	for from := max(0, n-lines+1); from <= n && from+lines <= len(j.Book.Items); from++ {
		sum, ok := measure.Amount{}, true
		for _, it := range j.Book.Items[from : from+lines] {
			var more measure.Amount
			if more, ok = sum.Add(it.Line.Amount, measure.US); !ok || !it.Line.HasAmount {
				ok = false
				break
			}
			sum = more
		}
		if ok {
			if same, _ := j.Scale.Amount(s, sum, j.Book.Items[n].Line); same {
				return true
			}
		}
	}
	return false
}

// steps judges times, heats, lengths and counts of pieces.
func (j *judge) steps() {
	for i, t := range j.Ties {
		if t.Fact < 0 || t.Aside || t.Agrees || j.finding[i] >= 0 {
			continue // what is in question beside its pair is told once
		}
		if j.Said[i].Kind == speech.Time && !j.IsFirm(i) && j.isFactSaidBefore(t.Fact, i) {
			continue // more than likely about something else
		}
		f := j.Book.Facts[t.Fact]
		text := f.Text
		if f.Kind == speech.Heat {
			text = settingFor(j.Said[i], f)
		}
		j.found(i, Finding{Kind: Differs, Written: text, Line: f.Line, Number: f.Number})
	}
}

// isFactSaidBefore tells whether a number before i agrees with fact n.
func (j *judge) isFactSaidBefore(n, i int) bool {
	for p := range i {
		if j.Ties[p].Fact == n && j.Ties[p].Agrees {
			return true
		}
	}
	return false
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
