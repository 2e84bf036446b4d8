package specimen

import "benchproof/views"

// published is the recipe as it goes out: nothing left to ask.
func published() []views.ComponentBlock {
	d, b := dough(), butter()
	d.Small = ""
	d.Lines[5] = views.LineRow{Measure: "30 g", Food: "butter", After: ", soft", Small: "2 tbsp"}
	d.Steps[1].Small = ""
	last := &d.Steps[4]
	last.Words = []views.Run{{Text: "Bake at "}, {Text: "210 °C", Heat: true}, {Text: " ("}, {Text: "190 °C fan", Heat: true}, {Text: ", "}, {Text: "410 °F", Heat: true}, {Text: ") until deep brown on the seams."}}
	last.Wrong = ""
	return []views.ComponentBlock{d, b}
}

func share() views.SharePage {
	b := views.RecipeBody{
		Name: "Rye knots with smoked butter", Makes: "makes 16 knots", Components: published(),
		Measures: []views.Choice{{Text: "as written", Path: "?", Current: true}, {Text: "metric", Path: "?measure=metric"}, {Text: "US", Path: "?measure=us"}},
		Notes:    []string{"Best within the hour. Day-old knots come back in a hot oven, 4 minutes."},
	}
	return views.SharePage{
		Show: showName, Recipe: b,
		Scales:    []views.Choice{{Text: "× ½", Path: "?factor=1/2"}, {Text: "× 1", Path: "?", Current: true}, {Text: "× 2", Path: "?factor=2"}, {Text: "× 3", Path: "?factor=3"}},
		Opening:   "From the breakfast boat. The ferry leaves in ninety minutes. So does the dough.",
		Allergens: allergens(), Cautions: cautionRows(),
		Corrections: []views.AirRow{{At: "4:12", Said: "two hundred degrees in a fan oven", Right: "190 °C fan, 210 °C without."}},
		Credits:     []string{"Adapted from the galley book of the breakfast boat."},
		VideoURL:    "https://video.example/rye-knots", CardPath: "/s/Zk3mWQy0pT6cN8xVb1RsLA/card/a5",
		Canonical:  "https://kitchen.example/s/Zk3mWQy0pT6cN8xVb1RsLA",
		Structured: `{"@context":"https://schema.org","@type":"Recipe","name":"Rye knots with smoked butter","description":"</script><b>not markup</b> & safe"}`,
	}
}

func card(paper, name string) views.CardPage {
	p := views.CardPage{
		Show: showName, Title: "Rye knots with smoked butter", Paper: paper, PaperName: name, Makes: "makes 16 knots",
		Components: published(), Notes: []string{"Best within the hour. Day-old knots come back in a hot oven, 4 minutes."},
		Allergens: "Contains wheat, rye (gluten) and milk.",
		Cautions:  []string{"Do not taste the raw dough."},
		Credits:   []string{"Adapted from the galley book of the breakfast boat."},
		Address:   "kitchen.example/s/Zk3mWQy0pT6cN8xVb1RsLA",
		PDFPath:   "/episodes/31/card/" + paper + ".pdf", Back: views.Link{Text: "Back to the release", Path: "/episodes/31/release"},
	}
	for _, s := range []views.Choice{{Text: "A4", Path: "a4"}, {Text: "Letter", Path: "letter"}, {Text: "A5", Path: "a5"}} {
		p.Sizes = append(p.Sizes, views.Choice{Text: s.Text, Path: "/episodes/31/card/" + s.Path, Current: s.Path == paper})
	}
	return p
}
