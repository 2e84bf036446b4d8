package nogood_test

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"testing"

	"benchproof/kitchen/shoot/nogood"
)

// all tells whether all bounds hold of values.
func all(lits []nogood.Lit, values []int) bool {
	return !slices.ContainsFunc(lits, func(l nogood.Lit) bool { return !l.Holds(values) })
}

// some tells whether one of the bounds holds of values.
func some(lits []nogood.Lit, values []int) bool {
	return slices.ContainsFunc(lits, func(l nogood.Lit) bool { return l.Holds(values) })
}

// everyValue lists what all of the model's variables are in each solution: the
// puzzle's own, and then the bits that say who is first.
func (p *puzzle) everyValue() [][]int {
	every := p.solutions()
	for k, v := range every {
		for _, pair := range p.pairs {
			isFirst := 0
			if v[pair[0]] < v[pair[1]] {
				isFirst = 1
			}
			every[k] = append(every[k], isFirst)
		}
	}
	return every
}

// walk assumes open bounds by chance until there are none, or a contradiction,
// which it passes to clash, once it has shown each state to at.
func (p *puzzle) walk(random *rand.Rand, at func(), clash func()) {
	m := &p.model
	if !m.Conclude() {
		return
	}
	for {
		at()
		var open []nogood.Lit
		for i, v := range p.vars {
			for n := p.lo[i]; n <= p.hi[i]+1; n++ {
				for _, l := range []nogood.Lit{v.AtLeast(n), v.AtLeast(n).Not()} {
					if !m.IsTrue(l) && !m.IsFalse(l) {
						open = append(open, l)
					}
				}
			}
		}
		if len(open) == 0 {
			return
		}
		if !m.Assume(open[random.IntN(len(open))]) {
			clash()
			return
		}
	}
}

// What is concluded follows from its reasons in every solution, and each reason
// held before.
func TestConclusionsFollowFromTheirReasons(t *testing.T) {
	concluded := 0
	for seed := range uint64(400) {
		random := rand.New(rand.NewPCG(seed, 3))
		p := drawPuzzle(random)
		every := p.everyValue()
		if len(every) > 300 {
			continue
		}
		for range 5 {
			p.model.BackTo(0)
			p.walk(random, func() {
				for _, c := range p.model.Conclusions() {
					concluded++
					p.mustFollow(t, seed, c, every)
				}
			}, func() {})
		}
	}
	if concluded < 20_000 {
		t.Errorf("only %d conclusions were looked at", concluded)
	}
}

func (p *puzzle) mustFollow(t *testing.T, seed uint64, c nogood.Conclusion, every [][]int) {
	t.Helper()
	for _, l := range c.Because {
		if !p.model.IsTrue(l) || p.model.PlaceOf(l) >= c.Place {
			t.Fatalf("seed %d: of the reasons %v of %v, %v did not hold before", seed, c.Because, c.Lit, l)
		}
	}
	for _, v := range every {
		if all(c.Because, v) && !c.Lit.Holds(v) {
			t.Fatalf("seed %d: %v does not follow from %v: there is %v", seed, c.Lit, c.Because, v)
		}
	}
}

// Bounds that stand without assumptions shut no solution out.
func TestNoBoundShutsASolutionOut(t *testing.T) {
	for seed := range uint64(200) {
		p := drawPuzzle(rand.New(rand.NewPCG(seed, 4)))
		solutions := p.solutions()
		if !p.model.Conclude() && len(solutions) > 0 {
			t.Fatalf("seed %d: a contradiction, and %d solutions", seed, len(solutions))
		}
		for _, values := range solutions {
			for i, v := range p.vars {
				if lo, hi := p.model.Bounds(v); values[i] < lo || values[i] > hi {
					t.Fatalf("seed %d: variable %d is %d in a solution, its bounds are %d and %d", seed, i, values[i], lo, hi)
				}
			}
		}
	}
}

// The bounds of a contradiction are true, and no solution has them all.
func TestAContradictionIsOne(t *testing.T) {
	contradictions := 0
	for seed := range uint64(300) {
		random := rand.New(rand.NewPCG(seed, 5))
		p := drawPuzzle(random)
		every := p.everyValue()
		p.walk(random, func() {}, func() {
			contradictions++
			clash := p.model.Clash()
			for _, l := range clash {
				if !p.model.IsTrue(l) {
					t.Fatalf("seed %d: %v is part of the contradiction %v and does not hold", seed, l, clash)
				}
			}
			for _, v := range every {
				if all(clash, v) {
					t.Fatalf("seed %d: the contradiction %v has the solution %v", seed, clash, v)
				}
			}
		})
	}
	if contradictions < 100 {
		t.Errorf("only %d contradictions", contradictions)
	}
}

// lesson is what a contradiction taught.
type lesson struct {
	lits         []nogood.Lit
	back, spread int
}

// mustTeach checks a lesson while its contradiction stands: no solution is
// against it, all its bounds are false, and only the first one because of the
// last assumption that took part.
func (p *puzzle) mustTeach(t *testing.T, seed uint64, l lesson, every [][]int) {
	t.Helper()
	for _, v := range every {
		if !some(l.lits, v) {
			t.Fatalf("seed %d: the solution %v is against the learned rule %v", seed, v, l.lits)
		}
	}
	top := p.model.Levels()
	levels := map[int]bool{}
	for k, lit := range l.lits {
		if !p.model.IsFalse(lit) {
			t.Fatalf("seed %d: %v of the learned rule %v is not false", seed, lit, l.lits)
		}
		level := p.model.LevelOf(lit.Not())
		if (k == 0) != (level == top) || k == 1 && level != l.back || k > 1 && level > l.back {
			t.Fatalf("seed %d: the %d. bound of the rule is of level %d, the contradiction of %d, the way back to %d", seed, k+1, level, top, l.back)
		}
		levels[level] = true
	}
	if len(levels) != l.spread || len(l.lits) == 1 && l.back != 0 {
		t.Fatalf("seed %d: a rule over %d levels is said to go over %d, and back to %d", seed, len(levels), l.spread, l.back)
	}
}

// What a contradiction teaches is true, is broken now, and says, a step further
// back, what was decided wrongly.
func TestWhatAContradictionTeaches(t *testing.T) {
	lessons := 0
	for seed := range uint64(600) {
		random := rand.New(rand.NewPCG(seed, 6))
		p := drawPuzzle(random)
		every := p.everyValue()
		p.walk(random, func() {}, func() {
			for {
				lits, back, spread, ok := p.model.Analyse()
				if !ok {
					if len(every) > 0 {
						t.Fatalf("seed %d: it rests on no assumption, and there is the solution %v", seed, every[0])
					}
					return
				}
				lessons++
				p.mustTeach(t, seed, lesson{lits, back, spread}, every)
				p.model.BackTo(back)
				for k, l := range lits {
					if p.model.IsFalse(l) != (k > 0) || p.model.IsTrue(l) {
						t.Fatalf("seed %d: back at %d, bound %d of the rule %v is not as it should be", seed, back, k+1, lits)
					}
				}
				first := lits[0]
				if p.model.Learn(lits, spread) {
					if !p.model.IsTrue(first) {
						t.Fatalf("seed %d: what the rule %v leaves does not hold", seed, lits)
					}
					return
				}
			}
		})
	}
	if lessons < 200 {
		t.Errorf("only %d lessons", lessons)
	}
}

// The rules that a search has learned, and kept, are true of every solution.
func TestLearnedRulesAreTrue(t *testing.T) {
	learned := 0
	for seed := range uint64(1000) {
		p := drawPuzzle(rand.New(rand.NewPCG(seed, 7)))
		every := p.everyValue()
		for _, l := range []nogood.Lit{p.vars[0].AtMost(p.lo[0]), p.vars[1].AtLeast(p.hi[1]), p.vars[2].AtMost(p.lo[2])} {
			p.model.Search([]nogood.Lit{l}, 1000, never)
		}
		for _, rule := range p.model.Learned() {
			learned++
			for _, v := range every {
				if !some(rule, v) {
					t.Fatalf("seed %d: the solution %v is against the learned rule %v", seed, v, rule)
				}
			}
		}
	}
	if learned < 500 {
		t.Errorf("only %d learned rules", learned)
	}
}

// Worked out by hand. b follows from a ≥ 1, c from b and d together, and e from
// c; then f may be neither 0, because of e, nor 1, because of c and d. Assumed
// are a, then d, then f ≤ 0: that f is 0 comes from the last one alone, so c,
// which stands since d, is all that is needed: f ≥ 1 without c, a rule over two
// levels.
func TestALessonByHand(t *testing.T) {
	var m nogood.Model
	v := many(&m, 6, 0, 1)
	yes := func(k int) nogood.Lit { return v[k].AtLeast(1) }
	no := func(k int) nogood.Lit { return v[k].AtMost(0) }
	const a, b, c, d, e, f = 0, 1, 2, 3, 4, 5
	m.AtLeastOne(no(a), yes(b))
	m.AtLeastOne(no(b), no(d), yes(c))
	m.AtLeastOne(no(c), yes(e))
	g := m.Var(0, 1)
	m.AtLeastOne(yes(f), no(e), g.AtLeast(1))
	m.AtLeastOne(yes(f), no(c), g.AtMost(0))
	for _, l := range []nogood.Lit{yes(a), yes(d)} {
		if !m.Assume(l) {
			t.Fatalf("%v is a contradiction", l)
		}
	}
	if !m.IsTrue(yes(c)) || !m.IsTrue(yes(e)) || m.LevelOf(yes(b)) != 1 || m.LevelOf(yes(e)) != 2 {
		t.Fatal("a and d do not lead to b, c and e")
	}
	if m.Assume(no(f)) {
		t.Fatal("f = 0 is no contradiction")
	}
	lits, back, spread, ok := m.Analyse()
	// e follows from c, which is in the rule, so the rule does without e.
	if got, want := fmt.Sprint(lits), fmt.Sprint([]nogood.Lit{yes(f), no(c)}); !ok || got != want || back != 2 || spread != 2 {
		t.Errorf("the rule is %s, back to %d, over %d levels; want %s, 2 and 2", got, back, spread, want)
	}
}
