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

// plannable makes the plan of a drawn day, ok false if it has none.
func plannable(t *rapid.T, d shoot.Day) (p shoot.Plan, ok bool) {
	p, err := d.Make(context.Background(), solve.Options{Steps: 1500})
	if err != nil {
		if fault.Say(err) == "" {
			t.Fatal(err)
		}
		return p, false
	}
	mustBeAPlan(t, d, p)
	best, isAbove := p.Wrap, p.Bound > p.Wrap
	if d.Finish > 0 {
		best, isAbove = p.Begin, p.Bound < p.Begin
	}
	if isAbove || p.Optimal != (p.Bound == best) {
		t.Fatalf("from %d to %d, bound %d, optimal %v", p.Begin, p.Wrap, p.Bound, p.Optimal)
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
		d.Finish = 0 // a day is replanned forwards
		after, _, err := d.Replan(context.Background(), before, 0, nil, solve.Options{Steps: 1500})
		if err != nil {
			t.Fatal(err)
		}
		mustBeAPlan(t, d, after)
		if after.Wrap > before.Wrap || after.Overdue != nil {
			t.Fatalf("wrap %d before, %d after; overdue %v", before.Wrap, after.Wrap, after.Overdue)
		}
	})
}

// In the middle of a day that goes to plan, the rest of the plan still stands.
func TestReplanningADayThatGoesToPlan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := drawDay(t)
		d.Setups = nil // nobody says how far the camera is put up
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
		case e.Moment != "" || e.IsClean:
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

// An extra make never makes the day longer, and no bound is better than a plan.
// Backwards the day begins no earlier for it.
func TestExtraMakesNeverLengthenTheDay(t *testing.T) {
	helped := map[bool]int{}
	rapid.Check(t, func(t *rapid.T) {
		d := drawDay(t)
		steps := rapid.SampledFrom([]int{1, 400, 4000}).Draw(t, "search steps")
		options, err := d.SwapOuts(context.Background(), 2, solve.Options{Steps: steps})
		if err != nil {
			return
		}
		for k, o := range options {
			if o.Refused != nil {
				_, err := d.Make(context.Background(), solve.Options{Steps: 4000})
				if fault.KindOf(o.Refused) == fault.Invalid && err == nil || k > 0 && options[k-1].Refused == nil {
					t.Fatalf("%d makes are refused, %v, and fewer are not, or the day is planned: %v", k, o.Refused, err)
				}
				continue
			}
			edge, bound := sooner(d, o)
			if o.Makes != k || len(o.Cuts) > k || bound > edge || o.Optimal != (bound == edge) || o.Wrap != o.Plan.Wrap || o.Begins != o.Plan.Begin {
				t.Fatalf("%d makes: %d cuts, from %d to %d, bound %d, optimal %v", o.Makes, len(o.Cuts), o.Begins, o.Wrap, o.Bound, o.Optimal)
			}
			mustBeAPlan(t, o.Day, o.Plan)
			if k == 0 || options[k-1].Refused != nil {
				continue
			}
			before, boundBefore := sooner(d, options[k-1])
			if edge > before || bound > boundBefore {
				t.Fatalf("%d makes: from %d to %d and bound %d after %d and %d", k, o.Begins, o.Wrap, o.Bound, before, boundBefore)
			}
			if edge < before {
				helped[d.Finish > 0]++
			}
		}
	})
	if helped[false] == 0 {
		t.Error("no extra make ever helped")
	}
}

// sooner is what an extra make is to lower, and its bound: when the day wraps, or
// backwards how long before zero it begins.
func sooner(d shoot.Day, o shoot.Option) (edge, bound int) {
	if d.Finish > 0 {
		return -o.Begins, -o.Bound
	}
	return o.Wrap, o.Bound
}

// Compared twice, it is the same.
func TestAComparisonIsTheSameEachTime(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := drawDay(t)
		o := solve.Options{Steps: 2000, Seed: rapid.Uint64().Draw(t, "seed")}
		first, err := d.SwapOuts(context.Background(), 3, o)
		second, again := d.SwapOuts(context.Background(), 3, o)
		if (err == nil) != (again == nil) || len(first) != len(second) {
			t.Fatalf("%d options, %v, then %d, %v", len(first), err, len(second), again)
		}
		for k := range first {
			if diff := cmp.Diff(first[k].Plan, second[k].Plan); diff != "" || first[k].Bound != second[k].Bound {
				t.Fatalf("%d makes: bound %d, then %d; %s", k, first[k].Bound, second[k].Bound, diff)
			}
		}
	})
}

// A choice that was kept and is applied again gives the option's own plan.
func TestAKeptChoiceIsTheOption(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := drawDay(t)
		options, err := d.SwapOuts(context.Background(), 2, solve.Options{Steps: 4000})
		if err != nil {
			return
		}
		for _, o := range options {
			if o.Refused != nil {
				continue
			}
			with, cuts, err := d.With(o.Choices())
			if err != nil || len(cuts) != len(o.Cuts) {
				t.Fatalf("%d makes: %d cuts, %v", o.Makes, len(cuts), err)
			}
			for k, cut := range cuts {
				cut.Begins = o.Cuts[k].Begins
				if cut != o.Cuts[k] {
					t.Fatalf("it cuts %+v, the option %+v", cut, o.Cuts[k])
				}
			}
			if plan, ok := with.Recall(o.Plan.Kept); !ok || plan.Wrap != o.Wrap {
				t.Fatalf("%d makes: the option's plan is not one of the day with its choice", o.Makes)
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
