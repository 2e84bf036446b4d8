package views

import "strconv"

// ShootDaySheet is the computed plan of the shoot day.
type ShootDaySheet struct {
	Page
	EpisodeFrame
	Form    Form // what the day is planned with
	Kitchen Form // what the kitchen holds, who and what is there
	Moments []MomentRow
	Moment  Form         // adds or changes one of them
	Empty   string       // what to do when there is nothing to plan
	Problem string       // what to change when there is no plan; "" if there is
	Notes   []string     // what the plan leaves out or could not keep: "6 makes are planned …"
	Facts   []DayFact    // when it begins and wraps, the work in it
	Rows    []DayRow     // the plan in order of time
	Chart   DayChart     // zero without a plan
	Holding []HoldingRow // what stands neither cold nor hot for too long
	Defers  string       // whose advice goes before those rows
	Before  []DayFact    // what must be done the day before
	Moved   []DayFact    // what this plan moved against the one before
	Fixed   []DayRow     // without a plan: the steps that keep it from having one, to be changed
	Step    *Form        // what is fixed about one step; nil if none is asked for

	Under      string // how far the day has come: "Replanned at 14:05: 3 steps done"; "" before it begins
	AnewAction string // takes it back to before its beginning
	LatePath   string // shows the form of running late
	Late       *Form  // around the plan, whose rows are ticked; nil if not asked for

	Search DaySearch // a better plan, looked for or to be looked for

	Trade []TradeRow // what extra makes would save
	// TradePath computes the trade; "" if it is drawn or there is none.
	TradePath string
	TradeNote string // what the trade is made from
	Exports   []Link
	Dated     string // the day and the time zone of the calendar file
}

// IsPlanned tells whether there is a plan.
func (p ShootDaySheet) IsPlanned() bool { return len(p.Rows) > 0 }

// DayFact is a measure of the day and what it is.
type DayFact struct {
	Measure string // "14:25"
	Beside  string // small, beneath: "next day"
	Text    string
	Small   string
	Mark    Mark
}

// DaySearch is a better plan that is looked for in the background, or can be.
type DaySearch struct {
	Text        string // how far it has come; "" if it is not looked for
	Path        string // tells how far it has come
	StopAction  string
	BeginAction string // looks for one; "" if there is no need
}

// TradeRow is a day with so many extra makes.
type TradeRow struct {
	DayFact
	Cuts   []string // what is made ahead and which wait that cuts
	Adds   string   // what it adds to the shopping, and the cost
	Picked bool     // the day is planned with it
	// PickAction plans the day and the shopping with it; "" offers none.
	PickAction string
	Stages     []string // sent with it as "stage"
}

// DayRow is one thing on the clock.
type DayRow struct {
	At     string // "09:40"
	Beside string // "next day"
	Text   string
	Small  string // "shoot · hands, oven · until 10:05"
	Filmed string // "filmed: overhead, window left"; "" if it is not
	Ahead  bool   // of a batch that is made ahead
	Free   bool   // nothing needs hands
	Waits  bool   // it needs no hands
	Moment bool   // at a fixed time
	Mark   Mark

	Step        string   // the step as addresses name it; "" for what is no step
	Name        string   // its first words, for links
	Fixed       []string // what is fixed about it: "pinned to 10:00"
	EditPath    string   // where that is changed
	Begun, Done bool     // while the day runs
}

// State is how far a step has come, "" if it has not begun.
func (r DayRow) State() string {
	switch {
	case r.Done:
		return "✓ done"
	case r.Begun:
		return "… under way"
	}
	return ""
}

// HoldingRow is food that stands neither cold nor hot for too long.
type HoldingRow struct {
	From, To string // "09:10", "to 12:20"
	Text     string
	Cautions []Caution
}

// MomentRow is something at a fixed time of the day.
type MomentRow struct {
	At, Until    string // "12:00", "to 13:00"
	Name         string
	Small        string // what it takes and holds
	EditPath     string
	DeleteAction string
}

// DayChart is the plan as a picture. All places are in its own units.
type DayChart struct {
	Title         string // what a screen reader says of it
	Width, Height int
	Left          int // where the rows begin, right of their names
	Rows          []ChartRow
	Ticks         []ChartTick
}

// ChartRow is one station.
type ChartRow struct {
	Name string
	Y    int // the name's foot
	Line int // the line above the row
	Bars []ChartBar
}

// ChartBar is one stretch of work.
type ChartBar struct {
	X, Width  string // "101.5"
	Y, Height int
	Kind      BarKind
	From, To  string // on the clock: "09:40", "09:50"
	Words     string // "Knead the dough"
}

// ChartTick is an hour.
type ChartTick struct{ X, Text string }

// BarKind is what a bar is drawn as.
type BarKind string

// The kinds of bar; each has its name in the key beneath the chart.
const (
	BarHands BarKind = "hands-on"
	BarFilm  BarKind = "filmed"
	BarSetup BarKind = "camera setup"
	BarAhead BarKind = "made ahead"
	BarWait  BarKind = "unattended"
	BarTaken BarKind = "not there"
)

// kinds are those drawn, in the order of the key.
func (c DayChart) kinds() []BarKind {
	var drawn []BarKind
	for _, kind := range []BarKind{BarHands, BarFilm, BarSetup, BarAhead, BarWait, BarTaken} {
		if c.draws(kind) {
			drawn = append(drawn, kind)
		}
	}
	return drawn
}

func (c DayChart) draws(kind BarKind) bool {
	for _, row := range c.Rows {
		for _, bar := range row.Bars {
			if bar.Kind == kind {
				return true
			}
		}
	}
	return false
}

// class is the bar's class: its fill is the style sheet's.
func (k BarKind) class() string {
	switch k {
	case BarFilm:
		return "bar film"
	case BarSetup:
		return "bar put-up"
	case BarAhead:
		return "bar ahead"
	case BarWait:
		return "bar wait"
	case BarTaken:
		return "bar taken"
	}
	return "bar"
}

// movedText counts what the plan moved.
func movedText(n int) string {
	if n == 1 {
		return "What changed: 1 step is at another time"
	}
	return "What changed: " + strconv.Itoa(n) + " steps are at another time"
}
