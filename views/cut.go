package views

// CutSheet is the edited video's length and captions.
type CutSheet struct {
	Page
	EpisodeFrame
	Form     Form     // name, length, captions
	Summary  string   // "212 cues, 8:35"; "" without captions
	Problems []string // what could not be read of the captions
	Cues     []CueRow
}

// CueRow is one caption.
type CueRow struct {
	At    string // "1:23.450"
	Words string
}
