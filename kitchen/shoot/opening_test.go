package shoot_test

import (
	"strings"
	"testing"

	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shoot"
	"benchproof/kitchen/shoot/solve"
)

// Of a long wait only the beginning takes hands and camera. The day is no longer
// for it, but where hands are needed elsewhere.
func TestOnlyTheBeginningIsFilmed(t *testing.T) {
	tests := []struct {
		name   string
		change func(*shoot.Day)
		wrap   int
	}{
		{"the proving: hands are free then anyway", func(*shoot.Day) {}, 250},
		{"from another side: the setup goes up before the proving and after it", func(d *shoot.Day) {
			d.Batches[0].Opens[at(prove)] = "close"
			d.Setups = map[string]int{"close": 7, "overhead": 7}
		}, 257},
		{"longer than the step: all of it", func(d *shoot.Day) { d.Opening = 500 }, 250},
		{"the proving is done by a swap-out: 10 + 5, while that is shaped, proved, baked and sliced", func(d *shoot.Day) {
			d.Batches[0].Swaps = map[recipe.Position]string{at(prove): ""}
		}, 120},
		{"the baking is pinned", func(d *shoot.Day) {
			d.Batches[0].Opens = map[recipe.Position]string{at(bake): "overhead"}
			d.Pins = []shoot.Pin{{Task: shot(bake), Start: 300}}
		}, 345},
		{"the baking is barred from its rest", func(d *shoot.Day) {
			d.Batches[0].Opens = map[recipe.Position]string{at(bake): "overhead"}
			d.Bars = []shoot.Bar{{Task: shot(bake), From: 230, To: 235}}
		}, 280},
		{"the oven is busy during the rest", func(d *shoot.Day) {
			d.Batches[0].Opens = map[recipe.Position]string{at(bake): "overhead"}
			d.Stations[2].Busy = []shoot.Busy{{From: 220, To: 230, Units: 1}}
		}, 275},
		{"slicing waits for the whole of it", func(d *shoot.Day) {
			d.Batches[0].Opens = map[recipe.Position]string{at(bake): "overhead"}
			d.Waits = []shoot.Wait{{After: shot(bake), AtLeast: 30}}
		}, 280},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			d := breadDay()
			d.Batches[0].Opens = map[recipe.Position]string{at(prove): "overhead"}
			tt.change(&d)
			p := mustMake(t, d)
			if p.Wrap != tt.wrap {
				t.Errorf("it wraps at %d, want %d\n%v", p.Wrap, tt.wrap, p.Entries)
			}
		})
	}
}

func TestTheEntriesOfAFilmedBeginning(t *testing.T) {
	d := breadDay()
	d.Batches[0].Opens = map[recipe.Position]string{at(prove): "overhead"}
	d.Opening = 8
	var opening, rest *shoot.Entry
	p := mustMake(t, d)
	for i, e := range p.Entries {
		switch {
		case e.Key != shot(prove):
		case e.IsOpening:
			opening = &p.Entries[i]
		case e.IsRest:
			rest = &p.Entries[i]
		}
	}
	if opening == nil || rest == nil {
		t.Fatalf("no beginning or no rest: %v", p.Entries)
	}
	if opening.From != 10 || opening.To != 18 || rest.From != 18 || rest.To != 130 {
		t.Errorf("from %d to %d and %d to %d, want 10 to 18 and 18 to 130", opening.From, opening.To, rest.From, rest.To)
	}
	if !opening.IsFilmed || opening.Setup != "overhead" || strings.Join(opening.Uses, " ") != "hands camera" {
		t.Errorf("the beginning: filmed %v, setup %q, uses %v", opening.IsFilmed, opening.Setup, opening.Uses)
	}
	if rest.IsFilmed || len(rest.Uses) != 0 {
		t.Errorf("the rest: filmed %v, uses %v", rest.IsFilmed, rest.Uses)
	}
}

// A swap-out may take over after a step whose beginning is filmed.
func TestAStageWhoseBeginningIsFilmed(t *testing.T) {
	d := breadDay()
	d.Batches[0].Opens = map[recipe.Position]string{at(prove): "overhead"}
	d.From = 180
	options, err := d.SwapOuts(t.Context(), 1, solve.Options{})
	if err != nil {
		t.Fatal(err)
	}
	if len(options) != 2 || options[1].Wrap >= options[0].Wrap {
		t.Fatalf("one make does not help: %v", options)
	}
	if cut := options[1].Cuts[0]; cut.Stage != shot(prove) {
		t.Errorf("the wait cut is %v, want the proving", cut.Stage)
	}
}

func TestReplanningAFilmedBeginning(t *testing.T) {
	tests := []struct {
		name string
		now  int
		done []shoot.Done
		wrap int
	}{
		{"it has begun", 12, []shoot.Done{{Task: shot(knead), From: 0, To: 10}, {Task: shot(prove), From: 10, IsRunning: true}}, 250},
		{"it runs over its time", 150, []shoot.Done{{Task: shot(knead), From: 0, To: 10}, {Task: shot(prove), From: 10, IsRunning: true}}, 150 + 120},
		{"it is done, sooner than planned", 100, []shoot.Done{{Task: shot(knead), From: 0, To: 10}, {Task: shot(prove), From: 10, To: 95}}, 100 + 120},
		{"it was cut short within its beginning", 20, []shoot.Done{{Task: shot(knead), From: 0, To: 10}, {Task: shot(prove), From: 10, To: 12}}, 20 + 120},
		{"nothing has begun", 30, nil, 280},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			d := breadDay()
			d.Batches[0].Opens = map[recipe.Position]string{at(prove): "overhead"}
			p, _, err := d.Replan(t.Context(), shoot.Plan{}, tt.now, tt.done, solve.Options{})
			if err != nil {
				t.Fatal(err)
			}
			if p.Wrap != tt.wrap {
				t.Errorf("it wraps at %d, want %d\n%v", p.Wrap, tt.wrap, p.Entries)
			}
		})
	}
}

// The helper is one of two pairs of hands until they leave: a step given to them
// takes a pair of hands and the helper.
func TestTheHelperIsOneOfTheHands(t *testing.T) {
	withHelper := func(until int, given ...int) shoot.Day {
		d := breadDay()
		d.Batches[0].Film = nil
		gone := []shoot.Busy{{From: until, Units: 1}}
		d.Stations[0].Units, d.Stations[0].Busy = 2, gone
		d.Stations[1].Units = 9
		d.Stations = append(d.Stations, shoot.Station{Name: "helper", Units: 1, Busy: gone, Within: shoot.Hands})
		for n := range 2 {
			b := d.Batches[0]
			b.Name = []string{"spare 1", "spare 2"}[n]
			d.Batches = append(d.Batches, b)
		}
		for _, k := range given {
			for _, b := range d.Batches {
				d.Given = append(d.Given, shoot.Given{Task: shoot.Key{Batch: b.Name, At: at(k)}, To: "helper"})
			}
		}
		d.Stations[2].Units = 3
		return d
	}
	tests := []struct {
		name string
		day  shoot.Day
		wrap int
	}{
		{"two shape two doughs until 145, then the third", withHelper(600), 145 + 15 + 60 + 40 + 5},
		{"one kneads them all", withHelper(600, knead), 30 + 120 + 15 + 60 + 40 + 5},
		{"the helper leaves: one shapes, a dough after the other from 130", withHelper(30), 130 + 3*15 + 60 + 40 + 5},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			if p := mustMake(t, tt.day); p.Wrap != tt.wrap {
				t.Errorf("it wraps at %d, want %d\n%v", p.Wrap, tt.wrap, p.Entries)
			}
		})
	}
	late := withHelper(5, knead)
	if _, err := late.Make(t.Context(), solve.Options{}); err == nil {
		t.Error("a step is given to a helper who leaves before it could end")
	}
}
