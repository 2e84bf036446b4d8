package written

import (
	"slices"
	"strings"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/speech"
)

// Names finds the ingredients in speech: by the recipe's words, by the larder's
// other names, by the noun alone.
type Names struct {
	larder  *food.Larder
	items   []Item
	byHead  map[string][]phrase
	foods   map[string]bool       // ids in the recipe
	matched map[string]food.Match // what the larder said of two words
}

// colours tell nobody which food is meant.
var colours = speech.SetOf("red green black yellow purple pink orange")

// phrase is one name of an item, as stems; the noun is last.
type phrase struct {
	words []string
	item  int
	own   bool // as the recipe calls it
	part  bool // no noun, but a word before it: the "olive" of "olive oil"
}

// Mention is one place where an ingredient is named.
type Mention struct {
	From, To int   // words, the end excluded
	Items    []int // the items that it can be, never empty
	Foreign  bool  // another food, which shares its noun with the items: "peanut butter"
}

func newNames(items []Item, larder *food.Larder) *Names {
	n := &Names{larder: larder, items: items, byHead: map[string][]phrase{}, foods: map[string]bool{}, matched: map[string]food.Match{}}
	single := map[string][]int{}
	for i, it := range items {
		own := Stems(it.Line.Food)
		n.addOwn(own, i)
		if _, other, ok := strings.Cut(it.Line.Text, " or "); ok { // "1 tbsp water, or juice from the plums"
			n.addOwn(Stems(other), i)
		}
		n.foods[it.Line.FoodID] = it.Line.FoodID != ""
		for _, id := range it.Line.Choices {
			n.foods[id] = true
		}
		for _, w := range own[:max(0, len(own)-1)] {
			if len(w) > 2 && !Describing[w] && !Silent[w] && !colours[w] {
				single[w] = append(single[w], i)
			}
		}
		if slices.Contains(own, "00") { // of flour
			n.add([]string{"double", "zero"}, i)
		}
		n.addKnown(it, i)
	}
	for i, it := range items {
		n.addEveryday(Stems(it.Line.Food), i)
	}
	for w, of := range single {
		if len(n.byHead[w]) > 0 {
			continue
		}
		for _, i := range of {
			n.byHead[w] = append(n.byHead[w], phrase{words: []string{w}, item: i, part: true})
		}
	}
	return n
}

// addKnown adds the larder's names of an item, but for those that end in what it
// is counted in: a "mozzarella ball" makes no mozzarella of other balls.
func (n *Names) addKnown(it Item, i int) {
	if n.larder == nil || it.Line.FoodID == "" {
		return
	}
	f, ok := n.larder.Food(it.Line.FoodID)
	if !ok {
		return
	}
	for _, name := range append([]string{f.Name}, f.Names...) {
		words := Stems(name)
		if len(words) > 1 {
			if _, counted := measure.ParseUnit(words[len(words)-1]); counted {
				continue
			}
		}
		n.add(words, i)
	}
}

func (n *Names) add(words []string, item int) {
	if len(words) == 0 {
		return
	}
	head := words[len(words)-1]
	n.byHead[head] = append(n.byHead[head], phrase{words: words, item: item})
}

// addOwn adds a name that the recipe itself has.
func (n *Names) addOwn(words []string, item int) {
	n.add(words, item)
	if len(words) > 0 {
		of := n.byHead[words[len(words)-1]]
		of[len(of)-1].own = true
	}
}

// Stems cuts a food's name into stems, up to what it lies in.
func Stems(name string) []string {
	for _, in := range []string{" in ", " with ", " for ", " from ", ",", "("} {
		if i := strings.Index(name, in); i > 0 {
			name = name[:i]
		}
	}
	var stems []string
	for _, w := range speech.Cut([]speech.Cue{{Text: name}}).Words {
		if w.Text != "of" && w.Text != "the" {
			stems = append(stems, w.Stem)
		}
	}
	return stems
}

// Mentions finds every mention in the text, in order.
func (b *Book) Mentions(t speech.Text) []Mention {
	var all []Mention
	for i := range t.Words {
		if m, ok := b.Names.At(t, i); ok {
			all = append(all, m)
		}
	}
	return all
}

// At finds the mention whose noun is word i.
func (n *Names) At(t speech.Text, i int) (Mention, bool) {
	phrases := n.byHead[t.Words[i].Stem]
	if len(phrases) == 0 || n.isPartOfNext(t, i) {
		return Mention{}, false
	}
	if phrases[0].part && n.isOfAnotherNoun(t, i) {
		return Mention{}, false // "curry leaves" are no curry powder
	}
	if w := t.Words[i]; phrases[0].part && strings.HasSuffix(w.Text, "s") && n.larder != nil && n.IsOther(w.Text) {
		return Mention{}, false // olives are no olive oil
	}
	best, m := 0, Mention{To: i + 1}
	for _, p := range phrases {
		score, from := p.fits(t, i)
		if p.own {
			score++ // "treacle" is black treacle before it is golden syrup
		}
		if score > best {
			best, m.Items, m.From = score, nil, from
		}
		if score == best && !slices.Contains(m.Items, p.item) {
			m.Items = append(m.Items, p.item)
			m.From = min(m.From, from)
		}
	}
	if m.To-m.From == 1 && Describing[t.Words[i].Text] && t.Words[i].Stop == speech.None && i+1 < len(t.Words) && !Silent[t.Words[i+1].Text] && !speech.IsNumber(t.Words[i+1].Text) {
		return Mention{}, false // "coarse black pepper" is no coarse salt
	}
	n.narrow(t, &m)
	return m, true
}

// isOfAnotherNoun tells whether word i, which only describes a line's noun, stands right
// before the noun of another food.
func (n *Names) isOfAnotherNoun(t speech.Text, i int) bool {
	if i+1 >= len(t.Words) || t.Words[i].Stop != speech.None || n.larder == nil {
		return false
	}
	next := t.Words[i+1]
	return !Silent[next.Text] && len(n.byHead[next.Stem]) == 0 && n.IsOtherAmong(t.Words[i].Text+" "+next.Text)
}

// fits counts the words of p that stand before its noun at word i.
func (p phrase) fits(t speech.Text, i int) (score, from int) {
	k := i
	for w := len(p.words) - 2; w >= 0 && k > 0 && t.Words[k-1].Stop == speech.None; w-- {
		switch {
		case t.Words[k-1].Stem == p.words[w]:
			k--
			score++
		case k > 1 && t.Words[k-1].Text == "of" && t.Words[k-2].Stem == p.words[w] && !isMeasured(t.Words[k-2].Text): // "cream of tartar"
			k -= 2
			score++
		}
	}
	score = 10 * (score + 1)
	if score > 10 && score == 10*len(p.words) {
		score += 2 // "plain flour" is no "plain wholemeal flour"
	}
	return score, k
}

// isMeasured tells whether a word is a unit: "cloves" of garlic.
func isMeasured(word string) bool {
	_, ok := measure.ParseUnit(word)
	return ok
}

// isPartOfNext tells whether word i only describes the noun behind it: "egg
// yolk" is no egg, "butter dish" no butter, "cream cheese" no cream.
func (n *Names) isPartOfNext(t speech.Text, i int) bool {
	if i+1 >= len(t.Words) || t.Words[i].Stop != speech.None {
		return false
	}
	if t.At(i+1) == "of" && i+2 < len(t.Words) {
		return n.ends(t.Words[i+2].Stem, t.Words[i].Stem) // "cream of tartar" is no cream
	}
	if t.At(i+2) == "of" {
		return false // "50 mil of water juice of a lemon"
	}
	next := t.Words[i+1]
	if IsThing(t, i+1) || made[next.Stem] && next.Stem != t.Words[i].Stem && !isDeed(t, i+1) {
		return true
	}
	if n.ends(next.Stem, t.Words[i].Stem) {
		return true
	}
	if len(n.byHead[next.Stem]) > 0 || Silent[next.Text] || n.larder == nil {
		return false
	}
	return n.IsOther(t.Words[i].Text+" "+next.Text) && n.match(next.Text).How != food.None
}

// ends tells whether a name ends in a noun with another word right before it.
func (n *Names) ends(noun, before string) bool {
	return slices.ContainsFunc(n.byHead[noun], func(p phrase) bool {
		return len(p.words) > 1 && p.words[len(p.words)-2] == before
	})
}

// IsOther tells whether a name is that of a food that the recipe does not have.
func (n *Names) IsOther(name string) bool {
	m := n.match(name)
	return (m.How == food.Exact || m.How == food.Alias) && m.Food != nil && !n.foods[m.Food.ID]
}

// IsOtherAmong is like IsOther, with words around the name that do not change the
// food, or with several foods of which the recipe has none: "rosemary", fresh or
// dried.
func (n *Names) IsOtherAmong(name string) bool {
	switch m := n.match(name); m.How {
	case food.Exact, food.Alias, food.Modifiers:
		return m.Food != nil && !n.foods[m.Food.ID]
	case food.Ask:
		return !strings.Contains(name, " ") && !slices.ContainsFunc(m.Choices, func(f *food.Food) bool { return n.foods[f.ID] })
	}
	return false
}

// Aisle is the shop's section of a food of the larder, "" for none.
func (n *Names) Aisle(name string) string {
	if m := n.match(name); m.Food != nil {
		return m.Food.Aisle
	}
	return ""
}

// HasHead tells whether a line's food ends in a noun, given as its stem.
func (n *Names) HasHead(noun string) bool {
	return slices.ContainsFunc(n.byHead[noun], func(p phrase) bool { return !p.part })
}

// narrow looks at the word before: it may name another food altogether.
func (n *Names) narrow(t speech.Text, m *Mention) {
	if n.larder == nil || m.From == 0 || t.Words[m.From-1].Stop != speech.None {
		return
	}
	before := t.Words[m.From-1].Text
	if Silent[before] || Describing[before] || speech.IsNumber(before) || classes[before] != "" {
		return
	}
	name := before
	for i := m.From; i < m.To; i++ {
		name += " " + t.Words[i].Text
	}
	got := n.match(name)
	if got.How != food.Exact && got.How != food.Alias || got.Food == nil {
		head := t.Words[m.To-1].Stem
		if made[head] && n.IsOther(before) && !n.isNamed(before) || head == "water" && waters[before] {
			n.alienate(m) // "tamarind water"
		}
		return
	}
	var same []int
	for _, i := range m.Items {
		if l := n.items[i].Line; l.FoodID == got.Food.ID || slices.Contains(l.Choices, got.Food.ID) {
			same = append(same, i)
		}
	}
	if len(same) > 0 {
		m.Items = same
		return
	}
	n.alienate(m)
}

// alienate makes a mention of one noun that of another food, by the word before it.
func (n *Names) alienate(m *Mention) {
	if m.To-m.From == 1 && !slices.ContainsFunc(m.Items, n.isPlain) {
		m.Foreign, m.From = true, m.From-1
	}
}

// isNamed tells whether a word is in any line.
func (n *Names) isNamed(word string) bool {
	return slices.ContainsFunc(n.items, func(it Item) bool { return strings.Contains(strings.ToLower(it.Line.Text), speech.Stem(word)) })
}

// isPlain tells of an item that the larder does not know and that is one word,
// which may be called anything.
func (n *Names) isPlain(i int) bool {
	l := n.items[i].Line
	return l.FoodID == "" && len(l.Choices) == 0 && len(Stems(l.Food)) < 2
}

func (n *Names) match(name string) food.Match {
	m, ok := n.matched[name]
	if !ok {
		m = n.larder.Match(name)
		n.matched[name] = m
	}
	return m
}
