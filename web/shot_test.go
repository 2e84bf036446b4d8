package web_test

import (
	"net/url"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/recipe"
	"benchproof/views"
	"benchproof/web"
)

// twoParts has two steps of a part without a name and one of "3 Herbs, dried".
var twoParts = recipe.Recipe{Components: []recipe.Component{
	{Steps: []recipe.Step{{Text: "Rub in the butter."}, {Text: strings.Repeat("Knead and fold. ", 20)}}},
	{Name: "3 Herbs, dried", Steps: []recipe.Step{{Text: "Crush."}}},
}}

func shotDesk(r recipe.Recipe) *web.Desk {
	return web.NewDesk(newShow(), episode.Episode{ID: 7, Title: "Scones"}, "Scones", r)
}

func TestStepOptions(t *testing.T) {
	got := web.StepOptions(shotDesk(twoParts))
	if len(got) != 4 {
		t.Fatalf("%d options, want 4", len(got))
	}
	for i, want := range []views.Option{
		{Value: "", Label: "the whole episode"},
		{Value: "1 ", Label: "Step 1: Rub in the butter."},
		{Value: "2 "},
		{Value: "1 3 Herbs, dried", Label: "3 Herbs, dried, step 1: Crush."},
	} {
		if got[i].Value != want.Value || (want.Label != "" && got[i].Label != want.Label) {
			t.Errorf("option %d = %+v, want %+v", i, got[i], want)
		}
	}
	if label := got[2].Label; len(label) > 80 || !strings.HasSuffix(label, "…") {
		t.Errorf("a long step is offered as %q", label)
	}
	if got := web.StepOptions(shotDesk(recipe.Recipe{})); len(got) != 1 {
		t.Errorf("without a recipe: %+v", got)
	}
}

// Every choice offered must be read back as the step it names.
func TestAStepChosenIsReadBack(t *testing.T) {
	for _, option := range web.StepOptions(shotDesk(twoParts)) {
		form := web.NewTyped(url.Values{"title": {"x"}, "kind": {"hero"}, "status": {"got"}, "step": {option.Value}})
		var shot episode.Shot
		web.ReadShot(form, &shot)
		if err := form.Err(); err != nil {
			t.Fatalf("%q: %v", option.Value, err)
		}
		if got := web.ShotValues(nil, shot)["step"]; got != option.Value {
			t.Errorf("%q is read as step %d of %q and shown as %q", option.Value, shot.Step, shot.Component, got)
		}
	}
}

func TestReadShotRefusesAStepThatIsNone(t *testing.T) {
	for _, step := range []string{"x", "0 Dough", "-1 Dough", "Dough 1", "1.5 Dough"} {
		form := web.NewTyped(url.Values{"title": {"x"}, "kind": {"hero"}, "status": {"got"}, "step": {step}})
		var shot episode.Shot
		web.ReadShot(form, &shot)
		if got := faultField(form.Err()); got != "step" {
			t.Errorf("step %q: fault on %q, want it on step", step, got)
		}
	}
}

func TestStepName(t *testing.T) {
	for _, c := range []struct {
		component string
		step      int
		want      string
	}{{"Dough", 3, "Dough, step 3"}, {"", 3, "Step 3"}, {"Dough", 0, "Dough"}, {"", 0, ""}} {
		if got := web.StepName(c.component, c.step); got != c.want {
			t.Errorf("StepName(%q, %d) = %q, want %q", c.component, c.step, got, c.want)
		}
	}
}

func TestShotsStandBySetupInTheOrderSetupsFirstCome(t *testing.T) {
	shots := []episode.Shot{
		{ID: 1, Title: "pour", Setup: "overhead", Status: episode.Got},
		{ID: 2, Title: "crumb", Setup: "", Status: episode.Missing},
		{ID: 3, Title: "fold", Setup: "overhead", Status: episode.Got, Component: "3 Herbs, dried", Step: 1},
		{ID: 4, Title: "steam", Setup: "window", Status: episode.Retake},
		{ID: 5, Title: "crust", Setup: "", Status: episode.Got},
	}
	sheet := web.NewShotsSheet(shotDesk(twoParts), shots)
	var got []string
	for _, setup := range sheet.Setups {
		var titles []string
		for _, shot := range setup.Shots {
			titles = append(titles, shot.Title)
		}
		got = append(got, setup.Name+": "+strings.Join(titles, ", ")+"; "+setup.Left)
	}
	want := []string{"overhead: pour, fold; all got", "no setup yet: crumb, crust; 1 to shoot", "window: steam; 1 to shoot"}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("setups (-want +got):\n%s", diff)
	}
	if sheet.Got != "3 of 5 got" {
		t.Errorf("got %q", sheet.Got)
	}
	first, last := sheet.Setups[0].Shots[0], sheet.Setups[1].Shots[1]
	if first.UpAction != "" || first.DownAction == "" || last.DownAction != "" || last.UpAction == "" {
		t.Errorf("the first moves %q %q, the last %q %q", first.UpAction, first.DownAction, last.UpAction, last.DownAction)
	}
	if first.Wanted != "missing" || sheet.Setups[2].Shots[0].Wanted != "got" {
		t.Errorf("a press asks for %q of one that is got, %q of a retake", first.Wanted, sheet.Setups[2].Shots[0].Wanted)
	}
	if step := sheet.Setups[0].Shots[1].Step; step != "3 Herbs, dried, step 1" {
		t.Errorf("the fold shows %q", step)
	}
}

func TestUncovered(t *testing.T) {
	herbs := episode.Shot{Component: "3 Herbs, dried", Step: 1}
	one, two := episode.Shot{Step: 1}, episode.Shot{Step: 2}
	for _, c := range []struct {
		name     string
		shots    []episode.Shot
		without  string
		coverage string
	}{
		{"no shot", nil, "Step 1|Step 2|3 Herbs, dried, step 1", "3 of 3 steps have no shot"},
		{"a shot of no step", []episode.Shot{{}}, "Step 1|Step 2|3 Herbs, dried, step 1", "3 of 3 steps have no shot"},
		{"two left", []episode.Shot{one}, "Step 2|3 Herbs, dried, step 1", "2 of 3 steps have no shot"},
		{"one left", []episode.Shot{one, herbs}, "Step 2", "1 of 3 steps has no shot"},
		{"a step of another part counts not", []episode.Shot{one, two, {Component: "Dough", Step: 1}}, "3 Herbs, dried, step 1", "1 of 3 steps has no shot"},
		{"all", []episode.Shot{one, two, herbs}, "", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			without, coverage := web.Uncovered(shotDesk(twoParts), c.shots)
			var names []string
			for _, link := range without {
				names = append(names, link.Text)
			}
			if strings.Join(names, "|") != c.without || coverage != c.coverage {
				t.Errorf("without %q, %q, want %q, %q", names, coverage, c.without, c.coverage)
			}
		})
	}
	without, _ := web.Uncovered(shotDesk(twoParts), []episode.Shot{one, two})
	if want := "/episodes/7/shots?step=1+3+Herbs%2C+dried#shot"; without[0].Path != want {
		t.Errorf("a shot for it is added at %q, want %q", without[0].Path, want)
	}
}

func TestShotMark(t *testing.T) {
	for status, want := range map[episode.ShotStatus]views.MarkKind{episode.Got: views.MarkProved, episode.Retake: views.MarkWrong, episode.Missing: views.MarkLook} {
		if got := web.ShotMark(status); got.Kind != want || got.Text != string(status) {
			t.Errorf("ShotMark(%q) = %+v, want %q", status, got, want)
		}
	}
	if got := web.LeftToShoot(nil); got != "all got" {
		t.Errorf("a setup without shots: %q", got)
	}
}
