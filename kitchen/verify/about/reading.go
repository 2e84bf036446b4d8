package about

import (
	"slices"

	"benchproof/kitchen/logistic"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/topic"
	"benchproof/kitchen/verify/written"
)

// Reading is a cut read beside a recipe.
type Reading struct {
	Text      speech.Text
	Said      []speech.Said
	Book      *written.Book
	Scale     same.Scale
	Mentions  []written.Mention
	Places    []int     // of each word: the state of the recipe where the talk likely is; nil without states
	Ties      []Tie     // of each of Said
	Elsewhere []float64 // of each of Said: how likely its talk is about something else, from 0 to 1
	traits    *topic.Reader
}

// Tie is what one said number is about.
type Tie struct {
	Item    int    // index into the book's items; −1 if none
	Fact    int    // index into its facts; −1 if none
	Foreign string // a food that the recipe does not have, as said
	Portion string // a food that only steps have, as a stem: "water"
	Aside   bool   // about something else: another time, another recipe, a shop
	Of      bool   // "50 grams of the sugar": likely a part
	Agrees  bool   // with the fact
	before  bool   // the food stands before the amount
	firm    bool   // much speaks for it: "200 grams of flour", "bake it for ten minutes"
}

// Read ties every number to what it seems to be about by what stands beside it; model
// weighs whether the talk is of the dish. Reconcile then looks at all ties together.
func Read(t speech.Text, b *written.Book, scale same.Scale, model *logistic.Model) *Reading {
	r := &Reading{Text: t, Said: speech.Find(t), Book: b, Scale: scale}
	for i := range r.Said {
		r.Said[i].Oven = r.ovenOf(i)
	}
	r.Mentions = b.Mentions(t)
	r.splitSums()
	r.Places = place(b, t, nil)
	r.traits = topic.NewReader(r.Text, r.Book, r.Mentions, r.Said, r.isWritten)
	r.Weigh(model)
	r.Ties = make([]Tie, len(r.Said))
	r.tieFoods()
	r.carryOn()
	r.Places = place(b, t, r.heard())
	for i, s := range r.Said {
		if t := &r.Ties[i]; !t.isTied() && !s.Struck {
			r.tieFact(i)
		}
	}
	return r
}

// IsFirm tells whether much speaks for what number i is about.
func (r *Reading) IsFirm(i int) bool { return r.Ties[i].firm }

func (t Tie) isTied() bool { return t.Item >= 0 || t.Fact >= 0 || t.Foreign != "" || t.Portion != "" }

// tieFoods ties amounts and counts to the foods that are named beside them.
func (r *Reading) tieFoods() {
	options := make([][]option, len(r.Said))
	m := 0
	for i, s := range r.Said {
		t := &r.Ties[i]
		*t = Tie{Item: -1, Fact: -1}
		for m < len(r.Mentions) && r.Mentions[m].To <= s.From-beforeReach {
			m++
		}
		if t.Aside = s.Struck; !s.Struck && (s.Kind == speech.Measure || s.Kind == speech.Count || s.Kind == speech.Share || s.Kind == speech.Length) {
			options[i] = r.optionsOf(i, m)
		}
	}
	r.align(options)
	for i, s := range r.Said {
		t := &r.Ties[i]
		if s.Kind == speech.Length && t.Item >= 0 && r.Book.Items[t.Item].Line.Amount.Unit.Kind() != measure.Length {
			t.Item = -1
		}
		t.Aside = t.Aside || r.isAnother(i) || r.goesOnAside(i)
	}
}

// EqualItem tells whether a said amount is the whole of item n.
func (r *Reading) EqualItem(s speech.Said, n int) bool {
	return r.Scale.Line(s, r.Book.Items[n].Line)
}

// EqualFact compares a said number with what a step states.
func EqualFact(s speech.Said, f written.Fact) bool {
	switch f.Kind {
	case speech.Heat:
		return s.Kind == speech.Heat && same.Heats(s, f.Heats, f.IsOven)
	case speech.Piece:
		return (s.Kind == speech.Piece || s.Kind == speech.Measure) && same.Pieces(s, f.Said)
	case speech.Room:
		return s.Kind == speech.Room && same.Rooms(s, f.Said)
	case speech.Length:
		return s.Kind == speech.Length && same.Lengths(s, f.Said)
	case speech.Time:
		return s.Kind == speech.Time && (same.Times(s, f.Said) || slices.ContainsFunc(f.Or, func(or speech.Said) bool { return same.Times(s, or) }))
	}
	return same.Counts(s, f.Said)
}

// placeOf is the place in the recipe at a word, which may lie behind the end.
func (r *Reading) placeOf(word int) int {
	return r.Places[max(0, min(word, len(r.Places)-1))]
}

// PlaceOf is the place in the recipe where number i is said.
func (r *Reading) PlaceOf(i int) int { return r.placeOf(r.Said[i].To) }

// IsFactTied tells whether a number besides i that agrees is tied to fact n.
func (r *Reading) IsFactTied(n, i int) bool {
	for p, t := range r.Ties {
		if p != i && t.Fact == n && t.Agrees {
			return true
		}
	}
	return false
}

// names tells whether a mention can mean item n.
func names(m written.Mention, n int) bool { return slices.Contains(m.Items, n) }

// isPlainlyAside tells whether words beside a number leave no doubt, whatever the rest of
// the talk is like.
func (r *Reading) isPlainlyAside(s speech.Said) bool {
	from := s.From
	for from > 0 && s.From-from < conditionReach && r.Text.Words[from-1].Stop == speech.None {
		from--
	}
	condition := r.anyPhrase(conditions, from, s.From) && !r.Text.Near(s.From, s.From, conditionReach, "which")
	return condition || r.IsCertain(s) || r.isDenied(s) || r.isKeeping(max(0, s.From-sceneReach), s.From)
}

// conditionReach is how many words before a number a condition leaves no doubt.
const conditionReach = 4

// Weigh tells of each number how likely it is about something else.
func (r *Reading) Weigh(model *logistic.Model) {
	r.Elsewhere = make([]float64, len(r.Said))
	for i := range r.Said {
		r.Elsewhere[i] = topic.Elsewhere(model, r.traits, i)
	}
}

// isWritten tells whether the recipe has this value anywhere.
func (r *Reading) isWritten(s speech.Said) bool {
	for n := range r.Book.Items {
		if r.EqualItem(s, n) {
			return true
		}
	}
	return slices.ContainsFunc(r.Book.Facts, func(f written.Fact) bool { return EqualFact(s, f) })
}

// Known is the share of the words around number i that the cut has, from 0 to 1.
func (r *Reading) Known(i int) float64 { return r.traits.Known(i) }

// Traits gives what the talk around number i is like.
func (r *Reading) Traits(i int) []string { return r.traits.Of(i) }

// How likely a number may be about something else that is of the dish whatever the
// words beside it seem to say, and the other way round.
const (
	surelyOurs      = 0.08
	surelyElsewhere = 0.95
)

// isAnother tells whether number i is about something else: by the words beside it,
// unless the whole of the talk says otherwise.
func (r *Reading) isAnother(i int) bool {
	p := r.Elsewhere[i]
	s := r.Said[i]
	if s.Kind == speech.Heat && s.Oven == "fan" {
		return p > surelyElsewhere // whoever's oven it is
	}
	return p > surelyElsewhere || r.isPutOff(s) || r.isOnTheWay(s) || r.IsCertain(s) || r.isAside(s, r.foodBefore(i)) && (p > surelyOurs || r.isPlainlyAside(s))
}
