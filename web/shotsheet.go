package web

import (
	"fmt"
	"net/http"
	"slices"
	"strconv"
	"strings"

	"benchproof/kitchen/coverage"
	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/views"
)

func (s *Server) showShots(w http.ResponseWriter, r *http.Request) error {
	d, err := s.openDesk(r)
	if err != nil {
		return err
	}
	form, err := s.shotForm(d, r)
	if err != nil {
		return err
	}
	return s.drawShots(w, r, d, http.StatusOK, form)
}

func (s *Server) drawShots(w http.ResponseWriter, r *http.Request, d *desk, status int, form views.Form) error {
	return s.drawShotsAnd(w, r, d, status, form, nil)
}

// drawShotsAnd draws the sheet with a form of one of its setups; with none, the
// one that the address asks for.
func (s *Server) drawShotsAnd(w http.ResponseWriter, r *http.Request, d *desk, status int, form views.Form, of *setupForm) error {
	list, err := s.shotList(r, d)
	if err != nil {
		return err
	}
	page, err := s.sheetPage(r, d, views.SheetShots)
	if err != nil {
		return err
	}
	if of == nil {
		of = list.askedSetup(d, r.URL.Query().Get("describe"))
	}
	completeShotForm(&form, list.setupNames())
	sheet := newShotsSheet(s.shots(), d, list, of)
	sheet.Page, sheet.EpisodeFrame, sheet.Form = page, s.frame(d, views.SheetShots), form
	return s.draw(w, r, status, views.Shots(sheet))
}

// newShotsSheet words a shot list. of is the form of one of its setups, nil for
// none.
func newShotsSheet(p part[episode.Shot], d *desk, list *shotList, of *setupForm) views.ShotsSheet {
	ticks := p.path(d.episode.ID, 0) + "/ticks"
	sheet := views.ShotsSheet{TickAction: ticks, KeptAction: ticks + "/kept", CallSheet: d.path(views.SheetCallSheet), Got: gotText(list.shots)}
	sheet.Order, sheet.OrderPath, sheet.OrderLink = list.orderWords(d)
	blocks := list.blocks()
	for b, block := range blocks {
		drawn := views.SetupBlock{Name: block.name, Got: gotText(block.episodeShots())}
		if block.setup.Name != "" {
			drawn.About = setupAbout(block.setup)
			drawn.EditPath = describePath(d, block.setup.Name)
			if of != nil && of.was == block.setup.Name {
				drawn.Form = &of.form
			}
		}
		for i, shot := range block.shots {
			row := shotRow(p, d, shot)
			row.UpAction, row.DownAction = list.moves(p.path(d.episode.ID, shot.ID), blocks, b, i)
			drawn.Shots = append(drawn.Shots, row)
		}
		sheet.Setups = append(sheet.Setups, drawn)
	}
	addCoverage(&sheet, d, list.shots)
	sheet.Changes = list.changes(d)
	return sheet
}

// gotText counts what is got; "" without shots.
func gotText(shots []episode.Shot) string {
	got := 0
	for _, shot := range shots {
		if shot.Status == episode.Got {
			got++
		}
	}
	if len(shots) == 0 {
		return ""
	}
	return fmt.Sprintf("%d of %d got", got, len(shots))
}

func shotRow(p part[episode.Shot], d *desk, t placedShot) views.ShotRow {
	row := views.ShotRow{
		ID: anchor("shot", t.ID), Clock: t.clock, Beside: t.beside, Kind: t.Kind, Title: t.Title, Layout: t.Layout, Note: t.Note,
		Tick: strconv.FormatInt(t.ID, 10), Got: t.Status == episode.Got,
		EditPath: p.changePath(d.episode.ID, t.ID), DeleteAction: p.path(d.episode.ID, t.ID) + "/delete",
	}
	for _, status := range episode.ShotStatuses {
		row.Presses = append(row.Presses, views.Press{State: string(status), Pressed: status == t.Status})
	}
	row.Tie = stepName(t.Component, t.Step)
	switch tie, ok := coverage.TieOf(d.version.Reading, t.Shot); {
	case !ok:
		row.Lost = views.Mark{Kind: views.MarkLook, Text: "the recipe no longer has this step"}
	case tie.Step >= 0:
		if t.isUnplanned {
			row.Lost = views.Mark{Kind: views.MarkLook, Text: "the day’s plan does not cook this step for the camera"}
		}
		if coverage.IsNear(t.Kind) {
			row.Cue = cueWords(d.version.Reading.Components[tie.Component].Steps[tie.Step].Cue, t)
		}
	}
	return row
}

// cueWords say what viewers need to see of a step, and when it is there to be
// seen: at the step's end, however early filming it begins. A title that is the
// cue is not said twice.
func cueWords(cue string, t placedShot) string {
	switch isSaid := strings.EqualFold(cue, t.Title); {
	case cue == "" || isSaid && t.cueAt == "":
		return ""
	case isSaid:
		return "the cue about " + t.cueAt
	case t.cueAt == "":
		return "the cue: " + cue
	}
	return "the cue about " + t.cueAt + ": " + cue
}

// moves are the addresses that change a row's place with the one above or
// beneath it in its block, where nothing but the list orders the two. In the
// order of the list the first of a block goes before the block above.
func (l *shotList) moves(path string, blocks []setupBlock, b, i int) (up, down string) {
	shots := blocks[b].shots
	to := func(other placedShot) string {
		return fmt.Sprintf("%s/move?by=%d", path, other.Position-shots[i].Position)
	}
	switch {
	case i > 0 && shots[i-1].minute == shots[i].minute:
		up = to(shots[i-1])
	case i == 0 && b > 0 && !l.isPlanned():
		up = to(blocks[b-1].shots[0])
	}
	if i+1 < len(shots) && shots[i+1].minute == shots[i].minute {
		down = to(shots[i+1])
	}
	return up, down
}

// draftShots adds a shot for everything that is missing.
func (s *Server) draftShots(w http.ResponseWriter, r *http.Request) error {
	d, form, err := s.deskAndForm(w, r)
	if err != nil {
		return err
	}
	shots, err := s.store.Shots(r.Context(), d.episode.ID)
	if err != nil {
		return err
	}
	drafted := withSetups(coverage.Of(d.version.Reading, shots).Draft(d.version.Reading), shots)
	err = s.store.AddShots(r.Context(), d.episode.ID, form.whole("have"), drafted)
	switch {
	case err == nil && len(drafted) > 0:
		s.flash(r, "Added: "+count(len(drafted), "shot", "shots")+".", "")
	case err != nil && fault.KindOf(err) == fault.Conflict: // a second press: the list says what is there
		s.flash(r, "The shot list has changed meanwhile; nothing was added.", "")
	case err != nil:
		return err
	}
	return seeOther(w, r, d.path(views.SheetShots))
}

// withSetups gives drafted shots the name of their kind as their setup where the
// list names none yet: renamed at its heading, it is renamed on all of them.
func withSetups(drafted, there []episode.Shot) []episode.Shot {
	if slices.ContainsFunc(there, func(shot episode.Shot) bool { return shot.Setup != "" }) {
		return drafted
	}
	for i := range drafted {
		drafted[i].Setup = drafted[i].Kind
	}
	return drafted
}

// setupNames are the setups that shots name and that are described, by name.
func (l *shotList) setupNames() []string {
	var names []string
	for _, shot := range l.shots {
		if shot.Setup != "" {
			names = append(names, shot.Setup)
		}
	}
	for name := range l.setups {
		names = append(names, name)
	}
	slices.Sort(names)
	return slices.Compact(names)
}
