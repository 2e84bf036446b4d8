package specimen

import "benchproof/views"

const description = `Rye knots with smoked butter, from the breakfast boat. The ferry leaves in ninety minutes. So does the dough.

MAKES 16 KNOTS

Dough
320 g (2⅓ cups) strong white flour
120 g (1 cup + 3 tbsp) wholegrain rye flour
6 g (2 tsp) instant dried yeast
9 g (1½ tsp) fine salt
290 mL (1¼ cups) buttermilk, at room temperature

Smoked butter
150 g (10½ tbsp) unsalted butter
1–2 tsp smoked salt, to taste

CHAPTERS
0:00 The breakfast boat
0:20 The dough
1:42 Tying

Adapted from the galley book of the breakfast boat.
Contains wheat, rye (gluten) and milk.
`

func cautionRows() []views.Caution {
	return []views.Caution{{
		Text:   "Flour is raw until it is baked: do not taste the dough. Local rules and licensed practice come first.",
		Source: "common practice",
	}}
}

func allergens() views.Allergens {
	return views.Allergens{
		Lists: []views.AllergenList{
			{Law: "EU 14", Names: "cereals containing gluten (wheat, rye), milk"},
			{Law: "US 9", Names: "wheat, milk"},
			{Law: "AU, NZ", Names: "wheat, gluten, milk"},
		},
		Unsure: []string{"smoked salt"},
	}
}

func release() views.ReleaseSheet {
	return views.ReleaseSheet{
		Page: sheet(views.SheetRelease), EpisodeFrame: knots(views.SheetRelease),
		Form: views.Form{
			ID: "release", Title: "What goes out", Action: "/episodes/31/release", Revision: 4, Submit: "Save release", Guard: true,
			Fields: []views.Field{
				{Name: "title", Label: "Title", Value: "Rye knots with smoked butter | the breakfast boat", Limit: 100},
				{Name: "opening", Label: "Opening", Kind: views.FieldArea, Value: "Rye knots with smoked butter, from the breakfast boat. The ferry leaves in ninety minutes. So does the dough."},
				{Name: "equipment", Label: "Equipment", Kind: views.FieldArea, Hint: "One a line.", Value: "stand mixer\ntwo baking trays"},
				{Name: "credits", Label: "Credits", Kind: views.FieldArea, Rows: 2, Hint: "One a line, beside the recipe’s own."},
				{Name: "disclosure", Label: "Disclosure", Kind: views.FieldArea, Rows: 2},
				{Name: "video_url", Label: "Video", Kind: views.FieldURL, Placeholder: "https://"},
			},
		},
		Description: description, Count: "612 of 5,000",
		Chapters:        []views.Chapter{{At: "0:00", Title: "The breakfast boat"}, {At: "0:20", Title: "The dough"}, {At: "1:42", Title: "Tying"}},
		ChapterProblems: []string{"Chapters come from the running order until the cut has captions."},
		Corrections: []views.AirRow{{
			At: "4:12", Said: "two hundred degrees in a fan oven", Right: "190 °C fan, 210 °C without.",
			EditPath: "/episodes/31/release?edit=1", DeleteAction: "/episodes/31/corrections/1/delete",
		}},
		CorrectionForm: views.Form{
			ID: "correction", Title: "Add a correction", Action: "/episodes/31/corrections", Submit: "Add correction",
			Fields: []views.Field{
				{Name: "at", Label: "At", Placeholder: "4:12"},
				{Name: "said", Label: "Said", Required: true},
				{Name: "right", Label: "Right", Required: true},
			},
		},
		Cautions: cautionRows(), Allergens: allergens(),
		Shares: []views.ShareRow{
			{Made: "5 Mar", Label: "for the description", RevokeAction: "/episodes/31/shares/2/revoke"},
			{Made: "1 Mar", Label: "for Mirel, who tests", RevokeAction: "/episodes/31/shares/1/revoke"},
		},
		ShareForm: views.Form{
			ID: "share", Action: "/episodes/31/shares", Submit: "Make a link",
			Fields: []views.Field{{Name: "label", Label: "Who it is for", Placeholder: "the newsletter"}},
		},
		NewShare: "https://kitchen.example/s/Zk3mWQy0pT6cN8xVb1RsLA",
		Cards: []views.CardLink{
			{Size: "A4", Path: "/episodes/31/card/a4", PDFPath: "/episodes/31/card/a4.pdf"},
			{Size: "Letter", Path: "/episodes/31/card/letter", PDFPath: "/episodes/31/card/letter.pdf"},
			{Size: "A5", Path: "/episodes/31/card/a5", PDFPath: "/episodes/31/card/a5.pdf"},
		},
	}
}

func releaseOver() views.ReleaseSheet {
	p := release()
	p.Count, p.Over = "5,212 of 5,000", true
	p.CutFirst = []string{"212 characters too many. The equipment list is the longest part that viewers do not need to cook: 340 characters."}
	p.Form.Fields[0].Value = "Rye knots with smoked butter from the breakfast boat that leaves Saltmarsh Landing at ten to six, rain or shine"
	p.Form.Fields[0].Error = "The title has 110 characters; most platforms show at most 100. Shorten it by 10."
	p.NewShare, p.Shares, p.Corrections = "", nil, nil
	return p
}
