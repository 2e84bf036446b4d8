package shoot_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shoot"
	"benchproof/kitchen/shoot/solve"
)

// drawHistory draws what has been done by now, in whatever order and however
// much at once: people do not keep to plans.
func drawHistory(t *rapid.T, d shoot.Day, now int) []shoot.Done {
	var done []shoot.Done
	for _, b := range d.Batches {
		for _, step := range b.Recipe.Sequence() {
			if !rapid.Bool().Draw(t, "has begun") {
				continue
			}
			from := rapid.IntRange(0, now).Draw(t, "began")
			one := shoot.Done{Task: shoot.Key{Batch: b.Name, At: step.At}, From: from, IsRunning: rapid.Bool().Draw(t, "is running")}
			if !one.IsRunning {
				one.To = rapid.IntRange(from, now).Draw(t, "ended")
			}
			done = append(done, one)
		}
	}
	return done
}

// However a day has gone, what is left of it is planned: never before now, with
// what is done where it was, and within what the stations have from now on.
func TestWhateverHasHappenedTheRestIsPlanned(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := drawDay(t)
		before, ok := plannable(t, d)
		if !ok {
			return
		}
		now := rapid.IntRange(0, 150).Draw(t, "now")
		r := rest{t: t, day: d, now: now, done: drawHistory(t, d, now)}
		after, moved, err := d.Replan(t.Context(), before, now, r.done, solve.Options{Steps: 1500})
		switch {
		case err != nil && fault.KindOf(err) == fault.Busy:
			return // neither found nor proved impossible, and it says so
		case err != nil && lightGoes(d):
			return // what is left needs light, which has gone for good
		case err != nil:
			t.Fatalf("at %d, after %+v: %v", now, r.done, err)
		}
		r.plan = after
		r.checkPast()
		r.checkStations()
		r.checkOrder()
		r.checkFixed()
		checkMoved(t, before, after, moved)
	})
}

func lightGoes(d shoot.Day) bool {
	return slices.ContainsFunc(d.Stations, func(s shoot.Station) bool { return s.Name == shoot.Light && len(s.Busy) > 0 })
}

// rest is a plan of what is left of a day.
type rest struct {
	t    *rapid.T
	day  shoot.Day
	plan shoot.Plan
	now  int
	done []shoot.Done
}

func (r rest) doneOf(key shoot.Key) (shoot.Done, bool) {
	k := slices.IndexFunc(r.done, func(d shoot.Done) bool { return d.Task == key })
	if k < 0 {
		return shoot.Done{}, false
	}
	return r.done[k], true
}

// left is when a step that is still to come runs.
func (r rest) left(key shoot.Key) (from, to int, ok bool) {
	if _, hasBegun := r.doneOf(key); hasBegun {
		return 0, 0, false
	}
	c := checker{plan: r.plan}
	return c.span(key)
}

// checkPast: what has begun stands where it was, all else is still to come.
func (r rest) checkPast() {
	ends := map[shoot.Key]int{}
	for _, e := range r.plan.Entries {
		if !isStep(e) {
			continue
		}
		one, hasBegun := r.doneOf(e.Key)
		switch {
		case !hasBegun && e.From < r.now:
			r.t.Fatalf("%s is to begin at %d, which has gone by at %d", e.ID, e.From, r.now)
		case hasBegun && !e.IsRest && e.From != one.From:
			r.t.Fatalf("%s began at %d, the plan says %d", e.ID, one.From, e.From)
		}
		ends[e.Key] = max(ends[e.Key], e.To)
	}
	for _, one := range r.done {
		if end := ends[one.Task]; !one.IsRunning && end != one.To || one.IsRunning && end < r.now {
			r.t.Fatalf("%+v ends at %d", one, end)
		}
	}
}

// checkStations: what is still to come has what it needs.
func (r rest) checkStations() {
	c := checker{day: r.day, plan: r.plan, used: map[string]map[int]int{}}
	c.plan.Entries = slices.DeleteFunc(slices.Clone(r.plan.Entries), func(e shoot.Entry) bool {
		_, hasBegun := r.doneOf(e.Key)
		return hasBegun
	})
	if c.stations(); c.found != nil {
		r.t.Fatal(c.found)
	}
}

// checkOrder: what is still to come waits for what comes first.
func (r rest) checkOrder() {
	c := checker{plan: r.plan}
	for _, b := range r.day.Batches {
		for _, step := range b.Recipe.Sequence() {
			from, _, isLeft := r.left(shoot.Key{Batch: b.Name, At: step.At})
			for _, before := range step.After {
				if _, end, ok := c.span(shoot.Key{Batch: b.Name, At: before}); ok && isLeft && from < end {
					r.t.Fatalf("%v of %s begins at %d, what comes first ends at %d", step.At, b.Name, from, end)
				}
			}
		}
	}
}

// checkFixed: pins and moments are kept, or said to be let go; bars are kept.
func (r rest) checkFixed() {
	for _, pin := range r.day.Pins {
		if from, _, ok := r.left(pin.Task); ok && from != pin.Start && !names(r.plan, pin.Task) {
			r.t.Fatalf("%v is pinned to %d, planned at %d, and that is not said: %q", pin.Task, pin.Start, from, r.plan.Overdue)
		}
	}
	for _, bar := range r.day.Bars {
		if from, to, ok := r.left(bar.Task); ok && from < bar.To && bar.From < to {
			r.t.Fatalf("%v from %d to %d is barred from %d to %d", bar.Task, from, to, bar.From, bar.To)
		}
	}
	for _, m := range r.day.Moments {
		for _, key := range m.Before {
			if _, to, ok := r.left(key); ok && to > m.At && !names(r.plan, key) {
				r.t.Fatalf("%v ends at %d, after %s at %d, and that is not said: %q", key, to, m.Name, m.At, r.plan.Overdue)
			}
		}
	}
}

// names tells whether what a plan could not keep names a step.
func names(p shoot.Plan, key shoot.Key) bool {
	for _, e := range p.Entries {
		if e.Key == key && isStep(e) && strings.Contains(strings.Join(p.Overdue, "; "), fmt.Sprintf("%q", e.ID)) {
			return true
		}
	}
	return false
}

// checkMoved: what is told to have moved is just what begins at another time.
func checkMoved(t *rapid.T, before, after shoot.Plan, moved []shoot.Change) {
	was, is := starts(before), starts(after)
	want := map[shoot.Key]shoot.Change{}
	for key, start := range is {
		if old, ok := was[key]; ok && old != start {
			want[key] = shoot.Change{Key: key, Was: old, Is: start}
		}
	}
	got := map[shoot.Key]shoot.Change{}
	for _, m := range moved {
		m.ID = ""
		got[m.Key] = m
	}
	if diff := cmp.Diff(want, got); diff != "" || len(moved) != len(got) {
		t.Fatalf("told to have moved (-want +got): %s", diff)
	}
}

// starts are when each step of a plan begins.
func starts(p shoot.Plan) map[shoot.Key]int {
	all := map[shoot.Key]int{}
	for _, e := range p.Entries {
		if old, ok := all[e.Key]; isStep(e) && (!ok || e.From < old) {
			all[e.Key] = e.From
		}
	}
	return all
}

// A change of what is fixed keeps everything else that is fixed.
func TestAChangeKeepsWhatIsFixed(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := drawDay(t)
		before, ok := plannable(t, d)
		if !ok {
			return
		}
		changed, key := d, drawKey(t, d)
		switch rapid.IntRange(0, 2).Draw(t, "what is changed") {
		case 0:
			changed.Pins = append(slices.Clone(d.Pins), shoot.Pin{Task: key, Start: rapid.IntRange(0, 120).Draw(t, "pinned to")})
		case 1:
			changed.Bars = append(slices.Clone(d.Bars), shoot.Bar{Task: key, From: 20, To: 40})
		case 2:
			changed.Given = append(slices.Clone(d.Given), shoot.Given{Task: key, To: shoot.Hands})
		}
		after, moved, err := changed.MakeAfter(t.Context(), before, solve.Options{Steps: 1500})
		if err != nil {
			if fault.Say(err) == "" {
				t.Fatal(err)
			}
			return
		}
		mustBeAPlan(t, changed, after)
		checkMoved(t, before, after, moved)
	})
}

// What is under way is so, however little there is for it: the rest is planned
// around it.
func TestWhatIsUnderWayIsTakenAsItIs(t *testing.T) {
	d := breadDay()
	b := d.Batches[0]
	b.Name, b.Film = "spare", nil
	d.Batches = append(d.Batches, b)
	d.Stations[2].Busy = []shoot.Busy{{From: 0, To: 30, Units: 1}}
	spare := func(step int) shoot.Key { return shoot.Key{Batch: "spare", At: at(step)} }
	for name, tt := range map[string]struct {
		now  int
		done []shoot.Done
	}{
		"kneading twice at once":           {5, []shoot.Done{{Task: shot(knead), From: 0, IsRunning: true}, {Task: spare(knead), From: 2, IsRunning: true}}},
		"baking while it is let for lunch": {20, []shoot.Done{{Task: spare(bake), From: 10, IsRunning: true}}},
		"filming two things at once":       {5, []shoot.Done{{Task: shot(knead), From: 0, IsRunning: true}, {Task: shot(shape), From: 1, IsRunning: true}}},
		"slicing before baking":            {30, []shoot.Done{{Task: shot(slice), From: 0, To: 5}}},
	} {
		t.Run(name, func(t *testing.T) {
			p, _, err := d.Replan(t.Context(), shoot.Plan{}, tt.now, tt.done, solve.Options{})
			if err != nil {
				t.Fatal(err)
			}
			for _, one := range tt.done {
				if got := starts(p)[one.Task]; got != one.From {
					t.Errorf("%v began at %d, the plan says %d", one.Task, one.From, got)
				}
			}
		})
	}
}

// Of what cannot be kept any more, no more is let go than must be.
func TestNoMoreIsLetGoThanMustBe(t *testing.T) {
	d := breadDay()
	d.Batches = append(d.Batches, shoot.Batch{Name: "spare", Recipe: bread()})
	spare := shoot.Key{Batch: "spare", At: at(slice)}
	d.Stations[0].Units, d.Stations[2].Units = 2, 2
	d.Pins = []shoot.Pin{{Task: shot(slice), Start: 250}, {Task: spare, Start: 600}}
	d.Moments = []shoot.Moment{{Name: "guests", At: 700, Before: []shoot.Key{spare}}}
	p, _, err := d.Replan(t.Context(), shoot.Plan{}, 40, nil, solve.Options{})
	if err != nil {
		t.Fatal(err)
	}
	if len(p.Overdue) != 1 || !names(p, shot(slice)) {
		t.Errorf("let go: %q, want the pin of the first slicing alone", p.Overdue)
	}
	if got := starts(p)[spare]; got != 600 {
		t.Errorf("the other slicing is pinned to 600 and planned at %d", got)
	}
}

// The camera stands where it filmed last: another setup is put up, the same one
// is not. Nothing is put up before now.
func TestTheCameraStandsWhereItWas(t *testing.T) {
	d := breadDay()
	d.Setups = map[string]int{"overhead": 20, "close": 20}
	kneaded := []shoot.Done{{Task: shot(knead), From: 0, To: 10}, {Task: shot(prove), From: 10, To: 40}}
	for name, tt := range map[string]struct {
		setup string
		shape int
	}{"the same": {"overhead", 40}, "another": {"close", 60}} {
		t.Run(name, func(t *testing.T) {
			d.Batches[0].Film = map[recipe.Position]string{at(knead): "overhead", at(shape): tt.setup}
			p, _, err := d.Replan(t.Context(), shoot.Plan{}, 40, kneaded, solve.Options{})
			if err != nil {
				t.Fatal(err)
			}
			if got := startOf(p, shape); got != tt.shape {
				t.Errorf("shaping is filmed at %d, want %d", got, tt.shape)
			}
			for _, s := range p.Setups {
				if s.From < 40 {
					t.Errorf("%s is put up at %d, before now", s.Name, s.From)
				}
			}
			if e := p.Entries[0]; !e.IsFilmed || e.Setup != "overhead" {
				t.Errorf("what was filmed is not said to be: %+v", e)
			}
		})
	}
	whole := []shoot.Done{{Task: shot(knead), From: 0, To: 10}, {Task: shot(prove), From: 10, To: 130}, {Task: shot(shape), From: 130, To: 145},
		{Task: shot(proveAgain), From: 145, To: 205}, {Task: shot(bake), From: 205, To: 245}, {Task: shot(slice), From: 245, To: 250}}
	p, _, err := d.Replan(t.Context(), shoot.Plan{}, 300, whole, solve.Options{})
	if err != nil || p.Wrap != 250 || len(p.Entries) != 6 {
		t.Errorf("all is done: it wraps at %d in %d entries, %v; want 250 in 6", p.Wrap, len(p.Entries), err)
	}
}

// Cleaning down followed on what is done: it is not planned again.
func TestWhatIsDoneIsCleanedDown(t *testing.T) {
	d := breadDay()
	d.Stations[1].Clean = 4
	p, _, err := d.Replan(t.Context(), shoot.Plan{}, 60, []shoot.Done{{Task: shot(knead), From: 0, To: 10}}, solve.Options{})
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range p.Entries {
		if e.IsClean && e.Key == shot(knead) && (e.From != 10 || e.To != 14) {
			t.Errorf("cleaned down from %d to %d, want 10 to 14", e.From, e.To)
		}
	}
	if p.Overdue != nil {
		t.Errorf("overdue: %q", p.Overdue)
	}
}

// A helper leaves at 60: what is given to them and cannot be done by then is
// anybody's; what can is theirs.
func TestAHelperWhoLeaves(t *testing.T) {
	for name, tt := range map[string]struct {
		now   int
		steps []int // given to the helper
		taken []int // taken back
	}{
		"there is time":               {40, []int{knead}, nil},
		"just":                        {50, []int{knead}, nil},
		"a minute too little":         {51, []int{knead}, []int{knead}},
		"they have left":              {70, []int{knead}, []int{knead}},
		"what comes later, too":       {70, []int{knead, shape}, []int{knead, shape}},
		"only what they cannot do":    {40, []int{knead, shape}, []int{shape}},
		"nothing was given to anyone": {70, nil, nil},
	} {
		t.Run(name, func(t *testing.T) {
			d := breadDay()
			gone := []shoot.Busy{{From: 60, Units: 1}}
			d.Stations[0].Units, d.Stations[0].Busy = 2, gone
			d.Stations = append(d.Stations, shoot.Station{Name: "helper", Units: 1, Busy: gone, Within: shoot.Hands})
			for _, k := range tt.steps {
				d.Given = append(d.Given, shoot.Given{Task: shot(k), To: "helper"})
			}
			p, _, err := d.Replan(t.Context(), shoot.Plan{}, tt.now, nil, solve.Options{})
			if err != nil {
				t.Fatal(err)
			}
			if p.Wrap != tt.now+250 {
				t.Errorf("it wraps at %d, want %d", p.Wrap, tt.now+250)
			}
			for _, k := range tt.steps {
				isTaken := slices.Contains(tt.taken, k)
				if names(p, shot(k)) != isTaken {
					t.Errorf("step %d taken back: want %v, said %q", k, isTaken, p.Overdue)
				}
				for _, e := range p.Entries {
					if e.Key == shot(k) && slices.Contains(e.Uses, "helper") == isTaken {
						t.Errorf("step %d uses %v", k, e.Uses)
					}
				}
			}
		})
	}
}
