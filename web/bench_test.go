package web_test

import (
	"strings"
	"testing"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/views"
	"benchproof/web"
)

// plainLoaf is a plain wheat dough: per cent of the flour they are 65, 2 and 1.
const plainLoaf = "Loaf\n\nMakes 2 loaves\n\n1000 g strong white flour\n650 g water\n20 g salt\n10 g dried yeast\n\nKnead for 10 minutes.\n"

// The percentages are by definition shares of the flour's weight (baker's
// percentages; common practice, no source).
func TestADoughTellsItsPercentages(t *testing.T) {
	r, w := readRecipe(t, plainLoaf)
	body := web.NewBody(recipe.Scale(r, measure.Whole(1), w))
	web.AddBakers(&body, r, w)
	block := body.Components[0]
	if want := "hydration 65\u00a0%, all water counted"; block.Small != want {
		t.Errorf("beside the part %q, want %q", block.Small, want)
	}
	for i, want := range []string{"100\u00a0%", "65\u00a0%", "2\u00a0%", "1\u00a0%"} {
		if got := block.Lines[i].Small; !strings.HasSuffix(got, want) {
			t.Errorf("%s is %q, want %s", block.Lines[i].Food, got, want)
		}
	}
}

func TestWhatIsNoDoughHasNoPercentages(t *testing.T) {
	r, w := readRecipe(t, "Stew\n\n1 kg beef shin\n20 g plain flour\n1 l water\n\nSimmer.\n")
	body := web.NewBody(recipe.Scale(r, measure.Whole(1), w))
	web.AddBakers(&body, r, w)
	if got := body.Components[0].Small; got != "" {
		t.Errorf("a stew is said to have %q", got)
	}
}

func TestMasses(t *testing.T) {
	const two = "Tart\n\nMakes 4 pieces\n\nPastry\n200 g plain flour\n100 g butter\n\nFilling\n100 g sugar\n"
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"one part says no piece: the scaler does", plainLoaf, []string{"1680\u00a0g in all"}},
		{"two parts, a piece of each", two, []string{"300\u00a0g in all, 75\u00a0g a piece", "100\u00a0g in all, 25\u00a0g a piece"}},
		{"two parts, no pieces", strings.Replace(two, "Makes 4 pieces\n\n", "", 1), []string{"300\u00a0g in all", "100\u00a0g in all"}},
		{"a line without a weight", "Soup\n\n1 kg leeks\n3 zorbs\n", []string{""}},
		{"nothing with an amount", "Salt\n\nsalt, to taste\n", []string{""}},
	} {
		t.Run(c.name, func(t *testing.T) {
			r, w := readRecipe(t, c.text)
			body := web.NewBody(recipe.Scale(r, measure.Whole(1), w))
			web.AddMasses(&body, r, w)
			var got []string
			for _, block := range body.Components {
				got = append(got, block.Small)
			}
			if strings.Join(got, "|") != strings.Join(c.want, "|") {
				t.Errorf("masses %q, want %q", got, c.want)
			}
		})
	}
}

// weighed is a trial with both weights.
func weighed(before, after int64) episode.Trial {
	return episode.Trial{DoughGrams: measure.Whole(before), BakedGrams: measure.Whole(after)}
}

func TestLossNote(t *testing.T) {
	r, w := readRecipe(t, plainLoaf)
	for _, c := range []struct {
		name   string
		trials []episode.Trial
		want   string
	}{
		{"never tried", nil, ""},
		{"tried, not weighed", []episode.Trial{{}}, ""},
		{"weighed once only", []episode.Trial{{DoughGrams: measure.Whole(900)}}, ""},
		{"one of two was weighed", []episode.Trial{weighed(1000, 900), {}},
			"At the bench it lost 10\u00a0% of its weight in cooking (1 trial). What is weighed out at this scale, 1680\u00a0g in all, comes to about 1512\u00a0g."},
		{"the mean of two", []episode.Trial{weighed(1000, 900), weighed(1000, 860)},
			"At the bench it lost 12\u00a0% of its weight in cooking (2 trials). What is weighed out at this scale, 1680\u00a0g in all, comes to about 1478\u00a0g."},
	} {
		t.Run(c.name, func(t *testing.T) {
			if got := web.LossNote(c.trials, r, w); got != c.want {
				t.Errorf("LossNote = %q\nwant %q", got, c.want)
			}
		})
	}
}

func TestTheLossOfSeveralPartsIsNotReckonedOn(t *testing.T) {
	r, w := readRecipe(t, "Tart\n\nPastry\n200 g plain flour\n\nFilling\n100 g sugar\n")
	got := web.LossNote([]episode.Trial{weighed(1000, 900)}, r, w)
	if !strings.HasPrefix(got, "At the bench it lost 10") || strings.Contains(got, "comes to") {
		t.Errorf("LossNote = %q, want the loss and no weight that follows from it", got)
	}
}

func TestGramsText(t *testing.T) {
	for _, c := range []struct {
		from, to measure.Number
		want     string
	}{
		{measure.Whole(320), measure.Whole(320), "320\u00a0g"},
		{measure.Ratio(1999, 10), measure.Ratio(2001, 10), "200\u00a0g"},
		{measure.Whole(100), measure.Whole(120), "100–120\u00a0g"},
		{measure.Ratio(1, 4), measure.Ratio(1, 4), "0\u00a0g"},
	} {
		if got := web.GramsText(measure.Between(c.from, c.to)); got != c.want {
			t.Errorf("GramsText(%v–%v) = %q, want %q", c.from, c.to, got, c.want)
		}
	}
}

func TestPercentTakesTwoFigures(t *testing.T) {
	for text, want := range map[string]string{"72.6": "73\u00a0%", "1.44": "1.4\u00a0%", "10": "10\u00a0%", "0.06": "0.1\u00a0%", "0": "0\u00a0%", "100": "100\u00a0%", "2": "2\u00a0%"} {
		if got := web.Percent(measure.MustNumber(text)); got != want {
			t.Errorf("Percent(%s) = %q, want %q", text, got, want)
		}
	}
}

func TestAWeightIsOfAMeasureOrAForm(t *testing.T) {
	for _, c := range []struct {
		weight food.Weight
		want   string
	}{
		{food.Weight{Unit: "cup"}, "1 cup"},
		{food.Weight{Unit: "cup", Form: "sifted"}, "1 cup, sifted"},
		{food.Weight{Unit: measure.Each}, "1 piece"},
		{food.Weight{Unit: measure.Each, Form: "large"}, "1 large"},
	} {
		if got := web.WeightOf(c.weight); got != c.want {
			t.Errorf("WeightOf(%+v) = %q, want %q", c.weight, got, c.want)
		}
	}
	if got := web.Grams(measure.Ratio(1247, 100)); got != "12.5\u00a0g" {
		t.Errorf("Grams(12.47) = %q", got)
	}
}

func TestVerdictMark(t *testing.T) {
	for verdict, want := range map[string]views.MarkKind{"proved": views.MarkProved, "nearly": views.MarkLook, "not yet": views.MarkWrong} {
		if got := web.VerdictMark(verdict); got.Kind != want || got.Text != verdict {
			t.Errorf("VerdictMark(%q) = %+v, want %q", verdict, got, want)
		}
	}
}

func TestProvedMarks(t *testing.T) {
	trial := func(verdict string, scale int64) episode.Trial {
		return episode.Trial{Verdict: verdict, Scale: measure.Whole(scale)}
	}
	for _, c := range []struct {
		name   string
		trials []episode.Trial
		kind   views.MarkKind
		text   string
	}{
		{"never", nil, views.MarkLook, "never tried"},
		{"nearly", []episode.Trial{trial("nearly", 1)}, views.MarkLook, "tried, not proved yet"},
		{"once", []episode.Trial{trial("nearly", 1), trial("proved", 1)}, views.MarkProved, "proved at × 1"},
		{"twice at one scale, once at another", []episode.Trial{trial("proved", 1), trial("proved", 1), trial("proved", 2)}, views.MarkProved, "proved at × 1, × 2"},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := web.ProvedMarks(c.trials)
			if len(got) != 1 || got[0].Kind != c.kind || got[0].Text != c.text {
				t.Errorf("ProvedMarks = %+v, want %q %q", got, c.kind, c.text)
			}
		})
	}
}

func TestTrialFiguresTellOnlyWhatWasMeasured(t *testing.T) {
	full := weighed(909, 800)
	full.Pieces, full.Minutes, full.Setting = measure.Whole(16), measure.Ratio(21, 2), "190 °C fan"
	for _, c := range []struct {
		name  string
		trial episode.Trial
		want  string
	}{
		{"nothing", episode.Trial{}, ""},
		{"one weight: no loss", episode.Trial{BakedGrams: measure.Whole(800)}, "800 g after"},
		{"all", full, "909 g before cooking, 800 g after, 12.0 % lost in cooking, 16 pieces, 10½ min cooked, 190 °C fan setting"},
	} {
		t.Run(c.name, func(t *testing.T) {
			var got []string
			for _, figure := range web.TrialFigures(c.trial) {
				got = append(got, words(figure.Value+" "+figure.Label))
			}
			if strings.Join(got, ", ") != c.want {
				t.Errorf("figures %q, want %q", strings.Join(got, ", "), c.want)
			}
		})
	}
}
