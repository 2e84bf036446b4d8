package store

import (
	"context"

	"benchproof/kitchen/episode"
)

const selectMoment = `
SELECT moment_id, episode_id, name, at, until, takes, holds, component, step, revision
FROM moment`

func scanMoment(row scanner) (m episode.Moment, err error) {
	err = row.Scan(&m.ID, &m.EpisodeID, &m.Name, &m.At, &m.Until, &m.Takes, &m.Holds, &m.Component, &m.Step, &m.Revision)
	return m, err
}

const insertMoment = `
INSERT INTO moment (episode_id, name, at, until, takes, holds, component, step)
SELECT episode_id, ?2, ?3, ?4, ?5, ?6, ?7, ?8
FROM episode
WHERE episode_id = ?1
  AND deleted_at IS NULL`

var editedMoment = edited{
	noun: "moment",
	update: `
UPDATE moment
SET name = ?3,
    at = ?4,
    until = ?5,
    takes = ?6,
    holds = ?7,
    component = ?8,
    step = ?9,
    revision = revision + 1
WHERE moment_id = ?1
  AND revision = ?2
  AND deleted_at IS NULL`,
	revision: `
SELECT revision
FROM moment
WHERE moment_id = ?1
  AND deleted_at IS NULL`,
}

// momentFields are what both inserting and saving a moment write, in order.
func momentFields(m episode.Moment) []any {
	return []any{m.Name, m.At, m.Until, m.Takes, m.Holds, m.Component, m.Step}
}

var moments = child{
	plural: "moments",
	count: `
SELECT count(*)
FROM moment
WHERE episode_id = ?1
  AND deleted_at IS NULL`,
	home: `
SELECT episode_id, 0, deleted_at IS NULL
FROM moment
WHERE moment_id = ?1`,
	undoable: undoable{
		noun: "moment",
		remove: `
UPDATE moment
SET deleted_at = ?2
WHERE moment_id = ?1
  AND deleted_at IS NULL`,
		restore: `
UPDATE moment
SET deleted_at = NULL
WHERE moment_id = ?1
  AND deleted_at IS NOT NULL`,
	},
}

// Moments lists what is at a moment of an episode's shoot day, in order of
// time.
func (s *Store) Moments(ctx context.Context, episodeID int64) ([]episode.Moment, error) {
	all, err := list(ctx, s.reader, scanMoment, selectMoment+`
WHERE episode_id = ?1
  AND deleted_at IS NULL
ORDER BY at, moment_id
LIMIT ?2`, episodeID, mostChildren)
	return all, operation{"list moments of episode", episodeID}.wrap(err)
}

// Moment gives one moment.
func (s *Store) Moment(ctx context.Context, id int64) (episode.Moment, error) {
	m, err := one(ctx, s.reader, "moment", scanMoment, selectMoment+`
WHERE moment_id = ?1
  AND deleted_at IS NULL`, id)
	return m, operation{"read moment", id}.wrap(err)
}

// AddMoment adds a moment to its episode's shoot day.
func (s *Store) AddMoment(ctx context.Context, m episode.Moment) (id int64, err error) {
	err = s.write(ctx, operation{"add moment to episode", m.EpisodeID}, func(t *tx) error {
		id, err = t.addChild(ctx, moments, m.EpisodeID, 0, insertMoment, momentFields(m)...)
		return err
	})
	return id, err
}

// SaveMoment keeps what was edited; a moment stays with its episode.
func (s *Store) SaveMoment(ctx context.Context, m episode.Moment) error {
	return s.write(ctx, operation{"save moment", m.ID}, func(t *tx) error {
		return t.save(ctx, editedMoment, m.ID, m.Revision, momentFields(m)...)
	})
}

// DeleteMoment hides a moment; Restore brings it back.
func (s *Store) DeleteMoment(ctx context.Context, id int64) error {
	return s.deleteChild(ctx, moments, id)
}
