package food

import (
	"strings"

	"benchproof/kitchen/measure"
)

// Match is what a written name was taken to mean.
type Match struct {
	Food    *Food   // nil when How is None or Ask
	How     How     // why this food
	Form    string  // the modifiers that name a weight form or size: "chopped", "large"; for Grams
	Left    string  // modifiers not used, as written but folded: "finely fresh"
	Choices []*Food // when How is Ask: what it could be, likeliest first
}

// How tells how a name was matched, from surest to not at all.
type How string

// The ways a name can match.
const (
	Learned   How = "learned"   // a person said so
	Exact     How = "exact"     // the name it is shown by
	Alias     How = "alias"     // another of its names
	Modifiers How = "modifiers" // one of its names among words that do not change the food
	Head      How = "head"      // its noun, among words the larder does not know
	Spelling  How = "spelling"  // one of its names with a slip of the pen
	Ask       How = "ask"       // several foods fit, or one fits but for a word that may change it
	None      How = "none"      // nothing fits
)

// Match finds the food that a written name means. The name may carry
// preparation, before it or behind a comma, but no amount: "cold unsalted
// butter, diced". It never guesses between foods: a name that several foods
// share, or a known noun with a word that may make another food of it
// ("smoked" trout), is Ask with its Choices, and a name whose noun is not
// known is None. A slip of the pen is read only where the written word is no
// food's: one letter in words of five letters or more, two in nine or more.
func (l *Larder) Match(name string) Match {
	p := parsePhrase(name)
	if len(p.main) == 0 {
		return Match{How: None}
	}
	if id, ok := l.learned.ids[stemKey(p.all)]; ok {
		return Match{Food: l.byID[id], How: Learned}
	}
	for len(p.asides) > 0 && l.modifiersOnly(p.main) { // "boneless, skinless thighs"
		p.main, p.asides = append(append([]token(nil), p.main...), p.asides[0]...), p.asides[1:]
	}
	if m, ok := l.matchInverted(p); ok {
		return m
	}
	return l.findWithin(p.main).match(p.asides)
}

// For settles a question by the unit the name stood with, where that leaves one
// choice: "2 sprigs thyme" is fresh, for dried thyme has no sprigs. Only
// counted units and lengths settle; any other match is given back as it is.
func (m Match) For(u measure.Unit) Match {
	if kind := u.Kind(); m.How != Ask || kind != measure.Count && kind != measure.Length || u == measure.Each {
		return m
	}
	var fits *Food
	for _, f := range m.Choices {
		if len(f.candidates(u, measure.US)) == 0 {
			continue
		}
		if fits != nil {
			return m
		}
		fits = f
	}
	if fits != nil {
		m.Food, m.How, m.Choices = fits, Modifiers, nil
	}
	return m
}

// modifiersOnly tells whether no word of list can be the noun.
func (l *Larder) modifiersOnly(list []token) bool {
	for _, t := range list {
		if modifiers[t.stem] == unknownWord {
			return false
		}
	}
	return len(l.learned.whole(list)) == 0 && len(l.names.whole(list)) == 0
}

// matchInverted reads "flour, plain" and "sugar (caster)" as the name turned
// round, if the words behind really belong to a food's name.
func (l *Larder) matchInverted(p phrase) (Match, bool) {
	if len(p.asides) == 0 || len(p.asides[0]) > 3 {
		return Match{}, false
	}
	turned := append(append([]token(nil), p.asides[0]...), p.main...)
	f := l.find(turned)
	if !f.sure() || !f.uses(0, len(p.asides[0])) || !f.uses(len(p.asides[0]), len(turned)) {
		return Match{}, false
	}
	return f.match(p.asides[1:]), true
}

// findWithin finds the food in a phrase without asides: whole, then up to the
// word that begins an adverbial ("in brine", "at room temperature"), then on
// either side of an "or".
func (l *Larder) findWithin(list []token) finding {
	f := l.find(list)
	if f.sure() && f.how != Head {
		return f
	}
	if at := indexOf(list, adverbials); at > 0 {
		if g := l.find(list[:at]); g.how != None {
			g.left = append(g.left, list[at:]...)
			return g
		}
	}
	if at := indexOf(list, alternatives); at > 0 && at < len(list)-1 {
		return l.findEither(list[:at], list[at+1:])
	}
	return f
}

// findEither reads "lemon or lime juice": the first alternative with the noun
// it shares with the second, else the first alone, else the second.
func (l *Larder) findEither(first, second []token) finding {
	for k := 1; k < len(second); k++ {
		shared := append(append([]token(nil), first...), second[k:]...)
		if f := l.find(shared); f.how == Exact || f.how == Alias {
			f.left = append(f.left, second...)
			return f
		}
	}
	if f := l.find(first); f.how != None {
		f.left = append(f.left, second...)
		return f
	}
	f := l.find(second)
	f.left = append(append([]token(nil), first...), f.left...)
	return f
}

// find reads one phrase, surest reading first.
func (l *Larder) find(list []token) finding {
	for _, way := range []func([]token) finding{l.findWhole, l.findAmong, l.findSlip, l.findHead} {
		if f := way(list); f.how != None {
			return f
		}
	}
	return finding{how: None, left: list}
}

// findWhole takes the phrase as a name, as learned, as is, or with its words
// parted differently.
func (l *Larder) findWhole(list []token) finding {
	for _, whole := range []struct {
		entries []nameEntry
		learned bool
	}{{l.learned.whole(list), true}, {l.names.whole(list), false}, {l.names.spaceless(list), false}} {
		if len(whole.entries) == 0 {
			continue
		}
		f := finding{entries: whole.entries, how: Alias, used: make([]bool, len(list)), list: list}
		for i := range f.used {
			f.used[i] = true
		}
		switch {
		case whole.learned:
			f.how = Learned
		case len(f.entries) > 1:
			f.how = Ask
		case f.entries[0].primary:
			f.how = Exact
		}
		return f
	}
	return finding{how: None}
}

// adverbials begin what is said about a food, not its name.
var adverbials = wordSet("in with without from at for cut plus to into such")

// alternatives part two foods of which either will do.
var alternatives = wordSet("or")

func wordSet(words string) map[string]bool {
	set := map[string]bool{}
	for _, w := range strings.Fields(words) {
		set[w] = true
	}
	return set
}

func indexOf(list []token, set map[string]bool) int {
	for i, t := range list {
		if set[t.plain] {
			return i
		}
	}
	return -1
}
