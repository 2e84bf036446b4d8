package specimen

import "benchproof/views"

func recipes() views.RecipesPage {
	return views.RecipesPage{
		Page: page("Recipes", views.SectionRecipes), NewPath: "/recipes/new",
		Search: searchForm("/recipes", "Find", "", "Find a recipe"),
		Rows: []views.RecipeRow{
			{Version: "v1", Name: "Galley pickles", Path: "/recipes/12", Small: "makes 2 jars · changed 19 Jan"},
			{Version: "v4", Name: "Rye knots", Path: "/recipes/9", Small: "makes 16 knots · changed 2 Mar", Marks: []views.Mark{{Kind: views.MarkProved, Text: "proved"}}, UsedIn: []views.Link{{Text: "Ep 31", Path: "/episodes/31/recipe"}}},
			{Version: "v2", Name: "Two Herons custard slice", Path: "/recipes/10", Small: "makes 12 slices · changed 27 Feb", Marks: []views.Mark{{Kind: views.MarkLook, Text: "1 line not read"}}, UsedIn: []views.Link{{Text: "Ep 32", Path: "/episodes/32/recipe"}, {Text: "Ep 12", Path: "/episodes/12/recipe"}}},
		},
	}
}

func searchForm(action, label, value, placeholder string) views.Form {
	return views.Form{
		ID: "search", Action: action, Get: true, Submit: "Find",
		Fields: []views.Field{{Name: "q", Label: label, Value: value, Placeholder: placeholder}},
	}
}

func larder() views.LarderPage {
	return views.LarderPage{
		Page: page("Larder", views.SectionLarder), Search: searchForm("/larder", "Find", "flour", "A food by any of its names"),
		Found: "5 foods for “flour”",
		Aisles: []views.Choice{
			{Text: "All aisles", Path: "/larder", Current: true}, {Text: "Dairy and eggs", Path: "/larder?aisle=Dairy+and+eggs"},
			{Text: "Baking", Path: "/larder?aisle=Baking"}, {Text: "Flours and grains", Path: "/larder?aisle=Flours+and+grains"},
			{Text: "Sugars and syrups", Path: "/larder?aisle=Sugars+and+syrups"}, {Text: "Nuts, seeds and dried fruit", Path: "/larder?aisle=Nuts"},
		},
		Groups: []views.LarderGroup{{Aisle: "Flours and grains", Foods: []views.FoodRow{
			{Measure: "137 g", Of: "a cup", Name: "bread flour", Path: "/larder/bread-flour", Names: "strong white flour, strong flour"},
			{Measure: "125 g", Of: "a cup", Name: "plain flour", Path: "/larder/plain-flour", Names: "all-purpose flour, AP flour"},
			{Measure: "102 g", Of: "a cup", Name: "rye flour", Path: "/larder/rye-flour", Names: "medium rye"},
			{Measure: "120 g", Of: "a cup", Name: "wholemeal flour", Path: "/larder/wholemeal-flour", Names: "whole wheat flour"},
			{Measure: "", Name: "spelt flour", Path: "/larder/spelt-flour"},
		}}},
	}
}

func food() views.FoodPage {
	return views.FoodPage{
		Page: page("bread flour: Larder", views.SectionLarder), Name: "bread flour", Aisle: "Flours and grains", Path: "/larder",
		Names: []string{"strong white flour", "strong flour", "bread-making flour"},
		Weights: []views.WeightRow{
			{Grams: "137 g", Of: "1 cup (US, 236.6 mL)", Source: "USDA SR 20083"},
			{Grams: "8.6 g", Of: "1 tbsp (US, 14.8 mL)", Source: "from the cup"},
		},
		Nutrients: []views.Figure{
			{Value: "361 kcal", Label: "energy"}, {Value: "13.4 g", Label: "water"}, {Value: "12 g", Label: "protein"}, {Value: "1.7 g", Label: "fat"},
			{Value: "72.5 g", Label: "carbohydrate"}, {Value: "2 mg", Label: "sodium"}, {Value: "–", Label: "sugars, not known"},
		},
		Allergens: "wheat (gluten)", Source: "USDA SR 20083", Stock: breadFlourStock(), Packs: breadFlourPacks(),
		UsedIn: []views.Link{{Text: "Rye knots", Path: "/recipes/9"}},
		AliasForm: views.Form{
			ID: "alias", Title: "Another name", Action: "/larder/bread-flour/names", Submit: "Add name",
			Fields: []views.Field{{Name: "name", Label: "Also called"}},
		},
	}
}

func breadFlourPacks() *views.FoodEntries {
	return &views.FoodEntries{
		Rows: []views.FoodEntry{
			{Measure: "1.5 kg", Text: "$3.90", Small: "$2.60 a kg", Of: "the pack of 1.5 kg", EditPath: "/larder/bread-flour?change=pack-1#pack", DeleteAction: "/larder/bread-flour/packs/1/delete"},
			{Measure: "5 kg", Text: "no price", Of: "the pack of 5 kg", EditPath: "/larder/bread-flour?change=pack-2#pack", DeleteAction: "/larder/bread-flour/packs/2/delete"},
		},
		Form: packForm(),
	}
}

func packForm() views.Form {
	return views.Form{
		ID: "pack", Title: "Add pack", Action: "/larder/bread-flour/packs", Submit: "Add pack", Guard: true,
		Fields: []views.Field{
			{Name: "amount", Label: "Pack of", Required: true, Hint: "What one of them holds. Usual: 1 kg bag, 1.5 kg bag."},
			{Name: "price", Label: "Price", Kind: views.FieldDecimal, Unit: "NZD", Hint: "Leave it empty if you do not know it."},
		},
	}
}

func breadFlourStock() *views.FoodEntries {
	return &views.FoodEntries{
		Rows: []views.FoodEntry{
			{Measure: "400 g", Text: "use by 1 Mar", Mark: views.Mark{Kind: views.MarkLook, Text: "past its date: not counted. Throw it out or correct the date"}, Of: "400 g in the larder", EditPath: "/larder/bread-flour?change=stock-2#stock", DeleteAction: "/larder/bread-flour/stock/2/delete"},
			{Measure: "1.2 kg", Text: "use by 30 Jun", Of: "1.2 kg in the larder", EditPath: "/larder/bread-flour?change=stock-1#stock", DeleteAction: "/larder/bread-flour/stock/1/delete"},
		},
		Form: views.Form{
			ID: "stock", Title: "Add stock", Action: "/larder/bread-flour/stock", Submit: "Add stock", Guard: true,
			Fields: []views.Field{
				{Name: "amount", Label: "Amount", Required: true, Hint: "What is there: 200 g, 1.5 kg, 1 L, 6."},
				{Name: "useby", Label: "Use by", Kind: views.FieldDate, Hint: "The last day it may be used, from the pack. Leave it empty if there is none."},
			},
		},
	}
}

// foodRefused has nothing noted yet, and a first price that was refused.
func foodRefused() views.FoodPage {
	p := food()
	p.Packs = &views.FoodEntries{Empty: "No packs are noted. With packs and prices the shopping list says what to buy and what it costs.", Form: packForm()}
	p.Packs.Form.Fields[0].Value = "1.5 kg"
	p.Packs.Form.Fields[1].Value, p.Packs.Form.Fields[1].Error = "four", "“four” is not a price in NZD. Write it like 2.49."
	p.Stock = &views.FoodEntries{Empty: "None is noted. What is in the larder is taken off the shopping list.", Form: breadFlourStock().Form}
	return p
}

// yolk is bought as another food.
func yolk() views.FoodPage {
	return views.FoodPage{
		Page: page("egg yolk: Larder", views.SectionLarder), Name: "egg yolk", Aisle: "Dairy and eggs", Path: "/larder",
		BoughtAs: views.Link{Text: "egg", Path: "/larder/egg"}, Allergens: "egg",
		Weights: []views.WeightRow{{Grams: "17 g", Of: "1 large", Source: "USDA SR 01125"}},
	}
}

func pitches() views.PitchesPage {
	return views.PitchesPage{
		Page: page("Pitches", views.SectionPitches),
		Rows: []views.PitchRow{
			{Times: "7 ×", Dish: "The custard slice from Two Herons", From: "Mirel and others, under episode 12", Note: "They remember a burnt sugar top. Nobody agrees on the pastry.", Episode: views.Link{Text: "became Ep 32", Path: "/episodes/32/brief"}, EditPath: "/pitches?edit=1", DeleteAction: "/pitches/1/delete"},
			{Times: "3 ×", Dish: "Fried mackerel with gooseberries", From: "in person, on the quay", MakeAction: "/pitches/2/episode", EditPath: "/pitches?edit=2", DeleteAction: "/pitches/2/delete"},
		},
		Form: views.Form{
			ID: "pitch", Title: "Add a pitch", Action: "/pitches", Submit: "Add pitch",
			Fields: []views.Field{
				{Name: "dish", Label: "Dish", Required: true}, {Name: "who", Label: "Who asked"}, {Name: "place", Label: "Where", Placeholder: "a comment, a letter, in person"},
				{Name: "times", Label: "How often", Kind: views.FieldWhole, Value: "1", Unit: "times"}, {Name: "note", Label: "Note", Kind: views.FieldArea},
			},
		},
	}
}

func show() views.ShowPage {
	return views.ShowPage{
		Page: page("Show settings", views.SectionShow),
		Form: views.Form{
			ID: "show", Action: "/show", Revision: 2, Submit: "Save settings", Guard: true,
			Fields: []views.Field{
				{Name: "name", Label: "Name", Value: showName, Required: true},
				{Name: "host", Label: "Host", Value: "Odile", Hint: "Who cooks and speaks."},
				{Name: "system", Label: "House measures", Kind: views.FieldSelect, Value: "metric", Options: []views.Option{{Value: "metric", Label: "metric, cup 250 mL"}, {Value: "us", Label: "US, cup 236.6 mL"}}},
				{Name: "oven", Label: "Oven", Kind: views.FieldSelect, Value: "fan", Options: []views.Option{{Value: "fan", Label: "fan"}, {Value: "conventional", Label: "conventional"}}},
				{Name: "time_zone", Label: "Time zone", Value: "Pacific/Auckland"},
				{Name: "currency", Label: "Currency", Value: "NZD"},
				{Name: "pace", Label: "Pace", Kind: views.FieldWhole, Value: "150", Unit: "words a minute"},
				{Name: "limit", Label: "Description limit", Kind: views.FieldWhole, Value: "5000", Unit: "characters"},
				{Name: "disclosure", Label: "Disclosure", Kind: views.FieldArea, Value: "Nobody pays for what is cooked here."},
				{Name: "links", Label: "Standing links", Kind: views.FieldArea, Hint: "Put at the end of every description."},
			},
		},
	}
}

func deleted() views.DeletedPage {
	return views.DeletedPage{
		Page: page("Recently deleted", views.SectionDeleted), Keep: "Deleted things are kept for 30 days.",
		Rows: []views.DeletedRow{
			{When: "5 Mar", What: "episode", Name: "Cinder Quay pepper buns", RestoreAction: "/deleted/4/restore"},
			{When: "2 Mar", What: "shot of Ep 31", Name: "Smoke against the window", RestoreAction: "/deleted/3/restore"},
		},
	}
}
