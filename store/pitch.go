package store

import (
	"context"

	"benchproof/kitchen/episode"
)

const mostPitches = 5000

// selectPitch leaves out a link to an episode that is deleted.
const selectPitch = `
SELECT p.pitch_id, p.dish, p.who, p.place, p.times, p.note, COALESCE(e.episode_id, 0), p.revision
FROM pitch AS p
LEFT JOIN episode AS e ON e.episode_id = p.episode_id AND e.deleted_at IS NULL`

func scanPitch(row scanner) (p episode.Pitch, err error) {
	err = row.Scan(&p.ID, &p.Dish, &p.Who, &p.Place, &p.Times, &p.Note, &p.EpisodeID, &p.Revision)
	return p, err
}

const insertPitch = `
INSERT INTO pitch (dish, who, place, times, note)
VALUES (?1, ?2, ?3, ?4, ?5)`

var editedPitch = edited{
	noun: "pitch",
	update: `
UPDATE pitch
SET dish = ?3,
    who = ?4,
    place = ?5,
    times = ?6,
    note = ?7,
    revision = revision + 1
WHERE pitch_id = ?1
  AND revision = ?2
  AND deleted_at IS NULL`,
	revision: `
SELECT revision
FROM pitch
WHERE pitch_id = ?1
  AND deleted_at IS NULL`,
}

var undoPitch = undoable{
	noun: "pitch",
	remove: `
UPDATE pitch
SET deleted_at = ?2
WHERE pitch_id = ?1
  AND deleted_at IS NULL`,
	restore: `
UPDATE pitch
SET deleted_at = NULL
WHERE pitch_id = ?1
  AND deleted_at IS NOT NULL`,
}

// Pitches lists the pitches, those asked for most often first.
func (s *Store) Pitches(ctx context.Context) ([]episode.Pitch, error) {
	pitches, err := list(ctx, s.reader, scanPitch, selectPitch+`
WHERE p.deleted_at IS NULL
ORDER BY p.times DESC, p.pitch_id DESC
LIMIT ?1`, mostPitches)
	return pitches, operation{verb: "list pitches"}.wrap(err)
}

// Pitch gives one pitch.
func (s *Store) Pitch(ctx context.Context, id int64) (episode.Pitch, error) {
	pitch, err := one(ctx, s.reader, "pitch", scanPitch, selectPitch+`
WHERE p.pitch_id = ?1
  AND p.deleted_at IS NULL`, id)
	return pitch, operation{"read pitch", id}.wrap(err)
}

// AddPitch keeps a new pitch; its EpisodeID does not count.
func (s *Store) AddPitch(ctx context.Context, p episode.Pitch) (id int64, err error) {
	err = s.write(ctx, operation{verb: "add pitch"}, func(t *tx) error {
		if err := t.room(ctx, "pitches", mostPitches, "SELECT count(*) FROM pitch WHERE deleted_at IS NULL"); err != nil {
			return err
		}
		id, err = t.add(ctx, "pitch", insertPitch, p.Dish, p.Who, p.Place, p.Times, p.Note)
		return err
	})
	return id, err
}

// SavePitch keeps what was edited: all but EpisodeID, for which see LinkPitch.
func (s *Store) SavePitch(ctx context.Context, p episode.Pitch) error {
	return s.write(ctx, operation{"save pitch", p.ID}, func(t *tx) error {
		return t.save(ctx, editedPitch, p.ID, p.Revision, p.Dish, p.Who, p.Place, p.Times, p.Note)
	})
}

// LinkPitch notes which episode the pitch became; 0 for none. The revision
// stays.
func (s *Store) LinkPitch(ctx context.Context, id, episodeID int64) error {
	return s.write(ctx, operation{"link pitch", id}, func(t *tx) error {
		return t.linkPitch(ctx, id, episodeID)
	})
}

func (t *tx) linkPitch(ctx context.Context, id, episodeID int64) error {
	if episodeID != 0 {
		if err := t.live(ctx, "episode", liveEpisode, episodeID); err != nil {
			return err
		}
	}
	rows, err := t.change(ctx, `
UPDATE pitch
SET episode_id = ?2
WHERE pitch_id = ?1
  AND deleted_at IS NULL`, id, idOrNull(episodeID))
	if err == nil && rows == 0 {
		err = missing("pitch")
	}
	return err
}

// DeletePitch hides a pitch; Restore brings it back.
func (s *Store) DeletePitch(ctx context.Context, id int64) error {
	return s.write(ctx, operation{"delete pitch", id}, func(t *tx) error {
		return t.hide(ctx, undoPitch, id)
	})
}
