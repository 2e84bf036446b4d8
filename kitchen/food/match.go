package food

import (
	"benchproof/kitchen/food/naming"
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
type How = naming.How

// The ways a name can match.
const (
	Learned   = naming.Learned   // a person said so
	Exact     = naming.Exact     // the name it is shown by
	Alias     = naming.Alias     // another of its names
	Modifiers = naming.Modifiers // one of its names among words that do not change the food
	Head      = naming.Head      // its noun, among words the larder does not know
	Spelling  = naming.Spelling  // one of its names with a slip of the pen
	Ask       = naming.Ask       // several foods fit, or one fits but for a word that may change it
	None      = naming.None      // nothing fits
)

// Match finds the food that a written name means. The name may carry
// preparation, before it or behind a comma, but no amount: "cold unsalted
// butter, diced". It never guesses between foods: a name that several foods
// share, or a known noun with a word that may make another food of it
// ("smoked" trout), is Ask with its Choices, and a name whose noun is not
// known is None. A slip of the pen is read only where the written word is no
// food's: one letter in words of five letters or more, two in nine or more.
func (l *Larder) Match(name string) Match {
	found := l.names.Find(name)
	m := Match{Food: l.byID[found.ID], How: found.How, Form: found.Form, Left: found.Left}
	for _, id := range found.Choices {
		m.Choices = append(m.Choices, l.byID[id])
	}
	return m
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
