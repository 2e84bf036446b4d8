package views_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/views"
)

// TestLineRow: what stands in the gutter, in which colour, and the words.
func TestLineRow(t *testing.T) {
	tests := []struct {
		name                    string
		line                    views.LineRow
		gutter, colour, reading string
	}{
		{"plain", views.LineRow{Measure: "320 g", Food: "flour", After: ", sifted", Small: "2⅓ cups"}, "320 g", "g", "flour, sifted 2⅓ cups"},
		{"no amount", views.LineRow{Food: "pepper", After: ", to taste"}, "", "g", "pepper, to taste"},
		{"to look at", views.LineRow{Measure: "2 knobs", Food: "butter", Question: "How much?"}, "2 knobs", "g look", "butter ? How much?"},
		{"wrong", views.LineRow{Measure: "40 kg", Food: "salt", Wrong: "more than the flour"}, "40 kg", "g wrong", "salt ✗ more than the flour"},
		{"wrong outweighs a question", views.LineRow{Measure: "1", Food: "egg", Question: "What size?", Wrong: "none in the method"}, "1", "g wrong", "egg ? What size? ✗ none in the method"},
		{"not read", views.LineRow{Food: "(see over!!)", NotRead: true, Question: "no food"}, "not read", "g look", "(see over!!) ? no food"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			doc := parse(t, views.RecipeLines(views.RecipeBody{Components: []views.ComponentBlock{{Lines: []views.LineRow{tt.line}}}}))
			list := byClass(doc, "lines")[0]
			gutter, reading := byClass(list, "g")[0], byClass(list, "w")[0]
			if got := words(gutter); got != tt.gutter {
				t.Errorf("gutter %q, want %q", got, tt.gutter)
			}
			if got := strings.TrimSuffix(attr(gutter, "class"), " figures-in"); got != tt.colour {
				t.Errorf("gutter's class %q, want %q", got, tt.colour)
			}
			if got := words(reading); got != tt.reading {
				t.Errorf("words %q, want %q", got, tt.reading)
			}
		})
	}
}

// TestRecipeHeadings: ingredients of every component first, then the method,
// headed by component only where there is more than one.
func TestRecipeHeadings(t *testing.T) {
	line, step := []views.LineRow{{Food: "salt"}}, []views.StepRow{{Words: views.Words("Stir.")}}
	tests := []struct {
		name string
		body views.RecipeBody
		want []string
	}{
		{"nothing", views.RecipeBody{}, nil},
		{"one component without a name", views.RecipeBody{Components: []views.ComponentBlock{{Lines: line, Steps: step}}}, []string{"Ingredients", "Method"}},
		{"two", views.RecipeBody{Components: []views.ComponentBlock{{Name: "Dough", Lines: line, Steps: step}, {Name: "Glaze", Lines: line, Steps: step}}}, []string{"Dough", "Glaze", "Method", "Dough", "Glaze"}},
		{"a component of steps alone", views.RecipeBody{Components: []views.ComponentBlock{{Name: "Dough", Lines: line}, {Name: "To finish", Steps: step}}}, []string{"Dough", "Method", "To finish"}},
		{"all that can follow", views.RecipeBody{
			ScaleNotes: []string{"a"}, Notes: []string{"b"}, Credits: []string{"c"}, Unread: []views.UnreadRow{{Text: "d"}},
		}, []string{"At this scale", "Notes", "With thanks", "Not read"}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			var got []string
			for n := range parse(t, views.RecipeLines(tt.body)).Descendants() {
				if n.Data == "h2" || n.Data == "h3" {
					got = append(got, words(n))
				}
			}
			if diff := cmp.Diff(tt.want, got); diff != "" {
				t.Errorf("headings (-want +got):\n%s", diff)
			}
		})
	}
}

// TestScalerSendsBothWays: trying asks the page, keeping posts with the
// revision; the measure switch stays.
func TestScalerSendsBothWays(t *testing.T) {
	doc := parse(t, views.Recipe(views.RecipeSheet{Has: true, Recipe: views.RecipeBody{Scaler: views.Scaler{
		TryPath: "/episodes/31/recipe", KeepAction: "/episodes/31/scale", Revision: 7, Factor: "1½", Was: "1½", Pieces: "24", PiecesLabel: "knots", Measure: "us",
	}}}))
	form := byClass(doc, "scaler")[0]
	if attr(form, "method") != "get" || attr(form, "action") != "/episodes/31/recipe" {
		t.Errorf("tries by %s %s", attr(form, "method"), attr(form, "action"))
	}
	want := map[string]string{"measure": "us", "was": "1½", "revision": "7", "factor": "1½", "pieces": "24"}
	if diff := cmp.Diff(want, sent(form)); diff != "" {
		t.Errorf("sends (-want +got):\n%s", diff)
	}
	for n := range form.Descendants() {
		if n.Data == "button" && words(n) == "Keep" {
			if attr(n, "formaction") != "/episodes/31/scale" || attr(n, "formmethod") != "post" {
				t.Errorf("keeps by %s %s", attr(n, "formmethod"), attr(n, "formaction"))
			}
			return
		}
	}
	t.Error("no way to keep the scale")
}

func TestScalerOutsideAnEpisodeKeepsNothing(t *testing.T) {
	doc := parse(t, views.Version(views.VersionPage{Recipe: views.RecipeBody{Scaler: views.Scaler{TryPath: "/recipes/9"}}}))
	form := byClass(doc, "scaler")[0]
	if got := count(form, "button"); got != 1 {
		t.Errorf("%d buttons, want Try alone", got)
	}
	if _, ok := sent(form)["pieces"]; ok {
		t.Error("asks for pieces of a recipe that does not say what it makes")
	}
}

// TestCompareSaysEachChange: a sign and a word with each colour.
func TestCompareSaysEachChange(t *testing.T) {
	is := views.ChangeText{Measure: "290 mL", Words: views.Words("buttermilk")}
	was := views.ChangeText{Measure: "270 mL", Words: views.Words("buttermilk")}
	tests := []struct {
		name string
		row  views.ChangeRow
		want string
	}{
		{"same", views.ChangeRow{Change: views.Same, Before: is}, "290 mL buttermilk"},
		{"added", views.ChangeRow{Change: views.Added, After: is}, "290 mL + added buttermilk"},
		{"taken out", views.ChangeRow{Change: views.TakenOut, Before: was}, "270 mL − taken out buttermilk"},
		{"changed", views.ChangeRow{Change: views.Changed, Before: was, After: is}, "270 mL buttermilk 290 mL ≠ changed buttermilk"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			doc := parse(t, views.Compare(views.ComparePage{Groups: []views.ChangeGroup{{Rows: []views.ChangeRow{tt.row}}}}))
			if got := spaced(byClass(doc, "change")[0]); got != tt.want {
				t.Errorf("reads %q, want %q", got, tt.want)
			}
		})
	}
}

// TestTickAsksForTheOtherState: sending a press twice does no harm, because it
// names the state it wants.
func TestTickAsksForTheOtherState(t *testing.T) {
	for _, ticked := range []bool{false, true} {
		doc := parse(t, views.Shop(views.ShopSheet{List: views.ShopList{
			TickAction: "/episodes/31/ticks", Aisles: []views.AisleBlock{{Items: []views.ShopItem{{Key: "rye-flour", Food: "rye flour", Ticked: ticked}}}},
		}}))
		form := byClass(doc, "tick")[0]
		want, state := "yes", "false"
		if ticked {
			want, state = "no", "true"
		}
		for n := range form.Descendants() {
			if n.Data != "button" {
				continue
			}
			if attr(n, "name") != "ticked" || attr(n, "value") != want || attr(n, "aria-pressed") != state {
				t.Errorf("ticked %v: sends %s=%s, pressed %s", ticked, attr(n, "name"), attr(n, "value"), attr(n, "aria-pressed"))
			}
		}
		if got := sent(form)["item"]; got != "rye-flour" {
			t.Errorf("names the item %q", got)
		}
	}
}

// TestCorrectionsAreSentWithTheText: a correction's fields belong to the
// recipe's form, so that pressing its button loses nothing typed beside.
func TestCorrectionsAreSentWithTheText(t *testing.T) {
	doc := parse(t, views.RecipeEdit(views.RecipeEditPage{
		SaveAction: "/recipes/9", Text: "2 knobs of butter",
		Understood: views.Understanding{Components: []views.ReadComponent{{Lines: []views.ReadLine{{
			LineRow: views.LineRow{Measure: "2 knobs", Food: "butter"},
			Correction: &views.Correction{
				ID: "line-1", Action: "/recipes/9/corrections", Forget: "/recipes/9/corrections/forget",
				Line: "2 knobs of butter", Amount: "30 g", Food: "butter", Preparation: "soft", Note: "or more",
			},
		}}}}},
	}))
	got := map[string]string{}
	for n := range byClass(doc, "righting")[0].Descendants() {
		if n.Data != "input" && n.Data != "button" {
			continue
		}
		if attr(n, "form") != "recipe" {
			t.Errorf("%s %s is not sent with the recipe", n.Data, attr(n, "name"))
		}
		if n.Data == "input" {
			got[attr(n, "name")] = attr(n, "value")
		} else {
			got[attr(n, "formaction")] = attr(n, "name") + "=" + attr(n, "value")
		}
	}
	want := map[string]string{
		"line-1-line": "2 knobs of butter", "line-1-amount": "30 g", "line-1-food": "butter", "line-1-preparation": "soft",
		"line-1-note": "or more", "line-1-learn": "yes",
		"/recipes/9/corrections": "correct=line-1", "/recipes/9/corrections/forget": "correct=line-1",
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("what a correction sends (-want +got):\n%s", diff)
	}
	if byID(doc, "recipe").Data != "form" {
		t.Error("no form of that id")
	}
}

// TestLongMeasureBreaksBeforeItsUnit: on a phone a measure wider than the
// gutter breaks between number and unit; a short one and a span of two
// measures are left alone.
func TestLongMeasureBreaksBeforeItsUnit(t *testing.T) {
	tests := []struct{ name, measure, number string }{
		{"short", "320\u00a0g", ""},
		{"exactly as wide as the gutter", "18–20\u00a0min", ""},
		{"a range", "3–4½\u00a0stalks", "3–4½"},
		{"a word", "1½\u00a0handfuls", "1½"},
		{"two measures", "1\u00a0h–1\u00a0h\u00a015\u00a0min", ""},
		{"words", "piece to camera", ""},
		{"nothing", "", ""},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			body := views.RecipeBody{Components: []views.ComponentBlock{{Lines: []views.LineRow{{Measure: tt.measure, Food: "x"}}}}}
			list := byClass(parse(t, views.RecipeLines(body)), "lines")[0]
			number := ""
			for _, n := range byClass(list, "number") {
				number = raw(n)
			}
			if number != tt.number {
				t.Errorf("%q keeps %q together, want %q", tt.measure, number, tt.number)
			}
			if got, want := words(byClass(list, "g")[0]), strings.ReplaceAll(tt.measure, "\u00a0", " "); strings.ReplaceAll(got, "\u00a0", " ") != want {
				t.Errorf("%q reads %q", tt.measure, got)
			}
		})
	}
}
