package web

import (
	"context"
	"io"
	"log/slog"
	"net/http"
	"sync"
	"time"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/shoot"
	"benchproof/kitchen/shoot/solve"
	"benchproof/views"
)

// searchTime is how long a plan is looked for in the background; mostSearches
// is for how many days at once.
const (
	searchTime   = 2 * time.Minute
	searchSteps  = 1 << 30
	mostSearches = 2
)

// searches are the plans that are being looked for, by episode.
type searches struct {
	mu sync.Mutex
	by map[int64]*daySearch
}

// daySearch is a plan that is being looked for in the background.
type daySearch struct {
	*shoot.Search
	day  *shootPlan
	kept chan struct{} // closed when its result is kept
}

// of is the search for an episode's day, nil if there is none.
func (s *searches) of(episodeID int64) *daySearch {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.by[episodeID]
}

// begin looks for a day's plan unless it is looked for already. The error is
// fault.Busy if too many are.
func (s *searches) begin(p *shootPlan, keep func(*daySearch)) error {
	s.mu.Lock()
	defer s.mu.Unlock()
	id := p.settings.EpisodeID
	switch {
	case s.by[id] != nil:
		return nil
	case len(s.by) >= mostSearches:
		return &fault.Error{Kind: fault.Busy, Say: "Better plans for two other shoot days are being looked for. Stop one of them, or try again in two minutes."}
	}
	found := p.planned().Seek(context.Background(), p.plan, solve.Options{Steps: searchSteps, Budget: searchTime})
	each := &daySearch{found, p, make(chan struct{})}
	s.by[id] = each
	go func() {
		defer close(each.kept)
		<-each.Done()
		keep(each)
		s.end(id)
	}()
	return nil
}

func (s *searches) end(episodeID int64) {
	s.mu.Lock()
	defer s.mu.Unlock()
	delete(s.by, episodeID)
}

// addSearch says how far the search for a better plan has come, or offers one
// where the plan is not proved best.
func (s *Server) addSearch(sheet *views.ShootDaySheet, p *shootPlan) {
	path := episodePath(p.settings.EpisodeID) + "/shoot-day/search"
	if running := s.searches.of(p.settings.EpisodeID); running != nil {
		sheet.Search = views.DaySearch{Text: running.words(), Path: path, StopAction: path + "/stop"}
		return
	}
	if sheet.IsPlanned() && !p.plan.Optimal {
		sheet.Search = views.DaySearch{BeginAction: path}
	}
}

// planned is the day as its plan was made.
func (p *shootPlan) planned() shoot.Day {
	if p.calm {
		return p.day
	}
	return p.hurried()
}

// words say how far the search has come.
func (d *daySearch) words() string {
	at, bound, ok := d.Best()
	if !ok {
		return "Looking for a better plan"
	}
	if d.day.day.Finish > 0 && !d.day.day.Begun {
		return "Looking for a better plan: the best so far begins " + d.day.at(at) + "; none begins after " + d.day.at(bound)
	}
	return "Looking for a better plan: the best so far wraps " + d.day.at(at) + "; none wraps before " + d.day.at(bound)
}

// beginSearch looks for a better plan of the day in the background.
func (s *Server) beginSearch(w http.ResponseWriter, r *http.Request) error {
	d, err := s.openDesk(r)
	if err != nil {
		return err
	}
	p, noPlan, err := s.planDay(r.Context(), d)
	if err != nil {
		return err
	}
	if say := p.empty(); say != "" {
		return fault.Invalidf("", "%s", say)
	}
	if noPlan != nil {
		return noPlan
	}
	if err := s.searches.begin(p, s.keepFound); err != nil {
		return err
	}
	return seeOther(w, r, d.path(views.SheetShootDay))
}

// keepFound keeps what a search has found, unless the day has changed since or
// its plan is as good by now.
func (s *Server) keepFound(found *daySearch) {
	ctx := context.Background()
	id := found.day.settings.EpisodeID
	plan, moved, err := found.Result()
	if err != nil {
		slog.InfoContext(ctx, "no better plan", "episode", id, "err", err)
		return
	}
	now, err := s.dayOf(ctx, id)
	if err == nil && now.isWorseThan(plan) {
		now.plan = plan
		err = s.store.KeepDayPlan(ctx, now.kept(moved))
	}
	if err != nil {
		slog.ErrorContext(ctx, "keep the plan found", "episode", id, "err", err)
	}
}

// isWorseThan tells whether another plan of just this day is better, or knows
// more of how good it is.
func (p *shootPlan) isWorseThan(other shoot.Plan) bool {
	print, err := p.planned().Print()
	if err != nil || print != other.Kept.Print {
		return false
	}
	backwards := p.day.Finish > 0 && !p.day.Begun
	switch {
	case backwards && other.Begin != p.plan.Begin:
		return other.Begin > p.plan.Begin
	case !backwards && other.Wrap != p.plan.Wrap:
		return other.Wrap < p.plan.Wrap
	}
	return other.Bound != p.plan.Bound
}

// showSearch says how far the search has come, as plain text; 204 when there is
// none any more.
func (s *Server) showSearch(w http.ResponseWriter, r *http.Request) error {
	id, err := pathID(r, "episode")
	if err != nil {
		return err
	}
	running := s.searches.of(id)
	if running == nil {
		w.WriteHeader(http.StatusNoContent)
		return nil
	}
	w.Header().Set("Content-Type", "text/plain; charset=utf-8")
	_, err = io.WriteString(w, running.words())
	return err
}

// stopSearch ends the search; the best plan so far is kept.
func (s *Server) stopSearch(w http.ResponseWriter, r *http.Request) error {
	id, err := pathID(r, "episode")
	if err != nil {
		return err
	}
	if running := s.searches.of(id); running != nil {
		running.Stop()
		<-running.kept
	}
	return seeOther(w, r, episodePath(id)+"/shoot-day")
}
