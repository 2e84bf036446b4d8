package episode

// DayStep is what a person fixed about one step of one batch on the shoot day,
// and how far it has come. Times are minutes from midnight, at most DayMinutes;
// 0 is none.
type DayStep struct {
	EpisodeID int64
	StepName
	Pin      int    // it begins then
	Barred   []Span // no part of it falls into these
	ByHelper bool   // its hands are the helper's
	Waits    Waits
	Began    int // while the day runs: when it began
	Ended    int // when it had ended; 0 with Began: it runs
}

// StepName names a step of a batch in words that outlast a reordered recipe.
type StepName struct {
	Batch     string // as the plan names it: "shoot", "swap-out 1"
	Component string // its component's name; "" for the only one
	Step      int    // in the component, from 1
}

// Waits are how long a step may wait after those before it, in minutes.
type Waits struct {
	Least   int
	Most    int  // if HasMost
	HasMost bool // false: as the step's own words say
}

// Span is a stretch of the day; To is excluded.
type Span struct{ From, To int }

// IsPlain tells whether nothing is fixed or known.
func (d DayStep) IsPlain() bool {
	return d.Pin == 0 && len(d.Barred) == 0 && !d.ByHelper && d.Began == 0 && d.Waits == Waits{}
}

// DayPlan is a shoot day's plan as it is kept: so that it stays as it is while
// nothing changes, and so that a new one can say what moved.
type DayPlan struct {
	EpisodeID int64
	Print     string // of the day it was made for: see shoot.Day.Print
	Starts    []int  // as shoot.Kept
	Bound     int
	Optimal   bool
	Overdue   []string // what could not be kept any more
	Moved     []Move   // against the plan before it
}

// Move is a step that a new plan has at another time.
type Move struct {
	Text    string // the step
	Was, Is int    // minutes from midnight
}
