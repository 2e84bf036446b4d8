package solve_test

import (
	"context"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/shoot/project"
	"benchproof/kitchen/shoot/solve"
)

// solved draws a project of every rule and its plan.
func solved(t *rapid.T, tasks int) (project.Project, solve.Result) {
	p := sound(t, tasks)
	r, ok := best(t, p)
	if !ok {
		t.Skip("it has no plan")
	}
	return p, r
}

// copied is a project of which tasks, waits and stations can be changed.
func copied(p project.Project) project.Project {
	p.Tasks, p.Waits, p.Stations = slices.Clone(p.Tasks), slices.Clone(p.Waits), slices.Clone(p.Stations)
	minutes := map[string]int{}
	for name, m := range p.Setups.Minutes {
		minutes[name] = m
	}
	p.Setups.Minutes = minutes
	return p
}

// asksLess are changes after which all that was a plan still is one.
var asksLess = []struct {
	name string
	less func(t *rapid.T, p *project.Project)
}{
	{"a wait less", func(t *rapid.T, p *project.Project) {
		if n := len(p.Waits); n > 0 {
			k := rapid.IntRange(0, n-1).Draw(t, "wait")
			p.Waits = slices.Delete(p.Waits, k, k+1)
		}
	}},
	{"shorter shortest waits", func(_ *rapid.T, p *project.Project) {
		for k := range p.Waits {
			p.Waits[k].AtLeast /= 2
		}
	}},
	{"longer longest waits", func(_ *rapid.T, p *project.Project) {
		for k := range p.Waits {
			if p.Waits[k].AtMost != project.None {
				p.Waits[k].AtMost += 5
			}
		}
	}},
	{"no longest waits", func(_ *rapid.T, p *project.Project) {
		for k := range p.Waits {
			p.Waits[k].AtMost = project.None
		}
	}},
	{"nothing forbidden", func(_ *rapid.T, p *project.Project) {
		for k := range p.Tasks {
			p.Tasks[k].Forbidden = nil
		}
	}},
	{"earlier earliest starts", func(_ *rapid.T, p *project.Project) {
		for k := range p.Tasks {
			p.Tasks[k].NotBefore /= 2
		}
	}},
	{"later latest ends", func(_ *rapid.T, p *project.Project) {
		for k := range p.Tasks {
			if p.Tasks[k].LatestEnd != project.None {
				p.Tasks[k].LatestEnd += 10
			}
		}
	}},
	{"quicker set-ups", func(_ *rapid.T, p *project.Project) {
		for name := range p.Setups.Minutes {
			p.Setups.Minutes[name] /= 2
		}
	}},
	{"nobody needed to set up", func(_ *rapid.T, p *project.Project) { p.Setups.Needs = nil }},
	{"a task not filmed", func(t *rapid.T, p *project.Project) {
		p.Tasks[rapid.IntRange(0, len(p.Tasks)-1).Draw(t, "task")].Setup = ""
	}},
	{"a task that needs nothing", func(t *rapid.T, p *project.Project) {
		p.Tasks[rapid.IntRange(0, len(p.Tasks)-1).Draw(t, "task")].Needs = nil
	}},
	{"a station that never changes", func(_ *rapid.T, p *project.Project) {
		for k := range p.Stations {
			p.Stations[k].Capacity, p.Stations[k].Changes = p.Stations[k].Peak(), nil
		}
	}},
}

// Whatever asks for less never lengthens a plan.
func TestLessIsNeverLonger(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, before := solved(t, 6)
		c := asksLess[rapid.IntRange(0, len(asksLess)-1).Draw(t, "what")]
		less := copied(p)
		c.less(t, &less)
		mustBeFeasible(t, less, before.Starts)
		after, err := solve.Plan(context.Background(), less, solve.Options{Steps: 5000})
		if fault.KindOf(err) == fault.Invalid && err != nil {
			t.Fatalf("%s: there was a plan, and now: %v", c.name, err)
		}
		if err == nil && (after.Bound > before.Makespan || after.Optimal && after.Makespan > before.Makespan) {
			t.Fatalf("%s: %d before (bound %d), %d after (bound %d)", c.name, before.Makespan, before.Bound, after.Makespan, after.Bound)
		}
	})
}

// Minutes as thirds of a minute: three times as long, and no plan in between is
// shorter.
func TestThriceAsLongTakesThriceAsLong(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, once := solved(t, 5)
		q := copied(p)
		for i := range q.Tasks {
			x := &q.Tasks[i]
			x.Minutes, x.NotBefore = 3*x.Minutes, 3*x.NotBefore
			if x.LatestEnd != project.None {
				x.LatestEnd *= 3
			}
			x.Forbidden = slices.Clone(x.Forbidden)
			for k := range x.Forbidden {
				x.Forbidden[k] = project.Span{From: 3 * x.Forbidden[k].From, To: 3 * x.Forbidden[k].To}
			}
		}
		for k := range q.Waits {
			w := &q.Waits[k]
			if w.AtLeast *= 3; w.AtMost != project.None {
				w.AtMost *= 3
			}
		}
		for name := range q.Setups.Minutes {
			q.Setups.Minutes[name] *= 3
		}
		for k := range q.Stations {
			s := &q.Stations[k]
			s.Changes = slices.Clone(s.Changes)
			for j := range s.Changes {
				s.Changes[j].From *= 3
			}
		}
		thrice, ok := best(t, q)
		if !ok {
			t.Fatal("in thirds of a minute it has no plan")
		}
		if thrice.Bound > 3*once.Makespan || thrice.Optimal && once.Optimal && thrice.Makespan != 3*once.Makespan {
			t.Fatalf("%d (bound %d), in thirds %d (bound %d)", once.Makespan, once.Bound, thrice.Makespan, thrice.Bound)
		}
	})
}

// The order in which tasks, waits and stations are listed is nothing.
func TestTheOrderOfTheListIsNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, before := solved(t, 6)
		order := make([]int, len(p.Tasks))
		for i := range order {
			order[i] = i
		}
		order = rapid.Permutation(order).Draw(t, "order")
		q := project.Project{Setups: p.Setups, Tasks: make([]project.Task, len(p.Tasks))}
		q.Stations = slices.Clone(p.Stations)
		slices.Reverse(q.Stations)
		turn := func(needs []project.Need) (turned []project.Need) {
			for _, n := range needs {
				turned = append(turned, project.Need{Station: len(p.Stations) - 1 - n.Station, Amount: n.Amount})
			}
			return turned
		}
		for i, x := range p.Tasks {
			x.Needs = turn(x.Needs)
			q.Tasks[order[i]] = x
		}
		q.Setups.Needs = turn(p.Setups.Needs)
		for _, w := range p.Waits {
			w.Before, w.After = order[w.Before], order[w.After]
			q.Waits = append(q.Waits, w)
		}
		after, ok := best(t, q)
		if !ok {
			t.Fatal("in another order it has no plan")
		}
		if after.Bound > before.Makespan || before.Bound > after.Makespan || before.Optimal && after.Optimal && before.Makespan != after.Makespan {
			t.Fatalf("%d (bound %d), in another order %d (bound %d)", before.Makespan, before.Bound, after.Makespan, after.Bound)
		}
	})
}

// Two kitchens that have nothing to do with each other take as long as the
// longer one.
func TestTwoKitchensSideBySide(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rules := drawn{tasks: 4, longest: true, hours: true, limits: true}
		p, q := rules.draw(t), rules.draw(t)
		if p.Check() != nil || q.Check() != nil {
			t.Skip("one contradicts itself")
		}
		one, ok := best(t, p)
		other, also := best(t, q)
		if !ok || !also {
			t.Skip("one has no plan")
		}
		both := copied(p)
		for _, s := range q.Stations {
			s.Name += " next door"
			both.Stations = append(both.Stations, s)
		}
		for _, x := range q.Tasks {
			x.ID += " next door"
			x.Needs = slices.Clone(x.Needs)
			for k := range x.Needs {
				x.Needs[k].Station += len(p.Stations)
			}
			both.Tasks = append(both.Tasks, x)
		}
		for _, w := range q.Waits {
			w.Before, w.After = w.Before+len(p.Tasks), w.After+len(p.Tasks)
			both.Waits = append(both.Waits, w)
		}
		r, ok := best(t, both)
		if longer := max(one.Makespan, other.Makespan); !ok || r.Bound > longer || r.Optimal && one.Optimal && other.Optimal && r.Makespan != longer {
			t.Fatalf("%d and %d alone, together %+v", one.Makespan, other.Makespan, r)
		}
	})
}

// With the same project, seed and steps the plan is the same.
func TestAnyPlanComesAgain(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, _ := solved(t, 6)
		o := solve.Options{Steps: rapid.IntRange(1, 600).Draw(t, "steps"), Seed: rapid.Uint64().Draw(t, "seed")}
		first, err := solve.Plan(context.Background(), p, o)
		again, errAgain := solve.Plan(context.Background(), p, o)
		if diff := cmp.Diff(first, again); diff != "" || fault.Say(err) != fault.Say(errAgain) {
			t.Fatalf("%v, %v\n%s", err, errAgain, diff)
		}
	})
}

// Stopped after any number of tellings, a search gives a feasible plan, with a
// bound that holds, as good as what it told.
func TestASearchCanBeStoppedAtAnyTime(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, full := solved(t, 9)
		stopAt := rapid.IntRange(1, 6).Draw(t, "tellings")
		ctx, stop := context.WithCancel(context.Background())
		defer stop()
		var last solve.Progress
		told := 0
		r, err := solve.Plan(ctx, p, solve.Options{Steps: 2000, Seed: rapid.Uint64().Draw(t, "seed"), Progress: func(now solve.Progress) {
			if told++; told == stopAt {
				stop()
			}
			if told > 1 && (now.Bound < last.Bound || last.Makespan >= 0 && (now.Makespan < 0 || now.Makespan > last.Makespan)) {
				t.Fatalf("%+v is told after %+v", now, last)
			}
			last = now
		}})
		if err != nil {
			if fault.KindOf(err) != fault.Busy || last.Makespan >= 0 {
				t.Fatalf("%v, and a plan of %d was told", err, last.Makespan)
			}
			return
		}
		mustBeFeasible(t, p, r.Starts)
		if r.Makespan != last.Makespan || r.Bound != last.Bound || r.Bound > full.Makespan || r.Makespan < full.Bound {
			t.Fatalf("stopped at %+v; told %+v; the full search %+v", r, last, full)
		}
	})
}

// A plan to start from is never made worse, if its order can be kept.
func TestAPlanToStartFromIsTheLeast(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := shop(t, 10)
		before, ok := best(t, p)
		if !ok {
			t.Fatal("no plan")
		}
		after, err := solve.Plan(context.Background(), p, solve.Options{Steps: 1, Start: before.Starts})
		if err != nil || after.Makespan > before.Makespan {
			t.Fatalf("%+v, %v: begun with a plan that ends at %d", after, err, before.Makespan)
		}
		mustBeFeasible(t, p, after.Starts)
	})
}

// Followed, the order of any plan of any project leads to a plan, or to none.
func TestWhatIsFollowedIsAPlan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, r := solved(t, 8)
		q := copied(p)
		for i := range q.Tasks {
			if _, isPinned := q.Tasks[i].Fixed(); !isPinned {
				q.Tasks[i].Minutes += rapid.IntRange(0, 3).Draw(t, "longer")
			}
		}
		if starts, ok := solve.Follow(q, r.Starts); ok {
			mustBeFeasible(t, q, starts)
		}
	})
}
