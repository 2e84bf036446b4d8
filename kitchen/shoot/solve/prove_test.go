package solve_test

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"benchproof/kitchen/shoot/project"
	"benchproof/kitchen/shoot/solve"
)

// The search for a proof agrees with trying all starts, for every minute by
// which a plan may end: where it has all rules, what it finds is a plan; what it
// refutes has none.
func TestProofsAgreeWithTryingAllStarts(t *testing.T) {
	exact := 0
	rapid.Check(t, func(t *rapid.T) {
		p := little(t)
		p.Setups.OfFirst = rapid.Bool().Draw(t, "backwards")
		by := rapid.IntRange(0, min(p.Horizon(), enough(p))).Draw(t, "by")
		starts, isRefuted, isExact := solve.Prove(p, by, 5000)
		switch got := shortest(p, by); {
		case isRefuted && got >= 0:
			t.Fatalf("by %d there is said to be no plan, one ends at %d", by, got)
		case starts != nil && isExact:
			exact++
			mustBeFeasible(t, p, starts)
			if p.Makespan(starts) > by {
				t.Fatalf("by %d was asked, it ends at %d", by, p.Makespan(starts))
			}
		case isExact && !isRefuted:
			t.Fatalf("by %d neither found nor refuted in 5000 contradictions; the shortest ends at %d", by, got)
		}
	})
	if exact == 0 {
		t.Error("no plan was found")
	}
}

// From a plan that is far too long, or from none, the search for a proof comes to
// the shortest of all where it has all rules, and no bound is above that.
func TestProofsFromABadPlan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := little(t)
		p.Setups.OfFirst = rapid.Bool().Draw(t, "backwards")
		r, ok := best(t, p)
		if !ok || r.Makespan > enough(p) {
			t.Skip("no plan, or too many to try them all")
		}
		least := shortest(p, r.Makespan)
		bad := slices.Clone(r.Starts)
		for i := range bad { // all so late that nothing is in its way, which may break its limits
			bad[i] += p.Horizon()
		}
		_, _, isExact := solve.Prove(p, 0, 1)
		for _, from := range [][]int{bad, nil} {
			for _, low := range []bool{true, false} {
				makespan, bound := solve.ProveFrom(p, from, 2000, low)
				if makespan < least || bound > least || !low && isExact && makespan != least {
					t.Fatalf("from %v it comes to %d, bound %d (low: %v); the shortest ends at %d", from, makespan, bound, low, least)
				}
			}
		}
	})
}

// The search for a proof has every rule of set-ups, whoever puts them up, and
// which way time runs.
func TestWhereSetupsAreProved(t *testing.T) {
	for _, c := range []struct {
		name  string
		write func(*sheet)
	}{
		{"one pair of hands", func(*sheet) {}},
		{"nobody is needed", func(s *sheet) { s.Setups.Needs = nil }},
		{"no set-up takes time", func(s *sheet) { s.Setups.Minutes = nil; s.Setups.OfFirst = true }},
		{"two pairs of hands", func(s *sheet) { s.Stations[0].Capacity = 2 }},
		{"hands that go", func(s *sheet) { s.Stations[0].Changes = []project.Level{{From: 500, Capacity: 0}} }},
		{"backwards", func(s *sheet) { s.Setups.OfFirst = true }},
		{"hands and a second thing", func(s *sheet) { s.station("crane", 1); s.setup("close", 5, "hands", "crane") }},
	} {
		t.Run(c.name, func(t *testing.T) {
			var s sheet
			s.station("hands", 1)
			s.setup("wide", 3, "hands")
			s.setup("close", 5, "hands")
			s.shot("wide", 10, "hands")
			s.shot("close", 10, "hands")
			c.write(&s)
			if _, _, got := solve.Prove(s.Project, 100, 100); !got {
				t.Error("rules of the set-ups are left out")
			}
		})
	}
}

// What mends a plan gives one that ends by the minute asked, or nothing.
func TestMendingGivesPlansThatAreShorter(t *testing.T) {
	mended := 0
	rapid.Check(t, func(t *rapid.T) {
		p := drawn{tasks: 8, longest: true, hours: true, limits: true}.draw(t)
		if p.Check() != nil {
			t.Skip("it contradicts itself")
		}
		starts, ok := solve.Serial(p, drawOrder(t, len(p.Tasks)))
		if !ok || p.Makespan(starts) == 0 {
			t.Skip("this order leads nowhere, or no plan is shorter")
		}
		by := p.Makespan(starts) - 1
		found := solve.Mend(p, starts, by, 20, rapid.Uint64().Draw(t, "seed"))
		if found == nil {
			return
		}
		mended++
		mustBeFeasible(t, p, found)
		if p.Makespan(found) > by {
			t.Fatalf("by %d was asked, it ends at %d", by, p.Makespan(found))
		}
	})
	if mended == 0 {
		t.Error("no plan was mended")
	}
}

// What is bred are plans, each once, the shortest first, and none is longer than
// the best that was put in.
func TestBreedingKeepsTheBest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := sound(t, 10)
		starts, ok := solve.Serial(p, drawOrder(t, len(p.Tasks)))
		if !ok {
			t.Skip("this order leads nowhere")
		}
		makespans, members := solve.Breed(p, [][]int{starts, starts}, 200, rapid.Uint64().Draw(t, "seed"))
		if len(members) == 0 || len(members) > 40 || makespans[0] > p.Makespan(starts) || !slices.IsSorted(makespans) {
			t.Fatalf("of a plan that ends at %d were bred %v", p.Makespan(starts), makespans)
		}
		for k, m := range members {
			mustBeFeasible(t, p, m)
			if p.Makespan(m) != makespans[k] || slices.ContainsFunc(members[:k], func(other []int) bool { return slices.Equal(other, m) }) {
				t.Fatalf("plan %d, %v, said to end at %d", k, m, makespans[k])
			}
		}
	})
}

// No rule ranks below zero, and those that look at what follows put a task
// before those that wait for it.
func TestRulesRankWhatComesFirstFirst(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawOpen(t)
		rules := solve.Rules(p)
		for k, rank := range rules {
			if len(rank) != len(p.Tasks) || slices.Min(rank) < 0 {
				t.Fatalf("rule %d ranks %v", k, rank)
			}
		}
		for _, w := range p.Waits {
			for _, k := range []int{0, 1, 3, 4} { // latest start, longest tail, most behind it, earliest start
				if rules[k][w.Before] > rules[k][w.After] {
					t.Fatalf("rule %d ranks %d after %d, which waits for it: %v", k, w.Before, w.After, rules[k])
				}
			}
		}
	})
}
