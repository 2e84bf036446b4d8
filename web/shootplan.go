package web

import (
	"context"
	"fmt"
	"slices"
	"strconv"
	"time"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shoot"
	"benchproof/kitchen/shoot/solve"
)

const (
	mostPlanned  = 4      // batches on one day's plan
	aheadMinutes = 2 * 60 // what is made ahead may begin so long before the day
	leastStage   = 20     // minutes of a wait that a swap-out is worth
	mostStages   = 6      // waits that swap-outs are tried for, the longest
	swapOutMakes = 3      // extra makes that are compared
	planSteps    = 8_000  // what a search may cost; the time below is for the rare long one
	tradeSteps   = 20_000 // for all the plans of the comparison together
)

// planTime is how long a page waits for a plan, tradeTime for a comparison;
// planLimit is when it stops waiting whatever happens.
const (
	planTime  = 200 * time.Millisecond
	tradeTime = 500 * time.Millisecond
	planLimit = 900 * time.Millisecond
)

// dayParts is what an episode's shoot day is laid out from.
type dayParts struct {
	settings episode.ShootDay
	recipe   recipe.Recipe // at the episode's scale
	batches  []episode.Batch
	shots    []episode.Shot
	moments  []episode.Moment
	steps    []episode.DayStep
}

// shootPlan is an episode's day with what puts it on the clock.
type shootPlan struct {
	dayParts
	zero  int // the day's minute 0, from midnight
	day   shoot.Day
	plan  shoot.Plan
	makes int            // planned in all, but for swap-outs up to a step; the day holds at most mostPlanned of them
	stale []string       // what is fixed for steps that are no longer there
	moved []episode.Move // against the plan before, if this one was kept
	// urgent are the waits that the steps' words ask for; calm tells that the
	// plan does not keep to them, since none could.
	urgent []shoot.Wait
	calm   bool
}

// clock writes a minute of the day.
func (p *shootPlan) clock(minute int) string { return episode.Clock(p.zero + minute) }

// next tells when a minute is on a later day, for beside the clock.
func (p *shootPlan) next(minute int) string {
	minute += p.zero
	switch days := minute / episode.DayMinutes; {
	case days == 0 || minute == episode.DayMinutes: // which the clock writes 24:00
		return ""
	case days == 1:
		return "next day"
	default:
		return strconv.Itoa(days) + " days on"
	}
}

// at is clock and next together, for within a sentence.
func (p *shootPlan) at(minute int) string { return joined(" ", p.clock(minute), p.next(minute)) }

// newShootPlan lays the day out; make fills in the plan.
func newShootPlan(parts dayParts) *shootPlan {
	p := &shootPlan{dayParts: parts, zero: max(0, parts.settings.Begin-aheadMinutes)}
	for _, m := range parts.moments {
		p.zero = min(p.zero, m.At)
	}
	p.day.Clock = p.at
	p.day.From = p.settings.Begin - p.zero
	if p.settings.DoneBy > 0 {
		p.day.Finish = p.settings.DoneBy - p.zero
	}
	p.day.Stations = p.stations()
	p.addBatches()
	p.addFilm()
	p.addSwapOuts()
	p.addMoments()
	p.addSteps()
	p.addWaits()
	return p
}

// addBatches adds each make that is not a trial, the shoot's first.
func (p *shootPlan) addBatches() {
	makes := map[episode.BatchKind]int{}
	for _, b := range p.batches {
		if b.Kind != episode.TrialBatch && b.Step == 0 {
			makes[b.Kind] += wholeMakes(b.Makes)
		}
	}
	for _, kind := range episode.BatchKinds {
		p.makes += makes[kind]
		for n := range min(makes[kind], mostPlanned) {
			if len(p.day.Batches) == mostPlanned {
				break
			}
			name := string(kind)
			if makes[kind] > 1 {
				name = fmt.Sprintf("%s %d", kind, n+1)
			}
			p.day.Batches = append(p.day.Batches, shoot.Batch{Name: name, Recipe: p.recipe, Ahead: kind == episode.SwapOut})
		}
	}
}

// wholeMakes is how often hands go through the steps: half a recipe is one.
func wholeMakes(n measure.Number) int {
	makes, ok := n.Ceil().Int()
	if !ok || makes > 1000 {
		return 1000
	}
	return int(makes)
}

// addFilm films the first batch of the shoot: each step with the setup of the
// first shot that is tied to it. Of what needs no hands only the beginning is
// filmed, so that it holds up neither them nor the camera.
func (p *shootPlan) addFilm() {
	if len(p.day.Batches) == 0 || p.day.Batches[0].Ahead {
		return
	}
	r, film, setups := p.recipe, map[recipe.Position]string{}, map[string]int{}
	opens := map[recipe.Position]string{}
	for _, shot := range p.shots {
		at, ok := stepAt(r, shot.Component, shot.Step)
		if !ok || film[at] != "" || opens[at] != "" {
			continue
		}
		setup := setupName(shot)
		setups[setup] = p.settings.SetupMinutes
		if r.Components[at.Component].Steps[at.Step].HandsOn {
			film[at] = setup
		} else {
			opens[at] = setup
		}
	}
	first := &p.day.Batches[0]
	first.Film, first.Opens, p.day.Setups = film, opens, setups
	first.Stages = p.stagesOf()
}

// isLongWait tells whether a step needs no hands for so long that a swap-out is
// worth its while.
func isLongWait(step recipe.Step) bool {
	return !step.HandsOn && shoot.MinutesOf(step).Likely >= leastStage
}

// stepAt finds a step by its component's name and its number there, from 1.
func stepAt(r recipe.Recipe, component string, step int) (at recipe.Position, ok bool) {
	for i, c := range r.Components {
		if c.Name == component && step >= 1 && step <= len(c.Steps) {
			return recipe.Position{Component: i, Step: step - 1}, true
		}
	}
	return at, false
}

func setupName(shot episode.Shot) string {
	if shot.Setup != "" {
		return shot.Setup
	}
	return shot.Kind
}

// stagesOf are the longest waits. What stands cold keeps
// until the next day: common practice, no source.
func (p *shootPlan) stagesOf() []shoot.Stage {
	r, minutes := p.recipe, map[recipe.Position]int{}
	var stages []shoot.Stage
	for _, t := range r.Sequence() {
		step := r.Components[t.At.Component].Steps[t.At.Step]
		minutes[t.At] = shoot.MinutesOf(step).Likely
		if isLongWait(step) {
			stages = append(stages, shoot.Stage{At: t.At, Overnight: step.Station == "fridge" || step.Station == "freezer"})
		}
	}
	slices.SortStableFunc(stages, func(a, b shoot.Stage) int { return minutes[b.At] - minutes[a.At] })
	return stages[:min(len(stages), mostStages)]
}

// endOf is when a step ends: for its filmed beginning, when the rest does.
func (p *shootPlan) endOf(e shoot.Entry) int {
	if !e.IsOpening {
		return e.To
	}
	for _, other := range p.plan.Entries {
		if other.IsRest && other.Key == e.Key {
			return other.To
		}
	}
	return e.To // a swap-out has done the rest
}

// stageAt is the stage after a step, nil if there is none.
func (p *shootPlan) stageAt(at recipe.Position) *shoot.Stage {
	if len(p.day.Batches) == 0 {
		return nil
	}
	for _, stage := range p.day.Batches[0].Stages {
		if stage.At == at {
			return &stage
		}
	}
	return nil
}

// make plans the day. The error is fault.Invalid, or fault.Busy if nothing was
// found in time.
func (p *shootPlan) make(ctx context.Context) error {
	_, err := p.makeAfter(ctx, shoot.Plan{})
	return err
}

// makeAfter plans the day after another plan of it, and tells what moved.
// Errors are those of make.
func (p *shootPlan) makeAfter(ctx context.Context, before shoot.Plan) (moved []shoot.Change, err error) {
	ctx, cancel := context.WithTimeout(ctx, planLimit)
	defer cancel()
	o := solve.Options{Steps: planSteps, Budget: planTime}
	p.plan, moved, err = p.hurried().MakeAfter(ctx, before, o)
	if p.calm = len(p.urgent) > 0 && fault.KindOf(err) == fault.Invalid && err != nil; p.calm {
		p.plan, moved, err = p.day.MakeAfter(ctx, before, o)
	}
	return moved, err
}

// swapOuts compares extra makes, on the day without the swap-outs it has.
func (p *shootPlan) swapOuts(ctx context.Context) ([]shoot.Option, error) {
	ctx, cancel := context.WithTimeout(ctx, planLimit)
	defer cancel()
	day := p.planned()
	day.Batches = slices.DeleteFunc(slices.Clone(day.Batches), func(b shoot.Batch) bool { return b.Ahead })
	day.Batches[0].Swaps = nil
	day.Begun, day.Done, day.Pins, day.Bars, day.Given = false, nil, nil, nil, nil
	return day.SwapOuts(ctx, swapOutMakes, solve.Options{Steps: tradeSteps, Budget: tradeTime})
}
