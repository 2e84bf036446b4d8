package solve_test

import (
	"context"
	"fmt"
	"slices"
	"testing"
	"time"

	"pgregory.net/rapid"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/shoot/feasible"
	"benchproof/kitchen/shoot/project"
	"benchproof/kitchen/shoot/solve"
)

// shop draws a project in which every station serves one task at a time, and
// nothing else stands in the way.
func shop(t *rapid.T, tasks int) project.Project {
	var p project.Project
	for r := range rapid.IntRange(1, 3).Draw(t, "stations") {
		p.Stations = append(p.Stations, project.Station{Name: fmt.Sprint("R", r), Capacity: 1})
	}
	for i := range rapid.IntRange(2, tasks).Draw(t, "tasks") {
		task := project.Task{ID: fmt.Sprint("t", i), Minutes: rapid.IntRange(0, 9).Draw(t, "minutes"), LatestEnd: project.None}
		for r := range p.Stations {
			if rapid.IntRange(0, 2).Draw(t, "needs") == 0 {
				task.Needs = append(task.Needs, project.Need{Station: r, Amount: 1})
			}
		}
		if rapid.IntRange(0, 4).Draw(t, "is late") == 0 {
			task.NotBefore = rapid.IntRange(1, 12).Draw(t, "not before")
		}
		p.Tasks = append(p.Tasks, task)
		if i > 0 && rapid.Bool().Draw(t, "follows") {
			p.Waits = append(p.Waits, project.Wait{Before: rapid.IntRange(0, i-1).Draw(t, "before"), After: i, AtLeast: rapid.IntRange(0, 3).Draw(t, "wait"), AtMost: project.None})
		}
	}
	return p
}

func TestTakingTurnsIsFeasibleAndBounded(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := shop(t, 14)
		r, ok := best(t, p)
		if !ok {
			t.Fatal("a shop without limits has a plan")
		}
		if least := solve.Bound(p); least > r.Makespan || r.Bound < least {
			t.Fatalf("bound at first %d, in the end %d, makespan %d", least, r.Bound, r.Makespan)
		}
	})
}

func TestSmallShopsAgreeWithTryingAllPlans(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := shop(t, 4)
		r, ok := best(t, p)
		if !ok || !r.Optimal {
			t.Fatalf("a small shop is not proved: %+v", r)
		}
		if r.Makespan > enough(p) {
			return // too many plans to try them all
		}
		if got := shortest(p, r.Makespan); got != r.Makespan {
			t.Fatalf("makespan %d, one ends at %d", r.Makespan, got)
		}
	})
}

func TestTheFirstBoundIsBelowEveryPlan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := everything(7).draw(t)
		if p.Check() != nil {
			return
		}
		if r, ok := best(t, p); ok && solve.Bound(p) > r.Makespan {
			t.Fatalf("the bound is %d, a plan ends at %d", solve.Bound(p), r.Makespan)
		}
	})
}

// Each bound by hand.
func TestBound(t *testing.T) {
	oven := func(amount int) []project.Need { return []project.Need{{Station: 0, Amount: amount}} }
	task := func(id string, minutes, amount int) project.Task {
		p := project.Task{ID: id, Minutes: minutes, LatestEnd: project.None}
		if amount > 0 {
			p.Needs = oven(amount)
		}
		return p
	}
	for _, c := range []struct {
		name     string
		capacity int
		changes  []project.Level
		tasks    []project.Task
		waits    []project.Wait
		setups   project.Setups
		want     int
	}{
		{name: "nothing", capacity: 1, want: 0},
		{name: "a chain: 10 + 5 + 20", capacity: 1, tasks: []project.Task{task("a", 10, 0), task("b", 20, 0)},
			waits: []project.Wait{{Before: 0, After: 1, AtLeast: 5, AtMost: project.None}}, want: 35},
		{name: "two trays in one oven: 30 + 40", capacity: 1, tasks: []project.Task{task("a", 30, 1), task("b", 40, 1)}, want: 70},
		{name: "three half trays: (30 + 30 + 30) / 2", capacity: 2, tasks: []project.Task{task("a", 30, 1), task("b", 30, 1), task("c", 30, 1)}, want: 45},
		{name: "head and tail: 10 before, 30 + 40, 5 after each", capacity: 1,
			tasks: []project.Task{task("mix", 10, 0), task("a", 30, 1), task("b", 40, 1), task("c", 5, 0), task("d", 5, 0)},
			waits: []project.Wait{{Before: 0, After: 1, AtMost: project.None}, {Before: 0, After: 2, AtMost: project.None}, {Before: 1, After: 3, AtMost: project.None}, {Before: 2, After: 4, AtMost: project.None}},
			want:  85},
		{name: "the oven is taken from 20 to 50: 30 + 40 + 30", capacity: 1, changes: []project.Level{{From: 20, Capacity: 0}, {From: 50, Capacity: 1}},
			tasks: []project.Task{task("a", 30, 1), task("b", 40, 1)}, want: 100},
		{name: "two film tasks and the lesser of two set-ups: 10 + 10 + 4", capacity: 1,
			tasks:  []project.Task{{ID: "a", Minutes: 10, Needs: oven(1), LatestEnd: project.None, Setup: "wide"}, {ID: "b", Minutes: 10, Needs: oven(1), LatestEnd: project.None, Setup: "close"}},
			setups: project.Setups{Minutes: map[string]int{"wide": 4, "close": 9}, Needs: oven(1)}, want: 24},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := project.Project{Stations: []project.Station{{Name: "oven", Capacity: c.capacity, Changes: c.changes}}, Tasks: c.tasks, Waits: c.waits, Setups: c.setups}
			if err := p.Check(); err != nil {
				t.Fatal(err)
			}
			if got := solve.Bound(p); got != c.want {
				t.Errorf("the bound is %d, want %d", got, c.want)
			}
		})
	}
}

// Followed, a plan is never longer; with longer tasks it is still a plan.
func TestFollowIsAPlan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := shop(t, 10)
		r, ok := best(t, p)
		if !ok {
			t.Fatal("no plan")
		}
		again, ok := solve.Follow(p, r.Starts)
		if !ok {
			t.Fatal("a plan cannot be followed")
		}
		mustBeFeasible(t, p, again)
		if p.Makespan(again) > r.Makespan {
			t.Fatalf("followed, the plan ends at %d instead of %d", p.Makespan(again), r.Makespan)
		}
		for i := range p.Tasks {
			p.Tasks[i].Minutes += rapid.IntRange(0, 5).Draw(t, "longer")
		}
		longer, ok := solve.Follow(p, r.Starts)
		if !ok {
			t.Fatal("a slower plan cannot be followed")
		}
		mustBeFeasible(t, p, longer)
	})
}

func TestFollowRefuses(t *testing.T) {
	p := readJobShop(t, "testdata/ft06.txt")
	if _, ok := solve.Follow(p, []int{1, 2, 3}); ok {
		t.Error("three starts are a plan of 36 tasks")
	}
	p.Tasks[3].Minutes = -1
	if _, ok := solve.Follow(p, make([]int, len(p.Tasks))); ok {
		t.Error("an unsound project is planned")
	}
}

// An earlier plan is never made worse, even if there is no time for more.
func TestAnEarlierPlanIsTheLeast(t *testing.T) {
	p := readJ30(t, "testdata/j309_3.sm")
	good := plan(t, p, solve.Options{})
	ctx, stop := context.WithCancel(context.Background())
	stop()
	r, err := solve.Plan(ctx, p, solve.Options{Start: good.Starts})
	if err != nil {
		t.Fatal(err)
	}
	if r.Makespan > good.Makespan {
		t.Errorf("it ends at %d, the plan to start from at %d", r.Makespan, good.Makespan)
	}
	if r = plan(t, p, solve.Options{Start: []int{4, 5}, Steps: 100}); r.Makespan < 68 {
		t.Errorf("a start of another project gives %d", r.Makespan)
	}
}

// Whatever a plan rests on, it is kept even if nobody waits: no order needs to
// lead to it.
func TestAnEarlierPlanIsKeptAsItIs(t *testing.T) {
	kept := 0
	rapid.Check(t, func(t *rapid.T) {
		p := everything(7).draw(t)
		if p.Check() != nil {
			return
		}
		r, ok := best(t, p)
		if !ok {
			return
		}
		start := slices.Clone(r.Starts)
		isMoved := rapid.Bool().Draw(t, "is moved")
		if isMoved && len(start) > 0 {
			start[rapid.IntRange(0, len(start)-1).Draw(t, "task")] += rapid.IntRange(-4, 9).Draw(t, "by")
		}
		ctx, stop := context.WithCancel(context.Background())
		stop()
		again, err := solve.Plan(ctx, p, solve.Options{Start: start})
		isPlan := feasible.Check(p, start) == nil
		if err != nil {
			if isPlan && p.Makespan(start) <= p.Horizon() {
				t.Fatalf("the plan %v is lost: %v", start, err)
			}
			return
		}
		mustBeFeasible(t, p, again.Starts)
		if isPlan && p.Makespan(start) <= p.Horizon() && again.Makespan > p.Makespan(start) {
			t.Fatalf("it ends at %d, the plan to start from at %d", again.Makespan, p.Makespan(start))
		}
		kept++
	})
	if kept == 0 {
		t.Error("no plan was kept")
	}
}

func TestStepsAndBudgetEndTheSearch(t *testing.T) {
	p := readJ30(t, "testdata/j309_3.sm")
	for _, steps := range []int{1, 10, 100} {
		if r := plan(t, p, solve.Options{Steps: steps}); r.Steps > steps+50 {
			t.Errorf("asked for %d steps, %d were taken", steps, r.Steps)
		}
	}
	if r := plan(t, p, solve.Options{Budget: time.Nanosecond}); r.Optimal || r.Steps > 100 {
		t.Errorf("in a nanosecond it took %d steps", r.Steps)
	}
}

// Two seeds may give two plans; both are plans, and the bound holds for both.
func TestSeedsAgreeOnWhatIsProved(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := everything(7).draw(t)
		if p.Check() != nil {
			return
		}
		first, ok := best(t, p)
		if !ok {
			return
		}
		second, err := solve.Plan(context.Background(), p, solve.Options{Steps: 3000, Seed: rapid.Uint64().Draw(t, "seed")})
		if err != nil {
			t.Fatal(err)
		}
		mustBeFeasible(t, p, second.Starts)
		if first.Bound > second.Makespan || second.Bound > first.Makespan || first.Optimal && second.Optimal && first.Makespan != second.Makespan {
			t.Fatalf("%d (bound %d) and %d (bound %d)", first.Makespan, first.Bound, second.Makespan, second.Bound)
		}
	})
}

// Pinned to where a plan has them, tasks can stay there.
func TestAPlanPinnedToItselfIsAPlan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := everything(7).draw(t)
		if p.Check() != nil {
			return
		}
		r, ok := best(t, p)
		if !ok {
			return
		}
		pinned := p
		pinned.Tasks = slices.Clone(p.Tasks)
		for i := range pinned.Tasks {
			if rapid.Bool().Draw(t, "is pinned") {
				pinned.Tasks[i] = pinned.Tasks[i].Pin(r.Starts[i])
			}
		}
		again, err := solve.Plan(context.Background(), pinned, solve.Options{Steps: 3000})
		if fault.KindOf(err) == fault.Invalid && err != nil {
			t.Fatalf("pinned to %v it has no plan: %v", r.Starts, err)
		}
		if err != nil {
			return // not found in time, and not claimed to be impossible
		}
		if broken := feasible.Check(p, again.Starts); broken != nil {
			t.Fatal(broken)
		}
		if again.Makespan < r.Bound || again.Bound > r.Makespan {
			t.Fatalf("pinned %d (bound %d), free %d (bound %d)", again.Makespan, again.Bound, r.Makespan, r.Bound)
		}
	})
}

// A film task that needs no hands, and set-ups that do.
func TestSetupsNeedHandsThatAreFree(t *testing.T) {
	hands, camera := []project.Need{{Station: 0, Amount: 1}}, []project.Need{{Station: 1, Amount: 1}}
	p := project.Project{
		Stations: []project.Station{{Name: "hands", Capacity: 1}, {Name: "camera", Capacity: 1}},
		Tasks: []project.Task{
			{ID: "rise, wide", Minutes: 20, Needs: camera, Setup: "wide", LatestEnd: project.None},
			{ID: "rise, close", Minutes: 20, Needs: camera, Setup: "close", LatestEnd: project.None},
			project.Task{ID: "knead", Minutes: 25, Needs: hands}.Pin(15),
		},
		Setups: project.Setups{Minutes: map[string]int{"wide": 10, "close": 10}, Needs: hands},
		Waits:  []project.Wait{{Before: 0, After: 1, AtMost: project.None}},
	}
	// 20 of the first shot, hands free at 40, 10 for the set-up, 20 of the second.
	if r := plan(t, p, solve.Options{Steps: 2_000}); r.Makespan != 70 {
		t.Errorf("it ends at %d, want 40 + 10 + 20", r.Makespan)
	}
	p.Setups.Needs = nil
	if r := plan(t, p, solve.Options{}); r.Makespan != 50 || !r.Optimal {
		t.Errorf("if nobody is needed it ends at %d, want 20 + 10 + 20, proved", r.Makespan)
	}
}

// One pair of hands films a cake from two sides while it works: the order of
// the shots that needs the fewest moves is found and proved.
func TestTheFewestMovesOfTheCameraAreProved(t *testing.T) {
	hands := []project.Need{{Station: 0, Amount: 1}}
	p := project.Project{
		Stations: []project.Station{{Name: "hands", Capacity: 1}},
		Setups:   project.Setups{Minutes: map[string]int{"wide": 7, "close": 5}, Needs: hands},
	}
	for k, setup := range []string{"wide", "close", "wide", "close", "wide", "close"} {
		p.Tasks = append(p.Tasks, project.Task{ID: fmt.Sprint(k), Minutes: 10, Needs: hands, Setup: setup, LatestEnd: project.None})
	}
	// Six shots of 10, all wide ones first, one move to close: 60 + 5.
	if r := plan(t, p, solve.Options{}); r.Makespan != 65 || !r.Optimal {
		t.Errorf("makespan %d, bound %d, want 65 proved", r.Makespan, r.Bound)
	}
	// The last wide shot must come last: wide, close, wide takes 60 + 5 + 7.
	for k := range 5 {
		if k != 4 {
			p.Waits = append(p.Waits, project.Wait{Before: k, After: 4, AtMost: project.None})
		}
	}
	p.Waits = append(p.Waits, project.Wait{Before: 5, After: 4, AtMost: project.None}, project.Wait{Before: 0, After: 1, AtMost: project.None})
	if r := plan(t, p, solve.Options{}); r.Makespan != 72 || !r.Optimal {
		t.Errorf("makespan %d, bound %d, want 72 proved", r.Makespan, r.Bound)
	}
}

func ExamplePlan() {
	p := project.Project{
		Stations: []project.Station{{Name: "oven", Capacity: 1}},
		Tasks: []project.Task{
			{ID: "knead", Minutes: 10, LatestEnd: project.None},
			{ID: "bake the loaf", Minutes: 40, Needs: []project.Need{{Station: 0, Amount: 1}}, LatestEnd: project.None},
			{ID: "bake the tart", Minutes: 30, Needs: []project.Need{{Station: 0, Amount: 1}}, LatestEnd: project.None},
		},
		Waits: []project.Wait{{Before: 0, After: 1, AtLeast: 20, AtMost: project.None}},
	}
	r, err := solve.Plan(context.Background(), p, solve.Options{})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(r.Starts, r.Makespan, r.Optimal)
	// Output: [0 30 0] 70 true
}
