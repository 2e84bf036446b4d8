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
	s, err := Begin(p, o)
	if err != nil {
		return Result{}, err
	}
	if o.Steps <= 0 {
		o.Steps = DefaultSteps
	}
	r, err := s.Look(ctx, o.Steps, 0)
	if err == nil && r.Starts == nil {
		err = &fault.Error{Kind: fault.Busy, Say: "No plan was found in the time given, and none was proved impossible. Allow longer waits, or give it more time."}
	}
	return r, err
}

// Search is a plan that is looked for bit by bit. It belongs to one goroutine.
type Search struct {
	ctx      context.Context // of the Look that is going on
	options  Options
	deadline time.Time // zero for none
	project  project.Project
	in       *instance // nil until the first Look
	breed    *population
	prove    *prover // nil until it is needed
	mend     *mender
	turns    *turns // nil if the project is of another kind
	turn     int    // what proving, mending and turning get in the next turn
	toBreed  int    // what breeding gets
	best     []int  // nil while there is no plan
	makespan int
	bound    int
	beat     int // a plan that is no shorter is not worth looking for; never for none
	steps    int
	until    int  // the steps at which this Look ends
	hopeless bool // proved that there is no plan
}

// Begin makes a search for a project's plan ready; how many steps it may take,
// Look says. The error is what Check finds.
func Begin(p project.Project, o Options) (*Search, error) {
	if err := p.Check(); err != nil {
		return nil, err
	}
	s := &Search{options: o, project: p, makespan: never, turn: 100, toBreed: 100}
	if o.Budget > 0 {
		s.deadline = time.Now().Add(o.Budget)
	}
	return s, nil
}

// Look goes on for so many steps, or until the plan is proved best, or, if beat
// is above 0, until none is found to be shorter than beat; it does not look for
// plans that are no shorter, once there is one. Starts are nil while there is no
// plan. Errors are those of Plan for a project that has none.
func (s *Search) Look(ctx context.Context, steps, beat int) (Result, error) {
	s.ctx, s.until, s.beat = ctx, s.steps+steps, beat
	if beat <= 0 {
		s.beat = never
	}
	if s.in == nil {
		s.start()
	}
	if !s.hopeless {
		s.look()
	}
	switch {
	case s.best != nil:
		return Result{Starts: s.best, Makespan: s.makespan, Bound: s.bound, Optimal: s.makespan == s.bound, Steps: s.steps}, nil
	case s.hopeless:
		return Result{}, s.impossible()
	}
	return Result{Makespan: -1, Bound: s.bound, Steps: s.steps}, nil
}

// Bound gives a makespan that no plan can beat, without looking any further:
// Never if it is known that there is no plan.
func (s *Search) Bound() int {
	if s.in == nil {
		s.start()
	}
	if s.hopeless {
		return Never
	}
	return s.bound
}

// start learns what is known before any step.
func (s *Search) start() {
	in, ok := newInstance(s.project)
	if s.in, s.hopeless = in, !ok; s.hopeless {
		return
	}
	s.raise(in.bound())
	if in.holds(s.options.Start) {
		s.take(s.options.Start)
	}
}

// look takes turns at breeding, proving and mending until one of them is done.
// It breeds at least once, even when nobody waits any longer. Breeding gets less
// when it no longer helps.
func (s *Search) look() {
	if s.breed == nil {
		s.breed, s.turns = newPopulation(s.in, s.options.Seed), newTurns(s.in, s.options.Seed)
	}
	if s.steps == 0 && s.bound < s.beat {
		if len(s.options.Start) == s.in.n {
			s.breed.try(s.in.orderOf(s.options.Start))
		}
		s.breedFor(1)
	}
	for ; !s.done(); s.turn += s.turn / 4 {
		before := s.makespan
		s.breedFor(s.toBreed)
		s.turnFor(20 * s.turn)
		prove, mend := s.shares(s.turn)
		s.proveFor(prove, false)
		s.proveFor(prove/2, true)
		s.mendFor(mend)
		if s.toBreed = 2 * s.turn; s.makespan == before && mend > s.turn {
			s.toBreed = s.turn / 10
		}
	}
}

// shares says how long to prove and to mend in a turn. Where tasks take turns,
// mending does most; in large projects of another kind a contradiction costs
// many plans, and breeding does most.
func (s *Search) shares(turn int) (prove, mend int) {
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
func (s *Search) proveFor(contradictions int, low bool) {
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
	left := min(contradictions, s.until-s.steps)
	for left > 0 && !s.done() {
		by := min(s.in.horizon, s.makespan-1)
		if s.best != nil {
			by = min(by, s.beat-1)
		}
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
func (s *Search) turnFor(moves int) {
	if s.turns == nil || s.best == nil || s.done() {
		return
	}
	before := s.turns.moves
	starts := s.turns.run(s.best, min(moves, (s.until-s.steps)/2), s.bound, s.stopped)
	s.steps += s.turns.moves - before
	s.take(starts)
}

// mendFor looks for shorter plans in the neighbourhood of the best ones.
func (s *Search) mendFor(contradictions int) {
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
func (s *Search) found(starts []int) bool {
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
func (s *Search) refuted(by int) {
	switch {
	case by >= s.in.horizon && s.best == nil:
		s.hopeless = true
	case s.best != nil:
		s.raise(min(by+1, s.makespan))
	default:
		s.raise(by + 1)
	}
}

func (s *Search) breedFor(steps int) {
	before := s.breed.steps
	s.breed.run(min(steps, s.until-s.steps), s.bound, s.stopped)
	s.steps += s.breed.steps - before
	if m, ok := s.breed.best(); ok {
		s.take(m.starts)
	}
}

// take keeps a plan that is better than the best so far.
func (s *Search) take(starts []int) {
	makespan := s.project.Makespan(starts)
	if s.best != nil && makespan >= s.makespan {
		return
	}
	s.best, s.makespan = slices.Clone(starts), makespan
	s.tell()
}

// raise keeps a bound that is better than the best so far.
func (s *Search) raise(bound int) {
	if bound > s.bound {
		s.bound = bound
		s.tell()
	}
}

func (s *Search) tell() {
	if s.options.Progress == nil {
		return
	}
	makespan := s.makespan
	if s.best == nil {
		makespan = -1
	}
	s.options.Progress(Progress{Makespan: makespan, Bound: s.bound, Steps: s.steps})
}

func (s *Search) done() bool {
	return s.hopeless || s.bound >= min(s.makespan, s.beat) || s.steps >= s.until || s.stopped()
}

// stopped tells whether nobody waits any longer.
func (s *Search) stopped() bool {
	return s.ctx.Err() != nil || !s.deadline.IsZero() && time.Now().After(s.deadline)
}
