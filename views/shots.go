package views

// ShotsSheet is the shot list by setup.
type ShotsSheet struct {
	Page
	EpisodeFrame
	Got      string // "9 of 14 got"
	Setups   []SetupBlock
	Coverage string     // "2 of 11 steps have no shot"; "" if all have
	Without  []OpenLink // those steps, each with a link that adds a shot for it
	Form     Form       // add a shot, or change one
}

// SetupBlock is the shots of one camera position and light.
type SetupBlock struct {
	Name  string // "overhead, window left"; "no setup yet"
	Left  string // "3 to shoot"; "all got"
	Shots []ShotRow
}

// ShotRow is one shot. Its tick posts status, the state wanted.
type ShotRow struct {
	ID           string // "shot-7": the row's anchor
	Kind         string // "overhead", in the gutter
	Title        string
	Step         string // "Dough, step 3"; "" if none
	Status       Mark   // "got", "to shoot", "retake"
	Note         string
	Got          bool
	GotAction    string
	Wanted       string // the status a press asks for
	EditPath     string
	DeleteAction string
	UpAction     string
	DownAction   string
}
