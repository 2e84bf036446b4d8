package release_test

import (
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/release"
)

// larder holds the weights that the two measures of a line need. SR26: bread
// flour 20083 cup 137 g, honey 19296 cup 339 g.
func larder() *food.Larder {
	cup := func(grams int64) []food.Weight {
		return []food.Weight{{Unit: measure.Cup, Grams: measure.Whole(grams), Source: "USDA SR"}}
	}
	return food.NewLarder([]food.Food{
		{ID: "bread-flour", Name: "bread flour", Weights: cup(137)},
		{ID: "honey", Name: "honey", Weights: cup(339)},
	})
}

func line(id, name, n string, u measure.Unit) recipe.Line {
	l := recipe.Line{Text: n + " " + string(u) + " " + name, Read: true, Food: name, FoodID: id}
	if n != "" {
		l.Amount, l.HasAmount = measure.Of(measure.MustNumber(n), u), true
	} else {
		l.Text, l.ToTaste = name+", to taste", true
	}
	return l
}

func step(text, station string, minutes int64, handsOn bool) recipe.Step {
	return recipe.Step{Text: text, Station: station, Minutes: measure.Between(measure.Whole(minutes-1), measure.Whole(minutes)), HasMinutes: minutes > 0, HandsOn: handsOn}
}

// full is an input with every part.
func full() release.Input {
	return release.Input{
		Show: episode.Show{
			Name: "Ferry Stop Kitchen", Host: "Ottoline Brack", System: measure.Metric, DescriptionLimit: 5000,
			Disclosure: "Nobody paid for this video.", Links: "Cards: https://ferrystop.example\nLetters: letters@ferrystop.example",
		},
		Episode: episode.Episode{
			Title: "Episode 31", Dish: "rye knots", ReleaseOn: time.Date(2026, 3, 14, 0, 0, 0, 0, time.UTC),
			InspiredBy: "the buns on the Candle Point pier", InspiredURL: "https://candlepoint.example",
		},
		Release: episode.Release{
			Title: "Candle Point knots", Opening: "Sixteen knots, one tray, no hurry.", Equipment: "a mixer\n\n two trays ", Credits: "Edited by nobody in particular",
			Disclosure: "The trays were lent.", VideoURL: "https://video.example/w/31",
		},
		Recipe: recipe.Recipe{
			Title: "Knots", Credits: []string{"Adapted from the harbour bakery’s tray buns"}, Equipment: []string{"a bowl"},
			Components: []recipe.Component{
				{Name: "Dough", Lines: []recipe.Line{line("bread-flour", "bread flour", "500", measure.Gram), line("", "large eggs", "2", measure.Each), {Text: "a lump of <good> butter"}},
					Steps: []recipe.Step{step("Knead until smooth.", "mixer", 12, true), step("Prove until puffy.", "waits", 60, false)}},
				{Name: "Honey butter", Lines: []recipe.Line{line("honey", "honey", "42", measure.Gram), line("", "salt", "", measure.Each)},
					Steps: []recipe.Step{step("Bake until gold.", "oven", 17, false), step("Brush.", "bench", 0, true)}},
			},
		},
		Makes:       "makes 16 knots",
		Larder:      larder(),
		Chapters:    []release.Chapter{{At: 0, Title: "The pier"}, {At: 65, Title: "Dough"}, {At: 3725, Title: "Supper"}},
		Allergens:   []string{"wheat", "milk", "eggs"},
		MayHold:     []string{"soya"},
		Unsure:      []string{"a lump of good butter"},
		Cautions:    []string{"Flour is a raw food.", "Flour is a raw food."},
		Corrections: []episode.Correction{{At: 252, Said: "200 degrees", Right: "190 °C, 170 °C fan."}},
		PageURL:     "https://ferrystop.example/s/7Q2mXo4bTz",
		Language:    "en",
	}
}

func TestInputTitle(t *testing.T) {
	tests := []struct {
		name string
		in   release.Input
		want string
	}{
		{"the release's", full(), "Candle Point knots"},
		{"the recipe's", release.Input{Recipe: recipe.Recipe{Title: "Knots"}, Episode: episode.Episode{Title: "Episode 31"}}, "Knots"},
		{"the episode's", release.Input{Release: episode.Release{Title: " "}, Episode: episode.Episode{Title: "Episode 31", Dish: "buns"}}, "Episode 31"},
		{"the dish", release.Input{Episode: episode.Episode{Dish: "buns"}}, "buns"},
		{"none", release.Input{}, ""},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			if got := test.in.Title(); got != test.want {
				t.Errorf("Title = %q, want %q", got, test.want)
			}
		})
	}
}

func TestInputLists(t *testing.T) {
	in := full()
	in.Release.Credits += "\nAdapted from the harbour bakery’s tray buns"
	credits := []string{"Inspired by the buns on the Candle Point pier: https://candlepoint.example", "Adapted from the harbour bakery’s tray buns", "Edited by nobody in particular"}
	if diff := cmp.Diff(credits, in.Credits()); diff != "" {
		t.Errorf("Credits (-want +got):\n%s", diff)
	}
	if diff := cmp.Diff([]string{"Nobody paid for this video.", "The trays were lent."}, in.Disclosures()); diff != "" {
		t.Errorf("Disclosures (-want +got):\n%s", diff)
	}
	if diff := cmp.Diff([]string{"a mixer", "two trays"}, in.Equipment()); diff != "" {
		t.Errorf("Equipment (-want +got):\n%s", diff)
	}
	in.Release.Equipment = "\n"
	if diff := cmp.Diff([]string{"a bowl"}, in.Equipment()); diff != "" {
		t.Errorf("Equipment of the recipe (-want +got):\n%s", diff)
	}
}
