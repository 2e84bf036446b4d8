package web_test

import (
	"net/http"
	"net/url"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/views"
	"benchproof/web"
)

// wish is a query as a map, in the order of no importance.
func wish(t testing.TB, query string) url.Values {
	t.Helper()
	values, err := url.ParseQuery(query)
	if err != nil {
		t.Fatal(err)
	}
	return values
}

// Scones make 8; they are kept at × 2.
func TestWantedScale(t *testing.T) {
	r, w := readRecipe(t, scones)
	for _, c := range []struct {
		name, query string
		by          string
		asked       bool
		wrong       string // the field the fault is on
	}{
		{"nothing asked keeps", "", "2", false, ""},
		{"a factor", "factor=3", "3", true, ""},
		{"a factor as cooks write it", "factor=1½", "3/2", true, ""},
		{"the kept factor is asked for all the same", "factor=2", "2", true, ""},
		{"pieces", "pieces=12", "3/2", true, ""},
		{"half a piece", "pieces=½", "1/16", true, ""},
		{"both, no form: the factor counts", "factor=3&pieces=8", "3", true, ""},
		{"the form as it was drawn", "factor=2&pieces=16&was=2", "2", true, ""},
		{"only the factor was changed", "factor=3&pieces=16&was=2", "3", true, ""},
		{"only the pieces were changed", "factor=2&pieces=24&was=2", "3", true, ""},
		{"both were changed: the factor counts", "factor=3&pieces=40&was=2", "3", true, ""},
		{"the factor was emptied", "factor=&pieces=24&was=2", "3", true, ""},
		{"the pieces were emptied", "factor=2&pieces=&was=2", "2", true, ""},
		{"both were emptied", "factor=&pieces=&was=2", "2", false, ""},
		{"a was that is no number", "factor=2&pieces=24&was=x", "2", true, ""},
		{"a tin goes before a factor", "factor=2&was=2&from=20+cm+square&to=40+cm+square", "4", true, ""},
		{"what is in hand", "have=100+g+butter", "2", true, ""},
		{"a word for a factor", "factor=much", "2", false, "factor"},
		{"no times", "factor=0", "2", false, "factor"},
		{"less than none", "factor=-1", "2", false, "factor"},
		{"far too much", "factor=1001", "2", false, "factor"},
		{"a word for pieces", "pieces=many", "2", false, "pieces"},
		{"no pieces", "pieces=0", "2", false, "pieces"},
		{"far too many pieces", "pieces=8001", "2", false, "pieces"},
		{"as many pieces as there may be", "pieces=8000", "1000", true, ""},
		{"one tin", "from=20+cm+round", "2", false, "to"},
		{"the other tin alone", "to=20+cm+round", "2", false, "to"},
		{"tins that are none", "from=a+hat&to=a+boot", "2", false, "to"},
		{"a weight that is none", "each=heavy", "2", false, "each"},
		{"a volume for a weight", "each=80+ml", "2", false, "each"},
		{"something that is not in it", "have=3+herrings", "2", false, "have"},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := web.WantedScale(wish(t, c.query), r, measure.Whole(2), w)
			if !got.By().Equal(measure.MustNumber(c.by)) || got.Asked() != c.asked {
				t.Errorf("by %v, asked %v, want %s, %v", got.By(), got.Asked(), c.by, c.asked)
			}
			if field := faultField(got.Err()); field != c.wrong {
				t.Errorf("fault %v on %q, want it on %q", got.Err(), field, c.wrong)
			}
		})
	}
}

func TestPiecesOfARecipeThatDoesNotSay(t *testing.T) {
	r, w := readRecipe(t, "Soup\n\n1 kg leeks\n\nSimmer.\n")
	got := web.WantedScale(wish(t, "pieces=12"), r, measure.Whole(1), w)
	if got.PiecesError() == "" || got.Asked() {
		t.Errorf("pieces of a soup: asked %v, error %q", got.Asked(), got.PiecesError())
	}
	if scaler := web.NewScaler("/at", r, got, recipe.AsWritten); scaler.PiecesLabel != "" || scaler.Pieces != "" {
		t.Errorf("the scaler offers %q pieces of a soup", scaler.PiecesLabel)
	}
}

func TestTheScalerKeepsARefusedWish(t *testing.T) {
	r, w := readRecipe(t, scones)
	for _, c := range []struct{ query, factor, was, pieces string }{
		{"", "2", "2", "16"},
		{"factor=1½", "1½", "1½", "12"},
		{"pieces=12", "1½", "1½", "12"},
		{"factor=much", "much", "2", "16"},
		{"pieces=many", "2", "2", "many"},
	} {
		t.Run(c.query, func(t *testing.T) {
			got := web.NewScaler("/at", r, web.WantedScale(wish(t, c.query), r, measure.Whole(2), w), recipe.USStyle)
			if got.Factor != c.factor || got.Was != c.was || got.Pieces != c.pieces {
				t.Errorf("factor %q, was %q, pieces %q, want %q, %q, %q", got.Factor, got.Was, got.Pieces, c.factor, c.was, c.pieces)
			}
			if got.TryPath != "/at" || got.Measure != "us" || got.PiecesLabel != "pieces" {
				t.Errorf("path %q, measure %q, label %q", got.TryPath, got.Measure, got.PiecesLabel)
			}
		})
	}
	refused := web.NewScaler("/at", r, web.WantedScale(wish(t, "each=heavy"), r, measure.Whole(2), w), recipe.AsWritten)
	field := refused.More.Fields[0]
	if field.Name != "each" || field.Value != "heavy" || !strings.Contains(field.Error, "“heavy”") {
		t.Errorf("the refused weight is drawn as %+v", field)
	}
}

func TestScaledPath(t *testing.T) {
	for _, c := range []struct {
		name  string
		by    string
		asked bool
		style recipe.Style
		want  string
	}{
		{"as kept, as written", "2", false, recipe.AsWritten, "/p"},
		{"as kept, US", "2", false, recipe.USStyle, "/p?measure=us"},
		{"tried", "2", true, recipe.AsWritten, "/p?factor=2"},
		{"an exact fraction", "1/3", true, recipe.AsWritten, "/p?factor=1%2F3"},
		{"tried and metric", "3/2", true, recipe.MetricStyle, "/p?factor=3%2F2&measure=metric"},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := web.ScaledPath("/p", web.AskedFor(measure.MustNumber(c.by), c.asked), c.style)
			if got != c.want {
				t.Errorf("ScaledPath = %q, want %q", got, c.want)
			}
		})
	}
}

// The address of a scale tried must be read back as the same scale.
func TestAScaledPathIsReadBack(t *testing.T) {
	r, w := readRecipe(t, scones)
	for _, by := range []string{"1/3", "3/2", "7/4", "1000", "1/16", "331/250"} {
		path := web.ScaledPath("/p", web.AskedFor(measure.MustNumber(by), true), recipe.AsWritten)
		_, query, _ := strings.Cut(path, "?")
		if got := web.WantedScale(wish(t, query), r, measure.Whole(2), w); !got.By().Equal(measure.MustNumber(by)) {
			t.Errorf("%s is read back as %v (%v)", path, got.By(), got.Err())
		}
	}
}

func TestScaleChoicesAreTimesWhatIsKept(t *testing.T) {
	got := web.ScaleChoices("/s/x", measure.Whole(2), web.AskedFor(measure.Whole(3), true), recipe.USStyle)
	want := []views.Choice{
		{Text: "× ½", Path: "/s/x?factor=1&measure=us"},
		{Text: "× 1", Path: "/s/x?measure=us"},
		{Text: "× 1½", Path: "/s/x?factor=3&measure=us", Current: true},
		{Text: "× 2", Path: "/s/x?factor=4&measure=us"},
		{Text: "× 3", Path: "/s/x?factor=6&measure=us"},
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("ScaleChoices (-want +got):\n%s", diff)
	}
}

func TestMeasureChoicesKeepTheScaleTried(t *testing.T) {
	got := web.MeasureChoices("/p", web.AskedFor(measure.Whole(2), true), recipe.MetricStyle)
	want := []views.Choice{
		{Text: "as written", Path: "/p?factor=2"},
		{Text: "metric", Path: "/p?factor=2&measure=metric", Current: true},
		{Text: "US cups", Path: "/p?factor=2&measure=us"},
		{Text: "imperial", Path: "/p?factor=2&measure=imperial"},
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("MeasureChoices (-want +got):\n%s", diff)
	}
}

func TestStyleOfAnAddress(t *testing.T) {
	for query, want := range map[string]recipe.Style{
		"": recipe.AsWritten, "measure=us": recipe.USStyle, "measure=metric": recipe.MetricStyle, "measure=imperial": recipe.ImperialStyle,
		"measure=US": recipe.AsWritten, "measure=troy": recipe.AsWritten,
	} {
		r, err := http.NewRequest(http.MethodGet, "/p?"+query, nil)
		if err != nil {
			t.Fatal(err)
		}
		if got := web.StyleOf(r); got != want {
			t.Errorf("StyleOf(%q) = %q, want %q", query, got, want)
		}
	}
}

func TestYieldPieces(t *testing.T) {
	for _, c := range []struct{ text, label, pieces string }{
		{"Makes 16 knots", "knots", "16"},
		{"Makes 8", "pieces", "8"},
		{"Serves 4–6", "servings", "4"},
	} {
		r, _ := readRecipe(t, "Rolls\n\n"+c.text+"\n\n200 g flour\n\nBake.\n")
		label, pieces, ok := web.YieldPieces(r)
		if !ok || label != c.label || !pieces.Equal(measure.MustNumber(c.pieces)) {
			t.Errorf("%q: %v %q, %v, want %s %q", c.text, pieces, label, ok, c.pieces, c.label)
		}
	}
	if label, pieces, ok := web.YieldPieces(recipe.Recipe{}); ok {
		t.Errorf("a recipe that does not say makes %v %s", pieces, label)
	}
}
