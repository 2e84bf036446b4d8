package store

import (
	"context"

	"benchproof/kitchen/episode"
)

const selectCorrection = `
SELECT correction_id, episode_id, at_seconds, said, put_right, revision
FROM correction`

func scanCorrection(row scanner) (c episode.Correction, err error) {
	err = row.Scan(&c.ID, &c.EpisodeID, &c.At, &c.Said, &c.Right, &c.Revision)
	return c, err
}

const insertCorrection = `
INSERT INTO correction (episode_id, at_seconds, said, put_right)
SELECT episode_id, ?2, ?3, ?4
FROM episode
WHERE episode_id = ?1
  AND deleted_at IS NULL`

var editedCorrection = edited{
	noun: "correction",
	update: `
UPDATE correction
SET at_seconds = ?3,
    said = ?4,
    put_right = ?5,
    revision = revision + 1
WHERE correction_id = ?1
  AND revision = ?2
  AND deleted_at IS NULL`,
	revision: `
SELECT revision
FROM correction
WHERE correction_id = ?1
  AND deleted_at IS NULL`,
}

var corrections = child{
	plural: "corrections",
	count: `
SELECT count(*)
FROM correction
WHERE episode_id = ?1
  AND deleted_at IS NULL`,
	home: `
SELECT episode_id, 0, deleted_at IS NULL
FROM correction
WHERE correction_id = ?1`,
	undoable: undoable{
		noun: "correction",
		remove: `
UPDATE correction
SET deleted_at = ?2
WHERE correction_id = ?1
  AND deleted_at IS NULL`,
		restore: `
UPDATE correction
SET deleted_at = NULL
WHERE correction_id = ?1
  AND deleted_at IS NOT NULL`,
	},
}

// Corrections lists an episode's corrections by their place in the cut.
func (s *Store) Corrections(ctx context.Context, episodeID int64) ([]episode.Correction, error) {
	all, err := list(ctx, s.reader, scanCorrection, selectCorrection+`
WHERE episode_id = ?1
  AND deleted_at IS NULL
ORDER BY at_seconds, correction_id
LIMIT ?2`, episodeID, mostChildren)
	return all, operation{"list corrections of episode", episodeID}.wrap(err)
}

// Correction gives one correction.
func (s *Store) Correction(ctx context.Context, id int64) (episode.Correction, error) {
	c, err := one(ctx, s.reader, "correction", scanCorrection, selectCorrection+`
WHERE correction_id = ?1
  AND deleted_at IS NULL`, id)
	return c, operation{"read correction", id}.wrap(err)
}

// AddCorrection keeps a correction.
func (s *Store) AddCorrection(ctx context.Context, c episode.Correction) (id int64, err error) {
	err = s.write(ctx, operation{"add correction to episode", c.EpisodeID}, func(t *tx) error {
		id, err = t.addChild(ctx, corrections, c.EpisodeID, 0, insertCorrection, c.At, c.Said, c.Right)
		return err
	})
	return id, err
}

// SaveCorrection keeps what was edited.
func (s *Store) SaveCorrection(ctx context.Context, c episode.Correction) error {
	return s.write(ctx, operation{"save correction", c.ID}, func(t *tx) error {
		return t.save(ctx, editedCorrection, c.ID, c.Revision, c.At, c.Said, c.Right)
	})
}

// DeleteCorrection hides a correction; Restore brings it back.
func (s *Store) DeleteCorrection(ctx context.Context, id int64) error {
	return s.deleteChild(ctx, corrections, id)
}
