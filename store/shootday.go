package store

import (
	"context"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
)

const selectShootDay = `
SELECT episode_id, shoot_on, begin_at, done_by, hands, helper_until, light_until, setup_minutes, now_at, people, gear, props,
       mixers, rings, ovens, oven_holds, clean_bench, clean_mixer, clean_hob, revision
FROM shoot_day`

func scanShootDay(row scanner) (d episode.ShootDay, err error) {
	k := &d.Kitchen
	err = row.Scan(&d.EpisodeID, date{&d.On}, &d.Begin, &d.DoneBy, &d.Hands, &d.HelperUntil, &d.LightUntil, &d.SetupMinutes, &d.Now,
		&d.People, &d.Gear, &d.Props, &k.Mixers, &k.Rings, &k.Ovens, &k.OvenHolds, &k.CleanBench, &k.CleanMixer, &k.CleanHob, &d.Revision)
	return d, err
}

const insertShootDay = `
INSERT INTO shoot_day (episode_id, revision, shoot_on, begin_at, done_by, hands, helper_until, light_until, setup_minutes, now_at,
                       people, gear, props, mixers, rings, ovens, oven_holds, clean_bench, clean_mixer, clean_hob)
VALUES (?1, ?2 + 1, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14, ?15, ?16, ?17, ?18, ?19, ?20)
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
    now_at = ?10,
    people = ?11,
    gear = ?12,
    props = ?13,
    mixers = ?14,
    rings = ?15,
    ovens = ?16,
    oven_holds = ?17,
    clean_bench = ?18,
    clean_mixer = ?19,
    clean_hob = ?20,
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

// shootDayFields are what both inserting and saving a shoot day write, in order.
func shootDayFields(d episode.ShootDay) []any {
	k := d.Kitchen
	return []any{dateText(d.On), d.Begin, d.DoneBy, d.Hands, d.HelperUntil, d.LightUntil, d.SetupMinutes, d.Now,
		d.People, d.Gear, d.Props, k.Mixers, k.Rings, k.Ovens, k.OvenHolds, k.CleanBench, k.CleanMixer, k.CleanHob}
}

// ShootDay gives what an episode's shoot day is planned with. Until something
// is saved that is episode.NewShootDay, with revision 0, in the kitchen, with
// the people and gear of the latest day that was saved.
func (s *Store) ShootDay(ctx context.Context, episodeID int64) (episode.ShootDay, error) {
	op := operation{"read shoot day of episode", episodeID}
	if _, err := one(ctx, s.reader, "episode", scanned[int], liveEpisode, episodeID); err != nil {
		return episode.ShootDay{}, op.wrap(err)
	}
	d, err := one(ctx, s.reader, "shoot day", scanShootDay, selectShootDay+`
WHERE episode_id = ?1`, episodeID)
	if fault.KindOf(err) == fault.NotFound {
		d, err = s.firstShootDay(ctx, episodeID)
	}
	return d, op.wrap(err)
}

func (s *Store) firstShootDay(ctx context.Context, episodeID int64) (episode.ShootDay, error) {
	first := episode.NewShootDay(episodeID)
	latest, err := one(ctx, s.reader, "shoot day", scanShootDay, selectShootDay+`
ORDER BY shoot_on DESC, episode_id DESC
LIMIT 1`)
	switch {
	case err == nil:
		first.Kitchen, first.People, first.Gear, first.SetupMinutes = latest.Kitchen, latest.People, latest.Gear, latest.SetupMinutes
	case fault.KindOf(err) != fault.NotFound:
		return first, err
	}
	return first, nil
}

// SaveShootDay keeps what was edited. A day with revision 0 is the episode's
// first.
func (s *Store) SaveShootDay(ctx context.Context, d episode.ShootDay) error {
	return s.write(ctx, operation{"save shoot day of episode", d.EpisodeID}, func(t *tx) error {
		return t.saveShootDay(ctx, d)
	})
}

func (t *tx) saveShootDay(ctx context.Context, d episode.ShootDay) error {
	if err := t.live(ctx, "episode", liveEpisode, d.EpisodeID); err != nil {
		return err
	}
	change := editedShootDay
	if d.Revision == 0 {
		change.update = insertShootDay
	}
	return t.save(ctx, change, d.EpisodeID, d.Revision, shootDayFields(d)...)
}
