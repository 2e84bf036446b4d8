package views

// Sheet is one of an episode's sheets, and the last part of its address.
type Sheet string

// The sheets in the order of the week.
const (
	SheetBrief    Sheet = "brief"
	SheetRecipe   Sheet = "recipe"
	SheetTrials   Sheet = "trials"
	SheetShop     Sheet = "shop"
	SheetShootDay Sheet = "shoot-day"
	SheetScript   Sheet = "script"
	SheetShots    Sheet = "shots"
	SheetCut      Sheet = "cut"
	SheetRelease  Sheet = "release"

	SheetCallSheet Sheet = "call-sheet" // not in the row of sheets
)

// Sheets lists them in the order of the week.
var Sheets = []Sheet{
	SheetBrief, SheetRecipe, SheetTrials, SheetShop, SheetShootDay,
	SheetScript, SheetShots, SheetCut, SheetRelease,
}

// Name is the sheet's name as shown: "Shoot day".
func (s Sheet) Name() string {
	switch s {
	case SheetShootDay:
		return "Shoot day"
	case SheetCallSheet:
		return "Call sheet"
	case "":
		return ""
	}
	return string(s[0]-'a'+'A') + string(s[1:])
}

// EpisodeFrame is what stands around each sheet of an episode: its head, the
// row of sheets, and at the end what still stands before its release.
type EpisodeFrame struct {
	Number    string        // "Ep 31"; "" if not numbered yet
	Title     string        // the working title
	Path      string        // "/episodes/12"; a sheet's address is Path + "/" + Sheet
	Sheet     Sheet         // the sheet drawn
	Stage     string        // "in development"
	ReleaseOn string        // "out 14 Mar"; "" if not dated
	Marks     map[Sheet]int // how many things to look at on each sheet; absent or 0 draws none
	Open      []OpenLink    // what still stands before the release, in the order of the week
}

// isKept tells whether the sheet is used while filming, where the signal may go.
func (f EpisodeFrame) isKept() bool { return f.Sheet == SheetShots || f.Sheet == SheetShootDay }

// OpenLink is one thing that still stands between an episode and its release.
type OpenLink struct {
	Text  string // "say how much a knob is": reads on after "Before release:"
	Path  string // where it is settled
	Wrong bool   // true draws it as wrong instead of to look at
}

// sheetPath is a sheet's address.
func (f EpisodeFrame) sheetPath(s Sheet) string { return f.Path + "/" + string(s) }
