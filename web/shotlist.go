package web

import (
	"cmp"
	"math"
	"net/http"
	"slices"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/recipe"
	"benchproof/views"
)

// shotList is an episode's shots with what puts them in order.
type shotList struct {
	shots  []episode.Shot
	setups map[string]episode.Setup // by name, those that are described
	recipe recipe.Recipe
	plan   *shootPlan // nil if the day has none
	// When the steps of the make that is filmed begin and end, in minutes of the
	// plan's day.
	begins, ends map[recipe.Position]int
	ahead        map[recipe.Position]bool // those that a swap-out has done
}

// The minutes of shots that no step of the plan times: ingredients are laid out
// before all else, the others come after it.
const (
	layoutTime = -1
	anyTime    = math.MaxInt
)

// placedShot is a shot with when it is due.
type placedShot struct {
	episode.Shot
	minute        int // of the plan's day; layoutTime or anyTime if nothing times it
	clock, beside string
	cueAt         string // when its step ends, and its cue is to be seen
	isUnplanned   bool   // there is a plan, and it does not time the shot
}

// setupBlock is the shots of one setup, as they are filmed.
type setupBlock struct {
	name  string
	setup episode.Setup // its Name is "" for shots that name none
	shots []placedShot
}

// shotList loads the episode's shots and plans its day.
func (s *Server) shotList(r *http.Request, d *desk) (*shotList, error) {
	plan, noPlan, err := s.planDay(r.Context(), d)
	if err != nil {
		return nil, err
	}
	described, err := s.store.Setups(r.Context(), d.episode.ID)
	if err != nil {
		return nil, err
	}
	if noPlan != nil || plan.empty() != "" {
		return newShotList(d.version.Reading, plan.shots, described, nil), nil
	}
	return newShotList(d.version.Reading, plan.shots, described, plan), nil
}

// newShotList puts shots in the order of a plan; of the list if it is nil.
func newShotList(r recipe.Recipe, shots []episode.Shot, described []episode.Setup, plan *shootPlan) *shotList {
	l := &shotList{shots: shots, recipe: r, setups: map[string]episode.Setup{}}
	for _, u := range described {
		l.setups[u.Name] = u
	}
	if plan == nil || plan.day.Batches[0].Ahead {
		return l
	}
	l.plan, l.begins, l.ends = plan, map[recipe.Position]int{}, map[recipe.Position]int{}
	for _, e := range plan.plan.Entries {
		if e.Key.Batch != plan.day.Batches[0].Name || e.Moment != "" || e.IsClean {
			continue
		}
		l.ends[e.Key.At] = e.To
		if !e.IsRest {
			l.begins[e.Key.At] = e.From
		}
	}
	l.ahead = map[recipe.Position]bool{}
	for at := range plan.day.Batches[0].Swaps {
		l.ahead[at] = true
	}
	return l
}

// isPlanned tells whether the order is that of a plan.
func (l *shotList) isPlanned() bool { return l.plan != nil }

func (l *shotList) placed(shot episode.Shot) placedShot {
	p := placedShot{Shot: shot, minute: anyTime, isUnplanned: l.isPlanned()}
	if l.isPlanned() && shot.Layout && shot.Step == 0 {
		p.minute = layoutTime
	}
	if at, ok := stepAt(l.recipe, shot.Component, shot.Step); ok {
		if minute, ok := l.begins[at]; ok {
			p.minute, p.clock, p.beside, p.isUnplanned = minute, l.plan.clock(minute), l.plan.next(minute), false
			p.cueAt = l.plan.at(l.ends[at])
		}
	}
	return p
}

// blocks groups the shots by setup: the one that is needed first comes first,
// and within each what is due first. What is due at once, or at any time, stands
// as listed.
func (l *shotList) blocks() []setupBlock {
	var placed []placedShot
	for _, shot := range l.shots {
		placed = append(placed, l.placed(shot))
	}
	slices.SortStableFunc(placed, func(a, b placedShot) int { return cmp.Compare(a.minute, b.minute) })
	var blocks []setupBlock
	at := map[string]int{}
	for _, shot := range placed {
		i, known := at[shot.Setup]
		if !known {
			i = len(blocks)
			at[shot.Setup] = i
			blocks = append(blocks, l.newBlock(shot.Setup))
		}
		blocks[i].shots = append(blocks[i].shots, shot)
	}
	return blocks
}

func (l *shotList) newBlock(name string) setupBlock {
	if name == "" {
		return setupBlock{name: "no setup yet"}
	}
	setup := l.setups[name]
	setup.Name = name
	return setupBlock{name: name, setup: setup}
}

func (b setupBlock) episodeShots() []episode.Shot {
	var shots []episode.Shot
	for _, shot := range b.shots {
		shots = append(shots, shot.Shot)
	}
	return shots
}

// orderWords says what the order follows, and where a plan is made.
func (l *shotList) orderWords(d *desk) (say, path, link string) {
	if l.isPlanned() {
		return "By the clock of the day’s plan: each setup where it is needed first.", d.path(views.SheetShootDay), "Shoot day"
	}
	return "In the order of the list, for the day is not planned yet.", d.path(views.SheetShootDay), "Plan the shoot day"
}
