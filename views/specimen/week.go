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
				{Key: "buttermilk", Measure: "870 mL", Food: "buttermilk", Path: "/larder/buttermilk", Buy: "2 × 500 mL, $5.80 · 130 mL left over", Late: "in the larder and too old on the day: 300 mL, use by 1 Mar", Small: "3⅔ cups", Detail: "shoot 580 mL · swap-out 290 mL"},
				{Key: "unsalted-butter", Measure: "250 g", Food: "unsalted butter", Path: "/larder/unsalted-butter", Buy: "1 × 250 g, $4.85", Have: "200 g from the larder", Small: "9 oz", Detail: "shoot 300 g · swap-out 150 g", Ticked: true},
				{Key: "butter", Measure: "6 knobs", Food: "butter", Question: "a knob is not a measure we know"},
			}},
			{Name: "Flours and grains", Items: []views.ShopItem{
				{Key: "strong-white-flour", Measure: "960 g", Food: "strong white flour", Path: "/larder/strong-white-bread-flour", Buy: "1 × 1 kg, $2.90 · 40 g left over", Small: "2 lb 2 oz", Detail: "shoot 640 g · swap-out 320 g"},
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
		Sum: "$13.55", SumOf: "for 3 of 9 items; 6 without a price",
		Held: []views.HeldItem{
			{Measure: "60 g", Food: "honey", Path: "/larder/honey", Have: "there: 340 g"},
			{Measure: "3", Food: "eggs", Path: "/larder/egg", Have: "there: 4, use by 12 Mar; 6"},
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
	return views.ShootDaySheet{
		Page: sheet(views.SheetShootDay), EpisodeFrame: knots(views.SheetShootDay),
		Facts: []views.DayFact{
			{Measure: "08:10", Text: "begins"},
			{Measure: "11:35", Text: "wraps", Mark: views.Mark{Kind: views.MarkLook, Text: "nothing can wrap before 11:20"}},
			{Measure: "11:20–12:05", Text: "wraps, if every step takes its least or its most, in this order"},
			{Measure: "78–84 min", Text: "hands-on, all batches"},
			{Measure: "6–7 h", Text: "unattended"},
			{Mark: views.Mark{Kind: views.MarkLook, Text: "1 step does not say how long; the plan guesses"}},
		},
		Notes: []string{"6 makes are planned on the Shop sheet; the plan holds the first 4", "No longer in the plan, so not kept to: shoot, dough, step 9"},
		Under: "Replanned at 10:40: 2 steps done, 1 under way", LatePath: "/episodes/31/shoot-day?late=1#plan", AnewAction: "/episodes/31/shoot-day/anew",
		Moved: []views.DayFact{{Measure: "10:45", Text: "Tie the knots. (shoot)", Small: "was 10:35"}},
		Moments: []views.MomentRow{
			{At: "10:00", Until: "to 10:30", Name: "Lunch in the oven", Small: "takes the oven until 10:30", EditPath: "/episodes/31/shoot-day?change=moment-1#moment", DeleteAction: "/episodes/31/moments/1/delete"},
			{At: "12:00", Name: "Guests taste", Small: "all that is made for the shoot is done by then", EditPath: "/episodes/31/shoot-day?change=moment-2#moment", DeleteAction: "/episodes/31/moments/2/delete"},
		},
		Rows: []views.DayRow{
			{At: "08:10", Text: "Mix buttermilk, flours and yeast to a rough dough.", Small: "swap-out · Dough · mixer · until 08:20", Ahead: true},
			{At: "09:00", Text: "Put up the camera: overhead, window left", Small: "until 09:05"},
			{At: "09:05", Text: "Mix buttermilk, flours and yeast to a rough dough.", Small: "shoot · Dough · mixer · until 09:15", Filmed: "filmed: overhead, window left", Step: "batch=shoot&step=1+Dough", Name: "Mix buttermilk, flours and yeast", Fixed: []string{"pinned to 09:05", "the helper’s"}, EditPath: "/episodes/31/shoot-day?batch=shoot&step=1+Dough#step", Begun: true, Done: true},
			{At: "09:15", Text: "Prove until it springs back slowly.", Small: "shoot · Dough · waits · until 10:45", Waits: true, Filmed: "its beginning filmed: table, low lamp", Step: "batch=shoot&step=2+Dough", Name: "Prove until it springs back slowly", EditPath: "/episodes/31/shoot-day?batch=shoot&step=2+Dough#step", Begun: true},
			{At: "10:00", Text: "Lunch in the oven", Small: "takes the oven until 10:30", Moment: true},
			{At: "09:15", Text: "1 h 30 free: B-roll, eat, rest", Small: "until 10:45", Free: true},
			{At: "10:45", Text: "Tie the knots.", Small: "shoot · Dough · bench · until 11:05", Mark: views.Mark{Kind: views.MarkLook, Text: "20 minutes, a guess: the step does not say"}},
			{At: "11:05", Text: "Bake at 220 °C.", Small: "shoot · Dough · oven · until 11:35", Waits: true},
		},
		Chart: dayChart(),
		Holding: []views.HoldingRow{{
			From: "09:15", To: "to 11:40", Text: "Stands 2 h 25 min between cold and hot, until “Bake at 220 °C. (shoot)”",
			Cautions: []views.Caution{
				{Text: "Put it into the refrigerator within 2 hours, 1 hour where it is above 32 °C (90 °F).", Source: "USDA FSIS, Refrigeration: The Basics"},
				{Text: "Between 2 and 4 hours from 5 °C to 60 °C, added up: use it at once, do not keep it.", Source: "FSANZ Standard 3.2.2"},
			},
		}},
		Defers: "These are common cautions, not a guarantee: the advice of your local food authority goes first.",
		Before: []views.DayFact{
			{Measure: "10 min", Text: "Whisk the custard over the heat until it coats the spoon.", Small: "Custard · hob"},
			{Measure: "5 min", Text: "Press film onto it and chill.", Small: "Custard · fridge", Mark: views.Mark{Kind: views.MarkLook, Text: "a guess: the step does not say"}},
		},
		Search: views.DaySearch{BeginAction: "/episodes/31/shoot-day/search"},
		Trade: []views.TradeRow{
			{DayFact: views.DayFact{Measure: "0", Text: "extra makes: wraps 11:35"}, Picked: true},
			{DayFact: views.DayFact{Measure: "1", Text: "extra make: wraps 10:20"}, Cuts: []string{"made ahead to the end of “Prove until it springs back slowly.” from 07:20; it cuts a wait of 1 h 30"}, Adds: "adds 320 g strong white flour, 120 g rye flour; about £1.40", PickAction: "/episodes/31/shoot-day/swap-outs", Stages: []string{"2 Dough"}},
			{DayFact: views.DayFact{Measure: "2", Text: "no better: one more make does not help"}},
		},
		TradeNote: "A swap-out is one more make, taken ahead without filming to the end of a long wait.",
		Exports:   []views.Link{{Text: "Calendar file", Path: "/episodes/31/shoot-day.ics"}, {Text: "CSV", Path: "/episodes/31/shoot-day.csv"}},
		Dated:     "The calendar file is for 12 Mar, on the clock of Atlantic/Azores.",
		Form:      shootDayForm(), Kitchen: kitchenForm(), Moment: momentForm(),
	}
}

// shootLate is the plan while the day runs late, with one step to fix.
func shootLate() views.ShootDaySheet {
	p := shootDay()
	p.Search = views.DaySearch{Text: "Looking for a better plan: the best so far wraps 11:35; none wraps before 11:20", Path: "/episodes/31/shoot-day/search", StopAction: "/episodes/31/shoot-day/search/stop"}
	p.Late = &views.Form{
		ID: "late", Action: "/episodes/31/shoot-day/late", Submit: "Replan the rest", Cancel: "/episodes/31/shoot-day",
		Fields: []views.Field{{Name: "now", Label: "Time now", Value: "10:40", Required: true, Hint: "Tick below what is done and what is under way."}},
	}
	p.Step = &views.Form{
		ID: "step", Title: "“Tie the knots.”", Action: "/episodes/31/shoot-day/steps?batch=shoot&step=3+Dough", Submit: "Replan", Cancel: "/episodes/31/shoot-day", Guard: true,
		Fields: []views.Field{
			{Name: "pin", Label: "Begins at", Value: "half past", Error: "“half past” is not a time of day. Write hours and minutes, such as 09:40 or 16:00."},
			{Name: "barred", Label: "Not between", Value: "12:00–13:00"},
			{Name: "helper", Label: "The helper does it", Kind: views.FieldCheck, Value: "yes"},
		},
	}
	return p
}

func kitchenForm() views.Form {
	return views.Form{
		ID: "kitchen", Action: "/episodes/31/shoot-day/kitchen", Revision: 2, Submit: "Save and replan", Guard: true,
		Fields: []views.Field{
			{Name: "ovens", Label: "Ovens", Kind: views.FieldWhole, Value: "1"},
			{Name: "holds", Label: "One oven holds", Kind: views.FieldWhole, Value: "2", Unit: "makes"},
			{Name: "people", Label: "People", Kind: views.FieldArea, Value: "Ilse at the bench\nTam behind the camera"},
		},
	}
}

func momentForm() views.Form {
	return views.Form{
		ID: "moment", Title: "Add a moment", Action: "/episodes/31/moments", Submit: "Add moment", Guard: true,
		Fields: []views.Field{
			{Name: "name", Label: "What", Required: true, Hint: "A delivery, guests who taste, lunch in the oven."},
			{Name: "at", Label: "At", Required: true},
			{Name: "until", Label: "Until"},
		},
	}
}

func shootDayForm() views.Form {
	return views.Form{
		ID: "day", Action: "/episodes/31/shoot-day", Revision: 2, Submit: "Plan the day", Guard: true,
		Fields: []views.Field{
			{Name: "on", Label: "Day", Kind: views.FieldDate, Value: "2027-03-12", Hint: "For the calendar file; empty is today."},
			{Name: "begin", Label: "Begin at", Value: "09:00", Required: true},
			{Name: "done", Label: "Be done by", Hint: "Empty plans forwards from the beginning."},
			{Name: "hands", Label: "Hands", Kind: views.FieldWhole, Value: "1", Required: true, Unit: "people"},
		},
	}
}

// shootDayRefused is a day that no plan fits into.
func shootDayRefused() views.ShootDaySheet {
	p := views.ShootDaySheet{
		Page: sheet(views.SheetShootDay), EpisodeFrame: knots(views.SheetShootDay), Form: shootDayForm(), Kitchen: kitchenForm(), Moment: momentForm(),
		Problem: "“shoot 4: Bake at 220 °C.” cannot end by 10:00. Begin earlier, or be done later.",
		Facts:   []views.DayFact{{Measure: "78–84 min", Text: "hands-on, all batches"}, {Measure: "6–7 h", Text: "unattended"}},
	}
	p.Form.Fields[2].Value, p.Form.Fields[1].Value = "10:00", "nine"
	p.Form.Fields[1].Error = "“nine” is not a time of day. Write hours and minutes, such as 09:40 or 16:00."
	return p
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
		Files:    []views.Link{{Text: "As WebVTT", Path: "/episodes/31/captions.vtt"}, {Text: "As SRT", Path: "/episodes/31/captions.srt"}},
		Problems: []string{"Line 15 says 00:00:29.10: a time needs three digits after the point, so this caption was left out."},
		Cues: []views.CueRow{
			{ID: "cue-1", At: "0:00.0", Secs: "0.00", Words: views.Words("The ferry leaves in ninety minutes.")},
			{ID: "cue-2", At: "0:02.4", Secs: "2.40", Words: views.Words("So does the dough.")},
			{ID: "cue-3", At: "0:20.1", Secs: "20.10", Words: []views.Run{
				{Text: "Strong white flour for the stretch, rye for the taste: "}, {Text: "three hundred and twenty grams", Heat: true}, {Text: " of one."},
			}, Ties: []string{"320 g strong white flour"}},
			{ID: "cue-4", At: "0:29.0", Secs: "29.05", Words: []views.Run{{Text: "And the oven at "}, {Text: "two hundred fan", New: true}, {Text: "."}}, Ties: []string{"Bake at 210 °C / 190 °C fan."}, Wrong: true},
		},
		Chapters: []views.ChapterRow{
			{At: "0:00", Title: "The ferry leaves", Action: "/episodes/31/chapters", Segment: "1", Value: "0:00", Secs: "0"},
			{At: "0:20", Title: "Flour", Mark: views.Mark{Kind: views.MarkLook, Text: "a guess. Is it so?"}, Action: "/episodes/31/chapters", Segment: "2", Value: "0:20", Secs: "20", Asks: true},
			{At: "4:05", Title: "The oven", Mark: views.Mark{Text: "set by hand"}, Action: "/episodes/31/chapters", Segment: "3", Value: "4:05", Secs: "245", IsSet: true},
		},
		ChaptersAsk: views.Mark{Kind: views.MarkLook, Text: "1 to look at"},
		Notices:     []string{"Line 7: the caption ends at 00:00:02.400, which is not after its start at 00:00:02.400, so that players never show it."},
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

// dayChart is the plan as a picture.
func dayChart() views.DayChart {
	return views.DayChart{
		Title: "The plan from 08:10 to 11:35 by station; the table before it says the same in words", Width: 720, Height: 130, Left: 72,
		Ticks: []views.ChartTick{{X: "72.0", Text: "08:00"}, {X: "230.0", Text: "09:00"}, {X: "388.0", Text: "10:00"}, {X: "546.0", Text: "11:00"}, {X: "704.0", Text: "12:00"}},
		Rows: []views.ChartRow{
			{Name: "hands", Y: 34, Line: 18, Bars: []views.ChartBar{
				{X: "98.3", Y: 22, Width: "25.3", Height: 16, Kind: views.BarAhead, From: "08:10", To: "09:10", Words: "Mix buttermilk, flours and yeast"},
				{X: "230.0", Y: 22, Width: "12.2", Height: 16, Kind: views.BarSetup, From: "09:00", To: "10:00", Words: "put up overhead, window left"},
				{X: "243.2", Y: 22, Width: "25.3", Height: 16, Kind: views.BarFilm, From: "09:05", To: "10:05", Words: "Mix buttermilk, flours and yeast"},
				{X: "506.5", Y: 22, Width: "51.7", Height: 16, Kind: views.BarHands, From: "10:45", To: "11:45", Words: "Tie the knots."},
			}},
			{Name: "oven", Y: 58, Line: 42, Bars: []views.ChartBar{{X: "559.2", Y: 46, Width: "78.0", Height: 16, Kind: views.BarWait, From: "11:05", To: "12:05", Words: "Bake at 220 °C."}}},
			{Name: "waits", Y: 82, Line: 66, Bars: []views.ChartBar{{X: "269.5", Y: 70, Width: "236.0", Height: 16, Kind: views.BarWait, From: "09:15", To: "10:15", Words: "Prove until it springs back slowly."}}},
		},
	}
}
