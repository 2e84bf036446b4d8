package verify

import (
	"slices"
	"strings"

	"benchproof/kitchen/food"
	"benchproof/kitchen/verify/speech"
)

// names finds the ingredients in speech: by the recipe's words, by the larder's
// other names, by the noun alone.
type names struct {
	larder  *food.Larder
	items   []item
	byHead  map[string][]phrase
	foods   map[string]bool       // ids in the recipe
	matched map[string]food.Match // what the larder said of two words
}

// phrase is one name of an item, as stems; the noun is last.
type phrase struct {
	words []string
	item  int
}

// mention is one place where an ingredient is named.
type mention struct {
	from, to int   // words, the end excluded
	items    []int // what it can be, never empty
	foreign  bool  // a food that the recipe does not have; items is empty then
}

func newNames(items []item, larder *food.Larder) *names {
	n := &names{larder: larder, items: items, byHead: map[string][]phrase{}, foods: map[string]bool{}, matched: map[string]food.Match{}}
	single := map[string][]int{}
	for i, it := range items {
		own := stemsOf(it.line.Food)
		n.add(own, i)
		if _, other, ok := strings.Cut(it.line.Text, " or "); ok { // "1 tbsp water, or juice from the plums"
			n.add(stemsOf(other), i)
		}
		n.foods[it.line.FoodID] = it.line.FoodID != ""
		for _, w := range own[:max(0, len(own)-1)] {
			if len(w) > 3 && !describing[w] {
				single[w] = append(single[w], i)
			}
		}
		if larder == nil || it.line.FoodID == "" {
			continue
		}
		if f, ok := larder.Food(it.line.FoodID); ok {
			n.add(stemsOf(f.Name), i)
			for _, name := range f.Names {
				n.add(stemsOf(name), i)
			}
		}
	}
	for w, of := range single {
		if len(n.byHead[w]) > 0 {
			continue
		}
		for _, i := range of {
			n.byHead[w] = append(n.byHead[w], phrase{words: []string{w}, item: i})
		}
	}
	return n
}

func (n *names) add(words []string, item int) {
	if len(words) == 0 {
		return
	}
	head := words[len(words)-1]
	n.byHead[head] = append(n.byHead[head], phrase{words: words, item: item})
}

// stemsOf cuts a food's name into stems, up to what it lies in.
func stemsOf(name string) []string {
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

// mentionsIn finds every mention in the text, in order.
func (b *book) mentionsIn(t speech.Text) []mention {
	var all []mention
	for i := range t.Words {
		if m, ok := b.names.at(t, i); ok {
			all = append(all, m)
		}
	}
	return all
}

// at finds the mention whose noun is word i.
func (n *names) at(t speech.Text, i int) (mention, bool) {
	phrases := n.byHead[t.Words[i].Stem]
	if len(phrases) == 0 || n.isPartOfNext(t, i) {
		return mention{}, false
	}
	best, m := 0, mention{to: i + 1}
	for _, p := range phrases {
		score, from := p.fits(t, i)
		if score > best {
			best, m.items, m.from = score, nil, from
		}
		if score == best && !slices.Contains(m.items, p.item) {
			m.items = append(m.items, p.item)
			m.from = min(m.from, from)
		}
	}
	n.narrow(t, &m)
	return m, true
}

// fits counts the words of p that stand before its noun at word i.
func (p phrase) fits(t speech.Text, i int) (score, from int) {
	k := i
	for w := len(p.words) - 2; w >= 0 && k > 0 && t.Words[k-1].Stop == speech.None; w-- {
		if t.Words[k-1].Stem == p.words[w] {
			k--
			score++
		}
	}
	score = 10 * (score + 1)
	if score > 10 && score == 10*len(p.words) {
		score++ // "plain flour" is no "plain wholemeal flour"
	}
	return score, k
}

// isPartOfNext tells whether word i only describes the noun behind it: "egg
// yolk" is no egg, "butter dish" no butter, "cream cheese" no cream.
func (n *names) isPartOfNext(t speech.Text, i int) bool {
	if i+1 >= len(t.Words) || t.Words[i].Stop != speech.None {
		return false
	}
	next := t.Words[i+1]
	if things[next.Text] || made[next.Stem] && next.Stem != t.Words[i].Stem {
		return true
	}
	for _, p := range n.byHead[next.Stem] {
		if len(p.words) > 1 && p.words[len(p.words)-2] == t.Words[i].Stem {
			return true
		}
	}
	if len(n.byHead[next.Stem]) > 0 || silent[next.Text] || n.larder == nil {
		return false
	}
	m := n.match(t.Words[i].Text + " " + next.Text)
	return (m.How == food.Exact || m.How == food.Alias) && m.Food != nil && !n.foods[m.Food.ID] && n.match(next.Text).How != food.None
}

// narrow looks at the word before: it may name another food altogether.
func (n *names) narrow(t speech.Text, m *mention) {
	if n.larder == nil || m.from == 0 || t.Words[m.from-1].Stop != speech.None {
		return
	}
	before := t.Words[m.from-1].Text
	if silent[before] || describing[before] || speech.IsNumber(before) || classes[before] != "" {
		return
	}
	name := before
	for i := m.from; i < m.to; i++ {
		name += " " + t.Words[i].Text
	}
	got := n.match(name)
	if got.How != food.Exact && got.How != food.Alias || got.Food == nil {
		return
	}
	var same []int
	for _, i := range m.items {
		if n.items[i].line.FoodID == got.Food.ID {
			same = append(same, i)
		}
	}
	if len(same) > 0 {
		m.items = same
		return
	}
	if m.to-m.from == 1 && !slices.ContainsFunc(m.items, func(i int) bool { return n.items[i].line.FoodID == "" }) {
		m.foreign, m.items, m.from = true, nil, m.from-1
	}
}

func (n *names) match(name string) food.Match {
	m, ok := n.matched[name]
	if !ok {
		m = n.larder.Match(name)
		n.matched[name] = m
	}
	return m
}

// made are nouns that make another food of the one before them: "plum juice".
var made = setOf("juice zest peel syrup stock jam")

// things are nouns that make a tool or a dish of the food before them.
var things = setOf(`dish dishes knife bowl bag bags jar jug tin box boxes carton packet shop cup cups spoon wash brush mill
	grinder bin sack stain shaker farmer farmers timer timers box beater slicer press peeler pan sieve`)

// describing are words before a noun that make no other food of it.
var describing = setOf(`fresh dried large small medium ripe unsalted salted plain white fine coarse whole good cold warm hot
	soft softened melted raw natural mixed boneless skinless organic local lovely beautiful nice big little fat extra more
	cooked chopped sliced diced grated sifted toasted beaten ground golden that this your same real proper usual cheap dry
	strong best ordinary leftover remaining hard crisp young old first second last free-range range lukewarm boiling iced`)
