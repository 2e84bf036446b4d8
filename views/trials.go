package views

// TrialsSheet is every real make, and a form to add or change one.
type TrialsSheet struct {
	Page
	EpisodeFrame
	Trials []TrialRow
	Form   Form // add, or change one if its title says so
}

// TrialRow is one trial.
type TrialRow struct {
	Date         string // "2 Mar"
	Title        string // "version 4 at × 2"
	Figures      []Figure
	Verdict      Mark
	Note         string
	EditPath     string
	DeleteAction string
}
