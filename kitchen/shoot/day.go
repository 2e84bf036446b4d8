package shoot

import (
	"benchproof/kitchen/recipe"
)

// Day is what a shoot day's plan is made from. All times are whole minutes from
// the day's zero, which the caller puts on the clock.
type Day struct {
	Stations []Station
	Batches  []Batch
	Setups   map[string]int // minutes to put up each camera setup
	Opening  int            // minutes that are filmed of a step in Batch.Opens; 0 takes usualOpening
	Waits    []Wait
	Moments  []Moment
	Pins     []Pin
	Bars     []Bar
	Given    []Given
	From     int // no batch but those made ahead starts before this minute
	Finish   int // plan backwards from this minute; 0: forwards
	Begun    bool
	Now      int    // with Begun: what is left begins no earlier, and Finish is let go
	Done     []Done // with Begun: the steps that have begun

	Clock func(minute int) string // how errors write a minute of the day; nil writes "minute 75"
}

// Batch is one make of a recipe on the day.
type Batch struct {
	Name   string // "shoot", "swap-out 1"; batches on one day have different names
	Recipe recipe.Recipe
	Ahead  bool                       // made ahead: it may start before Day.From
	Film   map[recipe.Position]string // the camera setup of each step that is filmed to its end
	Opens  map[recipe.Position]string // the camera setup of each step of which only the beginning is filmed
	Shares map[string]int             // units that its steps take of a station; 1 if not listed
	Stages []Stage                    // where a swap-out can take over

	Until *recipe.Position           // made no further than this step; nil: to the end
	Swaps map[recipe.Position]string // steps left out because the named batch has done them; "" for one made the day before
}

// usualOpening is how many minutes of a long step are filmed; common practice,
// no source.
const usualOpening = 5

// opening is how many minutes are filmed of a step of which only the beginning
// is.
func (d Day) opening() int {
	if d.Opening > 0 {
		return d.Opening
	}
	return usualOpening
}

// Stage is a step after which a swap-out can take the dish's place: usually a
// long wait. It must not be filmed to its end, for the camera does not wait for
// it; its beginning may be.
type Stage struct {
	At        recipe.Position
	Overnight bool // what has come so far keeps until the next day
}

// Key names a task of the day: a step of a batch.
type Key struct {
	Batch string
	At    recipe.Position
}

// Wait limits the time between the end of a step and the start of the steps
// that wait for it, or of one of them.
type Wait struct {
	After   Key
	Next    Key  // the zero Key: all that wait for it
	AtLeast int  // minutes
	AtMost  int  // minutes, if HasMost
	HasMost bool // false: it may wait for any time
}

// Moment is something that happens at a fixed time: a delivery, guests.
type Moment struct {
	Name   string
	At     int
	Before []Key // steps that must have ended by then
	After  []Key // steps that cannot start earlier
}

// Pin fixes the start of a step.
type Pin struct {
	Task  Key
	Start int
}

// Bar forbids a step a time.
type Bar struct {
	Task     Key
	From, To int
}

// Given gives the hands' part of a step to another station: a helper. A step
// that goes on without hands keeps nobody, but for what is filmed of it.
type Given struct {
	Task Key
	To   string
}
