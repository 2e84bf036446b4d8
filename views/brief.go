package views

// BriefSheet is what the episode is. The notes are drawn as written and as
// they read.
type BriefSheet struct {
	Page
	EpisodeFrame
	Form         Form
	NotesHTML    string // the notes rendered and sanitised; "" if none
	DeleteAction string // deletes the episode; it can be restored
}
