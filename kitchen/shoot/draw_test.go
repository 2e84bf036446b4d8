package shoot_test

import (
	"fmt"

	"pgregory.net/rapid"

	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shoot"
)

// maybe is true once in so many draws.
func maybe(t *rapid.T, label string, once int) bool {
	return rapid.IntRange(1, once).Draw(t, label) == 1
}

// drawDay draws a day of one or two batches with all that a day can have. It may
// have no plan.
func drawDay(t *rapid.T) shoot.Day {
	d := shoot.Day{
		Stations: []shoot.Station{
			{Name: shoot.Hands, Units: 1}, {Name: "bench", Units: 1, Clean: rapid.IntRange(0, 3).Draw(t, "clean")},
			{Name: "oven", Units: rapid.IntRange(1, 2).Draw(t, "ovens")}, {Name: shoot.Camera, Units: 1},
		},
		Setups: map[string]int{"overhead": rapid.IntRange(0, 6).Draw(t, "overhead"), "close": 4},
		From:   rapid.SampledFrom([]int{0, 0, 10}).Draw(t, "from"),
	}
	if rapid.Bool().Draw(t, "lunch") {
		d.Stations[2].Busy = []shoot.Busy{{From: rapid.IntRange(0, 60).Draw(t, "lunch from"), To: 100, Units: 1}}
	}
	for b := range rapid.IntRange(1, 2).Draw(t, "batches") {
		d.Batches = append(d.Batches, drawBatch(t, []string{"shoot", "spare"}[b], b == 0))
	}
	if rapid.Bool().Draw(t, "has a helper") {
		gone := []shoot.Busy{{From: rapid.IntRange(30, 120).Draw(t, "the helper leaves"), Units: 1}}
		d.Stations[0].Units, d.Stations[0].Busy = 2, gone
		d.Stations = append(d.Stations, shoot.Station{Name: "helper", Units: 1, Busy: gone, Within: shoot.Hands})
		d.Given = []shoot.Given{{Task: drawKey(t, d), To: "helper"}}
	}
	if maybe(t, "the light goes", 3) {
		gone := shoot.Busy{From: rapid.IntRange(40, 200).Draw(t, "light until"), Units: 1}
		d.Stations = append(d.Stations, shoot.Station{Name: shoot.Light, Units: 1, Busy: []shoot.Busy{gone}})
	}
	drawFixed(t, &d)
	return d
}

// drawBatch draws up to five steps, in one component or two that are put
// together.
func drawBatch(t *rapid.T, name string, isFilmed bool) shoot.Batch {
	b := shoot.Batch{Name: name, Film: map[recipe.Position]string{}, Opens: map[recipe.Position]string{}}
	if maybe(t, "half an oven", 4) {
		b.Shares = map[string]int{"oven": rapid.IntRange(1, 2).Draw(t, "units of the oven")}
	}
	components := []recipe.Component{{Name: "Dough", Lines: []recipe.Line{{Text: "500 g flour"}}}}
	if rapid.Bool().Draw(t, "two components") {
		components = append(components, recipe.Component{Name: "Cream", Lines: []recipe.Line{{Text: "300 ml cream"}}})
	}
	for k := range rapid.IntRange(1, 5).Draw(t, "steps") {
		station := rapid.SampledFrom([]string{"bench", "oven", "waits"}).Draw(t, "station")
		c := rapid.IntRange(0, len(components)-1).Draw(t, "component")
		s := step(fmt.Sprint("Step ", k), station, station == "bench", rapid.Int64Range(1, 30).Draw(t, "minutes"))
		s.Number = k + 1
		here := recipe.Position{Component: c, Step: len(components[c].Steps)}
		components[c].Steps = append(components[c].Steps, s)
		if isFilmed {
			drawFilm(t, &b, here, station)
		}
	}
	b.Recipe = recipe.Recipe{Components: components}
	return b
}

func drawFilm(t *rapid.T, b *shoot.Batch, at recipe.Position, station string) {
	setup := rapid.SampledFrom([]string{"overhead", "close"}).Draw(t, "setup")
	switch {
	case station == "bench":
		b.Film[at] = setup
	case rapid.Bool().Draw(t, "its beginning is filmed"):
		b.Opens[at] = setup
	}
	if station == "waits" {
		b.Stages = append(b.Stages, shoot.Stage{At: at, Overnight: rapid.Bool().Draw(t, "overnight")})
	}
}

// drawKey draws a step of the day.
func drawKey(t *rapid.T, d shoot.Day) shoot.Key {
	b := rapid.SampledFrom(d.Batches).Draw(t, "of")
	all := b.Recipe.Sequence()
	return shoot.Key{Batch: b.Name, At: rapid.SampledFrom(all).Draw(t, "step").At}
}

// drawFixed draws what is fixed about the day.
func drawFixed(t *rapid.T, d *shoot.Day) {
	if maybe(t, "has a bar", 3) {
		from := rapid.IntRange(0, 40).Draw(t, "barred from")
		d.Bars = []shoot.Bar{{Task: drawKey(t, *d), From: from, To: from + 10}}
	}
	if maybe(t, "has a pin", 3) {
		d.Pins = []shoot.Pin{{Task: drawKey(t, *d), Start: rapid.IntRange(10, 70).Draw(t, "pin")}}
	}
	if maybe(t, "has a wait", 3) {
		w := shoot.Wait{After: drawKey(t, *d), AtLeast: rapid.IntRange(0, 15).Draw(t, "at least"), HasMost: rapid.Bool().Draw(t, "has most")}
		w.AtMost = w.AtLeast + rapid.IntRange(0, 20).Draw(t, "more")
		d.Waits = []shoot.Wait{w}
	}
	if maybe(t, "has a moment", 3) {
		m := shoot.Moment{Name: "guests", At: rapid.IntRange(20, 250).Draw(t, "guests at")}
		if rapid.Bool().Draw(t, "after it") {
			m.After = []shoot.Key{drawKey(t, *d)}
		} else {
			m.Before = []shoot.Key{drawKey(t, *d)}
		}
		d.Moments = []shoot.Moment{m}
	}
	if maybe(t, "backwards", 5) {
		d.Finish = rapid.IntRange(100, 400).Draw(t, "finish")
	}
}
