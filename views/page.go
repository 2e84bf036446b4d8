package views

// Section is the link of the head that is current.
type Section string

// The head's links, in order, and "" for pages that none of them leads to.
const (
	SectionNone     Section = ""
	SectionSeason   Section = "season"
	SectionRecipes  Section = "recipes"
	SectionLarder   Section = "larder"
	SectionShopping Section = "shopping"
	SectionPitches  Section = "pitches"
	SectionShow     Section = "show"
	SectionDeleted  Section = "deleted"
)

// Page is the frame around every page of the signed-in person.
type Page struct {
	Title  string // the page's own title; the window's is "Title · Show"
	Show   string // the channel's name; "" before it is set up
	Person string // who is signed in; "" draws the head without its links
	// SignedIn tells whether signing out means anything: not in the demo.
	SignedIn bool
	Section  Section // the head's current link
	Flash    Flash   // what just happened; zero if nothing
}

// Flash says once what just happened.
type Flash struct {
	Text       string // "Episode 31 deleted."; "" draws nothing
	UndoAction string // where Undo posts to; "" if it cannot be undone
	Wrong      bool   // true if it did not work
}

// Link is words that lead somewhere.
type Link struct {
	Text string
	Path string
}

// Choice is one of a row of links of which one is current: "metric", "× 2".
type Choice struct {
	Text    string
	Path    string
	Current bool
}

// MarkKind gives a mark its sign and colour.
type MarkKind string

// The marks. Each draws its sign before the words.
const (
	MarkPlain  MarkKind = ""       // no sign, soft ink
	MarkProved MarkKind = "proved" // ✓, green
	MarkLook   MarkKind = "look"   // ?, amber: look at this
	MarkWrong  MarkKind = "wrong"  // ✗, red
)

// Mark is a few words with a sign and colour.
type Mark struct {
	Kind MarkKind
	Text string // without its sign: "proved at 16 and 32"
}

// Figure is one measured or counted thing with its name: "819 g", "dough".
type Figure struct {
	Value string // "819 g"; "–" if not known
	Label string // "dough before baking"
}

// heading is the window's title.
func (p Page) heading() string {
	switch {
	case p.Title == "":
		return p.brand()
	case p.Show == "":
		return p.Title + " · Benchproof"
	}
	return p.Title + " · " + p.Show
}

// brand is what stands first in the head.
func (p Page) brand() string {
	if p.Show == "" {
		return "Benchproof"
	}
	return p.Show
}

// headLink is one link of the head.
type headLink struct {
	section Section
	text    string
	path    string
}

// headLinks are the head's links in order.
func headLinks() []headLink {
	return []headLink{
		{SectionSeason, "Season", "/"},
		{SectionRecipes, "Recipes", "/recipes"},
		{SectionLarder, "Larder", "/larder"},
		{SectionShopping, "Shopping", "/shopping"},
		{SectionPitches, "Pitches", "/pitches"},
	}
}
