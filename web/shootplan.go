package web

import (
	"cmp"
	"context"
	"fmt"
	"slices"
	"strconv"
	"time"

	"benchproof/kitchen/episode"
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

// planTime is how long a page waits for a plan; planLimit is when it stops
// waiting whatever happens.
const (
	planTime  = 300 * time.Millisecond
	planLimit = 900 * time.Millisecond
)

// shootPlan is an episode's day with what puts it on the clock.
type shootPlan struct {
	settings episode.ShootDay
	zero     int // the day's minute 0, from midnight
	day      shoot.Day
	plan     shoot.Plan
	makes    int // planned in all; the day holds at most mostPlanned of them
	// begun are the setups of long waits of the first batch: only their
	// beginning is filmed, so that they hold up neither hands nor camera.
	begun map[recipe.Position]string
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
func newShootPlan(settings episode.ShootDay, r recipe.Recipe, batches []episode.Batch, shots []episode.Shot) *shootPlan {
	p := &shootPlan{settings: settings, zero: max(0, settings.Begin-aheadMinutes)}
	p.day.From = settings.Begin - p.zero
	if settings.DoneBy > 0 {
		p.day.Finish = settings.DoneBy - p.zero
	}
	p.day.Stations = p.stations()
	p.addBatches(r, batches)
	p.addFilm(r, shots)
	return p
}

// stations are one oven, two rings of the hob, a mixer and a camera, the hands
// of the day and its light. Benches, fridges and freezers hold what comes.
func (p *shootPlan) stations() []shoot.Station {
	hands := shoot.Station{Name: shoot.Hands, Units: p.settings.Hands}
	if until := p.settings.HelperUntil; until > 0 {
		hands.Units++
		hands.Busy = []shoot.Busy{{From: max(0, until-p.zero), Units: 1}}
	}
	stations := []shoot.Station{hands, {Name: shoot.Camera, Units: 1}, {Name: "mixer", Units: 1}, {Name: "hob", Units: 2}, {Name: "oven", Units: 1}}
	if until := p.settings.LightUntil; until > 0 {
		light := shoot.Station{Name: shoot.Light, Units: 1, Busy: []shoot.Busy{{From: max(0, until-p.zero), Units: 1}}}
		stations = append(stations, light)
	}
	return stations
}

// addBatches adds each make that is not a trial, the shoot's first.
func (p *shootPlan) addBatches(r recipe.Recipe, batches []episode.Batch) {
	batches = slices.Clone(batches)
	slices.SortStableFunc(batches, func(a, b episode.Batch) int {
		return cmp.Compare(slices.Index(episode.BatchKinds, a.Kind), slices.Index(episode.BatchKinds, b.Kind))
	})
	makes := map[episode.BatchKind]int{}
	for _, b := range batches {
		if b.Kind != episode.TrialBatch {
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
			p.day.Batches = append(p.day.Batches, shoot.Batch{Name: name, Recipe: r, Ahead: kind == episode.SwapOut})
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
// first shot that is tied to it.
func (p *shootPlan) addFilm(r recipe.Recipe, shots []episode.Shot) {
	if len(p.day.Batches) == 0 || p.day.Batches[0].Ahead {
		return
	}
	film, setups := map[recipe.Position]string{}, map[string]int{}
	p.begun = map[recipe.Position]string{}
	for _, shot := range shots {
		at, ok := stepOf(r, shot)
		if !ok || film[at] != "" || p.begun[at] != "" {
			continue
		}
		if isLongWait(r.Components[at.Component].Steps[at.Step]) {
			p.begun[at] = setupName(shot)
			continue
		}
		film[at] = setupName(shot)
		setups[film[at]] = p.settings.SetupMinutes
	}
	p.day.Batches[0].Film, p.day.Setups = film, setups
	p.day.Batches[0].Stages = p.stagesOf(r)
}

// isLongWait tells whether a step needs no hands for so long that nobody films
// the whole of it.
func isLongWait(step recipe.Step) bool {
	return !step.HandsOn && shoot.MinutesOf(step).Likely >= leastStage
}

// beginFilmed is the setup with which the beginning of a long wait is filmed, ""
// for all other work.
func (p *shootPlan) beginFilmed(e shoot.Entry) string {
	if len(p.day.Batches) == 0 || e.Key.Batch != p.day.Batches[0].Name || e.IsClean {
		return ""
	}
	return p.begun[e.Key.At]
}

// stepOf finds the step a shot is tied to.
func stepOf(r recipe.Recipe, shot episode.Shot) (at recipe.Position, ok bool) {
	for i, c := range r.Components {
		if c.Name == shot.Component && shot.Step >= 1 && shot.Step <= len(c.Steps) {
			return recipe.Position{Component: i, Step: shot.Step - 1}, true
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

// stagesOf are the longest waits that are not filmed. What stands cold keeps
// until the next day: common practice, no source.
func (p *shootPlan) stagesOf(r recipe.Recipe) []shoot.Stage {
	minutes := map[recipe.Position]int{}
	var stages []shoot.Stage
	for _, t := range r.Sequence() {
		step := r.Components[t.At.Component].Steps[t.At.Step]
		minutes[t.At] = shoot.MinutesOf(step).Likely
		if isLongWait(step) && p.begun[t.At] == "" {
			stages = append(stages, shoot.Stage{At: t.At, Overnight: step.Station == "fridge" || step.Station == "freezer"})
		}
	}
	slices.SortStableFunc(stages, func(a, b shoot.Stage) int { return minutes[b.At] - minutes[a.At] })
	return stages[:min(len(stages), mostStages)]
}

// make plans the day. The error is fault.Invalid, or fault.Busy if nothing was
// found in time.
func (p *shootPlan) make(ctx context.Context) (err error) {
	ctx, cancel := context.WithTimeout(ctx, planLimit)
	defer cancel()
	p.plan, err = p.day.Make(ctx, solve.Options{Steps: planSteps, Budget: planTime})
	return err
}

// swapOuts compares extra makes, on the day without the swap-outs it has.
func (p *shootPlan) swapOuts(ctx context.Context) ([]shoot.Option, error) {
	ctx, cancel := context.WithTimeout(ctx, planLimit)
	defer cancel()
	day := p.day
	day.Batches = slices.DeleteFunc(slices.Clone(day.Batches), func(b shoot.Batch) bool { return b.Ahead })
	return day.SwapOuts(ctx, swapOutMakes, solve.Options{Steps: tradeSteps, Budget: planTime})
}
