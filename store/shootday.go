package store

import (
	"context"

	"benchproof/kitchen/episode"
)

const selectShootDay = `
SELECT e.episode_id, d.shoot_on, COALESCE(d.begin_at, ?2), COALESCE(d.done_by, ?3), COALESCE(d.hands, ?4),
       COALESCE(d.helper_until, ?5), COALESCE(d.light_until, ?6), COALESCE(d.setup_minutes, ?7), COALESCE(d.revision, 0)
FROM episode AS e
LEFT JOIN shoot_day AS d ON d.episode_id = e.episode_id
WHERE e.episode_id = ?1
  AND e.deleted_at IS NULL`

func scanShootDay(row scanner) (d episode.ShootDay, err error) {
	err = row.Scan(&d.EpisodeID, date{&d.On}, &d.Begin, &d.DoneBy, &d.Hands, &d.HelperUntil, &d.LightUntil, &d.SetupMinutes, &d.Revision)
	return d, err
}

const insertShootDay = `
INSERT INTO shoot_day (episode_id, revision, shoot_on, begin_at, done_by, hands, helper_until, light_until, setup_minutes)
VALUES (?1, ?2 + 1, ?3, ?4, ?5, ?6, ?7, ?8, ?9)
ON CONFLICT (episode_id) DO NOTHING`

var editedShootDay = edited{
	noun: "shoot day",
	update: `
UPDATE shoot_day
SET shoot_on = ?3,
    begin_at = ?4,
    done_by = ?5,
    hands = ?6,
    helper_until = ?7,
    light_until = ?8,
    setup_minutes = ?9,
    revision = revision + 1
WHERE episode_id = ?1
  AND revision = ?2`,
	revision: `
SELECT COALESCE(d.revision, 0)
FROM episode AS e
LEFT JOIN shoot_day AS d ON d.episode_id = e.episode_id
WHERE e.episode_id = ?1
  AND e.deleted_at IS NULL`,
}

// ShootDay gives what an episode's shoot day is planned with:
// episode.NewShootDay, with revision 0, until something else is saved.
func (s *Store) ShootDay(ctx context.Context, episodeID int64) (episode.ShootDay, error) {
	usual := episode.NewShootDay(episodeID)
	d, err := one(ctx, s.reader, "episode", scanShootDay, selectShootDay,
		episodeID, usual.Begin, usual.DoneBy, usual.Hands, usual.HelperUntil, usual.LightUntil, usual.SetupMinutes)
	return d, operation{"read shoot day of episode", episodeID}.wrap(err)
}

// SaveShootDay keeps what was edited. A day with revision 0 is the episode's
// first.
func (s *Store) SaveShootDay(ctx context.Context, d episode.ShootDay) error {
	return s.write(ctx, operation{"save shoot day of episode", d.EpisodeID}, func(t *tx) error {
		if err := t.live(ctx, "episode", liveEpisode, d.EpisodeID); err != nil {
			return err
		}
		change := editedShootDay
		if d.Revision == 0 {
			change.update = insertShootDay
		}
		return t.save(ctx, change, d.EpisodeID, d.Revision,
			dateText(d.On), d.Begin, d.DoneBy, d.Hands, d.HelperUntil, d.LightUntil, d.SetupMinutes)
	})
}
