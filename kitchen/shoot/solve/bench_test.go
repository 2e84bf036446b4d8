package solve_test

import (
	"context"
	"fmt"
	"math/rand/v2"
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

// random draws a project of PSPLIB's kind: 1.8 followers a task, four stations
// of which a task needs about three in four, each able to serve a few at once.
func random(tasks int, seed uint64, capacity int) project.Project {
	r := rand.New(rand.NewPCG(seed, 120))
	var p project.Project
	for s := range 4 {
		p.Stations = append(p.Stations, project.Station{Name: fmt.Sprint("R", s), Capacity: capacity})
	}
	for i := range tasks {
		t := project.Task{ID: fmt.Sprint(i), Minutes: 1 + r.IntN(10), LatestEnd: project.None}
		for s := range p.Stations {
			if r.IntN(4) > 0 {
				t.Needs = append(t.Needs, project.Need{Station: s, Amount: 1 + r.IntN(10)})
			}
		}
		p.Tasks = append(p.Tasks, t)
		for range 2 {
			if before := i - 1 - r.IntN(25); before >= 0 && r.IntN(10) > 0 {
				p.Waits = append(p.Waits, project.Wait{Before: before, After: i, AtMost: project.None})
			}
		}
	}
	return p
}

// kitchen draws a shoot day: batches that are mixed, left to prove, shaped
// within half an hour, baked, cooled and filmed, by one pair of hands.
func kitchen(tasks int, seed uint64) project.Project {
	r := rand.New(rand.NewPCG(seed, 80))
	p := project.Project{
		Stations: []project.Station{{Name: "hands", Capacity: 1}, {Name: "oven", Capacity: 2}, {Name: "hob", Capacity: 4}, {Name: "camera", Capacity: 1}},
		Setups:   project.Setups{Minutes: map[string]int{"overhead": 4, "close": 6, "wide": 8}, Needs: []project.Need{{Station: 0, Amount: 1}}},
	}
	hands, film := []project.Need{{Station: 0, Amount: 1}}, []project.Need{{Station: 0, Amount: 1}, {Station: 3, Amount: 1}}
	add := func(minutes int, needs []project.Need, setup string) {
		p.Tasks = append(p.Tasks, project.Task{ID: fmt.Sprint(len(p.Tasks)), Minutes: minutes, Needs: needs, Setup: setup, LatestEnd: project.None})
	}
	setups := []string{"overhead", "close", "wide"}
	for len(p.Tasks) < tasks {
		first := len(p.Tasks)
		add(3+r.IntN(6), hands, "")
		add(3+r.IntN(8), film, setups[r.IntN(3)])
		add(20+r.IntN(70), nil, "")
		add(4+r.IntN(8), film, setups[r.IntN(3)])
		add(10+r.IntN(30), []project.Need{{Station: 1 + r.IntN(2), Amount: 1}}, "")
		add(2+r.IntN(5), hands, "")
		for k := first + 1; k < len(p.Tasks); k++ {
			w := project.Wait{Before: k - 1, After: k, AtMost: project.None}
			if k == first+3 {
				w.AtMost = 40
			}
			p.Waits = append(p.Waits, w)
		}
	}
	return p
}

// BenchmarkDrawn plans drawn projects for two seconds; best known is what a
// minute finds.
//
//	go test -run XXX -bench Drawn -benchtime 1x -cpu 1 ./kitchen/shoot/solve
func BenchmarkDrawn(b *testing.B) {
	for _, c := range []struct {
		name    string
		project project.Project
		known   int
	}{
		{"random 120 wide", random(120, 1, 40), 116},
		{"random 120 mid", random(120, 2, 25), 125},
		{"random 120 tight", random(120, 3, 15), 251},
		{"kitchen 60", kitchen(60, 1), 238},
		{"kitchen 120", kitchen(120, 2), 520},
	} {
		row(b, c.name, c.project, c.known, 2*time.Second)
	}
}

// BenchmarkReplan plans 80 tasks of a kitchen anew from an earlier plan.
func BenchmarkReplan(b *testing.B) {
	p := kitchen(80, 3)
	first, err := solve.Plan(context.Background(), p, solve.Options{Steps: 2000})
	if err != nil {
		b.Fatal(err)
	}
	p.Tasks[0].Minutes += 15
	for b.Loop() {
		r, err := solve.Plan(context.Background(), p, solve.Options{Steps: 2000, Start: first.Starts})
		if err != nil {
			b.Fatal(err)
		}
		b.ReportMetric(float64(r.Makespan)/float64(r.Bound), "makespan/bound")
	}
}
