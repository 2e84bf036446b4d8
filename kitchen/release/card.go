package release

import "time"

// Card is the printed recipe card, worded for hands: nothing in it is computed
// any more. Empty parts are left out of the print.
type Card struct {
	Show       string // the show's name, at the foot
	Title      string
	Makes      string // "makes 16 knots"
	Components []CardComponent
	Notes      []string
	Allergens  string // "Contains wheat, milk."
	Cautions   []string
	Credits    []string
	Address    string    // where the recipe page is; "" if it is not shared
	Language   string    // BCP 47, "en"; "" for not said
	MadeAt     time.Time // written into the file as its date; the same card gives the same bytes
}

// CardComponent is one part of the recipe. The card shows the ingredients of
// all components first, then the method of all.
type CardComponent struct {
	Name  string // "" for a recipe of one part
	Lines []CardLine
	Steps []CardStep
}

// CardLine is one ingredient: the measure stands left of the rule.
type CardLine struct {
	Measure string // "320 g"; "" for none
	Words   string // "bread flour, sifted"
	Small   string // the other measure and notes: "2⅓ cups"; "" for none
}

// CardStep is one instruction, without its number: steps are numbered through.
type CardStep struct {
	Minutes string // "9–11 min"; "" if not said
	Station string // "mixer", below the minutes; "" if not said
	Words   string
}

// Paper is a size of card.
type Paper string

// The papers a card is made for.
const (
	A4      Paper = "a4"
	Letter  Paper = "letter"
	A5      Paper = "a5"
	SixFour Paper = "4x6" // 4 × 6 in, an index card
)

// Papers lists them, the largest first.
var Papers = []Paper{A4, Letter, A5, SixFour}

// Name is the paper as people call it; the code itself for one not listed.
func (p Paper) Name() string {
	if f, ok := formats[p]; ok {
		return f.name
	}
	return string(p)
}

// format is how a card is laid out on one paper. Lengths are in points, 1/72 in.
type format struct {
	name          string
	width, height float64
	margin        float64 // outer, on all sides
	gutter        float64 // from the left margin to the rule
	gap           float64 // between the rule and what stands beside it
	size          float64 // of the words
	title         float64
	maxMeasure    float64 // longest line of words
	twoSided      bool    // a small card, printed front and back
}

// A4 and A5 are ISO 216 sizes (210 mm × 297 mm, 148 mm × 210 mm), Letter is
// 8½ in × 11 in (ANSI/ASME Y14.1).
var formats = map[Paper]format{
	A4:      {name: "A4", width: 595.276, height: 841.890, margin: 48, gutter: 92, gap: 12, size: 10.5, title: 25, maxMeasure: 380},
	Letter:  {name: "Letter", width: 612, height: 792, margin: 48, gutter: 92, gap: 12, size: 10.5, title: 25, maxMeasure: 390},
	A5:      {name: "A5", width: 419.528, height: 595.276, margin: 32, gutter: 70, gap: 9, size: 9, title: 19, maxMeasure: 290, twoSided: true},
	SixFour: {name: "4 × 6 in", width: 288, height: 432, margin: 20, gutter: 52, gap: 7, size: 7.5, title: 14, maxMeasure: 220, twoSided: true},
}
