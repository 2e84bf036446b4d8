package specimen

import "benchproof/views"

func setup() views.SetupPage {
	return views.SetupPage{
		Page: views.Page{Title: "Set up the kitchen"},
		Form: views.Form{
			ID: "setup", Action: "/setup", Submit: "Start cooking",
			Fields: []views.Field{
				{Name: "code", Label: "One-time code", Required: true, Hint: "Printed where the program was started."},
				{Name: "name", Label: "Your name", Required: true, Autocomplete: "username"},
				{Name: "password", Label: "Password", Kind: views.FieldPassword, Required: true, Autocomplete: "new-password", Hint: "At least 12 characters. A sentence is easy to keep."},
				{Name: "show", Label: "The show", Required: true, Placeholder: "What the channel is called"},
			},
		},
	}
}

func signIn() views.SignInPage {
	return views.SignInPage{
		Page: views.Page{Title: "Sign in", Show: showName},
		Form: views.Form{
			ID: "sign-in", Action: "/sign-in", Submit: "Sign in",
			Fields: []views.Field{
				{Name: "name", Label: "Name", Autocomplete: "username"},
				{Name: "password", Label: "Password", Kind: views.FieldPassword, Autocomplete: "current-password"},
			},
		},
	}
}

func signInRefused() views.SignInPage {
	p := signIn()
	p.Form.Fields[0].Value = "Odile"
	p.Form.Problem = "Name and password do not belong together. Try again, or wait a minute after five tries."
	return p
}

// startForm is the short way in.
func startForm() views.Form {
	return views.Form{
		ID: "start", Action: "/episodes", Submit: "Make the episode",
		Fields: []views.Field{
			{Name: "title", Label: "New episode", Placeholder: "A working title"},
			{Name: "recipe", Label: "Its recipe", Kind: views.FieldArea, Rows: 4, Placeholder: "Paste it as you have it: what it makes, the ingredients, the method."},
		},
	}
}

func season() views.SeasonPage {
	p := page("Season", views.SectionSeason)
	p.Flash = views.Flash{Text: "“Cinder Quay pepper buns” deleted.", UndoAction: "/deleted/4/restore"}
	return views.SeasonPage{
		Page: p, Start: startForm(),
		Groups: []views.SeasonGroup{
			{Title: "Coming", Episodes: []views.EpisodeRow{
				{Date: "14 Mar", Number: "Ep 31", Title: "Rye knots with smoked butter", Path: "/episodes/31/brief", Stage: "in development",
					Open: knots(views.SheetBrief).Open[:3], More: 1},
				{Date: "21 Mar", Number: "Ep 32", Title: "Two Herons custard slice", Path: "/episodes/32/brief", Stage: "ready to shoot",
					Open: []views.OpenLink{{Text: "plan a swap-out for the set custard", Path: "/episodes/32/shop"}}},
				{Date: "28 Mar", Number: "Ep 33", Title: "Mussel and leek stew from the night boat", Path: "/episodes/33/brief", Stage: "in development",
					Open: []views.OpenLink{
						{Text: "try the recipe once", Path: "/episodes/33/trials"},
						{Text: "write the opening", Path: "/episodes/33/script"},
					}},
			}},
			{Title: "Not dated", Episodes: []views.EpisodeRow{
				{Date: "not dated", Title: "Pickled samphire, three ways", Path: "/episodes/34/brief", Stage: "pitched",
					Open: []views.OpenLink{{Text: "set a release date", Path: "/episodes/34/brief"}, {Text: "paste its recipe", Path: "/recipes/new?episode=34"}}},
			}},
			{Title: "Released", Episodes: []views.EpisodeRow{
				{Date: "7 Mar", Number: "Ep 30", Title: "Saltmarsh apple fritters", Path: "/episodes/30/brief", Stage: "released"},
				{Date: "28 Feb", Number: "Ep 29", Title: "Maud’s Steps barley broth", Path: "/episodes/29/brief", Stage: "released",
					Open: []views.OpenLink{{Text: "put right what was said at 4:12", Path: "/episodes/29/release", Wrong: true}}},
				{Date: "20 Dec", Year: "2026", Number: "Ep 28", Title: "Last Light ginger cake", Path: "/episodes/28/brief", Stage: "released"},
			}},
		},
	}
}

func seasonEmpty() views.SeasonPage {
	return views.SeasonPage{Page: page("Season", views.SectionSeason), Start: startForm()}
}

func seasonRefused() views.SeasonPage {
	p := seasonEmpty()
	p.Start.Fields[0].Error = "Give the episode a working title; it can change later."
	p.Start.Fields[1].Value = "Two Herons custard slice\nMakes 12\n\n500 ml whole milk\n6 large egg yolks"
	return p
}
