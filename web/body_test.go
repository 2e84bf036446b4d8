package web_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/seed"
	"benchproof/views"
	"benchproof/web"
)

// readRecipe reads a text with the built-in larder, and gives the writer of a
// metric house.
func readRecipe(t testing.TB, text string) (recipe.Recipe, recipe.Writer) {
	t.Helper()
	larder, err := seed.Larder()
	if err != nil {
		t.Fatal(err)
	}
	return recipe.Reader{Larder: larder}.Read(text), recipe.Writer{Larder: larder, House: "metric"}
}

// newShow is a show as a new kitchen has it.
func newShow() episode.Show {
	return episode.Show{Name: "Quay Kitchen", System: "metric", WordsPerMinute: 150, DescriptionLimit: 5000}
}

// faultField is the field that the first fault of err is on; "" for no error.
func faultField(err error) string {
	for _, f := range fault.All(err) {
		return f.Field
	}
	return ""
}

func TestCutAfter(t *testing.T) {
	for _, c := range []struct {
		words, before, after string
		found                bool
	}{
		{"strong white flour", "strong white flour", "", false},
		{"strong white flour, sifted", "strong white flour", ", sifted", true},
		{"butter (cold), cubed", "butter", " (cold), cubed", true},
		{"butter, cubed (cold)", "butter", ", cubed (cold)", true},
		{"", "", "", false},
	} {
		before, after, found := web.CutAfter(c.words)
		if before != c.before || after != c.after || found != c.found {
			t.Errorf("CutAfter(%q) = %q, %q, %v, want %q, %q, %v", c.words, before, after, found, c.before, c.after, c.found)
		}
	}
}

func TestLineRow(t *testing.T) {
	read := recipe.Line{Read: true, Text: "200 g flour"}
	asked := recipe.Line{Read: true, Reason: "Which flour?"}
	for _, c := range []struct {
		name    string
		line    recipe.Line
		written recipe.Written
		want    views.LineRow
	}{
		{"a plain line", read, recipe.Written{Measure: "200 g", Words: "flour, sifted", Other: "1⅔ cups"},
			views.LineRow{Measure: "200 g", Food: "flour", After: ", sifted", Small: "1⅔ cups"}},
		{"nearly exact says nothing", read, recipe.Written{Measure: "1⅔ cups", Words: "flour", ErrorPercent: 5},
			views.LineRow{Measure: "1⅔ cups", Food: "flour"}},
		{"too far off exact", read, recipe.Written{Measure: "1½ cups", Words: "flour", Other: "200 g", ErrorPercent: 6.4},
			views.LineRow{Measure: "1½ cups", Food: "flour", Small: "200 g · +6\u00a0% off exact"}},
		{"too far below", read, recipe.Written{Measure: "1½ cups", Words: "flour", ErrorPercent: -6.6},
			views.LineRow{Measure: "1½ cups", Food: "flour", Small: "-7\u00a0% off exact"}},
		{"both ask", asked, recipe.Written{Words: "flour", Question: "How much is a knob?"},
			views.LineRow{Food: "flour", Question: "Which flour? How much is a knob?"}},
		{"not read: as written, and nothing made up", recipe.Line{Text: "zzz 3", Reason: "No food."}, recipe.Written{Measure: "3", Words: "zzz"},
			views.LineRow{Food: "zzz 3", Question: "No food.", NotRead: true}},
	} {
		t.Run(c.name, func(t *testing.T) {
			if diff := cmp.Diff(c.want, web.LineRow(c.line, c.written)); diff != "" {
				t.Errorf("LineRow (-want +got):\n%s", diff)
			}
		})
	}
}

func TestStationText(t *testing.T) {
	for _, c := range []struct {
		step recipe.Step
		want string
	}{
		{recipe.Step{Station: "bench", HandsOn: true}, "bench"},
		{recipe.Step{Station: "oven"}, "oven, unattended"},
		{recipe.Step{Station: "waits"}, "waits"},
		{recipe.Step{}, "unattended"},
		{recipe.Step{HandsOn: true}, ""},
	} {
		if got := web.StationText(c.step); got != c.want {
			t.Errorf("StationText(%q, hands on %v) = %q, want %q", c.step.Station, c.step.HandsOn, got, c.want)
		}
	}
}

func TestMinutesText(t *testing.T) {
	ten := measure.One(measure.Whole(10))
	for _, c := range []struct {
		name string
		step recipe.Step
		want string
	}{
		{"not said", recipe.Step{Minutes: ten}, ""},
		{"said", recipe.Step{Minutes: ten, HasMinutes: true}, "10\u00a0min"},
		{"from to", recipe.Step{Minutes: measure.Between(measure.Whole(9), measure.Whole(11)), HasMinutes: true}, "9–11\u00a0min"},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := web.MinutesText(c.step)
			if words(got) != words(c.want) {
				t.Errorf("MinutesText = %q, want %q", got, c.want)
			}
		})
	}
}

func TestHeatRuns(t *testing.T) {
	for _, c := range []struct {
		name, text string
		heats      []string
		want       []views.Run
	}{
		{"no words", "", nil, nil},
		{"no heat", "Rest it.", nil, []views.Run{{Text: "Rest it."}}},
		{"one", "Bake at 220 °C until risen.", []string{"220 °C"}, []views.Run{{Text: "Bake at "}, {Text: "220 °C", Heat: true}, {Text: " until risen."}}},
		{"at both ends", "220 °C, then 180 °C", []string{"220 °C", "180 °C"}, []views.Run{{Text: "220 °C", Heat: true}, {Text: ", then "}, {Text: "180 °C", Heat: true}}},
		{"the same twice", "180 °C or 180 °C", []string{"180 °C", "180 °C"}, []views.Run{{Text: "180 °C", Heat: true}, {Text: " or "}, {Text: "180 °C", Heat: true}}},
		{"one that is not there", "Bake.", []string{"220 °C"}, []views.Run{{Text: "Bake."}}},
		{"one without words", "Bake.", []string{""}, []views.Run{{Text: "Bake."}}},
	} {
		t.Run(c.name, func(t *testing.T) {
			step := recipe.Step{Text: c.text}
			for _, text := range c.heats {
				step.Temperatures = append(step.Temperatures, measure.Heat{Text: text})
			}
			if diff := cmp.Diff(c.want, web.HeatRuns(step)); diff != "" {
				t.Errorf("HeatRuns (-want +got):\n%s", diff)
			}
		})
	}
}

// The pair is 20 °C apart in every handbook; 60 °C apart is a slip (common
// practice, no source).
func TestAnOvenPairThatDisagreesIsMarked(t *testing.T) {
	for text, wrong := range map[string]bool{"Bake at 220 °C / 200 °C fan.": false, "Bake at 220 °C / 160 °C fan.": true, "Bake at 220 °C.": false} {
		got := web.StepRow(recipe.Step{Text: text, Temperatures: measure.Heats(text)})
		if (got.Wrong != "") != wrong {
			t.Errorf("%q: wrong %q, want one %v", text, got.Wrong, wrong)
		}
	}
}

func TestNewBodyDropsNoLine(t *testing.T) {
	r, w := readRecipe(t, typedRecipe(t, "plum-tart"))
	body := web.NewBody(recipe.Scale(r, measure.Whole(2), w))
	if len(body.Components) != len(r.Components) {
		t.Fatalf("%d components, want %d", len(body.Components), len(r.Components))
	}
	for i, c := range r.Components {
		block := body.Components[i]
		if block.Name != c.Name || len(block.Lines) != len(c.Lines) || len(block.Steps) != len(c.Steps) {
			t.Errorf("%q: %d lines and %d steps, want %d and %d of %q", block.Name, len(block.Lines), len(block.Steps), len(c.Lines), len(c.Steps), c.Name)
		}
		for j, step := range c.Steps {
			text := ""
			for _, run := range block.Steps[j].Words {
				text += run.Text
			}
			if text != step.Text {
				t.Errorf("step %d of %q reads %q, want %q", j+1, c.Name, text, step.Text)
			}
		}
	}
}

func TestAppendNew(t *testing.T) {
	list := web.AppendNew(web.AppendNew(web.AppendNew(web.AppendNew(nil, "a"), ""), "b"), "a")
	if diff := cmp.Diff([]string{"a", "b"}, list); diff != "" {
		t.Errorf("AppendNew (-want +got):\n%s", diff)
	}
}

// sconesRecipe is the reading of the scones.
func sconesRecipe(t testing.TB) recipe.Recipe {
	t.Helper()
	r, _ := readRecipe(t, scones)
	return r
}
