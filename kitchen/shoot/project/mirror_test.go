package project_test

import (
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/shoot/feasible"
	"benchproof/kitchen/shoot/project"
)

// Backwards from a finish, a plan is a plan just if it is one forwards: every
// way to start the tasks is tried.
func TestAPlanIsAPlanInTheMirror(t *testing.T) {
	plans := 0
	rapid.Check(t, func(t *rapid.T) {
		p := sound(t)
		finish := rapid.IntRange(2, 8).Draw(t, "finish")
		m := p.Mirror(finish)
		if err := (project.Project{Stations: m.Stations}).Check(); err != nil {
			t.Fatalf("to finish by %d: %v", finish, err)
		}
		within(p, finish, func(starts []int) bool {
			turned := p.MirrorStarts(starts, finish)
			forwards, backwards := feasible.Check(p, starts), feasible.Check(m, turned)
			if (forwards == nil) != (backwards == nil) {
				t.Fatalf("%v to finish by %d: forwards %q, backwards %v %q", starts, finish, forwards, turned, backwards)
			}
			if forwards == nil {
				plans++
			}
			if again := p.MirrorStarts(turned, finish); !slices.Equal(again, starts) {
				t.Fatalf("turned twice, %v are %v", starts, again)
			}
			return true
		})
	})
	if plans == 0 {
		t.Error("no plan was looked at")
	}
}

// Twice backwards is forwards, but for what the finish cuts off.
func TestTwiceBackwardsIsForwards(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := sound(t)
		finish := rapid.IntRange(4, 8).Draw(t, "finish")
		twice := p.Mirror(finish).Mirror(finish)
		within(p, finish, func(starts []int) bool {
			if once, again := feasible.Check(p, starts), feasible.Check(twice, starts); (once == nil) != (again == nil) {
				t.Fatalf("%v: at first %q, then %q", starts, once, again)
			}
			return true
		})
		if diff := cmp.Diff(p.Waits, twice.Waits); diff != "" {
			t.Fatalf("waits (-at first +in the end):\n%s", diff)
		}
		if diff := cmp.Diff(p.Setups, twice.Setups); diff != "" {
			t.Fatalf("set-ups (-at first +in the end):\n%s", diff)
		}
	})
}

// The project that is mirrored stays as it was.
func TestAMirrorChangesNothing(t *testing.T) {
	p, same := chain(), chain()
	for _, q := range []*project.Project{&p, &same} {
		q.Tasks[1].Forbidden = []project.Span{{From: 5, To: 9}}
		q.Setups.Minutes = map[string]int{"wide": 4}
	}
	p.Mirror(60)
	if diff := cmp.Diff(same, p); diff != "" {
		t.Error(diff)
	}
}

func TestMirroredLimitsByHand(t *testing.T) {
	for _, c := range []struct {
		name   string
		task   project.Task
		finish int
		want   project.Task
	}{
		{"free", task("x", 10), 60, project.Task{ID: "x", Minutes: 10, LatestEnd: 60}},
		{"not before 20: by 60 − 20, backwards", project.Task{ID: "x", Minutes: 10, NotBefore: 20, LatestEnd: project.None}, 60,
			project.Task{ID: "x", Minutes: 10, LatestEnd: 40}},
		{"by 45: not before 60 − 45, backwards", project.Task{ID: "x", Minutes: 10, LatestEnd: 45}, 60,
			project.Task{ID: "x", Minutes: 10, NotBefore: 15, LatestEnd: 60}},
		{"by 100, which is after the finish", project.Task{ID: "x", Minutes: 10, LatestEnd: 100}, 60, project.Task{ID: "x", Minutes: 10, LatestEnd: 60}},
		{"pinned to 30 to 40: to 20 to 30, backwards", task("x", 10).Pin(30), 60, project.Task{ID: "x", Minutes: 10, NotBefore: 20, LatestEnd: 30}},
		{"not before a minute after the finish: by no minute there is", project.Task{ID: "x", NotBefore: 61, LatestEnd: project.None}, 60,
			project.Task{ID: "x", LatestEnd: -2}},
		{"barred from 50 to the end and after it", project.Task{ID: "x", LatestEnd: project.None, Forbidden: []project.Span{{From: 50, To: 90}}}, 60,
			project.Task{ID: "x", LatestEnd: 60, Forbidden: []project.Span{{From: 0, To: 10}}}},
		{"barred after the end alone", project.Task{ID: "x", LatestEnd: project.None, Forbidden: []project.Span{{From: 60, To: 90}}}, 60,
			project.Task{ID: "x", LatestEnd: 60}},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := project.Project{Tasks: []project.Task{c.task}}.Mirror(c.finish).Tasks[0]
			if diff := cmp.Diff(c.want, got); diff != "" {
				t.Error(diff)
			}
		})
	}
}
