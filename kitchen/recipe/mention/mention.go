package mention

import (
	"slices"
	"strings"
	"unicode"

	"benchproof/kitchen/recipe/lexicon"
)

// Found is one mention.
type Found struct {
	Names []int  // indexes of the names that are meant; several for "the flours"
	Words string // as written, with what belongs to it: "the remaining butter"
	At    int    // byte where Words begins
}

// Index knows a list of names. It is never changed once made.
type Index struct {
	names []name
	heads map[string][]int // by the noun of a name
	other map[string]int   // by a word of one name only; −1 if several have it
}

type name struct {
	words []string // stems, in order
	bare  bool     // nothing but descriptions stand before the noun
}

// New makes an index of names: foods without amounts.
func New(names []string) *Index {
	x := &Index{heads: map[string][]int{}, other: map[string]int{}}
	for i, text := range names {
		words := stems(ownWords(text))
		n := name{words: words, bare: true}
		if len(words) > 0 {
			head := words[len(words)-1]
			x.heads[head] = append(x.heads[head], i)
			for _, w := range words[:len(words)-1] {
				if describing[w] || joining[w] {
					continue
				}
				n.bare = false
				if _, taken := x.other[w]; taken {
					x.other[w] = -1
				} else {
					x.other[w] = i
				}
			}
		}
		x.names = append(x.names, n)
	}
	return x
}

// Text is a text cut into words, to look for several lists of names in.
type Text struct {
	text   string
	tokens []token
}

// Cut cuts a text into words.
func Cut(text string) Text { return Text{text, cut(text)} }

// In finds the mentions in text, in order. A name is found once. Where several
// names could be meant, those that prefer holds for are; prefer may be nil.
func (x *Index) In(t Text, prefer func(name int) bool) []Found {
	text, tokens := t.text, t.tokens
	var found []Found
	seen := map[int]bool{}
	for i := 0; i < len(tokens); i++ {
		names := x.at(tokens, i, prefer)
		names = slices.DeleteFunc(names, func(n int) bool { return seen[n] })
		if len(names) == 0 {
			continue
		}
		for _, n := range names {
			seen[n] = true
		}
		from := x.start(tokens, i, names)
		end := tokens[i].end
		found = append(found, Found{Names: names, Words: text[tokens[from].at:end], At: tokens[from].at})
	}
	return found
}

// at gives the names that the word at i means.
func (x *Index) at(tokens []token, i int, prefer func(int) bool) []int {
	word := tokens[i].stem
	for _, next := range x.heads[nextStem(tokens, i)] {
		if slices.Contains(x.names[next].words, word) {
			return nil // "egg yolk" is no egg
		}
	}
	if heads := x.heads[word]; len(heads) > 0 {
		if n, ok := x.other[word]; ok && n >= 0 && prefer != nil && prefer(n) && !slices.ContainsFunc(heads, prefer) {
			return []int{n} // "cinnamon" where the stick is at hand and the powder is not
		}
		return x.narrow(preferred(heads, prefer), tokens, i)
	}
	n, ok := x.other[word]
	if !ok || n < 0 || len(x.heads[nextStem(tokens, i)]) > 0 {
		return nil
	}
	return []int{n}
}

// preferred gives those names that prefer holds for, all if it holds for none.
func preferred(names []int, prefer func(int) bool) []int {
	if prefer == nil {
		return names
	}
	var some []int
	for _, n := range names {
		if prefer(n) {
			some = append(some, n)
		}
	}
	if len(some) == 0 {
		return names
	}
	return some
}

// ownWords cuts a name where what it lies in begins: "cherries in juice".
func ownWords(name string) string {
	for _, in := range []string{" in ", " with ", " for ", " from "} {
		if i := strings.Index(name, in); i > 0 {
			name = name[:i]
		}
	}
	return name
}

func nextStem(tokens []token, i int) string {
	if i+1 < len(tokens) && !tokens[i].ends {
		return tokens[i+1].stem
	}
	return ""
}

// narrow picks among names with the same noun those whose other words stand
// before it in the text; without any such word, those whose noun says all.
func (x *Index) narrow(heads []int, tokens []token, i int) []int {
	best, score := []int(nil), 0
	for _, h := range heads {
		n := 0
		for k := i - 1; k >= 0 && k >= i-3 && !tokens[k].ends; k-- {
			if slices.Contains(x.names[h].words[:len(x.names[h].words)-1], tokens[k].stem) {
				n++
			}
		}
		if n > score {
			best, score = nil, n
		}
		if n == score {
			best = append(best, h)
		}
	}
	if score > 0 || tokens[i].plural && len(heads) > 1 {
		return best // "the flours" are all of them
	}
	var bare []int
	for _, h := range heads {
		if x.names[h].bare {
			bare = append(bare, h)
		}
	}
	if len(bare) > 0 {
		return bare
	}
	return slices.Clone(heads)
}

// token is one word of the text.
type token struct {
	stem    string
	plural  bool // its stem is shorter: "flours"
	at, end int
	ends    bool // punctuation follows
}

func cut(text string) []token {
	all := make([]token, 0, len(text)/5+1)
	at := -1
	for i, c := range text + " " {
		inside := unicode.IsLetter(c) || unicode.IsNumber(c) || c == '-' || c == '\'' || c == '’' || c == '.' && at >= 0 && i+1 < len(text) && text[i+1] != ' '
		switch {
		case inside && at < 0:
			at = i
		case !inside && at >= 0:
			word := strings.ToLower(text[at:i])
			t := token{stem: stem(word), at: at, end: i, ends: c != ' '}
			t.plural = len(t.stem) < len(word)
			all = append(all, t)
			at = -1
		}
	}
	return all
}

// start gives the first token of the phrase that ends with the one at i: back
// over the names' own words, amounts, articles and words that describe.
func (x *Index) start(tokens []token, i int, names []int) int {
	from := i
	for k := i - 1; k >= 0 && k >= i-6 && !tokens[k].ends; k-- {
		w := tokens[k].stem
		opens := k == 0 || tokens[k-1].ends
		own := slices.ContainsFunc(names, func(n int) bool { return slices.Contains(x.names[n].words, w) })
		if !own && !leading[w] && !describing[w] && !unicode.IsNumber(lexicon.First(w)) || opens && !own && (orders[w] || articles[tokens[k+1].stem]) {
			break
		}
		from = k
	}
	return from
}

func stems(text string) []string {
	var all []string
	for _, t := range cut(text) {
		all = append(all, t.stem)
	}
	return all
}

// stem takes a plural's ending off.
func stem(w string) string {
	switch n := len(w); {
	case n < 4:
		return w
	case w == "leaves":
		return "leaf"
	case strings.HasSuffix(w, "ies"):
		return w[:n-3] + "y"
	case strings.HasSuffix(w, "oes"), strings.HasSuffix(w, "ches"), strings.HasSuffix(w, "shes"), strings.HasSuffix(w, "sses"):
		return w[:n-2]
	case strings.HasSuffix(w, "ss"), strings.HasSuffix(w, "us"), strings.HasSuffix(w, "is"):
		return w
	case strings.HasSuffix(w, "s"):
		return w[:n-1]
	}
	return w
}

// orders are words that a clause can order to do: "Warm the jam". Any word is
// one before an article: "Brown the lamb".
var (
	orders   = lexicon.Of(`brown cold warm hot soft smooth dry last first`)
	articles = lexicon.Of(`the a an your`)
)

var (
	leading = lexicon.Of(`the a an of all half quarter third rest remaining reserved some most more extra other another little few both each
		g kg ml l oz lb tsp tbsp cup pint tablespoon teaspoon pinch handful knob clove slice sprig splash squeeze two three four one
		five six eight cold warm hot soft softened melted chopped sliced diced grated beaten cooked drained soaked toasted
		sifted whipped whisked crushed peeled your this that these those three-quarter two-third one-third half-a last first`)
	joining    = lexicon.Of(`of and or the a in with for from to`)
	describing = lexicon.Of(`fresh dried large small medium ripe unsalted salted strong plain white brown red green yellow black dark light
		fine coarse whole skinless boneless free-range full-fat low-fat soft hard baby mixed good cold warm raw natural
		smoked smooth crunchy double single heavy extra virgin all-purpose self-raising caster granulated golden icing demerara muscovado superfine
		instant active ground freshly floury waxy mature mild flaked flaky sea table kosher`)
)
