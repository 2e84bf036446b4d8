package specimen

import "benchproof/views"

const typed = `Rye knots
Makes 16

Dough
320 g strong white flour
120g wholegrain rye flour
1 packet (6 g) instant dried yeast
9 g fine salt
290 ml buttermilk, at room temperature
2 knobs of butter, soft

Smoked butter
150 g unsalted butter
1 to 2 tsp smoked salt, to taste
(see over!!)

1. Mix on low and knead 9 to 11 minutes until the dough clears the bowl.
2. Cover and leave for 75 minutes until it springs back slowly.
3. Bake at 210 °C (200 °C fan) for 18–20 minutes.

Adapted from the galley book of the breakfast boat.
`

func recipeEdit() views.RecipeEditPage {
	return views.RecipeEditPage{
		Page:    page("Rye knots, version 4: text", views.SectionRecipes),
		Heading: "Rye knots, version 4", Path: "/episodes/31/recipe", Revision: 3, Version: "4", Episode: "31",
		Text: typed, Note: "more buttermilk, longer first rest",
		ReadAction: "/recipes/9/read", SaveAction: "/recipes/9", VersionAction: "/recipes/9/versions",
		Understood: understanding(),
	}
}

func recipeNew() views.RecipeEditPage {
	return views.RecipeEditPage{
		Page:    page("A new recipe", views.SectionRecipes),
		Heading: "A new recipe", ReadAction: "/recipes/read", SaveAction: "/recipes",
		TextError:  "Write or paste the recipe first; one line is enough to start.",
		Understood: views.Understanding{Summary: "nothing to read yet"},
	}
}

func understanding() views.Understanding {
	return views.Understanding{
		Title: "Rye knots", Yield: "16 knots", System: "no cups or spoons whose size is in doubt",
		Summary: "11 of 12 lines read",
		Marks:   []views.Mark{{Kind: views.MarkLook, Text: "2 to look at"}},
		Components: []views.ReadComponent{
			{
				Name: "Dough",
				Lines: []views.ReadLine{
					readLine("line 5", "320 g strong white flour", views.LineRow{Measure: "320 g", Food: "strong white flour"}),
					readLine("line 6", "120g wholegrain rye flour", views.LineRow{Measure: "120 g", Food: "wholegrain rye flour"}),
					readLine("line 7", "1 packet (6 g) instant dried yeast", views.LineRow{Measure: "6 g", Food: "instant dried yeast", Small: "1 packet"}),
					readLine("line 8", "9 g fine salt", views.LineRow{Measure: "9 g", Food: "fine salt"}),
					readLine("line 9", "290 ml buttermilk, at room temperature", views.LineRow{Measure: "290 mL", Food: "buttermilk", After: ", at room temperature"}),
					openLine("line 10", "2 knobs of butter, soft", views.LineRow{Measure: "2 knobs", Food: "butter", After: ", soft", Question: "a knob is not a measure we know. How much?"}),
				},
				Steps: []views.ReadStep{
					{HandsOn: true, StepRow: views.StepRow{Minutes: "9–11 min", Station: "mixer", Words: views.Words("Mix on low and knead "), Cue: "until the dough clears the bowl"}},
					{StepRow: views.StepRow{Minutes: "75 min", Station: "waits", Words: views.Words("Cover and leave "), Cue: "until it springs back slowly"}},
					{StepRow: views.StepRow{Minutes: "18–20 min", Station: "oven", Words: []views.Run{{Text: "Bake at "}, {Text: "210 °C", Heat: true}, {Text: " ("}, {Text: "200 °C fan", Heat: true}, {Text: ")"}}, Wrong: "the fan figure given is only 10 °C lower. 190 °C?"}},
				},
			},
			{
				Name: "Smoked butter",
				Lines: []views.ReadLine{
					correctedLine("line 13", "150 g unsalted butter", views.LineRow{Measure: "150 g", Food: "unsalted butter"}),
					readLine("line 14", "1 to 2 tsp smoked salt, to taste", views.LineRow{Measure: "1–2 tsp", Food: "smoked salt", After: ", to taste"}),
				},
			},
		},
		Credits: []string{"Adapted from the galley book of the breakfast boat."},
		Unread:  []views.UnreadRow{{Number: "line 15", Text: "(see over!!)", Reason: "neither an ingredient nor a step"}},
	}
}

func readLine(number, text string, row views.LineRow) views.ReadLine {
	return views.ReadLine{
		LineRow: row, Number: number, Text: text,
		Correction: &views.Correction{
			ID: "line-" + number[5:], Action: "/recipes/9/corrections", Line: text,
			Amount: row.Measure, Food: row.Food,
		},
	}
}

func openLine(number, text string, row views.LineRow) views.ReadLine {
	l := readLine(number, text, row)
	l.Correction.Open = true
	l.Correction.Preparation = "soft"
	l.Correction.Error = "“2 knob” is no amount. Write it with a measure we know, such as 30 g."
	return l
}

func correctedLine(number, text string, row views.LineRow) views.ReadLine {
	l := readLine(number, text, row)
	l.Corrected = true
	l.Correction.Forget = "/recipes/9/corrections/forget"
	return l
}

func compare() views.ComparePage {
	return views.ComparePage{
		Page: page("Rye knots: what changed", views.SectionRecipes), Name: "Rye knots", Path: "/recipes/9", Action: "/recipes/9/changes",
		Versions: []views.Option{{Value: "1", Label: "version 1"}, {Value: "2", Label: "version 2"}, {Value: "3", Label: "version 3"}, {Value: "4", Label: "version 4"}},
		From:     "3", To: "4", Note: "More buttermilk, longer first rest.",
		Summary: "2 changed, 1 added, 1 taken out",
		Groups: []views.ChangeGroup{
			{Title: "Dough", Rows: []views.ChangeRow{
				{Change: views.Same, Before: changed("320 g", false, "strong white flour")},
				{Change: views.Same, Before: changed("120 g", false, "wholegrain rye flour")},
				{Change: views.Changed, Before: changed("270 mL", true, "buttermilk, at room temperature"), After: changed("290 mL", true, "buttermilk, at room temperature")},
				{Change: views.TakenOut, Before: changed("1 tsp", false, "malt extract")},
				{Change: views.Added, After: changed("2 knobs", false, "butter, soft")},
			}},
			{Title: "Dough, method", Rows: []views.ChangeRow{
				{
					Change: views.Changed,
					Before: views.ChangeText{Measure: "60 min", NewMeasure: true, Words: []views.Run{{Text: "Cover and leave until "}, {Text: "doubled", New: true}, {Text: "."}}},
					After:  views.ChangeText{Measure: "75 min", NewMeasure: true, Words: []views.Run{{Text: "Cover and leave until "}, {Text: "it springs back slowly", New: true}, {Text: "."}}},
				},
			}},
		},
	}
}

func changed(measure string, differs bool, words string) views.ChangeText {
	return views.ChangeText{Measure: measure, NewMeasure: differs, Words: views.Words(words)}
}
