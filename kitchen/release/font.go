package release

import (
	"benchproof/kitchen/fault"
	"benchproof/kitchen/release/typeset"
)

// Fonts are the TrueType files a card is set in, as bytes. Words is needed; the
// others default to it.
type Fonts struct {
	Words       []byte // a reading serif
	WordsStrong []byte // for the title and headings
	WordsItalic []byte // for notes and credits
	Figures     []byte // for the gutter
	FiguresBold []byte
}

// The faces of the card; they double as the font names in the file.
const (
	words       typeset.Face = "words"
	wordsStrong typeset.Face = "words-strong"
	wordsItalic typeset.Face = "words-italic"
	figures     typeset.Face = "figures"
	figuresBold typeset.Face = "figures-bold"
)

var faces = []typeset.Face{words, wordsStrong, wordsItalic, figures, figuresBold}

// set reads the fonts; figures and words stand in for each other.
func (f Fonts) set() (*typeset.Fonts, error) {
	or := func(first, second []byte) []byte {
		if len(first) > 0 {
			return first
		}
		return second
	}
	plain := or(f.Figures, f.Words)
	set, err := typeset.NewFonts(map[typeset.Face][]byte{
		words: f.Words, wordsStrong: or(f.WordsStrong, f.Words), wordsItalic: or(f.WordsItalic, f.Words),
		figures: plain, figuresBold: or(f.FiguresBold, plain),
	}, figures, words)
	if err != nil {
		return nil, &fault.Error{Kind: fault.Internal, Say: "The card's fonts cannot be read.", Err: err}
	}
	return set, nil
}

// Missing lists the characters of the text that none of the fonts shows, each
// once, in order; "" if all are there. Blanks and invisible signs do not count.
// The card writes them without their marks, or as "?".
func (f Fonts) Missing(text string) string {
	set, err := f.set()
	if err != nil {
		return ""
	}
	return set.Missing(text, words)
}
