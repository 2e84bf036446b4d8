package store

import (
	"context"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
)

const selectShot = `
SELECT shot_id, episode_id, position, title, kind, setup, component, step, layout, status, note, revision
FROM shot`

func scanShot(row scanner) (h episode.Shot, err error) {
	err = row.Scan(&h.ID, &h.EpisodeID, &h.Position, &h.Title, &h.Kind, &h.Setup, &h.Component, &h.Step, &h.Layout, &h.Status, &h.Note, &h.Revision)
	return h, err
}

const insertShot = `
INSERT INTO shot (episode_id, position, title, kind, setup, component, step, layout, status, note)
SELECT episode_id,
       (SELECT count(*) + 1 FROM shot AS h WHERE h.episode_id = ?1 AND h.deleted_at IS NULL),
       ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9
FROM episode
WHERE episode_id = ?1
  AND deleted_at IS NULL`

var editedShot = edited{
	noun: "shot",
	update: `
UPDATE shot
SET title = ?3,
    kind = ?4,
    setup = ?5,
    component = ?6,
    step = ?7,
    layout = ?8,
    status = ?9,
    note = ?10,
    status_at = CASE status WHEN ?9 THEN status_at ELSE ?11 END,
    status_by = CASE status WHEN ?9 THEN status_by ELSE '' END,
    status_nth = CASE status WHEN ?9 THEN status_nth ELSE 0 END,
    revision = revision + 1
WHERE shot_id = ?1
  AND revision = ?2
  AND deleted_at IS NULL`,
	revision: `
SELECT revision
FROM shot
WHERE shot_id = ?1
  AND deleted_at IS NULL`,
}

// shotFields are what both inserting and saving a shot write, in order.
func shotFields(h episode.Shot) []any {
	return []any{h.Title, h.Kind, h.Setup, h.Component, h.Step, h.Layout, h.Status, h.Note}
}

var shots = child{
	plural: "shots",
	count: `
SELECT count(*)
FROM shot
WHERE episode_id = ?1
  AND deleted_at IS NULL`,
	home: `
SELECT episode_id, position, deleted_at IS NULL
FROM shot
WHERE shot_id = ?1`,
	order: &siblings{
		ids: `
SELECT shot_id
FROM shot
WHERE episode_id = ?1
  AND deleted_at IS NULL
ORDER BY position`,
		aside: `
UPDATE shot
SET position = -position
WHERE episode_id = ?1
  AND deleted_at IS NULL`,
		place: `
UPDATE shot
SET position = ?2
WHERE shot_id = ?1`,
	},
	undoable: undoable{
		noun: "shot",
		remove: `
UPDATE shot
SET deleted_at = ?2
WHERE shot_id = ?1
  AND deleted_at IS NULL`,
		restore: `
UPDATE shot
SET deleted_at = NULL,
    position = (SELECT count(*) + 1 FROM shot AS h WHERE h.episode_id = shot.episode_id AND h.deleted_at IS NULL)
WHERE shot_id = ?1
  AND deleted_at IS NOT NULL`,
	},
}

// Shots lists an episode's shots in their order.
func (s *Store) Shots(ctx context.Context, episodeID int64) ([]episode.Shot, error) {
	all, err := list(ctx, s.reader, scanShot, selectShot+`
WHERE episode_id = ?1
  AND deleted_at IS NULL
ORDER BY position
LIMIT ?2`, episodeID, mostChildren)
	return all, operation{"list shots of episode", episodeID}.wrap(err)
}

// Shot gives one shot.
func (s *Store) Shot(ctx context.Context, id int64) (episode.Shot, error) {
	h, err := one(ctx, s.reader, "shot", scanShot, selectShot+`
WHERE shot_id = ?1
  AND deleted_at IS NULL`, id)
	return h, operation{"read shot", id}.wrap(err)
}

// AddShot puts a shot at its Position in the list, last if that is 0.
func (s *Store) AddShot(ctx context.Context, h episode.Shot) (id int64, err error) {
	err = s.write(ctx, operation{"add shot to episode", h.EpisodeID}, func(t *tx) error {
		id, err = t.addChild(ctx, shots, h.EpisodeID, h.Position, insertShot, shotFields(h)...)
		return err
	})
	return id, err
}

// AddShots adds several to the end of an episode's list of have shots, all or
// none of them. If the list has another length by now the error is
// fault.Conflict, so that doing so twice is the same as once.
func (s *Store) AddShots(ctx context.Context, episodeID int64, have int, all []episode.Shot) error {
	return s.write(ctx, operation{"add shots to episode", episodeID}, func(t *tx) error {
		there, err := one(ctx, t, "shot", scanned[int], shots.count, episodeID)
		if err != nil {
			return err
		}
		if there != have {
			return fault.Conflictf("The shot list has changed since: there are %d shots in it, not %d. Look at it again before you add more.", there, have)
		}
		for _, h := range all {
			if _, err := t.addChild(ctx, shots, episodeID, 0, insertShot, shotFields(h)...); err != nil {
				return err
			}
		}
		return nil
	})
}

// SaveShot keeps what was edited: all but the position, for which see
// MoveShot. Another status than before is given now.
func (s *Store) SaveShot(ctx context.Context, h episode.Shot) error {
	return s.write(ctx, operation{"save shot", h.ID}, func(t *tx) error {
		return t.save(ctx, editedShot, h.ID, h.Revision, append(shotFields(h), t.now)...)
	})
}

// MoveShot moves a shot by places down the list, up if by is negative, and no
// further than its ends. The revision stays.
func (s *Store) MoveShot(ctx context.Context, id int64, by int) error {
	return s.moveChild(ctx, shots, id, by)
}

// DeleteShot hides a shot; Restore brings it back to its place.
func (s *Store) DeleteShot(ctx context.Context, id int64) error {
	return s.deleteChild(ctx, shots, id)
}
