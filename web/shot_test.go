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

func TestTieOptions(t *testing.T) {
	got := web.TieOptions(shotDesk(twoParts))
	want := []views.Option{
		{Value: "", Label: "the whole episode"},
		{Value: "1 ", Label: "Step 1: Rub in the butter."},
		{Value: "2 "},
		{Value: "0 3 Herbs, dried", Label: "3 Herbs, dried, all of it"},
		{Value: "1 3 Herbs, dried", Label: "3 Herbs, dried, step 1: Crush."},
	}
	if len(got) != len(want) {
		t.Fatalf("%d options, want %d: %+v", len(got), len(want), got)
	}
	for i := range want {
		if got[i].Value != want[i].Value || (want[i].Label != "" && got[i].Label != want[i].Label) {
			t.Errorf("option %d = %+v, want %+v", i, got[i], want[i])
		}
	}
	if label := got[2].Label; len(label) > 80 || !strings.HasSuffix(label, "…") {
		t.Errorf("a long step is offered as %q", label)
	}
	if got := web.TieOptions(shotDesk(recipe.Recipe{})); len(got) != 1 {
		t.Errorf("without a recipe: %+v", got)
	}
}

func TestStepOptionsAreStepsAlone(t *testing.T) {
	var values []string
	for _, o := range web.StepOptions(shotDesk(twoParts)) {
		values = append(values, o.Value)
	}
	if diff := cmp.Diff([]string{"", "1 ", "2 ", "1 3 Herbs, dried"}, values); diff != "" {
		t.Errorf("steps (-want +got):\n%s", diff)
	}
}

// Every choice offered must be read back as what it names.
func TestATieChosenIsReadBack(t *testing.T) {
	for _, option := range web.TieOptions(shotDesk(twoParts)) {
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
	for _, step := range []string{"x", "0 ", "-1 Dough", "Dough 1", "1.5 Dough"} {
		form := web.NewTyped(url.Values{"title": {"x"}, "kind": {"hero"}, "status": {"got"}, "step": {step}})
		var shot episode.Shot
		web.ReadShot(form, &shot)
		if got := faultField(form.Err()); got != "step" {
			t.Errorf("step %q: fault on %q, want it on step", step, got)
		}
	}
}

// The title of a new shot ticks the box; on one that there is the box decides.
func TestReadShotLayout(t *testing.T) {
	for _, c := range []struct {
		name, title, box string
		id               int64
		want             bool
	}{
		{"new, ticked", "Flour", "yes", 0, true},
		{"new, the title says so", "All the ingredients", "", 0, true},
		{"new, neither", "Flour", "", 0, false},
		{"there, unticked against its title", "All the ingredients", "", 3, false},
		{"there, ticked", "Flour", "yes", 3, true},
	} {
		t.Run(c.name, func(t *testing.T) {
			form := web.NewTyped(url.Values{"title": {c.title}, "kind": {"overhead"}, "status": {"missing"}, "layout": {c.box}})
			shot := episode.Shot{ID: c.id, Layout: !c.want}
			web.ReadShot(form, &shot)
			if form.Err() != nil || shot.Layout != c.want {
				t.Errorf("layout %v, want %v (%v)", shot.Layout, c.want, form.Err())
			}
			if got := web.ShotValues(nil, shot)["layout"]; (got == "yes") != c.want {
				t.Errorf("shown as %q", got)
			}
		})
	}
}

func TestStepName(t *testing.T) {
	for _, c := range []struct {
		component string
		step      int
		want, on  string
	}{{"Dough", 3, "Dough, step 3", "Dough, step 3"}, {"", 3, "Step 3", "step 3"}, {"Dough", 0, "Dough", "Dough"}, {"", 0, "", ""}} {
		if got := web.StepName(c.component, c.step); got != c.want {
			t.Errorf("StepName(%q, %d) = %q, want %q", c.component, c.step, got, c.want)
		}
		if got := web.ReadOnStep(c.component, c.step); got != c.on {
			t.Errorf("ReadOnStep(%q, %d) = %q, want %q", c.component, c.step, got, c.on)
		}
	}
}

// What the recipe no longer has stays chosen: saving the form does not untie the
// shot.
func TestATieThatIsGoneStaysChosen(t *testing.T) {
	for _, c := range []struct{ value, offered string }{
		{"9 Dough", "Dough, step 9, which the recipe no longer has"},
		{"0 Glaze", "Glaze, which the recipe no longer has"},
		{"1 ", ""}, {"", ""}, {"0 3 Herbs, dried", ""}, {"nonsense", ""},
	} {
		form := views.Form{Fields: []views.Field{
			{Name: "step", Value: c.value, Options: web.TieOptions(shotDesk(twoParts))}, {Name: "setup"},
		}}
		before := len(form.Fields[0].Options)
		web.CompleteShotForm(&form, []string{"hob", "table"})
		options := form.Fields[0].Options
		last := options[len(options)-1]
		if c.offered == "" && len(options) != before || c.offered != "" && (last.Label != c.offered || last.Value != c.value) {
			t.Errorf("%q: the last option is %+v, want %q", c.value, last, c.offered)
		}
		if diff := cmp.Diff([]string{"hob", "table"}, form.Fields[1].Suggestions); diff != "" {
			t.Errorf("setups offered (-want +got):\n%s", diff)
		}
	}
}

func TestTheFormStandsFilledIn(t *testing.T) {
	s, path := filmedLoaf(t)
	shot := episode.Shot{Title: "Until it springs back & “sighs”", Kind: "insert", Step: 2, Layout: true, Status: episode.Missing}
	d := shotDesk(recipe.Recipe{Components: []recipe.Component{{Steps: make([]recipe.Step, 5)}}})
	d.SetEpisode(1)
	page := s.shows(web.AddShotPath(d, shot)[:strings.Index(web.AddShotPath(d, shot), "#")], "Add a shot")
	if got := value(t, page, "title"); got != "Until it springs back &amp; “sighs”" {
		t.Errorf("the title stands as %q", got)
	}
	for _, want := range []string{`<option value="insert" selected`, `<option value="2 " selected`, `name="layout" value="yes" checked`, `<option value="missing" selected`} {
		if !strings.Contains(page, want) {
			t.Errorf("the form lacks %s", want)
		}
	}
	if strings.Contains(s.get(path+"/shots?step=").body, "selected") && !strings.Contains(s.get(path+"/shots").body, "Add a shot") {
		t.Error("without anything asked for the form is not the usual one")
	}
}
