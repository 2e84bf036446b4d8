package verify

import (
	"math"
	"slices"
	"strings"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/verify/speech"
)

// item is one ingredient line.
type item struct {
	component int
	line      recipe.Line
	parts     []measure.Amount // what the steps take of it: "100 g of the sugar"
}

// fact is one measure that a step, a note or the yield states.
type fact struct {
	kind   speech.Kind
	amount measure.Amount
	heats  []speech.Said // of a heat: every setting given together
	nouns  []string      // of a count: what is counted, as stems
	place  int           // the state of its step; −1 for the yield
	total  bool          // the sum of a step's times
	oven   bool          // of a heat: an oven's
	part   bool          // "after 10 minutes", "every 30 minutes": within a longer time
	more   bool          // "10 minutes more"
	hands  bool          // the step needs hands
	clause map[string]bool
	text   string // as written: "8–10 minutes"
	line   string // the step as written
	number int
}

// portion is an amount of a food that a step states: "add 100 ml water".
type portion struct {
	food   string // the noun, as a stem
	amount speech.Said
	place  int
	text   string // as written
	line   string // the step
	number int
}

// state is a place in the recipe: the list of a component, or one of its steps.
type state struct {
	component int
	step      int // −1 for the list of ingredients
	uses      []int
	words     map[string]bool
}

// book is the recipe as it is looked things up in.
type book struct {
	recipe recipe.Recipe
	larder *food.Larder
	items  []item
	facts  []fact
	shares []portion
	states []state
	vocab  map[string][]int // the states that have a word
	idf    map[string]float64
	names  *names
}

func readBook(r recipe.Recipe, larder *food.Larder) *book {
	b := &book{recipe: r, larder: larder, vocab: map[string][]int{}, idf: map[string]float64{}}
	index := map[[2]int]int{}
	for i, c := range r.Components {
		for k, line := range c.Lines {
			if line.Read && line.Food != "" {
				index[[2]int{i, k}] = len(b.items)
				b.items = append(b.items, item{component: i, line: line})
			}
		}
	}
	for i, c := range r.Components {
		b.readList(i, c)
		for k, step := range c.Steps {
			b.readStep(i, k, step, index)
		}
	}
	b.readYield()
	for word, in := range b.vocab {
		b.idf[word] = math.Log(1 + float64(len(b.states))/float64(len(in)))
	}
	b.names = newNames(b.items, larder)
	return b
}

// readList makes the state of a component's list of ingredients.
func (b *book) readList(i int, c recipe.Component) {
	if len(c.Lines) == 0 {
		return
	}
	s := state{component: i, step: -1, words: map[string]bool{}}
	s.learn(c.Name)
	for k, item := range b.items {
		if item.component == i {
			s.uses = append(s.uses, k)
			s.learn(item.line.Food)
		}
	}
	b.add(s)
}

// readStep makes the state of a step and the facts that it states.
func (b *book) readStep(i, k int, step recipe.Step, index map[[2]int]int) {
	s := state{component: i, step: k, words: map[string]bool{}}
	s.learn(step.Text)
	if step.Station == "oven" {
		s.words["bake"] = true
	}
	for _, use := range step.Uses {
		if n, ok := index[[2]int{use.Component, use.Line}]; ok {
			s.uses = append(s.uses, n)
			if use.HasAmount {
				b.items[n].parts = append(b.items[n].parts, use.Amount)
			}
		}
	}
	b.add(s)
	from := len(b.facts)
	b.readFacts(step.Text, len(b.states)-1, step.Number)
	var sum measure.Range
	times := 0
	for n := range b.facts[from:] {
		f := &b.facts[from+n]
		f.hands = step.HandsOn
		if f.kind == speech.Heat && step.Station == "oven" && !isProbed(f.clause) {
			f.oven = true
		}
		if f.kind == speech.Time && !f.part {
			sum, times = sum.Add(f.amount.Range), times+1
		}
	}
	if times > 1 {
		b.facts = append(b.facts, fact{kind: speech.Time, total: true, amount: measure.Amount{Range: sum, Unit: measure.Minute},
			place: len(b.states) - 1, text: measure.FormatMinutes(sum), line: step.Text, number: step.Number, hands: true})
	}
}

// isProbed tells whether a heat is that of the food: "until the middle reads
// 97 °C".
func isProbed(clause map[string]bool) bool {
	for _, w := range []string{"thermometer", "probe", "core", "middle", "inside", "read", "internal", "centre", "center"} {
		if clause[w] {
			return true
		}
	}
	return false
}

func (b *book) add(s state) {
	for word := range s.words {
		b.vocab[word] = append(b.vocab[word], len(b.states))
	}
	b.states = append(b.states, s)
}

// learn adds the words of text that say something.
func (s *state) learn(text string) {
	for _, w := range speech.Cut([]speech.Cue{{Text: text}}).Words {
		if word := meaning(w); word != "" {
			s.words[word] = true
		}
	}
}

// readYield finds what the recipe makes.
func (b *book) readYield() {
	y := b.recipe.Yield
	if y.Text == "" {
		return
	}
	b.readFacts(y.Text, -1, 0)
	for i := range b.facts {
		if f := &b.facts[i]; f.place < 0 && f.kind == speech.Count && len(f.nouns) == 0 && y.Of != "" {
			f.nouns = []string{speech.Stem(strings.ToLower(y.Of))}
		}
	}
	for _, note := range b.recipe.Notes {
		b.readFacts(note, -1, 0)
	}
}

// readFacts finds the measures that a step or the yield states.
func (b *book) readFacts(text string, place, number int) {
	t := speech.Cut([]speech.Cue{{Text: text}})
	var last *speech.Said
	for _, s := range speech.Find(t) {
		f := fact{kind: s.Kind, amount: s.Amount, place: place, line: text, number: number,
			text: t.Quote(s.From, s.To), clause: clauseOf(t, s)}
		switch s.Kind {
		case speech.Heat:
			n := len(b.facts) - 1
			if last != nil && s.From-last.To <= 3 && n >= 0 && b.facts[n].kind == speech.Heat && b.facts[n].place == place {
				b.facts[n].heats = append(b.facts[n].heats, s)
				b.facts[n].text = t.Quote(firstWord(b.facts[n]), s.To)
				b.facts[n].oven = true
				last = &s
				continue
			}
			f.heats = []speech.Said{s}
			f.oven = s.Oven != "" || s.Scale == "gas" || f.clause["oven"] || f.clause["bake"]
			last = &s
		case speech.Time:
			f.part, f.more = isPartTime(t, s), s.More
		case speech.Count, speech.Measure:
			b.readPortion(t, s, place, number, text)
			f.kind, f.nouns = speech.Count, nounsOf(t, s)
			if len(f.nouns) == 0 && (place >= 0 || s.Kind == speech.Measure) || slices.ContainsFunc(f.nouns, b.isFood) {
				continue
			}
		case speech.Length:
		default:
			continue
		}
		b.facts = append(b.facts, f)
	}
}

// readPortion takes note of an amount of something in a step.
func (b *book) readPortion(t speech.Text, s speech.Said, place, number int, line string) {
	if kind := s.Unit.Kind(); s.Kind != speech.Measure || kind != measure.Mass && kind != measure.Volume {
		return
	}
	noun := ""
	for k := s.To; k < len(t.Words) && k < s.To+6 && (noun == "" || t.Words[k-1].Stop == speech.None); k++ {
		w := t.Words[k].Text
		if w == "of" || w == "the" || between[w] || describing[w] {
			continue
		}
		if blockers[w] {
			break
		}
		noun = t.Words[k].Stem
	}
	if noun != "" {
		b.shares = append(b.shares, portion{food: noun, amount: s, place: place, text: t.Quote(s.From, s.To), line: line, number: number})
	}
}

func firstWord(f fact) int { return f.heats[0].From }

// foodOf is the larder's food of a line.
func (b *book) foodOf(l recipe.Line) (*food.Food, bool) {
	if b.larder == nil || l.FoodID == "" {
		return nil, false
	}
	return b.larder.Food(l.FoodID)
}

// isFood tells whether a noun names one of the ingredients: its count belongs
// to the line.
func (b *book) isFood(noun string) bool {
	return noun != "" && slices.ContainsFunc(b.items, func(it item) bool {
		words := strings.Fields(strings.ToLower(it.line.Food))
		return len(words) > 0 && speech.Stem(words[len(words)-1]) == noun
	})
}

// clauseOf gives the words around s up to the nearest stops.
func clauseOf(t speech.Text, s speech.Said) map[string]bool {
	from, to := s.From, s.To
	for from > 0 && t.Words[from-1].Stop == speech.None && t.Words[from-1].Text != "then" {
		from--
	}
	for to < len(t.Words) && t.Words[to-1].Stop == speech.None {
		to++
	}
	words := map[string]bool{}
	for i := from; i < to; i++ {
		if i < s.From || i >= s.To {
			if word := meaning(t.Words[i]); word != "" {
				words[word] = true
			}
		}
	}
	return words
}

// nounsOf are the words that can be what a number counts: "16 equal pieces", "2
// lined trays", "10 slices", "serves 4". nil for amounts of something.
func nounsOf(t speech.Text, s speech.Said) []string {
	if s.Kind == speech.Measure {
		if s.Unit.Kind() != measure.Count || s.To < len(t.Words) && t.Words[s.To].Text == "of" && !t.Pronoun(s.To) {
			return nil
		}
		return []string{string(s.Unit)}
	}
	if s.From > 0 {
		switch t.Words[s.From-1].Text {
		case "serves", "serve", "feeds", "feed":
			return []string{"serving"}
		}
	}
	var nouns []string
	for k := s.To; k < len(t.Words) && k < s.To+4 && len(nouns) < 2 && t.Words[k-1].Stop == speech.None; k++ {
		if w := t.Words[k]; !between[w.Text] {
			if meaning(w) == "" {
				break
			}
			nouns = append(nouns, w.Stem)
		}
	}
	return nouns
}

// between are words that stand between a number and what it counts.
var between = setOf(`large medium small big little fat fresh whole ripe good nice lovely more extra equal even free range
	of those these the our my your organic beautiful plump fine cold single separate long thin thick short round of`)
