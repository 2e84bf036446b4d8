package store

import (
	"context"

	"benchproof/kitchen/episode"
)

// mostFindings bounds what is kept of one episode's cut.
const mostFindings = 2000

// KeepFindings replaces the keys of what the current cut of an episode says
// otherwise than its recipe. Keys beyond the bound are not kept.
func (s *Store) KeepFindings(ctx context.Context, episodeID int64, keys []string) error {
	return s.write(ctx, operation{"keep findings of episode", episodeID}, func(t *tx) error {
		if err := t.live(ctx, "episode", liveEpisode, episodeID); err != nil {
			return err
		}
		if _, err := t.change(ctx, `
DELETE FROM finding
WHERE episode_id = ?1`, episodeID); err != nil {
			return err
		}
		for _, key := range keys[:min(len(keys), mostFindings)] {
			if _, err := t.change(ctx, `
INSERT INTO finding (episode_id, key)
VALUES (?1, ?2)
ON CONFLICT (episode_id, key) DO NOTHING`, episodeID, key); err != nil {
				return err
			}
		}
		return nil
	})
}

// settled is what was decided about one finding.
type settled struct {
	key string
	how episode.Settlement
}

func scanSettled(row scanner) (f settled, err error) {
	err = row.Scan(&f.key, &f.how)
	return f, err
}

// Settlements gives what was decided about an episode's findings, by key.
func (s *Store) Settlements(ctx context.Context, episodeID int64) (map[string]episode.Settlement, error) {
	all, err := list(ctx, s.reader, scanSettled, `
SELECT key, how
FROM settlement
WHERE episode_id = ?1
ORDER BY key
LIMIT ?2`, episodeID, mostFindings)
	by := make(map[string]episode.Settlement, len(all))
	for _, f := range all {
		by[f.key] = f.how
	}
	return by, operation{"list settlements of episode", episodeID}.wrap(err)
}

// Settle keeps what is decided about a finding, in place of an earlier decision.
func (s *Store) Settle(ctx context.Context, episodeID int64, key string, how episode.Settlement) error {
	return s.write(ctx, operation{"settle finding of episode", episodeID}, func(t *tx) error {
		if err := t.live(ctx, "episode", liveEpisode, episodeID); err != nil {
			return err
		}
		if err := t.room(ctx, "settled findings", mostFindings, "SELECT count(*) FROM settlement WHERE episode_id = ?1 AND key <> ?2", episodeID, key); err != nil {
			return err
		}
		_, err := t.change(ctx, `
INSERT INTO settlement (episode_id, key, how, settled_at)
VALUES (?1, ?2, ?3, ?4)
ON CONFLICT (episode_id, key) DO UPDATE
SET how = excluded.how,
    settled_at = excluded.settled_at`, episodeID, key, how, t.now)
		return err
	})
}

// Reopen takes a decision back; none there is no error.
func (s *Store) Reopen(ctx context.Context, episodeID int64, key string) error {
	return s.write(ctx, operation{"reopen finding of episode", episodeID}, func(t *tx) error {
		_, err := t.change(ctx, `
DELETE FROM settlement
WHERE episode_id = ?1
  AND key = ?2`, episodeID, key)
		return err
	})
}
