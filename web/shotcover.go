package web

import (
	"fmt"
	"strconv"
	"strings"

	"benchproof/kitchen/coverage"
	"benchproof/kitchen/episode"
	"benchproof/kitchen/recipe"
	"benchproof/views"
)

// addCoverage words what no shot shows, and offers shots for it.
func addCoverage(sheet *views.ShotsSheet, d *desk, shots []episode.Shot) {
	r := d.version.Reading
	c := coverage.Of(r, shots)
	sheet.Coverage = gapRows(d, c)
	if c.IsWhole() {
		sheet.Covered = "Every step has a shot, every cue is seen, the ingredients are laid out, and there is a hero of the finished dish."
	}
	drafted := c.Draft(r)
	if !d.hasRecipe() || len(drafted) < 2 {
		return
	}
	draft := views.ShotDraft{
		Action: d.path(views.SheetShots) + "/draft", Have: strconv.Itoa(len(shots)),
		Button: fmt.Sprintf("Add these %d shots", len(drafted)), Text: "Each can be changed or deleted afterwards.",
	}
	if len(shots) == 0 {
		draft.Button = "Draft a shot list"
		draft.Text = count(len(drafted), "shot", "shots") + " from the recipe: the ingredients laid out, a close-up of every cue, the other steps, and the hero. Setups are called after the kind of shot until you rename them; each shot can be changed or deleted."
	}
	sheet.Draft = &draft
}

func gapRows(d *desk, c coverage.Coverage) []views.GapRow {
	r := d.version.Reading
	var rows []views.GapRow
	if len(c.NoShot) > 0 {
		rows = append(rows, views.GapRow{
			Measure: fmt.Sprintf("%d of %d", len(c.NoShot), c.Steps), Small: "steps", Text: "without a shot:",
			Links: stepLinks(d, c.NoShot, func(at recipe.Position) string { return stepName(r.Components[at.Component].Name, at.Step+1) }),
		})
	}
	if len(c.NoCue) > 0 {
		rows = append(rows, views.GapRow{
			Measure: fmt.Sprintf("%d of %d", len(c.NoCue), c.Cues), Small: "cues", Text: "that nobody films:",
			Links: stepLinks(d, c.NoCue, func(at recipe.Position) string {
				component := r.Components[at.Component]
				return fmt.Sprintf("“%s” (%s)", shortened(component.Steps[at.Step].Cue, 60), readOnStep(component.Name, at.Step+1))
			}),
			Note: "A cue counts as filmed when an overhead, a close-up, an insert or a hero is of its step: near enough to show it.",
		})
	}
	if row, ok := layoutGap(d, c); ok {
		rows = append(rows, row)
	}
	if c.NoHero {
		rows = append(rows, views.GapRow{Measure: "hero", Text: "Nothing shows the finished dish:", Links: []views.OpenLink{{Text: "add a hero", Path: addShotPath(d, coverage.HeroShot())}}})
	}
	return rows
}

// readOnStep names a step within a sentence: "Dough, step 3", "step 3".
func readOnStep(component string, step int) string {
	if component == "" {
		return readOn(stepName(component, step))
	}
	return stepName(component, step)
}

func stepLinks(d *desk, steps []recipe.Position, name func(recipe.Position) string) []views.OpenLink {
	var links []views.OpenLink
	for _, at := range steps {
		links = append(links, views.OpenLink{Text: name(at), Path: addShotPath(d, coverage.StepShot(d.version.Reading, at))})
	}
	return links
}

// layoutGap names the parts whose ingredients are not laid out; all of them in
// one where none is, or where a part has no name to be asked by.
func layoutGap(d *desk, c coverage.Coverage) (row views.GapRow, ok bool) {
	r := d.version.Reading
	drafted := coverage.Coverage{NoLayout: c.NoLayout}.Draft(r)
	if len(drafted) == 0 {
		return row, false
	}
	row = views.GapRow{Measure: "layout", Text: "Nothing shows the ingredients laid out:"}
	for _, shot := range drafted {
		text := "add a layout"
		if shot.Component != "" {
			text, row.Text = shot.Component, "The ingredients are not laid out of:"
		}
		row.Links = append(row.Links, views.OpenLink{Text: text, Path: addShotPath(d, shot)})
	}
	return row, true
}

// changes words how often the camera moves, if it does.
func (l *shotList) changes(d *desk) views.SetupChanges {
	c := coverage.Count(d.version.Reading, l.shots, l.filmed())
	if len(c.Runs) < 2 {
		return views.SetupChanges{}
	}
	words := views.SetupChanges{Note: "A setup that comes after another is a change. Shots of the episode, or of a whole part, are taken as free to film at any time."}
	if c.Unnamed > 0 {
		words.Note += " Not counted: " + count(c.Unnamed, "shot that names", "shots that name") + " no setup."
	}
	now := views.DayFact{Measure: strconv.Itoa(c.Now), Text: "in the order of the list, as far as cooking allows it"}
	if l.isPlanned() {
		now.Text = "in the order of the day’s plan"
	}
	proof := views.Mark{Kind: views.MarkProved, Text: "cooking allows no fewer"}
	if c.AtLeast < c.Fewest {
		proof = views.Mark{Kind: views.MarkLook, Text: fmt.Sprintf("cooking allows no fewer than %d", c.AtLeast)}
	}
	if c.Now <= c.Fewest {
		now.Mark = proof
		words.Facts = []views.DayFact{now}
		return words
	}
	words.Facts = []views.DayFact{now, {Measure: strconv.Itoa(c.Fewest), Text: "in the order below", Mark: proof}}
	words.Title = fmt.Sprintf("An order with %s", count(c.Fewest, "change", "changes"))
	for i, run := range c.Runs {
		words.Runs = append(words.Runs, views.RunRow{Number: strconv.Itoa(i + 1), Setup: run.Setup, Shots: l.titles(run.Shots)})
	}
	return words
}

// filmed is what the plan says of the make that is filmed; nil without a plan.
func (l *shotList) filmed() *coverage.Plan {
	if !l.isPlanned() {
		return nil
	}
	return &coverage.Plan{Begins: l.begins, Ahead: l.ahead}
}

func (l *shotList) titles(indexes []int) string {
	var titles []string
	for _, i := range indexes {
		titles = append(titles, l.shots[i].Title)
	}
	return strings.Join(titles, " · ")
}
