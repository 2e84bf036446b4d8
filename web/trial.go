package web

import (
	"context"
	"fmt"
	"net/http"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/measure"
	"benchproof/views"
)

// trials is the part of real makes.
func (s *Server) trials() part[episode.Trial] {
	return part[episode.Trial]{
		word: "trial", many: "trials", sheet: views.SheetTrials,
		fields: trialFields, values: trialValues, read: readTrial,
		get: s.store.Trial, add: s.store.AddTrial, save: s.store.SaveTrial, remove: s.store.DeleteTrial,
		blank: func(episodeID int64) episode.Trial { return episode.Trial{EpisodeID: episodeID} },
		key:   func(t episode.Trial) partKey { return partKey{t.ID, t.EpisodeID, t.Revision} },
		stamp: func(t *episode.Trial, revision int) { t.Revision = revision },
	}
}

func trialFields(d *desk) []views.Field {
	return []views.Field{
		{Name: "version", Kind: views.FieldHidden},
		{Name: "made", Label: "Made on", Kind: views.FieldDate, Required: true},
		{Name: "scale", Label: "Scale", Kind: views.FieldDecimal, Unit: "× the recipe", Required: true},
		{Name: "dough", Label: "Before cooking", Kind: views.FieldDecimal, Unit: "g", Hint: "What the dough or mixture weighed. Leave empty what was not measured."},
		{Name: "baked", Label: "After cooking", Kind: views.FieldDecimal, Unit: "g"},
		{Name: "pieces", Label: "Pieces", Kind: views.FieldDecimal},
		{Name: "minutes", Label: "Time", Kind: views.FieldDecimal, Unit: "minutes in the oven or on the hob"},
		{Name: "setting", Label: "Setting", Placeholder: "190 °C fan"},
		{Name: "verdict", Label: "Verdict", Kind: views.FieldSelect, Options: options(episode.Verdicts), Required: true},
		{Name: "note", Label: "Note", Kind: views.FieldArea, Hint: "What really happened, and what to change."},
	}
}

func trialValues(d *desk, t episode.Trial) values {
	if t.ID == 0 { // a new trial is of the version in use, at the episode's scale
		t.VersionID, t.Scale = d.version.ID, d.episode.Scale
	}
	return values{
		"version": fmt.Sprint(t.VersionID), "made": dateText(t.MadeOn), "scale": numberText(t.Scale),
		"dough": numberText(t.DoughGrams), "baked": numberText(t.BakedGrams), "pieces": numberText(t.Pieces),
		"minutes": numberText(t.Minutes), "setting": t.Setting, "verdict": t.Verdict, "note": t.Note,
	}
}

func readTrial(f *typed, t *episode.Trial) {
	if t.ID == 0 {
		t.VersionID = int64(f.whole("version"))
	}
	if t.VersionID == 0 {
		f.fail("", "There is no recipe to try yet: paste one on the Recipe sheet first.")
	}
	f.needed("made", "Say on which day it was made.")
	t.MadeOn = f.date("made")
	t.Scale = f.positive("scale", "Say at what scale it was made; 1 is the recipe as written.")
	t.DoughGrams, t.BakedGrams = f.number("dough"), f.number("baked")
	t.Pieces, t.Minutes = f.number("pieces"), f.number("minutes")
	t.Setting, t.Note = f.text("setting"), f.text("note")
	t.Verdict = f.oneOf("verdict", episode.Verdicts)
}

func (s *Server) showTrials(w http.ResponseWriter, r *http.Request) error {
	d, err := s.openDesk(r)
	if err != nil {
		return err
	}
	form, err := s.trials().form(d, r)
	if err != nil {
		return err
	}
	return s.drawTrials(w, r, d, http.StatusOK, form)
}

func (s *Server) drawTrials(w http.ResponseWriter, r *http.Request, d *desk, status int, form views.Form) error {
	trials, err := s.store.Trials(r.Context(), d.episode.ID)
	if err != nil {
		return err
	}
	page, err := s.sheetPage(r, d, views.SheetTrials)
	if err != nil {
		return err
	}
	numbers, err := s.versionNumbers(r.Context(), d.version.RecipeID)
	if err != nil {
		return err
	}
	sheet := views.TrialsSheet{Page: page, EpisodeFrame: s.frame(d, views.SheetTrials), Form: form}
	for _, t := range trials {
		sheet.Trials = append(sheet.Trials, s.trialRow(d, t, numbers[t.VersionID]))
	}
	return s.draw(w, r, status, views.Trials(sheet))
}

// versionNumbers gives the number of each version of a recipe, by its id.
func (s *Server) versionNumbers(ctx context.Context, recipeID int64) (map[int64]int, error) {
	versions, err := s.store.Versions(ctx, recipeID)
	numbers := map[int64]int{}
	for _, v := range versions {
		numbers[v.ID] = v.Number
	}
	return numbers, err
}

func (s *Server) trialRow(d *desk, t episode.Trial, version int) views.TrialRow {
	p := s.trials()
	title := "another recipe"
	if version > 0 {
		title = fmt.Sprintf("version %d", version)
	}
	return views.TrialRow{
		Date: s.day(t.MadeOn), Title: title + " at × " + measure.FormatNumber(t.Scale),
		Figures: trialFigures(t), Verdict: verdictMark(t.Verdict), Note: t.Note,
		EditPath: p.changePath(d.episode.ID, t.ID), DeleteAction: p.path(d.episode.ID, t.ID) + "/delete",
	}
}

// trialFigures lists what was measured, with the loss that follows from it.
func trialFigures(t episode.Trial) []views.Figure {
	var figures []views.Figure
	note := func(n measure.Number, unit, label string) {
		if !n.IsZero() {
			figures = append(figures, views.Figure{Value: measure.FormatNumber(n) + unit, Label: label})
		}
	}
	note(t.DoughGrams, "\u00a0g", "before cooking")
	note(t.BakedGrams, "\u00a0g", "after")
	if loss, ok := t.Loss(); ok {
		figures = append(figures, views.Figure{Value: fmt.Sprintf("%.1f\u00a0%%", loss.Float()), Label: "lost in cooking"})
	}
	note(t.Pieces, "", "pieces")
	note(t.Minutes, "\u00a0min", "cooked")
	if t.Setting != "" {
		figures = append(figures, views.Figure{Value: t.Setting, Label: "setting"})
	}
	return figures
}

func verdictMark(verdict string) views.Mark {
	switch verdict {
	case "proved":
		return views.Mark{Kind: views.MarkProved, Text: verdict}
	case "nearly":
		return views.Mark{Kind: views.MarkLook, Text: verdict}
	}
	return views.Mark{Kind: views.MarkWrong, Text: verdict}
}
