package release_test

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/release"
)

// poppler runs one of the poppler tools on a PDF: an independent reader.
func poppler(t testing.TB, pdf []byte, tool string, options ...string) string {
	t.Helper()
	path, err := exec.LookPath(tool)
	if err != nil {
		t.Skipf("%s is not installed (Debian: poppler-utils)", tool)
	}
	file := filepath.Join(t.TempDir(), "card.pdf")
	if err := os.WriteFile(file, pdf, 0o600); err != nil {
		t.Fatal(err)
	}
	args := append(options, file)
	if tool == "pdftotext" {
		args = append(args, "-")
	}
	out, err := exec.Command(path, args...).Output()
	if err != nil {
		t.Fatalf("%s: %v", tool, err)
	}
	return string(out)
}

// flat makes any run of blanks one blank, no-break spaces too.
func flat(text string) string { return strings.Join(strings.Fields(text), " ") }

func readBack(t testing.TB, pdf []byte) string {
	t.Helper()
	return flat(poppler(t, pdf, "pdftotext", "-raw", "-enc", "UTF-8"))
}

// TestCardPDFReadsBack reads each size of card with poppler's pdftotext: every
// ingredient and step is there, and the signs that fonts often lack.
func TestCardPDFReadsBack(t *testing.T) {
	for _, paper := range release.Papers {
		t.Run(paper.Name(), func(t *testing.T) {
			card := knots()
			text := readBack(t, draw(t, card, paper))
			for _, sign := range []string{"½", "⅓", "⅔", "⅛", "¼", "°", "×", "–", "é", "û", "’", "·"} {
				if !strings.Contains(text, sign) {
					t.Errorf("the card lacks %q", sign)
				}
			}
			for _, c := range card.Components {
				for _, line := range c.Lines {
					if want := flat(strings.Join([]string{line.Measure, line.Words, line.Small}, " ")); !strings.Contains(text, want) {
						t.Errorf("the card lacks %q", want)
					}
				}
				for _, step := range c.Steps {
					if !holdsAll(text, step.Words) {
						t.Errorf("the card lacks a word of %q", step.Words)
					}
				}
			}
			for _, words := range append(append(card.Notes, card.Cautions...), card.Allergens, card.Credits[0], card.Makes, card.Title, card.Show, "ferrystop.example/r/7Q2mXo4bTz") {
				if !holdsAll(text, words) {
					t.Errorf("the card lacks a word of %q", words)
				}
			}
		})
	}
}

// holdsAll tells whether every word of words is in text, for what lines and the
// gutter may part.
func holdsAll(text, words string) bool {
	for _, word := range strings.Fields(words) {
		if !strings.Contains(text, word) {
			return false
		}
	}
	return true
}

// TestCardPDFPaper: ISO 216 A4 210 × 297 mm and A5 148 × 210 mm; Letter
// 8½ × 11 in; an index card 4 × 6 in; a point is 1/72 in.
func TestCardPDFPaper(t *testing.T) {
	const mm, in = 72 / 25.4, 72.0
	for _, test := range []struct {
		paper         release.Paper
		width, height float64
	}{
		{release.A4, 210 * mm, 297 * mm}, {release.Letter, 8.5 * in, 11 * in},
		{release.A5, 148 * mm, 210 * mm}, {release.SixFour, 4 * in, 6 * in},
	} {
		t.Run(test.paper.Name(), func(t *testing.T) {
			info := poppler(t, demo(t, test.paper), "pdfinfo")
			var width, height float64
			size := regexp.MustCompile(`Page size:\s+([\d.]+) x ([\d.]+) pts`).FindStringSubmatch(info)
			if size == nil {
				t.Fatalf("pdfinfo names no page size:\n%s", info)
			}
			fmt.Sscan(size[1], &width)
			fmt.Sscan(size[2], &height)
			if off := max(width-test.width, test.width-width, height-test.height, test.height-height); off > .05 {
				t.Errorf("page is %v × %v pt, want %v × %v", width, height, test.width, test.height)
			}
			for _, want := range []string{"Candle Point knots with crème brûlée butter", "Ferry Stop Kitchen", "2026"} {
				if !strings.Contains(info, want) {
					t.Errorf("the file's information lacks %q", want)
				}
			}
		})
	}
}

func TestCardPDFEmbedsItsFonts(t *testing.T) {
	table := poppler(t, demo(t, release.A4), "pdffonts")
	rows := strings.Split(strings.TrimSpace(table), "\n")[2:]
	if len(rows) == 0 {
		t.Fatal("pdffonts lists no font")
	}
	for _, row := range rows {
		fields := strings.Fields(row)
		// … emb sub uni object ID: the last five columns.
		if n := len(fields); n < 5 || fields[n-5] != "yes" || fields[n-3] != "yes" {
			t.Errorf("font is not embedded with its Unicode table: %s", row)
		}
	}
}

func TestCardPDFIsTheSameEachTime(t *testing.T) {
	first := draw(t, knots(), release.A5)
	for range 5 {
		if !bytes.Equal(first, draw(t, knots(), release.A5)) {
			t.Fatal("two drawings of one card differ")
		}
	}
	later := knots()
	later.MadeAt = later.MadeAt.AddDate(0, 0, 1)
	if bytes.Equal(first, draw(t, later, release.A5)) {
		t.Error("the card's date is not in the file")
	}
	undated := knots()
	undated.MadeAt = undated.MadeAt.AddDate(-3000, 0, 0)
	if !bytes.Equal(draw(t, undated, release.A5), draw(t, undated, release.A5)) {
		t.Error("two drawings of one undated card differ")
	}
}

// numbered makes cards of random length whose words are w1, w2, and so on.
var numbered = rapid.Custom(func(t *rapid.T) release.Card {
	word := 0
	next := func(most int, label string) string {
		var b strings.Builder
		for range rapid.IntRange(1, most).Draw(t, label) {
			word++
			fmt.Fprintf(&b, "w%d ", word)
		}
		return b.String()
	}
	card := release.Card{Show: "Show", Title: next(12, "title")}
	for range rapid.IntRange(0, 4).Draw(t, "components") {
		var c release.CardComponent
		for range rapid.IntRange(0, 25).Draw(t, "lines") {
			c.Lines = append(c.Lines, release.CardLine{Measure: next(1, "measure"), Words: next(14, "words")})
		}
		for range rapid.IntRange(0, 6).Draw(t, "steps") {
			c.Steps = append(c.Steps, release.CardStep{Minutes: next(1, "minutes"), Station: next(2, "station"), Words: next(700, "step")})
		}
		card.Components = append(card.Components, c)
	}
	card.Notes = []string{next(60, "note")}
	return card
})

// TestCardPDFFlows holds that no word is lost or doubled however long the card
// is, and that pages are numbered when there are several.
func TestCardPDFFlows(t *testing.T) {
	for seed := range 20 {
		card, paper := numbered.Example(seed), release.Papers[seed%len(release.Papers)]
		t.Run(fmt.Sprintf("%d on %s", seed, paper), func(t *testing.T) {
			raw := poppler(t, draw(t, card, paper), "pdftotext", "-raw", "-enc", "UTF-8")
			pages, text := strings.Count(raw, "\f"), flat(raw) // a form feed ends each page
			seen, most := map[string]int{}, 0
			for _, found := range regexp.MustCompile(`\bw\d+\b`).FindAllString(text, -1) {
				seen[found]++
				n, _ := strconv.Atoi(found[1:])
				most = max(most, n)
			}
			inTitle := len(strings.Fields(card.Title)) // stands at the foot of later pages, too
			for i := 1; i <= most; i++ {
				if n := seen[fmt.Sprintf("w%d", i)]; n == 0 || n > 1 && i > inTitle {
					t.Fatalf("w%d stands %d times on the card", i, n)
				}
			}
			if last := lastWord(card); !strings.Contains(text, last) {
				t.Errorf("the card ends before %q", last)
			}
			if has := strings.Contains(text, fmt.Sprintf("%d of %d", pages, pages)); has != (pages > 1) {
				t.Errorf("%d pages, numbered %v", pages, has)
			}
		})
	}
}

func lastWord(card release.Card) string {
	fields := strings.Fields(card.Notes[0])
	return fields[len(fields)-1]
}

func TestCardPDFStaysOnTheSheet(t *testing.T) {
	card := knots()
	card.Title = strings.Repeat("Donaudampfschifffahrtsgesellschaftskapitänsmützenabzeichen", 3)
	card.Address = "https://kitchen.example/" + strings.Repeat("long", 60)
	card.Components[0].Lines[0].Measure = "1 tablespoon + 2½ teaspoons, heaped"
	for _, paper := range release.Papers {
		text := poppler(t, draw(t, card, paper), "pdftotext", "-bbox")
		var width, height float64
		page := regexp.MustCompile(`<page width="([\d.]+)" height="([\d.]+)"`).FindStringSubmatch(text)
		fmt.Sscan(page[1], &width)
		fmt.Sscan(page[2], &height)
		for _, box := range regexp.MustCompile(`xMin="(-?[\d.]+)" yMin="(-?[\d.]+)" xMax="(-?[\d.]+)" yMax="(-?[\d.]+)">([^<]*)<`).FindAllStringSubmatch(text, -1) {
			var left, top, right, bottom float64
			for i, at := range []*float64{&left, &top, &right, &bottom} {
				fmt.Sscan(box[i+1], at)
			}
			if left < 0 || top < 0 || right > width || bottom > height {
				t.Errorf("%s: %q stands at %v–%v, %v–%v of a page %v × %v", paper, box[5], left, right, top, bottom, width, height)
			}
		}
	}
}

func TestCardPDFShowsWhatTheFontsLack(t *testing.T) {
	card := release.Card{Title: "Phở, お好み焼き 🍜 and 1⁄5", Components: []release.CardComponent{{Lines: []release.CardLine{
		{Measure: "⅕", Words: "cre\u0300me fraîche\u200d"}, {Measure: "2", Words: "fi\ufe0f <b>x</b> \\ (y)\x00\xff"},
	}}}}
	text := readBack(t, draw(t, card, release.A5))
	for _, want := range []string{"Pho, ????? ? and 1⁄5", "⅕ crème fraîche", "<b>x</b> \\ (y)"} {
		if !strings.Contains(text, want) {
			t.Errorf("the card lacks %q:\n%s", want, text)
		}
	}
	if got := fonts(t).Missing("Phở お好み焼き 🍜 ½ okay\n"); got != "ởお好み焼き🍜" {
		t.Errorf("Missing = %q", got)
	}
}

func TestCardPDFOfAlmostNothing(t *testing.T) {
	for _, paper := range release.Papers {
		if pdf := draw(t, release.Card{}, paper); !bytes.HasPrefix(pdf, []byte("%PDF-")) {
			t.Errorf("%s: an empty card is no PDF", paper)
		}
	}
}

func TestCardPDFRefuses(t *testing.T) {
	if _, err := release.CardPDF(knots(), "napkin", fonts(t)); fault.KindOf(err) != fault.Invalid || fault.Field(err) != "paper" {
		t.Errorf("a napkin: %v, want Invalid about paper", err)
	}
	for name, f := range map[string]release.Fonts{
		"none": {}, "nonsense": {Words: []byte("not a font")}, "cut short": {Words: fonts(t).Words[:40]},
		"cut in the middle": {Words: fonts(t).Words, Figures: fonts(t).Figures[:len(fonts(t).Figures)/2]},
	} {
		if _, err := release.CardPDF(knots(), release.A5, f); err == nil || fault.KindOf(err) != fault.Internal {
			t.Errorf("font %s: %v, want an internal fault", name, err)
		}
	}
}

func TestCardPDFWithOneFont(t *testing.T) {
	pdf, err := release.CardPDF(knots(), release.A4, release.Fonts{Words: fonts(t).Words})
	if err != nil {
		t.Fatal(err)
	}
	if text := readBack(t, pdf); !strings.Contains(text, "500 g strong white bread flour") {
		t.Errorf("the card reads %q", text)
	}
}

// BenchmarkCardPDF bounds what one download of a card costs.
func BenchmarkCardPDF(b *testing.B) {
	card, with := knots(), fonts(b)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := release.CardPDF(card, release.A4, with); err != nil {
			b.Fatal(err)
		}
	}
}
