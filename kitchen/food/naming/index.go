package naming

import "strings"

// index finds the foods whose name is, or stands within, a written name.
type index struct {
	exact  map[string][]nameEntry // by folded words: "peppers" apart from "pepper"
	stems  map[string][]nameEntry // by stems
	joined map[string][]nameEntry // by stems without spaces: "bread crumb" and "breadcrumb"
	rarest map[string][]nameEntry // by the name's rarest stem; for names within names
	words  map[string]int         // every stem of every name, and in how many
	heads  map[string][]nameEntry // by the name's last stem
	slips  map[string][]string    // stems by what is left of them with letters dropped
	ids    map[string]string      // of the learned index: key to id
	all    []nameEntry
}

// nameEntry is one name of one food.
type nameEntry struct {
	of      *Thing
	tokens  []token
	primary bool // the name it is shown by
}

func newIndex() *index {
	return &index{
		exact: map[string][]nameEntry{}, stems: map[string][]nameEntry{}, joined: map[string][]nameEntry{},
		rarest: map[string][]nameEntry{}, words: map[string]int{}, heads: map[string][]nameEntry{}, slips: map[string][]string{}, ids: map[string]string{},
	}
}

// add takes one name of a thing; an empty one is nothing.
func (x *index) add(f *Thing, name string, primary bool) {
	list := tokens(name)
	if len(list) == 0 {
		return
	}
	e := nameEntry{of: f, tokens: list, primary: primary}
	x.all = append(x.all, e)
	put(x.exact, plainKey(list), e)
	put(x.stems, stemKey(list), e)
	put(x.joined, strings.ReplaceAll(stemKey(list), " ", ""), e)
	for _, t := range list {
		x.words[t.stem]++
	}
	noun := list[len(list)-1].stem
	x.heads[noun] = append(x.heads[noun], e)
}

// put keeps one entry per food and key; a shown name goes before an alias.
func put(m map[string][]nameEntry, key string, e nameEntry) {
	for i, known := range m[key] {
		if known.of == e.of {
			m[key][i].primary = known.primary || e.primary
			return
		}
	}
	m[key] = append(m[key], e)
}

// finish builds what needs all names to be in.
func (x *index) finish() {
	x.fileByRarest()
	for word := range x.words {
		x.addSlips(word)
	}
	for word := range modifiers {
		if _, ok := x.words[word]; !ok {
			x.addSlips(word)
		}
	}
}

func (x *index) fileByRarest() {
	for _, e := range x.all {
		rare := e.tokens[0].stem
		for _, t := range e.tokens[1:] {
			if x.words[t.stem] < x.words[rare] {
				rare = t.stem
			}
		}
		x.rarest[rare] = append(x.rarest[rare], e)
	}
}

// class tells what a stem is, with names going before the vocabulary only
// where the vocabulary has no word for it: "white" stays a modifier although
// it stands in "white pepper".
func (x *index) class(s string) wordClass {
	if c, ok := modifiers[s]; ok {
		return c
	}
	if _, ok := x.words[s]; ok {
		return foodWord
	}
	return unknownWord
}

// keys are the ways a phrase is looked up whole.
type keys struct{ plain, stem string }

func keysOf(list []token) keys { return keys{plain: plainKey(list), stem: stemKey(list)} }

// whole finds the things one of whose names is exactly this phrase. A shown
// name hides aliases; several things with an alias in common are all given, in
// their order.
func (x *index) whole(k keys) []nameEntry {
	found := x.exact[k.plain]
	if len(found) == 0 {
		found = x.stems[k.stem]
	}
	for _, e := range found {
		if e.primary {
			return []nameEntry{e}
		}
	}
	return found
}

// spaceless finds names that differ from the phrase in where words are parted.
func (x *index) spaceless(k keys) []nameEntry {
	if len(k.stem) < 6 {
		return nil
	}
	return x.joined[strings.ReplaceAll(k.stem, " ", "")]
}
