package written

import (
	"slices"
	"strings"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/verify/speech"
)

// Fact is one measure that a step, a note or the yield states.
type Fact struct {
	speech.Said               // as if the recipe were read out
	Heats       []speech.Said // of a heat: every setting given together
	Or          []speech.Said // of a time: what may be instead, "6 hours or overnight"
	Nouns       []string      // of a count: what is counted, as stems
	Place       int           // the state of its step; −1 for the yield and the notes
	Verb        string        // the meaning of the kitchen's verb before it; "" if none
	Total       bool          // the sum of a step's times
	IsOven      bool          // of a heat: an oven's
	Part        bool          // "after 10 minutes", "every 30 minutes": within a longer time
	Within      bool          // "within 2 weeks"
	Hands       bool          // the step needs hands
	Clause      map[string]bool
	Text        string // as written: "8–10 minutes"
	Line        string // the step as written
	Number      int    // the line's number in the recipe's text; 0 for the yield
}

// Portion is an amount of a food that a step states: "add 100 ml water".
type Portion struct {
	Food   string // the noun, as a stem
	Amount speech.Said
	Place  int
	Text   string // as written
	Line   string // the step
	Number int
}

// readFacts finds the measures of a step, whose state was added last.
func (b *Book) readFacts(t speech.Text, step recipe.Step) {
	from := len(b.Facts)
	place := len(b.States) - 1
	b.find(t, place, step.Number)
	var sum measure.Range
	times := 0
	for n := range b.Facts[from:] {
		f := &b.Facts[from+n]
		f.Hands = step.HandsOn
		if f.Kind == speech.Heat && step.Station == "oven" && !isProbed(f.Clause) {
			f.IsOven = true
		}
		if f.Kind == speech.Time && !f.Part {
			sum, times = sum.Add(f.Amount.Range), times+1
		}
	}
	if times > 1 {
		total := speech.Said{Kind: speech.Time, Amount: measure.Amount{Range: sum, Unit: measure.Minute}, Unit: measure.Minute}
		b.Facts = append(b.Facts, Fact{Said: total, Total: true, Place: place, Text: measure.FormatMinutes(sum), Line: step.Text, Number: step.Number, Hands: true})
	}
}

// readYield finds what the recipe makes, and what its notes state.
func (b *Book) readYield() {
	for _, note := range b.Recipe.Notes {
		b.find(cut(note), -1, 0)
	}
	y := b.Recipe.Yield
	if y.Text == "" {
		return
	}
	from := len(b.Facts)
	text, aside, _ := strings.Cut(y.Text, "(") // "Serves 24 (one 13 x 18 inch pan)"
	b.find(cut(text), -1, 0)
	b.readPieces(aside)
	for i := range b.Facts[from:] {
		f := &b.Facts[from+i]
		if f.Kind == speech.Count && len(f.Nouns) == 0 && y.Of != "" {
			f.Nouns = []string{speech.Stem(strings.ToLower(y.Of))}
		}
		if f.Kind == speech.Count {
			f.Text = y.Text
		}
		if f.Kind == speech.Count && !slices.Contains(f.Nouns, "serving") {
			f.Nouns = append(f.Nouns, Pieces)
		}
	}
}

// Pieces gives the nouns of the pieces that the yield counts, as stems; nil for
// servings.
func (b *Book) Pieces() []string {
	for _, f := range b.Facts {
		if f.Kind == speech.Count && f.Place < 0 && f.Number == 0 && !slices.Contains(f.Nouns, "serving") {
			return f.Nouns
		}
	}
	return nil
}

// readPieces finds how many pieces the bracket behind a yield tells of: "Serves 4
// (about 40 tortelli)".
func (b *Book) readPieces(bracket string) {
	if bracket == "" {
		return
	}
	from := len(b.Facts)
	b.find(cut(bracket), -1, 0)
	counts := slices.DeleteFunc(b.Facts[from:], func(f Fact) bool {
		return f.Kind != speech.Count || len(f.Nouns) == 0 || f.Amount.From.Cmp(measure.Whole(1)) <= 0
	})
	b.Facts = b.Facts[:from+len(counts)]
}

// find adds the measures that a text states.
func (b *Book) find(t speech.Text, place, number int) {
	b.learn(t)
	line := t.Cues[0].Text
	var last *speech.Said
	ends := map[speech.Kind]int{}
	for _, s := range speech.Find(t) {
		f := Fact{Said: s, Place: place, Line: line, Number: number, Text: t.Quote(s.From, s.To), Clause: clauseOf(t, s, ends[s.Kind]), Verb: Verb(t, s)}
		ends[s.Kind] = s.To
		switch s.Kind {
		case speech.Heat:
			if n := len(b.Facts) - 1; last != nil && s.From-last.To <= 3 && b.Facts[n].Kind == speech.Heat && b.Facts[n].Place == place {
				b.Facts[n].Heats = append(b.Facts[n].Heats, s)
				b.Facts[n].Text = closed(t.Quote(b.Facts[n].From, s.To))
				b.Facts[n].IsOven = true
				last = &s
				continue
			}
			f.Heats = []speech.Said{s}
			f.IsOven = s.Oven != "" || s.Scale == "gas" || f.Clause["oven"] || f.Clause["bake"] || f.Clause["smoker"]
			last = &s
		case speech.Time:
			if n := len(b.Facts) - 1; n >= 0 && b.Facts[n].Kind == speech.Time && b.Facts[n].Place == place && isOr(t, b.Facts[n].Said, s) {
				b.Facts[n].Or = append(b.Facts[n].Or, s)
				b.Facts[n].Text = t.Quote(b.Facts[n].From, s.To)
				continue
			}
			f.Part = IsPartTime(t, s) || isCue(t, s)
			f.Within = t.At(s.From-1) == "within"
		case speech.Count, speech.Measure:
			if !b.readCount(t, &f) {
				continue
			}
		case speech.Room:
			f.Nouns = Nouns(t, s)
		case speech.Length:
		default:
			continue
		}
		b.Facts = append(b.Facts, f)
	}
}

// readCount reads what f counts, or what single pieces weigh; ok is false for the
// amount of an ingredient.
func (b *Book) readCount(t speech.Text, f *Fact) (ok bool) {
	s := f.Said
	if f.Place >= 0 && isBulk(s) && (s.Each || isPieceOf(t, s)) {
		f.Kind = speech.Piece
		return true
	}
	b.readPortion(t, *f)
	f.Kind, f.Nouns = speech.Count, Nouns(t, s)
	if lead := t.At(s.From - 1); len(f.Nouns) == 0 && s.Kind == speech.Count && f.Place >= 0 && (lead == "make" || lead == "makes") {
		f.Nouns = []string{Pieces} // "drop teaspoons of the dough onto the soup, to make 18"
	}
	f.Text = t.Quote(s.From, nounEnd(t, s, f.Nouns))
	return (len(f.Nouns) > 0 || f.Place < 0 && s.Kind != speech.Measure) && !slices.ContainsFunc(f.Nouns, b.isFood)
}

// isBulk tells a mass or a volume.
func isBulk(s speech.Said) bool {
	kind := s.Unit.Kind()
	return s.Kind == speech.Measure && (kind == measure.Mass || kind == measure.Volume)
}

// isPieceOf tells the weight in "divide into 10 balls of about 75 g": nothing follows
// that it could be of.
func isPieceOf(t speech.Text, s speech.Said) bool {
	k := s.From - 1
	for IsAbout(t.At(k)) {
		k--
	}
	return t.At(k) == "of" && (s.To >= len(t.Words) || t.Words[s.To-1].Stop != speech.None || t.At(s.To) == "and" || t.At(s.To) == "each")
}

// isOr tells whether a time is another word for the one before, or what may be
// instead: "6 hours or overnight", "overnight, 12 hours".
func isOr(t speech.Text, before, s speech.Said) bool {
	return s.From-before.To == 1 && t.At(s.From-1) == "or" || s.From == before.To && (before.Night || s.Night)
}

// nounEnd gives the word behind the nouns that a number counts.
func nounEnd(t speech.Text, s speech.Said, nouns []string) int {
	end := s.To
	for k := s.To; k < len(t.Words) && k < s.To+7; k++ {
		if slices.Contains(nouns, t.Words[k].Stem) {
			end = k + 1
		}
	}
	return end
}

// closed closes a bracket that a quotation cut off.
func closed(text string) string {
	if strings.Count(text, "(") > strings.Count(text, ")") {
		return text + ")"
	}
	return text
}

// isCue tells a time that is a sign and no stretch of work: "until a spoon leaves a
// trail for 3 seconds".
func isCue(t speech.Text, s speech.Said) bool {
	for k := s.From - 1; k >= 0 && t.Words[k].Stop == speech.None; k-- {
		if t.Words[k].Text == "until" {
			return true
		}
	}
	return false
}

// isProbed tells whether a heat is that of the food: "until the middle reads
// 97 °C".
func isProbed(clause map[string]bool) bool {
	for _, w := range []string{"thermometer", "probe", "core", "middle", "inside", "read", "internal", "centre", "thigh", "breast"} {
		if clause[w] {
			return true
		}
	}
	return false
}

// readPortion takes note of an amount of something in a step.
func (b *Book) readPortion(t speech.Text, f Fact) {
	if kind := f.Unit.Kind(); f.Kind != speech.Measure || kind != measure.Mass && kind != measure.Volume {
		return
	}
	noun := ""
	for k := f.To; k < len(t.Words) && k < f.To+6 && (noun == "" || t.Words[k-1].Stop == speech.None); k++ {
		w := t.Words[k].Text
		if w == "of" || w == "the" || Between[w] || Describing[w] {
			continue
		}
		if Blockers[w] {
			break
		}
		noun = t.Words[k].Stem
	}
	if k := f.From - 1; noun == "" && k >= 0 && t.Words[k].Stop == speech.Clause && len(b.Vocab[t.Words[k].Stem]) > 0 {
		noun = t.Words[k].Stem // "melt the rest of the butter, 70 g, and"
	}
	if noun != "" {
		b.Portions = append(b.Portions, Portion{Food: noun, Amount: f.Said, Place: f.Place, Text: f.Text, Line: f.Line, Number: f.Number})
	}
}

// readParts takes note of what a step uses of an ingredient that is counted: "the
// juice of 1 lime" where the list has two.
func (b *Book) readParts(t speech.Text, uses []int) {
	for _, s := range speech.Find(t) {
		if s.Kind != speech.Count || s.Unit != "" {
			continue
		}
		k := s.To
		for k < len(t.Words) && (Between[t.Words[k].Text] || Describing[t.Words[k].Text]) {
			k++
		}
		if k >= len(t.Words) {
			continue
		}
		m, ok := b.Names.At(t, k)
		if !ok {
			m, ok = b.Names.At(t, min(k+1, len(t.Words)-1))
		}
		if !ok || m.From > k {
			continue
		}
		for _, n := range m.Items {
			if slices.Contains(uses, n) {
				b.Items[n].Parts = append(b.Items[n].Parts, s.Amount)
			}
		}
	}
}

// clauseOf gives the words that a number of a step belongs to: back to the start
// of the sentence, to "then", or to the number of that kind before it, which ends
// at word behind, and on to the next stop.
func clauseOf(t speech.Text, s speech.Said, behind int) map[string]bool {
	from, to := s.From, s.To
	last := speech.Sentence
	if s.Kind == speech.Heat {
		last = speech.Clause // "bake for an hour, until the middle reads 97 °C"
	}
	for from > behind && t.Words[from-1].Stop < last && t.Words[from-1].Text != "then" {
		from--
	}
	if w := t.At(to); w != "before" && w != "after" { // "3 hours before baking" is no time of baking
		for to < len(t.Words) && t.Words[to-1].Stop == speech.None {
			to++
		}
	}
	words := map[string]bool{}
	for i := from; i < to; i++ {
		if i < s.From || i >= s.To {
			if word := Meaning(t.Words[i]); word != "" {
				words[word] = true
			}
		}
	}
	return words
}
