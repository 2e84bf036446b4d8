package specimen

import "benchproof/views"

func conflict() views.ConflictPage {
	return views.ConflictPage{
		Page: page("Saved in between", views.SectionSeason), What: "the brief of “Rye knots with smoked butter”",
		Action: "/episodes/31/brief", Revision: 8, Back: "/episodes/31/brief",
		Fields: []views.ConflictField{
			{Field: views.Field{Name: "title", Label: "Working title", Value: "Rye knots with smoked butter"}, Saved: "Rye knots with smoked butter"},
			{Field: views.Field{Name: "hook", Label: "Hook", Kind: views.FieldArea, Value: "The ferry leaves in ninety minutes. So does the dough."}, Saved: "Ninety minutes to the ferry.\nNinety to the oven.", Differs: true},
			{Field: views.Field{Name: "target_minutes", Label: "Length", Kind: views.FieldWhole, Value: "9", Unit: "minutes"}, Saved: "8", Differs: true},
		},
	}
}

func failed() views.ErrorPage {
	return views.ErrorPage{
		Page: page("That did not work", views.SectionNone), Status: 500, Heading: "That did not work",
		Say:       []string{"The fault is the program’s, not yours. What was saved before is safe; go back and try once more."},
		Reference: "k7q2-9dmv", Back: views.Link{Text: "Back to the season", Path: "/"},
	}
}

func notFound() views.NotFoundPage {
	return views.NotFoundPage{
		Page: page("Nothing stands here", views.SectionNone),
		Say:  "There is no episode at this address. It may have been deleted: look under Recently deleted.",
		Back: views.Link{Text: "Back to the season", Path: "/"},
	}
}
