package store

import (
	"context"

	"benchproof/kitchen/episode"
)

const selectBatch = `
SELECT batch_id, episode_id, kind, makes, component, step, overnight, note, revision
FROM batch`

func scanBatch(row scanner) (b episode.Batch, err error) {
	err = row.Scan(&b.ID, &b.EpisodeID, &b.Kind, exact{&b.Makes}, &b.Component, &b.Step, &b.Overnight, &b.Note, &b.Revision)
	return b, err
}

const insertBatch = `
INSERT INTO batch (episode_id, kind, makes, component, step, overnight, note)
SELECT episode_id, ?2, ?3, ?4, ?5, ?6, ?7
FROM episode
WHERE episode_id = ?1
  AND deleted_at IS NULL`

var editedBatch = edited{
	noun: "batch",
	update: `
UPDATE batch
SET kind = ?3,
    makes = ?4,
    component = ?5,
    step = ?6,
    overnight = ?7,
    note = ?8,
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

// batchFields are what both inserting and saving a batch write, in order.
func batchFields(b episode.Batch) []any {
	return []any{b.Kind, b.Makes.String(), b.Component, b.Step, b.Overnight, b.Note}
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
	return t.addChild(ctx, batches, b.EpisodeID, 0, insertBatch, batchFields(b)...)
}

// SaveBatch keeps what was edited; a batch stays with its episode.
func (s *Store) SaveBatch(ctx context.Context, b episode.Batch) error {
	return s.write(ctx, operation{"save batch", b.ID}, func(t *tx) error {
		return t.save(ctx, editedBatch, b.ID, b.Revision, batchFields(b)...)
	})
}

// DeleteBatch hides a batch; Restore brings it back.
func (s *Store) DeleteBatch(ctx context.Context, id int64) error {
	return s.deleteChild(ctx, batches, id)
}

// PickSwapOuts replaces the swap-outs that are made up to a step by those
// given; whole ones stay. What was there can be restored.
func (s *Store) PickSwapOuts(ctx context.Context, episodeID int64, picked []episode.Batch) error {
	return s.write(ctx, operation{"pick swap-outs of episode", episodeID}, func(t *tx) error {
		if err := t.live(ctx, "episode", liveEpisode, episodeID); err != nil {
			return err
		}
		if _, err := t.change(ctx, `
UPDATE batch
SET deleted_at = ?2
WHERE episode_id = ?1
  AND step > 0
  AND deleted_at IS NULL`, episodeID, t.now); err != nil {
			return err
		}
		for _, b := range picked {
			b.EpisodeID = episodeID
			if _, err := t.addBatch(ctx, b); err != nil {
				return err
			}
		}
		return nil
	})
}
