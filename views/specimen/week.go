package specimen

import "benchproof/views"

func trialForm() views.Form {
	return views.Form{
		ID: "trial", Title: "Write down a trial", Action: "/episodes/31/trials", Submit: "Save trial", Guard: true,
		Fields: []views.Field{
			{Name: "made_on", Label: "Made on", Kind: views.FieldDate, Value: "2027-03-05"},
			{Name: "version", Label: "Version", Kind: views.FieldSelect, Value: "4", Options: []views.Option{{Value: "4", Label: "version 4"}, {Value: "3", Label: "version 3"}}},
			{Name: "scale", Label: "Scale", Kind: views.FieldDecimal, Value: "1", Unit: "times"},
			{Name: "dough", Label: "Before cooking", Kind: views.FieldDecimal, Unit: "g"},
			{Name: "baked", Label: "After cooking", Kind: views.FieldDecimal, Unit: "g"},
			{Name: "pieces", Label: "Pieces", Kind: views.FieldDecimal},
			{Name: "minutes", Label: "Minutes", Kind: views.FieldDecimal, Hint: "In the oven or on the hob."},
			{Name: "setting", Label: "Setting", Placeholder: "190 °C fan"},
			{Name: "verdict", Label: "Verdict", Kind: views.FieldSelect, Options: []views.Option{{Value: "", Label: "not said"}, {Value: "proved", Label: "proved"}, {Value: "nearly", Label: "nearly"}, {Value: "not yet", Label: "not yet"}}},
			{Name: "note", Label: "Note", Kind: views.FieldArea},
		},
	}
}

func trials() views.TrialsSheet {
	return views.TrialsSheet{
		Page: sheet(views.SheetTrials), EpisodeFrame: knots(views.SheetTrials), Form: trialForm(),
		Trials: []views.TrialRow{
			{Date: "4 Mar", Title: "version 4 at × 2", Verdict: views.Mark{Kind: views.MarkProved, Text: "proved"},
				Figures: []views.Figure{{Value: "1,504 g", Label: "dough"}, {Value: "1,331 g", Label: "baked"}, {Value: "11.5 %", Label: "lost in the oven"}, {Value: "32", Label: "knots of 42 g"}, {Value: "19 min", Label: "at 190 °C fan"}},
				Note:    "Two trays, one after the other. The second tray stood 25 minutes longer and opened more.", EditPath: "/episodes/31/trials?edit=3", DeleteAction: "/episodes/31/trials/3/delete"},
			{Date: "24 Feb", Title: "version 3 at × 1", Verdict: views.Mark{Kind: views.MarkLook, Text: "nearly"},
				Figures: []views.Figure{{Value: "748 g", Label: "dough"}, {Value: "655 g", Label: "baked"}, {Value: "12.4 %", Label: "lost in the oven"}, {Value: "16", Label: "knots of 41 g"}, {Value: "20 min", Label: "at 200 °C fan"}},
				Note:    "Seams too dark before the middle was done. Ten degrees less.", EditPath: "/episodes/31/trials?edit=2", DeleteAction: "/episodes/31/trials/2/delete"},
			{Date: "11 Feb", Title: "version 1 at × ½", Verdict: views.Mark{Kind: views.MarkWrong, Text: "not yet"},
				Figures:  []views.Figure{{Value: "361 g", Label: "dough"}, {Value: "–", Label: "baked"}},
				EditPath: "/episodes/31/trials?edit=1", DeleteAction: "/episodes/31/trials/1/delete"},
		},
	}
}

func trialsNone() views.TrialsSheet {
	p := trials()
	p.Trials = nil
	return p
}

func shopForm() views.Form {
	return views.Form{
		ID: "batch", Title: "Add a batch", Action: "/episodes/31/batches", Submit: "Add batch",
		Fields: []views.Field{
			{Name: "kind", Label: "For", Kind: views.FieldSelect, Value: "shoot", Options: []views.Option{{Value: "trial", Label: "trial"}, {Value: "shoot", Label: "shoot"}, {Value: "swap-out", Label: "swap-out"}, {Value: "spare", Label: "spare"}}},
			{Name: "makes", Label: "Makes", Kind: views.FieldDecimal, Value: "1"},
			{Name: "note", Label: "Note"},
		},
	}
}

func shopList(tick string) views.ShopList {
	return views.ShopList{
		TickAction: tick, Left: "6 of 9 still to get",
		Aisles: []views.AisleBlock{
			{Name: "Dairy and eggs", Items: []views.ShopItem{
				{Key: "buttermilk", Measure: "870 mL", Food: "buttermilk", Small: "3⅔ cups", Detail: "shoot 580 mL · swap-out 290 mL"},
				{Key: "unsalted-butter", Measure: "450 g", Food: "unsalted butter", Small: "1 lb", Detail: "shoot 300 g · swap-out 150 g", Ticked: true},
				{Key: "butter", Measure: "6 knobs", Food: "butter", Question: "a knob is not a measure we know"},
			}},
			{Name: "Flours and grains", Items: []views.ShopItem{
				{Key: "strong-white-flour", Measure: "960 g", Food: "strong white flour", Small: "2 lb 2 oz", Detail: "shoot 640 g · swap-out 320 g"},
				{Key: "rye-flour", Measure: "360 g", Food: "wholegrain rye flour", Small: "12¾ oz", Detail: "shoot 240 g · swap-out 120 g", Ticked: true},
			}},
			{Name: "Baking", Items: []views.ShopItem{
				{Key: "instant-yeast", Measure: "18 g", Food: "instant dried yeast", Small: "3 packets of 6 g", Ticked: true},
			}},
			{Name: "Spices and dried herbs", Items: []views.ShopItem{
				{Key: "fine-salt", Measure: "27 g", Food: "fine salt"},
				{Key: "smoked-salt", Measure: "3–6 tsp", Food: "smoked salt"},
				{Key: "black-pepper", Food: "black pepper", Detail: "to taste"},
			}},
		},
		Questions: []views.OpenLink{{Text: "“a little of what the smoker gives” was not read", Path: "/recipes/9/edit"}},
	}
}

func shop() views.ShopSheet {
	return views.ShopSheet{
		Page: sheet(views.SheetShop), EpisodeFrame: knots(views.SheetShop),
		Batches: []views.BatchRow{
			{Makes: "2 ×", Kind: "shoot", Note: "one for the table, one for the hands", EditPath: "/episodes/31/shop?edit=1", DeleteAction: "/episodes/31/batches/1/delete"},
			{Makes: "1 ×", Kind: "swap-out", Note: "tied, before the second rest", EditPath: "/episodes/31/shop?edit=2", DeleteAction: "/episodes/31/batches/2/delete"},
		},
		Total: "3 makes, 48 knots", Form: shopForm(), List: shopList("/episodes/31/ticks"),
	}
}

func shopNone() views.ShopSheet {
	p := shop()
	p.Batches, p.Total = nil, ""
	p.List = views.ShopList{Empty: "Plan a batch above, and what to buy for it stands here."}
	return p
}

func shopping() views.ShoppingPage {
	return views.ShoppingPage{
		Page: page("Shopping", views.SectionShopping),
		Covers: []views.EpisodeRow{
			{Date: "14 Mar", Number: "Ep 31", Title: "Rye knots with smoked butter", Path: "/episodes/31/shop"},
			{Date: "21 Mar", Number: "Ep 32", Title: "Two Herons custard slice", Path: "/episodes/32/shop"},
		},
		List: shopList("/shopping/ticks"),
	}
}

func shootDay() views.ShootDaySheet {
	day := func(steps []views.StepRow, component string) []views.DayStep {
		var all []views.DayStep
		for i, s := range steps {
			d := views.DayStep{StepRow: s, HandsOn: s.Station != "waits" && s.Station != "oven"}
			if i == 0 {
				d.Component = component
			}
			all = append(all, d)
		}
		return all
	}
	steps := append(day(dough().Steps, "Dough"), day(butter().Steps, "Smoked butter")...)
	return views.ShootDaySheet{
		Page: sheet(views.SheetShootDay), EpisodeFrame: knots(views.SheetShootDay),
		HandsOn: "78–84 min", Unattended: "6–7 h", Unsaid: "1 step does not say how long it takes",
		Batches: []views.DayBatch{
			{Title: "Shoot, 2 makes", HandsOn: "52–56 min", Unattended: "4 h 6–4 h 30", Steps: steps},
			{Title: "Swap-out, 1 make", HandsOn: "26–28 min", Unattended: "2 h 3–2 h 15", Steps: steps[:3]},
		},
	}
}

func script() views.ScriptSheet {
	return views.ScriptSheet{
		Page: sheet(views.SheetScript), EpisodeFrame: knots(views.SheetScript),
		Pace: "at 150 words a minute", Total: "8:35", Target: "against 9 minutes", Over: views.Mark{Text: "25 s under"},
		Segments: []views.SegmentRow{
			{ID: "segment-1", Start: "0:00", Title: "The breakfast boat", Narration: []string{"The ferry leaves in ninety minutes. So does the dough."}, Length: "planned 0:20 · spoken 0:04", EditPath: "/episodes/31/script?edit=1", DeleteAction: "/episodes/31/segments/1/delete", DownAction: "/episodes/31/segments/1/down"},
			{ID: "segment-2", Start: "0:20", Title: "The dough", Narration: []string{"Strong white flour for the stretch, rye for the taste: three hundred and twenty grams of one, a hundred and twenty of the other.", "Buttermilk, because the boat never carried fresh milk past Cinder Quay."}, Length: "planned 1:15 · spoken 1:22", Mark: views.Mark{Kind: views.MarkLook, Text: "7 s longer than planned"}, EditPath: "/episodes/31/script?edit=2", DeleteAction: "/episodes/31/segments/2/delete", UpAction: "/episodes/31/segments/2/up", DownAction: "/episodes/31/segments/2/down"},
			{ID: "segment-3", Start: "1:42", Title: "Tying", Length: "planned 2:00 · not written yet", EditPath: "/episodes/31/script?edit=3", DeleteAction: "/episodes/31/segments/3/delete", UpAction: "/episodes/31/segments/3/up"},
		},
		Outline: "0:00 The breakfast boat\n0:20 The dough\n1:42 Tying\n",
		Form: views.Form{
			ID: "segment", Title: "Add a segment", Action: "/episodes/31/segments", Submit: "Add segment", Guard: true,
			Fields: []views.Field{
				{Name: "title", Label: "Title", Required: true},
				{Name: "narration", Label: "Narration", Kind: views.FieldArea, Rows: 5},
				{Name: "planned_seconds", Label: "Planned", Kind: views.FieldWhole, Unit: "seconds", Hint: "Leave it empty to take the narration’s own length."},
			},
		},
	}
}

func scriptNone() views.ScriptSheet {
	p := script()
	p.Segments, p.Outline, p.Open = nil, "", nil
	return p
}

func shots() views.ShotsSheet {
	return views.ShotsSheet{
		Page: sheet(views.SheetShots), EpisodeFrame: knots(views.SheetShots), Got: "1 of 4 got",
		Setups: []views.SetupBlock{
			{Name: "overhead, window left", Left: "1 to shoot", Shots: []views.ShotRow{
				{ID: "shot-1", Kind: "overhead", Title: "Flour falls into the bowl", Step: "Dough, step 1", Status: views.Mark{Kind: views.MarkProved, Text: "got"}, Got: true, GotAction: "/episodes/31/shots/1/status", Wanted: "to shoot", EditPath: "/episodes/31/shots?edit=1", DeleteAction: "/episodes/31/shots/1/delete", DownAction: "/episodes/31/shots/1/down"},
				{ID: "shot-2", Kind: "overhead", Title: "The knot, tied once, slowly", Step: "Dough, step 3", Status: views.Mark{Text: "to shoot"}, Note: "Hands from the right, sleeves up.", GotAction: "/episodes/31/shots/2/status", Wanted: "got", EditPath: "/episodes/31/shots?edit=2", DeleteAction: "/episodes/31/shots/2/delete", UpAction: "/episodes/31/shots/2/up"},
			}},
			{Name: "table, low lamp", Left: "1 to shoot, 1 again", Shots: []views.ShotRow{
				{ID: "shot-3", Kind: "close-up", Title: "Butter runs into the seam", Step: "Smoked butter, step 1", Status: views.Mark{Kind: views.MarkLook, Text: "retake"}, GotAction: "/episodes/31/shots/3/status", Wanted: "got", EditPath: "/episodes/31/shots?edit=3", DeleteAction: "/episodes/31/shots/3/delete"},
				{ID: "shot-4", Kind: "piece to camera", Title: "The basket, full, steam against the dark", Status: views.Mark{Text: "to shoot"}, GotAction: "/episodes/31/shots/4/status", Wanted: "got", EditPath: "/episodes/31/shots?edit=4", DeleteAction: "/episodes/31/shots/4/delete"},
			}},
		},
		Coverage: "3 of 6 steps have no shot",
		Without:  []views.OpenLink{{Text: "Dough, step 2", Path: "/episodes/31/shots?step=2"}, {Text: "Dough, step 4", Path: "/episodes/31/shots?step=4"}, {Text: "Dough, step 5", Path: "/episodes/31/shots?step=5"}},
		Form: views.Form{
			ID: "shot", Title: "Add a shot", Action: "/episodes/31/shots", Submit: "Add shot",
			Fields: []views.Field{
				{Name: "title", Label: "Shot", Required: true},
				{Name: "kind", Label: "Kind", Kind: views.FieldSelect, Options: []views.Option{{Value: "overhead", Label: "overhead"}, {Value: "close-up", Label: "close-up"}, {Value: "hero", Label: "hero"}}},
				{Name: "setup", Label: "Setup", Hint: "Camera position and light, the same words for the same place."},
				{Name: "step", Label: "Step", Kind: views.FieldSelect, Options: []views.Option{{Value: "", Label: "no step"}, {Value: "Dough/1", Label: "Dough, step 1: Mix on low and knead until the dough clears the bowl"}}},
				{Name: "note", Label: "Note", Kind: views.FieldArea, Rows: 2},
			},
		},
	}
}

func cut() views.CutSheet {
	return views.CutSheet{
		Page: sheet(views.SheetCut), EpisodeFrame: knots(views.SheetCut),
		Form: views.Form{
			ID: "cut", Action: "/episodes/31/cut", Revision: 2, Submit: "Save cut", Guard: true,
			Fields: []views.Field{
				{Name: "name", Label: "Name", Value: "second cut"},
				{Name: "length", Label: "Length", Value: "8:35", Hint: "Minutes and seconds."},
				{Name: "captions", Label: "Captions", Kind: views.FieldPlain, Rows: 8, Hint: "WebVTT or SRT, as the editor gives it.", Value: "WEBVTT\n\n00:00:00.000 --> 00:00:02.400\nThe ferry leaves in ninety minutes.\n\n00:00:02.400 --> 00:00:04.000\nSo does the dough.\n"},
			},
		},
		Summary:  "4 captions, 8:35",
		Problems: []string{"Line 15 says 00:00:29.10: a time needs three digits after the point, so this caption was left out."},
		Cues: []views.CueRow{
			{ID: "cue-1", At: "0:00.0", Secs: "0.00", Words: views.Words("The ferry leaves in ninety minutes.")},
			{ID: "cue-2", At: "0:02.4", Secs: "2.40", Words: views.Words("So does the dough.")},
			{ID: "cue-3", At: "0:20.1", Secs: "20.10", Words: []views.Run{
				{Text: "Strong white flour for the stretch, rye for the taste: "}, {Text: "three hundred and twenty grams", Heat: true}, {Text: " of one."},
			}, Ties: []string{"320 g strong white flour"}},
			{ID: "cue-4", At: "0:29.0", Secs: "29.05", Words: []views.Run{{Text: "And the oven at "}, {Text: "two hundred fan", New: true}, {Text: "."}}, Ties: []string{"Bake at 210 °C / 190 °C fan."}, Wrong: true},
		},
		Findings: []views.FindingRow{{
			ID: "finding-1", Key: "k1", At: "0:29.0", AtValue: "29", CueID: "cue-4", Mark: views.Mark{Kind: views.MarkWrong, Text: "differs"},
			Said: "two hundred fan", Written: "190 °C fan", Line: "Bake at 210 °C / 190 °C fan.", Words: "and the oven at two hundred fan",
			Suggest: "0:29 I say “two hundred fan”. It is 190 °C fan.", Action: "/episodes/31/findings",
			Ways: []string{"re-record", "on-screen note", "correction", "meant that way"},
		}},
		Settled: []views.FindingRow{{
			ID: "finding-2", Key: "k2", At: "–", Mark: views.Mark{Text: "not said"}, Written: "9 g", Line: "9 g fine salt",
			Action: "/episodes/31/findings", How: "on-screen note",
		}},
		Checked: views.Mark{Kind: views.MarkLook, Text: "1 thing is said otherwise than written"},
	}
}
