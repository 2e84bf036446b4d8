package store

import (
	"context"

	"benchproof/kitchen/episode"
)

const selectBatch = `
SELECT batch_id, episode_id, kind, makes, note, revision
FROM batch`

func scanBatch(row scanner) (b episode.Batch, err error) {
	err = row.Scan(&b.ID, &b.EpisodeID, &b.Kind, exact{&b.Makes}, &b.Note, &b.Revision)
	return b, err
}

const insertBatch = `
INSERT INTO batch (episode_id, kind, makes, note)
SELECT episode_id, ?2, ?3, ?4
FROM episode
WHERE episode_id = ?1
  AND deleted_at IS NULL`

var editedBatch = edited{
	noun: "batch",
	update: `
UPDATE batch
SET kind = ?3,
    makes = ?4,
    note = ?5,
    revision = revision + 1
WHERE batch_id = ?1
  AND revision = ?2
  AND deleted_at IS NULL`,
	revision: `
SELECT revision
FROM batch
WHERE batch_id = ?1
  AND deleted_at IS NULL`,
}

var batches = child{
	plural: "batches",
	count: `
SELECT count(*)
FROM batch
WHERE episode_id = ?1
  AND deleted_at IS NULL`,
	home: `
SELECT episode_id, 0, deleted_at IS NULL
FROM batch
WHERE batch_id = ?1`,
	undoable: undoable{
		noun: "batch",
		remove: `
UPDATE batch
SET deleted_at = ?2
WHERE batch_id = ?1
  AND deleted_at IS NULL`,
		restore: `
UPDATE batch
SET deleted_at = NULL
WHERE batch_id = ?1
  AND deleted_at IS NOT NULL`,
	},
}

// Batches lists an episode's batches in the order they were planned.
func (s *Store) Batches(ctx context.Context, episodeID int64) ([]episode.Batch, error) {
	all, err := list(ctx, s.reader, scanBatch, selectBatch+`
WHERE episode_id = ?1
  AND deleted_at IS NULL
ORDER BY batch_id
LIMIT ?2`, episodeID, mostChildren)
	return all, operation{"list batches of episode", episodeID}.wrap(err)
}

// Batch gives one batch.
func (s *Store) Batch(ctx context.Context, id int64) (episode.Batch, error) {
	b, err := one(ctx, s.reader, "batch", scanBatch, selectBatch+`
WHERE batch_id = ?1
  AND deleted_at IS NULL`, id)
	return b, operation{"read batch", id}.wrap(err)
}

// AddBatch plans a batch for its episode; Makes must be above 0.
func (s *Store) AddBatch(ctx context.Context, b episode.Batch) (id int64, err error) {
	err = s.write(ctx, operation{"add batch to episode", b.EpisodeID}, func(t *tx) error {
		id, err = t.addBatch(ctx, b)
		return err
	})
	return id, err
}

func (t *tx) addBatch(ctx context.Context, b episode.Batch) (int64, error) {
	return t.addChild(ctx, batches, b.EpisodeID, 0, insertBatch, b.Kind, b.Makes.String(), b.Note)
}

// SaveBatch keeps what was edited; a batch stays with its episode.
func (s *Store) SaveBatch(ctx context.Context, b episode.Batch) error {
	return s.write(ctx, operation{"save batch", b.ID}, func(t *tx) error {
		return t.save(ctx, editedBatch, b.ID, b.Revision, b.Kind, b.Makes.String(), b.Note)
	})
}

// DeleteBatch hides a batch; Restore brings it back.
func (s *Store) DeleteBatch(ctx context.Context, id int64) error {
	return s.deleteChild(ctx, batches, id)
}
