package shoot_test

import (
	"context"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/shoot"
	"benchproof/kitchen/shoot/solve"
)

func TestRunningLate(t *testing.T) {
	kneaded := shoot.Done{Task: shot(knead), From: 0, To: 25} // 15 minutes late
	for _, c := range []struct {
		name    string
		change  func(*shoot.Day)
		now     int
		done    []shoot.Done
		wrap    int
		overdue string
	}{
		{"kneading took 15 minutes longer", nil, 25, []shoot.Done{kneaded}, 265, ""},
		{"nothing has begun at 40", nil, 40, nil, 290, ""},
		{"proving runs as planned", nil, 100, []shoot.Done{kneaded, {Task: shot(prove), From: 25, IsRunning: true}}, 265, ""},
		{"proving runs longer than likely", nil, 160, []shoot.Done{kneaded, {Task: shot(prove), From: 25, IsRunning: true}}, 160 + 15 + 60 + 40 + 5, ""},
		{"a pin is kept", func(d *shoot.Day) { d.Pins = []shoot.Pin{{Task: shot(slice), Start: 300}} }, 25, []shoot.Done{kneaded}, 305, ""},
		{"a pin that has gone by is let go", func(d *shoot.Day) { d.Pins = []shoot.Pin{{Task: shot(knead), Start: 0}} }, 40, nil, 290, "Knead"},
		{"the longest wait is over already", func(d *shoot.Day) {
			d.Waits = []shoot.Wait{{After: shot(prove), AtMost: 10, HasMost: true}}
		}, 200, []shoot.Done{kneaded, {Task: shot(prove), From: 25, To: 145}}, 200 + 15 + 60 + 40 + 5, "Shape"},
		{"the longest wait can no longer be kept", func(d *shoot.Day) {
			d.Waits = []shoot.Wait{{After: shot(prove), AtMost: 10, HasMost: true}}
			d.Stations[0].Busy = []shoot.Busy{{From: 140, To: 170, Units: 1}}
		}, 150, []shoot.Done{kneaded, {Task: shot(prove), From: 25, To: 145}}, 170 + 15 + 60 + 40 + 5, "Shape"},
		{"the guests come too early now", func(d *shoot.Day) {
			d.Moments = []shoot.Moment{{Name: "guests", At: 255, Before: []shoot.Key{shot(slice)}}}
		}, 252, []shoot.Done{kneaded, {Task: shot(prove), From: 25, To: 145}, {Task: shot(shape), From: 145, To: 160},
			{Task: shot(proveAgain), From: 160, To: 210}, {Task: shot(bake), From: 210, To: 252}}, 257, "guests"},
		{"the guests come before all that is left", func(d *shoot.Day) {
			d.Moments = []shoot.Moment{{Name: "guests", At: 255, Before: []shoot.Key{shot(slice)}}}
		}, 40, nil, 290, "guests"},
		{"a pin that only a quicker kneading makes possible", func(d *shoot.Day) { d.Pins = []shoot.Pin{{Task: shot(prove), Start: 6}} }, 6, []shoot.Done{{Task: shot(knead), From: 0, To: 5}}, 246, ""},
		{"a pin cannot be kept any more", func(d *shoot.Day) { d.Pins = []shoot.Pin{{Task: shot(slice), Start: 250}} }, 40, nil, 290, "Slice"},
	} {
		t.Run(c.name, func(t *testing.T) {
			d := breadDay()
			if c.change != nil {
				c.change(&d)
			}
			p, _, err := d.Replan(context.Background(), shoot.Plan{}, c.now, c.done, solve.Options{})
			if err != nil {
				t.Fatal(err)
			}
			if p.Wrap != c.wrap {
				t.Errorf("it wraps at %d, want %d", p.Wrap, c.wrap)
			}
			if got := strings.Join(p.Overdue, "; "); (got == "") != (c.overdue == "") || !strings.Contains(got, c.overdue) {
				t.Errorf("overdue: %q, want it to name %q", got, c.overdue)
			}
			done := map[shoot.Key]bool{}
			for _, x := range c.done {
				done[x.Task] = true
				for _, e := range p.Entries {
					if e.Key == x.Task && e.From != x.From {
						t.Errorf("%s began at %d, the plan says %d", e.ID, x.From, e.From)
					}
				}
			}
			for _, e := range p.Entries {
				if !done[e.Key] && e.Moment == "" && e.From < c.now {
					t.Errorf("%s is to begin at %d, which has gone by", e.ID, e.From)
				}
			}
		})
	}
}

func TestReplanSaysWhatMoved(t *testing.T) {
	d := breadDay()
	before := mustMake(t, d)
	after, changes, err := d.Replan(context.Background(), before, 20, []shoot.Done{{Task: shot(knead), From: 0, To: 20}}, solve.Options{})
	if err != nil {
		t.Fatal(err)
	}
	var got [][3]int
	for _, c := range changes {
		got = append(got, [3]int{c.Key.At.Step, c.Was, c.Is})
	}
	want := [][3]int{{prove, 10, 20}, {shape, 130, 140}, {proveAgain, 145, 155}, {bake, 205, 215}, {slice, 245, 255}}
	if diff := cmp.Diff(want, got); diff != "" || after.Wrap != 260 {
		t.Errorf("wrap %d; %s", after.Wrap, diff)
	}
}

func TestReplanRefusesTimesThatCannotBe(t *testing.T) {
	for _, done := range []shoot.Done{
		{Task: shot(knead), From: 30, To: 40},
		{Task: shot(knead), From: -1, To: 4},
		{Task: shot(knead), From: 10, To: 4},
	} {
		if _, _, err := breadDay().Replan(context.Background(), shoot.Plan{}, 20, []shoot.Done{done}, solve.Options{}); err == nil || !strings.Contains(err.Error(), "Knead") {
			t.Errorf("%+v: the error is %v", done, err)
		}
	}
}
