package web

import (
	"context"
	"fmt"
	"net/http"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/release"
	"benchproof/views"
)

// desk is what every sheet of an episode is drawn from.
type desk struct {
	show    episode.Show
	episode episode.Episode
	version version // the recipe version in use; its ID is 0 if there is none
	facts   episode.Facts
	out     outgoing // what the episode is released with; set by openDesk only
}

// path is the address of one of the episode's sheets.
func (d *desk) path(sheet views.Sheet) string {
	return episodePath(d.episode.ID) + "/" + string(sheet)
}

func episodePath(id int64) string { return fmt.Sprintf("/episodes/%d", id) }

// hasRecipe tells whether a recipe version is in use.
func (d *desk) hasRecipe() bool { return d.version.ID != 0 }

// openDesk loads the episode of the address with what its sheets need.
func (s *Server) openDesk(r *http.Request) (*desk, error) {
	id, err := pathID(r, "episode")
	if err != nil {
		return nil, err
	}
	d, err := s.deskOf(r.Context(), id)
	if err != nil {
		return nil, err
	}
	d.out, err = s.releaseInput(r.Context(), d, "")
	d.facts.DescriptionOver = release.Describe(d.out.Input).Over()
	return d, err
}

func (s *Server) deskOf(ctx context.Context, id int64) (*desk, error) {
	show, err := s.store.Show(ctx)
	if err != nil {
		return nil, err
	}
	row, err := s.store.SeasonRow(ctx, id)
	if err != nil {
		return nil, err
	}
	d := &desk{show: show, episode: row.Episode, facts: row.Facts}
	if d.episode.VersionID != 0 {
		if d.version, err = s.loadVersion(ctx, d.episode.VersionID); err != nil {
			return nil, err
		}
	}
	return d, nil
}

// deskAndForm loads the episode of the address and reads the form sent to it.
func (s *Server) deskAndForm(w http.ResponseWriter, r *http.Request) (*desk, *typed, error) {
	form, err := readTyped(w, r)
	if err != nil {
		return nil, nil, err
	}
	d, err := s.openDesk(r)
	return d, form, err
}

// frame is what stands around the sheet drawn.
func (s *Server) frame(d *desk, sheet views.Sheet) views.EpisodeFrame {
	e := d.episode
	frame := views.EpisodeFrame{
		Number: numberWord(e.Number), Title: e.Title, Path: episodePath(e.ID), Sheet: sheet,
		Stage: string(e.Stage), Marks: map[views.Sheet]int{},
	}
	if !e.ReleaseOn.IsZero() {
		frame.ReleaseOn = "out " + s.day(e.ReleaseOn)
	}
	for _, open := range episode.StillOpen(d.facts) {
		at := sheetOf(open.Sheet)
		frame.Open = append(frame.Open, views.OpenLink{Text: readOn(open.Text), Path: d.path(at), Wrong: open.Wrong})
		frame.Marks[at]++
	}
	return frame
}

func numberWord(n int) string {
	if n == 0 {
		return ""
	}
	return fmt.Sprintf("Ep %d", n)
}

// sheetOf turns a sheet's name ("shoot day") into its address ("shoot-day").
func sheetOf(name string) views.Sheet {
	for _, sheet := range views.Sheets {
		if string(sheet) == name || (sheet == views.SheetShootDay && name == "shoot day") {
			return sheet
		}
	}
	return views.SheetBrief
}
