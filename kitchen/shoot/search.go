package shoot

import (
	"context"
	"sync"

	"benchproof/kitchen/shoot/solve"
)

// Search is a plan being looked for in the background. It is safe for
// concurrent use.
type Search struct {
	stop context.CancelFunc
	done chan struct{}

	mu     sync.Mutex
	wrap   int // of the best plan so far, −1 while there is none
	bound  int
	finish int // the minute that a search backwards counts from; 0 forwards

	plan  Plan // set before done is closed
	moved []Change
	err   error
}

// Seek begins to look for the day's plan, after another one whose order is
// tried first. It ends by its options, with ctx, or when it is stopped.
func (d Day) Seek(ctx context.Context, before Plan, o solve.Options) *Search {
	ctx, stop := context.WithCancel(ctx)
	s := &Search{stop: stop, done: make(chan struct{}), wrap: -1}
	if !d.Begun {
		s.finish = d.Finish
	}
	o.Progress = s.note
	go func() {
		defer close(s.done)
		defer stop()
		s.plan, s.moved, s.err = d.MakeAfter(ctx, before, o)
	}()
	return s
}

func (s *Search) note(p solve.Progress) {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.wrap, s.bound = p.Makespan, p.Bound
}

// Best is the minute at which the best plan so far wraps, and the one before
// which none does; backwards, when it begins and after which none does. ok is
// false while there is no plan.
func (s *Search) Best() (at, bound int, ok bool) {
	s.mu.Lock()
	defer s.mu.Unlock()
	if s.finish > 0 {
		return s.finish - s.wrap, s.finish - s.bound, s.wrap >= 0
	}
	return s.wrap, s.bound, s.wrap >= 0
}

// Stop ends the search; the best plan so far is its result. It does not wait.
func (s *Search) Stop() { s.stop() }

// Done is closed when the search has ended.
func (s *Search) Done() <-chan struct{} { return s.done }

// Result waits for the end and gives what was found, as Day.MakeAfter does.
func (s *Search) Result() (Plan, []Change, error) {
	<-s.done
	return s.plan, s.moved, s.err
}
