package coverage_test

import (
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/coverage"
	"benchproof/kitchen/episode"
	"benchproof/kitchen/recipe"
)

func TestDraftOfAnEmptyList(t *testing.T) {
	r := read(t, tart)
	want := []episode.Shot{
		{Title: "The ingredients laid out", Kind: "overhead", Layout: true, Status: episode.Missing},
		{Title: "Rub the butter into the flour", Kind: "overhead", Component: "Pastry", Step: 1, Status: episode.Missing},
		{Title: "Chill for 30 minutes", Kind: "insert", Component: "Pastry", Step: 2, Status: episode.Missing},
		{Title: "Until golden all over", Kind: "close-up", Component: "Pastry", Step: 3, Status: episode.Missing},
		{Title: "Until thick enough to hold a trail", Kind: "close-up", Component: "Cream", Step: 1, Status: episode.Missing},
		{Title: "Spread the cream in the pastry and chill for 2 hours", Kind: "insert", Component: "Cream", Step: 2, Status: episode.Missing},
		{Title: "The finished dish", Kind: "hero", Status: episode.Missing},
	}
	if diff := cmp.Diff(want, coverage.Of(r, nil).Draft(r)); diff != "" {
		t.Errorf("Draft (-want +got):\n%s", diff)
	}
}

func TestDraftOfWhatIsLeft(t *testing.T) {
	r := read(t, tart)
	there := []episode.Shot{layout("Pastry"), of("Pastry", 1, "overhead", ""), of("Pastry", 2, "wide", ""), of("Pastry", 3, "wide", ""), of("Cream", 1, "insert", ""), whole("hero", "")}
	var titles []string
	for _, shot := range coverage.Of(r, there).Draft(r) {
		titles = append(titles, shot.Title)
	}
	want := []string{"Cream: the ingredients laid out", "Until golden all over", "Spread the cream in the pastry and chill for 2 hours"}
	if diff := cmp.Diff(want, titles); diff != "" {
		t.Errorf("titles (-want +got):\n%s", diff)
	}
	if drafted := coverage.Of(r, append(there, coverage.Of(r, there).Draft(r)...)).Draft(r); drafted != nil {
		t.Errorf("a second draft adds %+v", drafted)
	}
}

// With what is drafted nothing is left out, whatever was there, and each shot is
// one that the list can hold.
func TestDraftLeavesNothingOut(t *testing.T) {
	recipes := map[string]string{
		"tart": tart, "nothing": "", "no steps": "Salad\n\n1 lettuce\n", "no ingredients": "Toast\n\nMethod\nToast it until golden.\n",
		"one method": "Pie\n\nCrust:\n200 g flour\n\nFilling:\n300 g apples\n\nMethod\nRub the flour with water until fine.\nBake for 40 minutes.\n",
	}
	lists := map[string][]episode.Shot{
		"no shots": nil, "a wide of everything": {of("Pastry", 1, "wide", ""), of("Pastry", 3, "wide", ""), of("", 1, "wide", "")},
		"a layout": {layout("Cream")}, "a hero": {of("Crust", 0, "hero", "")}, "what is gone": {of("Glaze", 4, "insert", "")},
	}
	for name, text := range recipes {
		r := read(t, text)
		for list, shots := range lists {
			drafted := coverage.Of(r, shots).Draft(r)
			if left := coverage.Of(r, slices.Concat(shots, drafted)); !left.IsWhole() {
				t.Errorf("%s, %s: left out is %+v", name, list, left)
			}
			for _, shot := range drafted {
				if shot.Title == "" || !slices.Contains(episode.ShotKinds, shot.Kind) || shot.Status != episode.Missing {
					t.Errorf("%s, %s: drafted %+v", name, list, shot)
				}
				if _, ok := coverage.TieOf(r, shot); !ok {
					t.Errorf("%s, %s: tied to nothing: %+v", name, list, shot)
				}
			}
		}
	}
}

func TestStepShotTitle(t *testing.T) {
	long := "Whisk " + strings.Repeat("gently ", 12) + "all the while"
	for _, c := range []struct{ text, cue, want string }{
		{"Knead.", "", "Knead"},
		{"Pour in 1.2 litres of the stock, scraping the pan.", "", "Pour in 1.2 litres of the stock"},
		{"Set the oven to 150 °C, 130 °C fan.", "", "Set the oven to 150 °C"},
		{"Rest; then fold.", "", "Rest"},
		{"Cook at 12:30", "", "Cook at 12:30"},
		{"Bake, until golden.", "until golden", "Until golden"},
		{"Reduce, écume on top", "écume on top", "Écume on top"},
		{". Odd", "", ". Odd"},
		{"", "", ""},
		{long, "", "Whisk gently gently gently gently gently gently gently…"},
		{strings.Repeat("x", 70), "", strings.Repeat("x", 60) + "…"},
	} {
		r := recipe.Recipe{Components: []recipe.Component{{Name: "Dough", Steps: []recipe.Step{{}, {Text: c.text, Cue: c.cue, HandsOn: true}}}}}
		got := coverage.StepShot(r, at(0, 1))
		if got.Title != c.want || got.Component != "Dough" || got.Step != 2 {
			t.Errorf("StepShot(%q) = %+v, want the title %q", c.text, got, c.want)
		}
		if !utf8.ValidString(got.Title) {
			t.Errorf("StepShot(%q) has a broken title %q", c.text, got.Title)
		}
	}
}
