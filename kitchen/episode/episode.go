package episode

import (
	"time"

	"benchproof/kitchen/measure"
)

// Stage is how far an episode has come.
type Stage string

// The stages, in order.
const (
	Pitched       Stage = "pitched"
	InDevelopment Stage = "in development"
	ReadyToShoot  Stage = "ready to shoot"
	InTheEdit     Stage = "in the edit"
	Released      Stage = "released"
)

// Stages lists the stages in order.
var Stages = []Stage{Pitched, InDevelopment, ReadyToShoot, InTheEdit, Released}

// Episode is one instalment and its brief.
type Episode struct {
	ID            int64
	Number        int    // as spoken: "episode 31"; 0 if not numbered yet
	Title         string // the working title
	Stage         Stage
	ReleaseOn     time.Time // a date, midnight UTC; zero if not set
	Dish          string
	InspiredBy    string // who or what inspired it, for the credits
	InspiredURL   string
	Look          string // what the result must look like
	Hook          string // the opening that makes a viewer stay
	TargetMinutes int    // 0 if not set
	Notes         string // Markdown
	RecipeID      int64  // 0 if none yet
	VersionID     int64  // the recipe version in use; 0 if none yet
	Scale         measure.Number
	Revision      int
}

// BatchKind is what a make is for.
type BatchKind string

// The kinds of batch.
const (
	TrialBatch BatchKind = "trial"
	ShootBatch BatchKind = "shoot"
	SwapOut    BatchKind = "swap-out"
	Spare      BatchKind = "spare"
)

// BatchKinds lists them in the order of the week.
var BatchKinds = []BatchKind{TrialBatch, ShootBatch, SwapOut, Spare}

// Batch is one planned make, or several alike.
type Batch struct {
	ID        int64
	EpisodeID int64
	Kind      BatchKind
	Makes     measure.Number // how many times the recipe at the episode's scale; above 0
	Component string         // the component of the step whose end a swap-out reaches
	Step      int            // that step, from 1; 0: the whole recipe is made
	Overnight bool           // made the day before
	Note      string
	Revision  int
}

// Trial is one real make of one version, with what was measured. Numbers that
// were not measured are zero.
type Trial struct {
	ID         int64
	EpisodeID  int64
	VersionID  int64
	MadeOn     time.Time // a date, midnight UTC
	Scale      measure.Number
	DoughGrams measure.Number // weight before cooking
	BakedGrams measure.Number // weight after cooking
	Pieces     measure.Number
	Minutes    measure.Number // in the oven or on the hob
	Setting    string         // "190 °C fan"
	Verdict    string         // one of Verdicts
	Note       string
	Revision   int
}

// Verdicts are what a trial can come to.
var Verdicts = []string{"proved", "nearly", "not yet"}

// Segment is one part of the running order.
type Segment struct {
	ID             int64
	EpisodeID      int64
	Position       int // from 1
	Title          string
	Narration      string
	PlannedSeconds int // 0: take the narration's length
	Revision       int
}

// ShotStatus is how far a shot has come.
type ShotStatus string

// The shot states.
const (
	Got     ShotStatus = "got"
	Missing ShotStatus = "missing" // not got yet
	Retake  ShotStatus = "retake"
)

// ShotStatuses lists them.
var ShotStatuses = []ShotStatus{Got, Missing, Retake}

// ShotKinds are the kinds of shot the trade names.
var ShotKinds = []string{"overhead", "close-up", "wide", "insert", "cutaway", "hero", "piece to camera"}

// Shot is one thing to film.
type Shot struct {
	ID        int64
	EpisodeID int64
	Position  int // from 1
	Title     string
	Kind      string // one of ShotKinds
	Setup     string // the name of its setup: "overhead, window left"; "" if not chosen yet
	Component string // the component it shows; "" for one without a name, or the whole episode
	Step      int    // the step of that component, from 1; 0 for all of it
	Layout    bool   // it shows the ingredients laid out
	Status    ShotStatus
	Note      string
	Revision  int
}

// Setup is a camera position, lens and light that shots share. Its shots name
// it, so it can be named before it is described.
type Setup struct {
	EpisodeID int64
	Name      string // "overhead, window left"
	Camera    string // where it stands and how it looks: "arm over the bench, straight down"
	Lens      string // "35 mm, f/4"
	Light     string // "window left, white card right"
	Revision  int    // 0 until it is described
}

// Cut is the edited video as the tool knows it.
type Cut struct {
	ID        int64
	EpisodeID int64
	Name      string
	Seconds   int    // its length, 0 if not known
	Captions  string // WebVTT or SRT as given
	Revision  int
}

// Release is what is published.
type Release struct {
	EpisodeID  int64
	Title      string // at most 100 characters on most platforms
	Opening    string // the first lines of the description
	Equipment  string // one a line
	Credits    string // one a line, beside the recipe's own
	Disclosure string // for this episode, beside the show's
	VideoURL   string
	// PageURL is the recipe page's address as viewers are sent it. A share
	// link's secret is kept only as a hash, so the address is noted here.
	PageURL  string
	Revision int
}

// Correction is something wrong on air, and what is right.
type Correction struct {
	ID        int64
	EpisodeID int64
	At        int // seconds into the cut
	Said      string
	Right     string
	Revision  int
}
