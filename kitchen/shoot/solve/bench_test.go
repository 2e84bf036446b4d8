package solve_test

import (
	"context"
	"fmt"
	"path/filepath"
	"testing"
	"time"

	"benchproof/kitchen/shoot/project"
	"benchproof/kitchen/shoot/solve"
)

// BenchmarkPublished plans each published instance and prints a row of the
// table: instance, makespan, best known, bound, seconds, steps.
//
//	go test -run XXX -bench Published -benchtime 1x -cpu 1 ./kitchen/shoot/solve
func BenchmarkPublished(b *testing.B) {
	folder := referenceFolder(b)
	for _, i := range readOptima(b, folder) {
		row(b, i.name, readJ30(b, filepath.Join(folder, i.name+".sm")), i.optimum, time.Second)
	}
	row(b, "FT06", readJobShop(b, filepath.Join(folder, "ft06.txt")), 55, time.Second)
	row(b, "FT10", readJobShop(b, filepath.Join(folder, "ft10.txt")), 930, 10*time.Second)
	row(b, "FT20", readJobShop(b, filepath.Join(folder, "ft20.txt")), 1165, 10*time.Second)
}

func row(b *testing.B, name string, p project.Project, known int, budget time.Duration) {
	b.Run(name, func(b *testing.B) {
		for b.Loop() {
			began, reached := time.Now(), time.Duration(0)
			r, err := solve.Plan(context.Background(), p, solve.Options{Budget: budget, Steps: 1 << 40, Progress: func(now solve.Progress) {
				if now.Makespan == known && reached == 0 {
					reached = time.Since(began)
				}
			}})
			if err != nil {
				b.Fatal(err)
			}
			mustBeFeasible(b, p, r.Starts)
			fmt.Printf("%-12s makespan %5d  best known %5d (at %6.3f s)  bound %5d  %6.3f s  %d steps\n",
				name, r.Makespan, known, reached.Seconds(), r.Bound, time.Since(began).Seconds(), r.Steps)
		}
	})
}
