package release

import (
	"encoding/binary"
	"strings"
	"unicode"

	"golang.org/x/text/unicode/norm"

	"benchproof/kitchen/fault"
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

// face names one of the fonts; it doubles as the family name in the PDF.
type face string

const (
	words       face = "words"
	wordsStrong face = "words-strong"
	wordsItalic face = "words-italic"
	figures     face = "figures"
	figuresBold face = "figures-bold"
)

// fontSet knows for each face which characters it can show.
type fontSet struct {
	files map[face][]byte
	shows map[face]map[rune]bool
}

func newFontSet(f Fonts) (*fontSet, error) {
	if len(f.Words) == 0 {
		return nil, &fault.Error{Kind: fault.Internal, Say: "the card has no font for its words"}
	}
	or := func(first, second []byte) []byte {
		if len(first) > 0 {
			return first
		}
		return second
	}
	plain := or(f.Figures, f.Words)
	set := &fontSet{files: map[face][]byte{
		words: f.Words, wordsStrong: or(f.WordsStrong, f.Words), wordsItalic: or(f.WordsItalic, f.Words),
		figures: plain, figuresBold: or(f.FiguresBold, plain),
	}, shows: map[face]map[rune]bool{}}
	for name, file := range set.files {
		shows, ok := charactersOf(file)
		if !ok {
			return nil, &fault.Error{Kind: fault.Internal, Say: "the card's font “" + string(name) + "” is no TrueType font with a Unicode table"}
		}
		set.shows[name] = shows
	}
	return set, nil
}

// fallbacks are the faces to take a character from when its own lacks it.
var fallbacks = []face{figures, words}

// unshown stands for a character that no font has.
const unshown = '?'

// showable gives text in pieces that each have a face which can show them. A
// character that none has is replaced by its base letter, or else by "?".
func (s *fontSet) showable(text string, wanted face) []run {
	var runs []run
	add := func(r rune, f face) {
		if n := len(runs); n > 0 && runs[n-1].face == f {
			runs[n-1].text += string(r)
			return
		}
		runs = append(runs, run{text: string(r), face: f})
	}
	for _, r := range norm.NFC.String(text) {
		f, ok := s.faceFor(r, wanted)
		switch {
		case unicode.IsControl(r):
		case ok:
			add(r, f)
		case !isInvisible(r):
			add(s.base(r, wanted))
		}
	}
	return runs
}

func (s *fontSet) faceFor(r rune, wanted face) (face, bool) {
	if s.shows[wanted][r] {
		return wanted, true
	}
	for _, f := range fallbacks {
		if s.shows[f][r] {
			return f, true
		}
	}
	return wanted, false
}

// base is the letter below r's marks, or "?" if r has none that can be shown.
func (s *fontSet) base(r rune, wanted face) (rune, face) {
	for _, b := range norm.NFKD.String(string(r)) {
		if f, ok := s.faceFor(b, wanted); ok {
			return b, f
		}
		break
	}
	return unshown, wanted
}

// isInvisible tells whether leaving r out loses nothing to read: marks above a
// letter already placed, joiners, variation selectors.
func isInvisible(r rune) bool { return unicode.In(r, unicode.Mn, unicode.Me, unicode.Cf) }

// charactersOf reads a font file's Unicode table: which characters of the Basic
// Multilingual Plane it shows. The PDF writer takes no others. ok is false for a
// file without such a table. Source: OpenType specification, "cmap", formats 4
// and 12.
func charactersOf(file []byte) (shows map[rune]bool, ok bool) {
	cmap := table(file, "cmap")
	shows = map[rune]bool{}
	for i := range u16(cmap, 2) {
		platform, encoding := u16(cmap, 4+8*i), u16(cmap, 6+8*i)
		if platform != 0 && (platform != 3 || encoding != 1 && encoding != 10) {
			continue
		}
		at := u32(cmap, 8+8*i)
		if at >= len(cmap) {
			continue
		}
		switch sub := cmap[at:]; u16(sub, 0) {
		case 4:
			readFormat4(sub, shows)
			ok = true
		case 12:
			readFormat12(sub, shows)
			ok = true
		}
	}
	return shows, ok && len(shows) > 0
}

func readFormat4(sub []byte, shows map[rune]bool) {
	segments := u16(sub, 6) / 2
	ends, starts := 14, 16+2*segments
	deltas, offsets := starts+2*segments, starts+4*segments
	for i := range segments {
		start, end := u16(sub, starts+2*i), u16(sub, ends+2*i)
		delta, offset := u16(sub, deltas+2*i), u16(sub, offsets+2*i)
		for c := start; c <= end && c != 0xFFFF; c++ {
			glyph := c
			if offset != 0 {
				glyph = u16(sub, offsets+2*i+offset+2*(c-start))
			}
			if glyph != 0 || offset == 0 {
				glyph = (glyph + delta) & 0xFFFF
			}
			if glyph != 0 {
				shows[rune(c)] = true
			}
		}
	}
}

func readFormat12(sub []byte, shows map[rune]bool) {
	for i := range min(u32(sub, 12), len(sub)/12) {
		start, end, glyph := u32(sub, 16+12*i), u32(sub, 20+12*i), u32(sub, 24+12*i)
		for c := start; c <= min(end, 0xFFFE); c++ {
			if glyph+c-start != 0 {
				shows[rune(c)] = true
			}
		}
	}
}

// table finds a table of an OpenType file by its tag; nil if it has none.
func table(file []byte, tag string) []byte {
	for i := range u16(file, 4) {
		at := 12 + 16*i
		if at+16 > len(file) {
			return nil
		}
		if string(file[at:at+4]) != tag {
			continue
		}
		start := u32(file, at+8)
		end := start + u32(file, at+12)
		if end > len(file) || start > end {
			return nil
		}
		return file[start:end]
	}
	return nil
}

// u16 and u32 read big-endian numbers; 0 behind the end.
func u16(b []byte, at int) int {
	if at < 0 || at+2 > len(b) {
		return 0
	}
	return int(binary.BigEndian.Uint16(b[at:]))
}

func u32(b []byte, at int) int {
	if at < 0 || at+4 > len(b) {
		return 0
	}
	return int(binary.BigEndian.Uint32(b[at:]))
}

// Missing lists the characters of the text that none of the fonts shows, each
// once, in order; "" if all are there. Blanks and invisible signs do not count.
func (f Fonts) Missing(text string) string {
	set, err := newFontSet(f)
	if err != nil {
		return ""
	}
	missing := ""
	for _, r := range norm.NFC.String(text) {
		_, shown := set.faceFor(r, words)
		if !shown && !isInvisible(r) && !unicode.IsSpace(r) && !strings.ContainsRune(missing, r) {
			missing += string(r)
		}
	}
	return missing
}
