package web

import (
	"fmt"
	"strings"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/views"
)

// newBody words a scaled recipe for its sheet, its page, the viewers' page and
// the card.
func newBody(scaled recipe.Scaled) views.RecipeBody {
	r := scaled.Recipe
	body := views.RecipeBody{
		Name: r.Title, Makes: scaled.Yield, Intro: r.Intro,
		ScaleNotes: scaled.Notes, Notes: r.Notes, Credits: r.Credits, Unread: unreadRows(r.Unread),
	}
	for _, c := range scaled.Recipe.Components {
		body.Components = append(body.Components, views.ComponentBlock{Name: c.Name, Steps: stepRows(c.Steps)})
	}
	var assumed []string
	for _, line := range scaled.Lines {
		block := &body.Components[line.Component]
		block.Lines = append(block.Lines, lineRow(scaled.Recipe.Components[line.Component].Lines[line.Line], line.Written))
		assumed = appendNew(assumed, line.Assumed)
	}
	body.Assumed = strings.Join(assumed, " · ")
	return body
}

// lineRow words one ingredient line.
func lineRow(l recipe.Line, w recipe.Written) views.LineRow {
	if !l.Read {
		return views.LineRow{Food: l.Text, Question: l.Reason, NotRead: true}
	}
	row := views.LineRow{Measure: w.Measure, Question: joined(" ", l.Reason, w.Question)}
	row.Food, row.After, _ = cutAfter(w.Words)
	small := []string{w.Other}
	if w.ErrorPercent > shownError || w.ErrorPercent < -shownError {
		small = append(small, fmt.Sprintf("%+.0f\u00a0%% off exact", w.ErrorPercent))
	}
	row.Small = joined(" · ", small...)
	return row
}

// shownError is how far, in per cent, a practical measure may be from the
// exact one before the page says so.
const shownError = 5

// cutAfter parts "strong white flour, sifted" at its first comma, which stays
// with what follows.
func cutAfter(words string) (before, after string, found bool) {
	i := strings.IndexAny(words, ",(")
	if i < 0 {
		return words, "", false
	}
	if words[i] == '(' {
		return strings.TrimRight(words[:i], " "), " " + words[i:], true
	}
	return words[:i], words[i:], true
}

func stepRows(steps []recipe.Step) []views.StepRow {
	var rows []views.StepRow
	for _, step := range steps {
		rows = append(rows, stepRow(step))
	}
	return rows
}

// stepRow words one step; a pair of oven settings that disagrees is marked.
func stepRow(step recipe.Step) views.StepRow {
	row := views.StepRow{Minutes: minutesText(step), Station: stationText(step), Words: heatRuns(step)}
	for _, question := range measure.CheckOvens(step.Temperatures) {
		row.Wrong = joined(" ", row.Wrong, question.Text)
	}
	return row
}

func minutesText(step recipe.Step) string {
	if !step.HasMinutes {
		return ""
	}
	return measure.FormatMinutes(step.Minutes)
}

func stationText(step recipe.Step) string {
	switch {
	case step.HandsOn || step.Station == "waits":
		return step.Station
	case step.Station == "":
		return "unattended"
	}
	return step.Station + ", unattended"
}

// heatRuns parts a step's words so that its temperatures can be drawn bold.
func heatRuns(step recipe.Step) []views.Run {
	var runs []views.Run
	rest := step.Text
	for _, heat := range step.Temperatures {
		before, after, found := strings.Cut(rest, heat.Text)
		if !found || heat.Text == "" {
			continue
		}
		if before != "" {
			runs = append(runs, views.Run{Text: before})
		}
		runs = append(runs, views.Run{Text: heat.Text, Heat: true})
		rest = after
	}
	if rest != "" {
		runs = append(runs, views.Run{Text: rest})
	}
	return runs
}

func unreadRows(unread []recipe.Unread) []views.UnreadRow {
	var rows []views.UnreadRow
	for _, u := range unread {
		rows = append(rows, views.UnreadRow{Number: fmt.Sprintf("line %d", u.Number), Text: u.Text, Reason: u.Reason})
	}
	return rows
}

// appendNew appends text if it is neither empty nor there already.
func appendNew(list []string, text string) []string {
	for _, t := range list {
		if t == text {
			return list
		}
	}
	if text == "" {
		return list
	}
	return append(list, text)
}
