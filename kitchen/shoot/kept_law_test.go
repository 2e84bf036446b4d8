package shoot_test

import (
	"context"
	"encoding/json"
	"fmt"
	"runtime"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
	"pgregory.net/rapid"

	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shoot"
	"benchproof/kitchen/shoot/solve"
)

// made makes the plan of a day that was drawn.
func made(t *rapid.T, d shoot.Day) shoot.Plan {
	p, err := d.Make(context.Background(), solve.Options{Steps: 600})
	if err != nil {
		t.Skip("it has no plan")
	}
	return p
}

// Whatever the day, its plan is the same once it was kept as text and recalled.
func TestEveryPlanIsRecalled(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := drawDay(t)
		p := made(t, d)
		text, err := json.Marshal(p.Kept)
		if err != nil {
			t.Fatal(err)
		}
		var kept shoot.Kept
		if err := json.Unmarshal(text, &kept); err != nil {
			t.Fatal(err)
		}
		got, ok := d.Recall(kept)
		if !ok {
			t.Fatal("it is not recalled on its own day")
		}
		if diff := cmp.Diff(p, got, cmpopts.EquateEmpty()); diff != "" {
			t.Fatalf("recalled (-made +recalled):\n%s", diff)
		}
	})
}

// The print changes with what a plan depends on, and with nothing else.
func TestWhatThePrintDependsOn(t *testing.T) {
	for _, c := range []struct {
		name   string
		change func(*shoot.Day)
		same   bool
	}{
		{"nothing", func(*shoot.Day) {}, true},
		{"where swap-outs could take over", func(d *shoot.Day) { d.Batches[0].Stages = nil }, true},
		{"how the clock writes minutes", func(d *shoot.Day) { d.Clock = func(minute int) string { return fmt.Sprint(minute, " past") } }, true},
		{"a note to the recipe", func(d *shoot.Day) { d.Batches[0].Recipe.Notes = []string{"Best on the day."} }, true},
		{"how much is filmed of a step, where none is filmed in part", func(d *shoot.Day) { d.Opening = 9 }, true},
		{"a minute more of kneading", func(d *shoot.Day) {
			d.Batches[0].Recipe.Components[0].Steps[knead] = step("Knead", "bench", true, 11)
		}, false},
		{"another word for a step", func(d *shoot.Day) { d.Batches[0].Recipe.Components[0].Steps[knead].Text = "Knead well" }, false},
		{"a step not filmed", func(d *shoot.Day) { delete(d.Batches[0].Film, at(slice)) }, false},
		{"a second oven", func(d *shoot.Day) { d.Stations[2].Units = 2 }, false},
		{"a bench to clean", func(d *shoot.Day) { d.Stations[1].Clean = 4 }, false},
		{"a longest wait", func(d *shoot.Day) { d.Waits = []shoot.Wait{{After: shot(prove), AtMost: 9, HasMost: true}} }, false},
		{"a bar", func(d *shoot.Day) { d.Bars = []shoot.Bar{{Task: shot(shape), From: 1, To: 2}} }, false},
		{"minutes to put up the camera", func(d *shoot.Day) { d.Setups = map[string]int{"overhead": 3} }, false},
		{"the name of a batch", func(d *shoot.Day) { d.Batches[0].Name = "take two" }, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			d := breadDay()
			before, err := d.Print()
			if err != nil {
				t.Fatal(err)
			}
			c.change(&d)
			if after, err := d.Print(); err != nil || (after == before) != c.same {
				t.Errorf("the print is the same: %v, want %v; %v", after == before, c.same, err)
			}
		})
	}
}

// openDay is a day whose best plan is not soon proved: two makes of five
// components that keep one pair of hands busy to the end.
func openDay() shoot.Day { return kitchenDay(21, false, false) }

// A search that is stopped once it tells of a plan gives one that is no later
// than what it told, and the bound that it told holds.
func TestASearchStoppedAtItsFirstPlan(t *testing.T) {
	d := openDay()
	for seed := range uint64(4) {
		s := d.Seek(t.Context(), shoot.Plan{}, solve.Options{Steps: 1 << 30, Seed: seed})
		told, bound, isTold := s.Best()
		for !isTold {
			select {
			case <-s.Done():
				t.Fatal("it ended without a plan")
			default:
				runtime.Gosched()
			}
			told, bound, isTold = s.Best()
		}
		s.Stop()
		p, _, err := s.Result()
		if err != nil {
			t.Fatal(err)
		}
		if p.Wrap > told || p.Bound < bound || p.Bound >= p.Wrap {
			t.Errorf("it told of %d, bound %d, and gives %d, bound %d: a day that is not soon proved", told, bound, p.Wrap, p.Bound)
		}
		if again, ok := d.Recall(p.Kept); !ok || again.Wrap != p.Wrap {
			t.Errorf("its plan is not one of the day: %v, %d and %d", ok, again.Wrap, p.Wrap)
		}
		if at, bound, _ := s.Best(); at < p.Wrap || bound != p.Bound {
			t.Errorf("in the end it tells of %d, bound %d; the plan wraps at %d, bound %d", at, bound, p.Wrap, p.Bound)
		}
	}
}

// A search ends with the context that it was begun with.
func TestASearchEndsWithItsContext(t *testing.T) {
	ctx, stop := context.WithCancel(t.Context())
	s := openDay().Seek(ctx, shoot.Plan{}, solve.Options{Steps: 1 << 30})
	stop()
	<-s.Done()
	if p, _, err := s.Result(); err != nil || p.Entries == nil || p.Optimal {
		t.Errorf("it gives a plan until %d (proved: %v), %v; want one that is not proved", p.Wrap, p.Optimal, err)
	}
	s.Stop() // again, and nothing happens
}

// Gaps are the minutes between the first and the last work of hands in which
// there is none, counted one by one.
func TestGapsMinuteByMinute(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := made(t, drawDay(t))
		busy := map[int]bool{}
		first, last := 1<<30, -1
		work := func(from, to int) {
			for minute := from; minute < to; minute++ {
				busy[minute] = true
				first, last = min(first, minute), max(last, minute)
			}
		}
		for _, e := range p.Entries {
			if slices.Contains(e.Uses, shoot.Hands) {
				work(e.From, e.To)
			}
		}
		for _, s := range p.Setups {
			work(s.From, s.To)
		}
		var want []shoot.Gap
		for minute := first; minute < last; minute++ {
			if busy[minute] {
				continue
			}
			if n := len(want); n > 0 && want[n-1].To == minute {
				want[n-1].To++
			} else {
				want = append(want, shoot.Gap{From: minute, To: minute + 1})
			}
		}
		if diff := cmp.Diff(want, p.Gaps); diff != "" {
			t.Fatalf("gaps (-counted +told):\n%s", diff)
		}
	})
}

// When the day wraps if all goes quickly, and if all goes slowly: steps of 8 to
// 12, 20 to 40 and 5, one after the other, likely 10 + 30 + 5.
func TestTheRangeOfTheWrap(t *testing.T) {
	for _, c := range []struct {
		name                   string
		change                 func(*shoot.Day)
		earliest, wrap, latest int
	}{
		{"8 + 20 + 5 to 12 + 40 + 5", func(*shoot.Day) {}, 33, 45, 57},
		{"the last is pinned to 60: 12 + 40 are done by then", func(d *shoot.Day) { d.Pins = []shoot.Pin{{Task: shot(2), Start: 60}} }, 65, 65, 65},
		{"the last is pinned to 50: 12 + 40 are not", func(d *shoot.Day) { d.Pins = []shoot.Pin{{Task: shot(2), Start: 50}} }, 55, 55, -1},
		{"from 100 on", func(d *shoot.Day) { d.From = 100 }, 133, 145, 157},
		{"hands are gone from 28 to 52: quick or not, the last comes after", func(d *shoot.Day) {
			d.Stations[0].Busy = []shoot.Busy{{From: 28, To: 52, Units: 1}}
		}, 57, 57, 57},
		{"the first is pinned, whatever it takes", func(d *shoot.Day) { d.Pins = []shoot.Pin{{Task: shot(0), Start: 7}} }, 40, 52, 64},
	} {
		t.Run(c.name, func(t *testing.T) {
			d := oneBatch(step("Mix", "bench", true, 8, 12), step("Rest", "waits", false, 20, 40), step("Fold", "bench", true, 5))
			c.change(&d)
			p := mustMake(t, d)
			if p.EarliestWrap != c.earliest || p.Wrap != c.wrap || p.LatestWrap != c.latest {
				t.Errorf("it wraps at %d, from %d to %d; want %d, from %d to %d", p.Wrap, p.EarliestWrap, p.LatestWrap, c.wrap, c.earliest, c.latest)
			}
		})
	}
}

// stood is how long food has stood, followed minute by minute through the steps
// of one batch: in heat nothing stands and all begins anew, in the cold nothing
// is added, and between two steps it is where the step before left it.
func stood(d shoot.Day, p shoot.Plan) (found []shoot.Standing) {
	minutes, isCold, isCooked := 0, true, false
	note := func(k int) {
		if minutes > 0 {
			found = append(found, shoot.Standing{Task: shot(k), Minutes: minutes, IsCooked: isCooked})
		}
	}
	now := p.Begin
	steps := d.Batches[0].Recipe.Components[0].Steps
	for k, s := range steps {
		for ; now < startOf(p, k); now++ {
			if !isCold {
				minutes++
			}
		}
		likely := shoot.MinutesOf(s).Likely
		switch s.Station {
		case "oven", "hob":
			note(k)
			minutes, isCold, isCooked = 0, false, true
		case "fridge":
			isCold = true
		default:
			minutes, isCold = minutes+likely, false
		}
		now += likely
		if k == len(steps)-1 {
			note(k)
		}
	}
	return found
}

func TestStandingMinuteByMinute(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var steps []recipe.Step
		for k := range rapid.IntRange(1, 7).Draw(t, "steps") {
			station := rapid.SampledFrom([]string{"bench", "waits", "fridge", "oven", "hob"}).Draw(t, "station")
			steps = append(steps, step(fmt.Sprint("Step ", k), station, station == "bench", rapid.Int64Range(1, 90).Draw(t, "minutes")))
		}
		d := oneBatch(steps...)
		d.Stations = append(d.Stations, shoot.Station{Name: "hob", Units: 1, Busy: []shoot.Busy{{From: 20, To: 20 + rapid.IntRange(1, 300).Draw(t, "hob busy"), Units: 1}}})
		if from := rapid.IntRange(1, 200).Draw(t, "hands gone"); rapid.Bool().Draw(t, "hands go") {
			d.Stations[0].Busy = []shoot.Busy{{From: from, To: from + 100, Units: 1}}
		}
		p := made(t, d)
		got := d.Standings(p, 1, allSpoils)
		if diff := cmp.Diff(stood(d, p), got, cmpopts.IgnoreFields(shoot.Standing{}, "Of", "From", "To")); diff != "" {
			t.Fatalf("standing (-minute by minute +told):\n%s", diff)
		}
	})
}
