package episode

// Moment is something at a fixed time of the shoot day: a delivery, guests, a
// lunch in the oven. It may take a station, and steps may wait for it or have
// to be done by it. Times are minutes from midnight, at most DayMinutes.
type Moment struct {
	ID        int64
	EpisodeID int64
	Name      string
	At        int
	Until     int    // 0: it is over at once
	Takes     string // the station of which it takes one, until Until; "" for none
	Holds     Hold
	Component string // the component of the step that it holds
	Step      int    // that step, from 1; 0 for all that is made for the shoot
	Revision  int
}

// Hold is how a moment holds steps.
type Hold string

// The ways a moment holds steps.
const (
	HoldsNothing Hold = ""
	DoneBefore   Hold = "done by then"
	NotBefore    Hold = "not before it"
)

// Holds lists them.
var Holds = []Hold{HoldsNothing, DoneBefore, NotBefore}
