package typeset_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"benchproof/kitchen/release/typeset"
)

const (
	serif typeset.Face = "serif"
	sans  typeset.Face = "sans"
)

func file(t testing.TB, name string) []byte {
	t.Helper()
	body, err := os.ReadFile(filepath.Join("..", "..", "..", "static", "fonts", name+".ttf"))
	if err != nil {
		t.Fatal(err)
	}
	return body
}

// shipped are the two families that the program ships.
func shipped(t testing.TB) *typeset.Fonts {
	t.Helper()
	fonts, err := typeset.NewFonts(map[typeset.Face][]byte{serif: file(t, "source-serif-regular"), sans: file(t, "inter-regular")}, sans, serif)
	if err != nil {
		t.Fatal(err)
	}
	return fonts
}

// TestShippedFontsHaveTheSigns: the subsets are made of Latin-1, Latin
// Extended-A, general punctuation, number forms, arrows and a few signs; Source
// Serif 4 lacks ⅕ ⅙ ⅚, which Inter has (static/fonts/README.md).
func TestShippedFontsHaveTheSigns(t *testing.T) {
	tests := []struct {
		name, text, missing string
	}{
		{"kitchen fractions", "½ ⅓ ⅔ ¼ ¾ ⅛ ⅜ ⅝ ⅞ 1⁄5", ""},
		{"fractions of the other family", "⅕ ⅙ ⅚", ""},
		{"signs", "° × – — − … · “ ” ‘ ’ € £ ¥ ✓ ✗ → ←", ""},
		{"Latin letters", "crème brûlée, Żurek, sārī, Çöp şiş, Ærøskøbing, straße", ""},
		{"decomposed letters", "cre\u0300me", ""},
		{"invisible signs and blanks", "a\u200db\ufe0f\u00a0\u2009\n\t", ""},
		{"Greek, Japanese, emoji", "Σ お 🍜 お", "Σお🍜"},
	}
	fonts := shipped(t)
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			if got := fonts.Missing(test.text, serif); got != test.missing {
				t.Errorf("Missing(%q) = %q, want %q", test.text, got, test.missing)
			}
		})
	}
}

func TestNewFontsRefusesWhatIsNoFont(t *testing.T) {
	whole := file(t, "inter-regular")
	for name, body := range map[string][]byte{
		"nothing": nil, "text": []byte("this is no font at all, only words"), "its head alone": whole[:200],
		"zeros": make([]byte, 4096), "ones": []byte(strings.Repeat("\xff", 4096)),
	} {
		t.Run(name, func(t *testing.T) {
			if _, err := typeset.NewFonts(map[typeset.Face][]byte{serif: body}); err == nil || !strings.Contains(err.Error(), "serif") {
				t.Errorf("NewFonts = %v, want an error that names the face", err)
			}
		})
	}
}

func TestFontsKeepTheirFiles(t *testing.T) {
	if got := shipped(t).File(serif); len(got) == 0 || string(got) != string(file(t, "source-serif-regular")) {
		t.Errorf("File has %d bytes", len(got))
	}
}

// FuzzNewFonts: no bytes panic, and a font that is read has some character.
func FuzzNewFonts(f *testing.F) {
	whole := file(f, "source-serif-italic")
	f.Add(whole[:1200])
	f.Add([]byte("\x00\x01\x00\x00\x00\x01cmap"))
	f.Fuzz(func(t *testing.T, body []byte) {
		fonts, err := typeset.NewFonts(map[typeset.Face][]byte{serif: body}, serif)
		if err != nil {
			return
		}
		var all strings.Builder
		for r := rune(0x21); r < 0xffff; r++ {
			all.WriteRune(r)
		}
		if len(fonts.Missing(all.String(), serif)) == all.Len() {
			t.Fatal("the font shows nothing")
		}
	})
}
