package shoot_test

import (
	"fmt"
	"slices"

	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shoot"
	"benchproof/kitchen/shoot/feasible"
)

// broken checks a plan of a day by its entries alone, without anything that the
// plan was made with, and gives each rule that it breaks; and what the
// independent checker finds in the project beneath. The day has not begun.
func broken(d shoot.Day, p shoot.Plan) []string {
	c := checker{day: d, plan: p, used: map[string]map[int]int{}}
	for _, check := range []func(){c.minutes, c.presence, c.stations, c.order, c.fixed, c.film, c.cleaning} {
		check()
	}
	beneath, err := shoot.ProjectOf(d)
	if err != nil {
		c.say("the day is refused: %v", err)
		return c.found
	}
	return append(c.found, feasible.Check(beneath, p.Kept.Starts)...)
}

type checker struct {
	day   shoot.Day
	plan  shoot.Plan
	used  map[string]map[int]int
	found []string
}

func (c *checker) say(format string, args ...any) {
	c.found = append(c.found, fmt.Sprintf(format, args...))
}

// isStep tells whether an entry is a step or a part of one.
func isStep(e shoot.Entry) bool { return e.Moment == "" && !e.IsClean }

// span is when a step runs, from the beginning of its first part to the end of
// its last.
func (c *checker) span(key shoot.Key) (from, to int, ok bool) {
	for _, e := range c.plan.Entries {
		if !isStep(e) || e.Key != key {
			continue
		}
		if !ok || e.From < from {
			from = e.From
		}
		to, ok = max(to, e.To), true
	}
	return from, to, ok
}

func (c *checker) minutes() {
	for _, e := range c.plan.Entries {
		if e.Moment != "" {
			continue
		}
		if e.To-e.From != e.Minutes.Likely || e.From < c.plan.Begin || e.To > c.plan.Wrap {
			c.say("%s from %d to %d takes %d, in a day from %d to %d", e.ID, e.From, e.To, e.Minutes.Likely, c.plan.Begin, c.plan.Wrap)
		}
	}
}

// presence: every step is there once, in as many minutes as it takes; of a day
// without swap-outs.
func (c *checker) presence() {
	for _, b := range c.day.Batches {
		if len(b.Swaps) > 0 || b.Until != nil {
			continue
		}
		for _, t := range b.Recipe.Sequence() {
			from, to, ok := c.span(shoot.Key{Batch: b.Name, At: t.At})
			if want := shoot.MinutesOf(b.Recipe.Components[t.At.Component].Steps[t.At.Step]).Likely; !ok || to-from != want {
				c.say("%s %v runs from %d to %d, planned: %v; it takes %d", b.Name, t.At, from, to, ok, want)
			}
		}
	}
}

// stations: never more than there is, setting up included.
func (c *checker) stations() {
	for _, e := range c.plan.Entries {
		for _, name := range e.Uses {
			c.use(name, e.From, e.To, c.units(e, name))
		}
	}
	for _, s := range c.plan.Setups {
		c.use(shoot.Hands, s.From, s.To, 1)
	}
	for _, s := range c.day.Stations {
		for minute, n := range c.used[s.Name] {
			left := s.Units
			for _, busy := range s.Busy {
				if busy.From <= minute && (busy.To == 0 || minute < busy.To) {
					left -= busy.Units
				}
			}
			if n > max(0, left) {
				c.say("minute %d needs %d of %s, there are %d", minute, n, s.Name, left)
			}
		}
	}
}

func (c *checker) use(name string, from, to, units int) {
	if c.used[name] == nil {
		c.used[name] = map[int]int{}
	}
	for minute := from; minute < to; minute++ {
		c.used[name][minute] += units
	}
}

func (c *checker) units(e shoot.Entry, name string) int {
	for _, b := range c.day.Batches {
		if share, ok := b.Shares[name]; ok && b.Name == e.Key.Batch && e.Step.Station == name {
			return share
		}
	}
	return 1
}

// order: what comes first has ended, and the waits are kept.
func (c *checker) order() {
	for _, b := range c.day.Batches {
		for _, t := range b.Recipe.Sequence() {
			key := shoot.Key{Batch: b.Name, At: t.At}
			from, _, ok := c.span(key)
			for _, p := range t.After {
				before := shoot.Key{Batch: b.Name, At: p}
				if other, isSwapped := b.Swaps[p]; isSwapped {
					before.Batch = other
				}
				_, end, isDone := c.span(before)
				if !ok || !isDone {
					continue
				}
				if from < end {
					c.say("%v begins at %d, before %v ends at %d", key, from, before, end)
				}
				c.waits(key, before, from-end)
			}
		}
	}
}

func (c *checker) waits(key, before shoot.Key, waited int) {
	for _, w := range c.day.Waits {
		if w.After != before || w.Next != (shoot.Key{}) && w.Next != key {
			continue
		}
		if waited < w.AtLeast || w.HasMost && waited > w.AtMost {
			c.say("%v waits %d minutes after %v, %+v", key, waited, before, w)
		}
	}
}

// fixed: pins, bars, what is given, moments, the day's ends.
func (c *checker) fixed() {
	for _, pin := range c.day.Pins {
		if from, _, ok := c.span(pin.Task); ok && from != pin.Start {
			c.say("%v begins at %d, pinned to %d", pin.Task, from, pin.Start)
		}
	}
	for _, bar := range c.day.Bars {
		if from, to, ok := c.span(bar.Task); ok && from < bar.To && bar.From < to {
			c.say("%v runs from %d to %d, barred from %d to %d", bar.Task, from, to, bar.From, bar.To)
		}
	}
	for _, m := range c.day.Moments {
		for _, key := range m.Before {
			if _, to, ok := c.span(key); ok && to > m.At {
				c.say("%v ends at %d, after %s at %d", key, to, m.Name, m.At)
			}
		}
		for _, key := range m.After {
			if from, _, ok := c.span(key); ok && from < m.At {
				c.say("%v begins at %d, before %s at %d", key, from, m.Name, m.At)
			}
		}
	}
	for _, e := range c.plan.Entries {
		if e.Moment == "" && !e.IsAhead && e.From < c.day.From {
			c.say("%s begins at %d, before the day at %d", e.ID, e.From, c.day.From)
		}
		if e.Moment == "" && c.day.Finish > 0 && e.To > c.day.Finish {
			c.say("%s ends at %d, after the day at %d", e.ID, e.To, c.day.Finish)
		}
	}
	c.given()
}

// given: hands' work that is given to somebody is theirs, and nothing else is.
func (c *checker) given() {
	for _, g := range c.day.Given {
		for _, e := range c.plan.Entries {
			isHands := e.Step.HandsOn || e.IsFilmed
			if e.Key == g.Task && isStep(e) && isHands != slices.Contains(e.Uses, g.To) {
				c.say("%s is given to %s and uses %v; by hand: %v", e.ID, g.To, e.Uses, isHands)
			}
		}
	}
}

// film: one thing at a time, with what filming takes, and a set-up between two
// setups.
func (c *checker) film() {
	last := -1
	for i, e := range c.plan.Entries {
		if !e.IsFilmed {
			continue
		}
		for _, s := range c.day.Stations {
			if (s.Name == shoot.Camera || s.Name == shoot.Light) && !slices.Contains(e.Uses, s.Name) {
				c.say("%s is filmed without %s", e.ID, s.Name)
			}
		}
		if last >= 0 {
			c.between(c.plan.Entries[last], e)
		}
		last = i
	}
	for _, b := range c.day.Batches {
		for at, setup := range b.Film {
			c.filmed(shoot.Key{Batch: b.Name, At: at}, setup)
		}
		for at, setup := range b.Opens {
			c.filmed(shoot.Key{Batch: b.Name, At: at}, setup)
		}
	}
}

// filmed: what is to be filmed is, from its beginning.
func (c *checker) filmed(key shoot.Key, setup string) {
	from, _, ok := c.span(key)
	if !ok {
		c.say("%v is to be filmed and is not planned", key)
		return
	}
	isSo := func(e shoot.Entry) bool {
		return e.Key == key && isStep(e) && e.IsFilmed && e.Setup == setup && e.From == from
	}
	if !slices.ContainsFunc(c.plan.Entries, isSo) {
		c.say("%v is not filmed with %s", key, setup)
	}
}

func (c *checker) between(first, second shoot.Entry) {
	minutes := c.day.Setups[second.Setup]
	if first.To > second.From {
		c.say("%s is filmed at %d, before %s ends at %d", second.ID, second.From, first.ID, first.To)
	}
	if first.Setup == second.Setup || minutes == 0 {
		return
	}
	isPutUp := slices.ContainsFunc(c.plan.Setups, func(s shoot.Setup) bool {
		return s.Name == second.Setup && s.To-s.From == minutes && s.From >= first.To && s.To <= second.From
	})
	if !isPutUp {
		c.say("no %d minutes to put up %s between %s and %s", minutes, second.Setup, first.ID, second.ID)
	}
}

// cleaning: right after the step, unless the batch goes on at the station.
func (c *checker) cleaning() {
	for _, b := range c.day.Batches {
		for _, t := range b.Recipe.Sequence() {
			key := shoot.Key{Batch: b.Name, At: t.At}
			_, to, ok := c.span(key)
			station := b.Recipe.Components[t.At.Component].Steps[t.At.Step].Station
			if !ok || !c.isCleaned(station) || c.goesOn(b, t.At, station) {
				continue
			}
			isIt := func(e shoot.Entry) bool { return e.IsClean && e.Key == key && e.From == to }
			if !slices.ContainsFunc(c.plan.Entries, isIt) {
				c.say("%v is not cleaned down after at %d", key, to)
			}
		}
	}
}

func (c *checker) isCleaned(station string) bool {
	return slices.ContainsFunc(c.day.Stations, func(s shoot.Station) bool { return s.Name == station && s.Clean > 0 })
}

func (c *checker) goesOn(b shoot.Batch, at recipe.Position, station string) bool {
	for _, t := range b.Recipe.Sequence() {
		_, _, isPlanned := c.span(shoot.Key{Batch: b.Name, At: t.At})
		isNext := slices.Contains(t.After, at) && b.Recipe.Components[t.At.Component].Steps[t.At.Step].Station == station
		if _, isSwapped := b.Swaps[at]; isNext && isPlanned && !isSwapped {
			return true
		}
	}
	return false
}

// mustBeAPlan fails the test for every rule that a plan breaks.
func mustBeAPlan(t interface {
	Errorf(string, ...any)
	Helper()
}, d shoot.Day, p shoot.Plan) {
	t.Helper()
	for _, rule := range broken(d, p) {
		t.Errorf("no plan of the day: %s", rule)
	}
}
