package specimen

import "benchproof/views"

// dough and butter are the recipe that most specimens show.
func dough() views.ComponentBlock {
	return views.ComponentBlock{
		Name: "Dough", Small: "hydration 61 %, water counted",
		Lines: []views.LineRow{
			{Measure: "320 g", Food: "strong white flour", Small: "2⅓ cups · 73 %"},
			{Measure: "120 g", Food: "wholegrain rye flour", Small: "1 cup + 3 tbsp · 27 %"},
			{Measure: "6 g", Food: "instant dried yeast", Small: "2 tsp · 1.4 %"},
			{Measure: "9 g", Food: "fine salt", Small: "1½ tsp · 2 %"},
			{Measure: "290 mL", Food: "buttermilk", After: ", at room temperature", Small: "1¼ cups"},
			{Measure: "2 knobs", Food: "butter", After: ", soft", Question: "a knob is not a measure we know. How much?"},
		},
		Steps: []views.StepRow{
			{Minutes: "9–11 min", Station: "mixer", Words: views.Words("Mix on low and knead until the dough clears the bowl.")},
			{Minutes: "75 min", Station: "waits", Words: views.Words("Cover and leave until it springs back slowly."), Small: "The shoot day has a swap-out here."},
			{Minutes: "12 min", Station: "bench", Words: views.Words("Divide into 16, roll each to a rope of 25 cm, and tie it once. Tuck the ends under.")},
			{Minutes: "30–40 min", Station: "waits", Words: views.Words("Cover and leave until half as big again.")},
			{Minutes: "18–20 min", Station: "oven", Words: []views.Run{
				{Text: "Bake at "}, {Text: "210 °C", Heat: true}, {Text: " ("}, {Text: "200 °C fan", Heat: true}, {Text: ") until deep brown on the seams."},
			}, Wrong: "the fan figure given is only 10 °C lower. 190 °C?"},
		},
	}
}

func butter() views.ComponentBlock {
	return views.ComponentBlock{
		Name: "Smoked butter",
		Lines: []views.LineRow{
			{Measure: "150 g", Food: "unsalted butter", Small: "10½ tbsp · a stick and a third"},
			{Measure: "1–2 tsp", Food: "smoked salt", After: ", to taste"},
			{Food: "black pepper", After: ", to taste"},
		},
		Steps: []views.StepRow{
			{Minutes: "5 min", Station: "hob", Words: views.Words("Melt the butter over a low flame. Stir in the salt and brush over the hot knots.")},
		},
	}
}

func body() views.RecipeBody {
	return views.RecipeBody{
		Name: "Rye knots", Version: "version 4", Makes: "makes 16 knots",
		Marks: []views.Mark{{Kind: views.MarkProved, Text: "proved at 16 and 32"}},
		Scaler: views.Scaler{
			TryPath: "/episodes/31/recipe", KeepAction: "/episodes/31/scale", Revision: 7,
			Factor: "1", Was: "1", Pieces: "16", PiecesLabel: "knots",
		},
		Measures: []views.Choice{
			{Text: "as written", Path: "/episodes/31/recipe", Current: true},
			{Text: "metric", Path: "/episodes/31/recipe?measure=metric"},
			{Text: "US", Path: "/episodes/31/recipe?measure=us"},
		},
		Components: []views.ComponentBlock{dough(), butter()},
		Notes:      []string{"Best within the hour. Day-old knots come back in a hot oven, 4 minutes."},
		Credits:    []string{"Adapted from the galley book of the breakfast boat."},
		Links: []views.Link{
			{Text: "Edit", Path: "/recipes/9/edit"}, {Text: "Card", Path: "/episodes/31/card/a5"}, {Text: "PDF", Path: "/episodes/31/card/a5.pdf"},
		},
		Versions: []views.VersionRow{
			{Number: "v4", Date: "2 Mar", Note: "more buttermilk, longer first rest", Marks: []views.Mark{{Kind: views.MarkProved, Text: "proved"}}, Path: "/recipes/9/versions/4", ComparePath: "/recipes/9/changes?from=3&to=4", Current: true},
			{Number: "v3", Date: "24 Feb", Note: "tied once, not twice", Path: "/recipes/9/versions/3", ComparePath: "/recipes/9/changes?from=2&to=3", UseAction: "/episodes/31/version/3"},
			{Number: "v2", Date: "17 Feb", Path: "/recipes/9/versions/2", ComparePath: "/recipes/9/changes?from=1&to=2", UseAction: "/episodes/31/version/2"},
			{Number: "v1", Date: "11 Feb", Note: "as the galley book has it", Path: "/recipes/9/versions/1", UseAction: "/episodes/31/version/1"},
		},
	}
}

func recipe() views.RecipeSheet {
	return views.RecipeSheet{Page: sheet(views.SheetRecipe), EpisodeFrame: knots(views.SheetRecipe), Has: true, Recipe: body()}
}

func recipeTrying() views.RecipeSheet {
	p := recipe()
	r := &p.Recipe
	r.Makes = "makes 32 knots"
	r.Scaler.Factor, r.Scaler.Was, r.Scaler.Pieces, r.Scaler.Trying = "2", "2", "32", "tried at × 2, not kept yet"
	r.Scaler.PiecesError = "Write how many knots as a number above 0, such as 32."
	r.Measures[0].Current, r.Measures[2].Current = false, true
	r.Assumed = "cup 236.6 mL, tablespoon 14.8 mL (US customary)"
	r.Components[0].Lines = []views.LineRow{
		{Measure: "4⅔ cups", Food: "strong white flour", Small: "640 g"},
		{Measure: "2⅓ cups", Food: "wholegrain rye flour", Small: "240 g · rounded down by 1 %"},
		{Measure: "4 tsp", Food: "instant dried yeast", Small: "12 g"},
		{Measure: "1 tbsp", Food: "fine salt", Small: "18 g"},
		{Measure: "2½ cups", Food: "buttermilk", After: ", at room temperature", Small: "580 mL"},
		{Measure: "4 knobs", Food: "butter", After: ", soft", Question: "a knob is not a measure we know. How much?"},
	}
	r.Components[1].Lines = append(r.Components[1].Lines, views.LineRow{
		Food: "a little of what the smoker gives", NotRead: true, Question: "no amount and no food we know",
	})
	r.ScaleNotes = []string{
		"Baking minutes are those of one tray. Two trays at once take longer and brown unevenly: bake them one after the other.",
		"This is more dough than a 4.8 L mixer kneads at once. Knead it as two.",
	}
	r.Unread = []views.UnreadRow{{Number: "line 19", Text: "(see over!!)", Reason: "neither an ingredient nor a step"}}
	return p
}

func recipeNone() views.RecipeSheet {
	f := knots(views.SheetRecipe)
	f.Number, f.Title, f.ReleaseOn, f.Stage, f.Path = "", "Pickled samphire, three ways", "", "pitched", "/episodes/34"
	f.Marks = nil
	f.Open = []views.OpenLink{{Text: "paste its recipe", Path: "/recipes/new?episode=34"}}
	return views.RecipeSheet{
		Page: page("Pickled samphire, three ways: Recipe", views.SectionSeason), EpisodeFrame: f,
		NewPath: "/recipes/new?episode=34",
		Attach: views.Form{
			ID: "attach", Action: "/episodes/34/recipe", Revision: 1, Submit: "Use it",
			Fields: []views.Field{{Name: "version", Label: "Recipe", Kind: views.FieldSelect, Options: []views.Option{
				{Value: "9", Label: "Rye knots, version 4"}, {Value: "12", Label: "Galley pickles, version 1"},
			}}},
		},
	}
}

func version() views.VersionPage {
	b := body()
	b.Version = "version 3"
	b.Scaler = views.Scaler{TryPath: "/recipes/9/versions/3", Factor: "1", Was: "1", Pieces: "16", PiecesLabel: "knots"}
	b.Versions[0].Current, b.Versions[1].Current = false, true
	for i := range b.Versions {
		b.Versions[i].UseAction = ""
	}
	return views.VersionPage{
		Page: page("Rye knots, version 3", views.SectionRecipes), Recipe: b,
		Note: "Tied once, not twice.", Older: true, NewerPath: "/recipes/9",
	}
}
