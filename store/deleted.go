package store

import (
	"context"
	"time"

	"benchproof/kitchen/fault"
)

// Kind is a kind of thing that can be deleted and restored.
type Kind string

// The kinds.
const (
	PitchKind      Kind = "pitch"
	RecipeKind     Kind = "recipe"
	EpisodeKind    Kind = "episode"
	BatchKind      Kind = "batch"
	TrialKind      Kind = "trial"
	SegmentKind    Kind = "segment"
	ShotKind       Kind = "shot"
	CutKind        Kind = "cut"
	CorrectionKind Kind = "correction"
	MomentKind     Kind = "moment"
	PackKind       Kind = "pack"
	StockKind      Kind = "stock"
)

// Deleted is something that was deleted and can be restored.
type Deleted struct {
	Kind      Kind
	ID        int64
	EpisodeID int64     // the episode it hangs on; 0 for a thing of its own
	Label     string    // its title or first words
	At        time.Time // when it was deleted
}

const selectDeleted = `
SELECT kind, id, episode_id, label, deleted_at
FROM (
    SELECT 'pitch' AS kind, pitch_id AS id, 0 AS episode_id, dish AS label, deleted_at
    FROM pitch
    WHERE deleted_at IS NOT NULL
    UNION ALL
    SELECT 'recipe', recipe_id, 0, name, deleted_at
    FROM recipe
    WHERE deleted_at IS NOT NULL
    UNION ALL
    SELECT 'episode', episode_id, 0, title, deleted_at
    FROM episode
    WHERE deleted_at IS NOT NULL
    UNION ALL
    SELECT 'batch', b.batch_id, b.episode_id, b.kind, b.deleted_at
    FROM batch AS b
    JOIN episode AS e ON e.episode_id = b.episode_id
    WHERE b.deleted_at IS NOT NULL
      AND e.deleted_at IS NULL
    UNION ALL
    SELECT 'trial', t.trial_id, t.episode_id, t.verdict, t.deleted_at
    FROM trial AS t
    JOIN episode AS e ON e.episode_id = t.episode_id
    WHERE t.deleted_at IS NOT NULL
      AND e.deleted_at IS NULL
    UNION ALL
    SELECT 'segment', s.segment_id, s.episode_id, s.title, s.deleted_at
    FROM segment AS s
    JOIN episode AS e ON e.episode_id = s.episode_id
    WHERE s.deleted_at IS NOT NULL
      AND e.deleted_at IS NULL
    UNION ALL
    SELECT 'shot', s.shot_id, s.episode_id, s.title, s.deleted_at
    FROM shot AS s
    JOIN episode AS e ON e.episode_id = s.episode_id
    WHERE s.deleted_at IS NOT NULL
      AND e.deleted_at IS NULL
    UNION ALL
    SELECT 'cut', c.cut_id, c.episode_id, c.name, c.deleted_at
    FROM cut AS c
    JOIN episode AS e ON e.episode_id = c.episode_id
    WHERE c.deleted_at IS NOT NULL
      AND e.deleted_at IS NULL
    UNION ALL
    SELECT 'correction', c.correction_id, c.episode_id, substr(c.said, 1, 80), c.deleted_at
    FROM correction AS c
    JOIN episode AS e ON e.episode_id = c.episode_id
    WHERE c.deleted_at IS NOT NULL
      AND e.deleted_at IS NULL
    UNION ALL
    SELECT 'moment', m.moment_id, m.episode_id, m.name, m.deleted_at
    FROM moment AS m
    JOIN episode AS e ON e.episode_id = m.episode_id
    WHERE m.deleted_at IS NOT NULL
      AND e.deleted_at IS NULL
    UNION ALL
    SELECT 'pack', pack_id, 0, rtrim(amount || ' ' || unit) || ' ' || replace(food_id, '-', ' '), deleted_at
    FROM pack
    WHERE deleted_at IS NOT NULL
    UNION ALL
    SELECT 'stock', stock_id, 0, rtrim(amount || ' ' || unit) || ' ' || replace(food_id, '-', ' '), deleted_at
    FROM stock
    WHERE deleted_at IS NOT NULL
)
ORDER BY deleted_at DESC, kind, id DESC
LIMIT 100`

func scanDeleted(row scanner) (d Deleted, err error) {
	err = row.Scan(&d.Kind, &d.ID, &d.EpisodeID, &d.Label, instant{&d.At})
	return d, err
}

// Deleted lists what was deleted and not purged, the latest first, at most
// 100. What went with its episode is not listed: it comes back with it.
func (s *Store) Deleted(ctx context.Context) ([]Deleted, error) {
	all, err := list(ctx, s.reader, scanDeleted, selectDeleted)
	return all, operation{verb: "list deleted"}.wrap(err)
}

// undoable says how one kind of thing is deleted and brought back.
type undoable struct {
	noun    string
	remove  string // hides ?1 a live row, at ?2 an instant
	restore string // shows ?1 a row that was deleted by itself
}

// hide deletes a live row; fault.NotFound if there is none.
func (t *tx) hide(ctx context.Context, u undoable, id int64) error {
	rows, err := t.change(ctx, u.remove, id, t.now)
	if err == nil && rows == 0 {
		err = missing(u.noun)
	}
	return err
}

// bringBack restores a deleted row; fault.NotFound if there is none.
func (t *tx) bringBack(ctx context.Context, u undoable, id int64) error {
	rows, err := t.change(ctx, u.restore, id)
	if err == nil && rows == 0 {
		err = fault.NotFoundf("There is no deleted %s to restore here. It may be back already, or gone for good.", u.noun)
	}
	return err
}

// Restore brings a deleted thing back to where it stood. A thing that is not
// deleted, or purged, is fault.NotFound; one whose episode is deleted is
// fault.Conflict.
func (s *Store) Restore(ctx context.Context, kind Kind, id int64) error {
	return s.write(ctx, operation{"restore " + string(kind), id}, func(t *tx) error {
		switch kind {
		case PitchKind:
			return t.bringBack(ctx, undoPitch, id)
		case RecipeKind:
			return t.bringBack(ctx, undoRecipe, id)
		case EpisodeKind:
			return t.restoreEpisode(ctx, id)
		case BatchKind:
			return t.restoreChild(ctx, batches, id)
		case TrialKind:
			return t.restoreChild(ctx, trials, id)
		case SegmentKind:
			return t.restoreChild(ctx, segments, id)
		case ShotKind:
			return t.restoreChild(ctx, shots, id)
		case CutKind:
			return t.restoreChild(ctx, cuts, id)
		case CorrectionKind:
			return t.restoreChild(ctx, corrections, id)
		case MomentKind:
			return t.restoreChild(ctx, moments, id)
		case PackKind:
			return t.bringBack(ctx, undoPack, id)
		case StockKind:
			return t.bringBack(ctx, undoStock, id)
		}
		return missing("kind of thing")
	})
}

// purges remove for good what was deleted before ?1. Episodes go before
// recipes, so that what they used can go as well; a recipe that anything still
// uses stays hidden.
var purges = []string{`
DELETE FROM episode
WHERE deleted_at < ?1`, `
DELETE FROM batch
WHERE deleted_at < ?1`, `
DELETE FROM trial
WHERE deleted_at < ?1`, `
DELETE FROM segment
WHERE deleted_at < ?1`, `
DELETE FROM shot
WHERE deleted_at < ?1`, `
DELETE FROM cut
WHERE deleted_at < ?1`, `
DELETE FROM correction
WHERE deleted_at < ?1`, `
DELETE FROM moment
WHERE deleted_at < ?1`, `
DELETE FROM pack
WHERE deleted_at < ?1`, `
DELETE FROM stock
WHERE deleted_at < ?1`, `
DELETE FROM pitch
WHERE deleted_at < ?1`, `
DELETE FROM recipe
WHERE deleted_at < ?1
  AND NOT EXISTS (SELECT 1 FROM version AS v JOIN episode AS e ON e.version_id = v.version_id WHERE v.recipe_id = recipe.recipe_id)
  AND NOT EXISTS (SELECT 1 FROM version AS v JOIN trial AS t ON t.version_id = v.version_id WHERE v.recipe_id = recipe.recipe_id)`,
}

// PurgeDeleted removes for good what was deleted before an instant.
func (s *Store) PurgeDeleted(ctx context.Context, before time.Time) error {
	return s.write(ctx, operation{verb: "purge deleted"}, func(t *tx) error {
		for _, text := range purges {
			if _, err := t.change(ctx, text, instantText(before)); err != nil {
				return err
			}
		}
		return nil
	})
}
