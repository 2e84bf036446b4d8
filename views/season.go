package views

import "strconv"

// SeasonPage is the first page: the short way in, then the episodes.
type SeasonPage struct {
	Page
	Start  Form          // title and pasted recipe; drawn at the top
	Groups []SeasonGroup // "Coming", "Not dated", "Released"; empty ones left out
}

// SeasonGroup is episodes under one heading.
type SeasonGroup struct {
	Title    string
	Episodes []EpisodeRow
}

// EpisodeRow is one episode of the season.
type EpisodeRow struct {
	Date   string // "14 Mar"; "not dated"
	Year   string // "2027", drawn small; "" if it is this year
	Number string // "Ep 31"; "" if not numbered
	Title  string
	Path   string // its first sheet
	Stage  string
	Open   []OpenLink // the first few things that still stand
	More   int        // how many more there are
}

// openEnd is what follows the i-th open thing of an episode.
func openEnd(i int, e EpisodeRow) string {
	switch {
	case i < len(e.Open)-1:
		return ", "
	case e.More > 0:
		return " and " + strconv.Itoa(e.More) + " more."
	}
	return "."
}
