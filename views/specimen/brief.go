package specimen

import "benchproof/views"

func brief() views.BriefSheet {
	return views.BriefSheet{
		Page: sheet(views.SheetBrief), EpisodeFrame: knots(views.SheetBrief),
		Form: views.Form{
			ID: "brief", Action: "/episodes/31/brief", Revision: 7, Submit: "Save brief", Guard: true,
			Fields: []views.Field{
				{Name: "title", Label: "Working title", Value: "Rye knots with smoked butter", Required: true},
				{Name: "number", Label: "Number", Kind: views.FieldWhole, Value: "31"},
				{Name: "stage", Label: "Stage", Kind: views.FieldSelect, Value: "in development", Options: []views.Option{
					{Value: "pitched", Label: "pitched"}, {Value: "in development", Label: "in development"},
					{Value: "ready to shoot", Label: "ready to shoot"}, {Value: "in the edit", Label: "in the edit"}, {Value: "released", Label: "released"},
				}},
				{Name: "release_on", Label: "Release date", Kind: views.FieldDate, Value: "2027-03-14"},
				{Name: "dish", Label: "Dish", Value: "Rye knots, served warm in a basket"},
				{Name: "inspired_by", Label: "Inspired by", Value: "the breakfast boat from Saltmarsh Landing"},
				{Name: "inspired_url", Label: "Its link", Kind: views.FieldURL, Placeholder: "https://"},
				{Name: "look", Label: "Look", Kind: views.FieldArea, Value: "Dark, shining crust with pale seams where the knot opens. Butter melting into the top seam, smoke still curling."},
				{Name: "hook", Label: "Hook", Kind: views.FieldArea, Rows: 2, Value: "The ferry leaves in ninety minutes. So does the dough."},
				{Name: "target_minutes", Label: "Length", Kind: views.FieldWhole, Value: "9", Unit: "minutes"},
				{Name: "notes", Label: "Notes", Kind: views.FieldArea, Rows: 5, Hint: "Markdown, if you like.", Value: "Ask the boat’s cook about **the butter**.\n\n- smoke it over tea and rice\n- have a spare block ready"},
			},
		},
		NotesHTML:    "<p>Ask the boat’s cook about <strong>the butter</strong>.</p>\n<ul>\n<li>smoke it over tea and rice</li>\n<li>have a spare block ready</li>\n</ul>\n",
		DeleteAction: "/episodes/31/delete",
	}
}

func briefRefused() views.BriefSheet {
	p := brief()
	p.Form.Fields[0].Value = ""
	p.Form.Fields[0].Error = "Give the episode a working title; it can change later."
	p.Form.Fields[9].Value = "nine"
	p.Form.Fields[9].Error = "Write the length in whole minutes, such as 9."
	p.NotesHTML = ""
	return p
}
