package web

import (
	"context"
	"fmt"
	"net/http"
	"time"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/script"
	"benchproof/kitchen/verify"
	"benchproof/views"
)

// checkCut compares what the cut says with the recipe at the episode's scale.
// No captions, or no recipe, give nothing to compare.
func (s *Server) checkCut(d *desk, captions script.Captions) (report verify.Report, checked bool) {
	if len(captions.Cues) == 0 || !d.hasRecipe() {
		return verify.Report{}, false
	}
	cues := make([]verify.Cue, len(captions.Cues))
	for i, cue := range captions.Cues {
		cues[i] = verify.Cue{Start: cue.Start, End: cue.End, Text: cue.Text}
	}
	checker := verify.Checker{Larder: s.config.Larder, System: d.show.System}
	scaled := recipe.Scale(d.version.Reading, d.episode.Scale, s.writer(d.show, d.version.Reading, recipe.AsWritten))
	return checker.Check(scaled.Recipe, cues), true
}

// Recheck keeps which findings an episode's current cut has, for the season to
// count, and where its segments begin, so that no viewer has to wait for it. It
// is called whenever the cut or the recipe in use changes.
func (s *Server) Recheck(ctx context.Context, episodeID int64) error {
	d, err := s.deskOf(ctx, episodeID)
	if err != nil {
		return err
	}
	captions, err := s.captionsOf(ctx, episodeID)
	if err != nil {
		return err
	}
	segments, err := s.store.Segments(ctx, episodeID)
	if err != nil {
		return err
	}
	if _, err := s.alignmentOf(ctx, d, segments); err != nil {
		return err
	}
	report, _ := s.checkCut(d, captions)
	keys := make([]string, len(report.Findings))
	for i, f := range report.Findings {
		keys[i] = f.Key
	}
	return s.store.KeepFindings(ctx, episodeID, keys)
}

// recheckVersion rechecks every episode that uses a recipe version.
func (s *Server) recheckVersion(ctx context.Context, versionID int64) error {
	episodes, err := s.store.Episodes(ctx)
	if err != nil {
		return err
	}
	for _, e := range episodes {
		if e.VersionID != versionID {
			continue
		}
		if err := s.Recheck(ctx, e.ID); err != nil {
			return err
		}
	}
	return nil
}

// addFindings words what is said otherwise, and marks the numbers that were tied
// to the recipe in the captions.
func (s *Server) addFindings(sheet *views.CutSheet, d *desk, captions script.Captions, settlements map[string]episode.Settlement) {
	report, checked := s.checkCut(d, captions)
	if !checked {
		return
	}
	for i, f := range report.Findings {
		row := findingRow(d, f, i, settlements[f.Key])
		if row.How == "" {
			sheet.Findings = append(sheet.Findings, row)
		} else {
			sheet.Settled = append(sheet.Settled, row)
		}
	}
	sheet.Checked = checkedMark(len(sheet.Findings), len(report.Amounts))
	markCues(sheet.Cues, report)
}

func checkedMark(open, amounts int) views.Mark {
	if open == 0 {
		return views.Mark{Kind: views.MarkProved, Text: fmt.Sprintf("%s tied to the recipe; nothing is open", count(amounts, "number", "numbers"))}
	}
	return views.Mark{Kind: views.MarkLook, Text: count(open, "thing is said otherwise than written", "things are said otherwise than written")}
}

func findingRow(d *desk, f verify.Finding, i int, how episode.Settlement) views.FindingRow {
	row := views.FindingRow{
		ID: fmt.Sprintf("finding-%d", i+1), Key: f.Key, At: "–", Mark: findingMark(f), Said: f.Said, Written: f.Written,
		Line: f.Line, Words: f.Words, Suggest: f.Suggest, Action: episodePath(d.episode.ID) + "/findings",
		Ways: asWords(episode.Settlements), How: string(how),
	}
	if f.Cue >= 0 {
		row.At, row.CueID = cueTime(f.At), cueID(f.Cue)
		row.AtValue = fmt.Sprint(int(f.At / time.Second))
	}
	if how != "" {
		row.Mark.Kind = views.MarkPlain
	}
	return row
}

func findingMark(f verify.Finding) views.Mark {
	mark := views.Mark{Kind: views.MarkWrong, Text: string(f.Kind)}
	switch f.Kind {
	case verify.NotSaid, verify.NotWritten:
		mark.Kind = views.MarkLook
	case verify.Pair:
		mark.Text = "the pair disagrees with itself"
	}
	switch f.Slip {
	case verify.UnitSlip:
		mark.Text += ": the wrong unit?"
	case verify.Tenfold:
		mark.Text += ": ten times too much or too little?"
	}
	return mark
}

// markCues marks the tied numbers in the captions they begin in, and names the
// lines that they match.
func markCues(cues []views.CueRow, report verify.Report) {
	byCue := map[int][]verify.Amount{}
	for _, a := range report.Amounts {
		byCue[a.Cue] = append(byCue[a.Cue], a)
	}
	for i, amounts := range byCue {
		if i < 0 || i >= len(cues) {
			continue
		}
		row, text, at := &cues[i], cues[i].Words[0].Text, 0
		row.Words = nil
		var ties []tie
		for _, a := range amounts {
			if a.From < at || a.To > len(text) || a.To <= a.From {
				continue
			}
			said := text[a.From:a.To]
			row.Words = append(row.Words, views.Run{Text: text[at:a.From]}, views.Run{Text: said, Heat: a.Finding < 0, New: a.Finding >= 0})
			ties = append(ties, tie{said, shortened(a.Line, 80)})
			row.Wrong = row.Wrong || a.Finding >= 0
			at = a.To
		}
		row.Words = append(row.Words, views.Run{Text: text[at:]})
		row.Ties = tieTexts(ties)
	}
}

// tie is a number said and the recipe's line that it matches; "" for none.
type tie struct{ said, line string }

// tieTexts words the ties of a caption: the line alone where there is one only,
// else what was said with it.
func tieTexts(ties []tie) []string {
	var lines []string
	for _, t := range ties {
		lines = appendNew(lines, t.line)
	}
	if len(lines) < 2 {
		return lines
	}
	var texts []string
	for _, t := range ties {
		if t.line != "" {
			texts = appendNew(texts, t.said+" → "+t.line)
		}
	}
	return texts
}

// settleFinding keeps what is decided about a finding; an empty decision opens
// it again. A correction goes to the description and the recipe page.
func (s *Server) settleFinding(w http.ResponseWriter, r *http.Request) error {
	d, form, err := s.deskAndForm(w, r)
	if err != nil {
		return err
	}
	key := form.needed("key", "Say which finding is settled.")
	how := form.text("how")
	if how != "" {
		how = form.oneOf("how", asWords(episode.Settlements))
	}
	if err := form.err(); err != nil {
		return err
	}
	if err := s.decide(r.Context(), d, form, key, episode.Settlement(how)); err != nil {
		return err
	}
	return seeOther(w, r, d.path(views.SheetCut))
}

func (s *Server) decide(ctx context.Context, d *desk, form *typed, key string, how episode.Settlement) error {
	if how == "" {
		return s.store.Reopen(ctx, d.episode.ID, key)
	}
	if how == episode.PutRight {
		correction := episode.Correction{EpisodeID: d.episode.ID, At: form.whole("at"), Said: form.text("said"), Right: form.text("right")}
		if correction.Said == "" || correction.Right == "" {
			return fault.Invalidf("", "There is nothing to put right in words: settle it with an on-screen note, or write the correction on the Release sheet.")
		}
		if _, err := s.store.AddCorrection(ctx, correction); err != nil {
			return err
		}
	}
	return s.store.Settle(ctx, d.episode.ID, key, how)
}
