package shoot_test

import (
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shoot"
	"benchproof/kitchen/shoot/solve"
)

// easier asks less of a day in one way.
func easier(t *rapid.T, d shoot.Day) (shoot.Day, string) {
	d.Stations, d.Batches = slices.Clone(d.Stations), slices.Clone(d.Batches)
	switch rapid.SampledFrom([]string{"more of a station", "a batch less", "no light to wait for", "nothing fixed", "no setups", "nothing busy", "not filmed"}).Draw(t, "easier by") {
	case "more of a station":
		k := rapid.IntRange(0, len(d.Stations)-1).Draw(t, "station")
		d.Stations[k].Units++
		if d.Stations[k].Within != "" {
			d.Stations[0].Units++
		}
		return d, "more of a station"
	case "a batch less":
		if len(d.Batches) == 1 {
			return d, "a batch less, of one"
		}
		gone := d.Batches[1].Name
		d.Batches = d.Batches[:1]
		return without(d, gone), "a batch less"
	case "no light to wait for":
		d.Stations = slices.DeleteFunc(d.Stations, func(s shoot.Station) bool { return s.Name == shoot.Light })
		return d, "no light to wait for"
	case "nothing fixed":
		d.Pins, d.Bars, d.Waits, d.Given = nil, nil, nil, nil
		return d, "nothing fixed"
	case "no setups":
		d.Setups = nil
		return d, "no setups"
	case "nothing busy":
		for k := range d.Stations {
			d.Stations[k].Busy = nil
		}
		return d, "nothing busy"
	}
	for k := range d.Batches {
		d.Batches[k].Film, d.Batches[k].Opens = nil, nil
	}
	return d, "not filmed"
}

// without takes out what is fixed about a batch.
func without(d shoot.Day, batch string) shoot.Day {
	isOf := func(k shoot.Key) bool { return k.Batch == batch }
	d.Pins = slices.DeleteFunc(slices.Clone(d.Pins), func(p shoot.Pin) bool { return isOf(p.Task) })
	d.Bars = slices.DeleteFunc(slices.Clone(d.Bars), func(b shoot.Bar) bool { return isOf(b.Task) })
	d.Given = slices.DeleteFunc(slices.Clone(d.Given), func(g shoot.Given) bool { return isOf(g.Task) })
	d.Waits = slices.DeleteFunc(slices.Clone(d.Waits), func(w shoot.Wait) bool { return isOf(w.After) })
	d.Moments = slices.DeleteFunc(slices.Clone(d.Moments), func(m shoot.Moment) bool { return slices.ContainsFunc(append(m.Before, m.After...), isOf) })
	return d
}

// What a day asks less of, it never gets longer by: a day that is proved best
// wraps no later than the best plan of the harder one, and its bound is no
// higher than that either. Backwards it begins no earlier.
func TestAskingLessNeverLengthensADay(t *testing.T) {
	compared := map[string]int{}
	rapid.Check(t, func(t *rapid.T) {
		d := drawDay(t)
		hard, ok := plannable(t, d)
		if !ok {
			return
		}
		less, how := easier(t, d)
		easy, err := less.Make(t.Context(), solve.Options{Steps: 3000})
		if err != nil {
			t.Fatalf("%s, and there is no plan any more: %v", how, err)
		}
		mustBeAPlan(t, less, easy)
		compared[how]++
		switch {
		case d.Finish > 0 && easy.Optimal && easy.Begin < hard.Begin:
			t.Fatalf("%s, and it begins at %d instead of %d", how, easy.Begin, hard.Begin)
		case d.Finish > 0 && easy.Bound < hard.Begin:
			t.Fatalf("%s, and the bound is %d, where a plan begins at %d", how, easy.Bound, hard.Begin)
		case d.Finish == 0 && easy.Optimal && easy.Wrap > hard.Wrap:
			t.Fatalf("%s, and it wraps at %d instead of %d", how, easy.Wrap, hard.Wrap)
		case d.Finish == 0 && easy.Bound > hard.Wrap:
			t.Fatalf("%s, and the bound is %d, where a plan wraps at %d", how, easy.Bound, hard.Wrap)
		}
	})
	if len(compared) < 5 {
		t.Errorf("compared only %v", compared)
	}
}

// helperBakes is a day on which a helper who leaves at 30 has one step to do by
// 100: 6 minutes in the oven.
func helperBakes(isByHand bool, film, opens map[recipe.Position]string) shoot.Day {
	gone := []shoot.Busy{{From: 30, Units: 1}}
	bake := recipe.Recipe{Components: []recipe.Component{{Lines: []recipe.Line{{Text: "1 loaf"}}, Steps: []recipe.Step{step("Bake", "oven", isByHand, 6)}}}}
	return shoot.Day{
		Stations: []shoot.Station{
			{Name: shoot.Hands, Units: 2, Busy: gone}, {Name: "oven", Units: 1}, {Name: shoot.Camera, Units: 1},
			{Name: "helper", Units: 1, Busy: gone, Within: shoot.Hands},
		},
		Batches: []shoot.Batch{{Name: "shoot", Recipe: bake, Film: film, Opens: opens}},
		Given:   []shoot.Given{{Task: shot(0), To: "helper"}},
		Finish:  100,
	}
}

// A helper who leaves at 30 has an oven's 6 minutes to do by 100. Filmed, its
// beginning is by hand: 5 minutes that end by 30. Not filmed, nothing of it is,
// and nobody keeps it from beginning at 94. Every start is tried beside it.
func TestTheHelperKeepsOnlyWhatIsByHand(t *testing.T) {
	film := map[recipe.Position]string{{}: "close"}
	for _, c := range []struct {
		name        string
		isByHand    bool
		film, opens map[recipe.Position]string
		from, end   int
	}{
		{"its beginning filmed", false, nil, film, 25, 31},
		{"not filmed", false, nil, nil, 94, 100},
		{"all of it filmed", false, film, nil, 24, 30},
		{"by hand", true, nil, nil, 24, 30},
		{"by hand, the beginning filmed", true, nil, film, 24, 30},
	} {
		t.Run(c.name, func(t *testing.T) {
			d := helperBakes(c.isByHand, c.film, c.opens)
			p := mustMake(t, d)
			mustBeAPlan(t, d, p)
			if p.Begin != c.from || p.Wrap != c.end || !p.Optimal {
				t.Errorf("from %d to %d, proved %v; want %d to %d", p.Begin, p.Wrap, p.Optimal, c.from, c.end)
			}
			latest := -1
			for start := range 100 {
				pinned := d
				pinned.Pins = []shoot.Pin{{Task: shot(0), Start: start}}
				if _, err := pinned.Make(t.Context(), solve.Options{}); err == nil {
					latest = start
				}
			}
			if latest != c.from {
				t.Errorf("pinned to every minute, it begins at %d at the latest, want %d", latest, c.from)
			}
		})
	}
}

// The same day gives the same plan, and another clock changes nothing.
func TestADayHasOnePlan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := drawDay(t)
		o := solve.Options{Steps: 1500, Seed: rapid.Uint64().Draw(t, "seed")}
		first, err := d.Make(t.Context(), o)
		d.Clock = func(int) string { return "noon" }
		second, again := d.Make(t.Context(), o)
		if (err == nil) != (again == nil) {
			t.Fatalf("first %v, then %v", err, again)
		}
		if diff := cmp.Diff(first, second); diff != "" {
			t.Fatalf("another plan: %s", diff)
		}
	})
}

// Planned in the background and let run, a day has the plan that Make gives.
func TestASearchGivesTheSamePlan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := drawDay(t)
		o := solve.Options{Steps: 800}
		made, err := d.Make(t.Context(), o)
		found, moved, again := d.Seek(t.Context(), shoot.Plan{}, o).Result()
		if (err == nil) != (again == nil) || moved != nil {
			t.Fatalf("made %v, found %v, moved %v", err, again, moved)
		}
		if diff := cmp.Diff(made, found); diff != "" {
			t.Fatalf("another plan: %s", diff)
		}
	})
}

// A choice that can no longer be kept says which stage it is.
func TestAChoiceThatCannotBeKept(t *testing.T) {
	for name, tt := range map[string]struct {
		choices []shoot.Choice
		says    string
		about   []shoot.Key
	}{
		"a step that is gone":   {[]shoot.Choice{{Stage: shot(12)}}, "no step 13", []shoot.Key{shot(12)}},
		"a batch that is gone":  {[]shoot.Choice{{Stage: shoot.Key{Batch: "trial"}}}, `"trial"`, []shoot.Key{{Batch: "trial"}}},
		"two at the same stage": {[]shoot.Choice{{Stage: shot(prove)}, {Stage: shot(prove), Overnight: true}}, `"Prove"`, []shoot.Key{shot(prove)}},
	} {
		t.Run(name, func(t *testing.T) {
			day, cuts, err := breadDay().With(tt.choices)
			wantRefusal(t, err, tt.says, tt.about)
			if cuts != nil || len(day.Batches) != 1 || day.Batches[0].Swaps != nil {
				t.Errorf("the day has changed: %+v, %v", day.Batches, cuts)
			}
		})
	}
}

// What is chosen is in the day: steps of the extra make, waits that limit them,
// and nothing on the day of one made the evening before.
func TestADayWithChoices(t *testing.T) {
	d := breadDay()
	d.Batches[0].Shares = map[string]int{"oven": 1}
	d.Waits = []shoot.Wait{{After: shot(prove), Next: shot(shape), AtMost: 90, HasMost: true}}
	with, cuts, err := d.With([]shoot.Choice{{Stage: shot(prove)}, {Stage: shot(bake), Overnight: true, Name: "the baked one"}})
	if err != nil {
		t.Fatal(err)
	}
	want := []shoot.Cut{
		{Stage: shot(prove), Minutes: 120, Batch: "swap-out 1", Begins: -1, Lasts: 130},
		{Stage: shot(bake), Minutes: 40, Batch: "the baked one", Overnight: true, Begins: -1, Lasts: 245},
	}
	if diff := cmp.Diff(want, cuts); diff != "" {
		t.Errorf("cuts (-want +got):\n%s", diff)
	}
	if len(with.Batches) != 2 || with.Batches[1].Name != "swap-out 1" || !with.Batches[1].Ahead || *with.Batches[1].Until != at(prove) || with.Batches[1].Shares["oven"] != 1 {
		t.Errorf("batches: %+v", with.Batches)
	}
	if diff := cmp.Diff(map[recipe.Position]string{at(prove): "swap-out 1", at(bake): "the baked one"}, with.Batches[0].Swaps); diff != "" {
		t.Errorf("swaps (-want +got):\n%s", diff)
	}
	limit := shoot.Wait{After: shoot.Key{Batch: "swap-out 1", At: at(prove)}, Next: shoot.Key{Batch: "swap-out 1", At: at(shape)}, AtMost: 90, HasMost: true}
	if diff := cmp.Diff(append(slices.Clone(d.Waits), limit), with.Waits); diff != "" {
		t.Errorf("waits (-want +got):\n%s", diff)
	}
	if d.Batches[0].Swaps != nil || len(d.Waits) != 1 {
		t.Error("the day itself has changed")
	}
}
