package solve

import (
	"context"
	"slices"
	"time"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/shoot/nogood"
	"benchproof/kitchen/shoot/project"
)

// Options say how long to look. The zero Options look until the plan is proved
// best or DefaultSteps are done.
type Options struct {
	Steps    int            // plans tried and contradictions met; 0 takes DefaultSteps
	Budget   time.Duration  // 0 for no limit of time
	Seed     uint64         // another seed looks elsewhere; a plan follows from project, steps and seed
	Start    []int          // the starts of an earlier plan: kept if it still is one, and its order tried first; nil for none
	Progress func(Progress) // called at each better plan or bound, by Plan's goroutine; may be nil
}

// DefaultSteps is enough for a day of 150 tasks.
const DefaultSteps = 200_000

// Progress is how far a search has come.
type Progress struct {
	Makespan int // of the best plan so far; −1 while there is none
	Bound    int // no plan is shorter
	Steps    int // so far
}

// Result is the best plan found.
type Result struct {
	Starts   []int // minutes from zero, one a task
	Makespan int   // the end of the last task
	Bound    int   // no plan ends earlier; proved
	Optimal  bool  // Makespan equals Bound
	Steps    int   // how many it took
}

// Plan looks for the plan whose last task ends earliest. With the same project
// and options it gives the same plan, unless time ran out. When ctx ends it
// gives the best plan so far.
//
// The error is fault.Invalid and names the tasks: what Check finds, or waits,
// times and stations that leave no plan. It is fault.Busy if no plan was found
// and none was proved impossible.
func Plan(ctx context.Context, p project.Project, o Options) (Result, error) {
	if err := p.Check(); err != nil {
		return Result{}, err
	}
	if o.Steps <= 0 {
		o.Steps = DefaultSteps
	}
	s := newSearch(ctx, p, o)
	return s.run()
}

// search is one call of Plan.
type search struct {
	ctx      context.Context
	options  Options
	deadline time.Time // zero for none
	project  project.Project
	in       *instance
	breed    *population
	prove    *prover // nil until it is needed
	mend     *mender
	turns    *turns // nil if the project is of another kind
	best     []int  // nil while there is no plan
	makespan int
	bound    int
	steps    int
	hopeless bool // proved that there is no plan
}

func newSearch(ctx context.Context, p project.Project, o Options) *search {
	s := &search{ctx: ctx, options: o, project: p, makespan: never}
	if o.Budget > 0 {
		s.deadline = time.Now().Add(o.Budget)
	}
	return s
}

func (s *search) run() (Result, error) {
	in, ok := newInstance(s.project)
	s.in = in
	if !ok {
		return Result{}, s.impossible()
	}
	s.raise(in.bound())
	s.breed = newPopulation(in, s.options.Seed)
	s.turns = newTurns(in, s.options.Seed)
	s.look()
	switch {
	case s.best != nil:
		return Result{Starts: s.best, Makespan: s.makespan, Bound: s.bound, Optimal: s.makespan == s.bound, Steps: s.steps}, nil
	case s.hopeless:
		return Result{}, s.impossible()
	}
	return Result{}, &fault.Error{Kind: fault.Busy, Say: "No plan was found in the time given, and none was proved impossible. Allow longer waits, or give it more time."}
}

// look takes turns at breeding, proving and mending until one of them is done.
// It breeds at least once, even when nobody waits any longer. Breeding gets less
// when it no longer helps.
func (s *search) look() {
	if s.in.holds(s.options.Start) {
		s.take(s.options.Start)
	}
	if len(s.options.Start) == s.in.n {
		s.breed.try(s.in.orderOf(s.options.Start))
	}
	s.breedFor(1)
	for turn, breed := 300, 300; !s.done(); turn += turn / 4 {
		before := s.makespan
		s.breedFor(breed)
		s.turnFor(20 * turn)
		prove, mend := s.shares(turn)
		s.proveFor(prove, false)
		s.proveFor(prove/2, true)
		s.mendFor(mend)
		if breed = 2 * turn; s.makespan == before && mend > turn {
			breed = turn / 10
		}
	}
}

// shares says how long to prove and to mend in a turn. Where tasks take turns,
// mending does most; in large projects of another kind a contradiction costs
// many plans, and breeding does most.
func (s *search) shares(turn int) (prove, mend int) {
	switch {
	case s.prove != nil && s.prove.hasOrder():
		return turn, 2 * turn
	case s.in.n > 60:
		return turn / 6, turn / 6
	}
	return turn, turn / 2
}

// proveFor searches for a plan that is shorter, or, if low, for one that is so
// short that to find none raises the bound.
func (s *search) proveFor(contradictions int, low bool) {
	if s.in.n > maxProverTasks || s.done() {
		return
	}
	if s.prove == nil {
		s.prove = newProver(s.in)
		s.mend = newMender(s.prove, s.options.Seed)
	}
	if s.best != nil {
		s.prove.hint(s.best)
	}
	left := min(contradictions, s.options.Steps-s.steps)
	for left > 0 && !s.done() {
		by := min(s.in.horizon, s.makespan-1)
		if low {
			by = min(by, s.bound+(by-s.bound)/4)
		}
		outcome, starts, met := s.prove.search(by, left, s.stopped)
		s.steps += met + 1
		left -= met + 1
		switch outcome {
		case nogood.Found:
			if !s.found(starts) {
				return
			}
		case nogood.Refuted:
			s.refuted(by)
		case nogood.Impossible:
			s.refuted(s.in.horizon)
		case nogood.OutOfSteps:
			return
		}
	}
}

// turnFor swaps the turns of tasks at stations that serve one at a time.
func (s *search) turnFor(moves int) {
	if s.turns == nil || s.best == nil || s.done() {
		return
	}
	before := s.turns.moves
	starts := s.turns.run(s.best, min(moves, (s.options.Steps-s.steps)/2), s.bound, s.stopped)
	s.steps += s.turns.moves - before
	s.take(starts)
}

// mendFor looks for shorter plans in the neighbourhood of the best ones.
func (s *search) mendFor(contradictions int) {
	if s.mend == nil || s.best == nil {
		return
	}
	base := s.mend.base(s.best, s.breed)
	s.prove.hint(base)
	for until := s.steps + contradictions; s.steps < until && !s.done(); {
		starts, met := s.mend.mend(base, s.project.Makespan(base)-1, s.stopped)
		s.steps += met + 1
		if starts == nil {
			continue
		}
		if s.found(starts); s.prove.isExact {
			base = starts
		} else {
			base = s.best
		}
		s.prove.hint(base)
	}
}

// found takes a plan of the prover, with the set-ups decoded into it. It tells
// whether that was the best so far.
func (s *search) found(starts []int) bool {
	before := s.makespan
	s.breed.add(starts, s.prove.isExact)
	if m, ok := s.breed.best(); ok {
		s.take(m.starts)
	}
	if s.best != nil {
		s.prove.hint(s.best)
	}
	return s.makespan < before
}

// refuted notes that no plan ends by a minute.
func (s *search) refuted(by int) {
	switch {
	case by >= s.in.horizon && s.best == nil:
		s.hopeless = true
	case s.best != nil:
		s.raise(min(by+1, s.makespan))
	default:
		s.raise(by + 1)
	}
}

func (s *search) breedFor(steps int) {
	before := s.breed.steps
	s.breed.run(min(steps, s.options.Steps-s.steps), s.bound, s.stopped)
	s.steps += s.breed.steps - before
	if m, ok := s.breed.best(); ok {
		s.take(m.starts)
	}
}

// take keeps a plan that is better than the best so far.
func (s *search) take(starts []int) {
	makespan := s.project.Makespan(starts)
	if s.best != nil && makespan >= s.makespan {
		return
	}
	s.best, s.makespan = slices.Clone(starts), makespan
	s.tell()
}

// raise keeps a bound that is better than the best so far.
func (s *search) raise(bound int) {
	if bound > s.bound {
		s.bound = bound
		s.tell()
	}
}

func (s *search) tell() {
	if s.options.Progress == nil {
		return
	}
	makespan := s.makespan
	if s.best == nil {
		makespan = -1
	}
	s.options.Progress(Progress{Makespan: makespan, Bound: s.bound, Steps: s.steps})
}

func (s *search) done() bool {
	return s.hopeless || s.best != nil && s.makespan <= s.bound || s.steps >= s.options.Steps || s.stopped()
}

// stopped tells whether nobody waits any longer.
func (s *search) stopped() bool {
	return s.ctx.Err() != nil || !s.deadline.IsZero() && time.Now().After(s.deadline)
}
