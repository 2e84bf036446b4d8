package store

import (
	"context"
	"time"

	"benchproof/kitchen/episode"
)

// LongestWait bounds how long ago a tick can have been given: a phone that lay
// in a drawer for longer, and one whose clock ran wild, are taken at that.
const LongestWait = 7 * 24 * time.Hour

// ShotTick is a status given to a shot, at the desk or on a phone that may have
// had to wait for a signal since.
type ShotTick struct {
	Status episode.ShotStatus
	// Age is how long ago the status was given. Phones count it, and no clock of
	// theirs is believed to know the time. Below 0 it is 0, and at most LongestWait.
	Age time.Duration
	// By names the phone, and Nth counts its ticks up, so that those of one phone
	// stand in its order however long each was on its way. "" and 0 for no phone.
	By  string
	Nth int64
}

// standing is the tick that holds for a shot.
type standing struct {
	status episode.ShotStatus
	at     time.Time // the zero time if nobody has ticked the shot yet
	by     string
	nth    int64
}

func scanStanding(row scanner) (w standing, err error) {
	err = row.Scan(&w.status, instant{&w.at}, &w.by, &w.nth)
	return w, err
}

const selectStanding = `
SELECT status, status_at, status_by, status_nth
FROM shot
WHERE shot_id = ?1
  AND deleted_at IS NULL`

// TickShot notes how far a shot has come, whatever its revision, counts that up
// and gives the status that holds: another than the tick's if that was given
// later. The same tick twice is the same as once.
func (s *Store) TickShot(ctx context.Context, id int64, tick ShotTick) (holds episode.ShotStatus, err error) {
	now := s.clock().Truncate(time.Millisecond) // as it is stored
	given := now.Add(-min(max(tick.Age, 0), LongestWait))
	err = s.write(ctx, operation{"tick shot", id}, func(t *tx) error {
		was, err := one(ctx, t, "shot", scanStanding, selectStanding, id)
		if err != nil {
			return err
		}
		if holds = was.status; !tick.replaces(was, given, now) {
			return nil
		}
		holds = tick.Status
		_, err = t.change(ctx, `
UPDATE shot
SET status = ?2,
    status_at = ?3,
    status_by = ?4,
    status_nth = ?5,
    revision = revision + 1
WHERE shot_id = ?1`, id, tick.Status, instantText(given), tick.By, tick.Nth)
		return err
	})
	return holds, err
}

// replaces tells whether a tick given at that instant was given after what
// stands. Between two of one phone its count decides: the first may have come
// by a slow way, and seem to be the later one. Nothing stands from after now: if
// it seems so, this machine's clock has been set back.
func (k ShotTick) replaces(was standing, given, now time.Time) bool {
	if k.By != "" && k.By == was.by {
		return k.Nth > was.nth
	}
	if was.at.After(now) {
		was.at = now
	}
	return !given.Before(was.at)
}
