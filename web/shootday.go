package web

import (
	"net/http"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/views"
)

func (s *Server) showShootDay(w http.ResponseWriter, r *http.Request) error {
	d, err := s.openDesk(r)
	if err != nil {
		return err
	}
	batches, err := s.store.Batches(r.Context(), d.episode.ID)
	if err != nil {
		return err
	}
	page, err := s.sheetPage(r, d, views.SheetShootDay)
	if err != nil {
		return err
	}
	sheet := newShootDay(d.version.Reading, batches)
	sheet.Page, sheet.EpisodeFrame = page, s.frame(d, views.SheetShootDay)
	return s.draw(w, r, http.StatusOK, views.ShootDay(sheet))
}

// newShootDay lists each batch's steps with what they ask of the hands.
func newShootDay(r recipe.Recipe, batches []episode.Batch) views.ShootDaySheet {
	var sheet views.ShootDaySheet
	var day workload
	for _, b := range batches {
		if b.Kind == episode.TrialBatch {
			continue // tried on another day
		}
		title := string(b.Kind) + ", " + measure.FormatNumber(b.Makes) + " ×"
		batch := views.DayBatch{Title: title, Steps: daySteps(r)}
		load := workOf(r)
		batch.HandsOn, batch.Unattended = load.handsOnText(), load.unattendedText()
		day = day.plus(load)
		sheet.Batches = append(sheet.Batches, batch)
	}
	switch {
	case len(sheet.Batches) == 0:
		sheet.Empty = "No batch is planned for the shoot. Plan one on the Shop sheet."
		return sheet
	case day.unsaid == 1:
		sheet.Unsaid = "1 step does not say how long it takes"
	case day.unsaid > 1:
		sheet.Unsaid = count(day.unsaid, "step", "steps") + " do not say how long they take"
	}
	sheet.HandsOn, sheet.Unattended = day.handsOnText(), day.unattendedText()
	return sheet
}

func daySteps(r recipe.Recipe) []views.DayStep {
	var rows []views.DayStep
	for _, c := range r.Components {
		for i, step := range c.Steps {
			row := views.DayStep{StepRow: stepRow(step), HandsOn: step.HandsOn}
			if i == 0 {
				row.Component = c.Name
			}
			rows = append(rows, row)
		}
	}
	return rows
}

// workload adds up what steps ask: minutes with hands, minutes without, and
// how many steps say nothing.
type workload struct {
	handsOn, unattended measure.Range
	unsaid              int
}

func workOf(r recipe.Recipe) workload {
	var w workload
	for _, c := range r.Components {
		for _, step := range c.Steps {
			switch {
			case !step.HasMinutes:
				w.unsaid++
			case step.HandsOn:
				w.handsOn = w.handsOn.Add(step.Minutes)
			default:
				w.unattended = w.unattended.Add(step.Minutes)
			}
		}
	}
	return w
}

func (w workload) plus(v workload) workload {
	return workload{w.handsOn.Add(v.handsOn), w.unattended.Add(v.unattended), w.unsaid + v.unsaid}
}

func (w workload) handsOnText() string    { return timeText(w.handsOn) }
func (w workload) unattendedText() string { return timeText(w.unattended) }

func timeText(minutes measure.Range) string {
	if minutes.IsZero() {
		return "none said"
	}
	return measure.FormatMinutes(minutes)
}
