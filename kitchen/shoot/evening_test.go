package shoot_test

import (
	"fmt"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/shoot"
	"benchproof/kitchen/shoot/solve"
)

// evening plans the day before, and gives its entries as "name: step from–to".
func evening(t *testing.T, d shoot.Day, finish int, choices ...shoot.Choice) []string {
	t.Helper()
	var all []string
	for _, e := range mustMake(t, d.Evening(choices, finish)).Entries {
		all = append(all, fmt.Sprintf("%s: %s %d–%d", e.Key.Batch, e.Step.Text, e.From, e.To))
	}
	return all
}

// The second proving begins by ten in the evening, 1320 minutes after midnight, and
// before it are 10 + 120 + 15 minutes. A helper of the day, an oven taken by its
// lunch and the camera are of no matter.
func TestTheEveningBefore(t *testing.T) {
	d := breadDay()
	d.Stations[0].Units = 2
	gone := []shoot.Busy{{From: 300, Units: 1}}
	d.Stations[0].Busy = gone
	d.Stations = append(d.Stations, shoot.Station{Name: "helper", Units: 1, Busy: gone, Within: shoot.Hands})
	d.From = 500
	got := evening(t, d, 1320, shoot.Choice{Stage: shot(proveAgain), Overnight: true, Name: "swap-out 1"}, shoot.Choice{Stage: shot(bake), Name: "of the day"})
	want := []string{"swap-out 1: Knead 1175–1185", "swap-out 1: Prove 1185–1305", "swap-out 1: Shape 1305–1320", "swap-out 1: Prove again 1320–1320"}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
}

// Two makes of an evening share one pair of hands and one bench.
func TestTwoMakesOfAnEvening(t *testing.T) {
	p := mustMake(t, breadDay().Evening([]shoot.Choice{
		{Stage: shot(prove), Overnight: true, Name: "swap-out 1"},
		{Stage: shot(proveAgain), Overnight: true, Name: "swap-out 2"},
	}, 1320))
	if want := 1320 - 10 - 120 - 15; p.Begin != want || !p.Optimal {
		t.Errorf("the evening begins at %d, proved %v; want %d: the first is kneaded while the second proves", p.Begin, p.Optimal, want)
	}
	late := breadDay().Evening([]shoot.Choice{{Stage: shot(prove), Overnight: true, Name: "late"}}, 5)
	if _, err := late.Make(t.Context(), solve.Options{}); err == nil {
		t.Error("ten minutes of kneading fit into five")
	}
}

// What is shaped or baked in the evening is done by its end.
func TestAStageThatNeedsSomebodyEndsWithTheEvening(t *testing.T) {
	for stage, want := range map[int]string{shape: "Shape 1305–1320", bake: "Bake 1280–1320"} {
		got := evening(t, breadDay(), 1320, shoot.Choice{Stage: shot(stage), Overnight: true, Name: "swap-out 1"})
		if last := got[len(got)-1]; last != "swap-out 1: "+want {
			t.Errorf("the evening ends with %s, want %s", last, want)
		}
	}
}

// A longest wait holds on the evening as it does on the day.
func TestAnEveningKeepsTheWaits(t *testing.T) {
	d := breadDay()
	d.Waits = []shoot.Wait{{After: shot(knead), AtLeast: 30, AtMost: 40, HasMost: true}}
	got := evening(t, d, 1320, shoot.Choice{Stage: shot(prove), Overnight: true, Name: "swap-out 1"})
	if diff := cmp.Diff([]string{"swap-out 1: Knead 1280–1290", "swap-out 1: Prove 1320–1320"}, got); diff != "" {
		t.Error(diff)
	}
}
