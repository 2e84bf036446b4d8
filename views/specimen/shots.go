package specimen

import "benchproof/views"

func shots() views.ShotsSheet {
	return views.ShotsSheet{
		Page: sheet(views.SheetShots), EpisodeFrame: knots(views.SheetShots), TickAction: "/episodes/31/shots/ticks", KeptAction: "/episodes/31/shots/ticks/kept", Got: "1 of 4 got",
		Order: "By the clock of the day’s plan: each setup where it is needed first.", OrderPath: "/episodes/31/shoot-day", OrderLink: "Shoot day",
		CallSheet: "/episodes/31/call-sheet",
		Setups: []views.SetupBlock{
			{Name: "overhead, window left", About: "arm over the bench, straight down · 35 mm, f/4 · window left, white card right", Got: "1 of 2 got", EditPath: "/episodes/31/shots?describe=overhead#setup", Shots: []views.ShotRow{
				shotRow("1", "09:05", "overhead", "Flour falls into the bowl", "got", "Dough, step 1", ""),
				shotRow("2", "10:45", "overhead", "The knot, tied once, slowly", "missing", "Dough, step 3", "Hands from the right, sleeves up."),
			}},
			{Name: "table, low lamp", Got: "0 of 1 got", EditPath: "/episodes/31/shots?describe=table#setup", Form: setupForm(), Shots: []views.ShotRow{
				shotRow("3", "", "close-up", "Butter runs into the seam", "retake", "Smoked butter, step 9", ""),
			}},
			{Name: "no setup yet", Got: "0 of 1 got", Shots: []views.ShotRow{
				shotRow("4", "", "piece to camera", "The basket, full, steam against the dark", "missing", "", ""),
			}},
		},
		Coverage: []views.GapRow{
			{Measure: "2 of 6", Small: "steps", Text: "without a shot:", Links: []views.OpenLink{{Text: "Dough, step 2", Path: "/episodes/31/shots?step=2"}, {Text: "Dough, step 4", Path: "/episodes/31/shots?step=4"}}},
			{Measure: "1 of 3", Small: "cues", Text: "that nobody films:", Links: []views.OpenLink{{Text: "“until it springs back slowly” (Dough, step 2)", Path: "/episodes/31/shots?step=2"}}, Note: "A cue counts as filmed when an overhead, a close-up, an insert or a hero is of its step: near enough to show it."},
			{Measure: "layout", Text: "Nothing shows the ingredients laid out:", Links: []views.OpenLink{{Text: "add a layout", Path: "/episodes/31/shots?layout=yes"}}},
			{Measure: "hero", Text: "Nothing shows the finished dish:", Links: []views.OpenLink{{Text: "add a hero", Path: "/episodes/31/shots?kind=hero"}}},
		},
		Draft: &views.ShotDraft{Action: "/episodes/31/shots/draft", Have: "4", Button: "Add these 4 shots", Text: "Each can be changed or deleted afterwards."},
		Changes: views.SetupChanges{
			Facts: []views.DayFact{
				{Measure: "3", Text: "in the order of the day’s plan"},
				{Measure: "1", Text: "in the order below", Mark: views.Mark{Kind: views.MarkProved, Text: "cooking allows no fewer"}},
			},
			Title: "An order with 1 change",
			Runs: []views.RunRow{
				{Number: "1", Setup: "overhead, window left", Shots: "Flour falls into the bowl · The knot, tied once, slowly"},
				{Number: "2", Setup: "table, low lamp", Shots: "Butter runs into the seam"},
			},
			Note: "A setup that comes after another is a change. Not counted: 1 shot that names no setup.",
		},
		Form: views.Form{
			ID: "shot", Title: "Add a shot", Action: "/episodes/31/shots", Submit: "Add shot",
			Fields: []views.Field{
				{Name: "title", Label: "Shot", Required: true},
				{Name: "kind", Label: "Kind", Kind: views.FieldSelect, Options: []views.Option{{Value: "overhead", Label: "overhead"}, {Value: "close-up", Label: "close-up"}, {Value: "hero", Label: "hero"}}},
				{Name: "setup", Label: "Setup", Hint: "One name for each place of the camera.", Suggestions: []string{"overhead, window left", "table, low lamp"}},
				{Name: "step", Label: "Of", Kind: views.FieldSelect, Options: []views.Option{{Value: "", Label: "the whole episode"}, {Value: "1 Dough", Label: "Dough, step 1: Mix on low and knead until the dough clears the bowl"}}},
				{Name: "layout", Label: "Shows the ingredients laid out", Kind: views.FieldCheck},
				{Name: "note", Label: "Note", Kind: views.FieldArea, Rows: 2},
			},
		},
	}
}

// shotRow is a shot in one state.
func shotRow(id, clock, kind, title, state, tie, note string) views.ShotRow {
	row := views.ShotRow{
		ID: "shot-" + id, Tick: id, Clock: clock, Kind: kind, Title: title, Tie: tie, Note: note, Got: state == "got",
		EditPath: "/episodes/31/shots?change=shot-" + id, DeleteAction: "/episodes/31/shots/" + id + "/delete", DownAction: "/episodes/31/shots/" + id + "/move?by=1",
	}
	if kind == "close-up" {
		row.Cue = "the cue about 10:05: until it runs clear"
	}
	for _, each := range []string{"got", "missing", "retake"} {
		row.Presses = append(row.Presses, views.Press{State: each, Pressed: each == state})
	}
	if tie == "Smoked butter, step 9" {
		row.Lost = views.Mark{Kind: views.MarkLook, Text: "the recipe no longer has this step"}
	}
	return row
}

func setupForm() *views.Form {
	return &views.Form{
		ID: "setup", Action: "/episodes/31/setups?was=table", Revision: 1, Submit: "Save setup", Cancel: "/episodes/31/shots", Guard: true,
		Fields: []views.Field{
			{Name: "name", Label: "Setup", Value: "table, low lamp", Required: true},
			{Name: "camera", Label: "Camera", Hint: "Where it stands and how it looks."},
			{Name: "lens", Label: "Lens"},
			{Name: "light", Label: "Light", Value: "lamp, low, from the left"},
		},
	}
}

// shotsNone is the sheet before there are shots.
func shotsNone() views.ShotsSheet {
	p := shots()
	p.Setups, p.Coverage, p.Changes, p.Got = nil, nil, views.SetupChanges{}, ""
	p.Draft.Button, p.Draft.Have = "Draft a shot list", "0"
	p.Draft.Text = "8 shots from the recipe: the ingredients laid out, a close-up of every cue, the other steps, and the hero."
	return p
}

// shotsCovered is a list that leaves nothing out, after a form was refused.
func shotsCovered() views.ShotsSheet {
	p := shots()
	p.Coverage, p.Draft, p.Covered = nil, nil, "Every step has a shot, every cue is seen, the ingredients are laid out, and there is a hero of the finished dish."
	p.Setups[1].Form.Problem = "There is a setup called “overhead” that is described otherwise."
	p.Changes.Facts = []views.DayFact{{Measure: "9", Text: "in the order of the list, as far as cooking allows it", Mark: views.Mark{Kind: views.MarkLook, Text: "cooking allows no fewer than 7"}}}
	p.Changes.Runs = nil
	p.Form.Fields[0].Error = "Say what the viewer sees."
	return p
}

func callSheet() views.CallSheet {
	day := shootDay()
	return views.CallSheet{
		Page: sheet(views.SheetCallSheet), EpisodeFrame: knots(views.SheetCallSheet),
		Date: "12 Mar", Day: "Friday 12 March 2027", PlanPath: "/episodes/31/shoot-day",
		Times: []views.DayFact{{Measure: "08:10", Text: "begin"}, {Measure: "11:35", Text: "wrap"}, {Measure: "16:30", Text: "the light goes"}},
		Here: []views.CallList{
			{Name: "people", Lines: []string{"Odile, at the bench", "Second pair of hands until two"}},
			{Name: "gear", Lines: []string{"Camera and the 35 mm", "Overhead arm", "Two lamps, one white card"}},
			{Name: "props", Lines: []string{"Basket", "Blue cloth"}},
			{Name: "kitchen", Lines: []string{"Stand mixer with a dough hook"}},
		},
		Shopping: "3 of 9 still to get", ShopPath: "/episodes/31/shop",
		Ahead:     []views.DayFact{{Measure: "1 ×", Text: "swap-out up to dough, step 2, the day before", Small: "for the tying"}, {Measure: "08:10", Text: "swap-out begins", Small: "until 09:15"}},
		DayBefore: []views.DayFact{{Measure: "10 min", Text: "Mix buttermilk, flours and yeast to a rough dough.", Small: "Dough · mixer"}},
		Plan:      day.Rows, Setups: shots().Setups, Missing: "1 of 4 got",
		Cautions: []string{"Hot fat and sugar burn: keep a lid to hand. Follow your local food authority."},
	}
}

// callSheetNoPlan is the sheet of a day that does not work out.
func callSheetNoPlan() views.CallSheet {
	p := callSheet()
	p.Date, p.Day, p.Plan, p.Ahead, p.DayBefore, p.Here, p.Shopping = "", "no day set yet", nil, nil, nil, nil, ""
	p.Times = []views.DayFact{{Measure: "09:00", Text: "begin"}}
	p.NoPlan = "No batch is planned for the shoot. Plan one on the Shop sheet."
	return p
}
