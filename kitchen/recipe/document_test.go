package recipe_test

import (
	"encoding/json"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// asJSON gives v as generic JSON, as a program that knows nothing of Go sees it.
func asJSON(t testing.TB, v any) map[string]any {
	t.Helper()
	raw, err := json.Marshal(v)
	if err != nil {
		t.Fatal(err)
	}
	var out map[string]any
	if err := json.Unmarshal(raw, &out); err != nil {
		t.Fatal(err)
	}
	return out
}

const oats = "Oat bars\nMakes 12 bars\n\n1½ cups rolled oats (not instant)\nsalt\n\nBake at 180 °C (160 °C fan) for 9–11 minutes until golden.\n"

// The shape of `read` as the design gives it.
func TestDocumentOfRead(t *testing.T) {
	got := asJSON(t, recipe.Reader{}.Read(oats).Document())
	want := map[string]any{
		"title": "Oat bars",
		"yield": map[string]any{"text": "Makes 12 bars", "amount": map[string]any{"from": "12", "to": "12"}, "of": "bars"},
		"components": []any{map[string]any{
			"name": "",
			"lines": []any{
				map[string]any{"text": "1½ cups rolled oats (not instant)", "amount": map[string]any{"from": "3/2", "to": "3/2"}, "unit": "cup",
					"food": "rolled oats", "note": "not instant", "read": true},
				map[string]any{"text": "salt", "unit": "", "food": "salt", "note": "", "read": true},
			},
			"steps": []any{map[string]any{
				"text": "Bake at 180 °C (160 °C fan) for 9–11 minutes until golden.", "minutes": map[string]any{"from": 9.0, "to": 11.0},
				"handsOn": false, "station": "oven", "cue": "until golden",
				"temperatures": []any{
					map[string]any{"from": 180.0, "to": 180.0, "scale": "C", "text": "180 °C"},
					map[string]any{"from": 160.0, "to": 160.0, "scale": "C", "oven": "fan", "text": "160 °C fan"},
				},
			}},
		}},
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
}

// The shape of `scale`: the same, each line with exact, shown and errorPercent,
// and notes.
func TestDocumentOfScale(t *testing.T) {
	s := recipe.Scale(recipe.Reader{}.Read(oats), measure.Ratio(3, 2), recipe.Writer{House: measure.US})
	got := asJSON(t, s.Document())
	line := got["components"].([]any)[0].(map[string]any)["lines"].([]any)[0].(map[string]any)
	for key, want := range map[string]any{"exact": "9/4", "shown": "2¼ cups", "errorPercent": 0.0, "unit": "cup",
		"amount": map[string]any{"from": "9/4", "to": "9/4"}} {
		if diff := cmp.Diff(want, line[key]); diff != "" {
			t.Errorf("%s: %s", key, diff)
		}
	}
	if got["by"] != "3/2" || got["yield"].(map[string]any)["text"] != "makes 18 bars" {
		t.Errorf("by %v, yield %v", got["by"], got["yield"])
	}
	if notes, _ := got["notes"].([]any); len(notes) == 0 {
		t.Error("no notes on what does not scale")
	}
	off := recipe.Scale(recipe.Reader{}.Read("X\n\n7 eggs\n"), measure.Ratio(3, 10), recipe.Writer{}).Document()
	if l := off.Components[0].Lines[0]; *l.Exact != "21/10" || *l.ErrorPercent < 4.7 || *l.ErrorPercent > 4.8 {
		t.Errorf("2.1 eggs shown as %s, %v %% off", *l.Shown, *l.ErrorPercent)
	}
}

func TestDocumentOfNothing(t *testing.T) {
	got := asJSON(t, recipe.Reader{}.Read("").Document())
	want := map[string]any{"title": "", "yield": map[string]any{"text": ""}, "components": []any{}}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
	unread := asJSON(t, recipe.Reader{}.Read("Dear diary\n\nnothing to cook here\n").Document())
	if list, _ := unread["unread"].([]any); len(list) != 1 || list[0].(map[string]any)["reason"] == "" {
		t.Errorf("unread = %v", unread["unread"])
	}
}
