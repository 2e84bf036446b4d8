package verify

import (
	"fmt"
	"time"

	"benchproof/kitchen/food"
	"benchproof/kitchen/logistic"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/verify/about"
	"benchproof/kitchen/verify/learnt"
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// Cue is one caption of the cut, without mark-up.
type Cue = speech.Cue

// Kind is what is wrong between the cut and the recipe.
type Kind string

// The kinds of finding.
const (
	Differs    Kind = "differs"     // said otherwise than written
	NotSaid    Kind = "not said"    // written, and said nowhere in the cut
	NotWritten Kind = "not written" // said, and nowhere in the recipe
	Pair       Kind = "pair"        // two oven settings said together that do not agree
)

// Slip is the likely cause of a difference.
type Slip string

// The slips that are named; "" is none of them.
const (
	UnitSlip Slip = "unit"    // the right number with the wrong unit: tablespoons for teaspoons
	Tenfold  Slip = "tenfold" // ten, a hundred or a thousand times too much or too little
)

// Finding is one disagreement between the cut and the recipe.
type Finding struct {
	Kind    Kind
	Slip    Slip
	At      time.Duration // start of the cue; for what is not said, where its food or step comes up
	Said    string        // the words that carry the amount; "" for NotSaid
	Food    string        // of NotWritten: what the amount is of, as said; else ""
	Written string        // the recipe's measure as written; "" for NotWritten
	Line    string        // the ingredient line or step as written; "" for NotWritten
	Number  int           // the line's number in the recipe's text; 0 for NotWritten
	Words   string        // the words around it in the cut; "" if it comes up nowhere
	Suggest string        // a sentence for the description, or what to do
	Key     string        // the same for the same slip in another reading of the cut
	Cue     int           // index of its cue; −1 if it comes up nowhere
}

// Amount is one number of the cut that was tied to the recipe.
type Amount struct {
	Cue     int    // index of the cue it begins in
	From    int    // where it begins in that cue's text, in bytes
	To      int    // where it ends there, or where the cue's text ends
	Said    string // its words
	Line    string // the line or step it is about, as written
	Number  int    // that line's number in the recipe's text
	Finding int    // index into Report.Findings; −1 if it agrees
}

// Report is what Check found.
type Report struct {
	Findings []Finding // in the order of the cut, those that come up nowhere last
	Amounts  []Amount  // in the order of the cut
}

// Checker compares cuts with recipes. The zero Checker works: it knows no foods
// but by the recipe's own names. It is never changed; many may check at once.
type Checker struct {
	Larder *food.Larder   // other names and weights of foods; nil for none
	System measure.System // the show's cups and spoons, where the recipe says none
	Models learnt.Models  // what was learnt; the zero Models are the program's own
}

// Check compares what the cues say with what r writes. Cues must be in the order
// of their starts. It needs no punctuation and takes time in proportion to the
// words and to the recipe's steps.
func (c Checker) Check(r recipe.Recipe, cues []Cue) Report {
	models := c.Models.OrOwn()
	read := c.read(r, cues, models.Topic)
	read.Reconcile()
	j := newJudge(read, likelihoods{models})
	j.run()
	return j.report()
}

// read ties the numbers of the cut to the recipe.
func (c Checker) read(r recipe.Recipe, cues []Cue, topic *logistic.Model) *about.Reading {
	scale := same.Scale{Larder: c.Larder, System: r.System.Or(c.System)}
	return about.Read(speech.Cut(cues), written.Read(r, c.Larder), scale, topic)
}

// Clock writes a time in a cut as findings show it: "00:01:23.450".
func Clock(at time.Duration) string {
	ms := at.Milliseconds()
	return fmt.Sprintf("%02d:%02d:%02d.%03d", ms/3_600_000, ms/60_000%60, ms/1000%60, ms%1000)
}
