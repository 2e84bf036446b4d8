package views

// ShotsSheet is the shot list by setup.
type ShotsSheet struct {
	Page
	EpisodeFrame
	// TickAction is where a press is posted: shot, the shot's Tick, and status.
	// KeptAction is where a script posts the presses that it keeps, with their age.
	TickAction string
	KeptAction string
	Got        string // "9 of 14 got"; "" without shots
	Order      string // what the order follows
	OrderPath  string // where the order is made; "" if there is nothing to do
	OrderLink  string
	CallSheet  string // its address; "" without shots
	Setups     []SetupBlock
	Draft      *ShotDraft // shots for what is missing; nil if nothing is
	Coverage   []GapRow   // what no shot shows
	Covered    string     // that nothing is missing; "" if something is
	Changes    SetupChanges
	Form       Form // add a shot, or change one
}

// SetupBlock is the shots of one setup.
type SetupBlock struct {
	Name     string // "overhead, window left"; "no setup yet"
	About    string // "arm over the bench · 35 mm · window left"
	Got      string // "1 of 3 got"
	EditPath string // describes it; "" for shots without a setup
	Form     *Form  // the form that does, where it was asked for
	Shots    []ShotRow
}

// ShotRow is one shot.
type ShotRow struct {
	ID           string // "shot-7": the row's anchor
	Clock        string // "09:05", when its step begins; "" at any time
	Beside       string // "next day"
	Kind         string // "overhead"
	Title        string
	Tie          string // "Dough, step 3"; "" for the whole episode
	Cue          string // what viewers need to see, and when; "" if it shows none
	Layout       bool   // it shows the ingredients laid out
	Lost         Mark   // that its step is no longer in the recipe, or not in the plan
	Note         string
	Tick         string // names the shot in a press
	Got          bool
	Presses      []Press
	EditPath     string
	DeleteAction string
	UpAction     string
	DownAction   string
}

// Press is one state of a shot, and whether it is in it.
type Press struct {
	State   string // "retake"
	Pressed bool
}

// ShotDraft offers shots for what is missing.
type ShotDraft struct {
	Action string
	Have   string // sent along: how many shots there were
	Button string // "Draft a shot list"
	Text   string // what it adds
}

// GapRow is something that viewers need to see and no shot shows.
type GapRow struct {
	Measure string     // "4 of 11"
	Small   string     // "steps"
	Text    string     // "have no shot:"
	Links   []OpenLink // each adds the shot, filled in
	Note    string     // how it is told
}

// SetupChanges is how often the camera changes its setup.
type SetupChanges struct {
	Facts []DayFact
	Title string   // over the order with the fewest
	Runs  []RunRow // that order
	Note  string   // what is counted
}

// RunRow is what is filmed before the camera moves on.
type RunRow struct {
	Number string // "3"
	Setup  string
	Shots  string // their titles
}

// gutter is when a shot is due, over its kind.
func (s ShotRow) gutter() Gutter {
	if s.Clock == "" {
		return Gutter{Text: s.Kind}
	}
	return measured(s.Clock, joined(s.Beside, s.Kind))
}

// layoutWord says that a shot shows the ingredients laid out.
func (s ShotRow) layoutWord() string {
	if s.Layout {
		return "ingredients laid out"
	}
	return ""
}

// about is what is known of a shot beside its title, on one line.
func (s ShotRow) about() string { return joined(s.Tie, s.Cue, s.layoutWord(), s.Note) }
