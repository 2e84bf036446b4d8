package solve_test

import (
	"fmt"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"benchproof/kitchen/shoot/project"
	"benchproof/kitchen/shoot/solve"
)

// mustBe checks a plan against an optimum that is known from elsewhere: nothing
// is shorter, no bound is above it, and it is found.
func mustBe(t *rapid.T, p project.Project, optimum int) {
	r, ok := best(t, p)
	if !ok {
		t.Fatalf("no plan, one ends at %d", optimum)
	}
	if r.Makespan != optimum || r.Bound > optimum {
		t.Fatalf("makespan %d, bound %d; the optimum is %d", r.Makespan, r.Bound, optimum)
	}
}

// minutes draws the minutes of so many jobs at two stations.
func minutes(t *rapid.T, jobs int) (first, second []int) {
	for range rapid.IntRange(1, jobs).Draw(t, "jobs") {
		first = append(first, rapid.IntRange(1, 9).Draw(t, "first"))
		second = append(second, rapid.IntRange(1, 9).Draw(t, "second"))
	}
	return first, second
}

// Two stations, every job first at one and then at the other: S. M. Johnson's
// rule gives a best order, jobs that are shorter at the first station by their
// minutes there, then the others by their minutes at the second, the longest
// first (Naval Research Logistics Quarterly 1, 1954; from memory).
func TestTwoStationsInTurnAsJohnsonPlansThem(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		first, second := minutes(t, 6)
		var s sheet
		s.station("mixer", 1)
		s.station("oven", 1)
		var order []int
		for i := range first {
			s.row(s.task(first[i], "mixer"), s.task(second[i], "oven"))
			order = append(order, i)
		}
		slices.SortStableFunc(order, func(a, b int) int {
			isEarlyA, isEarlyB := first[a] < second[a], first[b] < second[b]
			switch {
			case isEarlyA && isEarlyB:
				return first[a] - first[b]
			case isEarlyA:
				return -1
			case isEarlyB:
				return 1
			}
			return second[b] - second[a]
		})
		mixed, baked := 0, 0
		for _, i := range order {
			mixed += first[i]
			baked = max(baked, mixed) + second[i]
		}
		mustBe(t, s.Project, baked)
	})
}

// Two stations, every job at both in whatever order: the busier station, or the
// longest job, and no more (T. Gonzalez and S. Sahni, Journal of the ACM 23,
// 1976; from memory).
func TestTwoStationsInAnyOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		first, second := minutes(t, 5)
		var s sheet
		s.station("mixer", 1)
		s.station("oven", 1)
		sumFirst, sumSecond, longest := 0, 0, 0
		for i := range first {
			dish := fmt.Sprint("dish ", i) // is in one place at a time
			s.station(dish, 1)
			s.task(first[i], "mixer", dish)
			s.task(second[i], "oven", dish)
			sumFirst, sumSecond, longest = sumFirst+first[i], sumSecond+second[i], max(longest, first[i]+second[i])
		}
		mustBe(t, s.Project, max(sumFirst, sumSecond, longest))
	})
}

// Two ovens alike: the fullest is as full as the fairest division of the trays
// makes it, found by trying every division.
func TestTwoOvensShareAsFairlyAsCanBe(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		trays := rapid.SliceOfN(rapid.IntRange(1, 12), 1, 8).Draw(t, "trays")
		var s sheet
		s.station("oven", 2)
		sum := 0
		for _, minutes := range trays {
			s.task(minutes, "oven")
			sum += minutes
		}
		fairest := sum
		for which := range 1 << len(trays) {
			one := 0
			for k, minutes := range trays {
				if which>>k&1 == 1 {
					one += minutes
				}
			}
			fairest = min(fairest, max(one, sum-one))
		}
		mustBe(t, s.Project, fairest)
	})
}

// Steps of a minute, each but the last with one that waits for it: those with
// the longest way to the end first is best (T. C. Hu, Operations Research 9,
// 1961; from memory).
func TestAssemblyAsHuPlansIt(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n, hands := rapid.IntRange(1, 9).Draw(t, "steps"), rapid.IntRange(1, 3).Draw(t, "hands")
		var s sheet
		s.station("hands", hands)
		way, next, waits := make([]int, n), make([]int, n), make([]int, n)
		for range n {
			s.task(1, "hands")
		}
		next[n-1] = -1
		for i := n - 2; i >= 0; i-- {
			next[i] = rapid.IntRange(i+1, n-1).Draw(t, "next")
			way[i] = way[next[i]] + 1
			waits[next[i]]++
			s.row(i, next[i])
		}
		var ready []int
		for i := range n {
			if waits[i] == 0 {
				ready = append(ready, i)
			}
		}
		minute := 0
		for ; len(ready) > 0; minute++ {
			slices.SortStableFunc(ready, func(a, b int) int { return way[b] - way[a] })
			now := slices.Clone(ready[:min(hands, len(ready))])
			ready = slices.Clone(ready[len(now):])
			for _, i := range now {
				if j := next[i]; j >= 0 {
					if waits[j]--; waits[j] == 0 {
						ready = append(ready, j)
					}
				}
			}
		}
		mustBe(t, s.Project, minute)
	})
}

// Without stations a plan is as long as its longest chain.
func TestWithoutStationsTheLongestChainCounts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var s sheet
		longest := 0
		var ends []int
		for i := range rapid.IntRange(1, 12).Draw(t, "tasks") {
			minutes := rapid.IntRange(0, 9).Draw(t, "minutes")
			s.task(minutes)
			start := 0
			for j := range i {
				if rapid.IntRange(0, 2).Draw(t, "follows") == 0 {
					wait := rapid.IntRange(0, 5).Draw(t, "wait")
					s.wait(j, i, wait, project.None)
					start = max(start, ends[j]+wait)
				}
			}
			ends = append(ends, start+minutes)
			longest = max(longest, start+minutes)
		}
		r, ok := best(t, s.Project)
		if !ok || r.Makespan != longest || !r.Optimal {
			t.Fatalf("%+v, want %d, proved", r, longest)
		}
	})
}

// Shots by one pair of hands, in any order: each setup but the dearest is put up
// once.
func TestShotsAreSortedBySetup(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var s sheet
		s.station("hands", 1)
		sum, setups, dearest := 0, 0, 0
		seen := map[string]bool{}
		for _, name := range []string{"wide", "close", "overhead"} {
			s.setup(name, rapid.IntRange(0, 6).Draw(t, name), "hands")
		}
		for range rapid.IntRange(1, 6).Draw(t, "shots") {
			name, minutes := rapid.SampledFrom([]string{"wide", "close", "overhead"}).Draw(t, "setup"), rapid.IntRange(1, 9).Draw(t, "minutes")
			s.shot(name, minutes, "hands")
			sum += minutes
			if !seen[name] {
				seen[name] = true
				setups, dearest = setups+s.Setups.Minutes[name], max(dearest, s.Setups.Minutes[name])
			}
		}
		mustBe(t, s.Project, sum+setups-dearest)
	})
}

// One pair of hands, and work that comes in during the day: it is done as it
// comes, and never waited for while there is some.
func TestOnePairOfHandsWorksAsItComes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var s sheet
		s.station("hands", 1)
		type work struct{ comes, minutes int }
		var all []work
		for range rapid.IntRange(1, 8).Draw(t, "tasks") {
			w := work{rapid.IntRange(0, 25).Draw(t, "comes"), rapid.IntRange(1, 9).Draw(t, "minutes")}
			s.Tasks[s.task(w.minutes, "hands")].NotBefore = w.comes
			all = append(all, w)
		}
		slices.SortFunc(all, func(a, b work) int { return a.comes - b.comes })
		now := 0
		for _, w := range all {
			now = max(now, w.comes) + w.minutes
		}
		mustBe(t, s.Project, now)
	})
}

// The jobs of FT06 one after the other take their sum of 197, and its busiest
// machine and its longest job are below every plan (facts.md table 13).
func TestTheBoundsOfFT06(t *testing.T) {
	p := readJobShop(t, "testdata/ft06.txt")
	sum := 0
	for _, x := range p.Tasks {
		sum += x.Minutes
	}
	if sum != 197 || p.Horizon() != 197 {
		t.Errorf("the sum is %d, the horizon %d; want 197", sum, p.Horizon())
	}
	if bound := solve.Bound(p); bound < 47 || bound > 55 {
		t.Errorf("the bound is %d; the longest job takes 47, the optimum is 55", bound)
	}
	alone := p
	alone.Stations = slices.Clone(p.Stations)
	for k := range alone.Stations {
		alone.Stations[k].Capacity = 6
	}
	if r := plan(t, alone, solve.Options{}); r.Makespan != 47 || !r.Optimal {
		t.Errorf("if nothing waits for a machine it ends at %d, want 47: the longest job", r.Makespan)
	}
}
