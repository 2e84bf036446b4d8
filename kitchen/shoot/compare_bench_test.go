package shoot_test

import (
	"context"
	"fmt"
	"math/rand/v2"
	"testing"

	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shoot"
	"benchproof/kitchen/shoot/solve"
)

// kitchenDay draws a day like a creator's: a recipe of three to five components
// that are put together, filmed by one pair of hands, sometimes with a spare
// make, a helper for some hours, or a finish to plan backwards from.
func kitchenDay(seed uint64, hasHelper, isBackwards bool) shoot.Day {
	r := rand.New(rand.NewPCG(seed, 31))
	b := shoot.Batch{Name: "shoot", Film: map[recipe.Position]string{}, Opens: map[recipe.Position]string{}}
	for c := range 3 + r.IntN(3) {
		b.Recipe.Components = append(b.Recipe.Components, kitchenComponent(r, &b, c))
	}
	b.Stages = b.Stages[:min(6, len(b.Stages))]
	d := shoot.Day{
		Stations: []shoot.Station{
			{Name: shoot.Hands, Units: 1}, {Name: "bench", Units: 1, Clean: r.IntN(3)},
			{Name: "oven", Units: 1}, {Name: "hob", Units: 2}, {Name: shoot.Camera, Units: 1},
		},
		Setups: map[string]int{"overhead": 5, "close": 5, "hob": 5}, From: 120,
		Batches: []shoot.Batch{b},
	}
	if r.IntN(2) == 0 {
		d.Batches = append(d.Batches, shoot.Batch{Name: "spare", Recipe: b.Recipe})
	}
	if hasHelper {
		gone := []shoot.Busy{{From: 240 + r.IntN(120), Units: 1}}
		d.Stations[0].Units, d.Stations[0].Busy = 2, gone
		d.Stations = append(d.Stations, shoot.Station{Name: "helper", Units: 1, Busy: gone, Within: shoot.Hands})
	}
	if isBackwards {
		d.Finish = 1200
	}
	return d
}

// kitchenComponent draws three to seven steps: work, of which most is filmed, and
// waits between.
func kitchenComponent(r *rand.Rand, b *shoot.Batch, c int) recipe.Component {
	component := recipe.Component{Name: fmt.Sprint("Part ", c+1), Lines: []recipe.Line{{Text: "500 g flour"}}}
	setups := []string{"overhead", "close", "hob"}
	for k := range 3 + r.IntN(5) {
		here := recipe.Position{Component: c, Step: k}
		if k%2 == 1 {
			minutes := 20 + r.Int64N(80)
			component.Steps = append(component.Steps, step("Leave", []string{"waits", "fridge", "oven"}[r.IntN(3)], false, minutes))
			b.Stages = append(b.Stages, shoot.Stage{At: here, Overnight: component.Steps[k].Station == "fridge"})
			if r.IntN(4) == 0 {
				b.Opens[here] = setups[r.IntN(3)]
			}
			continue
		}
		component.Steps = append(component.Steps, step("Work", []string{"bench", "hob"}[r.IntN(2)], true, 4+r.Int64N(16)))
		if r.IntN(3) > 0 {
			b.Film[here] = setups[r.IntN(3)]
		}
	}
	return component
}

// BenchmarkComparison compares swap-outs on drawn days and tells how many of the
// columns are proved best: 88, 95, 92 and 88 of 100, at 0.1 to 0.2 s a day on one
// core. What is left are days of two makes that keep the hands busy throughout.
//
//	go test -run XXX -bench Comparison -benchtime 1x -cpu 1 ./kitchen/shoot
func BenchmarkComparison(b *testing.B) {
	for _, kind := range []struct {
		name                   string
		hasHelper, isBackwards bool
	}{{"one pair of hands", false, false}, {"a helper", true, false}, {"backwards", false, true}, {"a helper, backwards", true, true}} {
		b.Run(kind.name, func(b *testing.B) {
			for b.Loop() {
				columns, proved, edges := 0, 0, 0
				for seed := range uint64(25) {
					d := kitchenDay(seed, kind.hasHelper, kind.isBackwards)
					options, err := d.SwapOuts(context.Background(), shoot.MaxSwapOuts, solve.Options{Steps: 20_000})
					if err != nil {
						b.Fatal(seed, err)
					}
					for _, o := range options {
						edge, _ := sooner(d, o)
						columns, edges = columns+1, edges+edge
						if o.Optimal {
							proved++
						}
					}
				}
				b.ReportMetric(100*float64(proved)/float64(columns), "%proved")
				b.ReportMetric(float64(edges)/float64(columns), "minutes/column")
			}
		})
	}
}
