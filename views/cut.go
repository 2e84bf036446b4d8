package views

// CutSheet is the edited video's length and captions, and what its captions say
// otherwise than the recipe.
type CutSheet struct {
	Page
	EpisodeFrame
	Form     Form     // name, length, captions
	Summary  string   // "212 cues, 8:35"; "" without captions
	Files    []Link   // the captions written clean, to take away
	Problems []string // what could not be read of the captions
	Notices  []string // what was read of them, but looks wrong
	Checked  Mark     // "everything said is as written"; zero without captions or recipe
	Chapters []ChapterRow
	// ChaptersAsk tells how many chapters are to be looked at; zero if none.
	ChaptersAsk Mark
	Findings    []FindingRow
	Settled     []FindingRow
	Cues        []CueRow
}

// FindingRow is one thing that is said otherwise than written. Its settling form
// posts: key, at, said, right and how, one of Ways.
type FindingRow struct {
	ID      string // "finding-3": the row's anchor
	Key     string
	At      string // "1:23.4"; "–" if it comes up nowhere
	CueID   string // the caption it stands in; "" if none
	Mark    Mark   // "differs", "not said" …, with what is likely behind it
	Said    string // the words that carry the amount; "" if it is not said
	Written string // "2½ cups"; "" if it is not written
	Line    string // the recipe's line or step; "" if it is not written
	Words   string // the words around it
	Suggest string // what to say in a correction
	Action  string // settles it, or opens it again
	Ways    []string
	How     string // how it was settled; "" if it is open
	AtValue string // seconds, sent along
}

// Named tells the finding to whoever hears only its buttons: "22 minutes, written 12 minutes".
func (f FindingRow) Named() string {
	switch {
	case f.Said == "":
		return f.Written
	case f.Written == "":
		return f.Said
	}
	return f.Said + ", written " + f.Written
}

// CueRow is one caption.
type CueRow struct {
	ID    string   // "cue-7"
	At    string   // "1:23.4"
	Secs  string   // "83.45": where a player jumps to
	Words []Run    // numbers that were tied to the recipe are marked Heat, those in a finding New
	Ties  []string // the recipe's lines that these numbers match
	Wrong bool
}

// ChapterRow is where one segment begins in the cut. Its form posts: segment and
// at, or find to let it be found by what is said.
type ChapterRow struct {
	At      string // "1:35"; "–" if it was not found
	Title   string
	Mark    Mark
	Action  string
	Segment string
	Value   string // what stands in the field
	Secs    string // where a player jumps to; "" if it was not found
	IsSet   bool   // a person said so
	Asks    bool   // nobody did, and it is not sure
}
