package web

import (
	"net/http"
	"strings"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/script"
	"benchproof/views"
)

// segments is the part of the running order.
func (s *Server) segments() part[episode.Segment] {
	return part[episode.Segment]{
		word: "segment", many: "segments", sheet: views.SheetScript,
		fields: segmentFields, values: segmentValues, read: readSegment,
		get: s.store.Segment, add: s.store.AddSegment, save: s.store.SaveSegment, remove: s.store.DeleteSegment,
		move:  s.store.MoveSegment,
		blank: func(episodeID int64) episode.Segment { return episode.Segment{EpisodeID: episodeID} },
		key:   func(g episode.Segment) partKey { return partKey{g.ID, g.EpisodeID, g.Revision} },
		stamp: func(g *episode.Segment, revision int) { g.Revision = revision },
	}
}

func segmentFields(*desk) []views.Field {
	return []views.Field{
		{Name: "title", Label: "Title", Required: true, Hint: "It becomes the chapter's name."},
		{Name: "narration", Label: "Narration", Kind: views.FieldArea, Rows: 8, Hint: "What is to be said, as it will be said."},
		{Name: "planned", Label: "Planned length", Hint: "Minutes and seconds, 1:35, or seconds. Empty takes the narration's own length."},
	}
}

func segmentValues(_ *desk, g episode.Segment) values {
	v := values{"title": g.Title, "narration": g.Narration}
	if g.PlannedSeconds > 0 {
		v["planned"] = script.Timecode(g.PlannedSeconds)
	}
	return v
}

func readSegment(f *typed, g *episode.Segment) {
	g.Title = f.needed("title", "Give the segment a title.")
	g.Narration = f.text("narration")
	g.PlannedSeconds = f.seconds("planned")
}

func (s *Server) showScript(w http.ResponseWriter, r *http.Request) error {
	d, err := s.openDesk(r)
	if err != nil {
		return err
	}
	form, err := s.segments().form(d, r)
	if err != nil {
		return err
	}
	return s.drawScript(w, r, d, http.StatusOK, form)
}

func (s *Server) drawScript(w http.ResponseWriter, r *http.Request, d *desk, status int, form views.Form) error {
	segments, err := s.store.Segments(r.Context(), d.episode.ID)
	if err != nil {
		return err
	}
	page, err := s.sheetPage(r, d, views.SheetScript)
	if err != nil {
		return err
	}
	sheet := newScriptSheet(s.segments(), d, segments)
	sheet.Page, sheet.EpisodeFrame, sheet.Form = page, s.frame(d, views.SheetScript), form
	return s.draw(w, r, status, views.Script(sheet))
}

// newScriptSheet words the running order.
func newScriptSheet(p part[episode.Segment], d *desk, segments []episode.Segment) views.ScriptSheet {
	pace := d.show.WordsPerMinute
	marks := script.Outline(segments, pace)
	length := script.Length(marks)
	sheet := views.ScriptSheet{
		Total: script.Timecode(length), Pace: "at " + count(pace, "word", "words") + " a minute",
		Outline: outlineText(marks),
	}
	if minutes := d.episode.TargetMinutes; minutes > 0 {
		sheet.Target = "against " + count(minutes, "minute", "minutes")
		sheet.Over = againstTarget(length - minutes*60)
	}
	for i, g := range segments {
		sheet.Segments = append(sheet.Segments, segmentRow(p, d, g, marks[i], i == 0, i == len(segments)-1))
	}
	return sheet
}

func segmentRow(p part[episode.Segment], d *desk, g episode.Segment, mark script.Mark, first, last bool) views.SegmentRow {
	path := p.path(d.episode.ID, g.ID)
	row := views.SegmentRow{
		ID: anchor("segment", g.ID), Start: script.Timecode(mark.At), Title: g.Title,
		Narration: paragraphs(g.Narration), Length: segmentLength(mark),
		EditPath: p.changePath(d.episode.ID, g.ID), DeleteAction: path + "/delete",
	}
	if over := mark.Short(); over > 0 {
		row.Mark = views.Mark{Kind: views.MarkLook, Text: count(over, "second", "seconds") + " longer than planned"}
	}
	row.UpAction, row.DownAction = moveActions(path, first, last)
	return row
}

func segmentLength(m script.Mark) string {
	var parts []string
	if m.Planned > 0 {
		parts = append(parts, "planned "+script.Timecode(m.Planned))
	}
	if m.Spoken > 0 {
		parts = append(parts, "spoken "+script.Timecode(m.Spoken))
	}
	if parts == nil {
		return "no length yet"
	}
	return strings.Join(parts, " · ")
}

// againstTarget words how far the running order is from its target.
func againstTarget(over int) views.Mark {
	switch {
	case over > 0:
		return views.Mark{Kind: views.MarkLook, Text: script.Timecode(over) + " over"}
	case over < 0:
		return views.Mark{Text: script.Timecode(-over) + " under"}
	}
	return views.Mark{Kind: views.MarkProved, Text: "to the second"}
}

// outlineText is the outline as a block to copy.
func outlineText(marks []script.Mark) string {
	var b strings.Builder
	for _, m := range marks {
		b.WriteString(script.Timecode(m.At) + " " + m.Title + "\n")
	}
	return b.String()
}
