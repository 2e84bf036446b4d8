package store

import (
	"context"

	"benchproof/kitchen/episode"
)

const selectCut = `
SELECT cut_id, episode_id, name, seconds, captions, revision
FROM cut`

func scanCut(row scanner) (c episode.Cut, err error) {
	err = row.Scan(&c.ID, &c.EpisodeID, &c.Name, &c.Seconds, &c.Captions, &c.Revision)
	return c, err
}

// insertCut counts deleted cuts for the turn too, so that none is given twice.
const insertCut = `
INSERT INTO cut (episode_id, turn, name, seconds, captions)
SELECT episode_id,
       (SELECT COALESCE(max(c.turn), 0) + 1 FROM cut AS c WHERE c.episode_id = ?1),
       ?2, ?3, ?4
FROM episode
WHERE episode_id = ?1
  AND deleted_at IS NULL`

var editedCut = edited{
	noun: "cut",
	update: `
UPDATE cut
SET name = ?3,
    seconds = ?4,
    captions = ?5,
    revision = revision + 1
WHERE cut_id = ?1
  AND revision = ?2
  AND deleted_at IS NULL`,
	revision: `
SELECT revision
FROM cut
WHERE cut_id = ?1
  AND deleted_at IS NULL`,
}

var cuts = child{
	plural: "cuts",
	count: `
SELECT count(*)
FROM cut
WHERE episode_id = ?1
  AND deleted_at IS NULL`,
	home: `
SELECT episode_id, 0, deleted_at IS NULL
FROM cut
WHERE cut_id = ?1`,
	undoable: undoable{
		noun: "cut",
		remove: `
UPDATE cut
SET deleted_at = ?2
WHERE cut_id = ?1
  AND deleted_at IS NULL`,
		restore: `
UPDATE cut
SET deleted_at = NULL
WHERE cut_id = ?1
  AND deleted_at IS NOT NULL`,
	},
}

// Cuts lists an episode's cuts with their captions, the current one first,
// then the others by when they were last current.
func (s *Store) Cuts(ctx context.Context, episodeID int64) ([]episode.Cut, error) {
	all, err := list(ctx, s.reader, scanCut, selectCut+`
WHERE episode_id = ?1
  AND deleted_at IS NULL
ORDER BY turn DESC
LIMIT ?2`, episodeID, mostChildren)
	return all, operation{"list cuts of episode", episodeID}.wrap(err)
}

// CurrentCut gives the episode's current cut; fault.NotFound if it has none.
func (s *Store) CurrentCut(ctx context.Context, episodeID int64) (episode.Cut, error) {
	c, err := one(ctx, s.reader, "cut", scanCut, selectCut+`
WHERE episode_id = ?1
  AND deleted_at IS NULL
ORDER BY turn DESC
LIMIT 1`, episodeID)
	return c, operation{"read current cut of episode", episodeID}.wrap(err)
}

// Cut gives one cut.
func (s *Store) Cut(ctx context.Context, id int64) (episode.Cut, error) {
	c, err := one(ctx, s.reader, "cut", scanCut, selectCut+`
WHERE cut_id = ?1
  AND deleted_at IS NULL`, id)
	return c, operation{"read cut", id}.wrap(err)
}

// AddCut keeps a cut and makes it the episode's current one.
func (s *Store) AddCut(ctx context.Context, c episode.Cut) (id int64, err error) {
	err = s.write(ctx, operation{"add cut to episode", c.EpisodeID}, func(t *tx) error {
		id, err = t.addChild(ctx, cuts, c.EpisodeID, 0, insertCut, c.Name, c.Seconds, c.Captions)
		return err
	})
	return id, err
}

// UseCut makes an older cut its episode's current one again. The revision
// stays.
func (s *Store) UseCut(ctx context.Context, id int64) error {
	return s.write(ctx, operation{"use cut", id}, func(t *tx) error {
		rows, err := t.change(ctx, `
UPDATE cut
SET turn = (SELECT max(c.turn) + 1 FROM cut AS c WHERE c.episode_id = cut.episode_id)
WHERE cut_id = ?1
  AND deleted_at IS NULL`, id)
		if err == nil && rows == 0 {
			err = missing("cut")
		}
		return err
	})
}

// SaveCut keeps what was edited.
func (s *Store) SaveCut(ctx context.Context, c episode.Cut) error {
	return s.write(ctx, operation{"save cut", c.ID}, func(t *tx) error {
		return t.save(ctx, editedCut, c.ID, c.Revision, c.Name, c.Seconds, c.Captions)
	})
}

// DeleteCut hides a cut; if it was the current one, the one before it is
// again. Restore brings it back as it was.
func (s *Store) DeleteCut(ctx context.Context, id int64) error {
	return s.deleteChild(ctx, cuts, id)
}
