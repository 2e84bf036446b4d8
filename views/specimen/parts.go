package specimen

import "benchproof/views"

func parts() views.PartsPage {
	p := page("Parts", views.SectionNone)
	p.Flash = views.Flash{Text: "That could not be undone.", Wrong: true}
	return views.PartsPage{
		Page: p,
		Marks: []views.Mark{
			{Text: "plain"}, {Kind: views.MarkProved, Text: "proved"},
			{Kind: views.MarkLook, Text: "look at this"}, {Kind: views.MarkWrong, Text: "wrong"},
		},
		Choices: []views.Choice{{Text: "this one", Path: "#a", Current: true}, {Text: "that one", Path: "#b"}},
		Figures: []views.Figure{{Value: "819 g", Label: "dough"}, {Value: "–", Label: "not measured"}},
		Links:   []views.Link{{Text: "A link", Path: "#c"}, {Text: "Another", Path: "#d"}},
		Lines: []views.LineRow{
			{Measure: "320 g", Food: "strong white flour", After: ", sifted", Small: "2⅓ cups"},
			{Measure: "2 knobs", Food: "butter", Question: "a knob is not a measure we know. How much?"},
			{Measure: "40 kg", Food: "fine salt", Wrong: "more salt than flour"},
			{Food: "(see over!!)", NotRead: true, Question: "neither an amount nor a food we know"},
			{Food: "black pepper", After: ", to taste"},
			{Measure: "3–4½\u00a0stalks", Food: "celery", After: ", sliced"},
			{Measure: "1½\u00a0handfuls", Food: "parsley"},
		},
		Steps: []views.StepRow{
			{Minutes: "18–20 min", Station: "oven", Words: []views.Run{{Text: "Bake at "}, {Text: "210 °C", Heat: true}}, Cue: "until deep brown", Small: "on the middle shelf", Question: "how long on the second tray?", Wrong: "the pair disagrees"},
			{Minutes: "1\u00a0h–1\u00a0h\u00a015\u00a0min", Station: "waits", Words: views.Words("Cover and leave.")},
			{Words: views.Words("Serve.")},
		},
		Copy: "½ ⅓ ⅔ ⅛ → ✓ ✗ × – − ° é ō\nsecond line",
		Form: partsForm(), Folded: views.Form{
			ID: "folded", Title: "Folded away", Action: "#folded", Submit: "Add",
			Fields: []views.Field{{Name: "one", Label: "One field"}},
		},
		Open: []views.OpenLink{{Text: "say how much a knob is", Path: "#e"}},
	}
}

func partsForm() views.Form {
	two := []views.Option{{Value: "fan", Label: "fan"}, {Value: "conventional", Label: "conventional"}}
	return views.Form{
		ID: "parts", Title: "Every kind of field", Action: "#parts", Revision: 3, Submit: "Save",
		Problem: "Something about the whole is wrong too.", Cancel: "#parts",
		Buttons: []views.Button{{Text: "Save as new", Action: "#new"}, {Text: "Save and add", Name: "then", Value: "add"}},
		Fields: []views.Field{
			{Name: "text", Label: "Text", Value: "in one line", Required: true, Limit: 8, Hint: "Short is better."},
			{Name: "area", Label: "Area", Kind: views.FieldArea, Value: "\nfirst line left empty\n<b>not bold</b>", Error: "Two things are wrong here."},
			{Name: "plain", Label: "Plain", Kind: views.FieldPlain, Value: "00:01.000 --> 00:02.000"},
			{Name: "whole", Label: "Whole", Kind: views.FieldWhole, Value: "9", Unit: "minutes"},
			{Name: "decimal", Label: "Decimal", Kind: views.FieldDecimal, Value: "1½", Unit: "times", Hint: "Fractions too.", Error: "Above 0, such as 1½."},
			{Name: "date", Label: "Date", Kind: views.FieldDate, Value: "2027-03-14"},
			{Name: "select", Label: "Select", Kind: views.FieldSelect, Value: "conventional", Options: two},
			{Name: "check", Label: "Check this", Kind: views.FieldCheck, Value: "yes", Hint: "It is on.", Error: "It cannot be on."},
			{Name: "url", Label: "Address", Kind: views.FieldURL, Placeholder: "https://"},
			{Name: "password", Label: "Password", Kind: views.FieldPassword, Value: "never drawn", Autocomplete: "new-password"},
			{Name: "hidden", Kind: views.FieldHidden, Value: "sent"},
		},
	}
}
