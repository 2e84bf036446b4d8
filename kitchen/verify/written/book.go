package written

import (
	"math"
	"slices"
	"strings"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/verify/speech"
)

// Item is one ingredient line.
type Item struct {
	Component int
	Line      recipe.Line
	Parts     []measure.Amount // what the steps take of it: "100 g of the sugar"
}

// State is a place in the recipe: the list of a component, or one of its steps.
type State struct {
	Component int
	Step      int // −1 for the list of ingredients
	Uses      []int
	Words     map[string]bool // the meanings of its words
}

// Book is the recipe as it is looked things up in. It is never changed once read.
type Book struct {
	Recipe   recipe.Recipe
	Larder   *food.Larder // nil for none
	Items    []Item
	Facts    []Fact
	Portions []Portion
	States   []State
	Vocab    map[string][]int   // the states that have a word
	Weights  map[string]float64 // how rare a word is, about 0.7 to 4
	Names    *Names
	method   string          // the words of the method, each between spaces
	words    map[string]bool // every meaning of a word in the method, the notes and the lines nobody could read
}

// Read makes the book of a recipe; larder may be nil.
func Read(r recipe.Recipe, larder *food.Larder) *Book {
	b := &Book{Recipe: r, Larder: larder, Vocab: map[string][]int{}, Weights: map[string]float64{}, words: map[string]bool{}, method: " "}
	index := b.readLines()
	b.Names = newNames(b.Items, larder)
	for i, c := range r.Components {
		b.readList(i, c)
		for k, step := range c.Steps {
			b.readStep(i, k, step, index)
		}
	}
	b.readLengths()
	b.readYield()
	for _, f := range b.Facts {
		for word := range f.Clause { // of the notes and the yield, which are no state
			b.Weights[word] = math.Log(1 + float64(len(b.States)))
		}
	}
	for word, in := range b.Vocab {
		b.Weights[word] = math.Log(1 + float64(len(b.States))/float64(len(in)))
	}
	return b
}

// readLines makes the items; index finds them by component and line.
func (b *Book) readLines() (index map[[2]int]int) {
	index = map[[2]int]int{}
	for i, c := range b.Recipe.Components {
		for k, line := range c.Lines {
			if line.Read && line.Food != "" {
				index[[2]int{i, k}] = len(b.Items)
				line.Equals = append(slices.Clip(line.Equals), alsoStated(line)...)
				b.Items = append(b.Items, Item{Component: i, Line: line, Parts: ofEach(line)})
				continue
			}
			b.learn(cut(line.Text))
		}
	}
	return index
}

// alsoStated gives what a line states of its amount behind the food: "3 leeks, about
// 600 g trimmed", "2 lb peaches (about 6)". What one of several weighs is none.
func alsoStated(l recipe.Line) []measure.Amount {
	if !l.HasAmount || l.Packs.Unit != "" || len(l.Plus) > 0 || len(l.Equals) > 0 {
		return nil
	}
	_, behind, ok := strings.Cut(l.Text, l.Food)
	if !ok {
		return nil
	}
	var all []measure.Amount
	for _, s := range speech.Find(cut(behind)) {
		kind := s.Unit.Kind()
		weighs := s.Kind == speech.Measure && (kind == measure.Mass || kind == measure.Volume) && kind != l.Amount.Unit.Kind()
		counts := s.Kind == speech.Count && s.About && l.Amount.Unit.Kind() != measure.Count
		if !s.Each && !s.Size && (weighs || counts) {
			all = append(all, s.Amount)
		}
	}
	return all
}

// ofEach gives what a line says that each of several weighs: "2 racks of ribs, about 3 lb
// each".
func ofEach(l recipe.Line) []measure.Amount {
	var all []measure.Amount
	for _, s := range speech.Find(cut(l.Text)) {
		if s.Each && s.Kind == speech.Measure {
			all = append(all, s.Amount)
		}
	}
	return all
}

// readLengths finds what size a line wants its food cut to: "squash, in 3 cm chunks".
func (b *Book) readLengths() {
	for n, it := range b.Items {
		if it.Line.Amount.Unit.Kind() == measure.Length {
			continue
		}
		t := cut(it.Line.Text)
		for _, s := range speech.Find(t) {
			if s.Kind == speech.Length {
				b.Facts = append(b.Facts, Fact{Said: s, Place: b.placeOf(n), Line: it.Line.Text, Number: it.Line.Number, Text: t.Quote(s.From, s.To), Clause: clauseOf(t, s, 0), Hands: true})
			}
		}
	}
}

// placeOf is the first step that uses an item, else its list.
func (b *Book) placeOf(item int) int {
	list := 0
	for k, st := range b.States {
		switch {
		case st.Step >= 0 && slices.Contains(st.Uses, item):
			return k
		case st.Step < 0 && st.Component == b.Items[item].Component:
			list = k
		}
	}
	return list
}

// readList makes the state of a component's list of ingredients.
func (b *Book) readList(i int, c recipe.Component) {
	if len(c.Lines) == 0 {
		return
	}
	s := State{Component: i, Step: -1, Words: map[string]bool{}}
	s.learn(cut(c.Name))
	for k, item := range b.Items {
		if item.Component == i {
			s.Uses = append(s.Uses, k)
			s.learn(cut(item.Line.Food))
		}
	}
	b.add(s)
}

// readStep makes the state of a step and the facts that it states.
func (b *Book) readStep(i, k int, step recipe.Step, index map[[2]int]int) {
	t := cut(step.Text)
	for _, w := range t.Words {
		b.method += w.Text + " "
	}
	s := State{Component: i, Step: k, Words: map[string]bool{}}
	s.learn(t)
	if step.Station == "oven" {
		s.Words["oven"] = true
	}
	for _, use := range step.Uses {
		if n, ok := index[[2]int{use.Component, use.Line}]; ok {
			s.Uses = append(s.Uses, n)
			if use.HasAmount {
				b.Items[n].Parts = append(b.Items[n].Parts, use.Amount)
			}
		}
	}
	s.Component = b.componentOf(s)
	b.add(s)
	b.learn(t)
	b.readFacts(t, step)
	b.readParts(t, s.Uses)
}

// componentOf is the component that a step works at. Where one method follows all
// the lists it belongs to the last of them by its place, so what it uses tells;
// a step that uses nothing goes on with the last one's.
func (b *Book) componentOf(s State) int {
	if !slices.ContainsFunc(b.Recipe.Components, func(c recipe.Component) bool { return len(c.Lines) > 0 && len(c.Steps) == 0 }) {
		return s.Component
	}
	uses := make([]int, len(b.Recipe.Components))
	best := s.Component
	for _, n := range s.Uses {
		uses[b.Items[n].Component]++
	}
	for c := range uses {
		if uses[c] > uses[best] {
			best = c
		}
	}
	if len(s.Uses) == 0 && len(b.States) > 0 && b.States[len(b.States)-1].Step >= 0 {
		return b.States[len(b.States)-1].Component
	}
	return best
}

func (b *Book) add(s State) {
	for word := range s.Words {
		b.Vocab[word] = append(b.Vocab[word], len(b.States))
	}
	b.States = append(b.States, s)
}

// learn adds the words of a text that say something. "3 hours before baking" is no
// step of baking, though "cool before slicing" tells of slices.
func (s *State) learn(t speech.Text) {
	for i, w := range t.Words {
		if word := Meaning(w); word != "" && !(t.At(i-1) == "before" && (word == "bake" || word == "cook")) {
			s.Words[word] = true
		}
	}
}

func (b *Book) learn(t speech.Text) {
	for _, w := range t.Words {
		if word := Meaning(w); word != "" {
			b.words[word] = true
		}
	}
}

// Writes tells whether the method, a note or a line that nobody could read has a
// word of that meaning.
func (b *Book) Writes(meaning string) bool { return b.words[meaning] }

// WritesFood is like Writes for a noun, as a stem, that may be a food of its own: the "olive"
// of a line's olive oil, in the method, is none.
func (b *Book) WritesFood(noun string) bool {
	if !b.Writes(noun) {
		return false
	}
	words := strings.Fields(b.method)
	found := false
	for i, w := range words {
		if speech.Stem(w) != noun {
			continue
		}
		found = true
		if i+1 == len(words) || !b.Names.ends(speech.Stem(words[i+1]), noun) {
			return true
		}
	}
	return !found
}

// Says tells whether the method has a phrase, given as its words.
func (b *Book) Says(phrase []string) bool {
	return strings.Contains(b.method, " "+strings.Join(phrase, " ")+" ")
}

// Weight is how much a word tells, at most 1.25: one rare word alone ties nothing
// that lies elsewhere.
func (b *Book) Weight(word string) float64 { return min(b.Weights[word], 2.5) / 2 }

// Distance counts the steps between two states; from a list of ingredients every
// step of its component is near. What is in none, a state below 0, is far from all.
func (b *Book) Distance(of, from int) int {
	if of < 0 || from < 0 {
		return farAway
	}
	if b.States[from].Step < 0 && b.States[of].Component == b.States[from].Component {
		return 1
	}
	return max(of-from, from-of)
}

// farAway is more steps than matter anywhere.
const farAway = 9

// FoodOf is the larder's food of a line.
func (b *Book) FoodOf(l recipe.Line) (*food.Food, bool) {
	if b.Larder == nil || l.FoodID == "" {
		return nil, false
	}
	return b.Larder.Food(l.FoodID)
}

// isFood tells whether a noun names one of the ingredients: its count belongs to
// the line.
func (b *Book) isFood(noun string) bool {
	return noun != "" && slices.ContainsFunc(b.Items, func(it Item) bool {
		words := Stems(it.Line.Food)
		return len(words) > 0 && words[len(words)-1] == noun
	})
}

func cut(text string) speech.Text { return speech.Cut([]speech.Cue{{Text: text}}) }
