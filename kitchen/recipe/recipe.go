package recipe

import "benchproof/kitchen/measure"

// Recipe is one reading of a recipe's text. Every non-blank line of the text
// stands in exactly one place in it.
type Recipe struct {
	Title      string         // "" if the text has none
	Yield      Yield          // zero if not said
	System     measure.System // what the text itself states; "" if nothing
	Intro      []string       // lines before the first ingredient that are no title, yield or heading
	Components []Component
	Equipment  []string // lines of an equipment section
	Notes      []string // lines of a notes section
	Credits    []string // "Adapted from …", "Inspired by …"
	Unread     []Unread // lines that fit nowhere
	Placed     []Place  // where each non-blank line of the text went, in its order
}

// Place says where one line of the text went.
type Place struct {
	Number    int    // the line's number in the text, from 1
	Text      string // as written, outer blanks trimmed
	In        Part   // what it was taken for
	Component int    // index into Components, for component names, lines and steps; else −1
	Of        int    // the number of the line that it continues; Number itself if it starts
}

// Part is what a line of the text can be.
type Part string

// The parts of a recipe's text.
const (
	InTitle     Part = "title"
	InYield     Part = "yield"
	InIntro     Part = "intro"
	InHeading   Part = "heading"   // "Ingredients", "Method", a rule: kept in Placed only
	InComponent Part = "component" // the heading that names a component
	InLine      Part = "line"
	InStep      Part = "step"
	InNotes     Part = "notes"
	InCredits   Part = "credits"
	InEquipment Part = "equipment"
	InUnread    Part = "unread"
)

// Unread is a line that found no place.
type Unread struct {
	Number int    // the line's number in the text, from 1
	Text   string // as written
	Reason string // why, in the person's words
}

// Yield is what the whole recipe makes: "makes 16", "serves 4–6", "1 loaf of 900 g".
type Yield struct {
	Text   string         // as written
	Amount measure.Amount // pieces, servings, grams; zero if not said
	Of     string         // "knots", "servings"; may be ""
}

// Component is a part made on its own. The first may have no name.
type Component struct {
	Name   string // "Pastry", however the heading put it
	Number int    // the heading's line number in the text; 0 without a heading
	Lines  []Line
	Steps  []Step
}

// Line is one ingredient line.
type Line struct {
	Number      int    // the line's number in the text, from 1
	Text        string // as written
	Read        bool   // false: nothing below is to be trusted but Text and Reason
	Reason      string // why it is not read, or what to look at; "" if all is well
	Amount      measure.Amount
	HasAmount   bool             // false for "salt", "salt, to taste"
	About       bool             // "about 250 ml", "a generous cup": the amount is only nearly meant
	Plus        []measure.Amount // "½ cup plus 1 tbsp": the 1 tbsp
	Equals      []measure.Amount // other statements of the same amount: "200 g / 7 oz": the 7 oz
	Packs       Packs            // "2 × 400 g tins"; zero if not packed
	Size        string           // "large", "medium"; "" if not said
	Food        string           // the food's name as written, without preparation: "bread flour"
	FoodID      string           // the larder's food; "" if it knows none
	Choices     []string         // ids of foods the name could equally mean; the creator is asked
	Form        string           // the larder's form for weights: "sifted", "chopped"
	Preparation string           // "finely chopped", "at room temperature"
	Note        string           // anything in brackets or after the preparation
	Optional    bool             // "optional"
	ToTaste     bool             // "to taste", "as needed", "for dusting"
	Divided     bool             // "divided": used in more than one step
	System      measure.System   // the line's own: "2 Australian tablespoons"; "" if not said
	Corrected   bool             // a person corrected this reading
}

// Packs is a count of packs of one size: 2 × 400 g tins. Amount of the line
// then is the whole, 800 g.
type Packs struct {
	Count measure.Range
	Size  measure.Amount
	Unit  measure.Unit // tin, packet, jar …
}

// Step is one instruction of the method.
type Step struct {
	Number       int    // the line's number in the text, from 1
	Text         string // as written, without its own number
	Minutes      measure.Range
	HasMinutes   bool
	HandsOn      bool
	Station      string // one of Stations
	Temperatures []measure.Heat
	Cue          string // "until it springs back slowly", as written; "" if none
	Reason       string // what to look at: an oven pair that disagrees; "" if all is well
	Uses         []Use  // what the words name, in the order of the ingredients
	Finishes     string // the name of the component that is done after this step; "" if none
}

// Use is one ingredient, or one whole component made before, that a step names.
type Use struct {
	Component int            // index into Components
	Line      int            // index into its Lines; −1 for the component as made
	Amount    measure.Amount // the part the step states: "100 g of the sugar"
	HasAmount bool           // false: all of it, or the step does not say
	Words     string         // the words that name it: "the remaining butter"
}

// Stations are what a step can occupy.
var Stations = []string{"bench", "mixer", "hob", "oven", "fridge", "freezer", "fryer", "grill", "waits"}
