package store

import "context"

// mostTicks bounds a shopping list: one has tens of things.
const mostTicks = 2000

// Ticks lists the keys of the items that are ticked off on an episode's
// shopping list, in order of their text.
func (s *Store) Ticks(ctx context.Context, episodeID int64) ([]string, error) {
	items, err := list(ctx, s.reader, scanned[string], `
SELECT item
FROM tick
WHERE episode_id = ?1
ORDER BY item
LIMIT ?2`, episodeID, mostTicks)
	return items, operation{"list ticks of episode", episodeID}.wrap(err)
}

// SetTick ticks an item off, or takes the tick away. Doing so twice is the
// same as once, so a phone that lost the answer may send it again.
func (s *Store) SetTick(ctx context.Context, episodeID int64, item string, isTicked bool) error {
	return s.write(ctx, operation{"tick on episode", episodeID}, func(t *tx) error {
		if err := t.live(ctx, "episode", liveEpisode, episodeID); err != nil {
			return err
		}
		if !isTicked {
			_, err := t.change(ctx, `
DELETE FROM tick
WHERE episode_id = ?1
  AND item = ?2`, episodeID, item)
			return err
		}
		if err := t.room(ctx, "ticks", mostTicks, "SELECT count(*) FROM tick WHERE episode_id = ?1 AND item <> ?2", episodeID, item); err != nil {
			return err
		}
		_, err := t.change(ctx, `
INSERT INTO tick (episode_id, item, ticked_at)
VALUES (?1, ?2, ?3)
ON CONFLICT (episode_id, item) DO NOTHING`, episodeID, item, t.now)
		return err
	})
}

// ClearTicks takes all ticks of an episode away, for the next round of
// shopping.
func (s *Store) ClearTicks(ctx context.Context, episodeID int64) error {
	return s.write(ctx, operation{"clear ticks of episode", episodeID}, func(t *tx) error {
		_, err := t.change(ctx, `
DELETE FROM tick
WHERE episode_id = ?1`, episodeID)
		return err
	})
}
