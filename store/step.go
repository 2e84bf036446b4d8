package store

import (
	"errors"

	"benchproof/kitchen/recipe"
)

const insertStep = `
INSERT INTO step (version_id, component, position,
                  number, text, minutes_from, minutes_to, has_minutes, is_hands_on, station, temperatures, cue,
                  reason, uses, finishes)
VALUES (?1, ?2, ?3,
        ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12,
        ?13, ?14, ?15)`

const selectSteps = `
SELECT component,
       number, text, minutes_from, minutes_to, has_minutes, is_hands_on, station, temperatures, cue,
       reason, uses, finishes
FROM step
WHERE version_id = ?1
ORDER BY component, position`

func stepFields(p recipe.Step) []any {
	return []any{
		p.Number, p.Text, p.Minutes.From.String(), p.Minutes.To.String(), p.HasMinutes, p.HandsOn, p.Station, heatsText(p.Temperatures), p.Cue,
		p.Reason, usesText(p.Uses), p.Finishes}
}

// placedStep is a step with its component's position.
type placedStep struct {
	recipe.Step
	component int
}

func scanStep(row scanner) (p placedStep, err error) {
	var temperatures, used string
	err = row.Scan(&p.component,
		&p.Number, &p.Text, exact{&p.Minutes.From}, exact{&p.Minutes.To}, &p.HasMinutes, &p.HandsOn, &p.Station, &temperatures, &p.Cue,
		&p.Reason, &used, &p.Finishes)
	if err != nil {
		return p, err
	}
	var errHeats, errUses error
	p.Temperatures, errHeats = heats(temperatures)
	p.Uses, errUses = uses(used)
	return p, errors.Join(errHeats, errUses)
}
