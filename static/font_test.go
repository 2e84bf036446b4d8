package static_test

import (
	"encoding/binary"
	"testing"

	"benchproof/static"
)

// TestFontsHaveTheLetters reads each font's own table of letters (OpenType,
// "cmap", format 4): what a card prints must be there.
func TestFontsHaveTheLetters(t *testing.T) {
	const needed = "aZ09 ½¼¾⅓⅔⅛⅜⅝⅞→×–—−°éèçñōğš’“”…·⁄€"
	tests := []struct{ font, letters string }{
		{"source-serif-regular", needed + "✓"},
		{"source-serif-italic", needed + "✓"},
		{"source-serif-semibold", needed + "✓"},
		{"inter-regular", needed + "✓✗≠"},
		{"inter-semibold", needed + "✓✗≠"},
	}
	for _, tt := range tests {
		t.Run(tt.font, func(t *testing.T) {
			has := letters(t, static.Font(tt.font))
			for _, r := range tt.letters {
				if !has(r) {
					t.Errorf("has no %c (U+%04X)", r, r)
				}
			}
			if has('漢') {
				t.Error("claims a letter that the subset leaves out: the table is misread")
			}
		})
	}
}

func TestFontPanicsForAnUnknownName(t *testing.T) {
	defer func() {
		if recover() == nil {
			t.Error("Font of an unknown name did not panic")
		}
	}()
	static.Font("no-such")
}

// letters gives a test for the letters of a TrueType font.
func letters(t *testing.T, font []byte) func(rune) bool {
	t.Helper()
	u16 := func(at int) int { return int(binary.BigEndian.Uint16(font[at:])) }
	u32 := func(at int) int { return int(binary.BigEndian.Uint32(font[at:])) }
	cmap := 0
	for i := range u16(4) {
		if record := 12 + 16*i; string(font[record:record+4]) == "cmap" {
			cmap = u32(record + 8)
		}
	}
	for i := range u16(cmap + 2) {
		sub := cmap + u32(cmap+4+8*i+4)
		if u16(sub) == 4 {
			return segments(u16, sub)
		}
	}
	t.Fatal("no table of letters in format 4")
	return nil
}

// segments reads a table in format 4: runs of letters, each with an end, a
// start and a shift or a list of glyphs; glyph 0 is none.
func segments(u16 func(int) int, sub int) func(rune) bool {
	count := u16(sub+6) / 2
	ends := sub + 14
	starts := ends + 2*count + 2
	shifts := starts + 2*count
	lists := shifts + 2*count
	return func(r rune) bool {
		for i := range count {
			if int(r) > u16(ends+2*i) {
				continue
			}
			if int(r) < u16(starts+2*i) {
				return false
			}
			offset := u16(lists + 2*i)
			if offset == 0 {
				return (int(r)+u16(shifts+2*i))&0xffff != 0
			}
			return u16(lists+2*i+offset+2*(int(r)-u16(starts+2*i))) != 0
		}
		return false
	}
}
