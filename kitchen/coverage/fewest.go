package coverage

import "slices"

// mostStates bounds the search: far more than a shoot day needs, and a hundredth
// of a second for a list of 150 shots.
const mostStates = 2000

// search finds the fewest runs of one setup each that film all jobs.
//
// A state is the set of jobs filmed. A run with a setup films all it can, for to
// leave something out of it that could be filmed never helps; so a state's
// successors are one a setup. The search goes by best first (A*). That less is
// done in a state than in another never makes it the better one, whatever setup
// stands; so the setup is no part of the state.
//
// The bound: a chain of jobs, each waiting for the one before, needs a new run of
// a setup each time it comes back to it. No run serves two setups, so the most of
// each setup over all chains add up.
type search struct {
	jobs    []job
	bySetup [][]int   // each setup's jobs, as they are cooked
	chains  [][]chain // each setup's, those with the most runs first
}

func (f *film) search() *search {
	s := &search{jobs: f.jobs, bySetup: make([][]int, len(f.setups)), chains: make([][]chain, len(f.setups))}
	for i, j := range f.jobs {
		s.bySetup[j.setup] = append(s.bySetup[j.setup], i)
	}
	for setup := range f.setups {
		s.chains[setup] = s.chainsOf(setup)
	}
	return s
}

// chain is the most runs of a setup on any chain that begins with a job.
type chain struct{ job, runs int }

// chainsOf goes from the last job back: one of the setup begins a run, which
// what follows with another setup ends.
func (s *search) chainsOf(setup int) []chain {
	most := make([]int, len(s.jobs))
	var all []chain
	for i := len(s.jobs) - 1; i >= 0; i-- {
		own := 0
		if s.jobs[i].setup == setup {
			own = 1
		}
		most[i] = own
		for k := i + 1; k < len(s.jobs); k++ {
			switch {
			case !s.jobs[k].before.has(i):
			case s.jobs[k].setup == setup:
				most[i] = max(most[i], most[k])
			default:
				most[i] = max(most[i], own+most[k])
			}
		}
		if most[i] > 0 {
			all = append(all, chain{i, most[i]})
		}
	}
	slices.SortStableFunc(all, func(a, b chain) int { return b.runs - a.runs })
	return all
}

// state is how far filming has come.
type state struct {
	done  set
	runs  int
	setup int // of the run that led here; −1 at the beginning
	from  *state
}

// order lists the setups of the runs that led here.
func (s *state) order() []int {
	var order []int
	for ; s.from != nil; s = s.from {
		order = append(order, s.setup)
	}
	slices.Reverse(order)
	return order
}

// next is the state after a run with a setup; nil if it would film nothing.
func (s *search) next(from *state, setup int) *state {
	var done set
	for _, i := range s.bySetup[setup] {
		filmed := from.done
		if done != nil {
			filmed = done
		}
		if filmed.has(i) || !filmed.holds(s.jobs[i].before) {
			continue
		}
		if done == nil {
			done = from.done.clone()
		}
		done.add(i)
	}
	if done == nil {
		return nil
	}
	return &state{done, from.runs + 1, setup, from}
}

// least is how many runs what is left needs at least; 0 if nothing is left.
func (s *search) least(done set) int {
	total := 0
	for _, chains := range s.chains {
		for _, c := range chains {
			if !done.has(c.job) {
				total += c.runs
				break
			}
		}
	}
	return total
}

// fewest gives the setups of an order with the fewest runs, and a number of runs
// that no order undercuts: the same unless more than limit states were looked at.
func (s *search) fewest(limit int) (order []int, least int) {
	first := &state{done: newSet(len(s.jobs)), setup: -1}
	least = s.least(first.done)
	open := map[int][]*state{least: {first}} // by the runs they need at least in all
	seen := map[string]int{first.done.key(): 0}
	for looked := 0; ; {
		waiting := open[least]
		if len(waiting) == 0 {
			least++
			continue
		}
		at := waiting[len(waiting)-1]
		open[least] = waiting[:len(waiting)-1]
		if at.runs > seen[at.done.key()] {
			continue // reached with fewer since
		}
		if s.least(at.done) == 0 {
			return at.order(), least
		}
		if looked++; looked > limit {
			return s.greedy(append(open[least], at)), least
		}
		for setup := range s.bySetup {
			next := s.next(at, setup)
			if next == nil {
				continue
			}
			key := next.done.key()
			if runs, known := seen[key]; known && runs <= next.runs {
				continue
			}
			seen[key] = next.runs
			needs := next.runs + s.least(next.done)
			open[needs] = append(open[needs], next)
		}
	}
}

// mostTried bounds from how many states an order is finished when the search
// was given up.
const mostTried = 20

// greedy finishes the last of the states given, by the run each time that leaves
// the least, and gives the best order that comes of it.
func (s *search) greedy(states []*state) []int {
	var best *state
	for _, at := range states[max(0, len(states)-mostTried):] {
		for s.least(at.done) > 0 {
			var step *state
			for setup := range s.bySetup {
				next := s.next(at, setup)
				if next != nil && (step == nil || s.least(next.done) < s.least(step.done)) {
					step = next
				}
			}
			at = step
		}
		if best == nil || at.runs < best.runs {
			best = at
		}
	}
	return best.order()
}
