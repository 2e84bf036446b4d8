package shoot_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/shoot"
	"benchproof/kitchen/shoot/solve"
)

func TestAKeptPlanIsRecalledAsItWas(t *testing.T) {
	for name, change := range map[string]func(*shoot.Day){
		"forwards":  func(*shoot.Day) {},
		"backwards": func(d *shoot.Day) { d.Finish = 600 },
		"with guests": func(d *shoot.Day) {
			d.Moments = []shoot.Moment{{Name: "guests", At: 400, Before: []shoot.Key{shot(slice)}}}
		},
		"under way": func(d *shoot.Day) {
			d.Begun, d.Now, d.Done = true, 25, []shoot.Done{{Task: shot(knead), From: 0, To: 25}}
		},
		"under way, too late for a pin": func(d *shoot.Day) {
			d.Begun, d.Now, d.Pins = true, 40, []shoot.Pin{{Task: shot(slice), Start: 250}}
		},
	} {
		t.Run(name, func(t *testing.T) {
			d := breadDay()
			change(&d)
			plan, err := d.Make(t.Context(), solve.Options{})
			if err != nil {
				t.Fatal(err)
			}
			recalled, ok := d.Recall(plan.Kept)
			if !ok {
				t.Fatal("the plan is not recalled on its own day")
			}
			recalled.EarliestWrap, recalled.LatestWrap = plan.EarliestWrap, plan.LatestWrap // of what was let go, too
			if diff := cmp.Diff(plan, recalled); diff != "" {
				t.Errorf("recalled (-made +recalled):\n%s", diff)
			}
		})
	}
}

func TestAKeptPlanIsOfItsDayAlone(t *testing.T) {
	plan, err := breadDay().Make(t.Context(), solve.Options{})
	if err != nil {
		t.Fatal(err)
	}
	for name, change := range map[string]func(*shoot.Day){
		"a pin":                func(d *shoot.Day) { d.Pins = []shoot.Pin{{Task: shot(slice), Start: 300}} },
		"a busy oven":          func(d *shoot.Day) { d.Stations[2].Busy = []shoot.Busy{{From: 200, To: 240, Units: 1}} },
		"another hour":         func(d *shoot.Day) { d.From = 60 },
		"backwards":            func(d *shoot.Day) { d.Finish = 600 },
		"guests":               func(d *shoot.Day) { d.Moments = []shoot.Moment{{Name: "guests", At: 400}} },
		"it has begun":         func(d *shoot.Day) { d.Begun, d.Now = true, 10 },
		"a batch more":         func(d *shoot.Day) { b := d.Batches[0]; b.Name = "spare"; d.Batches = append(d.Batches, b) },
		"a day without a plan": func(d *shoot.Day) { d.Pins = []shoot.Pin{{Task: shoot.Key{Batch: "nobody"}, Start: 1}} },
	} {
		t.Run(name, func(t *testing.T) {
			d := breadDay()
			change(&d)
			if _, ok := d.Recall(plan.Kept); ok {
				t.Error("the plan is recalled for another day")
			}
		})
	}
	cut := plan.Kept
	cut.Starts = cut.Starts[1:]
	if _, ok := breadDay().Recall(cut); ok {
		t.Error("a plan with a start missing is recalled")
	}
}

// A change of the day keeps to the order of the plan before, and says what
// moved.
func TestMakeAfterTellsWhatMoved(t *testing.T) {
	before, err := breadDay().Make(t.Context(), solve.Options{})
	if err != nil {
		t.Fatal(err)
	}
	d := breadDay()
	d.Pins = []shoot.Pin{{Task: shot(shape), Start: 150}}
	after, moved, err := d.MakeAfter(t.Context(), before, solve.Options{})
	if err != nil {
		t.Fatal(err)
	}
	if after.Wrap != 270 {
		t.Errorf("it wraps at %d, want 270: shaping is pinned 20 minutes later", after.Wrap)
	}
	for _, m := range moved {
		if m.Is-m.Was != 20 {
			t.Errorf("%s moved from %d to %d, want 20 minutes later", m.ID, m.Was, m.Is)
		}
	}
	if len(moved) < 4 {
		t.Errorf("%d steps moved, want shaping and all after it: %v", len(moved), moved)
	}
}

// A change that concerns nothing leaves every step where it was.
func TestMakeAfterKeepsToTheOrder(t *testing.T) {
	d := manyLoaves(4)
	before, err := d.Make(t.Context(), solve.Options{Steps: 500, Seed: 7})
	if err != nil {
		t.Fatal(err)
	}
	for name, change := range map[string]func(*shoot.Day){
		"nothing at all":          func(*shoot.Day) {},
		"light until long after":  func(d *shoot.Day) { d.Stations = append(d.Stations, shoot.Station{Name: shoot.Light, Units: 1}) },
		"guests who only look in": func(d *shoot.Day) { d.Moments = []shoot.Moment{{Name: "guests", At: 60}} },
	} {
		t.Run(name, func(t *testing.T) {
			changed := d
			change(&changed)
			after, moved, err := changed.MakeAfter(t.Context(), before, solve.Options{Steps: 500, Seed: 11})
			if err != nil {
				t.Fatal(err)
			}
			if after.Wrap > before.Wrap || after.Wrap == before.Wrap && len(moved) > 0 {
				t.Errorf("it wraps at %d, before at %d, and moved %v", after.Wrap, before.Wrap, moved)
			}
		})
	}
}
