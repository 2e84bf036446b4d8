package store

import (
	"context"

	"benchproof/kitchen/recipe"
)

// keepParts lays a reading's components, lines, steps and unread lines into
// rows under a version that has none yet.
func (t *tx) keepParts(ctx context.Context, versionID int64, reading recipe.Recipe) error {
	for i, component := range reading.Components {
		if err := t.keepComponent(ctx, versionID, i+1, component); err != nil {
			return err
		}
	}
	for i, unread := range reading.Unread {
		_, err := t.change(ctx, insertUnread, versionID, i+1, unread.Number, unread.Text, unread.Reason)
		if err != nil {
			return err
		}
	}
	return nil
}

func (t *tx) keepComponent(ctx context.Context, versionID int64, position int, c recipe.Component) error {
	if _, err := t.change(ctx, insertComponent, versionID, position, c.Name, c.Number); err != nil {
		return err
	}
	for i, line := range c.Lines {
		if _, err := t.change(ctx, insertLine, append([]any{versionID, position, i + 1}, lineFields(line)...)...); err != nil {
			return err
		}
	}
	for i, step := range c.Steps {
		if _, err := t.change(ctx, insertStep, append([]any{versionID, position, i + 1}, stepFields(step)...)...); err != nil {
			return err
		}
	}
	return nil
}

// dropParts takes a version's parts away, for others to take their place.
func (t *tx) dropParts(ctx context.Context, versionID int64) error {
	if _, err := t.change(ctx, `
DELETE FROM component
WHERE version_id = ?1`, versionID); err != nil {
		return err
	}
	_, err := t.change(ctx, `
DELETE FROM unread_line
WHERE version_id = ?1`, versionID)
	return err
}

// readParts fills in a version's components, lines, steps and unread lines.
func (t *tx) readParts(ctx context.Context, versionID int64, reading *recipe.Recipe) (err error) {
	if reading.Components, err = list(ctx, t, scanComponent, selectComponents, versionID); err != nil {
		return err
	}
	lines, err := list(ctx, t, scanLine, selectLines, versionID)
	if err != nil {
		return err
	}
	for _, l := range lines {
		c := &reading.Components[l.component-1]
		c.Lines = append(c.Lines, l.Line)
	}
	steps, err := list(ctx, t, scanStep, selectSteps, versionID)
	if err != nil {
		return err
	}
	for _, p := range steps {
		c := &reading.Components[p.component-1]
		c.Steps = append(c.Steps, p.Step)
	}
	reading.Unread, err = list(ctx, t, scanUnread, selectUnread, versionID)
	return err
}

// The positions are dense from 1, as keepParts writes them and nothing else
// does; so a component's position is its place in the slice.
const (
	insertComponent = `
INSERT INTO component (version_id, position, name, number)
VALUES (?1, ?2, ?3, ?4)`

	selectComponents = `
SELECT name, number
FROM component
WHERE version_id = ?1
ORDER BY position`
)

func scanComponent(row scanner) (c recipe.Component, err error) {
	err = row.Scan(&c.Name, &c.Number)
	return c, err
}

const (
	insertUnread = `
INSERT INTO unread_line (version_id, position, number, text, reason)
VALUES (?1, ?2, ?3, ?4, ?5)`

	selectUnread = `
SELECT number, text, reason
FROM unread_line
WHERE version_id = ?1
ORDER BY position`
)

func scanUnread(row scanner) (u recipe.Unread, err error) {
	err = row.Scan(&u.Number, &u.Text, &u.Reason)
	return u, err
}
