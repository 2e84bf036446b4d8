package views

import (
	"github.com/a-h/templ"
)

// RecipeSheet is the recipe of an episode, at the episode's scale or at one
// that is being tried.
type RecipeSheet struct {
	Page
	EpisodeFrame
	Has    bool       // false: no recipe yet, and only Attach and NewPath are drawn
	Recipe RecipeBody // the version in use
	// Attach chooses a recipe or version to use: its one select lists them.
	Attach  Form
	NewPath string // where a recipe is pasted for this episode
}

// VersionPage is a recipe outside an episode: its current version or an older
// one.
type VersionPage struct {
	Page
	Recipe RecipeBody
	Note   string // what changed in this version; "" if nothing was said
	Older  bool   // true if a newer version exists: said at the top
	// NewerPath leads to the current version when Older is set.
	NewerPath string
	// DeleteAction deletes the recipe; it can be restored. "" if it is in use.
	DeleteAction string
}

// RecipeBody is a recipe as drawn on its sheet, its page and the viewers' page.
type RecipeBody struct {
	Name       string
	Version    string // "version 4"
	Makes      string // "makes 16 knots"
	Marks      []Mark // "proved at 16 and 32"
	Intro      []string
	Scaler     Scaler   // zero draws none
	Measures   []Choice // the measure switch: as written, metric, US
	Assumed    string   // "cup = 236.588 mL (US customary)"; "" if nothing was assumed
	Components []ComponentBlock
	ScaleNotes []string // what does not scale with the amounts
	Notes      []string
	Credits    []string
	Unread     []UnreadRow // lines of the text that fit nowhere
	Nutrition  Nutrition   // zero draws none
	Versions   []VersionRow
	Links      []Link // edit, card, PDF, compare …
}

// Scaler changes how much is made. It sends "factor" or "pieces" (and what
// Keep lists) as a query to try, and posts the same to KeepAction to keep.
type Scaler struct {
	TryPath     string // the page itself; "" draws no scaler
	KeepAction  string // keeps the scale tried; "" outside an episode
	Revision    int    // of the episode
	Factor      string // "2", "1½"
	Was         string // the factor drawn, sent along: tells which of the two fields was changed
	FactorError string
	Pieces      string // "32"; "" if the recipe does not say what it makes
	PiecesLabel string // "knots"; "" draws no field for pieces
	PiecesError string
	Measure     string // sent along, so that the switch stays; "" for as written
	Trying      string // "at × 2, not kept"; "" if what is drawn is kept
	More        Form   // by piece weight, tin or what is in hand; folded. Zero draws none.
}

// ComponentBlock is one component: its lines, then its steps. Ingredients of
// all components are drawn first, then the method.
type ComponentBlock struct {
	Name  string // "" for the only one
	Small string // beside the name: "hydration 61 %, water counted"
	Lines []LineRow
	Steps []StepRow
}

// LineRow is one ingredient against the rule.
type LineRow struct {
	Measure  string // "320 g"; "" for none
	Food     string // "strong white flour"
	After    string // ", sifted": read on after the food, with its own comma; "" if none
	Small    string // the other measure and what else belongs: "2⅓ cups · 73 %"
	Question string // what to look at: "a knob is not a measure we know. How much?"
	Wrong    string // what is wrong
	NotRead  bool   // the line is drawn as written, marked not read
}

// StepRow is one instruction against the rule.
type StepRow struct {
	Minutes  string // "9–11 min"; "" if not said
	Station  string // "mixer"; "oven, unattended"; "waits"
	Words    []Run  // the instruction, its temperatures marked
	Cue      string // "until it springs back slowly", if it is not in Words
	Small    string
	Question string
	Wrong    string
}

// Run is a stretch of words of one kind.
type Run struct {
	Text string
	Heat bool // a temperature: drawn bold
	New  bool // stands only here, in a comparison
}

// UnreadRow is a line of the text that fits nowhere.
type UnreadRow struct {
	Number string // "line 14"
	Text   string
	Reason string
}

// VersionRow is one version of a recipe.
type VersionRow struct {
	Number      string // "v4"
	Date        string // "2 Mar"
	Note        string // what changed
	Marks       []Mark
	Path        string
	ComparePath string // to the one before; "" for the first
	UseAction   string // makes it the episode's version; "" if it is, or outside an episode
	Current     bool   // drawn here
}

// Words makes plain words into runs.
func Words(text string) []Run { return []Run{{Text: text}} }

// hasSteps tells whether any component has a method.
func (b RecipeBody) hasSteps() bool {
	for _, c := range b.Components {
		if len(c.Steps) > 0 {
			return true
		}
	}
	return false
}

// lineGutter is an ingredient's measure, amber where it asks something.
func lineGutter(l LineRow) Gutter {
	switch {
	case l.Wrong != "":
		return Gutter{Text: l.Measure, Mark: MarkWrong}
	case l.NotRead:
		return Gutter{Text: orElse(l.Measure, "not read"), Mark: MarkLook}
	case l.Question != "":
		return Gutter{Text: l.Measure, Mark: MarkLook}
	}
	return Gutter{Text: l.Measure}
}

// scalerError ties a field of the scaler to what is wrong with it.
func scalerError(name, wrong string) templ.Attributes {
	if wrong == "" {
		return nil
	}
	return templ.Attributes{"aria-invalid": "true", "aria-describedby": "scale-" + name + "-error"}
}

// orElse is s, or other if s is empty.
func orElse(s, other string) string {
	if s == "" {
		return other
	}
	return s
}
