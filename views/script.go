package views

// ScriptSheet is the running order with its narration.
type ScriptSheet struct {
	Page
	EpisodeFrame
	Segments []SegmentRow
	Total    string // "8:35"
	Target   string // "against 9 minutes"; "" if no target is set
	Over     Mark   // "25 s under"; zero if there is no target
	Pace     string // "at 150 words a minute"
	Outline  string // the timestamped outline, to copy
	Form     Form   // add a segment, or change one
}

// SegmentRow is one segment.
type SegmentRow struct {
	ID           string // "segment-7": the row's anchor
	Start        string // "1:35"
	Title        string
	Narration    []string // paragraphs
	Length       string   // "planned 0:45 · spoken 0:52"
	Mark         Mark     // "7 s longer than planned"; zero if it fits
	EditPath     string
	DeleteAction string
	UpAction     string // "" for the first
	DownAction   string // "" for the last
}
