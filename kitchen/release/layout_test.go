package release_test

import (
	"fmt"
	"regexp"
	"strings"
	"testing"

	"benchproof/kitchen/release"
)

// word is one word of a card where poppler found it, in points from the top left.
type word struct {
	page                     int
	left, top, right, bottom float64
	text                     string
}

// wordsOf lists the words of a PDF in reading order.
func wordsOf(t testing.TB, pdf []byte) []word {
	t.Helper()
	var all []word
	page := 0
	box := regexp.MustCompile(`xMin="(-?[\d.]+)" yMin="(-?[\d.]+)" xMax="(-?[\d.]+)" yMax="(-?[\d.]+)">([^<]*)<`)
	for line := range strings.Lines(poppler(t, pdf, "pdftotext", "-bbox")) {
		if strings.Contains(line, "<page ") {
			page++
		}
		found := box.FindStringSubmatch(line)
		if found == nil {
			continue
		}
		w := word{page: page, text: found[5]}
		for i, at := range []*float64{&w.left, &w.top, &w.right, &w.bottom} {
			fmt.Sscan(found[i+1], at)
		}
		all = append(all, w)
	}
	return all
}

// first finds a word of that text.
func first(t testing.TB, all []word, text string) word {
	t.Helper()
	for _, w := range all {
		if w.text == text {
			return w
		}
	}
	t.Fatalf("the card has no word %q", text)
	return word{}
}

// TestCardMeasuresStandLeftOfTheRule: every measure of an ingredient ends at the
// same distance from the rule, and all words begin right of it, on one edge.
func TestCardMeasuresStandLeftOfTheRule(t *testing.T) {
	for _, paper := range release.Papers {
		t.Run(paper.Name(), func(t *testing.T) {
			all := wordsOf(t, demo(t, paper))
			edge := first(t, all, "strong").left
			for _, each := range []string{"instant", "caster", "fine", "whole", "Dough"} {
				if got := first(t, all, each).left; got < edge-.5 || got > edge+.5 {
					t.Errorf("%q begins at %.1f, “strong” at %.1f", each, got, edge)
				}
			}
			var ends []float64
			for _, w := range all {
				if w.text == "g" && w.right < edge {
					ends = append(ends, w.right)
				}
			}
			if len(ends) < 5 {
				t.Fatalf("only %d measures in grams stand left of %.1f", len(ends), edge)
			}
			for _, end := range ends {
				if end < ends[0]-.5 || end > ends[0]+.5 || end >= edge {
					t.Errorf("measures end at %.1f and at %.1f, words begin at %.1f", ends[0], end, edge)
				}
			}
		})
	}
}

// TestCardMeasureStandsBesideItsWords: both are on one baseline.
func TestCardMeasureStandsBesideItsWords(t *testing.T) {
	all := wordsOf(t, demo(t, release.A4))
	for measure, words := range map[string]string{"500": "strong", "7": "instant", "270": "lukewarm"} {
		left, right := first(t, all, measure), first(t, all, words)
		if off := left.bottom - right.bottom; off < -3 || off > 3 {
			t.Errorf("%q is at %.1f, %q at %.1f", measure, left.bottom, words, right.bottom)
		}
	}
}

// TestSmallCardTurnsOver: a small card that needs two pages has the ingredients
// on its front and the method on its back, where each fits.
func TestSmallCardTurnsOver(t *testing.T) {
	all := wordsOf(t, demo(t, release.A5))
	for _, onFront := range []string{"strong", "flaky", "Honey"} {
		if got := first(t, all, onFront).page; got != 1 {
			t.Errorf("%q is on page %d", onFront, got)
		}
	}
	for _, onBack := range []string{"Method", "Knead", "Allergens", "Credits"} {
		if got := first(t, all, onBack).page; got != 2 {
			t.Errorf("%q is on page %d", onBack, got)
		}
	}
	if last := all[len(all)-1].page; last != 2 {
		t.Errorf("the card has %d pages", last)
	}
}

// TestCardHeadingsKeepCompany: no heading is the last line of a page's text.
func TestCardHeadingsKeepCompany(t *testing.T) {
	for lines := 24; lines < 40; lines += 2 {
		var c release.CardComponent
		for range lines {
			c.Lines = append(c.Lines, release.CardLine{Measure: "1", Words: "flour"})
		}
		card := release.Card{Title: "Bread", Components: []release.CardComponent{c, {
			Name: "Topping", Lines: []release.CardLine{{Measure: "2", Words: "seeds"}},
			Steps: []release.CardStep{{Words: "Bake."}},
		}}}
		all := wordsOf(t, draw(t, card, release.A4))
		for heading, next := range map[string]string{"Topping": "seeds", "Method": "Bake."} {
			if at, below := first(t, all, heading), first(t, all, next); at.page != below.page {
				t.Errorf("with %d lines %q is on page %d, what it heads on %d", lines, heading, at.page, below.page)
			}
		}
	}
}

// TestCardNumbersStepsThrough: steps are numbered through all components, whose
// names stand above them where more than one has any.
func TestCardNumbersStepsThrough(t *testing.T) {
	text := readBack(t, demo(t, release.A4))
	at := 0
	for i, begins := range []string{"Stir the flour", "Knead on", "Cover and leave", "Tip the dough", "Roll each", "Cover and prove", "Heat the oven", "Bake, until", "Melt the butter", "Cool on"} {
		found := strings.Index(text, fmt.Sprintf("%d %s", i+1, begins))
		if found < at {
			t.Fatalf("step %d, “%s…”, is at %d, the one before at %d", i+1, begins, found, at)
		}
		at = found
	}
	one := knots()
	one.Components = one.Components[:1]
	text = readBack(t, draw(t, one, release.A4))
	if strings.Contains(text, "Method Dough") {
		t.Error("the only component is named again above its steps")
	}
}

// TestCardLinksToThePage: the address is a link in the file.
func TestCardLinksToThePage(t *testing.T) {
	card := knots()
	urls := poppler(t, draw(t, card, release.A4), "pdfinfo", "-url")
	if !strings.Contains(urls, card.Address) {
		t.Errorf("the file has no link to %s:\n%s", card.Address, urls)
	}
	card.Address = ""
	if urls := poppler(t, draw(t, card, release.A4), "pdfinfo", "-url"); strings.Contains(urls, "http") {
		t.Errorf("a card without an address has links:\n%s", urls)
	}
}

// TestPaperNames are what people call them.
func TestPaperNames(t *testing.T) {
	want := map[release.Paper]string{
		release.A4: "A4", release.Letter: "Letter", release.A5: "A5", release.SixFour: "4 × 6 in", "napkin": "napkin",
	}
	for paper, name := range want {
		if got := paper.Name(); got != name {
			t.Errorf("%s is called %q, want %q", string(paper), got, name)
		}
	}
	if len(release.Papers) != len(want)-1 {
		t.Errorf("%d papers", len(release.Papers))
	}
}
