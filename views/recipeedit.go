package views

import (
	"strings"

	"github.com/a-h/templ"
)

// RecipeEditPage is a recipe's text with what was understood of it beside.
// Its form posts: revision, version and episode (if they are set), text, note.
type RecipeEditPage struct {
	Page
	Heading       string // "Rye knots, version 4"; "A new recipe"
	Path          string // back to the recipe or the episode's sheet
	Revision      int
	Version       string // the number of the version it was written from, sent along; "" for a new recipe
	Episode       string // the episode it is written for; "" if none
	Text          string // exactly as typed
	TextError     string
	Note          string // what changed, for a new version
	NoteError     string
	Problem       string // what is wrong with the whole
	ReadAction    string // reads again, keeps nothing
	SaveAction    string // saves into this version; "" if it was tried and so stays
	VersionAction string // saves as the next version; "" for a new recipe
	Kept          string // why it cannot be saved into: "Version 4 was tried and stays as it is."
	Understood    Understanding
}

// Understanding is what was read of a text.
type Understanding struct {
	Title      string // "" if the text has none
	Yield      string // "makes 16 knots"; "" if not said
	System     string // "cups and spoons read as US customary"
	Summary    string // "14 of 15 lines read"
	Marks      []Mark
	Components []ReadComponent
	Notes      []string
	Credits    []string
	Unread     []UnreadRow
}

// ReadComponent is one component as read.
type ReadComponent struct {
	Name  string
	Lines []ReadLine
	Steps []ReadStep
}

// ReadLine is one ingredient line as read.
type ReadLine struct {
	LineRow
	Number     string // "line 3"
	Text       string // as written
	Corrected  bool   // a person corrected this reading
	Correction *Correction
}

// ReadStep is one step as read.
type ReadStep struct {
	StepRow
	HandsOn bool
}

// Correction puts one line's reading right. Its fields are sent with the
// recipe's form, each named after ID: "line-3-line" (Line), "line-3-amount",
// "line-3-food", "line-3-preparation", "line-3-note", and "line-3-learn", "yes"
// if the food's name is to be remembered. The button sends "correct" with the
// ID, to Action or to Forget.
type Correction struct {
	ID          string // unique on the page: "line-3"
	Action      string
	Line        string // the line as written: says which line it is
	Amount      string // "200 g"
	Food        string
	Preparation string
	Note        string
	Error       string
	Open        bool   // drawn open: it was refused
	Forget      string // posts there to go back to what was read by itself; "" if not corrected
}

// ComparePage is what changed between two versions. Its form sends "from" and
// "to" as a query.
type ComparePage struct {
	Page
	Name     string
	Path     string // back to the recipe
	Action   string // this page without its query
	Versions []Option
	From, To string // of Versions
	Note     string // what the creator said of it
	Summary  string // "2 changed, 1 added, 1 taken out"
	Groups   []ChangeGroup
}

// ChangeGroup is the lines or steps of one component.
type ChangeGroup struct {
	Title string // "Dough", "Method: dough"
	Rows  []ChangeRow
}

// Change is what became of a line.
type Change string

// The changes.
const (
	Same     Change = "same"
	Added    Change = "added"
	TakenOut Change = "taken out"
	Changed  Change = "changed"
)

// ChangeRow is one line or step, as it was and as it is.
type ChangeRow struct {
	Change Change
	Before ChangeText // empty if added
	After  ChangeText // empty if taken out
}

// ChangeText is one line's measure and words; what differs is marked New.
type ChangeText struct {
	Measure    string
	NewMeasure bool
	Words      []Run
}

// sign is drawn before the change's word.
func (c Change) sign() string {
	switch c {
	case Added:
		return "+"
	case TakenOut:
		return "−"
	case Changed:
		return "≠"
	}
	return ""
}

// class is the change's name in the stylesheet.
func (c Change) class() string { return strings.ReplaceAll(string(c), " ", "-") }

// saves is where pressing Enter saves to.
func (p RecipeEditPage) saves() string { return orElse(p.SaveAction, p.VersionAction) }

// problems is what is wrong with the form, as the list at its top.
func (p RecipeEditPage) problems() Form {
	return Form{ID: "recipe", Problem: p.Problem, Fields: []Field{
		{Name: "text", Label: "As written", Error: p.TextError},
		{Name: "note", Label: "What changed", Error: p.NoteError},
	}}
}

// textAttributes ties the text to its hint and what is wrong with it.
func (p RecipeEditPage) textAttributes() templ.Attributes {
	return described(Field{Hint: "shown", Error: p.TextError}, "recipe-text")
}

// fields are a correction's fields in order.
func (c Correction) fields() []Field {
	return []Field{
		{Name: c.ID + "-amount", Label: "Amount", Value: c.Amount},
		{Name: c.ID + "-food", Label: "Food", Value: c.Food},
		{Name: c.ID + "-preparation", Label: "Preparation", Value: c.Preparation},
		{Name: c.ID + "-note", Label: "Note", Value: c.Note},
	}
}

// described ties the fields to what is wrong with the correction.
func (c Correction) described() templ.Attributes {
	if c.Error == "" {
		return nil
	}
	return templ.Attributes{"aria-describedby": c.ID + "-error"}
}

// methodOf heads the steps of a component.
func methodOf(component string) string {
	if component == "" {
		return "Method"
	}
	return component + ", method"
}
