package shoot_test

import (
	"context"
	"fmt"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shoot"
	"benchproof/kitchen/shoot/solve"
)

// drawDay draws a day of one or two batches with something fixed, barred and
// busy. It may have no plan.
func drawDay(t *rapid.T) shoot.Day {
	d := shoot.Day{
		Stations: []shoot.Station{{Name: shoot.Hands, Units: 1}, {Name: "bench", Units: 1}, {Name: "oven", Units: rapid.IntRange(1, 2).Draw(t, "ovens")}, {Name: shoot.Camera, Units: 1}},
		Setups:   map[string]int{"overhead": rapid.IntRange(0, 6).Draw(t, "overhead"), "close": 4},
	}
	if rapid.Bool().Draw(t, "lunch") {
		d.Stations[2].Busy = []shoot.Busy{{From: rapid.IntRange(0, 60).Draw(t, "lunch from"), To: 100, Units: 1}}
	}
	d.Stations[1].Clean = rapid.IntRange(0, 3).Draw(t, "clean")
	for b := range rapid.IntRange(1, 2).Draw(t, "batches") {
		batch := shoot.Batch{Name: []string{"shoot", "spare"}[b], Film: map[recipe.Position]string{}, Opens: map[recipe.Position]string{}}
		var steps []recipe.Step
		for k := range rapid.IntRange(1, 5).Draw(t, "steps") {
			station := rapid.SampledFrom([]string{"bench", "oven", "waits"}).Draw(t, "station")
			steps = append(steps, step(fmt.Sprint("Step ", k), station, station == "bench", rapid.Int64Range(1, 30).Draw(t, "minutes")))
			if station == "bench" && b == 0 {
				batch.Film[at(k)] = rapid.SampledFrom([]string{"overhead", "close"}).Draw(t, "setup")
			}
			if station != "bench" && b == 0 && rapid.Bool().Draw(t, "its beginning is filmed") {
				batch.Opens[at(k)] = rapid.SampledFrom([]string{"overhead", "close"}).Draw(t, "setup")
			}
			if station == "waits" && b == 0 {
				batch.Stages = append(batch.Stages, shoot.Stage{At: at(k), Overnight: rapid.Bool().Draw(t, "overnight")})
			}
		}
		batch.Recipe = recipe.Recipe{Components: []recipe.Component{{Lines: []recipe.Line{{Text: "500 g flour"}}, Steps: steps}}}
		d.Batches = append(d.Batches, batch)
	}
	if rapid.Bool().Draw(t, "has a helper") {
		gone := []shoot.Busy{{From: rapid.IntRange(30, 120).Draw(t, "the helper leaves"), Units: 1}}
		d.Stations[0].Units, d.Stations[0].Busy = 2, gone
		d.Stations = append(d.Stations, shoot.Station{Name: "helper", Units: 1, Busy: gone, Within: shoot.Hands})
		d.Given = []shoot.Given{{Task: shot(0), To: "helper"}}
	}
	if rapid.IntRange(0, 2).Draw(t, "has a bar") == 0 {
		from := rapid.IntRange(0, 40).Draw(t, "barred from")
		d.Bars = []shoot.Bar{{Task: shot(0), From: from, To: from + 10}}
	}
	if rapid.IntRange(0, 2).Draw(t, "has a pin") == 0 {
		d.Pins = []shoot.Pin{{Task: shot(0), Start: rapid.IntRange(0, 60).Draw(t, "pin")}}
	}
	return d
}

// checkDay checks a plan by its entries alone.
func checkDay(t *rapid.T, d shoot.Day, p shoot.Plan) {
	units := map[string]int{}
	for _, s := range d.Stations {
		units[s.Name] = s.Units
	}
	used := map[string]map[int]int{}
	last := map[string]int{}
	for _, e := range p.Entries {
		if e.To-e.From != e.Minutes.Likely || e.From < p.Begin || e.To > p.Wrap {
			t.Fatalf("%s from %d to %d takes %d, in a day from %d to %d", e.ID, e.From, e.To, e.Minutes.Likely, p.Begin, p.Wrap)
		}
		for _, name := range e.Uses {
			if used[name] == nil {
				used[name] = map[int]int{}
			}
			for minute := e.From; minute < e.To; minute++ {
				if used[name][minute]++; used[name][minute] > units[name] {
					t.Fatalf("minute %d needs more than %d of %s", minute, units[name], name)
				}
			}
		}
		if e.IsClean {
			continue
		}
		if e.From < last[e.Key.Batch] {
			t.Fatalf("%s begins at %d, the step before ends at %d", e.ID, e.From, last[e.Key.Batch])
		}
		last[e.Key.Batch] = e.To
	}
	for _, s := range p.Setups {
		for minute := s.From; minute < s.To; minute++ {
			if used[shoot.Hands][minute] >= units[shoot.Hands] {
				t.Fatalf("hands put up the %s setup in minute %d and do something else", s.Name, minute)
			}
		}
	}
	for _, pin := range d.Pins {
		if i := slices.IndexFunc(p.Entries, func(e shoot.Entry) bool { return e.Key == pin.Task && !e.IsClean }); i >= 0 && p.Entries[i].From != pin.Start {
			t.Fatalf("%s is pinned to %d", p.Entries[i].ID, pin.Start)
		}
	}
}

// plannable makes the plan of a drawn day, ok false if it has none.
func plannable(t *rapid.T, d shoot.Day) (p shoot.Plan, ok bool) {
	p, err := d.Make(context.Background(), solve.Options{Steps: 1500})
	if err != nil {
		if fault.Say(err) == "" {
			t.Fatal(err)
		}
		return p, false
	}
	checkDay(t, d, p)
	if p.Bound > p.Wrap || p.Optimal != (p.Bound == p.Wrap) {
		t.Fatalf("wrap %d, bound %d, optimal %v", p.Wrap, p.Bound, p.Optimal)
	}
	return p, true
}

func TestDaysKeepTheirRules(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) { plannable(t, drawDay(t)) })
}

// At minute zero, with nothing done, replanning is planning: nothing gets worse.
func TestReplanningAtTheStartChangesNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := drawDay(t)
		before, ok := plannable(t, d)
		if !ok {
			return
		}
		after, _, err := d.Replan(context.Background(), before, 0, nil, solve.Options{Steps: 1500})
		if err != nil {
			t.Fatal(err)
		}
		checkDay(t, d, after)
		if after.Wrap > before.Wrap || after.Overdue != nil {
			t.Fatalf("wrap %d before, %d after; overdue %v", before.Wrap, after.Wrap, after.Overdue)
		}
	})
}

// In the middle of a day that goes to plan, the rest of the plan still stands.
func TestReplanningADayThatGoesToPlan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := drawDay(t)
		d.Setups = nil // which setup stands is not kept between plans
		d.Stations[1].Clean = 0
		before, ok := plannable(t, d)
		if !ok {
			return
		}
		now := rapid.IntRange(0, max(0, before.Wrap)).Draw(t, "now")
		done := goesToPlan(before, now)
		after, _, err := d.Replan(context.Background(), before, now, done, solve.Options{Steps: 1500})
		if err != nil {
			t.Fatal(err)
		}
		if after.Wrap > before.Wrap || after.Overdue != nil {
			t.Fatalf("at %d: wrap %d before, %d after; overdue %v", now, before.Wrap, after.Wrap, after.Overdue)
		}
	})
}

// goesToPlan is what has been done of a plan by a minute.
func goesToPlan(p shoot.Plan, now int) []shoot.Done {
	var done []shoot.Done
	for _, e := range p.Entries {
		switch {
		case e.IsRest:
			k := slices.IndexFunc(done, func(d shoot.Done) bool { return d.Task == e.Key })
			if k >= 0 {
				done[k].To, done[k].IsRunning = e.To, e.To > now
			}
		case e.From < now:
			done = append(done, shoot.Done{Task: e.Key, From: e.From, To: e.To, IsRunning: e.To > now})
		}
	}
	return done
}

// An extra make never makes the day longer, and no bound is above a plan.
func TestExtraMakesNeverLengthenTheDay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := drawDay(t)
		options, err := d.SwapOuts(context.Background(), 2, solve.Options{Steps: 4000})
		if err != nil {
			return
		}
		for k, o := range options {
			if o.Makes != k || len(o.Cuts) > k || o.Bound > o.Wrap || o.Optimal != (o.Bound == o.Wrap) || o.Wrap != o.Plan.Wrap {
				t.Fatalf("%d makes: %d cuts, wrap %d, bound %d, optimal %v", o.Makes, len(o.Cuts), o.Wrap, o.Bound, o.Optimal)
			}
			if k > 0 && (o.Wrap > options[k-1].Wrap || o.Bound > options[k-1].Bound) {
				t.Fatalf("%d makes: wrap %d and bound %d after %d and %d", k, o.Wrap, o.Bound, options[k-1].Wrap, options[k-1].Bound)
			}
		}
	})
}

// Two ways to say that an oven is not there.
func TestBusyTimesAddUp(t *testing.T) {
	for _, c := range []struct {
		name string
		busy []shoot.Busy
		wrap int // of baking 40 minutes in one of two ovens, twice
	}{
		{"two ovens", nil, 40},
		{"one is taken for the day", []shoot.Busy{{From: 0, Units: 1}}, 80},
		{"one is taken for ten minutes", []shoot.Busy{{From: 0, To: 10, Units: 1}}, 50},
		{"both, one after the other", []shoot.Busy{{From: 0, To: 10, Units: 1}, {From: 10, To: 50, Units: 1}}, 80},
		{"both at once", []shoot.Busy{{From: 0, To: 10, Units: 1}, {From: 0, To: 15, Units: 1}}, 55},
		{"more than there are", []shoot.Busy{{From: 0, To: 10, Units: 5}}, 50},
		{"a time that has no length", []shoot.Busy{{From: 20, To: 20, Units: 2}}, 40},
	} {
		t.Run(c.name, func(t *testing.T) {
			bake := recipe.Recipe{Components: []recipe.Component{{Lines: []recipe.Line{{Text: "1 loaf"}}, Steps: []recipe.Step{step("Bake", "oven", false, 40)}}}}
			d := shoot.Day{
				Stations: []shoot.Station{{Name: "oven", Units: 2, Busy: c.busy}},
				Batches:  []shoot.Batch{{Name: "shoot", Recipe: bake}, {Name: "spare", Recipe: bake}},
			}
			if p := mustMake(t, d); p.Wrap != c.wrap {
				t.Errorf("it wraps at %d, want %d", p.Wrap, c.wrap)
			}
		})
	}
}

func TestEntriesSayWhatIsDone(t *testing.T) {
	d := breadDay()
	d.Stations[1].Clean = 2
	d.Moments = []shoot.Moment{{Name: "guests", At: 400, Before: []shoot.Key{shot(slice)}}}
	p := mustMake(t, d)
	type row struct {
		ID       string
		From, To int
		Filmed   bool
		Clean    bool
		Moment   string
		Uses     []string
	}
	var got []row
	for _, e := range p.Entries {
		got = append(got, row{e.ID, e.From, e.To, e.IsFilmed, e.IsClean, e.Moment, e.Uses})
	}
	film := []string{"hands", "bench", "camera"}
	clean := []string{"bench", "hands"}
	want := []row{
		{"shoot 1: Knead", 0, 10, true, false, "", film},
		{"shoot 1: Knead (clean down)", 10, 12, false, true, "", clean},
		{"shoot 2: Prove", 10, 130, false, false, "", nil},
		{"shoot 3: Shape", 130, 145, true, false, "", film},
		{"shoot 3: Shape (clean down)", 145, 147, false, true, "", clean},
		{"shoot 4: Prove again", 145, 205, false, false, "", nil},
		{"shoot 5: Bake", 205, 245, false, false, "", []string{"oven"}},
		{"shoot 6: Slice", 245, 250, true, false, "", film},
		{"shoot 6: Slice (clean down)", 250, 252, false, true, "", clean},
		{"moment 1: guests", 400, 400, false, false, "guests", nil},
	}
	if p.Begin != 0 || p.Wrap != 252 {
		t.Errorf("it goes from %d to %d, want 0 to 252: the guests are no work", p.Begin, p.Wrap)
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
}

func ExampleDay_Make() {
	p, err := breadDay().Make(context.Background(), solve.Options{})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, e := range p.Entries {
		fmt.Printf("%3d–%-3d %s\n", e.From, e.To, e.Step.Text)
	}
	fmt.Println("wraps at", p.Wrap, p.Optimal)
	// Output:
	//   0–10  Knead
	//  10–130 Prove
	// 130–145 Shape
	// 145–205 Prove again
	// 205–245 Bake
	// 245–250 Slice
	// wraps at 250 true
}
