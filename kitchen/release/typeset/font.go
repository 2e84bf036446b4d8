package typeset

import (
	"fmt"
	"strings"
	"unicode"

	"golang.org/x/text/unicode/norm"
)

// Face names a font.
type Face string

// Fonts knows for each face which characters it can show.
type Fonts struct {
	files     map[Face][]byte
	shows     map[Face]map[rune]bool
	fallbacks []Face
}

// NewFonts reads the Unicode tables of TrueType files. A character that a face
// lacks is taken from the fallbacks, the first that has it; each must be among
// the files. The error names the face that is no font, or has no such table.
func NewFonts(files map[Face][]byte, fallbacks ...Face) (*Fonts, error) {
	f := &Fonts{files: files, shows: map[Face]map[rune]bool{}, fallbacks: fallbacks}
	for name, file := range files {
		shows, ok := charactersOf(file)
		if !ok {
			return nil, fmt.Errorf("font %q is no TrueType font with a Unicode table", name)
		}
		f.shows[name] = shows
	}
	return f, nil
}

// File is the TrueType file of a face.
func (f *Fonts) File(name Face) []byte { return f.files[name] }

// unshown stands for a character that no font has.
const unshown = '?'

// piece is text that one face can show.
type piece struct {
	text string
	face Face
}

// showable gives text in pieces that each have a face which can show them. A
// character that none has is replaced by its base letter, or else by "?".
func (f *Fonts) showable(text string, wanted Face) []piece {
	var pieces []piece
	add := func(r rune, face Face) {
		if n := len(pieces); n > 0 && pieces[n-1].face == face {
			pieces[n-1].text += string(r)
			return
		}
		pieces = append(pieces, piece{text: string(r), face: face})
	}
	for _, r := range norm.NFC.String(text) {
		face, ok := f.faceFor(r, wanted)
		switch {
		case unicode.IsControl(r):
		case ok:
			add(r, face)
		case !isInvisible(r):
			add(f.base(r, wanted))
		}
	}
	return pieces
}

func (f *Fonts) faceFor(r rune, wanted Face) (Face, bool) {
	if f.shows[wanted][r] {
		return wanted, true
	}
	for _, face := range f.fallbacks {
		if f.shows[face][r] {
			return face, true
		}
	}
	return wanted, false
}

// base is the letter below r's marks, or "?" if r has none that can be shown.
func (f *Fonts) base(r rune, wanted Face) (rune, Face) {
	letters := []rune(norm.NFKD.String(string(r)))
	if len(letters) > 0 {
		if face, ok := f.faceFor(letters[0], wanted); ok {
			return letters[0], face
		}
	}
	return unshown, wanted
}

// Missing lists the characters of the text that neither the face nor its
// fallbacks show, each once, in order; "" if all are there. Blanks and
// invisible signs do not count.
func (f *Fonts) Missing(text string, wanted Face) string {
	missing := ""
	for _, r := range norm.NFC.String(text) {
		_, shown := f.faceFor(r, wanted)
		if !shown && !isInvisible(r) && !unicode.IsSpace(r) && !unicode.IsControl(r) && !strings.ContainsRune(missing, r) {
			missing += string(r)
		}
	}
	return missing
}

// isInvisible tells whether leaving r out loses nothing to read: marks above a
// letter already placed, joiners, variation selectors.
func isInvisible(r rune) bool { return unicode.In(r, unicode.Mn, unicode.Me, unicode.Cf) }
