package release_test

import (
	"flag"
	"os"
	"path/filepath"
	"sync"
	"testing"
	"time"

	"benchproof/kitchen/release"
)

var keep = flag.String("keep", "", "folder to leave the drawn cards in, to look at")

// fonts reads the fonts the program ships; the card's own room embeds none.
func fonts(t testing.TB) release.Fonts {
	t.Helper()
	read := func(name string) []byte {
		body, err := os.ReadFile(filepath.Join("..", "..", "static", "fonts", name+".ttf"))
		if err != nil {
			t.Fatal(err)
		}
		return body
	}
	return release.Fonts{
		Words: read("source-serif-regular"), WordsStrong: read("source-serif-semibold"), WordsItalic: read("source-serif-italic"),
		Figures: read("inter-regular"), FiguresBold: read("inter-semibold"),
	}
}

// knots is a card of several parts with every sign that must come out right.
func knots() release.Card {
	return release.Card{
		Show: "Ferry Stop Kitchen", Title: "Candle Point knots with crème brûlée butter", Makes: "makes 16 knots",
		Components: []release.CardComponent{
			{Name: "Dough",
				Lines: []release.CardLine{
					{Measure: "500 g", Words: "strong white bread flour", Small: "3⅔ cups"},
					{Measure: "7 g", Words: "instant dried yeast", Small: "2¼ tsp · 1 sachet"},
					{Measure: "40 g", Words: "caster sugar", Small: "3 tbsp + ½ tsp"},
					{Measure: "9 g", Words: "fine salt", Small: "1½ tsp"},
					{Measure: "270 g", Words: "whole milk, lukewarm", Small: "1⅛ cups"},
					{Measure: "1", Words: "large egg", Small: "50 g out of the shell"},
					{Measure: "60 g", Words: "unsalted butter, soft, in small pieces", Small: "4¼ tbsp"},
				},
				Steps: []release.CardStep{
					{Minutes: "3 min", Station: "mixer", Words: "Stir the flour, yeast, sugar and salt together in the mixer bowl. Add the milk and the egg and mix on low until no dry flour is left."},
					{Minutes: "11–13 min", Station: "mixer", Words: "Knead on medium-low for 5 minutes, then add the butter a piece at a time and knead for 6–8 minutes more, until the dough comes away from the bowl and stretches without tearing."},
					{Minutes: "60–75 min", Station: "waits", Words: "Cover and leave at about 24 °C, until doubled."},
					{Minutes: "15 min", Station: "bench", Words: "Tip the dough onto the bench, divide it into 16 pieces of about 58 g and roll each into a ball. Cover with a cloth and rest for 10 minutes."},
					{Minutes: "15 min", Station: "bench", Words: "Roll each ball into a rope 25 cm long, tie it once and tuck the ends under. Set the knots on two lined trays, 30 × 40 cm."},
					{Minutes: "40–50 min", Station: "waits", Words: "Cover and prove, until puffy and a fingertip’s dent springs back slowly."},
				}},
			{Name: "Egg wash",
				Lines: []release.CardLine{{Measure: "1", Words: "large egg yolk"}, {Measure: "1 tbsp", Words: "whole milk", Small: "15 ml"}},
				Steps: []release.CardStep{
					{Minutes: "5 min", Station: "bench", Words: "Heat the oven to 190 °C (170 °C fan, 375 °F). Beat the yolk with the milk and brush the knots."},
					{Minutes: "15–17 min", Station: "oven", Words: "Bake, until deep golden and the middle of a knot reads 93 °C."},
				}},
			{Name: "Honey butter",
				Lines: []release.CardLine{
					{Measure: "40 g", Words: "unsalted butter", Small: "⅓ stick"},
					{Measure: "30 g", Words: "runny honey", Small: "4 tsp"},
					{Measure: "1 tsp", Words: "caraway seeds, lightly crushed"},
					{Measure: "½ tsp", Words: "flaky sea salt"},
					{Words: "black pepper, to taste"},
				},
				Steps: []release.CardStep{
					{Minutes: "2 min", Station: "hob", Words: "Melt the butter with the honey and the caraway over a low heat. Brush it over the hot knots and sprinkle with the flaky salt."},
					{Minutes: "20 min", Station: "waits", Words: "Cool on a rack before the first one is torn open."},
				}},
		},
		Notes: []string{
			"Without a fan, bake one tray at a time and keep the other somewhere cool.",
			"Best on the day. The next day, 5 minutes at 160 °C (140 °C fan) brings them back.",
		},
		Allergens: "Contains wheat (gluten), milk and egg.",
		Cautions: []string{
			"Flour is a raw food: do not taste the raw dough.",
			"Honey is not for children under 12 months.",
		},
		Credits:  []string{"Inspired by the tray buns sold from a hatch on the Candle Point pier."},
		Address:  "https://ferrystop.example/r/7Q2mXo4bTz",
		Language: "en",
		MadeAt:   time.Date(2026, 3, 14, 8, 0, 0, 0, time.UTC),
	}
}

// draw draws a card; with -keep it also leaves the demo's card in that folder.
func draw(t testing.TB, card release.Card, paper release.Paper) []byte {
	t.Helper()
	pdf, err := release.CardPDF(card, paper, fonts(t))
	if err != nil {
		t.Fatal(err)
	}
	if *keep != "" && card.Title == knots().Title {
		if err := os.WriteFile(filepath.Join(*keep, string(paper)+".pdf"), pdf, 0o600); err != nil {
			t.Fatal(err)
		}
	}
	return pdf
}

// demos holds the drawn demo cards, which many tests read.
var demos sync.Map

// demo is the demo's card on a paper, drawn once.
func demo(t testing.TB, paper release.Paper) []byte {
	t.Helper()
	if pdf, ok := demos.Load(paper); ok {
		return pdf.([]byte)
	}
	pdf := draw(t, knots(), paper)
	demos.Store(paper, pdf)
	return pdf
}
