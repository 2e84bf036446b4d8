package web_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/recipe"
	"benchproof/views"
	"benchproof/web"
)

// burntCustard is a recipe of two named parts, each with a cue.
var burntCustard = recipe.Recipe{Components: []recipe.Component{
	{Name: "Caramel", Lines: []recipe.Line{{Text: "150 g sugar"}}, Steps: []recipe.Step{{Text: "Melt the sugar, until the colour of tea.", HandsOn: true, Cue: "until the colour of tea"}}},
	{Name: "Custard", Lines: []recipe.Line{{Text: "3 eggs"}}, Steps: []recipe.Step{
		{Text: "Stir the eggs.", HandsOn: true}, {Text: "Bake, until set at the edge.", Cue: "until set at the edge"},
		{Text: "Turn out.", HandsOn: true, Uses: []recipe.Use{{Component: 0, Line: -1}}},
	}},
}}

func custardShot(component string, step int, kind, setup string) episode.Shot {
	return episode.Shot{Title: fmt.Sprintf("%s %d, %s", component, step, kind), Kind: kind, Setup: setup, Component: component, Step: step, Status: episode.Missing}
}

// gaps tells a sheet's coverage: "2 of 4 steps without a shot: Custard, step 1 | …".
func gaps(sheet views.ShotsSheet) (all []string) {
	for _, row := range sheet.Coverage {
		var links []string
		for _, link := range row.Links {
			links = append(links, link.Text)
		}
		all = append(all, strings.TrimSpace(row.Measure+" "+row.Small)+" "+row.Text+" "+strings.Join(links, " | "))
	}
	return all
}

func TestCoverageRows(t *testing.T) {
	layout := custardShot("Custard", 0, "overhead", "")
	layout.Layout = true
	everything := []episode.Shot{
		custardShot("Caramel", 1, "insert", ""), custardShot("Custard", 1, "wide", ""), custardShot("Custard", 2, "close-up", ""), custardShot("Custard", 3, "hero", ""),
		{Title: "all", Kind: "overhead", Layout: true, Status: episode.Got},
	}
	for _, c := range []struct {
		name   string
		shots  []episode.Shot
		want   []string
		button string // of the press that adds what is missing
	}{
		{"nothing but a host", []episode.Shot{{Title: "hello", Kind: "piece to camera"}}, []string{
			"4 of 4 steps without a shot: Caramel, step 1 | Custard, step 1 | Custard, step 2 | Custard, step 3",
			"2 of 2 cues that nobody films: “until the colour of tea” (Caramel, step 1) | “until set at the edge” (Custard, step 2)",
			"layout Nothing shows the ingredients laid out: add a layout",
			"hero Nothing shows the finished dish: add a hero",
		}, "Add these 6 shots"},
		{"cues from too far away, one part laid out", []episode.Shot{custardShot("Caramel", 1, "wide", ""), custardShot("Custard", 1, "wide", ""), custardShot("Custard", 2, "wide", ""), custardShot("Custard", 3, "hero", ""), layout}, []string{
			"2 of 2 cues that nobody films: “until the colour of tea” (Caramel, step 1) | “until set at the edge” (Custard, step 2)",
			"layout The ingredients are not laid out of: Caramel",
		}, "Add these 3 shots"},
		{"only a layout left: its link is enough", everything[:4], []string{"layout Nothing shows the ingredients laid out: add a layout"}, ""},
		{"nothing left out", everything, nil, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			sheet := web.NewShotsSheet(shotDesk(burntCustard), c.shots)
			if diff := cmp.Diff(c.want, gaps(sheet)); diff != "" {
				t.Errorf("coverage (-want +got):\n%s", diff)
			}
			button := ""
			if sheet.Draft != nil {
				button = sheet.Draft.Button
				if sheet.Draft.Have != fmt.Sprint(len(c.shots)) || sheet.Draft.Action != "/episodes/7/shots/draft" {
					t.Errorf("the draft is %+v", sheet.Draft)
				}
			}
			if button != c.button || (sheet.Covered != "") != (c.want == nil) {
				t.Errorf("button %q, want %q; covered %q", button, c.button, sheet.Covered)
			}
		})
	}
}

// What is near enough to show the cue of its step says so.
func TestAShotSaysItsCue(t *testing.T) {
	shots := []episode.Shot{custardShot("Custard", 2, "close-up", "x"), custardShot("Custard", 2, "wide", "x"), custardShot("Custard", 1, "insert", "x"), custardShot("Custard", 0, "insert", "x"), {Title: "Until set at the edge", Kind: "insert", Setup: "x", Component: "Custard", Step: 2}}
	var cues []string
	for _, row := range web.NewShotsSheet(shotDesk(burntCustard), shots).Setups[0].Shots {
		cues = append(cues, row.Cue)
	}
	if diff := cmp.Diff([]string{"the cue: until set at the edge", "", "", "", ""}, cues); diff != "" {
		t.Errorf("cues (-want +got):\n%s", diff)
	}
}

// The cue of what bakes from 9:00 to 9:35 is there at 9:35.
func TestACueIsTimedByTheEndOfItsStep(t *testing.T) {
	bake := recipe.Position{Component: 1, Step: 1}
	shots := []episode.Shot{custardShot("Custard", 2, "close-up", "x"), {Title: "Until set at the edge", Kind: "insert", Setup: "x", Component: "Custard", Step: 2}, custardShot("Caramel", 1, "insert", "x")}
	sheet := web.PlannedUntil(shotDesk(burntCustard), shots, map[recipe.Position]int{bake: 540}, map[recipe.Position]int{bake: 575})
	var cues []string
	for _, row := range sheet.Setups[0].Shots {
		cues = append(cues, row.Clock+" "+row.Cue)
	}
	want := []string{"09:00 the cue about 09:35: until set at the edge", "09:00 the cue about 09:35", " the cue: until the colour of tea"}
	if diff := cmp.Diff(want, cues); diff != "" {
		t.Errorf("cues (-want +got):\n%s", diff)
	}
}

func TestEachGapLinksToTheShotThatFillsIt(t *testing.T) {
	sheet := web.NewShotsSheet(shotDesk(burntCustard), []episode.Shot{{Title: "hello", Kind: "piece to camera"}})
	for _, c := range []struct {
		row, link int
		want      string
	}{
		{0, 1, "/episodes/7/shots?kind=overhead&step=1+Custard&title=Stir+the+eggs#shot"},
		{1, 1, "/episodes/7/shots?kind=close-up&step=2+Custard&title=Until+set+at+the+edge#shot"},
		{2, 0, "/episodes/7/shots?kind=overhead&layout=yes&title=The+ingredients+laid+out#shot"},
		{3, 0, "/episodes/7/shots?kind=hero&title=The+finished+dish#shot"},
	} {
		if got := sheet.Coverage[c.row].Links[c.link].Path; got != c.want {
			t.Errorf("row %d leads to %s, want %s", c.row, got, c.want)
		}
	}
}

func TestAnEmptyListOffersADraft(t *testing.T) {
	sheet := web.NewShotsSheet(shotDesk(burntCustard), nil)
	if sheet.Draft == nil || sheet.Draft.Button != "Draft a shot list" || !strings.HasPrefix(sheet.Draft.Text, "6 shots from the recipe") {
		t.Errorf("draft %+v", sheet.Draft)
	}
	if none := web.NewShotsSheet(shotDesk(recipe.Recipe{}), nil); none.Draft != nil {
		t.Errorf("without a recipe it offers %+v", none.Draft)
	}
}

// facts tells what is said of the changes: "3 in the order of … ✓ …".
func facts(sheet views.ShotsSheet) (all []string) {
	for _, f := range sheet.Changes.Facts {
		all = append(all, strings.TrimSpace(f.Measure+" "+f.Text+" "+string(f.Mark.Kind)+" "+f.Mark.Text))
	}
	return all
}

func TestChangesOfSetupAreSaid(t *testing.T) {
	list := func(setups ...string) (shots []episode.Shot) {
		for i, at := range []struct {
			component string
			step      int
		}{{"Caramel", 1}, {"Custard", 1}, {"Custard", 2}, {"Custard", 3}} {
			if i < len(setups) {
				shots = append(shots, custardShot(at.component, at.step, "insert", setups[i]))
			}
		}
		return shots
	}
	for _, c := range []struct {
		name  string
		shots []episode.Shot
		want  []string
		note  string
	}{
		{"no setups", list("", ""), nil, ""},
		{"one setup", list("hob", "hob", "hob"), nil, ""},
		{"no better order", list("hob", "bench", "oven"), []string{"2 in the order of the list, as far as cooking allows it proved cooking allows no fewer"}, ""},
		{"a better order", list("hob", "bench", "hob", "table"),
			[]string{"3 in the order of the list, as far as cooking allows it", "2 in the order below proved cooking allows no fewer"}, ""},
		{"shots without a setup", append(list("hob", "bench"), custardShot("", 0, "hero", ""), custardShot("", 0, "wide", "")),
			[]string{"1 in the order of the list, as far as cooking allows it proved cooking allows no fewer"}, "Not counted: 2 shots that name no setup."},
	} {
		t.Run(c.name, func(t *testing.T) {
			sheet := web.NewShotsSheet(shotDesk(burntCustard), c.shots)
			if diff := cmp.Diff(c.want, facts(sheet)); diff != "" {
				t.Errorf("facts (-want +got):\n%s", diff)
			}
			if !strings.Contains(sheet.Changes.Note, c.note) {
				t.Errorf("note %q, want %q in it", sheet.Changes.Note, c.note)
			}
		})
	}
}

func TestABetterOrderIsShown(t *testing.T) {
	shots := []episode.Shot{custardShot("Caramel", 1, "insert", "hob"), custardShot("Custard", 1, "wide", "bench"), custardShot("Custard", 2, "insert", "hob"), custardShot("Custard", 3, "hero", "table")}
	sheet := web.NewShotsSheet(shotDesk(burntCustard), shots)
	want := []views.RunRow{
		{Number: "1", Setup: "bench", Shots: "Custard 1, wide"},
		{Number: "2", Setup: "hob", Shots: "Caramel 1, insert · Custard 2, insert"},
		{Number: "3", Setup: "table", Shots: "Custard 3, hero"},
	}
	if diff := cmp.Diff(want, sheet.Changes.Runs); diff != "" || sheet.Changes.Title != "An order with 2 changes" {
		t.Errorf("%q, runs (-want +got):\n%s", sheet.Changes.Title, diff)
	}
}

// In the order of a plan: caramel at 9:00, the eggs at 9:10, baked at 9:20.
func TestChangesInTheOrderOfADaysPlan(t *testing.T) {
	begins := map[recipe.Position]int{{Component: 0, Step: 0}: 540, {Component: 1, Step: 0}: 550, {Component: 1, Step: 1}: 560, {Component: 1, Step: 2}: 600}
	shots := []episode.Shot{custardShot("Caramel", 1, "insert", "hob"), custardShot("Custard", 2, "insert", "hob"), custardShot("Custard", 1, "wide", "bench")}
	want := []string{"2 in the order of the day’s plan", "1 in the order below proved cooking allows no fewer"}
	if diff := cmp.Diff(want, facts(web.PlannedShots(shotDesk(burntCustard), shots, begins))); diff != "" {
		t.Errorf("facts (-want +got):\n%s", diff)
	}
}

// A list too large to be proven says what is: 12 parts, each with its setups in
// an order of its own.
func TestChangesThatAreNotProven(t *testing.T) {
	var r recipe.Recipe
	var shots []episode.Shot
	turn := uint32(7)
	for i := range 12 {
		c := recipe.Component{Name: fmt.Sprint("Part ", i), Lines: []recipe.Line{{Text: "flour"}}}
		for k := range 12 {
			c.Steps = append(c.Steps, recipe.Step{Text: "Stir."})
			turn = turn*1664525 + 1013904223
			shots = append(shots, custardShot(c.Name, k+1, "insert", fmt.Sprint("setup ", int(turn>>16)%8)))
		}
		r.Components = append(r.Components, c)
	}
	got := facts(web.NewShotsSheet(shotDesk(r), shots))
	if len(got) != 2 || !strings.Contains(got[1], "look cooking allows no fewer than ") {
		t.Errorf("facts %q", got)
	}
}
