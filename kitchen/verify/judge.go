package verify

import (
	"slices"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/verify/speech"
)

// foods judges what is said of the ingredients.
func (j *judge) foods() {
	of := make([][]int, len(j.book.items))
	for i, t := range j.ties {
		switch {
		case t.aside && !(t.item >= 0 && j.equalItem(j.said[i], t.item) && !j.said[i].Struck):
		case t.foreign != "":
			j.judgeForeign(i)
		case t.portion != "":
			j.judgePortion(i, t.portion)
		case t.item >= 0:
			of[t.item] = append(of[t.item], i)
		}
	}
	for n, said := range of {
		j.judgeItem(n, said)
	}
}

// judgeForeign finds an amount of something that is not in the recipe, where
// the host does something with it.
func (j *judge) judgeForeign(i int) {
	s := j.said[i]
	if s.Kind == speech.Count && !j.isInstruction(i) {
		return
	}
	j.found(i, Finding{Kind: NotWritten, Food: j.ties[i].foreign})
}

// judgePortion judges an amount of what only the steps speak of.
func (j *judge) judgePortion(i int, food string) {
	s := j.said[i]
	var near *portion
	for k := range j.book.shares {
		p := &j.book.shares[k]
		if p.food != food {
			continue
		}
		if same, ok := j.equal(s, p.amount.Amount, recipe.Line{}); same || !ok {
			j.ties[i].agrees = true
			return
		}
		if near == nil || abs(p.place-j.places[s.From]) < abs(near.place-j.places[s.From]) {
			near = p
		}
	}
	if near != nil {
		j.found(i, Finding{Kind: Differs, Written: near.text, Line: near.line, Number: near.number})
	}
}

// portionHere gives the amount of line n's food that the step at hand states.
func (j *judge) portionHere(i, n int) (portion, bool) {
	name := stemsOf(j.book.items[n].line.Food)
	for _, p := range j.book.shares {
		if len(name) > 0 && p.food == name[len(name)-1] && p.place == j.places[min(j.said[i].To, len(j.places)-1)] {
			return p, true
		}
	}
	return portion{}, false
}

// orders are words by which a host tells what to do.
var orders = setOf(`add adding put take need use stir whisk pour tip sprinkle measure weigh mix crack in with plus and then drop
	fold rub beat toss grate chop throw goes go get grab squeeze`)

func (j *judge) isInstruction(i int) bool {
	s := j.said[i]
	for k := s.From - 1; k >= 0 && k >= s.From-5; k-- {
		if orders[j.text.Words[k].Text] {
			return true
		}
	}
	return false
}

// judgeItem judges the numbers said of one line, in their order.
func (j *judge) judgeItem(n int, said []int) {
	line := j.book.items[n].line
	if !line.HasAmount {
		for _, i := range said {
			j.ties[i].agrees = true // "salt, to taste": any amount will do
		}
		return
	}
	var open []int // neither the whole nor a known part
	whole, rest := false, false
	for _, i := range said {
		s := j.said[i]
		switch {
		case s.Kind == speech.Share:
			j.ties[i].agrees = true
			rest = rest || s.Amount.From.IsZero()
		case loose[s.Amount.Unit] && !loose[line.Amount.Unit] || !j.comparable(s, n) || j.isElided(s) && !j.equalItem(s, n) && !j.isList(i) || j.isAbsurd(s, n):
			j.ties[i].agrees = true
		case j.equalItem(s, n):
			j.ties[i].agrees, whole = true, true
		case j.isWrittenPart(s, n) || j.isTotal(s, n):
			j.ties[i].agrees = true
		case !j.ties[i].aside:
			open = append(open, i)
		}
	}
	if len(open) > 1 || whole {
		open = slices.DeleteFunc(open, func(i int) bool { return j.isOneOf(i, n) })
	}
	if len(open) > 0 && j.addUp(n, open, whole, rest) {
		return
	}
	for _, i := range open {
		if p, ok := j.portionHere(i, n); ok {
			j.found(i, Finding{Kind: Differs, Written: p.text, Line: p.line, Number: p.number})
			continue
		}
		j.found(i, Finding{Kind: Differs, Written: measureOf(line.Text), Line: line.Text, Number: line.Number})
	}
}

// isElided tells "sixty of sugar", which leaves the unit out.
func (j *judge) isElided(s speech.Said) bool {
	return s.Kind == speech.Count && isBare(s)
}

// isList tells whether an amount without a unit stands in a list of amounts or
// before "of": "100 grams of butter, 60 of sugar". "Two hundred mushrooms" are
// none.
func (j *judge) isList(i int) bool {
	s := j.said[i]
	if s.To < len(j.text.Words) && j.text.Words[s.To].Text == "of" || j.book.items[j.ties[i].item].line.Amount.Unit.Kind() == measure.Count {
		return true
	}
	return i > 0 && j.said[i-1].Kind == speech.Measure && s.From-j.said[i-1].To < 8
}

// isOneOf tells whether an amount is one of several pieces: "trim one sheet".
func (j *judge) isOneOf(i, n int) bool {
	s, l := j.said[i], j.book.items[n].line
	if !s.Amount.IsSingle() || !s.Amount.From.Equal(measure.Whole(1)) || s.Amount.Unit.Kind() != measure.Count || l.Amount.Unit.Kind() != measure.Count {
		return false
	}
	j.ties[i].agrees = true
	return true
}

// isAbsurd tells whether an amount is so far off that it cannot be about the
// recipe, and no slip of a power of ten: "two hundred pounds of oats".
func (j *judge) isAbsurd(s speech.Said, n int) bool {
	l := j.book.items[n].line
	for _, w := range comparedWith(s, l) {
		if agrees(s.Amount.Range, w.Range, exactly) {
			return false
		}
		far := s
		far.Amount = s.Amount.Scale(measure.Ratio(1, 60))
		if same, ok := j.equal(s, w, l); same || !ok || s.Amount.Unit == w.Unit && isTenfold(s.Amount.Range, w.Range) {
			continue
		}
		if more, ok := j.exceeds(far, w, l); ok && more {
			return true
		}
	}
	return false
}

// isWrittenPart tells whether a step states this part of the line: "1 tbsp of
// the water". The part must be said as one, or at that step.
func (j *judge) isWrittenPart(s speech.Said, n int) bool {
	it := j.book.items[n]
	return slices.ContainsFunc(it.parts, func(p measure.Amount) bool {
		same, _ := j.equal(s, p, it.line)
		return same
	})
}

// isTotal tells whether the amount is that of all lines with the food together:
// "130 grams of sugar in all".
func (j *judge) isTotal(s speech.Said, n int) bool {
	line := j.book.items[n].line
	if !j.text.Near(s.From, s.To, 7, "total", "altogether", "all") {
		return false
	}
	sum := measure.Amount{}
	for _, other := range j.book.items {
		if other.line.FoodID != line.FoodID || line.FoodID == "" || !other.line.HasAmount {
			continue
		}
		more, ok := sum.Add(other.line.Amount, j.systemOf(line).Or(measure.US))
		if !ok {
			return false
		}
		sum = more
	}
	same, _ := j.equal(s, sum, line)
	return same
}

// exceeds tells whether a said amount is more than a written one.
func (j *judge) exceeds(s speech.Said, w measure.Amount, l recipe.Line) (more, ok bool) {
	if s.Amount.Unit == w.Unit {
		return s.Amount.From.Cmp(w.To) > 0, true
	}
	if c, err := measure.Convert(s.Amount, w.Unit, measure.US, measure.US); err == nil {
		return c.From.Cmp(w.To) > 0, true
	}
	f, found := j.book.foodOf(l)
	if !found {
		return false, false
	}
	a, err := f.Grams(s.Amount, l.Form, measure.US)
	b, err2 := f.Grams(w, l.Form, measure.US)
	return err == nil && err2 == nil && a.Grams.From.Cmp(b.Grams.To) > 0, err == nil && err2 == nil
}

// addUp tells whether amounts that are no whole are parts of one; it marks them
// then. whole tells that the whole is said too, rest that "the rest" is.
func (j *judge) addUp(n int, open []int, whole, rest bool) bool {
	line := j.book.items[n].line
	sum := measure.Amount{}
	parts := 0
	for _, i := range open {
		s := j.said[i]
		amount := s.Amount
		if s.Kind == speech.Count && s.Amount.Unit == measure.Each {
			amount.Unit = line.Amount.Unit
		}
		more, ok := sum.Add(amount, j.systemOf(line).Or(measure.US))
		if !ok {
			return false
		}
		sum = more
		if j.ties[i].of || s.More || j.isFirstPart(i) {
			parts++
		}
	}
	total := speech.Said{Kind: speech.Measure, Amount: sum, Unit: sum.Unit}
	if sum.Unit == measure.Each {
		total.Kind = speech.Count
	}
	switch {
	case len(open) > 1 && j.equalItem(total, n):
	case parts == len(open) && (whole || rest) && j.isLess(total, n):
	case rest && !whole && j.isLess(total, n) && len(open) == 1 && j.isFirstPart(open[0]):
	default:
		return false
	}
	for _, i := range open {
		j.ties[i].agrees = true
	}
	return true
}

// isFirstPart tells whether words beside an amount make it a part: "now",
// "first", "to begin with", "for now".
func (j *judge) isFirstPart(i int) bool {
	s := j.said[i]
	return j.text.Near(s.From, s.To, 6, "first", "start", "begin", "now", "hold", "reserve", "aside", "keep", "dusting", "later")
}

// isLess tells whether an amount is less than the line's.
func (j *judge) isLess(s speech.Said, n int) bool {
	line := j.book.items[n].line
	for _, w := range statements(line) {
		if _, ok := j.equal(s, w, line); !ok {
			continue
		}
		a, b := s.Amount, w
		if a.Unit == b.Unit {
			return a.To.Cmp(b.To) < 0
		}
		if c, err := measure.Convert(a, b.Unit, measure.US, measure.US); err == nil {
			return c.To.Cmp(b.To) < 0
		}
	}
	return false
}

// steps judges times, heats, lengths and counts of pieces.
func (j *judge) steps() {
	for i, t := range j.ties {
		if t.fact < 0 || t.aside || t.agrees {
			continue
		}
		f := j.book.facts[t.fact]
		written := f.text
		if f.kind == speech.Heat {
			written = writtenFor(j.said[i], f)
		}
		j.found(i, Finding{Kind: Differs, Written: written, Line: f.line, Number: f.number})
	}
}

// writtenFor is the setting of the oven that is said, all settings otherwise.
func writtenFor(s speech.Said, f fact) string {
	if s.Oven == "" && s.Scale == "" {
		return f.text
	}
	t := speech.Cut([]speech.Cue{{Text: f.line}})
	for _, h := range f.heats {
		if (s.Oven == "fan") == (h.Oven == "fan") && (s.Scale == "" && h.Scale != "gas" || s.Scale == h.Scale) {
			return t.Quote(h.From, h.To)
		}
	}
	return f.text
}

// pairs questions oven settings that are said together.
func (j *judge) pairs() {
	for i := 0; i+1 < len(j.said); i++ {
		a, b := j.said[i], j.said[i+1]
		if a.Kind != speech.Heat || b.Kind != speech.Heat || a.Struck || b.Struck || b.From-a.To > 7 || a.Oven == b.Oven && a.Scale == b.Scale ||
			a.Oven == "" && a.Scale == "" && b.Oven == "" && b.Scale == "" || j.ties[i].aside || j.ties[i+1].aside || j.isChange(a, b) {
			continue
		}
		x, y := j.scaled(a, b), j.scaled(b, a)
		questions := measure.CheckOvens([]measure.Heat{x, y})
		if len(questions) == 0 {
			continue
		}
		f := Finding{Kind: Pair, Said: j.text.Quote(a.From, b.To), Suggest: questions[0].Text}
		if n := j.factOf(i, i+1); n >= 0 {
			fact := j.book.facts[n]
			f.Written, f.Line, f.Number = fact.text, fact.line, fact.number
		}
		j.found(i, f)
	}
}

// isChange tells "then down to 160" from a pair: one setting after another.
func (j *judge) isChange(a, b speech.Said) bool {
	for k := a.To; k < b.From; k++ {
		switch j.text.Words[k].Text {
		case "then", "down", "up", "turn", "drop", "reduce", "lower", "after", "minutes", "until":
			return true
		}
	}
	return false
}

// scaled gives s with the scale of its neighbour where it has none itself.
func (j *judge) scaled(s, beside speech.Said) measure.Heat {
	h := heat(s)
	if h.Scale != "" {
		return h
	}
	h.Scale = "C"
	if beside.Scale == "F" && beside.Oven != s.Oven || s.Amount.From.Cmp(measure.Whole(280)) > 0 {
		h.Scale = "F"
	}
	return h
}

func (j *judge) factOf(said ...int) int {
	for _, i := range said {
		if j.ties[i].fact >= 0 {
			return j.ties[i].fact
		}
	}
	return -1
}
