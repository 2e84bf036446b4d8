package web

import (
	"cmp"
	"context"
	"fmt"
	"net/http"
	"strings"
	"time"

	"github.com/go-chi/chi/v5"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/script"
	"benchproof/views"
)

func cutFields() []views.Field {
	return []views.Field{
		{Name: "name", Label: "Cut", Placeholder: "second cut"},
		{Name: "length", Label: "Length", Hint: "Minutes and seconds, 8:35, or seconds. Empty takes the end of the last caption."},
		{Name: "captions", Label: "Captions", Kind: views.FieldPlain, Rows: 12, Hint: "Paste the WebVTT or SRT file of the cut."},
	}
}

func cutValues(c episode.Cut) values {
	v := values{"name": c.Name, "captions": c.Captions}
	if c.Seconds > 0 {
		v["length"] = script.Timecode(c.Seconds)
	}
	return v
}

// readCut reads the form; captions that cannot be read are refused with the
// line that is wrong.
func readCut(f *typed, c *episode.Cut) {
	c.Name, c.Seconds, c.Captions = f.text("name"), f.seconds("length"), f.values.Get("captions")
	captions, err := script.ReadCaptions(c.Captions)
	switch {
	case normal(c.Captions) == "":
		c.Captions = ""
	case err != nil && f.text("partial") == "yes" && len(captions.Cues) > 0:
		c.Captions = script.WriteVTT(captions) // the creator said so: what could be read, and no more
		c.Seconds = cmp.Or(c.Seconds, int(captions.End()/time.Second))
	case err != nil:
		f.fail("captions", "%s", captionFaults(err))
	case c.Seconds == 0 && len(captions.Cues) > 0:
		c.Seconds = int(captions.End() / time.Second)
	}
}

// captionFaults joins what is wrong with captions, each fault with its line.
func captionFaults(err error) string {
	var says []string
	for _, f := range fault.All(err) {
		says = append(says, f.Say)
	}
	return strings.Join(says, " ")
}

// keepPartial is offered when captions were refused.
var keepPartial = views.Field{Name: "partial", Label: "Keep what could be read", Kind: views.FieldCheck, Hint: "Only the captions that could be read are kept, written clean."}

func cutForm(d *desk, value func(string) string, revision int, err error) views.Form {
	fields := cutFields()
	if fieldError(err, "captions") != "" {
		fields = append(fields, keepPartial)
	}
	fields = filled(fields, value, err)
	return views.Form{ID: "cut", Action: d.path(views.SheetCut), Revision: revision, Fields: fields, Submit: "Save cut", Problem: formError(err, fields), Guard: true}
}

func (s *Server) showCut(w http.ResponseWriter, r *http.Request) error {
	d, err := s.openDesk(r)
	if err != nil {
		return err
	}
	cut, err := s.cutOf(r, d)
	if err != nil {
		return err
	}
	return s.drawCut(w, r, d, cut, http.StatusOK, cutForm(d, cutValues(cut).get, cut.Revision, nil))
}

// cutOf loads the current cut, an empty one where there is none yet.
func (s *Server) cutOf(r *http.Request, d *desk) (episode.Cut, error) {
	cut, err := s.store.CurrentCut(r.Context(), d.episode.ID)
	if err != nil && fault.KindOf(err) == fault.NotFound {
		return episode.Cut{EpisodeID: d.episode.ID}, nil
	}
	return cut, err
}

func (s *Server) drawCut(w http.ResponseWriter, r *http.Request, d *desk, cut episode.Cut, status int, form views.Form) error {
	page, err := s.sheetPage(r, d, views.SheetCut)
	if err != nil {
		return err
	}
	settlements, err := s.store.Settlements(r.Context(), d.episode.ID)
	if err != nil {
		return err
	}
	captions, readErr := script.ReadCaptions(cut.Captions)
	sheet := newCutSheet(cut, captions, readErr)
	if readErr == nil {
		s.addFindings(&sheet, d, captions, settlements)
	}
	if err := s.addChapterRows(r.Context(), &sheet, d); err != nil {
		return err
	}
	if len(sheet.Cues) > 0 {
		base := episodePath(d.episode.ID) + "/captions."
		sheet.Files = []views.Link{{Text: "As WebVTT", Path: base + "vtt"}, {Text: "As SRT", Path: base + "srt"}}
	}
	sheet.Page, sheet.EpisodeFrame, sheet.Form = page, s.frame(d, views.SheetCut), form
	return s.draw(w, r, status, views.Cut(sheet))
}

// keepCut saves the cut, or keeps it as the episode's first.
func (s *Server) keepCut(ctx context.Context, cut episode.Cut) error {
	var err error
	if cut.ID != 0 {
		err = s.store.SaveCut(ctx, cut)
	} else {
		_, err = s.store.AddCut(ctx, cut)
	}
	if err != nil {
		return err
	}
	return s.Recheck(ctx, cut.EpisodeID)
}

// cueID is the anchor of a caption, counted from 0.
func cueID(i int) string { return fmt.Sprintf("cue-%d", i+1) }

// newCutSheet words the saved captions; err is what could not be read of them.
func newCutSheet(cut episode.Cut, captions script.Captions, err error) views.CutSheet {
	var sheet views.CutSheet
	if cut.Captions == "" {
		return sheet
	}
	if err != nil {
		sheet.Problems = []string{fault.Say(err)}
	}
	sheet.Notices = captions.Notices
	for i, cue := range captions.Cues {
		sheet.Cues = append(sheet.Cues, views.CueRow{
			ID: cueID(i), At: cueTime(cue.Start), Secs: fmt.Sprintf("%.2f", cue.Start.Seconds()), Words: views.Words(cue.Text),
		})
	}
	sheet.Summary = joined(", ", count(len(captions.Cues), "cue", "cues"), script.Timecode(cut.Seconds))
	return sheet
}

// cueTime writes a cue's start for the gutter: "1:23.4".
func cueTime(at time.Duration) string {
	return fmt.Sprintf("%s.%d", script.Timecode(int(at/time.Second)), at%time.Second/(100*time.Millisecond))
}

func (s *Server) saveCut(w http.ResponseWriter, r *http.Request) error {
	d, form, err := s.deskAndForm(w, r)
	if err != nil {
		return err
	}
	saved, err := s.cutOf(r, d)
	if err != nil {
		return err
	}
	cut := saved
	readCut(form, &cut)
	cut.Revision = form.revision()
	if err = form.err(); err == nil {
		err = s.keepCut(r.Context(), cut)
	}
	lost := 0
	if err == nil {
		lost, err = s.carryChapters(r.Context(), d.episode.ID, saved.Captions, cut.Captions)
	}
	return s.settle(w, r, err, outcome{
		to: d.path(views.SheetCut), say: savedCutText(lost),
		redraw: func(err error) error {
			return s.drawCut(w, r, d, saved, http.StatusUnprocessableEntity, cutForm(d, form.values.Get, cut.Revision, err))
		},
		late: conflict{
			what: "this cut", action: d.path(views.SheetCut), back: d.path(views.SheetCut), revision: saved.Revision,
			fields: cutFields(), mine: form.values.Get, saved: cutValues(saved).get,
		},
	})
}

// captionsOf reads the current cut's captions; none where there is no cut, or
// what is kept of it cannot be read.
func (s *Server) captionsOf(ctx context.Context, episodeID int64) (script.Captions, error) {
	cut, err := s.store.CurrentCut(ctx, episodeID)
	if err != nil && fault.KindOf(err) == fault.NotFound {
		return script.Captions{}, nil
	}
	if err != nil {
		return script.Captions{}, err
	}
	captions, err := script.ReadCaptions(cut.Captions)
	if err != nil {
		return script.Captions{}, nil // the Cut sheet says what is wrong
	}
	return captions, nil
}

// sendCaptions sends the cut's captions written clean, as WebVTT or SRT.
func (s *Server) sendCaptions(w http.ResponseWriter, r *http.Request) error {
	d, err := s.openDesk(r)
	if err != nil {
		return err
	}
	captions, err := s.captionsOf(r.Context(), d.episode.ID)
	if err != nil {
		return err
	}
	if len(captions.Cues) == 0 {
		return fault.NotFoundf("There are no captions to send yet.")
	}
	format := chi.URLParam(r, "format")
	text, kind := script.WriteVTT(captions), "text/vtt; charset=utf-8"
	if format == "srt" {
		text, kind = script.WriteSRT(captions), "application/x-subrip; charset=utf-8"
	}
	w.Header().Set("Content-Type", kind)
	w.Header().Set("Content-Disposition", `attachment; filename="`+fileName(d.episode.Title)+"."+format+`"`)
	return sendBytes(w, r, []byte(text))
}
