package web

import (
	"context"
	"fmt"
	"log/slog"
	"net/http"
	"slices"
	"strconv"
	"time"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/script"
	"benchproof/views"
)

// alignmentOf gives what is reckoned of an episode's current cut; the zero value
// without a cut. It is as kept, which is one small row, while its print is that
// of cut, running order and recipe; else it is reckoned anew and kept.
func (s *Server) alignmentOf(ctx context.Context, d *desk, segments []episode.Segment) (script.Alignment, error) {
	cut, kept, err := s.store.Alignment(ctx, d.episode.ID)
	if err != nil && fault.KindOf(err) == fault.NotFound {
		return script.Alignment{}, nil
	}
	steps := script.Steps(d.version.Reading)
	if err != nil || kept.Print == script.AlignmentPrint(cut, segments, steps) {
		return kept, err
	}
	if cut, err = s.store.Cut(ctx, cut.ID); err != nil {
		return script.Alignment{}, err
	}
	kept = script.AlignCut(cut, segments, steps)
	if err := s.store.KeepAlignment(ctx, cut.ID, kept); err != nil {
		slog.ErrorContext(ctx, "an alignment is not kept", "cause", err) // it is right all the same
	}
	return kept, nil
}

// withSet puts what a person said into where segments begin in a cut.
func withSet(starts []script.Start, segments []episode.Segment, set map[int64]int) []script.Start {
	starts = slices.Clone(starts)
	for i := range starts {
		if seconds, ok := set[segments[i].ID]; ok {
			starts[i] = script.Start{Segment: i, Found: true, At: time.Duration(seconds) * time.Second, Confidence: 1}
		}
	}
	return starts
}

// doubts is how many of the starts are to be looked at by a person.
func doubts(starts []script.Start) int {
	n := 0
	for _, s := range starts {
		if !s.Found || s.Confidence < script.LowConfidence {
			n++
		}
	}
	return n
}

// chaptersOf makes the chapters of the cut, or those of the running order before
// there is one. isWhole tells that a platform takes the list.
func (s *Server) chaptersOf(ctx context.Context, d *desk, segments []episode.Segment) (chapters []script.Chapter, problems []string, isWhole bool, err error) {
	aligned, err := s.alignmentOf(ctx, d, segments)
	if err != nil {
		return nil, nil, false, err
	}
	if aligned.End == 0 {
		chapters, problems = script.Chapters(script.Outline(segments, d.show.WordsPerMinute))
		return chapters, problems, len(problems) == 0, nil
	}
	set, err := s.store.ChapterStarts(ctx, d.episode.ID)
	if err != nil {
		return nil, nil, false, err
	}
	starts := withSet(aligned.Starts, segments, set)
	chapters, problems = script.CutChapters(segments, starts, aligned.End)
	return chapters, problems, len(problems) == doubts(starts), nil
}

// chapterRows words where the segments begin in the cut, for the Cut sheet.
func chapterRows(d *desk, segments []episode.Segment, starts []script.Start, set map[int64]int) []views.ChapterRow {
	var rows []views.ChapterRow
	first := time.Duration(-1)
	if found := script.InCutOrder(starts); len(found) > 0 && found[0].At < script.MinChapterSeconds*time.Second {
		first = found[0].At // it goes out at 0:00
	}
	for _, start := range starts {
		g := segments[start.Segment]
		row := views.ChapterRow{
			At: "–", Title: g.Title, Action: episodePath(d.episode.ID) + "/chapters", Segment: strconv.FormatInt(g.ID, 10),
		}
		if start.Found {
			at := int(start.At / time.Second)
			if start.At == first {
				at = 0
			}
			row.At, row.Secs = script.Timecode(at), strconv.Itoa(at)
			row.Value = row.At
		}
		_, row.IsSet = set[g.ID]
		row.Mark, row.Asks = startMark(start, row.IsSet)
		rows = append(rows, row)
	}
	return rows
}

// startMark says how sure a start is, and whether it asks to be looked at.
func startMark(start script.Start, isSet bool) (mark views.Mark, asks bool) {
	switch {
	case isSet:
		return views.Mark{Text: "set by hand"}, false
	case !start.Found:
		return views.Mark{Kind: views.MarkLook, Text: "not found in the cut. Where does it begin?"}, true
	case start.Confidence < script.LowConfidence:
		return views.Mark{Kind: views.MarkLook, Text: "a guess. Is it so?"}, true
	}
	return views.Mark{}, false
}

// addChapterRows puts the chapters on the Cut sheet of a cut with captions.
func (s *Server) addChapterRows(ctx context.Context, sheet *views.CutSheet, d *desk) error {
	segments, err := s.store.Segments(ctx, d.episode.ID)
	if err != nil {
		return err
	}
	aligned, err := s.alignmentOf(ctx, d, segments)
	if err != nil {
		return err
	}
	set, err := s.store.ChapterStarts(ctx, d.episode.ID)
	if err != nil {
		return err
	}
	starts := withSet(aligned.Starts, segments, set)
	sheet.Chapters = chapterRows(d, segments, starts, set)
	if n := doubts(starts); n > 0 {
		sheet.ChaptersAsk = views.Mark{Kind: views.MarkLook, Text: fmt.Sprintf("%d to look at", n)}
	}
	return nil
}

// setChapter keeps where a segment begins; an empty time lets it be found again.
func (s *Server) setChapter(w http.ResponseWriter, r *http.Request) error {
	d, form, err := s.deskAndForm(w, r)
	if err != nil {
		return err
	}
	segment, err := s.store.Segment(r.Context(), int64(form.whole("segment")))
	if err != nil {
		return err
	}
	if segment.EpisodeID != d.episode.ID {
		return fault.NotFoundf("There is no such segment in this episode.")
	}
	seconds := form.seconds("at")
	if err := form.err(); err != nil {
		return err
	}
	if form.text("at") == "" || form.text("find") != "" {
		err = s.store.ClearChapterStart(r.Context(), segment.ID)
	} else {
		err = s.store.SetChapterStart(r.Context(), segment.ID, seconds)
	}
	if err != nil {
		return err
	}
	return seeOther(w, r, d.path(views.SheetCut)+"#chapters")
}

// carryChapters moves what a person set to where the same words stand in a new
// cut. What cannot be found there stays where it was; lost is how many those
// are.
func (s *Server) carryChapters(ctx context.Context, episodeID int64, old, renewed string) (lost int, err error) {
	set, err := s.store.ChapterStarts(ctx, episodeID)
	if err != nil || len(set) == 0 || old == renewed {
		return 0, err
	}
	before, err := script.ReadCaptions(old)
	if err != nil || len(before.Cues) == 0 {
		return 0, nil
	}
	after, err := script.ReadCaptions(renewed)
	if err != nil || len(after.Cues) == 0 {
		return 0, nil
	}
	for segmentID, seconds := range set {
		at, ok := script.Carry(time.Duration(seconds)*time.Second, before, after)
		if !ok {
			lost++
			continue
		}
		if err := s.store.SetChapterStart(ctx, segmentID, int(at.Round(time.Second)/time.Second)); err != nil {
			return lost, err
		}
	}
	return lost, nil
}

// savedCutText says that a cut is saved, and what became of chapters set by
// hand.
func savedCutText(lost int) string {
	if lost == 0 {
		return "The cut is saved."
	}
	return "The cut is saved. What you set for " + count(lost, "chapter", "chapters") + " could not be followed into it: look where they begin."
}
