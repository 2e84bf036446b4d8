package naming

import "strings"

// Found is what a written name was taken to mean.
type Found struct {
	ID      string   // the thing's; "" when How is None or Ask
	How     How      // why this one
	Form    string   // modifiers that name a form or size: "chopped", "large"
	Left    string   // modifiers not used, folded: "finely fresh"
	Choices []string // ids when How is Ask, likeliest first
}

// How tells how a name was matched, from surest to not at all.
type How string

// The ways a name can match.
const (
	Learned   How = "learned"   // a person said so
	Exact     How = "exact"     // the name it is shown by
	Alias     How = "alias"     // another of its names
	Modifiers How = "modifiers" // one of its names among words that do not change the food
	Head      How = "head"      // its noun, among words that are not known
	Spelling  How = "spelling"  // one of its names with a slip of the pen
	Ask       How = "ask"       // several fit, or one fits but for a word that may change it
	None      How = "none"      // nothing fits
)

// Find finds what a written name means. The name may carry preparation, before
// it or behind a comma, but no amount. A name that several things share, or a
// known noun with a word that may make another food of it, is Ask with its
// Choices; a name whose noun is not known is None. A slip of the pen is read
// only where the written word is no known one.
func (x *Names) Find(written string) Found {
	p := parsePhrase(written)
	if len(p.main) == 0 {
		return Found{How: None}
	}
	if len(x.learned.ids) > 0 {
		if id, ok := x.learned.ids[stemKey(p.all)]; ok {
			return Found{ID: id, How: Learned}
		}
	}
	for len(p.asides) > 0 && len(p.main) < mostWords && x.modifiersOnly(p.main) { // "boneless, skinless thighs"
		p = newPhrase(append(append([]token(nil), p.main...), p.asides[0]...), p.asides[1:])
	}
	if m, ok := x.findInverted(p); ok {
		return m
	}
	return x.findWithin(p.main).answer(p.asides)
}

// modifiersOnly tells whether no word of list can be the noun.
func (x *Names) modifiersOnly(list []token) bool {
	for _, t := range list {
		if modifiers[t.stem] == unknownWord {
			return false
		}
	}
	k := keysOf(list)
	return len(x.learned.whole(k)) == 0 && len(x.known.whole(k)) == 0
}

// findInverted reads "flour, plain" and "sugar (caster)" as the name turned
// round, if the words behind really belong to a food's name.
func (x *Names) findInverted(p phrase) (Found, bool) {
	if len(p.asides) == 0 || len(p.asides[0]) > 3 {
		return Found{}, false
	}
	turned := append(append([]token(nil), p.asides[0]...), p.main...)
	f := x.find(turned)
	if !f.sure() || !f.uses(0, len(p.asides[0])) || !f.uses(len(p.asides[0]), len(turned)) {
		return Found{}, false
	}
	return f.answer(p.asides[1:]), true
}

// findWithin finds the food in a phrase without asides: whole, then up to the
// word that begins an adverbial ("in brine", "at room temperature"), then on
// either side of an "or".
func (x *Names) findWithin(list []token) finding {
	f := x.find(list)
	if f.sure() && f.how != Head {
		return f
	}
	if at := indexOf(list, adverbials); at > 0 {
		if g := x.find(list[:at]); g.how != None {
			g.left = append(g.left, list[at:]...)
			return g
		}
	}
	if at := indexOf(list, alternatives); at > 0 && at < len(list)-1 {
		return x.findEither(list[:at], list[at+1:])
	}
	return f
}

// findEither reads "lemon or lime juice": the first alternative with the noun
// it shares with the second, else the first alone, else the second.
func (x *Names) findEither(first, second []token) finding {
	for k := 1; k < len(second); k++ {
		shared := append(append([]token(nil), first...), second[k:]...)
		if f := x.find(shared); f.how == Exact || f.how == Alias {
			f.left = append(f.left, second...)
			return f
		}
	}
	if f := x.find(first); f.how != None {
		f.left = append(f.left, second...)
		return f
	}
	f := x.find(second)
	f.left = append(append([]token(nil), first...), f.left...)
	return f
}

// find reads one phrase, surest reading first.
func (x *Names) find(list []token) finding {
	for _, way := range []func([]token) finding{x.findWhole, x.findAmong, x.findSlip, x.findHead} {
		if f := way(list); f.how != None {
			return f
		}
	}
	return finding{how: None, left: list}
}

// findWhole takes the phrase as a name, as learned, as is, or with its words
// parted differently.
func (x *Names) findWhole(list []token) finding {
	k := keysOf(list)
	f := finding{entries: x.learned.whole(k), how: Learned, used: allMarks, list: list}
	if len(f.entries) > 0 {
		return f
	}
	if f.entries = x.known.whole(k); len(f.entries) == 0 {
		f.entries = x.known.spaceless(k)
	}
	switch {
	case len(f.entries) == 0:
		return finding{how: None}
	case len(f.entries) > 1:
		f.how = Ask
	case f.entries[0].primary:
		f.how = Exact
	default:
		f.how = Alias
	}
	return f
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
